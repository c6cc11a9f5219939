/** The plugins of the manuscript's editor, in the order in which they answer. */
import type { Plugin } from 'prosemirror-state';
import type { Studio } from '../shell/studio.ts';

export function manuscriptPlugins(_studio: Studio): readonly Plugin[] {
  return [];
}
