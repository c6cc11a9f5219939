/**
 * What counts as an erratum between two versions: edits are planted and must be told once, at their place, for the
 * sizes they concern; what leaves the printed instructions as they were must not be told.
 */

import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { examples } from '../../app/services/resources.ts';
import { readContainer } from '../../core/document/container.ts';
import type { Pattern } from '../../core/document/pattern.ts';
import { project } from '../../core/document/project.ts';
import { type Erratum, errataBetween } from '../../core/print/errata/errata.ts';
import { errataSheet } from '../../core/print/errata/sheet.ts';
import { study } from '../../core/study/index.ts';
import { piece, row, smallPattern, written } from '../study/builder.ts';

// Five sc from six chains; then one more in every row.
const base: Pattern = {
  ...smallPattern(),
  pieces: [
    piece('back', 'Back', [
      row('b0', 'Ch 6.', { form: 'foundation' }),
      row('b1', 'Sc in 2nd ch from hook and in each ch across, turn.'),
      row('b2', 'Ch 1, 2 sc in first st, sc in each st across, turn.'),
      row('b3', 'Ch 1, sc in each st across, turn.'),
    ]),
    piece('front', 'Front', [
      row('f0', 'Ch {panel stitches}.', { form: 'foundation' }),
      row('f1', 'Sc in 2nd ch from hook and in each ch across.'),
    ]),
  ],
};

const compared = (after: Pattern, before: Pattern = base, terms: 'us' | 'uk' = 'us') =>
  errataBetween(study(before), study(after), { terms }).errata;

/** An erratum in one line. */
const told = ({ part, kind, label, was, read, sizes }: Erratum) =>
  `${part} | ${kind} | ${label} | ${was ?? '–'} → ${read ?? '–'}${sizes === null ? '' : ` | ${sizes.join(', ')}`}`;

/** The pattern with the blocks of its first piece changed. */
const inBack = (
  edit: (blocks: Pattern['pieces'][number]['blocks']) => Pattern['pieces'][number]['blocks'],
): Pattern => ({
  ...base,
  pieces: base.pieces.map((own) => (own.id === 'back' ? { ...own, blocks: edit(own.blocks) } : own)),
});

test('two versions brought in apart, whose ids only count, are paired by their words', () => {
  const counted = (words: readonly string[]): Pattern => ({
    ...base,
    pieces: [
      piece(
        'back',
        'Back',
        words.map((text, i) => row(`b${i}`, text, i === 0 ? { form: 'foundation' } : {})),
      ),
    ],
  });
  const begin = ['Ch 6.', 'Sc in 2nd ch from hook and in each ch across, turn.'];
  const rest = [
    'Ch 1, 2 sc in first st, sc in each st across, turn.',
    'Ch 2 (counts as hdc), hdc in each st across, turn.',
    'Ch 1, sc2tog over first 2 sts, sc in each st across.',
  ];
  const before = counted([...begin, ...rest]);
  const after = counted([...begin, 'Ch 1, sc blo in each st across, turn.', ...rest]);
  expect(
    compared(after, before)
      .filter(({ part }) => part === 'Back')
      .map(told),
  ).toEqual([
    'Back | added | Row 2 (WS) | – → Ch 1, sc blo in each st across, turn. (5 sts)',
    'Back | renumbered | Row 3 (RS) to Row 5 (RS) | Row 2 (WS) to Row 4 (WS) → Row 3 (RS) to Row 5 (RS)',
  ]);
});

