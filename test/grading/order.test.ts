/** Sizes in order: what is said when a larger size does not measure more. */
import { describe, expect, it } from 'vitest';
import { orderFacts } from '../../core/grading/order.ts';
import {
  all,
  body,
  cm,
  each,
  ease,
  formula,
  grade,
  printed,
  shaping,
  stitches,
  typed,
  women,
} from './sheets.ts';

const seen = (...of: Parameters<typeof orderFacts>) =>
  orderFacts(...of).map(({ line, sizes, fact }) => [fact.code, line, sizes]);

describe('along a line', () => {
  it('says nothing of sizes that grow, and nothing of working lines', () => {
    const lines = [
      body('bust', 'bust'),
      printed(formula('finished bust', 'bust + 10 cm')),
      typed('working', each(cm(9), cm(5), cm(7))),
      printed(ease('ease', each(cm(9), cm(5), cm(7)))),
      printed(typed('band', all(cm(4)))),
      printed(shaping('sleeve')),
    ];
    expect(seen(grade(lines, women('S', 'M', 'L')), 'z0')).toEqual([]);
  });

  it('lets the standard charts repeat a figure', () => {
    // Craft Yarn Council, women: arm length of S and M 17 in (from memory).
    expect(seen(grade([body('arm', 'sleeve_length_to_underarm')], women('S', 'M', 'L')), 'z0')).toEqual([]);
  });

  it('tells what is out of order, with the labels and values', () => {
    const sheet = grade([body('bust', 'bust', 'lower', { z1: cm(80) })], women('S', 'M', 'L'));
    expect(orderFacts(sheet, 'z0')).toEqual([
      {
        line: 'bust',
        sizes: [0, 1],
        fact: {
          code: 'size-values-out-of-order',
          from: 0,
          to: 0,
          data: {
            line: 'bust',
            kind: 'body',
            dimension: 'length',
            sizes: ['S', 'M'],
            values: [81.28, 80],
            shown: ['81.5 cm', '80 cm'],
            shownIn: ['32 in', '31½ in'],
          },
        },
      },
    ]);
  });

  it('tells sizes that a repeat makes equal', () => {
    const lines = [body('bust', 'bust'), printed(stitches('back stitches', 'bust ÷ 2', { multiple: 16 }))];
    // 64, 72 and 80 stitches to multiples of 16: 64, 80, 80.
    expect(seen(grade(lines, women('S', 'M', 'L')), 'z0')).toEqual([
      ['size-values-equal', 'back stitches', [1, 2]],
      ['sizes-come-out-equal', null, [1, 2]],
    ]);
  });

  it('tells no sizes equal while no printed line differs', () => {
    const lines = [printed(typed('band', all(cm(4)))), printed(shaping('sleeve'))];
    expect(seen(grade(lines, women('S', 'M', 'L')), 'z0')).toEqual([]);
  });

  it('looks past a size without a value', () => {
    const sheet = grade(
      [printed(typed('length', { each: { z0: cm(50), z2: cm(48) } }))],
      women('S', 'M', 'L'),
    );
    expect(seen(sheet, 'z0')).toEqual([['size-values-out-of-order', 'length', [0, 2]]]);
  });
});

describe('among the sizes', () => {
  it('tells labels used twice or not at all', () => {
    const sizes = women('S', 'M', 's ', '').map((size) => ({ ...size, chart: null }));
    expect(seen(grade([], sizes), 'z1')).toEqual([
      ['size-labels-equal', null, [0, 2]],
      ['size-label-empty', null, [3]],
    ]);
  });

  it.each([
    ['z1', []],
    ['gone', [['sample-size-missing', null, []]]],
    [null, [['sample-size-missing', null, []]]],
  ])('looks for the sample %s', (sample, expected) => {
    expect(seen(grade([], women('S', 'M')), sample)).toEqual(expected);
  });

  it('asks for no sample where there are no sizes', () => {
    expect(seen(grade([], []), null)).toEqual([]);
  });
});
