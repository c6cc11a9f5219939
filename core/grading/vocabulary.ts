/**
 * The names of a sheet's lines, and finding them in the words of a formula: in any case, with or without
 * hyphens, in the singular or the plural, the longest name first. It also finds the known name that a
 * misspelt one is nearest to. It knows names only, not what the lines hold.
 */
import { type Token, tokenise } from './tokens.ts';

interface Branch {
  readonly next: Map<string, Branch>;
  /** Names that end here; more than one when they differ only in number or case. */
  readonly names: string[];
}

/** The names that formulas may use. The same object as long as the names are the same. */
export interface Vocabulary {
  readonly names: readonly string[];
  readonly root: Branch;
}

/** A name found in a formula's tokens: `name` as the line is called, `end` the index after its last token. */
export interface Match {
  readonly name: string;
  readonly end: number;
}

const branch = (): Branch => ({ next: new Map(), names: [] });

/** How a name is compared: case, hyphens and runs of blanks do not count. */
export function foldName(name: string): string {
  return name
    .normalize('NFKC')
    .toLowerCase()
    .replace(/(?<=\S)[-‐‑](?=\S)/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
}

/** A name that formulas cannot tell from a number: it holds no letter. */
export function isUsableName(name: string): boolean {
  return /\p{L}/u.test(name);
}

/** Makes the vocabulary of these names; returns `previous` itself when it has exactly the same ones. */
export function vocabularyOf(names: readonly string[], previous: Vocabulary | null = null): Vocabulary {
  if (
    previous &&
    previous.names.length === names.length &&
    previous.names.every((name, index) => name === names[index])
  ) {
    return previous;
  }
  const root = branch();
  for (const name of names) {
    if (!isUsableName(name)) continue;
    let at = root;
    for (const key of keysOf(tokenise(name))) {
      const found = at.next.get(key) ?? branch();
      at.next.set(key, found);
      at = found;
    }
    at.names.push(name);
  }
  return { names, root };
}

function keysOf(tokens: readonly Token[]): string[] {
  return tokens.filter((_, index) => !isGluedHyphen(tokens, index)).map(keyOf);
}

function keyOf(token: Token): string {
  return token.kind === 'word' ? stem(token.text) : token.text;
}

/** A word without its case and number: "Stitches" and "stitch", "sleeves" and "sleeve" have one stem. */
function stem(word: string): string {
  const lower = word.toLowerCase();
  if (lower.length < 4) return lower;
  const singular = lower.endsWith('ies')
    ? `${lower.slice(0, -3)}y`
    : lower.endsWith('s') && !lower.endsWith('ss')
      ? lower.slice(0, -1)
      : lower;
  return singular.length > 3 && singular.endsWith('e') ? singular.slice(0, -1) : singular;
}

/** "back-stitches": a hyphen with a word on either side and no blank. */
export function isGluedHyphen(tokens: readonly Token[], index: number): boolean {
  const token = tokens[index];
  const before = tokens[index - 1];
  const after = tokens[index + 1];
  return (
    token?.kind === 'sign' &&
    token.text === '-' &&
    !token.spaced &&
    before?.kind === 'word' &&
    after !== undefined &&
    !after.spaced &&
    after.kind !== 'sign'
  );
}

/** The longest known name that begins at token `start`, or null. */
export function matchName(vocabulary: Vocabulary, tokens: readonly Token[], start: number): Match | null {
  let at = vocabulary.root;
  let best: Match | null = null;
  for (let index = start; index < tokens.length; index++) {
    if (index > start && isGluedHyphen(tokens, index)) continue;
    const next = at.next.get(keyOf(tokens[index]!));
    if (!next) break;
    at = next;
    if (at.names.length > 0) {
      best = { name: exactest(at.names, tokens.slice(start, index + 1)), end: index + 1 };
    }
  }
  return best;
}

function exactest(names: readonly string[], tokens: readonly Token[]): string {
  if (names.length === 1) return names[0]!;
  const written = foldName(tokens.map((token) => token.text).join(' '));
  return names.find((name) => foldName(name) === written) ?? names[0]!;
}

/** Words longer than this are compared by their beginning only: finding a likely name must stay quick. */
const COMPARED = 60;

/**
 * The known name that the unknown one most likely means: the one with the fewest letters to change, if
 * these are no more than a third of it; else the first that contains all its words. Null when none is near.
 */
export function nearestName(vocabulary: Vocabulary, unknown: string): string | null {
  const wanted = foldName(unknown).slice(0, COMPARED);
  let best: string | null = null;
  let fewest = Math.max(1, Math.floor(wanted.length / 3)) + 1;
  for (const name of vocabulary.names) {
    const changes = lettersToChange(wanted, foldName(name).slice(0, COMPARED), fewest);
    if (changes < fewest) {
      best = name;
      fewest = changes;
    }
  }
  if (best !== null) return best;
  const words = wanted.split(' ').map(stem);
  return (
    vocabulary.names.find((name) => {
      const own = foldName(name).split(' ').map(stem);
      return words.every((word) => own.includes(word));
    }) ?? null
  );
}

/** Letters to add, drop, swap or replace to make one word of the other; `limit` when there are as many or more. */
function lettersToChange(a: string, b: string, limit: number): number {
  if (Math.abs(a.length - b.length) >= limit) return limit;
  let before: number[] = [];
  let row = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let cost = Math.min(row[j]! + 1, next[j - 1]! + 1, row[j - 1]! + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        cost = Math.min(cost, before[j - 2]! + 1);
      }
      next.push(cost);
    }
    before = row;
    row = next;
  }
  return Math.min(limit, row[b.length]!);
}
