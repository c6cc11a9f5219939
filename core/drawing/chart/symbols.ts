/**
 * The symbols of stitches, as shapes. Their construction is the trade's (resources/trade/symbols.json): slashes on a
 * stem are yarn overs, feet together is one place, tops together is closed together. Draws where it is told; knows
 * nothing of rows or sheets.
 */
import { baseOf } from '../../trade/stitches.ts';
import { slashesOf } from '../../trade/symbols.ts';
import { type GroupShape, group, type PathStep, path, type Role, type Shape, words } from '../scene.ts';
import type { Point } from './layout.ts';

/** How a symbol is inked. */
export interface Ink {
  readonly role: Role;
  readonly stroke: number;
  /** Width of a stitch, in points. */
  readonly unit: number;
}

/** A stitch to be drawn, in points on the sheet, y growing downwards. */
export interface Sign {
  readonly id: string;
  readonly top: Point;
  readonly feet: readonly Point[];
  /** Outwards, of length 1. */
  readonly up: Point;
  /** Stems that share one foot and one top; 1 = one stem a foot. */
  readonly strands: number;
  readonly loop: 'back' | 'front' | 'third' | null;
  /** Letter of a stitch that has no symbol. */
  readonly letter: string | null;
}

const add = (a: Point, b: Point, k = 1): Point => ({ x: a.x + b.x * k, y: a.y + b.y * k });
const sub = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y });
const along = (a: Point, b: Point, t: number): Point => add(a, sub(b, a), t);
function norm(a: Point, otherwise: Point): Point {
  const length = Math.hypot(a.x, a.y);
  return length < 1e-6 ? otherwise : { x: a.x / length, y: a.y / length };
}
const side = (up: Point): Point => ({ x: -up.y, y: up.x });

const M = (p: Point): PathStep => ['M', p.x, p.y];
const L = (p: Point): PathStep => ['L', p.x, p.y];
const C = (a: Point, b: Point, p: Point): PathStep => ['C', a.x, a.y, b.x, b.y, p.x, p.y];

function line(a: Point, b: Point, { role, stroke }: Ink): Shape {
  return path([M(a), L(b)], { role, stroke });
}

/** Distance of control points for a quarter of an ellipse. */
const ROUND = 0.5523;

/** An ellipse about `at`, `way` being the direction of its first half-axis. */
export function oval(at: Point, way: Point, a: number, b: number, ink: Ink, filled = false): Shape {
  const across = side(way);
  const p = (x: number, y: number): Point => add(add(at, way, x * a), across, y * b);
  return path(
    [
      M(p(1, 0)),
      C(p(1, ROUND), p(ROUND, 1), p(0, 1)),
      C(p(-ROUND, 1), p(-1, ROUND), p(-1, 0)),
      C(p(-1, -ROUND), p(-ROUND, -1), p(0, -1)),
      C(p(ROUND, -1), p(1, -ROUND), p(1, 0)),
      ['Z'],
    ],
    { role: ink.role, stroke: ink.stroke, filled },
  );
}

/** A chain of length `long` lying in the direction `way`. */
export function chain(at: Point, way: Point, long: number, ink: Ink): GroupShape {
  const half = long / 2 - ink.stroke / 2;
  return group([oval(at, way, half, Math.min(0.21 * ink.unit, half * 0.62), ink)], 0, 0, 0, 'chain');
}

export function slip(at: Point, way: Point, ink: Ink): Shape {
  return oval(at, way, 0.19 * ink.unit, 0.13 * ink.unit, ink, true);
}

/** The bar across a top, or across the middle of the shortest stitch. */
function bar(at: Point, across: Point, half: number, ink: Ink): Shape {
  return line(add(at, across, -half), add(at, across, half), ink);
}

/** Slashes on a stem, or the cross of the shortest stitch, about the point `t` of its way. */
function marks(id: string, at: (t: number) => Point, way: Point, long: number, ink: Ink, short = 1): Shape[] {
  const u = ink.unit;
  const base = baseOf(id);
  const across = side(way);
  if (base === 't1') {
    // On a spike the cross stays in the stitch's own row, clear of those that its tail goes past.
    const t = id.startsWith('spike.') ? Math.max(0.5, 1 - (0.35 * u) / long) : 0.5;
    return [group([bar(at(t), across, 0.29 * u, ink)], 0, 0, 0, 'cross')];
  }
  const n = slashesOf(id);
  const gap = Math.min(0.3 * u, (long * 0.5) / Math.max(1, n));
  const slant = norm(add(across, way, 0.55), across);
  return Array.from({ length: n }, (_, i) => {
    // On a stem that reaches further down they stay in the stitch's own row.
    const usual = (1 + 0.62 * Math.max(1, n + 1)) * u;
    const t = 1 - (Math.min(long, usual) * 0.42 + (i - (n - 1) / 2) * gap) / Math.max(long, 1);
    return group([bar(at(t), slant, 0.25 * u * short, ink)], 0, 0, 0, 'slash');
  });
}

