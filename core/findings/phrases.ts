/**
 * Small parts that findings' sentences are made of: numbers of one size or of several, plurals, lists. Knows
 * nothing of what is wrong.
 */
import type { Fact, FactValue } from '../finding.ts';
import type { SizedFact, Voice } from './kind.ts';

type Data = Readonly<Record<string, FactValue>>;

export function number(data: Data, key: string): number {
  const value = data[key];
  return typeof value === 'number' ? value : 0;
}

export function text(data: Data, key: string): string {
  const value = data[key];
  return typeof value === 'string' ? value : '';
}

/** "1 repeat", "3 repeats"; `asIs` = the noun already agrees with the number. */
export function count(n: number, noun: string, asIs = false): string {
  return `${n} ${asIs || n === 1 ? noun : plural(noun)}`;
}

export function plural(noun: string): string {
  return /(s|sh|ch|x)$/.test(noun) ? `${noun}es` : `${noun}s`;
}

/** "A", "A and B", "A, B and C". */
export function listed(words: readonly string[], and = 'and'): string {
  if (words.length <= 1) return words[0] ?? '';
  return `${words.slice(0, -1).join(', ')} ${and} ${words[words.length - 1]}`;
}

export function orList(words: readonly string[]): string {
  return listed(words, 'or');
}

/** "size M", "sizes M and L", "all sizes". */
export function sizesNamed(sizes: readonly number[], voice: Voice): string {
  if (sizes.length === voice.sizes) return 'all sizes';
  return `${sizes.length === 1 ? 'size' : 'sizes'} ${listed(sizes.map(voice.label))}`;
}

/**
 * One sentence for facts of several sizes: sizes that say the same share it, the others follow with their own
 * numbers. With one size, or when it does not depend on the size, just the sentence.
 */
export function perSize(facts: readonly SizedFact[], voice: Voice, say: (fact: Fact) => string): string {
  const groups = new Map<string, number[]>();
  for (const { size, fact } of facts) {
    const sentence = say(fact);
    const sizes = groups.get(sentence) ?? [];
    if (size !== null) sizes.push(size);
    groups.set(sentence, sizes);
  }
  const entries = [...groups];
  if (entries.length === 1) {
    const [sentence, sizes] = entries[0]!;
    if (sizes.length === 0 || voice.sizes <= 1 || sizes.length === voice.sizes) return sentence;
    return `in ${sizesNamed(sizes, voice)}, ${sentence}`;
  }
  return entries
    .map(([sentence, sizes]) => (sizes.length === 0 ? sentence : `${sizesNamed(sizes, voice)}: ${sentence}`))
    .join('. ');
}
