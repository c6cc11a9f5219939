/**
 * The stitches of a chart and what each stands on, taken from the recording of worked rows: which rows there are,
 * which way each is read, and for every thing made its feet. Places nothing and draws nothing.
 */
import type { Making, RowTrace, TracedRow } from '../../fabric/index.ts';
import type { Site } from '../../fabric/site.ts';
import { type BaseStitch, baseOf } from '../../trade/stitches.ts';

export type Side = 'RS' | 'WS';

/** Something that stands in a chart and can be worked into. */
export interface Node {
  readonly site: Site;
  readonly kind: 'stitch' | 'space' | 'picot' | 'turning' | 'chain' | 'ring';
  readonly making: Making | null;
  /** Index of its row in the chart; -1 = what the chart stands on. */
  readonly row: number;
  /** Nodes that it stands on, in working order. */
  readonly feet: readonly Node[];
  /** The way its row is made, as of the row; 1 = of what lies below the chart. */
  readonly way: 1 | -1;
  /** It goes into the gap beside its foot: the node on the other side of it. */
  readonly beside: Node | null;
}

export interface ChartRow {
  readonly number: number | null;
  readonly kind: 'row' | 'round';
  readonly side: Side | null;
  /** -1 = it is read from right to left (rows) or clockwise; 1 = from left to right, anticlockwise for rounds. */
  readonly way: 1 | -1;
  /** In the order made. */
  readonly nodes: readonly Node[];
  readonly trace: RowTrace;
  /** Where passes of its longest repeat begin, with the end of the last; empty without one. */
  readonly bounds: readonly number[];
}

export interface Graph {
  readonly form: 'flat' | 'rounds';
  /** What the first row goes into: a foundation chain, a ring, or the row before. In the first row's order. */
  readonly base: readonly Node[];
  readonly baseKind: 'chain' | 'ring' | 'row';
  /** Chains of the ring; 0 = a ring of yarn. */
  readonly ring: number;
  readonly rows: readonly ChartRow[];
}

const KIND: Readonly<Record<Site['kind'], Node['kind']>> = {
  stitch: 'stitch',
  space: 'space',
  chain: 'chain',
  turning: 'turning',
  picot: 'picot',
  ring: 'ring',
  'row-end': 'chain',
  seam: 'stitch',
};

/** Largest ring whose chains are worked into one by one and that is drawn as a ring; a longer one is a tube. */
const LARGEST_RING = 16;

/** The graph of rows that follow one another. `firstSide`: side that faces on the first of them. */
export function graphOf(rows: readonly TracedRow[], sides: readonly (Side | null)[]): Graph {
  const known = new Map<Site, Node>();
  const first = rows[0]!.trace;
  const { base, baseKind } = standingOn(first, known);
  const inHole = first.makings.some(({ feet }) => feet.some(({ kind }) => kind === 'ring'));
  const inRing = first.ring !== null && (inHole || first.ring <= LARGEST_RING) && first.round;
  const made: ChartRow[] = [];
  // The first row is read from the right, unless its wrong side faces; a round anticlockwise.
  const about = first.round && baseKind === 'chain' && goAbout(base, nodesOf(first, 0, 1, new Map(known)));
  let way: 1 | -1 = inRing || about ? 1 : -1;
  rows.forEach(({ trace, number }, index) => {
    const side = sides[index] ?? null;
    if (index === 0) {
      if (side === 'WS') way = way === 1 ? -1 : 1;
    } else if (trace.turned) way = way === 1 ? -1 : 1;
    made.push({
      number,
      kind: trace.round ? 'round' : 'row',
      side,
      way,
      nodes: nodesOf(trace, index, way, known),
      trace,
      bounds: boundsOf(trace),
    });
  });
  return {
    form: (inRing || about) && rows.every(({ trace }) => trace.round) ? 'rounds' : 'flat',
    base,
    baseKind,
    ring: first.ring ?? 0,
    rows: made,
  };
}

