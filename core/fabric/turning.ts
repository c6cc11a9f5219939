/**
 * Does a turning chain (or the chains skipped at the start of a foundation row) count as a stitch? Weighs, in
 * order: what the row says, what the pattern says once for all rows, what the row's own words show, and last
 * the trade's usual table. Decides only; the row driver acts on it.
 *
 * Usual table: sc 1 no, hdc 2 either, dc 3 yes, tr 4 yes (published; sources differ only on hdc, see
 * resources/trade/stitch-geometry.json). A longer chain is the stitch and a space.
 */
import type { Amount, CountsAs, Definition, Item, Place, StitchRef, Work } from '../notation/tree.ts';
import { type BaseStitch, height } from '../trade/stitches.ts';
import { amountOf, type Env, type Figures } from './env.ts';
import type { Carried } from './fabric.ts';
import { GATHERED, namesOf } from './kinds.ts';

/** What the words of a row show about its turning chain. */
export interface Evidence {
  /** Height of the first stitch worked, by which the chain is judged. */
  readonly base: BaseStitch | null;
  /** That stitch is an extended one, which is a chain taller. */
  readonly extended: boolean;
  /** The round joins to the top of its beginning chain. */
  readonly joinsChain: boolean;
  /** "join in 3rd ch of beg ch-5": which chain of it, and so how many of them stand for a stitch; null for the top. */
  readonly joinsNth: number | null;
  /** The round joins to its first stitch, named. */
  readonly joinsStitch: boolean;
  /** The first stitch goes into the place that the chain stands on. */
  readonly firstSame: boolean;
  /** "Dc in same st": beside a chain as tall as a dc it makes two of one, where "in first st" would begin the row. */
  readonly atBase: boolean;
  /** "Hdc in first 4 sts": counted from the one under the chain, which so is no stitch itself. */
  readonly firstSeveral: boolean;
  /** Several stitches go there, "in same st": with the chain they make half a shell. */
  readonly fan: boolean;
  /** The row passes that place over in words. */
  readonly firstSkipped: boolean;
  /** The first stitch goes into a space of one chain, over the stitch that the chain stands on. */
  readonly firstInGap: boolean;
  /** The first stitch is a beginning one ("beg popcorn"), of which the chain before it is a part. */
  readonly firstBegins: boolean;
  /** Places that the first stitch goes into, counted on from the one under the chain; 0 when it goes elsewhere. */
  readonly onward: number;
  /** What stands before the repeat is a pass of it: with the chain as a part of its first stitch, or without. */
  readonly firstPass: 'with-chain' | 'without-chain' | null;
  /**
   * Every place gets the same: "hdc in first st, hdc in each st around" from the one under the chain on, which a chain
   * that counted would give one more; "2 hdc in each st around", where it would give that place one less.
   */
  readonly alike: 'from-first' | 'each' | null;
  /** A stitch of the row, named by its height in chains, other than the first: what a longer chain may stand for. */
  readonly heights: ReadonlyMap<number, BaseStitch>;
}

export interface Decision {
  readonly counts: boolean;
  readonly base: BaseStitch;
  /** The chain stands for an extended stitch. */
  readonly extended?: true;
  /** Chains of space beside the stitch; with `counts` false, a space that the whole chain makes. */
  readonly space: number;
  /** Nothing in the text says so: the usual table, or less, decided. */
  readonly assumed: boolean;
  /** "Ch 2, dc in next dc (counts as dc2tog)": the chain is a leg of that stitch and uses up the place under it. */
  readonly leg?: true;
  /** The words show it, but loosely: the row's own count may show the contrary. */
  readonly loosely?: true;
}

interface Lead {
  readonly base: BaseStitch;
  readonly extended: boolean;
}

/** First height in the items, through groups, repeats and definitions; travelling slip stitches left aside. */
function leadOf(items: readonly Item[], env: Env, met: ReadonlySet<Definition> = new Set()): Lead | null {
  for (const item of items) {
    if (item.type === 'work' || (item.type === 'attach' && item.stitch !== null)) {
      const ref = item.stitch!;
      if (ref.base !== null && ref.base !== 'slip')
        return { base: ref.base, extended: ref.form === 'extended' };
      if (ref.base === 'slip') continue;
      for (const name of namesOf(ref)) {
        const known = env.names.get(name);
        // What comes back to itself has no height to find.
        const inside =
          known === undefined || met.has(known) ? null : leadOf(known.items, env, new Set(met).add(known));
        if (inside !== null) return inside;
      }
      if (ref.form === 'shell' || ref.form === 'v-stitch' || ref.form === 'popcorn' || ref.form === 'bobble')
        return { base: 't3', extended: false };
    } else if (item.type === 'group' || item.type === 'repeat' || item.type === 'again') {
      const inside = leadOf(item.items, env, met);
      if (inside !== null) return inside;
    }
  }
  return null;
}

