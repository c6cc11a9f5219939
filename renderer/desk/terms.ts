/**
 * Words of the pattern, and about it, in the terms on screen. It converts for showing; the document keeps its own
 * words.
 */
import type { Pattern, Special } from '../../core/document/pattern.ts';
import { translate } from '../../core/notation/translate.ts';
import type { Terms } from '../../core/trade/stitches.ts';

/** What each market calls a special stitch: names and abbreviations. */
export interface OwnName {
  readonly us: string;
  readonly uk: string;
}

const names = new WeakMap<readonly Special[], readonly OwnName[]>();

/** Names of the pattern's special stitches in both markets, where both are given. */
export function ownNames(pattern: Pattern): readonly OwnName[] {
  const known = names.get(pattern.specials);
  if (known !== undefined) return known;
  const own = pattern.specials
    .flatMap(({ nameUs, nameUk, abbrUs, abbrUk }) => [
      { us: nameUs, uk: nameUk },
      { us: abbrUs, uk: abbrUk },
    ])
    .filter(({ us, uk }) => us.trim() !== '' && uk.trim() !== '');
  names.set(pattern.specials, own);
  return own;
}

/** A text of the pattern (a finding’s sentence, a name) as it reads in `terms`. */
export function inTerms(
  text: string,
  pattern: Pattern,
  terms: Terms,
  kind: 'row' | 'prose' | 'mixed',
): string {
  return translate(text, pattern.terms, terms, { kind, own: ownNames(pattern) }).text;
}
