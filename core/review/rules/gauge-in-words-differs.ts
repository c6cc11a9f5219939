/** A text tells a gauge that is none of those that the sizes were reckoned with. */
import type { Gauge } from '../../document/pattern.ts';
import { listed, quote, quoted, words } from '../../findings/phrases.ts';
import { densityOf } from '../../grading/index.ts';
import { toNumber } from '../../trade/units.ts';
import { found, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';
import { NUMBER_WORD, numberTold } from '../told-numbers.ts';

interface Told {
  readonly stitches: number;
  readonly rows: number | null;
  /** Centimetres over which the stitches stand, and those over which the rows do. */
  readonly across: number;
  readonly up: number;
  readonly from: number;
  readonly to: number;
}

const NUMBER = String.raw`(\d{1,3}(?:\.\d)?|${NUMBER_WORD})`;
const STITCHES = '(?:sts|stitches|sc|hdc|htr|dc|tr)';
const ROWS = '(?:rows|rnds|rounds)';
const UNIT = '(cm|centimet(?:re|er)s?|in\\b|inch(?:es)?)';
const COUNTED = String.raw`(?<![\d.(,\p{L}-])${NUMBER} ${STITCHES}(?: (?:and|by|x|×|,) ${NUMBER} ${ROWS})?`;

/** "16 sts and 18 rows = 10 cm", "four stitches to an inch". */
const OVER = new RegExp(
  String.raw`${COUNTED}(?: in [\p{L} -]{2,30}?)? (?:=|to|over|per|measures?|makes?|in) (?:an? )?(?:${NUMBER} ?${UNIT}|(?:the |an )?(inch)\b)`,
  'giu',
);
/** "a 10 cm (4 in) square has 16 sts and 18 rows", "10 cm (4 in) = 16 sts". */
const SQUARE = new RegExp(
  String.raw`(?<![\d.(,\p{L}-])${NUMBER} ?${UNIT}(?: ?[(/][^()\d]*\d[^()]{0,8}\))? ?(?:square |swatch )?(?:should have|has|holds|takes|contains|=) ${NUMBER} ${STITCHES} (?:and|by|x|×|,) ${NUMBER} ${ROWS}`,
  'giu',
);
/** "a swatch of 20 sts and 22 rows measures 12.5 cm wide and 12.2 cm high". */
const SWATCH = new RegExp(
  String.raw`\bswatch of ${NUMBER} ${STITCHES} (?:and|by|x|×) ${NUMBER} ${ROWS} (?:should measure|measures|must measure|will measure) (?:about )?(\d{1,2}(?:\.\d)?) ?${UNIT}(?: ?\([^()]{1,12}\))?(?: wide| across)?,? (?:by|x|×|and) (\d{1,2}(?:\.\d)?) ?${UNIT}`,
  'giu',
);

const value = (words: string): number => numberTold(words) ?? Number(words);
const inCm = (words: string, unit: string): number => value(words) * (/^c/iu.test(unit) ? 1 : 2.54);

const told = looking((text, kind): readonly Told[] => {
  if (kind !== 'prose' || !/\b(?:sts|stitches|sc|hdc|htr|dc|tr)\b/iu.test(text)) return [];
  const at = (match: RegExpExecArray) => ({ from: match.index, to: match.index + match[0].length });
  const square = (stitches: number, rows: number | null, cm: number, match: RegExpExecArray): Told => ({
    stitches,
    rows,
    across: cm,
    up: cm,
    ...at(match),
  });
  return [
    ...[...text.matchAll(OVER)].map((match) =>
      square(
        value(match[1]!),
        match[2] === undefined ? null : value(match[2]),
        match[3] === undefined ? 2.54 : inCm(match[3], match[4]!),
        match,
      ),
    ),
    ...[...text.matchAll(SQUARE)].map((match) =>
      square(value(match[3]!), value(match[4]!), inCm(match[1]!, match[2]!), match),
    ),
    ...[...text.matchAll(SWATCH)].map((match) => ({
      stitches: value(match[1]!),
      rows: value(match[2]!),
      across: inCm(match[3]!, match[4]!),
      up: inCm(match[5]!, match[6]!),
      ...at(match),
    })),
  ];
});

/** Half a stitch over the length told is rounding, no other gauge. */
function isSame(told: Told, gauge: Gauge): boolean {
  const { stitches, rows } = densityOf(gauge);
  const near = (count: number, density: typeof stitches, cm: number) =>
    density === null || Math.abs(toNumber(density) * cm - count) <= 0.5;
  return near(told.stitches, stitches, told.across) && (told.rows === null || near(told.rows, rows, told.up));
}

export const gaugeInWordsDiffers: Rule = {
  code: 'gauge-in-words-differs',
  severity: 'error',
  title: 'A text tells another gauge than the sizes were reckoned with',
  reason: 'Whoever matches the gauge in the text makes another size than the table promises.',
  message: (facts, voice) => {
    const { data } = facts[0]!.fact;
    const own = voice.words.trim() === '' ? quoted(data, 'words') : quote(voice.words);
    return `${own} is not the ${voice.gauge} that the sizes are reckoned with (${listed(words(data, 'gauges'), 'or')}); put the words right, or the ${voice.gauge} under Materials`;
  },
  example: null,
  sample: { words: '18 sts to 10 cm', gauges: ['16 sts and 18 rows over 10 cm'] },
  check: (study) => {
    const { gauges } = study.pattern;
    if (gauges.length === 0) return [];
    return told(study.pattern).flatMap(({ text: { node, text }, hits }) =>
      hits
        .filter((each) => !gauges.some((gauge) => isSame(each, gauge)))
        .map(({ from, to }) =>
          found(
            gaugeInWordsDiffers,
            study,
            { node, text, from, to },
            {
              words: text.slice(from, to),
              gauges: gauges.map(
                ({ stitches, rows, width }) =>
                  `${stitches} sts and ${rows} rows over ${width.value} ${width.unit}`,
              ),
            },
          ),
        ),
    );
  },
};
