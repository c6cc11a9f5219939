/**
 * Every kind of finding that reading, working and grading have, by its code. A kind that is not in this list
 * cannot be reported; a test compares the list with the folder. Rules of the technical edit bring their own.
 */
import { askedNotLength } from './asked-not-length.ts';
import { bodyFigureMissing } from './body-figure-missing.ts';
import { bodyMeasureMissing } from './body-measure-missing.ts';
import { bodySizeMissing } from './body-size-missing.ts';
import { bracketNotClosed } from './bracket-not-closed.ts';
import { bracketNotOpened } from './bracket-not-opened.ts';
import { chainByMultiple } from './chain-by-multiple.ts';
import { countIsLength } from './count-is-length.ts';
import { countIsPercent } from './count-is-percent.ts';
import { countNegative } from './count-negative.ts';
import { countNotWhole } from './count-not-whole.ts';
import { definitionAssumed } from './definition-assumed.ts';
import { definitionInCircle } from './definition-in-circle.ts';
import { definitionInLoops } from './definition-in-loops.ts';
import { eachNotSaid } from './each-not-said.ts';
import { edgeChainUnclear } from './edge-chain-unclear.ts';
import { edgeNotThere } from './edge-not-there.ts';
import { edgeTooShort } from './edge-too-short.ts';
import { figureNotACount } from './figure-not-a-count.ts';
import { figureWaits } from './figure-waits.ts';
import { fitBelowSmallest } from './fit-below-smallest.ts';
import { fitCycleInvalid } from './fit-cycle-invalid.ts';
import { fitMultipleInvalid } from './fit-multiple-invalid.ts';
import { fitNotPositive } from './fit-not-positive.ts';
import { fitOff } from './fit-off.ts';
import { fitParityImpossible } from './fit-parity-impossible.ts';
import { fitTooMany } from './fit-too-many.ts';
import { formulaArea } from './formula-area.ts';
import { formulaBracketClose } from './formula-bracket-close.ts';
import { formulaBracketOpen } from './formula-bracket-open.ts';
import { formulaChoiceOfOne } from './formula-choice-of-one.ts';
import { formulaDividedByLength } from './formula-divided-by-length.ts';
import { formulaDividedByZero } from './formula-divided-by-zero.ts';
import { formulaEmpty } from './formula-empty.ts';
import { formulaMissingUnit } from './formula-missing-unit.ts';
import { formulaMixed } from './formula-mixed.ts';
import { formulaNoNumber } from './formula-no-number.ts';
import { formulaNotFitted } from './formula-not-fitted.ts';
import { formulaOperandMissing } from './formula-operand-missing.ts';
import { formulaOperatorMissing } from './formula-operator-missing.ts';
import { formulaRoundingUnread } from './formula-rounding-unread.ts';
import { formulaTooDeep } from './formula-too-deep.ts';
import { formulaTooLarge } from './formula-too-large.ts';
import { formulaTooLong } from './formula-too-long.ts';
import { formulaUnknownName } from './formula-unknown-name.ts';
import { formulaUnread } from './formula-unread.ts';
import { gapLeftOut } from './gap-left-out.ts';
import { gaugeIncomplete } from './gauge-incomplete.ts';
import { gaugeMissing } from './gauge-missing.ts';
import { gaugeNoStretch } from './gauge-no-stretch.ts';
import { heightNotGiven } from './height-not-given.ts';
import type { FindingKind } from './kind.ts';
import { labelNotExpected } from './label-not-expected.ts';
import { lengthNegative } from './length-negative.ts';
import { lineCircle } from './line-circle.ts';
import { lineMissingUnit } from './line-missing-unit.ts';
import { lineNameRepeated } from './line-name-repeated.ts';
import { lineNameUnusable } from './line-name-unusable.ts';
import { lineNotLength } from './line-not-length.ts';
import { lineValueMissing } from './line-value-missing.ts';
import { markNotFound } from './mark-not-found.ts';
import { namesNotFollowed } from './names-not-followed.ts';
import { nothingToWorkInto } from './nothing-to-work-into.ts';
import { numberNotGiven } from './number-not-given.ts';
import { numberTooLarge } from './number-too-large.ts';
import { otherTerms } from './other-terms.ts';
import { patternCountedEven } from './pattern-counted-even.ts';
import { pieceNotKnown } from './piece-not-known.ts';
import { placeDoesNotExist } from './place-does-not-exist.ts';
import { postRoundChain } from './post-round-chain.ts';
import { prosePassedOver } from './prose-passed-over.ts';
import { repeatBeyondTotal } from './repeat-beyond-total.ts';
import { repeatDoesNotFit } from './repeat-does-not-fit.ts';
import { repeatInAllAssumed } from './repeat-in-all-assumed.ts';
import { repeatNotClosed } from './repeat-not-closed.ts';
import { repeatNotOpened } from './repeat-not-opened.ts';
import { repeatOfNothing } from './repeat-of-nothing.ts';
import { repeatStartNotSaid } from './repeat-start-not-said.ts';
import { rowForUnknownSize } from './row-for-unknown-size.ts';
import { rowNotKnown } from './row-not-known.ts';
import { rowNumberOutOfOrder } from './row-number-out-of-order.ts';
import { rowWorksNothing } from './row-works-nothing.ts';
import { sameTakenAsNext } from './same-taken-as-next.ts';
import { sampleSizeMissing } from './sample-size-missing.ts';
import { shapingInvalid } from './shaping-invalid.ts';
import { shapingNotAsPlanned } from './shaping-not-as-planned.ts';
import { shapingTooMany } from './shaping-too-many.ts';
import { shapingUneven } from './shaping-uneven.ts';
import { shapingWithoutLine } from './shaping-without-line.ts';
import { sizeLabelEmpty } from './size-label-empty.ts';
import { sizeLabelsEqual } from './size-labels-equal.ts';
import { sizeValuesEqual } from './size-values-equal.ts';
import { sizeValuesOutOfOrder } from './size-values-out-of-order.ts';
import { sizesComeOutEqual } from './sizes-come-out-equal.ts';
import { sizesDifferInLength } from './sizes-differ-in-length.ts';
import { skipUnderChain } from './skip-under-chain.ts';
import { specialNotDefined } from './special-not-defined.ts';
import { spreadInvalid } from './spread-invalid.ts';
import { spreadTooMany } from './spread-too-many.ts';
import { statedCountWrong } from './stated-count-wrong.ts';
import { stitchAssumed } from './stitch-assumed.ts';
import { stitchesLeftUnworked } from './stitches-left-unworked.ts';
import { stitchesPassedOver } from './stitches-passed-over.ts';
import { termInDoubt } from './term-in-doubt.ts';
import { timesMissing } from './times-missing.ts';
import { togetherDiffers } from './together-differs.ts';
import { tooDeep } from './too-deep.ts';
import { tooManyRows } from './too-many-rows.ts';
import { tooManyStitches } from './too-many-stitches.ts';
import { turningChainAssumed } from './turning-chain-assumed.ts';
import { wordNotRead } from './word-not-read.ts';

