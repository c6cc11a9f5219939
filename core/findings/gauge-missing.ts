/** A line has no gauge. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { quoted } from './phrases.ts';

export const gaugeMissing: FindingKind = {
  code: 'gauge-missing',
  severity: 'error',
  title: 'A line has no gauge',
  reason: 'Without a gauge no length turns into stitches or rows.',
  message: (facts, voice) =>
    `${quoted(facts[0]!.fact.data, 'line')} names no ${voice.gauge} of the pattern, so it has no number; choose one under Materials`,
  example: null,
  sample: { line: 'back stitches', field: '', gauge: '' },
};
