/**
 * Takes a photograph in: decodes it upright, scales it to what print can show, and writes it anew as JPEG. What
 * the camera wrote into the file besides (place, time, device) does not come along. It puts nothing anywhere.
 */
import { type Picture, takePicture } from '../../core/document/media.ts';

/** Longest side in pixels: at 300 dots per inch this is 8 inches, the width of a page. */
export const LONGEST_SIDE = 2400;
/** Quality at which JPEG shows no marks in print while a photograph stays below a megabyte or two. */
const QUALITY = 0.9;

/** Sides after scaling down; a smaller picture stays as it is. */
export function scaledSides(width: number, height: number): readonly [number, number] {
  const by = Math.min(1, LONGEST_SIDE / Math.max(width, height));
  return [Math.max(1, Math.round(width * by)), Math.max(1, Math.round(height * by))];
}

/** The photograph in a file; null when it cannot be decoded. */
export async function importPhotograph(file: Blob): Promise<Picture | null> {
  let bitmap: ImageBitmap;
  try {
    bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' });
  } catch {
    return null;
  }
  const [width, height] = scaledSides(bitmap.width, bitmap.height);
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext('2d');
  if (context === null) return null;
  // What is see-through stands on white, as on paper.
  context.fillStyle = 'white';
  context.fillRect(0, 0, width, height);
  context.imageSmoothingQuality = 'high';
  context.drawImage(bitmap, 0, 0, width, height);
  bitmap.close();
  const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: QUALITY });
  const taken = takePicture(new Uint8Array(await blob.arrayBuffer()));
  return taken.ok ? taken.picture : null;
}
