/** "Until the piece measures …" asks for a length that the rows have passed already, or that the rows given do not reach. */
import { FIGURE } from '../../document/pattern.ts';
import { perSize, text } from '../../findings/phrases.ts';
import type { Item, Length as Written } from '../../notation/tree.ts';
import { gaugeOf, lengthOfCount, stepsOf } from '../../study/gauge.ts';
import type { BlockStudy, PieceStudy, Study } from '../../study/index.ts';
import { isAlongRows, isMeasured } from '../../study/taped.ts';
import { formatLength, type Length, rational, toCm } from '../../trade/units.ts';
import { toleranceFor } from '../asked.ts';
import { blockAt } from '../blocks.ts';
import { works } from '../ends.ts';
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

const UNTIL =
  /\b(?:until|till)\b[^.;]{0,60}?\b(?:measures?|is) (?:about |approximately |approx\.? |roughly |a total of )?$/iu;

const lengthsAsked = looking((words, kind): readonly Told[] => {
  if (kind === 'row' || !/\b(?:un)?till?\b/iu.test(words)) return [];
  const typed = lengthsIn(words).map(({ cm, from, to }): Told => ({ cm, figure: -1, from, to }));
  const figures = [...words.matchAll(new RegExp(FIGURE, 'gu'))].map(
    ({ index }, figure): Told => ({ cm: null, figure, from: index, to: index + 1 }),
  );
  return [...typed, ...figures].filter(
    ({ from, to }) => UNTIL.test(words.slice(Math.max(0, from - 120), from)) && isAlongRows(words, from, to),
  );
});

const untilIn = (items: readonly Item[]): Written | null =>
  items.flatMap((item) => ((item.type === 'rows-again' || item.type === 'even') && item.until) || [])[0] ??
  null;

function askedFor(told: Told, own: BlockStudy, size: number): Length | null {
  if (told.cm !== null) return rational(told.cm.length === 1 ? told.cm[0]! : (told.cm[size] ?? Number.NaN));
  const value = own.figures[told.figure]?.[size]?.value ?? null;
  return value?.dimension === 'length' ? value.value : null;
}

const shown = (key: string, value: Length) => ({
  [key]: formatLength(value, 'metric'),
  [`${key}In`]: formatLength(value, 'imperial'),
});

/** Length of a row at the gauge of a piece whose length is all its own and is told by its rows; else null. */
function rowOf(study: Study, piece: PieceStudy, at: number): Length | null {
  const gauge = gaugeOf(piece, study.pattern, study.sheet);
  const row = gauge === null ? null : stepsOf(gauge).row;
  // A piece that goes on from another is measured with it, or apart from it: the words do not say which.
  if (row === null || piece.piece.start.kind === 'edges') return null;
  return piece.blocks.slice(0, at).some(({ tree }) => tree !== null && isMeasured(tree.items)) ? null : row;
}

const rowsIn = (blocks: readonly BlockStudy[], size: number): number =>
  blocks.reduce((sum, { sizes }) => sum + (sizes[size]?.rows ?? 0), 0);

/** What is wrong in one size: `ways` are the numbers of rows that the words may mean. */
function offBy(study: Study, asked: Length | null, ways: readonly number[], row: Length, isPast: boolean) {
  if (asked === null || ways.some((rows) => rows === 0)) return null;
  const usual = toleranceFor(study, asked);
  const two = row.mul(2);
  const limit = usual.compare(two) > 0 ? usual : two;
  const made = ways.map((rows) => ({ rows, length: lengthOfCount(rows, row) }));
  const off = made.filter(({ length }) =>
    isPast ? length.sub(asked).compare(limit) > 0 : length.sub(asked).abs().compare(limit) > 0,
  );
  if (off.length < made.length) return null;
  const { rows, length } = made.at(-1)!;
  return { ...shown('asked', asked), rows, ...shown('made', length), how: isPast ? 'past' : 'given' };
}

export const lengthUntilOff: Rule = {
  code: 'length-until-off',
  severity: 'warning',
  title: 'Rows do not reach the length that "until" asks for, or have passed it',
  reason:
    'Work that is to go on until it has a length must be shorter before, and where rows are given too, both must come to the same. Otherwise one maker follows the tape, another the rows.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const both = (key: string) => `${text(data, key)} (${text(data, `${key}In`)})`;
      const rows = `the ${String(data.rows)} rows`;
      return text(data, 'how') === 'past'
        ? `this goes on until ${both('asked')}, but ${rows} before it make ${both('made')} already at the ${voice.gauge}; put the length or the rows right`
        : `this goes on until ${both('asked')}, but ${rows} that are given make ${both('made')} at the ${voice.gauge}; put the length or the rows right`;
    }),
  example: null,
  sample: { asked: '20 cm', askedIn: '7¾ in', rows: 48, made: '26.5 cm', madeIn: '10½ in', how: 'past' },
  check: (study) => {
    const inRows = study.pieces.flatMap((piece) =>
      piece.blocks.flatMap(({ block, tree }, at) => {
        const until = tree === null || block.type !== 'row' ? null : untilIn(tree.items);
        const row = until === null ? null : rowOf(study, piece, at);
        if (until === null || row === null || block.type !== 'row') return [];
        const words = block.text.text;
        if (!isAlongRows(words, until.from, until.to)) return [];
        const data = study.pattern.sizes.map((_, size) => {
          const value = until.values.length === 1 ? until.values[0]! : until.values[size];
          const asked = value === undefined ? null : toCm(value, until.unit);
          return offBy(study, asked, [rowsIn(piece.blocks.slice(0, at), size)], row, true);
        });
        const { from, to } = until;
        return foundIn(lengthUntilOff, study, { node: block.id, text: words, from, to }, data);
      }),
    );
    const inWords = lengthsAsked(study.pattern).flatMap(({ text: { node, text: words }, hits }) => {
      const place = blockAt(study, node);
      const row = place === null ? null : rowOf(study, place.piece, place.at);
      if (place === null || row === null) return [];
      const { piece, at } = place;
      // "Work on until …" before the rows that do it, or after them: it holds if either does.
      const next = piece.blocks.findIndex((own, i) => i > at && works(own));
      const ends = next < 0 ? [at] : [at, next + 1];
      return hits.flatMap((each) => {
        const data = study.pattern.sizes.map((_, size) => {
          const ways = ends.map((end) => rowsIn(piece.blocks.slice(0, end), size));
          const last = Math.max(...ways);
          return offBy(
            study,
            askedFor(each, piece.blocks[at]!, size),
            last === 0 ? [0] : ways.filter((rows) => rows > 0),
            row,
            false,
          );
        });
        return foundIn(lengthUntilOff, study, { node, text: words, from: each.from, to: each.to }, data);
      });
    });
    return [...inRows, ...inWords];
  },
};
