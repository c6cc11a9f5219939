/**
 * Lengths that a text gives: whether they are taken along the rows from the beginning of the piece, and whether rows
 * go on until a tape says so; and how many rows that makes at a gauge. Whether a length is right is the rules' concern.
 */
import type { Item } from '../notation/tree.ts';
import { toCm, toNumber } from '../trade/units.ts';
import { spanOf } from './gauge.ts';
import type { PieceStudy } from './piece-study.ts';
import { MOST_FOLLOWED, type WorkedRow, workedRows } from './worked.ts';

/** Not along the rows, or from a place within the piece. */
const ASIDE =
  /^[^.;]{0,40}?\b(?:wide|across|around|square|diameter|circumference|each way|from (?!(?:the )?(?:beginning|beg|start|foundation|bottom|lower edge|hem|cast|first row|ring|center|centre)))/iu;
const WIDE = /\b(?:width|circumference|diameter|gap|opening|loop|tail|chain|tie|cord)\b[^.;]*$/iu;

/** Letters on either side of a length that say what is measured: no more are looked at, however long the text. */
const NEAR = 120;

/** Whether a length at a place of a text is taken along the rows, from where the piece begins. */
export const isAlongRows = (text: string, from: number, to: number): boolean =>
  !ASIDE.test(text.slice(to, to + NEAR)) && !WIDE.test(text.slice(Math.max(0, from - NEAR), from));

/** "Rep Rows 2 and 3 until piece measures …" and the like: how many rows that is, only the maker's tape knows. */
export const isMeasured = (items: readonly Item[]): boolean =>
  items.some((item) => (item.type === 'rows-again' || item.type === 'even') && item.until !== null);

/** The rows of a piece in a size, with those that go on to a length as often as the gauge makes it. */
export interface FollowedRows {
  readonly rows: readonly WorkedRow[];
  /** Those of them that are more than a foundation, and how many stitches each is wide. */
  readonly made: readonly WorkedRow[];
  readonly spans: readonly number[];
  /** The first row that goes on to a length of which nobody can say how many rows it is; null where there is none. */
  readonly unreckoned: WorkedRow | null;
}

interface Known {
  /** How high a row was. */
  readonly row: number;
  readonly followed: FollowedRows | null;
}

const known = new WeakMap<PieceStudy, Map<number, Known>>();

/**
 * Follows the rows of a piece where a row is `row` centimetres high. Rows that go on to a length are worked once in the
 * study, since the text numbers no more; here they are laid on until the piece is as long. Null when there are more
 * than can be followed.
 */
export function followedRows(piece: PieceStudy, size: number, row: number): FollowedRows | null {
  let sizes = known.get(piece);
  if (sizes === undefined) {
    sizes = new Map();
    known.set(piece, sizes);
  }
  const before = sizes.get(size);
  if (before !== undefined && before.row === row) return before.followed;
  const found = follow(piece, size, row);
  const followed = found === null ? null : { ...found, ...measuredAcross(found.rows) };
  sizes.set(size, { row, followed });
  return followed;
}

function measuredAcross(rows: readonly WorkedRow[]): Pick<FollowedRows, 'made' | 'spans'> {
  const made: WorkedRow[] = [];
  const spans: number[] = [];
  let below: number | null = null;
  for (const row of rows) {
    if (row.onlyFoundation) continue;
    below = spanOf(row.tally, below);
    made.push(row);
    spans.push(below);
  }
  return { made, spans };
}

type Until = ReturnType<typeof askedIn>;

const asking = new WeakMap<PieceStudy, readonly Until[] | null>();

/** For each block the length that it goes on to; null where no block does. */
function askedOf(piece: PieceStudy): readonly Until[] | null {
  const before = asking.get(piece);
  if (before !== undefined) return before;
  const asked = piece.blocks.map(({ block, tree }) =>
    block.type === 'row' && tree !== null ? askedIn(tree.items, block.text.text) : null,
  );
  const found = asked.every((until) => until === null) ? null : asked;
  asking.set(piece, found);
  return found;
}

function follow(
  piece: PieceStudy,
  size: number,
  row: number,
): Pick<FollowedRows, 'rows' | 'unreckoned'> | null {
  const worked = workedRows(piece, size);
  if (worked === null) return null;
  const asked = askedOf(piece);
  if (asked === null) return { rows: worked, unreckoned: null };
  const rows: WorkedRow[] = [];
  let unreckoned: WorkedRow | null = null;
  worked.forEach((one, i) => {
    rows.push(one);
    const until = asked[one.block];
    if (until == null || worked[i + 1]?.block === one.block) return;
    const own = worked.filter(({ block, onlyFoundation }) => block === one.block && !onlyFoundation);
    const before = rows[rows.length - 1 - own.length];
    const cm = until.values === null ? null : (until.values[until.values.length === 1 ? 0 : size] ?? null);
    const grows = own.length === 0 || before === undefined || before.tally.stitches !== one.tally.stitches;
    if (cm === null || grows) {
      unreckoned ??= one;
      return;
    }
    const made = rows.filter(({ onlyFoundation }) => !onlyFoundation).length;
    const more = Math.round(cm / row) - made;
    for (let k = 0; k < more && rows.length <= MOST_FOLLOWED; k++) {
      const next = own[k % own.length]!;
      const { side } = rows[rows.length - 1]!;
      rows.push({ ...next, side: next.round || side === null ? next.side : side === 'RS' ? 'WS' : 'RS' });
    }
  });
  return rows.length > MOST_FOLLOWED ? null : { rows, unreckoned };
}

/** The length that a row's words go on to, in centimetres, `values` null where it is not along the rows; else null. */
function askedIn(
  items: readonly Item[],
  words: string,
): { readonly values: readonly number[] | null } | null {
  for (const item of items) {
    if (item.type !== 'rows-again' && item.type !== 'even') continue;
    const { until } = item;
    // A number of rows beside the length is what is worked.
    if (until === null || (item.type === 'even' ? item.rows : item.times) !== null) continue;
    if (!isAlongRows(words, until.from, until.to)) return { values: null };
    const values = until.values.map((value) => {
      const cm = toCm(value, until.unit);
      return cm === null ? Number.NaN : toNumber(cm);
    });
    return { values: values.every(Number.isFinite) ? values : null };
  }
  return null;
}
