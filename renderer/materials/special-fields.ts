/** The fields of a special stitch in the order in which they are asked for. It draws nothing. */
import type { Special } from '../../core/document/pattern.ts';
import type { Terms } from '../../core/trade/stitches.ts';

export type SpecialField = keyof Pick<Special, 'nameUs' | 'abbrUs' | 'nameUk' | 'abbrUk'>;

const US = ['nameUs', 'abbrUs'] as const;
const UK = ['nameUk', 'abbrUk'] as const;

/** A name and its short form for each market, those of the pattern's own terms first. */
export const specialFields = (terms: Terms): readonly (readonly [SpecialField, SpecialField])[] =>
  terms === 'us' ? [US, UK] : [UK, US];
