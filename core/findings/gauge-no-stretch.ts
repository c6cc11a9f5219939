/** A line is fitted stretched, but the gauge does not stretch. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { quoted } from './phrases.ts';

export const gaugeNoStretch: FindingKind = {
  code: 'gauge-no-stretch',
  severity: 'warning',
  title: 'A line is fitted stretched, but the gauge does not stretch',
  reason:
    'How far a fabric is worn beyond where it lies comes from its swatch; without it the line is fitted as it lies.',
  message: (facts, voice) => {
    const { data } = facts[0]!.fact;
    return `${quoted(data, 'line')} is fitted as worn, but the ${voice.gauge} in ${quoted(data, 'gauge')} says nothing of its stretch, so it is fitted as it lies; enter how wide the swatch lies and is worn`;
  },
  example: null,
  sample: { line: 'brim stitches', field: 'length', gauge: 'rib' },
};
