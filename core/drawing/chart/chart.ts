/**
 * A stitch chart as scenes: from a pattern's study and the rows that its maker chose to the parts of the drawing
 * with their key, in the reader's terms. The one entry for print, the command line and the studio.
 */
import type { Chart } from '../../document/pattern.ts';
import type { Study } from '../../study/index.ts';
import type { Terms } from '../../trade/stitches.ts';
import type { Scene } from '../scene.ts';
import { layFlat } from './flat.ts';
import { type Graph, graphOf } from './graph.ts';
import { drawKey, lettersOf } from './key.ts';
import type { Layout, Point } from './layout.ts';
import { noteInWords, problemInWords } from './notes.ts';
import { type ChartPlan, planChart } from './plan.ts';
import { layRounds } from './rounds.ts';
import { drawSheet, type SheetStyle, sheetWidth } from './sheet.ts';
import { extentOf, type Window } from './window.ts';
import { chartInWords } from './words.ts';

export interface ChartOptions {
  readonly terms: Terms;
  /** Widest that a scene may be, in points. */
  readonly width: number;
  /** For large print. */
  readonly large: boolean;
}

export interface ChartDrawing {
  readonly title: string;
  /** Parts of the chart, from where its first row begins; with none, `problem` says why. */
  readonly parts: readonly Scene[];
  readonly key: Scene | null;
  /** What the reader has to know of it, as sentences. */
  readonly notes: readonly string[];
  readonly problem: string | null;
}

/** Widths of a stitch, in points: the shortest symbol stays above 4.5 mm, in large print above 6 mm. */
const UNITS = {
  standard: { usual: 14, least: 12.8, type: 9 },
  large: { usual: 20, least: 17, type: 18 },
} as const;

/** Parts that a chart is split into at the most. */
const MOST_PARTS = 4;
/** What two parts both show, in widths of a stitch. */
const OVERLAP = 3;

const plans = new WeakMap<Study, Map<Chart, ChartPlan>>();

function planOf(study: Study, chart: Chart): ChartPlan {
  const known = plans.get(study) ?? new Map<Chart, ChartPlan>();
  plans.set(study, known);
  const plan = known.get(chart) ?? planChart(study, chart);
  known.set(chart, plan);
  return plan;
}

/** Draws a chart of a pattern. Total. */
export function drawChart(study: Study, chart: Chart, options: ChartOptions): ChartDrawing {
  const plan = planOf(study, chart);
  const title = titleOf(study, chart, plan);
  if (plan.problem !== null) {
    return { title, parts: [], key: null, notes: [], problem: problemInWords(plan.problem) };
  }
  const notes = plan.notes.map(noteInWords);
  return drawGraph(graphOf(plan.rows, plan.sides), title, notes, options);
}

/** What a chart is called where its maker gave it no title. */
function titleOf(study: Study, chart: Chart, { rows }: ChartPlan): string {
  if (chart.title.trim() !== '') return chart.title;
  const piece = study.pattern.pieces.find(({ id }) => id === chart.piece)?.name ?? '';
  const [first, last] = [rows[0], rows[rows.length - 1]];
  if (first === undefined || last === undefined || first.number === null || last.number === null)
    return piece;
  const what = first.trace.round ? 'round' : 'row';
  const span =
    first.number === last.number ? `${what} ${first.number}` : `${what}s ${first.number}–${last.number}`;
  return piece === '' ? span : `${piece}, ${span}`;
}

