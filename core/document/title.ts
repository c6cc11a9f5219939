/** How a pattern is called wherever it is named: in lists, on paper, on the command line. */
import type { About } from './pattern.ts';

/** The title, or words in the place of one that is not written yet. */
export const titleOf = ({ title }: Pick<About, 'title'>): string => title.trim() || 'Untitled pattern';
