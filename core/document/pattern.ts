/**
 * The typed model of a pattern: what the document's tree means, as plain immutable data. `project` makes it
 * from the document and keeps identity (an unchanged node gives the identical object), which is what every
 * cache above leans on. Nothing derived is here: no counts, no labels, no measurements.
 */
import type { Terms } from '../trade/stitches.ts';
import type { Workbook } from './workbook.ts';

/** Text with figures: each figure stands in `text` as U+FFFC, in order; `figures` holds their expressions. */
export interface FigureText {
  readonly text: string;
  /** Each names a line ("back stitches") or is a short expression ("back stitches − 2"). */
  readonly figures: readonly string[];
}

/** The character that stands for a figure in `FigureText.text`. */
export const FIGURE = '\uFFFC';

export type Audience = 'woman' | 'man' | 'child' | 'youth' | 'baby' | 'head' | 'hand' | 'foot' | 'other';

export interface Size {
  readonly id: string;
  /** "M", "6–12 months". */
  readonly label: string;
  readonly audience: Audience;
  /** Size in the built-in chart that body lines read from ("M", "6mo"), or null. */
  readonly chart: string | null;
  /** Youngest and oldest age in years for children's sizes; null for adults. Cautions depend on it. */
  readonly age: readonly [number, number] | null;
}

export type LengthUnit = 'cm' | 'mm' | 'in';

/** A number with the unit it was typed in; `st`, `row` and `none` are plain numbers. */
export interface Quantity {
  readonly value: number;
  readonly unit: LengthUnit | '%' | 'none';
}

/** One value for all sizes, or one per size id (a missing id is a gap). */
export type PerSize<T> = { readonly all: T } | { readonly each: Readonly<Record<string, T>> };

interface LineBase {
  readonly id: string;
  /** Unique, as the maker calls it: "back stitches", "finished chest". Formulas and figures use it. */
  readonly name: string;
  /** Printed in the table of finished measurements, under this heading; null = working line only. */
  readonly printed: string | null;
  /** Compare with the to-fit measurement of this line for "fits": name of a body line, or null. */
  readonly note: string | null;
}

export type Line = LineBase &
  (
    | {
        /** From the chart: `measure` is a row of the chart ("chest", "upper_arm"), `bound` which end of its range. */
        readonly kind: 'body';
        readonly measure: string;
        readonly bound: 'lower' | 'middle' | 'upper';
        readonly overtyped: Readonly<Record<string, Quantity>>;
      }
    | { readonly kind: 'typed'; readonly values: PerSize<Quantity> }
    /** "finished hip = body hip + ease": arithmetic on line names, numbers with cm/mm/in, + − × ÷ ( ). */
    | { readonly kind: 'formula'; readonly formula: string }
    | { readonly kind: 'ease'; readonly values: PerSize<Quantity> }
    | {
        readonly kind: 'stitches';
        /** Formula of the width asked for. */
        readonly length: string;
        readonly gauge: string; // gauge id
        readonly state: 'relaxed' | 'stretched';
        readonly multiple: number;
        readonly plus: number;
        readonly rounding: 'nearest' | 'up' | 'down';
        readonly parity: 'any' | 'even' | 'odd';
        /** What the number counts; a repeat is `multiple` stitches wide. */
        readonly counts: 'stitches' | 'spaces' | 'repeats' | 'chains';
        /** Stitches that take no width or stand apart (seam stitches, a turning chain): added after fitting. */
        readonly extra: number;
        readonly tolerance: Quantity | null;
      }
    | {
        readonly kind: 'rows';
        readonly length: string;
        readonly gauge: string;
        /** "ending on row 2 of 2": the row count is ≡ endOn modulo cycle. */
        readonly cycle: number;
        readonly endOn: number;
        /** Rows worked before the cycle begins. */
        readonly before: number;
        readonly rounding: 'nearest' | 'up' | 'down';
        readonly tolerance: Quantity | null;
      }
    | {
        readonly kind: 'shaping';
        /** Formulas giving stitches at the start and at the end, and the rows it may take. */
        readonly start: string;
        readonly end: string;
        readonly rows: string;
        /** Stitches changed at each end of a shaping row, and at how many ends (2 flat, 4 corners × 2 = 8 …). */
        readonly perEnd: number;
        readonly ends: number;
        /** Rows between shapings must be a multiple of this (2 keeps shaping on right-side rows). */
        readonly step: number;
      }
    | {
        readonly kind: 'spread';
        readonly changes: string; // formula: how many increases or decreases
        readonly over: string; // formula: stitches before
        readonly change: 'inc' | 'dec';
        readonly form: 'flat' | 'round';
        /** Stitch worked: t1 … */
        readonly stitch: string;
      }
  );

