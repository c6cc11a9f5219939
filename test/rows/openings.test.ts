/**
 * Every label with every way of beginning a row and every way of writing a repeat: the same row, put together from
 * parts that makers write in any combination, counts the same. Common practice, no source.
 */
import { describe, expect, test } from 'vitest';
import { reportRows } from '../../core/study/rows.ts';

type Terms = 'us' | 'uk';

interface Rows {
  readonly name: string;
  readonly terms: Terms;
  readonly before: readonly string[];
  readonly labels: readonly string[];
  readonly leads: readonly string[];
  /** Repeats, all of the same meaning. */
  readonly bodies: readonly string[];
  readonly tail: string;
  readonly count: number;
  readonly spaces: number;
}

const ROWS: readonly Rows[] = [
  {
    name: 'a round that grows by six',
    terms: 'us',
    before: ['Rnd 1: 6 sc in magic ring. (6)', 'Rnd 2: 2 sc in each sc around. (12)'],
    labels: [
      'Rnd 3:',
      'Round 3:',
      'R3:',
      'RND 3:',
      'Rnd 3.',
      '3rd rnd:',
      'Round 3 –',
      'Rd 3:',
      'Rnd 3 (RS):',
      '3.',
      '3)',
    ],
    leads: [''],
    bodies: [
      '*sc in next st, 2 sc in next st; rep from * around',
      '*Sc in next st, 2 sc in next st. Rep from * around',
      '*sc in next st, inc in next st*; rep from * to * around',
      '*sc, inc; rep from * 5 more times',
      '*sc 1, inc*, rep from * around',
      '[sc in next st, 2 sc in next st] 6 times',
      '[Sc in next, 2 sc in next] around',
      '(sc in next st, 2 sc in next st) six times',
      '(sc, inc) x 6',
      '(sc, inc) × 6',
      '(1 sc, 1 inc) * 6',
      '6x (sc, inc)',
      '{sc in next st, 2 sc in next st} 6 times',
      'sc in next st, 2 sc in next st, *sc in next st, 2 sc in next st; rep from * 4 more times',
      '*sc in the next stitch, 2 sc in the next stitch, repeat from * to end of round',
      '*sc in next st, 2 sc in next st; repeat from * five times more',
      '*sc in next sc, work 2 sc in next sc; rep from * to end of rnd',
      'inc every 2nd st',
    ],
    tail: '(18)',
    count: 18,
    spaces: 0,
  },
  {
    name: 'a row of mesh',
    terms: 'us',
    before: ['Row 1: Ch 22, dc in 4th ch from hook and in each ch across, turn. (20 dc)'],
    labels: ['Row 2:', 'Row 2 (WS):', 'ROW 2:', 'R2:', '2nd row:', 'Row 2 -', 'Row 2 (wrong side):'],
    leads: [
      'Ch 4 (counts as dc, ch 1), sk next dc, dc in next dc, ',
      'Ch 4 (counts as first dc + ch 1), skip first 2 sts, dc in next st, ',
      'Ch 4, sk next st, dc in next st, ',
      'Ch 3 (counts as dc), ch 1, sk next dc, dc in next dc, ',
      'Ch 4 [counts as 1 dc and ch-1 sp], miss next dc, dc in next dc, ',
    ],
    bodies: [
      '*ch 1, sk next dc, dc in next dc; rep from * to last st, dc in last st',
      '*ch 1, skip 1 st, dc in next st; rep from * until 1 st rem, dc in last st',
      '[ch 1, sk next st, dc in next st] 8 times, dc in top of turning ch',
      '(ch 1, sk next st, dc in next st) 8 times, dc in last st',
      '*ch 1, sk 1, dc in next st*; rep from * to * to last st, dc in last st',
      '*ch 1, sk next st, dc in next st; rep from * 7 more times, dc in 3rd ch of beg ch-3',
      '*ch 1, sk next st, dc in next st, rep from * across to last st, dc in last st',
    ],
    tail: ', turn. (11 dc, 9 ch-1 sps)',
    count: 11,
    spaces: 9,
  },
  {
    name: 'a row of shells, UK',
    terms: 'uk',
    before: ['Row 1: Make 26 ch, 1 dc in 2nd ch from hook and in each ch to end, turn. (25 dc)'],
    labels: ['Row 2:', 'Row 2 (RS):', '2nd row:', 'Row 2 -'],
    leads: [
      '1 ch, 1 dc in first dc, ',
      '1 ch (does not count as a st), 1 dc into first dc, ',
      'Ch 1, dc in first dc, ',
    ],
    bodies: [
      '*miss 2 dc, 5 tr in next dc, miss 2 dc, 1 dc in next dc; rep from * to end',
      '*miss next 2 dc, 5 tr into next dc, miss next 2 dc, 1 dc into next dc, rep from * to end',
      '*skip 2 sts, (5 tr) in next st, skip 2 sts, 1 dc in next st; repeat from * 3 more times',
      '[miss 2 dc, 5 tr in next dc, miss 2 dc, 1 dc in next dc] 4 times',
      '(miss 2 sts, work 5 tr in next st, miss 2 sts, dc in next st) four times',
      '*miss 2 sts, 5 tr all in next st, miss 2 sts, 1 dc in next st; rep from * ending with 1 dc in last dc',
    ],
    tail: ', turn. (20 tr, 5 dc)',
    count: 25,
    spaces: 0,
  },
  {
    name: 'a square',
    terms: 'us',
    before: [
      'Ch 4, join with sl st to form ring.',
      'Rnd 1: Ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * twice; join with sl st in top of ch-3. (12 dc)',
    ],
    labels: ['Rnd 2:', 'Round 2:', 'Rnd 2 (RS):', '2nd round:'],
    leads: [
      'Sl st in next 2 dc and in ch-2 sp, ch 3 (counts as dc), (2 dc, ch 2, 3 dc) in same sp, ',
      'Sl st to corner sp, ch 3, [2 dc, ch 2, 3 dc] in same corner sp, ',
      'Sl st across to next ch-2 sp, (ch 3, 2 dc, ch 2, 3 dc) in same sp, ',
      'Sl st in each of next 2 dc, sl st in next ch-2 sp; ch 3, 2 dc in same sp, ch 2, 3 dc in same sp, ',
    ],
    bodies: [
      '*ch 1, (3 dc, ch 2, 3 dc) in next ch-2 sp; rep from * twice more, ch 1',
      '*ch 1, (3 dc, ch 2, 3 dc) in next corner; rep from * around, ch 1',
      '[ch 1, (3 dc, ch 2, 3 dc) in next ch-2 sp] 3 times, ch 1',
      '*ch 1, in next ch-2 sp work (3 dc, ch 2, 3 dc); rep from * 2 more times, ch 1',
      'ch 1, *[3 dc, ch 2, 3 dc] in next corner sp, ch 1; rep from * around',
      'ch 1, (3 dc, ch 2, 3 dc, ch 1) in each of next 3 ch-2 sps',
    ],
    tail: '; join with sl st in top of beg ch-3. (24 dc, 4 ch-2 sps, 4 ch-1 sps)',
    count: 24,
    spaces: 8,
  },
];

describe.each(ROWS)('$name', ({ terms, before, labels, leads, bodies, tail, count, spaces }) => {
  test.each(bodies)('%s', (body) => {
    const wrong: string[] = [];
    for (const label of labels)
      for (const lead of leads) {
        const row = `${label} ${lead}${body}${tail.startsWith('(') ? ` ${tail}` : tail}`;
        const report = reportRows([...before, row].join('\n'), terms);
        const last = report.rows.at(-1)!;
        const codes = report.rows.flatMap(({ findings }) =>
          findings.filter(({ severity }) => severity !== 'note').map(({ code }) => code),
        );
        const got = `${last.counts[0]} ${last.spaces[0]} ${codes}`;
        if (got !== `${count} ${spaces} `) wrong.push(`${row} → ${got}`);
      }
    expect(wrong).toEqual([]);
  });
});
