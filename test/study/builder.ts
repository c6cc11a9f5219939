/**
 * A small graded pattern for tests of the study, and the parts to vary it with. Invented numbers; nothing here
 * expects anything.
 */

import type { Block, FigureText, Line, Pattern, Piece, RowBlock } from '../../core/document/pattern.ts';
import { FIGURE } from '../../core/document/pattern.ts';
import { blankPattern } from '../../core/outlines/blank.ts';

/** "Ch {panel stitches + 1}." with each brace a figure. */
export function written(text: string): FigureText {
  const figures: string[] = [];
  const plain = text.replace(/\{([^}]*)\}/g, (_, expression: string) => {
    figures.push(expression);
    return FIGURE;
  });
  return { text: plain, figures };
}

export function row(id: string, text: string, more: Partial<RowBlock> = {}): RowBlock {
  return { type: 'row', id, text: written(text), sizes: null, form: 'row', title: null, ...more };
}

export function piece(id: string, name: string, blocks: readonly Block[], more: Partial<Piece> = {}): Piece {
  return {
    id,
    name,
    make: 1,
    start: { kind: 'chain' },
    firstSide: 'RS',
    gauge: '',
    blocks,
    meets: [],
    ...more,
  };
}

const line = { printed: null, note: null } as const;

/** Lines of a panel: stitches, rows, a taper. */
export function panelLines(width = 45, length = 30): readonly Line[] {
  return [
    {
      ...line,
      id: 'w',
      name: 'width',
      kind: 'typed',
      values: { each: { 's-s': cm(width), 's-m': cm(width + 6), 's-l': cm(width + 12) } },
    },
    { ...line, id: 'h', name: 'length', kind: 'typed', values: { all: cm(length) } },
    {
      ...line,
      id: 'st',
      name: 'panel stitches',
      kind: 'stitches',
      length: 'width',
      gauge: 'g',
      state: 'relaxed',
      multiple: 3,
      plus: 1,
      rounding: 'nearest',
      parity: 'any',
      counts: 'stitches',
      extra: 0,
      tolerance: null,
    },
    {
      ...line,
      id: 'ro',
      name: 'panel rows',
      kind: 'rows',
      length: 'length',
      gauge: 'g',
      cycle: 2,
      endOn: 2,
      before: 0,
      rounding: 'nearest',
      tolerance: null,
    },
    {
      ...line,
      id: 'ta',
      name: 'taper',
      kind: 'shaping',
      start: 'panel stitches',
      end: 'panel stitches − 10',
      rows: '20',
      perEnd: 1,
      ends: 2,
      step: 2,
    },
  ];
}

export const cm = (value: number) => ({ value, unit: 'cm' as const });

/** Three sizes, one panel with a repeat and a taper, and a band worked along its top. */
export function smallPattern(): Pattern {
  const base = blankPattern({ title: 'Panel', terms: 'us', units: 'metric', date: '2026-11-25' });
  const size = (id: string, label: string) => ({
    id,
    label,
    audience: 'woman' as const,
    chart: null,
    age: null,
  });
  return {
    ...base,
    sizes: [size('s-s', 'S'), size('s-m', 'M'), size('s-l', 'L')],
    sample: 's-m',
    lines: panelLines(),
    gauges: [
      {
        id: 'g',
        pattern: 'double crochet',
        stitches: 16,
        rows: 9,
        width: cm(10),
        height: cm(10),
        blocked: true,
        stretch: null,
        hook: null,
        rounds: false,
      },
    ],
    specials: [
      {
        id: 'sp-fan',
        nameUs: 'fan',
        nameUk: 'fan',
        abbrUs: 'fan',
        abbrUk: 'fan',
        text: written('(dc, ch 1, dc) in same st'),
      },
    ],
    notes: [written('Ch 3 counts as dc throughout.')],
    pieces: [
      piece('p-panel', 'Panel', [
        row('r-0', 'Ch {panel stitches + 2}.', { form: 'foundation' }),
        row('r-1', 'Dc in 4th ch from hook and in each ch across, turn.'),
        row('r-2', 'Ch 3, dc in next st and in each st across, turn.'),
        row('r-3', 'Ch 3, *dc in next st, ch 1, sk 1 st, dc in next st; rep from * across, turn.'),
        row('r-4', 'Ch 3, dc in each st and ch-1 sp across, turn.'),
        {
          type: 'repeat',
          id: 'q-1',
          first: 'r-3',
          last: 'r-4',
          until: { kind: 'total', rows: 'panel rows' },
          sizes: null,
        },
        {
          type: 'shaping',
          id: 'q-2',
          line: 'taper',
          sizes: null,
          shaped: row('r-5', 'Ch 3, dc2tog, dc in each st to last 3 sts, dc2tog, dc in last st, turn.'),
          even: row('r-6', 'Ch 3, dc in next st and in each st across, turn.'),
        },
      ]),
      piece(
        'p-band',
        'Band',
        [
          row('r-7', 'Ch 1, sc in each st across, turn.'),
          row('r-8', 'Ch 1, sc in each st across, turn. ({panel stitches − 10} sc)'),
        ],
        {
          start: {
            kind: 'edges',
            edges: [{ piece: 'p-panel', kind: 'top', amount: null, which: 1 }],
            round: false,
          },
        },
      ),
    ],
  };
}
