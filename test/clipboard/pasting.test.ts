/**
 * What a pasted passage becomes: rows without their labels, counts that agree taken out and others kept, repeats,
 * pieces, paragraphs. Counts were worked out by hand.
 */
import { EditorState, TextSelection } from 'prosemirror-state';
import { describe, expect, test } from 'vitest';
import { compose } from '../../core/document/compose.ts';
import type { Block, Pattern } from '../../core/document/pattern.ts';
import { project } from '../../core/document/project.ts';
import { passageOfText } from '../../core/intake/passage.ts';
import { readPasted } from '../../core/intake/sections.ts';
import { blankPattern } from '../../core/outlines/blank.ts';
import { study } from '../../core/study/study.ts';
import { pasteWritten } from '../../renderer/clipboard/pasting.ts';
import { identity } from '../../renderer/desk/identity.ts';
import { placeOf } from '../../renderer/desk/places.ts';
import { piece, row } from '../study/builder.ts';

const blank = blankPattern({ title: 'Test', terms: 'us', units: 'metric', date: '2026-01-01' });

/** Pastes at an offset in the text of a node of a pattern. */
function pasted(text: string, pattern: Pattern = blank, node = 'row-first', offset = 0) {
  const document = compose(pattern);
  const at = placeOf(document, node)!.pos + 1 + offset;
  const state = EditorState.create({
    doc: document,
    plugins: [identity()],
    selection: TextSelection.create(document, at),
  });
  const written = readPasted(passageOfText(text).text, {
    terms: pattern.terms,
    names: [],
    sizes: pattern.sizes.map(({ label }) => label),
  });
  const result = pasteWritten(state, written)!;
  const next = state.apply(result.transaction);
  next.doc.check();
  return { pattern: project(next.doc), report: result.report };
}

/** A block in one line; repeats by the numbers of their rows. */
function told(block: Block, all: readonly Block[]): string {
  const number = (id: string) => all.findIndex((other) => other.id === id);
  switch (block.type) {
    case 'row':
      return [
        block.form === 'row' ? '' : `${block.form}: `,
        block.title === null ? '' : `${block.title}: `,
        block.sizes === null ? '' : `[${block.sizes.join(' ')}] `,
        block.text.text,
      ].join('');
    case 'repeat':
      return `repeat ${number(block.first)}–${number(block.last)} for ${block.until.kind === 'rows' ? block.until.rows : '?'}`;
    case 'prose':
      return `text: ${block.text.text}`;
    case 'heading':
      return `heading: ${block.text}`;
    default:
      return block.type;
  }
}
const blocksTold = (blocks: readonly Block[]) => blocks.map((block) => told(block, blocks));

describe('rows', () => {
  test.each([
    ['Row 3 (RS): Sc across.', ['Sc across.']],
    ['R5: Ch 1, sc in each st across.', ['Ch 1, sc in each st across.']],
    ['3. Ch 1, sc in each st across.', ['Ch 1, sc in each st across.']],
    ['Rnd 1: 6 sc in magic ring.', ['round: 6 sc in magic ring.']],
    ['Dec Row 4: Sc2tog, sc across.', ['Dec: Sc2tog, sc across.']],
    ['Foundation: Ch 24.', ['foundation: Ch 24.']],
    [
      'Ch 24.\nRow 1: Sc in 2nd ch from hook and in\neach ch across.',
      ['foundation: Ch 24.', 'Sc in 2nd ch from hook and in each ch across.'],
    ],
    ['Rows 2-5: Ch 1, sc across.', ['Ch 1, sc across.', 'repeat 0–0 for 3']],
    ['Next 4 rows: Ch 1, sc across.', ['Ch 1, sc across.', 'repeat 0–0 for 3']],
    [
      'Row 1: Ch 1, sc across.\nRow 2: Ch 1, hdc across.\nRows 3–8: Rep Rows 1 and 2.',
      ['Ch 1, sc across.', 'Ch 1, hdc across.', 'repeat 0–1 for 6'],
    ],
    [
      'Row 1: Ch 1, sc across.\nRows 2–4: Rep Row 1.\nRow 5: Ch 1, hdc across.\nRow 6: Rep Row 5.',
      ['Ch 1, sc across.', 'repeat 0–0 for 3', 'Ch 1, hdc across.', 'repeat 2–2 for 1'],
    ],
    [
      'Row 1: Ch 1, sc across.\nRow 2: Ch 1, hdc across.\nRows 3–8: Rep Rows 1 and 2 three times.',
      ['Ch 1, sc across.', 'Ch 1, hdc across.', 'repeat 0–1 for 6'],
    ],
    // What ends the piece stands behind the repeat.
    [
      'Row 1: Ch 1, sc across.\nRows 2-10: Rep Row 1.\nFasten off, leaving a long tail.',
      ['Ch 1, sc across.', 'repeat 0–0 for 9', 'text: Fasten off, leaving a long tail.'],
    ],
    [
      'Row 1: Ch 1, sc across.\nRows 2-10: Rep Row 1, fasten off.',
      ['Ch 1, sc across.', 'repeat 0–0 for 9', 'text: Fasten off.'],
    ],
    // What it says twice it says differently: the reader asks.
    [
      'Row 1: Ch 1, sc across.\nRow 2: Ch 1, hdc across.\nRows 3–8: Rep Rows 1 and 2 twice.',
      ['Ch 1, sc across.', 'Ch 1, hdc across.', 'Rows 3–8: Rep Rows 1 and 2 twice.'],
    ],
    // A repeat of rows that are not among those pasted keeps its words.
    ['Rows 13–18: Rep Rows 11 and 12.', ['Rows 13–18: Rep Rows 11 and 12.']],
    // A label that is more than one stretch of rows stays where the reader asks about it.
    ['Rows 2, 4 and 6: Ch 1, sc across.', ['Rows 2, 4 and 6: Ch 1, sc across.']],
    ['Sizes M (L) only:\nRow 3: Ch 1, sc across.', ['[size-m size-l] Ch 1, sc across.']],
    ['Sizes 40 (42) only:\nRow 3: Ch 1, sc across.', ['text: Sizes 40 (42) only:', 'Ch 1, sc across.']],
    [
      'Row 1: Ch 1, sc across.\n\nBlock the panel to size before you go on.',
      ['Ch 1, sc across.', 'text: Block the panel to size before you go on.'],
    ],
  ])('%j', (text, expected) => {
    expect(blocksTold(pasted(text).pattern.pieces[0]!.blocks)).toEqual(expected);
  });
});

