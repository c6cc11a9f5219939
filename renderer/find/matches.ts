/**
 * Where words occur in the manuscript's texts. Figures and computed labels are no text: a match neither holds
 * one nor reaches over one. It finds and changes nothing.
 */
import type { Node } from 'prosemirror-model';
import { ELSEWHERE } from '../desk/places.ts';

export interface FindOptions {
  readonly words: string;
  readonly matchCase: boolean;
  readonly wholeWord: boolean;
}

/** A range of the document. */
export interface Match {
  readonly from: number;
  readonly to: number;
}

/** The pattern that finds the words; null when there are none. A space finds any run of spaces. */
export function patternOf({ words, matchCase, wholeWord }: FindOptions): RegExp | null {
  if (words.trim() === '') return null;
  const escaped = words.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replace(/\s+/g, '\\s+');
  // A word's edge: not between two letters or figures. Where the words begin with a sign, any place will do.
  const before = wholeWord && /^[\p{L}\p{N}]/u.test(words) ? '(?<![\\p{L}\\p{N}])' : '';
  const after = wholeWord && /[\p{L}\p{N}]$/u.test(words) ? '(?![\\p{L}\\p{N}])' : '';
  return new RegExp(`${before}${escaped}${after}`, matchCase ? 'gu' : 'giu');
}

const NO_MATCHES: readonly (readonly [number, number])[] = [];
let kept: { key: string; byNode: WeakMap<Node, readonly (readonly [number, number])[]> } | null = null;

/** Matches within one text, as offsets; kept for the text while the same words are looked for. */
function inText(node: Node, pattern: RegExp): readonly (readonly [number, number])[] {
  const key = `${pattern.flags}${pattern.source}`;
  if (kept?.key !== key) kept = { key, byNode: new WeakMap() };
  const known = kept.byNode.get(node);
  if (known !== undefined) return known;
  const text = node.textBetween(0, node.content.size, undefined, '\uFFFC');
  const found: (readonly [number, number])[] = [];
  for (const match of text.matchAll(pattern)) {
    if (match[0].length === 0 || match[0].includes('\uFFFC')) continue;
    found.push([match.index, match.index + match[0].length]);
  }
  const result = found.length === 0 ? NO_MATCHES : found;
  kept.byNode.set(node, result);
  return result;
}

/** All matches in the manuscript, in order. Forms (sizes, materials) have their own places. */
export function matchesIn(document: Node, options: FindOptions): readonly Match[] {
  const pattern = patternOf(options);
  if (pattern === null) return [];
  const matches: Match[] = [];
  document.descendants((node, pos) => {
    if (ELSEWHERE.has(node.type.name)) return false;
    if (!node.isTextblock) return true;
    for (const [from, to] of inText(node, pattern)) matches.push({ from: pos + 1 + from, to: pos + 1 + to });
    return false;
  });
  return matches;
}

/** Index of the match at or after a position, around the end to the first; -1 without matches. */
export function nextMatch(matches: readonly Match[], position: number, by: 1 | -1): number {
  if (matches.length === 0) return -1;
  if (by === 1) {
    const next = matches.findIndex(({ from }) => from >= position);
    return next === -1 ? 0 : next;
  }
  const before = matches.findLastIndex(({ to }) => to <= position);
  return before === -1 ? matches.length - 1 : before;
}
