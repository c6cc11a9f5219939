/**
 * What each thing made went into, recorded while a row is worked. Sites are shared by all stitches of a sort, so a
 * traced fabric holds copies, one object a stitch, and a place is the copy itself: it stays the same however the row
 * above meets it. Works nothing and decides nothing; without a tracer nothing here is run.
 */
import type { Into, RowTree, StitchForm, StitchRef } from '../notation/tree.ts';
import type { BaseStitch } from '../trade/stitches.ts';
import type { Fabric } from './fabric.ts';
import { RING_SITE, type Site } from './site.ts';

/** How one thing of a row was made. */
export interface Making {
  /** Places that its legs went into, in working order; empty = none below (chains, picots, the row's own chain). */
  readonly feet: readonly Site[];
  /** Chain of a space, from 1 in working order, where it was worked into chain by chain; else null. */
  readonly chain: number | null;
  /** It went into the gap that lies before its foot as the row met it. */
  readonly gap: boolean;
  /** Rows further down that it reaches. */
  readonly below: number;
  /** What sort of stitch the words name; null for chains. */
  readonly form: StitchForm | null;
  /** Stitches or strands gathered in it, where the words or their definition say; else null. */
  readonly parts: number | null;
  readonly loop: Into['loop'];
}

/** The chain that stands at a row's beginning. */
export interface Stood {
  /** Chains that rise, of which `counts` says whether they are a stitch. */
  readonly upright: number;
  readonly counts: boolean;
  /** Chains of the space behind the upright ones. */
  readonly space: number;
  /** Chains of a foundation that lie under that space, worked into by nobody. */
  readonly laid: number;
  /** What it stands on; null on a foundation chain. */
  readonly on: Site | null;
}

/** One working of a repeat: how much of the row had been made when each pass began, and when the last ended. */
export interface Passes {
  readonly starts: readonly number[];
  readonly end: number;
}

export interface RowTrace {
  readonly row: RowTree;
  /** Sites of the row, in the order made: the fabric's own. */
  readonly sites: readonly Site[];
  /** One for each site. */
  readonly makings: readonly Making[];
  /** Sites of the row below, in the order made. */
  readonly below: readonly Site[];
  readonly belowForm: Fabric['form'];
  /** Chains of the foundation, where the row goes along their other side and not into the row below. */
  readonly otherSide: readonly Site[] | null;
  /** It is worked into a ring, of as many chains; 0 = a ring of yarn, null = into no ring. */
  readonly ring: number | null;
  readonly round: boolean;
  readonly turned: boolean;
  readonly joined: boolean;
  /** Index of the site that the join went into, and the stitch that closed the round. */
  readonly start: number;
  readonly closing: BaseStitch | null;
  readonly stood: Stood | null;
  /** Slip stitches that brought the hook to where the row begins. */
  readonly travelled: readonly Making[];
  readonly passes: readonly Passes[];
  readonly fastened: boolean;
}

/** A row as a piece worked it. */
export interface TracedRow {
  readonly trace: RowTrace;
  /** Its number; null when it has none. */
  readonly number: number | null;
  /** Block of the piece that it belongs to, as the driver counts them. */
  readonly block: number;
}

/** Collects the rows of a piece, and gives every fabric sites of its own. */
export class Tracer {
  readonly rows: TracedRow[] = [];
  /** Rows that were counted without being worked, since they leave what they find. */
  passedOver = 0;
  /** Block whose rows are being worked. */
  block = 0;
  private readonly owned = new WeakMap<readonly Site[], readonly Site[]>();
  private readonly rings = new WeakMap<readonly Site[], readonly Site[]>();

  /** The fabric with sites that no other fabric shares. */
  own(of: Fabric): Fabric {
    const known = this.owned.get(of.sites);
    if (known === of.sites) return of;
    const sites = known ?? this.copy(of.sites);
    if (known === undefined) this.owned.set(of.sites, sites);
    return { ...of, sites };
  }

  copy(sites: readonly Site[]): readonly Site[] {
    const made = sites.map((site) => ({ ...site }));
    this.owned.set(made, made);
    return made;
  }

