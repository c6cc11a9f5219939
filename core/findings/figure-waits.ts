/** A figure waits for a line without a value. Sentences only; `core/study` notices it. */
import type { FindingKind } from './kind.ts';
import { listed, perSize, quote, quoted, words } from './phrases.ts';

export const figureWaits: FindingKind = {
  code: 'figure-waits',
  severity: 'error',
  title: 'A figure waits for a line without a value',
  reason:
    'A number in the text comes from the sizing sheet; while a line it needs has no value, no number can be printed.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const lines = words(data, 'lines').map(quote);
      return `the figure ${quoted(data, 'figure')} has no number yet, because ${listed(lines)} ${lines.length === 1 ? 'has' : 'have'} none; see the findings at ${lines.length === 1 ? 'that line' : 'those lines'} in the sizing sheet`;
    }),
  example: null,
  sample: { figure: 'back stitches − 2', lines: ['back stitches'] },
};
