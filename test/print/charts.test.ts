/**
 * Stitch charts in a booklet: their place after the pieces, in the reader's terms, for the sample or the one size, as
 * large as they are printed.
 */
import { describe, expect, test } from 'vitest';
import type { Shape } from '../../core/drawing/scene.ts';
import { chartsPart, editionCharts } from '../../core/print/edition/charts.ts';
import { bookletOf } from '../../core/print/edition.ts';
import { styleOf } from '../../core/print/style.ts';
import { study } from '../../core/study/index.ts';
import { hat } from '../../resources/examples/hat.ts';
import { vest } from '../../resources/examples/vest.ts';

const ofVest = study(vest);
const ofHat = study(hat);

/** Where the lines of a scene begin, go on and end; what is turned, a single symbol, is left aside. */
function* corners(shapes: readonly Shape[], x = 0, y = 0): Generator<{ x: number; y: number }> {
  for (const shape of shapes) {
    if (shape.kind === 'group' && shape.turn === 0) yield* corners(shape.shapes, x + shape.x, y + shape.y);
    if (shape.kind !== 'path') continue;
    for (const [sort, ...at] of shape.steps)
      if (sort === 'M' || sort === 'L') yield { x: x + at[0]!, y: y + at[1]! };
  }
}

function* sizesIn(shapes: readonly Shape[]): Generator<number> {
  for (const shape of shapes) {
    if (shape.kind === 'group') yield* sizesIn(shape.shapes);
    else if (shape.kind === 'text') yield shape.size;
  }
}

describe('charts in a booklet', () => {
  test('stand after the pieces, with their notes as words and a figure that is described', () => {
    const { charts } = editionCharts(ofVest, { terms: 'us', sizes: 'all' }, styleOf('a4', 'standard'));
    const { booklet } = bookletOf(ofVest, { terms: 'us', sizes: 'all', charts });
    const titles = booklet.parts.map(({ title }) => title);
    const at = titles.indexOf('Stitch chart');
    expect(titles[at - 1]).toMatch(new RegExp(`^${vest.pieces[vest.pieces.length - 1]!.name}`));
    expect(titles[at + 1]).toBe('Finishing');
    const said = JSON.stringify(booklet.parts[at]);
    expect(said).toContain('The chart shows size M.');
    expect(said).toContain('Row 1 (WS)');
    expect(said).toContain('(hdc, ch 1, hdc) in one place');
  });

  test('a chart, or the last part of it, stands with its key', () => {
    const { charts } = editionCharts(ofVest, { terms: 'us', sizes: 'all' }, styleOf('a4', 'standard'));
    const [chart] = charts;
    const [drawn, key] = chart!.figures;
    for (const figures of [
      [drawn!, key!],
      [drawn!, drawn!, key!],
      [drawn!, drawn!, drawn!, key!],
    ]) {
      const { blocks } = chartsPart([{ ...chart!, figures }])!;
      const last = blocks.at(-1)!;
      const inside = last.kind === 'together' && last.glance ? last.blocks.slice(-2) : [];
      expect(inside.map((block) => block.kind === 'figure' && block.alt)).toEqual([drawn!.alt, key!.alt]);
      const placed = blocks.flatMap((block) => (block.kind === 'together' ? block.blocks : [block]));
      expect(placed.filter(({ kind }) => kind === 'figure')).toHaveLength(figures.length);
    }
  });

  test('a booklet without charts has no part for them', () => {
    const titles = bookletOf(ofVest, { terms: 'us', sizes: 'all' }).booklet.parts.map(({ title }) => title);
    expect(titles.some((title) => title.startsWith('Stitch chart'))).toBe(false);
  });

  test('the edition for one size shows that size and does not name it', () => {
    const { charts } = editionCharts(
      ofHat,
      { terms: 'uk', sizes: hat.sizes[hat.sizes.length - 1]!.id },
      styleOf('a4', 'standard'),
    );
    expect(charts[0]!.notes.join(' ')).not.toMatch(/shows size/);
    expect(charts[0]!.figures[0]!.alt).toContain('Round 6');
  });

  test.each([
    ['a4', 'standard'],
    ['letter', 'standard'],
    ['a4', 'large-print'],
    ['letter', 'ink-saving'],
  ] as const)('on %s, %s, every scene fits the column', (paper, edition) => {
    const style = styleOf(paper, edition);
    const column = style.page.width - style.margin.left - style.margin.right - style.hang;
    const height = style.page.height - style.margin.top - style.margin.bottom;
    for (const of of [ofVest, ofHat]) {
      for (const scene of editionCharts(of, { terms: 'us', sizes: 'all' }, style).scenes.values()) {
        expect(scene.width).toBeLessThanOrEqual(column + 0.01);
        expect(scene.height).toBeLessThanOrEqual(height * 0.9);
        // A part of the rounds has its repeat marked beside it, and not where the whole would be.
        for (const { x, y } of corners(scene.shapes)) {
          expect(x).toBeGreaterThanOrEqual(0);
          expect(x).toBeLessThanOrEqual(scene.width);
          expect(y).toBeGreaterThanOrEqual(0);
          expect(y).toBeLessThanOrEqual(scene.height);
        }
      }
    }
  });

  test.each([
    ['us', 'Read from the center outward and counterclockwise', 'Round 1, counterclockwise'],
    ['uk', 'Read from the centre outwards and anticlockwise', 'Round 1, anticlockwise'],
  ] as const)('the way of the rounds is told in the English of %s terms', (terms, reading, told) => {
    const { charts } = editionCharts(ofHat, { terms, sizes: 'all' }, styleOf('a4', 'standard'));
    expect(charts[0]!.notes.join(' ')).toContain(reading);
    expect(charts[0]!.figures[0]!.alt).toContain(told);
  });

  test.each([
    ['standard', 7.5],
    ['large-print', 18],
  ] as const)('no word of a chart or its key is too small to read: %s', (edition, smallest) => {
    for (const of of [ofVest, ofHat])
      for (const scene of editionCharts(
        of,
        { terms: 'us', sizes: 'all' },
        styleOf('a4', edition),
      ).scenes.values())
        expect(Math.min(...sizesIn(scene.shapes))).toBeGreaterThanOrEqual(smallest);
  });

  test('the words are those of the reader, the symbols the same', () => {
    const style = styleOf('a4', 'standard');
    const us = editionCharts(ofVest, { terms: 'us', sizes: 'all' }, style);
    const uk = editionCharts(ofVest, { terms: 'uk', sizes: 'all' }, style);
    const [a, b] = [[...us.scenes.values()], [...uk.scenes.values()]];
    expect(b[0]!.shapes).toEqual(a[0]!.shapes);
    expect(a[1]!.alt).toContain('half double crochet');
    expect(b[1]!.alt).toContain('half treble crochet');
    expect(b[1]!.alt).not.toContain('half double');
  });
});
