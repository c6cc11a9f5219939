/**
 * Passages from many sources as lines of text: what readers of PDFs, spreadsheets and letters put on a clipboard.
 * The samples were made here, in the shape that such programs write. HTML is tested in a real browser.
 */
import { describe, expect, test } from 'vitest';
import { passageOfText } from '../../core/intake/passage.ts';
import { cellsOfTabs, isTabbed, textOfTable } from '../../core/intake/table.ts';
import { oneLine } from '../../core/intake/written.ts';

describe('plain text', () => {
  test.each([
    [
      'ligatures',
      'Row 1: Work the ﬁrst st, oﬀ the ﬂat edge.',
      'Row 1: Work the first st, off the flat edge.',
    ],
    ['hard spaces and soft hyphens', 'Ch\u00A024, in\u00ADcrease', 'Ch 24, increase'],
    ['line ends of every kind', 'Ch 2.\r\nRow 1: Sc.\rRow 2: Sc.', 'Ch 2.\nRow 1: Sc.\nRow 2: Sc.'],
    ['bullets', '• Ch 24.\n• Row 1: Sc across.', 'Ch 24.\nRow 1: Sc across.'],
    [
      'a repeat that begins with its asterisk',
      '*Sc, ch 1; rep from * across.',
      '*Sc, ch 1; rep from * across.',
    ],
    ['gaps of many lines', 'Back\n\n\n\nCh 24.\n', 'Back\n\nCh 24.'],
  ])('%s', (_, text, expected) => {
    expect(passageOfText(text)).toEqual({ text: expected, leftOut: [] });
  });

  test.each([
    [
      'a page that says its number, in the middle of a row',
      'Row 1: Sc in each st\n\nPage 3 of 8\n\nacross, turn.',
      'Row 1: Sc in each st\nacross, turn.',
      ['Page 3 of 8'],
    ],
    ['a number between dashes', 'Ch 24.\n– 2 –\nRow 1: Sc.', 'Ch 24.\nRow 1: Sc.', ['– 2 –']],
    ['bare numbers that climb', 'Ch 24.\n4\nRow 1: Sc.\n5\n', 'Ch 24.\nRow 1: Sc.', ['4', '5']],
    ['a bare number at a page break', 'Ch 24.\n7\fRow 1: Sc.', 'Ch 24.\nRow 1: Sc.', ['7']],
    [
      'a running head over three pages',
      'Marsh Vest\nCh 24.\fMarsh Vest\nRow 1: Sc.\fMarsh Vest\nRow 2: Sc.',
      'Ch 24.\nRow 1: Sc.\nRow 2: Sc.',
      ['Marsh Vest', 'Marsh Vest', 'Marsh Vest'],
    ],
    [
      'a foot of several lines over three pages',
      'Ch 24.\nMarsh Vest\n\nSizes S (M)\npage 1 of 3\fRow 1: Sc.\nMarsh Vest\nSizes S (M)\npage 2 of 3\fEnd.\nMarsh Vest\nSizes S (M)\npage 3 of 3',
      'Ch 24.\nRow 1: Sc.\nEnd.',
      [1, 2, 3].flatMap((page) => ['Marsh Vest', 'Sizes S (M)', `page ${page} of 3`]),
    ],
  ])('leaves out %s, and tells', (_, text, expected, leftOut) => {
    expect(passageOfText(text)).toEqual({ text: expected, leftOut });
  });

  test('keeps a number that is no page’s', () => {
    expect(passageOfText('Stitches in all:\n24\nRow 1: Sc.').text).toBe('Stitches in all:\n24\nRow 1: Sc.');
  });
});

