/**
 * Copy, cut, paste and drop in the manuscript. Between patterns of this program whole rows travel with their
 * figures; from anywhere else the words are read. It decides which flavour of a clipboard is taken; what becomes
 * of the words stands in `pasting`.
 */

import { closeHistory, isHistoryTransaction } from 'prosemirror-history';
import { type DOMOutputSpec, DOMSerializer, Fragment, type Node, Slice } from 'prosemirror-model';
import { type EditorState, NodeSelection, Plugin, PluginKey, TextSelection } from 'prosemirror-state';
import type { EditorView } from 'prosemirror-view';
import { checkTree } from '../../core/document/check.ts';
import { schema } from '../../core/document/schema.ts';
import { tidyText } from '../../core/document/words.ts';
import { type Passage, passageOfText } from '../../core/intake/passage.ts';
import { readPasted } from '../../core/intake/sections.ts';
import { cellsOfTabs, isTabbed, textOfTable } from '../../core/intake/table.ts';
import { normaliseName } from '../../core/notation/index.ts';
import { freshId } from '../desk/identity.ts';
import { isPicture, takeFiles } from '../photos/putting.ts';
import type { Studio } from '../shell/studio.ts';
import { clipboardWords } from '../words/clipboard.ts';
import { writeWords } from '../words/write.ts';
import { deleteSelected } from '../write/commands/lines.ts';
import { textAt, within } from '../write/commands/where.ts';
import { htmlText, linesOf, plainText } from './copying.ts';
import { isStructured, passageOfHtml } from './html.ts';
import { type PasteReport, pasteWritten } from './pasting.ts';

/** Flavour under which parts of a pattern travel between windows of this program. */
const OWN_TYPE = 'application/x-turnchain-part+json';

/** What the last paste came to, for the note over the manuscript. */
export interface PasteNote {
  readonly report: PasteReport;
  readonly leftOut: readonly string[];
}

export const pasteNotes = new PluginKey<PasteNote | null>('paste-note');

/** Text of a figure or a part when it is dragged out of the window. */
const serializer = new DOMSerializer(
  Object.fromEntries(Object.keys(schema.nodes).map((name) => [name, drawn])),
  {},
);

function drawn(node: Node): DOMOutputSpec {
  if (node.isText) return node.text as unknown as DOMOutputSpec;
  if (node.type.name === 'figure') return ['span', `[${node.attrs.expression}]`];
  return node.isLeaf ? ['div'] : [node.isTextblock ? 'p' : 'div', 0];
}

/** The passage that a clipboard or a drag carries, from the flavour that tells most; null when it has no words. */
export function passageIn(data: DataTransfer): Passage | null {
  const html = data.getData('text/html');
  const text = data.getData('text/plain');
  if (text !== '' && isTabbed(text) && (html === '' || /<table\b/i.test(html)))
    return { text: textOfTable(cellsOfTabs(text)), leftOut: [] };
  const passage = html !== '' && isStructured(html) ? passageOfHtml(html) : passageOfText(text);
  return passage.text.trim() === '' ? null : passage;
}

/** Names that the pattern gives its own stitches. */
function namesOf(studio: Studio): readonly string[] {
  const { pattern } = studio.view().desk!.view();
  return pattern.specials.flatMap((special) =>
    (pattern.terms === 'us' ? [special.nameUs, special.abbrUs] : [special.nameUk, special.abbrUk])
      .filter((name) => name.trim() !== '')
      .map(normaliseName),
  );
}

/** Pastes words as they are: in a text one line, in a list of paragraphs a paragraph for each. */
function pasteWords(view: EditorView, passage: Passage): boolean {
  const { state } = view;
  const lines = passage.text
    .split('\n')
    .map((line) => tidyText(line).trim())
    .filter((line) => line !== '');
  const at = textAt(state);
  if (at === null || lines.length === 0) return false;
  const { from, to } = state.selection;
  const isListed = at.node.type.name === 'paragraph' || at.node.type.name === 'caution';
  if (!isListed || lines.length === 1) {
    view.dispatch(closeHistory(state.tr).insertText(lines.join(' '), from, to).scrollIntoView());
    return true;
  }
  const [first = '', ...others] = lines;
  const transaction = closeHistory(state.tr).insertText(first, from, to);
  const end = transaction.mapping.map(at.pos + at.node.nodeSize);
  const items = others.map((line) => at.node.type.create(null, schema.text(line)));
  transaction.insert(end, items);
  const last = end + items.reduce((sum, { nodeSize }) => sum + nodeSize, 0) - 1;
  view.dispatch(transaction.setSelection(TextSelection.create(transaction.doc, last)).scrollIntoView());
  return true;
}

