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
import { drawKey, lettersOf, readingOf } from './key.ts';
import type { Layout, Point } from './layout.ts';
import {
  cutInWords,
  noteInWords,
  openedInWords,
  partsInWords,
  problemInWords,
  sectorInWords,
} from './notes.ts';
import { layOvals } from './ovals.ts';
import { type ChartPlan, planChart } from './plan.ts';
import { layRounds } from './rounds.ts';
import { drawSheet, type SheetStyle, sheetSize } from './sheet.ts';
import { extentOf, type Window } from './window.ts';
import { chartInWords } from './words.ts';

export interface ChartOptions {
  readonly terms: Terms;
  /** Widest that a scene may be, in points. */
  readonly width: number;
  /** Width of the key, in points, where it is another. */
  readonly keyWidth?: number;
  /** For large print. */
  readonly large: boolean;
  /** Highest that a scene may be, in points; left out for any height. */
  readonly height?: number;
  /** The size that is shown where the chart names none. */
  readonly size?: string;
  /** Nobody sees another size, so that none is named. */
  readonly alone?: boolean;
  /** Sentences stand beside the key, where the caller prints them, and not in it. */
  readonly told?: 'in-key' | 'beside';
}

export interface ChartDrawing {
  readonly title: string;
  /** Parts of the chart, from where its first row begins; with none, `problem` says why. */
  readonly parts: readonly Scene[];
  readonly key: Scene | null;
  /** How it is read, and what the reader has to know of it, as sentences. */
  readonly notes: readonly string[];
  readonly problem: string | null;
}

/** Widths of a stitch, in points: the shortest symbol stays above 4.5 mm, in large print above 6 mm. */
const UNITS = {
  standard: { usual: 14, least: 12.8, type: 9, smallest: 7.5 },
  large: { usual: 20, least: 17, type: 18, smallest: 18 },
} as const;

/** Parts that a chart is split into at the most. */
const MOST_PARTS = 4;
/** What two parts both show, in widths of a stitch. */
const OVERLAP = 3;

const plans = new WeakMap<Study, Map<string, ChartPlan>>();

function planOf(study: Study, chart: Chart): ChartPlan {
  const known = plans.get(study) ?? new Map<string, ChartPlan>();
  plans.set(study, known);
  const key = JSON.stringify([chart.piece, chart.first, chart.last, chart.size]);
  const plan = known.get(key) ?? planChart(study, chart);
  known.set(key, plan);
  return plan;
}

/** Draws a chart of a pattern. Total. */
export function drawChart(study: Study, chart: Chart, options: ChartOptions): ChartDrawing {
  const sized = chart.size === '' && options.size !== undefined ? { ...chart, size: options.size } : chart;
  const plan = planOf(study, sized);
  const title = titleOf(study, chart, plan);
  if (plan.problem !== null) {
    return { title, parts: [], key: null, notes: [], problem: problemInWords(plan.problem) };
  }
  const notes = plan.notes
    .filter(({ kind }) => kind !== 'size' || options.alone !== true)
    .map((note) => noteInWords(note));
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

/** Draws a graph: whole, or in parts where it is wider than the sheet, or its first rows where it is too high. */
export function drawGraph(
  whole: Graph,
  title: string,
  told: readonly string[],
  options: ChartOptions,
): ChartDrawing {
  const { terms, width, large, height = Number.POSITIVE_INFINITY } = options;
  const letters = lettersOf(whole);
  const laid = fitted(whole, width, height, large, letters);
  const { layout, graph, windows, style } = laid;
  const notes = [...told, ...laid.notes];
  const alt = chartInWords(graph, terms, notes);
  const parts = windows.map((window, i): Scene => {
    const sheet = drawSheet(layout, style, window);
    const part = windows.length > 1 ? `${title}, part ${i + 1} of ${windows.length}` : title;
    return { ...sheet, title: part, alt: i === 0 ? alt : `${part}. Part 1 tells all of the chart in words.` };
  });
  const sentences = [...readingOf(graph, terms), ...notes];
  const { keyWidth = width } = options;
  const key = drawKey(graph, terms, style, keyWidth, options.told === 'beside' ? [] : sentences);
  return { title, parts, key, notes: sentences, problem: null };
}

interface Fitted {
  readonly graph: Graph;
  readonly layout: Layout;
  readonly windows: readonly (Window | null)[];
  readonly style: SheetStyle;
  readonly notes: readonly string[];
}

/** Lays a graph out so that it fits the sheet; the rows above those that fit are left out, and that is told. */
function fitted(
  whole: Graph,
  width: number,
  height: number,
  large: boolean,
  letters: ReadonlyMap<string, string>,
): Fitted {
  let most = whole.rows.length;
  for (;;) {
    const graph = most === whole.rows.length ? whole : { ...whole, rows: whole.rows.slice(0, most) };
    const made = laidOut(graph, width, large, letters);
    const tallest = Math.max(
      ...made.windows.map((window) => sheetSize(made.layout, made.style, window).height),
    );
    if (tallest <= height || most <= 1) {
      if (most === whole.rows.length) return made;
      const rounds = whole.rows.every(({ kind }) => kind === 'round');
      const cut = noteInWords({ kind: 'rows-left-out', drawn: most, rows: whole.rows.length, rounds });
      return { ...made, notes: [cut, ...made.notes] };
    }
    most = Math.max(1, Math.min(most - 1, Math.floor((most * height) / tallest)));
  }
}

function laidOut(graph: Graph, width: number, large: boolean, letters: ReadonlyMap<string, string>): Fitted {
  const { usual, least, type, smallest } = large ? UNITS.large : UNITS.standard;
  let unit: number = usual;
  const style = (): SheetStyle => ({ unit, type, smallest, letters });
  const fits = (of: Layout, window: Window | null): boolean => {
    for (unit = usual; unit >= least - 1e-9; unit -= (usual - least) / 4) {
      if (sheetSize(of, style(), window).width <= width) return true;
    }
    unit = least;
    return false;
  };
  const rounds = graph.baseKind === 'chain' ? layOvals : layRounds;
  const whole = graph.form === 'rounds' ? rounds(graph) : layFlat(graph);
  if (fits(whole, null)) return { graph, layout: whole, windows: [null], style: style(), notes: [] };
  const sector = graph.form === 'rounds' ? sectorOf(whole) : null;
  if (sector !== null && fits(whole, sector.window)) {
    const note = sectorInWords(sector.times);
    return { graph, layout: whole, windows: [sector.window], style: style(), notes: [note] };
  }
  const notes: string[] = [];
  let layout = whole;
  if (graph.form === 'rounds') {
    layout = layFlat({ ...graph, form: 'flat' });
    notes.push(openedInWords);
  }
  unit = least;
  const { windows, isCut } = fittingParts(layout, style(), width);
  if (windows.length > 1) notes.push(partsInWords(windows.length, layout.graph.rows[0]!.way, OVERLAP));
  if (isCut) notes.push(cutInWords);
  return { graph: layout.graph, layout, windows, style: style(), notes };
}

/** Parts no wider than the sheet: what leans out of a part is given the room that it takes. */
function fittingParts(layout: Layout, style: SheetStyle, width: number): ReturnType<typeof partsOf> {
  const { unit, type } = style;
  let room = width;
  for (let tries = 0; ; tries++) {
    const parts = partsOf(layout, unit, type, room);
    const widest = Math.max(...parts.windows.map((window) => sheetSize(layout, style, window).width));
    if (widest <= width || tries === 3) return parts;
    room -= widest - width;
  }
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
  if (passes < 3 || (shape !== 'circle' && shape !== 'star')) return null;
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
