/** The parts of a chart and its key on one sheet, as a file of its own shows them. Draws nothing. */
import { group, type Scene } from '../scene.ts';
import type { ChartDrawing } from './chart.ts';

/** Space between the parts of a chart on one sheet, in points. */
const BETWEEN = 14;

/** The parts of a chart and its key below one another, as one scene. */
export function oneSheet({ title, parts, key }: Pick<ChartDrawing, 'title' | 'parts' | 'key'>): Scene {
  const all = key === null ? parts : [...parts, key];
  let height = 0;
  const shapes = all.map((scene) => {
    const placed = group(scene.shapes, 0, height, 0, scene.title);
    height += scene.height + BETWEEN;
    return placed;
  });
  const width = Math.max(1, ...all.map((scene) => scene.width));
  return {
    width,
    height: Math.max(1, height - BETWEEN),
    title,
    alt: all.map(({ alt }) => alt).join(' '),
    shapes,
  };
}
