/**
 * Every rule of the technical edit, in the order in which an editor goes through a pattern: what is made and
 * with what, the words, the rows, the measurements, the seams, the cautions. A rule that is not in this list
 * is never run; a test compares it with the folder.
 */
import type { Rule } from './rule.ts';
import { abbreviationExplainedOtherwise } from './rules/abbreviation-explained-otherwise.ts';
import { abbreviationNotExplained } from './rules/abbreviation-not-explained.ts';
import { abbreviationNotUsed } from './rules/abbreviation-not-used.ts';
import { ballFiguresOff } from './rules/ball-figures-off.ts';
import { ballsInWordsOff } from './rules/balls-in-words-off.ts';
import { bracketsDiffer } from './rules/brackets-differ.ts';
import { broughtInUnsure } from './rules/brought-in-unsure.ts';
import { cautionPrinted } from './rules/caution-printed.ts';
import { chartWithoutRows } from './rules/chart-without-rows.ts';
import { copiesNotSaid } from './rules/copies-not-said.ts';
import { cordOnChildSize } from './rules/cord-on-child-size.ts';
import { countDrifts } from './rules/count-drifts.ts';
import { countInWordsOff } from './rules/count-in-words-off.ts';
import { coverIncomplete } from './rules/cover-incomplete.ts';
import { easeInWordsOff } from './rules/ease-in-words-off.ts';
import { editionNotStated } from './rules/edition-not-stated.ts';
import { endsInWordsOff } from './rules/ends-in-words-off.ts';
import { fibreNotWhole } from './rules/fibre-not-whole.ts';
import { finishedMeasurementOff } from './rules/finished-measurement-off.ts';
import { finishingNotGiven } from './rules/finishing-not-given.ts';
import { fitInWordsOff } from './rules/fit-in-words-off.ts';
import { gaugeInWordsDiffers } from './rules/gauge-in-words-differs.ts';
import { gaugeNotGiven } from './rules/gauge-not-given.ts';
import { gaugeWorkedOtherwise } from './rules/gauge-worked-otherwise.ts';
import { growthInWordsOff } from './rules/growth-in-words-off.ts';
import { hookNotGiven } from './rules/hook-not-given.ts';
import { hookNotListed } from './rules/hook-not-listed.ts';
import { hookNotUsed } from './rules/hook-not-used.ts';
import { hookSizeOff } from './rules/hook-size-off.ts';
import { joinNamesOtherStitch } from './rules/join-names-other-stitch.ts';
import { lastSideDiffers } from './rules/last-side-differs.ts';
import { leftoverText } from './rules/leftover-text.ts';
import { lengthInOneUnit } from './rules/length-in-one-unit.ts';
import { lengthInWordsOff } from './rules/length-in-words-off.ts';
import { lengthUntilOff } from './rules/length-until-off.ts';
import { linkNotPlain } from './rules/link-not-plain.ts';
import { makingNotUsed } from './rules/making-not-used.ts';
import { meetingWithoutEdge } from './rules/meeting-without-edge.ts';
import { multipleInWordsOff } from './rules/multiple-in-words-off.ts';
import { nameUsedTwice } from './rules/name-used-twice.ts';
import { notionAmountNotGiven } from './rules/notion-amount-not-given.ts';
import { notionAmountShort } from './rules/notion-amount-short.ts';
import { notionNotListed } from './rules/notion-not-listed.ts';
import { notionNotUsed } from './rules/notion-not-used.ts';
import { otherTermsInProse } from './rules/other-terms-in-prose.ts';
import { pageInWords } from './rules/page-in-words.ts';
import { photoNotDescribed } from './rules/photo-not-described.ts';
import { pieceInWordsNotThere } from './rules/piece-in-words-not-there.ts';
import { pieceNotPutTogether } from './rules/piece-not-put-together.ts';
import { pieceWithoutRows } from './rules/piece-without-rows.ts';
import { piecesDoNotMeet } from './rules/pieces-do-not-meet.ts';
import { piecesInWordsOff } from './rules/pieces-in-words-off.ts';
import { punctuationSlip } from './rules/punctuation-slip.ts';
import { repeatInSizeBrackets } from './rules/repeat-in-size-brackets.ts';
import { roundsContradicted } from './rules/rounds-contradicted.ts';
import { rowCountOutOfLine } from './rules/row-count-out-of-line.ts';
import { rowInWordsNotThere } from './rules/row-in-words-not-there.ts';
import { rowLeavesNothing } from './rules/row-leaves-nothing.ts';
import { rowWithoutWords } from './rules/row-without-words.ts';
import { rowsInWordsOff } from './rules/rows-in-words-off.ts';
import { rowsNotBegun } from './rules/rows-not-begun.ts';
import { sideOfWorkOff } from './rules/side-of-work-off.ts';
import { sizeAgesOutOfOrder } from './rules/size-ages-out-of-order.ts';
import { sizeListWrongLength } from './rules/size-list-wrong-length.ts';
import { sizeStepOutOfLine } from './rules/size-step-out-of-line.ts';
import { sizesInWordsOff } from './rules/sizes-in-words-off.ts';
import { sizesNotGiven } from './rules/sizes-not-given.ts';
import { smallPartOnChildSize } from './rules/small-part-on-child-size.ts';
import { specialNameMissing } from './rules/special-name-missing.ts';
import { specialNotUsed } from './rules/special-not-used.ts';
import { spellingOfOtherMarket } from './rules/spelling-of-other-market.ts';
import { spiralNotSaid } from './rules/spiral-not-said.ts';
import { sumInWordsOff } from './rules/sum-in-words-off.ts';
import { swatchInWordsOff } from './rules/swatch-in-words-off.ts';
import { termInDoubt } from './rules/term-in-doubt.ts';
import { termsSaidOtherwise } from './rules/terms-said-otherwise.ts';
import { testerMeasuredOff } from './rules/tester-measured-off.ts';
import { testerUsedOff } from './rules/tester-used-off.ts';
import { turningChainContradicted } from './rules/turning-chain-contradicted.ts';
import { turningChainPlacedTwoWays } from './rules/turning-chain-placed-two-ways.ts';
import { typedMeasurementOff } from './rules/typed-measurement-off.ts';
import { typedNumbersNearLine } from './rules/typed-numbers-near-line.ts';
import { typedNumbersOfLine } from './rules/typed-numbers-of-line.ts';
import { unitsDisagree } from './rules/units-disagree.ts';
import { wordRepeated } from './rules/word-repeated.ts';
import { wordingDiffers } from './rules/wording-differs.ts';
import { yarnAmountNotGiven } from './rules/yarn-amount-not-given.ts';
import { yarnAmountOff } from './rules/yarn-amount-off.ts';
import { yarnAmountOutOfLine } from './rules/yarn-amount-out-of-line.ts';
import { yarnFastenedOffEarly } from './rules/yarn-fastened-off-early.ts';
import { yarnNotFastenedOff } from './rules/yarn-not-fastened-off.ts';
import { yarnNotGiven } from './rules/yarn-not-given.ts';
import { yarnNotListed } from './rules/yarn-not-listed.ts';
import { yarnNotUsed } from './rules/yarn-not-used.ts';

