/**
 * How values with bytes in them cross between a page and the loopback host: JSON, then the bytes as they are,
 * so that a file of many megabytes is never spelled out as text. Pure, and the same on both sides. It judges
 * nothing: what the values may be is for the receiver to check.
 *
 * Four bytes: length of the JSON, big-endian. The JSON. The bytes of every part, one after another; in the JSON
 * a part stands as `{"$bytes":[offset,length]}`.
 */

export const FRAME_TYPE = 'application/x-turnchain-frame';

/** Parts stand near the top of what is said: deeper, a document is passed on as it is. */
const DEPTH = 3;
const KEY = '$bytes';

const isPlain = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && Object.getPrototypeOf(value) === Object.prototype;

function lift(value: unknown, depth: number, take: (bytes: Uint8Array) => unknown): unknown {
  if (value instanceof Uint8Array) return take(value);
  if (depth === 0) return value;
  if (Array.isArray(value)) return value.map((part) => lift(part, depth - 1, take));
  if (!isPlain(value)) return value;
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, lift(part, depth - 1, take)]));
}

/** The value as bytes. */
export function packFrame(value: unknown): Uint8Array<ArrayBuffer> {
  const parts: Uint8Array[] = [];
  let offset = 0;
  const lifted = lift(value, DEPTH, (bytes) => {
    parts.push(bytes);
    offset += bytes.length;
    return { [KEY]: [offset - bytes.length, bytes.length] };
  });
  const json = new TextEncoder().encode(JSON.stringify(lifted));
  const frame = new Uint8Array(4 + json.length + offset);
  new DataView(frame.buffer).setUint32(0, json.length);
  frame.set(json, 4);
  let at = 4 + json.length;
  for (const part of parts) {
    frame.set(part, at);
    at += part.length;
  }
  return frame;
}

function lower(value: unknown, depth: number, bytes: Uint8Array): unknown {
  if (depth < 0) return value;
  if (Array.isArray(value)) return value.map((part) => lower(part, depth - 1, bytes));
  if (!isPlain(value)) return value;
  const place: unknown = value[KEY];
  if (Array.isArray(place) && place.length === 2 && Object.keys(value).length === 1) {
    const [offset, length]: readonly unknown[] = place;
    const within =
      Number.isSafeInteger(offset) &&
      Number.isSafeInteger(length) &&
      Number(offset) >= 0 &&
      Number(length) >= 0 &&
      Number(offset) + Number(length) <= bytes.length;
    if (!within) throw new RangeError('A frame names bytes that it does not have.');
    return new Uint8Array(bytes.subarray(Number(offset), Number(offset) + Number(length)));
  }
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, lower(part, depth - 1, bytes)]));
}

/** The value that was packed. Throws for bytes that are no frame. */
export function unpackFrame(frame: Uint8Array): unknown {
  if (frame.length < 4) throw new RangeError('A frame is cut short.');
  const length = new DataView(frame.buffer, frame.byteOffset, 4).getUint32(0);
  if (length > frame.length - 4) throw new RangeError('A frame is cut short.');
  const json = new TextDecoder('utf-8', { fatal: true }).decode(frame.subarray(4, 4 + length));
  return lower(JSON.parse(json), DEPTH, frame.subarray(4 + length));
}
