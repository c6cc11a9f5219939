/** An edge to start from is not there. Sentences only; `core/study` notices it. */
import type { FindingKind } from './kind.ts';
import { edgeName } from './measures.ts';
import { perSize, quoted, text } from './phrases.ts';

export const edgeNotThere: FindingKind = {
  code: 'edge-not-there',
  severity: 'error',
  title: 'An edge to start from is not there',
  reason: 'A piece that starts from another needs that piece before it, worked far enough to have the edge.',
  message: (facts, voice) =>
    perSize(
      facts,
      voice,
      ({ data }) =>
        `${edgeName(text(data, 'kind'))} of ${quoted(data, 'piece')} is not there to start from; the piece must come before this one and have that edge`,
    ),
  example: null,
  sample: { piece: 'Yoke', kind: 'opening' },
};
