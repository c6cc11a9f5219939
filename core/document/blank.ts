/** What is not written yet: a row that has its label and no words. */
import type { Block } from './pattern.ts';

/** Whether a block is a row without words. It works nothing, so it has no count either, not even 0. */
export const isBlankRow = (block: Block): boolean => block.type === 'row' && block.text.text.trim() === '';
