/**
 * How much yarn and how many movements of the hook one stitch takes beside another: proportions alone, in units of
 * the data they come from. What a maker's hand really uses is calibrated elsewhere; no amount for a pattern may
 * be read from here.
 */
import data from '../../resources/trade/stitch-geometry.json' with { type: 'json' };
import { type BaseStitch, baseOf, LADDER } from './stitches.ts';

/** Kinds that yarn is counted by: "chain", a stitch id ("t3", "tog2.t1", "fp.t3"), or a gathered stitch with its legs ("cluster/3.t3"). */
export type YarnKind = string;

const { perInchOfRow, foundationPerInch } = data.yarnUse;
const measured: Readonly<Record<string, number>> = perInchOfRow;

/** A chain: what a foundation single crochet takes beyond a plain one (derived from the two measured figures). */
const CHAIN = foundationPerInch['fnd.t1'] - perInchOfRow.t1;

/** What each step up the ladder adds: the mean of the two measured steps, t1 to t2 and t2 to t3 (derived). */
const STEP = (perInchOfRow.t3 - perInchOfRow.t1) / 2;

/**
 * Plain stitches: t1, t2 and t3 as one maker measured them (inches of yarn an inch of row, worsted, 5 mm hook;
 * `yarnUse` in the stitch-geometry data, published-secondary); the others carried on by the step (derived).
 */
function plainLength(base: BaseStitch): number {
  return measured[base] ?? perInchOfRow.t1 + STEP * (LADDER.indexOf(base) - 1);
}

/**
 * Movements of the hook (yarn over, insert, draw up, draw through) of a plain stitch, counted from how it is
 * worked: a single crochet inserts, draws up a loop, draws through two. Common practice, no source.
 */
const MOVES: Readonly<Record<BaseStitch, number>> = {
  slip: 2,
  t1: 3,
  t2: 4,
  t3: 5,
  t4: 7,
  t5: 9,
  t6: 11,
  t7: 13,
};

/** Legs that a gathered stitch has where its words do not say. Common practice, no source. */
export const USUAL_LEGS: Readonly<Record<string, number>> = { cluster: 3, puff: 3, bobble: 5, popcorn: 5 };

/** What one stitch is made of: legs of a base, closed together, and chains beside. */
interface Build {
  readonly base: BaseStitch;
  readonly legs: number;
  readonly chains: number;
}

const builds = new Map<YarnKind, Build | null>();
/** Kinds remembered; past it the memory starts afresh. */
const KEPT = 2000;

function buildOf(kind: YarnKind): Build | null {
  const known = builds.get(kind);
  if (known !== undefined) return known;
  const base = baseOf(kind);
  const head = kind.slice(0, Math.max(0, kind.lastIndexOf('.')));
  const legs = Number(/(?:tog|\/)(\d{1,3})/u.exec(head)?.[1] ?? USUAL_LEGS[head] ?? 1);
  // An extended or a foundation stitch has a chain at its foot; a popcorn is closed by one.
  const chains = /^(?:ext|fnd|popcorn|spike)/u.test(head) ? 1 : 0;
  const made = base === null ? null : { base, legs: Math.max(1, legs), chains };
  if (builds.size > KEPT) builds.clear();
  builds.set(kind, made);
  return made;
}

/**
 * Yarn of a stitch in proportion to others (inches in the measured data). Legs that are closed together share
 * their last loop, which is a chain's worth (derived). A kind that is not known is taken for a single crochet.
 */
export function lengthProportion(kind: YarnKind): number {
  if (kind === 'chain') return CHAIN;
  const build = buildOf(kind);
  if (build === null) return plainLength('t1');
  const { base, legs, chains } = build;
  return legs * plainLength(base) - (legs - 1) * CHAIN + chains * CHAIN;
}

/** Movements of a stitch. Legs that are closed together share the last one. */
export function movesOf(kind: YarnKind): number {
  if (kind === 'chain') return 1;
  const build = buildOf(kind);
  if (build === null) return MOVES.t1;
  const { base, legs, chains } = build;
  return legs * MOVES[base] - (legs - 1) + chains;
}