  /** The hole in the middle of a ring, as the one place that it is. */
  ringOf(of: Fabric): readonly Site[] {
    if (of.sites[0]?.kind === 'ring') return of.sites;
    const known = this.rings.get(of.sites);
    if (known !== undefined) return known;
    const made = this.copy([RING_SITE]);
    this.rings.set(of.sites, made);
    return made;
  }

  worked(trace: RowTrace | null, number: number | null): void {
    if (trace !== null) this.rows.push({ trace, number, block: this.block });
  }
}

/** What a moment of a row being worked has to remember of its recording. */
export interface RecordedMoment {
  readonly passes: number;
  readonly loop: Into['loop'];
}

interface Said {
  readonly ref: StitchRef | null;
  readonly place: Into | null;
}

const NOTHING_SAID: Said = { ref: null, place: null };

/** The recording of one row; follows what is made, and what is taken back. */
export class Recording {
  readonly makings: Making[] = [];
  readonly travelled: Making[] = [];
  readonly passes: Passes[] = [];
  stood: Stood | null = null;
  otherSide: readonly Site[] | null = null;
  /** Loop that the row's words name for all that follows. */
  loop: Into['loop'] = null;
  private said = NOTHING_SAID;
  private legs: readonly Site[] = [];
  private chain: number | null = null;
  private given: { feet: readonly Site[]; parts: number | null } | null = null;

  moment(): RecordedMoment {
    return { passes: this.passes.length, loop: this.loop };
  }

  restore(to: RecordedMoment, made: number): void {
    this.makings.length = made;
    this.passes.length = to.passes;
    this.loop = to.loop;
    this.given = null;
  }

  /** The words that the next stitches are made by. */
  by(ref: StitchRef | null, place: Into | null): void {
    this.said = { ref, place };
  }

  /** Places that one stitch will be worked over, in order. */
  over(legs: readonly Site[], chain: number | null = null): void {
    this.legs = legs;
    this.chain = chain;
  }

  /** Where the next thing made stands, when it goes into no site by its index. */
  lean(feet: readonly Site[]): void {
    this.given = { feet, parts: null };
  }

  /** The `nth` of several made in one go, into the site `foot` (none: null). */
  push(foot: Site | null, gap: boolean, nth: number): void {
    const { ref, place } = this.said;
    const { given } = this;
    this.given = null;
    const over = this.legs;
    let feet: readonly Site[] = foot === null ? [] : [foot];
    if (given !== null) feet = given.feet;
    else if (foot !== null && over.length > 1 && over[over.length - 1] === foot) {
      feet = ref?.form === 'crossed' ? [over[nth % 2 === 0 ? 1 : 0]!] : legsOf(over, ref?.together ?? 1);
    }
    this.makings.push({
      feet,
      chain: foot === null ? null : this.chain,
      gap,
      below: place?.below ?? 0,
      form: ref?.form ?? 'plain',
      parts: given?.parts ?? ref?.parts ?? null,
      loop: place?.loop ?? this.loop,
    });
  }

  /** Chains, a picot, a turning chain: what no words of a stitch make. */
  bare(foot: Site | null): void {
    this.given = null;
    this.makings.push({
      feet: foot === null ? [] : [foot],
      chain: null,
      gap: false,
      below: 0,
      form: null,
      parts: null,
      loop: null,
    });
  }

  /** What has been made since `start` is one stitch: its legs are the stitches that it was built of. */
  collapse(start: number): void {
    const built = this.makings.slice(start).filter((making) => making.form !== null);
    const feet = [...new Set(built.flatMap((making) => making.feet))];
    this.makings.length = start;
    this.given = { feet, parts: built.length > 0 ? built.length : null };
  }

  /** What was made so far only brought the hook to the row's beginning. */
  travel(): void {
    this.travelled.push(...this.makings.filter((making) => making.form !== null));
    this.makings.length = 0;
    this.given = null;
  }
}

/** The legs of a stitch that takes fewer than the places it spans: the outermost, and between them evenly. */
function legsOf(over: readonly Site[], together: number): readonly Site[] {
  if (together < 2 || over.length <= together) return over;
  return Array.from(
    { length: together },
    (_, leg) => over[Math.round((leg * (over.length - 1)) / (together - 1))]!,
  );
}