describe('typed counts', () => {
  const rows = (counts: readonly [string, string, string]) =>
    `Ch 24.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.${counts[0]}\nRow 2: Ch 1, sc2tog, sc in each st across, turn.${counts[1]}\nRow 3: Ch 1, 2 sc in first st, sc in each st across.${counts[2]}`;

  // 24 chains: 23 sc, then a decrease to 22, then an increase to 23.
  test.each([
    [[' (23 sc)', ' (22 sc)', ' (23 sc)'], 3, 0],
    [[' – 23 sts', ' = 22', ' [23]'], 3, 0],
    [[' (23 sts)', ' (23 sts)', ' (23 sts)'], 2, 1],
    [[' (24 sc)', '', ' (24 sc)'], 0, 2],
  ] as const)('%j: %i agree, %i stay', (counts, agreed, kept) => {
    const { pattern, report } = pasted(rows(counts));
    expect(report).toMatchObject({ agreed, kept });
    const texts = pattern.pieces[0]!.blocks.slice(1).map((block) => block.type === 'row' && block.text.text);
    // What stays is found wrong by the study, at its row.
    const wrong = study(pattern).findings.filter(({ code }) => code === 'stated-count-wrong');
    expect(wrong).toHaveLength(kept);
    expect(texts.filter((text) => text !== false && /\d\D*$/.test(text.slice(-8)))).toHaveLength(kept);
  });

  test('one for each size is checked in each', () => {
    const base = piece('p', 'Panel', [
      { ...row('start', 'Ch 11 (12, 13, 14).'), form: 'foundation' } as Block,
      row('r', ''),
    ]);
    const pattern = { ...blank, pieces: [base] };
    const right = pasted(
      'Row 1: Sc in 2nd ch from hook and in each ch across. – 10 (11, 12, 13) sts',
      pattern,
      'r',
    );
    expect(right.report).toMatchObject({ agreed: 1, kept: 0 });
    const wrong = pasted(
      'Row 1: Sc in 2nd ch from hook and in each ch across. – 10 (11, 12, 14) sts',
      pattern,
      'r',
    );
    expect(wrong.report).toMatchObject({ agreed: 0, kept: 1 });
    expect(blocksTold(wrong.pattern.pieces[0]!.blocks)[1]).toContain('10 (11, 12, 14) sts');
  });

  // 12 chains: 11 sc in every row.
  test.each([
    ['(11 sc)', ['repeat 2–2 for 4'], 2],
    ['(12 sc)', ['repeat 2–2 for 4', 'text: (12 sc)'], 1],
  ] as const)('behind a repeat, %s', (count, expected, agreed) => {
    const { pattern, report } = pasted(
      `Ch 12.\nRow 1: Sc in 2nd ch from hook and in each ch across. (11 sc)\nRow 2: Ch 1, sc in each st across.\nRows 3–6: Rep Row 2. ${count}`,
    );
    expect(blocksTold(pattern.pieces[0]!.blocks).slice(3)).toEqual(expected);
    expect(report.agreed).toBe(agreed);
  });

  test.each([
    [
      'of things the engine cannot be sure of',
      'Rnd 1: 6 sc in magic ring.\nRnd 2: Inc in each st around. (6 incs)',
      '(6 incs)',
    ],
    ['of a row that is not understood', 'Ch 24.\nRow 1: Frobnicate across. (23 sc)', '(23 sc)'],
    [
      'in the middle of a row',
      'Ch 24.\nRow 1: Sc in 2nd ch from hook and in each ch across (23 sc), turn and rest a while with tea.',
      '(23 sc)',
    ],
  ])('%s stay', (_, text, count) => {
    expect(blocksTold(pasted(text).pattern.pieces[0]!.blocks).join('\n')).toContain(count);
  });
});

