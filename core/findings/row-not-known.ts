/** A row that is referred to does not exist. Sentences only; `core/fabric` notices it. */
import type { FindingKind } from './kind.ts';
import { number, perSize } from './phrases.ts';

export const rowNotKnown: FindingKind = {
  code: 'row-not-known',
  severity: 'error',
  title: 'A row that is referred to does not exist',
  reason: 'A repeat of a row that the piece does not have cannot be followed.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) =>
      data.last === true
        ? `the last ${number(data, 'number')} rows are asked for, but only ${number(data, 'rows')} ${number(data, 'rows') === 1 ? 'has' : 'have'} been worked`
        : `there is no Row ${number(data, 'number')} before this; the last one is ${number(data, 'rows')}`,
    ),
  example: `Ch 11.
Row 1: Sc in 2nd ch from hook and in each ch across.
Row 2: Rep Row 9.`,
};
