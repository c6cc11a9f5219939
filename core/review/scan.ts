/**
 * Looking through the words of a pattern, text by text. Each look is taken once for a text and remembered as long
 * as the text lives, so that a keystroke costs one text and not all of them. It says what stands where; whether
 * that is right is the rules' concern.
 */
import type { Pattern } from '../document/pattern.ts';
import type { Span } from '../finding.ts';
import type { Terms } from '../trade/stitches.ts';
import { type Text, textsOf } from './texts.ts';

/** What a look finds in one text. It depends on nothing but the text, its kind and the pattern's terms. */
export type Look<T extends Span> = (text: string, kind: Text['kind'], terms: Terms) => readonly T[];

export interface Seen<T extends Span> {
  readonly text: Text;
  readonly hits: readonly T[];
}

/** All looks, in the order in which their rules were loaded. */
const LOOKS: Look<Span>[] = [];

interface Looked {
  readonly terms: Terms;
  /** What each look found, by its number; null when none found anything. */
  readonly hits: readonly (readonly Span[])[] | null;
}

const byText = new WeakMap<Text, Looked>();

function lookedAt(text: Text, terms: Terms): Looked['hits'] {
  const before = byText.get(text);
  if (before?.terms === terms && (before.hits === null || before.hits.length === LOOKS.length))
    return before.hits;
  const all = LOOKS.map((look) => look(text.text, text.kind, terms));
  const hits = all.every((each) => each.length === 0) ? null : all;
  byText.set(text, { terms, hits });
  return hits;
}

interface Entry {
  readonly text: Text;
  readonly hits: readonly (readonly Span[])[];
}

const known = new WeakMap<Pattern, readonly Entry[]>();

/** The texts in which any look found something. */
function entriesOf(pattern: Pattern): readonly Entry[] {
  const before = known.get(pattern);
  if (before !== undefined) return before;
  const made: Entry[] = [];
  for (const text of textsOf(pattern)) {
    const hits = lookedAt(text, pattern.terms);
    if (hits !== null) made.push({ text, hits });
  }
  known.set(pattern, made);
  return made;
}

/**
 * Adds a look, and gives back how to ask for what it found: the texts that have something, in the order of the
 * pattern. To be called while modules are loaded, before any pattern is reviewed.
 */
export function looking<T extends Span>(look: Look<T>): (pattern: Pattern) => readonly Seen<T>[] {
  const number = LOOKS.push(look) - 1;
  return (pattern) => {
    const seen: Seen<T>[] = [];
    for (const { text, hits } of entriesOf(pattern)) {
      const own = (hits[number] ?? []) as readonly T[];
      if (own.length > 0) seen.push({ text, hits: own });
    }
    return seen;
  };
}
