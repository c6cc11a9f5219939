/**
 * What a pattern's rows are made of: for every piece, size and yarn, how many stitches of every kind and how many
 * chains all its rows come to, repeats and shaping worked out, turning chains and the slip stitches that close
 * rounds or bring the hook to where a row begins among them. Counts alone; yarn is reckoned from them elsewhere. Asked for by views and rules that need it,
 * never by working; remembered with the study of each piece.
 *
 * What cannot be told from rows is not counted: seams and borders that only the finishing tells of, weaving in,
 * tassels.
 */
import type { Yarn } from '../document/pattern.ts';
import { amountOf, GATHERED, type SeenRow, type Worked } from '../fabric/index.ts';
import { readItems } from '../notation/index.ts';
import type { Amount, Item, RowTree } from '../notation/tree.ts';
import { lengthProportion, type YarnKind } from '../trade/stitch-use.ts';
import { toNumber } from '../trade/units.ts';
import { gaugeOf, stepsOf } from './gauge.ts';
import type { PieceStudy } from './piece-study.ts';
import type { Study } from './study.ts';
import { followedRows } from './taped.ts';
import { type WorkedRow, workedRows } from './worked.ts';
import { coloursOf, lastColour, yarnNamed } from './yarn-colours.ts';

/** Stitches and chains by kind. A row that two yarns share gives each its part, so numbers need not be whole. */
export type Counts = ReadonlyMap<YarnKind, number>;

/** One piece in one size, all its copies together. */
export interface PieceCounts {
  /** One entry a yarn, in the pattern's order; a pattern without yarns has one. */
  readonly yarns: readonly Counts[];
}

/** What could not be told for certain about the yarns of a piece. */
export interface UseDoubt {
  readonly piece: string;
  readonly kind: 'unknown-colour' | 'shared-in-repeat' | 'rows-unreckoned';
  /** The colour's words; empty for shares. */
  readonly words: string;
}

export interface PieceUse {
  readonly piece: string; // id
  /** One a size; null where its rows are too many to be followed. */
  readonly sizes: readonly (PieceCounts | null)[];
  readonly doubts: readonly UseDoubt[];
}

const NOTHING: Counts = new Map();

/** Adds `times` of one count to another. */
export function addCounts(to: Map<YarnKind, number>, counts: Counts, times: number): void {
  if (times === 0) return;
  for (const [kind, n] of counts) to.set(kind, (to.get(kind) ?? 0) + n * times);
}

/** Several counts together. */
export function sumOf(counts: readonly Counts[]): Counts {
  const sum = new Map<YarnKind, number>();
  for (const one of counts) addCounts(sum, one, 1);
  return sum;
}

/** Yarn of counts in proportion to others. */
export function weightOf(counts: Counts, proportion: (kind: YarnKind) => number): number {
  let sum = 0;
  for (const [kind, n] of counts) sum += n * proportion(kind);
  return sum;
}

const legs = new WeakMap<RowTree, ReadonlyMap<string, number>>();

/** Legs of gathered stitches ("3-dc cluster") that the words of a row tell, by form. */
function legsIn(row: RowTree): ReadonlyMap<string, number> {
  const known = legs.get(row);
  if (known !== undefined) return known;
  const found = new Map<string, number>();
  const look = (items: readonly Item[]) => {
    for (const item of items) {
      if (item.type === 'work' && GATHERED.has(item.stitch.form)) {
        const { form, parts, together } = item.stitch;
        const told = parts ?? (together > 1 ? together : null);
        if (told !== null && !found.has(form)) found.set(form, told);
      } else if (item.type === 'repeat' || item.type === 'group' || item.type === 'again') look(item.items);
    }
  };
  look(row.items);
  legs.set(row, found);
  return found;
}

function kindOf(stitch: string, row: RowTree | null): YarnKind {
  const dot = stitch.indexOf('.');
  const form = dot < 0 ? '' : stitch.slice(0, dot);
  if (row === null || !GATHERED.has(form)) return stitch;
  const told = legsIn(row).get(form);
  return told === undefined ? stitch : `${form}/${told}${stitch.slice(dot)}`;
}

/** How a row begins, as far as chains are concerned. */
interface Lead {
  /** Its own chain before the first stitch. */
  readonly chain: Amount | null;
  /** The first stitch goes into a chain from the hook, or chains are skipped before it: the edge is of chains that are there. */
  readonly fromHook: boolean;
  readonly skips: boolean;
}

