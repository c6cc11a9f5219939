/**
 * Written rows: Tunisian crochet, where a row goes out, drawing up loops, and back, closing them: the loop on the hook is
 * its first stitch, and it is not turned. Must not repeat a passage of another case file. Common practice, no source.
 */
import { uk, us } from '../swatch.ts';
import type { RowCase } from '../types.ts';

const first = (n: number): readonly string[] => [
  `Ch ${n}.`,
  `Row 1: Pull up a loop in 2nd ch from hook and in each ch across, return pass. (${n} loops)`,
];

export const tunisian: readonly RowCase[] = [
  us(
    'out and back in rows of their own, told with the hook',
    // the loop on the hook and 19 more; the way back makes nothing
    [
      'Ch 20.',
      'Row 1 forward: Insert hook in 2nd ch from hook, yo and pull up a loop, *insert hook in next ch, yo, pull up a loop; rep from * across. (20 loops on hook)',
      'Row 1 return: Yo, pull through 1 loop, *yo, pull through 2 loops; rep from * until 1 loop remains.',
      'Row 2: Sk first vertical bar, *Tss in next vertical bar; rep from * across, return. (20 sts)',
    ],
    [20, 20, 20],
  ),
  us(
    'in short words, several rows at once',
    [
      ...first(24),
      'Rows 2-10: Tss in each st across, return. (24 tss)',
      'Row 11: Tks across. RetP. (24)',
      'Row 12: Sl st in each st across to bind off. Fasten off. (24 sl sts)',
    ],
    [24, 24, 24, 24, 24],
  ),
  us(
    'both ways in one row, by their names',
    [
      'Ch 16.',
      'Row 1: Forward pass: Pull up a loop in second ch from hook and in each ch across. (16 loops on hook) Return pass: Ch 1, *yo, pull through 2 loops; rep from * to end.',
      'Row 2: Fwd: *Tss in next st; rep from * to last st, end st. Return as before. (16)',
      'Row 3: FwP: Tps in each st to last st, tss in last st. RetP: as row 1. 16 sts',
    ],
    [16, 16, 16, 16],
  ),
  us(
    'the label in a line of its own',
    [
      'Ch 30.',
      'Row 1',
      'Forward: Working in back bumps, pull up a loop in 2nd ch from hook and in each ch across. 30 loops on hook.',
      'Return: Ch 1, (yo, pull through 2 loops) until 1 loop remains on hook.',
      'Row 2',
      'Forward: Tss in next st and in each st across. 30 sts.',
      'Return: Work as for Row 1.',
      'Rows 3-20: Rep Row 2.',
    ],
    [30, 30, 30, 30],
  ),
  us(
    'decreases at both ends',
    // the loop on the hook; two together; on to the last three; two together; the last
    [
      ...first(16),
      'Row 2: Tss2tog, tss in each st to last 3 sts, tss2tog, tss in last st, RetP. (14)',
      'Row 3: Tss across, RetP. (14)',
    ],
    [16, 16, 14, 14],
  ),
  us(
    'written out in full, and bound off',
    [
      'Ch 18.',
      'Row 1: Pull up a loop in 2nd ch from hook and in each ch across (18 loops on hook); work return pass.',
      'Row 2: Tunisian simple stitch in each stitch across; return.',
      'Row 3: Tunisian purl stitch in each st across; return.',
      'Bind off: Sl st in each st across as for tss.',
    ],
    [18, 18, 18, 18, 18],
  ),
  us(
    'a stitch that the pattern explains',
    [
      'Special stitches: Tss: insert hook from right to left behind front vertical bar, yo, pull up a loop.',
      ...first(12),
      'Row 2: Tss across; return. (12)',
    ],
    [12, 12, 12],
  ),
  us(
    'wrong counts, which no turning chain explains',
    [
      'Ch 16.',
      'Row 1: Pull up a loop in 2nd ch from hook and each ch across, RetP. (17)',
      'Row 2: Tss2tog, tss in each st to last st, tss in last st, RetP. (14)',
    ],
    [16, 16, 15],
    {
      findings: [
        { row: 1, code: 'stated-count-wrong', saying: ['17', '16'] },
        { row: 2, code: 'stated-count-wrong', saying: ['14', '15'] },
      ],
    },
  ),
  uk(
    'in UK terms',
    [
      'Make 20 ch.',
      'Row 1: Draw up a loop in 2nd ch from hook and in each ch to end, return. (20 loops)',
      'Row 2: Miss first bar, tss in each vertical bar to end, return.',
    ],
    [20, 20, 20],
  ),
  uk(
    'the yarn changes for the way back',
    [
      'With A, make 18 ch.',
      'Row 1: With A, draw up a loop in 2nd ch from hook and in each ch to end; return with B. (18 sts)',
      'Row 2: With B, tss to end; return with A. (18 sts)',
    ],
    [18, 18, 18],
  ),
];
