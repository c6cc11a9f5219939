/**
 * A row being worked: where the hook stands over the sites below, what has been made, and what was noticed.
 * It can be put back to an earlier moment, which is how repeats are fitted. Mutable, and never leaves the
 * folder: what comes out of a row is immutable.
 */
import type { Fact, FactValue, Span } from '../finding.ts';
import type { Amount, CountsAs, Noun, StitchRef } from '../notation/tree.ts';
import type { BaseStitch } from '../trade/stitches.ts';
import { cornerFits } from './corners.ts';
import { amountOf, type Env, type Figures } from './env.ts';
import type { Opening } from './fabric.ts';
import { type Meeting, matches, namesOf, ofBlocks, unitName, unitsOf } from './kinds.ts';
import {
  CHAIN_SITE,
  counts,
  OPEN_CHAIN_SITE,
  ROW_END_SITE,
  type Site,
  spaceSite,
  withMark,
  withMore,
  withUnit,
} from './site.ts';
import { type RecordedMoment, Recording } from './trace.ts';

/** Stitches of one row beyond which it is not worked further. */
export const MOST_STITCHES = 20_000;
/** Steps of work (places found, stitches made, trials) beyond which a row is given up. */
const MOST_STEPS = 400_000;

/** Everything that a trial may have to put back. */
export interface Moment {
  readonly below: Site[];
  readonly outside: readonly Site[];
  readonly top: readonly Site[] | null;
  readonly part: string | null;
  readonly tube: boolean;
  readonly gap: number;
  readonly skips: number;
  readonly skipAt: number;
  readonly passes: boolean;
  readonly hopped: number;
  readonly passedUnsaid: number;
  readonly hoppedSpaces: number;
  readonly pos: number;
  readonly inner: number;
  readonly last: number;
  readonly madeAt: number;
  readonly made: number;
  readonly pending: number;
  readonly skipped: readonly number[];
  readonly facts: number;
  readonly openings: number;
  readonly covered: number;
  readonly intoSpace: boolean;
  readonly usedSpace: boolean;
  readonly waiting: readonly Site[];
  readonly ended: boolean;
  readonly recorded: RecordedMoment | null;
}

/** Pseudo index of a place that is no site below: a ring, the air. */
export const NOWHERE = -1;

