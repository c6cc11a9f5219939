/**
 * A schematic as a scene: the outline of one size or of all nested, its lengths at dimension lines with their numbers
 * in the pattern's notation, or with letters and a key where the numbers are too long. It reckons no length; the scale
 * and the places are its own.
 */
import { lengthList } from '../study/length-list.ts';
import type { Units } from '../trade/units.ts';
import type { Point } from './flat-rows.ts';
import type { Measured } from './outline.ts';
import { type Dimension, depthOf, type PlacedDimension, placeSide } from './placing.ts';
import { group, type PathStep, path, type Scene, type Shape, words } from './scene.ts';
import { lengthLabel, type Schematic, type SchematicLength } from './schematic.ts';
import { altOf, drawnIn, hindered, noteOf } from './schematic-words.ts';
import type { Sketch } from './sketch.ts';
import { textWidth, wrapped } from './text-width.ts';

export interface SceneOptions {
  readonly units: Units;
  /** Indexes of the sizes whose numbers are shown, in order. */
  readonly sizes: readonly number[];
  /** Labels of all sizes. */
  readonly labels: readonly string[];
  /** The size whose outline is drawn, and whether the other sizes shown are drawn about it. */
  readonly focus: number;
  readonly nested: boolean;
  /** Height of the type, in points. */
  readonly type: number;
  /** Most that the sheet may be wide and the drawing high, in points. */
  readonly width: number;
  readonly height: number;
  /** Points to a centimetre at most, so that drawings of one pattern are to one scale. */
  readonly scale: number;
  /** The key stands under the drawing, or is told elsewhere. */
  readonly key: 'below' | 'elsewhere';
  /** Names of pieces in the reader's terms. */
  readonly say: (words: string) => string;
}

/** A length as the reader is told it. */
export interface ToldLength {
  /** Null where its numbers stand at its line. */
  readonly letter: string | null;
  readonly label: string;
  readonly words: string;
}

export interface DrawnSchematic {
  readonly scene: Scene;
  readonly lengths: readonly ToldLength[];
  readonly notes: readonly string[];
  readonly title: string;
}

/** Letters that are not mistaken for numbers. */
const LETTERS = 'ABCDEFGHJKLMNPQRSTUVWXYZ';

export function letterOf(index: number): string {
  const letter = LETTERS[index % LETTERS.length]!;
  return index < LETTERS.length ? letter : `${letterOf(Math.floor(index / LETTERS.length) - 1)}${letter}`;
}

/** Longest side that a drawing has at least, in points and in heights of its type: small pieces are enlarged to it. */
const SMALLEST = { points: 90, types: 9 } as const;
/** Outlines no farther apart than this, in points, are one line to the eye. */
const APART = 0.75;
const MARGIN = 4;

/**
 * The scene of a schematic, drawn in another of the sizes shown where the one in focus has no outline; null where none
 * of them has.
 */
export function drawSchematic(schematic: Schematic, asked: SceneOptions): DrawnSchematic | null {
  const has = (size: number) => schematic.sketches[size] != null;
  const focus = [asked.focus, ...asked.sizes].find(has);
  if (focus === undefined) return null;
  const options = { ...asked, focus };
  const sketch = schematic.sketches[focus]!;
  const nested = options.nested && options.sizes.length > 1;
  const others = nested
    ? options.sizes.flatMap((size) => (size === options.focus ? [] : (schematic.sketches[size] ?? [])))
    : [];
  const widest = Math.max(sketch.width, ...others.map(({ width }) => width));
  const highest = Math.max(sketch.height, ...others.map(({ height }) => height));
  const shown = schematic.lengths.filter((length) =>
    options.sizes.some((size) => length.lengths[size] != null),
  );
  const told = shown.map((length) => ({
    length,
    label: lengthLabel(length, options.say),
    words: lengthList(
      options.sizes.map((size) => length.lengths[size] ?? null),
      options.units,
    ),
  }));
  const natural = Math.min(options.scale, options.width / widest, options.height / highest);
  const smallest = Math.max(SMALLEST.points, SMALLEST.types * options.type);
  const enlarged = Math.max(natural, Math.min(smallest / Math.max(widest, highest), options.width / widest));
  const attempt = (scale: number, letters: boolean) => layOut(sketch, others, told, scale, letters, options);
  let made = attempt(enlarged, false);
  const crowded = made === null;
  made ??= attempt(enlarged, true)!;
  // Labels beside it take room of their own: what is left is the drawing's.
  for (let i = 0; i < 6 && made.width > options.width; i++) {
    const over = made.width - options.width;
    const scale: number = made.scale * Math.max(0.3, (widest * made.scale - over) / (widest * made.scale));
    made = (crowded ? null : attempt(scale, false)) ?? attempt(scale, true)!;
  }
  return finish(schematic, sketch, made, options);
}

