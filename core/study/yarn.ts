/**
 * The yarn of every size, reckoned from what was really made: the sample, testers and weighed swatches calibrate how
 * much a hand takes for each kind of stitch, and each size's own stitches do the rest. Every amount comes with what
 * it rests on; where nothing was weighed there is no amount. It rounds nothing but whole balls, and words nothing.
 *
 * A length is what a stitch takes, so that yarns of one weight share a hand; a yarn whose ball does not say its
 * length is reckoned in grams, alone.
 */
import type { Yarn } from '../document/pattern.ts';
import type { Making, Use } from '../document/workbook.ts';
import { lengthProportion, type YarnKind } from '../trade/stitch-use.ts';
import { type BaseStitch, LADDER, turningChain } from '../trade/stitches.ts';
import { type Hand, handOf, type Observation } from './hand.ts';
import type { Study } from './study.ts';
import { type Counts, countsFor, sumOf, type UseDoubt, usesOf } from './yarn-counts.ts';

export type YarnUnit = 'metres' | 'grams';

/** What an amount rests on. */
export interface Basis {
  readonly unit: YarnUnit;
  /** The makings behind it, in the workbook's order. */
  readonly makings: readonly Making[];
  /** Typical part by which they are off what is fitted to them; null for a single figure. */
  readonly spread: number | null;
  /** Typical part by which one is off what the others say of it; null for a single figure. */
  readonly heldBack: number | null;
}

export interface YarnInSize {
  /** Null where the ball does not say its length. */
  readonly metres: number | null;
  /** Null where the ball does not say its weight. */
  readonly grams: number | null;
  /** The same with the maker's margin. */
  readonly withMargin: { readonly metres: number | null; readonly grams: number | null };
  /** Whole balls for the amount with its margin. */
  readonly balls: number | null;
}

export interface YarnEstimate {
  readonly yarn: Yarn;
  readonly basis: Basis | null;
  /** One a size; null without a basis, or where its rows cannot be followed. */
  readonly sizes: readonly (YarnInSize | null)[];
  /** Stitches that are worked with it in some size. */
  readonly worked: boolean;
}

/** A making's figure beside what the other makings say of it. */
export interface Compared {
  readonly making: Making;
  /** Index of the yarn; null = all of them. */
  readonly yarn: number | null;
  readonly piece: string;
  readonly unit: YarnUnit;
  readonly amount: number;
  /** Part by which it is off what the others say; null where there are no others. */
  readonly off: number | null;
  /** Typical part by which the others are off among themselves; null where that is not known. */
  readonly others: number | null;
}

export interface YarnReport {
  readonly yarns: readonly YarnEstimate[];
  readonly compared: readonly Compared[];
  readonly doubts: readonly UseDoubt[];
  /** The margin, in percent. */
  readonly margin: number;
}

/** Metres of a gram of a yarn; null where its ball does not say both. */
function metresPerGram({ ballGrams, ballMetres }: Yarn): number | null {
  return ballGrams !== null && ballMetres !== null && ballGrams > 0 && ballMetres > 0
    ? ballMetres / ballGrams
    : null;
}

/** Figures of a making that is far enough to have any. */
function isDone({ kind, state }: Making): boolean {
  return kind === 'swatch' || state === 'finished';
}

/** What a swatch is made of: its foundation, its rows, and the chains that turn it. */
export function swatchCounts({ swatch }: Making): Counts {
  const counts = new Map<YarnKind, number>();
  if (swatch === null) return counts;
  const { stitch, stitches, rows, chains } = swatch;
  const base = LADDER.includes(stitch as BaseStitch) ? (stitch as BaseStitch) : null;
  const turn = base === null ? null : turningChain(base);
  // A turning chain that counts stands for the first stitch of every row.
  const worked = turn?.counts === true ? Math.max(0, stitches - 1) : stitches;
  counts.set(stitch === '' ? 't1' : stitch, worked * rows);
  // The first row's turning chain is the foundation's own.
  counts.set('chain', (counts.get('chain') ?? 0) + chains + (turn?.chains ?? 0) * Math.max(0, rows - 1));
  return counts;
}