test.each([
  // As readers of PDFs give pages whose labels hang in the margin.
  ['Row 1 (RS):\n\nSc in each ch\nacross, turn.', 'Row 1 (RS): Sc in each ch\nacross, turn.'],
  ['Rows 4–9 (11, 13):\nRep Row 2.', 'Rows 4–9 (11, 13): Rep Row 2.'],
  ['Foundation:\n\nCh 24.', 'Foundation: Ch 24.'],
  ['Next 7 (8, 9) rnds:\n\nRep Rnd 8 (9, 10).', 'Next 7 (8, 9) rnds: Rep Rnd 8 (9, 10).'],
  [
    'Rnd 7:\n\nAll sizes except S: Ch 2, *dc in each of\n\nnext 5 sts; rep from * around.\nFasten off.',
    'Rnd 7: All sizes except S: Ch 2, *dc in each of next 5 sts; rep from * around.\nFasten off.',
  ],
  ['Row 1:\n\nRow 2:\n\nSc across.', 'Row 1:\n\nRow 2: Sc across.'],
  ['Row 1:\n\nSleeves:\nCh 24.', 'Row 1:\n\nSleeves:\nCh 24.'],
  ['Row 9:', 'Row 9:'],
])('the label of %j stands before its words', (text, expected) => {
  expect(passageOfText(text)).toEqual({ text: expected, leftOut: [] });
});

test('labels and ends of rows are no running heads, though pages begin and end with them', () => {
  const page = (n: number) => `Row ${n}:\n\nSc in each st across.`;
  const { text, leftOut } = passageOfText([1, 2, 3, 4].map(page).join('\f'));
  expect(leftOut).toEqual([]);
  expect(text.split('\n').filter((line) => line !== '')).toEqual(
    [1, 2, 3, 4].map((n) => `Row ${n}: Sc in each st across.`),
  );
});

test.each([
  ['Sc in each st\nacross, turn.', 'Sc in each st across, turn.'],
  ['Work an in-\ncrease in the first st.', 'Work an increase in the first st.'],
  ['(2 dc, ch-\n2, 2 dc)', '(2 dc, ch-2, 2 dc)'],
  ['Work a front-\npost dc.', 'Work a front-post dc.'],
  ['Sc in next 2-\n3 sts.', 'Sc in next 2-3 sts.'],
])('%j on one line is %j', (text, expected) => {
  expect(oneLine(text)).toBe(expected);
});

describe('tables', () => {
  test.each([
    [
      'label, words, count',
      'Row\tInstruction\tStitches\n1\tSc across, turn.\t23\n2\tCh 1, sc across.\t23',
      'Row 1: Sc across, turn. (23)\nRow 2: Ch 1, sc across. (23)',
    ],
    ['rounds', 'Rnd\tHow\n1\t6 sc in magic ring.', 'Rnd 1: 6 sc in magic ring.'],
    ['labels written out', 'Row 1 (RS)\tSc across.\t(23 sc)', 'Row 1 (RS): Sc across. (23 sc)'],
    ['a range', '4-9\tSc across.', 'Row 4-9: Sc across.'],
    [
      'a count for each size',
      'Row\tInstruction\tS\tM\tL\n1\tSc across.\t60\t64\t68',
      'Sizes: S (M, L)\nRow 1: Sc across. – 60 (64, 68)',
    ],
    [
      'a cell with a line break, in quotes',
      '1\t"Sc across,\nturn ""loosely""."\t23',
      'Row 1: Sc across, turn "loosely". (23)',
    ],
    ['names beside what is told', 'Hook\t4.5 mm\nYarn\tworsted', 'Hook: 4.5 mm\nYarn: worsted'],
    [
      'another table',
      '4.5 mm\tfor the body\n4 mm\tfor the edging',
      '4.5 mm for the body\n4 mm for the edging',
    ],
    [
      'the side in a column, a chain without a number',
      'Row\tWhat to do\tSide\tStitches\n–\tCh 51.\t\t51\n1\tDc in 4th ch from hook and across.\tRS\t49',
      'Ch 51.\nRow 1 (RS): Dc in 4th ch from hook and across. (49)',
    ],
  ])('%s', (_, tabs, expected) => {
    expect(isTabbed(tabs)).toBe(true);
    expect(textOfTable(cellsOfTabs(tabs))).toBe(expected);
  });

  test('text with a tab here and there is none', () => {
    expect(isTabbed('Materials:\n\tYarn\n\tHook\nBack\nCh 24.')).toBe(false);
  });
});