/** Sentences about pieces of a schematic that have no outline in sizes that are shown. */
export function undrawnIn(
  schematic: Schematic,
  { sizes, labels, say }: Pick<SceneOptions, 'sizes' | 'labels' | 'say'>,
): readonly string[] {
  const shown = schematic.hindered.filter(({ size }) => sizes.includes(size));
  const sentences = shown.map(({ piece, row, why }) => {
    const own = shown.filter((other) => other.piece === piece && other.row === row && other.why === why);
    const named = own.map(({ size }) => labels[size]!);
    return hindered(say(piece), row, why, labels.length === 1 ? null : named);
  });
  return [...new Set(sentences)];
}

interface Told {
  readonly length: SchematicLength;
  readonly label: string;
  readonly words: string;
}

interface LaidOut {
  readonly scale: number;
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
  /** Other sizes are seen about the one in focus. */
  readonly nested: boolean;
  readonly lengths: readonly ToldLength[];
}

/** Null where numbers do not fit at their lines and letters were not asked for. */
function layOut(
  sketch: Sketch,
  others: readonly Sketch[],
  told: readonly Told[],
  scale: number,
  letters: boolean,
  options: SceneOptions,
): LaidOut | null {
  const { type } = options;
  const measures = new Map(sketch.measures.map((measure) => [measure.key, measure]));
  const width = sketch.width * scale;
  const height = sketch.height * scale;
  let count = 0;
  const entries = told.map(({ length, label, words: numbers }) => {
    const measure = measures.get(length.key) ?? null;
    const letter = letters ? letterOf(count++) : null;
    return { measure, letter, label, words: numbers };
  });
  const dimensions = entries.flatMap(({ measure, letter, words: numbers }) =>
    measure === null ? [] : [dimensionOf(measure, letter ?? numbers, letter !== null, sketch, scale, type)],
  );
  const alone = options.sizes.length === 1;
  if (!letters) {
    const fits = ({ from, to, along }: Dimension) => along <= to - from - 2;
    if (!alone && !dimensions.every(fits)) return null;
    if (alone && dimensions.some(({ from, to, along }) => along > Math.max(to - from, options.width * 0.45)))
      return null;
  }
  // The others stand on the same middle and the same lower edge.
  const upright = dimensions.filter(({ side }) => side === 'left' || side === 'right');
  // Leaders of a width that is more than the outline shows (a round that lies in folds) go up beside it.
  const across = dimensions.filter(({ side }) => side === 'below' || side === 'above');
  const wider = Math.max(0, ...others.map((other) => ((other.width - sketch.width) / 2) * scale));
  const reach = {
    left: Math.max(wider, ...across.map(({ from }) => -from)),
    right: Math.max(width + wider, ...across.map(({ to }) => to)),
    // Labels that are longer than their upright lines keep clear of those across.
    below: Math.max(0, ...upright.map(({ from, to, along }) => Math.max(-from, (along - to - from) / 2))),
    above: Math.max(
      height,
      ...others.map((other) => other.height * scale),
      ...upright.map(({ from, to, along }) => Math.max(to, (from + to + along) / 2)),
    ),
  };
  const sides = {
    below: placeSide(
      dimensions.filter(({ side }) => side === 'below'),
      reach.below,
    ),
    above: placeSide(
      dimensions.filter(({ side }) => side === 'above'),
      reach.above,
    ),
    left: placeSide(
      dimensions.filter(({ side }) => side === 'left'),
      reach.left,
    ),
    right: placeSide(
      dimensions.filter(({ side }) => side === 'right'),
      reach.right,
    ),
  };
  const all = [...sides.below, ...sides.above, ...sides.left, ...sides.right];
  const acrossEnds = [...sides.below, ...sides.above].flatMap(({ middle, dimension }) => [
    middle - dimension.along / 2,
    middle + dimension.along / 2,
  ]);
  const upEnds = [...sides.left, ...sides.right].flatMap(({ middle, dimension }) => [
    middle - dimension.along / 2,
    middle + dimension.along / 2,
  ]);
  const left = Math.max(depthOf(sides.left, reach.left), ...acrossEnds.map((x) => -x));
  const right = Math.max(depthOf(sides.right, reach.right), ...acrossEnds);
  const below = Math.max(depthOf(sides.below, reach.below), ...upEnds.map((y) => -y));
  const above = Math.max(depthOf(sides.above, reach.above), ...upEnds);
  const at = ({ x, y }: Point): Point => ({ x: left + MARGIN + x * scale, y: above + MARGIN - y * scale });
  const seen = others.filter((other) => apart(sketch, other, scale));
  const shapes = [
    groundShapes(sketch, at),
    ...seen.map((other) =>
      nestedShapes(other, (point) => at({ x: point.x + (sketch.width - other.width) / 2, y: point.y })),
    ),
    outlineShapes(sketch, at),
    ...all.map((one) => dimensionShapes(one, left + MARGIN, above + MARGIN, type)),
  ];
  return {
    scale,
    width: left + right + 2 * MARGIN,
    height: above + below + 2 * MARGIN,
    shapes,
    nested: seen.length > 0,
    lengths: entries.map(({ letter, label, words: numbers, measure }) => ({
      letter: measure === null ? null : letter,
      label,
      words: numbers,
    })),
  };
}

