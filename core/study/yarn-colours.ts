/**
 * Which yarn the rows are worked with: the colours that the rows' own words name, matched to the pattern's yarns,
 * and the share of a row that each has where a row changes between them. It counts nothing itself.
 */
import type { Yarn } from '../document/pattern.ts';
import { amountOf, type SeenRow, stitchId, workRow } from '../fabric/index.ts';
import type { Amount, Colour, Item, Place, RowTree } from '../notation/tree.ts';
import { lengthProportion } from '../trade/stitch-use.ts';
import type { BaseStitch } from '../trade/stitches.ts';

const plainly = (words: string) =>
  words
    .toLowerCase()
    .replace(/\b(?:yarn|colou?r|shade|the)\b/gu, ' ')
    .replace(/\s+/gu, ' ')
    .trim();

const ORDINALS = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth'];

/**
 * Index of the yarn that words name ("A", "MC", "color B", "dark green"); `now` is the one in use, for words that
 * only say that it changes. Null when no yarn of the pattern is meant for certain.
 */
export function yarnNamed(words: string, yarns: readonly Yarn[], now: number): number | null {
  const said = plainly(words);
  const at = (test: (yarn: Yarn) => boolean): number | null => {
    const found = yarns.flatMap((yarn, i) => (test(yarn) ? [i] : []));
    return found.length === 1 ? found[0]! : null;
  };
  if (said === '' || said === 'new' || said === 'next' || said === 'other') {
    if (yarns.length === 2) return 1 - Math.min(now, 1);
    return said === 'next' && now + 1 < yarns.length ? now + 1 : null;
  }
  const keyed = at(({ key }) => key !== null && plainly(key) === said);
  if (keyed !== null) return keyed;
  if (/^(?:main|mc?)$/u.test(said)) return yarns.length === 0 ? null : 0;
  if (/^(?:contrast(?:ing)?|cc?)$/u.test(said)) return yarns.length === 2 ? 1 : null;
  const nth = /^\d$/u.test(said) ? Number(said) - 1 : ORDINALS.indexOf(said);
  if (nth >= 0) return nth < yarns.length ? nth : null;
  return at(({ name }) => ` ${plainly(name).replace(/[^\p{L}\p{N}]+/gu, ' ')} `.includes(` ${said} `));
}

/** A share of a row that one yarn has: index of the yarn, and how much of the row, the shares making 1. */
export interface Share {
  readonly yarn: number;
  readonly part: number;
}

export interface RowColours {
  readonly shares: readonly Share[];
  /** Yarn in use when the row is done. */
  readonly after: number;
  /** The row changes within a repeat, so that its shares are reckoned from one working of it. */
  readonly shared: boolean;
  /** Names of colours that are no yarn of the pattern. */
  readonly unknown: readonly string[];
}

const coloured = new WeakMap<RowTree, boolean>();

const within = (item: Item): readonly Item[] =>
  item.type === 'repeat' || item.type === 'group' || item.type === 'again' ? asWorked(item.items) : [];

function namesColour(items: readonly Item[]): boolean {
  return items.some((item) => item.type === 'colour' || namesColour(within(item)));
}

/** A colour named behind its stitches stands before them here, where the yarn is taken up. */
function asWorked(items: readonly Item[]): readonly Item[] {
  if (!items.some((item) => item.type === 'colour' && item.behind)) return items;
  const order: Item[] = [];
  for (const item of items) {
    const at = item.type === 'colour' && item.behind ? order.length - 1 : order.length;
    order.splice(Math.max(0, at), 0, item);
  }
  return order;
}

function hasColour(row: RowTree): boolean {
  const known = coloured.get(row);
  if (known !== undefined) return known;
  const made = namesColour(row.items);
  coloured.set(row, made);
  return made;
}

/** The last colour that a text names on its own ("With B:" before rows): for prose between rows. */
export function lastColour(items: readonly Item[]): Colour | null {
  const last = items.findLast((item) => item.type === 'colour');
  return last?.type === 'colour' ? last : null;
}

const makes = (item: Item): boolean =>
  item.type === 'work' || item.type === 'chain' || item.type === 'group' || item.type === 'repeat';

/** Yarn that a part of a row takes, as its words alone tell: for shares, not for amounts. */
class Weigher {
  readonly weights = new Map<number, number>();
  readonly unknown: string[] = [];
  constructor(
    private readonly yarns: readonly Yarn[],
    public now: number,
    private readonly amount: (of: Amount) => number | null,
    private readonly base: BaseStitch,
  ) {}