describe('pieces', () => {
  const text =
    'Back (make 2)\nCh 24.\nRow 1: Sc in 2nd ch from hook and in each ch across. (23 sc)\n\nSleeve\nRnd 1: 6 sc in magic ring. (6)';

  test('a whole pattern fills the empty piece and makes the others', () => {
    const { pattern } = pasted(text);
    expect(pattern.pieces.map(({ name, make }) => `${name} ×${make}`)).toEqual(['Back ×2', 'Sleeve ×1']);
    expect(blocksTold(pattern.pieces[1]!.blocks)).toEqual(['round: 6 sc in magic ring.']);
  });

  test('a name behind the end of another piece begins one, with how many are made', () => {
    const { pattern } = pasted(
      'Back\nCh 24.\nRow 1: Sc in 2nd ch from hook and in each ch across. (23 sc)\nRows 2–9: Rep Row 1.\nFasten off.\n\nSLEEVE (make 2)\nRnd 1: 6 sc in magic ring. (6)',
    );
    expect(pattern.pieces.map(({ name, make }) => `${name} ×${make}`)).toEqual(['Back ×1', 'SLEEVE ×2']);
    expect(blocksTold(pattern.pieces[0]!.blocks).at(-1)).toBe('text: Fasten off.');
  });

  test('after a piece that is written, all are new', () => {
    const pattern = { ...blank, pieces: [piece('p', 'Front', [row('r', 'Ch 10.')])] };
    const after = pasted(text, pattern, 'r', 6);
    expect(after.pattern.pieces.map(({ name }) => name)).toEqual(['Front', 'Back', 'Sleeve']);
    expect(after.report).toMatchObject({ pieces: 2, rows: 3 });
  });

  test('special stitches and notes go to their lists, once', () => {
    const specials =
      'Special stitches\nLarge Shell (lgsh): 5 dc in next st.\n\nNote: Ch 3 counts as first dc throughout.\n\nCh 24.';
    const once = pasted(specials).pattern;
    expect(once.specials.map(({ nameUs, abbrUs, text: { text: words } }) => [nameUs, abbrUs, words])).toEqual(
      [['Large Shell', 'lgsh', '5 dc in next st.']],
    );
    expect(once.notes.map(({ text: words }) => words)).toEqual(['Ch 3 counts as first dc throughout']);
    const again = pasted(specials, { ...once, pieces: blank.pieces });
    expect(again.report).toMatchObject({ specials: 0, notes: 0 });
  });
});

describe('at the caret', () => {
  const pattern = { ...blank, pieces: [piece('p', 'Front', [row('r', 'Ch 10. Turn.')])] };

  test.each([
    [0, ['Sc across.', 'Ch 10. Turn.']],
    [12, ['Ch 10. Turn.', 'Sc across.']],
    [7, ['Ch 10. ', 'Sc across.', 'Turn.']],
  ])('offset %i of a row', (offset, expected) => {
    expect(blocksTold(pasted('Row 2: Sc across.', pattern, 'r', offset).pattern.pieces[0]!.blocks)).toEqual(
      expected,
    );
  });

  test('rows that are numbered otherwise here are told', () => {
    const after = pasted('Row 7: Ch 1, sc across.\nRow 8: Ch 1, sc across.', pattern, 'r', 12);
    expect(after.report.renumbered.map(({ typed }) => typed)).toEqual([7, 8]);
  });
});

test('no word of a passage is lost', () => {
  const text = `Marsh Cowl
Designed for the first cold days.
Materials
200 g of wool in two shades
Gauge
16 sts and 20 rows
Cowl
Ch 24.
Row 1: Sc in 2nd ch from hook and in each ch across. (23 sc)
Some words that nobody can work.
Row 2: Ch 1, sc in each st across.
Finishing
Weave in the ends.`;
  const { pattern } = pasted(text);
  const all = JSON.stringify(pattern);
  for (const word of text.replace('(23 sc)', '').match(/\p{L}{4,}/gu)!) expect(all).toContain(word);
});