/**
 * Does a round go about a foundation chain? Its chains are worked into once on the way out and again on the
 * way back, from the far end.
 */
function goAbout(base: readonly Node[], nodes: readonly Node[]): boolean {
  const ats = nodes.flatMap((node) => {
    const at = node.feet.length === 0 ? -1 : base.indexOf(node.feet[0]!);
    return at < 0 ? [] : [at];
  });
  const far = ats.lastIndexOf(Math.max(...ats));
  const out = ats.slice(0, far + 1);
  const back = ats.slice(far + 1);
  const rises = out.every((at, i) => i === 0 || at >= out[i - 1]!);
  const falls = back.every((at, i) => i === 0 || at <= back[i - 1]!);
  const chains = (worked: readonly number[]): number => new Set(worked).size;
  return base.length > 1 && back.length > 0 && chains(back) * 2 >= chains(out) - 2 && rises && falls;
}

/** Is it a round that is not turned before? All of such face one side. */
export function isPlainRound(row: ChartRow): boolean {
  return row.kind === 'round' && !row.trace.turned;
}

function nodesOf(trace: RowTrace, row: number, way: 1 | -1, known: Map<Site, Node>): readonly Node[] {
  const inBelow = new Map(trace.below.map((site, i) => [site, i]));
  return trace.sites.map((site, i) => {
    const making = trace.makings[i] ?? null;
    const feet = (making?.feet ?? []).flatMap((foot) => nodeOf(foot, row, known) ?? []);
    let beside: Node | null = null;
    const at = making?.gap === true ? inBelow.get(making.feet[0]!) : undefined;
    if (at !== undefined) {
      const { length } = trace.below;
      const before = trace.turned ? at + 1 : at - 1;
      const other = trace.below[trace.round ? (before + length) % length : before];
      beside = other === undefined ? null : (known.get(other) ?? null);
    }
    const node: Node = { site, kind: KIND[site.kind], making, row, way, feet, beside };
    known.set(site, node);
    return node;
  });
}

/** The node of a place; chains that the row itself laid at its edge become nodes when they are met. */
function nodeOf(site: Site, row: number, known: Map<Site, Node>): Node | null {
  const node = known.get(site);
  if (node !== undefined) return node;
  if (site.kind === 'row-end') return null;
  const made: Node = {
    site,
    kind: KIND[site.kind],
    making: null,
    row: row - 1,
    way: 1,
    feet: [],
    beside: null,
  };
  known.set(site, made);
  return made;
}

function standingOn(
  first: RowTrace,
  known: Map<Site, Node>,
): { base: readonly Node[]; baseKind: Graph['baseKind'] } {
  const node = (site: Site): Node => nodeOf(site, 0, known)!;
  if (first.ring !== null) {
    const holes = new Set(first.makings.flatMap(({ feet }) => feet.filter((foot) => foot.kind === 'ring')));
    for (const site of first.below) if (site.kind === 'ring') holes.add(site);
    return { base: [...holes].map(node), baseKind: 'ring' };
  }
  if (first.otherSide !== null) return { base: first.otherSide.map(node), baseKind: 'chain' };
  if (first.belowForm === 'chain' || first.below.every((site) => site.kind === 'chain')) {
    // Chains skipped at the hook rise as the edge, but for those that lie under its space.
    const edge = first.stood !== null && first.stood.on === null ? first.stood : null;
    // Chains made anew at the hook ("ch 3, dc in 4th ch from hook") are not among those below.
    const skipped = first.below.findIndex((site) => first.makings.some(({ feet }) => feet.includes(site)));
    const raised = edge === null ? 0 : Math.min(edge.upright + edge.space, Math.max(0, skipped));
    return { base: first.below.slice(raised).map(node), baseKind: 'chain' };
  }
  return { base: (first.turned ? first.below.slice().reverse() : first.below).map(node), baseKind: 'row' };
}

