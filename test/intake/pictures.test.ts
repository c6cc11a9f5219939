/**
 * Pictures of a document come along: the first before the rows to the cover, those among the rows where they stood,
 * with what the document says they show. What cannot be taken over is told.
 */
import fs from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readDocx } from '../../app/services/docx.ts';
import { compose } from '../../core/document/compose.ts';
import { shownPictures } from '../../core/document/media.ts';
import type { Block } from '../../core/document/pattern.ts';
import { bring } from '../../core/intake/bring.ts';
import { textOfDocx } from '../../core/intake/docx.ts';
import { picturesApart } from '../../core/intake/pictures.ts';
import { png } from '../document/pictures.ts';
import { docx, heading, numbered, p, picture, pictureParts, table } from './documents.ts';

/** What a block is, in short: a picture by its id and what it shows, else how its words begin. */
const short = (block: Block): string =>
  block.type === 'photo'
    ? `[${block.media.id}: ${block.media.alt}]`
    : block.type === 'row' || block.type === 'prose'
      ? block.text.text.slice(0, 12)
      : block.type;

/** Brings a document in; its pictures are called by their numbers, from 1, and `lost` ones cannot be taken over. */
async function brought(bytes: Uint8Array, lost: readonly number[] = []) {
  const read = await textOfDocx(bytes, readDocx);
  if (!read.ok) throw new Error(read.message);
  const result = bring(read.text, {
    terms: 'us',
    title: 'File',
    date: '2026-01-01',
    pictures: read.pictures.map(({ alt }, i) => ({ id: lost.includes(i + 1) ? null : `p${i + 1}`, alt })),
  });
  if (!result.ok) throw new Error(result.message);
  const { pattern, doubts, rows } = result.brought;
  return {
    pattern,
    rows,
    read,
    cover: pattern.about.cover,
    pieces: pattern.pieces.map(({ name, blocks }) => [name, ...blocks.map(short)]),
    doubts: doubts.map(({ why }) => why).filter((why) => /picture/iu.test(why)),
  };
}

const FOUR = pictureParts([1, 2, 3, 4].map((grey) => ['png', png(grey)] as const));
const PIECE = [p('Ch 11.'), p('Row 1: Sc in 2nd ch from hook and in each ch across, turn. (10 sc)')];
const ROW = p('Row 2: Ch 1, sc in each st across, turn. (10 sc)');

