/** What the tests of drawings share: shapes of a scene where they lie on the sheet, and the boxes of its words. */
import type { PathShape, Scene, Shape, TextShape } from '../../core/drawing/scene.ts';
import { textWidth } from '../../core/drawing/text-width.ts';

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface Lying {
  readonly name: string | null;
  readonly path?: PathShape;
  readonly text?: TextShape;
  readonly box: Box;
  /** Straight parts of a path. */
  readonly lines: readonly (readonly [number, number, number, number])[];
}

/** Every path and text with its place on the sheet. Groups are moved and never turned in schematics. */
export function lying(scene: Scene): readonly Lying[] {
  const out: Lying[] = [];
  const visit = (shape: Shape, x: number, y: number, name: string | null): void => {
    if (shape.kind === 'group') {
      if (shape.turn !== 0) throw new Error('a turned group has no box here');
      for (const inner of shape.shapes) visit(inner, x + shape.x, y + shape.y, shape.name ?? name);
    } else if (shape.kind === 'text') out.push({ name, text: shape, box: boxOfText(shape, x, y), lines: [] });
    else {
      const points = shape.steps.flatMap((step): (readonly [number, number])[] =>
        step[0] === 'Z' ? [] : [[x + (step.at(-2) as number), y + (step.at(-1) as number)]],
      );
      const lines = shape.steps.flatMap((step, i): Lying['lines'] => {
        const [a, b] = [points[i - 1], points[i]];
        return step[0] === 'L' && a && b ? [[...a, ...b] as const] : [];
      });
      const xs = points.map(([px]) => px);
      const ys = points.map(([, py]) => py);
      const box = {
        left: Math.min(...xs),
        right: Math.max(...xs),
        top: Math.min(...ys),
        bottom: Math.max(...ys),
      };
      out.push({ name, path: shape, box, lines });
    }
  };
  for (const shape of scene.shapes) visit(shape, 0, 0, null);
  return out;
}

/** From the baseline up to the height of capitals and figures (0.72 of the type), which is all that labels have. */
function boxOfText(text: TextShape, dx: number, dy: number): Box {
  const width = textWidth(text.words, text.size, text.bold);
  const back = text.anchor === 'start' ? 0 : text.anchor === 'middle' ? width / 2 : width;
  const high = text.size * 0.72;
  const [x, y] = [text.x + dx, text.y + dy];
  if (text.turn === -90) return { left: x - high, right: x, top: y - width + back, bottom: y + back };
  if (text.turn !== 0) throw new Error('only level and upright words are expected');
  return { left: x - back, right: x - back + width, top: y - high, bottom: y };
}

export const meet = (a: Box, b: Box): boolean =>
  a.left < b.right - 0.01 && b.left < a.right - 0.01 && a.top < b.bottom - 0.01 && b.top < a.bottom - 0.01;

/** Does a straight line come into a box? By clipping (Liang and Barsky, 1984). */
export function crosses([x1, y1, x2, y2]: readonly [number, number, number, number], box: Box): boolean {
  let [from, to] = [0, 1];
  const [dx, dy] = [x2 - x1, y2 - y1];
  for (const [p, q] of [
    [-dx, x1 - box.left],
    [dx, box.right - x1],
    [-dy, y1 - box.top],
    [dy, box.bottom - y1],
  ] as const) {
    if (p === 0) {
      if (q <= 0.01) return false;
    } else {
      const at = q / p;
      if (p < 0) from = Math.max(from, at);
      else to = Math.min(to, at);
    }
  }
  return from < to - 1e-6;
}
