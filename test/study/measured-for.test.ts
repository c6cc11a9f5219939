/** A pattern made to measure: one person's numbers in the place of a size, everything else as it is. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Pattern } from '../../core/document/pattern.ts';
import { NO_WORKBOOK, type Person } from '../../core/document/workbook.ts';
import { study } from '../../core/study/index.ts';
import { measuredFor, studyFor } from '../../core/study/measured-for.ts';
import { anyPattern } from '../document/patterns.ts';
import { pattern as printed } from '../print/pattern.ts';

const base = printed('us');
const person = (more: Partial<Person> = {}): Person => ({
  id: 'pat',
  name: 'Pat',
  base: 'm',
  values: {},
  note: '',
  ...more,
});
const cm = (value: number) => ({ value, unit: 'cm' as const });

describe('a pattern made to measure', () => {
  test('has the person in the place of the size that lends the rest', () => {
    const { pattern, size } = measuredFor(base, person())!;
    expect(size).toBe(1);
    expect(pattern.sizes.map(({ id, label }) => `${id} ${label}`)).toEqual(['s S', 'pat Pat', 'l L', 'x XL']);
    expect(pattern.workbook.people).toEqual([]);
  });

  test('is worked from the person’s numbers, and in nothing else differs from the base', () => {
    // The bust line is typed: 97 cm for M. Pat has 101 cm; the panel is half the bust with its 6 cm of ease.
    const own = { ...base, workbook: { ...NO_WORKBOOK, people: [person({ values: { l1: cm(101) } })] } };
    const { own: made, size } = studyFor(study(own), 'pat')!;
    const line = (name: string) => made.sheet.lines.find((one) => one.line.name === name)!.sizes[size]!;
    const bust = line('bust').value;
    expect(bust?.dimension === 'length' ? Number(bust.value) : null).toBe(101);
    const before = study(base);
    // Other sizes are what they were.
    before.sheet.lines.forEach((one, i) => {
      for (const other of [0, 2, 3])
        expect(made.sheet.lines[i]!.sizes[other]!.value).toEqual(one.sizes[other]!.value);
    });
  });

  test('without a number of their own comes to the base size', () => {
    const own = study({ ...base, workbook: { ...NO_WORKBOOK, people: [person()] } });
    const { own: made } = studyFor(own, 'pat')!;
    made.pieces.forEach((piece, i) => {
      const before = study(base).pieces[i]!;
      expect(piece.blocks.map(({ sizes }) => sizes[1]?.tally.stitches)).toEqual(
        before.blocks.map(({ sizes }) => sizes[1]?.tally.stitches),
      );
    });
  });

  test.each<[string, Partial<Pattern>, Partial<Person>, string | null]>([
    ['the size chosen', {}, { base: 'l' }, 'l'],
    ['else the sample', { sample: 'x' }, { base: 'gone' }, 'x'],
    ['else the first', { sample: null }, { base: '' }, 's'],
    ['no sizes, no sheet', { sizes: [] }, {}, null],
  ])('what lends the rest: %s', (_, change, own, id) => {
    expect(measuredFor({ ...base, ...change }, person(own))?.base.id ?? null).toBe(id);
  });

  test('one value for all sizes becomes the person’s alone', () => {
    // Line l2 is the ease, 6 cm for all.
    const { pattern } = measuredFor(base, person({ values: { l2: cm(10) } }))!;
    const ease = pattern.lines.find(({ id }) => id === 'l2');
    expect(ease).toMatchObject({ values: { each: { s: cm(6), pat: cm(10), l: cm(6), x: cm(6) } } });
  });

  test('of any pattern is a pattern, with as many sizes', () => {
    fc.assert(
      fc.property(anyPattern, fc.nat(), (any, n) => {
        const values = Object.fromEntries(any.lines.map(({ id }, i) => [id, cm(40 + ((n + i) % 60))]));
        const at = any.sizes[n % Math.max(1, any.sizes.length)]?.id ?? '';
        const made = measuredFor(any, person({ base: at, values }));
        if (any.sizes.length === 0) expect(made).toBeNull();
        else expect(study(made!.pattern).pattern.sizes).toHaveLength(any.sizes.length);
      }),
      { numRuns: 30 },
    );
  });
});
