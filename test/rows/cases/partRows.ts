/**
 * Rows that go on over some of their stitches only, shaping told by how often, and passes that end in a place of their own.
 */
import { lines, type RowCase } from '../types.ts';

const practice = 'common practice, no source';

export const partRows: readonly RowCase[] = [
  {
    name: 'Ch 1, turn, sc in first 12 sts (12 sc), turn and work on these 12 sts only',
    terms: 'us',
    text: lines(
      'Ch 42.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (41 sc)',
      'Row 2: Ch 1, turn, sc in first 12 sts (12 sc), turn and work on these 12 sts only.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn, sc in first 12 sts; turn. Work on these 12 sts only for first shoulder',
    terms: 'us',
    text: lines(
      'Ch 42.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (41 sc)',
      'Row 2: Ch 1, turn, sc in first 12 sts; turn. Work on these 12 sts only for first shoulder.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn, sc in first 12 sts. Turn and continue on these sts only',
    terms: 'us',
    text: lines(
      'Ch 42.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (41 sc)',
      'Row 2: Ch 1, turn, sc in first 12 sts. Turn and continue on these sts only.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn, sc in first 12 sts, turn. (12 sts for right shoulder)',
    terms: 'us',
    text: lines(
      'Ch 42.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (41 sc)',
      'Row 2: Ch 1, turn, sc in first 12 sts, turn. (12 sts for right shoulder)',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn, sc in first 12 sts. Leave the remaining 29 sts on hold',
    terms: 'us',
    text: lines(
      'Ch 42.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (41 sc)',
      'Row 2: Ch 1, turn, sc in first 12 sts. Leave the remaining 29 sts on hold.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn, sc in first 10 sts, sc2tog, turn (11 sts). Work each side separately',
    terms: 'us',
    text: lines(
      'Ch 42.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (41 sc)',
      'Row 2: Ch 1, turn, sc in first 10 sts, sc2tog, turn (11 sts). Work each side separately.',
    ),
    final: 11,
    source: practice,
  },
  {
    name: 'Ch 1, turn, sc in first 10 sts, sc2tog, turn. Continue on these 11 sts only',
    terms: 'us',
    text: lines(
      'Ch 42.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (41 sc)',
      'Row 2: Ch 1, turn, sc in first 10 sts, sc2tog, turn. Continue on these 11 sts only.',
    ),
    final: 11,
    source: practice,
  },
  {
    name: 'Ch 1, turn, sc in first 12 sts, turn, working on these 12 sc only',
    terms: 'us',
    text: lines(
      'Ch 42.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (41 sc)',
      'Row 2: Ch 1, turn, sc in first 12 sts, turn, working on these 12 sc only.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn, sc in first 12 sts. Work on these sts for right front',
    terms: 'us',
    text: lines(
      'Ch 42.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (41 sc)',
      'Row 2: Ch 1, turn, sc in first 12 sts. Work on these sts for right front.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn, sc in first 12 sts. Finish one side at a time',
    terms: 'us',
    text: lines(
      'Ch 42.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (41 sc)',
      'Row 2: Ch 1, turn, sc in first 12 sts. Finish one side at a time.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn, sc in first 12 sts, leaving remaining sts for left shoulder, turn',
    terms: 'us',
    text: lines(
      'Ch 42.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (41 sc)',
      'Row 2: Ch 1, turn, sc in first 12 sts, leaving remaining sts for left shoulder, turn.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: 'Ch 1, turn, sc in first 12 sts, turn - 12 sts',
    terms: 'us',
    text: lines(
      'Ch 42.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (41 sc)',
      'Row 2: Ch 1, turn, sc in first 12 sts, turn - 12 sts.',
    ),
    final: 12,
    source: practice,
  },
  {
    name: '3 ch, 1 tr in each of next 8 sts (9 sts), turn and work on these 9 sts only',
    terms: 'uk',
    text: lines(
      'Ch 41.',
      'Row 1 (RS): 1 tr in 4th ch from hook, 1 tr in each ch to end. Turn. (39 tr)',
      'Row 2: 3 ch, 1 tr in each of next 8 sts (9 sts), turn and work on these 9 sts only.',
    ),
    final: 9,
    source: practice,
  },
  {
    name: '3 ch, 1 tr in each of next 8 sts, turn and cont on these 9 sts only for first side of neck',
    terms: 'uk',
    text: lines(
      'Ch 41.',
      'Row 1 (RS): 1 tr in 4th ch from hook, 1 tr in each ch to end. Turn. (39 tr)',
      'Row 2: 3 ch, 1 tr in each of next 8 sts, turn and cont on these 9 sts only for first side of neck.',
    ),
    final: 9,
    source: practice,
  },
  {
    name: '3 ch, 1 tr in each of next 8 sts, turn, leave rem sts',
    terms: 'uk',
    text: lines(
      'Ch 41.',
      'Row 1 (RS): 1 tr in 4th ch from hook, 1 tr in each ch to end. Turn. (39 tr)',
      'Row 2: 3 ch, 1 tr in each of next 8 sts, turn, leave rem sts.',
    ),
    final: 9,
    source: practice,
  },
  {
    name: '3 ch, miss first tr, *1 tr/rf round next tr, 1 tr/rb round next tr; rep from * to last 2 sts, 1 tr in each of last 2 sts. Turn',
    terms: 'uk',
    text: lines(
      'Ch 41.',
      'Row 1 (RS): 1 tr in 4th ch from hook, 1 tr in each ch to end. Turn. (39 tr)',
      'Row 2: 3 ch, miss first tr, *1 tr/rf round next tr, 1 tr/rb round next tr; rep from * to last 2 sts, 1 tr in each of last 2 sts. Turn.',
    ),
    final: 39,
    source: practice,
  },
  {
    name: '3 ch, miss first tr, *RtrF round next tr, RtrB round next tr; rep from * to last 2 sts, 1 tr in each of last 2 sts. Turn',
    terms: 'uk',
    text: lines(
      'Ch 41.',
      'Row 1 (RS): 1 tr in 4th ch from hook, 1 tr in each ch to end. Turn. (39 tr)',
      'Row 2: 3 ch, miss first tr, *RtrF round next tr, RtrB round next tr; rep from * to last 2 sts, 1 tr in each of last 2 sts. Turn.',
    ),
    final: 39,
    source: practice,
  },
  {
    name: '3 ch, miss first tr, *1 rftr round next tr, 1 rbtr round next tr; rep from * to last 2 sts, 1 tr in each of last 2 sts. Turn',
    terms: 'uk',
    text: lines(
      'Ch 41.',
      'Row 1 (RS): 1 tr in 4th ch from hook, 1 tr in each ch to end. Turn. (39 tr)',
      'Row 2: 3 ch, miss first tr, *1 rftr round next tr, 1 rbtr round next tr; rep from * to last 2 sts, 1 tr in each of last 2 sts. Turn.',
    ),
    final: 39,
    source: practice,
  },
  {
    name: 'Ch 1, sc across, dec evenly 4 times',
    terms: 'us',
    text: lines(
      'Ch 31.',
      'Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (30 sc)',
      'Row 2: Ch 1, sc across, dec evenly 4 times.',
    ),
    final: 26,
    source: practice,
  },
  {
    name: 'Ch 1, sc across and dec 4 times evenly',
    terms: 'us',
    text: lines(
      'Ch 31.',
      'Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (30 sc)',
      'Row 2: Ch 1, sc across and dec 4 times evenly.',
    ),
    final: 26,
    source: practice,
  },
  {
    name: 'Ch 1, inc 4 times evenly across',
    terms: 'us',
    text: lines(
      'Ch 31.',
      'Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (30 sc)',
      'Row 2: Ch 1, inc 4 times evenly across.',
    ),
    final: 34,
    source: practice,
  },
  {
    name: 'Ch 1, sc in each st across, increasing evenly 4 times',
    terms: 'us',
    text: lines(
      'Ch 31.',
      'Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (30 sc)',
      'Row 2: Ch 1, sc in each st across, increasing evenly 4 times.',
    ),
    final: 34,
    source: practice,
  },
  {
    name: 'Ch 1, sc in each st across, increasing 1 st 4 times evenly',
    terms: 'us',
    text: lines(
      'Ch 31.',
      'Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (30 sc)',
      'Row 2: Ch 1, sc in each st across, increasing 1 st 4 times evenly.',
    ),
    final: 34,
    source: practice,
  },
  {
    name: 'Ch 1, sc across, increasing 4 times evenly spaced across the row',
    terms: 'us',
    text: lines(
      'Ch 31.',
      'Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (30 sc)',
      'Row 2: Ch 1, sc across, increasing 4 times evenly spaced across the row.',
    ),
    final: 34,
    source: practice,
  },
  {
    name: 'Ch 1, sc in each st around, evenly increasing 4 times',
    terms: 'us',
    text: lines(
      'Ch 31.',
      'Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (30 sc)',
      'Row 2: Ch 1, sc in each st around, evenly increasing 4 times.',
    ),
    final: 34,
    source: practice,
  },
  {
    name: 'Ch 1, increase evenly 3 times across',
    terms: 'us',
    text: lines(
      'Ch 31.',
      'Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (30 sc)',
      'Row 2: Ch 1, increase evenly 3 times across.',
    ),
    final: 33,
    source: practice,
  },
  {
    name: 'Ch 1, sc across, dec 1 st at each end',
    terms: 'us',
    text: lines(
      'Ch 31.',
      'Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (30 sc)',
      'Row 2: Ch 1, sc across, dec 1 st at each end.',
    ),
    final: 28,
    source: practice,
  },
  {
    name: 'Ch 1, turn, *sc in next st, ch 1, sk 1 st; rep from * across, ending in last st',
    terms: 'us',
    text: lines(
      'Ch 53.',
      'Row 1 (RS): Dc in 4th ch from hook and in each ch across. (51 dc)',
      'Row 2: Ch 1, turn, *sc in next st, ch 1, sk 1 st; rep from * across, ending in last st.',
    ),
    final: 26,
    spaces: [null, null, 25],
    source: practice,
  },
  {
    name: 'Ch 1, turn, sc in first st, *ch 4, sk 4, sc in next st; rep from * to end, ending with last sc in tch',
    terms: 'us',
    text: lines(
      'Ch 53.',
      'Row 1 (RS): Dc in 4th ch from hook and in each ch across. (51 dc)',
      'Row 2: Ch 1, turn, sc in first st, *ch 4, sk 4, sc in next st; rep from * to end, ending with last sc in tch.',
    ),
    final: 11,
    spaces: [null, null, 10],
    source: practice,
  },
  {
    name: 'Ch 1, turn, sc in first st, *ch 4, sk 4, sc in next st; rep from * across, ending in last st',
    terms: 'us',
    text: lines(
      'Ch 53.',
      'Row 1 (RS): Dc in 4th ch from hook and in each ch across. (51 dc)',
      'Row 2: Ch 1, turn, sc in first st, *ch 4, sk 4, sc in next st; rep from * across, ending in last st.',
    ),
    final: 11,
    spaces: [null, null, 10],
    source: practice,
  },
];
