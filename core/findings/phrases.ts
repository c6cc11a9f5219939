/**
 * Small parts that findings' sentences are made of: numbers of one size or of several, plurals, lists,
 * lengths. Knows nothing of what is wrong.
 */
import type { Fact, FactValue } from '../finding.ts';
import type { SizedFact, Voice } from './kind.ts';

type Data = Readonly<Record<string, FactValue>>;

/** The sign that stands for a figure in a text. */
export const FIGURE_SIGN = '\uFFFC';

export function number(data: Data, key: string): number {
  const value = data[key];
  return typeof value === 'number' ? value : 0;
}

export function text(data: Data, key: string): string {
  const value = data[key];
  return typeof value === 'string' ? value : '';
}

/** The words under a key, shortened in the middle when they would fill the sentence. */
export function quoted(data: Data, key: string): string {
  return quote(text(data, key));
}

/**
 * Words in quotation marks, shortened in the middle when they would fill the sentence. What has no words, a
 * piece that is not named yet, is called so.
 */
export function quote(words: string): string {
  const plain = words.replaceAll(FIGURE_SIGN, '#').trim();
  if (plain === '') return 'one without a name';
  const letters = [...plain];
  return letters.length <= 60
    ? `"${plain}"`
    : `"${letters.slice(0, 40).join('')} … ${letters.slice(-15).join('')}"`;
}

/** The values under a key as words: a list stays a list, one value becomes a list of one. */
export function words(data: Data, key: string): readonly string[] {
  const value = data[key];
  if (value === undefined || value === null) return [];
  return (Array.isArray(value) ? value : [value]).map((each) =>
    typeof each === 'number' ? plain(each) : String(each),
  );
}

/** A number as a maker writes it: at most two decimals, a true minus sign. */
export function plain(n: number): string {
  const rounded = Math.round(n * 100) / 100;
  return String(rounded).replace('-', '−');
}

/** "1 repeat", "3 repeats"; `asIs` = the noun already agrees with the number. */
export function count(n: number, noun: string, asIs = false): string {
  return `${plain(n)} ${asIs || n === 1 ? noun : plural(noun)}`;
}

export function plural(noun: string): string {
  return /(s|sh|ch|x)$/.test(noun) ? `${noun}es` : `${noun}s`;
}

/** "1st", "2nd", "3rd", "11th". */
export function ordinal(n: number): string {
  const ten = n % 100;
  const end =
    ten >= 11 && ten <= 13
      ? 'th'
      : (({ 1: 'st', 2: 'nd', 3: 'rd' } as Record<number, string>)[n % 10] ?? 'th');
  return `${n}${end}`;
}

/** "A", "A and B", "A, B and C". */
export function listed(words: readonly string[], and = 'and'): string {
  if (words.length <= 1) return words[0] ?? '';
  return `${words.slice(0, -1).join(', ')} ${and} ${words[words.length - 1]}`;
}

/** "is" or "are", by the number before it. */
export function are(n: number): string {
  return n === 1 ? 'is' : 'are';
}

/** A length that a fact holds, in both units: "99.5 cm (39¼ in)". */
export function length(data: Data, key: string): string {
  return `${text(data, key)} (${text(data, `${key}In`)})`;
}

/** An amount of any dimension that a fact holds: a length in both units, a percentage, or a number. */
export function amount(data: Data, key: string): string {
  const dimension = data[`${key}Dimension`];
  if (dimension === 'length' || typeof data[key] === 'string') return length(data, key);
  if (dimension === 'percent') return `${plain(number(data, key) * 100)} %`;
  return plain(number(data, key));
}

const DIMENSIONS: Readonly<Record<string, string>> = {
  length: 'a length',
  count: 'a number of stitches or rows',
  ratio: 'a plain number',
  percent: 'a percentage',
};

/** What an amount is an amount of: "a length". */
export function dimension(data: Data, key: string): string {
  return DIMENSIONS[text(data, key)] ?? 'something else';
}

/** What a formula stands in, by the name of the field: the formula itself, or one part of a line. */
const FIELDS: Readonly<Record<string, (line: string) => string>> = {
  formula: (line) => `the formula of ${line}`,
  length: (line) => `the length of ${line}`,
  start: (line) => `the start of ${line}`,
  end: (line) => `the end of ${line}`,
  rows: (line) => `the length in rows of ${line}`,
  changes: (line) => `the number of changes in ${line}`,
  over: (line) => `the count under ${line}`,
};

/** Where a formula stands: a figure in a row, or a part of a line. */
export function formulaPlace(data: Data): string {
  const figure = text(data, 'figure');
  if (figure !== '') return `the figure ${quote(figure)}`;
  const line = quoted(data, 'line');
  return (FIELDS[text(data, 'field')] ?? ((name: string) => name))(line);
}

/** "size M", "sizes M and L", "all sizes" (for what does not depend on the size, too). */
export function sizesNamed(sizes: readonly number[], voice: Voice): string {
  if (sizes.length === 0 || sizes.length === voice.sizes) return 'all sizes';
  const labels = sizes.map(voice.label);
  // Sizes that are called "Size 1" are not called "size Size 1".
  if (labels.every((label) => /^sizes?\b/iu.test(label))) return listed(labels);
  return `${sizes.length === 1 ? 'size' : 'sizes'} ${listed(labels)}`;
}

/** First letter as a capital. */
export function capital(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
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
    .map(([sentence, sizes]) =>
      capital(sizes.length === 0 ? sentence : `${sizesNamed(sizes, voice)}: ${sentence}`),
    )
    .join('. ');
}

/** What all facts of a finding hold in common under a key; null when they differ. */
export function shared(facts: readonly SizedFact[], key: string): FactValue {
  const first = facts[0]!.fact.data[key] ?? null;
  return facts.every(({ fact }) => fact.data[key] === first) ? first : null;
}
