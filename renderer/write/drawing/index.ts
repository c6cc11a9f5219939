/** Which part of the document is drawn by what. A photograph is drawn by a plugin of its own; see `photos`. */
import type { Node } from 'prosemirror-model';
import type { EditorView, NodeViewConstructor } from 'prosemirror-view';
import type { Kind } from '../../../core/document/schema.ts';
import { ELSEWHERE } from '../../desk/places.ts';
import { writeWords } from '../../words/write.ts';
import { addTo } from '../commands/insert.ts';
import { RepeatView, ShapingView } from './blocks.ts';
import { FigureView } from './figure.ts';
import { BlocksView, PieceView } from './piece.ts';
import { HiddenView, SectionView, type SectionWords } from './sections.ts';
import { BetweenView, FieldView, RowView, SpecialView } from './texts.ts';
import type { DrawingParts, GetPos } from './view.ts';

const { parts: headings, fields, prompts, add } = writeWords;

const SECTIONS: Partial<Record<Kind, SectionWords>> = {
  cover: { heading: headings.cover, add: null },
  specials: { heading: headings.specials, add: add.specials },
  notes: { heading: headings.notes, add: add.notes },
  pieces: { heading: headings.pieces, add: add.pieces },
  finishing: { heading: headings.finishing, add: add.finishing },
  closing: { heading: headings.closing, add: null },
  cautions: { heading: null, add: add.cautions },
};

const FIELDS: Partial<Record<Kind, { readonly label: string; readonly prompt: string }>> = {
  description: { label: fields.description, prompt: prompts.description },
  construction: { label: fields.construction, prompt: prompts.construction },
  fit: { label: fields.fit, prompt: prompts.fit },
  care: { label: fields.care, prompt: prompts.care },
  copyright: { label: fields.copyright, prompt: prompts.copyright },
  contact: { label: fields.contact, prompt: prompts.contact },
  caution: { label: fields.caution, prompt: prompts.caution },
};

/** Titles and paragraphs stand in several parts: what they are called depends on where they are. */
function titleWords(editor: EditorView, getPos: GetPos) {
  const pos = getPos();
  const parent = pos === undefined ? '' : editor.state.doc.resolve(pos).parent.type.name;
  return parent === 'piece'
    ? { label: '', prompt: prompts.pieceTitle }
    : { label: fields.title, prompt: prompts.title };
}

function paragraphWords(editor: EditorView, getPos: GetPos) {
  const pos = getPos();
  const parent = pos === undefined ? '' : editor.state.doc.resolve(pos).parent.type.name;
  return { label: '', prompt: parent === 'notes' ? prompts.note : prompts.finishing };
}

/** The node views of the manuscript. */
export function drawings(parts: DrawingParts): Partial<Record<Kind, NodeViewConstructor>> {
  type Make = (node: Node, editor: EditorView, getPos: GetPos) => ReturnType<NodeViewConstructor>;
  const views: Partial<Record<Kind, Make>> = {
    title: (node, editor, getPos) => new FieldView(node, editor, getPos, parts, titleWords(editor, getPos)),
    paragraph: (node, editor, getPos) =>
      new FieldView(node, editor, getPos, parts, paragraphWords(editor, getPos)),
    special: (node, editor, getPos) => new SpecialView(node, editor, getPos, parts),
    piece: (node, editor, getPos) => new PieceView(node, editor, getPos, parts),
    blocks: (node, editor, getPos) => new BlocksView(node, editor, getPos, parts, addTo),
    row: (node, editor, getPos) => new RowView(node, editor, getPos, parts),
    repeat: (node, editor, getPos) => new RepeatView(node, editor, getPos, parts),
    shaping: (node, editor, getPos) => new ShapingView(node, editor, getPos, parts),
    prose: (node, editor, getPos) => new BetweenView(node, editor, getPos, parts),
    heading: (node, editor, getPos) => new BetweenView(node, editor, getPos, parts),
    figure: (node, editor, getPos) => new FigureView(node, editor, getPos, parts),
  };
  for (const kind of ELSEWHERE) {
    views[kind as Kind] = (node, editor, getPos) => new HiddenView(node, editor, getPos, parts);
  }
  for (const [kind, words] of Object.entries(SECTIONS)) {
    views[kind as Kind] = (node, editor, getPos) =>
      new SectionView(node, editor, getPos, parts, words, addTo);
  }
  for (const [kind, words] of Object.entries(FIELDS)) {
    views[kind as Kind] = (node, editor, getPos) => new FieldView(node, editor, getPos, parts, words);
  }
  return views as Partial<Record<Kind, NodeViewConstructor>>;
}
