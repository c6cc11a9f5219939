/**
 * "sc across, working 2 sc in first and last st": a row told in two phrases, one for what goes all the way and one
 * for its ends, put in the order in which it is worked. Reads the tree; works nothing.
 */
import type { Amount, Item, Place, Skip, Stop, Work } from '../notation/tree.ts';

/** How many stitches of the row below one making takes up. */
function takes(ends: Work | Skip): number {
  if (ends.type === 'skip') return 1;
  const { stitch } = ends;
  return Math.max(stitch.form === 'dec' ? 2 : 1, stitch.together);
}

/** The phrase for what goes all the way across. */
function wholeWay(item: Item | undefined): item is Work {
  if (item?.type !== 'work' || item.places.length !== 1) return false;
  const place = item.places[0]!;
  if (place.kind !== 'across' || place.every > 1 || place.stop.kind !== 'end' || place.below > 0)
    return false;
  return item.stitch.form === 'plain' && item.stitch.together < 2 && place.nouns[0]?.kind !== 'space';
}

/** More stitches than this no maker works at an end; they are left to be met, or not, as the row stands. */
const MOST_AT_END = 200;

/** The phrase for the ends: in the first, in the first and the last, or gathered at the last. */
function atEnds(item: Item | undefined): item is Work | Skip {
  if ((item?.type !== 'work' && item?.type !== 'skip') || item.places.length > 2) return false;
  const [first, last] = item.places;
  // "2 sc in last st" alone is met as it stands; what gathers has to be stopped for.
  if (first?.kind === 'last' && last === undefined && first.amount.kind === 'one')
    return takes(item) > first.amount.value && first.noun.kind === 'stitch';
  if (first?.kind !== 'first' || (last !== undefined && last.kind !== 'last')) return false;
  if (first.noun.kind === 'space' || first.noun.kind === 'chain') return false;
  if (item.type === 'skip' ? item.behind : item.stitch.base === 'slip') return false;
  return [first, last].every(
    (place) => place === undefined || (place.amount.kind === 'one' && place.amount.value <= MOST_AT_END),
  );
}

/** "sc2tog at beg of row": begun in the first stitch, it takes the next as well. */
function gathersFirst(ends: Work): boolean {
  const [first, last] = ends.places;
  if (first?.kind !== 'first' || last !== undefined || first.amount.kind !== 'one') return false;
  return first.amount.value === 1 && takes(ends) > 1 && ends.legs === undefined;
}

/** Does it change the count, so that it cannot be one more of what goes across? */
function changes(item: Work | Skip): boolean {
  if (item.type === 'skip') return true;
  const { form, together } = item.stitch;
  return (
    form === 'inc' || form === 'dec' || together > 1 || item.amount.kind !== 'one' || item.amount.value > 1
  );
}

/** The work without the number of stitches and the legs that were said of both ends at once. */
function alone({ legs: _, ...work }: Work): Work {
  return { ...work, over: null };
}

/** The ends of the row in their order about what goes between them. */
function about(whole: Work, ends: Work | Skip): readonly Item[] {
  const span = { from: ends.from, to: ends.to };
  const per = takes(ends);
  const number = (value: number): Amount => ({ kind: 'one', value, ...span });
  const into = { loop: null, post: null, below: 0, ...span };
  const [first, last] = ends.places as readonly Extract<Place, { kind: 'first' | 'last' }>[];
  const bare = ends.type === 'skip' ? ends : alone(ends);
  /** The work of one end: decreases one after the other, anything else in the very place. */
  const end = (place: Extract<Place, { kind: 'first' | 'last' }>): { items: Item[]; of: number } => {
    const said = place.amount.kind === 'one' ? place.amount.value : 1;
    if (per === 1) return { items: [{ ...bare, places: [place] }], of: said };
    const times = Math.max(1, Math.floor(said / per));
    const next: Place = {
      kind: 'next',
      amount: number(1),
      nouns: [place.noun],
      every: 1,
      implied: true,
      ...into,
    };
    return { items: Array.from({ length: times }, () => ({ ...bare, places: [next] })), of: times * per };
  };
  const across = whole.places[0] as Extract<Place, { kind: 'across' }>;
  const opening = first!.kind === 'first' ? end(first!).items : [];
  const closes = first!.kind === 'last' ? first! : last;
  if (closes === undefined) return [...opening, whole];
  const closing = end(closes);
  const stop: Stop = { kind: 'before-last', amount: number(closing.of), noun: closes.noun, ...span };
  return [...opening, { ...whole, places: [{ ...across, stop }] }, ...closing.items];
}

/** "sc2tog at each end" and nothing else: what lies between is worked plain, in the same stitch. */
function alongBetween(ends: Work): Work | null {
  const { base } = ends.stitch;
  if (base === null || base === 'slip') return null;
  const span = { from: ends.to, to: ends.to };
  const amount: Amount = { kind: 'one', value: 1, ...span };
  const stitch = { ...ends.stitch, form: 'plain', together: 1, parts: null, post: null, ...span } as const;
  const stop: Stop = { kind: 'end', word: 'end', ...span };
  const nouns = [{ kind: 'stitch', ...span }] as const;
  const place: Place = { kind: 'across', nouns, every: 1, stop, loop: null, post: null, below: 0, ...span };
  return { ...ends, stitch, amount, places: [place], over: null, ...span };
}

const WORKED: readonly Item['type'][] = ['work', 'group', 'repeat', 'again', 'skip', 'shaping'];

/** The items with such pairs of phrases in working order. */
export function endsInOrder(items: readonly Item[]): readonly Item[] {
  const out: Item[] = [];
  for (let i = 0; i < items.length; i++) {
    const item = items[i]!;
    const next = items[i + 1];
    if (wholeWay(item) && atEnds(next) && changes(next)) {
      out.push(...about(item, next));
      i++;
    } else if (atEnds(item) && item.places.length === 2 && wholeWay(next)) {
      out.push(...about(next, item));
      i++;
    } else if (atEnds(item) && item.type === 'work' && gathersFirst(item)) {
      out.push(...about(item, item).slice(0, 1));
    } else if (
      atEnds(item) &&
      item.type === 'work' &&
      item.places.length === 2 &&
      changes(item) &&
      items.every((other) => other === item || !WORKED.includes(other.type))
    ) {
      const between = alongBetween(item);
      out.push(...(between === null ? [item] : about(between, item)));
    } else out.push(item);
  }
  return out;
}
