/** Lists of numbers that stand typed in the texts of a pattern, however many numbers they have. Judges none. */
import { writtenLists } from '../study/typed-lists.ts';
import { looking } from './scan.ts';

export const listsTyped = looking(writtenLists);
