/** A size has no label. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';

export const sizeLabelEmpty: FindingKind = {
  code: 'size-label-empty',
  severity: 'error',
  title: 'A size has no label',
  reason:
    'Numbers in rows stand in the order of the sizes; without a label nobody knows which one is theirs.',
  message: () => 'a size has no label; call it what the pattern calls it, for example "M" or "6–12 months"',
  example: null,
  sample: {},
};