export interface Gauge {
  readonly id: string;
  /** "half double crochet", "mesh". Converted with the terms. */
  readonly pattern: string;
  readonly stitches: number;
  readonly rows: number;
  /** Width over which `stitches` and height over which `rows` were counted. */
  readonly width: Quantity;
  readonly height: Quantity;
  readonly blocked: boolean;
  /** Wear stretch: lies at `lies`, is worn at `worn`; null = none. */
  readonly stretch: { readonly lies: Quantity; readonly worn: Quantity } | null;
  readonly hook: string | null; // id of a hook
  readonly rounds: boolean; // worked in the round
}

export interface Yarn {
  readonly id: string;
  /** Letter or name in the rows: "A", "MC"; null for a single yarn. */
  readonly key: string | null;
  readonly name: string; // the maker's words
  readonly weight: number | null; // 0–7
  readonly fibre: string;
  readonly ballGrams: number | null;
  readonly ballMetres: number | null;
  /** What a ball costs, in the workbook's currency. */
  readonly ballPrice: number | null;
  /** Amount for each size, by size id: metres. */
  readonly metres: Readonly<Record<string, number>>;
}

export interface Hook {
  readonly id: string;
  readonly mm: number;
  readonly purpose: string; // "for the body"
}

export interface Notion {
  readonly id: string;
  readonly name: string;
  readonly amount: PerSize<number> | null;
  readonly smallPart: boolean; // button, bead, eye …
  readonly cord: boolean; // cord, tie, drawstring, ribbon
  /** What one costs, in the workbook's currency. */
  readonly price: number | null;
}

export interface Special {
  readonly id: string;
  readonly nameUs: string;
  readonly nameUk: string;
  readonly abbrUs: string;
  readonly abbrUk: string;
  /** Definition in the row notation, in the document's terms: "5 dc in next st". */
  readonly text: FigureText;
}

export interface Media {
  readonly id: string; // file under media/
  readonly alt: string;
  readonly caption: string | null;
}

/** A length of edge to work along when a piece starts from others. */
export interface Edge {
  readonly piece: string; // piece id
  readonly kind:
    | 'top' // stitches of the last row
    | 'foundation' // other side of the foundation chain
    | 'row-ends' // side edge
    | 'opening' // stitches skipped by a row and left waiting (sleeves of a yoke)
    | 'seam'; // a seam crossed: one stitch
  /** Formula for how many of them; null = all. */
  readonly amount: string | null;
  /** For 'opening': which of the openings, from 1; otherwise which end the edge begins at is the text's concern. */
  readonly which: number;
}

export type PieceStart =
  | { readonly kind: 'chain' } // its first row makes the foundation (chain, ring, foundation stitches)
  | { readonly kind: 'edges'; readonly edges: readonly Edge[]; readonly round: boolean };

