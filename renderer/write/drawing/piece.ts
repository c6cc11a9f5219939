/** A piece as it is drawn: its title, a line that tells how it is made and opens its form, its blocks. */
import type { Node } from 'prosemirror-model';
import type { EditorView } from 'prosemirror-view';
import type { Piece } from '../../../core/document/pattern.ts';
import type { DeskView } from '../../desk/desk.ts';
import { blockWords } from '../../words/blocks.ts';
import { writeWords } from '../../words/write.ts';
import { nextForm } from '../commands/insert.ts';
import { aside, asideButton, element, setMark, setWords } from './element.ts';
import { type DrawingParts, DrawnNode, type GetPos } from './view.ts';

export class PieceView extends DrawnNode {
  readonly dom = element('div', 'piece');
  readonly contentDOM = this.dom;

  constructor(node: Node, editor: EditorView, getPos: GetPos, parts: DrawingParts) {
    super(node, editor, getPos, parts);
    this.begin();
  }

  protected override drawn(): void {
    setMark(this.dom, 'data-piece', this.node.attrs.id);
  }
}

/** The blocks of a piece, with the line about the piece above them. */
export class BlocksView extends DrawnNode {
  readonly dom = element('div', 'blocks');
  readonly contentDOM = element('div', 'section-body');
  readonly #head: HTMLButtonElement;
  readonly #addRow: HTMLButtonElement;
  readonly #addRepeat: HTMLButtonElement;
  #piece = '';
  readonly followsPieces = true;

  constructor(
    node: Node,
    editor: EditorView,
    getPos: GetPos,
    parts: DrawingParts,
    add: (editor: EditorView, pos: number, kind: 'row' | 'repeat') => void,
  ) {
    super(node, editor, getPos, parts);
    this.#head = asideButton('piece-head', '', () => {
      if (this.#piece !== '') parts.popups.open({ kind: 'piece', id: this.#piece });
    });
    this.#head.title = writeWords.changePiece;
    const button = (words: string, kind: 'row' | 'repeat') =>
      asideButton('add', words, () => {
        const pos = this.getPos();
        if (pos !== undefined) add(this.editor, pos, kind);
      });
    this.#addRow = button('', 'row');
    this.#addRepeat = button('', 'repeat');
    const adds = aside('div', 'adds');
    adds.append(this.#addRow, this.#addRepeat);
    this.dom.append(this.#head, this.contentDOM, adds);
    this.begin();
  }

  protected override drawn(): void {
    const rows = this.node.childCount;
    const form = nextForm(this.node, rows - 1);
    setWords(this.#addRow, writeWords.add.blocks(rows === 0, form));
    setWords(this.#addRepeat, writeWords.add.repeat(form));
    // There has to be a row that is repeated.
    setMark(this.#addRepeat, 'hidden', rows < 2 ? '' : null);
  }

  override refresh(view: DeskView): void {
    for (const add of [this.#addRow, this.#addRepeat]) add.disabled = !this.editor.editable;
    const pos = this.getPos();
    if (pos === undefined || pos > view.document.content.size) return;
    const parent = view.document.resolve(pos).parent;
    if (parent.type.name !== 'piece') return;
    this.#piece = parent.attrs.id;
    const piece = view.pattern.pieces.find(({ id }) => id === this.#piece);
    if (piece !== undefined) setWords(this.#head, headOf(piece, view));
  }
}

/** "Make two · starts with its first row · first row is the right side · meets Front". */
function headOf(piece: Piece, { pattern, report, reading }: DeskView): string {
  const nameOf = (id: string) => {
    const name = pattern.pieces.find((other) => other.id === id)?.name.trim() ?? '';
    return name === '' ? blockWords.unnamed : name;
  };
  const names = (ids: readonly string[]) => [...new Set(ids)].map(nameOf);
  const size = report.sizes.findIndex(({ id }) => id === reading.size);
  const stitches = report.pieces.find(({ id }) => id === piece.id)?.starts[size] ?? null;
  const { start } = piece;
  const parts = [
    blockWords.make(piece.make),
    start.kind === 'chain'
      ? blockWords.startsChain
      : blockWords.startsEdges(
          names(start.edges.flatMap(({ kind, piece: of }) => (kind === 'seam' || of === '' ? [] : [of]))),
          stitches === null ? null : String(stitches),
        ),
    blockWords.side(piece.firstSide),
    blockWords.meets(names(piece.meets.map(({ other }) => other.piece))),
  ];
  return parts.filter((part) => part !== null).join(' · ');
}
