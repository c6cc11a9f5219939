/** A length is told in two units, and they are not the same length. */
import { quote, quoted, text } from '../../findings/phrases.ts';
import { hookByMm, hooks as hookSizes } from '../../trade/hooks.ts';
import { formatLength, rational } from '../../trade/units.ts';
import { found, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';
import { isSameTold, typedLengths } from '../typed-lengths.ts';

/** Rounding to the quarter inch and the half centimetre, and makers' round numbers (10 cm for 4 in), stay within these. */
const ROUNDING_CM = 0.45;
const ROUNDING = 0.045;

const differs = (a: number, b: number): boolean =>
  Math.abs(a - b) > Math.max(ROUNDING_CM, ROUNDING * Math.max(a, b));

const BY = /^\s*(?:[x×]|by)\s*$/iu;

/** "30 °C / 86 °F": a temperature in both scales, and how it reads in the other. */
const HEAT = /(\d{2,3})\s?°\s?C\s*[/(=,]\s*(\d{2,3})\s?°\s?F\)?/gu;
/** Washing is told in steps of ten degrees and in round numbers of Fahrenheit. */
const HEAT_ROUNDING = 5;

const heats = looking((prose) =>
  [...prose.matchAll(HEAT)].flatMap((match) => {
    const [celsius, fahrenheit] = [Number(match[1]), Number(match[2])];
    const comes = Math.round(celsius * 1.8 + 32);
    return Math.abs(comes - fahrenheit) <= HEAT_ROUNDING
      ? []
      : [{ celsius, comes, from: match.index, to: match.index + match[0].length }];
  }),
);

/** "4.5 mm (US J-10)", "5 mm / H-8": a hook by its size and by its letter. */
const HOOK =
  /(?<![\d.])(\d{1,2}(?:\.\d{1,2})?)\s?mm\s?[(/,]\s?(?:(?:US|USA|U\.S\.)\s?(?:size\s)?)?([B-S])(?:[-/ ]?(\d{1,2}(?:½|\.5)?))?(?![\p{L}\p{N}])\)?/gu;
/** Makers stamp a letter on hooks that differ by as much. */
const HOOK_ROUNDING = 0.55;

const hookMarks = looking((prose, kind) =>
  kind === 'row'
    ? []
    : [...prose.matchAll(HOOK)].flatMap((match) => {
        const mm = Number(match[1]);
        const lettered = hookSizes.filter(({ usLetter }) => usLetter?.split('/').includes(match[2]!));
        const isNear = lettered.some((hook) => Math.abs(hook.mm - mm) <= HOOK_ROUNDING);
        const label = hookByMm(mm)?.usLabel ?? null;
        return lettered.length === 0 || isNear || label === null
          ? []
          : [{ mm, label, from: match.index, to: match.index + match[0].length }];
      }),
);

export const unitsDisagree: Rule = {
  code: 'units-disagree',
  severity: 'error',
  title: 'Two units do not say the same',
  reason: 'Each reader follows one of the two, so one of them makes a piece of another size.',
  message: (facts, voice) => {
    const { data } = facts[0]!.fact;
    const words = voice.words.trim() === '' ? quoted(data, 'words') : quote(voice.words);
    if (data.heat === true)
      return `${words} gives two different temperatures: ${text(data, 'first')} is ${text(data, 'comes')}; put one of them right`;
    if (data.hook === true)
      return `${words} gives two different hooks: ${text(data, 'first')} is US ${text(data, 'comes')}; put one of them right`;
    return `${words} gives two different lengths: ${text(data, 'first')} is ${text(data, 'comes')}; put one of them right`;
  },
  example: null,
  sample: { words: '20 cm (10 in)', first: '20 cm', comes: '7¾ in' },
  check: (study) => [
    ...heats(study.pattern).flatMap(({ text: { node, text }, hits }) =>
      hits.map(({ celsius, comes, from, to }) =>
        found(
          unitsDisagree,
          study,
          { node, text, from, to },
          { words: text.slice(from, to), heat: true, first: `${celsius} °C`, comes: `${comes} °F` },
        ),
      ),
    ),
    ...hookMarks(study.pattern).flatMap(({ text: { node, text }, hits }) =>
      hits.map(({ mm, label, from, to }) =>
        found(
          unitsDisagree,
          study,
          { node, text, from, to },
          { words: text.slice(from, to), hook: true, first: `${mm} mm`, comes: label },
        ),
      ),
    ),
    ...typedLengths(study.pattern).flatMap(({ text: { node, text }, hits: lengths }) =>
      lengths.slice(1).flatMap((second, i) => {
        const first = lengths[i]!;
        if (!isSameTold(text, first, second) || first.cm.length !== second.cm.length) return [];
        // "4 in x 20 in (10 cm x 51 cm)": each side has its own beside it, the second by the second.
        const [before, after] = [lengths[i - 1], lengths[i + 2]];
        const isArea =
          before !== undefined &&
          after !== undefined &&
          BY.test(text.slice(before.to, first.from)) &&
          BY.test(text.slice(second.to, after.from));
        if (isArea) {
          const sides = [[before, second] as const, [first, after] as const];
          if (sides.every(([a, b]) => !differs(a.cm[0]!, b.cm[0]!))) return [];
        }
        const at = first.cm.findIndex((cm, place) => differs(cm, second.cm[place]!));
        if (at < 0) return [];
        const length = rational(first.cm[at]!);
        if (length === null) return [];
        const [own, other] =
          first.system === 'metric' ? (['metric', 'imperial'] as const) : (['imperial', 'metric'] as const);
        const closes =
          /^[)\]]/u.test(text.slice(second.to)) && /[([]/u.test(text.slice(first.to, second.from));
        const span = { from: first.from, to: second.to + (closes ? 1 : 0) };
        return [
          found(
            unitsDisagree,
            study,
            { node, text, ...span },
            {
              words: text.slice(span.from, span.to),
              first: formatLength(length, own),
              comes: formatLength(length, other),
            },
          ),
        ];
      }),
    ),
  ],
};
