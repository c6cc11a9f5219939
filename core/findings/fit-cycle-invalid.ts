/** A repeat of rows makes no sense. Sentences only; `core/grading` notices it. */
import type { FindingKind } from './kind.ts';
import { count, number, plain, quoted } from './phrases.ts';

export const fitCycleInvalid: FindingKind = {
  code: 'fit-cycle-invalid',
  severity: 'error',
  title: 'A repeat of rows makes no sense',
  reason: '"Ending on row 2 of 2" needs a row that the repeat has.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    return `${quoted(data, 'line')} is to end on row ${plain(number(data, 'endOn'))} of ${plain(number(data, 'cycle'))} after ${count(number(data, 'before'), 'row')}; it must end on a row that the repeat has, and no number may be below 0`;
  },
  example: null,
  sample: { line: 'back rows', field: 'length', cycle: 2, endOn: 3, before: 1 },
};
