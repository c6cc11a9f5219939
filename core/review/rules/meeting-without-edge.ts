/** An edge that is to be joined is not there, or is shorter than the part of it that is asked for. */
import type { Edge } from '../../document/pattern.ts';
import { edgeName } from '../../findings/measures.ts';
import { number, perSize, quoted, text } from '../../findings/phrases.ts';
import { type EdgeInSize, meetingsOf, pieceOf } from '../meetings.ts';
import { foundIn, type Rule } from '../rule.ts';

export const meetingWithoutEdge: Rule = {
  code: 'meeting-without-edge',
  severity: 'error',
  title: 'An edge to be joined is not there',
  reason: 'A seam needs both its edges, as long as the pattern says.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const edge = `${edgeName(text(data, 'kind'))} of ${quoted(data, 'piece')}`;
      if (data.have === null)
        return `${edge} is to be joined, but the piece does not have it; choose another edge`;
      const [wanted, have] = [number(data, 'wanted'), number(data, 'have')];
      return `${wanted} of ${edge} are to be joined, but it has ${have}, ${wanted - have} fewer`;
    }),
  example: null,
  sample: { piece: 'Front', kind: 'opening', wanted: null, have: null },
  check: (study) =>
    meetingsOf(study).flatMap(({ piece, mine, other, sizes }) => {
      const missing = (edge: Edge, of: (size: NonNullable<(typeof sizes)[number]>) => EdgeInSize | null) =>
        foundIn(
          meetingWithoutEdge,
          study,
          { node: piece.id, text: piece.name },
          sizes.map((size) => {
            if (size === null) return null;
            const found = of(size);
            if (found !== null && (found.wanted === null || found.wanted <= found.have)) return null;
            const name = pieceOf(study, edge);
            return { piece: name, kind: edge.kind, wanted: found?.wanted ?? null, have: found?.have ?? null };
          }),
        );
      return [...missing(mine, (size) => size.mine), ...missing(other, (size) => size.other)];
    }),
};
