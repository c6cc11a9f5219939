/**
 * The outline of a hat in rounds from the crown down: a flat circle that grows by eight, straight sides. Its rounds
 * follow from the maker's gauge, so that every size has the crown that its head asks for.
 */
import type { Line, Pattern, Size } from '../document/pattern.ts';
import {
  bodyLine,
  cm,
  each,
  easeLine,
  formulaLine,
  inches,
  percent,
  rowsLine,
  stitchesLine,
  typedLine,
  Writer,
} from '../document/writer.ts';
import { evaluate, gradeSheet } from '../grading/index.ts';
import { type OutlineOptions, outlineFrame, stitchWords } from './outline.ts';

/** Heads and depths of hats by size, in inches: heads within the published ranges; depths are common practice, no source. */
const HEADS: readonly (readonly [string, Size['audience'], Size['age'], number, number])[] = [
  ['Baby', 'baby', [0.5, 1], 18, 6.5],
  ['Toddler', 'child', [1, 3], 19, 7],
  ['Child', 'child', [4, 10], 20.5, 7.5],
  ['Adult', 'other', null, 22, 8.5],
  ['Large adult', 'other', null, 23.5, 9],
];

/** Stitches that a round of the crown adds. */
const GROWTH = 8;

/** A crown-down hat in five sizes. */
export function hatPattern(options: OutlineOptions): Pattern {
  const { st, begin, join } = stitchWords(options.gauge.stitch, options.terms);
  const metric = options.units === 'metric';
  const length = (value: number) => (metric ? cm(Math.round(value * 2.54 * 2) / 2) : inches(value));
  const sizes = HEADS.map(
    ([label, audience, age]): Size => ({
      id: `size-${label.toLowerCase().replace(' ', '-')}`,
      label,
      audience,
      chart: null,
      age,
    }),
  );
  const heads = each(
    sizes,
    HEADS.map(([, , , head]) => head),
    length,
  );
  const lines: readonly Line[] = [
    bodyLine('head', 'head', 'each' in heads ? heads.each : {}, { printed: 'To fit head' }),
    // Close: hats stretch to the head (common practice, no source).
    easeLine('ease', { all: percent(-5) }),
    formulaLine('finished hat', 'head + ease', { printed: 'Hat circumference', fits: 'head' }),
    stitchesLine('hat stitches', 'finished hat', 'gauge-main', GROWTH, 0),
    formulaLine('crown rounds', `hat stitches ÷ ${GROWTH}`),
    typedLine(
      'height',
      each(
        sizes,
        HEADS.map(([, , , , depth]) => depth),
        length,
      ),
      { printed: 'Crown to brim' },
    ),
    rowsLine('hat rounds', 'height', 'gauge-main', 1, 0),
  ];
  const frame = outlineFrame(options, 'hat', true);
  const sheet = gradeSheet(sizes, lines, frame.gauges, frame.tolerance);
  const crowns = sizes.map((_, size) => evaluate('crown rounds', sheet, size).count ?? 3);
  const work = new Writer('hat');
  work.heading('Crown');
  work.round(
    `Make a magic ring, ${begin.replace(/^C/, 'c')} ${GROWTH} ${st} in ring, ${join} (${GROWTH} ${st})`,
  );
  work.round(`${begin} 2 ${st} in each st around, ${join} (${2 * GROWTH} ${st})`);
  work.round(
    `${begin} *${st} in next st, 2 ${st} in next st; rep from * around, ${join} (${3 * GROWTH} ${st})`,
  );
  for (let round = 4; round <= Math.max(...crowns); round++) {
    const working = sizes.filter((_, size) => crowns[size]! >= round).map(({ id }) => id);
    work.round(
      `${begin} *${st} in each of next ${round - 2} sts, 2 ${st} in next st; rep from * around, ${join} (${GROWTH * round} ${st})`,
      working.length === sizes.length ? {} : { sizes: working },
    );
  }
  work.heading('Sides');
  const even = work.round(`${begin} ${st} in each st around, ${join} ({hat stitches} ${st})`);
  work.untilTotal(even, even, 'hat rounds');
  work.prose('Fasten off.');
  return {
    ...frame,
    sizes,
    sample: 'size-adult',
    lines,
    pieces: [work.piece('Hat', { kind: 'chain' }, 'RS')],
  };
}