/** The height of the first stitch in the items, or null. */
export function leadBase(items: readonly Item[], env: Env): BaseStitch | null {
  return leadOf(items, env)?.base ?? null;
}

interface First {
  readonly place: Place;
  readonly skip: boolean;
  readonly several: boolean;
}

function firstPlace(items: readonly Item[]): First | null {
  for (const item of items) {
    if (item.type === 'skip')
      return item.places[0] ? { place: item.places[0], skip: true, several: false } : null;
    if (item.type === 'work') {
      if (item.stitch.base === 'slip' && item.stitch.form === 'plain') continue;
      const several = item.amount.kind !== 'one' || item.amount.value > 1;
      return item.places[0] ? { place: item.places[0], skip: false, several } : null;
    }
    if (item.type === 'group')
      return item.places[0] ? { place: item.places[0], skip: false, several: false } : null;
    if (item.type === 'repeat') return firstPlace(item.items);
  }
  return null;
}

/** "in first st", which the chain stands on; the first space or gap lies beside it. */
function isFirstStitch(place: Place): boolean {
  return place.kind === 'first' && place.noun.kind !== 'space' && place.noun.kind !== 'between';
}

/** "in next ch-1 sp", "in first ch-1 sp". */
function isGapOfOne(place: Place): boolean {
  const noun = place.kind === 'next' ? place.nouns[0] : place.kind === 'first' ? place.noun : undefined;
  return noun?.kind === 'space' && noun.chains?.kind === 'one' && noun.chains.value === 1;
}

/** "in first 4 sts", "in each of first 4 sts". */
function startsSeveral(place: Place): boolean {
  return (
    isFirstStitch(place) &&
    place.kind === 'first' &&
    place.amount.from < place.amount.to &&
    (place.amount.kind !== 'one' || place.amount.value > 1)
  );
}

/** "Ch 3, 2 dc in first st, … 3 dc in last st": the chain makes up what the near end has less than the far one. */
function mirrored(items: readonly Item[]): boolean {
  const works = items.filter((item) => item.type === 'work' || item.type === 'repeat');
  const near = works[0];
  let far: Item | undefined = works.at(-1);
  if (far?.type === 'repeat') far = far.last?.kind === 'ending' ? far.last.items.at(-1) : undefined;
  if (near?.type !== 'work' || far?.type !== 'work' || near.stitch.base !== far.stitch.base) return false;
  const ends = far.places[0]?.kind === 'last' || far.places[0]?.kind === 'turning-chain';
  const [n, m] = [near.amount, far.amount];
  return ends && n.kind === 'one' && m.kind === 'one' && m.value === n.value + 1;
}

/** Places that the first stitch goes into, where these are the next ones and no spaces. */
function onwardOf(items: readonly Item[]): number {
  const lead = items.find((item) => item.type === 'work' || item.type === 'group' || item.type === 'repeat');
  if (lead?.type === 'repeat') return onwardOf(lead.items);
  const place = lead?.type === 'work' ? lead.places[0] : undefined;
  if (lead?.type !== 'work' || place?.kind !== 'next') return 0;
  return place.nouns.every((noun) => noun.kind === 'stitch' || noun.kind === 'named')
    ? lead.stitch.together
    : 0;
}

const heights = new WeakMap<readonly Item[], ReadonlyMap<number, BaseStitch>>();

/** The heights, in chains, of the plain stitches worked one into each place. */
function heightsOf(items: readonly Item[]): ReadonlyMap<number, BaseStitch> {
  const known = heights.get(items);
  if (known !== undefined) return known;
  const found = new Map<number, BaseStitch>();
  for (const item of items) {
    if (item.type === 'repeat') for (const [n, base] of heightsOf(item.items)) found.set(n, base);
    if (item.type !== 'work' || item.stitch.form !== 'plain' || item.stitch.base === null) continue;
    if (item.amount.kind === 'one' && item.amount.value === 1 && item.places[0]?.kind === 'next')
      found.set(height(item.stitch.base), item.stitch.base);
  }
  heights.set(items, found);
  return found;
}

