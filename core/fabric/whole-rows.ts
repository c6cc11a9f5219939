/**
 * Rows as wholes: what a row says of other rows, told apart from its own work; a plain row in a given height;
 * facts without repetition. Works nothing.
 */
import type { Fact, Span } from '../finding.ts';
import type { Item, RowTree } from '../notation/tree.ts';
import { type BaseStitch, height } from '../trade/stitches.ts';
import { alongFoundation } from './beginning.ts';
import type { Fabric } from './fabric.ts';

interface Parted {
  /** The row's own work, without what it says about other rows; null when it has none. */
  readonly own: RowTree | null;
  /** What it says about whole rows. */
  readonly whole: readonly Item[];
}

const partedRows = new WeakMap<RowTree, Parted>();

/** "Row 3: sc across. Rep Rows 2 and 3 …" told apart. The same row gives the identical parts. */
export function parted(row: RowTree): Parted {
  const known = partedRows.get(row);
  if (known !== undefined) return known;
  const tellsOfRows = (item: Item) =>
    item.type === 'rows-again' || item.type === 'even' || item.type === 'shaping' || item.type === 'as-piece';
  const told = row.items.filter(tellsOfRows);
  // "Work even in pattern, repeating Rows 2 and 3": the second says what the first means.
  const again = told.some((item) => item.type === 'rows-again' && item.rows.kind !== 'pattern');
  // "Work in pattern, at the same time inc at each end of every 4th row": the rows are those that the shaping counts.
  const isShaped = told.some((item) => item.type === 'shaping' && item.schedule.length > 0);
  const isOpen = (item: Item) =>
    (item.type === 'rows-again' &&
      item.rows.kind === 'pattern' &&
      item.times === null &&
      item.until === null) ||
    (item.type === 'even' && item.rows === null && item.until === null);
  const shaped = isShaped ? told.filter((item) => !isOpen(item)) : told;
  const whole = again
    ? shaped.filter((item) =>
        item.type === 'rows-again'
          ? item.rows.kind !== 'pattern'
          : item.type !== 'even' || item.rows !== null,
      )
    : shaped;
  const ownItems = row.items.filter((item) => !tellsOfRows(item));
  const works = ownItems.some(
    (item) => item.type === 'work' || item.type === 'group' || item.type === 'repeat',
  );
  const made: Parted = {
    own: whole.length > 0 && works ? { ...row, items: ownItems, counts: [] } : null,
    whole,
  };
  partedRows.set(row, made);
  return made;
}

/** Whether a row speaks of row-ends. */
const edges = new WeakMap<RowTree, boolean>();

/** Only rows that speak of the piece's edges depend on how many rows and foundation chains there are. */
export function usesEdge(row: RowTree): boolean {
  const known = edges.get(row);
  if (known !== undefined) return known;
  const uses = /"kind":"(?:row-end|loop-of-chain|chain)"|"type":"other-side"/.test(JSON.stringify(row.items));
  edges.set(row, uses);
  return uses;
}

const earlier = new WeakMap<RowTree, readonly number[]>();

/** Numbers of the rows that a row says it works into. */
export function rowsNamed(row: RowTree): readonly number[] {
  const known = earlier.get(row);
  if (known !== undefined) return known;
  const found = [...JSON.stringify(row.items).matchAll(/"row":(\d+)/g)].map((match) => Number(match[1]));
  const made = [...new Set(found)];
  earlier.set(row, made);
  return made;
}

const parts = new WeakMap<RowTree, readonly string[]>();

/** Parts that a row says it works into ("12 sts of first leg"). */
export function partsNamed(row: RowTree): readonly string[] {
  const known = parts.get(row);
  if (known !== undefined) return known;
  const found = [...JSON.stringify(row.items).matchAll(/"part":"([^"]+)"/g)].map((match) => match[1]!);
  const made = [...new Set(found)];
  parts.set(row, made);
  return made;
}

const byPosition = new WeakMap<RowTree, RowTree>();

/** The row with every stitch that it names to work into taken as the next stitch, whatever it is. */
export function unnamed(row: RowTree): RowTree {
  const known = byPosition.get(row);
  if (known !== undefined) return known;
  const plain = (_: string, value: unknown): unknown => {
    const noun = value as {
      kind?: unknown;
      stitch?: { form?: unknown; together?: unknown };
      from: number;
      to: number;
    };
    return noun?.kind === 'named' && noun.stitch?.form === 'plain' && noun.stitch.together === 1
      ? { kind: 'stitch', from: noun.from, to: noun.to }
      : value;
  };
  const made: RowTree = { ...row, items: JSON.parse(JSON.stringify(row.items), plain) as readonly Item[] };
  byPosition.set(row, made);
  return made;
}

