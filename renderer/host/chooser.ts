/**
 * How a host without dialogs of the system lets the maker choose: whoever draws the studio gives it something
 * that asks. Types only.
 */
import type { Folders } from '../../app/host/folders.ts';
import type { FileRef } from '../../app/host/host.ts';

export type ChooseRequest =
  | { readonly kind: 'open' }
  /** `suggested`: the name to begin with. */
  | { readonly kind: 'save'; readonly suggested: string }
  | { readonly kind: 'folder' };

/** Asks the maker, with `folders` to look at; null when nothing was chosen. */
export type Chooser = (request: ChooseRequest, folders: Folders) => Promise<FileRef | null>;
