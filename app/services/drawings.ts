/**
 * Drawings as files: the schematics and charts of a pattern as SVG, with names that say what each shows, written whole
 * or not at all. It draws nothing itself and does not judge whether a pattern is right.
 */
import { join } from 'node:path';
import type { Pattern } from '../../core/document/pattern.ts';
import { drawChart } from '../../core/drawing/chart/chart.ts';
import { oneSheet } from '../../core/drawing/chart/one-sheet.ts';
import { sizeOfChart } from '../../core/drawing/chart/plan.ts';
import { focusOf, schematicsOf } from '../../core/drawing/schematic.ts';
import { drawSchematic, undrawnIn } from '../../core/drawing/schematic-scene.ts';
import { paintSvg } from '../../core/drawing/svg.ts';
import { translate } from '../../core/notation/translate.ts';
import type { Study } from '../../core/study/study.ts';
import type { Terms } from '../../core/trade/stitches.ts';
import type { Units } from '../../core/trade/units.ts';
import type { Disk } from './disk.ts';
import { plainName } from './file-names.ts';
import { type FileError, replaceFile } from './files.ts';
import { prepareFolder } from './out-folder.ts';

export interface DrawingChoices {
  readonly terms: Terms;
  readonly units: Units;
  /** Ids of sizes that are drawn alone; null = one drawing with the numbers of all. */
  readonly sizes: readonly (string | null)[];
  /** In a drawing of all sizes, the outlines of all of them about one another. */
  readonly nested: boolean;
  /** Outlines with their lengths, or the stitch charts that the pattern keeps. */
  readonly what: 'schematic' | 'chart';
}

export interface DrawingFile {
  /** Its name, without folder. */
  readonly file: string;
  readonly title: string;
  readonly svg: string;
}

export interface DrawingSet {
  readonly files: readonly DrawingFile[];
  /** Sentences about pieces that cannot be drawn. */
  readonly missing: readonly string[];
}

/** Sheet of a drawing: as wide as the text of a letter or an A4 page. */
const SHEET = { type: 9, width: 480, height: 420, scale: 12 } as const;
const LONGEST = 40;

/** Drawings as SVG texts. Names differ. */
export function drawingsOf(study: Study, choices: DrawingChoices): DrawingSet {
  return choices.what === 'chart' ? chartsOf(study, choices) : schematicFiles(study, choices);
}

/** Every chart that the pattern keeps, its parts and its key below one another in one file. */
function chartsOf(study: Study, { terms, sizes }: DrawingChoices): DrawingSet {
  const { pattern } = study;
  const taken = new Set<string>();
  const missing: string[] = [];
  const files = pattern.charts.flatMap((chart) =>
    sizes.flatMap((id): readonly DrawingFile[] => {
      const sized = id === null ? chart : { ...chart, size: id };
      const drawn = drawChart(study, sized, { terms, width: SHEET.width, large: false });
      const title = translate(drawn.title, pattern.terms, terms, { kind: 'mixed' }).text;
      if (drawn.problem !== null) {
        missing.push(`${title === '' ? 'A chart' : title}: ${drawn.problem}`);
        return [];
      }
      const file = nameOf(pattern, 'chart', title, terms, sizeOfChart(study, sized), taken);
      return [{ file, title, svg: paintSvg(oneSheet({ ...drawn, title })) }];
    }),
  );
  return { files, missing };
}

function schematicFiles(study: Study, choices: DrawingChoices): DrawingSet {
  const { pattern } = study;
  const { drawings, missing } = schematicsOf(study);
  const lacking = missing.map(({ why }) => why);
  const all = pattern.sizes.map((_, index) => index);
  const say = (words: string) => translate(words, pattern.terms, choices.terms, { kind: 'mixed' }).text;
  const taken = new Set<string>();
  const files = drawings.flatMap((drawing) =>
    choices.sizes.flatMap((id): readonly DrawingFile[] => {
      const at = id === null ? -1 : pattern.sizes.findIndex((size) => size.id === id);
      const focus = at < 0 ? focusOf(study) : at;
      const options = {
        ...SHEET,
        units: choices.units,
        sizes: at < 0 ? all : [at],
        labels: pattern.sizes.map(({ label }) => label),
        focus,
        nested: choices.nested && at < 0,
        key: 'below',
        say,
      } as const;
      const drawn = drawSchematic(drawing, options);
      if (drawn === null) {
        lacking.push(...undrawnIn(drawing, options));
        return [];
      }
      const file = nameOf(pattern, 'schematic', drawing.title, choices.terms, at, taken);
      return [{ file, title: drawn.title, svg: paintSvg(drawn.scene) }];
    }),
  );
  return { files, missing: [...new Set(lacking)] };
}

/** "saltings-vest_schematic_panels-and-back_us_all-sizes.svg". */
function nameOf(
  pattern: Pattern,
  what: string,
  title: string,
  terms: Terms,
  size: number,
  taken: Set<string>,
): string {
  const label = pattern.sizes[size]?.label;
  const parts = [
    plainName(pattern.about.title, LONGEST) || 'pattern',
    what,
    plainName(title, LONGEST) || 'piece',
    terms,
    label === undefined ? 'all-sizes' : `size-${plainName(label, LONGEST) || 'x'}`,
  ];
  for (let n = 1; ; n++) {
    const name = `${parts.join('_')}${n === 1 ? '' : `-${n}`}.svg`;
    if (taken.has(name)) continue;
    taken.add(name);
    return name;
  }
}

export interface DrawingOutcome {
  /** Paths of the files that are whole, in the order written. */
  readonly files: readonly string[];
  /** Why it ended before all was written; null when nothing is missing. */
  readonly stopped: FileError | null;
}

/** Writes drawings into `folder`, which is made when it is not there. A file of the same name is replaced in one step. */
export async function saveDrawings(
  drawings: readonly DrawingFile[],
  folder: string,
  disk: Disk,
): Promise<DrawingOutcome> {
  const files: string[] = [];
  const unprepared = await prepareFolder(folder, 'the drawings');
  if (unprepared !== null) return { files, stopped: unprepared };
  for (const { file, svg } of drawings) {
    const path = join(folder, file);
    const fault = await replaceFile(path, Buffer.from(svg, 'utf8'), disk);
    if (fault !== null) return { files, stopped: fault };
    files.push(path);
  }
  return { files, stopped: null };
}
