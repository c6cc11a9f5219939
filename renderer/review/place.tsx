/** The place "Review". */
import { PLACE_WORDS } from '../words/shell.ts';

export function ReviewPlace() {
  return <h2>{PLACE_WORDS.review}</h2>;
}