const MADE: ReadonlySet<Item['type']> = new Set(['work', 'chain', 'skip', 'group']);

function sameAmount(a: Amount, b: Amount, more = 0): boolean {
  return a.kind === 'one' && b.kind === 'one' && a.value + more === b.value;
}

/** One stitch, or several, in one next place. */
function inOne(item: Item | undefined): Work | null {
  const place = item?.type === 'work' && item.places.length === 1 ? item.places[0]! : null;
  if (item?.type !== 'work' || place === null) return null;
  if (place.kind === 'same' || place.kind === 'first') return item;
  return place.kind === 'next' && place.amount.kind === 'one' && place.amount.value === 1 ? item : null;
}

/**
 * "Ch 2, hdc in same st, 2 hdc in next st, *hdc in next st, 2 hdc in next st; rep …": what stands before the repeat is
 * its first pass, so that the chain is none of its stitches.
 */
function firstPassOf(items: readonly Item[]): Evidence['firstPass'] {
  const said = items.filter((item) => item.type === 'repeat' || MADE.has(item.type));
  const [first, ...rest] = said[0]?.type === 'chain' ? said.slice(1) : said;
  const at = rest.findIndex((item) => item.type === 'repeat');
  const repeat = rest[at];
  const lead = inOne(first);
  if (lead === null || repeat?.type !== 'repeat' || repeat.times.kind !== 'to') return null;
  if (lead.places[0]!.kind !== 'same' && !isFirstStitch(lead.places[0]!)) return null;
  const pass = repeat.items.filter((item) => MADE.has(item.type));
  const other = inOne(pass[0]);
  if (other === null || pass.length !== at + 1) return null;
  for (let i = 0; i < at; i++) {
    const [one, two] = [rest[i]!, pass[i + 1]!];
    if (one.type === 'chain' && two.type === 'chain' && sameAmount(one.amount, two.amount)) continue;
    const [a, b] = [inOne(one), inOne(two)];
    if (a === null || b === null || !sameAmount(a.amount, b.amount) || !alike(a.stitch, b.stitch))
      return null;
  }
  return alike(lead.stitch, other.stitch) && sameAmount(lead.amount, other.amount) ? 'without-chain' : null;
}

/** Legs of a gathered stitch, as far as its words tell. */
const gathers = (ref: StitchRef): number => (GATHERED.has(ref.form) ? (ref.parts ?? 0) : ref.together);

/** All work of the items, through groups and repeats. */
function worksOf(items: readonly Item[]): readonly Work[] {
  return items.flatMap((item) => {
    if (item.type === 'work') return [item];
    return item.type === 'group' || item.type === 'repeat' || item.type === 'again'
      ? worksOf(item.items)
      : [];
  });
}

/**
 * "Ch 3, 2-dc cl in same st, *ch 2, 3-dc cl in next st; rep …", "ch 3, (dc2tog, ch 3, dc3tog) in same sp, …": the first
 * stitch has a leg less than all that are like it, which is the chain beside it.
 */
function lacksLeg(items: readonly Item[]): boolean {
  const at = items.findIndex(
    (item) => item.type === 'work' || item.type === 'group' || item.type === 'repeat',
  );
  const lead = items[at];
  const place = lead?.type === 'work' || lead?.type === 'group' ? lead.places[0] : undefined;
  if (place === undefined || (place.kind !== 'same' && place.kind !== 'first')) return false;
  const [first, ...others] = worksOf(items.slice(at));
  if (
    first === undefined ||
    gathers(first.stitch) < 1 ||
    first.amount.kind !== 'one' ||
    first.amount.value > 1
  )
    return false;
  const own = gathers(first.stitch);
  const like = others.filter(
    ({ stitch }) => stitch.base === first.stitch.base && stitch.form === first.stitch.form,
  );
  // Beside a plain stitch, two worked together over two places are a decrease.
  const inOnePlace = (work: Work) =>
    own > 1 || (inOne(work) !== null && work.places[0]!.from < work.places[0]!.to);
  return like.length > 0 && like.every((work) => gathers(work.stitch) === own + 1 && inOnePlace(work));
}

/**
 * "(Ch 3, 2-dc cl) in same st", "(ch 3, dc2tog, ch 3, dc3tog) in sp": in one place a chain and a gathered stitch behind it
 * are one stitch, with the chain as a leg of it.
 */
