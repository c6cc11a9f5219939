/**
 * The maker's own records about a pattern: what was made from it, whom it is made for to measure, what a price is
 * reckoned from, which findings the maker looked at and let stand. They are kept in the file and are never part
 * of what a pattern says to its reader. Shapes only.
 */
import type { Quantity } from './pattern.ts';

/** Yarn that a making used, for one piece or for all of it. */
export interface Use {
  readonly yarn: string; // yarn id
  /** Piece id, all its copies together; empty for the whole making. */
  readonly piece: string;
  readonly grams: number | null;
  readonly metres: number | null;
}

/** Something that was really made: the maker's sample, a tester's, or a weighed swatch. */
export interface Making {
  readonly id: string;
  readonly kind: 'sample' | 'tester' | 'swatch';
  /** Who made it; empty for the maker. */
  readonly by: string;
  /** Size id; empty for a swatch or while nobody has chosen. */
  readonly size: string;
  readonly state: 'asked' | 'working' | 'finished';
  readonly used: readonly Use[];
  readonly hours: number | null;
  /** A swatch's work: so many stitches of a kind ("t3") by so many rows; null for anything else. */
  readonly swatch: {
    readonly stitch: string;
    readonly stitches: number;
    readonly rows: number;
    /** Chains of its foundation. */
    readonly chains: number;
  } | null;
  /** Finished measurements as taken, by line id. */
  readonly measured: Readonly<Record<string, Quantity>>;
  readonly note: string;
}

/** One person whom the pattern is made for to measure. Private: never printed in a pattern for sale. */
export interface Person {
  readonly id: string;
  readonly name: string;
  /** Size id that lends what the person has no number of; empty for the sample. */
  readonly base: string;
  /** Own values of body, typed and ease lines, by line id. */
  readonly values: Readonly<Record<string, Quantity>>;
  readonly note: string;
}

/** A finding that the maker looked at and let stand, with the reason. */
export interface Acceptance {
  readonly code: string;
  /** Node that it was found at; empty for the whole pattern. */
  readonly node: string;
  /** The words it pointed at: when they change, it is told again. */
  readonly words: string;
  readonly reason: string;
  readonly date: string; // ISO date, or empty
}

/** A part that was brought in from elsewhere and that the maker has not confirmed yet. */
export interface Doubt {
  readonly node: string;
  /** Why, in a sentence. */
  readonly why: string;
}

/** What the price of a piece made to order is reckoned from. */
export interface Pricing {
  /** ISO 4217: "EUR"; empty while nobody has said. */
  readonly currency: string;
  readonly hourly: number | null;
  /** Further costs of one piece: buttons, a label, the parcel. */
  readonly other: readonly { readonly name: string; readonly amount: number }[];
  /** Added on the costs, in percent. */
  readonly profit: number;
  /** Share of the price that whoever sells it keeps, in percent. */
  readonly fee: number;
}

export interface Workbook {
  /** Yarn beyond what is reckoned, in percent. */
  readonly yarnMargin: number;
  readonly pricing: Pricing;
  readonly makings: readonly Making[];
  readonly people: readonly Person[];
  readonly accepted: readonly Acceptance[];
  readonly doubts: readonly Doubt[];
}

/** The workbook of a pattern that has none yet. */
export const NO_WORKBOOK: Workbook = {
  yarnMargin: 10,
  pricing: { currency: '', hourly: null, other: [], profit: 0, fee: 0 },
  makings: [],
  people: [],
  accepted: [],
  doubts: [],
};
