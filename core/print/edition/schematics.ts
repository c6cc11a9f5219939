/**
 * The schematics of an edition: scenes made for its paper, type and sizes, in the reader's terms and units, and what the
 * booklet has to know of them. They are as large as they are printed, so that no label comes out smaller than the
 * edition's type. It measures and paints nothing.
 */
import type { Scene } from '../../drawing/scene.ts';
import { focusOf, type Schematic, schematicsOf } from '../../drawing/schematic.ts';
import { drawSchematic } from '../../drawing/schematic-scene.ts';
import type { Study } from '../../study/index.ts';
import type { Style } from '../style.ts';
import type { Drawing } from './drawings.ts';
import { type EditionChoice, readerFor } from './reader.ts';

export interface EditionSchematics {
  readonly drawings: readonly Drawing[];
  readonly scenes: ReadonlyMap<string, Scene>;
}

/** Part of the page's height that a drawing may take, by edition: a little more where the type is large. */
const TALLEST: Readonly<Record<Style['edition'], number>> = {
  standard: 0.36,
  'large-print': 0.5,
  'ink-saving': 0.26,
};

/** Part of the column that the widest outline takes; the rest is for the lengths beside it. */
const BREADTH = 0.72;
/** Points to a centimetre that no drawing is larger than: life size is 28. */
const LARGEST = 12;

/** Scenes and their places for the sizes that the edition shows. */
export function editionSchematics(study: Study, choice: EditionChoice, style: Style): EditionSchematics {
  const { reader } = readerFor(study, choice);
  const { page, margin, hang } = style;
  // In the column of the text, under its own heading.
  const width = page.width - margin.left - margin.right - hang;
  const height = page.height * TALLEST[style.edition];
  const { drawings } = schematicsOf(study);
  const own = focusOf(study);
  const focus = reader.sizes.includes(own) ? own : (reader.sizes[0] ?? 0);
  // The largest of the sizes has to fit: they are drawn about one another.
  const scale = Math.min(
    LARGEST,
    ...drawings.flatMap((one) => reader.sizes.map((size) => fitting(one, size, width * BREADTH, height))),
  );
  const scenes = new Map<string, Scene>();
  const made = drawings.flatMap((one): readonly Drawing[] => {
    const drawn = drawSchematic(one, {
      units: reader.units,
      sizes: reader.sizes,
      labels: reader.pattern.sizes.map(({ label }) => label),
      focus,
      nested: true,
      type: style.looks.caption.size,
      width,
      height,
      scale,
      key: 'elsewhere',
      say: (words) => reader.say(words, null),
    });
    if (drawn === null) return [];
    const name = `schematic ${one.id}`;
    scenes.set(name, drawn.scene);
    return [
      {
        name,
        aspect: drawn.scene.width / drawn.scene.height,
        width: drawn.scene.width,
        alt: drawn.scene.alt,
        caption: null,
        title: drawn.title,
        key: drawn.lengths.flatMap(({ letter, label, words }) =>
          letter === null ? [] : [{ letter, label, numbers: words }],
        ),
        notes: drawn.notes,
      },
    ];
  });
  return { drawings: made, scenes };
}

/** The scale at which a drawing fits; what is broken or very small does not count. */
function fitting(schematic: Schematic, size: number, width: number, height: number): number {
  const sketch = schematic.sketches[size] ?? null;
  if (sketch === null) return Number.POSITIVE_INFINITY;
  return Math.min(width / sketch.width, height / sketch.height);
}