function boundsOf(trace: RowTrace): readonly number[] {
  let best: readonly number[] = [];
  let widest = 0;
  for (const { starts, end } of trace.passes) {
    const width = end - (starts[0] ?? end);
    if (starts.length > 1 && width > widest) {
      widest = width;
      best = [...starts, end];
    }
  }
  return best;
}

/** Heights of the stitches in a chart, in widths of a stitch. The ladder of the trade, drawn a little closer. */
const HEIGHTS: Readonly<Record<BaseStitch, number>> = {
  slip: 0.4,
  t1: 1.05,
  t2: 1.6,
  t3: 2.25,
  t4: 2.95,
  t5: 3.65,
  t6: 4.35,
  t7: 5.05,
};

export function heightOf(node: Node): number {
  const { site } = node;
  if (node.kind === 'turning') return Math.max(0.7, Math.min(site.chains * 0.78, 5));
  if (node.kind === 'chain') return 0.45;
  const base = HEIGHTS[baseOf(site.stitch ?? '') ?? site.base ?? 't1'];
  return site.stitch?.includes('ext.') === true ? base + 0.45 : base;
}

/** Stitches that stand out of their row: bobbles and the like. */
const STANDS_OUT = /^(?:cluster|bobble|popcorn|puff)\./;

/**
 * Heights in a row: one that stands out of short stitches is drawn a little above them and not at the height that it
 * would have by itself, as the fabric takes it in.
 */
export function heightsOf(nodes: readonly Node[]): (node: Node) => number {
  const plain = nodes
    .filter(
      ({ kind, site }) => kind === 'stitch' && site.base !== 'slip' && !STANDS_OUT.test(site.stitch ?? ''),
    )
    .map(heightOf)
    .sort((a, b) => a - b);
  const usual = plain[Math.floor(plain.length / 2)];
  if (usual === undefined) return heightOf;
  const most = Math.max(1.45, usual + 0.3);
  return (node) =>
    STANDS_OUT.test(node.site.stitch ?? '') ? Math.min(heightOf(node), most) : heightOf(node);
}

/** Least distance between two that follow one another in a row; those of one place crowd a little. */
export function apart(a: Node, b: Node): number {
  const room = (roomOf(a) + roomOf(b)) / 2;
  const fan =
    a.kind === 'stitch' &&
    b.kind === 'stitch' &&
    a.feet.length === 1 &&
    a.feet[0] === b.feet[0] &&
    a.beside === b.beside;
  return fan && a.feet[0]!.kind !== 'ring' ? room * 0.8 : room;
}

/** Are two things worked in one place? Each chain of a space that is worked into by itself is a place. */
export const sameFeet = (a: Node, b: Node): boolean =>
  a.feet.length > 0 &&
  a.feet.length === b.feet.length &&
  a.feet.every((foot, i) => foot === b.feet[i]) &&
  a.beside === b.beside &&
  a.making?.chain === b.making?.chain;

/** A row's things that take room, from left to right. */
export function inLine(row: ChartRow): readonly Node[] {
  const line = row.nodes.filter((node) => node.kind !== 'picot');
  return row.way === 1 ? line : line.slice().reverse();
}

/** Room that a node takes along its row, in widths of a stitch. */
export function roomOf(node: Node): number {
  const { site } = node;
  switch (node.kind) {
    case 'space':
      return site.chains <= 1 ? 0.72 : Math.min(0.4 + 0.38 * site.chains, 2.4);
    case 'picot':
      return 0;
    case 'turning':
      return 0.6;
    case 'chain':
      return 1;
    case 'ring':
      return 0;
    case 'stitch': {
      const stitch = site.stitch ?? '';
      if (/^(?:bobble|popcorn|cluster|puff)\./.test(stitch)) return 1.35;
      if (/^tog\d/.test(stitch) && node.feet.length <= 1) return 1.3;
      return site.base === 'slip' ? 0.8 : 1;
    }
  }
}