export type Block =
  | {
      readonly type: 'row';
      readonly id: string;
      readonly text: FigureText;
      /** Size ids that work it; null = all. */
      readonly sizes: readonly string[] | null;
      readonly form: 'row' | 'round' | 'foundation';
      /** "Set-up", "Dec", "Shoulder": words before "row"/"rnd" in its label, or null. */
      readonly title: string | null;
    }
  | {
      /** "Rows 4–60: rep Rows 2 and 3": works blocks `first`…`last` again. */
      readonly type: 'repeat';
      readonly id: string;
      readonly first: string; // id of a row block above
      readonly last: string;
      readonly until:
        | { readonly kind: 'times'; readonly times: string } // formula: times more
        | { readonly kind: 'rows'; readonly rows: string } // formula: rows this block adds
        | { readonly kind: 'total'; readonly rows: string }; // formula: until the piece has this many rows
      readonly sizes: readonly string[] | null;
    }
  | {
      /** Works `shaped` on the rows a shaping line names and `even` on those between. */
      readonly type: 'shaping';
      readonly id: string;
      readonly line: string; // name of a shaping line
      readonly shaped: Extract<Block, { type: 'row' }>;
      readonly even: Extract<Block, { type: 'row' }>;
      readonly sizes: readonly string[] | null;
    }
  | {
      readonly type: 'prose';
      readonly id: string;
      readonly text: FigureText;
      readonly sizes: readonly string[] | null;
    }
  | { readonly type: 'heading'; readonly id: string; readonly text: string }
  | { readonly type: 'photo'; readonly id: string; readonly media: Media };

export type RowBlock = Extract<Block, { type: 'row' }>;

export interface Piece {
  readonly id: string;
  readonly name: string;
  readonly make: number; // how many times it is made
  readonly start: PieceStart;
  /** Side that faces on its first row: "RS" unless the maker says otherwise; null = the piece has no sides. */
  readonly firstSide: 'RS' | 'WS' | null;
  /** Id of the gauge it is worked in; empty when its figures tell. */
  readonly gauge: string;
  readonly blocks: readonly Block[];
  /** Pieces or edges it must meet with equal counts: seams. */
  readonly meets: readonly Meeting[];
}

export interface Meeting {
  readonly mine: Edge;
  readonly other: Edge;
}

/** Rows of a piece that are shown as a stitch chart. */
export interface Chart {
  readonly id: string;
  readonly piece: string; // piece id
  readonly first: string; // ids of its first and last row block
  readonly last: string;
  /** Size id; empty for the sample, or the first. */
  readonly size: string;
  readonly title: string;
}

export interface About {
  readonly title: string;
  readonly designer: string;
  readonly level: 1 | 2 | 3 | 4;
  readonly description: string;
  readonly construction: string;
  readonly garment: string; // "vest", "hat", "tee"
  readonly cover: Media | null;
  readonly version: string; // "1.0"
  readonly date: string; // ISO date of this version
  readonly copyright: string;
  readonly contact: string;
  readonly care: string;
  readonly language: string; // BCP 47, "en"
  /** Recommended ease in the maker's words. */
  readonly fit: string;
}

export interface Pattern {
  readonly about: About;
  readonly terms: Terms;
  readonly units: 'metric' | 'imperial';
  /** Smallest first, in the order in which numbers are listed. */
  readonly sizes: readonly Size[];
  readonly sample: string | null; // size id
  readonly tolerance: Quantity;
  readonly lines: readonly Line[];
  readonly gauges: readonly Gauge[];
  readonly yarns: readonly Yarn[];
  readonly hooks: readonly Hook[];
  readonly notions: readonly Notion[];
  readonly specials: readonly Special[];
  /** Abbreviations the maker explains beyond the trade's: abbreviation → meaning. */
  readonly abbreviations: Readonly<Record<string, string>>;
  readonly notes: readonly FigureText[];
  readonly pieces: readonly Piece[];
  readonly finishing: readonly FigureText[];
  /** Cautions the maker adds; those that follow from sizes and notions are made by review. */
  readonly cautions: readonly string[];
  readonly charts: readonly Chart[];
  /** The maker's own records. Not part of what the pattern says. */
  readonly workbook: Workbook;
}