export const CATALOGUE: readonly FindingKind[] = [
  askedNotLength,
  bodyFigureMissing,
  bodyMeasureMissing,
  bodySizeMissing,
  bracketNotClosed,
  bracketNotOpened,
  countIsLength,
  countIsPercent,
  countNegative,
  countNotWhole,
  definitionAssumed,
  definitionInCircle,
  definitionInLoops,
  eachNotSaid,
  edgeChainUnclear,
  edgeNotThere,
  edgeTooShort,
  figureNotACount,
  figureWaits,
  fitBelowSmallest,
  fitCycleInvalid,
  fitMultipleInvalid,
  fitNotPositive,
  fitOff,
  fitParityImpossible,
  fitTooMany,
  formulaArea,
  formulaBracketClose,
  formulaBracketOpen,
  formulaChoiceOfOne,
  formulaDividedByLength,
  formulaDividedByZero,
  formulaEmpty,
  formulaMissingUnit,
  formulaMixed,
  formulaNoNumber,
  formulaNotFitted,
  formulaOperandMissing,
  formulaOperatorMissing,
  formulaRoundingUnread,
  formulaTooDeep,
  formulaTooLarge,
  formulaTooLong,
  formulaUnknownName,
  formulaUnread,
  gapLeftOut,
  gaugeIncomplete,
  gaugeMissing,
  gaugeNoStretch,
  heightNotGiven,
  labelNotExpected,
  lengthNegative,
  lineCircle,
  lineMissingUnit,
  lineNameRepeated,
  lineNameUnusable,
  lineNotLength,
  lineValueMissing,
  markNotFound,
  nothingToWorkInto,
  numberNotGiven,
  numberTooLarge,
  otherTerms,
  patternCountedEven,
  pieceNotKnown,
  rowForUnknownSize,
  placeDoesNotExist,
  postRoundChain,
  prosePassedOver,
  repeatBeyondTotal,
  repeatDoesNotFit,
  repeatInAllAssumed,
  repeatNotClosed,
  repeatNotOpened,
  repeatOfNothing,
  repeatStartNotSaid,
  rowNotKnown,
  rowNumberOutOfOrder,
  rowWorksNothing,
  sameTakenAsNext,
  sampleSizeMissing,
  shapingInvalid,
  shapingNotAsPlanned,
  shapingTooMany,
  shapingUneven,
  shapingWithoutLine,
  sizeLabelEmpty,
  sizeLabelsEqual,
  sizeValuesEqual,
  sizeValuesOutOfOrder,
  sizesComeOutEqual,
  sizesDifferInLength,
  specialNotDefined,
  spreadInvalid,
  spreadTooMany,
  statedCountWrong,
  skipUnderChain,
  namesNotFollowed,
  chainByMultiple,
  stitchAssumed,
  stitchesLeftUnworked,
  stitchesPassedOver,
  termInDoubt,
  timesMissing,
  togetherDiffers,
  tooDeep,
  tooManyRows,
  tooManyStitches,
  turningChainAssumed,
  wordNotRead,
];

const byCode = new Map(CATALOGUE.map((kind) => [kind.code, kind]));

/** The kind of a code. A code that is not in the catalogue is a mistake of the program, not of the maker. */
export function kindOf(code: string): FindingKind {
  const kind = byCode.get(code);
  if (kind === undefined) throw new Error(`No finding is catalogued as ${code}`);
  return kind;
}