export class Progress {
  /** Sites below in working order. */
  below: Site[];
  /** What lies behind the stitches that the row says it is worked over. */
  outside: readonly Site[] = [];
  /** Next site to be met, and chains of it already used when it is a space. */
  pos = 0;
  inner = 0;
  /** Site that the last work went into. */
  last = NOWHERE;
  /** Site that the last *made* stitch went into, to tell stitches of one place. */
  madeAt = -2;
  readonly made: Site[] = [];
  /** What each thing made went into, where that is asked for. */
  readonly recording: Recording | null;
  /** Gap between stitches used last, by the site after it; -1 = the last place was no gap. */
  gap = -1;
  /** The row goes from space to space over stitches, as a matter of course. */
  passes = false;
  /** The most stitches, and spaces, that lay between two places of such a row. */
  hopped = 0;
  /** Most stitches passed over at once without a word, on the way to the next of a kind. */
  passedUnsaid = 0;
  hoppedSpaces = 0;
  /** How many stitches the last skip passed over. */
  skips = 0;
  /** How much had been made by then. */
  skipAt = 0;
  /** Stitches of an earlier row left waiting, in its direction: met when the row below is used up. */
  rest: readonly Site[] | null = null;
  /** Chains made and not closed by a stitch yet. */
  pending = 0;
  /** Sites passed over by the last skip, for "in skipped st". */
  skipped: readonly number[] = [];
  /** Stitches worked lower down whose stitch behind is still to be passed. */
  covered = 0;
  /** Was the last place a space or a gap? Then stitches up to the next one are passed over as a matter of course. */
  intoSpace = false;
  usedSpace = false;
  /** Sites skipped under a chain not closed yet. */
  waiting: readonly Site[] = [];
  readonly openings: Opening[] = [];
  readonly facts: Fact[] = [];
  /** Place that everything goes into while a group is worked; null outside groups. */
  here: number | null = null;
  /** In the body of a definition even a written "next st" means the group's place. */
  hereAlways = false;
  trials = 0;
  /** In this trial even a row that goes from space to space passes over nothing unsaid. */
  strict = false;
  /** In this trial a row that works into spaces leaves none of them out on the way to the edge. */
  sparing = false;
  /** Stitches passed over without a word are told and do not make a trial fail. */
  lenient = false;
  muted = 0;
  /** A repeat did not fit: what is left at the end is already told. */
  misfit = false;
  /** Where the work stood at the last words not understood. */
  unreadAt = -2;
  /** The row works into an earlier one: passing stitches over is a matter of course. */
  unowed = false;
  /** The round closes on the slip stitch that began it: the stitch under that is not left over. */
  onJoin = false;
  /** The row says that it leaves stitches unworked, or where it stops. */
  leaves = false;
  ended = false;
  spent = 0;
  repeats: number | null = null;
  /** Where the row's first repeat with a number of passes begins, and how many of them it came to. */
  main: number | null = null;
  stated: number | null = null;
  /** Height last named in the row, for words that name none ("inc"). */
  prevailing: BaseStitch = 't1';
  /** The round begins in the gap between its last stitch and its first. */
  startsInGap = false;
  /** Chains that the row began with; null where it has none of its own. */
  stood: number | null = null;
  /** A Tunisian row: it goes out and back, so that the next begins where it began. */
  tunisian = false;
  /** The row works into the turning chain by that name: "last 3 dc" are those before it. */
  turningApart = false;
  /** What the row says of the chains that its first stitch into a foundation chain skips. */
  edgeSaid: CountsAs | null = null;
  edgeBase: BaseStitch | null = null;
  /** The round joins to the top of its beginning chain. */
  edgeJoined = false;
  /** Whether a turning chain of doubtful standing is to count, when the row's own count has shown it. */
  forced: boolean | null = null;
  /** A decision that no word of the text supports, to be told. */
  edgeAssumed: ({ chains: number; stitch: BaseStitch; counts: boolean } & Span) | null = null;
  /** A decision that the words show only loosely: whether the turning chain counts. */
  edgeLoose: boolean | null = null;
  /** Chains of the row's own, half worked into from the hook: where their space stands among the made. */
  along = NOWHERE;
  /** Slip stitches that only brought the hook to where the row begins. */
  travelled = 0;
  /** First chain of a foundation that was worked into. */
  firstUsed = 0;
  /** Stitches that the row states at its end, where nothing but one "evenly" without a number makes them. */
  evenTotal: number | null = null;
  /** The row says nothing of markers, or that they move up: each stays with its stitch. */
  carries = false;
  /** How deep in definitions of definitions the work is. */
  depth = 0;

  constructor(
    below: readonly Site[],
    /** Below is a foundation chain: its chains serve as stitches. */
    public bare: boolean,
    readonly round: boolean,
    readonly env: Env,
    readonly figures: Figures,
    /** The row below is met in the opposite order to its making. */
    backwards = false,
  ) {
    this.below = below.slice();
    this.recording = env.trace === null ? null : new Recording();
    this.meeting = {
      nameOf: (ref) => this.nameOf(ref),
      backwards,
      blocks: ofBlocks(below),
      spaceless: below.every((site) => site.kind !== 'space'),
      units: unitsOf(below),
    };
  }

  amount(of: Amount): number | null {
    return amountOf(of, this.env, this.figures);
  }

  moment(): Moment {
    return {
      below: this.below,
      outside: this.outside,
      top: this.top,
      part: this.part,
      tube: this.tube,
      gap: this.gap,
      skips: this.skips,
      skipAt: this.skipAt,
      passes: this.passes,
      hopped: this.hopped,
      passedUnsaid: this.passedUnsaid,
      hoppedSpaces: this.hoppedSpaces,
      pos: this.pos,
      inner: this.inner,
      last: this.last,
      madeAt: this.madeAt,
      made: this.made.length,
      pending: this.pending,
      skipped: this.skipped,
      facts: this.facts.length,
      openings: this.openings.length,
      covered: this.covered,
      intoSpace: this.intoSpace,
      usedSpace: this.usedSpace,
      waiting: this.waiting,
      ended: this.ended,
      recorded: this.recording === null ? null : this.recording.moment(),
    };
  }

