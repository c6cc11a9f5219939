/**
 * The drawings that a page asks for, from the study that the worker has: scenes as plain data. Made only when they are
 * asked for, never by typing. It draws nothing itself.
 */
import { type ChartDrawing, drawChart } from '../../core/drawing/chart/chart.ts';
import { focusOf, schematicsOf } from '../../core/drawing/schematic.ts';
import {
  type DrawnSchematic,
  drawSchematic,
  type SceneOptions,
  undrawnIn,
} from '../../core/drawing/schematic-scene.ts';
import { translate } from '../../core/notation/translate.ts';
import type { Study } from '../../core/study/study.ts';
import type { Terms } from '../../core/trade/stitches.ts';
import type { Units } from '../../core/trade/units.ts';

/** What is drawn and for whom. */
export interface DrawingChoice {
  readonly terms: Terms;
  readonly units: Units;
  /** Id of the size whose outline is drawn. */
  readonly focus: string | null;
  /** The numbers of all sizes, or of that one. */
  readonly allSizes: boolean;
  readonly nested: boolean;
  /** The page has room for the keys of charts in one column only. */
  readonly isNarrow: boolean;
}

export interface SchematicReport {
  readonly id: string;
  /** For the page, which shows the key beside it. */
  readonly shown: DrawnSchematic;
  /** For a file of its own, with the key in it. */
  readonly sheet: DrawnSchematic;
}

/** A chart that the pattern keeps, drawn. */
export interface ChartReport {
  readonly id: string;
  readonly drawing: ChartDrawing;
}

export interface DrawingsReport {
  readonly schematics: readonly SchematicReport[];
  /** Sentences about pieces that cannot be drawn. */
  readonly missing: readonly string[];
  /** In the order of the pattern. */
  readonly charts: readonly ChartReport[];
}

const SHEET = { type: 10, width: 560, height: 420, scale: 12 } as const;

/** The schematics of a study for a choice. */
export function drawingsReport(study: Study, choice: DrawingChoice): DrawingsReport {
  const { pattern } = study;
  const { drawings, missing } = schematicsOf(study);
  const at = pattern.sizes.findIndex(({ id }) => id === choice.focus);
  const focus = at < 0 ? focusOf(study) : at;
  const options: Omit<SceneOptions, 'key'> = {
    ...SHEET,
    units: choice.units,
    sizes: choice.allSizes ? pattern.sizes.map((_, index) => index) : [focus],
    labels: pattern.sizes.map(({ label }) => label),
    focus,
    nested: choice.nested && choice.allSizes,
    say: (words) => translate(words, pattern.terms, choice.terms, { kind: 'mixed' }).text,
  };
  const lacking = missing.map(({ why }) => why);
  const schematics = drawings.flatMap((drawing): readonly SchematicReport[] => {
    const shown = drawSchematic(drawing, { ...options, key: 'elsewhere' });
    const sheet = drawSchematic(drawing, { ...options, key: 'below' });
    if (shown !== null && sheet !== null) return [{ id: drawing.id, shown, sheet }];
    lacking.push(...undrawnIn(drawing, options));
    return [];
  });
  return {
    schematics,
    missing: lacking,
    charts: pattern.charts.map((chart) => {
      const drawing = drawChart(study, chart, {
        terms: choice.terms,
        width: SHEET.width,
        ...(choice.isNarrow ? { keyWidth: SHEET.width / 2 } : {}),
        large: false,
        told: 'beside',
      });
      return { id: chart.id, drawing: { ...drawing, title: options.say(drawing.title) } };
    }),
  };
}