const onwards = new WeakMap<RowTree, RowTree | null>();

/**
 * The row with "2 sc in same st" behind other work taken as the next stitch, as many makers write an increase; null
 * where nothing is written so. The same row gives the identical object.
 */
export function sameAsNext(row: RowTree): RowTree | null {
  const known = onwards.get(row);
  if (known !== undefined) return known;
  let changed = false;
  const onward = (items: readonly Item[]): readonly Item[] =>
    items.map((item, i): Item => {
      if (item.type === 'repeat') return { ...item, items: onward(item.items) };
      const place = item.type === 'work' ? item.places[0]! : null;
      const several = item.type === 'work' && (item.amount.kind !== 'one' || item.amount.value > 1);
      const behind = items[i - 1]?.type === 'work' || items[i - 1]?.type === 'repeat';
      if (item.type !== 'work' || place?.kind !== 'same' || !several || !behind) return item;
      changed = true;
      const { from, to, loop, post, below } = place;
      const amount = { kind: 'one', value: 1, from: to, to } as const;
      const nouns = [{ kind: 'stitch', from: to, to } as const];
      const next = {
        kind: 'next',
        amount,
        nouns,
        every: 1,
        implied: false,
        from,
        to,
        loop,
        post,
        below,
      } as const;
      return { ...item, places: [next, ...item.places.slice(1)] };
    });
  const items = onward(row.items);
  const made = changed ? { ...row, items } : null;
  onwards.set(row, made);
  return made;
}

const gapped = new WeakMap<RowTree, RowTree | null>();

/**
 * The row with every "sp" that no word says is of chains taken as what parts two groups: "3 dc in next sp" beside
 * "(3 dc, ch 2, 3 dc) in next corner". Null where it speaks of none. The same row gives the identical object.
 */
export function spacesAsGaps(row: RowTree): RowTree | null {
  const known = gapped.get(row);
  if (known !== undefined) return known;
  let changed = false;
  const parting = (_: string, value: unknown): unknown => {
    const noun = value as { kind?: unknown; open?: unknown; from: number; to: number } | null;
    if (noun?.kind !== 'space' || noun.open !== true) return value;
    changed = true;
    return { kind: 'between', groups: true, from: noun.from, to: noun.to };
  };
  const items = JSON.parse(JSON.stringify(row.items), parting) as readonly Item[];
  const made = changed ? { ...row, items } : null;
  gapped.set(row, made);
  return made;
}

const cornered = new WeakMap<RowTree, boolean>();

/** Does the row speak of corners? */
export function namesCorners(row: RowTree): boolean {
  let known = cornered.get(row);
  if (known === undefined) {
    known = JSON.stringify(row.items).includes('"corner":');
    cornered.set(row, known);
  }
  return known;
}

/** Does the row begin along the ends of the rows so far, or along their foundation? */
export function alongEdge(row: RowTree): boolean {
  if (alongFoundation(row.items)) return true;
  const first = row.items.find((item) => item.type === 'work' || item.type === 'group');
  const place = first?.type === 'work' || first?.type === 'group' ? first.places[0] : undefined;
  if (place === undefined || !('nouns' in place)) return false;
  return place.nouns.some((noun) => noun.kind === 'row-end');
}

export function mainBase(of: Fabric): BaseStitch {
  for (const site of of.sites)
    if (site.kind === 'stitch' && site.base !== null && site.base !== 'slip') return site.base;
  return 't1';
}

/** "st in each st across" in the given height, at the words that asked for it. */
export function plainRow(at: Span, base: BaseStitch, like: RowTree): RowTree {
  const span = { from: at.from, to: at.to };
  const stitch = {
    ...span,
    form: 'plain',
    base,
    post: null,
    together: 1,
    parts: null,
    special: null,
    beginning: false,
    half: false,
  } as const;
  const one = { ...span, kind: 'one', value: 1 } as const;
  const place = {
    ...span,
    kind: 'across',
    loop: null,
    post: null,
    below: 0,
    nouns: [{ ...span, kind: 'stitch' }],
    every: 1,
    stop: { ...span, kind: 'end', word: 'across' },
  } as const;
  return {
    ...span,
    label: like.label === null ? null : { ...like.label, numbers: null },
    items: [
      { ...span, type: 'chain', amount: { ...one, value: height(base) }, counts: null },
      { ...span, type: 'work', stitch, amount: one, places: [place], over: null },
    ],
    counts: [],
    only: null,
    read: true,
    facts: [],
  };
}

/** Facts without those that say the same of the same words again. */
export function distinct(facts: readonly Fact[]): readonly Fact[] {
  if (facts.length < 2) return facts;
  const seen = new Set<string>();
  return facts.filter((fact) => {
    const key = `${fact.code}:${fact.from}:${fact.to}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}
