import { describe, expect, it } from 'vitest';
import {
  bodyChart,
  bodyCharts,
  bodyMeasure,
  chartMeasure,
  councilHeads,
  measureDefinition,
  measureName,
} from '../../core/trade/bodies.ts';
import { toNumber } from '../../core/trade/units.ts';

const inches = (audience: string, measure: string, bound: 'lower' | 'upper' | 'middle') =>
  bodyChart(audience)!.sizes.map((size) => {
    const value = bodyMeasure(audience, size, measure, bound);
    return value && toNumber(value.inches);
  });

describe('published charts', () => {
  it('women’s bust, upper bounds: Craft Yarn Council women’s chart, as reprinted on a pullover pattern’s page', () => {
    expect(inches('woman', 'bust', 'upper')).toEqual([30, 34, 38, 42, 46, 50, 54, 58, 62]);
  });
  it('women’s bust, lower bounds of XS, M, L, XL, 2X, 4X: a yarn company’s cardigan pattern', () => {
    const lower = inches('woman', 'bust', 'lower');
    expect([0, 2, 3, 4, 5, 7].map((index) => lower[index])).toEqual([28, 36, 40, 44, 48, 56]);
  });
  it('women’s bust steps by 4 in: a designer’s article on grading', () => {
    const upper = inches('woman', 'bust', 'upper') as number[];
    expect(upper.slice(1).map((value, index) => value - upper[index]!)).toEqual(Array(8).fill(4));
  });
  it('children’s chest, sizes 2 to 10: to-fit block of a yarn company’s children’s pattern', () => {
    expect(inches('child', 'chest', 'middle').slice(0, 5)).toEqual([21, 23, 25, 26.5, 28]);
  });
  it.each([
    ['cross_back', [9.25, 9.75, 10.25, 10.75, 11.25, 12, 12.25, 13]],
    ['upper_arm', [7, 7.5, 8, 8.5, 8.75, 9, 9.25, 9.5]],
    ['back_waist_length', [8.5, 9.5, 10.5, 12.5, 14, 15, 15.5, 16]],
    ['armhole_depth', [4.25, 4.75, 5, 5.5, 6, 6.5, 7, 7.5]],
    ['sleeve_length_to_underarm', [8.5, 10.5, 11.5, 12.5, 13.5, 15, 16, 16.5]],
  ])('children’s %s: a designers’ measurement table for children', (measure, expected) => {
    expect(inches('child', measure, 'upper')).toEqual(expected);
    expect(chartMeasure('child', measure)!.certainty.in).toBe('published-secondary');
  });
  it('heads: a table of typical head sizes by age', () => {
    expect(bodyChart('head')!.sizes).toEqual([
      'Preemie',
      'Newborn',
      '3-6 months',
      'Toddler',
      '3-10 years',
      'Teen',
      'Woman',
      'Man',
    ]);
    expect(inches('head', 'head', 'lower')).toEqual([9, 13, 14, 18, 19, 20.5, 21, 22]);
    expect(inches('head', 'head', 'upper')).toEqual([13, 14, 17, 20, 20.5, 22, 23.5, 24.5]);
  });
  it('hands: a maker’s knitwear size guide that follows the council', () => {
    expect(inches('hand', 'hand_circumference', 'lower')).toEqual([3, 4, 5.5, 6, 7.5]);
    expect(inches('hand', 'hand_circumference', 'upper')).toEqual([4, 5.5, 6, 7.5, 9]);
  });
});

describe('figures from memory, marked so', () => {
  it('men’s chest S to 2X (from memory), and no figure beyond', () => {
    expect(inches('man', 'chest', 'upper')).toEqual([36, 40, 44, 48, 52, null, null, null]);
    expect(chartMeasure('man', 'chest')!.certainty.in).toBe('memory');
  });
  it('babies’ chest 3 to 24 months (from memory)', () => {
    expect(inches('baby', 'chest', 'lower')).toEqual([16, 17, 18, 19, 20]);
    expect(chartMeasure('baby', 'chest')!.certainty.in).toBe('memory');
  });
  it('the council’s long-standing head figures (from memory)', () => {
    expect(councilHeads.map(({ inches: value }) => value)).toEqual([12, 14, 16, 18, 20, 22]);
  });
  it('feet (weakly, from memory)', () => {
    expect(chartMeasure('foot', 'foot_length')!.certainty.in).toBe('memory-low');
  });
});

describe('laws of the charts', () => {
  it('every cell is a range that does not fall, and grows or stays with the size', () => {
    for (const chart of Object.values(bodyCharts)) {
      for (const measure of chart.measures) {
        expect(measure.in).toHaveLength(chart.sizes.length);
        const cells = measure.in.filter((cell) => cell !== null);
        for (const [lower, upper] of cells) expect(lower).toBeLessThanOrEqual(upper);
        if (chart.audience === 'head' || chart.audience === 'foot') continue;
        for (let index = 1; index < cells.length; index++) {
          expect(cells[index]![1]).toBeGreaterThanOrEqual(cells[index - 1]![1]);
        }
      }
    }
  });
  it('the issuer’s centimetres lie within 0.8 cm of its inches', () => {
    for (const chart of Object.values(bodyCharts)) {
      for (const { id } of chart.measures) {
        for (const size of chart.sizes) {
          for (const bound of ['lower', 'upper'] as const) {
            const value = bodyMeasure(chart.audience, size, id, bound);
            if (value?.cm != null)
              expect(Math.abs(toNumber(value.length) - value.cm)).toBeLessThanOrEqual(0.8);
          }
        }
      }
    }
  });
  it('the youth chart is the upper part of the children’s', () => {
    for (const { id } of bodyCharts.youth.measures) {
      expect(bodyMeasure('youth', '14', id, 'upper')).toEqual(bodyMeasure('child', '14', id, 'upper'));
    }
  });
});

describe('asking', () => {
  it('gives exact inches and keeps the chart’s own centimetres', () => {
    const value = bodyMeasure('woman', 'M', 'bust', 'upper')!;
    expect(value.length.toFraction()).toBe('2413/25');
    expect(value.cm).toBe(96.5);
  });
  it('gives the middle of a range', () => {
    expect(toNumber(bodyMeasure('woman', 'M', 'bust', 'middle')!.inches)).toBe(37);
  });
  it('takes bust and chest for one measure', () => {
    expect(bodyMeasure('woman', 'L', 'chest', 'lower')).toEqual(bodyMeasure('woman', 'L', 'bust', 'lower'));
    expect(bodyMeasure('child', '8', 'bust', 'lower')).not.toBeNull();
  });
  it.each([
    ['other', 'M', 'bust'],
    ['woman', 'Z', 'bust'],
    ['woman', 'M', 'nose'],
    ['man', '4X', 'chest'],
    ['constructor', 'M', 'toString'],
  ])('gives nothing for %s %s %s', (audience, size, measure) => {
    expect(bodyMeasure(audience, size, measure, 'upper')).toBeNull();
  });
  it('names and defines measures', () => {
    expect(measureName('center_back_neck_to_cuff', 'uk')).toBe('centre back neck to cuff');
    expect(measureName('center_back_neck_to_cuff', 'us')).toBe('center back neck to cuff');
    expect(measureDefinition('chest')).toMatch(/fullest part/);
    expect(measureDefinition('constructor')).toBeNull();
  });
});
