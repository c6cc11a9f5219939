/** Reads which sizes a command is for, as the words after --sizes tell. It knows nothing of what is made for them. */
import type { Pattern } from '../../core/document/pattern.ts';
import { Refused } from './io.ts';
import type { Arguments } from './options.ts';

/** Labels may be written with commas, or one after the other: those behind --sizes are no files. */
export function apart(given: Arguments): { readonly files: Arguments; readonly sizes: readonly string[] } {
  const behind = given.operands.filter(({ after }) => after === 'sizes');
  const others = given.operands.filter(({ after }) => after !== 'sizes');
  // "export --sizes S M vest.turnchain": the last word is the pattern.
  const pattern = others.length === 0 ? behind.at(-1) : null;
  const labels = behind.filter((operand) => operand !== pattern).map(({ text }) => text);
  const files = { ...given, operands: pattern ? [pattern] : others };
  return { files, sizes: [...(given.values.sizes ?? []), ...labels] };
}

/** Ids of the sizes that are wanted alone, in the order of the pattern; null = all sizes together. */
export function sizesOf(words: readonly string[], pattern: Pattern): readonly (string | null)[] {
  if (words.length === 0) return [null];
  const labelled = (word: string) =>
    pattern.sizes.find(({ label }) => label === word) ??
    pattern.sizes.find(({ label }) => label.toLowerCase() === word.toLowerCase());
  const chosen = new Set<string | null>();
  // A label may hold a comma itself; it is then given alone.
  for (const word of words.flatMap((given) => (labelled(given.trim()) ? [given] : given.split(',')))) {
    const size = labelled(word.trim());
    if (size !== undefined) chosen.add(size.id);
    else if (word.trim().toLowerCase() === 'all') chosen.add(null);
    else if (word.trim().toLowerCase() === 'each') for (const { id } of pattern.sizes) chosen.add(id);
    else {
      const labels = pattern.sizes.map(({ label }) => label).join(', ');
      throw new Refused(
        `The pattern has no size “${word.trim()}”. Its sizes are ${labels}; or say all or each.`,
      );
    }
  }
  return [
    ...(chosen.has(null) ? [null] : []),
    ...pattern.sizes.flatMap(({ id }) => (chosen.has(id) ? [id] : [])),
  ];
}
