/** A text says how long so many rows are, and at the gauge they are not. */
import { number, quote, text } from '../../findings/phrases.ts';
import { gaugeOf, lengthOfCount, stepsOf } from '../../study/gauge.ts';
import type { Study } from '../../study/index.ts';
import { formatLength, type Length, rational, toNumber } from '../../trade/units.ts';
import { blockAt } from '../blocks.ts';
import { found, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';
import { lengthsIn } from '../typed-lengths.ts';

interface Told {
  readonly rows: number;
  readonly cm: number;
  /** Across a circle, where a row counts on either side of the middle. */
  readonly across: boolean;
  readonly from: number;
  readonly to: number;
}

const NUMBER = String.raw`(\d{1,3}|two|four|six)`;
const ROWS = '(?:rounds|rnds|rows)';
/** What leads from the rows to the length: "6 rounds are 5 cm", "work 2 rows more or fewer for each ½ in". */
const LEADS = new RegExp(
  String.raw`\b${NUMBER}\s+${ROWS}\s+(?:(?:are|make|measure|give|come to|=)\s+(?:about\s+|approx\.?\s+)?|(?:more|fewer|less)(?: or (?:more|fewer|less))?\b[^.;]{0,30}\bfor (?:each|every)\s+)$`,
  'iu',
);
const ACROSS = new RegExp(
  String.raw`\bafter\s+${NUMBER}\s+(?:rounds|rnds)\s+[^.;]{0,40}?(?:be|is|are|measures?)\s+(?:about\s+|approx\.?\s+)?$`,
  'iu',
);
const WORDS: Readonly<Record<string, number>> = { two: 2, four: 4, six: 6 };

/** Letters before a length that are looked at, however long the text. */
const NEAR = 120;

const told = looking((prose, kind): readonly Told[] => {
  if (kind === 'row' || !/\b(?:rounds|rnds|rows)\b/iu.test(prose)) return [];
  return lengthsIn(prose).flatMap(({ cm, from, to }): readonly Told[] => {
    if (cm.length !== 1) return [];
    const before = prose.slice(Math.max(0, from - NEAR), from);
    const across = ACROSS.exec(before);
    const isWide = across !== null && /^[^.;]{0,24}\b(?:across|in diameter|wide)\b/iu.test(prose.slice(to));
    const lead = isWide ? across : LEADS.exec(before);
    if (lead === null) return [];
    const rows = WORDS[lead[1]!.toLowerCase()] ?? Number(lead[1]);
    return [{ rows, cm: cm[0]!, across: isWide, from: from - (before.length - lead.index), to }];
  });
});

/** Heights of a row at the gauges that the words may speak of. */
function stepsAt(study: Study, node: string): readonly Length[] {
  const place = blockAt(study, node);
  const pieces = place === null ? study.pieces : [place.piece];
  return pieces.flatMap((piece) => {
    const gauge = gaugeOf(piece, study.pattern, study.sheet);
    const row = gauge === null ? null : stepsOf(gauge).row;
    return row === null ? [] : [row];
  });
}

/** Makers round such lengths to what is handy: a fifth, and half a row. */
const ROUNDED = 0.2;

export const rowsInWordsOff: Rule = {
  code: 'rows-in-words-off',
  severity: 'warning',
  title: 'A text tells another length of so many rows than they have',
  reason:
    'Who makes it longer or shorter, or checks the first rounds, goes by such a sentence. At the gauge it must hold.',
  message: (facts, voice) => {
    const { data } = facts[0]!.fact;
    return `${quote(voice.words || text(data, 'words'))}: at the ${voice.gauge} ${number(data, 'rows')} rows come to ${text(data, 'made')} (${text(data, 'madeIn')})${data.across === true ? ' across' : ''}; put the number or the length right`;
  },
  example: null,
  sample: { words: '8 rounds are 5 cm', rows: 8, made: '6.5 cm', madeIn: '2½ in', across: false },
  check: (study) =>
    told(study.pattern).flatMap(({ text: { node, text: words }, hits }) => {
      const steps = stepsAt(study, node);
      if (steps.length === 0) return [];
      return hits.flatMap(({ rows, cm, across, from, to }) => {
        const sides = across ? 2 : 1;
        const isRight = steps.some((step) => {
          const made = toNumber(step) * rows * sides;
          return Math.abs(made - cm) <= Math.max(ROUNDED * made, toNumber(step) / 2);
        });
        const made = lengthOfCount(rows * sides, steps[0]!);
        return isRight || rational(cm) === null
          ? []
          : [
              found(
                rowsInWordsOff,
                study,
                { node, text: words, from, to },
                {
                  words: words.slice(from, to),
                  rows,
                  made: formatLength(made, 'metric'),
                  madeIn: formatLength(made, 'imperial'),
                  across,
                },
              ),
            ];
      });
    }),
};