function hook(foot: Point, up: Point, front: boolean, ink: Ink): { shape: Shape; from: Point } {
  const u = ink.unit;
  const across = side(up);
  const k = front ? 1 : -1;
  const from = add(add(foot, up, 0.1 * u), across, -0.2 * u * k);
  const low = add(foot, up, -0.22 * u);
  const end = add(add(foot, up, 0.02 * u), across, 0.24 * u * k);
  const shape = path(
    [
      M(from),
      C(add(from, up, -0.22 * u), add(low, across, -0.16 * u * k), low),
      C(add(low, across, 0.18 * u * k), add(end, up, -0.14 * u), end),
    ],
    { role: ink.role, stroke: ink.stroke },
  );
  return { shape, from };
}

/** The arc under a foot that says which loop: open upwards for the back, downwards for the front. */
function loopMark(foot: Point, up: Point, loop: NonNullable<Sign['loop']>, ink: Ink): Shape {
  const u = ink.unit;
  const across = side(up);
  const at = add(foot, up, 0.02 * u);
  const depth = loop === 'third' ? 0 : loop === 'back' ? -0.2 * u : 0.2 * u;
  const rim = add(at, up, depth < 0 ? 0.06 * u : -0.1 * u);
  const [a, b] = [add(rim, across, -0.33 * u), add(rim, across, 0.33 * u)];
  const steps = [
    M(a),
    C(add(add(a, across, 0.12 * u), up, depth), add(add(b, across, -0.12 * u), up, depth), b),
  ];
  return group([path(steps, { role: ink.role, stroke: ink.stroke })], 0, 0, 0, `loop ${loop}`);
}

/** One stitch. Its group is named by its id. */
export function stitch(sign: Sign, ink: Ink): GroupShape {
  const { id, top, up, loop } = sign;
  const u = ink.unit;
  const shapes: Shape[] = [];
  const base = baseOf(id);
  const foot = sign.feet[0]!;
  const name = `stitch ${id}`;
  if (base === 'slip' && sign.letter === null) {
    const way = norm(side(up), { x: 1, y: 0 });
    shapes.push(slip(along(foot, top, 0.5), way, ink));
    if (loop !== null) shapes.push(loopMark(foot, up, loop, ink));
    return group(shapes, 0, 0, 0, name);
  }
  const across = side(up);
  const raised = /^([fb])p\./.exec(id);
  const tip = add(top, up, -0.1 * u);
  const gathered = /^(?:[fb]p\.)?(cluster|bobble|popcorn|puff|tog\d+)\./.exec(id)?.[1] ?? null;
  const kind = gathered?.startsWith('tog') === true ? 'tog' : gathered;
  const wide = base === 't1' ? 0.29 : 0.33;
  if (kind !== null && sign.feet.length === 1 && sign.strands > 1) {
    shapes.push(...bunch(sign, kind, tip, ink));
  } else {
    for (const from of sign.feet) {
      const way = norm(sub(top, from), up);
      let start = add(from, way, 0.14 * u);
      if (raised !== null) {
        const hooked = hook(from, way, raised[1] === 'f', ink);
        shapes.push(group([hooked.shape], 0, 0, 0, raised[1] === 'f' ? 'hook front' : 'hook back'));
        start = hooked.from;
      }
      const end = base === 't1' && kind === null ? add(top, way, -0.16 * u) : tip;
      const long = Math.hypot(end.x - start.x, end.y - start.y);
      if (sign.letter === null) {
        shapes.push(line(start, end, ink));
        shapes.push(...marks(id, (t) => along(start, end, t), norm(sub(end, start), up), long, ink));
      } else shapes.push(...boxed(sign.letter, start, end, ink));
    }
    if (base !== 't1' || sign.feet.length > 1) {
      if (base !== 't1') shapes.push(bar(tip, across, wide * u, ink));
    }
  }
  if (id.includes('fnd.')) shapes.push(chain(add(foot, up, -0.12 * u), across, 0.8 * u, ink));
  if (id.startsWith('rev.')) shapes.push(tilde(add(top, up, 0.12 * u), across, up, ink));
  if (loop !== null)
    for (const from of sign.feet) shapes.push(loopMark(from, norm(sub(top, from), up), loop, ink));
  return group(shapes, 0, 0, 0, name);
}

