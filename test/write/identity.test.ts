/** Ids of nodes: one of its own for every row that comes, none looked for while letters are typed. */
import { EditorState } from 'prosemirror-state';
import { describe, expect, test } from 'vitest';
import { compose } from '../../core/document/compose.ts';
import { blankPattern } from '../../core/outlines/blank.ts';
import { identity } from '../../renderer/desk/identity.ts';
import { piece, row } from '../study/builder.ts';

const blank = blankPattern({ title: 'Test', terms: 'us', units: 'metric', date: '2026-01-01' });
const document = compose({
  ...blank,
  pieces: [piece('p', 'Panel', [row('a', 'Ch 10.'), row('b', 'Ch 1, sc across.')])],
});
const begun = () => EditorState.create({ doc: document, plugins: [identity()] });

const rowsOf = (state: EditorState): { id: string; pos: number; end: number }[] => {
  const rows: { id: string; pos: number; end: number }[] = [];
  state.doc.descendants((node, pos) => {
    if (node.type.name === 'row')
      rows.push({ id: node.attrs.id, pos: pos + 1, end: pos + 1 + node.content.size });
    return !node.isTextblock;
  });
  return rows;
};
const ids = (state: EditorState) => rowsOf(state).map(({ id }) => id);

describe('ids', () => {
  test('stay while letters are typed and taken out', () => {
    let state = begun();
    const [first] = rowsOf(state);
    state = state.apply(state.tr.insertText(' Turn.', first!.end));
    state = state.apply(state.tr.delete(first!.pos, first!.pos + 2));
    expect(ids(state)).toEqual(['a', 'b']);
  });

  test('are new for the second half of a row that is split, and for what stands twice', () => {
    let state = begun();
    state = state.apply(state.tr.split(rowsOf(state)[1]!.pos + 4));
    expect(ids(state).slice(0, 2)).toEqual(['a', 'b']);
    expect(new Set(ids(state)).size).toBe(3);
    const [first] = rowsOf(state);
    state = state.apply(state.tr.insert(first!.end + 1, state.doc.nodeAt(first!.pos - 1)!));
    expect(new Set(ids(state)).size).toBe(4);
  });

  test('that a composed word left double are told apart by the next letter', () => {
    let state = begun();
    state = state.apply(state.tr.split(rowsOf(state)[1]!.pos + 4).setMeta('composition', 1));
    expect(ids(state)).toEqual(['a', 'b', 'b']);
    state = state.apply(state.tr.insertText('x', rowsOf(state)[2]!.end));
    expect(new Set(ids(state)).size).toBe(3);
  });
});
