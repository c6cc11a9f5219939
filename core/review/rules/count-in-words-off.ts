/** A paragraph among the rows states how many stitches there are, and there are not so many. */
import { FIGURE } from '../../document/pattern.ts';
import { number, perSize } from '../../findings/phrases.ts';
import { blockAt, rowsBefore } from '../blocks.ts';
import { foundIn, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';
import { valuesTold } from '../told-numbers.ts';

interface Stated {
  readonly words: string;
  readonly from: number;
  readonly to: number;
}

const STATED = new RegExp(
  String.raw`\b(?:there (?:are|should be|will be|must be)|(?:you|it|the piece) (?:should |will |must )?(?:now )?ha(?:ve|s)|you (?:should )?end (?:up )?with|total of) (?:now )?(\d{1,5}(?: ?[([][\d–—, -]+[)\]])*|${FIGURE}) (?:sts|stitches)(?!\p{L})(?! (?:for|on|at|in|between|per|before|left|unworked|each|over|to) )(?! for)`,
  'giu',
);

const stated = looking((text, kind): readonly Stated[] =>
  kind === 'prose' && /\b(?:sts|stitches)\b/u.test(text)
    ? [...text.matchAll(STATED)].map((match) => {
        const words = match[1]!;
        const from = match.index + match[0].indexOf(words);
        return { words, from, to: from + words.length };
      })
    : [],
);

export const countInWordsOff: Rule = {
  code: 'count-in-words-off',
  severity: 'error',
  title: 'A paragraph states a count that the rows do not make',
  reason: 'Makers count where the text tells them to, and go back to look for a mistake of their own.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const [stated, counted] = [number(data, 'stated'), number(data, 'counted')];
      return `these words state ${stated} sts, but the row before makes ${counted}, ${Math.abs(stated - counted)} ${counted < stated ? 'fewer' : 'more'}; put the words or the row right`;
    }),
  example: null,
  sample: { stated: 72, counted: 70 },
  check: (study) =>
    stated(study.pattern).flatMap(({ text: { node, text }, hits }) => {
      const place = blockAt(study, node);
      const row = place === null ? null : rowsBefore(place);
      if (place === null || row === null) return [];
      const own = place.piece.blocks[place.at]!;
      const only = own.block.type === 'prose' ? own.block.sizes : null;
      return hits.flatMap((each) => {
        const values = valuesTold(each.words, study.pattern.sizes.length, { own, text, from: each.from });
        if (values === null) return [];
        const data = study.pattern.sizes.map((size, i) => {
          const counted = row.sizes[i]?.tally.stitches;
          const value = values[i] ?? null;
          if (counted === undefined || value === null || value === counted) return null;
          return only !== null && !only.includes(size.id) ? null : { stated: value, counted };
        });
        return foundIn(countInWordsOff, study, { node, text, from: each.from, to: each.to }, data);
      });
    }),
};
