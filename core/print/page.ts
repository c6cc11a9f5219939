/**
 * The finished page and what it is made of: marks with positions, each belonging to a node of the tag tree
 * or to none (an artifact). Every pen and every preview reads these; no layout is decided here.
 */
import type { Face } from './style.ts';

export type TagType =
  | 'Document'
  | 'Sect'
  | 'Div'
  | 'H1'
  | 'H2'
  | 'H3'
  | 'P'
  | 'L'
  | 'LI'
  | 'Lbl'
  | 'LBody'
  | 'Table'
  | 'THead'
  | 'TBody'
  | 'TR'
  | 'TH'
  | 'TD'
  | 'Caption'
  | 'Figure'
  | 'Note';

/** A structure element as PDF/UA-1 knows it (ISO 14289-1, ISO 32000-1 §14.8). */
export interface Tag {
  readonly type: TagType;
  readonly children: Tag[];
  readonly scope?: 'Column' | 'Row';
  readonly alt?: string;
  readonly numbering?: 'Disc' | 'Decimal';
  readonly title?: string;
}

export const tag = (
  type: TagType,
  more: Omit<Partial<Tag>, 'type' | 'children'> = {},
  children: Tag[] = [],
): Tag => ({
  type,
  children,
  ...more,
});

interface Owned {
  /** The structure element it belongs to; null for an artifact. */
  readonly tag: Tag | null;
}

/** `x`, `y`: start of the baseline. */
export interface TextMark extends Owned {
  readonly kind: 'text';
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly face: Face;
  readonly size: number;
  readonly colour: string;
  readonly width: number;
}

export interface RuleMark {
  readonly kind: 'rule';
  readonly tag: null;
  readonly x: number;
  readonly y: number;
  readonly x2: number;
  readonly y2: number;
  readonly weight: number;
  readonly colour: string;
}

export interface FillMark {
  readonly kind: 'fill';
  readonly tag: null;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly colour: string;
}

/** A picture or drawing in its box; a drawing nobody supplies, or a picture that cannot be read, is a frame with its alternative text. */
export interface ImageMark extends Owned {
  readonly kind: 'image';
  readonly source: 'picture' | 'drawing';
  readonly name: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export type Mark = TextMark | RuleMark | FillMark | ImageMark;

/** Positions in points from the upper left corner of the paper. */
export interface Page {
  readonly number: number;
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
}

export interface Bookmark {
  readonly title: string;
  readonly level: 1 | 2 | 3;
  readonly page: number;
  readonly y: number;
}

/** The same mark elsewhere. */
export function moved<M extends Mark>(mark: M, dx: number, dy: number): M {
  if (dx === 0 && dy === 0) return mark;
  return mark.kind === 'rule'
    ? { ...mark, x: mark.x + dx, y: mark.y + dy, x2: mark.x2 + dx, y2: mark.y2 + dy }
    : { ...mark, x: mark.x + dx, y: mark.y + dy };
}
