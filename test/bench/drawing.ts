/**
 * Measures the drawing of schematics: all of a long pattern from a study just made, against the study from cold; and
 * once more after an edit, which the place "Drawings" does while it is in front.
 */

import type { Block, Pattern } from '../../core/document/pattern.ts';
import { focusOf, schematicsOf } from '../../core/drawing/schematic.ts';
import { drawSchematic } from '../../core/drawing/schematic-scene.ts';
import { paintSvg } from '../../core/drawing/svg.ts';
import { type Study, study } from '../../core/study/study.ts';
import { inMs, median, percentile, say, timed } from './measure.ts';
import { longPattern } from './patterns.ts';

/** Every schematic as text, as the place shows it. */
function drawn(of: Study): number {
  const { pattern } = of;
  let length = 0;
  for (const one of schematicsOf(of).drawings) {
    const made = drawSchematic(one, {
      units: 'metric',
      sizes: pattern.sizes.map((_, index) => index),
      labels: pattern.sizes.map(({ label }) => label),
      focus: focusOf(of),
      nested: true,
      type: 10,
      width: 560,
      height: 420,
      scale: 12,
      key: 'elsewhere',
      say: (words) => words,
    });
    if (made !== null) length += paintSvg(made.scene).length;
  }
  return length;
}

const worded = (pattern: Pattern, at: number, text: string): Pattern => ({
  ...pattern,
  pieces: pattern.pieces.map((piece) => ({
    ...piece,
    blocks: piece.blocks.map(
      (block, i): Block =>
        i === at && block.type === 'row' ? { ...block, text: { text, figures: [] } } : block,
    ),
  })),
});

function drawing(): void {
  const extent = { sizes: 12, rows: 400, stitches: 200 };
  const fresh = (n: number): Pattern => ({
    ...longPattern(extent),
    abbreviations: { [`own${n}`]: 'own stitch' },
  });
  const studies = Array.from({ length: 3 }, (_, n) => timed(() => study(fresh(n))));
  const cold = median(studies.map(({ ms }) => ms));
  const times = studies.map(({ value }) => timed(() => drawn(value)));
  const first = median(times.map(({ ms }) => ms));
  say(
    `12 sizes × 400 rows: studied in ${inMs(cold)} from cold, drawn in ${inMs(first)}, ${(first / cold).toFixed(2)} of the study (${times[0]!.value} characters of SVG)`,
  );
  let current = studies[0]!.value;
  const words = ['Ch 1, sc in each st across, turn.', 'Ch 3, dc in each st across, turn.'];
  const took: number[] = [];
  for (let i = 0; i < 40; i++) {
    const next = study(worded(current.pattern, 40, words[i % 2]!), current);
    const { ms } = timed(() => drawn(next));
    current = next;
    if (i >= 5) took.push(ms);
  }
  say(
    `  drawn again after row 40 is reworded: ${inMs(median(took))} median, ${inMs(percentile(took, 0.95))} at the 95th percentile`,
  );
}

drawing();
