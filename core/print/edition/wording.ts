/**
 * Headings and sentences that are ours and not the author's, in the English of each market. Words only: nothing
 * is put together here that depends on a pattern's numbers.
 */
import type { Terms } from '../../trade/stitches.ts';

export interface Wording {
  readonly language: 'en-US' | 'en-GB';
  readonly market: 'US' | 'UK';
  readonly otherMarket: 'US' | 'UK';
  /** "US terms". */
  readonly termsNote: string;
  readonly writtenIn: string;
  readonly termsTable: string;
  readonly gauge: string;
  readonly gaugeAdvice: string;
  readonly fiber: string;
  readonly centimetres: string;
  readonly metres: string;
  readonly evenRow: (form: string) => string;
  /** "Work 3 rows even" as the market says it. */
  readonly even: (words: string) => string;
}

const US: Wording = {
  language: 'en-US',
  market: 'US',
  otherMarket: 'UK',
  termsNote: 'US terms',
  writtenIn: 'This pattern is written in US terms.',
  termsTable: 'US terms used here and their UK equivalents',
  gauge: 'Gauge',
  gaugeAdvice:
    'Check your gauge before you begin: the finished size depends on it. If you count more stitches, try a larger hook; if you count fewer, a smaller one.',
  fiber: 'Fiber',
  centimetres: 'centimeters',
  metres: 'meters',
  evenRow: (form) => `Even ${form}`,
  even: (words) => words,
};

const UK: Wording = {
  language: 'en-GB',
  market: 'UK',
  otherMarket: 'US',
  termsNote: 'UK terms',
  writtenIn: 'This pattern is written in UK terms.',
  termsTable: 'UK terms used here and their US equivalents',
  gauge: 'Tension',
  gaugeAdvice:
    'Check your tension before you begin: the finished size depends on it. If you count more stitches, try a larger hook; if you count fewer, a smaller one.',
  fiber: 'Fibre',
  centimetres: 'centimetres',
  metres: 'metres',
  evenRow: (form) => `Straight ${form}`,
  even: (words) => words.replace(/ even$/, ' straight'),
};

export function wordingIn(terms: Terms): Wording {
  return terms === 'us' ? US : UK;
}
