/**
 * Stitches that the words gather into one by what is held back, drawn up or dropped.
 */
import { lines, type RowCase } from '../types.ts';

const practice = 'common practice, no source';

export const bundles: readonly RowCase[] = [
  {
    name: '3 ch (counts as tr), 1 tr in each sp between tr to end',
    terms: 'uk',
    text: lines(
      'Make 22 ch.',
      'Row 1: 1 tr in 4th ch from hook, 1 tr in each ch to end. (20 tr)',
      'Row 2: 3 ch (counts as tr), 1 tr in each sp between tr to end.',
    ),
    final: 20,
    source: practice,
  },
  {
    name: '3 ch, 1 tr in each sp between sts to end',
    terms: 'uk',
    text: lines(
      'Make 22 ch.',
      'Row 1: 1 tr in 4th ch from hook, 1 tr in each ch to end. (20 tr)',
      'Row 2: 3 ch, 1 tr in each sp between sts to end.',
    ),
    final: 20,
    source: practice,
  },
  {
    name: 'Ch 1, turn, sc in first st, *holding back last loop of each dc on hook',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn, sc in first st, *holding back last loop of each dc on hook, work 3 dc in next st, yo, pull through all 4 loops (cluster made), sc in next st; rep from * to last st, sc in last st.',
    ),
    final: 24,
    source: practice,
  },
  {
    name: 'Ch 1, turn, sc in first st, *work 3 dc in next st leaving last lp of e',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn, sc in first st, *work 3 dc in next st leaving last lp of each on hook, yo and through all 4 lps on hook, sc in next st; rep from * to last st, sc in last st.',
    ),
    final: 24,
    source: practice,
  },
  {
    name: 'Ch 1, turn, sc in first st, *yo, insert hook in next st, yo and pull u',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn, sc in first st, *yo, insert hook in next st, yo and pull up a loop, yo and draw through 2 loops, rep 4 more times in same st, yo and draw through all 6 loops (bobble made), sc in next st; rep from * to last st, sc in last st.',
    ),
    final: 24,
    source: practice,
  },
  {
    name: 'Ch 1, turn, sc in first st, *4 dc in next st, drop loop from hook, ins',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn, sc in first st, *4 dc in next st, drop loop from hook, insert hook in first dc of group, pick up dropped loop and draw through (popcorn made), sc in next st; rep from * to last st, sc in last st.',
    ),
    final: 24,
    source: practice,
  },
  {
    name: 'Ch 1, turn, *insert hook in next st, pull up a loop, insert hook in fo',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn, *insert hook in next st, pull up a loop, insert hook in following st, pull up a loop, yo, pull through all 3 loops; rep from * across.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn, *pull up a loop in each of next 2 sts, yo and draw through',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn, *pull up a loop in each of next 2 sts, yo and draw through all 3 loops on hook; rep from * across.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn, draw up a loop in first 2 sts, yo and through 3 loops (dec',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn, draw up a loop in first 2 sts, yo and through 3 loops (dec made), sc in each st to end.',
    ),
    final: 23,
    source: practice,
  },
  {
    name: 'Ch 1, turn, sc in first st, *(yo, insert hook in next st, yo, draw up',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn, sc in first st, *(yo, insert hook in next st, yo, draw up a loop, yo, draw through 2 loops) 4 times in same st, yo, draw through all 5 loops, sc in next st; rep from * to last st, sc in last st.',
    ),
    final: 24,
    source: practice,
  },
  {
    name: 'Ch 1, turn, sc in first st, *yo, insert hook in next st, pull up a lp',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn, sc in first st, *yo, insert hook in next st, pull up a lp, (yo, insert hook in same st, pull up a lp) 3 times, yo, draw through all 9 lps on hook, sc in next st; rep from * to last st, sc in last st.',
    ),
    final: 24,
    source: practice,
  },
  {
    name: 'Ch 1, turn, sc in first st, *keeping last loop of each st on hook, 3 t',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn, sc in first st, *keeping last loop of each st on hook, 3 tr in next st, yo and draw through all 4 loops on hook, sc in next st; rep from * to last st, sc in last st.',
    ),
    final: 24,
    source: practice,
  },
  {
    name: 'Ch 3 (counts as dc), turn, *holding back last loop of each st, dc in n',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 3 (counts as dc), turn, *holding back last loop of each st, dc in next 2 sts, yo and draw through all loops, ch 1; rep from * to last st, dc in last st.',
    ),
    final: 13,
    source: practice,
  },
  {
    name: 'Ch 1, turn, sc in first st, *(dc, tr, dc) in next st, sc in next st* t',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn, sc in first st, *(dc, tr, dc) in next st, sc in next st* to last st, sc in last.',
    ),
    final: 46,
    source: practice,
  },
  {
    name: 'Ch 1, turn, *yo, insert hook in next st, yo, pull up a loop, yo, pull',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (24 sc)',
      'Row 2: Ch 1, turn, *yo, insert hook in next st, yo, pull up a loop, yo, pull through all 3 loops; rep from * across.',
    ),
    final: 24,
    source: practice,
  },
  {
    name: '3 ch, leaving last loop of each st on hook work 1 tr into each of next',
    terms: 'uk',
    text: lines(
      'Make 25 ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end. (24 dc)',
      'Row 2: 3 ch, leaving last loop of each st on hook work 1 tr into each of next 2 dc, yrh and draw through all 3 loops on hook, 1 tr into each dc to end, turn.',
    ),
    final: 23,
    source: practice,
  },
  {
    name: '3 ch, *leaving last loop of each on hook, work 3 tr into next dc, yoh',
    terms: 'uk',
    text: lines(
      'Make 25 ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end. (24 dc)',
      'Row 2: 3 ch, *leaving last loop of each on hook, work 3 tr into next dc, yoh and draw through all 4 loops, 1 ch, miss 1 dc; rep from * to last dc, 1 tr into last dc.',
    ),
    final: 13,
    source: practice,
  },
  {
    name: '1 ch, *1 dc in next dc, [yrh, insert hook into next dc, draw loop thro',
    terms: 'uk',
    text: lines(
      'Make 25 ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end. (24 dc)',
      'Row 2: 1 ch, *1 dc in next dc, [yrh, insert hook into next dc, draw loop through] 4 times into same dc, yrh and draw through all loops on hook; rep from * to end.',
    ),
    final: 24,
    source: practice,
  },
  {
    name: '1 ch, [insert hook in next dc, yrh and draw loop through] twice, yrh a',
    terms: 'uk',
    text: lines(
      'Make 25 ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end. (24 dc)',
      'Row 2: 1 ch, [insert hook in next dc, yrh and draw loop through] twice, yrh and draw through all 3 loops on hook, 1 dc in each dc to end.',
    ),
    final: 23,
    source: practice,
  },
];
