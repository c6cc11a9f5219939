/** The sizing sheet's edits without a screen: names through the document, blocks of cells, fills, sizes. */
import { EditorState, type Transaction } from 'prosemirror-state';
import { describe, expect, test } from 'vitest';
import type { LineRule } from '../../core/document/attributes.ts';
import { compose } from '../../core/document/compose.ts';
import type { Line, Pattern, Quantity } from '../../core/document/pattern.ts';
import { project } from '../../core/document/project.ts';
import { renameLine, usesOfLine } from '../../renderer/desk/line-names.ts';
import {
  addLine,
  addSizes,
  filled,
  newRule,
  pasted,
  removeSize,
  setCells,
  spreadValues,
} from '../../renderer/sizes/edits.ts';
import { quantityText, readCell } from '../../renderer/sizes/quantities.ts';
import { cm, smallPattern, written } from '../study/builder.ts';

const inch = (value: number): Quantity => ({ value, unit: 'in' });
const plain = (value: number): Quantity => ({ value, unit: 'none' });
const line = (id: string, name: string, rule: LineRule): Line => ({
  id,
  name,
  printed: null,
  note: null,
  ...rule,
});

/** The small pattern, whose lines are named in every way that there is. */
function namedEverywhere(): Pattern {
  const small = smallPattern();
  const [panel, band] = small.pieces as [Pattern['pieces'][number], Pattern['pieces'][number]];
  return {
    ...small,
    lines: [
      ...small.lines,
      line('bu', 'bust', { kind: 'body', measure: 'bust', bound: 'upper', overtyped: {} }),
      {
        ...line('fb', 'finished', { kind: 'formula', formula: 'Width of panel-stitches × 2' }),
        note: 'bust',
      },
      line('sp', 'incs', {
        kind: 'spread',
        changes: '6',
        over: 'panel stitches',
        change: 'inc',
        form: 'flat',
        stitch: 't1',
      }),
    ],
    notes: [written('Each panel has {panel stitches} sts.')],
    finishing: [written('Sew {half of panel stitches} sts.')],
    pieces: [
      panel,
      {
        ...band,
        start: {
          kind: 'edges',
          round: false,
          edges: [{ piece: 'p-panel', kind: 'top', amount: 'panel stitches − 10', which: 1 }],
        },
        meets: [
          {
            mine: { piece: 'p-band', kind: 'top', amount: 'panel stitches − 10', which: 1 },
            other: { piece: 'p-panel', kind: 'top', amount: null, which: 1 },
          },
        ],
      },
    ],
  };
}

const stateOf = (pattern: Pattern) => EditorState.create({ doc: compose(pattern) });
const changed = (state: EditorState, transaction: Transaction) => project(state.apply(transaction).doc);
const renamed = (pattern: Pattern, id: string, name: string): Pattern => {
  const state = stateOf(pattern);
  const renaming = renameLine(state, id, name);
  if (!renaming.ok) throw new Error(renaming.reason);
  return changed(state, renaming.transaction);
};

