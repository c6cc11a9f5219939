/**
 * What every part of the core reports problems with. Low layers emit *facts* (a code, a place in the text
 * and the numbers concerned, for one size or for none); `core/findings` turns facts into *findings*, whose
 * sentences a maker reads. This module holds the shapes only: no wording, no rule.
 */

/** Half-open range in the text that was read, in UTF-16 units. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

export type Severity = 'error' | 'warning' | 'note';

/** One value that a sentence may need: a number, words, or a list of either. */
export type FactValue = number | string | boolean | null | readonly (number | string)[];

/** Something a layer noticed. `code` is a stable slug that `core/findings` knows. */
export interface Fact extends Span {
  readonly code: string;
  readonly data: Readonly<Record<string, FactValue>>;
}

/** Where a finding is: a node of the document (absent for plain text) and a span of that node's text. */
export interface Where extends Span {
  readonly node: string | null;
}

/** What the maker sees, in every part of the program. */
export interface Finding {
  readonly code: string;
  readonly severity: Severity;
  readonly where: Where;
  /** Indexes of the sizes concerned; empty when the finding does not depend on the size. */
  readonly sizes: readonly number[];
  /** One or two sentences: what is wrong, by how much, what would fix it. */
  readonly message: string;
  /** More, when there is more to say: the numbers of each size, the rule behind it. */
  readonly detail: string | null;
  /** Words that would put it right when they replace the span, if one replacement surely would. */
  readonly fix: { readonly label: string; readonly replacement: string } | null;
}
