/**
 * The stitch charts of an edition: scenes made for its paper and type, in the reader's terms, and the part of the booklet
 * that shows them, each with its key. An edition for all sizes charts the sample; one for a single size, that size. It
 * measures and paints nothing.
 */
import { drawChart } from '../../drawing/chart/chart.ts';
import type { Scene } from '../../drawing/scene.ts';
import type { Study } from '../../study/index.ts';
import { atOneGlance, type Block, drawing, figure, heading, type Part, paragraph, part } from '../content.ts';
import type { Style } from '../style.ts';
import { type EditionChoice, readerFor } from './reader.ts';

/** A chart as the booklet places it: its parts, its key, and what has to be said of it. */
export interface EditionChart {
  /** In the reader's terms. */
  readonly title: string;
  readonly figures: readonly {
    /** The name under which the printing resources know its pen. */
    readonly name: string;
    readonly width: number;
    readonly height: number;
    readonly alt: string;
  }[];
  readonly notes: readonly string[];
}

export interface EditionCharts {
  readonly charts: readonly EditionChart[];
  readonly scenes: ReadonlyMap<string, Scene>;
}

/** Part of the text's height that a chart may take: its title and a few lines stand on the same page. */
const TALLEST = 0.78;

/** Scenes and their places. Charts that cannot be drawn are left out; the studio says why. */
export function editionCharts(study: Study, choice: EditionChoice, style: Style): EditionCharts {
  const { reader } = readerFor(study, choice);
  const { page, margin, hang } = style;
  const width = page.width - margin.left - margin.right - hang;
  const height = (page.height - margin.top - margin.bottom) * TALLEST;
  const alone = reader.sizes.length === 1;
  const scenes = new Map<string, Scene>();
  const charts = study.pattern.charts.flatMap((chart): readonly EditionChart[] => {
    const drawn = drawChart(study, chart, {
      terms: reader.terms,
      width,
      height,
      large: style.edition === 'large-print',
      alone,
      told: 'beside',
      ...(alone ? { size: reader.pattern.sizes[reader.sizes[0]!]!.id } : {}),
    });
    if (drawn.problem !== null) return [];
    const all = drawn.key === null ? drawn.parts : [...drawn.parts, drawn.key];
    const figures = all.map((scene, i) => {
      const name = `chart ${chart.id} ${i}`;
      scenes.set(name, scene);
      return { name, width: scene.width, height: scene.height, alt: scene.alt };
    });
    return [{ title: reader.say(drawn.title, null), figures, notes: drawn.notes }];
  });
  return { charts, scenes };
}

/** The part of the charts; null when there are none. */
export function chartsPart(charts: readonly EditionChart[]): Part | null {
  if (charts.length === 0) return null;
  return part(
    charts.length === 1 ? 'Stitch chart' : 'Stitch charts',
    charts.flatMap(({ title, figures, notes }): readonly Block[] => {
      const placed = figures.map(({ name, width, height, alt }) =>
        figure(drawing(name, width / height, width), alt),
      );
      const said = notes.map((note) => paragraph(note));
      if (placed.length <= 2) return [atOneGlance(heading(2, title), ...said, ...placed)];
      // The last part of a chart and its key are looked at together.
      const [first, ...between] = placed.slice(0, -2);
      const begin = atOneGlance(heading(2, title), ...said, ...(first === undefined ? [] : [first]));
      return [begin, ...between, atOneGlance(...placed.slice(-2))];
    }),
  );
}
