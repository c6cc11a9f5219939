/** The place "Write". */
import { PLACE_WORDS } from '../words/shell.ts';

export function WritePlace() {
  return <h2>{PLACE_WORDS.write}</h2>;
}