  /** Back to an earlier moment. Only moments still on the way here can be returned to. */
  restore(to: Moment): void {
    this.below = to.below;
    this.outside = to.outside;
    this.top = to.top;
    this.part = to.part;
    this.tube = to.tube;
    this.gap = to.gap;
    this.along = NOWHERE;
    this.skips = to.skips;
    this.skipAt = to.skipAt;
    this.passes = to.passes;
    this.hopped = to.hopped;
    this.passedUnsaid = to.passedUnsaid;
    this.hoppedSpaces = to.hoppedSpaces;
    this.pos = to.pos;
    this.inner = to.inner;
    this.last = to.last;
    this.madeAt = to.madeAt;
    this.made.length = to.made;
    if (to.recorded !== null) this.recording?.restore(to.recorded, to.made);
    this.pending = to.pending;
    this.skipped = to.skipped;
    // Passes worked once more in silence leave fewer of both than the first time.
    this.facts.length = Math.min(this.facts.length, to.facts);
    this.openings.length = Math.min(this.openings.length, to.openings);
    this.covered = to.covered;
    this.intoSpace = to.intoSpace;
    this.usedSpace = to.usedSpace;
    this.waiting = to.waiting;
    this.ended = to.ended;
  }

  /** The row is worked over the next `n` stitches: what lies behind them waits. */
  confine(n: number): void {
    let to = this.pos;
    for (let left = n; to < this.below.length; to++) {
      if (this.owed(this.below[to]!) && left-- === 0) break;
    }
    this.outside = [...this.below.slice(to), ...this.outside];
    this.below = this.below.slice(0, to);
  }

  /** One more step; false when the row has taken more work than any real row does. */
  step(n = 1): boolean {
    this.spent += n;
    return this.spent <= MOST_STEPS && this.made.length <= MOST_STITCHES;
  }

  get exhausted(): boolean {
    return this.spent > MOST_STEPS || this.made.length > MOST_STITCHES;
  }

  /** What lies between the last place and the edge is passed over as a matter of course. */
  get unsaid(): boolean {
    return this.intoSpace && !this.strict;
  }

  /** Slip stitches passed over before the row's first stitch: a later row may come back for them. */
  passed: readonly Site[] = [];

  /** Reports; in a trial it is refused instead (false), so that the trial counts as failed. */
  problem(code: string, span: Span, data: Record<string, FactValue>): boolean {
    const passed = this.lenient && code === 'stitches-passed-over';
    if (this.trials > 0 && !passed) return false;
    this.note(code, span, data);
    return true;
  }

  /** The words being worked, for what has no words of its own (an implied "next st"). */
  words: Span = { from: 0, to: 0 };

  /** Reports something that is no reason to call a trial failed. */
  note(code: string, at: Span, data: Record<string, FactValue>): void {
    if (this.muted > 0) return;
    const span = at.from === at.to ? this.words : at;
    if (this.facts.some((f) => f.code === code && f.from === span.from && f.to === span.to)) return;
    this.facts.push({ code, from: span.from, to: span.to, data });
  }

  /** The name a unit goes by: the first name of the pattern's definition, or the trade's. */
  nameOf(ref: StitchRef): string {
    for (const name of namesOf(ref)) {
      const definition = this.env.names.get(name);
      if (definition !== undefined) return definition.names[0] ?? name;
    }
    return unitName(ref);
  }

  readonly meeting: Meeting;

  private fits(site: Site, nouns: readonly Noun[]): boolean {
    for (const noun of nouns) {
      if (noun.corner !== undefined) {
        if (cornerFits(this.below, site, noun, this.meeting)) return true;
        continue;
      }
      const chains = noun.kind === 'space' && noun.chains !== null ? this.amount(noun.chains) : null;
      if (matches(site, noun, chains, this.bare, this.meeting)) return true;
    }
    return false;
  }

  /** Is the site at `i` what the nouns ask for? */
  isAt(i: number, nouns: readonly Noun[]): boolean {
    this.spent += 1;
    const site = this.below[i];
    return site !== undefined && (this.fits(site, nouns) || this.isChainAtEdge(i, nouns));
  }

  /**
   * The turning chain at the far end of a row is a chain like any other to the hook that stands before it ("sk 2 ch,
   * dc in next ch"). One that begins a round lies behind the hook.
   */
  private isChainAtEdge(i: number, nouns: readonly Noun[]): boolean {
    if (i !== this.pos || i !== this.below.length - 1 || !this.meeting.backwards) return false;
    const site = this.below[i]!;
    return site.kind === 'stitch' && site.turning && nouns.some((noun) => noun.kind === 'chain');
  }

  /** Index of the next site from `from` that is what the nouns ask for, or -1. Uses up nothing. */
  seek(nouns: readonly Noun[], from = this.pos): number {
    for (let i = from; i < this.below.length; i++) {
      this.spent += 1;
      if (this.fits(this.below[i]!, nouns) || this.isChainAtEdge(i, nouns)) return i;
    }
    return -1;
  }

