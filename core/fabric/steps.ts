/**
 * The steps a row is worked in: its items with work in several places taken apart, and phrases that only make
 * sense together joined. Reads the tree; works nothing.
 */
import type { Span } from '../finding.ts';
import type { Amount, Group, Item, Noun, Place, Skip, StitchRef, Work } from '../notation/tree.ts';
import { height } from '../trade/stitches.ts';
import { endsInOrder } from './ends.ts';
import { nounId } from './places.ts';
import { inSequence } from './sequence.ts';

/**
 * "2 sc in each sp, sc in each dc across": each thing met on the way across is worked as the phrase that names
 * it says.
 */
export interface Choice extends Span {
  readonly type: 'choice';
  readonly works: readonly (Work | Group)[];
}

/** What a row is worked in: its items, taken apart or joined where the words of several make one step. */
export type Step = Item | Choice;

const flattened = new WeakMap<readonly Item[], readonly Step[]>();

/** More than anyone works into one end of a row: "work 44 sc along the row ends" are 44 in all, "2 sc" are 2 in each. */
const isLarge = (amount: Amount): boolean =>
  amount.kind === 'sizes'
    ? amount.values.some((value) => value !== null && value > 4)
    : amount.kind === 'figure' || amount.value > 4;

/** "36 hdc around": a number before the stitch and no "each" is the round's total, not so many in each. */
function asTotal(item: Item): Item {
  if (item.type !== 'work') return item;
  const place = item.places[0];
  if (place?.kind !== 'across' || place.every > 1 || place.stop.kind !== 'end') return item;
  const noun = place.nouns[0];
  const several = item.amount.kind !== 'one' || item.amount.value > 1;
  if (place.whole === true && isLarge(item.amount)) {
    const { from, to, loop, post, below, nouns, stop } = place;
    return { ...item, places: [{ kind: 'evenly', from, to, loop, post, below, nouns, stop }] };
  }
  if (!several || place.nouns.length > 1 || noun?.kind !== 'stitch' || noun.from !== noun.to) return item;
  // "2 sc in each around": something is said before how far it goes.
  if (place.from < place.stop.from) return item;
  const { from, to, loop, post, below, nouns, stop } = place;
  return { ...item, places: [{ kind: 'evenly', from, to, loop, post, below, nouns, stop }] };
}

/**
 * "dc in each dc and in each of 5 ch": the chains lie among the stitches, so that both are looked for together
 * on the one way across.
 */
function chainsAmong(places: readonly Place[]): readonly Place[] {
  const [across, next] = places;
  if (places.length !== 2 || across?.kind !== 'across' || next?.kind !== 'next') return places;
  const all = across.stop.kind === 'end' && across.every === 1;
  if (!all || next.nouns.some((noun) => noun.kind !== 'chain')) return places;
  return [{ ...across, nouns: [...across.nouns, ...next.nouns], to: next.to }];
}

/** "dc2tog over next 3 sts, skipping centre st": the skip says what the decrease passes over, and no more than that. */
function passing(items: readonly Item[]): readonly Item[] {
  const out: Item[] = [];
  for (const item of items) {
    const before = out.at(-1);
    const between =
      item.type === 'skip' && item.places[0]?.kind === 'of-unit' && item.places[0].nth === 'centre';
    if (between && before?.type === 'work' && before.over !== null && before.stitch.together > 1)
      out[out.length - 1] = { ...before, passing: true };
    else out.push(item);
  }
  return out.length === items.length ? items : out;
}

/** The items with work in several places taken apart into work in one place each. Memoised. */
export function steps(items: readonly Item[]): readonly Step[] {
  const known = flattened.get(items);
  if (known !== undefined) return known;
  const apart: Item[] = [];
  for (const item of endsInOrder(inSequence(passing(items)))) {
    if (item.type === 'work' && item.legs) apart.push(item);
    else if ((item.type === 'work' || item.type === 'group') && item.places.length > 1) {
      for (const place of chainsAmong(item.places)) apart.push({ ...item, places: [place] });
    } else apart.push(asTotal(item));
  }
  const joined = chosenAcross(spreadShaping(apart));
  const made =
    joined.length === items.length && joined.every((item, i) => item === items[i]) ? items : joined;
  flattened.set(items, made);
  return made;
}

const repeated = new WeakMap<readonly Item[], readonly Step[]>();

