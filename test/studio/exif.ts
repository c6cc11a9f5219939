/**
 * A photograph as a telephone writes it: a JPEG whose Exif block tells how it was held, with what and where. The
 * layout is Exif 2.32 (CIPA DC-008), a TIFF 6.0 file inside an APP1 segment; all in it is invented.
 */

/** The maker of the device, as it stands in the block. */
export const DEVICE = 'Invented Lightbox';
/** "Exif" and the two zero bytes that begin the block (4.7.2). */
export const EXIF_HEAD = 'Exif\0\0';

const ASCII = 2;
const SHORT = 3;
const LONG = 4;
const RATIONAL = 5;
const WIDTH: Readonly<Record<number, number>> = { [ASCII]: 1, [SHORT]: 2, [LONG]: 4, [RATIONAL]: 8 };

type Entry = readonly [tag: number, type: number, values: Buffer];

const short = (value: number) => Buffer.from([value >> 8, value & 255]);
const long = (value: number) => {
  const bytes = Buffer.alloc(4);
  bytes.writeUInt32BE(value);
  return bytes;
};
const rationals = (...pairs: readonly (readonly [number, number])[]) =>
  Buffer.concat(pairs.flatMap(([over, under]) => [long(over), long(under)]));
const ascii = (text: string) => Buffer.from(`${text}\0`, 'latin1');

/** An image file directory at an offset of its TIFF file, with what does not fit into four bytes behind it. */
function directory(at: number, entries: readonly Entry[]): Buffer {
  const rest: Buffer[] = [];
  let free = at + 2 + entries.length * 12 + 4;
  const table = entries.map(([tag, type, values]) => {
    const head = Buffer.concat([short(tag), short(type), long(values.length / WIDTH[type]!)]);
    if (values.length <= 4) return Buffer.concat([head, values, Buffer.alloc(4 - values.length)]);
    rest.push(values);
    free += values.length;
    return Buffer.concat([head, long(free - values.length)]);
  });
  return Buffer.concat([short(entries.length), ...table, long(0), ...rest]);
}

/** The JPEG with an Exif block after its beginning: held on its side (orientation 6), and 52° 30′ N, 13° 24′ E. */
export function withExif(jpeg: Buffer): Buffer {
  const images = (gps: number) =>
    directory(8, [
      [0x010f, ASCII, ascii(DEVICE)],
      [0x0112, SHORT, short(6)],
      [0x8825, LONG, long(gps)],
    ]);
  const gps = 8 + images(0).length;
  const place = directory(gps, [
    [0x0001, ASCII, ascii('N')],
    [0x0002, RATIONAL, rationals([52, 1], [30, 1], [0, 1])],
    [0x0003, ASCII, ascii('E')],
    [0x0004, RATIONAL, rationals([13, 1], [24, 1], [0, 1])],
  ]);
  const tiff = Buffer.concat([Buffer.from('MM\0*', 'latin1'), long(8), images(gps), place]);
  const body = Buffer.concat([Buffer.from(EXIF_HEAD, 'latin1'), tiff]);
  return Buffer.concat([
    jpeg.subarray(0, 2),
    Buffer.from([0xff, 0xe1]),
    short(body.length + 2),
    body,
    jpeg.subarray(2),
  ]);
}
