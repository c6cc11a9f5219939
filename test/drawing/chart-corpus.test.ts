/**
 * A chart and its text cannot disagree: over the corpus of written rows, the finished chart is read back into counts
 * and held to what the row report counts. The counts of the cases were worked out by hand.
 */
import { describe, expect, test } from 'vitest';
import { drawGraph } from '../../core/drawing/chart/chart.ts';
import { graphOf } from '../../core/drawing/chart/graph.ts';
import type { Scene, Shape } from '../../core/drawing/scene.ts';
import { fabric, type TracedRow, Tracer, tally } from '../../core/fabric/index.ts';
import type { Site } from '../../core/fabric/site.ts';
import { readText } from '../../core/notation/index.ts';
import { reportTree } from '../../core/study/rows.ts';
import { corpus } from '../rows/corpus.ts';
import { readChart } from './read-chart.ts';

/** Rows that follow one another, apart from those of other pieces. */
function pieces(rows: readonly TracedRow[]): readonly (readonly TracedRow[])[] {
  const out: TracedRow[][] = [];
  let last: readonly Site[] | null = null;
  for (const row of rows) {
    if (last !== null && row.trace.below === last) out[out.length - 1]!.push(row);
    else out.push([row]);
    last = row.trace.sites;
  }
  return out;
}

function chartsOf(text: string, terms: 'us' | 'uk') {
  const tracer = new Tracer();
  reportTree(readText(text, { terms }), text, terms, tracer);
  return pieces(tracer.rows)
    .map((rows) => rows.slice(0, 12))
    .filter((rows) => rows.every(({ trace }) => trace.sites.length <= 150))
    .map((rows) => {
      const graph = graphOf(
        rows,
        rows.map((_, i) => (i % 2 === 0 ? 'RS' : 'WS')),
      );
      const drawing = drawGraph(graph, 'Chart', [], { terms, width: 480, large: false });
      // What is too large for all of it to be drawn says so, and cannot be read back whole.
      const isWhole = !drawing.notes.some((note) => /^Only the beginning|shows a part/.test(note));
      return { rows, drawing, isWhole };
    });
}

/** Every number of a scene's shapes. */
function numbersIn(shapes: readonly Shape[]): number[] {
  return shapes.flatMap((shape) => {
    if (shape.kind === 'group') return [shape.x, shape.y, shape.turn, ...numbersIn(shape.shapes)];
    if (shape.kind === 'text') return [shape.x, shape.y, shape.size];
    return shape.steps.flatMap((step) => step.slice(1) as number[]);
  });
}

describe('charts of the written rows', () => {
  const cases = Object.entries(corpus).flatMap(([group, list]) =>
    list.map((c) => ({ name: `${group}: ${c.terms}: ${c.name}`, text: c.text, terms: c.terms })),
  );

  test('read back, count what the rows count', () => {
    let rowsRead = 0;
    cases.forEach(({ name, text, terms }, at) => {
      // Every sixth case keeps this within seconds; cases that are alike stand side by side.
      if (at % 6 !== 0) return;
      for (const { rows, drawing, isWhole } of chartsOf(text, terms)) {
        const numbers = numbersIn([...drawing.parts, drawing.key!].flatMap(({ shapes }) => shapes));
        expect(numbers.every(Number.isFinite), name).toBe(true);
        for (const { width } of drawing.parts) expect(width, name).toBeLessThan(500);
        if (!isWhole) continue;
        const read = readChart(drawing.parts, rows.length);
        rows.forEach(({ trace }, i) => {
          const of = tally(fabric(trace.sites));
          const { stitches, spaces, chains, picots } = of;
          expect(read[i], `${name}: ${text.slice(trace.row.from, trace.row.to)}`).toEqual({
            stitches,
            byKind: Object.fromEntries(of.byKind),
            spaces,
            chains,
            picots,
          });
          rowsRead += 1;
        });
      }
    });
    expect(rowsRead).toBeGreaterThan(600);
  }, 300_000);

  test('a stitch taken away, changed or added on the sheet is noticed', () => {
    const [chart] = chartsOf(
      'Rnd 1: Ch 3 (counts as dc), 11 dc in magic ring; join.\nRnd 2: Ch 3, dc in same st, 2 dc in each dc around; join.',
      'us',
    );
    const sheet = chart!.drawing.parts[0]!;
    const before = readChart([sheet], 2);
    expect(before.map(({ stitches }) => stitches)).toEqual([12, 24]);
    const change = (edit: (shapes: readonly Shape[]) => readonly Shape[]): Pick<Scene, 'shapes'> => ({
      shapes: sheet.shapes.map((shape) =>
        shape.kind === 'group' && shape.name === 'row 1' ? { ...shape, shapes: edit(shape.shapes) } : shape,
      ),
    });
    const isStitch = (shape: Shape): boolean => shape.kind === 'group' && shape.name === 'stitch t3';
    const without = change((shapes) => shapes.filter((_, i) => i !== shapes.findIndex(isStitch)));
    const twice = change((shapes) => [...shapes, shapes.find(isStitch)!]);
    expect(readChart([without], 2)[1]!.stitches).toBe(23);
    expect(readChart([twice], 2)[1]!.stitches).toBe(25);
    const renamed = change((shapes) =>
      shapes.map((shape) => (isStitch(shape) ? { ...shape, name: 'stitch t4' } : shape)),
    );
    expect(() => readChart([renamed], 2)).toThrow('not drawn as such');
  });

  test('a row along the other side of a foundation stands on its chains, one under each stitch', () => {
    const charts = chartsOf(
      'Ch 13.\nRow 1: Sc in 2nd ch from hook and in each ch across. (12 sc)\nLower edge: Join yarn in any ch on opposite side of foundation, ch 1, sc in each ch across. (12 sc)',
      'us',
    );
    const { base, baseKind, rows } = graphOf(charts.at(-1)!.rows, ['RS']);
    const feet = rows[0]!.nodes.flatMap((node) => node.feet);
    expect(baseKind).toBe('chain');
    expect(feet).toHaveLength(12);
    expect(feet).toEqual(base);
    expect(new Set(feet).size).toBe(12);
  });

  test('the same rows give the same sheet', () => {
    const text = cases[0]!.text;
    const drawn = () => chartsOf(text, 'us').map(({ drawing }) => drawing);
    expect(drawn()).toEqual(drawn());
  });
});
