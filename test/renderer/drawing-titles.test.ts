/** Drawings of pieces with one name are told apart: two regions of a page may not sound the same. */
import { expect, test } from 'vitest';
import { suffixes } from '../../renderer/drawings/titles.ts';

test.each([
  [[], []],
  [
    ['Back', 'Front'],
    ['', ''],
  ],
  [
    ['Pocket', 'Back', 'Pocket', 'Pocket'],
    ['', '', ' (2)', ' (3)'],
  ],
])('%j', (titles, expected) => {
  expect(suffixes(titles)).toEqual(expected);
});
