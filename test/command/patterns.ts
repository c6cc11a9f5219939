/** Small patterns for the commands' tests: invented, one right and one wrong in known ways. */
import type { Block, Pattern } from '../../core/document/pattern.ts';
import { FIGURE } from '../../core/document/pattern.ts';
import { blank } from '../document/containers.ts';

const row = (
  id: string,
  text: string,
  more: Partial<Extract<Block, { type: 'row' }>> & { figures?: readonly string[] } = {},
): Extract<Block, { type: 'row' }> => ({
  type: 'row',
  id,
  sizes: more.sizes ?? null,
  form: more.form ?? 'row',
  title: more.title ?? null,
  text: { text, figures: more.figures ?? [] },
});

const line = { printed: null, note: null };

/** Back stitches 60 (64, 68, 72), 20 (22, 24, 26) rows and one more with ch-1 spaces. */
export const right: Pattern = {
  ...blank,
  about: {
    ...blank.about,
    designer: 'Ada Loop',
    description: 'A plain panel.',
    garment: 'panel',
    copyright: '© 2024 Ada Loop',
    contact: 'ada@loop.example',
    care: 'Wash by hand, dry flat.',
  },
  lines: [
    ...blank.lines,
    {
      ...line,
      id: 'line-stitches',
      name: 'back stitches',
      kind: 'typed',
      values: {
        each: {
          'size-s': { value: 60, unit: 'none' },
          'size-m': { value: 64, unit: 'none' },
          'size-l': { value: 68, unit: 'none' },
          'size-xl': { value: 72, unit: 'none' },
        },
      },
    },
    {
      ...line,
      id: 'line-rows',
      name: 'back rows',
      kind: 'typed',
      values: {
        each: {
          'size-s': { value: 20, unit: 'none' },
          'size-m': { value: 22, unit: 'none' },
          'size-l': { value: 24, unit: 'none' },
          'size-xl': { value: 26, unit: 'none' },
        },
      },
    },
  ],
  gauges: [
    {
      id: 'gauge-sc',
      pattern: 'single crochet',
      stitches: 14,
      rows: 16,
      width: { value: 10, unit: 'cm' },
      height: { value: 10, unit: 'cm' },
      blocked: true,
      stretch: null,
      hook: 'hook-5',
      rounds: false,
    },
  ],
  hooks: [{ id: 'hook-5', mm: 5, purpose: 'for the panel' }],
  yarns: [
    {
      id: 'yarn-a',
      key: null,
      name: 'a smooth wool',
      weight: 4,
      fibre: 'wool',
      ballGrams: 50,
      ballMetres: 90,
      ballPrice: null,
      metres: { 'size-s': 400, 'size-m': 450, 'size-l': 500, 'size-xl': 550 },
    },
  ],
  finishing: [{ text: 'Sew the two panels together at the sides.', figures: [] }],
  pieces: [
    {
      ...blank.pieces[0]!,
      name: 'Back',
      make: 2,
      blocks: [
        row('row-0', `Ch ${FIGURE}.`, { figures: ['back stitches + 1'], form: 'foundation' }),
        row('row-1', 'Sc in 2nd ch from hook and in each ch across, turn.'),
        row('row-2', 'Ch 1, sc in each st across, turn.'),
        {
          type: 'repeat',
          id: 'repeat-1',
          first: 'row-2',
          last: 'row-2',
          until: { kind: 'total', rows: 'back rows' },
          sizes: null,
        },
        row(
          'row-3',
          'Ch 1, sc in next st, *ch 1, sk 1 st, sc in next st; rep from * to last st, sc in last st. Fasten off.',
        ),
      ],
    },
  ],
};

/** The same with a row that does not come out: 60 (64, 68, 72) is a multiple of 3 in the first and last size only. */
export const wrong: Pattern = {
  ...right,
  pieces: [
    {
      ...right.pieces[0]!,
      blocks: [
        ...right.pieces[0]!.blocks.slice(0, 3),
        row('row-bad', 'Ch 1, *sc in next 2 sts, sk 1 st; rep from * across. Fasten off.'),
      ],
    },
  ],
};
