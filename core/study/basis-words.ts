/**
 * What an estimate rests on, in words for the maker: the makings behind it and how far they are off. For the command
 * line and the studio alike; never for a pattern, which tells nothing of who made what.
 */
import type { Pattern } from '../document/pattern.ts';
import type { Making } from '../document/workbook.ts';
import { cautions } from '../trade/cautions.ts';
import type { Missing } from './price.ts';
import type { WhyUnused } from './unused.ts';
import type { UseDoubt } from './yarn-counts.ts';

const listed = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;

/** A part as a percentage: whole percents, tenths below ten. */
export function percentWords(part: number): string {
  const percent = Math.abs(part) * 100;
  const rounded = percent < 10 ? Math.round(percent * 10) / 10 : Math.round(percent);
  return `${rounded}\u00A0%`;
}

function makingsWords(makings: readonly Making[], { sizes }: Pattern): string {
  const labels = (of: readonly Making[]) => [
    ...new Set(
      of
        .flatMap(({ size }) => sizes.find(({ id }) => id === size)?.label ?? [])
        .filter((label) => label !== ''),
    ),
  ];
  const told = (kind: Making['kind'], one: string, more: (n: number) => string) => {
    const own = makings.filter((making) => making.kind === kind);
    if (own.length === 0) return [];
    const where = labels(own);
    const words = own.length === 1 ? one : more(own.length);
    return [where.length === 0 ? words : `${words} in ${listed(where)}`];
  };
  return listed([
    ...told('sample', 'your sample', (n) => `your ${n} samples`),
    ...told('tester', 'one tester', (n) => `${n} testers`),
    ...told('swatch', 'a swatch', (n) => `${n} swatches`),
  ]);
}

/** "from your sample in M and 2 testers in S and L; typical error 3 %". Null without makings. */
export function basisWords(
  basis: { readonly makings: readonly Making[]; readonly heldBack: number | null } | null,
  pattern: Pattern,
): string | null {
  if (basis === null || basis.makings.length === 0) return null;
  const from = `from ${makingsWords(basis.makings, pattern)}`;
  return basis.heldBack === null
    ? `${from}; with one figure nothing tells how far off it may be`
    : `${from}; typical error ${percentWords(basis.heldBack)}, each left out in turn and told by the others`;
}

/** What a price still needs. */
export function missingWords(missing: Missing): string {
  const yarn = 'yarn' in missing ? (missing.yarn === '' ? 'the yarn' : `the yarn “${missing.yarn}”`) : '';
  switch (missing.what) {
    case 'yarn-amount':
      return `how much a finished piece used of ${yarn}`;
    case 'ball-price':
      return `what a ball of ${yarn} costs`;
    case 'ball-figures':
      return `the grams or metres of a ball of ${yarn}`;
    case 'hours':
      return 'the hours that a finished piece took';
    case 'hourly':
      return 'what an hour of your work is to bring (0 for none)';
    case 'currency':
      return 'your currency';
  }
}

/** What could not be told for certain about who has which row. */
export function doubtWords({ kind, words }: UseDoubt, piece: string): string {
  const of = piece.trim() === '' ? 'A piece' : `“${piece.trim()}”`;
  switch (kind) {
    case 'unknown-colour':
      return `${of} names a colour “${words}” that is no yarn of the list; its rows are counted for the yarn before it.`;
    case 'shared-in-repeat':
      return `${of} changes yarn within a repeat; those rows are shared out as one working of the repeat is.`;
    case 'rows-unreckoned':
      return `${of} goes on until a length is measured, and how many rows that is cannot be reckoned: they are counted as written, so that its yarn comes out too little.`;
  }
}

/** Why a making's figures are not reckoned with, and what would mend it. `kind` as in the workbook. */
export function unusedWords(kind: string, why: WhyUnused): string {
  const whose =
    kind === 'tester'
      ? "a tester's figures"
      : kind === 'swatch'
        ? "a swatch's figures"
        : "a sample's figures";
  const head = `${whose} are not reckoned with`;
  switch (why) {
    case 'size':
      return `${head}, because its size is not among the sizes; choose its size under Workbook, or take it out`;
    case 'yarn':
      return `${head}, because they are of a yarn that is not in the materials any more; choose the yarn under Workbook`;
    case 'piece':
      return `${head}, because they are of a piece that is not there any more; choose the piece under Workbook`;
    case 'which':
      return `${head}, because they are of all yarns together, and their balls differ; weigh each yarn, or enter metres`;
    case 'more-than-whole':
      return `${whose} cannot be: its pieces took more yarn than the whole; weigh again, and put one of them right under Workbook`;
    case 'zero':
      return `${whose} hold a 0, which nothing can be reckoned from; enter what was used, or leave it open`;
  }
}

/** What no estimate counts, said wherever one is shown. */
export const NOT_COUNTED =
  'Counted are the rows of every piece. Seams, borders and tassels that only the finishing tells of are not; the sample’s weight has them in it.';

/** Said where time is planned: the trade's caution for the maker's own hands. */
export const HOURS_CARE: string = cautions.find(({ id }) => id === 'hands')?.text ?? '';
