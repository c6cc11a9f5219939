/**
 * Chains between the stitches of a round, in whatever shape the round is laid: each from the top of its neighbour over
 * an arc to the top of the next. Places no stitch.
 */
import type { ChartRow, Node } from './graph.ts';
import { arcOf, middle, overArc, type Placed, type Point, plus, unit } from './layout.ts';

/** The chains of a round, each from its neighbour to the next; the last one comes back to the first. */
export function layRoundSpaces(
  line: readonly Node[],
  row: ChartRow,
  places: Map<Node, Placed>,
  otherwise: (i: number) => Point,
): void {
  const n = line.length;
  const end = (i: number): Point => {
    const placed = places.get(line[(i + n) % n]!);
    if (placed === undefined || placed.arc !== null) return otherwise((i + n) % n);
    return plus(placed.top, placed.up, -0.12);
  };
  line.forEach((node, i) => {
    if (node.kind !== 'space') return;
    const rises = node.site.turning && row.trace.stood?.counts !== true && i === 0;
    const from = rises ? plus(end(i + 1), unit(otherwise(i)), -1.2) : end(i - 1);
    const to = end(i + 1);
    const out = unit(middle([from, to]));
    const arc = arcOf(from, to, out, node.site.chains);
    places.set(node, { node, top: overArc(arc, out), feet: [], up: out, arc });
  });
}