/** Stems from one foot closed at one top: bobble, cluster, puff, popcorn, a decrease worked in one place. */
function bunch(sign: Sign, kind: string, tip: Point, ink: Ink): Shape[] {
  const u = ink.unit;
  const { up, id } = sign;
  const n = Math.min(sign.strands, 9);
  const across = side(up);
  const start = add(sign.feet[0]!, up, 0.12 * u);
  const end = kind === 'popcorn' ? add(tip, up, -0.12 * u) : tip;
  const long = Math.hypot(end.x - start.x, end.y - start.y);
  const shapes: Shape[] = [];
  const widest = kind === 'puff' ? 0.52 : 0.62;
  for (let k = 0; k < n; k++) {
    const out = n === 1 ? 0 : ((k - (n - 1) / 2) / ((n - 1) / 2)) * widest * u;
    const [a, b] = [
      add(along(start, end, 0.35), across, out * 1.25),
      add(along(start, end, 0.72), across, out * (kind === 'popcorn' ? 1.15 : 1.2)),
    ];
    const last = kind === 'popcorn' ? add(end, across, out * 0.45) : end;
    shapes.push(path([M(start), C(a, b, last)], { role: ink.role, stroke: ink.stroke * 0.85 }));
    if (kind === 'puff') continue;
    const at = (t: number): Point => {
      const s = 1 - t;
      const mix = (f: (p: Point) => number): number =>
        s * s * s * f(start) + 3 * s * s * t * f(a) + 3 * s * t * t * f(b) + t * t * t * f(last);
      return { x: mix((p) => p.x), y: mix((p) => p.y) };
    };
    const thin = { ...ink, stroke: ink.stroke * 0.85, unit: u };
    shapes.push(...marks(id, (t) => at(Math.min(0.9, t - 0.08)), up, long, thin, n > 3 ? 0.42 : 0.55));
  }
  if (kind === 'popcorn') shapes.push(oval(add(tip, up, 0.02 * u), across, 0.34 * u, 0.15 * u, ink));
  else if (kind === 'cluster' || kind === 'tog') shapes.push(bar(tip, across, 0.36 * u, ink));
  return shapes;
}

/** A letter in a box on the stem, for a stitch that has no symbol of the trade. */
function boxed(letter: string, start: Point, end: Point, ink: Ink): Shape[] {
  const u = ink.unit;
  const at = along(start, end, 0.5);
  const way = norm(sub(end, start), { x: 0, y: -1 });
  const h = 0.36 * u;
  const box: PathStep[] = [
    ['M', at.x - h, at.y - h],
    ['L', at.x + h, at.y - h],
    ['L', at.x + h, at.y + h],
    ['L', at.x - h, at.y + h],
    ['Z'],
  ];
  const shapes: Shape[] = [
    path(box, { role: ink.role, stroke: ink.stroke }),
    words(letter, at.x, at.y + 0.2 * u, { size: 0.56 * u, anchor: 'middle', bold: true, role: ink.role }),
  ];
  const reach = Math.hypot(end.x - start.x, end.y - start.y) / 2;
  if (reach > h) {
    shapes.push(line(start, add(at, way, -h), ink), line(add(at, way, h), end, ink));
  }
  return shapes;
}

function tilde(at: Point, across: Point, up: Point, ink: Ink): Shape {
  const u = ink.unit;
  const [a, b] = [add(at, across, -0.28 * u), add(at, across, 0.28 * u)];
  const c = add(add(at, across, -0.1 * u), up, 0.2 * u);
  const d = add(add(at, across, 0.1 * u), up, -0.2 * u);
  return path([M(a), C(c, d, b)], { role: ink.role, stroke: ink.stroke });
}

/** A triangle where yarn is joined (open) or cut (solid); its tip points the way. */
export function triangle(at: Point, way: Point, solid: boolean, ink: Ink): Shape {
  const u = ink.unit;
  const across = side(way);
  const back = add(at, way, -0.42 * u);
  return path([M(at), L(add(back, across, 0.22 * u)), L(add(back, across, -0.22 * u)), ['Z']], {
    role: ink.role,
    stroke: ink.stroke,
    filled: solid,
  });
}

/** Chains upon one another from a foot to a top. */
export function stack(foot: Point, top: Point, n: number, ink: Ink): Shape[] {
  const u = ink.unit;
  const way = norm(sub(top, foot), { x: 0, y: -1 });
  const height = Math.hypot(top.x - foot.x, top.y - foot.y);
  const each = Math.min(0.84 * u, Math.max(0.1, height - 0.02 * u) / Math.max(1, n));
  const lead = Math.max(0.04 * u, height - each * n);
  return Array.from({ length: n }, (_, i) =>
    chain(add(foot, way, lead + (i + 0.5) * each), way, each * 0.98, ink),
  );
}
