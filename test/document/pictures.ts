/** Small real PNGs and the bare frame of a JPEG, made here for tests. */
import { crc32, deflateSync } from 'node:zlib';

function chunk(name: string, data: Uint8Array): Buffer {
  const body = Buffer.concat([Buffer.from(name, 'latin1'), data]);
  const whole = Buffer.alloc(body.length + 8);
  whole.writeUInt32BE(data.length, 0);
  body.copy(whole, 4);
  whole.writeUInt32BE(crc32(body), body.length + 4);
  return whole;
}

/** A grey PNG that every reader opens; `declared` puts other sides in its header than it has. */
export function png(
  grey: number,
  width = 2,
  height = 2,
  declared: readonly [number, number] = [width, height],
): Uint8Array {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(declared[0], 0);
  header.writeUInt32BE(declared[1], 4);
  header[8] = 8; // bits a sample; colour type 0, grey
  const lines = Buffer.alloc((width + 1) * height, grey);
  for (let y = 0; y < height; y++) lines[y * (width + 1)] = 0; // no filter
  const start = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  const parts = [
    start,
    chunk('IHDR', header),
    chunk('IDAT', deflateSync(lines)),
    chunk('IEND', new Uint8Array()),
  ];
  return new Uint8Array(Buffer.concat(parts));
}

/** A JPEG that says how the camera was held: Exif 2.3, 4.5.4 and 4.6.4 A, little end first. */
export function turned(bytes: Uint8Array, orientation: number): Uint8Array {
  const tiff = [
    0x49,
    0x49,
    42,
    0,
    8,
    0,
    0,
    0,
    1,
    0,
    0x12,
    0x01,
    3,
    0,
    1,
    0,
    0,
    0,
    orientation,
    0,
    0,
    0,
    0,
    0,
    0,
    0,
  ];
  const body = [...Buffer.from('Exif\0\0', 'latin1'), ...tiff];
  return Uint8Array.from([
    ...bytes.subarray(0, 2),
    ...[0xff, 0xe1, 0, body.length + 2],
    ...body,
    ...bytes.subarray(2),
  ]);
}

/** A PNG with a chunk of this name before its end. */
export function withChunk(bytes: Uint8Array, name: string, data: string): Uint8Array {
  const end = bytes.length - 12;
  return new Uint8Array(
    Buffer.concat([bytes.subarray(0, end), chunk(name, Buffer.from(data, 'latin1')), bytes.subarray(end)]),
  );
}

/** The segments of a JPEG up to its frame header, `frame` being the marker (0xc0 baseline, 0xc2 progressive). */
export function jpeg(width: number, height: number, frame = 0xc0): Uint8Array {
  const two = (value: number) => [value >> 8, value & 0xff];
  return Uint8Array.from([
    ...[0xff, 0xd8],
    ...[0xff, 0xe0, 0x00, 0x04, 0x4a, 0x46],
    ...[0xff, 0xff, 0xdb, 0x00, 0x03, 0x00], // with a fill byte
    ...[0xff, 0xc4, 0x00, 0x03, 0x00], // tables, whose marker lies among those of frames
    ...[0xff, frame, 0x00, 0x0b, 0x08, ...two(height), ...two(width), 0x01, 0x01, 0x11, 0x00],
    ...[0xff, 0xd9],
  ]);
}
