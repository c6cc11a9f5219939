import { describe, expect, it } from 'vitest';
import { hookByMm, hookLabel, hooks, nearestHook, steelHooks } from '../../core/trade/hooks.ts';
import { level, levels } from '../../core/trade/levels.ts';
import { yarnWeight, yarnWeightLabel, yarnWeights } from '../../core/trade/yarn-weights.ts';

describe('hooks', () => {
  it.each([
    [2.25, 'B-1'],
    [2.75, 'C-2'],
    [3.25, 'D-3'],
    [3.5, 'E-4'],
    [3.75, 'F-5'],
    [4, 'G-6'],
    [4.5, '7'],
    [5, 'H-8'],
    [5.5, 'I-9'],
    [6, 'J-10'],
    [6.5, 'K-10½'],
    [8, 'L-11'],
    [9, 'M/N-13'],
  ])('%s mm is US %s: published US hook charts', (mm, label) => {
    expect(hookByMm(mm)!.usLabel).toBe(label);
  });
  it.each([
    [2, '14'],
    [2.5, '12'],
    [3.5, '9'],
    [4, '8'],
    [4.5, '7'],
    [5, '6'],
    [5.5, '5'],
    [8, '0'],
    [9, '00'],
    [10, '000'],
  ])('%s mm was old UK %s: UK yarn shop’s conversion chart', (mm, number) => {
    expect(hookByMm(mm)!.ukOld).toBe(number);
  });
  it('steel 00 is 3.5 mm, 7 is 1.65 mm and 14 is 0.75 mm: pages on steel hooks', () => {
    const mm = (number: string) => steelHooks.find((hook) => hook.usSteel === number)!.mm;
    expect([mm('00'), mm('7'), mm('14')]).toEqual([3.5, 1.65, 0.75]);
  });
  it('steel 6, 7, 8 are 1.6 to 1.4 mm in the other convention: Craft Yarn Council yarn weight table, as reprinted', () => {
    const other = ['6', '7', '8'].map(
      (number) => steelHooks.find((hook) => hook.usSteel === number)!.otherMm,
    );
    expect(other).toEqual([1.6, 1.5, 1.4]);
  });
  it('US numbers rise and old UK numbers fall with the diameter', () => {
    const us = hooks.filter((hook) => hook.usNumber).map((hook) => Number(hook.usNumber));
    expect(us).toEqual([...us].sort((a, b) => a - b));
    const uk = hooks
      .filter((hook) => hook.ukOld && !hook.ukOld.startsWith('0'))
      .map((hook) => Number(hook.ukOld));
    expect(uk).toEqual([...uk].sort((a, b) => b - a));
  });
  it.each([
    [5, 'us', '5 mm (US H-8)'],
    [4.5, 'us', '4.5 mm (US 7)'],
    [5, 'uk', '5 mm'],
    [7, 'us', '7 mm'],
    [1.65, 'us', '1.65 mm (US steel 7)'],
    [5.25, 'us', '5.25 mm'],
    [4.1, 'us', '4.1 mm'],
  ] as const)('%s mm in %s reads %s', (mm, terms, label) => {
    expect(hookLabel(mm, terms)).toBe(label);
  });
  it('prints the old UK number when asked', () => {
    expect(hookLabel(5, 'uk', { oldUk: true })).toBe('5 mm (old UK 6)');
    expect(hookLabel(3.75, 'uk', { oldUk: true })).toBe('3.75 mm');
  });
  it('finds the nearest', () => {
    expect(nearestHook(4.1)!.mm).toBe(4);
    expect(nearestHook(7.5)!.mm).toBe(8);
    expect(nearestHook(Number.NaN)).toBeNull();
  });
});

describe('yarn weights: Craft Yarn Council system, as printed in a crochet magazine in 2018 and reprinted', () => {
  it.each([
    [0, 'Lace', [32, 42], [1.5, 2.25], [33, 40]],
    [1, 'Super Fine', [21, 32], [2.25, 3.5], [27, 32]],
    [2, 'Fine', [16, 20], [3.5, 4.5], [23, 26]],
    [3, 'Light', [12, 17], [4.5, 5.5], [21, 24]],
    [4, 'Medium', [11, 14], [5.5, 6.5], [16, 20]],
    [5, 'Bulky', [8, 11], [6.5, 9], [12, 15]],
    [6, 'Super Bulky', [6, 9], [9, 16], [7, 11]],
    [7, 'Jumbo', [null, 5], [16, null], [null, 6]],
  ])('%s is %s', (number, name, crochet, hook, knit) => {
    const weight = yarnWeight(number)!;
    expect([weight.name, weight.scGauge, weight.hookMm, weight.knitGauge]).toEqual([
      name,
      crochet,
      hook,
      knit,
    ]);
  });
  it('counts the gauge of lace in US double crochet', () => {
    expect(yarnWeights.map((weight) => weight.gaugeStitch)).toEqual(['t3', ...Array(7).fill('t1')]);
  });
  it('gives UK names: UK yarn seller’s page on converting weights', () => {
    expect(yarnWeight(4)!.ukNames).toEqual(['aran']);
    expect(yarnWeight(5)!.ukNames).toEqual(['chunky']);
    expect(yarnWeight(3)!.ukNames).toContain('double knitting');
  });
  it('prints a label for each market (usual name: common practice, no source)', () => {
    expect(yarnWeightLabel(4, 'us')).toBe('worsted (4, Medium)');
    expect(yarnWeightLabel(4, 'uk')).toBe('aran (4, Medium)');
    expect(yarnWeightLabel(8, 'uk')).toBeNull();
  });
});

describe('project levels: Craft Yarn Council names, as reprinted in a tutorial', () => {
  it('are four', () => {
    expect(levels.map(({ name }) => name)).toEqual(['Basic', 'Easy', 'Intermediate', 'Complex']);
    expect(level(2)!.name).toBe('Easy');
    expect(level(5)).toBeNull();
  });
});
