/**
 * Tells whether bytes are a picture that the pen can place (JPEG or PNG, whole) and how many pixels it has.
 * Never throws.
 */
import PDFDocument from 'pdfkit';

/** Pixels as the picture is meant to stand (a camera's turn counted in), or null. */
export function pictureSize(bytes: Uint8Array): { width: number; height: number } | null {
  try {
    const probe = new PDFDocument({ autoFirstPage: false, font: null as unknown as string });
    const image = (probe as unknown as { openImage(src: Uint8Array): OpenImage }).openImage(bytes);
    const turned = (image.orientation ?? 1) > 4;
    const size = turned
      ? { width: image.height, height: image.width }
      : { width: image.width, height: image.height };
    return size.width > 0 && size.height > 0 ? size : null;
  } catch {
    return null;
  }
}

interface OpenImage {
  readonly width: number;
  readonly height: number;
  readonly orientation?: number;
}
