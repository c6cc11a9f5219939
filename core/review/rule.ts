/**
 * The shape of one rule of the technical edit: a kind of finding, and the check that finds it in a study. One
 * file per rule stands in `rules`. A rule reads what the study knows and reckons nothing that grading or the
 * engine reckons; it changes nothing.
 */
import type { Fact, Finding } from '../finding.ts';
import { type FindingKind, type SizedFact, tellAs } from '../findings/index.ts';
import type { Study } from '../study/index.ts';

export interface Rule extends FindingKind {
  /** Every finding of this rule in a pattern. Total: a half-written pattern is no reason to fail. */
  readonly check: (study: Study) => readonly Finding[];
  /** It follows every row of every size: while somebody types it waits for a pause. */
  readonly late?: true;
}

/** Where a rule found something: a node (see `texts` for parts without an id) and words of its text. */
export interface At {
  readonly node: string | null;
  readonly text?: string;
  readonly from?: number;
  readonly to?: number;
}

type Data = Fact['data'];

function telling(study: Study, at: At) {
  const labels = study.pattern.sizes.map((size) => size.label);
  return { terms: study.pattern.terms, labels, node: at.node, text: at.text ?? '' };
}

function sized(rule: FindingKind, at: At, size: number | null, data: Data): SizedFact {
  return { size, fact: { code: rule.code, from: at.from ?? 0, to: at.to ?? 0, data } };
}

/** A finding that does not depend on the size. */
export function found(rule: FindingKind, study: Study, at: At, data: Data = {}): Finding {
  return tellAs(rule, [sized(rule, at, null, data)], telling(study, at));
}

/** One finding for the sizes that have data (one entry a size, null where all is well); none when none has. */
export function foundIn(
  rule: FindingKind,
  study: Study,
  at: At,
  sizes: readonly (Data | null)[],
): readonly Finding[] {
  const facts = sizes.flatMap((data, size) => (data === null ? [] : [sized(rule, at, size, data)]));
  return facts.length === 0 ? [] : [tellAs(rule, facts, telling(study, at))];
}
