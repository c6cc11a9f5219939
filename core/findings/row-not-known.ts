/** A row that is referred to does not exist. Sentences only; `core/fabric` notices it. */
import type { FindingKind } from './kind.ts';
import { number, perSize } from './phrases.ts';

export const rowNotKnown: FindingKind = {
  code: 'row-not-known',
  severity: 'error',
  title: 'A row that is referred to does not exist',
  reason: 'A repeat of a row that the piece does not have cannot be followed.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const [wanted, rows] = [number(data, 'number'), number(data, 'rows')];
      if (data.last === true)
        return `the last ${wanted} rows are asked for, but ${rows === 0 ? 'none has' : rows === 1 ? 'only 1 has' : `only ${rows} have`} been worked`;
      return `there is no Row ${wanted} to go by${rows === 0 ? '; no row comes before this' : `; the last one before this is Row ${rows}`}`;
    }),
  example: `Ch 11.
Row 1: Sc in 2nd ch from hook and in each ch across.
Row 2: Rep Row 9.`,
};
