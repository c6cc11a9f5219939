/** A finished piece does not measure what the pattern says of its size. */
import { length, perSize, quoted } from '../../findings/phrases.ts';
import { type MeasuredPiece, measuredPieces } from '../../study/measured-pieces.ts';
import { formatLength, type Length } from '../../trade/units.ts';
import { foundIn, type Rule } from '../rule.ts';

const off = ({ taken, said }: MeasuredPiece): Length => taken.sub(said).abs();

function shown(key: string, value: Length): Record<string, string> {
  return { [key]: formatLength(value, 'metric'), [`${key}In`]: formatLength(value, 'imperial') };
}

export const testerMeasuredOff: Rule = {
  code: 'tester-measured-off',
  severity: 'warning',
  title: 'A finished piece does not measure what the pattern says',
  reason:
    'A piece that was really made is the proof of the numbers. Where it comes out otherwise, the gauge, the rows or the tester’s hand are not what the sizes were reckoned from.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const whose = data.tester === true ? 'a tester’s piece' : 'the sample';
      const way = data.less === true ? 'less' : 'more';
      return `${quoted(data, 'line')} of ${whose} measures ${length(data, 'taken')} where the pattern says ${length(data, 'said')}: ${length(data, 'off')} ${way}, where ${length(data, 'limit')} is allowed. Compare its gauge with the pattern’s, then the rows`;
    }),
  example: null,
  sample: {
    line: 'finished bust',
    taken: '96 cm',
    takenIn: '37¾ in',
    said: '100 cm',
    saidIn: '39¼ in',
    off: '4 cm',
    offIn: '1½ in',
    limit: '2 cm',
    limitIn: '¾ in',
    less: true,
    tester: true,
  },
  check: (study) => {
    const pieces = measuredPieces(study).filter((piece) => off(piece).compare(piece.allowed) > 0);
    if (pieces.length === 0) return [];
    return study.pattern.lines.flatMap((line) => {
      const sizes = study.pattern.sizes.map((_, size) => {
        const [worst] = pieces
          .filter((piece) => piece.line === line.id && piece.size === size)
          .sort((a, b) => off(b).compare(off(a)));
        if (worst === undefined) return null;
        return {
          line: line.name,
          ...shown('taken', worst.taken),
          ...shown('said', worst.said),
          ...shown('off', off(worst)),
          ...shown('limit', worst.allowed),
          less: worst.taken.compare(worst.said) < 0,
          tester: worst.making.kind === 'tester',
        };
      });
      return foundIn(testerMeasuredOff, study, { node: line.id, text: line.name }, sizes);
    });
  },
};