function dimensionOf(
  measure: Measured,
  label: string,
  letter: boolean,
  sketch: Sketch,
  scale: number,
  type: number,
): Dimension {
  const { key, along, side } = measure;
  const across = along === 'across';
  const ends = across ? [measure.from.x, measure.to.x] : [measure.from.y, measure.to.y];
  const [from, to] = [Math.min(...ends) * scale, Math.max(...ends) * scale];
  const long = textWidth(label, type, letter);
  const own = across ? side : side === 'left' ? 'left' : 'right';
  return {
    key,
    side: across && (own === 'left' || own === 'right') ? 'below' : own,
    from,
    to,
    reachFrom: reachAt(sketch, Math.min(...ends), own) * scale,
    reachTo: reachAt(sketch, Math.max(...ends), own) * scale,
    label,
    // Numbers run along their line, letters stand upright.
    along: across || !letter ? long : type,
    away: across || !letter ? type : long,
  };
}

/** How far the outline comes towards a side at a place along it, in cm; outwards is more. */
function reachAt(sketch: Sketch, at: number, side: Dimension['side']): number {
  const across = side === 'below' || side === 'above';
  const sign = side === 'below' || side === 'left' ? -1 : 1;
  const near = (across ? sketch.width : sketch.height) * 0.004 + 1e-6;
  let most = Number.NEGATIVE_INFINITY;
  for (const area of sketch.areas) {
    for (let i = 0; i < area.length; i++) {
      const a = area[i]!;
      const b = area[(i + 1) % area.length]!;
      const [a0, b0] = across ? [a.x, b.x] : [a.y, b.y];
      const [a1, b1] = across ? [a.y, b.y] : [a.x, b.x];
      const [low, high] = [Math.min(a0, b0), Math.max(a0, b0)];
      if (at < low - near || at > high + near) continue;
      if (high - low < 1e-9) most = Math.max(most, sign * a1, sign * b1);
      else {
        const part = Math.min(1, Math.max(0, (at - a0) / (b0 - a0)));
        most = Math.max(most, sign * (a1 + (b1 - a1) * part));
        if (Math.abs(at - a0) <= near) most = Math.max(most, sign * a1);
        if (Math.abs(at - b0) <= near) most = Math.max(most, sign * b1);
      }
    }
  }
  return Number.isFinite(most) ? most : 0;
}