  /** The same from the far end. */
  seekLast(nouns: readonly Noun[], from = this.pos): number {
    for (let i = this.below.length - 1; i >= from; i--) {
      this.spent += 1;
      if (this.fits(this.below[i]!, nouns)) return i;
    }
    return -1;
  }

  /** How many places that the nouns ask for are still ahead. */
  ahead(nouns: readonly Noun[]): number {
    let n = 0;
    for (let i = this.pos; i < this.below.length; i++) {
      const site = this.below[i]!;
      if (!this.fits(site, nouns)) continue;
      const chainwise = nouns.some((noun) => noun.kind === 'chain') && site.kind === 'space';
      n += chainwise ? site.chains - (i === this.pos ? this.inner : 0) : 1;
    }
    this.spent += 1;
    return n;
  }

  /** Stitches still ahead; of a foundation chain, its chains. */
  stitchesAhead(from = this.pos): number {
    let n = 0;
    for (let i = from; i < this.below.length; i++) if (this.owed(this.below[i]!)) n += 1;
    return n;
  }

  spacesAhead(from = this.pos): number {
    let n = 0;
    for (let i = from; i < this.below.length; i++) if (this.below[i]!.kind === 'space') n += 1;
    return n;
  }

  /** Is it something that a row must account for? */
  owed(site: Site): boolean {
    return (
      counts(site) ||
      site.kind === 'seam' ||
      site.kind === 'row-end' ||
      (this.bare && site.kind === 'chain' && !site.turning)
    );
  }

  /** Passes the stitches that work lower down has covered. */
  uncover(): void {
    while (this.covered > 0) {
      this.covered -= 1;
      let i = this.pos;
      while (i < this.below.length && !this.owed(this.below[i]!)) i += 1;
      if (i < this.below.length) this.advance(i);
    }
  }

  advance(index: number): void {
    this.pos = index + 1;
    this.inner = 0;
  }

  /** The row below lies before its border, which began at its last stitch and went down the side from there. */
  unturned = false;
  /** The top of the piece, left alone by a row along its sides, which may come to it later. */
  top: readonly Site[] | null = null;

  /** A border that has used up the side before it goes on into the top, where its words ask for that. */
  layTop(nouns: readonly Noun[]): void {
    if (this.top === null || this.below.slice(this.pos).some((site) => this.owed(site))) return;
    if (nouns.some((noun) => ['row-end', 'chain', 'loop-of-chain'].includes(noun.kind))) return;
    this.below = [...this.below, ...this.top];
    this.top = null;
  }

  /** The part that the row is working into, of several that it joins. */
  part: string | null = null;
  /** Chains that the row has made from part to part, and works into as it comes by on either side. */
  bridge = 0;

  /** The row goes on into another part: its last round is what lies ahead. */
  enter(part: string | undefined): void {
    const fabric = part === undefined || part === this.part ? undefined : this.env.parts?.get(part);
    if (part === undefined || fabric === undefined) return;
    this.part = part;
    const sites = [...fabric.sites.slice(fabric.start), ...fabric.sites.slice(0, fabric.start)];
    this.below = [...this.below.slice(0, this.pos), ...sites];
    this.inner = 0;
  }

  /** Row-ends are met only when a row says that it works along them; then the piece's own edge is laid out. */
  layRowEnds(): void {
    if (this.env.rowEnds === 0 || this.below.slice(this.pos).some((site) => site.kind === 'row-end')) return;
    // The other side is another edge: it is not run into from the first.
    if (this.last >= 0 && this.below[this.last]?.kind === 'row-end') return;
    // A piece has two sides.
    if (this.below.filter((site) => site.kind === 'row-end').length >= 2 * this.env.rowEnds) return;
    const ends = new Array<Site>(Math.min(this.env.rowEnds, MOST_STITCHES)).fill(ROW_END_SITE);
    const corner = this.unturned && this.pos === 1 ? 1 : 0;
    if (this.pos === corner && (corner > 0 || this.made.every((site) => site.turning))) {
      // A row that begins along the side leaves the top alone, or comes to it last.
      this.top = this.below.slice(corner);
      if (this.unturned) this.top = this.top.toReversed();
      this.below = [...this.below.slice(0, corner), ...ends];
      return;
    }
    this.below = [...this.below.slice(0, this.pos), ...ends, ...this.below.slice(this.pos)];
    if (this.beyond !== null) this.top = this.beyond;
    this.beyond = null;
  }

