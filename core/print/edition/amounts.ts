/**
 * How much yarn each size takes, as a buyer reads it: the maker's own amount where there is one, else what is reckoned
 * from finished makings, with the maker's margin and said to be an estimate. Of the makings nothing is told but that
 * they were made.
 */
import type { Yarn } from '../../document/pattern.ts';
import { yarnOf } from '../../study/yarn.ts';
import { ballsFor } from '../../trade/balls.ts';
import { formatNumber, formatYarnLength, type Rational, rational, roundUpTo } from '../../trade/units.ts';
import { type Block, type Text, table } from '../content.ts';
import type { Reader } from './reader.ts';
import { capitalised } from './text.ts';

/** The amount of one yarn in one size. */
export interface Amount {
  readonly metres: Rational | null;
  readonly grams: Rational | null;
  readonly balls: number | null;
  readonly estimated: boolean;
}

const FIVE = rational(5)!;

/** What a yarn is called where it has a key: "Yarn A". */
export function yarnLabel(yarn: Yarn): string {
  return yarn.key === null || yarn.key.trim() === '' ? 'Yarn' : `Yarn ${yarn.key.trim()}`;
}

/** Amounts of a yarn, one for each size shown. */
export function amountsOf(yarn: Yarn, reader: Reader): readonly (Amount | null)[] {
  const { pattern, sizes, study } = reader;
  const isTyped = (size: number) => Object.hasOwn(yarn.metres, pattern.sizes[size]!.id);
  // Reckoning is asked for only where it can tell something.
  const report =
    reader.yarn ?? (pattern.workbook.makings.length > 0 && !sizes.every(isTyped) ? yarnOf(study) : null);
  const index = pattern.yarns.indexOf(yarn);
  return sizes.map((size): Amount | null => {
    if (isTyped(size)) {
      const typed = yarn.metres[pattern.sizes[size]!.id]!;
      return {
        metres: rational(typed),
        grams: null,
        balls: ballsFor(yarn, typed),
        estimated: false,
      };
    }
    const own = report?.yarns[index]?.sizes[size] ?? null;
    if (own === null) return null;
    const { metres, grams } = own.withMargin;
    return {
      metres: metres === null ? null : rational(metres),
      grams: grams === null ? null : rational(grams),
      balls: own.balls,
      estimated: true,
    };
  });
}

const toSpare = (reader: Reader): string => {
  const margin = rational(reader.pattern.workbook.yarnMargin);
  return margin === null || margin.n === 0n ? '' : `, with ${formatNumber(margin)}% to spare`;
};

/** A weight to buy, up to the next 5 g as lengths are (common practice). */
const gramsShown = (grams: Rational): string => formatNumber(roundUpTo(grams, FIVE));

/** "365 m / 400 yd (180 g), 4 balls": one amount in words; null where nothing can be told of it. */
export function amountWords(amount: Amount, reader: Reader): string | null {
  const { metres, grams, balls, estimated } = amount;
  const both =
    metres === null ? null : [formatYarnLength(metres, 'metric'), formatYarnLength(metres, 'imperial')];
  const weight = grams === null ? null : `${gramsShown(grams)} g`;
  const length = both === null ? null : (reader.units === 'metric' ? both : both.reverse()).join('\u00A0/ ');
  const size = length === null ? weight : weight === null ? length : `${length} (${weight})`;
  if (size === null) return null;
  const all = balls === null ? size : `${size}, ${balls} ${balls === 1 ? 'ball' : 'balls'}`;
  const said = estimated ? `about ${all}: an estimate from finished pieces${toSpare(reader)}` : all;
  return said.replace(/ (?=(?:m|yd|g)\b|balls?\b)/gu, '\u00A0');
}

/** Amounts of every yarn for every size: metres, yards, grams where they are reckoned, balls. */
export function amountTable(reader: Reader): Block | null {
  const { pattern, sizes, wording, units } = reader;
  if (sizes.length < 2) return null;
  const all = pattern.yarns.map((yarn) => ({ yarn, each: amountsOf(yarn, reader) }));
  const rows = all
    .filter(({ each }) => each.some((amount) => amount !== null))
    .flatMap(({ yarn, each }): (readonly [Text, ...Text[]])[] => {
      const cells = (one: (amount: Amount) => string | null) =>
        each.map((amount) => (amount === null ? null : one(amount)) ?? '–');
      const length = (system: 'metric' | 'imperial') =>
        cells(({ metres }) =>
          metres === null ? null : formatYarnLength(metres, system).replace(/ .*$/u, ''),
        );
      const named = pattern.yarns.length > 1 ? `${yarnLabel(yarn)}, ` : '';
      const head = (words: string) => (named === '' ? capitalised(words) : `${named}${words}`);
      const grams = yarn.ballGrams === null ? 'balls' : `balls of ${yarn.ballGrams}\u00A0g`;
      const lines: readonly (readonly [Text, ...Text[]])[] = [
        ...(units === 'metric'
          ? [
              [head(wording.metres), ...length('metric')] as const,
              [head('yards'), ...length('imperial')] as const,
            ]
          : [
              [head('yards'), ...length('imperial')] as const,
              [head(wording.metres), ...length('metric')] as const,
            ]),
        [head('grams'), ...cells((amount) => (amount.grams === null ? null : gramsShown(amount.grams)))],
        [head(grams), ...cells(({ balls }) => (balls === null ? null : String(balls)))],
      ];
      return lines.filter(([, ...cells]) => cells.some((cell) => cell !== '–'));
    });
  if (rows.length === 0) return null;
  return table({
    caption: 'Yarn for each size',
    corner: 'Size',
    heads: sizes.map((size) => pattern.sizes[size]!.label),
    rows,
    told: 'by-column',
    note: noteOf(all, reader),
  });
}

/** Which of the amounts are reckoned; null where the maker gave them all. */
function noteOf(
  all: readonly { readonly yarn: Yarn; readonly each: readonly (Amount | null)[] }[],
  reader: Reader,
): string | null {
  const amounts = all.flatMap(({ each }) => each.filter((amount) => amount !== null));
  const estimated = amounts.filter((amount) => amount.estimated).length;
  if (estimated === 0) return null;
  const which = estimated === amounts.length ? 'Amounts' : 'Amounts with a weight in grams';
  return `${estimateNote(which, reader)} Yarn use differs from hand to hand.`;
}

/** That amounts are estimates, and what they rest on. */
export const estimateNote = (which: string, reader: Reader): string =>
  `${which} are estimates, reckoned from the yarn that finished pieces took${toSpare(reader)}.`;
