/** Pictures of every kind a maker may drop on the page, and pictures that are none. */
import fc from 'fast-check';
import { PNG, type PNGOptions } from 'pngjs';
import { beforeAll, describe, expect, test } from 'vitest';
import { type Booklet, figure, part, picture } from '../../core/print/content.ts';
import { writePdf } from '../../core/print/pen.ts';
import { readPicture } from '../../core/print/pictures.ts';
import { sample, samplePicture } from './sample.ts';
import { fonts, objectsOf, outside, outsideBytes, resources } from './tools.ts';

function png(width: number, height: number, options: PNGOptions): Uint8Array {
  const image = new PNG({ width, height });
  for (let i = 0; i < image.data.length; i += 4) {
    image.data.set([(i / 4) % 256, 128, 200, options.inputHasAlpha === false ? 255 : (i * 7) % 256], i);
  }
  return new Uint8Array(PNG.sync.write(image, options));
}

const BOOKLET: Booklet = {
  ...sample(),
  cover: null,
  parts: [part('Pictures', [figure(picture('one'), 'The first'), figure(picture('two'), 'The second')])],
};

const print = (one: Uint8Array, two = one): Promise<Uint8Array> =>
  writePdf(
    BOOKLET,
    { paper: 'a4', edition: 'standard' },
    { fonts, picture: (name) => (name === 'one' ? one : two) },
  );

const images = (pdf: Uint8Array): Record<string, unknown>[] =>
  objectsOf(pdf).all.filter((one) => one['/Subtype'] === '/Image');

describe('PNG', () => {
  test.each([
    ['with transparency', png(40, 30, { colorType: 6 })],
    ['grey with transparency', png(40, 30, { colorType: 4 })],
    ['in colours', png(40, 30, { colorType: 2 })],
    ['in grey', png(40, 30, { colorType: 0 })],
    ['in colours of 16 bits', png(40, 30, { colorType: 2, bitDepth: 16 })],
  ])('%s is read and placed', async (_, bytes) => {
    expect(readPicture(bytes)).toMatchObject({ width: 40, height: 30 });
    const pdf = await print(bytes);
    expect(outside('qpdf', ['--check', 'FILE'], pdf)).toContain('No syntax');
    expect(images(pdf).length).toBe(2);
    expect(images(pdf).every((one) => one['/SMask'] === undefined)).toBe(true);
    expect(Buffer.compare(Buffer.from(await print(bytes)), Buffer.from(pdf))).toBe(0);
  });

  test('with transparency lies on white, as paper is', () => {
    const clear = new PNG({ width: 2, height: 1 });
    clear.data.set([10, 20, 30, 0, 10, 20, 30, 255]);
    const read = readPicture(new Uint8Array(PNG.sync.write(clear, { colorType: 6 })))!;
    const back = PNG.sync.read(Buffer.from(read.bytes));
    expect([...back.data]).toEqual([255, 255, 255, 255, 10, 20, 30, 255]);
  });

  test('cut off anywhere is refused', () => {
    const whole = png(12, 9, { colorType: 6 });
    const plain = samplePicture(12, 9);
    for (let length = 0; length < whole.length; length += 3)
      expect(readPicture(whole.slice(0, length))).toBeNull();
    for (let length = 0; length < plain.length; length += 3)
      expect(readPicture(plain.slice(0, length))).toBeNull();
  });

  test('with a header that promises too much is refused', () => {
    const bytes = samplePicture(12, 9);
    const view = new DataView(bytes.buffer);
    view.setUint32(16, 0x7fffffff);
    expect(readPicture(bytes)).toBeNull();
    view.setUint32(16, 12);
    expect(readPicture(bytes)).toMatchObject({ width: 12, height: 9 });
    // A chunk that claims to be longer than the file, or negative.
    view.setUint32(33, 0xfffffff0);
    expect(readPicture(bytes)).toBeNull();
  });
});

describe('JPEG', () => {
  let jpeg: Uint8Array;
  beforeAll(async () => {
    const pdf = await writePdf(sample(), { paper: 'a4', edition: 'standard' }, resources);
    jpeg = new Uint8Array(outsideBytes('pdftoppm', ['-jpeg', '-r', '24', '-singlefile', 'FILE'], pdf));
  });

  /** The same with a note of how the camera was held (Exif tag 0x0112). */
  const turned = (orientation: number): Uint8Array => {
    const head = [0xff, 0xe1, 0, 34, ...Buffer.from('Exif\0\0'), ...Buffer.from('II*\0'), 8, 0, 0, 0];
    const entry = [1, 0, 0x12, 0x01, 3, 0, 1, 0, 0, 0, orientation, 0, 0, 0, 0, 0, 0, 0];
    const exif = Buffer.from([...head, ...entry]);
    return new Uint8Array(Buffer.concat([jpeg.subarray(0, 2), exif, jpeg.subarray(2)]));
  };

  test('is read and placed as it is', async () => {
    const read = readPicture(jpeg)!;
    expect(read.width / read.height).toBeCloseTo(595.28 / 841.89, 1);
    const pdf = await print(jpeg);
    expect(outside('qpdf', ['--check', 'FILE'], pdf)).toContain('No syntax');
    expect(images(pdf).map((one) => one['/Filter'])).toEqual(['/DCTDecode', '/DCTDecode']);
  });

  test('that a camera turned stands upright', async () => {
    const [upright, sideways] = [readPicture(jpeg)!, readPicture(turned(6))!];
    expect([sideways.width, sideways.height]).toEqual([upright.height, upright.width]);
    expect(outside('qpdf', ['--check', 'FILE'], await print(turned(6)))).toContain('No syntax');
  });

  test('of a kind that PDF cannot hold is refused', () => {
    const lossless = jpeg.slice();
    for (let i = 0; i + 1 < lossless.length; i++) {
      if (lossless[i] === 0xff && (lossless[i + 1] === 0xc0 || lossless[i + 1] === 0xc2))
        lossless[i + 1] = 0xc3;
    }
    expect(readPicture(lossless)).toBeNull();
    expect(readPicture(jpeg.slice(0, 40))).toBeNull();
  });

  test('damaged anywhere in its head never throws', () => {
    fc.assert(
      fc.property(fc.nat(600), fc.nat(255), (at, byte) => {
        const damaged = jpeg.slice();
        damaged[at % damaged.length] = byte;
        readPicture(damaged);
      }),
    );
  });
});

test('anything else is no picture', () => {
  fc.assert(
    fc.property(
      fc.uint8Array({ maxLength: 400 }),
      fc.constantFrom([], [0xff, 0xd8], [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
      (bytes, start) => {
        expect(readPicture(new Uint8Array([...start, ...bytes]))).toBeNull();
      },
    ),
  );
});
