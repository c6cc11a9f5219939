/**
 * Written rows: in the voice of makers who tell their readers what they do: chains of any number, notes and tools beside
 * them, rows worked as long as one likes. Must not repeat a passage of another case file.
 */
import { sc, us } from '../swatch.ts';
import type { RowCase } from '../types.ts';

const onward = (words: string, name: string): RowCase =>
  us(
    name,
    [...sc(29), 'Row 2: Ch 1, turn, sc across.', words, 'Row 3: Ch 1, turn, hdc across. (29)'],
    [30, 29, 29, 29, 29],
  );

const begun = (words: string, name: string, n: number): RowCase =>
  us(name, [words, `Row 1: Sc in 2nd ch from hook and in each ch to the end. (${n - 1})`], [n, n - 1]);

export const chatter: readonly RowCase[] = [
  begun(
    'Chain a multiple of 4 plus 2. I chained 82.',
    'a chain by its multiple, and what the writer chained',
    82,
  ),
  begun('Ch a multiple of 6 + 2 (mine was 44).', 'a chain by its multiple, and mine', 44),
  begun('Ch 30. Note: for a wider scarf, add multiples of 4.', 'a note behind the chain', 30),
  begun('Using main color and a 5 mm hook, chain 30.', 'a hook beside the yarn', 30),
  begun('Starting chain: 30', 'a chain by its label alone', 30),
  us(
    'a ring told behind a dash',
    [
      'ch 30 - slip stitch to form a circle',
      'Rnd 1 - ch 1 - sc in each ch around - slip stitch to first sc (30)',
    ],
    [30, 30],
  ),

  // As long as one likes: how many rows that makes nobody knows, nor which number the next has
  onward('Repeat Row 2 until desired length.', 'until desired length'),
  onward('Repeat Row 2 as many times as you like.', 'as many times as you like'),
  onward('Repeat last row to desired length.', 'to desired length'),
  onward('Rep Row 2 until you run out of yarn.', 'until the yarn runs out'),
  onward('Repeat Row 2 until piece is long enough to fit around your head.', 'until it fits'),
  onward(
    'Repeat Row 2 until your scarf is as long as you like, or about 60 inches.',
    'as long as you like, or a length',
  ),
  onward(
    'Rep Row 2 for pattern until piece measures approx. 60", ending with a RS row.',
    'a length that is about so much',
  ),
  us(
    'how often is still told where it is',
    [
      ...sc(29),
      'Row 2: Ch 1, turn, sc across.',
      'Repeat Row 2 five times.',
      'Row 3: Ch 1, turn, hdc across. (29)',
    ],
    [30, 29, 29, 29, 29],
    { findings: [{ row: 4, code: 'row-number-out-of-order', saying: ['3', '8'] }] },
  ),
  us(
    'a row that ends with a cry of joy',
    [
      'Ch 24, join with sl st to form ring.',
      'Rnd 1: Ch 1, sc in each ch around, join. (24) Fasten off and weave in all your ends!',
    ],
    [24, 24],
  ),
];
