/**
 * Where rounds have their corners: spaces or middle stitches of groups made in one place that lie above one another
 * through all rounds, three to six of them. Looks only; lays nothing out.
 */
import type { ChartRow, Node } from './graph.ts';

export interface Corners {
  readonly count: number;
  /** For each round its corner nodes, in the order made. */
  readonly rounds: readonly (readonly Node[])[];
  /** For each round, which corner each of them is, counted anticlockwise. */
  readonly order: readonly (readonly number[])[];
}

const FEWEST = 3;
const MOST = 6;

/** May a node be a corner: the space in the middle of a group, or the middle one of three or more of one place. */
function isCorner(row: ChartRow, i: number): boolean {
  const node = row.nodes[i]!;
  const { length } = row.nodes;
  const [before, after] = [row.nodes[(i - 1 + length) % length]!, row.nodes[(i + 1) % length]!];
  if (node.kind === 'space') {
    if (node.site.turning || before.kind !== 'stitch' || after.kind !== 'stitch') return false;
    const foot = before.feet[before.feet.length - 1];
    return foot !== undefined && foot === after.feet[0];
  }
  if (node.kind !== 'stitch') return false;
  const { unit } = node.site;
  return unit !== null && unit.of >= 3 && unit.at * 2 === unit.of - 1;
}

/** The corners of rounds, or null when they have none that hold through all of them. */
export function cornersOf(rows: readonly ChartRow[]): Corners | null {
  const last = rows[rows.length - 1];
  if (last === undefined || rows.length < 2) return null;
  // A turned round makes "in the order made" run the other way; corners keep their number by what they stand on.
  for (let count = FEWEST; count <= MOST; count++) {
    const found = chosen(rows, count);
    if (found !== null) return found;
  }
  return null;
}

function candidates(row: ChartRow): readonly Node[] {
  return row.nodes.filter((_, i) => isCorner(row, i));
}

function chosen(rows: readonly ChartRow[], count: number): Corners | null {
  const rounds: Node[][] = [];
  const order: number[][] = [];
  let below: readonly Node[] | null = null;
  for (const [index, row] of rows.entries()) {
    const all = candidates(row);
    let nodes: Node[];
    if (below === null) {
      nodes = firstCorners(row, all, count);
    } else {
      const under: readonly Node[] = below;
      nodes = all.filter((node) => standsOn(row, node).some((foot) => under.includes(foot)));
    }
    if (nodes.length !== count) return null;
    if (index === 0) order.push(nodes.map((_, k) => k));
    else {
      const under: readonly Node[] = below!;
      const numbers = nodes.map((node) => {
        const at = under.findIndex((one) => standsOn(row, node).includes(one));
        return order[index - 1]![at] ?? -1;
      });
      if (numbers.some((k) => k < 0) || new Set(numbers).size !== count) return null;
      order.push(numbers);
    }
    rounds.push(nodes);
    below = nodes;
  }
  return { count, rounds, order };
}

/** Corners of the first round: its spaces, or, in a round without, the groups of the next are asked. */
function firstCorners(row: ChartRow, all: readonly Node[], count: number): Node[] {
  const spaces = row.nodes.filter((node) => node.kind === 'space' && !node.site.turning);
  const longest = Math.max(0, ...spaces.map((node) => node.site.chains));
  const long = spaces.filter((node) => node.site.chains === longest);
  if (long.length === count) return long;
  return all.length === count ? [...all] : [];
}

/** What a corner stands on: a space has the feet of the stitch before it. */
function standsOn(row: ChartRow, node: Node): readonly Node[] {
  if (node.kind !== 'space') return node.feet;
  const i = row.nodes.indexOf(node);
  const before = row.nodes[(i - 1 + row.nodes.length) % row.nodes.length];
  return before?.feet ?? [];
}
