/**
 * Written rows: the count after a row in every form, right and wrong. A wrong one is an error that names
 * both numbers; the row's own count stays what was worked.
 */
import { lines, type RowCase } from '../types.ts';

const us20 = (count: string): string =>
  lines('Ch 21.', `Row 1: Sc in 2nd ch from hook and in each ch across, turn.${count}`);
const usMesh = (count: string): string =>
  lines(
    'Ch 29.',
    `Row 1: Dc in 8th ch from hook, *ch 2, sk 2 ch, dc in next ch; rep from * across, turn.${count}`,
  );
const uk20 = (count: string): string =>
  lines('Make 21 ch.', `Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn.${count}`);
const ukTr = (count: string): string =>
  lines('Make 22 ch.', `Row 1: 1 tr in 4th ch from hook, 1 tr in each ch to end, turn.${count}`);

const wrong = (words: string, stated: string, worked: string): NonNullable<RowCase['findings']> => [
  { row: 1, code: 'stated-count-wrong', words, saying: [stated, worked] },
];

export const counts: readonly RowCase[] = [
  {
    name: 'a count in brackets before the yarn is cut, in a text of several sizes',
    terms: 'us',
    text: lines('Sizes: S (M, L)', 'R1: 6 sc in mr (6)', 'R2: inc x6 (12)', 'R3: dec x6 (6), fasten off'),
    counts: [
      [6, 6, 6],
      [12, 12, 12],
      [6, 6, 6],
    ],
  },
  {
    name: 'stitches and a chain left for a pocket',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Hdc in 2nd ch from hook and in each ch across. (24 hdc)',
      'Row 2: Ch 1, turn. Hdc in next 6 sts, ch 12, skip next 12 sts, hdc in last 6 sts. (12 hdc + ch-12)',
      'Row 3: Ch 1, turn. Hdc in next 6 sts, hdc in next 12 chs, hdc in last 6 sts. (24 hdc)',
    ),
    counts: [25, 24, 12, 24],
    spaces: [0, 0, 1, 0],
    source: 'common practice, no source',
  },
  {
    name: 'another chain than the one said',
    terms: 'us',
    text: lines(
      'Ch 25.',
      'Row 1: Hdc in 2nd ch from hook and in each ch across. (24 hdc)',
      'Row 2: Ch 1, turn. Hdc in next 6 sts, ch 12, skip next 12 sts, hdc in last 6 sts. (12 hdc + ch-10)',
    ),
    counts: [25, 24, 12],
    spaces: [0, 0, 1],
    findings: [{ row: 2, code: 'stated-count-wrong' }],
  },
  {
    name: 'count behind a long dash without spaces',
    terms: 'us',
    text: lines('Ch 45.', 'Row 1: Sc in second ch from hook and in each ch across—44 sc.'),
    counts: [45, 44],
  },
  {
    name: 'wrong count behind a long dash without spaces',
    terms: 'us',
    text: lines('Ch 45.', 'Row 1: Sc in second ch from hook and in each ch across—46 sc.'),
    counts: [45, 44],
    findings: [{ row: 1, code: 'stated-count-wrong' }],
  },
  {
    name: 'count behind a turn and a long dash',
    terms: 'us',
    text: lines('Ch 45.', 'Row 1: Sc in second ch from hook and in each ch across, turn—44 sc.'),
    counts: [45, 44],
  },
  {
    name: 'wrong count behind a turn and a long dash',
    terms: 'us',
    text: lines('Ch 45.', 'Row 1: Sc in second ch from hook and in each ch across, turn—46 sc.'),
    counts: [45, 44],
    findings: [{ row: 1, code: 'stated-count-wrong' }],
  },
  {
    name: 'count behind a total and a chain',
    terms: 'us',
    text: lines('Ch 45.', 'Row 1: Sc in second ch from hook and in each ch across, 44 sc total, ch 1, turn.'),
    counts: [45, 44],
  },
  {
    name: 'wrong count behind a total and a chain',
    terms: 'us',
    text: lines('Ch 45.', 'Row 1: Sc in second ch from hook and in each ch across, 46 sc total, ch 1, turn.'),
    counts: [45, 44],
    findings: [{ row: 1, code: 'stated-count-wrong' }],
  },
  {
    name: 'count behind an upright stroke',
    terms: 'us',
    text: lines('Ch 45.', 'Row 1: Sc in second ch from hook and in each ch across, turn | 44 sc'),
    counts: [45, 44],
  },
  {
    name: 'wrong count behind an upright stroke',
    terms: 'us',
    text: lines('Ch 45.', 'Row 1: Sc in second ch from hook and in each ch across, turn | 46 sc'),
    counts: [45, 44],
    findings: [{ row: 1, code: 'stated-count-wrong' }],
  },
  { name: 'count in parentheses', terms: 'us', text: us20(' (20 sc)'), counts: [21, 20] },
  { name: 'count in square brackets', terms: 'us', text: us20(' [20]'), counts: [21, 20] },
  { name: 'count after a hyphen', terms: 'us', text: us20(' - 20 sc.'), counts: [21, 20] },
  { name: 'count after an en dash', terms: 'us', text: us20(' – 20 sts'), counts: [21, 20] },
  { name: 'count after an em dash', terms: 'us', text: us20(' — 20 sts.'), counts: [21, 20] },
  { name: 'count after a colon', terms: 'us', text: us20(': 20 sts'), counts: [21, 20] },
  { name: 'count after an equals sign', terms: 'us', text: us20(' = 20 sts'), counts: [21, 20] },
  { name: 'count bare with a noun', terms: 'us', text: us20(' 20 sc.'), counts: [21, 20] },
  { name: 'count bare in parentheses', terms: 'us', text: us20(' (20)'), counts: [21, 20] },
  { name: 'count as a sentence', terms: 'us', text: us20(' Total 20 sc.'), counts: [21, 20] },
  { name: 'count with "at end"', terms: 'us', text: us20(' 20 sc at end of row.'), counts: [21, 20] },
  { name: 'count "made"', terms: 'us', text: us20(' (20 sc made)'), counts: [21, 20] },
  { name: 'spaces first', terms: 'us', text: usMesh(' (8 ch-2 sps, 9 dc)'), counts: [29, 9], spaces: [0, 8] },
  { name: 'spaces alone', terms: 'us', text: usMesh(' {8 ch-2 sps}'), counts: [29, 9], spaces: [0, 8] },
  {
    name: 'stitches and spaces with "and"',
    terms: 'us',
    text: usMesh(' – 9 dc and 8 sps.'),
    counts: [29, 9],
    spaces: [0, 8],
  },
  {
    name: 'total and its parts',
    terms: 'us',
    text: lines('Fsc 20.', 'Row 1: Ch 1, sc in next 14 sts, hdc in last 6 sts, turn. (20 sts: 14 sc, 6 hdc)'),
    counts: [20, 20],
    byKind: [null, { sc: 14, hdc: 6 }],
  },
  {
    name: 'not counting the turning chain',
    terms: 'us',
    // 19 dc and the chain
    text: lines(
      'Ch 22.',
      'Row 1: Dc in 4th ch from hook and in each ch across, turn. (19 dc, not counting turning ch)',
    ),
    counts: [22, 20],
  },
  {
    name: 'counting the beginning chain',
    terms: 'us',
    text: lines(
      'Ch 22.',
      'Row 1: Dc in 4th ch from hook and in each ch across, turn. (20 dc, counting beg ch)',
    ),
    counts: [22, 20],
  },
  {
    name: 'sts + turning ch',
    terms: 'us',
    text: lines('Ch 22.', 'Row 1: Dc in 4th ch from hook and in each ch across, turn. 19 sts + turning ch.'),
    counts: [22, 20],
  },
  {
    name: 'count of each size',
    terms: 'us',
    text: lines('Ch 25 (29, 33).', 'Row 1: Sc in 2nd ch from hook and in each ch across. (24 (28, 32) sc)'),
    counts: [
      [25, 29, 33],
      [24, 28, 32],
    ],
  },
  {
    name: 'count of shells',
    terms: 'us',
    text: lines(
      'Shell: 5 dc in same st.',
      'Ch 26.',
      'Row 1: Sc in 2nd ch from hook, *sk 2 ch, shell in next ch, sk 2 ch, sc in next ch; rep from * across, turn — 4 shells, 5 sc.',
    ),
    counts: [26, 25],
    units: [null, { shell: 4 }],
  },
  {
    name: 'stitches and increases',
    terms: 'us',
    text: lines('Rnd 1: 6 sc in magic ring. (6 sc)', 'Rnd 2: Inc in each st around. (12 sts, 6 incs)'),
    counts: [6, 12],
  },
  {
    name: 'wrong in parentheses',
    terms: 'us',
    text: us20(' (21 sc)'),
    counts: [21, 20],
    findings: wrong('21 sc', '21', '20'),
  },
  {
    name: 'wrong bare in brackets',
    terms: 'us',
    text: us20(' [19]'),
    counts: [21, 20],
    findings: wrong('19', '19', '20'),
  },
  {
    name: 'wrong after a dash',
    terms: 'us',
    text: us20(' – 22 sts.'),
    counts: [21, 20],
    findings: wrong('22 sts', '22', '20'),
  },
  {
    name: 'wrong after an equals sign',
    terms: 'us',
    text: us20(' = 18 sts'),
    counts: [21, 20],
    findings: wrong('18 sts', '18', '20'),
  },
  {
    name: 'wrong bare sentence',
    terms: 'us',
    text: us20(' 24 sc.'),
    counts: [21, 20],
    findings: wrong('24 sc', '24', '20'),
  },
  {
    name: 'wrong number of spaces',
    terms: 'us',
    text: usMesh(' (9 dc, 7 ch-2 sps)'),
    counts: [29, 9],
    spaces: [0, 8],
    findings: wrong('7 ch-2 sps', '7', '8'),
  },
  {
    name: 'wrong number of stitches beside right spaces',
    terms: 'us',
    text: usMesh(' (10 dc, 8 ch-2 sps)'),
    counts: [29, 9],
    spaces: [0, 8],
    findings: wrong('10 dc', '10', '9'),
  },
  {
    name: 'wrong in one size of three',
    terms: 'us',
    text: lines('Ch 25 (29, 33).', 'Row 1: Sc in 2nd ch from hook and in each ch across. 24 (27, 32) sc'),
    counts: [
      [25, 29, 33],
      [24, 28, 32],
    ],
    findings: [
      { row: 1, code: 'stated-count-wrong', words: '24 (27, 32)', sizes: [1], saying: ['27', '28'] },
    ],
  },
  {
    name: 'wrong after an increase round',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in magic ring. (6)',
      'Rnd 2: 2 sc in each st around. (12)',
      'Rnd 3: (Sc in next st, 2 sc in next st) 6 times. (20)',
    ),
    counts: [6, 12, 18],
    findings: [{ row: 2, code: 'stated-count-wrong', words: '20', severity: 'error', saying: ['20', '18'] }],
  },
  {
    name: 'wrong in a range of rows',
    terms: 'us',
    text: lines(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)',
      'Rows 2-4: Ch 1, sc2tog, sc in each st across, turn. (18 sts)',
    ),
    counts: [21, 20, 17],
    findings: [{ row: 2, code: 'stated-count-wrong', words: '18 sts', saying: ['18', '17'] }],
  },
  {
    name: 'wrong kind: right total, wrong parts',
    terms: 'us',
    text: lines('Fsc 20.', 'Row 1: Ch 1, sc in next 14 sts, hdc in last 6 sts, turn. (20 sts: 13 sc, 7 hdc)'),
    counts: [20, 20],
    findings: [{ row: 1, code: 'stated-count-wrong', saying: ['13', '14'] }],
  },
  {
    name: 'wrong number of shells',
    terms: 'us',
    text: lines(
      'Shell: 5 dc in same st.',
      'Ch 26.',
      'Row 1: Sc in 2nd ch from hook, *sk 2 ch, shell in next ch, sk 2 ch, sc in next ch; rep from * across, turn. (5 shells)',
    ),
    counts: [26, 25],
    findings: [{ row: 1, code: 'stated-count-wrong', words: '5 shells', saying: ['5', '4'] }],
  },
  { name: 'count in parentheses', terms: 'uk', text: uk20(' (20 dc)'), counts: [21, 20] },
  { name: 'count in square brackets', terms: 'uk', text: uk20(' [20 sts]'), counts: [21, 20] },
  { name: 'count after a dash', terms: 'uk', text: uk20(' – 20 dc.'), counts: [21, 20] },
  { name: 'count bare', terms: 'uk', text: uk20(' 20 sts.'), counts: [21, 20] },
  { name: 'count as a sentence', terms: 'uk', text: ukTr(' Total 20 tr.'), counts: [22, 20] },
  {
    name: 'counting the turning chain',
    terms: 'uk',
    text: ukTr(' (20 tr, counting 3 ch as 1 tr)'),
    counts: [22, 20],
  },
  {
    name: 'not counting the turning chain',
    terms: 'uk',
    text: ukTr(' 19 tr, not counting turning ch.'),
    counts: [22, 20],
  },
  {
    name: 'a sum of stitches and chains',
    terms: 'uk',
    // 10 htr, 2 ch over 2, 10 htr
    text: lines(
      'Row 1: Work 22 fdc, turn.',
      'Row 2: 1 ch, 1 htr in each of next 10 sts, 2 ch, miss 2 sts, 1 htr in each of last 10 sts, turn. (20 htr + 2 ch)',
    ),
    counts: [22, 20],
    spaces: [0, 1],
  },
  {
    name: 'count of each size',
    terms: 'uk',
    text: lines(
      'Make 62 (68, 74) ch.',
      'Row 1: 1 tr in 4th ch from hook, 1 tr in each ch to end, turn. [60 (66, 72) tr]',
    ),
    counts: [
      [62, 68, 74],
      [60, 66, 72],
    ],
  },
  {
    name: 'wrong in parentheses',
    terms: 'uk',
    text: uk20(' (21 dc)'),
    counts: [21, 20],
    findings: wrong('21 dc', '21', '20'),
  },
  {
    name: 'wrong after a dash',
    terms: 'uk',
    text: ukTr(' – 19 tr.'),
    counts: [22, 20],
    findings: wrong('19 tr', '19', '20'),
  },
  {
    name: 'wrong in two sizes of four',
    terms: 'uk',
    text: lines(
      'Make 41 (45, 49, 53) ch.',
      'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end. 40 (46, 48, 54) dc.',
    ),
    counts: [
      [41, 45, 49, 53],
      [40, 44, 48, 52],
    ],
    findings: [
      { row: 1, code: 'stated-count-wrong', words: '40 (46, 48, 54)', saying: ['46', '44', '54', '52'] },
    ],
  },
  {
    name: 'wrong after a decrease round',
    terms: 'uk',
    // 24 → 18
    text: lines(
      'Make 24 ch, join with ss in first ch to form a ring.',
      'Rnd 1: 1 ch, 1 dc in each ch around, join with ss in first dc. (24 dc)',
      'Rnd 2: 1 ch, (1 dc in each of next 2 dc, dc2tog) 6 times, join with ss in first dc. (16 sts)',
    ),
    counts: [null, 24, 18],
    findings: [
      { row: 2, code: 'stated-count-wrong', words: '16 sts', severity: 'error', saying: ['16', '18'] },
    ],
  },
  { name: 'count after an equals sign', terms: 'uk', text: uk20(' = 20 dc'), counts: [21, 20] },
  { name: 'count after an em dash', terms: 'uk', text: uk20(' — 20 dc'), counts: [21, 20] },
  { name: 'count after a colon', terms: 'uk', text: ukTr(': 20 tr.'), counts: [22, 20] },
  { name: 'count bare in parentheses', terms: 'uk', text: ukTr(' (20)'), counts: [22, 20] },
  { name: 'count in full words', terms: 'uk', text: uk20(' (20 double crochet)'), counts: [21, 20] },
  {
    name: 'wrong in square brackets',
    terms: 'uk',
    text: ukTr(' [21 tr]'),
    counts: [22, 20],
    findings: wrong('21 tr', '21', '20'),
  },
  {
    name: 'wrong as a sentence',
    terms: 'uk',
    text: uk20(' Total 19 dc.'),
    counts: [21, 20],
    findings: wrong('19 dc', '19', '20'),
  },
  {
    name: 'wrong after an equals sign',
    terms: 'uk',
    text: ukTr(' = 22 sts'),
    counts: [22, 20],
    findings: wrong('22 sts', '22', '20'),
  },
  {
    name: 'spaces and stitches',
    terms: 'uk',
    text: lines(
      'Make 29 ch.',
      'Row 1: 1 tr in 8th ch from hook, *2 ch, miss 2 ch, 1 tr in next ch; rep from * to end, turn. 8 ch-sps and 9 tr.',
    ),
    counts: [29, 9],
    spaces: [0, 8],
  },
  {
    name: 'wrong number of spaces',
    terms: 'uk',
    text: lines(
      'Make 29 ch.',
      'Row 1: 1 tr in 8th ch from hook, *2 ch, miss 2 ch, 1 tr in next ch; rep from * to end, turn. (9 ch-sps)',
    ),
    counts: [29, 9],
    spaces: [0, 8],
    findings: wrong('9 ch-sps', '9', '8'),
  },
];
