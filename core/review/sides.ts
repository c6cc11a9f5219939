/** Which side of the work faced last, and where the words speak of it. It judges neither. */
import type { BlockInSize, Side } from '../study/index.ts';
import { looking } from './scan.ts';

const other = (side: Side): Side => (side === 'RS' ? 'WS' : 'RS');

/** The side that faced on the last row of a block in one size; `flat` = its rows are turned. */
export function lastSide({ side, rows }: BlockInSize, flat: boolean): Side | null {
  if (side === null || rows === 0) return null;
  return flat && rows % 2 === 0 ? other(side) : side;
}

/** "The last row is a WS row", "end after a right-side row in sizes S and L". Common practice, no source. */
const ENDS =
  /\b(?:last|final) row\b[^.;]{0,60}\b(?:RS|WS|right|wrong)\b|\bend(?:s|ed|ing)?\b[^.;]{0,60}\b(?:RS|WS|right[- ]side|wrong[- ]side)\b|\b(?:RS|WS|right[- ]side|wrong[- ]side) rows?\b[^.;]{0,60}\b(?:last|final|end)/iu;

/** The words that say on which side a piece ends. */
export const endsTold = looking((text) => {
  const match = ENDS.exec(text);
  return match === null ? [] : [{ from: match.index, to: match.index + match[0].length }];
});
