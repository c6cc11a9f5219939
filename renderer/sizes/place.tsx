/** The place "Sizes". */
import { PLACE_WORDS } from '../words/shell.ts';

export function SizesPlace() {
  return <h2>{PLACE_WORDS.sizes}</h2>;
}
