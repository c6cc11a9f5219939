import fc from 'fast-check';
import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { compose } from '../../core/document/compose.ts';
import { readContainer, writeContainer } from '../../core/document/container.ts';
import { REFUSAL_CODES } from '../../core/document/refusals.ts';
import { schema } from '../../core/document/schema.ts';
import { covered, fileWith, goodFile, media } from './containers.ts';

const good = compose(covered);
const goodText = strFromU8(unzipSync(goodFile)['pattern.json']!);

/** Reads a spoilt file: a document of the schema, or one refusal with a code and a sentence; never a throw. */
function readSpoilt(bytes: Uint8Array) {
  const result = readContainer(bytes);
  if (result.ok) return result;
  expect(REFUSAL_CODES).toContain(result.error.code);
  expect(result.error.message).toMatch(/^[A-Z].*\.$/);
  return result;
}

/** What is spoilt in the container itself may be harmless, but never changes what is read. */
function sameOrRefused(bytes: Uint8Array): void {
  const result = readSpoilt(bytes);
  if (!result.ok) return;
  expect(result.document.eq(good)).toBe(true);
  for (const [id, picture] of result.media) expect(picture).toEqual(media.get(id));
}

describe('spoilt files', () => {
  test('every single bit turned over', () => {
    for (let bit = 0; bit < goodFile.length * 8; bit++) {
      const bytes = goodFile.slice();
      bytes[bit >> 3] = bytes[bit >> 3]! ^ (1 << (bit & 7));
      sameOrRefused(bytes);
    }
  });

  test('every length cut', () => {
    for (let length = 0; length < goodFile.length; length++) {
      expect(readSpoilt(goodFile.subarray(0, length)).ok).toBe(false);
    }
  });

  test('bytes overwritten, moved and put in', () => {
    const spoil = fc.record({
      at: fc.nat({ max: goodFile.length }),
      drop: fc.nat({ max: 40 }),
      put: fc.uint8Array({ maxLength: 40 }),
    });
    fc.assert(
      fc.property(fc.array(spoil, { minLength: 1, maxLength: 4 }), (spoils) => {
        let bytes = goodFile;
        for (const { at, drop, put } of spoils) {
          bytes = new Uint8Array([...bytes.subarray(0, at), ...put, ...bytes.subarray(at + drop)]);
        }
        sameOrRefused(bytes);
      }),
      { numRuns: 3_000 },
    );
  });

  test('bytes that were never a container', () => {
    const start = fc.constantFrom([], [0x50, 0x4b, 3, 4], [0x50, 0x4b, 5, 6]);
    fc.assert(
      fc.property(start, fc.uint8Array({ maxLength: 400 }), (first, rest) => {
        expect(readSpoilt(new Uint8Array([...first, ...rest])).ok).toBe(false);
      }),
      { numRuns: 3_000 },
    );
  });

  test('the text of the pattern changed here and there', () => {
    const spoil = fc.record({
      at: fc.nat({ max: goodText.length }),
      drop: fc.nat({ max: 12 }),
      put: fc.oneof(
        fc.constantFrom('"', '{', '}', '[', ']', ',', '9', '1e999', 'null', '-', '\\'),
        fc.string({ maxLength: 4 }),
      ),
    });
    fc.assert(
      fc.property(fc.array(spoil, { minLength: 1, maxLength: 3 }), (spoils) => {
        let text = goodText;
        for (const { at, drop, put } of spoils) text = text.slice(0, at) + put + text.slice(at + drop);
        openOrRefused(fileWith(text));
      }),
      { numRuns: 2_000 },
    );
  });

  test('values of the pattern put in the places of others', () => {
    const values = fc.oneof(
      fc.jsonValue(),
      fc.constantFrom(
        '',
        'row',
        'text',
        'doc',
        '__proto__',
        1e308,
        -0,
        2 ** 53,
        '\u0000',
        '\uFFFC',
        {},
        [],
        [[]],
      ),
    );
    fc.assert(
      fc.property(fc.nat(), values, (pick, value) => {
        const file = JSON.parse(goodText);
        const places = placesIn(file);
        const { holder, key } = places[pick % places.length]!;
        holder[key] = value;
        openOrRefused(fileWith(JSON.stringify(file)));
      }),
      { numRuns: 2_000 },
    );
  });
});

/** A pattern that reads is a document through and through: it checks, and it can be saved and read again. */
function openOrRefused(bytes: Uint8Array): void {
  const result = readSpoilt(bytes);
  if (!result.ok) return;
  result.document.check();
  expect(result.document.type.schema).toBe(schema);
  const again = readContainer(writeContainer(result.document, result.media));
  expect(again.ok && again.document.eq(result.document)).toBe(true);
}

interface PlaceInJson {
  readonly holder: Record<string, unknown>;
  readonly key: string;
}

function placesIn(value: unknown): readonly PlaceInJson[] {
  if (typeof value !== 'object' || value === null) return [];
  const holder = value as Record<string, unknown>;
  return Object.keys(holder).flatMap((key) => [{ holder, key }, ...placesIn(holder[key])]);
}
