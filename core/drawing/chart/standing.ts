/**
 * How a stitch stands in a chart, whichever way its rows are laid: on what, how high, and leaning where. The layouts
 * say where its base would be and which way is out there. Draws nothing.
 */
import type { ChartRow, Node } from './graph.ts';
import { dot, minus, type Placed, type Point, plus, reach, unit } from './layout.ts';

/** Is it worked around the post of the stitch below? */
export function isRaised(node: Node): boolean {
  return node.site.stitch !== null && /^[fb]p\./.test(node.site.stitch);
}

/** How many rows past its foot it reaches. A spike that is told without a row goes into the one below, as in the key. */
function depthOf(node: Node): number {
  return (node.making?.below ?? 0) || (node.site.stitch?.startsWith('spike.') ? 1 : 0);
}

/** What a stitch really stands on: a spike goes past its foot into the rows below. */
export function underOf(node: Node, foot: Node): Node {
  let under = foot;
  for (let k = depthOf(node); k > 0 && under.feet[0] !== undefined; k--) under = under.feet[0];
  return under;
}

/** A stitch on its feet. Several feet, a post and a spike let it stand straight; on one foot it leans to its base. */
export function risen(
  node: Node,
  feet: readonly Point[],
  base: Point,
  out: Point,
  right: Point,
  height: number,
): Placed {
  const all = feet.length === 0 ? [base] : feet;
  const isOne = all.length === 1;
  const isStraight = !isOne || isRaised(node) || depthOf(node) > 0;
  const lean = isOne ? dot(minus(base, all[0]!), right) : 0;
  const top = plus(base, out, isStraight ? height : reach(height, lean));
  return { node, top, feet: all, up: isOne ? unit(minus(top, all[0]!), out) : out, arc: null };
}

/** Does a chain stand at the round's beginning that counts as nothing? It has no site of its own. */
export function standsUnseen({ trace, nodes }: ChartRow): boolean {
  const { stood } = trace;
  return stood !== null && stood.upright > 0 && nodes.every((node) => !node.site.turning);
}