/** The steps of a repeat: "*sc in first st, inc in next st": each time it begins, first is what comes next. */
export function repeatedSteps(items: readonly Item[]): readonly Step[] {
  const known = repeated.get(items);
  if (known !== undefined) return known;
  const lead = items.findIndex((item) => item.type === 'work');
  const work = items[lead];
  const place = work?.type === 'work' && work.stitch.base !== 'slip' ? work.places[0] : undefined;
  let made = steps(items);
  if (work?.type === 'work' && place?.kind === 'first') {
    const { noun, ...rest } = place;
    const next: Place = { ...rest, kind: 'next', nouns: [noun], every: 1, implied: false };
    made = steps(items.with(lead, { ...work, places: [next, ...work.places.slice(1)] }));
  }
  repeated.set(items, made);
  return made;
}

/**
 * "sc across, inc in every 3rd st" is one row told in two phrases: two stitches plain, then one increased, to
 * the end. Said so, it can be worked.
 */
function spreadShaping(items: readonly Item[]): readonly Item[] {
  const out: Item[] = [];
  for (const item of items) {
    const before = out[out.length - 1];
    const place = item.type === 'work' || item.type === 'skip' ? item.places[0] : undefined;
    const changes =
      item.type === 'skip' ||
      (item.type === 'work' &&
        (item.stitch.form === 'inc' ||
          item.stitch.form === 'dec' ||
          item.amount.kind !== 'one' ||
          item.amount.value > 1));
    const every = before?.type === 'work' || before?.type === 'skip' ? before.places[0] : undefined;
    if (
      (before?.type === 'work' || before?.type === 'skip') &&
      item.type === 'work' &&
      place?.kind === 'across' &&
      place.others === true &&
      every?.kind === 'across' &&
      every.every > 1
    ) {
      // "2 sc in every 4th st, sc in the others"
      out.pop();
      out.push(...spread(item, before, every, place.nouns));
      continue;
    }
    if (
      (item.type === 'work' || item.type === 'skip') &&
      changes &&
      place?.kind === 'across' &&
      place.every > 1 &&
      before?.type === 'work' &&
      before.places[0]?.kind === 'across' &&
      before.stitch.form === 'plain'
    ) {
      out.pop();
      out.push(...spread(before, item, place, before.places[0].nouns));
      continue;
    }
    if (item.type === 'work' && item.stitch.form === 'inc' && place?.kind === 'across' && place.every > 1) {
      // "inc in every other st": an increase is among plain stitches, said or not.
      const plain: StitchRef = { ...item.stitch, form: 'plain', parts: null };
      out.push(...spread({ ...item, stitch: plain, amount: single(item) }, item, place, place.nouns));
      continue;
    }
    out.push(item);
  }
  return out;
}

/** A lone "1" at the item's place. */
function single(item: Work): Amount {
  return { kind: 'one', value: 1, from: item.from, to: item.from };
}

/** So many plain stitches and one changed, over and over, and what is left plain. */
function spread(
  plain: Work,
  item: Work | Skip,
  place: Extract<Place, { kind: 'across' }>,
  nouns: readonly Noun[],
): readonly Item[] {
  const span = { from: item.from, to: item.to };
  const next = (value: number): Extract<Place, { kind: 'next' }> => ({
    ...span,
    kind: 'next',
    loop: null,
    post: null,
    below: 0,
    amount: { ...span, kind: 'one', value },
    nouns,
    every: 1,
    implied: false,
  });
  const taken = item.type === 'work' && item.stitch.form === 'dec' ? 2 : 1;
  return [
    {
      ...span,
      type: 'repeat',
      mark: 'bracket',
      last: null,
      times: { ...span, kind: 'to', stop: place.stop },
      items: [
        { ...plain, places: [next(Math.max(1, place.every - taken))] },
        { ...item, places: [{ ...next(1), implied: true }] },
      ],
    },
    { ...plain, places: [{ ...place, every: 1 }] },
  ];
}

function reaches(item: Item | undefined): item is Work | Group {
  if (item?.type !== 'work' && item?.type !== 'group') return false;
  const place = item.places[0];
  if (place?.kind === 'of-unit' && place.which === 'each') return (place.stop?.kind ?? 'end') === 'end';
  return place?.kind === 'across' && place.stop.kind === 'end' && place.every === 1;
}

