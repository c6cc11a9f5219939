/**
 * How a piece that starts from others begins: which edges, in which order, how many stitches along each in every
 * size. The numbers are the study's; how the stitches are picked up is the author's to say.
 */
import type { Edge, Piece } from '../../document/pattern.ts';
import { evaluate } from '../../grading/index.ts';
import { edgeCount, edgeSites, type PieceStudy, sharedList } from '../../study/index.ts';
import { numbers, type Paragraph, paragraph, plain, type Run } from '../content.ts';
import type { Reader } from './reader.ts';

/** One stretch of edge as it is told; neighbouring stretches of the same sort are told together. */
interface Stretch {
  readonly where: string;
  /** Where two such stretches are together, when that is not the same. */
  readonly both?: string;
  readonly values: readonly (number | null)[];
  readonly noun: (many: boolean) => string;
}

/** The paragraph before the rows; null for a piece that makes its own foundation. */
export function startParagraph(study: PieceStudy, reader: Reader): Paragraph | null {
  const { start } = study.piece;
  if (start.kind !== 'edges' || start.edges.length === 0) return null;
  const only = start.edges.length === 1 ? start.edges[0] : undefined;
  if (only !== undefined && only.kind === 'top' && only.amount === null) {
    // Its first row may pass some of the stitches by; how many it works is the row's to say.
    const other = reader.pattern.pieces.find((piece) => piece.id === only.piece);
    const name = other === undefined ? '' : pieceName(other, reader);
    return paragraph(`Worked ${start.round ? 'in rounds ' : ''}over the last ${lastOf(other)} of ${name}.`);
  }
  if (only !== undefined && only.kind === 'top' && !start.round) {
    // So many stitches are there; its first row says which of them it works.
    const other = reader.pattern.pieces.find((piece) => piece.id === only.piece);
    const name = other === undefined ? '' : pieceName(other, reader);
    return paragraph(`Worked over part of the last ${lastOf(other)} of ${name}.`);
  }
  const stretches = merged(start.edges.map((edge) => stretchOf(edge, study.piece.make > 1, reader)));
  const [single] = stretches;
  // The edges told are those of one: a second armband has the other shoulder's.
  const several = study.piece.make > 1 && stretches.length > 1;
  const runs: (Run | string)[] = [
    stretches.length === 1 && single !== undefined
      ? `Worked ${start.round ? 'in rounds ' : ''}on `
      : `Start ${several ? 'the first one ' : ''}from these edges, in this order${start.round ? ' all the way around' : ''}: `,
  ];
  stretches.forEach((stretch, i) => {
    if (i > 0) runs.push(i === stretches.length - 1 ? ' and ' : ', ');
    const one = stretch.values.every((value) => value === null || value === 1);
    runs.push(numbers(`${sharedList(stretch.values)}\u00A0${stretch.noun(!one)}`), stretch.where);
  });
  const total = reader.sizes.map((size) => study.starts[size] ?? null);
  if (stretches.length > 1) runs.push(': ', numbers(sharedList(total)), ' in all');
  runs.push(
    plain(
      several
        ? `. The other${study.piece.make > 2 ? 's start' : ' one starts'} from the edges that match these.`
        : '.',
    ),
  );
  return paragraph(runs);
}

function stretchOf(edge: Edge, many: boolean, reader: Reader): Stretch {
  const piece = reader.pattern.pieces.find((other) => other.id === edge.piece);
  const name = piece === undefined ? '' : pieceName(piece, reader);
  const values = reader.sizes.map((size) => amountIn(edge, reader, size));
  switch (edge.kind) {
    case 'top':
      return { where: ` along the last ${lastOf(piece)} of ${name}`, values, noun: sts };
    case 'foundation':
      return { where: ` along the other side of the foundation chain of ${name}`, values, noun: sts };
    case 'row-ends':
      return {
        where: ` along the side edge of ${name}`,
        both: ` along both side edges of ${name}`,
        values,
        noun: (many) => (many ? 'row-ends' : 'row-end'),
      };
    case 'opening':
      return {
        where: ` around ${many ? 'an' : `the ${ordinal(edge.which)}`} opening of ${name}`,
        values,
        noun: sts,
      };
    case 'seam':
      return { where: ' at the seam', values: values.map((value) => value ?? 1), noun: sts };
  }
}

const ordinal = (n: number): string => ['first', 'second', 'third', 'fourth'][n - 1] ?? `${n}th`;

const sts = (many: boolean): string => (many ? 'sts' : 'st');

function lastOf(piece: Piece | undefined): string {
  const row = piece?.blocks.findLast((block) => block.type === 'row');
  return row?.type === 'row' && row.form === 'round' ? 'round' : 'row';
}

/** A piece's name as it reads in a sentence. */
export function pieceName(piece: Piece, reader: Reader): string {
  return reader.say(piece.name.trim(), piece.id);
}

function amountIn(edge: Edge, reader: Reader, size: number): number | null {
  if (edge.kind === 'seam') return 1;
  if (edge.amount !== null) return evaluate(edge.amount, reader.study.sheet, size).count;
  const from = reader.study.pieces.find((other) => other.piece.id === edge.piece);
  if (from === undefined) return null;
  const sites = edgeSites(edge, () => ({
    name: from.piece.name,
    fabric: from.fabrics[size] ?? null,
    rows: from.rows[size] ?? 0,
    foundation: from.foundations[size] ?? 0,
    openings: from.openings[size] ?? [],
  }));
  return sites === null ? null : edgeCount(sites);
}

function merged(stretches: readonly Stretch[]): readonly Stretch[] {
  const out: Stretch[] = [];
  let before: Stretch | undefined;
  for (const stretch of stretches) {
    const last = out.at(-1);
    if (last === undefined || before?.where !== stretch.where) out.push(stretch);
    else {
      const values = last.values.map((value, i) => {
        const more = stretch.values[i] ?? null;
        return value === null || more === null ? null : value + more;
      });
      out[out.length - 1] = { ...last, where: stretch.both ?? stretch.where, values };
    }
    before = stretch;
  }
  return out;
}
