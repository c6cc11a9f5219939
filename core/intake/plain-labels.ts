/**
 * Signs that houses set in the labels and counts of rows, as the trade's usual ones, so that rows are read: a pointer
 * behind a label, a count between angle brackets, a bracket behind each number of a range. It changes no word.
 */

/** "Row 1 » …", "Set-up row › …". */
const POINTER = /^(\s*\p{L}[^.:;»›→]{0,40}?)\s*[»›→]\s*(?=\S)/u;
/** "… join. <12>", "<48 / 60 / 72>": numbers between angle brackets at the end of a line. */
const ANGLES = /<(\s*(?:\d{1,4}|[-–—])[^<>]{0,60})>(?=[.\s]*$)/u;
/** "4)-6) sc around", "4) – 6)". */
const BRACKETS = /^(\s*\d{1,3})\)\s?[-–—]\s?(\d{1,3}[).:])/u;

/** A line with the usual signs. */
export const plainLabels = (line: string): string =>
  line
    .replace(POINTER, '$1: ')
    .replace(ANGLES, (_, count: string) => `(${count.trim()})`)
    .replace(BRACKETS, '$1-$2');
