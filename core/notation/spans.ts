/**
 * Settles the spans of a finished tree: every node within its parent. Parts that the words leave out (the
 * noun of "sc 4") have empty spans, and those are moved to the parent's edge. Nothing else is changed.
 */
import type { Span } from '../finding.ts';

type Bag = Readonly<Record<string, unknown>>;

function isSpan(bag: Bag): boolean {
  return typeof bag.from === 'number' && typeof bag.to === 'number';
}

/** What an `again` works and what a size line above says stand elsewhere in the text, by their nature. */
const ELSEWHERE = new Set(['facts', 'only']);

function settled(node: unknown, from: number, to: number): unknown {
  if (Array.isArray(node)) {
    let changed = false;
    const list = node.map((part) => {
      const next = settled(part, from, to);
      if (next !== part) changed = true;
      return next;
    });
    return changed ? list : node;
  }
  if (typeof node !== 'object' || node === null) return node;
  const bag = node as Bag;
  let low = from;
  let high = to;
  const changes: Record<string, unknown> = {};
  if (isSpan(bag)) {
    low = Math.min(Math.max(bag.from as number, from), to);
    high = Math.max(low, Math.min(bag.to as number, to));
    if (low !== bag.from) changes.from = low;
    if (high !== bag.to) changes.to = high;
  }
  for (const [key, value] of Object.entries(bag)) {
    if (typeof value !== 'object' || value === null || ELSEWHERE.has(key)) continue;
    const again = key === 'items' && bag.type === 'again';
    const next = again ? settled(value, 0, Number.MAX_SAFE_INTEGER) : settled(value, low, high);
    if (next !== value) changes[key] = next;
  }
  return Object.keys(changes).length > 0 ? { ...bag, ...changes } : node;
}

/** The same tree with every span inside its parent's; the same object when that held already. */
export function settle<T>(node: T, within: Span): T {
  return settled(node, within.from, within.to) as T;
}
