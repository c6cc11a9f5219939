/** Words of makers' prose that a general dictionary lacks are known, and words of everyday are left to it. */
import { expect, test } from 'vitest';
import { isTradeWord } from '../../core/trade/known-words.ts';

test.each([
  'whipstitch',
  'Whipstitched',
  'slipstitch',
  'backstitch',
  'frogged',
  'laceweight',
  'earflaps',
  'htr',
  'sc2tog',
])('“%s” is a word of the trade', (word) => expect(isTradeWord(word)).toBe(true));

test.each(['comfortabel', 'sleeev', 'whipstich'])('“%s” is none', (word) =>
  expect(isTradeWord(word)).toBe(false),
);
