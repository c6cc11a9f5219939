/**
 * Rows that stop before their end, in the many ways that is said.
 */
import { lines, type RowCase } from '../types.ts';

const practice = 'common practice, no source';

export const remainders: readonly RowCase[] = [
  {
    name: 'Ch 1, turn. Sc in next 12 sts, turn; leave remaining unworked',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn. Sc in next 12 sts, turn; leave remaining unworked.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn. Sc in next 12 sts, leaving the other 12 sts unworked',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn. Sc in next 12 sts, leaving the other 12 sts unworked.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn. Sc in next 12 sts, leave last 12 free',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn. Sc in next 12 sts, leave last 12 free.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn. Sc in next 12 sts, leaving 12 sts unworked at end of row',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn. Sc in next 12 sts, leaving 12 sts unworked at end of row.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn. Sc in next 12 sts. Stop here',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn. Sc in next 12 sts. Stop here.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn. Sc in next 12 sts. Turn without working the last 12 sts',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn. Sc in next 12 sts. Turn without working the last 12 sts.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn. Sc in next 12 sts. Turn before the end of the row',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn. Sc in next 12 sts. Turn before the end of the row.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn. Sc in next 12 sts. Leave 12 sts',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn. Sc in next 12 sts. Leave 12 sts.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn. Sc in next 12 sts. Leave the remaining 12 sts for second s',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn. Sc in next 12 sts. Leave the remaining 12 sts for second side of neck.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn. Sc in next 12 sts. 12 sts remain unworked',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn. Sc in next 12 sts. 12 sts remain unworked.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn. Sc in next 12 sts. (12 sts left unworked)',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn. Sc in next 12 sts. (12 sts left unworked)',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn. Sc in next 12 sts. Do not work into the remaining sts',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn. Sc in next 12 sts. Do not work into the remaining sts.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn. Sc in next 12 sts. Do not work the last 12 sts',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn. Sc in next 12 sts. Do not work the last 12 sts.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn. Sc in next 12 sts, ignore remaining sts',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn. Sc in next 12 sts, ignore remaining sts.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn. Sc over next 12 sts only, turn',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn. Sc over next 12 sts only, turn.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn. Working over first 12 sts only, sc in each st across',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn. Working over first 12 sts only, sc in each st across.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn. Work over the first 12 sts only: sc in each st',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn. Work over the first 12 sts only: sc in each st.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn. Sc in each of first 12 sts, turn here leaving the rest',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn. Sc in each of first 12 sts, turn here leaving the rest.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn. Sc in each st to last 12 sts, do not work these',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn. Sc in each st to last 12 sts, do not work these.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn. Sc in each st to last 12 sts; turn',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn. Sc in each st to last 12 sts; turn.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn. Sc in each st to last 12 sts, leave these unworked',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn. Sc in each st to last 12 sts, leave these unworked.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn. Sc in each st to last 12 sts and leave them unworked',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn. Sc in each st to last 12 sts and leave them unworked.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn. Sc in each st to last 12 sts. Turn, leaving these sts unwo',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn. Sc in each st to last 12 sts. Turn, leaving these sts unworked.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn. Work even in hdc',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn. Work even in hdc.',
    ),
    final: 24,
    source: practice,
  },
  {
    name: 'Ch 1, turn. Work 1 row even',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn. Work 1 row even.',
    ),
    final: 24,
    source: practice,
  },
  {
    name: 'Work one row even in sc',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Work one row even in sc.',
    ),
    final: 24,
    source: practice,
  },
  {
    name: 'Work even',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Work even.',
    ),
    final: 24,
    source: practice,
  },
  {
    name: 'Rows 2-5: Work even in sc',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Rows 2-5: Work even in sc.',
    ),
    final: 24,
    source: practice,
  },
  {
    name: 'Rows 2-5: Work straight',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Rows 2-5: Work straight.',
    ),
    final: 24,
    source: practice,
  },
  {
    name: 'Rows 2-5: Sc across, without increasing',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Rows 2-5: Sc across, without increasing.',
    ),
    final: 24,
    source: practice,
  },
  {
    name: 'Ch 1, turn, work straight in sc to end',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn, work straight in sc to end.',
    ),
    final: 24,
    source: practice,
  },
  {
    name: 'Ch 1, turn, work plain across',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn, work plain across.',
    ),
    final: 24,
    source: practice,
  },
  {
    name: 'Ch 1, turn. Continue even across all sts',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn. Continue even across all sts.',
    ),
    final: 24,
    source: practice,
  },
];
