/**
 * Where a pattern says what becomes of the yarn, and how its pieces hang together: cut or kept, going on or apart. It
 * reads words and rows; whether that is right is the rules' concern.
 */
import type { Pattern, Piece } from '../document/pattern.ts';
import type { RowTree } from '../notation/tree.ts';
import type { BlockStudy, PieceStudy, Study } from '../study/index.ts';
import { looking } from './scan.ts';

/** Words that say what becomes of the yarn, cut or not ("Do not fasten off."). Common practice, no source. */
const YARN =
  /\b(?:fasten(?:ed|ing)?[- ](?:it )?off|finish(?:ed|ing)?[- ]off|(?:end|break|cut) off|FO|(?:cut|break|snip) (?:off )?(?:the |all |both |each )?(?:yarns?|threads?|colou?rs?|[A-F])|(?:draw|pull|thread)\b[^.;]{0,40}\bthrough (?:the )?(?:last|rem\w*|final|all|loop|top|front|tops)|invisible (?:join|finish)|(?:cut|break) and fasten|fasten (?:the )?(?:yarn|thread)|keep (?:the )?yarn|slip the (?:last )?loop)\b/iu;

const yarnTold = looking((text) => {
  const match = YARN.exec(text);
  return match === null ? [] : [{ from: match.index, to: match.index + match[0].length }];
});

/** Nodes of the texts that say what becomes of the yarn. */
export function nodesOnYarn(pattern: Pattern): ReadonlySet<string> {
  return new Set(yarnTold(pattern).map(({ text }) => text.node));
}

/** Whether a row fastens off; its words need not be read for that. */
export const fastens = (tree: RowTree | null): boolean =>
  tree?.items.some(({ type }) => type === 'fasten-off') ?? false;

/** Items before the work of a row: where it stands and which side faces. */
const BEFORE = new Set(['aside', 'side', 'turn', 'skip', 'marker', 'mark', 'loops', 'along', 'colour']);

/** The words with which a row joins a yarn before it works anything; null where it goes on with the yarn it has. */
export function joinsYarn(tree: RowTree | null): { readonly from: number; readonly to: number } | null {
  if (tree === null) return null;
  for (const item of tree.items) {
    if (item.type === 'attach') return { from: item.from, to: item.to };
    if (!BEFORE.has(item.type)) return null;
  }
  return null;
}

/** Whether a block works rows in any size. */
export const works = ({ sizes }: BlockStudy): boolean => sizes.some((size) => size !== null && size.rows > 0);

/** Pieces that begin on edges of a piece, in the order of the pattern. */
export function goOnFrom({ pieces }: Study, id: string): readonly PieceStudy[] {
  return pieces.filter(
    ({ piece: { start } }) => start.kind === 'edges' && start.edges.some((edge) => edge.piece === id),
  );
}

/** Pieces that are made apart: each begins by itself, or is made more than once. */
export function madeApart({ pieces }: Pattern): readonly Piece[] {
  const own = pieces.filter(({ start, blocks }) => start.kind !== 'edges' && blocks.length > 0);
  return own.length > 1 || own.some(({ make }) => make > 1) ? own : [];
}
