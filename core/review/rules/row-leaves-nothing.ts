/** A row leaves no stitches at all, and the rows after it are worked on nothing. */
import { number, perSize } from '../../findings/phrases.ts';
import { foundIn, type Rule } from '../rule.ts';

export const rowLeavesNothing: Rule = {
  code: 'row-leaves-nothing',
  severity: 'error',
  title: 'A row leaves no stitches',
  reason:
    'Every stitch of the row below is passed over, so that there is nothing left to work on. The rows after it come out with any words, since nothing can be missing in a row of no stitches.',
  message: (facts, voice) =>
    perSize(
      facts,
      voice,
      ({ data }) =>
        `this leaves no stitches, although the row before it has ${number(data, 'below')}; put its numbers right`,
    ),
  example: null,
  sample: { below: 20 },
  check: (study) => {
    const wrong = new Set(
      study.findings.flatMap(({ severity, where }) => (severity === 'error' ? [where.node] : [])),
    );
    return study.pieces.flatMap((piece) => {
      const below: (number | null)[] = piece.starts.map((start) => start);
      return piece.blocks.flatMap(({ block, sizes }) => {
        const data = sizes.map((size, i) => {
          if (size === null) return null;
          const before = below[i] ?? 0;
          const { stitches, chains } = size.tally;
          below[i] = stitches + chains;
          return size.rows > 0 && stitches + chains === 0 && before > 0 ? { below: before } : null;
        });
        if (block.type !== 'row' || wrong.has(block.id)) return [];
        return foundIn(rowLeavesNothing, study, { node: block.id, text: block.text.text }, data);
      });
    });
  },
};
