/**
 * The blank pattern that a new file starts with: sizes from the chart, one finished measurement worked out from the
 * body and an ease, and one empty piece. What only the maker can know (gauge, hook, yarn, the rows) is left
 * out, not made up; the findings say that it is missing.
 */

import type { Line, Pattern, Size } from '../document/pattern.ts';
import { NO_WORKBOOK } from '../document/workbook.ts';
import type { Terms } from '../trade/stitches.ts';

export interface BlankOptions {
  readonly title: string;
  readonly terms: Terms;
  readonly units: 'metric' | 'imperial';
  /** ISO date of the first version: the caller's, because nothing here knows the time. */
  readonly date: string;
}

/** Labels of the women's chart that a blank pattern starts with, smallest first. */
const LABELS = ['S', 'M', 'L', 'XL'];

function size(label: string): Size {
  return { id: `size-${label.toLowerCase()}`, label, audience: 'woman', chart: label, age: null };
}

function lines(units: BlankOptions['units']): readonly Line[] {
  // The near end of a classic fit: 2–4 in (Craft Yarn Council's ease levels, as reprinted), about 5–10 cm.
  const ease = units === 'metric' ? ({ value: 5, unit: 'cm' } as const) : ({ value: 2, unit: 'in' } as const);
  const line = { printed: null, note: null };
  return [
    { ...line, id: 'line-bust', name: 'bust', kind: 'body', measure: 'bust', bound: 'middle', overtyped: {} },
    { ...line, id: 'line-ease', name: 'ease', kind: 'ease', values: { all: ease } },
    {
      ...line,
      id: 'line-finished-bust',
      name: 'finished bust',
      printed: 'Bust',
      kind: 'formula',
      formula: 'bust + ease',
    },
  ];
}

/** The blank pattern. It opens without error and with findings that tell what is still to be given. */
export function blankPattern({ title, terms, units, date }: BlankOptions): Pattern {
  const sizes = LABELS.map(size);
  return {
    about: {
      title,
      designer: '',
      level: 1,
      description: '',
      construction: '',
      garment: '',
      cover: null,
      version: '1.0',
      date,
      copyright: '',
      contact: '',
      care: '',
      language: terms === 'us' ? 'en-US' : 'en-GB',
      fit: '',
    },
    terms,
    units,
    sizes,
    sample: 'size-m',
    tolerance: units === 'metric' ? { value: 2, unit: 'cm' } : { value: 0.75, unit: 'in' },
    lines: lines(units),
    gauges: [],
    yarns: [],
    hooks: [],
    notions: [],
    specials: [],
    abbreviations: {},
    notes: [],
    pieces: [
      {
        id: 'piece-panel',
        name: 'Panel',
        make: 1,
        start: { kind: 'chain' },
        firstSide: 'RS',
        gauge: '',
        blocks: [
          {
            type: 'row',
            id: 'row-first',
            text: { text: '', figures: [] },
            sizes: null,
            form: 'foundation',
            title: null,
          },
        ],
        meets: [],
      },
    ],
    finishing: [],
    cautions: [],
    charts: [],
    workbook: NO_WORKBOOK,
  };
}
