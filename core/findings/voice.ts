/**
 * The words a sentence uses for stitches and places, in the author's terms. Only naming; no sentence is here.
 */
import type { Terms } from '../trade/stitches.ts';
import { stitchAbbreviation } from '../trade/terms.ts';
import type { Voice } from './kind.ts';
import { plural } from './phrases.ts';

const PLAIN: Readonly<Record<string, readonly [one: string, many: string]>> = {
  st: ['st', 'sts'],
  ch: ['ch', 'ch'],
  chain: ['ch', 'ch'],
  sp: ['ch-sp', 'ch-sps'],
  group: ['group', 'groups'],
  gap: ['space between stitches', 'spaces between stitches'],
  'row-end': ['row-end', 'row-ends'],
  seam: ['seam', 'seams'],
  corner: ['corner', 'corners'],
  tch: ['turning ch', 'turning ch'],
  marked: ['marked st', 'marked sts'],
};

/** Sorts of stitch that are named by no height, where the word is not their usual name. */
const FORMS: Readonly<Record<string, string>> = {
  'v-stitch': 'V-st',
  'v st': 'V-st',
  'v stitch': 'V-stitch',
  inc: 'increase',
  dec: 'decrease',
  extended: 'extended stitch',
  foundation: 'foundation stitch',
  linked: 'linked stitch',
  crossed: 'crossed stitch',
  reverse: 'reverse stitch',
  spike: 'spike stitch',
  standing: 'standing stitch',
  surface: 'surface stitch',
  puff: 'puff st',
  special: 'special stitch',
};

/** Name of a stitch or place by its id, for n of them. */
export function placeName(id: string, n: number, terms: Terms): string {
  const plain = PLAIN[id];
  if (plain !== undefined) return n === 1 ? plain[0] : plain[1];
  if (id.startsWith('"')) {
    const name = FORMS[id.slice(1, -1)] ?? id.slice(1, -1);
    return n === 1 ? name : plural(name);
  }
  const space = /^sp(\d+)$/.exec(id);
  if (space !== null) return `ch-${space[1]} ${n === 1 ? 'sp' : 'sps'}`;
  return stitchAbbreviation(id, terms);
}

/** A voice for findings of one text. `labels` = the sizes' labels; null when the text names none. */
export function voiceOf(terms: Terms, labels: readonly string[], words: string): Voice {
  return {
    label: (size) => labels[size] ?? String(size + 1),
    sizes: labels.length,
    words,
    stitch: (id, n) => placeName(id, n, terms),
    skip: terms === 'us' ? 'skip' : 'miss',
    gauge: terms === 'us' ? 'gauge' : 'tension',
  };
}
