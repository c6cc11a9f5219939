/** Tables of old patterns as lines: sizes and what they measure, whichever way the table lies. */
import { expect, test } from 'vitest';
import { textOfTable } from '../../core/intake/table.ts';

test.each<readonly [string, readonly (readonly string[])[], readonly string[]]>([
  [
    'sizes along the head',
    [
      ['Size', 'Small', 'Medium', 'Large'],
      ['Hand circumference', '7 in', '7¾ in', '8½ in'],
      ['Length', '8 in / 20.5 cm', '8½ in / 21.5 cm', '9 in / 23 cm'],
      ['Yarn', '300 m', '350 m', '400 m'],
    ],
    [
      'Sizes: Small (Medium, Large)',
      'Hand circumference: 7 (7¾, 8½) in',
      'Length: 8 (8½, 9) in / 20.5 (21.5, 23) cm',
      'Yarn: 300 (350, 400) m',
    ],
  ],
  [
    'the unit in the head of a line',
    [
      ['', 'S', 'M', '2X'],
      ['To fit bust (cm)', '81', '91', '132'],
    ],
    ['Sizes: S (M, 2X)', 'To fit bust: 81 (91, 132) cm'],
  ],
  [
    'sizes down the side',
    [
      ['Size', 'Bust', 'Length'],
      ['XS', '76 cm', '52 cm'],
      ['S', '86 cm', '54 cm'],
      ['M', '97 cm', '-'],
    ],
    ['Sizes: XS (S, M)', 'Bust: 76 (86, 97) cm', 'Length: 52 cm (54 cm, -)'],
  ],
  [
    'ages',
    [
      ['Age', '0-3 months', '3-6 months', '6-12 months'],
      ['Head', '36 cm', '40 cm', '44 cm'],
    ],
    ['Sizes: 0-3 months (3-6 months, 6-12 months)', 'Head: 36 (40, 44) cm'],
  ],
  [
    'no sizes: the words stay',
    [
      ['Colour', 'Shade', 'Balls'],
      ['A', 'Sand', '2'],
    ],
    ['Colour Shade Balls', 'A Sand 2'],
  ],
])('%s', (_, cells, lines) => {
  expect(textOfTable(cells).split('\n')).toEqual(lines);
});
