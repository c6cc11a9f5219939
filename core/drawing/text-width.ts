/**
 * How wide words come out, for keeping labels apart. Widths are those of the Helvetica metrics (Adobe Core 14 AFM
 * files, published with PDF 1.0), in thousandths of the type's height: wider than the faces that the booklet embeds and
 * about those that a viewer has for "sans-serif", so that room is rather kept than missed.
 */

const DIGITS = 556;
const WIDTHS: ReadonlyMap<string, number> = new Map([
  ...[...' ,.:;/\u00A0'].map((one) => [one, 278] as const),
  ...[...'()[]-\u2011rftI'].map((one) => [one, 333] as const),
  ...[..."ijl|'"].map((one) => [one, 222] as const),
  ...[...'mMW%½¼¾⅛⅜⅝⅞⅓⅔'].map((one) => [one, 889] as const),
  ...[...'wCDGHNOQRU–×'].map((one) => [one, 778] as const),
  ...[...'ABEKPSVXY&'].map((one) => [one, 667] as const),
]);

/** Semi-bold letters are wider by about this factor. */
const BOLD = 1.08;

/** Anything else: an em for what is no Latin letter, and a letter's width for what is. */
function widthOf(character: string): number {
  return WIDTHS.get(character) ?? (/^[\u0020-\u024F]$/u.test(character) ? DIGITS : 1000);
}

/** Width of words in the unit of `size`. */
export function textWidth(words: string, size: number, bold = false): number {
  let sum = 0;
  for (const character of words) sum += widthOf(character);
  return (sum / 1000) * size * (bold ? BOLD : 1);
}

/** Words in lines no wider than `width`; a single word that is wider stands alone. */
export function wrapped(words: string, size: number, width: number, bold = false): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of words.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && textWidth(longer, size, bold) > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return line === '' ? lines : [...lines, line];
}