describe('a line’s new name', () => {
  test('is followed by every text that names it, as it was written there otherwise', () => {
    const next = renamed(namedEverywhere(), 'st', 'back stitches');
    const json = JSON.stringify(next);
    expect(json).not.toMatch(/panel[ -]stitches/i);
    expect(next.lines.find(({ id }) => id === 'fb')).toMatchObject({ formula: 'Width of back stitches × 2' });
    expect(next.lines.find(({ id }) => id === 'ta')).toMatchObject({
      start: 'back stitches',
      end: 'back stitches − 10',
    });
    expect(next.lines.find(({ id }) => id === 'sp')).toMatchObject({ over: 'back stitches' });
    expect(next.pieces[0]!.blocks[0]).toMatchObject({ text: written('Ch {back stitches + 2}.') });
    expect(next.notes).toEqual([written('Each panel has {back stitches} sts.')]);
    expect(next.finishing).toEqual([written('Sew {half of back stitches} sts.')]);
    expect(next.pieces[1]!.start).toMatchObject({ edges: [{ amount: 'back stitches − 10' }] });
    expect(next.pieces[1]!.meets[0]!.mine.amount).toBe('back stitches − 10');
  });

  test.each([
    [
      'taper',
      'ta',
      'side taper',
      (next: Pattern) => next.pieces[0]!.blocks.find(({ type }) => type === 'shaping'),
      { line: 'side taper' },
    ],
    [
      'panel rows',
      'ro',
      'height',
      (next: Pattern) => next.pieces[0]!.blocks.find(({ type }) => type === 'repeat'),
      { until: { kind: 'total', rows: 'height' } },
    ],
    ['bust', 'bu', 'chest', (next: Pattern) => next.lines.find(({ id }) => id === 'fb'), { note: 'chest' }],
  ])('%s is followed where it is named', (_, id, name, at, expected) => {
    expect(at(renamed(namedEverywhere(), id, name))).toMatchObject(expected);
  });

  test('back again gives the pattern that was', () => {
    const pattern = namedEverywhere();
    const there = renamed(pattern, 'w', 'girth');
    expect(renamed(there, 'w', 'width')).toEqual(pattern);
  });

  test('is one step of undoing', () => {
    const state = stateOf(namedEverywhere());
    const renaming = renameLine(state, 'st', 'back stitches');
    expect(renaming.ok && renaming.transaction.steps.length).toBeGreaterThan(5);
    const { transactions } = state.applyTransaction((renaming as { transaction: Transaction }).transaction);
    expect(transactions.length).toBe(1);
  });

  test.each([
    ['Panel  Rows', 'taken'],
    ['length', 'taken'],
    // A number is never a name: the formulas would say something else.
    ['12', 'read-otherwise'],
  ])('“%s” is refused: %s', (name, reason) => {
    const renaming = renameLine(stateOf(namedEverywhere()), 'st', name);
    expect(renaming).toMatchObject({ ok: false, reason });
  });

  test('mends formulas that waited for a line of that name', () => {
    const pattern = namedEverywhere();
    const waiting = line('wa', 'sum', { kind: 'formula', formula: 'girth + 2 cm' });
    const next = renamed({ ...pattern, lines: [...pattern.lines, waiting] }, 'w', 'girth');
    expect(next.lines.at(-1)).toMatchObject({ formula: 'girth + 2 cm' });
  });
});

test('who names a line is told, each once', () => {
  const uses = usesOfLine(compose(namedEverywhere()), 'panel stitches');
  expect(uses.map(({ kind, node }) => `${kind} ${node}`)).toEqual([
    'line ta',
    'line fb',
    'line sp',
    'figure notes:0',
    'figure r-0',
    'piece p-band',
    'figure r-8',
    'figure finishing:0',
  ]);
});

test.each([
  ['as a blank one where there is none', [], 'middle'],
  ['as the others of the pattern', ['upper'], 'upper'],
  ['as the first of several', ['lower', 'upper'], 'lower'],
] as const)('a new body is measured %s', (_, bounds, expected) => {
  const lines = bounds.map((bound, i) =>
    line(`b${i}`, `body ${i}`, { kind: 'body', measure: 'bust', bound, overtyped: {} }),
  );
  expect(newRule('body', { ...smallPattern(), lines })).toMatchObject({ bound: expected });
});

describe('an amount in a cell', () => {
  const typed = line('t', 't', { kind: 'typed', values: { each: { 's-s': cm(45) } } });
  const fresh = line('t', 't', { kind: 'typed', values: { each: {} } });
  const body = line('b', 'b', { kind: 'body', measure: 'bust', bound: 'upper', overtyped: {} });
  const ease = line('e', 'e', { kind: 'ease', values: { each: {} } });
  test.each<[string, Line, Quantity | null]>([
    ['12 cm', typed, cm(12)],
    ['4 3/4 in', typed, inch(4.75)],
    ['36½"', typed, inch(36.5)],
    ['5%', ease, { value: 5, unit: '%' }],
    ['½', fresh, plain(0.5)],
    ['−5', ease, cm(-5)],
    ['0', ease, plain(0)],
    ['50', typed, cm(50)],
    ['50', fresh, plain(50)],
    ['90', body, cm(90)],
    ['5 %', body, null],
    ['twelve', typed, null],
    ['12 feet', typed, null],
  ])('%s', (text, at, expected) => {
    expect(readCell(text, at, 's-m', 'metric')).toEqual(expected);
  });

  test('a bare number is in the units on screen', () => {
    expect(readCell('20', typed, 's-s', 'imperial')).toEqual(inch(20));
  });

  test.each([cm(92.5), inch(4.75), plain(3), { value: -5, unit: '%' } as const, cm(0.1), inch(14.1)])(
    'is given back as it can be typed again: %o',
    (quantity) => {
      expect(readCell(quantityText(quantity), fresh, 's-s', 'metric')).toEqual(quantity);
    },
  );
});

