/** A paragraph among the rows says how long the work is, and its rows at the gauge make another length. */
import { FIGURE } from '../../document/pattern.ts';
import { perSize, text } from '../../findings/phrases.ts';
import { gaugeOf, lengthOfCount, stepsOf } from '../../study/gauge.ts';
import type { BlockStudy } from '../../study/index.ts';
import { isAlongRows, isMeasured } from '../../study/taped.ts';
import { formatLength, type Length, rational } from '../../trade/units.ts';
import { toleranceFor } from '../asked.ts';
import { blockAt } from '../blocks.ts';
import { foundIn, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';
import { lengthsIn } from '../typed-lengths.ts';

interface Told {
  /** In centimetres, one or one a size; null where a figure tells it. */
  readonly cm: readonly number[] | null;
  /** Index of the figure. */
  readonly figure: number;
  readonly from: number;
  readonly to: number;
}

const MEASURES =
  /\b(?:(?:should|will|must) (?:now )?(?:measure|be)|measures?|measuring) (?:about |approximately |approx\.? |roughly |now )?$/iu;
/** Work that is to go on until then: whether its rows stand before or after is asked apart. */
const UNTIL = /\b(?:until|till)\b[^.;]*$/iu;

/** Letters on either side of a length that say what is measured: no more are looked at, however long the text. */
const NEAR = 120;

const lengthsTold = looking((text, kind): readonly Told[] => {
  if (kind === 'row' || !/measur|should be|will be|must be/iu.test(text)) return [];
  const typed = lengthsIn(text).map(({ cm, from, to }): Told => ({ cm, figure: -1, from, to }));
  const figures = [...text.matchAll(new RegExp(FIGURE, 'gu'))].map(
    ({ index }, figure): Told => ({ cm: null, figure, from: index, to: index + 1 }),
  );
  return [...typed, ...figures].filter(
    ({ from, to }) =>
      MEASURES.test(text.slice(Math.max(0, from - NEAR), from)) &&
      !UNTIL.test(text.slice(Math.max(0, from - NEAR), from)) &&
      isAlongRows(text, from, to),
  );
});

function lengthAt(told: Told, own: BlockStudy, size: number): Length | null {
  if (told.cm !== null) return rational(told.cm.length === 1 ? told.cm[0]! : (told.cm[size] ?? Number.NaN));
  const value = own.figures[told.figure]?.[size]?.value ?? null;
  return value?.dimension === 'length' ? value.value : null;
}

const shown = (key: string, value: Length) => ({
  [key]: formatLength(value, 'metric'),
  [`${key}In`]: formatLength(value, 'imperial'),
});

export const lengthInWordsOff: Rule = {
  code: 'length-in-words-off',
  severity: 'warning',
  title: 'A paragraph tells a length that its rows do not make',
  reason:
    'Where rows and a length both stand, they must agree at the gauge. Otherwise one maker follows the rows, another the tape, and their pieces do not match.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const both = (key: string) => `${text(data, key)} (${text(data, `${key}In`)})`;
      return `these words say ${both('told')}, but the ${String(data.rows)} rows up to here make ${both('made')} at the ${voice.gauge}; put the length or the rows right`;
    }),
  example: null,
  sample: { told: '30 cm', toldIn: '11¾ in', rows: 40, made: '22 cm', madeIn: '8¾ in' },
  check: (study) =>
    lengthsTold(study.pattern).flatMap(({ text: { node, text }, hits }) => {
      const place = blockAt(study, node);
      if (place === null) return [];
      const { piece, at } = place;
      const gauge = gaugeOf(piece, study.pattern, study.sheet);
      const row = gauge === null ? null : stepsOf(gauge).row;
      // A piece that goes on from another is measured with it, or apart from it: the words do not say which.
      if (row === null || piece.piece.start.kind === 'edges') return [];
      const before = piece.blocks.slice(0, at);
      if (before.some(({ tree }) => tree !== null && isMeasured(tree.items))) return [];
      return hits.flatMap((each) => {
        const data = study.pattern.sizes.map((_, i) => {
          const told = lengthAt(each, piece.blocks[at]!, i);
          const rows = before.reduce((sum, { sizes }) => sum + (sizes[i]?.rows ?? 0), 0);
          if (told === null || rows === 0) return null;
          const made = lengthOfCount(rows, row);
          const usual = toleranceFor(study, told);
          const two = row.mul(2);
          const limit = usual.compare(two) > 0 ? usual : two;
          return made.sub(told).abs().compare(limit) <= 0
            ? null
            : { ...shown('told', told), rows, ...shown('made', made) };
        });
        return foundIn(lengthInWordsOff, study, { node, text, from: each.from, to: each.to }, data);
      });
    }),
};
