/**
 * Where the number of a round can be read: as near as can be to where the round begins, clear of stitches and of the
 * numbers before it. It looks at lines on the sheet; it knows no stitch and draws nothing.
 */
import type { GroupShape, PathShape, Scene, Shape } from '../scene.ts';
import { textWidth } from '../text-width.ts';
import type { Point } from './layout.ts';

type Line = readonly [x1: number, y1: number, x2: number, y2: number];

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Figures are about so high, as a part of the type. */
const FIGURE_HEIGHT = 0.72;

/** How far a number may stand from where its round begins, and in which steps it is looked for, in widths of a stitch. */
const FARTHEST = 1.5;
const STEP = 0.25;
const WAYS = 16;

function linesOfPath({ steps }: PathShape): readonly Line[] {
  const lines: Line[] = [];
  let at: readonly [number, number] | null = null;
  for (const step of steps) {
    if (step[0] === 'Z') continue;
    const to = [step.at(-2) as number, step.at(-1) as number] as const;
    if (step[0] !== 'M' && at !== null) {
      if (step[0] === 'C') {
        // The middle of the curve by its four points.
        const mid = [
          (at[0] + 3 * step[1] + 3 * step[3] + to[0]) / 8,
          (at[1] + 3 * step[2] + 3 * step[4] + to[1]) / 8,
        ] as const;
        lines.push([...at, ...mid], [...mid, ...to]);
      } else lines.push([...at, ...to]);
    }
    at = to;
  }
  return lines;
}

const moved = ({ x, y, turn }: GroupShape): ((px: number, py: number) => readonly [number, number]) => {
  const angle = (turn * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return (px, py) => [x + px * cos - py * sin, y + px * sin + py * cos];
};

/** Every line of shapes, where it lies on the sheet. */
export function linesOf(shapes: readonly Shape[]): readonly Line[] {
  return shapes.flatMap((shape): readonly Line[] => {
    if (shape.kind === 'path') return linesOfPath(shape);
    if (shape.kind === 'text') return [];
    const to = moved(shape);
    return linesOf(shape.shapes).map(([x1, y1, x2, y2]): Line => [...to(x1, y1), ...to(x2, y2)]);
  });
}

/** Does a line come into a box? By clipping (Liang and Barsky, 1984). */
function crosses([x1, y1, x2, y2]: Line, box: Box): boolean {
  let [from, to] = [0, 1];
  const [dx, dy] = [x2 - x1, y2 - y1];
  for (const [p, q] of [
    [-dx, x1 - box.left],
    [dx, box.right - x1],
    [-dy, y1 - box.top],
    [dy, box.bottom - y1],
  ] as const) {
    if (p === 0) {
      if (q <= 0) return false;
    } else if (p < 0) from = Math.max(from, q / p);
    else to = Math.min(to, q / p);
  }
  return from <= to;
}

/** The box of a number about its middle. */
export function boxOf(words: string, at: Point, size: number): Box {
  const [wide, high] = [textWidth(words, size, true) / 2, (size * FIGURE_HEIGHT) / 2];
  return { left: at.x - wide, right: at.x + wide, top: at.y - high, bottom: at.y + high };
}

const meets = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** A number, and the middle of where it is wanted. */
export interface Wanted {
  readonly words: string;
  readonly at: Point;
  readonly size: number;
}

/** Middles for numbers in their order, on a sheet with these shapes. `unit`: the width of a stitch, in points. */
export function clearSpots(
  wanted: readonly Wanted[],
  { width, height, shapes }: Pick<Scene, 'width' | 'height' | 'shapes'>,
  unit: number,
): readonly Point[] {
  const reach =
    FARTHEST * unit + Math.max(0, ...wanted.map(({ size, words }) => textWidth(words, size, true)));
  const all = linesOf(shapes);
  const taken: Box[] = [];
  return wanted.map(({ words, at, size }, index) => {
    const near = all.filter(([x1, y1, x2, y2]) => {
      const [left, right] = [Math.min(x1, x2), Math.max(x1, x2)];
      const [top, bottom] = [Math.min(y1, y2), Math.max(y1, y2)];
      return right > at.x - reach && left < at.x + reach && bottom > at.y - reach && top < at.y + reach;
    });
    const others = wanted.filter((_, i) => i !== index);
    const cost = (spot: Point): number => {
      const box = boxOf(words, spot, size);
      const off = Math.hypot(spot.x - at.x, spot.y - at.y);
      const hits =
        near.filter((line) => crosses(line, box)).length +
        4 * taken.filter((other) => meets(other, box)).length;
      // Nearer to where another round begins it would be read as that one's.
      const isOthers = others.some((other) => Math.hypot(spot.x - other.at.x, spot.y - other.at.y) < off);
      const isOff = box.left < 0 || box.top < 0 || box.right > width || box.bottom > height;
      return hits * 10 + (isOff ? 40 : 0) + (isOthers ? 5 : 0) + off / unit;
    };
    let best = at;
    let least = cost(at);
    for (let ring = 1; least >= 5 && ring * STEP <= FARTHEST; ring++) {
      for (let way = 0; way < WAYS; way++) {
        const angle = (2 * Math.PI * way) / WAYS;
        const spot = {
          x: at.x + Math.cos(angle) * ring * STEP * unit,
          y: at.y + Math.sin(angle) * ring * STEP * unit,
        };
        const own = cost(spot);
        if (own < least) [best, least] = [spot, own];
      }
    }
    taken.push(boxOf(words, best, size));
    return best;
  });
}
