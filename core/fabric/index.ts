export { beginsAfresh } from './beginning.ts';
export {
  APART,
  MOST_ROWS,
  type PieceRecord,
  type RowResult,
  type RowWatcher,
  type RowWorker,
  type SeenRow,
  type Settling,
  type Standing,
  type Written,
} from './course.ts';
export { amountOf, type Env, type Figures, PLAIN_ENV, sameEarlier, sameParts } from './env.ts';
export {
  chainFabric,
  type Fabric,
  fabric,
  type Opening,
  plainFabric,
  ringFabric,
  sameFabric,
  type Tally,
  tally,
} from './fabric.ts';
export { GATHERED, stitchId } from './kinds.ts';
export { roundOpening } from './openings.ts';
export { PieceWork } from './piece.ts';
export { workRow } from './row.ts';
export { CHAIN_SITE, ROW_END_SITE, SEAM_SITE, type Site, stitchSite } from './site.ts';
export { type Making, type Passes, type RowTrace, type Stood, type TracedRow, Tracer } from './trace.ts';
export { worksTurningChain } from './turning.ts';
export { parted, rowsNamed } from './whole-rows.ts';
export { type Worked, workedAgain } from './worked.ts';