interface Seen {
  readonly making: Making;
  readonly yarn: number | null;
  readonly piece: string;
  readonly counts: Counts;
  readonly metres: number | null;
  readonly grams: number | null;
}

/** The figures of a making, none of them twice: what is told for the whole is what its told pieces leave. */
function figuresOf(study: Study, making: Making): readonly Seen[] {
  const { pattern } = study;
  if (!isDone(making)) return [];
  const size = pattern.sizes.findIndex(({ id }) => id === making.size);
  const yarnOf = ({ yarn }: Use): number | null | undefined => {
    if (yarn !== '') {
      const at = pattern.yarns.findIndex(({ id }) => id === yarn);
      return at < 0 ? undefined : at;
    }
    return pattern.yarns.length < 2 ? 0 : null;
  };
  if (making.kind === 'swatch') {
    const counts = swatchCounts(making);
    return making.used.flatMap((use) => {
      const yarn = yarnOf(use);
      const { metres, grams } = use;
      return yarn === undefined ? [] : [{ making, yarn, piece: '', counts, metres, grams }];
    });
  }
  if (size < 0) return [];
  const seen: Seen[] = [];
  for (const use of making.used) {
    const yarn = yarnOf(use);
    if (yarn === undefined || (use.metres === null && use.grams === null)) continue;
    if (use.piece !== '') {
      const counts = countsFor(study, size, yarn, use.piece);
      const { piece, metres, grams } = use;
      if (counts !== null) seen.push({ making, yarn, piece, counts, metres, grams });
      continue;
    }
    const told = new Map(
      making.used.flatMap((other) =>
        other.piece !== '' && yarnOf(other) === yarn ? [[other.piece, other] as const] : [],
      ),
    );
    const rest = study.pieces.filter(({ piece }) => !told.has(piece.id));
    const parts = rest.map(({ piece }) => countsFor(study, size, yarn, piece.id));
    const less = (key: 'metres' | 'grams'): number | null => {
      const whole = use[key];
      if (whole === null) return null;
      let left = whole;
      for (const other of told.values()) {
        const own = other[key];
        if (own === null) return null;
        left -= own;
      }
      return left;
    };
    const [metres, grams] = [less('metres'), less('grams')];
    if (parts.some((part) => part === null)) continue;
    const counts = sumOf(parts.filter((part) => part !== null));
    seen.push({ making, yarn, piece: '', counts, metres, grams });
  }
  return seen;
}

/** Where a yarn's length is known, the yarns that share its hand: all of its weight; else it stands alone. */
const groupOf = (yarn: Yarn): string => (yarn.weight === null ? yarn.id : `weight ${yarn.weight}`);

/** A hand for every yarn that something was made with. */
export interface Calibration {
  /** One a yarn of the pattern; null where nothing tells of it. */
  readonly hands: readonly ({ readonly hand: Hand; readonly basis: Basis } | null)[];
  readonly compared: readonly Compared[];
}

const calibrations = new WeakMap<Study, Calibration>();

/** What the makings tell of the hand and its yarns. The same study gives the same object. */
export function calibrate(study: Study): Calibration {
  const before = calibrations.get(study);
  if (before !== undefined) return before;
  const made = calibrated(study);
  calibrations.set(study, made);
  return made;
}