describe('pictures of a document', () => {
  test.each<[string, readonly string[], string | null, readonly (readonly string[])[]]>([
    [
      'before and between the rows',
      [heading('Reed Strap'), picture(1, 'The strap'), heading('Strap'), ...PIECE, picture(2, 'Row 1'), ROW],
      'p1: The strap',
      [['Strap', 'Ch 11.', 'Sc in 2nd ch', '[p2: Row 1]', 'Ch 1, sc in ']],
    ],
    [
      'right under the title of a piece, and behind the last row',
      [heading('Reed Strap'), heading('Strap'), picture(1, 'A'), ...PIECE, ROW, picture(2, 'B')],
      null,
      [['Strap', '[p1: A]', 'Ch 11.', 'Sc in 2nd ch', 'Ch 1, sc in ', '[p2: B]']],
    ],
    [
      'two in a row, of a list with numbers',
      [
        heading('Reed Strap'),
        heading('Strap'),
        p('Ch 11.'),
        numbered('Sc in 2nd ch from hook and in each ch across, turn. (10 sc)'),
        picture(1, 'A') + picture(2, 'B'),
        numbered('Ch 1, sc in each st across, turn. (10 sc)'),
      ],
      null,
      [['Strap', 'Ch 11.', 'Sc in 2nd ch', '[p1: A]', '[p2: B]', 'Ch 1, sc in ']],
    ],
    [
      'at the end of one piece, before the next',
      [
        heading('Reed Set'),
        ...[heading('Strap'), ...PIECE, picture(1, 'The strap')],
        ...[heading('Belt'), ...PIECE, picture(2, 'The belt')],
      ],
      null,
      [
        ['Strap', 'Ch 11.', 'Sc in 2nd ch', '[p1: The strap]'],
        ['Belt', 'Ch 11.', 'Sc in 2nd ch', '[p2: The belt]'],
      ],
    ],
    [
      'outside the rows: the first on the cover, the others before and behind them',
      [
        picture(1, 'The strap'),
        heading('Reed Strap'),
        heading('Materials'),
        p('Cotton, 20 g; 4 mm hook'),
        picture(2, 'The yarn'),
        heading('Strap'),
        ...PIECE,
        heading('Finishing'),
        p('Weave in the ends.'),
        picture(3, 'The end'),
      ],
      'p1: The strap',
      [['Strap', '[p2: The yarn]', 'Ch 11.', 'Sc in 2nd ch', '[p3: The end]']],
    ],
    [
      'in a table',
      [
        heading('Reed Coaster'),
        heading('Coaster'),
        table([
          ['Rnd', 'Instruction', 'Stitches'],
          ['1', '6 sc in magic ring', '6'],
        ]).replace('</w:tc>', `${picture(1, 'Round 1')}</w:tc>`),
      ],
      null,
      [['Coaster', '6 sc in magi', '[p1: Round 1]']],
    ],
  ])('%s', async (_, body, cover, pieces) => {
    const found = await brought(docx(body.join(''), FOUR));
    expect(found.cover === null ? null : `${found.cover.id}: ${found.cover.alt}`).toBe(cover);
    expect(found.pieces).toEqual(pieces);
    expect(found.rows.followed).toBe(found.rows.written);
  });

  test('names of files are not what they show', async () => {
    const body = ['IMG_2031.JPG', 'image3.png', 'Picture 7', 'A picot edge'].map((alt, i) =>
      picture(i + 1, alt),
    );
    const { pieces } = await brought(docx([heading('Strap'), ...PIECE, ...body].join(''), FOUR));
    expect(pieces[0]!.slice(-4)).toEqual(['[p1: ]', '[p2: ]', '[p3: ]', '[p4: A picot edge]']);
  });

  test('that cannot be taken over are told, with what they show', async () => {
    const parts = pictureParts([
      ['emf', Uint8Array.of(1)],
      ['png', null],
    ]);
    const body = [heading('Strap'), ...PIECE, picture(1, 'A chart'), picture(2, 'image2.png')];
    const { pieces, doubts, read } = await brought(docx(body.join(''), parts), [1, 2]);
    expect(read.pictures.map(({ bytes }) => bytes?.length ?? null)).toEqual([1, null]);
    expect(pieces).toEqual([['Strap', 'Ch 11.', 'Sc in 2nd ch']]);
    expect(doubts).toEqual([
      'A picture (“A chart”) could not be taken over: it is not there, or of a kind that is not read. Add it as a photograph.',
      'A picture could not be taken over: it is not there, or of a kind that is not read. Add it as a photograph.',
    ]);
  });

  test('of a document that a word processor wrote (LibreOffice 7.4)', async () => {
    const bytes = fs.readFileSync(join(import.meta.dirname, 'files/cardigan.docx'));
    const { cover, pieces, rows, doubts, pattern } = await brought(new Uint8Array(bytes));
    expect(cover).toEqual({ id: 'p1', alt: 'The cardigan on a hanger, seen from the front', caption: null });
    expect(pieces).toEqual([
      [
        'Back',
        'Ch 74 (82, 9',
        'Dc in 4th ch',
        'Ch 3 (counts',
        '[p2: Two rows of double crochet, close up]',
        'repeat',
        'Fasten off.',
      ],
      ['Front', 'Ch 36 (40, 4', 'Dc in 4th ch', 'Ch 3, dc in ', '[p3: ]'],
    ]);
    expect(rows).toEqual({ written: 7, followed: 7 });
    expect(doubts).toHaveLength(1);
    expect([...shownPictures(compose(pattern))].sort()).toEqual(['p1', 'p2', 'p3']);
  });
});

test('wherever pictures stand, each comes out once, and the words are those without them', async () => {
  const lines = [
    heading('Reed Strap'),
    p('A strap.'),
    heading('Strap'),
    ...PIECE,
    ROW,
    heading('Finishing'),
    p('Block.'),
  ];
  const plain = await brought(docx(lines.join(''), FOUR));
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.integer({ min: 0, max: lines.length }), { minLength: 4, maxLength: 4 }),
      async (at) => {
        const body = lines.flatMap((line, i) => [
          ...at.flatMap((place, n) => (place === i ? [picture(n + 1, `Picture no. ${n}`)] : [])),
          line,
        ]);
        body.push(...at.flatMap((place, n) => (place === lines.length ? [picture(n + 1, `no. ${n}`)] : [])));
        const found = await brought(docx(body.join(''), FOUR));
        const shown = found.pattern.pieces.flatMap(({ blocks }) =>
          blocks.flatMap((block) => (block.type === 'photo' ? [block.media.id] : [])),
        );
        const all = found.cover === null ? shown : [found.cover.id, ...shown];
        expect([...all].sort()).toEqual(['p1', 'p2', 'p3', 'p4']);
        expect(found.pieces.map((blocks) => blocks.filter((words) => !words.startsWith('[p')))).toEqual(
          plain.pieces,
        );
        expect(found.pattern.finishing).toEqual(plain.pattern.finishing);
        expect(found.pattern.about.title).toBe('Reed Strap');
      },
    ),
    { numRuns: 60 },
  );
});

test('a text without pictures keeps its lines', () => {
  expect(picturesApart('a\n\nb')).toEqual({ words: 'a\n\nb', marks: [] });
});
