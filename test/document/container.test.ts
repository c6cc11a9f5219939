import fc from 'fast-check';
import { strFromU8, strToU8, unzipSync, Zip, ZipDeflate, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { compose } from '../../core/document/compose.ts';
import { readContainer, writeContainer } from '../../core/document/container.ts';
import { FILE_LIMITS } from '../../core/document/limits.ts';
import { VERSION } from '../../core/document/migrations.ts';
import { project } from '../../core/document/project.ts';
import type { RefusalCode } from '../../core/document/refusals.ts';
import {
  blank,
  cover,
  covered,
  DIRECTORY,
  END,
  fileOf,
  fileWith,
  goodFile,
  goodTree,
  LOCAL,
  media,
  patched,
  record,
  renamed,
  taken,
} from './containers.ts';
import { anyPattern } from './patterns.ts';
import { jpeg, png } from './pictures.ts';

const none = new Map();

/** The code a file is refused with, or "read". */
const verdict = (bytes: Uint8Array): RefusalCode | 'read' => {
  const result = readContainer(bytes);
  return result.ok ? 'read' : result.error.code;
};

describe('a file written and read', () => {
  test('holds the same pattern, whatever the pattern', () => {
    fc.assert(
      fc.property(anyPattern, (pattern) => {
        const result = readContainer(writeContainer(compose(pattern), none));
        expect(result.ok ? project(result.document) : result.error).toEqual(pattern);
      }),
      { numRuns: 100 },
    );
  });

  test('holds the same pictures, byte for byte', () => {
    const photo = taken(jpeg(640, 480));
    const shown = { id: photo.id, alt: 'Detail of the mesh', caption: 'Mesh' };
    const pattern = {
      ...covered,
      pieces: [{ ...blank.pieces[0]!, blocks: [{ type: 'photo' as const, id: 'photo-1', media: shown }] }],
    };
    const result = readContainer(
      writeContainer(
        compose(pattern),
        new Map([
          [cover.id, cover],
          [photo.id, photo],
        ]),
      ),
    );
    expect(result).toMatchObject({ ok: true, migratedFrom: null });
    if (!result.ok) return;
    expect([...result.media.keys()].sort()).toEqual([cover.id, photo.id].sort());
    expect(result.media.get(photo.id)).toEqual(photo);
    expect(result.media.get(cover.id)).toEqual(cover);
  });

  test('holds no picture that is not shown, and opens without one that is missing', () => {
    const unseen = writeContainer(compose(blank), media);
    expect(Object.keys(unzipSync(unseen))).toEqual(['pattern.json']);
    const missing = readContainer(writeContainer(compose(covered), none));
    expect(missing.ok && missing.media.size).toBe(0);
  });

  test('is the same bytes for equal documents, in any time zone, whatever the order of keys', () => {
    const tree = goodTree();
    tree.content[1].content[1].content[2].attrs.rule = { formula: 'bust + ease', kind: 'formula' };
    const again = readContainer(fileOf(tree));
    expect(again.ok && writeContainer(again.document, media)).toEqual(goodFile);
    const zone = process.env.TZ;
    for (const other of ['Pacific/Kiritimati', 'America/St_Johns', 'UTC']) {
      process.env.TZ = other;
      expect(writeContainer(compose(covered), media)).toEqual(goodFile);
    }
    if (zone === undefined) delete process.env.TZ;
    else process.env.TZ = zone;
  });

  test('is a zip that another reader opens, with names in order and the version inside', () => {
    const entries = unzipSync(goodFile);
    expect(Object.keys(entries)).toEqual([`media/${cover.id}.png`, 'pattern.json']);
    const file = JSON.parse(strFromU8(entries['pattern.json']!));
    expect(Object.keys(file)).toEqual(['format', 'version', 'document']);
    expect([file.format, file.version]).toEqual(['turnchain', VERSION]);
    expect(entries[`media/${cover.id}.png`]).toEqual(cover.bytes);
  });

  test('loses characters that are not text, and nothing else', () => {
    const about = { ...blank.about, title: 'Harbour\u0000 vest\uD800', designer: 'A\u0007B' };
    const notes = [
      { text: 'One\r\n\ttwo.', figures: [] },
      { text: '\u0007', figures: [] },
    ];
    const result = readContainer(writeContainer(compose({ ...blank, about, notes }), none));
    expect(result.ok && project(result.document)).toEqual({
      ...blank,
      about: { ...blank.about, title: 'Harbour vest', designer: 'AB' },
      notes: [
        { text: 'One two.', figures: [] },
        { text: '', figures: [] },
      ],
    });
  });
});

describe('containers that other programs make', () => {
  const text = strFromU8(unzipSync(goodFile)['pattern.json']!);

  test('read when parts were packed as a stream, with their sizes after them', () => {
    const chunks: Uint8Array[] = [];
    const zip = new Zip((_, chunk) => chunks.push(chunk));
    const part = new ZipDeflate('pattern.json');
    zip.add(part);
    part.push(strToU8(text), true);
    zip.end();
    const bytes = new Uint8Array(Buffer.concat(chunks));
    expect(bytes[6]! & 8).toBe(8);
    expect(verdict(bytes)).toBe('read');
  });

  test('read when a system has put its own files beside, which do not outlive a save', () => {
    const result = readContainer(
      fileWith(text, {
        '__MACOSX/._pattern.json': strToU8('x'),
        '.DS_Store': strToU8('x'),
        'media/': new Uint8Array(),
        'media/.hidden': strToU8('x'),
        'notes/read me.txt': strToU8('x'),
      }),
    );
    expect(result.ok).toBe(true);
    expect(result.ok && Object.keys(unzipSync(writeContainer(result.document, result.media)))).toEqual([
      'pattern.json',
    ]);
  });

  test('read with a comment, and stored instead of packed', () => {
    const stored = zipSync({ 'pattern.json': strToU8(text) }, { level: 0 });
    expect(verdict(stored)).toBe('read');
    const end = record(stored, END);
    const commented = new Uint8Array([...patched(stored, end + 20, [2, 0]), 0x68, 0x69]);
    expect(verdict(commented)).toBe('read');
  });
});

describe('files that are refused', () => {
  const good = strFromU8(unzipSync(goodFile)['pattern.json']!);
  const two = zipSync({ 'pattern.json': strToU8(good), 'pattern.jsoX': strToU8('{}') }, { level: 0 });
  const bomb = zipSync({ 'pattern.json': new Uint8Array(60_000_000) }, { level: 9 });
  const sizeAt = record(bomb, DIRECTORY) + 24;
  const directory = record(goodFile, DIRECTORY);
  const end = record(goodFile, END);
  const nested = (depth: number) => '['.repeat(depth) + ']'.repeat(depth);
  const wrapped = (value: string) => `{"format":"turnchain","version":1,"document":${value}}`;

  const cases: readonly (readonly [RefusalCode, string, Uint8Array])[] = [
    ['empty-file', 'nothing', new Uint8Array()],
    ['not-a-container', 'plain text', strToU8('Row 1: sc in each ch across.')],
    ['not-a-container', 'three bytes', strToU8('PK\u0003')],
    ['not-a-container', 'a picture', png(1)],
    ['not-a-container', 'a program before the zip', new Uint8Array([0x4d, 0x5a, ...goodFile])],
    ['cut-short', 'half of it', goodFile.slice(0, goodFile.length / 2)],
    ['cut-short', 'the last byte gone', goodFile.slice(0, -1)],
    ['cut-short', 'ten bytes', goodFile.slice(0, 10)],
    ['cut-short', 'something appended', new Uint8Array([...goodFile, 0])],
    ['no-pattern', 'a zip of nothing', zipSync({})],
    ['no-pattern', 'a zip of something else', zipSync({ 'word/document.xml': strToU8('<x/>') })],
    ['damaged', 'a wrong checksum', patched(goodFile, directory + 16, [1, 2, 3, 4])],
    [
      'damaged',
      'packed bytes changed',
      patched(goodFile, record(goodFile, LOCAL, 1) + 60, [0xff, 0xff, 0xff]),
    ],
    ['damaged', 'an unknown way of packing', patched(goodFile, directory + 10, [99])],
    ['damaged', 'a list that points outside', patched(goodFile, end + 16, [0xff, 0xff, 0xff, 0x7f])],
    ['damaged', 'a list longer than it says', patched(goodFile, end + 8, [1, 0, 1, 0])],
    ['damaged', 'a list shorter than it says', patched(goodFile, end + 8, [3, 0, 3, 0])],
    ['damaged', 'several disks', patched(goodFile, end + 4, [1])],
    ['damaged', 'a part outside the file', patched(goodFile, directory + 42, [0xff, 0xff, 0xff, 0x7f])],
    ['damaged', 'two parts on the same bytes', patched(two, record(two, DIRECTORY, 1) + 42, [0, 0, 0, 0])],
    ['damaged', 'a name that is another in the list', patched(two, record(two, LOCAL, 1) + 30, [0x71])],
    ['damaged', 'a name that is not UTF-8', renamed(two, 'pattern.jsoX', 'pattern.js\u00ff\u00fe')],
    ['damaged', 'a stored part of two sizes', patched(two, record(two, DIRECTORY) + 24, [1, 0])],
    ['encrypted', 'a password', patched(goodFile, directory + 8, [1])],
    ['unsafe-name', 'a way out of the folder', zipSync({ '../pattern.json': strToU8(good) })],
    ['unsafe-name', 'a way out from within', fileWith(good, { 'media/../../x.png': png(1) })],
    ['unsafe-name', 'an absolute name', fileWith(good, { '/etc/passwd': strToU8('x') })],
    ['unsafe-name', 'a drive', fileWith(good, { 'C:x': strToU8('x') })],
    ['unsafe-name', 'backslashes', fileWith(good, { '..\\x': strToU8('x') })],
    ['unsafe-name', 'a zero in the name', fileWith(good, { 'x\u0000.png': strToU8('x') })],
    ['unsafe-name', 'an empty name', fileWith(good, { '': strToU8('x') })],
    ['unsafe-name', 'empty folders', fileWith(good, { 'a//b': strToU8('x') })],
    ['unsafe-name', 'a name without end', fileWith(good, { ['x'.repeat(300)]: strToU8('x') })],
    ['repeated-name', 'two patterns', renamed(two, 'pattern.jsoX', 'pattern.json')],
    ['repeated-name', 'two patterns but for capitals', renamed(two, 'pattern.jsoX', 'Pattern.JSON')],
    [
      'repeated-name',
      'one picture in two kinds',
      fileWith(good, { 'media/a.png': png(1), 'media/a.jpg': jpeg(2, 2) }),
    ],
    ['strange-picture', 'a program', fileWith(good, { 'media/run.exe': strToU8('MZ') })],
    ['strange-picture', 'a page', fileWith(good, { 'media/a.svg': strToU8('<svg/>') })],
    ['strange-picture', 'a folder', fileWith(good, { 'media/a/b.png': png(1) })],
    ['strange-picture', 'a program named as a picture', fileWith(good, { 'media/a.png': strToU8('MZ') })],
    ['strange-picture', 'a JPEG named as a PNG', fileWith(good, { 'media/a.png': jpeg(2, 2) })],
    [
      'strange-picture',
      'a picture of a million dots a side',
      fileWith(good, { 'media/a.png': png(1, 2, 2, [1e6, 1e6]) }),
    ],
    ['too-large', 'a bomb that says so', bomb],
    ['too-large', 'a bomb that claims 4 GB', patched(bomb, sizeAt, [0xff, 0xff, 0xff, 0xff])],
    ['damaged', 'a bomb that claims to be small', patched(bomb, sizeAt, [0x10, 0, 0, 0])],
    [
      'damaged',
      'a claim no packing can reach',
      patched(goodFile, record(goodFile, DIRECTORY, 1) + 24, [0, 0, 0, 2]),
    ],
    [
      'too-many-parts',
      'more parts than a pattern has',
      zipSync(Object.fromEntries(Array.from({ length: 2_001 }, (_, at) => [`x${at}`, new Uint8Array()]))),
    ],
    ['unreadable-text', 'no JSON', fileWith('Row 1')],
    ['unreadable-text', 'an empty pattern', fileWith('')],
    ['unreadable-text', 'NaN', fileWith(wrapped('NaN'))],
    [
      'unreadable-text',
      'bytes that are not UTF-8',
      zipSync({ 'pattern.json': new Uint8Array([0x22, 0xff, 0x22]) }),
    ],
    ['nested-too-deep', 'lists in lists', fileWith(wrapped(nested(100_000)))],
    ['nested-too-deep', 'brackets never closed', fileWith('['.repeat(1_000_000))],
    [
      'forbidden-key',
      'a key of the machinery',
      fileWith(good.replace('"document":{', '"document":{"__proto__":{"x":1},')),
    ],
    ['forbidden-key', 'another, deep inside', fileWith(wrapped('{"a":[{"constructor":1}]}'))],
    ['wrong-format', 'a list', fileWith('[]')],
    ['wrong-format', 'nothing', fileWith('null')],
    ['wrong-format', 'another format', fileWith('{"format":"other","version":1}')],
    ['bad-version', 'no version', fileWith('{"format":"turnchain"}')],
    ['bad-version', 'version 0', fileOf(goodTree(), 0)],
    ['bad-version', 'version 1.5', fileOf(goodTree(), 1.5)],
    ['bad-version', 'a version in words', fileOf(goodTree(), '1')],
    ['bad-version', 'a version beyond numbers', fileWith('{"format":"turnchain","version":1e999}')],
    ['newer-version', 'the next version', fileOf(goodTree(), VERSION + 1)],
    ['newer-version', 'the next version with a tree nobody knows', fileOf({ type: 'garment' }, VERSION + 1)],
    ['bad-structure', 'no document', fileWith('{"format":"turnchain","version":1}')],
    [
      'bad-structure',
      'something beside the document',
      fileWith(good.replace('{"format"', '{"extra":1,"format"')),
    ],
  ];

  test.each(cases)('%s: %s', (code, _, bytes) => {
    const result = readContainer(bytes);
    expect(result.ok ? 'read' : result.error.code).toBe(code);
    if (result.ok) return;
    expect(result.error.message).toMatch(/^[A-Z].*\.$/);
    expect(result.error.message).not.toMatch(/undefined|null|CRC|\p{Cc}/u);
    expect(result.error.message.length).toBeLessThan(260);
  });

  test('a file larger than any pattern is refused by its size alone', () => {
    const vast = new Uint8Array(FILE_LIMITS.fileBytes + 1);
    vast.set(goodFile);
    expect(verdict(vast)).toBe('too-large');
  });

  test('reading changes neither the bytes nor what all objects share', () => {
    const bytes = fileWith(wrapped('{"__proto__":{"polluted":true}}'));
    const copy = bytes.slice();
    readContainer(bytes);
    expect(bytes).toEqual(copy);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });
});
