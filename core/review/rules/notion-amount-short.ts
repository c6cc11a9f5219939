/** A text uses more of a notion than the materials list. */
import type { Notion } from '../../document/pattern.ts';
import { number, perSize, quoted } from '../../findings/phrases.ts';
import { typedLists } from '../../study/typed-lists.ts';
import { foundIn, type Rule } from '../rule.ts';
import { tellsHow } from '../texts.ts';
import { thingsAsked } from '../things.ts';

const WORDS = [
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
];

/** A number right before the noun, with at most two words between: "6 small wooden buttons". */
const BEFORE = new RegExp(
  String.raw`(?:(\d{1,3})|\b(${WORDS.join('|')})|(\d{1,3} \([^)]*\)))(?: \p{Ll}+){0,2} $`,
  'iu',
);

/** Letters before a noun in which its number may stand. */
const NEAR = 120;

function amountIn({ amount }: Notion, size: string): number | null {
  if (amount === null) return null;
  return 'all' in amount ? amount.all : (amount.each[size] ?? null);
}

export const notionAmountShort: Rule = {
  code: 'notion-amount-short',
  severity: 'warning',
  title: 'More of a notion is used than is listed',
  reason: 'A maker who bought what the list says is one button short on the last evening.',
  message: (facts, voice) =>
    perSize(
      facts,
      voice,
      ({ data }) =>
        `${number(data, 'used')} of ${quoted(data, 'notion')} are used here, but the materials list ${number(data, 'listed')}; put one of the two right`,
    ),
  example: null,
  sample: { used: 6, listed: 5, notion: 'buttons' },
  check: (study) => {
    const { notions, sizes } = study.pattern;
    if (notions.length === 0) return [];
    const isHow = tellsHow(study.pattern);
    return thingsAsked(study.pattern).flatMap(({ text: { node, text }, hits }) =>
      hits.flatMap(({ thing, from, to }) => {
        if (!thing.counted || !isHow(node)) return [];
        const listed = notions.filter(({ name }) => thing.listed.test(name));
        const match = BEFORE.exec(text.slice(Math.max(0, from - NEAR), from));
        if (listed.length === 0 || match === null) return [];
        const [whole, digits, word, list] = match;
        const values =
          list !== undefined
            ? (typedLists(list, sizes.length)[0]?.values.map(Number) ?? null)
            : sizes.map(() =>
                digits === undefined ? WORDS.indexOf(word!.toLowerCase()) + 1 : Number(digits),
              );
        if (values === null) return [];
        const data = sizes.map(({ id }, i) => {
          const amounts = listed.map((notion) => amountIn(notion, id));
          if (amounts.some((amount) => amount === null)) return null;
          const sum = amounts.reduce((total: number, amount) => total + amount!, 0);
          return values[i]! > sum ? { used: values[i]!, listed: sum, notion: listed[0]!.name } : null;
        });
        return foundIn(notionAmountShort, study, { node, text, from: from - whole.length, to }, data);
      }),
    );
  },
};
