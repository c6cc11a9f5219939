import { describe, expect, test } from 'vitest';
import { excerpt, linesOf } from '../../app/command/findings.ts';
import { table } from '../../app/command/table.ts';
import { cut, harmless, widthOf, wrap } from '../../app/command/words.ts';

const plain = (_tone: string, text: string) => text;

describe('text for a terminal', () => {
  test.each([
    ['one two three', 7, ['one two', 'three']],
    ['abcdefghij', 4, ['abcd', 'efgh', 'ij']],
    ['毛糸毛糸', 4, ['毛糸', '毛糸']],
    ['', 10, []],
    ['a  b', 10, ['a b']],
  ])('wrap %j to %i', (text, columns, lines) => {
    expect(wrap(text, columns)).toEqual(lines);
  });

  test.each([
    ['short', 10, 'short'],
    ['much too long', 8, 'much to…'],
    ['毛糸毛糸', 6, '毛糸…'],
  ])('cut %j to %i', (text, columns, kept) => {
    expect(cut(text, columns)).toBe(kept);
    expect(widthOf(kept)).toBeLessThanOrEqual(columns);
  });

  test('what a terminal would obey becomes a character each', () => {
    expect(harmless('a\tb\nc\u001Bd\u202Ee')).toBe('a b c\uFFFDd\uFFFDe');
  });
});

describe('excerpts', () => {
  test.each<[string, number, number, string, string]>([
    ['sc in next st', 0, 2, 'sc in next st', '^^'],
    ['sc in next st', 6, 10, 'sc in next st', '      ^^^^'],
    ['   sc in next st', 3, 5, 'sc in next st', '^^'],
    ['毛糸 sc', 3, 5, '毛糸 sc', '     ^^'],
  ])('%j %i–%i', (line, from, to, words, carets) => {
    expect(excerpt(line, from, to, 40)).toEqual({ words, carets });
  });

  test('a long line shows the words concerned and what is around them', () => {
    const line = `${'before '.repeat(30)}HERE${' after'.repeat(30)}`;
    const at = line.indexOf('HERE');
    const shown = excerpt(line, at, at + 4, 40)!;
    expect(widthOf(shown.words)).toBeLessThanOrEqual(40);
    expect(shown.words).toMatch(/^….*HERE.*…$/);
    expect(shown.words.indexOf('HERE')).toBe(shown.carets.indexOf('^^^^'));
  });

  test('words that fill more than the line are cut', () => {
    const shown = excerpt('x'.repeat(500), 100, 400, 40)!;
    expect(widthOf(shown.words)).toBeLessThanOrEqual(40);
    expect(shown.carets.trim()).toMatch(/^\^{30,}$/);
  });

  test('an empty line has none', () => {
    expect(excerpt('  ', 0, 1, 40)).toBeNull();
  });
});

describe('lines of a text', () => {
  test.each([
    [0, 1, 'one'],
    [3, 1, 'one'],
    [5, 2, 'two'],
    [9, 3, 'three'],
    [15, 4, ''],
    [16, 5, 'five'],
  ])('offset %i is in line %i', (offset, number, words) => {
    const text = 'one\r\ntwo\nthree\r\rfive';
    const line = linesOf(text)(offset);
    expect([line.number, text.slice(line.from, line.to)]).toEqual([number, words]);
  });
});

describe('tables', () => {
  const line = (label: string, cells: readonly string[], remark = '') => ({
    label,
    cells,
    remark,
    under: [],
  });

  test('numbers stand flush right under their heads', () => {
    expect(
      table(['S', 'XL'], [line('Row 1', ['8', '120'], 'sc'), line('Row 10', ['9', '–'])], 40, plain),
    ).toEqual(['          S   XL', 'Row 1     8  120  sc', 'Row 10    9    –']);
  });

  test('more sizes than fit take further lines, as the heads do', () => {
    const heads = ['XS', 'S', 'M', 'L', 'XL'];
    expect(table(heads, [line('Row 1', ['100', '110', '120', '130', '140'], 'sc')], 20, plain)).toEqual([
      '       XS   S   M',
      '        L  XL',
      'Row 1 100 110 120',
      '      130 140',
      '    sc',
    ]);
  });

  test('a remark without room stands below', () => {
    expect(table([], [line('Row 1', ['10', '20', '30'], '4 (6, 8) sc, 6 (14, 22) dc')], 30, plain)).toEqual([
      'Row 1  10  20  30',
      '    4 (6, 8) sc, 6 (14, 22) dc',
    ]);
  });

  test('a long label has a line of its own', () => {
    const lines = [line('Row 1', ['10']), line('Rows 5–32 (34, 36, 38, 40)', ['8'])];
    expect(table([], lines, 80, plain)).toEqual(['Row 1  10', 'Rows 5–32 (34, 36, 38, 40)', '        8']);
  });

  test('long heads are stacked', () => {
    expect(table(['Newborn', '6–12 months'], [line('Rnd 1', ['8', '10'], 'sc')], 40, plain)).toEqual([
      '                   6–12',
      '       Newborn   months',
      'Rnd 1        8       10  sc',
    ]);
  });
});