/** Phrases that each go all the way across, for different things, are one way across. */
function chosenAcross(items: readonly Item[]): readonly Step[] {
  const out: Step[] = [];
  for (let i = 0; i < items.length; i++) {
    const first = items[i]!;
    const works: (Work | Group)[] = [];
    for (let at = i; reaches(items[at]); at++) {
      const work = items[at] as Work | Group;
      // What goes round another part comes when that part does.
      if (work.places[0]?.part !== undefined && at > i) break;
      works.push(work);
      if (work.places[0]?.part !== undefined) break;
    }
    const kinds = works.map(({ places: [place] }) => {
      if (place?.kind !== 'across') return 'spot';
      return place.nouns[0]?.corner === undefined ? nounId(place.nouns[0]) : 'spot';
    });
    if (
      works.length > 1 &&
      new Set(kinds).size === kinds.length &&
      works[0]!.places[0]!.kind === 'across' &&
      // "dc in each tr and tr in each dc": the first to its end would leave nothing for the second.
      (kinds.some((kind) => kind.startsWith('sp') || kind === 'ch') ||
        kinds.every((kind) => kind !== 'st' && kind !== 'spot'))
    ) {
      out.push({ type: 'choice', from: first.from, to: works[works.length - 1]!.to, works });
      i += works.length - 1;
    } else out.push(first);
  }
  return out;
}

function alike(a: Item, b: Item): boolean {
  if (a.type === 'chain' || b.type === 'chain') return a.type === b.type;
  if (a.type !== 'work' || b.type !== 'work') return false;
  const amount = a.amount.kind === 'one' && a.amount.value === 1;
  return amount && a.stitch.base === b.stitch.base && a.stitch.form === b.stitch.form;
}

/** "5 dc" less the "2 dc" that are omitted; null when nothing is left, or when they do not name the same stitch. */
function lessBy(work: Work, omitted: Work): Work | null {
  const [to, from] = [omitted.places[0], work.places[0]];
  const { stitch } = work;
  if (stitch.base !== omitted.stitch.base || stitch.form !== 'plain' || omitted.stitch.form !== 'plain')
    return null;
  if (to?.kind !== 'next' || to.amount.kind !== 'one' || work.places.length > 1 || stitch.together > 1)
    return null;
  const { amount } = work;
  if (amount.kind === 'one' && amount.value > to.amount.value)
    return { ...work, amount: { ...amount, value: amount.value - to.amount.value } };
  if (from?.kind !== 'next' || from.amount.kind !== 'one' || from.amount.value <= to.amount.value)
    return null;
  return {
    ...work,
    places: [{ ...from, amount: { ...from.amount, value: from.amount.value - to.amount.value } }],
  };
}

/**
 * A pass without what its last one omits: as many steps from its end, or, where it ends in a group and the
 * words name what the group ends with ("omitting 1 ch and last tr"), those from inside the group.
 */
export function without(body: readonly Step[], omitted: readonly Item[]): readonly Step[] {
  const out = body.slice();
  for (let k = Math.max(1, omitted.length) - 1; k >= 0; k--) {
    const last = out[out.length - 1];
    const inner = last?.type === 'group' ? last.items[last.items.length - 1] : undefined;
    const word = omitted[k];
    if (last?.type === 'group' && inner !== undefined && word !== undefined && alike(inner, word)) {
      out[out.length - 1] = { ...last, items: last.items.slice(0, -1) };
      continue;
    }
    out.pop();
    const fewer = last?.type === 'work' && word?.type === 'work' ? lessBy(last, word) : null;
    if (fewer !== null) out.push(fewer);
  }
  return out;
}

/**
 * "(sl st, ch 3, 2 dc, ch 2, 3 dc) in next ch-2 sp" at the start of a row: the slip stitch only brings the hook into
 * the space, and the chain stands for the first stitch. A petal begins so too, but it also ends in a slip stitch.
 */
export function climbs(item: Group): boolean {
  const [slip, chain] = item.items;
  const end = item.items.at(-1);
  if (item.places[0]?.kind === 'across' || slip?.type !== 'work' || slip.stitch.base !== 'slip') return false;
  if (chain?.type !== 'chain' || chain.amount.kind !== 'one') return false;
  if (end?.type === 'work' && end.stitch.base === 'slip') return false;
  const first = item.items.find((inner) => inner.type === 'work' && inner.stitch.base !== 'slip');
  const base = first?.type === 'work' ? first.stitch.base : null;
  return base !== null && height(base) >= 2 && chain.amount.value >= height(base);
}
