/** An edge has fewer stitches than are asked of it. Sentences only; `core/study` notices it. */
import type { FindingKind } from './kind.ts';
import { edgeName } from './measures.ts';
import { number, perSize, quoted, text } from './phrases.ts';

export const edgeTooShort: FindingKind = {
  code: 'edge-too-short',
  severity: 'error',
  title: 'An edge has fewer stitches than are asked of it',
  reason: 'Stitches that are not there cannot be picked up.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const [wanted, have] = [number(data, 'wanted'), number(data, 'have')];
      return `${wanted} are to be worked along ${edgeName(text(data, 'kind'))} of ${quoted(data, 'piece')}, but it has ${have}, ${wanted - have} fewer; ask for ${have} or less`;
    }),
  example: null,
  sample: { piece: 'Back', kind: 'row-ends', wanted: 66, have: 60 },
};