export function isLegOf(items: readonly Item[]): boolean {
  const [first, ...others] = items.filter((item) => item.type !== 'chain' && item.type !== 'aside');
  if (first?.type !== 'work' || gathers(first.stitch) < 2) return false;
  if (first.amount.kind !== 'one' || first.amount.value > 1) return false;
  return others.every((item) => item.type === 'work' && gathers(item.stitch) === gathers(first.stitch) + 1);
}

/** Does every place of the row get the same, and from where on? */
function alikeOf(items: readonly Item[]): Evidence['alike'] {
  const works = items.filter((item) => item.type === 'repeat' || MADE.has(item.type));
  const [first, second, ...more] = works[0]?.type === 'chain' ? works.slice(1) : works;
  if (first?.type !== 'work' || more.length > 0) return null;
  const goesOn = (place: Place | undefined) =>
    place?.kind === 'across' &&
    place.every === 1 &&
    place.stop.kind === 'end' &&
    place.nouns[0]?.kind !== 'space';
  const [place, then] = first.places;
  const begins = place !== undefined && (place.kind === 'same' || isFirstStitch(place));
  if (begins && second === undefined) return goesOn(then) ? 'from-first' : null;
  if (begins && second?.type === 'work') {
    const same = alike(first.stitch, second.stitch) && sameAmount(first.amount, second.amount);
    return same && then === undefined && goesOn(second.places[0]) ? 'from-first' : null;
  }
  const several = first.amount.kind === 'one' && first.amount.value > 1;
  return second === undefined && several && goesOn(place) ? 'each' : null;
}

function alike(a: StitchRef, b: StitchRef): boolean {
  return (
    a.base === b.base &&
    a.form === b.form &&
    a.together === b.together &&
    a.parts === b.parts &&
    a.special === b.special &&
    a.post === b.post
  );
}

/** Reads the evidence out of a row. */
export function evidenceOf(items: readonly Item[], env: Env): Evidence {
  let joinsChain = false;
  let joinsNth: number | null = null;
  let joinsStitch = false;
  for (const item of items) {
    const place =
      item.type === 'join' && !item.not
        ? item.place
        : item.type === 'work' && item.stitch.base === 'slip'
          ? (item.places[0] ?? null)
          : null;
    if (place === null) continue;
    if (place.kind === 'turning-chain') {
      joinsChain = true;
      joinsNth = place.nth?.kind === 'one' ? place.nth.value : null;
    } else if (place.kind === 'first' && place.noun.kind === 'named' && item.type === 'join')
      joinsStitch = true;
  }
  const first = firstPlace(items);
  const at = first?.place.kind;
  const tallest = leadOf(items, env);
  const lead = items.find((item) => item.type === 'work' || item.type === 'group' || item.type === 'repeat');
  return {
    firstBegins: lead?.type === 'work' && lead.stitch.beginning,
    onward: onwardOf(items),
    heights: heightsOf(items),
    firstPass: lacksLeg(items) ? 'with-chain' : firstPassOf(items),
    alike: alikeOf(items),
    base: tallest?.base ?? null,
    extended: tallest?.extended === true,
    joinsChain,
    joinsNth,
    joinsStitch,
    firstSame: first !== null && !first.skip && (at === 'same' || isFirstStitch(first.place)),
    atBase: at === 'same' && tallest !== null && height(tallest.base) >= 3,
    firstSeveral: first !== null && !first.skip && startsSeveral(first.place),
    fan:
      (at === 'same' && first?.several === true) ||
      (first !== null && (at === 'same' || isFirstStitch(first.place)) && mirrored(items)),
    firstInGap: first !== null && !first.skip && isGapOfOne(first.place),
    firstSkipped: first?.skip === true && (at === 'first' || at === 'same'),
  };
}

/** Does some work go into the turning chain by that name? Then turning chains count in this piece. */
export function worksTurningChain(items: readonly Item[]): boolean {
  return items.some((item) => {
    if (item.type === 'work')
      return item.stitch.base !== 'slip' && item.places.some((place) => place.kind === 'turning-chain');
    if (item.type === 'group') return item.places.some((place) => place.kind === 'turning-chain');
    if (item.type === 'repeat')
      return (
        worksTurningChain(item.items) || (item.last?.kind === 'ending' && worksTurningChain(item.last.items))
      );
    return item.type === 'again' && worksTurningChain(item.items);
  });
}

