/** A stitch is named in the other market's terms. Sentences only; `core/notation` notices it. */
import type { Terms } from '../trade/stitches.ts';
import { stitchAbbreviation } from '../trade/terms.ts';
import type { FindingKind, SizedFact } from './kind.ts';
import { quoted, text } from './phrases.ts';

/** The stitch that the whole word names: its height is told, the rest of it stands in the letters. */
function stitchOf(data: SizedFact['fact']['data']): string {
  const taken = text(data, 'taken');
  const letters = text(data, 'words').toLowerCase().replaceAll(/[\s-]/g, '');
  const together = /(\d{1,2})tog$/.exec(letters);
  if (together !== null) return `tog${together[1]}.${taken}`;
  const post = /^(?:fp|bp)/.exec(letters);
  return post === null ? taken : `${post[0]}.${taken}`;
}

export const otherTerms: FindingKind = {
  code: 'other-terms',
  severity: 'warning',
  title: "A stitch is named in the other market's terms",
  reason:
    'The same letters mean different stitches in US and UK terms. A pattern that mixes them makes every stitch doubtful.',
  message: (facts, voice) => {
    const { data } = facts[0]!.fact;
    const [own, other] = text(data, 'terms') === 'uk' ? ['UK', 'US'] : ['US', 'UK'];
    return `${quoted(data, 'words')} is a ${other} term in a pattern written in ${own} terms; it is read as ${voice.stitch(stitchOf(data), 1)}`;
  },
  fix: (facts, voice) => {
    const { data } = facts[0]!.fact;
    const other: Terms = text(data, 'terms') === 'uk' ? 'us' : 'uk';
    if (voice.words.toLowerCase() !== stitchAbbreviation(stitchOf(data), other).toLowerCase()) return null;
    const replacement = voice.stitch(stitchOf(data), 1);
    return { label: `Write ${replacement}`, replacement };
  },
  example: `Ch 11.
Row 1: Htr in 3rd ch from hook (2 skipped ch count as hdc) and in each ch across.`,
};
