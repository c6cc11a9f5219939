/**
 * A drawing as plain data: shapes on a sheet, measured in points (1/72 inch), y growing downwards. Schematics and
 * charts are made as scenes; a painter turns a scene into SVG or into a page of a PDF. A scene knows no colour, only
 * roles, so that the same drawing can be painted light, dark or to save ink; it knows nothing of stitches.
 */

/** What a stroke or an area is for. The painter gives it its look; none is told apart by colour alone. */
export type Role =
  | 'outline' // the edge of a piece, a stitch symbol
  | 'other' // the same, where it must be told apart: wrong-side rows, sizes not in focus
  | 'measure' // dimension lines, brackets, leaders
  | 'guide' // grids, centre lines
  | 'ground'; // an area's fill

export type PathStep =
  | readonly ['M', x: number, y: number]
  | readonly ['L', x: number, y: number]
  | readonly ['C', x1: number, y1: number, x2: number, y2: number, x: number, y: number]
  | readonly ['Z'];

export interface PathShape {
  readonly kind: 'path';
  readonly steps: readonly PathStep[];
  readonly role: Role;
  /** Width of the stroke; 0 draws none. */
  readonly stroke: number;
  readonly filled: boolean;
  /** Lengths of dash and gap; null is a whole line. */
  readonly dash: readonly [number, number] | null;
}

export interface TextShape {
  readonly kind: 'text';
  /** The anchor's place: `y` is the baseline. */
  readonly x: number;
  readonly y: number;
  readonly words: string;
  /** Height of the type. */
  readonly size: number;
  readonly bold: boolean;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly role: Role;
  /** Degrees, clockwise, about the anchor. */
  readonly turn: number;
}

export interface GroupShape {
  readonly kind: 'group';
  readonly shapes: readonly Shape[];
  /** Moves by (x, y) after turning by `turn` degrees clockwise about the group's own origin. */
  readonly x: number;
  readonly y: number;
  readonly turn: number;
  /** What the group is, so that a test or a view can find it: "row 3", "dec". Not shown. */
  readonly name: string | null;
}

export type Shape = PathShape | TextShape | GroupShape;

export interface Scene {
  readonly width: number;
  readonly height: number;
  /** Heading for those who do not see it. */
  readonly title: string;
  /** The drawing in words: all that it says, in the reader's terms. */
  readonly alt: string;
  readonly shapes: readonly Shape[];
}

/** A place or a length of a drawing, in points: closer than a hundredth nobody sees. */
export const toHundredth = (value: number): number => Math.round(value * 100) / 100;

/** A path; a thin outline unless said otherwise. */
export function path(
  steps: readonly PathStep[],
  rest: Partial<Omit<PathShape, 'kind' | 'steps'>> = {},
): PathShape {
  return { kind: 'path', steps, role: 'outline', stroke: 0.9, filled: false, dash: null, ...rest };
}

/** Words at a point; plain and beginning there unless said otherwise. */
export function words(
  text: string,
  x: number,
  y: number,
  rest: Partial<Omit<TextShape, 'kind' | 'words' | 'x' | 'y'>> = {},
): TextShape {
  return {
    kind: 'text',
    x,
    y,
    words: text,
    size: 8,
    bold: false,
    anchor: 'start',
    role: 'outline',
    turn: 0,
    ...rest,
  };
}

/** Shapes that move and turn together. */
export function group(
  shapes: readonly Shape[],
  x = 0,
  y = 0,
  turn = 0,
  name: string | null = null,
): GroupShape {
  return { kind: 'group', shapes, x, y, turn, name };
}
