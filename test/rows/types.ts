/**
 * The shapes of the written-row corpus: what a case states, and the part of the row report it is held
 * against. This module must not know how rows are read or worked.
 */

export type Terms = 'us' | 'uk';

/** One finding of the report. `from` and `to` are offsets in the text that was handed in. */
export interface ReportedFinding {
  readonly code: string;
  readonly severity: 'error' | 'warning' | 'note';
  readonly from: number;
  readonly to: number;
  readonly sizes: readonly number[];
  readonly message: string;
}

export interface ReportedRow {
  readonly label: string | null;
  readonly kind: string;
  readonly from: number;
  readonly to: number;
  readonly text: string;
  readonly read: boolean;
  readonly counts: readonly (number | null)[];
  readonly byKind: Readonly<Record<string, readonly (number | null)[]>>;
  readonly spaces: readonly (number | null)[];
  readonly repeats: readonly (number | null)[];
  readonly units: Readonly<Record<string, readonly (number | null)[]>>;
  readonly findings: readonly ReportedFinding[];
}

export interface RowReport {
  readonly terms: Terms;
  readonly rows: readonly ReportedRow[];
  readonly findings: readonly ReportedFinding[];
}

/** A number for a text of one size, one number per size otherwise; `null` is "not stated by this case". */
export type Expected = number | readonly (number | null)[] | null;

export interface ExpectedFinding {
  /** Index of the entry (counted from 0) in which the finding lies. */
  readonly row: number;
  /** The code, or the codes of which any will do. */
  readonly code: string | readonly string[];
  /** Exact words of the entry which the span must cover or overlap. */
  readonly words?: string;
  readonly severity?: 'error' | 'warning' | 'note';
  readonly sizes?: readonly number[];
  /** Whole numbers or words that the message must contain. */
  readonly saying?: readonly string[];
}

export interface RowCase {
  readonly name: string;
  readonly terms: Terms;
  readonly text: string;
  /** Stitches of every entry, in order. Left out where only `final` is stated. */
  readonly counts?: readonly Expected[];
  /** Stitches of the last entry alone: for texts whose division into entries is not the point. */
  readonly final?: Expected;
  readonly spaces?: readonly Expected[];
  /** Passes of the main repeat of every entry. */
  readonly repeats?: readonly Expected[];
  readonly byKind?: readonly (Readonly<Record<string, number | readonly number[]>> | null)[];
  readonly units?: readonly (Readonly<Record<string, number | readonly number[]>> | null)[];
  readonly read?: readonly boolean[];
  readonly findings?: readonly ExpectedFinding[];
  /** No finding of severity error or warning. Taken as true where no finding but notes is listed. */
  readonly clean?: boolean;
  /** Where the expectation comes from when it is a fact of the trade. */
  readonly source?: string;
}

export interface FoundMultiple {
  readonly multiple: number;
  readonly plus: number;
  readonly from: number;
}

export interface MultipleCase {
  readonly name: string;
  readonly terms: Terms;
  readonly text: string;
  readonly multiple: number;
  /** Compared modulo `multiple`. */
  readonly plus: number;
  readonly from?: number;
  readonly source?: string;
}

/** Joins written lines to one text. */
export const lines = (...each: readonly string[]): string => each.join('\n');
