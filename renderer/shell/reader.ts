/** How what a component shows reads to the maker: in the terms and units on screen. It converts for showing only. */
import { useMemo } from 'react';
import type { Terms } from '../../core/trade/stitches.ts';
import type { Units } from '../../core/trade/units.ts';
import { inTerms } from '../desk/terms.ts';
import { useDeskView } from './hooks.ts';

export interface Reader {
  readonly terms: Terms;
  readonly units: Units;
  /** The terms on screen are not the pattern's own: words of the pattern are shown, not typed. */
  readonly isOther: boolean;
  /** Words of the pattern, or about it, in the terms on screen. */
  readonly say: (text: string, kind?: 'row' | 'prose' | 'mixed') => string;
}

export function useReader(): Reader {
  const pattern = useDeskView((view) => view.pattern);
  const { terms, units } = useDeskView((view) => view.reading);
  return useMemo(
    () => ({
      terms,
      units,
      isOther: terms !== pattern.terms,
      say: (text, kind = 'mixed') => inTerms(text, pattern, terms, kind),
    }),
    [pattern, terms, units],
  );
}
