/** Keys of the manuscript over states: what Enter, Backspace, Delete, moving and inserting make of a piece. */
import { history, redo, undo } from 'prosemirror-history';
import { type Command, NodeSelection } from 'prosemirror-state';
import { describe, expect, test } from 'vitest';
import type { PieceStart } from '../../core/document/pattern.ts';
import { startPiece } from '../../renderer/desk/edits.ts';
import { identity } from '../../renderer/desk/identity.ts';
import { listAt } from '../../renderer/desk/places.ts';
import { nextFigure } from '../../renderer/write/commands/figures.ts';
import { insertBlock, insertPiece, putFigure } from '../../renderer/write/commands/insert.ts';
import { deleteSelected, joinAfter, joinBefore, splitText } from '../../renderer/write/commands/lines.ts';
import { moveItem } from '../../renderer/write/commands/move.ts';
import { selectMore } from '../../renderer/write/commands/select.ts';
import { guard } from '../../renderer/write/guard.ts';
import { notesOf, piecesOf, run, stateOf } from './written.ts';

type Lines = readonly string[];

function each(command: Command, table: readonly (readonly [name: string, before: Lines, after: Lines])[]) {
  test.each(table)('%s', (_, before, expected) => {
    const state = run(stateOf([before]), command);
    expect(piecesOf(state)).toEqual([expected]);
    // Every row and block has a name of its own.
    const ids: string[] = [];
    state.doc.descendants((node) => {
      if (typeof node.attrs.id === 'string') ids.push(node.attrs.id);
    });
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).not.toContain('');
  });
}

describe('Enter', () => {
  each(splitText, [
    ['at the end begins the next row', ['row Ch 1, turn.$0'], ['row Ch 1, turn.', 'row $0']],
    ['after a foundation begins a row', ['foundation Ch 24.$0'], ['foundation Ch 24.', 'row $0']],
    ['after a ring begins a round', ['foundation Magic ring.$0'], ['foundation Magic ring.', 'round $0']],
    [
      'after a chain that is joined begins a round',
      ['foundation Ch [a], join with sl st in first ch.$0'],
      ['foundation Ch [a], join with sl st in first ch.', 'round $0'],
    ],
    [
      'after a chain that is not joined begins a row',
      ['foundation Ch 24, do not join.$0'],
      ['foundation Ch 24, do not join.', 'row $0'],
    ],
    [
      'after a ring that is turned on begins a row',
      ['foundation Magic ring, 3 dc in ring, turn.$0'],
      ['foundation Magic ring, 3 dc in ring, turn.', 'row $0'],
    ],
    ['after a round begins a round', ['round Sc around.$0'], ['round Sc around.', 'round $0']],
    ['in the middle takes the rest along', ['row Ch 1, $0sc across.'], ['row Ch 1, ', 'row $0sc across.']],
    ['keeps figures', ['row Ch [a] $0and [b].'], ['row Ch [a] ', 'row $0and [b].']],
    ['at the start puts a row before', ['row $0Ch 1.'], ['row', 'row $0Ch 1.']],
    ['replaces what is selected', ['row Ch $0one$1 two'], ['row Ch ', 'row $0 two']],
    ['in a paragraph begins another', ['prose Turn.$0'], ['prose Turn.', 'prose $0']],
    ['in an empty paragraph makes it a row', ['round Sc.', 'prose $0'], ['round Sc.', 'round $0']],
    ['in a heading begins a row', ['heading Yo$0ke', 'row Sc.'], ['heading Yoke', 'row $0', 'row Sc.']],
    ['in a shaping goes to its second row', ['shaping De$0c. / Sc.'], ['shaping Dec. / $0Sc.']],
    [
      'behind the label of several rows makes them a row and its repeat',
      ['row Sc.', 'row Rows 4-9: Ch [a], turn.$0', 'row Dc.'],
      ['row Sc.', 'row Ch [a], turn.', 'repeat', 'row $0', 'row Dc.'],
    ],
    [
      'behind the label of several rounds makes them rounds',
      ['row Rnds 2–6: Sc around.$0'],
      ['round Sc around.', 'repeat', 'round $0'],
    ],
    [
      'leaves such a label where others are repeated',
      ['row Rows 4-9: Rep Rows 2 and 3.$0'],
      ['row Rows 4-9: Rep Rows 2 and 3.', 'row $0'],
    ],
    ['behind a shaping begins a row', ['shaping Dec. / Sc.$0'], ['shaping Dec. / Sc.', 'row $0']],
  ]);

  test('makes of “Rows 4-9:” six rows', () => {
    const state = run(stateOf([['row Rows 4-9: Ch 1, turn.$0']]), splitText);
    const [first, repeat] = listAt(state.doc, 'pieces').node.child(0).child(1).children;
    const { id } = first!.attrs;
    expect(repeat!.attrs).toMatchObject({ first: id, last: id, until: { kind: 'rows', rows: '5' } });
  });

  test('in a note begins another note, and none from an empty one', () => {
    const state = run(stateOf([['row Sc.']], ['One$0']), splitText);
    expect(notesOf(state)).toEqual(['One', '$0']);
    expect(notesOf(run(state, splitText))).toEqual(['One', '$0']);
  });
});