const leads = new WeakMap<RowTree, Lead>();

function leadOf(row: RowTree): Lead {
  const known = leads.get(row);
  if (known !== undefined) return known;
  let [chain, fromHook, skips]: [Amount | null, boolean, boolean] = [null, false, false];
  const look = (items: readonly Item[]): boolean =>
    items.some((item) => {
      if (item.type === 'chain') chain ??= item.amount;
      if (item.type === 'skip') skips = true;
      if (item.type === 'work') fromHook = item.places[0]?.kind === 'from-hook';
      if (item.type === 'group') fromHook = item.places[0]?.kind === 'from-hook';
      return item.type === 'work' || item.type === 'group' || (item.type === 'repeat' && look(item.items));
    });
  look(row.items);
  const made: Lead = { chain, fromHook, skips };
  leads.set(row, made);
  return made;
}

const madeOf = new WeakMap<Worked, WeakMap<RowTree, Counts>>();

/** What one row as worked is made of. */
function countsOfWorked({ worked, row, below, env, figures }: SeenRow): Counts {
  let known = madeOf.get(worked);
  if (known === undefined) {
    known = new WeakMap();
    madeOf.set(worked, known);
  }
  const before = known.get(row);
  if (before !== undefined) return before;
  const counts = new Map<YarnKind, number>();
  const add = (kind: YarnKind, n: number) => {
    if (n > 0) counts.set(kind, (counts.get(kind) ?? 0) + n);
  };
  add('chain', worked.foundation);
  if (!worked.idle) {
    // Runs of one sort are the rule, so that they are counted as runs.
    const { sites } = worked.fabric;
    const lead = leadOf(row);
    const onChain = worked.foundation > 0 || below?.form === 'chain' || below?.ring === true;
    // The edge of a row that goes into a chain from the hook is of that chain, which is counted as such.
    const edgeIsThere = lead.fromHook || (onChain && lead.skips && lead.chain === null);
    if (lead.fromHook && !onChain)
      add('chain', (lead.chain === null ? below?.carried?.chains : amountOf(lead.chain, env, figures)) ?? 0);
    for (let i = 0; i < sites.length; ) {
      const site = sites[i]!;
      let end = i + 1;
      while (end < sites.length && sites[end] === site) end += 1;
      const n = end - i;
      i = end;
      if (site.turning && edgeIsThere) continue;
      if (site.kind === 'stitch' && !site.turning) add(kindOf(site.stitch ?? 't1', row), n);
      else if (site.kind === 'stitch' || site.kind === 'turning' || site.kind === 'space')
        add('chain', n * site.chains);
      else if (site.kind === 'picot') {
        add('chain', n * site.chains);
        add('slip', n);
      }
    }
    if (worked.fabric.form === 'joined') add('slip', 1);
    add('slip', worked.travelled);
  }
  known.set(row, counts);
  return counts;
}

/** A row that the text gives no words for: its stitches are those that the fabric mostly has. */
function countsOfTold(row: WorkedRow): Counts {
  const [kind] = [...row.tally.byKind].sort((a, b) => b[1] - a[1])[0] ?? ['t1'];
  return new Map([[kind, row.tally.stitches]]);
}

const proseColours = new WeakMap<object, string | null>();

/** The yarn that words between rows name on their own: "With B:". */
function colourOfProse(text: { readonly text: string }, terms: Study['pattern']['terms']): string | null {
  const known = proseColours.get(text);
  if (known !== undefined) return known;
  const { items, facts } =
    text.text.length > 200 ? { items: [], facts: [] } : readItems(text.text, { terms });
  const words = facts.length === 0 ? (lastColour(items)?.name ?? null) : null;
  proseColours.set(text, words);
  return words;
}

interface Kept {
  readonly yarns: readonly Yarn[];
  /** Centimetres of a row; null where the gauge does not say. */
  readonly row: number | null;
  readonly use: PieceUse;
}

const kept = new WeakMap<PieceStudy, Kept>();

function sameYarns(a: readonly Yarn[], b: readonly Yarn[]): boolean {
  return (
    a === b || (a.length === b.length && a.every((y, i) => y.key === b[i]!.key && y.name === b[i]!.name))
  );
}

