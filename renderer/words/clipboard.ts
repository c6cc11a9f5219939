/** Words of copying and pasting: what became of a passage, why something cannot be pasted. Sentences only. */
import type { PasteReport } from '../clipboard/pasting.ts';

const counted = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;
const listed = (parts: readonly string[]): string =>
  parts.length < 2 ? (parts[0] ?? '') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;

/** What a paste came to, sentence by sentence; the first is always there. */
function told(report: PasteReport, leftOut: readonly string[]): readonly string[] {
  const made = [
    report.pieces > 0 && counted(report.pieces, 'new piece', 'new pieces'),
    report.rows > 0 && counted(report.rows, 'row', 'rows'),
    report.paragraphs > 0 && counted(report.paragraphs, 'paragraph', 'paragraphs'),
    report.specials > 0 && counted(report.specials, 'special stitch', 'special stitches'),
    report.notes > 0 && counted(report.notes, 'note', 'notes'),
  ].filter((part) => part !== false);
  const sentences = [`Pasted: ${listed(made)}.`];
  if (report.agreed > 0)
    sentences.push(
      `${counted(report.agreed, 'typed count agrees', 'typed counts agree')} with the rows as worked, and ${report.agreed === 1 ? 'was' : 'were'} taken out: the count there is worked out.`,
    );
  if (report.kept > 0)
    sentences.push(
      `${counted(report.kept, 'typed count', 'typed counts')} could not be confirmed and ${report.kept === 1 ? 'stays' : 'stay'} in the words. Where the rows give another count, a finding there says so; compare the others yourself.`,
    );
  const [first, ...others] = report.renumbered;
  if (first !== undefined)
    sentences.push(
      `Rows have other numbers here: what was typed as ${first.typed} is ${first.now}${others.length > 0 ? `, and so on for ${counted(others.length, 'more row', 'more rows')}` : ''}. Check sentences that name rows by number.`,
    );
  if (leftOut.length > 0)
    sentences.push(
      `Left out as page numbers or running heads: ${listed(leftOut.map((line) => `“${line}”`))}.`,
    );
  return sentences;
}

export const clipboardWords = {
  told,
  pasted: (lines: number) => `Pasted: ${counted(lines, 'paragraph', 'paragraphs')}.`,
  close: 'Close',
  label: 'What was pasted',
  copied: (lines: number) => `Copied: ${counted(lines, 'line', 'lines')}.`,
  foreign: 'What was copied does not fit here.',
  readOnly: 'The pattern is being read in the other terms. Go back to its own terms to paste.',
} as const;
