/**
 * Puts labels of rows that stand on a line of their own before the words that they label, as readers of PDFs give them
 * of pages where labels hang in the margin. It changes no word and looks at nothing but the lines' beginnings and ends.
 */

const NUMBER = String.raw`\d{1,4}(?:(?:st|nd|rd|th)\b)?`;
/** "4–9", "4–51 (53, 55)", "2 and 3": numbers of rows, for each size too. */
const NUMBERS = String.raw`${NUMBER}(?:\s?[-–—]\s?${NUMBER})?(?:\s?(?:,|and|&)\s?${NUMBER}(?:\s?[-–—]\s?${NUMBER})?)*(?:\s?\((?:[\d–—\-,\s]|or)+\))?`;
const SIDE = String.raw`(?:\s?[([](?:RS|WS|right side|wrong side)[^()[\]]{0,30}[)\]])?`;

/** "Row 1 (RS):", "Rnds 3–6 (7, 8):", "Dec Row 5:", "Foundation:", and nothing behind the colon. */
const LABEL = new RegExp(
  String.raw`^(?:[\p{L}-]+ ){0,2}(?:(?:rows?|rnds?|rounds?) ${NUMBERS}|${NUMBER} (?:row|rnd|round)|next ${NUMBERS} (?:rows?|rnds?|rounds?)|foundation(?: (?:row|rnd|round|chain|ch))?|base(?: (?:row|chain))?|set-?up(?: (?:row|rnd|round))?)${SIDE}\s?:$`,
  'iu',
);

/** Whether a line is the label of a row and nothing else. */
export const isLabelAlone = (line: string): boolean => line.length <= 120 && LABEL.test(line.trim());

/** Does a sentence that is not at its end go on in a line: with small letters, or a number that is no row's? */
const goesOn = (words: string, line: string): boolean =>
  !/[.:;!?)\]”"]$/u.test(words) && /^(?:\p{Ll}|\d+(?! ?[.):]))/u.test(line.trim()) && !isLabelAlone(line);

/** The lines with every label that stands alone before the words that follow it, past one gap at most. */
export function withLabelsBefore(lines: readonly string[]): readonly string[] {
  const out: string[] = [];
  for (let at = 0; at < lines.length; at++) {
    const line = lines[at]!;
    const next = lines[at + 1]?.trim() === '' ? at + 2 : at + 1;
    const words = lines[next]?.trim() ?? '';
    if (!isLabelAlone(line) || words === '' || words.endsWith(':') || isLabelAlone(words)) {
      out.push(line);
      continue;
    }
    let whole = `${line.trimEnd()} ${words}`;
    at = next;
    // What is bold at the beginning of a paragraph makes a gap within it.
    while (lines[at + 1]?.trim() === '' && goesOn(whole, lines[at + 2] ?? '')) {
      whole = `${whole} ${lines[at + 2]!.trim()}`;
      at += 2;
    }
    out.push(whole);
  }
  return out;
}
