/** What the page and the worker of the spelling say to each other. Shapes only. */
import type { Terms } from '../../core/trade/stitches.ts';

/** A text to look through. Of a row, only what the reader takes for plain words is spelling’s concern. */
export interface TextToSpell {
  readonly text: string;
  readonly isRow: boolean;
}

/** Where a word stands in its text. */
export type WordAt = readonly [from: number, to: number];

export type ToSpeller =
  | { readonly kind: 'language'; readonly terms: Terms; readonly known: readonly string[] }
  | { readonly kind: 'check'; readonly serial: number; readonly texts: readonly TextToSpell[] }
  | { readonly kind: 'suggest'; readonly serial: number; readonly word: string };

export type FromSpeller =
  | { readonly kind: 'checked'; readonly serial: number; readonly wrong: readonly (readonly WordAt[])[] }
  | { readonly kind: 'suggested'; readonly serial: number; readonly words: readonly string[] };
