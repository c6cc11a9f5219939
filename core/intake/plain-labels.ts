/**
 * Signs that houses set in the labels and counts of rows, as the trade's usual ones, so that rows are read: a pointer
 * behind a label, a wide gap in place of its colon, a count between angle brackets or behind leading dots, a bracket
 * behind each number of a range. It changes no word.
 */

/** "Row 1 » …", "Set-up row › …". */
const POINTER = /^(\s*\p{L}[^.:;»›→]{0,40}?)\s*[»›→]\s*(?=\S)/u;
/** "… join. <12>", "<48 / 60 / 72>": numbers between angle brackets at the end of a line. */
const ANGLES = /<(\s*(?:\d{1,4}|[-–—])[^<>]{0,60})>(?=[.\s]*$)/u;
/** "4)-6) sc around", "4) – 6)". */
const BRACKETS = /^(\s*\d{1,3})\)\s?[-–—]\s?(\d{1,3}[).:])/u;

/** "… to end ..... 73 (81, 90) tr.": dots that lead on to the count at the end of a line. */
const LEADERS = /\s*(?:\.{3,}|…+|(?:\. ){3,}\.?)\s*(?=\d{1,4}\b[^.]*\.?$)/u;
/** "Handle round  5 dc …", "1st Row  1 tr …": a gap where a colon would stand. */
const GAP =
  /^(\s*(?:\p{L}[\p{L}-]* ){0,2}(?:\d{1,3}(?:st|nd|rd|th) )?(?:row|rnd|round)(?: \d{1,3}(?:[-–]\d{1,3})?)?)\s{2,}(?=\S)/iu;

/** A line with the usual signs. */
export const plainLabels = (line: string): string =>
  line
    .replace(POINTER, '$1: ')
    .replace(GAP, '$1: ')
    .replace(LEADERS, ' – ')
    .replace(ANGLES, (_, count: string) => `(${count.trim()})`)
    .replace(BRACKETS, '$1-$2');
