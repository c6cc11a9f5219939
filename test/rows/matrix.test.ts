/**
 * Every way of beginning a row with every way of ending it: the same row, put together from parts that makers
 * write in any combination, counts the same. Common practice, no source.
 */
import { describe, expect, test } from 'vitest';
import { reportRows } from '../../core/study/rows.ts';

type Terms = 'us' | 'uk';

interface Rows {
  readonly name: string;
  readonly terms: Terms;
  /** Rows before; what is tried is the last row. */
  readonly before: readonly string[];
  readonly label: string;
  readonly bodies: readonly string[];
  readonly stitch: string;
  readonly count: number;
  /** How the row is closed: words behind the body, without the sign before them. */
  readonly closes: readonly string[];
}

const FLAT = ['turn', 'ch 1, turn', ''] as const;
const ROUND = [
  'join',
  'join with sl st in first sc',
  'sl st in first sc to join',
  'sl st to first st',
  '',
] as const;

const ROWS: readonly Rows[] = [
  {
    name: 'a first row in its own chain',
    terms: 'us',
    before: [],
    label: 'Row 1:',
    bodies: [
      'Ch 21, sc in 2nd ch from hook and in each ch across',
      'Ch 21, sc in second ch from hook and each ch across',
      'Ch 21; sc in 2nd ch from hook, sc in each ch across',
      'Ch 21. Sc in 2nd ch from hook and in each rem ch',
      'Ch 21, turn, sc in 2nd ch from hook and in each ch to end',
      'Ch 21, sk first ch, sc in each ch across',
      'Ch 21, 1 sc in 2nd ch from hook, 1 sc in each of next 19 ch',
      'Ch 21, starting in 2nd ch from hook, sc in each ch across',
      'Ch 21, sc in 2nd ch from hook and in next 19 ch',
    ],
    stitch: 'sc',
    count: 20,
    closes: FLAT,
  },
  {
    name: 'a row into a row',
    terms: 'us',
    before: ['Ch 21.', 'Row 1: Sc in 2nd ch from hook and in each ch across, turn.'],
    label: 'Row 2:',
    bodies: [
      'Ch 1, sc in each sc across',
      'Ch 1, sc in first sc and in each sc across',
      'Ch 1 (does not count as a st), sc in each st to end',
      'Ch 1, sc across',
      'Ch 1, sc in next st and in each st across',
      'Ch 1, sc in first 19 sts, sc in last st',
      'Ch 1, *sc in next st; rep from * across',
      'Ch 1, [sc in next 5 sts] 4 times',
      'Ch 1, sc in blo of each st across',
    ],
    stitch: 'sc',
    count: 20,
    closes: FLAT,
  },
  {
    name: 'a row into a row, UK',
    terms: 'uk',
    before: ['Make 21 ch.', 'Row 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn.'],
    label: 'Row 2:',
    bodies: [
      '1 ch, 1 dc in each dc to end',
      '1 ch, dc in each st across',
      '1 ch (does not count as a st), 1 dc in each of next 20 dc',
      '1 ch, *1 dc in next st, rep from * to end',
    ],
    stitch: 'dc',
    count: 20,
    closes: ['turn', '1 ch, turn', ''],
  },
  {
    name: 'a round of increases',
    terms: 'us',
    before: ['Rnd 1: Ch 1, 6 sc in magic ring, join with sl st in first sc. (6 sc)'],
    label: 'Rnd 2:',
    bodies: [
      'Ch 1, 2 sc in each sc around',
      'Ch 1, 2 sc in first sc and in each sc around',
      'Ch 1, *2 sc in next sc; rep from * around',
      'Ch 1, [2 sc in next st] 6 times',
      'Ch 1, 2 sc in each of next 6 sts',
    ],
    stitch: 'sc',
    count: 12,
    closes: ROUND,
  },
];

const counted = (n: number, stitch: string): readonly string[] => [
  `(${n})`,
  `(${n} ${stitch})`,
  `[${n} ${stitch}]`,
  `(${n} sts)`,
  `(${n} ${stitch} made)`,
  `(${n} ${stitch} total)`,
  `- ${n} ${stitch}`,
  `– ${n} sts`,
  `= ${n} ${stitch}`,
];

/** The row with its count before and behind what closes it, with each sign that may stand between. */
function endings(body: string, close: string, count: string): readonly string[] {
  if (close === '') return [`${body} ${count}.`, `${body}. ${count}`, `${body}, ${count}`];
  const upper = close[0]!.toUpperCase() + close.slice(1);
  const behind = [
    `${body}, ${close}. ${count}`,
    `${body}, ${close} ${count}.`,
    `${body}; ${close}. ${count}`,
    `${body}. ${upper}. ${count}`,
  ];
  if (!/^[([]/.test(count)) return behind;
  return [
    ...behind,
    `${body} ${count}, ${close}.`,
    `${body} ${count}; ${close}.`,
    `${body}. ${count} ${upper}.`,
    `${body} ${count}. ${upper}.`,
  ];
}

function verdict(rows: Rows, row: string): { count: number | null; codes: readonly string[] } {
  const report = reportRows([...rows.before, `${rows.label} ${row}`].join('\n'), rows.terms);
  const last = report.rows.at(-1)!;
  const codes = report.rows.flatMap(({ findings }) =>
    findings.filter(({ severity }) => severity !== 'note').map(({ code }) => code),
  );
  return { count: last.counts[0] ?? null, codes };
}

describe.each(ROWS)('$name', (rows) => {
  test.each(rows.bodies)('%s', (body) => {
    const off = rows.count - 1;
    const wrong: string[] = [];
    for (const close of rows.closes) {
      for (const count of counted(rows.count, rows.stitch))
        for (const row of endings(body, close, count)) {
          const { count: got, codes } = verdict(rows, row);
          if (got !== rows.count || codes.length > 0) wrong.push(`${row} → ${got} ${codes}`);
        }
      for (const count of counted(off, rows.stitch))
        for (const row of endings(body, close, count)) {
          const { count: got, codes } = verdict(rows, row);
          if (got !== rows.count || codes.join() !== 'stated-count-wrong')
            wrong.push(`${row} → ${got} ${codes}`);
        }
    }
    expect(wrong).toEqual([]);
  });
});
