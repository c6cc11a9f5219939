/**
 * Every kind of finding there is, by its code. A kind that is not in this list cannot be reported; a test
 * compares the list with the folder.
 */
import { definitionAssumed } from './definition-assumed.ts';
import { definitionInCircle } from './definition-in-circle.ts';
import { edgeChainUnclear } from './edge-chain-unclear.ts';
import type { FindingKind } from './kind.ts';
import { nothingToWorkInto } from './nothing-to-work-into.ts';
import { pieceNotKnown } from './piece-not-known.ts';
import { placeDoesNotExist } from './place-does-not-exist.ts';
import { repeatDoesNotFit } from './repeat-does-not-fit.ts';
import { rowNotKnown } from './row-not-known.ts';
import { rowNumberOutOfOrder } from './row-number-out-of-order.ts';
import { specialNotDefined } from './special-not-defined.ts';
import { statedCountWrong } from './stated-count-wrong.ts';
import { stitchesLeftUnworked } from './stitches-left-unworked.ts';
import { stitchesPassedOver } from './stitches-passed-over.ts';
import { tooManyRows } from './too-many-rows.ts';
import { tooManyStitches } from './too-many-stitches.ts';
import { turningChainAssumed } from './turning-chain-assumed.ts';

export const CATALOGUE: readonly FindingKind[] = [
  definitionAssumed,
  definitionInCircle,
  edgeChainUnclear,
  nothingToWorkInto,
  pieceNotKnown,
  placeDoesNotExist,
  repeatDoesNotFit,
  rowNotKnown,
  rowNumberOutOfOrder,
  specialNotDefined,
  statedCountWrong,
  stitchesLeftUnworked,
  stitchesPassedOver,
  tooManyRows,
  tooManyStitches,
  turningChainAssumed,
];

const byCode = new Map(CATALOGUE.map((kind) => [kind.code, kind]));

/** The kind of a code. A code that is not in the catalogue is a mistake of the program, not of the maker. */
export function kindOf(code: string): FindingKind {
  const kind = byCode.get(code);
  if (kind === undefined) throw new Error(`No finding is catalogued as ${code}`);
  return kind;
}
