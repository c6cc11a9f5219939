/** Where typed numbers are those of a line in every size, and what taking the offers makes of the words. */
import { describe, expect, test } from 'vitest';
import type { Block, Pattern } from '../../core/document/pattern.ts';
import { offersIn, takeOffers } from '../../core/intake/offers.ts';
import { study } from '../../core/study/index.ts';
import { piece, row, smallPattern, written } from '../study/builder.ts';

// Widths 45, 51 and 57 cm at 16 stitches in 10 cm: 72, 81.6 and 91.2, as multiples of 3 and 1 more 73, 82 and 91.
function pattern(texts: readonly string[], prose: readonly string[] = []): Pattern {
  const said = prose.map(
    (text, i): Block => ({ type: 'prose', id: `t${i}`, text: written(text), sizes: null }),
  );
  const rows = texts.map((text, i) => row(`r${i}`, text));
  return { ...smallPattern(), pieces: [piece('p', 'Panel', [...rows, ...said])] };
}

const told = (own: Pattern) =>
  offersIn(study(own)).map(({ node, line, text }) => `${node}: ${text} = ${line}`);

describe('numbers that fit a line in every size are offered', () => {
  test.each([
    ['Ch 73 (82, 91).', ['r0: 73 (82, 91) = panel stitches']],
    ['Sc in next 73 [82: 91] sts, turn.', ['r0: 73 [82: 91] = panel stitches']],
    ['Sc in each of next 73/82/91 sts.', ['r0: 73/82/91 = panel stitches']],
    // One size differs; one number for all; a count at the end, which is computed.
    ['Ch 73 (82, 92).', []],
    ['Ch 73.', []],
    ['Ch 1, sc in each st across. – 73 (82, 91) sts', []],
  ])('%s', (text, expected) => {
    expect(told(pattern([text]))).toEqual(expected);
  });

  test('lengths in a paragraph, in either unit of the line', () => {
    expect(
      told(pattern([], ['Block it to 45 (51, 57) cm across.', 'Block it to 450 (510, 570) mm.'])),
    ).toEqual(['t0: 45 (51, 57) cm = width', 't1: 450 (510, 570) mm = width']);
  });
});

test('taking offers puts figures in the place of the words, and nothing else changes', () => {
  const own = pattern(['Ch 73 (82, 91).', 'Ch {panel stitches}, turn, sc in next 73 (82, 91) sts, sl st.']);
  const taken = takeOffers(own, offersIn(study(own)));
  expect(taken.pieces[0]!.blocks).toEqual(
    pattern(['Ch {panel stitches}.', 'Ch {panel stitches}, turn, sc in next {panel stitches} sts, sl st.'])
      .pieces[0]!.blocks,
  );
  expect(offersIn(study(taken))).toEqual([]);
  expect(takeOffers(own, [])).toBe(own);
});
