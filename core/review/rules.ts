/**
 * Every rule of the technical edit, in the order in which an editor goes through a pattern: what is made and
 * with what, the words, the rows, the measurements, the seams, the cautions. A rule that is not in this list
 * is never run; a test compares it with the folder.
 */
import type { Rule } from './rule.ts';
import { abbreviationNotExplained } from './rules/abbreviation-not-explained.ts';
import { abbreviationNotUsed } from './rules/abbreviation-not-used.ts';
import { broughtInUnsure } from './rules/brought-in-unsure.ts';
import { cautionPrinted } from './rules/caution-printed.ts';
import { cordOnChildSize } from './rules/cord-on-child-size.ts';
import { countDrifts } from './rules/count-drifts.ts';
import { coverIncomplete } from './rules/cover-incomplete.ts';
import { finishedMeasurementOff } from './rules/finished-measurement-off.ts';
import { gaugeNotGiven } from './rules/gauge-not-given.ts';
import { hookNotGiven } from './rules/hook-not-given.ts';
import { meetingWithoutEdge } from './rules/meeting-without-edge.ts';
import { otherTermsInProse } from './rules/other-terms-in-prose.ts';
import { photoNotDescribed } from './rules/photo-not-described.ts';
import { pieceWithoutRows } from './rules/piece-without-rows.ts';
import { piecesDoNotMeet } from './rules/pieces-do-not-meet.ts';
import { rowWithoutWords } from './rules/row-without-words.ts';
import { smallPartOnChildSize } from './rules/small-part-on-child-size.ts';
import { specialNotUsed } from './rules/special-not-used.ts';
import { termInDoubt } from './rules/term-in-doubt.ts';
import { yarnAmountNotGiven } from './rules/yarn-amount-not-given.ts';
import { yarnNotGiven } from './rules/yarn-not-given.ts';

export const RULES: readonly Rule[] = [
  broughtInUnsure,
  coverIncomplete,
  gaugeNotGiven,
  hookNotGiven,
  yarnNotGiven,
  yarnAmountNotGiven,
  abbreviationNotExplained,
  abbreviationNotUsed,
  specialNotUsed,
  termInDoubt,
  otherTermsInProse,
  pieceWithoutRows,
  rowWithoutWords,
  photoNotDescribed,
  countDrifts,
  finishedMeasurementOff,
  piecesDoNotMeet,
  meetingWithoutEdge,
  cordOnChildSize,
  smallPartOnChildSize,
  cautionPrinted,
];
