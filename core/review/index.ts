export { ACCEPTANCE_STALE, type AcceptedFinding, acceptanceOf, type Settled, settled } from './accepted.ts';
export { cautionsForSize, cautionsOf } from './cautions.ts';
export { review, reviewMeanwhile } from './review.ts';
export type { Rule } from './rule.ts';
export { RULES } from './rules.ts';
export { type Text, textsOf } from './texts.ts';
