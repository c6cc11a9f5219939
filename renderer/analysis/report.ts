/**
 * What the views know of a pattern besides its document: the study and the technical edit as plain data, small
 * enough to cross from the worker to the page. Shapes only. Everything here is derived and none of it is kept.
 */

import type { Finding } from '../../core/finding.ts';
import type { AcceptedFinding } from '../../core/review/accepted.ts';
import type { Terms } from '../../core/trade/stitches.ts';
import type { PersonReport, WorkbookReport } from './workbook-report.ts';

/** A length in both systems, ready to show; the exact one stays in the study. */
export interface BothUnits {
  readonly metric: string;
  readonly imperial: string;
}

/** What a block of a piece (a row, a repeat, a shaping) came to. Lists have one entry a size. */
export interface BlockReport {
  readonly id: string;
  readonly piece: string;
  /** "Row 3", "Rnds 4–9 (11, 13)"; null for what makes no row. */
  readonly label: string | null;
  /** "RS", "WS", a list of them where sizes differ, or null. */
  readonly side: string | null;
  /** Whether there is anything to work yet. */
  readonly isWritten: boolean;
  /** Stitches after it; null where the size does not work it. */
  readonly counts: readonly (number | null)[];
  /** Chain-spaces. */
  readonly spaces: readonly (number | null)[];
  /** Stitches by trade id ("t3"); see `kindName`. */
  readonly byKind: readonly { readonly id: string; readonly numbers: readonly number[] }[];
  /** Passes of the row's main repeat; null where it has none. */
  readonly repeats: readonly (number | null)[];
  /** Rows that the block makes. */
  readonly rows: readonly number[];
  /** Width that the stitches make at the piece's gauge; null without a gauge. */
  readonly widths: readonly (BothUnits | null)[];
}

export interface PieceReport {
  readonly id: string;
  /** Ids of its blocks that have a report, in order. */
  readonly blocks: readonly string[];
  /** Rows worked, one number a size. */
  readonly rows: readonly number[];
  /** Stitches it starts from, where it starts from other pieces. */
  readonly starts: readonly (number | null)[];
  /** For each seam that the piece names, in order: stitches or rows of its two edges, one number a size. */
  readonly meets: readonly {
    readonly mine: readonly (number | null)[];
    readonly other: readonly (number | null)[];
  }[];
}

/** One line of the sizing sheet in one size. */
export interface CellReport {
  /** The value as shown; null when there is none. Schedules and spreads are words. */
  readonly value: BothUnits | null;
  /** For lines fitted to stitches or rows: what was asked, what came out and the difference. */
  readonly fitted: {
    readonly asked: BothUnits;
    readonly made: BothUnits;
    readonly difference: BothUnits;
    /** The difference is past the tolerance. */
    readonly off: boolean;
    readonly repeats: number;
  } | null;
  /** Names of lines without a value that it waits for. */
  readonly waitsFor: readonly string[];
}

/** An expression in every size; null where there is no value. */
export type FigureReport = readonly (BothUnits | null)[];

/** What an expression would show, for one who is still writing it. */
export interface FigureTrial {
  readonly values: FigureReport;
  /** What keeps it from being a figure, in sentences; empty when it is one. */
  readonly problems: readonly string[];
}

export interface LineReport {
  readonly id: string;
  readonly cells: readonly CellReport[];
}

/** What a line would come to by a rule that is still being written. */
export interface LineTrial {
  readonly cells: readonly CellReport[];
  /** What is wrong with it, by its place in the line's formula where it has one. */
  readonly problems: readonly Finding[];
}

/** The list of abbreviations as it will be printed, in each market's terms. */
export type AbbreviationsReport = Readonly<
  Record<Terms, readonly { readonly abbr: string; readonly meaning: string }[]>
>;

/** What follows from the materials and from the words of the whole pattern. */
export interface MaterialsReport {
  /** Cautions that the pattern calls for, in printing order, with the rules named and the deferral. */
  readonly cautions: readonly { readonly title: string; readonly text: string }[];
  /** Whole balls of each yarn, by its id: one number a size, null where it cannot be told. */
  readonly balls: Readonly<Record<string, readonly (number | null)[]>>;
}

/** A finding, and the place of its node among texts without an id ("notes:0", "cover:title"). */
export type FindingReport = Finding;

export interface Report {
  /** Number of the document state that this tells about; see `Analyst`. */
  readonly version: number;
  readonly sizes: readonly { readonly id: string; readonly label: string }[];
  readonly lines: ReadonlyMap<string, LineReport>;
  /** What each figure and each formula of a repeat shows, by its expression; one entry a size. */
  readonly figures: ReadonlyMap<string, FigureReport>;
  readonly pieces: readonly PieceReport[];
  readonly blocks: ReadonlyMap<string, BlockReport>;
  /** What wants an answer, in the order of the pattern. */
  readonly findings: readonly FindingReport[];
  /** The same by node; null = of the whole pattern. */
  readonly byNode: ReadonlyMap<string | null, readonly FindingReport[]>;
  /** What the maker looked at and let stand. */
  readonly accepted: readonly AcceptedFinding[];
  readonly materials: MaterialsReport;
  /** The workbook's numbers; null while nobody looks at them. */
  readonly workbook: WorkbookReport | null;
  /** The column of the person chosen; null for nobody. */
  readonly person: PersonReport | null;
  /** The printed lists of abbreviations; null while nobody looks at them. */
  readonly abbreviations: AbbreviationsReport | null;
}

/** What is known before the first study is done. */
export const NOTHING_KNOWN: Report = {
  version: -1,
  sizes: [],
  lines: new Map(),
  figures: new Map(),
  pieces: [],
  blocks: new Map(),
  findings: [],
  byNode: new Map(),
  accepted: [],
  materials: { cautions: [], balls: {} },
  abbreviations: null,
  workbook: null,
  person: null,
};