function line(points: readonly Point[], at: (point: Point) => Point, close = false): readonly PathStep[] {
  const steps = points.map((point, i): PathStep => {
    const { x, y } = at(point);
    return [i === 0 ? 'M' : 'L', x, y];
  });
  return close ? [...steps, ['Z']] : steps;
}

const isClosed = (points: readonly Point[]) =>
  points.length > 2 &&
  Math.abs(points[0]!.x - points.at(-1)!.x) < 1e-9 &&
  Math.abs(points[0]!.y - points.at(-1)!.y) < 1e-9;

/** The ground that the piece covers: under all lines, or it would hide the smaller sizes. */
function groundShapes(sketch: Sketch, at: (point: Point) => Point): Shape {
  const areas = sketch.areas.map((area) =>
    path(line(area, at, true), { role: 'ground', stroke: 0, filled: true }),
  );
  return group(areas, 0, 0, 0, 'ground');
}

function outlineShapes(sketch: Sketch, at: (point: Point) => Point): Shape {
  return group(
    [
      ...sketch.joins.map((join) => path(line(join, at), { role: 'guide', stroke: 0.7, dash: [3, 2.5] })),
      ...sketch.openings.map(([from, to]) => openingShape(at(from), at(to))),
      ...sketch.edges.map((edge) => path(line(edge, at, isClosed(edge)), { stroke: 1.1 })),
      ...sketch.breaks.flatMap(([from, to], i) => breakShapes(at(from), at(to), i)),
    ],
    0,
    0,
    0,
    'outline',
  );
}

function nestedShapes(sketch: Sketch, at: (point: Point) => Point): Shape {
  return group(
    sketch.edges.map((edge) =>
      path(line(edge, at, isClosed(edge)), { role: 'other', stroke: 0.6, dash: [4, 2] }),
    ),
    0,
    0,
    0,
    'other size',
  );
}

/** Is the outline of another size seen beside this one? A broken piece is as long in all sizes. */
function apart(sketch: Sketch, other: Sketch, scale: number): boolean {
  const shift = (sketch.width - other.width) / 2;
  const points = other.edges.flat().map(({ x, y }) => ({ x: x + shift, y }));
  const own = sketch.edges.flat();
  return points.some(({ x, y }) => own.every((one) => Math.hypot(one.x - x, one.y - y) * scale > APART));
}

/** A hole: a slit a little open. */
function openingShape(from: Point, to: Point): Shape {
  const open = Math.min(6, Math.abs(to.x - from.x) / 6);
  const third = (to.x - from.x) / 3;
  return path([
    ['M', from.x, from.y],
    ['C', from.x + third, from.y - open, to.x - third, to.y - open, to.x, to.y],
    ['C', to.x - third, to.y + open, from.x + third, from.y + open, from.x, from.y],
    ['Z'],
  ]);
}

/** One of the two lines of a break: a wave across the piece. The first also hides what lies between them. */
function breakShapes(from: Point, to: Point, index: number): readonly Shape[] {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const bow = 0.14;
  const steps: readonly PathStep[] = [
    ['M', from.x, from.y],
    [
      'C',
      from.x + dx / 3 - dy * bow,
      from.y + dy / 3 + dx * bow,
      from.x + (2 * dx) / 3 + dy * bow,
      from.y + (2 * dy) / 3 - dx * bow,
      to.x,
      to.y,
    ],
  ];
  return [path(steps, { stroke: 1.1, role: index < 2 ? 'outline' : 'guide' })];
}