describe('what a piece starts with', () => {
  const edge = { piece: '', kind: 'top', amount: null, which: 1 } as const;
  test.each([
    ['a row that is not written yet begins it', ['foundation'], { round: false }, ['row']],
    ['or a round', ['foundation'], { round: true }, ['round']],
    ['and is a foundation again where it starts with a chain', ['round'], null, ['foundation']],
    ['what is written stays as it is', ['foundation Ch 4.'], { round: true }, ['foundation Ch 4.']],
    ['so do several rows', ['foundation', 'row Sc.'], { round: true }, ['foundation', 'row Sc.']],
    ['and a paragraph', ['prose'], { round: true }, ['prose']],
  ])('%s', (_, before, round, after) => {
    const state = stateOf([before]);
    const { id } = listAt(state.doc, 'pieces').node.child(0).attrs;
    const start: PieceStart = round === null ? { kind: 'chain' } : { kind: 'edges', edges: [edge], ...round };
    const { doc } = state.apply(startPiece(state, id, start));
    doc.check();
    const piece = listAt(doc, 'pieces').node.child(0);
    expect(piece.attrs.start).toEqual(start);
    expect(
      piece
        .child(1)
        .children.map((node) => `${node.attrs.form ?? node.type.name} ${node.textContent}`.trim()),
    ).toEqual(after);
  });
});

describe('Backspace at a start', () => {
  each(joinBefore, [
    ['joins two rows', ['row Ch 1,', 'row $0 turn.'], ['row Ch 1,$0 turn.']],
    ['keeps the kind of the first', ['round Sc.', 'row $0Dc.'], ['round Sc.$0Dc.']],
    ['keeps the second when the first is empty', ['prose', 'row $0Dc.'], ['row $0Dc.']],
    ['takes an empty row away', ['row Sc.', 'row $0', 'row Dc.'], ['row Sc.$0', 'row Dc.']],
    ['keeps the first row', ['row $0Sc.'], ['row $0Sc.']],
    ['selects a repeat before', ['row Sc.', 'repeat', 'row $0Dc.'], ['row Sc.', '<repeat>', 'row Dc.']],
    ['leaves a shaping before alone', ['shaping A. / B.', 'row $0Dc.'], ['shaping A. / B.', 'row $0Dc.']],
    ['leaves rows of a shaping alone', ['shaping A. / $0B.'], ['shaping A. / $0B.']],
    ['puts no figure into a heading', ['heading Yoke', 'row $0Ch [a].'], ['heading Yoke', 'row $0Ch [a].']],
  ]);
});

