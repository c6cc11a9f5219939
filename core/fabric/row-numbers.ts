/**
 * Which rows a label numbers, in one size. Reads the tree; works nothing.
 */
import type { RowNumbers } from '../notation/tree.ts';
import { MOST_ROWS } from './course.ts';
import { amountOf, type Env, type Figures } from './env.ts';

/** Is the row numbered otherwise in one size than in another? */
export function variesBySize(numbers: RowNumbers): boolean {
  const first = numbers.kind === 'one' ? numbers.number : numbers.kind === 'range' ? numbers.first : null;
  return first?.kind === 'sizes' && new Set(first.values).size > 1;
}

/** The numbers that a label gives, in order; none where the size leaves the row out. */
export function numbersOf(numbers: RowNumbers, env: Env, figures: Figures): readonly number[] {
  const value = (amount: Parameters<typeof amountOf>[0]) => amountOf(amount, env, figures);
  switch (numbers.kind) {
    case 'one': {
      const n = value(numbers.number);
      return n === null ? [] : [n];
    }
    case 'range': {
      const from = value(numbers.first);
      const to = value(numbers.last);
      if (from === null || to === null || to < from) return [];
      const n = Math.min(to - from + 1, MOST_ROWS);
      return Array.from({ length: n }, (_, i) => from + i);
    }
    case 'list': {
      const found: number[] = [];
      for (const amount of numbers.numbers) {
        const n = value(amount);
        if (n !== null) found.push(n);
      }
      return found;
    }
    case 'onward': {
      const n = value(numbers.start);
      return n === null ? [] : [n];
    }
  }
}
