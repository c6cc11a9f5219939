/** A word is taken in its usual meaning. Sentences only; `core/fabric` notices it. */
import type { FindingKind } from './kind.ts';
import { text } from './phrases.ts';

export const definitionAssumed: FindingKind = {
  code: 'definition-assumed',
  severity: 'note',
  title: 'A word is taken in its usual meaning',
  reason:
    'Increase, decrease, V-stitch and cluster are commonly understood, but a pattern for sale explains them.',
  message: (facts, voice) => {
    const { data } = facts[0]!.fact;
    const name = text(data, 'name');
    const base = voice.stitch(text(data, 'stitch'), 1);
    if (name === 'inc') return `"inc" is read as 2 ${base} in one stitch; the abbreviations should say so`;
    if (name === 'dec')
      return `"dec" is read as ${voice.stitch(`tog2.${text(data, 'stitch')}`, 1)}; the abbreviations should say so`;
    if (name === 'V-st')
      return `"V-st" is read as (${base}, ch 1, ${base}) in one place; the special stitches should say so`;
    return `"${name}" is read as making one stitch in one place; the special stitches should say how it is made`;
  },
  example: `Rnd 1: 6 sc in magic ring.
Rnd 2: Inc in each st around.`,
};
