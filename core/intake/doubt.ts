/** A doubt about something that was brought in, as the maker is shown it. A shape only. */
import type { Doubt } from '../document/workbook.ts';

/** A part that was not understood. */
export interface DoubtShown extends Doubt {
  /** "Back, Row 3", "Materials"; empty for the whole pattern. */
  readonly where: string;
  /** Words that it is about; empty where the reason says it all. */
  readonly words: string;
}
