/**
 * How a JPEG is to be turned to stand upright: the one thing that a camera writes beside a picture that is needed to
 * show it. Exif 2.3 (JEITA CP-3451C), 4.5.4 and 4.6.4 A; TIFF 6.0, section 2. It decodes nothing.
 */

/** From 1, as it lies, to 8. From 5 on its sides change places. */
export type Orientation = 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8;

const ORIENTATION = 0x0112;
const EXIF = [0x45, 0x78, 0x69, 0x66, 0, 0];

/** Whether the payload of a segment APP1 is Exif. */
export const isExif = (payload: Uint8Array): boolean => EXIF.every((byte, at) => payload[at] === byte);

/** What Exif says of it; null where it says nothing that makes sense. */
export function orientationIn(payload: Uint8Array): Orientation | null {
  if (!isExif(payload) || payload.length < EXIF.length + 8) return null;
  const tiff = payload.subarray(EXIF.length);
  const view = new DataView(tiff.buffer, tiff.byteOffset, tiff.byteLength);
  const order = view.getUint16(0);
  const little = order === 0x4949;
  if ((!little && order !== 0x4d4d) || view.getUint16(2, little) !== 42) return null;
  const directory = view.getUint32(4, little);
  if (directory + 2 > tiff.length) return null;
  const entries = view.getUint16(directory, little);
  for (let i = 0; i < entries; i++) {
    const at = directory + 2 + i * 12;
    if (at + 12 > tiff.length) return null;
    if (view.getUint16(at, little) !== ORIENTATION) continue;
    const value = view.getUint16(at + 8, little);
    return value >= 1 && value <= 8 ? (value as Orientation) : null;
  }
  return null;
}

/** A whole segment APP1 that says this and nothing else. */
export function orientationSegment(orientation: Orientation): Uint8Array {
  const tiff = [0x4d, 0x4d, 0, 42, 0, 0, 0, 8, 0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, orientation, 0, 0];
  const payload = [...EXIF, ...tiff, 0, 0, 0, 0];
  const length = payload.length + 2;
  return Uint8Array.from([0xff, 0xe1, length >> 8, length & 0xff, ...payload]);
}
