/** A text uses more of a notion than the materials list. */
import type { Notion, Pattern } from '../../document/pattern.ts';
import { number, perSize, quoted } from '../../findings/phrases.ts';
import { foundIn, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';
import { tellsHow } from '../texts.ts';
import { thingsAsked } from '../things.ts';
import { numberTold, ONE_NUMBER, TOLD_NUMBER, valuesTold } from '../told-numbers.ts';

/** A number right before the noun, with at most two words between: "6 small wooden buttons"; one of it: "a marker". */
const BEFORE = new RegExp(String.raw`(?:(?<![\p{L}\p{N}])(an?|${TOLD_NUMBER}))(?: \p{Ll}+){0,2} $`, 'iu');

/** Places that each take as many: "in each of the four corners", "at each end". */
const EACH = new RegExp(
  String.raw`^ (?:in|into|at|on|for|to) (?:each|every)(?:(?: of)?(?: the)? (${ONE_NUMBER}) (?:\p{Ll}+ )?(?:corners?|points?|lines?|seams?|sides?|edges?|ends?|sleeves?|fronts?)| (end)| (?:\p{Ll}+ )?(corners?))(?!\p{L})`,
  'iu',
);
/** How many corners a text says that there are. */
const CORNERS = new RegExp(String.raw`(?<![\p{L}\p{N}])(${ONE_NUMBER}) (?:\p{Ll}+ )?corners(?!\p{L})`, 'giu');

const cornersTold = looking((text) =>
  /corners/iu.test(text)
    ? [...text.matchAll(CORNERS)].map((match) => ({
        count: numberTold(match[1]!) ?? 0,
        from: match.index,
        to: match.index + match[0].length,
      }))
    : [],
);

/** The number of corners that the texts agree on; null where they tell none, or several. */
function cornersOf(pattern: Pattern): number | null {
  const [count, other] = new Set(
    cornersTold(pattern).flatMap(({ hits }) => hits.map((corners) => corners.count)),
  );
  return count === undefined || other !== undefined ? null : count;
}

/** Letters before a noun in which its number may stand. */
const NEAR = 120;

/** How many places a thing is put in, one each: told here, two ends, or as many corners as the texts say. */
function placesOf([, told, end]: RegExpExecArray, pattern: Pattern): number | null {
  if (told !== undefined) return numberTold(told);
  return end !== undefined ? 2 : cornersOf(pattern);
}

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
        const [whole, words] = match as unknown as [string, string];
        const each = EACH.exec(text.slice(to, to + NEAR));
        const places = each === null ? 1 : placesOf(each, study.pattern);
        const isOne = /^an?$/iu.test(words);
        // One marker that is moved along is one, whatever else is said of it; one in every corner is not.
        if (places === null || (isOne && each === null)) return [];
        const values = isOne
          ? sizes.map(() => 1)
          : valuesTold(words, sizes.length, { own: null, text, from: from - whole.length });
        if (values === null) return [];
        const data = sizes.map(({ id }, i) => {
          const amounts = listed.map((notion) => amountIn(notion, id));
          if (amounts.some((amount) => amount === null)) return null;
          const sum = amounts.reduce((total: number, amount) => total + amount!, 0);
          const used = (values[i] ?? 0) * places;
          return used > sum ? { used, listed: sum, notion: listed[0]!.name } : null;
        });
        return foundIn(
          notionAmountShort,
          study,
          { node, text, from: from - whole.length, to: to + (each?.[0].length ?? 0) },
          data,
        );
      }),
    );
  },
};
