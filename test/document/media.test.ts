import { createHash } from 'node:crypto';
import { crc32 as nodeCrc32 } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compose } from '../../core/document/compose.ts';
import { sha256 } from '../../core/document/digest.ts';
import { FILE_LIMITS } from '../../core/document/limits.ts';
import { lookAt, shownPictures, takePicture } from '../../core/document/media.ts';
import { crc32 } from '../../core/document/zip.ts';
import { blank, cover, covered } from './containers.ts';
import { jpeg, png, turned } from './pictures.ts';

const ascii = (text: string) => new TextEncoder().encode(text);

describe('digests', () => {
  // NIST, examples for FIPS 180-4: one block, two blocks; the empty message from memory.
  test.each([
    ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    [
      'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    ],
  ])('SHA-256 of %j', (text, digest) => {
    expect(sha256(ascii(text))).toBe(digest);
  });

  test('SHA-256 and CRC-32 agree with the platform for bytes of every length around a block', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        expect(sha256(bytes)).toBe(createHash('sha256').update(bytes).digest('hex'));
        expect(crc32(bytes)).toBe(nodeCrc32(bytes));
      }),
      { numRuns: 300 },
    );
  });

  // The check value that catalogues of CRCs list for CRC-32 (from memory).
  test('CRC-32 of the digits one to nine', () => {
    expect(crc32(ascii('123456789'))).toBe(0xcbf43926);
  });
});

describe('pictures', () => {
  test.each([
    ['a PNG', png(1, 3, 5), { kind: 'png', width: 3, height: 5 }],
    ['a JPEG', jpeg(640, 480), { kind: 'jpeg', width: 640, height: 480 }],
    ['a progressive JPEG', jpeg(480, 640, 0xc2), { kind: 'jpeg', width: 480, height: 640 }],
    ['a JPEG held on its side', turned(jpeg(640, 480), 6), { kind: 'jpeg', width: 480, height: 640 }],
    ['a JPEG held upside down', turned(jpeg(640, 480), 3), { kind: 'jpeg', width: 640, height: 480 }],
    ['the widest PNG', png(1, 2, 2, [20_000, 5_000]), { kind: 'png', width: 20_000, height: 5_000 }],
  ])('%s is known by its first bytes', (_, bytes, look) => {
    expect(lookAt(bytes)).toEqual(look);
  });

  test.each([
    ['picture-unknown', 'nothing', new Uint8Array()],
    ['picture-unknown', 'text', ascii('GIF89a')],
    [
      'picture-unknown',
      'a PNG with its line ends translated',
      Uint8Array.from(png(1), (b, at) => (at === 4 ? 0x0a : b)),
    ],
    ['picture-broken', 'a PNG cut short', png(1).slice(0, 20)],
    ['picture-broken', 'a PNG of no width', png(1, 2, 2, [0, 2])],
    ['picture-broken', 'a JPEG cut short', jpeg(9, 9).slice(0, 16)],
    ['picture-broken', 'a JPEG of no height', jpeg(9, 0)],
    [
      'picture-broken',
      'a JPEG without a frame',
      Uint8Array.from([...jpeg(9, 9).slice(0, 8), 0xff, 0xd9, ...jpeg(9, 9)]),
    ],
    [
      'picture-broken',
      'a JPEG with a segment that is none',
      Uint8Array.from([0xff, 0xd8, 0xff, 0xe0, 0, 4, 0, 0, 1, 2, 3, 4, 5, 6, 7, 8, 9]),
    ],
    ['picture-too-wide', 'too wide', png(1, 2, 2, [20_001, 1])],
    ['picture-too-wide', 'too many dots', png(1, 2, 2, [20_000, 5_001])],
  ])('%s: %s', (code, _, bytes) => {
    const taken = takePicture(bytes);
    expect(taken.ok ? 'taken' : taken.error.code).toBe(code);
  });

  test('a picture beyond the size is refused before it is hashed', () => {
    const heavy = new Uint8Array(FILE_LIMITS.pictureBytes + 1);
    heavy.set(png(1));
    const taken = takePicture(heavy);
    expect(taken.ok ? '' : taken.error.message).toBe(
      'The picture takes more than 25 MB, the most one picture may have. Save it smaller and add it again.',
    );
  });

  test('looking at any bytes never throws', () => {
    const start = fc.constantFrom(
      [],
      [...png(1).slice(0, 16)],
      [0xff, 0xd8, 0xff],
      [...jpeg(5, 5).slice(0, 12)],
    );
    fc.assert(
      fc.property(start, fc.uint8Array({ maxLength: 60 }), (first, rest) => {
        lookAt(Uint8Array.from([...first, ...rest]));
      }),
      { numRuns: 2_000 },
    );
  });

  test('the same bytes get the same id, other bytes another', () => {
    const id = (bytes: Uint8Array) => {
      const taken = takePicture(bytes);
      return taken.ok ? taken.picture.id : '';
    };
    expect(id(png(1))).toBe(id(png(1)));
    expect(id(png(1))).toMatch(/^[0-9a-f]{32}$/);
    expect(id(png(1))).not.toBe(id(png(2)));
  });

  test('a document tells which pictures it shows, each once', () => {
    const media = { id: 'detail', alt: 'Detail', caption: null };
    const blocks = ['a', 'b'].map((id) => ({ type: 'photo' as const, id, media }));
    const pattern = { ...covered, pieces: [{ ...blank.pieces[0]!, blocks }] };
    expect([...shownPictures(compose(pattern))]).toEqual([cover.id, 'detail']);
    expect(shownPictures(compose(blank)).size).toBe(0);
  });
});
