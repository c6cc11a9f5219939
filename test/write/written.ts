/**
 * A manuscript in short: one line a text, "row Ch 1, turn.", with `[back stitches]` for a figure, `$0` for the
 * caret and `$1` for the other end of a selection; `<row …>` marks a block that is selected as a whole. States
 * are made from it and told back in it.
 */
import type { Node } from 'prosemirror-model';
import { type Command, EditorState, NodeSelection, type Plugin, TextSelection } from 'prosemirror-state';
import { compose } from '../../core/document/compose.ts';
import { schema } from '../../core/document/schema.ts';
import { blankPattern } from '../../core/outlines/blank.ts';
import { identity } from '../../renderer/desk/identity.ts';
import { listAt } from '../../renderer/desk/places.ts';

const { nodes } = schema;

let serial = 0;
function id(): string {
  serial += 1;
  return `t${serial}`;
}

function content(text: string): readonly Node[] {
  return text
    .split(/(\[[^\]]*\])/)
    .filter((part) => part !== '')
    .map((part) =>
      part.startsWith('[') ? nodes.figure.create({ expression: part.slice(1, -1) }) : schema.text(part),
    );
}

function block(line: string): Node {
  const [, kind, text] = /^(\w+) ?(.*)$/.exec(line)!;
  switch (kind) {
    case 'row':
    case 'round':
    case 'foundation':
      return nodes.row.create({ id: id(), form: kind }, [...content(text!)]);
    case 'repeat':
      return nodes.repeat.create({ id: id() });
    case 'shaping':
      return nodes.shaping.create(
        { id: id() },
        text!.split(' / ').map((row) => nodes.row.create({ id: id() }, [...content(row)])),
      );
    case 'prose':
      return nodes.prose.create({ id: id() }, [...content(text!)]);
    case 'heading':
      return nodes.heading.create({ id: id() }, [...content(text!)]);
    default:
      throw new Error(`There is no block ${kind}.`);
  }
}

/** Pieces by their blocks; notes before them. Each list of lines is one piece. */
export function document(pieces: readonly (readonly string[])[], notes: readonly string[] = []): Node {
  const blank = compose(blankPattern({ title: 'Test', terms: 'us', units: 'metric', date: '2026-01-01' }));
  const made = pieces.map((lines, at) =>
    nodes.piece.create({ id: id() }, [
      nodes.title.create(null, content(`Piece ${at + 1}`)),
      nodes.blocks.create(null, lines.map(block)),
    ]),
  );
  const parts = blank.children.map((child) => {
    if (child.type === nodes.pieces) return nodes.pieces.create(null, made);
    if (child.type !== nodes.notes) return child;
    return nodes.notes.create(
      null,
      notes.map((note) => nodes.paragraph.create(null, [...content(note)])),
    );
  });
  return nodes.doc.create(blank.attrs, parts);
}

/** Takes the marks of the selection out of a document. */
function selected(marked: Node, plugins: readonly Plugin[]): EditorState {
  const found = new Map<string, number>();
  let state = EditorState.create({ doc: marked, plugins: [...plugins] });
  for (const mark of ['$0', '$1']) {
    state.doc.descendants((node, pos) => {
      const at = node.isText ? node.text!.indexOf(mark) : -1;
      if (at >= 0) found.set(mark, pos + at);
      return !found.has(mark);
    });
    const pos = found.get(mark);
    if (pos === undefined) continue;
    const after = found.get('$0') !== undefined && mark === '$1' && found.get('$0')! > pos;
    if (after) found.set('$0', found.get('$0')! - 2);
    state = state.apply(state.tr.delete(pos, pos + 2).setMeta('form', true));
  }
  const anchor = found.get('$0') ?? 2;
  const head = found.get('$1') ?? anchor;
  return state.apply(state.tr.setSelection(TextSelection.create(state.doc, anchor, head)));
}

export function stateOf(
  pieces: readonly (readonly string[])[],
  notes: readonly string[] = [],
  plugins: readonly Plugin[] = [identity()],
): EditorState {
  return selected(document(pieces, notes), plugins);
}

function told(state: EditorState): Node {
  const { selection } = state;
  if (selection instanceof NodeSelection || !selection.$head.parent.isTextblock) return state.doc;
  const { anchor, head, empty } = selection;
  let { tr } = state;
  const put = (mark: string, pos: number) => {
    tr = tr.insert(pos, schema.text(mark));
  };
  if (empty) put('$0', anchor);
  else if (anchor < head) {
    put('$1', head);
    put('$0', anchor);
  } else {
    put('$0', anchor);
    put('$1', head);
  }
  return tr.doc;
}

function line(node: Node, state: EditorState): string {
  const words = (of: Node): string =>
    of.children.map((child) => (child.isText ? child.text! : `[${child.attrs.expression}]`)).join('');
  const kind = node.type.name === 'row' ? node.attrs.form : node.type.name;
  const text = node.type.name === 'shaping' ? node.children.map(words).join(' / ') : words(node);
  const whole = text === '' ? kind : `${kind} ${text}`;
  const isChosen = state.selection instanceof NodeSelection && state.selection.node === node;
  return isChosen ? `<${whole}>` : whole;
}

/** The pieces of a state, told in short. */
export function piecesOf(state: EditorState): readonly (readonly string[])[] {
  return listAt(told(state), 'pieces').node.children.map((piece) =>
    piece.child(1).children.map((node) => line(node, state)),
  );
}

export function notesOf(state: EditorState): readonly string[] {
  return listAt(told(state), 'notes').node.children.map((note) => note.textContent);
}

/** What a command makes of a state; the same state when it does not apply. */
export function run(state: EditorState, command: Command): EditorState {
  let next = state;
  command(state, (transaction) => {
    next = state.applyTransaction(transaction).state;
  });
  next.doc.check();
  return next;
}
