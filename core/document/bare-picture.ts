/**
 * A picture without what a camera or a program wrote into it besides: place, time, device, names, remarks, smaller
 * copies. What is seen stays as it is, byte for byte. It decodes nothing and scales nothing.
 */
import { strFromU8 } from 'fflate';
import { isExif, type Orientation, orientationIn, orientationSegment } from './orientation.ts';

/** The same picture; null for bytes that are no JPEG or PNG from beginning to end. */
export function barePicture(bytes: Uint8Array): Uint8Array | null {
  const isJpeg = bytes[0] === 0xff && bytes[1] === 0xd8;
  return isJpeg ? bareJpeg(bytes) : barePng(bytes);
}

/** Of the segments for applications: JFIF, a profile of colours, Adobe's way of colours (T.81, B.2.4.6; ICC.1, B.4). */
function isSeen(marker: number, payload: Uint8Array): boolean {
  if (marker === 0xfe) return false;
  if (marker < 0xe0 || marker > 0xef) return true;
  if (marker === 0xe0 || marker === 0xee) return true;
  return marker === 0xe2 && strFromU8(payload.subarray(0, 12), true) === 'ICC_PROFILE\0';
}

/** Where the data of a scan end: at the next marker that is neither a stuffed zero nor a restart (T.81, B.1.1.5). */
function endOfScan(bytes: Uint8Array, from: number): number {
  for (let at = from; at + 1 < bytes.length; at++) {
    if (bytes[at] !== 0xff) continue;
    const next = bytes[at + 1]!;
    if (next !== 0 && next !== 0xff && (next < 0xd0 || next > 0xd7)) return at;
  }
  return -1;
}

function bareJpeg(bytes: Uint8Array): Uint8Array | null {
  const parts: Uint8Array[] = [];
  let orientation: Orientation = 1;
  let at = 2;
  while (at + 4 <= bytes.length) {
    if (bytes[at] !== 0xff) return null;
    const marker = bytes[at + 1]!;
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    const length = (bytes[at + 2]! << 8) | bytes[at + 3]!;
    const payload = bytes.subarray(at + 4, at + 2 + length);
    if (length < 2 || at + 2 + length > bytes.length) return null;
    if (marker === 0xe1 && isExif(payload)) orientation = orientationIn(payload) ?? orientation;
    let end = at + 2 + length;
    if (marker === 0xda) {
      end = endOfScan(bytes, end);
      if (end < 0) return null;
    }
    if (isSeen(marker, payload)) parts.push(bytes.subarray(at, end));
    at = end;
    if (bytes[at] === 0xff && bytes[at + 1] === 0xd9) {
      const turned = orientation === 1 ? [] : [orientationSegment(orientation)];
      return joined([Uint8Array.of(0xff, 0xd8), ...turned, ...parts, Uint8Array.of(0xff, 0xd9)]);
    }
  }
  return null;
}

/** Chunks of PNG that tell about the picture, and show nothing of it (ISO/IEC 15948, 11.3.4 and 11.3.6; eXIf). */
const TELLING = new Set(['tEXt', 'zTXt', 'iTXt', 'tIME', 'eXIf']);

function barePng(bytes: Uint8Array): Uint8Array | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const parts: Uint8Array[] = [bytes.subarray(0, 8)];
  for (let at = 8; at + 12 <= bytes.length; ) {
    const end = at + 12 + view.getUint32(at);
    if (end > bytes.length) return null;
    const name = strFromU8(bytes.subarray(at + 4, at + 8), true);
    if (!TELLING.has(name)) parts.push(bytes.subarray(at, end));
    if (name === 'IEND') return joined(parts);
    at = end;
  }
  return null;
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
