/** The place "Materials". */
import { PLACE_WORDS } from '../words/shell.ts';

export function MaterialsPlace() {
  return <h2>{PLACE_WORDS.materials}</h2>;
}
