/** The real measurements that fitted stitches and rows make, and how they are found from what was asked. */
import { describe, expect, it } from 'vitest';
import type { Line } from '../../core/document/pattern.ts';
import { gradeSheet } from '../../core/grading/index.ts';
import { measurementsOf } from '../../core/study/index.ts';
import { formatNumber } from '../../core/trade/units.ts';
import { pattern } from '../print/pattern.ts';

const { sizes, gauges, tolerance, lines } = pattern('us');
const fitted = lines.find((line) => line.name === 'panel stitches')!;
const base = { printed: null, note: null };

/** The real finished bust when these lines are fitted to it, at 16 sts in 10 cm. */
function bust(...own: readonly Line[]): readonly string[] {
  const sheet = gradeSheet(sizes, [...lines.filter((line) => line !== fitted), ...own], gauges, tolerance);
  const found = measurementsOf(sheet).find((one) => one.heading === 'Finished bust')!;
  return found.values.map((value) =>
    value !== null && 'length' in value ? formatNumber(value.length, 'decimal', 3) : '–',
  );
}

const to = (length: string, id = 'a', multiple = 2): Line =>
  ({ ...fitted, id, name: `line ${id}`, length, multiple }) as Line;

describe('what a length really comes to', () => {
  // Asked: 92, 103, 113, 123 cm. Half of it in 1.6 sts a cm, even numbers: 74, 82, 90, 98 sts = 46.25 … cm.
  it.each([
    ['one panel made twice', [to('finished bust ÷ 2')], ['92.5', '102.5', '112.5', '122.5']],
    ['half of it', [to('half of finished bust')], ['92.5', '102.5', '112.5', '122.5']],
    ['all the way around', [to('finished bust')], ['92.5', '102.5', '112.5', '122.5']],
    // 74, 82, 90, 98 and, by tens, 70, 80, 90, 100 sts.
    [
      'front and back fitted apart',
      [to('finished bust ÷ 2', 'a'), to('finished bust ÷ 2', 'b', 10)],
      ['90', '101.25', '112.5', '123.75'],
    ],
    ['nothing fitted to it', [], ['92', '103', '113', '123']],
    ['only something else fitted', [to('finished bust ÷ 2 + 1 cm')], ['92', '103', '113', '123']],
  ] as const)('%s', (_, own, values) => {
    expect(bust(...own)).toEqual(values);
  });

  it('is the stitches’ own where they are printed themselves', () => {
    const sheet = gradeSheet(
      sizes,
      [...lines.filter((line) => line !== fitted), { ...fitted, printed: 'Panel' } as Line],
      gauges,
      tolerance,
    );
    const panel = measurementsOf(sheet).find((one) => one.heading === 'Panel')!;
    expect(
      panel.values.map((value) => value !== null && 'length' in value && formatNumber(value.length)),
    ).toEqual(['46.25', '51.25', '56.25', '61.25']);
  });
});

it('tells the body from the piece, and the ease between them', () => {
  const found = measurementsOf(gradeSheet(sizes, lines, gauges, tolerance));
  expect(found.map((one) => [one.heading, one.of])).toEqual([
    ['Bust', 'body'],
    ['Finished bust', 'piece'],
    ['Length', 'piece'],
  ]);
  expect(found[1]!.ease!.map((ease) => formatNumber(ease!))).toEqual(['6.5', '5.5', '5.5', '5.5']);
  expect(found[0]!.ease).toBeNull();
});

it('knows what is measured stretched, leaves out what is not printed, and counts what has no length', () => {
  const stretched: Line = { ...fitted, printed: 'Rib', state: 'stretched' } as Line;
  const count: Line = {
    ...base,
    id: 'c',
    name: 'buttons',
    printed: 'Buttons',
    kind: 'formula',
    formula: '3 + 2',
  };
  const found = measurementsOf(
    gradeSheet(sizes, [lines[0]!, lines[1]!, lines[2]!, stretched, count], gauges, tolerance),
  );
  expect(found.find((one) => one.heading === 'Rib')!.stretched).toBe(true);
  const buttons = found.find((one) => one.heading === 'Buttons')!.values[0]!;
  expect('count' in buttons && formatNumber(buttons.count)).toBe('5');
  expect(found.map((one) => one.heading)).not.toContain('ease');
});
