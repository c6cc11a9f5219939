/** Spreading increases and decreases evenly over a row or round. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PLAIN_ENV, plainFabric, workRow } from '../../core/fabric/index.ts';
import { type Spread, type SpreadTask, spreadOf, spreadSum, spreadWords } from '../../core/grading/spread.ts';
import { readRow } from '../../core/notation/index.ts';
import { codes, grade, spread } from './sheets.ts';

const task = (changes: number, over: number, rest: Partial<SpreadTask> = {}): SpreadTask => ({
  change: 'inc',
  form: 'round',
  stitch: 't1',
  changes,
  over,
  ...rest,
});

describe('an even spread', () => {
  it.each([
    // A flat circle in single crochet grows by 6 a round (common practice).
    [task(6, 6), '(inc) 6 times', '6 × 2 = 12'],
    [task(6, 12), '(sc 1, inc) 6 times', '6 × 3 = 18'],
    [task(6, 18), '(sc 2, inc) 6 times', '6 × 4 = 24'],
    // Stitches ÷ increases, quotient and remainder (common practice): 39 ÷ 5 is 7, remainder 4.
    [task(5, 39), '(sc 7, inc) 4 times, sc 6, inc', '4 × 9 + 8 = 44'],
    [task(5, 39, { form: 'flat' }), 'sc 3, inc, (sc 7, inc) 4 times, sc 3', '5 + 4 × 9 + 3 = 44'],
    [task(4, 40, { form: 'flat' }), 'sc 4, inc, (sc 9, inc) 3 times, sc 5', '6 + 3 × 11 + 5 = 44'],
    [task(1, 7, { form: 'flat' }), 'sc 3, inc, sc 3', '5 + 3 = 8'],
    [task(7, 7, { form: 'flat' }), '(inc) 7 times', '7 × 2 = 14'],
    // A decrease uses 2 stitches: 48 − 2 × 8 = 32 plain ones, 4 for each.
    [task(8, 48, { change: 'dec' }), '(sc 4, sc2tog) 8 times', '8 × 5 = 40'],
    [
      task(8, 48, { change: 'dec', form: 'flat' }),
      'sc 2, sc2tog, (sc 4, sc2tog) 7 times, sc 2',
      '3 + 7 × 5 + 2 = 40',
    ],
    [task(3, 6, { change: 'dec' }), '(sc2tog) 3 times', '3 × 1 = 3'],
    [task(0, 20), 'sc 20', '20 = 20'],
  ])('%j', (of, words, sum) => {
    const result = spreadOf(of) as Spread;
    expect(spreadWords(result, 'us')).toBe(words);
    expect(spreadSum(result)).toBe(sum);
  });

  it('is written in the terms asked for', () => {
    expect(spreadWords(spreadOf(task(8, 48, { change: 'dec' })) as Spread, 'uk')).toBe(
      '(dc 4, dc2tog) 8 times',
    );
    const treble = spreadOf(task(6, 18, { stitch: 't3' })) as Spread;
    expect(spreadWords(treble, 'us')).toBe('(dc 2, 2 dc in next st) 6 times');
    expect(spreadWords(treble, 'uk')).toBe('(tr 2, 2 tr in next st) 6 times');
  });

  it.each([
    [task(8, 7), { code: 'spread-too-many', data: { most: 7, changes: 8, over: 7 } }],
    [task(8, 15, { change: 'dec' }), { code: 'spread-too-many', data: { most: 7 } }],
    [task(-1, 15), { code: 'spread-invalid' }],
    [task(1.5, 15), { code: 'spread-invalid' }],
  ])('there is none: %j', (of, problem) => {
    expect(spreadOf(of)).toMatchObject(problem);
  });

  it('uses every stitch, makes every change, and differs by one stitch at most', () => {
    const tasks = fc.record({
      change: fc.constantFrom('inc' as const, 'dec' as const),
      form: fc.constantFrom('flat' as const, 'round' as const),
      stitch: fc.constant('t1'),
      changes: fc.integer({ min: 1, max: 60 }),
      over: fc.integer({ min: 0, max: 300 }),
    });
    fc.assert(
      fc.property(tasks, (of) => {
        const result = spreadOf(of);
        const uses = of.change === 'inc' ? 1 : 2;
        if ('code' in result) {
          expect(of.changes * uses).toBeGreaterThan(of.over);
          return;
        }
        const each = result.groups.flatMap((group) => new Array<typeof group>(group.times).fill(group));
        const used = each.reduce((sum, group) => sum + group.plain + (group.change ? uses : 0), 0);
        expect(used).toBe(of.over);
        expect(each.filter((group) => group.change)).toHaveLength(of.changes);
        expect(result.after - result.before).toBe(of.change === 'inc' ? of.changes : -of.changes);
        const plain = each.map((group) => group.plain);
        const last = each.at(-1)!.change ? 0 : plain.at(-1)!;
        const inner = of.form === 'round' ? plain : plain.slice(1, each.at(-1)!.change ? undefined : -1);
        const ends = of.form === 'flat' ? [plain[0]! + last] : [];
        expect(Math.max(...inner, ...ends) - Math.min(...inner, ...ends)).toBeLessThanOrEqual(1);
        if (of.form === 'flat') expect(Math.abs(plain[0]! - last)).toBeLessThanOrEqual(1);
        // The printed sum is one.
        const [terms, total] = spreadSum(result).split(' = ');
        const sum = terms!
          .split(' + ')
          .reduce((s, term) => s + term.split(' × ').reduce((p, n) => p * Number(n), 1), 0);
        expect([sum, Number(total)]).toEqual([result.after, result.after]);
      }),
    );
  });
});

it('is read by the reader, and the engine makes its sum', () => {
  const tasks = fc.record({
    change: fc.constantFrom('inc' as const, 'dec' as const),
    form: fc.constantFrom('flat' as const, 'round' as const),
    stitch: fc.constantFrom('t1' as const, 't2' as const, 't3' as const, 't4' as const),
    changes: fc.integer({ min: 0, max: 30 }),
    over: fc.integer({ min: 1, max: 120 }),
  });
  fc.assert(
    fc.property(tasks, fc.constantFrom('us' as const, 'uk' as const), (of, terms) => {
      const spread = spreadOf(of);
      if ('code' in spread) return;
      const words = spreadWords(spread, terms);
      const row = readRow(words, { terms });
      expect([words, row.read, row.facts]).toEqual([words, true, []]);
      const below = plainFabric(of.over, of.stitch, of.form === 'flat' ? 'flat' : 'spiral');
      const worked = workRow(row, below, PLAIN_ENV, []);
      // "inc" is taken for two of the stitch in one: the engine only says that it did so. And the words alone are
      // no whole row: the chain that gives it its height stands before them.
      const expected = ['definition-assumed', 'height-not-given'];
      expect(worked.facts.filter((fact) => !expected.includes(fact.code))).toEqual([]);
      expect([words, worked.tally.stitches]).toEqual([words, spread.after]);
    }),
    { numRuns: 300 },
  );
});

describe('a spread line', () => {
  it('takes its numbers from formulas', () => {
    const sheet = grade([spread('yoke', { changes: '2 × 4', over: '24 + 24', change: 'dec' })]);
    expect(sheet.lines[0]!.sizes[0]!.value).toMatchObject({ dimension: 'spread', spread: { after: 40 } });
  });

  it('says what does not go', () => {
    expect(codes(grade([spread('yoke', { changes: '40' })]), 'yoke')).toEqual(['spread-too-many']);
    expect(codes(grade([spread('yoke', { over: '40 cm' })]), 'yoke')).toEqual(['count-is-length']);
  });
});