/** Whether a passage is but a few words within the row or paragraph at the caret. */
function isWithinText(state: EditorState, passage: Passage): boolean {
  const at = textAt(state);
  if (at === null || at.parent.type.name !== 'blocks') return true;
  return !passage.text.trim().includes('\n') && at.node.childCount > 0;
}

/** Pastes a passage at the selection. */
export function pastePassage(view: EditorView, studio: Studio, passage: Passage): boolean {
  const desk = studio.view().desk;
  if (desk === null) return false;
  const { pattern } = desk.view();
  const written = readPasted(passage.text, {
    terms: pattern.terms,
    names: namesOf(studio),
    sizes: pattern.sizes.map(({ label }) => label),
  });
  const [piece, ...others] = written.pieces;
  const [block] = piece?.blocks ?? [];
  const isLabelled = block?.kind === 'row' && block.number !== null;
  const isShort = others.length === 0 && piece?.name === null && piece.blocks.length === 1 && !isLabelled;
  if (isShort && isWithinText(view.state, passage)) return pasteWords(view, passage);
  if (!view.state.selection.empty && textAt(view.state) === null) {
    studio.tell(writeWords.acrossParts);
    return true;
  }
  const pasted = pasteWritten(view.state, written);
  if (pasted === null) return pasteWords(view, passage);
  const note: PasteNote = { report: pasted.report, leftOut: passage.leftOut };
  view.dispatch(pasted.transaction.setMeta(pasteNotes, note));
  studio.say(clipboardWords.told(pasted.report, passage.leftOut).join(' '));
  return true;
}

function copy(view: EditorView, event: ClipboardEvent, studio: Studio): boolean {
  const desk = studio.view().desk;
  const { selection } = view.state;
  if (desk === null || selection.empty || event.clipboardData === null) return false;
  const lines = linesOf(desk.view(), selection.from, selection.to);
  event.preventDefault();
  event.clipboardData.setData('text/plain', plainText(lines));
  event.clipboardData.setData('text/html', htmlText(lines));
  const slice = selection.content();
  const part = { terms: desk.view().pattern.terms, slice: slice.toJSON() };
  event.clipboardData.setData(OWN_TYPE, JSON.stringify(part));
  return true;
}

/** A part of a pattern from this program's own flavour; null when it is none, or not whole. */
function ownSlice(data: DataTransfer, studio: Studio): Slice | null {
  const json = data.getData(OWN_TYPE);
  const desk = studio.view().desk;
  if (json === '' || desk === null) return null;
  try {
    const { terms, slice } = JSON.parse(json);
    // Words of the other market come by the words, which are read again in this pattern's terms.
    if (terms !== desk.view().pattern.terms || slice === null) return null;
    return Slice.fromJSON(schema, slice);
  } catch {
    return null;
  }
}

/** Pastes parts of a pattern with their figures; false when they do not fit as they are. */
function pasteOwn(view: EditorView, slice: Slice, studio: Studio): boolean {
  const desk = studio.view().desk;
  const { state } = view;
  if (
    desk === null ||
    (!state.selection.empty && textAt(state) === null && !(state.selection instanceof NodeSelection))
  )
    return false;
  const { pictures } = desk.view();
  let fits = true;
  slice.content.descendants((node) => {
    if (node.type.name === 'photo' && !pictures.has(node.attrs.media.id)) fits = false;
  });
  if (!fits) return false;
  const transaction = closeHistory(state.tr);
  const inline = inlineOf(slice);
  if (inline !== null) {
    const { $from } = state.selection;
    const takes = inline.every((node) => $from.parent.type.contentMatch.matchType(node.type) !== null);
    if (!$from.parent.isTextblock || !takes) return false;
    transaction.replaceSelection(new Slice(Fragment.from([...inline]), 0, 0));
  } else {
    const blocks = blocksIn(slice);
    const item = within(state.selection.$from, 'blocks') === null ? null : textAt(state);
    if (blocks === null || item === null || item.parent.type.name !== 'blocks') return false;
    const end = item.pos + item.node.nodeSize;
    if (item.node.childCount === 0) transaction.replaceWith(item.pos, end, blocks);
    else transaction.insert(end, blocks);
  }
  // The flavour may be forged: what it would make of the document is judged as a file would be.
  if (!checkTree(transaction.doc.toJSON()).ok) return false;
  view.dispatch(transaction.scrollIntoView());
  return true;
}

