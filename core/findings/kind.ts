/**
 * The shape of one kind of finding: its code, how grave it is, why it matters, and the sentence it makes
 * from facts. One file per kind stands beside this one; the catalogue lists them and the reference page is
 * generated from them. No detection happens here.
 */
import type { Fact, Finding, Severity } from '../finding.ts';

/** A fact as it holds for one size (`size` null when the fact does not depend on the size). */
export interface SizedFact {
  readonly size: number | null;
  readonly fact: Fact;
}

/** What a sentence may ask for besides the numbers. */
export interface Voice {
  /** Label of a size by its index, as the pattern calls it. */
  readonly label: (size: number) => string;
  /** How many sizes there are. */
  readonly sizes: number;
  /** The words of the text under the fact's span. */
  readonly words: string;
  /** Name of a stitch id ("t3", "tog2.t3", "sp") in the author's terms, for n of them. */
  readonly stitch: (id: string, n: number) => string;
  /** "skip" or "miss". */
  readonly skip: string;
  /** "gauge" or "tension". */
  readonly gauge: string;
}

export interface FindingKind {
  readonly code: string;
  /** error = the pattern cannot be followed or a number is wrong; warning = a reader would stumble; note = worth knowing. */
  readonly severity: Severity;
  /** Short title for the reference page. */
  readonly title: string;
  /** Why it is a problem, for the reference page. */
  readonly reason: string;
  /** The sentence. `facts` are of this kind, at one span, one per size concerned (at least one). */
  readonly message: (facts: readonly SizedFact[], voice: Voice) => string;
  /** More to say than the sentence should hold, if there is more. */
  readonly detail?: (facts: readonly SizedFact[], voice: Voice) => string | null;
  /** One replacement of the words that surely puts it right in every size, if there is one. */
  readonly fix?: (facts: readonly SizedFact[], voice: Voice) => Finding['fix'];
  /** Small text that raises it, in US terms, for the reference page and its test; null when it needs a whole pattern. */
  readonly example: string | null;
  /** Where it needs a whole pattern: what a fact of this kind holds, to show the sentence on the reference page. */
  readonly sample?: Fact['data'];
}
