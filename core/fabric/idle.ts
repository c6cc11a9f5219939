/**
 * Rows that work nothing: "Turn.", "Fasten off.", "Ch 3, turn.". They change how the next row finds the fabric, and
 * nothing in it.
 */
import type { Item, RowTree } from '../notation/tree.ts';
import type { Env, Figures } from './env.ts';
import { type Fabric, ringFabric, tally } from './fabric.ts';
import { MOST_STITCHES } from './progress.ts';
import { checkStated } from './stated.ts';
import type { Worked } from './worked.ts';

/** "Row 6:": a row by its number, with no word of what is worked in it. */
function saysNothing(row: RowTree, below: Fabric, items: readonly Item[]): boolean {
  const numbered = row.label !== null && row.label.numbers !== null;
  return numbered && below.form !== 'chain' && items.length === 0;
}

/** A row that works nothing: "Turn.", "Fasten off.", "Ch 3, turn.". */
export function idle(
  row: RowTree,
  below: Fabric,
  items: readonly Item[],
  env: Env,
  figures: Figures,
  round: boolean,
): Worked {
  const turn = items.findLast((item) => item.type === 'turn');
  const chain = items.findLast((item) => item.type === 'chain');
  const fastened = items.some((item) => item.type === 'fasten-off');
  const closes =
    below.form === 'chain' &&
    items.some(
      (item) =>
        (item.type === 'join' && !item.not) ||
        item.type === 'ring' ||
        (item.type === 'work' && item.stitch.base === 'slip'),
    );
  const n = chain?.type === 'chain' ? (chain.amount.kind === 'one' ? chain.amount.value : 0) : 0;
  const made: Fabric = closes
    ? ringFabric(below.sites.length)
    : {
        ...below,
        turned: turn?.type === 'turn' ? !turn.not : below.turned,
        fastened: fastened || below.fastened,
        carried:
          n > 0 && n <= MOST_STITCHES && below.form !== 'chain'
            ? { chains: n, said: null, saidBase: null, saidChains: null }
            : below.carried,
      };
  const changed =
    closes ||
    made.turned !== below.turned ||
    made.fastened !== below.fastened ||
    made.carried !== below.carried;
  const of = tally(below);
  const facts = [...checkStated(row.counts, of, env, figures)];
  if (saysNothing(row, below, items))
    facts.push({ code: 'row-works-nothing', from: row.from, to: row.to, data: {} });
  return {
    fabric: changed ? made : below,
    tally: of,
    repeats: null,
    facts,
    openings: [],
    trace: null,
    idle: true,
    foundation: 0,
    travelled: 0,
    round,
    turned: false,
    settled: null,
  };
}
