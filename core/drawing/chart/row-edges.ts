/**
 * What begins and ends a row in a chart besides its stitches: slip stitches, chains that do not count, where a spiral
 * begins, yarn cut or joined. Draws no stitch.
 */
import { group, path, type Shape } from '../scene.ts';
import { type ChartRow, heightOf } from './graph.ts';
import { dot, type Layout, middle, minus, type Point, plus, unit } from './layout.ts';
import { isRaised, standsUnseen } from './standing.ts';
import { type Ink, slip, stack, triangle } from './symbols.ts';

/** What begins and ends a row besides its stitches: slip stitches, chains that do not count, yarn cut or joined. */
export function edgeShapes(
  layout: Layout,
  row: ChartRow,
  index: number,
  ink: Ink,
  to: (p: Point) => Point,
  /** Whether the part that is drawn holds the row's first and its last stitch. */
  begins: boolean,
  ends: boolean,
): Shape[] {
  return [
    ...(begins ? beginning(layout, row, index, ink, to) : []),
    ...(ends ? ending(layout, row, index, ink, to) : []),
  ];
}

/** A point turned about the centre. */
function turned({ x, y }: Point, angle: number): Point {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return { x: x * c - y * s, y: x * s + y * c };
}

/** The middle of some feet, as far back as the last of them. */
function outermost(feet: readonly Point[], back: Point): Point {
  const at = middle(feet);
  return plus(at, back, Math.max(...feet.map((foot) => dot(minus(foot, at), back))));
}

function beginning(layout: Layout, row: ChartRow, index: number, ink: Ink, to: (p: Point) => Point): Shape[] {
  const { places, graph } = layout;
  const { trace } = row;
  const shapes: Shape[] = [];
  const start = layout.starts[index]!;
  const first = row.nodes.find((node) => node.kind !== 'picot');
  const placed = first === undefined ? undefined : places.get(first);
  const up = placed?.up ?? { x: 0, y: 1 };
  const back = { x: -start.toward.x, y: -start.toward.y };
  const { stood } = trace;
  const unseen = standsUnseen(row);
  const behind = (point: Point, far: number): Point =>
    layout.shape === 'circle'
      ? turned(point, (-row.way * far) / Math.hypot(point.x, point.y))
      : plus(point, back, far);
  if (unseen && stood !== null && placed !== undefined) {
    // Beside a stitch that hooks around a post it stands on the row, as any other.
    const under = isRaised(placed.node)
      ? plus(placed.top, placed.up, -heightOf(placed.node))
      : outermost(placed.feet.length > 0 ? placed.feet : [placed.top], back);
    const tall = Math.min(stood.upright * 0.78, 4);
    let foot = plus(under, back, 0.62);
    let rising = up;
    if (layout.shape === 'circle') {
      // About a ring it stands on the same circle as the first stitch.
      rising = unit(behind(placed.top, 0.95));
      foot = plus({ x: 0, y: 0 }, rising, Math.hypot(under.x, under.y) + 0.08);
    }
    const top = plus(foot, rising, tall);
    shapes.push(group(stack(to(foot), to(top), stood.upright, ink), 0, 0, 0, `turning ${stood.upright}`));
  }
  if (trace.joined && placed !== undefined && (trace.closing === 'slip' || trace.closing === null)) {
    const at = plus(behind(placed.top, unseen ? 1.5 : 0.66), placed.up, -0.08);
    shapes.push(group([slip(to(at), { x: back.x, y: -back.y }, ink)], 0, 0, 0, 'join'));
  }
  trace.travelled.forEach((making, k) => {
    const under = [...places.values()].find(({ node }) => node.site === making.feet[0]);
    if (under === undefined || under.node.row < -1) return;
    const at = plus(under.top, under.up, under.arc === null ? 0.2 : 0.26);
    const shifted = under.arc === null ? at : plus(at, back, 0.3 * (trace.travelled.length - k));
    shapes.push(group([slip(to(shifted), { x: back.x, y: -back.y }, ink)], 0, 0, 0, 'travel'));
  });
  const spiral = graph.form === 'rounds' && !trace.joined;
  if (spiral && placed !== undefined) {
    const foot = middle(placed.feet);
    const line = [plus(foot, back, 0.5), plus(placed.top, back, 0.62)].map(to);
    const shape = path(
      [
        ['M', line[0]!.x, line[0]!.y],
        ['L', line[1]!.x, line[1]!.y],
      ],
      {
        role: 'measure',
        stroke: ink.unit / 14,
        dash: [ink.unit / 9, ink.unit / 7],
      },
    );
    shapes.push(group([shape], 0, 0, 0, 'marker'));
  }
  const joinsYarn = trace.row.items.some((item) => item.type === 'attach');
  if (joinsYarn && placed !== undefined) {
    const foot = placed.feet[0] ?? placed.top;
    const at = plus(plus(foot, back, 0.55), up, 0.1);
    shapes.push(
      group(
        [triangle(to(at), { x: start.toward.x, y: -start.toward.y }, false, ink)],
        0,
        0,
        0,
        'yarn joined',
      ),
    );
  }
  return shapes;
}

function ending(
  { places, graph, starts }: Layout,
  row: ChartRow,
  index: number,
  ink: Ink,
  to: (p: Point) => Point,
): Shape[] {
  const onward = starts[index]!.toward;
  const back = { x: -onward.x, y: -onward.y };
  const last = row.nodes.findLast((node) => node.kind !== 'picot');
  const end = last === undefined ? undefined : places.get(last);
  if (!row.trace.fastened || end === undefined) return [];
  const at = plus(
    plus(end.top, end.up, 0.55),
    graph.form === 'flat' ? onward : back,
    graph.form === 'flat' ? 0.3 : 0,
  );
  return [group([triangle(to(at), { x: -end.up.x, y: end.up.y }, true, ink)], 0, 0, 0, 'yarn cut')];
}
