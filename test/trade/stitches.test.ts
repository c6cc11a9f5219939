import { describe, expect, it } from 'vitest';
import {
  baseOf,
  flatCircle,
  foundationChains,
  height,
  LADDER,
  turningChain,
  turningChainVariants,
} from '../../core/trade/stitches.ts';

describe('turning chains: handbook page on turning chains', () => {
  it.each([
    ['slip', 0],
    ['t1', 1],
    ['t2', 2],
    ['t3', 3],
    ['t4', 4],
    ['t5', 5],
  ] as const)('%s turns with %s', (stitch, chains) => {
    expect(turningChain(stitch).chains).toBe(chains);
    expect(height(stitch)).toBe(chains);
  });
  it('counts as a stitch for US dc and taller, not for US sc; sources differ for US hdc', () => {
    expect(LADDER.slice(1, 6).map((stitch) => turningChain(stitch).counts)).toEqual([
      false,
      null,
      true,
      true,
      true,
    ]);
  });
  it('shorter sets, not counted: tutorial on turning chains and where stitches go', () => {
    const short = (stitch: 't2' | 't3' | 't4') => turningChainVariants(stitch).at(-1)!;
    expect([short('t2'), short('t3'), short('t4')].map(({ chains, counts }) => [chains, counts])).toEqual([
      [1, false],
      [2, false],
      [3, false],
    ]);
  });
  it('goes on by one chain a step for the tallest (derived from the ladder)', () => {
    expect(turningChain('t7')).toEqual({ chains: 7, counts: true, firstStitchIn: 8, foundationAdd: 6 });
  });
});

describe('foundation chains: tutorial on foundation chain lengths', () => {
  it.each([
    ['t1', false, 10, 11, 2],
    ['t2', true, 10, 11, 3],
    ['t3', true, 10, 12, 4],
  ] as const)(
    '%s (counts: %s): %s stitches on %s chains, the first in chain %s',
    (stitch, counts, stitches, chains, firstIn) => {
      const turning = turningChain(stitch);
      expect(foundationChains(stitches, { chains: turning.chains, counts })).toBe(chains);
      expect(turning.firstStitchIn).toBe(firstIn);
      expect(stitches + turning.foundationAdd).toBe(chains);
    },
  );
  it('agree with every variant of every stitch that turns with a chain', () => {
    for (const stitch of LADDER.slice(1)) {
      for (const { chains, counts, foundationAdd, firstStitchIn } of turningChainVariants(stitch)) {
        expect(foundationChains(0, { chains, counts: counts === true })).toBe(foundationAdd);
        expect(firstStitchIn).toBe(chains + 1);
      }
    }
  });
});

describe('flat circles', () => {
  it.each([
    ['t1', 6],
    ['t2', 8],
    ['t3', 12],
  ] as const)('%s grows by %s: tutorials on flat circles', (stitch, count) => {
    const circle = flatCircle(stitch)!;
    expect([circle.start, circle.increase]).toEqual([count, count]);
    expect(circle.range[0]).toBeLessThanOrEqual(count);
    expect(circle.range[1]).toBeGreaterThanOrEqual(count);
  });
  it('US treble grows by 16 and US double treble by 20 (from memory)', () => {
    expect([flatCircle('t4')!.start, flatCircle('t5')!.start]).toEqual([16, 20]);
  });
  it('is not known for slip stitch', () => {
    expect(flatCircle('slip')).toBeNull();
  });
});

it('finds the base of an id', () => {
  expect(['t3', 'fp.t3', '5-shell.t4', 'picot', 'sp', ''].map(baseOf)).toEqual([
    't3',
    't3',
    't4',
    null,
    null,
    null,
  ]);
});
