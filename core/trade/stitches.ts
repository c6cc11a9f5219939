/**
 * The stitches of the trade by an identity that no terminology changes: the ladder of heights (slip stitch,
 * t1 = US single crochet = UK double crochet, … t7). Names live in `terms`; nothing here reads text.
 */

/** Ladder of plain stitches. `t3` is US double crochet, UK treble. */
export type BaseStitch = 'slip' | 't1' | 't2' | 't3' | 't4' | 't5' | 't6' | 't7';

export const LADDER: readonly BaseStitch[] = ['slip', 't1', 't2', 't3', 't4', 't5', 't6', 't7'];

/** Which English a text is written in. */
export type Terms = 'us' | 'uk';

/** Height in chains, which is also the usual turning chain. Source: stitch-geometry data (published ladder). */
export function height(stitch: BaseStitch): number {
  return LADDER.indexOf(stitch);
}
