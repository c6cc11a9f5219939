/** The place "Print". */
import { PLACE_WORDS } from '../words/shell.ts';

export function PrintPlace() {
  return <h2>{PLACE_WORDS.print}</h2>;
}