  /** The top of a piece of which the row began to work the foundation: a border may come to it past a side. */
  private beyond: readonly Site[] | null = null;

  /** The row begins along the other side of the foundation: its chains are what lies below, not the last row. */
  beginOtherSide(): void {
    if (this.env.foundation === 0) return;
    this.beyond = this.below;
    this.below = this.otherSide();
    if (this.recording !== null) this.recording.otherSide = this.below;
    this.bare = true;
    this.meeting.spaceless = true;
    this.meeting.blocks = false;
  }

  /** The chains of the foundation from their other side; where stitches are recorded, each a place of its own. */
  private otherSide(): Site[] {
    const length = Math.min(this.env.foundation, MOST_STITCHES);
    return Array.from({ length }, () => (this.recording === null ? CHAIN_SITE : { ...CHAIN_SITE }));
  }

  /** The other side of the foundation, met when a border goes on past the side of the piece. */
  layFoundation(): void {
    if (this.bare || this.env.foundation === 0 || this.below.some((site) => site.kind === 'chain')) return;
    // Only a border that has gone along a side gets there.
    if (!this.below.some((site) => site.kind === 'row-end')) return;
    if (this.below.slice(this.pos).some((site) => this.owed(site))) return;
    this.below = [...this.below, ...this.otherSide()];
  }

  /**
   * The work goes on along the other side of a foundation chain: its chains again, from the far end back to
   * the first one worked. That one may be used once more or left.
   */
  layOtherSide(): void {
    if (
      !this.bare ||
      this.made.length === 0 ||
      this.below.some((site) => site.kind === 'chain' && site.turning)
    )
      return;
    const side = this.below.slice(this.firstUsed + 1, Math.max(this.firstUsed + 1, this.below.length - 1));
    this.below = [...this.below, ...side.reverse(), OPEN_CHAIN_SITE];
  }

  /** Below is a tube, which may be folded flat. */
  tube = false;

  /** A tube is folded flat: what is ahead lies in two layers, of which one stitch each is taken together. */
  fold(): void {
    if (!this.tube) return;
    this.tube = false;
    const pairs = Math.floor(this.stitchesAhead() / 2);
    let to = this.pos;
    for (let n = 0; n < pairs; to++) if (this.owed(this.below[to]!)) n += 1;
    this.below = this.below.slice(0, to);
  }

  /** Closes pending chains into a space. */
  closeSpace(): void {
    if (this.pending === 0) return;
    this.made.push(spaceSite(this.pending));
    this.recording?.bare(null);
    if (this.waiting.length > 0) {
      this.openings.push({ sites: this.waiting, chains: this.pending });
      this.waiting = [];
    }
    this.pending = 0;
  }

  /** Makes `n` of a site into the place `at`. False when the row has grown past all sense. */
  make(site: Site, n: number, at: number): boolean {
    this.closeSpace();
    this.waiting = [];
    // Of several in the marked stitch, the middle one takes the marker over.
    const keeps =
      this.carries && this.madeAt !== at && this.below[at]?.marked === true && !this.isSeamMark(at);
    for (let i = 0; i < n; i++) {
      if (!this.step()) return false;
      const more = this.madeAt === at && at !== NOWHERE && this.made.length > 0;
      const own = more || (i > 0 && at === NOWHERE) ? withMore(site) : site;
      this.made.push(keeps && i === (n - 1) >> 1 ? withMark(own, true) : own);
      this.recording?.push(this.below[at] ?? null, this.gap >= 0 && this.gap % this.below.length === at, i);
      this.madeAt = at;
    }
    this.last = at;
    return true;
  }

  /** A marker in the first or last stitch tells where rounds begin: to it is all the way around, in every round. */
  private isSeamMark(at: number): boolean {
    return this.round && (at === 0 || at === this.below.length - 1);
  }

  /** Marks the last stitch made, or the one at `i`. */
  mark(i = this.made.length - 1): void {
    if (i >= 0) this.made[i] = withMark(this.made[i]!, true);
  }

  /** Makes a unit of what has been made since `from`, a moment's `made`. Chains left pending stay outside. */
  gather(name: string, from: number): void {
    const of = this.made.length - from;
    for (let i = 0; i < of; i++) {
      const site = this.made[from + i]!;
      if (name === 'group' && site.unit !== null && site.unit.name !== 'group') continue;
      this.made[from + i] = withUnit(site, name, i, of);
    }
  }
}
