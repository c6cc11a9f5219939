/** A picture loses what was written into it besides, and nothing of what is seen. */
import fs from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { unzipSync } from 'fflate';
import { PNG } from 'pngjs';
import { describe, expect, test } from 'vitest';
import { barePicture } from '../../core/document/bare-picture.ts';
import { lookAt } from '../../core/document/media.ts';
import { DEVICE, withExif } from '../studio/exif.ts';
import { png, turned, withChunk } from './pictures.ts';

/** A whole JPEG with a scan, as a program outside the project wrote it. */
const photograph = unzipSync(fs.readFileSync(join(import.meta.dirname, '../intake/files/cardigan.docx')))[
  'word/media/image2.jpeg'
]!;
const words = (bytes: Uint8Array | null) => Buffer.from(bytes ?? []).toString('latin1');

describe('a JPEG', () => {
  test('without remarks stays the same, byte for byte', () => {
    expect(barePicture(photograph)).toEqual(photograph);
  });

  test('loses place and device, and stands as upright as before', () => {
    const told = new Uint8Array(withExif(Buffer.from(photograph)));
    const bare = barePicture(told)!;
    expect(words(told)).toContain(DEVICE);
    expect(words(bare)).not.toContain(DEVICE);
    expect(bare.length).toBeLessThan(photograph.length + 50);
    expect(lookAt(bare)).toEqual(lookAt(told));
    expect(lookAt(photograph)).not.toEqual(lookAt(told));
  });

  test.each([1, 2, 3, 4, 5, 6, 7, 8])(
    'held so that it is turned by orientation %i keeps that',
    (orientation) => {
      const told = turned(photograph, orientation);
      const bare = barePicture(told)!;
      expect(lookAt(bare)).toEqual(lookAt(told));
      // What was said once more of what was bare already stays.
      expect(barePicture(bare)).toEqual(bare);
      expect(bare.length - photograph.length).toBe(orientation === 1 ? 0 : 36);
    },
  );

  test('loses remarks, and a film behind its end', () => {
    const remark = [0xff, 0xfe, 0, 8, ...Buffer.from('secret', 'latin1')];
    const told = Uint8Array.from([
      ...photograph.subarray(0, 2),
      ...remark,
      ...photograph.subarray(2),
      ...Buffer.from('a film', 'latin1'),
    ]);
    expect(barePicture(told)).toEqual(photograph);
  });

  test('cut short is none', () => {
    for (const length of [3, 20, photograph.length - 2])
      expect(barePicture(photograph.subarray(0, length))).toBeNull();
  });
});

test.each(['tEXt', 'zTXt', 'iTXt', 'tIME', 'eXIf'])('a PNG loses its %s, and its pixels stay', (name) => {
  const plain = png(7, 3, 5);
  const told = withChunk(plain, name, 'secret');
  const bare = barePicture(told)!;
  expect(words(bare)).not.toContain('secret');
  expect(PNG.sync.read(Buffer.from(bare)).data).toEqual(PNG.sync.read(Buffer.from(plain)).data);
});

test('any bytes end, in a picture or in none', () => {
  fc.assert(
    fc.property(
      fc.constantFrom<readonly number[]>([0xff, 0xd8, 0xff], [0x89, 0x50, 0x4e, 0x47], []),
      fc.uint8Array({ maxLength: 80 }),
      (start, rest) => {
        const bare = barePicture(Uint8Array.from([...start, ...rest]));
        expect(bare === null || bare.length <= start.length + rest.length + 36).toBe(true);
      },
    ),
  );
});