/** The line with a tick at each end, its leaders and its label. */
function dimensionShapes(placed: PlacedDimension, left: number, above: number, type: number): Shape {
  const { dimension, at, middle, near, far, leaders } = placed;
  const { side, from, to, label } = dimension;
  const across = side === 'below' || side === 'above';
  /** From (along, outwards) to the sheet. */
  const place = (along: number, outwards: number): Point => {
    if (side === 'above') return { x: left + along, y: above - outwards };
    if (side === 'below') return { x: left + along, y: above + outwards };
    if (side === 'right') return { x: left + outwards, y: above - along };
    return { x: left - outwards, y: above - along };
  };
  const straight = (a: Point, b: Point, stroke: number) =>
    path(
      [
        ['M', a.x, a.y],
        ['L', b.x, b.y],
      ],
      { role: 'measure', stroke },
    );
  const leader = (x: number, reach: number, shown: boolean) =>
    shown && at - reach > 6 ? [straight(place(x, reach + 3), place(x, at + 2.5), 0.35)] : [];
  const tick = (x: number) => straight(place(x, at - 2.5), place(x, at + 2.5), 0.6);
  const short = dimension.label.length <= 2;
  const center = place(middle, (near + far) / 2);
  // The baseline of words whose capitals stand in the middle of their box.
  const drop = type * 0.35;
  const text = across
    ? words(label, center.x, center.y + drop, { size: type, anchor: 'middle', role: 'measure', bold: short })
    : short
      ? words(label, center.x, center.y + drop, { size: type, anchor: 'middle', role: 'measure', bold: true })
      : words(label, center.x + drop, center.y, { size: type, anchor: 'middle', role: 'measure', turn: -90 });
  return group(
    [
      ...leader(from, dimension.reachFrom, leaders[0]),
      ...leader(to, dimension.reachTo, leaders[1]),
      straight(place(from, at), place(to, at), 0.6),
      tick(from),
      tick(to),
      text,
    ],
    0,
    0,
    0,
    `length ${dimension.key}`,
  );
}

function finish(schematic: Schematic, sketch: Sketch, made: LaidOut, options: SceneOptions): DrawnSchematic {
  const { type } = options;
  const title = options.say(schematic.title);
  const several = options.labels.length > 1;
  const focus = several ? (options.labels[options.focus] ?? null) : null;
  const own = options.sizes.length === 1 ? null : drawnIn(focus, made.nested);
  const notes = [
    ...(own === null ? [] : [own]),
    ...sketch.notes.map(noteOf),
    ...undrawnIn(schematic, options),
  ];
  const alt = altOf(title, made.lengths, notes);
  if (options.key === 'elsewhere') {
    const { width, height, shapes } = made;
    return { scene: { width, height, title, alt, shapes }, lengths: made.lengths, notes, title };
  }
  // A sheet of its own: its title, the drawing, the key and the notes.
  const room = Math.max(made.width, 260);
  const shapes: Shape[] = [];
  let y = MARGIN;
  const put = (text: string, size: number, bold: boolean, indent = 0) => {
    for (const one of wrapped(text, size, room - 2 * MARGIN - indent, bold)) {
      y += size * 1.3;
      shapes.push(words(one, MARGIN + indent, y, { size, bold }));
    }
  };
  put(title, type * 1.4, true);
  if (several) {
    const labels = options.sizes.map((size) => options.labels[size]!);
    const [first, ...rest] = labels;
    put(rest.length === 0 ? `Size ${first}` : `Sizes ${first} (${rest.join(', ')})`, type, false);
  }
  y += type;
  shapes.push(group(made.shapes, (room - made.width) / 2, y, 0, 'drawing'));
  y += made.height + type * 0.5;
  for (const { letter, label, words: numbers } of made.lengths) {
    put(letter === null ? label : `${letter}  ${label}`, type, true);
    put(numbers, type, false, letter === null ? 0 : type * 1.4);
    y += type * 0.3;
  }
  for (const note of notes) put(note, type, false);
  const width =
    Math.max(
      room,
      ...shapes.map((shape) =>
        shape.kind === 'text' ? shape.x + textWidth(shape.words, shape.size, shape.bold) : 0,
      ),
    ) + MARGIN;
  return {
    scene: { width, height: y + MARGIN + type * 0.4, title, alt, shapes },
    lengths: made.lengths,
    notes,
    title,
  };
}
