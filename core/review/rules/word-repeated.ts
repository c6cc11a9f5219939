/** A word stands twice, one after the other. */
import { quote, quoted, text } from '../../findings/phrases.ts';
import { found, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';

const TWICE = /(?<![\p{L}\p{N}'’-])(\p{L}+)([ \u00A0]+)(\1)(?![\p{L}\p{N}'’-])/giu;

/** Words that are said twice on purpose. */
const MEANT: ReadonlySet<string> = new Set(
  'had that very so long much many far no now there bye ha ho tsk pom choo knock night hush'.split(' '),
);

/** Words that no row says twice; a stitch may stand twice ("sc sc inc") and mean two. */
const IN_ROWS: ReadonlySet<string> = new Set(
  'the a an in into of to from and with at on around across each next last first same then or for by over is as st sts'.split(
    ' ',
  ),
);

interface Doubled {
  readonly word: string;
  readonly from: number;
  readonly to: number;
}

const doubled = looking((text, kind): readonly Doubled[] =>
  [...text.matchAll(TWICE)].flatMap((match) => {
    const [whole, word = ''] = match;
    const low = word.toLowerCase();
    // "4 in in the pattern": inches, and then a place.
    if (low === 'in' && /[\d½¼¾]\s?$/u.test(text.slice(0, match.index))) return [];
    const isSlip = kind === 'row' ? IN_ROWS.has(low) : !MEANT.has(low);
    return isSlip ? [{ word, from: match.index, to: match.index + whole.length }] : [];
  }),
);

export const wordRepeated: Rule = {
  code: 'word-repeated',
  severity: 'warning',
  title: 'A word stands twice',
  reason: 'It is most often left over from rewording, and sometimes hides a word that was meant.',
  message: (facts) =>
    `${quoted(facts[0]!.fact.data, 'word')} stands twice in a row; take one out, or put in the word that was meant`,
  fix: (facts) => {
    const replacement = text(facts[0]!.fact.data, 'word');
    return { label: `Leave one ${quote(replacement)}`, replacement };
  },
  example: null,
  sample: { word: 'the' },
  check: (study) =>
    doubled(study.pattern).flatMap(({ text: { node, text }, hits }) =>
      hits.map(({ word, from, to }) => found(wordRepeated, study, { node, text, from, to }, { word })),
    ),
};
