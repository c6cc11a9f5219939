/** Two sizes have one label. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { number, quoted } from './phrases.ts';

export const sizeLabelsEqual: FindingKind = {
  code: 'size-labels-equal',
  severity: 'error',
  title: 'Two sizes have one label',
  reason: 'Readers find their numbers by the label of their size.',
  message: (facts) =>
    `${number(facts[0]!.fact.data, 'times')} sizes are called ${quoted(facts[0]!.fact.data, 'label')}; give each its own label`,
  example: null,
  sample: { label: 'M', times: 2 },
};