/** Draws a graph: whole, or in parts where it is wider than the sheet. */
export function drawGraph(
  graph: Graph,
  title: string,
  told: readonly string[],
  { terms, width, large }: ChartOptions,
): ChartDrawing {
  const { usual, least, type } = large ? UNITS.large : UNITS.standard;
  const letters = lettersOf(graph);
  const style = (unit: number): SheetStyle => ({ unit, type, letters });
  const notes = [...told];
  let layout = graph.form === 'rounds' ? layRounds(graph) : layFlat(graph);
  let windows: readonly (Window | null)[] = [null];
  let unit: number = usual;
  const fits = (of: Layout, window: Window | null): boolean => {
    for (unit = usual; unit >= least - 1e-9; unit -= (usual - least) / 4) {
      if (sheetWidth(of, style(unit), window) <= width) return true;
    }
    unit = least;
    return false;
  };
  if (!fits(layout, null)) {
    const sector = graph.form === 'rounds' ? sectorOf(layout) : null;
    if (sector !== null && fits(layout, sector.window)) {
      windows = [sector.window];
      notes.push(
        `The chart shows a part of the rounds: one repeat, with where they begin. The last round works the repeat ${sector.times} times.`,
      );
    } else {
      if (graph.form === 'rounds') {
        layout = layFlat({ ...graph, form: 'flat' });
        notes.push('The rounds are drawn opened out, each from its number.');
      }
      const split = partsOf(layout, unit, type, width);
      windows = split.windows;
      if (windows.length > 1) {
        notes.push(
          `The chart is in ${windows.length} parts, from ${layout.graph.rows[0]!.way === 1 ? 'left to right' : 'right to left'}; each begins with the last ${OVERLAP} stitches of the part before.`,
        );
      }
      if (split.isCut)
        notes.push('Only the beginning is drawn: the rows are too wide for a chart. The text has all of it.');
    }
  }
  const alt = chartInWords(graph, terms, notes);
  const parts = windows.map((window, i): Scene => {
    const sheet = drawSheet(layout, style(unit), window);
    const part = windows.length > 1 ? `${title}, part ${i + 1} of ${windows.length}` : title;
    return { ...sheet, title: part, alt: i === 0 ? alt : `${part}. Part 1 tells all of the chart in words.` };
  });
  return { title, parts, key: drawKey(graph, terms, style(unit), width, notes), notes, problem: null };
}

/** Parts of a layout that is too wide, each with the end of the one before. */
function partsOf(
  layout: Layout,
  unit: number,
  type: number,
  width: number,
): { readonly windows: readonly Window[]; readonly isCut: boolean } {
  const box = extentOf(layout, null);
  const room = Math.max(8, (width - 2 * (2.2 * unit + type * 2.6)) / unit - 0.4);
  const step = room - OVERLAP;
  const needed = Math.max(1, Math.ceil((box.right - box.left - OVERLAP) / step));
  const leftward = layout.graph.rows[0]!.way === -1;
  const windows = Array.from({ length: Math.min(needed, MOST_PARTS) }, (_, k): Window => {
    const begin = leftward ? box.right - k * step : box.left + k * step;
    const inside = ({ x }: Point): number => (leftward ? begin - x : x - begin);
    return {
      state: (at) => {
        const from = inside(at);
        // The first and the last part hold what stands beyond their edge.
        const low = k === 0 ? -3 : 0;
        const high = k === needed - 1 ? room + 3 : room;
        if (from < low || from > high) return 'out';
        return k > 0 && from <= OVERLAP ? 'again' : 'in';
      },
    };
  });
  return { windows, isCut: needed > MOST_PARTS };
}

/** The sector of large rounds that holds where they begin and one repeat of the last of them. */
function sectorOf({
  graph,
  places,
  shape,
}: Layout): { readonly window: Window; readonly times: number } | null {
  const last = graph.rows[graph.rows.length - 1]!;
  const passes = last.bounds.length - 1;
  if (passes < 3 || shape !== 'circle') return null;
  const angle = (i: number): number | null => {
    const placed = places.get(last.nodes[i]!);
    return placed === undefined ? null : Math.atan2(placed.top.y, placed.top.x);
  };
  const [begin, end] = [angle(0), angle(Math.min(last.nodes.length - 1, last.bounds[1]! + 1))];
  if (begin === null || end === null) return null;
  const turn = (a: number): number => {
    const full = 2 * Math.PI;
    return (((last.way * (a - begin)) % full) + full) % full;
  };
  const reach = turn(end);
  if (reach > Math.PI * 0.7) return null;
  const inside = (at: Point): boolean => {
    if (Math.hypot(at.x, at.y) < 1) return true;
    const a = turn(Math.atan2(at.y, at.x));
    return a <= reach + 0.04 || a >= 2 * Math.PI - 0.28;
  };
  return { window: { state: (at) => (inside(at) ? 'in' : 'out') }, times: passes };
}
