/**
 * Builders of cases for swatches and pieces: a case from its lines, and the plain first rows that many of
 * them stand on. Must hold no expectation that a case does not state.
 */
import { type Expected, lines, type RowCase } from './types.ts';

type Rest = Partial<Omit<RowCase, 'name' | 'terms' | 'text' | 'counts'>>;

/** Counts of every entry, or `{ final }` where the division into entries is not the point. */
type Counts = NonNullable<RowCase['counts']> | { readonly final: Expected };

const stated = (counts: Counts): Pick<RowCase, 'counts' | 'final'> =>
  'final' in counts ? counts : { counts };

/** A case in US terms. */
export const us = (name: string, text: readonly string[], counts: Counts, rest: Rest = {}): RowCase => ({
  name,
  terms: 'us',
  text: lines(...text),
  ...stated(counts),
  ...rest,
});

/** A case in UK terms. */
export const uk = (name: string, text: readonly string[], counts: Counts, rest: Rest = {}): RowCase => ({
  name,
  terms: 'uk',
  text: lines(...text),
  ...stated(counts),
  ...rest,
});

/** `n` sc over a chain of `n` + 1. */
export const sc = (n: number): readonly string[] => [
  `Ch ${n + 1}.`,
  `Row 1: Sc in 2nd ch from hook and in each ch across, turn. (${n} sc)`,
];

/** `n` dc over a chain of `n` + 2, the skipped chains being one of them. */
export const dc = (n: number): readonly string[] => [
  `Ch ${n + 2}.`,
  `Row 1: Dc in 4th ch from hook (3 skipped chs count as first dc) and in each ch across, turn. (${n} dc)`,
];

/** `n` UK double crochet over a chain of `n` + 1. */
export const ukDc = (n: number): readonly string[] => [
  `Make ${n + 1}ch.`,
  `1st row: 1dc in 2nd ch from hook, 1dc in each ch to end, turn. [${n} dc]`,
];

/** `n` UK trebles over a chain of `n` + 2, the missed chains being one of them. */
export const ukTr = (n: number): readonly string[] => [
  `Make ${n + 2}ch.`,
  `1st row: 1tr in 4th ch from hook, 1tr in each ch to end, turn. [${n} tr]`,
];
