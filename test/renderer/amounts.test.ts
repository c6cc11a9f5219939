/** Numbers and lengths of yarn as makers type them. */
import { expect, test } from 'vitest';
import { readMetres, readNumber } from '../../renderer/materials/edits.ts';

test.each([
  ['', undefined],
  ['12', 12],
  ['4,5', 4.5],
  ['4.5', 4.5],
  // As in English: a comma before three figures sets thousands apart.
  ['1,200', 1200],
  ['1,200.5', 1200.5],
  ['0,125', 0.125],
  ['1,2,3', null],
  ['twelve', null],
  ['-3', null],
])('the number “%s”', (typed, expected) => expect(readNumber(typed)).toBe(expected));

test.each([
  ['', undefined],
  ['155', 155],
  ['155 m', 155],
  ['155 metres', 155],
  // 170 × 0.9144 = 155.448.
  ['170 yd', 155.4],
  ['170yds', 155.4],
  ['1,312 yards', 1199.7],
  ['170 ft', null],
])('the length of yarn “%s”', (typed, expected) => expect(readMetres(typed)).toBe(expected));