describe('a block from a spreadsheet', () => {
  const pattern = smallPattern();
  const range = (top: number, left: number, bottom = top, right = left) => ({ top, bottom, left, right });

  test('fills from the corner; what is worked out stays, what is past the edge is left out and told', () => {
    const table = [
      ['40 cm', '46', '18 1/2"', '99'],
      ['', '30', 'x'],
      ['1', '2', '3'],
    ];
    const done = pasted(pattern, table, range(0, 0), 'metric');
    expect(done.changes).toEqual([
      { line: 'w', size: 's-s', value: cm(40) },
      { line: 'w', size: 's-m', value: cm(46) },
      { line: 'w', size: 's-l', value: inch(18.5) },
      { line: 'h', size: 's-s', value: null },
      { line: 'h', size: 's-m', value: cm(30) },
    ]);
    expect(done.unread).toEqual([{ text: 'x', line: 'length', size: 'L' }]);
    expect(done.outside).toBe(1);
    expect(done.workedOut).toBe(3);
  });

  test('is one step, and cells that could not be read keep what they had', () => {
    const state = stateOf(pattern);
    const done = pasted(pattern, [['40'], ['x']], range(0, 2), 'metric');
    const next = changed(state, setCells(state, done.changes));
    expect(next.lines[0]).toMatchObject({
      values: { each: { 's-s': cm(45), 's-m': cm(51), 's-l': cm(40) } },
    });
    expect(next.lines[1]).toMatchObject({ values: { all: cm(30) } });
  });

  test('of one cell fills the whole range', () => {
    const done = pasted(pattern, [['40 cm']], range(0, 1, 1, 2), 'metric');
    expect(done.changes.map(({ line: at, size }) => `${at} ${size}`)).toEqual([
      'w s-m',
      'w s-l',
      'h s-m',
      'h s-l',
    ]);
  });

  test('a cell of a line that is alike for all sizes makes it one of amounts size by size', () => {
    const state = stateOf(pattern);
    const next = changed(state, setCells(state, [{ line: 'h', size: 's-l', value: cm(33) }]));
    expect(next.lines[1]).toMatchObject({
      values: { each: { 's-s': cm(30), 's-m': cm(30), 's-l': cm(33) } },
    });
  });

  test('filling right copies the first column, filling down the first row, over cells that are typed', () => {
    const changes = filled(pattern, range(0, 0, 2, 2), 'right');
    expect(changes).toEqual([
      { line: 'w', size: 's-m', value: cm(45) },
      { line: 'w', size: 's-l', value: cm(45) },
      { line: 'h', size: 's-m', value: cm(30) },
      { line: 'h', size: 's-l', value: cm(30) },
    ]);
    expect(filled(pattern, range(0, 1, 2, 1), 'down')).toEqual([{ line: 'h', size: 's-m', value: cm(51) }]);
  });
});

describe('sizes and lines', () => {
  test('the first sizes of a pattern bring its sample', () => {
    const state = stateOf({ ...smallPattern(), sizes: [], sample: null });
    const next = changed(
      state,
      addSizes(state, [{ label: 'S', audience: 'woman', chart: 'S' }, { label: 'M' }]),
    );
    expect(next.sizes.map(({ label }) => label)).toEqual(['S', 'M']);
    expect(next.sample).toBe(next.sizes[0]!.id);
    expect(new Set(next.sizes.map(({ id }) => id)).size).toBe(2);
  });

  test('a size goes with all that was typed for it', () => {
    const state = stateOf({
      ...smallPattern(),
      yarns: [
        {
          id: 'y',
          key: null,
          name: 'wool',
          weight: 4,
          fibre: '',
          ballGrams: 50,
          ballMetres: 90,
          ballPrice: null,
          metres: { 's-s': 300, 's-m': 350 },
        },
      ],
    });
    const next = changed(state, removeSize(state, 's-m'));
    expect(JSON.stringify(next)).not.toContain('s-m');
    expect(next.sample).toBeNull();
    expect(next.yarns[0]!.metres).toEqual({ 's-s': 300 });
  });

  test('a new line goes below the one at hand, under a name that is free', () => {
    const state = stateOf(smallPattern());
    const next = changed(state, addLine(state, 'typed', 'length', 'w'));
    expect(next.lines.map(({ name }) => name).slice(0, 3)).toEqual(['width', 'length 2', 'length']);
  });

  test('amounts become alike for all by the sample’s, and each its own again', () => {
    const pattern = smallPattern();
    expect(spreadValues(pattern, pattern.lines[0]!, 'all')).toEqual({
      kind: 'typed',
      values: { all: cm(51) },
    });
    expect(spreadValues(pattern, pattern.lines[1]!, 'each')).toEqual({
      kind: 'typed',
      values: { each: { 's-s': cm(30), 's-m': cm(30), 's-l': cm(30) } },
    });
  });
});
