/**
 * A small pattern that the technical edit has nothing to say of, and the ways to spoil it: a front and a back
 * of plain rows in three sizes, joined at their sides. Invented numbers; nothing here expects anything.
 */

import type { Block, FigureText, Line, Meeting, Pattern, Piece, Size } from '../../core/document/pattern.ts';
import { FIGURE } from '../../core/document/pattern.ts';
import type { Finding } from '../../core/finding.ts';
import { blankPattern } from '../../core/outlines/blank.ts';
import { review } from '../../core/review/index.ts';
import { study } from '../../core/study/index.ts';

export const cm = (value: number) => ({ value, unit: 'cm' as const });

/** "Ch {panel stitches + 1}." with each brace a figure. */
export function written(text: string): FigureText {
  const figures: string[] = [];
  const plain = text.replace(/\{([^}]*)\}/g, (_, expression: string) => {
    figures.push(expression);
    return FIGURE;
  });
  return { text: plain, figures };
}

export function row(id: string, text: string, sizes: readonly string[] | null = null): Block {
  return { type: 'row', id, text: written(text), sizes, form: 'row', title: null };
}

export function repeat(id: string, first: string, last: string, rows: string): Block {
  return { type: 'repeat', id, first, last, until: { kind: 'total', rows }, sizes: null };
}

const line = { printed: null, note: null } as const;

function lines(): readonly Line[] {
  const each = (...values: readonly number[]) => ({
    each: Object.fromEntries(values.map((value, i) => [`size-${'sml'[i]}`, cm(value)])),
  });
  return [
    { ...line, id: 'width', name: 'panel width', printed: 'Width', kind: 'typed', values: each(45, 50, 55) },
    { ...line, id: 'height', name: 'height', printed: 'Length', kind: 'typed', values: each(40, 42, 44) },
    {
      ...line,
      id: 'stitches',
      name: 'panel stitches',
      kind: 'stitches',
      length: 'panel width',
      gauge: 'gauge',
      state: 'relaxed',
      multiple: 1,
      plus: 0,
      rounding: 'nearest',
      parity: 'any',
      counts: 'stitches',
      extra: 0,
      tolerance: null,
    },
    {
      ...line,
      id: 'rows',
      name: 'panel rows',
      kind: 'rows',
      length: 'height',
      gauge: 'gauge',
      cycle: 2,
      endOn: 2,
      before: 0,
      rounding: 'nearest',
      tolerance: null,
    },
    {
      ...line,
      id: 'around',
      name: 'finished width',
      printed: 'All round',
      kind: 'formula',
      formula: 'width of panel stitches × 2',
    },
  ];
}

function panel(id: string, name: string, meets: readonly Meeting[]): Piece {
  return {
    id,
    name,
    make: 1,
    start: { kind: 'chain' },
    firstSide: 'RS',
    gauge: '',
    blocks: [
      {
        type: 'row',
        id: `${id}-0`,
        text: written('Ch {panel stitches + 1}.'),
        sizes: null,
        form: 'foundation',
        title: null,
      },
      row(`${id}-1`, 'Sc in 2nd ch from hook and in each ch across, turn.'),
      row(`${id}-2`, 'Ch 1, sc in each st across, turn.'),
      repeat(`${id}-3`, `${id}-2`, `${id}-2`, 'panel rows'),
      { type: 'prose', id: `${id}-4`, text: written('Fasten off.'), sizes: null },
    ],
    meets,
  };
}

const sides: Meeting = {
  mine: { piece: 'front', kind: 'row-ends', amount: null, which: 1 },
  other: { piece: 'back', kind: 'row-ends', amount: null, which: 1 },
};

/** A size that a child of so many years wears, or an adult (null). */
export function size(label: string, age: readonly [number, number] | null = null): Size {
  const audience = age === null ? 'woman' : age[1] <= 2 ? 'baby' : 'child';
  return { id: `size-${label.toLowerCase()}`, label, audience, chart: null, age };
}

/** The clean pattern. */
export function cleanPattern(): Pattern {
  const base = blankPattern({ title: 'Harbour', terms: 'us', units: 'metric', date: '2026-11-25' });
  return {
    ...base,
    about: {
      ...base.about,
      designer: 'A. Maker',
      description: 'A plain vest of two panels.',
      garment: 'vest',
      copyright: '© A. Maker. For your own use.',
      contact: 'maker@harbour.example',
      care: 'Wash by hand, dry flat.',
    },
    sizes: [size('S'), size('M'), size('L')],
    lines: lines(),
    gauges: [
      {
        id: 'gauge',
        pattern: 'single crochet',
        stitches: 16,
        rows: 18,
        width: cm(10),
        height: cm(10),
        blocked: true,
        stretch: null,
        hook: 'hook',
        rounds: false,
      },
    ],
    hooks: [{ id: 'hook', mm: 4.5, purpose: 'for both panels' }],
    yarns: [
      {
        id: 'yarn',
        key: null,
        name: 'Worsted wool',
        weight: 4,
        fibre: 'wool',
        ballGrams: 50,
        ballMetres: 90,
        ballPrice: null,
        metres: { 'size-s': 500, 'size-m': 560, 'size-l': 620 },
      },
    ],
    pieces: [
      panel('front', 'Front', [sides]),
      panel('back', 'Back', [{ mine: sides.other, other: sides.mine }]),
    ],
    finishing: [written('Join the sides with sl sts, leaving 20 cm (8 in) for each armhole.')],
  };
}

/** A change of the clean pattern. */
export type Plant = (pattern: Pattern) => Pattern;

/** Changes one block of one piece. */
export function inBlock(id: string, change: (block: Block) => readonly Block[]): Plant {
  return (pattern) => ({
    ...pattern,
    pieces: pattern.pieces.map((piece) => ({
      ...piece,
      blocks: piece.blocks.flatMap((block) => (block.id === id ? change(block) : [block])),
    })),
  });
}

/** Puts other words into one row. */
export function reword(id: string, text: string): Plant {
  return inBlock(id, (block) => (block.type === 'row' ? [{ ...block, text: written(text) }] : [block]));
}

/** Changes one line of the sizing sheet. */
export function inLine(id: string, change: Partial<Line>): Plant {
  return (pattern) => ({
    ...pattern,
    lines: pattern.lines.map((each) => (each.id === id ? ({ ...each, ...change } as Line) : each)),
  });
}

/** Says something in the notes. */
export function note(text: string): Plant {
  return (pattern) => ({ ...pattern, notes: [...pattern.notes, written(text)] });
}

/** All findings of a pattern: of reading, grading and working, then of the technical edit. */
export function findingsOf(pattern: Pattern): readonly Finding[] {
  const known = study(pattern);
  return [...known.findings, ...review(known)];
}
