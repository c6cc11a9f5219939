/**
 * Patterns of a given length and breadth for measuring. Invented, and only as varied as measuring needs.
 */
import type { Block, Pattern } from '../../core/document/pattern.ts';
import { cm, piece, row, smallPattern, written } from '../study/builder.ts';

/**
 * Rows that keep their count, over any multiple of 4 plus 1 stitches, each worded otherwise than the one before:
 * `n` is a number that differs from row to row.
 */
const STEADY: readonly ((n: number) => string)[] = [
  (n) => `Ch 3, dc in next ${n} sts and in each st across, turn.`,
  (n) => `Ch 1, sc in each of next ${n} sts, sc in each st across, turn.`,
  (n) =>
    `Ch 3, *sk 1 st, 2 dc in next st; rep from * ${n} more times, *sk 1 st, 2 dc in next st; rep from * across, turn.`,
  (n) =>
    `Ch 1, sc in first st, [fpdc around next st, sc in next st] ${n} times, *fpdc around next st, sc in next st; rep from * across, turn.`,
  (n) =>
    `Ch 2 (counts as hdc), hdc in each of next ${n} sts, *hdc in next st; rep from * to last 4 sts, hdc in last 4 sts, turn.`,
  (n) => `Ch 1, sc in blo of next ${n} sts, sc in blo of each st across, turn.`,
];

/** Notes as makers write them, one for each number. */
const note = (n: number) =>
  `Note ${n}: work the first ${n + 2} rows loosely, and check the count of stitches before the piece is turned.`;

export interface Extent {
  readonly sizes: number;
  readonly rows: number;
  readonly stitches: number;
}

/** A pattern of one piece of `rows` written rows, `stitches` wide in its middle size. */
export function longPattern({ sizes, rows, stitches }: Extent): Pattern {
  const base = smallPattern();
  const list = Array.from({ length: sizes }, (_, i) => ({
    id: `s-${i}`,
    label: `S${i + 1}`,
    audience: 'woman' as const,
    chart: null,
    age: null,
  }));
  const widths = Object.fromEntries(
    list.map(({ id }, i) => [id, cm(((stitches + (i - Math.floor(sizes / 2)) * 4) / 16) * 10)]),
  );
  const blocks: Block[] = [
    row('b-0', 'Ch {panel stitches + 2}.', { form: 'foundation' }),
    row('b-1', 'Dc in 4th ch from hook and in each ch across, turn.'),
  ];
  for (let i = 0; i < rows - 1; i++) blocks.push(row(`b-${i + 2}`, STEADY[i % STEADY.length]!(1 + (i % 67))));
  return {
    ...base,
    sizes: list,
    sample: 's-0',
    lines: base.lines.map((line) => {
      if (line.name === 'width') return { ...line, kind: 'typed' as const, values: { each: widths } };
      return line.kind === 'stitches' ? { ...line, multiple: 4, plus: 1 } : line;
    }),
    notes: [...base.notes, ...Array.from({ length: 12 }, (_, n) => written(note(n)))],
    pieces: [piece('p-long', 'Panel', blocks)],
  };
}
