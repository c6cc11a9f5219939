/** Shaping schedules: evenly spread, exactly summed, within the rows, and said as patterns say it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenWords, ordinal, scheduleWords, sizeList } from '../../core/grading/schedule-words.ts';
import { type Schedule, scheduleOf } from '../../core/grading/shaping.ts';
import { readRow } from '../../core/notation/index.ts';
import type { Amount } from '../../core/notation/tree.ts';
import { codes, grade, shaping, women } from './sheets.ts';

const task = (from: number, to: number, rows: number, rest = {}) => ({
  from,
  to,
  rows,
  perEnd: 1,
  ends: 2,
  step: 1,
  ...rest,
});
const schedule = (from: number, to: number, rows: number, rest = {}) =>
  scheduleOf(task(from, to, rows, rest)) as Schedule;

describe('a schedule', () => {
  it.each([
    // Rows ÷ shapings, remainder to the longer intervals (common practice, no source).
    ['48 rows for 12 shapings', task(64, 40, 48), [[4, 12]], 3],
    [
      '38 rows for 11 shapings, every other row',
      task(42, 20, 38, { step: 2 }),
      [
        [4, 9],
        [2, 2],
      ],
      1,
    ],
    [
      '50 rows for 12 shapings',
      task(64, 40, 50),
      [
        [5, 3],
        [4, 9],
      ],
      3,
    ],
    ['as many as fit', task(20, 0, 10), [[1, 10]], 0],
    ['as many as fit on every other row', task(40, 20, 19, { step: 2 }), [[2, 10]], 0],
    ['one', task(10, 8, 12), [[null, 1]], 11],
    ['two at each end', task(40, 20, 20, { perEnd: 2 }), [[4, 5]], 3],
    ['at eight markers', task(80, 240, 40, { ends: 8 }), [[2, 20]], 1],
    ['at one end', task(40, 30, 20, { ends: 1 }), [[2, 10]], 1],
    ['nothing to do', task(40, 40, 12), [], 12],
  ] as const)('%s', (_, of, parts, evenAfter) => {
    const result = scheduleOf(of) as Schedule;
    expect(result.parts.map(({ every, times }) => [every, times])).toEqual(parts);
    expect(result.evenAfter).toBe(evenAfter);
  });

  it('lists its rows and the stitches after each', () => {
    const result = schedule(16, 8, 8, { step: 2 });
    expect(result.shapings).toEqual([1, 3, 5, 7]);
    expect(result.counts).toEqual([14, 14, 12, 12, 10, 10, 8, 8]);
  });

  it.each([
    ['not whole shapings', task(40, 29, 40), 'shaping-uneven', { change: 11, each: 2, over: 1, nearest: 28 }],
    ['not whole shapings, nearer down', task(40, 65, 90, { ends: 8 }), 'shaping-uneven', { nearest: 64 }],
    ['never below no stitches', task(3, 0, 40), 'shaping-uneven', { nearest: 1 }],
    [
      'too few rows',
      task(40, 10, 20, { step: 2 }),
      'shaping-too-many',
      { shapings: 15, needed: 29, fits: 10, reached: 20 },
    ],
    ['no rows', task(40, 10, 0), 'shaping-too-many', { fits: 0, reached: 40 }],
    ['no ends', task(40, 10, 40, { ends: 0 }), 'shaping-invalid', {}],
    ['half a stitch', task(40.5, 10, 40), 'shaping-invalid', {}],
    ['rows without end', task(40, 10, 1e9), 'shaping-invalid', {}],
  ])('there is none: %s', (_, of, code, data) => {
    expect(scheduleOf(of)).toMatchObject({ code, data });
  });

  it('keeps its laws', () => {
    const tasks = fc.record({
      from: fc.integer({ min: 0, max: 300 }),
      to: fc.integer({ min: 0, max: 300 }),
      rows: fc.integer({ min: 0, max: 200 }),
      perEnd: fc.integer({ min: 1, max: 3 }),
      ends: fc.constantFrom(1, 2, 4, 8),
      step: fc.integer({ min: 1, max: 4 }),
    });
    fc.assert(
      fc.property(tasks, (of) => {
        const each = of.perEnd * of.ends;
        const change = Math.abs(of.to - of.from);
        const result = scheduleOf(of);
        if ('code' in result) {
          const needed = (change / each - 1) * of.step + 1;
          expect(change % each !== 0 || needed > of.rows).toBe(true);
          return;
        }
        const { shapings, parts, counts, evenAfter } = result;
        // Changes exactly the difference, within the rows.
        expect(shapings.length * each).toBe(change);
        expect(parts.reduce((sum, part) => sum + part.times, 0)).toBe(shapings.length);
        expect((shapings.at(-1) ?? 0) + evenAfter).toBe(of.rows);
        expect(evenAfter).toBeGreaterThanOrEqual(0);
        expect(counts).toHaveLength(of.rows);
        expect(counts.at(-1) ?? of.from).toBe(of.rows === 0 ? of.from : of.to);
        // Always on rows as the first, and evenly: two intervals at most, one step apart.
        expect(shapings.every((row) => (row - 1) % of.step === 0)).toBe(true);
        const gaps = shapings.slice(1).map((row, index) => row - shapings[index]!);
        expect(Math.max(0, ...gaps) - Math.min(...gaps, Math.max(0, ...gaps))).toBeLessThanOrEqual(of.step);
        // The parts say the same rows.
        const said = parts.flatMap(({ every, times }) => new Array<number>(times).fill(every ?? 0));
        let row = 1;
        const rows = said.map((every, index) => {
          if (index > 0) row += every;
          return row;
        });
        expect(rows).toEqual([...shapings]);
        // As even as it can be: no shaping less at the end than a whole share of rows.
        if (shapings.length > 0 && of.rows >= of.step * shapings.length) {
          expect(evenAfter + 1).toBeGreaterThanOrEqual(Math.min(...gaps, evenAfter + 1));
          expect(evenAfter + 1 - Math.max(...gaps, 0)).toBeLessThan(
            shapings.length === 1 ? Infinity : of.step + 1,
          );
        }
      }),
    );
  });
});

describe('the words of a schedule', () => {
  it('lists the sizes in each number', () => {
    const words = scheduleWords([
      schedule(42, 20, 38, { step: 2 }),
      schedule(44, 20, 40, { step: 2 }),
      schedule(46, 22, 46, { step: 2 }),
    ]);
    expect(words).toBe(
      'Dec 1 st at each end of next and every 4th row 8 (8, 11) more times, then every 2nd row 2 (3, –) times',
    );
  });

  it.each([
    [[schedule(64, 40, 48)], 'Dec 1 st at each end of next and every 4th row 11 more times'],
    [[schedule(40, 64, 48)], 'Inc 1 st at each end of next and every 4th row 11 more times'],
    [[schedule(40, 38, 48)], 'Dec 1 st at each end of next row'],
    [[schedule(40, 38, 48), schedule(40, 40, 48)], 'Dec 1 (–) st at each end of next row'],
    [
      [schedule(64, 40, 48), schedule(64, 40, 50), null],
      'Dec 1 (1, –) st at each end of next row, then every 5th row – (2, –) times, then every 4th row 11 (9, –) times',
    ],
    [
      [schedule(64, 40, 48), schedule(40, 64, 48)],
      'Dec 1 (–) st at each end of next and every 4th row 11 (–) more times. Inc – (1) st at each end of next and every 4th row – (11) more times',
    ],
    [[schedule(40, 20, 20, { perEnd: 2 })], 'Dec 2 sts at each end of next and every 4th row 4 more times'],
    [[schedule(40, 30, 20, { ends: 1 })], 'Dec 1 st at one end of next and every 2nd row 9 more times'],
    [
      [schedule(80, 240, 40, { ends: 8 })],
      'Inc 1 st at each of 8 markers on next and every 2nd row 19 more times',
    ],
    [[schedule(40, 40, 10)], ''],
    [[], ''],
  ])('%#', (schedules, words) => {
    expect(scheduleWords(schedules)).toBe(words);
  });

  it('is read by the reader as it is meant', () => {
    const tasks = fc.record({
      from: fc.integer({ min: 0, max: 60 }),
      to: fc.integer({ min: 0, max: 60 }),
      rows: fc.integer({ min: 30, max: 90 }),
      perEnd: fc.constant(1),
      ends: fc.constant(2),
      step: fc.integer({ min: 1, max: 2 }),
    });
    const amountAt = (amount: Amount | null, size: number) =>
      amount?.kind === 'sizes' ? (amount.values[size] ?? 0) : amount?.kind === 'one' ? amount.value : 0;
    fc.assert(
      fc.property(fc.array(tasks, { minLength: 2, maxLength: 5 }), fc.boolean(), (of, round) => {
        const schedules = of.map((each) => scheduleOf(each)).map((each) => ('code' in each ? null : each));
        const words = scheduleWords(schedules, round ? 'round' : 'row');
        if (words === '') return;
        const row = readRow(words, { terms: 'us', sizes: schedules.length });
        expect([row.read, row.facts]).toEqual([true, []]);
        for (const [size, schedule] of schedules.entries()) {
          const said = row.items.map((item) => {
            if (item.type !== 'shaping') throw new Error(words);
            const times = item.schedule.map((part) => amountAt(part.times, size));
            const rows = item.schedule.map((part, index) => amountAt(part.every, size) * times[index]!);
            const sum = (list: readonly number[]) => list.reduce((a, b) => a + b, 0);
            const works = amountAt(item.amount, size) > 0 ? 1 : 0;
            return { change: item.change, shapings: works + sum(times), last: works + sum(rows) };
          });
          const meant = schedule && schedule.direction !== 'even' ? schedule : null;
          expect(said.filter(({ shapings }) => shapings > 0)).toEqual(
            meant
              ? [{ change: meant.direction, shapings: meant.shapings.length, last: meant.shapings.at(-1) }]
              : [],
          );
        }
      }),
    );
  });

  it('says rounds in the round, and the rows worked even at the end', () => {
    const round = [schedule(64, 40, 48)];
    expect(scheduleWords(round, 'round')).toBe(
      'Dec 1 st at each side of next and every 4th rnd 11 more times',
    );
    expect(evenWords(round, 'round')).toBe('Work 3 rnds even');
    expect(evenWords([schedule(42, 20, 38, { step: 2 })])).toBe('Work 1 row even');
    expect(evenWords([schedule(20, 0, 10), schedule(64, 40, 48)])).toBe('Work – (3) rows even');
    expect(evenWords([schedule(20, 0, 10)])).toBe('');
  });

  it('writes ordinals and lists of sizes', () => {
    expect([1, 2, 3, 4, 11, 12, 13, 21, 22, 33, 101, 111, 112].map(ordinal).join(' ')).toBe(
      '1st 2nd 3rd 4th 11th 12th 13th 21st 22nd 33rd 101st 111th 112th',
    );
    expect(sizeList([64, 70, 76])).toBe('64 (70, 76)');
    expect(sizeList([64, 64, 64])).toBe('64');
    expect(sizeList([64, null, 64])).toBe('64 (–, 64)');
  });
});

describe('a shaping line', () => {
  it('takes its numbers from formulas', () => {
    const sheet = grade([shaping('sleeve', { start: '30 + 12', end: '20', rows: '38' })], women('M', 'L'));
    const { value } = sheet.lines[0]!.sizes[1]!;
    expect(value).toMatchObject({ dimension: 'schedule', schedule: { shapings: { length: 11 } } });
  });

  it.each([
    ['a length', { start: '40 cm' }, 'count-is-length'],
    ['a percentage', { rows: '5 %' }, 'count-is-percent'],
    ['half a stitch', { end: '41 ÷ 2' }, 'count-not-whole'],
    ['less than nothing', { end: '2 − 4' }, 'count-negative'],
    ['an odd change', { end: '19' }, 'shaping-uneven'],
  ])('says when it is given %s', (_, rest, code) => {
    expect(codes(grade([shaping('sleeve', rest)]), 'sleeve')).toEqual([code]);
  });
});
