/**
 * Written rows as they come out of a word processor: tabs, blanks that do not break, curly quotes, en
 * dashes, multiplication signs, soft hyphens, lines that end in carriage returns.
 */
import { lines, type RowCase } from '../types.ts';

export const typed: readonly RowCase[] = [
  {
    name: 'tabs after the labels',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1:\tSc in 2nd ch from hook and in each ch across, turn.\t(20 sc)',
      'Row 2:\tCh 1, sc in each st across, turn.\t(20 sc)',
    ),
    counts: [21, 20, 20],
  },
  {
    name: 'blanks that do not break',
    terms: 'us',
    text: lines(
      'Ch\u00a021.',
      'Row\u00a01: Sc in 2nd\u00a0ch from hook and in each ch across, turn. (20\u00a0sc)',
    ),
    counts: [21, 20],
  },
  {
    name: 'narrow blanks that do not break',
    terms: 'us',
    text: lines(
      'Ch\u202f21.',
      'Row\u202f1: Sc in 2nd ch from hook and in each ch across, turn. (20\u202fsc)',
    ),
    counts: [21, 20],
  },
  {
    name: 'en dash in a range, em dash before the count',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn — 20 sc.',
      'Rows 2–9: Ch 1, sc in each st across, turn — 20 sc.',
    ),
    counts: [21, 20, 20],
  },
  {
    name: 'multiplication sign',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in magic ring (6)',
      'Rnd 2: inc × 6 (12)',
      'Rnd 3: (sc, inc) × 6 (18)',
      'Rnd 4: (2 sc, inc) ×6 (24)',
    ),
    counts: [6, 12, 18, 24],
  },
  {
    name: 'curly quotes round a note',
    terms: 'us',
    text: lines(
      'Ch 22.',
      'Row 1: Dc in 4th ch from hook and in each ch across, turn. (20 dc)',
      'Row 2: Ch 3 (“counts as dc”), dc in next 18 dc, dc in top of turning ch, turn. (20 dc)',
    ),
    counts: [22, 20, 20],
  },
  {
    name: 'carriage returns',
    terms: 'us',
    text: 'Ch 21.\r\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)\r\nRow 2: Ch 1, sc in each st across, turn. (20 sc)\r\n',
    counts: [21, 20, 20],
  },
  {
    name: 'blanks before punctuation and doubled blanks',
    terms: 'us',
    text: lines(
      'Ch  21 .',
      'Row 1 :  Sc in 2nd ch from hook  and in each ch across , turn . ( 20 sc )',
      'Row 2 : Ch 1 , * sc in next 3 sts , 2 sc in next st ; rep from * across . ( 25 sc )',
    ),
    counts: [21, 20, 25],
  },
  {
    name: 'the hyphen that does not break in a place',
    terms: 'us',
    text: lines(
      'Fsc 13.',
      'Row 1: Ch 1, sc in first st, *ch 1, sk 1 st, sc in next st; rep from * across, turn.',
      'Row 2: Ch 1, sc in each sc and in each ch\u20111 sp across, turn. (13 sc)',
    ),
    counts: [13, 7, 13],
    spaces: [0, 6, 0],
  },
  {
    name: 'list marks before the rows',
    terms: 'us',
    text: lines(
      '• Ch 21.',
      '• Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)',
      '• Row 2: Ch 1, sc in each st across, turn. (20 sc)',
    ),
    counts: [21, 20, 20],
  },
  {
    name: 'indented rows and trailing blanks',
    terms: 'us',
    text: lines('   Ch 21.   ', '   Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)   '),
    counts: [21, 20],
  },
  {
    name: 'no blank between number and word',
    terms: 'us',
    text: lines(
      'Ch21.',
      'Row1: Sc in 2nd ch from hook and in each ch across, turn. (20sc)',
      'Row2: Ch1, sc in next 10sts, 10sc, turn. (20sc)',
    ),
    counts: [21, 20, 20],
  },
  {
    name: 'tabs after the labels',
    terms: 'uk',
    text: lines(
      'Make 21 ch.',
      'Row 1\t1 dc in 2nd ch from hook, 1 dc in each ch to end, turn.\t(20 dc)',
      'Row 2\t1 ch, 1 dc in each dc to end, turn.\t(20 dc)',
    ),
    counts: [21, 20, 20],
  },
  {
    name: 'en dashes in sizes and multiplication sign',
    terms: 'uk',
    text: lines(
      'Make 25 (31–37) ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end. 24 (30–36) dc.',
      'Row 2: 1 ch, (4 dc, dc2tog) × 4 (5–6), turn. 20 (25–30) sts.',
    ),
    counts: [
      [25, 31, 37],
      [24, 30, 36],
      [20, 25, 30],
    ],
  },
  {
    name: 'chain written together',
    terms: 'uk',
    text: lines(
      'Make 29ch.',
      'Row 1: 1tr in 8th ch from hook, *2ch, miss 2ch, 1tr in next ch; rep from * to end, turn. (9tr, 8 2ch-sps)',
    ),
    counts: [29, 9],
    spaces: [0, 8],
  },
  {
    name: 'soft hyphens inside words',
    terms: 'uk',
    text: lines(
      'Make 21 ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. (20 dc)',
      'Row 2: 1 ch, 1 dc in each stitch to end, turn. (20 dc)'.replace('stitch', 'stit\u00adch'),
    ),
    counts: [21, 20, 20],
  },
  {
    name: 'blanks that do not break',
    terms: 'uk',
    text: lines(
      'Make\u00a021\u00a0ch.',
      'Row\u00a01: 1\u00a0dc in 2nd\u00a0ch from hook, 1\u00a0dc in each ch to end, turn. (20\u00a0dc)',
    ),
    counts: [21, 20],
  },
  {
    name: 'carriage returns',
    terms: 'uk',
    text: 'Make 21 ch.\r\nRow 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. (20 dc)\r\nRow 2: 1 ch, 1 dc in each dc to end, turn. (20 dc)',
    counts: [21, 20, 20],
  },
  {
    name: 'list marks before the rows',
    terms: 'uk',
    text: lines(
      '– Make 21 ch.',
      '– Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. (20 dc)',
      '– Row 2: 1 ch, 1 dc in each dc to end, turn. (20 dc)',
    ),
    counts: [21, 20, 20],
  },
  {
    name: 'star that word processors make of an asterisk',
    terms: 'uk',
    text: lines(
      'Make 21 ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. (20 dc)',
      'Row 2: 1 ch, ∗1 dc in each of next 3 dc, 2 dc in next dc; rep from ∗ to end, turn. (25 dc)',
    ),
    counts: [21, 20, 25],
  },
  {
    name: 'no blank after commas',
    terms: 'uk',
    text: lines(
      'Make 21 ch.',
      'Row 1:1 dc in 2nd ch from hook,1 dc in each ch to end,turn.(20 dc)',
      'Row 2:1 ch,1 dc in each of next 10 dc,1 htr in each of last 10 dc,turn.(20 sts)',
    ),
    counts: [21, 20, 20],
    byKind: [null, { dc: 20 }, { dc: 10, htr: 10 }],
  },
];
