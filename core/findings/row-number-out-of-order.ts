/** Row numbers do not follow one another. Sentences only; `core/fabric` notices it. */
import type { FindingKind } from './kind.ts';
import { number, perSize } from './phrases.ts';

export const rowNumberOutOfOrder: FindingKind = {
  code: 'row-number-out-of-order',
  severity: 'warning',
  title: 'Row numbers do not follow one another',
  reason: 'A missing or doubled row number makes the reader look for a row that is not there.',
  message: (facts, voice) =>
    perSize(
      facts,
      voice,
      ({ data }) =>
        `this is numbered ${number(data, 'number')}, but the next row would be ${number(data, 'expected')}`,
    ),
  example: `Ch 11.
Row 1: Sc in 2nd ch from hook and in each ch across.
Row 3: Ch 1, sc in each st across.`,
};
