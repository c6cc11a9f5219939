/**
 * Puts what was read from a passage into the document as one edit: rows, repeats and paragraphs at the caret, new
 * pieces after it, special stitches and notes in their lists. Typed counts at the ends of rows are checked by
 * working the rows: one that agrees is taken out, because the count there is computed; one that does not stays in
 * the words, where it is a finding. What was done is told.
 */
import { closeHistory } from 'prosemirror-history';
import type { Node } from 'prosemirror-model';
import { type EditorState, TextSelection, type Transaction } from 'prosemirror-state';
import { blockNode } from '../../core/document/compose.ts';
import type { Pattern, Piece } from '../../core/document/pattern.ts';
import { project } from '../../core/document/project.ts';
import { schema } from '../../core/document/schema.ts';
import { tidyText } from '../../core/document/words.ts';
import {
  agrees,
  blocksOf,
  blockText,
  type MadeRepeat,
  type MadeRow,
  repeatAgrees,
  studyOf,
} from '../../core/intake/blocks.ts';
import type { PastedPiece, Written } from '../../core/intake/written.ts';
import { blockLabel } from '../../core/study/labels.ts';
import { study } from '../../core/study/study.ts';
import { freshId } from '../desk/identity.ts';
import { listAt, placeOf } from '../desk/places.ts';
import { itemAt, within } from '../write/commands/where.ts';

const { nodes } = schema;

/** What became of a passage. */
export interface PasteReport {
  readonly rows: number;
  readonly paragraphs: number;
  readonly pieces: number;
  readonly specials: number;
  readonly notes: number;
  /** Counts that agreed and were taken out. */
  readonly agreed: number;
  /** Counts that stay in the words: they do not agree, or the row cannot be worked yet. */
  readonly kept: number;
  /** Rows that were called otherwise than they are now. */
  readonly renumbered: readonly { readonly typed: number; readonly now: string }[];
}

const words = (text: string): readonly Node[] => {
  const tidy = blockText(text);
  return tidy === '' ? [] : [schema.text(tidy)];
};

/** Nothing is written in the piece yet. */
const isUnwritten = (piece: Node): boolean =>
  piece.child(1).children.every((block) => block.type.name === 'row' && block.childCount === 0);

const isUnwrittenRow = (node: Node): boolean => node.type.name === 'row' && node.childCount === 0;

function pieceOf(pasted: PastedPiece, blocks: readonly Node[]): Node {
  return nodes.piece.create({ id: freshId(), make: pasted.make }, [
    nodes.title.create(null, words(pasted.name ?? '')),
    nodes.blocks.create(null, [...blocks]),
  ]);
}

/** Puts blocks where the caret is in a list of blocks. Gives the position behind the last of them. */
function putBlocks(transaction: Transaction, blocks: readonly Node[]): number | null {
  const { $from } = transaction.selection;
  const item = itemAt($from);
  const piece = within($from, 'piece');
  if (blocks.length === 0) return null;
  if (item === null || item.parent.type.name !== 'blocks') {
    if (piece === null) return null;
    // The caret is in the piece's name: its first blocks.
    const at = piece.pos + 1 + piece.node.child(0).nodeSize + 1;
    transaction.insert(at, [...blocks]);
    return at + sizeOf(blocks);
  }
  const end = item.pos + item.node.nodeSize;
  if (isUnwrittenRow(item.node)) {
    transaction.replaceWith(item.pos, end, [...blocks]);
    return item.pos + sizeOf(blocks);
  }
  const isText = item.node.isTextblock;
  if (isText && $from.parentOffset === 0) {
    transaction.insert(item.pos, [...blocks]);
    return item.pos + sizeOf(blocks);
  }
  if (!isText || $from.parentOffset === item.node.content.size) {
    transaction.insert(end, [...blocks]);
    return end + sizeOf(blocks);
  }
  const rest = item.node.cut($from.parentOffset);
  const after = rest.type.create({ ...rest.attrs, id: freshId() }, rest.content);
  transaction.delete($from.pos, end - 1).insert($from.pos + 1, [...blocks, after]);
  return $from.pos + 1 + sizeOf(blocks);
}

const sizeOf = (list: readonly Node[]): number => list.reduce((sum, { nodeSize }) => sum + nodeSize, 0);

/**
 * The edit that pastes what was read, and what it comes to. Null when the caret stands where no rows can be.
 * A selection is replaced.
 */
