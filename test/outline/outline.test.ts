/** The outline without a screen: its parts, what each has against it, where the caret is, and moving pieces. */
import { EditorState } from 'prosemirror-state';
import { describe, expect, test } from 'vitest';
import { compose } from '../../core/document/compose.ts';
import { project } from '../../core/document/project.ts';
import type { Finding } from '../../core/finding.ts';
import { blankPattern } from '../../core/outlines/blank.ts';
import { identity } from '../../renderer/desk/identity.ts';
import { placeOf } from '../../renderer/desk/places.ts';
import { dropIndex, indexAfter } from '../../renderer/outline/drag.ts';
import { findingsOf, firstText, outlineOf, partAtPosition } from '../../renderer/outline/parts.ts';
import { movePiece } from '../../renderer/outline/pieces.ts';
import { piece, row } from '../study/builder.ts';

const pattern = {
  ...blankPattern({ title: 'Test', terms: 'us', units: 'metric', date: '2026-01-01' }),
  notes: [{ text: 'Read all of it first.', figures: [] }],
  pieces: [
    piece('back', 'Back', [
      row('b1', 'Ch 10.'),
      { type: 'heading', id: 'h', text: 'Shoulders' },
      row('b2', 'Sc.'),
    ]),
    piece('front', '', [row('f1', 'Ch 10.')]),
    piece('sleeve', 'Sleeve', [
      {
        type: 'shaping',
        id: 's',
        line: 'taper',
        shaped: row('s1', 'Sc2tog.'),
        even: row('s2', 'Sc.'),
        sizes: null,
      },
    ]),
  ],
} as const;
const document = compose(pattern);
const parts = outlineOf(pattern);
const state = () => EditorState.create({ doc: document, plugins: [identity()] });
const namesAfter = (next: EditorState) => project(next.doc).pieces.map(({ name }) => name);

describe('the parts', () => {
  test('stand in the order of the pages, a piece without a name by its number', () => {
    expect(parts.map(({ name, level }) => `${'  '.repeat(level - 1)}${name}`)).toEqual([
      'Cover',
      'Special stitches',
      'Notes',
      'Back',
      '  Shoulders',
      'Piece 2',
      'Sleeve',
      'Finishing',
      'Closing page',
    ]);
  });

  test('each leads to a place of the document', () => {
    for (const { node } of parts) expect(placeOf(document, firstText(document, node))).not.toBeNull();
    expect(firstText(document, 'part:notes')).toBe('notes:0');
    expect(firstText(document, 'part:finishing')).toBe('part:finishing');
  });

  test.each([
    ['cover:description', 'Cover'],
    ['notes:0', 'Notes'],
    ['b1', 'Back'],
    ['b2', 'Shoulders'],
    ['f1', 'Piece 2'],
    ['s2', 'Sleeve'],
    ['cover:care', 'Closing page'],
  ])('the caret in %s is in %s', (node, name) => {
    expect(parts[partAtPosition(parts, document, placeOf(document, node)!.pos + 1)]?.name).toBe(name);
  });

  test('count what their own words have against them, notes left out', () => {
    const finding = (node: string, severity: Finding['severity']): Finding => ({
      code: 'x',
      severity,
      where: { node, from: 0, to: 1 },
      sizes: [],
      message: '',
      detail: null,
      fix: null,
    });
    const byNode = new Map([
      ['b2', [finding('b2', 'error'), finding('b2', 'note')]],
      ['s1', [finding('s1', 'warning'), finding('s1', 'error')]],
      ['notes:0', [finding('notes:0', 'warning')]],
    ]);
    const told = parts.map((part) => {
      const { errors, warnings } = findingsOf(part, byNode);
      return `${part.name} ${errors}/${warnings}`;
    });
    expect(told.filter((line) => !line.endsWith(' 0/0'))).toEqual(['Notes 0/1', 'Back 1/0', 'Sleeve 1/1']);
  });
});

describe('moving pieces', () => {
  test.each([
    [0, 2, ['', 'Sleeve', 'Back']],
    [2, 0, ['Sleeve', 'Back', '']],
    [1, 2, ['Back', 'Sleeve', '']],
  ])('from %i to %i', (from, to, names) => {
    const before = state();
    const next = before.apply(movePiece(before, from, to)!);
    expect(namesAfter(next)).toEqual(names);
    // The pieces themselves are the same: ids are theirs still.
    expect(new Set(project(next.doc).pieces.map(({ id }) => id))).toEqual(
      new Set(['back', 'front', 'sleeve']),
    );
  });

  test.each([
    [0, -1],
    [2, 3],
    [1, 1],
  ])('from %i to %i is no move', (from, to) => {
    expect(movePiece(state(), from, to)).toBeNull();
  });

  const boxes = [
    { top: 0, bottom: 40 },
    { top: 40, bottom: 60 },
    { top: 60, bottom: 100 },
  ];
  test.each([
    // pointer, dragged piece, index after the drop
    [10, 0, 0],
    [30, 0, 0],
    [55, 0, 1],
    [200, 0, 2],
    [-5, 2, 0],
    [45, 2, 1],
    [90, 1, 2],
  ])('at %i px, piece %i drops as number %i', (y, from, to) => {
    expect(indexAfter({ from, before: dropIndex(boxes, y) })).toBe(to);
  });
});
