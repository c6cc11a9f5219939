/** A finished measurement that was typed, and that no row is fitted to, is not what the piece comes to. */
import { length, perSize, quoted } from '../../findings/phrases.ts';
import { formulasOf, namesLine } from '../../grading/index.ts';
import { gaugeOf, lengthOfCount, spansOf, stepsOf } from '../../study/gauge.ts';
import type { PieceStudy, Study } from '../../study/index.ts';
import { followedRows, isMeasured } from '../../study/taped.ts';
import { formatLength, type Length, toNumber } from '../../trade/units.ts';
import { toleranceFor } from '../asked.ts';
import { foundIn, type Rule } from '../rule.ts';

const HIGH = /\b(?:length|height|long|tall|depth|deep)\b/iu;
const WIDE = /\b(?:width|wide|circumference|around)\b/iu;

/** The piece that a heading speaks of: the one it names, or the only one. Null where other pieces are worked on to it. */
function pieceFor(study: Study, heading: string): PieceStudy | null {
  const low = heading.toLowerCase();
  const named = study.pieces.filter(({ piece }) => {
    const name = piece.name.trim().toLowerCase().replace(/s$/u, '');
    return name.length > 2 && low.includes(name);
  });
  const own = study.pieces.length === 1 ? study.pieces[0]! : named.length === 1 ? named[0]! : null;
  if (own === null || own.piece.start.kind === 'edges') return null;
  const goesOn = study.pieces.some(
    ({ piece: { start } }) =>
      start.kind === 'edges' && start.edges.some(({ piece }) => piece === own.piece.id),
  );
  return goesOn ? null : own;
}

/** What a piece comes to across or along in one size. */
function madeBy(study: Study, piece: PieceStudy, way: 'high' | 'wide', size: number): Length | null {
  const gauge = gaugeOf(piece, study.pattern, study.sheet);
  if (gauge === null) return null;
  const { stitch, row } = stepsOf(gauge);
  if (way === 'high') {
    if (row === null) return null;
    // Rows are followed one by one only where some go on to a length: this is asked at every pause of typing.
    const isTaped = piece.blocks.some(({ tree }) => tree !== null && isMeasured(tree.items));
    if (!isTaped) return lengthOfCount(piece.rows[size] ?? 0, row);
    const followed = followedRows(piece, size, toNumber(row));
    if (followed === null || followed.unreckoned !== null) return null;
    return lengthOfCount(followed.rows.filter(({ onlyFoundation }) => !onlyFoundation).length, row);
  }
  const widest = spansOf(piece).reduce(
    (most, spans, i) => (piece.blocks[i]!.sizes[size]?.rows ? Math.max(most, spans[size] ?? 0) : most),
    0,
  );
  return stitch === null || widest === 0 ? null : lengthOfCount(widest, stitch);
}

const shown = (key: string, value: Length) => ({
  [key]: formatLength(value, 'metric'),
  [`${key}In`]: formatLength(value, 'imperial'),
});

export const typedMeasurementOff: Rule = {
  code: 'typed-measurement-off',
  severity: 'warning',
  title: 'A finished measurement is not what its rows make',
  reason:
    'The table of finished measurements is a promise. A number that was typed, and that no row follows from, is only a hope.',
  message: (facts, voice) =>
    perSize(
      facts,
      voice,
      ({ data }) =>
        `${quoted(data, 'line')} is printed as ${length(data, 'told')}, but ${quoted(data, 'piece')} comes to ${length(data, 'made')} at the ${voice.gauge}; put the number right, or fit the rows to it`,
    ),
  example: null,
  sample: {
    line: 'scarf length',
    told: '150 cm',
    toldIn: '59 in',
    piece: 'Scarf',
    made: '140 cm',
    madeIn: '55 in',
  },
  check: (study) => {
    const { lines } = study.pattern;
    return lines.flatMap((line) => {
      const heading = line.printed ?? '';
      if (line.kind !== 'typed' || heading.trim() === '') return [];
      const way = HIGH.test(heading) ? 'high' : WIDE.test(heading) ? 'wide' : null;
      const piece = way === null ? null : pieceFor(study, heading);
      if (way === null || piece === null) return [];
      const isUsed = lines.some((other) =>
        formulasOf(other).some(({ text }) => namesLine(text, study.sheet.vocabulary, line.name)),
      );
      if (isUsed) return [];
      const result = study.sheet.lines.find((each) => each.line.id === line.id);
      const data = study.pattern.sizes.map((_, i) => {
        const told = result?.sizes[i]?.value;
        const made = madeBy(study, piece, way, i);
        if (told?.dimension !== 'length' || made === null) return null;
        return made.sub(told.value).abs().compare(toleranceFor(study, told.value)) <= 0
          ? null
          : {
              line: line.name,
              ...shown('told', told.value),
              piece: piece.piece.name,
              ...shown('made', made),
            };
      });
      return foundIn(typedMeasurementOff, study, { node: line.id, text: line.name }, data);
    });
  },
};