export function pasteWritten(
  state: EditorState,
  written: Written,
): { readonly transaction: Transaction; readonly report: PasteReport } | null {
  if (within(state.selection.$from, 'piece') === null) return null;
  const pattern = project(state.doc);
  const made: MadeRow[] = [];
  const repeats: MadeRepeat[] = [];
  const sizeIds = (labels: readonly string[] | null) =>
    labels?.flatMap((label) => pattern.sizes.find((size) => size.label === label)?.id ?? []) ?? null;
  const transaction = closeHistory(state.tr);
  if (!state.selection.empty) transaction.deleteSelection();
  const pasted = written.pieces.map((piece) => {
    const own = blocksOf(piece, {
      freshId,
      sizeIds,
      rowsFormula: () => null,
      picture: () => null,
    });
    made.push(...own.made);
    repeats.push(...own.repeats);
    return { piece, blocks: own.blocks.map(blockNode) };
  });
  const unnamed = pasted[0]?.piece.name === null ? pasted[0] : undefined;
  const named = unnamed === undefined ? pasted : pasted.slice(1);
  let end: number | null = null;
  const here = within(transaction.selection.$from, 'piece')!;
  let added = named.length;
  if (unnamed === undefined && named[0] !== undefined && isUnwritten(here.node)) {
    // The first piece of a passage is written into the empty one.
    const title = here.node.child(0);
    const first = pieceOf(named[0].piece, named[0].blocks);
    const filled = here.node.type.create({ ...here.node.attrs, make: first.attrs.make }, first.content);
    transaction.replaceWith(here.pos, here.pos + here.node.nodeSize, filled);
    end = here.pos + filled.nodeSize;
    added -= title.childCount === 0 ? 1 : 0;
    named.shift();
  } else if (unnamed !== undefined) {
    end = putBlocks(transaction, unnamed.blocks);
  }
  const piece = within(transaction.doc.resolve(here.pos + 1), 'piece')!;
  let at = piece.pos + piece.node.nodeSize;
  for (const { piece: from, blocks } of named) {
    const node = pieceOf(from, blocks);
    transaction.insert(at, node);
    at += node.nodeSize;
    end = at;
  }
  if (end !== null) {
    const near = TextSelection.near(transaction.doc.resolve(Math.min(end, transaction.doc.content.size)), -1);
    transaction.setSelection(near);
  }
  const specials = addSpecials(transaction, written.specials, pattern);
  const notes = addNotes(transaction, written.notes, pattern);
  const checked = check(transaction, made, repeats);
  return {
    transaction: transaction.scrollIntoView(),
    report: {
      rows: made.length,
      paragraphs: written.pieces.flatMap(({ blocks }) => blocks).filter(({ kind }) => kind === 'prose')
        .length,
      pieces: added,
      specials,
      notes,
      ...checked,
    },
  };
}

function addSpecials(transaction: Transaction, specials: Written['specials'], pattern: Pattern): number {
  const known = new Set(
    pattern.specials.flatMap(({ nameUs, nameUk }) => [nameUs.toLowerCase(), nameUk.toLowerCase()]),
  );
  const fresh = specials.filter(({ name }) => !known.has(name.toLowerCase()));
  const list = listAt(transaction.doc, 'specials');
  transaction.insert(
    list.pos + list.node.nodeSize - 1,
    fresh.map(({ name, abbreviation, text }) =>
      nodes.special.create(
        {
          id: freshId(),
          nameUs: tidyText(name),
          nameUk: tidyText(name),
          abbrUs: tidyText(abbreviation),
          abbrUk: tidyText(abbreviation),
        },
        words(text),
      ),
    ),
  );
  return fresh.length;
}

function addNotes(transaction: Transaction, notes: readonly string[], pattern: Pattern): number {
  const known = new Set(pattern.notes.map(({ text }) => text));
  const fresh = notes.filter((note) => !known.has(note));
  const list = listAt(transaction.doc, 'notes');
  transaction.insert(
    list.pos + list.node.nodeSize - 1,
    fresh.map((note) => nodes.paragraph.create(null, words(note))),
  );
  return fresh.length;
}

/** Works the pasted rows and takes out the counts that agree. */
function check(
  transaction: Transaction,
  made: readonly MadeRow[],
  repeats: readonly MadeRepeat[],
): Pick<PasteReport, 'agreed' | 'kept' | 'renumbered'> {
  const pattern = project(transaction.doc);
  const ids = new Set([...made, ...repeats].map(({ id }) => id));
  const studied = study({ ...pattern, pieces: piecesToWork(pattern, ids) });
  let agreed = 0;
  let kept = 0;
  const renumbered: { typed: number; now: string }[] = [];
  for (const { id, row } of made) {
    const typed = row.number;
    const found = studyOf(studied, id);
    const first = found?.block.sizes.find((size) => size !== null)?.first ?? null;
    if (typed !== null && first !== null && first !== typed)
      renumbered.push({ typed, now: blockLabel(found!.piece, found!.block)?.text ?? '' });
    if (row.count === null) continue;
    if (!agrees(studied, id)) {
      kept += 1;
      continue;
    }
    const place = placeOf(transaction.doc, id);
    if (place === null) continue;
    agreed += 1;
    transaction.delete(place.pos + 1 + row.count.from, place.pos + 1 + row.count.to);
  }
  for (const repeat of repeats) {
    const place = placeOf(transaction.doc, repeat.id);
    if (place === null || repeatAgrees(studied, repeat)) {
      agreed += place === null ? 0 : 1;
      continue;
    }
    // A repeat has no words of its own: a count that stays stands in a paragraph behind it.
    kept += 1;
    const words = nodes.prose.create({ id: freshId() }, schema.text(repeat.words));
    transaction.insert(place.pos + place.node.nodeSize, words);
  }
  return { agreed, kept, renumbered };
}

/** The pieces that were pasted into, or all where a piece may ask others. */
function piecesToWork(pattern: Pattern, ids: ReadonlySet<string>): readonly Piece[] {
  const concerned = pattern.pieces.filter(({ blocks }) => blocks.some(({ id }) => ids.has(id)));
  const alone = concerned.every(
    ({ start, blocks }) =>
      start.kind === 'chain' &&
      blocks.every((block) => block.type !== 'row' || !/\b(?:as (?:for )?|of )\p{Lu}/u.test(block.text.text)),
  );
  return alone ? concerned : pattern.pieces;
}
