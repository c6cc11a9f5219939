/**
 * Reads a finished chart back: from the shapes on the sheet to what a maker would count, row by row. It sees the
 * scene alone, and must not know how charts are laid out or where their rows came from.
 */
import type { GroupShape, Scene, Shape } from '../../core/drawing/scene.ts';

export interface ReadRow {
  readonly stitches: number;
  readonly byKind: Readonly<Record<string, number>>;
  readonly spaces: number;
  /** Chains in those spaces. */
  readonly chains: number;
  readonly picots: number;
}

const isGroup = (shape: Shape): shape is GroupShape => shape.kind === 'group';

function groupsIn(shapes: readonly Shape[], name: string): number {
  return shapes.reduce(
    (sum, shape) => (isGroup(shape) ? sum + (shape.name === name ? 1 : groupsIn(shape.shapes, name)) : sum),
    0,
  );
}

/** Heights in chains of the ladder: what a stitch that closes a round stands for (published ladder). */
const TALL: Readonly<Record<string, number>> = { t1: 1, t2: 2, t3: 3, t4: 4, t5: 5, t6: 6, t7: 7 };
/** Slashes on a stem: yarn overs, but for the one with none (resources/trade/symbols.json). */
const SLASHES: Readonly<Record<string, number>> = { t2: 0, t3: 1, t4: 2, t5: 3, t6: 4, t7: 5 };

/** The stitch that a symbol shows, by its own marks; throws where name and marks do not agree. */
function shown({ name, shapes }: GroupShape, id: string): string {
  const base = id.slice(id.lastIndexOf('.') + 1);
  const letters = shapes.some((shape) => shape.kind === 'text');
  if (letters || !(base in SLASHES || base === 't1') || id.startsWith('puff.')) return id;
  const slashes = groupsIn(shapes, 'slash');
  const crosses = groupsIn(shapes, 'cross');
  const each = base === 't1' ? crosses : slashes;
  const wanted = base === 't1' ? 1 : SLASHES[base]!;
  const wrong = wanted === 0 ? each !== 0 : each === 0 || each % wanted !== 0;
  if (wrong || (base === 't1' ? slashes : crosses) > 0) throw new Error(`"${name}" is not drawn as such`);
  return id;
}

/** The rows of a chart, from its parts; what a part shows again is not counted again. */
export function readChart(parts: readonly Pick<Scene, 'shapes'>[], rows: number): readonly ReadRow[] {
  return Array.from({ length: rows }, (_, index) => {
    const byKind: Record<string, number> = {};
    let stitches = 0;
    let spaces = 0;
    let chains = 0;
    let picots = 0;
    const count = (id: string): void => {
      stitches += 1;
      byKind[id] = (byKind[id] ?? 0) + 1;
    };
    for (const { shapes } of parts) {
      for (const row of shapes) {
        if (!isGroup(row) || row.name !== `row ${index}`) continue;
        for (const symbol of row.shapes) {
          if (!isGroup(symbol) || symbol.name === null) continue;
          const [what, ...rest] = symbol.name.split(' ');
          const ovals = groupsIn(symbol.shapes, 'chain');
          if (what === 'stitch') count(shown(symbol, rest.join(' ')));
          else if (what === 'turning') {
            if (Number(rest[0]) !== ovals) throw new Error(`"${symbol.name}" has ${ovals} chains`);
            if (rest.length > 1) count(rest.slice(1).join(' '));
          } else if (what === 'space') {
            const closing = symbol.shapes.find(
              (shape) => isGroup(shape) && shape.name?.startsWith('closing '),
            );
            const base =
              closing !== undefined && isGroup(closing) ? closing.name!.slice('closing '.length) : null;
            const shownChains = ovals + (base === null ? 0 : TALL[base]!);
            spaces += 1;
            chains += base === null ? shownChains : Math.max(shownChains, Number(rest[0]));
            if (base === null && Number(rest[0]) !== ovals)
              throw new Error(`"${symbol.name}" has ${ovals} chains`);
          } else if (what === 'picot') picots += 1;
        }
      }
    }
    return { stitches, byKind, spaces, chains, picots };
  });
}