/** What a convention says of a chain of `n`, if one does. */
function conventionFor(n: number, base: BaseStitch, env: Env, figures: Figures): CountsAs | null {
  let found: CountsAs | null = null;
  for (const convention of env.conventions) {
    const chains = convention.chains === null ? null : amountOf(convention.chains, env, figures);
    if (chains !== null && chains !== n) continue;
    if (chains === null && convention.counts.kind === 'stitch') {
      const named = convention.counts.stitch?.base ?? null;
      if (named !== null && named !== base && height(named) !== n) continue;
      // "turning chains count" says nothing of the single chain of a sc row, which nobody counts
      if (n < 2) continue;
    }
    found = convention.counts;
  }
  return found;
}

/** A cluster, a popcorn …: a chain alone is never one. */
function isGathered(stitch: StitchRef | null): boolean {
  return stitch !== null && GATHERED.has(stitch.form);
}

const EXTENDED = { extended: true } as const;

/** Trade id of the stitch that a counting chain stands for. */
export function standsFor({ base, extended }: Decision): string {
  return extended ? `ext.${base}` : base;
}

function asSaid(
  said: CountsAs,
  n: number,
  base: BaseStitch,
  env: Env,
  figures: Figures,
  /** The row's first stitch is extended: so is a stitch that is not named. */
  rising: boolean,
): Decision {
  if (said.kind === 'nothing') return { counts: false, base, space: 0, assumed: false };
  // "Ch 3, dc2tog in ring (counts as dc3tog)": the chain is part of the stitch that follows.
  if (said.kind === 'stitch' && ((said.stitch?.together ?? 1) > 1 || isGathered(said.stitch)))
    return { counts: false, base, space: 0, assumed: false };
  if (said.kind === 'space') return { counts: false, base, space: n, assumed: false };
  const named = said.stitch?.base ?? base;
  const chains = said.chains === null ? null : amountOf(said.chains, env, figures);
  // An extended stitch is one chain taller than the plain one.
  const extended = said.stitch === null ? rising : said.stitch.form === 'extended';
  const tall = height(named) + (extended ? 1 : 0);
  return {
    counts: true,
    base: named,
    space: chains ?? Math.max(0, n - tall),
    assumed: false,
    ...(extended ? EXTENDED : {}),
  };
}

/**
 * Decides about a turning chain of `n` chains. `said` is what stands beside it in the row; `forced` overrides
 * everything that is not said (the row's own stated count has shown which it is).
 */
export function decide(
  n: number,
  said: CountsAs | null,
  carried: Carried | null,
  evidence: Evidence,
  round: boolean,
  env: Env,
  figures: Figures,
  forced: boolean | null,
): Decision {
  const base = evidence.base ?? 't1';
  const { extended } = evidence;
  const tall = height(base) + (extended ? 1 : 0);
  const kind = extended ? EXTENDED : {};
  if (said !== null) {
    const told = asSaid(said, n, base, env, figures, extended);
    const gathered = said.kind === 'stitch' ? (said.stitch?.together ?? 1) : 1;
    return gathered > 1 && gathered === evidence.onward + 1 ? { ...told, leg: true } : told;
  }
  if (carried?.said === 'nothing') return { counts: false, base, space: 0, assumed: false };
  if (carried?.said === 'stitch') {
    const named = carried.saidBase ?? base;
    return {
      counts: true,
      base: named,
      space: carried.saidChains ?? Math.max(0, n - height(named)),
      assumed: false,
    };
  }
  if (evidence.firstBegins && n <= tall) return { counts: false, base, space: 0, assumed: false };
  // The chain makes a whole of the first gathered stitch, whatever else it counts as.
  if (evidence.firstPass === 'with-chain' && n <= tall)
    return { counts: false, base, space: 0, assumed: false, ...kind };
  const convention = conventionFor(n, base, env, figures);
  if (convention !== null) return asSaid(convention, n, base, env, figures, extended);
  const space = n > tall && tall >= 2 ? n - tall : 0;
  if (forced !== null) return { counts: forced, base, space, assumed: true, ...kind };
  if (tall <= 1) {
    // One or two chains are only height; a longer chain before a short stitch is a loop of its own, and so are two
    // with the first stitch passed over under them ("ch 2, sk first sc, sc in next ch-1 sp").
    const other = evidence.onward === 1 ? evidence.heights.get(n) : undefined;
    // "Ch 3, *sc in next dc, dc in next sc": the row's taller stitch, where nothing else is as tall as the chain.
    if (n >= 3 && other !== undefined) return { counts: true, base: other, space: 0, assumed: true };
    // "5 ch … ss to 1st of 5 ch": that chain is the stitch, the others a loop.
    if (evidence.joinsNth === 1 && n >= 3)
      return { counts: true, base, space: n - 1, assumed: false, ...kind };
    const over = evidence.firstSkipped || (evidence.firstInGap && !round);
    const loop = n >= 3 || (n === 2 && over);
    return { counts: false, base, space: loop ? n : 0, assumed: false, ...kind };
  }
  // A pass that is whole without the chain has no part in it.
  if (evidence.firstPass === 'without-chain' && n <= tall && !evidence.joinsChain)
    return { counts: false, base, space: 0, assumed: true, ...kind };
  const same = evidence.alike === 'from-first' || (evidence.alike === 'each' && tall === 2);
  if (round && same && n <= tall && !evidence.joinsChain)
    return { counts: false, base, space: 0, assumed: true, ...kind };
  if (evidence.joinsChain) return { counts: n >= Math.min(tall, 2), base, space, assumed: false, ...kind };
  if (evidence.joinsStitch) {
    // Many say "first dc" of a chain that counts as one.
    const loosely = n === tall && tall >= 3 ? ({ loosely: true } as const) : {};
    return { counts: false, base, space: 0, assumed: false, ...loosely };
  }
  if (n < tall) {
    const counts = evidence.firstSkipped;
    // One chain less than the stitch is tall, or two before a tall post stitch: most leave it uncounted, but some begin
    // every row so and count it.
    const loosely = !counts && !round && n >= 2 && n >= tall - 2 ? ({ loosely: true } as const) : {};
    return { counts, base, space: 0, assumed: counts, ...kind, ...loosely };
  }
  if (n > tall) return { counts: true, base, space, assumed: false, ...kind };
  if (evidence.firstSeveral) return { counts: false, base, space: 0, assumed: true, ...kind };
  if (evidence.firstSkipped) return { counts: true, base, space, assumed: false, ...kind };
  if (evidence.firstSame && !evidence.fan && !evidence.atBase && !round && !env.turningChainWorked)
    return { counts: false, base, space: 0, assumed: true, ...kind };
  return { counts: true, base, space, assumed: tall === 2 || evidence.firstSame, ...kind };
}

