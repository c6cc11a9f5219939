/** What the page is told of the workbook: numbers in words, with what they rest on. Shapes only. */
import type { BothUnits, CellReport } from './report.ts';

export interface YarnReportInSize {
  /** As used, and with the margin. */
  readonly used: string;
  readonly metres: string | null;
  readonly yards: string | null;
  readonly grams: string | null;
  readonly balls: string | null;
}

export interface PriceReportInSize {
  readonly yarn: string;
  readonly cost: string;
  readonly profit: string;
  readonly fee: string;
  readonly price: string;
}

export interface WorkbookReport {
  readonly yarns: readonly {
    readonly id: string;
    readonly basis: string | null;
    readonly worked: boolean;
    readonly sizes: readonly (YarnReportInSize | null)[];
  }[];
  readonly hours: { readonly basis: string | null; readonly sizes: readonly (string | null)[] };
  readonly price: {
    readonly sizes: readonly {
      readonly notions: string;
      readonly other: string;
      readonly labour: string | null;
      readonly bought: PriceReportInSize | null;
      readonly used: PriceReportInSize | null;
    }[];
    /** What a price still needs, in words. */
    readonly missing: readonly string[];
    readonly unpriced: readonly string[];
  };
  /** By the making's id: what was taken of it beside the pattern's own, and how its yarn compares. */
  readonly makings: Readonly<
    Record<
      string,
      {
        readonly measured: readonly {
          readonly line: string;
          readonly said: BothUnits;
          readonly difference: BothUnits;
          readonly isOff: boolean;
        }[];
        readonly yarn: readonly {
          readonly yarn: string;
          readonly off: string;
          readonly isMore: boolean;
        }[];
      }
    >
  >;
  /** What a size says of its printed lengths, by line and then by size. */
  readonly said: Readonly<Record<string, readonly (BothUnits | null)[]>>;
  readonly doubts: readonly string[];
}

/** One person's own column beside the size that lends the rest. */
export interface PersonReport {
  readonly id: string;
  /** Label of that size. */
  readonly base: string;
  /** By line id: what it comes to for the person and in the base. */
  readonly lines: Readonly<Record<string, { readonly own: CellReport; readonly base: CellReport }>>;
}
