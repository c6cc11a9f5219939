/** What the page asks of the worker that reads old patterns, and what it answers. Shapes only. */
import type { Picture } from '../../core/document/media.ts';
import type { Brought } from '../../core/intake/bring.ts';
import type { Terms } from '../../core/trade/stitches.ts';

/** Where the words come from. */
export type Source =
  /** `name`: of the file that they were taken from; null for words that were pasted. */
  | { readonly kind: 'words'; readonly text: string; readonly name: string | null }
  /** A file of words or of a word processor. */
  | { readonly kind: 'file'; readonly name: string; readonly bytes: Uint8Array };

export interface BringAsked {
  readonly source: Source;
  readonly terms: Terms | null;
  readonly date: string;
}

export type BringTold =
  /** `media`: the pictures that the pattern shows. */
  | { readonly ok: true; readonly brought: Brought; readonly media: readonly Picture[] }
  | { readonly ok: false; readonly message: string };