function calibrated(study: Study): Calibration {
  const { yarns, workbook } = study.pattern;
  const seen = workbook.makings.flatMap((making) => figuresOf(study, making));
  const compared: Compared[] = [];
  const settle = (own: readonly (Seen & { readonly amount: number })[], unit: YarnUnit) => {
    const observations = own.map(
      ({ making, counts, amount }): Observation => ({
        making: making.id,
        counts,
        amount,
      }),
    );
    const hand = handOf(observations, lengthProportion);
    if (hand === null) return null;
    const behind = new Set(hand.observations.map(({ making }) => making));
    const basis: Basis = {
      unit,
      makings: workbook.makings.filter(({ id }) => behind.has(id)),
      spread: hand.spread,
      heldBack: hand.heldBack,
    };
    observations.forEach((observation, i) => {
      const at = hand.observations.indexOf(observation);
      if (at < 0) return;
      const { making, yarn, piece, amount } = own[i]!;
      const off = hand.off[at]!;
      const rest = observations.filter((other) => other.making !== making.id);
      const others = handOf(rest, lengthProportion)?.spread ?? null;
      compared.push({ making, yarn, piece, unit, amount, off, others });
    });
    return { hand, basis };
  };
  const byGroup = new Map<string, ReturnType<typeof settle>>();
  const inMetres = (group: string) => {
    const known = byGroup.get(group);
    if (known !== undefined) return known;
    const own = seen.flatMap((one) => {
      // All yarns together count where they share one hand and one ball's figures.
      const own = one.yarn === null ? yarns : [yarns[one.yarn]].filter((yarn) => yarn !== undefined);
      if (own.length === 0 || own.some((yarn) => groupOf(yarn) !== group)) return [];
      const rates = new Set(own.map(metresPerGram));
      const [rate = null] = rates;
      const amount =
        one.metres ?? (one.grams !== null && rate !== null && rates.size === 1 ? one.grams * rate : null);
      return amount === null ? [] : [{ ...one, amount }];
    });
    const made = settle(own, 'metres');
    byGroup.set(group, made);
    return made;
  };
  const hands = yarns.map((yarn, index) => {
    const shared = inMetres(groupOf(yarn));
    if (shared !== null) return shared;
    if (metresPerGram(yarn) !== null) return null;
    const own = seen.flatMap((one) =>
      one.yarn === index && one.grams !== null ? [{ ...one, amount: one.grams }] : [],
    );
    return settle(own, 'grams');
  });
  return { hands, compared };
}

/** A hair's breadth below a whole ball is a whole ball: rounding of sums must not sell another. */
const HAIR = 1e-9;

function inSize(yarn: Yarn, hand: Hand, unit: YarnUnit, counts: Counts, margin: number): YarnInSize {
  const amount = hand.takes(counts);
  const rate = metresPerGram(yarn);
  const metres = unit === 'metres' ? amount : rate === null ? null : amount * rate;
  const grams = unit === 'grams' ? amount : rate === null ? null : amount / rate;
  const more = 1 + margin / 100;
  const withMargin = {
    metres: metres === null ? null : metres * more,
    grams: grams === null ? null : grams * more,
  };
  const { ballMetres, ballGrams } = yarn;
  const share =
    withMargin.metres !== null && ballMetres !== null && ballMetres > 0
      ? withMargin.metres / ballMetres
      : withMargin.grams !== null && ballGrams !== null && ballGrams > 0
        ? withMargin.grams / ballGrams
        : null;
  return { metres, grams, withMargin, balls: share === null ? null : Math.ceil(share - HAIR) };
}

/**
 * The yarn of every size of `study`, by what `calibration` tells: that of the same study, or of the pattern that a
 * piece made to measure comes from.
 */
export function estimateYarn(study: Study, calibration: Calibration): YarnReport {
  const { pattern } = study;
  const margin = pattern.workbook.yarnMargin;
  const uses = usesOf(study);
  const yarns = pattern.yarns.map((yarn, index): YarnEstimate => {
    const known = calibration.hands[index] ?? null;
    const counts = pattern.sizes.map((_, size) => countsFor(study, size, index, null));
    return {
      yarn,
      basis: known?.basis ?? null,
      sizes: counts.map((own) =>
        known === null || own === null ? null : inSize(yarn, known.hand, known.basis.unit, own, margin),
      ),
      worked: counts.some((own) => own === null || own.size > 0),
    };
  });
  return { yarns, compared: calibration.compared, doubts: uses.flatMap((use) => use.doubts), margin };
}

const reports = new WeakMap<Study, YarnReport>();

/** The yarn of every size of a pattern, by its own makings. The same study gives the same report. */
export function yarnOf(study: Study): YarnReport {
  const before = reports.get(study);
  if (before !== undefined) return before;
  const made = estimateYarn(study, calibrate(study));
  reports.set(study, made);
  return made;
}