  take(item: Item, times = 1): void {
    switch (item.type) {
      case 'colour': {
        const named = yarnNamed(item.name, this.yarns, this.now);
        if (named === null) this.unknown.push(item.name);
        else this.now = named;
        return;
      }
      case 'chain':
        this.add(times * (this.amount(item.amount) ?? 0) * lengthProportion('chain'));
        return;
      case 'work': {
        const each =
          (this.amount(item.amount) ?? 1) * lengthProportion(stitchId(item.stitch, null, this.base));
        const places = item.places.reduce((sum, place) => sum + this.placesOf(place), 0);
        this.add(times * each * places);
        return;
      }
      case 'group': {
        const places = item.places.reduce((sum, place) => sum + this.placesOf(place), 0);
        for (const inner of within(item)) this.take(inner, times * places);
        return;
      }
      case 'repeat':
      case 'again':
        for (const inner of within(item)) this.take(inner, times);
        return;
      default:
        return;
    }
  }

  private placesOf(place: Place): number {
    return place.kind === 'next' ? (this.amount(place.amount) ?? 1) : 1;
  }

  private add(weight: number): void {
    this.weights.set(this.now, (this.weights.get(this.now) ?? 0) + weight);
  }
}

/** Yarn of a row as worked, in proportion. */
export type Measure = (seen: SeenRow) => number;

/**
 * Who has which part of a row. Changes between the row's own words are found by working the row up to each; a
 * change within a repeat or a group is shared out as one working of it is.
 */
export function coloursOf(seen: SeenRow, yarns: readonly Yarn[], now: number, measure: Measure): RowColours {
  const { row, figures, env, below, worked } = seen;
  if (yarns.length < 2 || !hasColour(row))
    return { shares: [{ yarn: now, part: 1 }], after: now, shared: false, unknown: [] };
  const amount = (of: Amount) => amountOf(of, env, figures);
  const base = worked.fabric.sites.find((site) => site.base !== null && site.base !== 'slip')?.base ?? 't1';
  const weigher = new Weigher(yarns, now, amount, base);
  const whole = measure(seen);
  const parts = new Map<number, number>();
  const give = (yarn: number, length: number) => {
    parts.set(yarn, (parts.get(yarn) ?? 0) + length);
  };
  let shared = false;
  let done = 0;
  const items = asWorked(row.items);
  let from = 0;
  /** Gives the items since `from`, which come to `length`, to who works them. */
  const hand = (to: number, length: number) => {
    const span = items.slice(from, to);
    from = to;
    if (!namesColour(span)) {
      give(weigher.now, length);
      return;
    }
    const inner = new Weigher(yarns, weigher.now, amount, base);
    for (const item of span) inner.take(item);
    const sum = [...inner.weights.values()].reduce((a, b) => a + b, 0);
    if (sum > 0) for (const [yarn, weight] of inner.weights) give(yarn, (length * weight) / sum);
    else give(inner.now, length);
    shared ||= inner.weights.size > 1;
    weigher.now = inner.now;
    weigher.unknown.push(...inner.unknown);
  };
  /** Hands over what stands before an item, by working the row as far as that. */
  const cut = (i: number) => {
    if (!items.slice(from, i).some(makes)) {
      hand(i, 0);
      return;
    }
    const first = items.slice(0, i);
    const before = { ...row, items: first, counts: [] };
    // A chain alone makes no row yet: it is as long as its chains.
    const chains = first.reduce(
      (sum, item) => sum + (item.type === 'chain' ? (amount(item.amount) ?? 0) : 0),
      0,
    );
    const length = !items.slice(i).some(makes)
      ? whole
      : first.some((item) => item.type !== 'chain' && makes(item))
        ? measure({ ...seen, row: before, worked: workRow(before, below, env, figures) })
        : chains * lengthProportion('chain');
    const upTo = Math.min(whole, Math.max(done, length));
    hand(i, upTo - done);
    done = upTo;
  };
  items.forEach((item, i) => {
    const nested = namesColour(within(item));
    if (item.type !== 'colour' && !nested) return;
    cut(i);
    if (nested) cut(i + 1);
    else {
      weigher.take(item);
      from = i + 1;
    }
  });
  hand(items.length, whole - done);
  const sum = [...parts.values()].reduce((a, b) => a + b, 0);
  const shares =
    sum > 0
      ? [...parts].filter(([, length]) => length > 0).map(([yarn, length]) => ({ yarn, part: length / sum }))
      : [{ yarn: weigher.now, part: 1 }];
  return { shares, after: weigher.now, shared, unknown: weigher.unknown };
}