/** What a piece is made of, in every size. The same piece gives the same object. */
export function pieceUse(piece: PieceStudy, study: Study): PieceUse {
  const { yarns } = study.pattern;
  const row = rowHeight(piece, study);
  const before = kept.get(piece);
  if (before !== undefined && before.row === row && sameYarns(before.yarns, yarns)) return before.use;
  const doubts = new Map<string, UseDoubt>();
  const sizes = piece.rows.map((_, size) => inSize(piece, size, study, row, doubts));
  const use: PieceUse = { piece: piece.piece.id, sizes, doubts: [...doubts.values()] };
  kept.set(piece, { yarns, row, use });
  return use;
}

function rowHeight(piece: PieceStudy, { pattern, sheet }: Study): number | null {
  const gauge = gaugeOf(piece, pattern, sheet);
  const row = gauge === null ? null : stepsOf(gauge).row;
  return row === null ? null : toNumber(row);
}

/** Length of a row in proportion, for the shares of its yarns. */
const lengthOf = (seen: SeenRow) => weightOf(countsOfWorked(seen), lengthProportion);

function inSize(
  piece: PieceStudy,
  size: number,
  study: Study,
  rowHigh: number | null,
  doubts: Map<string, UseDoubt>,
): PieceCounts | null {
  const { yarns, terms } = study.pattern;
  const followed =
    rowHigh === null
      ? { rows: workedRows(piece, size), unreckoned: null }
      : followedRows(piece, size, rowHigh);
  const rows = followed?.rows ?? null;
  if (rows === null) return null;
  const sums = Array.from({ length: Math.max(1, yarns.length) }, () => new Map<YarnKind, number>());
  const doubt = (kind: UseDoubt['kind'], words: string) =>
    doubts.set(`${kind} ${words}`, { piece: piece.piece.id, kind, words });
  if (followed?.unreckoned != null) doubt('rows-unreckoned', '');
  let now = 0;
  let block = -1;
  /** Words between rows name the yarn for the rows after them. */
  const pass = (to: number) => {
    for (block += 1; block < to; block++) {
      const between = piece.piece.blocks[block];
      if (between?.type !== 'prose') continue;
      const words = colourOfProse(between.text, terms);
      if (words !== null) now = yarnNamed(words, yarns, now) ?? now;
    }
    block = to;
  };
  for (const row of rows) {
    if (yarns.length > 1 && row.block > block) pass(row.block);
    if (row.seen === null) {
      addCounts(sums[now]!, countsOfTold(row), 1);
      continue;
    }
    const { seen } = row;
    const counts = countsOfWorked(seen);
    if (yarns.length < 2) {
      addCounts(sums[0]!, counts, 1);
      continue;
    }
    const colours = coloursOf(seen, yarns, now, lengthOf);
    for (const { yarn, part } of colours.shares) addCounts(sums[yarn]!, counts, part);
    for (const words of colours.unknown) doubt('unknown-colour', words);
    if (colours.shared) doubt('shared-in-repeat', '');
    now = colours.after;
  }
  const make = Math.max(0, piece.piece.make);
  for (const sum of sums) for (const [kind, n] of sum) sum.set(kind, n * make);
  return { yarns: sums };
}

const uses = new WeakMap<Study, readonly PieceUse[]>();

/** What every piece is made of. The same study gives the same list. */
export function usesOf(study: Study): readonly PieceUse[] {
  const before = uses.get(study);
  if (before !== undefined) return before;
  const made = study.pieces.map((piece) => pieceUse(piece, study));
  uses.set(study, made);
  return made;
}

/**
 * What a yarn of a size is made of, in one piece or (null) in all; `yarn` null = all yarns together. Null where rows
 * are too many to be followed, or there is no such piece.
 */
export function countsFor(
  study: Study,
  size: number,
  yarn: number | null,
  piece: string | null,
): Counts | null {
  const pieces = usesOf(study).filter((use) => piece === null || use.piece === piece);
  if (pieces.length === 0) return piece === null ? NOTHING : null;
  const counts: Counts[] = [];
  for (const { sizes } of pieces) {
    const own = sizes[size];
    if (own === undefined || own === null) return null;
    counts.push(yarn === null ? sumOf(own.yarns) : (own.yarns[yarn] ?? NOTHING));
  }
  return sumOf(counts);
}
