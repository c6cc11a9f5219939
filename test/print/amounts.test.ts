/** Amounts of yarn in print: the maker's own, or what is reckoned from makings, said to be an estimate. */
import { describe, expect, test } from 'vitest';
import type { Pattern } from '../../core/document/pattern.ts';
import { type Making, NO_WORKBOOK } from '../../core/document/workbook.ts';
import { bookletOf } from '../../core/print/edition.ts';
import { study } from '../../core/study/index.ts';
import { yarnOf } from '../../core/study/yarn.ts';
import { pattern } from './pattern.ts';
import { booklet } from './plain-booklet.ts';

const base = pattern('us');
const sample: Making = {
  id: 'sample',
  kind: 'sample',
  by: 'Nobody',
  size: 'm',
  state: 'finished',
  used: [{ yarn: '', piece: '', grams: 300, metres: null }],
  hours: null,
  swatch: null,
  measured: {},
  note: '',
};

const words = (more: Partial<Pattern>, sizes = 'all') =>
  booklet(bookletOf(study({ ...base, ...more }), { terms: 'us', sizes }).booklet).replaceAll('~', ' ');

const [own] = base.yarns;
const yarn = (metres: Readonly<Record<string, number>>) => [
  { ...own!, ballGrams: 50, ballMetres: 100, metres },
];
const made = { ...NO_WORKBOOK, makings: [sample] };

describe('amounts of yarn in print', () => {
  test('are the maker’s where there are any, and nothing is reckoned', () => {
    const metres = { s: 500, m: 560, l: 620, x: 700 };
    expect(words({ yarns: yarn(metres), workbook: made })).toBe(words({ yarns: yarn(metres) }));
  });

  test('are reckoned for sizes without one, and said to be', () => {
    const printed = words({ yarns: yarn({}), workbook: made });
    // M used 300 g of 2 m each: 660 m with the margin, 721.8 yards, 330 g, 7 balls of 100 m.
    expect(printed).toMatch(/Meters[^\n]*660/u);
    expect(printed).toMatch(/Yards[^\n]*725/u);
    expect(printed).toMatch(/Grams[^\n]*330/u);
    expect(printed).toMatch(/Balls of 50 g[^\n]*\b7\b/u);
    expect(printed).toContain(
      'estimates, reckoned from the yarn that finished pieces took, with 10% to spare',
    );
    expect(printed).not.toContain('Nobody');
  });

  test('of one size stand in a sentence', () => {
    expect(words({ yarns: yarn({}), workbook: made }, 'm')).toContain(
      'about 660 m / 725 yd (330 g), 7 balls: an estimate from finished pieces, with 10% to spare',
    );
  });

  test('are not told where nothing was made', () => {
    const printed = words({ yarns: yarn({}) });
    expect(printed).not.toContain('Yarn for each size');
    expect(yarnOf(study({ ...base, yarns: yarn({}) })).yarns[0]!.basis).toBeNull();
  });
});
