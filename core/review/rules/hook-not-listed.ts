/** A text asks for a hook that the materials do not list. */
import { listed, quote, quoted, words } from '../../findings/phrases.ts';
import { hooks as CHART } from '../../trade/hooks.ts';
import { found, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';
import { tellsHow } from '../texts.ts';

interface Named {
  readonly mm: number;
  readonly from: number;
  readonly to: number;
}

const MM = /(?<![\d.,-])(\d{1,2}(?:\.\d{1,2})?)[ \u00A0-]?mm(?: \([^()]{1,20}\))?(?=(?: crochet)? hook)/giu;
const LETTER =
  /\b(?:US |size ){1,2}([A-Z])(?:[-/ ]\d{1,2}(?:½)?)?(?=(?: \([^()]{1,20}\))?(?: crochet)? hook)/gu;

const hooksNamed = looking((text): readonly Named[] =>
  text.includes('hook')
    ? [
        ...[...text.matchAll(MM)].map((match) => ({
          mm: Number(match[1]),
          from: match.index,
          to: match.index + match[0].length,
        })),
        ...[...text.matchAll(LETTER)].flatMap((match) => {
          const hook = CHART.find(({ usLetter }) => usLetter === match[1]);
          return hook === undefined
            ? []
            : [{ mm: hook.mm, from: match.index, to: match.index + match[0].length }];
        }),
      ]
    : [],
);

export const hookNotListed: Rule = {
  code: 'hook-not-listed',
  severity: 'warning',
  title: 'A hook is used that the materials do not list',
  reason:
    'A maker lays out the hooks of the list. A size that turns up in the rows is not to hand, or it is a slip.',
  message: (facts, voice) => {
    const { data } = facts[0]!.fact;
    const hook = voice.words.trim() === '' ? quoted(data, 'words') : quote(voice.words);
    return `the ${hook} hook is not among the materials, which list ${listed(words(data, 'hooks'))}; add it to the hooks, or put the size right`;
  },
  example: null,
  sample: { words: '3.5 mm', hooks: ['4.5 mm', '4 mm'] },
  check: (study) => {
    const { hooks } = study.pattern;
    if (hooks.length === 0) return [];
    const isHow = tellsHow(study.pattern);
    return hooksNamed(study.pattern).flatMap(({ text: { node, text }, hits }) =>
      hits
        .filter(({ mm }) => isHow(node) && !hooks.some((hook) => Math.abs(hook.mm - mm) < 0.005))
        .map(({ from, to }) =>
          found(
            hookNotListed,
            study,
            { node, text, from, to },
            { words: text.slice(from, to), hooks: hooks.map(({ mm }) => `${mm} mm`) },
          ),
        ),
    );
  },
};
