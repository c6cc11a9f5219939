/** A text tells another number of balls than the amounts of yarn come to. */
import { count, number, perSize, quoted, text } from '../../findings/phrases.ts';
import type { Study } from '../../study/index.ts';
import { yarnOf } from '../../study/yarn.ts';
import { ballsFor } from '../../trade/balls.ts';
import { foundIn, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';
import { numberTold, TOLD_NUMBER, valuesTold } from '../told-numbers.ts';

interface Told {
  readonly words: string;
  readonly at: number;
  /** The sentence that it stands in. */
  readonly sentence: string;
  readonly from: number;
  readonly to: number;
}

const BALLS = new RegExp(
  String.raw`\b(?:needs?|takes?|requires?|buy|uses?|you(?:'|’)ll need) (?:about |only |just )?(${TOLD_NUMBER}) (?:(?:50|100|25) ?g )?(?:balls?|skeins?|hanks?)(?!\p{L})`,
  'dgiu',
);
/** What one maker used, or what is bought beyond the amounts. Common practice, no source. */
const OTHERWISE =
  /\b(?:sample|shown|pictured|tester|testers|swatch|extra|spare|more|longer|shorter|each)\b/iu;

const told = looking((prose, kind): readonly Told[] => {
  if (kind === 'row' || !/\b(?:ball|skein|hank)/iu.test(prose)) return [];
  return [...prose.matchAll(BALLS)].flatMap((match) => {
    const to = match.index + match[0].length;
    const before = /[^.!?]*$/u.exec(prose.slice(0, match.index))![0];
    const sentence = `${before}${match[0]}${/^[^.!?]*/u.exec(prose.slice(to))![0]}`;
    const [at] = match.indices![1]!;
    return OTHERWISE.test(sentence) ? [] : [{ words: match[1]!, at, sentence, from: at, to }];
  });
});

interface Amount {
  readonly name: string;
  readonly key: string | null;
  /** Whole balls in each size; null where no amount is known. */
  readonly balls: readonly (number | null)[];
}

/** Balls of every yarn: of the amounts that are given, else of what is reckoned from finished pieces. */
function amountsOf(study: Study): readonly Amount[] {
  const { sizes, yarns, workbook } = study.pattern;
  const reckoned = workbook.makings.length === 0 ? [] : yarnOf(study).yarns;
  return yarns.map((yarn, i) => ({
    name: yarn.name.trim() || (yarn.key ?? ''),
    key: yarn.key,
    balls: sizes.map(({ id }, size) => {
      const metres = Object.hasOwn(yarn.metres, id) ? yarn.metres[id]! : null;
      return metres === null ? (reckoned[i]?.sizes[size]?.balls ?? null) : ballsFor(yarn, metres);
    }),
  }));
}

/** The yarn that a sentence means: the one whose letter or name it has, or the only one. */
function yarnIn(amounts: readonly Amount[], sentence: string): Amount | null {
  if (amounts.length === 1) return amounts[0]!;
  const letters = new Set(sentence.split(/[^\p{L}\p{N}]+/u));
  const low = sentence.toLowerCase();
  const named = amounts.filter(
    ({ key, name }) =>
      (key !== null && letters.has(key)) || (name.length > 2 && low.includes(name.toLowerCase())),
  );
  return named.length === 1 ? named[0]! : null;
}

/** The sizes that a sentence names, by their index; null where it names none, and means all. */
function sizesIn({ sizes }: Study['pattern'], sentence: string): ReadonlySet<number> | null {
  const after = /\bsizes?\s(.*)$/iu.exec(sentence)?.[1];
  if (after === undefined) return null;
  const words = after.split(/[\s,.;:()/]+/u);
  return new Set(
    sizes.flatMap(({ label }, i) => (words.includes(label) || after.startsWith(label) ? [i] : [])),
  );
}

export const ballsInWordsOff: Rule = {
  code: 'balls-in-words-off',
  severity: 'warning',
  title: 'A text tells another number of balls than the materials',
  reason:
    'Makers buy by the number they read last. Too few cannot always be bought again in the same dye; too many have been paid for.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const yarn = text(data, 'yarn') === '' ? 'the yarn' : quoted(data, 'yarn');
      const has = number(data, 'balls');
      return `these words say ${count(number(data, 'told'), 'ball')}, but the amount of ${yarn} comes to ${has}; put the words or the amount right`;
    }),
  example: null,
  late: true,
  sample: { told: 5, yarn: 'Worsted wool', balls: 6 },
  check: (study) => {
    const all = told(study.pattern);
    if (all.length === 0 || study.pattern.yarns.length === 0) return [];
    const amounts = amountsOf(study);
    const { sizes } = study.pattern;
    return all.flatMap(({ text: { node, text: prose }, hits }) =>
      hits.flatMap(({ words, at, sentence, from, to }) => {
        const yarn = yarnIn(amounts, sentence);
        const only = sizesIn(study.pattern, sentence);
        const values = valuesTold(words, sizes.length, { own: null, text: prose, from: at });
        if (yarn === null || values === null) return [];
        const isMeant = (i: number) => only === null || only.has(i);
        // One number for several sizes may be meant for any of them.
        const isOne = numberTold(words) !== null;
        if (isOne && yarn.balls.some((balls, i) => isMeant(i) && (balls === null || balls === values[i])))
          return [];
        const data = sizes.map((_, i) => {
          const [told, balls] = [values[i] ?? null, yarn.balls[i] ?? null];
          if (!isMeant(i) || told === null || balls === null || told === balls) return null;
          return { told, yarn: yarn.name, balls };
        });
        return foundIn(ballsInWordsOff, study, { node, text: prose, from, to }, data);
      }),
    );
  },
};
