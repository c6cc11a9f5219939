/** The words tell how much larger than the body a garment is, and its finished measurements come out otherwise. */
import { length, number, perSize, quoted, text } from '../../findings/phrases.ts';
import { formatLength, fromInches, type Length, rational, ZERO } from '../../trade/units.ts';
import { chestEase } from '../chest.ts';
import { foundIn, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';

/** Sizes are chosen to the next whole inch: an ease no further than this outside is as told. This program's own choice. */
const SLACK = fromInches(1)!;

const NUMBER = String.raw`(?:\d{1,3}(?:\.\d)?[½¼¾]?|[½¼¾])`;
const UNIT = String.raw`(cm|in\.?|ins|inch(?:es)?|["”])`;
/** A length or a range of it, and the same in the other unit behind it. */
const AMOUNT = String.raw`(${NUMBER})(?:\s?(?:to|–|-)\s?(${NUMBER}))?[\s-]?${UNIT}(?:\s?[/(]\s?${NUMBER}(?:\s?(?:to|–|-)\s?${NUMBER})?\s?(?:cm|in\.?|ins|inch(?:es)?|["”])\)?)?`;
const LARGER = new RegExp(
  String.raw`(?<![\p{L}\p{N}.,/½¼¾–-])${AMOUNT}\s+(larger|wider|bigger|roomier|smaller|narrower)\s+than\s+(?:yours?|the body|your|the wearer|actual|(?:body|bust|chest)\b)`,
  'giu',
);
const EASE = new RegExp(
  String.raw`(?<![\p{L}\p{N}.,/½¼¾–-])${AMOUNT}\s+(?:of\s+)?(positive|negative)?\s*ease\b`,
  'giu',
);
/** Of another part of the body, of the one that was photographed, or for those who like another fit. */
const OTHER =
  /\b(?:sleeves?|arms?|upper arm|wrists?|hips?|waist|cuffs?|heads?|hands?|foot|feet|calf|thigh|shown|sample|models?|modelled|modeled|pictured|wearing|if|prefer|like|want|would|could|may|instead|more|less|no|not|without)\b/iu;

interface Told {
  readonly from: number;
  readonly to: number;
  /** Least and most, in centimetres; less than nothing for what is narrower than the body. */
  readonly least: Length;
  readonly most: Length;
}

const GLYPHS: Readonly<Record<string, number>> = { '½': 0.5, '¼': 0.25, '¾': 0.75 };

function lengthOf(words: string, unit: string): Length | null {
  const glyph = /[½¼¾]$/u.exec(words)?.[0];
  const value = rational(
    Number(words.replace(/[½¼¾]/u, '') || 0) + (glyph === undefined ? 0 : GLYPHS[glyph]!),
  );
  return value === null ? null : unit === 'cm' ? value : fromInches(value);
}

function toldIn(prose: string): readonly Told[] {
  return [LARGER, EASE].flatMap((pattern) =>
    [...prose.matchAll(pattern)].flatMap((match): readonly Told[] => {
      const [whole, near = '', far = near, unit = '', way = ''] = match;
      const before = /[^.!?]*$/u.exec(prose.slice(0, match.index))![0];
      const after = /^[^.!?]*/u.exec(prose.slice(match.index + whole.length))![0];
      const [a, b] = [lengthOf(near, unit), lengthOf(far, unit)];
      if (OTHER.test(before) || OTHER.test(after) || a === null || b === null) return [];
      const isLess = /^(?:smaller|narrower|negative)$/iu.test(way);
      const [least, most] = isLess ? [ZERO.sub(b), ZERO.sub(a)] : [a, b];
      return [{ from: match.index, to: match.index + whole.length, least, most }];
    }),
  );
}

const told = looking((prose, kind) =>
  kind === 'prose' && /\d/u.test(prose) && /\bease\b|\bthan\b/iu.test(prose) ? toldIn(prose) : [],
);

const shown = (key: string, value: Length) => ({
  [key]: formatLength(value.abs(), 'metric'),
  [`${key}In`]: formatLength(value.abs(), 'imperial'),
  [`${key}Less`]: value.compare(ZERO) < 0 ? 1 : 0,
});

export const easeInWordsOff: Rule = {
  code: 'ease-in-words-off',
  severity: 'warning',
  title: 'The words tell another ease than the measurements make',
  reason:
    'A maker chooses the size by how much larger than the body it is said to be. Told otherwise than it comes out, it is the wrong size.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const way = (key: string) => (number(data, `${key}Less`) === 1 ? 'narrower' : 'wider');
      const ends =
        text(data, 'least') === text(data, 'most')
          ? `${length(data, 'most')} ${way('most')}`
          : way('least') === way('most')
            ? `from ${length(data, 'least')} to ${length(data, 'most')} ${way('most')}`
            : `from ${length(data, 'least')} ${way('least')} to ${length(data, 'most')} ${way('most')}`;
      return `${quoted(data, 'words')} is not how it comes out: ${quoted(data, 'heading')} is ${ends} than the body; change the words, or the ease`;
    }),
  example: null,
  sample: {
    words: '20 cm of ease',
    heading: 'Finished bust',
    least: '10 cm',
    leastIn: '4 in',
    leastLess: 0,
    most: '15 cm',
    mostIn: '6 in',
    mostLess: 0,
  },
  check: (study) => {
    const seen = told(study.pattern).filter(
      ({ text: { node } }) => node.startsWith('cover:') || node.startsWith('notes:'),
    );
    const chest = seen.length === 0 ? null : chestEase(study);
    if (chest === null) return [];
    return seen.flatMap(({ text: { node, text: words }, hits }) =>
      hits.flatMap(({ from, to, least, most }) => {
        const off = chest.ease.map((ease) =>
          ease !== null && (ease.compare(least.sub(SLACK)) < 0 || ease.compare(most.add(SLACK)) > 0)
            ? ease
            : null,
        );
        const all = off.flatMap((ease) => ease ?? []).sort((a, b) => a.compare(b));
        if (all.length === 0) return [];
        const data = {
          words: words.slice(from, to),
          heading: chest.heading,
          ...shown('least', all[0]!),
          ...shown('most', all.at(-1)!),
        };
        const at = { node, text: words, from, to };
        return foundIn(
          easeInWordsOff,
          study,
          at,
          off.map((ease) => (ease === null ? null : data)),
        );
      }),
    );
  },
};
