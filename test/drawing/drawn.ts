/**
 * Charts of rows written for a test, and what is seen on them: the groups of a row, where their shapes lie, how long
 * they are. Expects nothing.
 */
import type { Chart, Pattern } from '../../core/document/pattern.ts';
import { Writer } from '../../core/document/writer.ts';
import { type ChartDrawing, drawChart } from '../../core/drawing/chart/chart.ts';
import type { GroupShape, Shape } from '../../core/drawing/scene.ts';
import { type Study, study } from '../../core/study/index.ts';
import { vest } from '../../resources/examples/vest.ts';

export const US = { terms: 'us', width: 480, large: false } as const;

export const chartOf = (piece: string, first: string, last: string, size = ''): Chart => ({
  id: 'chart',
  piece,
  first,
  last,
  size,
  title: '',
});

/** A pattern of one size and one piece, with the rows as written, and a chart of all of them. */
export function drawn(
  rows: (work: Writer) => void,
  firstSide: 'RS' | 'WS' | null = 'RS',
): { of: Study; chart: Chart; drawing: ChartDrawing } {
  const work = new Writer('piece');
  rows(work);
  const piece = work.piece('Piece', { kind: 'chain' }, firstSide);
  const [size] = vest.sizes;
  const pattern: Pattern = {
    ...vest,
    sizes: [size!],
    sample: size!.id,
    lines: [],
    specials: [],
    notes: [],
    finishing: [],
    pieces: [piece],
    charts: [],
  };
  const of = study(pattern);
  const blocks = piece.blocks.filter(({ type }) => type !== 'heading' && type !== 'prose');
  const chart = chartOf('piece', blocks[0]!.id, blocks[blocks.length - 1]!.id);
  return { of, chart, drawing: drawChart(of, chart, US) };
}

export const isGroup = (shape: Shape): shape is GroupShape => shape.kind === 'group';

export function namesIn(shapes: readonly Shape[]): string[] {
  return shapes.flatMap((shape) => (isGroup(shape) ? [shape.name ?? '', ...namesIn(shape.shapes)] : []));
}

export function pointsOf(shape: Shape): { xs: readonly number[]; ys: readonly number[] } {
  const points: [number, number][] = [];
  const visit = (one: Shape): void => {
    if (isGroup(one)) for (const inner of one.shapes) visit(inner);
    else if (one.kind === 'path')
      for (const step of one.steps) if (step.length > 1) points.push(step.slice(-2) as [number, number]);
  };
  visit(shape);
  return { xs: points.map(([x]) => x), ys: points.map(([, y]) => y) };
}

/** Where the shapes of a group lie on the average. */
export function middleOf(shape: Shape): { x: number; y: number } {
  const { xs, ys } = pointsOf(shape);
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  return { x: mean(xs), y: mean(ys) };
}

/** From one corner of the box about a group's points to the other. */
export function lengthOf(shape: Shape): number {
  const { xs, ys } = pointsOf(shape);
  return Math.hypot(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
}

export const rowGroup = ({ parts }: ChartDrawing, index: number, part = 0): readonly Shape[] => {
  const row = parts[part]!.shapes.find((shape) => isGroup(shape) && shape.name === `row ${index}`);
  return row !== undefined && isGroup(row) ? row.shapes : [];
};

export const named = (shapes: readonly Shape[], name: string): readonly Shape[] =>
  shapes.filter((shape) => isGroup(shape) && shape.name === name);
