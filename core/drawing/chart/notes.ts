/**
 * What a chart tells its reader besides its symbols, as sentences: what it leaves out and why, or why there is none.
 * The plan says what; here is how it is said.
 */
import type { ChartNote, ChartProblem } from './plan.ts';

const what = ({ rounds }: { readonly rounds: boolean }): string => (rounds ? 'round' : 'row');

/** A note as a sentence. */
export function noteInWords(note: ChartNote): string {
  switch (note.kind) {
    case 'fewer': {
      const places = note.chains ? 'chains' : 'stitches';
      return `The chart stands on ${note.drawn} ${places} instead of ${note.full}: the repeat with its edges.`;
    }
    case 'repeated': {
      const [row, rows] = note.rounds ? ['Round', 'Rounds'] : ['Row', 'Rows'];
      const made = note.first === note.last ? `${row} ${note.first}` : `${rows} ${note.first}–${note.last}`;
      const from = note.from === note.to ? `${row} ${note.from}` : `${rows} ${note.from}–${note.to}`;
      return `${made} ${note.first === note.last ? 'repeats' : 'repeat'} ${from} and ${note.first === note.last ? 'is' : 'are'} not drawn again.`;
    }
    case 'rows-left-out':
      return `The chart shows the first ${note.drawn} of ${note.rows} ${note.rounds ? 'rounds' : 'rows'}; more would not be legible. The text has all of them.`;
    case 'along-edge':
      return note.number === null
        ? `The chart ends before the ${what(note)} that is worked along the row-ends.`
        : `The chart ends before ${what(note)} ${note.number}, which is worked along the row-ends.`;
    case 'from-ring':
      return note.asked === null
        ? 'The chart begins with the first round, on which the others stand.'
        : `The chart begins with the first round, on which those from Round ${note.asked} on stand.`;
    case 'not-right':
      return note.number === null
        ? `A ${what(note)} does not come out as it is written; the chart shows it as far as it goes.`
        : `${note.rounds ? 'Round' : 'Row'} ${note.number} does not come out as it is written; the chart shows it as far as it goes.`;
    case 'size':
      return `The chart shows size ${note.label}.`;
  }
}

/** Why there is no chart, and what would give one. */
export function problemInWords(problem: ChartProblem): string {
  switch (problem) {
    case 'piece-gone':
      return 'The piece that this chart shows is no longer in the pattern. Choose another piece, or remove the chart.';
    case 'rows-gone':
      return 'A row that this chart shows is no longer where it was. Choose its first and last row again.';
    case 'not-in-size':
      return 'The size of this chart does not work these rows. Choose another size, or other rows.';
    case 'nothing-worked':
      return 'There is nothing in these rows that a chart can show: they make no stitches, or lie along the row-ends.';
    case 'too-wide':
      return 'The first row has more stitches than a chart can show. Choose rows of a smaller piece, or let the text stand alone.';
  }
}

/** That large rounds are shown in part, with how often the last one works its repeat. */
export const sectorInWords = (times: number): string =>
  `The chart shows a part of the rounds: one repeat, with where they begin. The last round works the repeat ${times} times.`;

export const openedInWords = 'The rounds are drawn opened out, each from its number.';

/** That a chart comes in parts, which way they go, and what two of them both show. */
export const partsInWords = (parts: number, way: 1 | -1, overlap: number): string =>
  `The chart is in ${parts} parts, from ${way === 1 ? 'left to right' : 'right to left'}; each begins with the last ${overlap} stitches of the part before.`;

export const cutInWords =
  'Only the beginning is drawn: the rows are too wide for a chart. The text has all of it.';
