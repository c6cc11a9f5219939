/**
 * The technical edit: every rule put to a study. What reading, working and grading noticed is in the study
 * already and is not told again here; the rules that are their concern (a repeat that does not fit, a stated
 * count, a place that is not there, stitches passed over, a special stitch without a definition, sizes out of
 * order, a fitted measurement that is off) have their kinds in `core/findings`.
 */
import type { Finding } from '../finding.ts';
import type { Study } from '../study/index.ts';
import { RULES } from './rules.ts';

const known = new WeakMap<Study, readonly Finding[]>();

/** What the rules find, rule by rule, each in the order of the pattern. The same study gives the same list. */
export function review(study: Study): readonly Finding[] {
  const before = known.get(study);
  if (before !== undefined) return before;
  const findings = RULES.flatMap((rule) => rule.check(study));
  known.set(study, findings);
  return findings;
}

/**
 * The same for a study that somebody is still typing in: what follows every row keeps its findings of `before` until
 * `review` is asked. Nothing is left out where nothing was made, since those rules then have nothing to follow.
 */
export function reviewMeanwhile(study: Study, before: readonly Finding[]): readonly Finding[] {
  if (study.pattern.workbook.makings.length === 0) return review(study);
  return RULES.flatMap((rule) =>
    rule.late ? before.filter(({ code }) => code === rule.code) : rule.check(study),
  );
}