/**
 * The edge that the first row leaves when it is worked into the k-th chain from the hook: k − 1 chains, of
 * which the turning height is the edge stitch (where it counts) and the rest half skipped base, half space
 * (common practice, no source). `odd` = the rest cannot be halved.
 */
export function edgeChains(
  k: number,
  said: CountsAs | null,
  base: BaseStitch,
  round: boolean,
  env: Env,
  figures: Figures,
  forced: boolean | null,
  /** The first stitch is an extended one, which is a chain taller. */
  extended = false,
  /** The round joins to the top of these chains. */
  joinsChain = false,
): Decision & { readonly odd: boolean } {
  const n = k - 1;
  const tall = height(base) + (extended ? 1 : 0);
  const rest = n - tall;
  const kind = extended ? EXTENDED : {};
  if (said !== null && said.kind !== 'stitch') {
    return { counts: false, base, space: said.kind === 'space' ? n : 0, assumed: false, odd: false };
  }
  const convention = said ?? (rest === 0 && n > 1 ? conventionFor(n, base, env, figures) : null);
  if (convention !== null && rest <= 0) {
    const told = asSaid(convention, n, base, env, figures, extended);
    return { ...told, space: rest <= 0 ? 0 : told.space, odd: false };
  }
  if (said?.kind === 'stitch' && (said.chains !== null || tall <= 1)) {
    const named = said.stitch?.base ?? base;
    const chains = said.chains === null ? null : amountOf(said.chains, env, figures);
    return { counts: true, base: named, space: chains ?? Math.floor(rest / 2), assumed: false, odd: false };
  }
  if (forced !== null && rest <= 0)
    return { counts: forced, base, space: 0, assumed: true, odd: false, ...kind };
  if (tall <= 1)
    return { counts: false, base, space: rest >= 2 ? n : 0, assumed: false, odd: false, ...kind };
  if (rest < 0) {
    if (rest === -1 && n >= 2 && joinsChain)
      return { counts: true, base, space: 0, assumed: false, odd: false, ...kind };
    const loosely = rest === -1 && n >= 2 ? ({ loosely: true } as const) : {};
    return { counts: false, base, space: 0, assumed: false, odd: false, ...kind, ...loosely };
  }
  if (rest === 0) return { counts: true, base, space: 0, assumed: tall === 2 || round, odd: false, ...kind };
  return { counts: true, base, space: Math.floor(rest / 2), assumed: false, odd: rest % 2 === 1, ...kind };
}