describe('Delete at an end', () => {
  each(joinAfter, [
    ['joins two rows', ['row Ch 1,$0', 'row  turn.'], ['row Ch 1,$0 turn.']],
    ['takes the second when the first is empty', ['row $0', 'round Dc.'], ['round $0Dc.']],
    ['keeps the last row', ['row Sc.$0'], ['row Sc.$0']],
    ['selects a repeat behind', ['row Sc.$0', 'repeat'], ['row Sc.', '<repeat>']],
  ]);
});

describe('deleting what is selected', () => {
  let refused = 0;
  const remove = deleteSelected(() => {
    refused += 1;
  });
  each(remove, [
    ['over two rows joins them', ['row Ch $01.', 'row Dc$1 turn.'], ['row Ch $0 turn.']],
    ['takes the rows between', ['row A$0.', 'repeat', 'row B.', 'row C$1.'], ['row A$0.']],
    ['over the two rows of a shaping leaves both', ['shaping A$0B. / C$1D.'], ['shaping A$0 / D.']],
    [
      'of all words of a shaping leaves its rows',
      ['row A.', 'shaping $0B. / C.$1'],
      ['row A.', 'shaping $0 / '],
    ],
    ['over a shaping takes it', ['row A$0.', 'shaping B. / C.', 'row D$1.'], ['row A$0.']],
    ['of a whole piece leaves one empty row', ['row $0A.', 'row B.$1'], ['row $0']],
    ['with a shaping at its end keeps the first row', ['row A$0.', 'shaping B. / C$1.'], ['row A$0']],
  ]);

  test('over two pieces is refused, and nothing changes', () => {
    const state = stateOf([['row A$0.'], ['row B$1.']]);
    refused = 0;
    expect(run(state, remove).doc).toBe(state.doc);
    expect(refused).toBe(1);
  });

  test('of a repeat takes the repeat', () => {
    const state = run(stateOf([['row Sc.', 'repeat', 'row $0Dc.']]), joinBefore);
    expect(piecesOf(run(state, remove))).toEqual([['row Sc.$0', 'row Dc.']]);
  });
});

describe('moving', () => {
  each(moveItem(1), [
    ['a row goes down with the caret in it', ['row A$0.', 'row B.'], ['row B.', 'row A$0.']],
    ['the last row stays', ['row A.', 'row B$0.'], ['row A.', 'row B$0.']],
    ['a shaping goes as a whole', ['shaping A$0. / B.', 'row C.'], ['row C.', 'shaping A$0. / B.']],
  ]);
  each(moveItem(-1), [
    ['a row goes up with the selection', ['row A.', 'row $0B$1.'], ['row $0B$1.', 'row A.']],
    ['the first row stays', ['row A$0.', 'row B.'], ['row A$0.', 'row B.']],
  ]);

  test('a piece goes up by its title', () => {
    const state = stateOf([['row A.'], ['row B.']]);
    const { node, pos } = listAt(state.doc, 'pieces');
    const title = pos + 1 + node.child(0).nodeSize + 2;
    const inTitle = state.apply(state.tr.setSelection(NodeSelection.near(state.doc.resolve(title))));
    expect(piecesOf(run(inTitle, moveItem(-1)))).toEqual([['row B.'], ['row A.']]);
  });
});

describe('new blocks', () => {
  each(insertBlock('row'), [
    ['a row after the caret’s', ['round A$0.', 'row B.'], ['round A.', 'round $0', 'row B.']],
  ]);
  each(insertBlock('heading'), [
    ['in place of an empty row', ['row A.', 'row $0'], ['row A.', 'heading $0']],
  ]);
  each(insertBlock('shaping'), [['goes on in rounds', ['round A$0.'], ['round A.', 'shaping $0 / ']]]);
  each(insertBlock('repeat'), [['is selected', ['row A$0.'], ['row A.', '<repeat>']]]);

  test.each([
    ['the last two rows', ['foundation Ch 9.', 'row A.', 'row B.', 'row C$0.'], [2, 3]],
    ['the second row, not the one into the foundation', ['foundation Ch 9.', 'row A.', 'row B$0.'], [2, 2]],
    ['the first row where there is no other', ['foundation Ch 9.', 'row A$0.'], [1, 1]],
    ['both rows of a piece without a foundation', ['row A.', 'row B$0.'], [0, 1]],
    ['rows behind a heading', ['row A.', 'heading Yoke', 'row B$0.'], [2, 2]],
  ] as const)('a repeat begins with %s', (_, before, [first, last]) => {
    const state = run(stateOf([before]), insertBlock('repeat'));
    const blocks = listAt(state.doc, 'pieces').node.child(0).child(1);
    const made = blocks.lastChild!;
    expect([made.attrs.first, made.attrs.last]).toEqual([
      blocks.child(first).attrs.id,
      blocks.child(last).attrs.id,
    ]);
  });

  test('a piece comes after the caret’s, with an empty first row', () => {
    const state = run(stateOf([['row A$0.'], ['row B.']]), insertPiece);
    expect(piecesOf(state)).toEqual([['row A.'], ['foundation'], ['row B.']]);
    expect(state.selection.$from.parent.type.name).toBe('title');
  });
});