export const RULES: readonly Rule[] = [
  broughtInUnsure,
  leftoverText,
  coverIncomplete,
  editionNotStated,
  gaugeNotGiven,
  gaugeInWordsDiffers,
  gaugeWorkedOtherwise,
  hookNotGiven,
  hookSizeOff,
  hookNotListed,
  hookNotUsed,
  yarnNotGiven,
  ballFiguresOff,
  fibreNotWhole,
  yarnAmountNotGiven,
  yarnAmountOutOfLine,
  yarnNotListed,
  yarnNotUsed,
  notionNotListed,
  notionNotUsed,
  notionAmountNotGiven,
  notionAmountShort,
  yarnAmountOff,
  ballsInWordsOff,
  testerUsedOff,
  makingNotUsed,
  abbreviationNotExplained,
  abbreviationNotUsed,
  abbreviationExplainedOtherwise,
  specialNotUsed,
  specialNameMissing,
  nameUsedTwice,
  termInDoubt,
  otherTermsInProse,
  spellingOfOtherMarket,
  termsSaidOtherwise,
  wordingDiffers,
  bracketsDiffer,
  repeatInSizeBrackets,
  wordRepeated,
  punctuationSlip,
  linkNotPlain,
  pageInWords,
  lengthInOneUnit,
  unitsDisagree,
  rowsNotBegun,
  sizesNotGiven,
  pieceWithoutRows,
  copiesNotSaid,
  piecesInWordsOff,
  rowWithoutWords,
  rowLeavesNothing,
  photoNotDescribed,
  chartWithoutRows,
  turningChainContradicted,
  turningChainPlacedTwoWays,
  roundsContradicted,
  spiralNotSaid,
  yarnNotFastenedOff,
  yarnFastenedOffEarly,
  sideOfWorkOff,
  joinNamesOtherStitch,
  lastSideDiffers,
  rowInWordsNotThere,
  countInWordsOff,
  multipleInWordsOff,
  swatchInWordsOff,
  sumInWordsOff,
  endsInWordsOff,
  growthInWordsOff,
  countDrifts,
  sizeListWrongLength,
  sizesInWordsOff,
  typedNumbersOfLine,
  typedNumbersNearLine,
  sizeStepOutOfLine,
  sizeAgesOutOfOrder,
  rowCountOutOfLine,
  lengthInWordsOff,
  rowsInWordsOff,
  lengthUntilOff,
  typedMeasurementOff,
  finishedMeasurementOff,
  fitInWordsOff,
  easeInWordsOff,
  testerMeasuredOff,
  piecesDoNotMeet,
  meetingWithoutEdge,
  pieceNotPutTogether,
  finishingNotGiven,
  pieceInWordsNotThere,
  cordOnChildSize,
  smallPartOnChildSize,
  cautionPrinted,
];
