/** The sheet's keys, clipboard tables, sentences and completion, without a screen. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { LineRule } from '../../core/document/attributes.ts';
import { completionsAt } from '../../renderer/sizes/completion.ts';
import { newRule } from '../../renderer/sizes/edits.ts';
import { fieldOf, partsOf, ruleWith } from '../../renderer/sizes/rule-fields.ts';
import { at, moved, type Selection } from '../../renderer/sizes/selection.ts';
import { readTable, writeTable } from '../../renderer/sizes/tsv.ts';
import { sizesWords } from '../../renderer/words/sizes.ts';
import { smallPattern } from '../study/builder.ts';

describe('tables on the clipboard', () => {
  test.each([
    [
      'a\tb\nc\td\n',
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
    [
      'a\tb\r\nc\td',
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
    ['36½"\t4"', [['36½"', '4"']]],
    // As spreadsheets write a cell that holds a quote, a tab or a line end (RFC 4180's quoting, with tabs).
    ['"36 1/2"""\t"two\nlines"', [['36 1/2"', 'two\nlines']]],
    ['"', [['"']]],
    ['\t\n', [['', '']]],
    ['', [['']]],
  ])('%j', (text, table) => {
    expect(readTable(text)).toEqual(table);
  });

  test('any table comes back as it was given', () => {
    const cell = fc.string({ unit: fc.constantFrom('a', '"', '\t', '\n', ' ', '½') });
    const table = fc.array(fc.array(cell, { minLength: 2, maxLength: 3 }), { minLength: 1, maxLength: 3 });
    fc.assert(
      fc.property(table, (rows) => {
        expect(readTable(writeTable(rows))).toEqual(rows);
      }),
    );
  });
});

describe('keys', () => {
  const extent = { rows: 10, columns: 4 };
  const key = (from: Selection, name: string, extend = false, far = false) =>
    moved(from, name, { extend, far }, extent);
  test.each<[string, [number, number], string, boolean, [number, number]]>([
    ['down', [0, 0], 'ArrowDown', false, [1, 0]],
    ['up into the heads of sizes', [0, 2], 'ArrowUp', false, [-1, 2]],
    ['left into the head of the line', [3, 0], 'ArrowLeft', false, [3, -1]],
    ['not past the end', [9, 3], 'ArrowRight', false, [9, 3]],
    ['to the head of the line', [3, 2], 'Home', false, [3, -1]],
    ['to the last size', [3, 0], 'End', false, [3, 3]],
    ['to the last cell', [3, 0], 'End', true, [9, 3]],
    ['a page down', [0, 1], 'PageDown', false, [8, 1]],
    ['a page up', [3, 1], 'PageUp', false, [-1, 1]],
  ])('%s', (_, [row, column], name, far, expected) => {
    expect(key(at(row, column), name, false, far)?.focus).toEqual({ row: expected[0], column: expected[1] });
  });

  test('with Shift the range grows from where it began, and never into the heads', () => {
    let selection = at(1, 1);
    for (const name of ['ArrowUp', 'ArrowUp', 'ArrowLeft', 'ArrowLeft'])
      selection = key(selection, name, true)!;
    expect(selection).toEqual({ anchor: { row: 1, column: 1 }, focus: { row: 0, column: 0 } });
  });

  test('other keys lead nowhere', () => {
    expect(key(at(0, 0), 'F5')).toBeNull();
  });
});

describe('sentences', () => {
  const pattern = smallPattern();
  const kinds = Object.keys(sizesWords.kinds) as LineRule['kind'][];

  test.each(kinds)('%s: each field holds what the rule holds, and takes it back', (kind) => {
    const rule = newRule(kind, pattern);
    for (const part of partsOf(kind)) {
      if ('words' in part || part.field === 'spread') continue;
      const field = fieldOf(rule, part.field, pattern, 'us', (text) => text);
      if (field.kind === 'choice') expect(field.options.map(([value]) => value)).toContain(field.value);
      expect(ruleWith(rule, part.field, String(field.value))).toEqual(rule);
    }
  });

  test.each([
    ['multiple', '6', { multiple: 6 }],
    ['multiple', '−1', null],
    ['multiple', '2.5', null],
    ['plus', '−1', { plus: -1 }],
    ['tolerance', '1 cm', { tolerance: { value: 1, unit: 'cm' } }],
    ['tolerance', '1', null],
    ['parity', 'odd', { parity: 'odd' }],
    ['length', 'width ÷ 2', { length: 'width ÷ 2' }],
  ] as const)('%s of %s', (field, typed, expected) => {
    const next = ruleWith(newRule('stitches', pattern), field, typed);
    if (expected === null) expect(next).toBeNull();
    else expect(next).toMatchObject(expected);
  });
});

describe('names of lines that could go on', () => {
  const names = ['bust', 'bust ease', 'finished bust', 'width of neck', 'row count'];
  test.each<[string, number, readonly string[]]>([
    ['bu|', 0, ['bust', 'bust ease', 'finished bust']],
    ['half of (ro|', 9, ['row count']],
    ['row count + fin|', 12, ['finished bust']],
    ['width of n|', 0, ['width of neck']],
    ['bust + |', 7, names],
    ['|', 0, names],
    ['xyz|', 3, []],
  ])('%s', (text, from, options) => {
    const caret = text.indexOf('|');
    expect(completionsAt(text.replace('|', ''), caret, names)).toEqual({ from, options });
  });
});
