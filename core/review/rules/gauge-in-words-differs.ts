/** A text tells a gauge that is none of those that the sizes were reckoned with. */
import type { Gauge } from '../../document/pattern.ts';
import { listed, quote, quoted, words } from '../../findings/phrases.ts';
import { densityOf } from '../../grading/index.ts';
import { toNumber } from '../../trade/units.ts';
import { found, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';

interface Told {
  readonly stitches: number;
  readonly rows: number | null;
  readonly cm: number;
  readonly from: number;
  readonly to: number;
}

const GAUGE =
  /(?<![\d.(,])(\d{1,3}(?:\.\d)?) (?:sts|stitches|sc|hdc|htr|dc|tr)(?: (?:and|by|x|×|,) (\d{1,3}(?:\.\d)?) (?:rows|rnds|rounds))?(?: in [\p{L} -]{2,30}?)? (?:=|to|over|per|measure|make|in) (?:an? )?(\d{1,2}(?:\.\d)?) ?(cm|in\b|inch)/giu;

const told = looking((text, kind): readonly Told[] =>
  kind === 'prose' && /\d/u.test(text)
    ? [...text.matchAll(GAUGE)].map((match) => ({
        stitches: Number(match[1]),
        rows: match[2] === undefined ? null : Number(match[2]),
        cm: Number(match[3]) * (match[4]!.toLowerCase() === 'cm' ? 1 : 2.54),
        from: match.index,
        to: match.index + match[0].length,
      }))
    : [],
);

/** Half a stitch over the length told is rounding, no other gauge. */
function isSame(told: Told, gauge: Gauge): boolean {
  const { stitches, rows } = densityOf(gauge);
  const near = (count: number, density: typeof stitches) =>
    density === null || Math.abs(toNumber(density) * told.cm - count) <= 0.5;
  return near(told.stitches, stitches) && (told.rows === null || near(told.rows, rows));
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
