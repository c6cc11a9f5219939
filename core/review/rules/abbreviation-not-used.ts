/** An abbreviation is explained, and no text uses it. */
import { quoted } from '../../findings/phrases.ts';
import type { Study } from '../../study/index.ts';
import { found, type Rule } from '../rule.ts';
import { usesOf } from '../usage.ts';

/** Short forms that stand in the labels of rows, which no text has. */
function inLabels({ pieces }: Study): ReadonlySet<string> {
  const blocks = pieces.flatMap((piece) => piece.blocks);
  const sides = blocks.flatMap(({ sizes }) => sizes.flatMap((size) => size?.side ?? []));
  const rounds = blocks.some(({ block }) => block.type === 'row' && block.form === 'round');
  return new Set([...(sides.length > 0 ? ['rs', 'ws'] : []), ...(rounds ? ['rnd', 'rnds', 'rnd(s)'] : [])]);
}

export const abbreviationNotUsed: Rule = {
  code: 'abbreviation-not-used',
  severity: 'note',
  title: 'An abbreviation is explained but not used',
  reason: 'The list at the front is made from what the pattern uses, so this one is not printed.',
  message: (facts) =>
    `${quoted(facts[0]!.fact.data, 'abbreviation')} is explained, but nothing uses it, so it is not printed; take it out, or check how the rows spell it`,
  example: null,
  sample: { abbreviation: 'lgsh' },
  check: (study) => {
    const uses = usesOf(study.pattern);
    const labels = inLabels(study);
    return Object.keys(study.pattern.abbreviations)
      .filter((short) => short.trim() !== '' && !labels.has(short.trim().toLowerCase()))
      .filter((short) => !uses.some(({ own }) => own.has(short)))
      .map((short) =>
        found(
          abbreviationNotUsed,
          study,
          { node: `abbreviation:${short}`, text: short },
          { abbreviation: short },
        ),
      );
  },
};
