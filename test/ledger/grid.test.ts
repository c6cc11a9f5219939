/** The ledger without a screen: its rows, its columns, where its keys lead, what a cell tells. */
import { describe, expect, test } from 'vitest';
import { compose } from '../../core/document/compose.ts';
import type { Finding } from '../../core/finding.ts';
import { blankPattern } from '../../core/outlines/blank.ts';
import type { BlockReport } from '../../renderer/analysis/report.ts';
import { placeOf } from '../../renderer/desk/places.ts';
import { factsOf, findingsIn, markOf } from '../../renderer/ledger/cell.ts';
import { columnsInView, columnsThatFit } from '../../renderer/ledger/columns.ts';
import { moved } from '../../renderer/ledger/moves.ts';
import { rowAt, rowsOf } from '../../renderer/ledger/rows.ts';
import { piece, row } from '../study/builder.ts';

const document = compose({
  ...blankPattern({ title: 'Test', terms: 'us', units: 'metric', date: '2026-01-01' }),
  pieces: [
    piece('a', 'Back', [
      row('a1', 'Ch 10.'),
      { type: 'prose', id: 'p', text: { text: 'Turn the work.', figures: [] }, sizes: null },
      row('a2', 'Sc across.'),
    ]),
    piece('b', 'Sleeve', [
      {
        type: 'shaping',
        id: 's',
        line: 'taper',
        shaped: row('s1', 'Sc2tog, sc across.'),
        even: row('s2', 'Sc across.'),
        sizes: null,
      },
      { type: 'heading', id: 'h', text: 'Cap' },
      row('b1', 'Sc across.'),
    ]),
  ],
});

describe('rows', () => {
  const rows = rowsOf(document);

  test('are the blocks that make rows, with their pieces', () => {
    expect(rows.map(({ id, piece }) => `${piece}/${id}`)).toEqual(['a/a1', 'a/a2', 'b/s', 'b/b1']);
    expect(rows.map(({ nodes }) => nodes)).toEqual([['a1'], ['a2'], ['s', 's1', 's2'], ['b1']]);
    for (const { id, pos } of rows) expect(placeOf(document, id)?.pos).toBe(pos);
  });

  test.each([
    ['a1', 1, 0],
    ['a2', 3, 1],
    ['p', 2, -1],
    ['s2', 1, 2],
    ['h', 1, -1],
    ['b1', 1, 3],
  ])('a position in %s is in the right row', (id, offset, index) => {
    expect(rowAt(document, placeOf(document, id)!.pos + offset)).toBe(index);
  });

  test('a position before all pieces is in no row', () => {
    expect(rowAt(document, 2)).toBe(-1);
  });
});

describe('columns', () => {
  test.each([
    // room, cell, sizes: all, as many as fit, folded to one
    [520, 52, 10, 10],
    [519, 52, 10, 9],
    [160, 52, 10, 3],
    [150, 52, 10, 1],
    [110, 52, 2, 2],
    [60, 52, 2, 1],
    [-40, 52, 5, 1],
    [0, 52, 1, 1],
  ])('%i px for columns of %i: of %i sizes %i', (room, cell, sizes, count) => {
    expect(columnsThatFit(room, cell, sizes)).toBe(count);
  });

  test.each([
    // first before, count, sizes, wanted, first now
    [0, 5, 12, 0, 0],
    [0, 5, 12, 5, 1],
    [0, 5, 12, 11, 7],
    [7, 5, 12, 8, 7],
    [7, 5, 12, 3, 3],
    [9, 12, 12, 4, 0],
    [3, 5, 12, -1, 3],
  ])('from %i, %i of %i, with %i wanted: from %i', (before, count, sizes, wanted, first) => {
    expect(columnsInView(before, count, sizes, wanted)).toEqual({ first, count: Math.min(count, sizes) });
  });
});

/* Keys as in the grid pattern of the ARIA Authoring Practices Guide (W3C): "Data Grids", keyboard interaction. */
test.each([
  ['ArrowDown', false, [2, 1], [3, 1]],
  ['ArrowDown', false, [9, 1], [9, 1]],
  ['ArrowUp', false, [0, 1], [-1, 1]],
  ['ArrowUp', false, [-1, 1], [-1, 1]],
  ['ArrowRight', false, [0, 2], [0, 2]],
  ['ArrowLeft', false, [0, 2], [0, 1]],
  ['Home', false, [4, 2], [4, 0]],
  ['End', false, [4, 0], [4, 2]],
  ['Home', true, [4, 2], [0, 0]],
  ['End', true, [4, 0], [9, 2]],
  ['PageDown', false, [4, 1], [8, 1]],
  ['PageDown', false, [8, 1], [9, 1]],
  ['PageUp', false, [3, 1], [0, 1]],
  ['a', false, [3, 1], null],
] as const)('%s (control: %s) from %j leads to %j', (key, control, [row, size], to) => {
  const at = moved(key, control, { row, size }, { rows: 10, sizes: 3, page: 4 });
  expect(at).toEqual(to === null ? null : { row: to[0], size: to[1] });
});

describe('a cell', () => {
  const report: BlockReport = {
    id: 'a1',
    piece: 'a',
    label: 'Row 3',
    side: 'RS',
    isWritten: true,
    counts: [23, null],
    spaces: [4, null],
    byKind: [
      { id: 't3', numbers: [20, 0] },
      { id: 't1', numbers: [3, 0] },
    ],
    repeats: [7, null],
    rows: [1, 0],
    widths: [{ metric: '41 cm', imperial: '16⅛ in' }, null],
  };

  test('tells kinds in the terms on screen and the width in its units', () => {
    expect(factsOf(report, 0, 'us', 'metric')).toEqual([
      '23 stitches: 20 dc, 3 sc',
      '4 chain-spaces',
      '7 repeats',
      '41 cm wide at the gauge',
    ]);
    expect(factsOf(report, 0, 'uk', 'imperial')).toEqual([
      '23 stitches: 20 tr, 3 dc',
      '4 chain-spaces',
      '7 repeats',
      '16⅛ in wide at the gauge',
    ]);
  });

  test('tells nothing for a size that does not work the row', () => {
    expect(factsOf(report, 1, 'us', 'metric')).toEqual([]);
  });

  test('tells nothing of a row that is not written yet, not even that it has no stitches', () => {
    expect(factsOf({ ...report, isWritten: false, counts: [0, 0] }, 0, 'us', 'metric')).toEqual([]);
  });

  test('is marked by its worst finding, of its own size', () => {
    const finding = (severity: Finding['severity'], sizes: readonly number[]): Finding => ({
      code: severity,
      severity,
      where: { node: 'a1', from: 0, to: 1 },
      sizes,
      message: '',
      detail: null,
      fix: null,
    });
    const all = [finding('note', []), finding('warning', [0]), finding('error', [1])];
    expect(findingsIn(all, 0).map(({ code }) => code)).toEqual(['warning', 'note']);
    expect(markOf(findingsIn(all, 0))).toBe('warning');
    expect(markOf(findingsIn(all, 1))).toBe('error');
    expect(markOf(findingsIn(all, 2))).toBeNull();
  });
});
