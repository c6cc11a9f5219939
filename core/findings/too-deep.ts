/** Repeats stand inside one another too deeply. Sentences only; `core/notation` notices it. */
import type { FindingKind } from './kind.ts';
import { number } from './phrases.ts';

export const tooDeep: FindingKind = {
  code: 'too-deep',
  severity: 'error',
  title: 'Repeats stand inside one another too deeply',
  reason: 'Nobody can follow brackets within brackets within brackets; the innermost part is not read.',
  message: ([first]) =>
    first!.fact.data.of === 'definitions'
      ? `definitions use one another here more than ${number(first!.fact.data, 'limit')} deep, so this is not worked; write it out`
      : `brackets and stars stand inside one another more than ${number(first!.fact.data, 'limit')} deep, so this part is not read; take the row apart`,
  example: null,
  sample: { limit: 20 },
};