describe('a planted change is told at its place', () => {
  test('words of a row, with the count that follows, and every row that they reach', () => {
    const after = inBack((blocks) =>
      blocks.map((block) =>
        block.id === 'b1'
          ? row(
              'b1',
              'Hdc in 3rd ch from hook (the skipped ch do not count as a st) and in each ch across, turn.',
            )
          : block,
      ),
    );
    expect(compared(after).map(told)).toEqual([
      'Terms and abbreviations | added | hdc | – → half double crochet',
      'Back | changed | Row 1 (RS) | Sc in 2nd ch from hook and in each ch across, turn. (5 sts) → Hdc in 3rd ch from hook (the skipped ch do not count as a st) and in each ch across, turn. (4 sts)',
      'Back | changed | Row 2 (WS) | Ch 1, 2 sc in first st, sc in each st across, turn. (6 sts) → Ch 1, 2 sc in first st, sc in each st across, turn. (5 sts)',
      'Back | changed | Row 3 (RS) | Ch 1, sc in each st across, turn. (6 sts) → Ch 1, sc in each st across, turn. (5 sts)',
    ]);
  });

  test('a row that is put in, and the numbers of those behind it', () => {
    const after = inBack((blocks) => [
      ...blocks.slice(0, 2),
      row('new', 'Ch 1, sc in each st across, turn.'),
      ...blocks.slice(2),
    ]);
    expect(compared(after).map(told)).toEqual([
      'Back | added | Row 2 (WS) | – → Ch 1, sc in each st across, turn. (5 sts)',
      'Back | renumbered | Row 3 (RS) to Row 4 (WS) | Row 2 (WS) to Row 3 (RS) → Row 3 (RS) to Row 4 (WS)',
    ]);
  });

  test('a row that is taken out', () => {
    const after = inBack((blocks) => blocks.slice(0, 3));
    expect(compared(after).map(told)).toEqual([
      'Back | removed | Row 3 (RS) | Ch 1, sc in each st across, turn. (6 sts) → –',
    ]);
  });

  test('a measurement of one size, and only that size’s rows', () => {
    const after: Pattern = {
      ...base,
      lines: base.lines.map((line) =>
        line.id === 'w' && line.kind === 'typed' && 'each' in line.values
          ? { ...line, values: { each: { ...line.values.each, 's-l': { value: 63, unit: 'cm' } } } }
          : line,
      ),
    };
    // 63 cm at 16 stitches in 10 cm: 100.8, as a multiple of 3 and 1 more 100.
    expect(compared(after).map(told)).toEqual([
      'Front | changed | Foundation | Ch 73 (82, 91). → Ch 73 (82, 100). | L',
      'Front | changed | Row 1 (RS) | Sc in 2nd ch from hook and in each ch across. (72 (81, 90) sts) → Sc in 2nd ch from hook and in each ch across. (72 (81, 99) sts) | L',
    ]);
  });

  test.each([
    [
      'the largest',
      ['s-l'],
      'Sizes | removed | Size L | S, M, L → S, M. In every list of 3 numbers leave out the 3rd.',
    ],
    [
      'the smallest and the largest',
      ['s-s', 's-l'],
      'Sizes | removed | Sizes S and L | S, M, L → M. In every list of 3 numbers leave out the 1st and 3rd.',
    ],
  ])('sizes that are left out, once: %s', (_, gone, expected) => {
    const after: Pattern = { ...base, sizes: base.sizes.filter(({ id }) => !gone.includes(id)) };
    expect(compared(after).map(told)).toEqual([expected]);
  });

  test.each([
    ['lists typed by hand are the same without its number', 'Mark 20 (22) sts.', []],
    [
      'but for a number that is another one',
      'Mark 20 (23) sts.',
      ['Notes | changed |  | Mark 20 (22) sts. → Mark 20 (23) sts. | M'],
    ],
  ] as const)('a size that is left out: %s', (_, note, more) => {
    const before: Pattern = { ...base, notes: [written('Mark 20 (22, 24) sts.')] };
    const after: Pattern = { ...before, sizes: before.sizes.slice(0, 2), notes: [written(note)] };
    expect(compared(after, before).map(told)).toEqual([
      'Sizes | removed | Size L | S, M, L → S, M. In every list of 3 numbers leave out the 3rd.',
      ...more,
    ]);
  });

  test('a size that is left out, and a row that is changed in the others', () => {
    const fewer = inBack((blocks) => blocks.slice(0, 3));
    const after: Pattern = { ...fewer, sizes: fewer.sizes.slice(0, 2) };
    expect(compared(after).map(told)).toEqual([
      'Sizes | removed | Size L | S, M, L → S, M. In every list of 3 numbers leave out the 3rd.',
      'Back | removed | Row 3 (RS) | Ch 1, sc in each st across, turn. (6 sts) → –',
    ]);
  });

  test('materials and notes', () => {
    const after: Pattern = {
      ...base,
      gauges: base.gauges.map((gauge) => ({ ...gauge, stitches: 17 })),
      lines: [],
      notes: [...base.notes, written('Weave in the ends as you go.')],
      pieces: base.pieces.slice(0, 1),
    };
    const before = { ...base, lines: [], pieces: base.pieces.slice(0, 1) };
    const found = compared(after, before);
    expect(found.map(({ part, kind }) => `${part} ${kind}`)).toEqual(['Gauge changed', 'Notes added']);
    expect(found[0]!.was).toContain('16 sts');
    expect(found[0]!.read).toContain('17 sts');
  });

  test('a piece by another name is the same piece', () => {
    const after: Pattern = {
      ...base,
      pieces: [{ ...base.pieces[0]!, id: 'other', name: 'Back panel' }, base.pieces[1]!],
    };
    expect(compared(after).map(told)).toEqual(['Back panel | renamed |  | Back → Back panel']);
  });

  test('a piece that is worked in another place', () => {
    const after: Pattern = { ...base, pieces: [base.pieces[1]!, base.pieces[0]!] };
    const found = compared(after);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ kind: 'moved' });
  });

  test('in the reader’s terms', () => {
    const after = inBack((blocks) =>
      blocks.map((block) =>
        block.id === 'b3' ? row('b3', 'Ch 1, sk first st, sc in each st across, turn.') : block,
      ),
    );
    expect(compared(after, base, 'uk').at(-1)?.read).toBe(
      'Ch 1, miss first st, dc in each st across, turn. (5 sts)',
    );
  });
});