/** A slice within one text, as what goes into a text; null when it holds whole blocks. */
function inlineOf(slice: Slice): readonly Node[] | null {
  let content = slice.content;
  while (content.childCount === 1 && !content.firstChild!.isInline && !content.firstChild!.isLeaf)
    content = content.firstChild!.content;
  return content.firstChild?.isInline ? nodesIn(content) : null;
}

/** The blocks in a slice, with ids of their own; null when it holds other parts. */
function blocksIn(slice: Slice): readonly Node[] | null {
  let content = slice.content;
  while (content.childCount === 1 && WRAPS_BLOCKS.has(content.firstChild!.type.name))
    content = content.firstChild!.content;
  const blocks = nodesIn(content);
  if (
    blocks.length === 0 ||
    blocks.some((node) => schema.nodes.blocks.contentMatch.matchType(node.type) === null)
  )
    return null;
  const fresh = new Map<string, string>();
  for (const block of blocks) {
    fresh.set(block.attrs.id, freshId());
    block.forEach((inner) => {
      if (typeof inner.attrs.id === 'string') fresh.set(inner.attrs.id, freshId());
    });
  }
  return blocks.map((block) => renamed(block, fresh));
}

function nodesIn(content: Fragment): readonly Node[] {
  return Array.from({ length: content.childCount }, (_, at) => content.child(at));
}

const WRAPS_BLOCKS = new Set(['pieces', 'piece', 'blocks']);

/** A block with fresh ids; what it says of blocks that came with it follows them. */
function renamed(node: Node, fresh: ReadonlyMap<string, string>): Node {
  const attrs = { ...node.attrs };
  for (const name of ['id', 'first', 'last']) {
    if (typeof attrs[name] === 'string') attrs[name] = fresh.get(attrs[name]) ?? attrs[name];
  }
  const content = node.isTextblock ? node.content : node.children.map((child) => renamed(child, fresh));
  return node.type.create(attrs, content);
}

function paste(view: EditorView, data: DataTransfer, studio: Studio): boolean {
  if (!view.editable) {
    studio.tell(clipboardWords.readOnly);
    return true;
  }
  // Letters carry renditions of their text as pictures: a picture is meant where there are no words.
  const pictures = [...data.files].filter(isPicture);
  if (pictures.length > 0 && data.getData('text/plain') === '') {
    void takeFiles(view, studio, pictures);
    return true;
  }
  const own = ownSlice(data, studio);
  if (own !== null && pasteOwn(view, own, studio)) return true;
  const passage = passageIn(data);
  return passage !== null && pastePassage(view, studio, passage);
}

/** Words and photographs dragged in from another program, put where they are let go. */
function drop(view: EditorView, event: DragEvent, studio: Studio): boolean {
  if (view.dragging !== null || event.dataTransfer === null) return false;
  const at = view.posAtCoords({ left: event.clientX, top: event.clientY });
  if (at === null) return false;
  event.preventDefault();
  const near = TextSelection.near(view.state.doc.resolve(at.pos));
  view.dispatch(view.state.tr.setSelection(near));
  paste(view, event.dataTransfer, studio);
  view.focus();
  return true;
}

/** Copy, cut, paste and drop for the manuscript. */
export function clipboard(studio: Studio): Plugin<PasteNote | null> {
  return new Plugin<PasteNote | null>({
    key: pasteNotes,
    state: {
      init: () => null,
      apply: (transaction, note) => {
        const told: PasteNote | null | undefined = transaction.getMeta(pasteNotes);
        if (told !== undefined) return told;
        // What was pasted may be gone again.
        return isHistoryTransaction(transaction) ? null : note;
      },
    },
    props: {
      clipboardSerializer: serializer,
      handleDOMEvents: {
        copy: (view, event) => copy(view, event, studio),
        cut: (view, event) => {
          if (!view.editable || !copy(view, event, studio)) return false;
          return deleteSelected(() => studio.tell(writeWords.acrossParts))(view.state, view.dispatch, view);
        },
        paste: (view, event) => {
          if (event.clipboardData === null || !paste(view, event.clipboardData, studio)) return false;
          event.preventDefault();
          return true;
        },
        drop: (view, event) => drop(view, event, studio),
      },
      // Within the manuscript, words move within texts, and a chosen block moves as a whole; nothing else does.
      handleDrop: (view, _, slice, moved) => {
        if (!moved || inlineOf(slice) !== null || view.state.selection instanceof NodeSelection) return false;
        studio.tell(writeWords.acrossParts);
        return true;
      },
    },
  });
}