describe('figures', () => {
  test('a figure takes the place of a range, with the caret behind it', () => {
    const state = stateOf([['row Ch $0x$1.']]);
    const { from, to } = state.selection;
    expect(piecesOf(run(state, putFigure(from, to, 'back stitches')))).toEqual([
      ['row Ch [back stitches]$0.'],
    ]);
  });

  test('Tab goes through the figures of a row, and on to the next row', () => {
    let state = stateOf([['row $0Ch [a] and [b].', 'row Sc [c].']]);
    const stops: string[] = [];
    for (let i = 0; i < 4; i++) {
      state = run(state, nextFigure(1));
      const { selection } = state;
      stops.push(
        selection instanceof NodeSelection
          ? selection.node.attrs.expression
          : selection.$from.parent.textContent,
      );
    }
    expect(stops).toEqual(['a', 'b', 'Sc .', 'c']);
    state = run(state, nextFigure(-1));
    expect(piecesOf(state)[0]![0]).toBe('row Ch [a] and [b].$0');
    state = run(state, nextFigure(-1));
    expect((state.selection as NodeSelection).node.attrs.expression).toBe('b');
  });
});

describe('selecting more', () => {
  test('grows from the text over the piece to the manuscript, and takes nothing', () => {
    let state = stateOf([['row A$0.', 'shaping B. / C.'], ['row D.']]);
    const { doc } = state;
    const sizes: string[] = [];
    for (let i = 0; i < 4; i++) {
      state = run(state, selectMore);
      sizes.push(doc.textBetween(state.selection.from, state.selection.to, '|'));
    }
    expect(sizes[0]).toBe('A.');
    expect(sizes[1]).toBe('A.|B.|C.');
    expect(sizes[2]).toBe('Piece 1|A.|B.|C.');
    expect(sizes[3]).toContain('D.');
    expect(state.doc).toBe(doc);
  });
});

describe('the parts with places of their own', () => {
  const plugins = [history(), identity(), guard()];

  test('change by no key', () => {
    const state = stateOf([['row A$0.']], [], plugins);
    const { pos, node } = listAt(state.doc, 'lines');
    const gone = state.tr.delete(pos + 1, pos + node.nodeSize - 1);
    expect(state.apply(gone).doc).toBe(state.doc);
    const all = state.tr.replaceWith(0, state.doc.content.size, state.doc.content.cut(0, 10));
    expect(listAt(state.apply(all).doc, 'lines').node).toBe(node);
  });

  test('change by forms, which undo and redo take back and bring again', () => {
    const state = stateOf([['row A$0.']], [], plugins);
    const { pos, node } = listAt(state.doc, 'lines');
    const formed = state.apply(state.tr.delete(pos + 1, pos + node.nodeSize - 1).setMeta('form', true));
    expect(listAt(formed.doc, 'lines').node.childCount).toBe(0);
    const undone = run(formed, undo);
    expect(listAt(undone.doc, 'lines').node.eq(node)).toBe(true);
    expect(listAt(run(undone, redo).doc, 'lines').node.childCount).toBe(0);
  });
});
