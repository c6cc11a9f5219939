/**
 * What the rows of a piece are worked by in each size: names, conventions, whether turning chains are worked into. The
 * same objects for the same grounds, for work is remembered by them. It works nothing.
 */
import type { Pattern } from '../document/pattern.ts';
import { type Env, worksTurningChain } from '../fabric/index.ts';
import type { Convention, Definition, RowTree } from '../notation/tree.ts';
import type { Readings } from './reading.ts';
import { conventionsIn } from './rows.ts';

const envs = new WeakMap<
  ReadonlyMap<string, Definition>,
  { conventions: readonly Convention[]; key: string; made: readonly Env[] }[]
>();

const turning = new WeakMap<RowTree, boolean>();

function rowWorksTurningChain(tree: RowTree): boolean {
  const known = turning.get(tree);
  if (known !== undefined) return known;
  const works = worksTurningChain(tree.items);
  turning.set(tree, works);
  return works;
}

/** One for each size, for a piece of these rows. */
export function envsFor(pattern: Pattern, readings: Readings, trees: readonly RowTree[]): readonly Env[] {
  const conventions = [...conventionsIn(trees), ...readings.conventions];
  const turningChainWorked = trees.some(rowWorksTurningChain);
  const key = `${pattern.sizes.length}|${turningChainWorked}`;
  let known = envs.get(readings.definitions);
  if (known === undefined) {
    known = [];
    envs.set(readings.definitions, known);
  }
  const same = known.find(
    (entry) =>
      entry.key === key &&
      entry.conventions.length === conventions.length &&
      entry.conventions.every((convention, i) => sameConvention(convention, conventions[i]!)),
  );
  if (same !== undefined) return same.made;
  const made = pattern.sizes.map(
    (_, size): Env => ({
      size,
      sizes: pattern.sizes.length,
      only: null,
      names: readings.definitions,
      conventions,
      turningChainWorked,
      rowEnds: 0,
      foundation: 0,
      earlier: null,
      parts: null,
      trace: null,
      of: null,
    }),
  );
  known.push({ conventions, key, made });
  if (known.length > 40) known.shift();
  return made;
}

/** Do two conventions say the same, wherever they stand in the text? */
function sameConvention(a: Convention, b: Convention): boolean {
  if (a === b) return true;
  const say = (convention: Convention) =>
    JSON.stringify([convention.chains, convention.counts], (key, value) =>
      key === 'from' || key === 'to' ? undefined : value,
    );
  return say(a) === say(b);
}
