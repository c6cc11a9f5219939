/** Words with their places on a page, as lines of text. */
import { expect, test } from 'vitest';
import { type PlacedWords, textOfPage, textOfPages } from '../../core/intake/pdf-lines.ts';

/** Letters 10 points high and 5 wide. */
const at = (left: number, base: number, words: string, size = 10): PlacedWords => ({
  words,
  left,
  width: words.length * size * 0.5,
  base,
  size,
});

test.each<[string, readonly PlacedWords[], string]>([
  ['runs of one line', [at(0, 700, 'Row 1: '), at(35, 700, 'Sc across.')], 'Row 1: Sc across.'],
  ['a word set by itself', [at(0, 700, 'Sc'), at(13, 700, 'across.')], 'Sc across.'],
  ['letters of one word', [at(0, 700, 'acr'), at(15.4, 700, 'oss')], 'across'],
  [
    'a label that hangs in the margin',
    [at(0, 700, 'Row 1:'), at(90, 700, 'Sc across.')],
    'Row 1:  Sc across.',
  ],
  ['a raised number', [at(0, 700, 'Row 1'), at(25, 703, 'a', 6)], 'Row 1a'],
  ['lines', [at(0, 700, 'Sc in each st'), at(0, 688, 'across, turn.')], 'Sc in each st\nacross, turn.'],
  ['paragraphs', [at(0, 700, 'Ch 24.'), at(0, 676, 'Row 1: Sc.')], 'Ch 24.\n\nRow 1: Sc.'],
  ['a second column', [at(0, 100, 'Ch 24.'), at(300, 700, 'Row 1: Sc.')], 'Ch 24.\n\nRow 1: Sc.'],
  ['nothing but blanks', [at(0, 700, '  ')], ''],
])('%s', (_, page, text) => {
  expect(textOfPage(page)).toBe(text);
});

test('pages stand apart', () => {
  expect(textOfPages([[at(0, 700, 'Ch 24.')], [], [at(0, 700, 'Row 1: Sc.')]])).toBe(
    'Ch 24.\n\f\n\fRow 1: Sc.',
  );
});
