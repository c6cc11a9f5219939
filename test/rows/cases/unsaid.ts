/**
 * Written rows that leave something unsaid: the height of a row, how many stitches lie evenly, which of two
 * stitches comes next, whose number stands where. Told where the reader cannot know, worked where it can.
 */
import { dc, sc, uk, ukTr, us } from '../swatch.ts';
import type { RowCase } from '../types.ts';

const height =
  'common practice, no source: a row of tall stitches begins with a chain, or with something as tall';

const post =
  'common practice, no source: a post stitch goes round the upright of a stitch, which a chain has not';

export const unsaid: readonly RowCase[] = [
  us(
    'a row of dc with nothing to bring it to its height',
    [...sc(10), 'Row 2: Dc in each sc across, turn. (10 dc)'],
    [11, 10, 10],
    {
      findings: [
        { row: 2, code: 'height-not-given', severity: 'warning', words: 'Dc in each sc', saying: ['3'] },
      ],
      source: height,
    },
  ),
  uk(
    'a row of treble with nothing to bring it to its height',
    [...ukTr(9), '2nd row: *1tr in next tr, 1dtr in next tr; rep from * to last st, 1tr in last st.'],
    [11, 9, 9],
    {
      findings: [{ row: 2, code: 'height-not-given', severity: 'warning', saying: ['tr'] }],
      source: height,
    },
  ),
  us(
    'the chain at the end of the row before is the height',
    [
      ...sc(10).slice(0, 1),
      'Row 1: Sc in 2nd ch from hook and in each ch across, ch 3, turn.',
      'Row 2: Dc in each sc across. (10 dc)',
    ],
    [11, 10, null],
    { source: height, clean: true },
  ),
  us(
    'a spiral of dc climbs by itself',
    [
      'Rnd 1: 6 sc in magic ring.',
      'Rnd 2: 2 hdc in each st around. (12)',
      'Rnd 3: Dc in each st around. (12)',
    ],
    [6, 12, 12],
  ),
  us(
    'a joined round of dc with nothing to bring it to its height',
    [
      'Rnd 1: 6 sc in magic ring, join.',
      'Rnd 2: Ch 1, 2 sc in each st around, join. (12)',
      'Rnd 3: 2 dc in each st around, join. (24)',
    ],
    [6, 12, 24],
    { findings: [{ row: 2, code: 'height-not-given', words: '2 dc in each st' }], source: height },
  ),
  us(
    'a standing stitch is the height',
    [
      ...sc(10),
      'Row 2: Ch 1, sc in each st across. Fasten off. (10 sc)',
      'Row 3: With B, standing dc in first st, dc in each st across. (10 dc)',
    ],
    [11, 10, 10, 10],
  ),
  us(
    'post stitches into a foundation chain',
    [
      'Ch 11.',
      'Row 1: Dc in 4th ch from hook, *fpdc around next ch, dc in next ch; rep from * to last ch, dc in last ch, turn.',
    ],
    [11, 9],
    {
      findings: [{ row: 1, code: 'post-round-chain', severity: 'warning', words: 'fpdc around next ch' }],
      source: post,
    },
  ),
  us(
    'post stitches round foundation stitches have a post',
    [
      'Fdc 10.',
      'Row 1: Ch 2 (does not count as a st), *fpdc around next st, bpdc around next st; rep from * across.',
    ],
    [10, 10],
  ),
  us(
    'evenly without a number',
    [
      ...sc(10),
      'Rows 2-10: Ch 1, sc in each st across, turn.',
      'Edging: Sc evenly around, working 3 sc in each corner, join.',
    ],
    [11, 10, 10, 10],
    {
      findings: [{ row: 3, code: 'number-not-given', severity: 'warning', words: 'evenly', saying: ['10'] }],
    },
  ),
  us(
    'evenly with the number in the count of the row',
    [
      ...sc(10),
      'Rows 2-10: Ch 1, sc in each st across, turn.',
      'Edging: Sc evenly around, working 3 sc in each corner, join. (44 sc)',
    ],
    [11, 10, 10, 44],
  ),
  us(
    'evenly with its own number against another count',
    [...sc(10), 'Row 2: Ch 1, 12 sc evenly across. (13 sc)'],
    [11, 10, 12],
    { findings: [{ row: 2, code: 'stated-count-wrong', saying: ['13', '12'] }] },
  ),
  // By turns: 10 = 5 * 2
  us(
    'a bracket worked alternately',
    [...sc(10), 'Row 2: Ch 1, work (sc, dc) alternately across. (10 sts)'],
    [11, 10, 10],
    {
      byKind: [null, null, { sc: 5, dc: 5 }],
    },
  ),
  us(
    'two stitches alternately across',
    [...sc(10), 'Row 2: Ch 1, sc, dc alternately across. (10 sts)'],
    [11, 10, 10],
    {
      byKind: [null, null, { sc: 5, dc: 5 }],
    },
  ),
  us(
    'work alternately one and one',
    [...sc(10), 'Row 2: Ch 1, work alternately 1 sc and 1 dc across. (10 sts)'],
    [11, 10, 10],
    {
      byKind: [null, null, { sc: 5, dc: 5 }],
    },
  ),
  us(
    'alternate two stitches up to the edge',
    [...sc(11), 'Row 2: Ch 1, sc in first st, alternate dc and sc to end, turn. (11 sts)'],
    [12, 11, 11],
    {
      byKind: [null, null, { sc: 6, dc: 5 }],
    },
  ),
  // 1 + 2 * 5 = 11
  uk(
    'alternately so many times',
    ['11dc in magic ring, do not join.', 'Rnd 2: 1dc in next st, 1htr and 1dc alternately 5 times. (11 sts)'],
    [11, 11],
    {
      byKind: [null, { dc: 6, htr: 5 }],
    },
  ),
  // 11 = 2 * 5 + 1
  us(
    'alternately where it does not come out',
    [...sc(11), 'Row 2: Ch 1, (sc, dc) alternately across. (11 sts)'],
    [12, 11, null],
    {
      findings: [{ row: 2, code: ['repeat-does-not-fit', 'stitches-left-unworked'] }],
    },
  ),
  us(
    'a count of two sizes with a comma and the noun behind',
    [
      'Sizes: S (M)',
      'Ch 42 (46).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (41, 45 sc)',
      'Row 2: Ch 1, sc in each st across. (41, 46 sc)',
    ],
    [
      [42, 46],
      [41, 45],
      [41, 45],
    ],
    { findings: [{ row: 2, code: 'stated-count-wrong', sizes: [1], saying: ['46', '45'] }] },
  ),
  us(
    'a row number that one size leaves out',
    [
      'Sizes: S (M, L)',
      'Ch 10 (12, 14).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 9 (11, 13) sc',
      'Row 2 (2, 3): Ch 1, sc in each st across, turn.',
      'Row 3 (3, 4): Ch 1, sc in each st across, turn.',
    ],
    [
      [10, 12, 14],
      [9, 11, 13],
      [9, 11, 13],
      [9, 11, 13],
    ],
  ),
  us(
    'a row number that is told twice in one size',
    [
      'Sizes: S (M, L)',
      'Ch 10 (12, 14).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 9 (11, 13) sc',
      'Row 2 (2, 1): Ch 1, sc in each st across, turn.',
    ],
    [
      [10, 12, 14],
      [9, 11, 13],
      [9, 11, 13],
    ],
    { findings: [{ row: 2, code: 'row-number-out-of-order', sizes: [2] }] },
  ),
  // 1 + 1 + 6 * 3 + 1 = 21
  us(
    'a count of groups and of the stitches at the edge',
    [
      'Ch 23.',
      'Row 1: Dc in 4th ch from hook, (sk next ch, 3 dc in next ch, sk next ch) 6 times, dc in last ch. (6 groups and 3 edge dc)',
    ],
    [23, 21],
  ),
  // 11 - 4 = 7 and the skipped chain
  us(
    'an extended turning chain is one of its kind',
    [
      'Ch 11.',
      'Row 1: Edc in 5th ch from hook (4 skipped ch count as first edc), edc in each ch across, turn. (8 edc)',
      'Row 2: Ch 4 (counts as edc), edc in each of next 7 sts, turn. (8 edc)',
      'Row 3: Ch 4, edc in each of next 7 sts. (8 edc)',
    ],
    [11, 8, 8, 8],
    { byKind: [null, { edc: 8 }, { edc: 8 }, { edc: 8 }] },
  ),
  us(
    'a decrease behind the stitches of another',
    [...dc(12), 'Row 2: Ch 2 (does not count as a st), (dc3tog over next 3 sts and dc3tog) twice. (4 sts)'],
    [14, 12, 4],
  ),
  us(
    'a chain to make, on a line without a full stop',
    ['Make 38 chain', 'Row 1: Sc in 2nd chain from the hook and in each chain across = 37 sc'],
    [38, 37],
  ),
  us(
    'a turning chain at the end of the row, told of before the rows',
    [
      'Ch 2 at the end of a row does not count as a stitch.',
      'Ch 22.',
      'Row 1: Dc in 3rd ch from hook and in each ch across, ch 2, turn. (20 dc)',
      'Row 2: Dc in each dc across, ch 2, turn. (20 dc)',
    ],
    [22, 20, 20],
  ),
  us(
    'words of its own between the empty line and the chain of the next piece',
    [
      'Ch 11.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (10 sc)',
      '',
      'Turning ch counts as a dc.',
      'Ch 22.',
      'Row 1: Dc in 4th ch from hook and in each ch across, ch 3, turn. (20 dc)',
      'Row 2: Sk first st, dc in each dc across, dc in top of turning ch, ch 3, turn. (20 dc)',
    ],
    [11, 10, 22, 20, 20],
  ),
];
