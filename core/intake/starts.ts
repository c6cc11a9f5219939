/**
 * Pieces of an old pattern that begin on others: a first row that joins yarn to an edge, or goes on along one, has
 * nothing of its own to work into. Which edge it is, is tried: the one on which the rows come out as they say. What is
 * found so is told, for the maker to look at; where nothing comes out, the piece stays as it was.
 */
import type { Edge, Pattern, Piece } from '../document/pattern.ts';
import { type Study, study } from '../study/index.ts';
import type { DoubtShown } from './doubt.ts';
import { intakeWords } from './sentences.ts';

/** Pieces before it that a piece may begin on: the nearest, and those that its words name. */
const NEAREST = 2;
/** Pieces for which starts are tried, so that no text takes long. */
const MOST_TRIED = 12;

type Kind = 'top' | 'foundation' | 'row-ends';

/** What the first words of a piece say of the edge that it begins on. */
const SAYS: readonly (readonly [Kind, RegExp])[] = [
  [
    'row-ends',
    /\b(?:row[- ]ends?|ends? of (?:the )?rows?|side edges?|(?:along|down|up) (?:the |one )?(?:\w+ )?side)\b/iu,
  ],
  [
    'foundation',
    /\b(?:foundation|starting ch|beg(?:inning)? ch|(?:bottom|lower|opposite|cast[- ]on) (?:edge|side)|other side of)\b/iu,
  ],
  ['top', /\b(?:last (?:row|rnd|round)|top|upper edge|(?:next|first|each) (?:st|stitch)\b)/iu],
];

const KINDS: readonly Kind[] = ['top', 'foundation', 'row-ends'];

/** Words of a first row that join a yarn to work that is there. */
const JOINS = /^[^.;]{0,60}\b(?:join|rejoin|attach)(?:ing)?\b/iu;

/** Has a piece no beginning of its own? Its rows find nothing to work into, or join a yarn and do not come out. */
function hasNone(of: Study, piece: Piece): boolean {
  const first = piece.blocks.find(({ type }) => type === 'row');
  if (first?.type !== 'row') return false;
  const ids = new Set(piece.blocks.map(({ id }) => id));
  return of.findings.some(
    ({ code, severity, where }) =>
      (code === 'nothing-to-work-into' && ids.has(where.node ?? '')) ||
      (severity === 'error' && where.node === first.id && JOINS.test(first.text.text)),
  );
}

/** What is wrong in the rows of a piece; null where they do not come out at all. */
function faultsOf(of: Study, piece: Piece): number | null {
  const ids = new Set(piece.blocks.map(({ id }) => id));
  const own = of.findings.filter(({ severity, where }) => severity === 'error' && ids.has(where.node ?? ''));
  return own.some(({ code }) => code === 'nothing-to-work-into' || code === 'stated-count-wrong')
    ? null
    : own.length;
}

/** The words in which a piece begins: its first row, with what stands before it. */
function firstWords({ name, blocks }: Piece): string {
  const at = blocks.findIndex(({ type }) => type === 'row');
  const words = blocks.slice(0, at + 1).map((block) => {
    if (block.type === 'row' || block.type === 'prose') return block.text.text;
    return block.type === 'heading' ? block.text : '';
  });
  return [name, ...words].join(' ');
}

/** Edges that a piece may begin on, the likeliest first. */
function candidates(piece: Piece, before: readonly Piece[]): readonly Edge[] {
  const words = firstWords(piece);
  const said = SAYS.filter(([, pattern]) => pattern.test(words)).map(([kind]) => kind);
  const kinds = [...said, ...KINDS.filter((kind) => !said.includes(kind))];
  const own = words.slice(piece.name.length).toLowerCase();
  const isNamed = ({ name }: Piece) => name.trim() !== '' && own.includes(name.trim().toLowerCase());
  const named = before.filter(isNamed);
  const near = before.slice(-NEAREST).reverse();
  const pieces = [...named, ...near.filter((other) => !named.includes(other))];
  return pieces.flatMap(({ id }) => kinds.map((kind): Edge => ({ piece: id, kind, amount: null, which: 1 })));
}

export interface Started {
  readonly pattern: Pattern;
  readonly doubts: readonly DoubtShown[];
}

/** The pattern with the starts of its pieces that were found. */
export function withStarts(pattern: Pattern): Started {
  if (pattern.pieces.length < 2) return { pattern, doubts: [] };
  let now = pattern;
  let known = study(now);
  const doubts: DoubtShown[] = [];
  let tried = 0;
  pattern.pieces.forEach((piece, index) => {
    if (index === 0 || tried >= MOST_TRIED || !hasNone(known, piece)) return;
    tried += 1;
    const round = piece.blocks.find(({ type }) => type === 'row');
    let best: { pattern: Pattern; study: Study; edge: Edge; faults: number } | null = null;
    for (const edge of candidates(piece, now.pieces.slice(0, index))) {
      const start: Piece['start'] = {
        kind: 'edges',
        edges: [edge],
        round: round?.type === 'row' && round.form === 'round',
      };
      const pieces = now.pieces.map((each, i) => (i === index ? { ...each, start } : each));
      const one = { ...now, pieces };
      const of = study(one, known);
      const faults = faultsOf(of, piece);
      if (faults !== null && (best === null || faults < best.faults))
        best = { pattern: one, study: of, edge, faults };
      if (best?.faults === 0) break;
    }
    if (best === null) return;
    now = best.pattern;
    known = best.study;
    const other = now.pieces.find(({ id }) => id === best.edge.piece)?.name ?? '';
    doubts.push({
      node: piece.id,
      why: intakeWords.startTried(best.edge.kind as Kind, other),
      where: piece.name,
      words: '',
    });
  });
  return { pattern: now, doubts };
}
