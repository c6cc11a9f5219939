/**
 * On which foundation chains the first rows of a piece work, found by working them over chains of every length: what
 * a multiple told in words is held against. It reads no words but the rows', and judges nothing.
 */
import { FIGURE, type Pattern } from '../document/pattern.ts';
import { type Env, PLAIN_ENV, worksTurningChain } from '../fabric/index.ts';
import type { Item, RowTree } from '../notation/tree.ts';
import type { PieceStudy, Study } from '../study/index.ts';
import { chainsThatWork, seriesOf, type WorkingChain, worksOn } from '../study/multiple.ts';
import { conventionsIn } from '../study/rows.ts';

export interface PieceMultiple {
  readonly multiple: number;
  /** What is left of the stitches of its first row when whole repeats are taken off. */
  readonly plus: number;
  /** What may stand after "plus": what is left of the foundation's chains, and of any row's stitches and chains. */
  readonly rests: ReadonlySet<number>;
}

/** Rows that are tried: a stitch pattern is set up in the first few. */
const MOST_ROWS = 8;

const repeats = (items: readonly Item[]): boolean => items.some(({ type }) => type === 'repeat');

/** Whether a piece works anything by repeats, so that a multiple may be meant for it. */
export const worksRepeats = ({ blocks }: PieceStudy): boolean =>
  blocks.some(({ tree }) => tree !== null && repeats(tree.items));

/** Whether a row works by a figure, and does not only state one as its count. */
const asksFigures = (words: string, { counts }: RowTree): boolean =>
  [...words.matchAll(new RegExp(FIGURE, 'gu'))].some(
    ({ index }) => !counts.some(({ from, to }) => from <= index && index < to),
  );

/** The rows that a piece begins with, up to those that are shaped, that differ by size, or that ask for a figure. */
function firstRows({ blocks }: PieceStudy): readonly RowTree[] {
  const rows: RowTree[] = [];
  for (const { block, tree } of blocks) {
    if (rows.length > MOST_ROWS || block.type === 'shaping') break;
    if (block.type !== 'row') continue;
    if (tree === null || block.sizes !== null || (rows.length > 0 && asksFigures(block.text.text, tree)))
      break;
    rows.push(tree);
  }
  return rows;
}

/** Whether a row of a piece cannot be followed or has another count: what it works on says nothing then. */
export const isWrong = ({ blocks }: PieceStudy): boolean =>
  blocks.some(({ findings }) => findings.some(({ severity }) => severity === 'error'));

/** What was found for rows that begin with a row, and under which of the pattern's words. */
interface Known {
  readonly rows: readonly RowTree[];
  readonly readings: Pick<Study['readings'], 'definitions' | 'conventions'>;
  /** Undefined while nobody has asked. */
  multiple?: PieceMultiple | null;
  /** By the number of chains. */
  readonly made: Map<number, WorkingChain | null>;
}

/** By the first row: an edit further on leaves the rows that are tried as they are. */
const known = new WeakMap<RowTree, Known>();

/** What is known of the rows that a piece begins with; null when it does not begin with a chain or its rows are wrong. */
function knownOf({ readings }: Study, piece: PieceStudy): Known | null {
  const rows = piece.piece.start.kind === 'chain' && !isWrong(piece) ? firstRows(piece) : [];
  const [first] = rows;
  if (first === undefined) return null;
  const before = known.get(first);
  if (
    before !== undefined &&
    before.rows.length === rows.length &&
    before.rows.every((row, i) => row === rows[i]) &&
    before.readings.definitions === readings.definitions &&
    before.readings.conventions === readings.conventions
  )
    return before;
  const now: Known = { rows, readings, made: new Map() };
  known.set(first, now);
  return now;
}

/** The multiple that a piece's first rows work on; null when they do not begin with a chain, or work on none. */
export function multipleOf(study: Study, piece: PieceStudy): PieceMultiple | null {
  const of = knownOf(study, piece);
  if (of === null) return null;
  if (of.multiple === undefined) of.multiple = tried(of.rows, of.readings);
  return of.multiple;
}

/** The counts that are stated go with the pattern's own numbers. */
const uncounted = (rows: readonly RowTree[]): readonly RowTree[] =>
  rows.map((row): RowTree => ({ ...row, counts: [] }));

const envOf = (rows: readonly RowTree[], readings: Known['readings']): Env => ({
  ...PLAIN_ENV,
  names: readings.definitions,
  conventions: [...conventionsIn(rows), ...readings.conventions],
  turningChainWorked: rows.some((row) => worksTurningChain(row.items)),
});

/**
 * What the first rows of a piece make on a foundation of `n` chains: null where they do not come out on it, and
 * undefined where the piece does not begin with a chain or its own rows are wrong.
 */
export function madeOn(study: Study, piece: PieceStudy, n: number): WorkingChain | null | undefined {
  const of = knownOf(study, piece);
  if (of === null || of.rows.length < 2) return undefined;
  const before = of.made.get(n);
  if (before !== undefined) return before;
  const all = uncounted(of.rows);
  const made = worksOn(all, n, envOf(all, of.readings));
  of.made.set(n, made);
  return made;
}

function tried(rows: readonly RowTree[], readings: Known['readings']): PieceMultiple | null {
  const all = uncounted(rows);
  const env = envOf(all, readings);
  let made: PieceMultiple | null = null;
  // A later row may be for one number of stitches alone; those before it still have their multiple.
  for (let n = all.length; n > 1 && made === null; n = Math.floor(n / 2)) {
    const rows = all.slice(0, n);
    if (!rows.some(({ items }) => repeats(items))) break;
    const regular = seriesOf(chainsThatWork(rows, env));
    if (regular === null || regular.multiple < 2) continue;
    const { multiple, series } = regular;
    const [{ n: chains, rows: worked }] = series as [(typeof series)[number]];
    made = {
      multiple,
      plus: (worked[0]?.stitches ?? 0) % multiple,
      rests: new Set(
        [chains, ...worked.map((row) => row.stitches + row.chains)].map((rest) => rest % multiple),
      ),
    };
  }
  return made;
}

/** The piece whose block a node is; null for what stands outside the pieces. */
export const pieceOfNode = ({ pieces }: Pattern, node: string): string | null =>
  pieces.find(({ blocks }) => blocks.some(({ id }) => id === node))?.id ?? null;
