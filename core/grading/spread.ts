/**
 * Spreads increases or decreases evenly over a row or round, and writes the row in US or UK terms with its
 * sum. It decides where they go; the engine works the row and confirms the count.
 *
 * The arithmetic is the handbooks' (common practice, no source): divide the plain stitches by the changes; the
 * remainder says how many groups get one stitch more. In the round the groups go once round; worked flat, one
 * group is shared between the two ends, so that no change sits at an edge unless they stand side by side.
 */

import type { Terms } from '../trade/stitches.ts';
import { stitchAbbreviation } from '../trade/terms.ts';

/** `times` × (`plain` stitches, then one change); without `change` it is the plain stitches at the end. */
export interface SpreadGroup {
  readonly plain: number;
  readonly change: boolean;
  readonly times: number;
}

export interface Spread {
  readonly change: 'inc' | 'dec';
  readonly form: 'flat' | 'round';
  /** Stitch worked, by its id: "t1" is US single crochet. */
  readonly stitch: string;
  readonly changes: number;
  /** Stitches of the row below, and of this row. */
  readonly before: number;
  readonly after: number;
  readonly groups: readonly SpreadGroup[];
}

export interface SpreadTask {
  readonly change: 'inc' | 'dec';
  readonly form: 'flat' | 'round';
  readonly stitch: string;
  readonly changes: number;
  /** Stitches of the row below. */
  readonly over: number;
}

export interface SpreadProblem {
  readonly code: 'spread-invalid' | 'spread-too-many';
  readonly data: Readonly<Record<string, number | string>>;
}

/**
 * Where the changes go: groups that differ by at most one stitch. A problem when there are more changes than
 * the stitches allow (an increase uses one stitch and makes two, a decrease uses two and makes one) or a
 * number is not whole or below zero.
 */
export function spreadOf(task: SpreadTask): Spread | SpreadProblem {
  const { change, form, stitch, changes, over } = task;
  if (![changes, over].every((n) => Number.isSafeInteger(n) && n >= 0)) {
    return { code: 'spread-invalid', data: { changes, over } };
  }
  const uses = change === 'inc' ? 1 : 2;
  if (changes * uses > over) {
    return { code: 'spread-too-many', data: { change, changes, over, most: Math.floor(over / uses) } };
  }
  const after = change === 'inc' ? over + changes : over - changes;
  const plain = over - changes * uses;
  const groups = changes === 0 ? [{ plain, change: false, times: 1 }] : groupsOf(plain, changes, form);
  return { change, form, stitch, changes, before: over, after, groups: groups.filter(isWorked) };
}

function isWorked(group: SpreadGroup): boolean {
  return group.times > 0 && (group.change || group.plain > 0);
}

function groupsOf(plain: number, changes: number, form: 'flat' | 'round'): SpreadGroup[] {
  const share = Math.floor(plain / changes);
  const longer = plain % changes;
  const long = { plain: share + 1, change: true, times: longer };
  if (form === 'round') return [long, { plain: share, change: true, times: changes - longer }];
  // One of the shorter groups is shared between the ends.
  const start = Math.floor(share / 2);
  return merged([
    { plain: start, change: true, times: 1 },
    long,
    { plain: share, change: true, times: changes - longer - 1 },
    { plain: share - start, change: false, times: 1 },
  ]);
}

/** Neighbouring groups that are the same become one. */
function merged(groups: readonly SpreadGroup[]): SpreadGroup[] {
  const result: SpreadGroup[] = [];
  for (const group of groups) {
    const last = result.at(-1);
    if (group.times === 0) continue;
    if (last && last.plain === group.plain && last.change && group.change) {
      result[result.length - 1] = { ...last, times: last.times + group.times };
    } else result.push(group);
  }
  return result;
}

/** The row in the given terms: "sc 3, inc, (sc 7, inc) 4 times, sc 3". Empty when there is nothing to work. */
export function spreadWords(spread: Spread, terms: Terms): string {
  const name = stitchAbbreviation(spread.stitch, terms);
  const change =
    spread.change === 'dec' ? `${name}2tog` : spread.stitch === 't1' ? 'inc' : `2 ${name} in next st`;
  return spread.groups.map((group) => groupWords(group, name, change)).join(', ');
}

function groupWords(group: SpreadGroup, name: string, change: string): string {
  const plain = group.plain > 0 ? `${name} ${group.plain}` : '';
  if (!group.change) return plain;
  const once = plain ? `${plain}, ${change}` : change;
  return group.times === 1 ? once : `(${once}) ${group.times} times`;
}

/** How the row's stitches add up, group by group: "5 + 4 × 9 + 3 = 44". */
export function spreadSum(spread: Spread): string {
  const made = spread.change === 'inc' ? 2 : 1;
  const terms = spread.groups.map((group) => {
    const each = group.plain + (group.change ? made : 0);
    return group.times === 1 ? `${each}` : `${group.times} × ${each}`;
  });
  return `${terms.join(' + ') || '0'} = ${spread.after}`;
}