describe('what is printed the same is no erratum', () => {
  test('the version and its date', () => {
    expect(compared({ ...base, about: { ...base.about, version: '9.9', date: '2030-01-01' } })).toEqual([]);
  });

  test('private records, photographs’ places, ids', () => {
    const after: Pattern = {
      ...base,
      workbook: {
        ...base.workbook,
        people: [{ id: 'p', name: 'Somebody', base: '', values: {}, note: 'secret' }],
        doubts: [{ node: 'b1', why: 'Because.' }],
        makings: [],
      },
      pieces: base.pieces.map((own) => ({
        ...own,
        blocks: own.blocks.map((block) => ({ ...block, id: `${block.id}x` })),
      })),
    };
    expect(compared(after)).toEqual([]);
  });

  test('a number that becomes a figure of the same value', () => {
    const figured = inBack((blocks) => blocks);
    const typed: Pattern = {
      ...base,
      pieces: [
        base.pieces[0]!,
        {
          ...base.pieces[1]!,
          blocks: [row('f0', 'Ch 73 (82, 91).', { form: 'foundation' }), base.pieces[1]!.blocks[1]!],
        },
      ],
    };
    expect(compared(figured, typed)).toEqual([]);
  });

  test.each(examples().map(({ name, path }) => [name, path] as const))(
    'an example compared with itself: %s',
    (_, path) => {
      const opened = readContainer(readFileSync(path));
      if (!opened.ok) throw new Error(opened.error.message);
      const own = study(project(opened.document));
      for (const terms of ['us', 'uk'] as const)
        expect(errataBetween(own, own, { terms }).errata).toEqual([]);
    },
    60_000,
  );

  test('any order and choice of rows compared with itself', () => {
    const rows = base.pieces.flatMap(({ blocks }) => blocks);
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...rows), { maxLength: 8 }), (chosen) => {
        const own = inBack(() => chosen.map((block, i) => ({ ...block, id: `n${i}` })));
        expect(compared(own, own)).toEqual([]);
      }),
      { numRuns: 25 },
    );
  });
});

test('the sheet says between which versions, was and read, and the sizes', () => {
  const before: Pattern = { ...base, about: { ...base.about, version: '1.0', date: '2026-01-05' } };
  const after: Pattern = {
    ...inBack((blocks) => blocks.slice(0, 3)),
    about: { ...base.about, version: '1.1', date: '2026-02-06' },
  };
  const errata = errataBetween(study(before), study(after), { terms: 'uk' });
  const booklet = errataSheet(errata, 'uk', 'Ilse Quillfeather');
  expect(booklet.meta).toMatchObject({
    title: 'Panel: errata',
    version: 'Version 1.1',
    termsNote: 'UK terms',
    sizeKey: 'From version 1.0 of 5\u00A0January\u00A02026 to version 1.1 of 6\u00A0February\u00A02026',
  });
  const words = JSON.stringify(booklet.parts);
  expect(words).toContain('Was');
  expect(words).toContain('(left out)');
});
