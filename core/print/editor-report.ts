/**
 * The report for a human editor as a booklet: findings by piece with their words and numbers, what was accepted,
 * what was checked, and the counts of every row as an appendix. It lays nothing out and finds nothing.
 */
import { titleOf } from '../document/title.ts';
import type { EditorReport, ReportFinding } from '../review/report.ts';
import {
  type Block,
  type Booklet,
  bold,
  entries,
  heading,
  italic,
  list,
  numbers,
  paragraph,
  part,
  plain,
  type Run,
  table,
  together,
} from './content.ts';
import { versionWords } from './edition/closing.ts';
import { wordingIn } from './edition/wording.ts';

const SEVERITY = { error: 'Mistake', warning: 'To look at', note: 'Note' } as const;

const PARTS: Readonly<Record<string, string>> = {
  whole: 'The whole pattern',
  cover: 'Cover',
  sizes: 'Sizes and lines',
  materials: 'Materials',
  specials: 'Special stitches',
  notes: 'Notes',
  finishing: 'Finishing',
  closing: 'Closing page',
};

const many = (n: number, one: string, more: string): string => `${n} ${n === 1 ? one : more}`;

function totals({ open, accepted }: EditorReport): string {
  const found = [
    ...(open.error > 0 ? [many(open.error, 'mistake', 'mistakes')] : []),
    ...(open.warning > 0 ? [`${open.warning} to look at`] : []),
    ...(open.note > 0 ? [many(open.note, 'note', 'notes')] : []),
  ].join(', ');
  const stand = accepted.length === 0 ? '' : ` ${accepted.length} more accepted by the maker, with reasons.`;
  return `${found === '' ? 'Nothing was found against this pattern' : `Open: ${found}`}.${stand}`;
}

/** A list of numbers in a sentence is not broken where it can be helped. */
function sentence(text: string): readonly Run[] {
  const runs: Run[] = [];
  let at = 0;
  for (const match of text.matchAll(/\d+ \([\d–, ]+\)/gu)) {
    if (match.index > at) runs.push(plain(text.slice(at, match.index)));
    runs.push(numbers(match[0]));
    at = match.index + match[0].length;
  }
  if (at < text.length) runs.push(plain(text.slice(at)));
  return runs;
}

function findingBlock(finding: ReportFinding, sizes: number, more: readonly Block[] = []): Block {
  const { severity, row, words, message, detail, fix, reason, code } = finding;
  const place = row === null ? '' : ` · ${row}`;
  const who =
    finding.sizes.length === 0 || finding.sizes.length === sizes
      ? ''
      : ` · ${finding.sizes.length === 1 ? 'Size' : 'Sizes'} ${finding.sizes.join(', ')}`;
  return together(
    paragraph([bold(`${SEVERITY[severity]}${place}${who}`)]),
    ...(words === null ? [] : [paragraph([plain('“'), italic(words), plain('”')])]),
    paragraph([...sentence(message)]),
    ...(detail === null ? [] : [paragraph(detail, 'small')]),
    ...(fix === null || fix.trim() === '' ? [] : [paragraph([plain('Would put it right: '), bold(fix)])]),
    ...more,
    paragraph(`Why: ${reason} (${code})`, 'small'),
  );
}

const titled = (name: string | null, part: string): string =>
  part === 'piece' ? name?.trim() || 'Piece without a name' : (PARTS[part] ?? part);

function findingsPart(report: EditorReport) {
  const blocks = report.parts.flatMap(({ part: of, piece, findings }) => [
    heading(2, titled(piece, of)),
    ...findings.map((finding) => findingBlock(finding, report.sizes.length)),
  ]);
  return part('Findings', blocks.length === 0 ? [paragraph('There is none.')] : blocks);
}

function acceptedPart({ accepted, sizes }: EditorReport) {
  return part(
    'Accepted by the maker',
    accepted.map((finding) =>
      findingBlock(finding, sizes.length, [
        paragraph([
          bold(`Accepted${finding.date === '' ? '' : ` on ${finding.date}`}: `),
          plain(finding.why.trim() === '' ? 'no reason is given.' : finding.why),
        ]),
      ]),
    ),
  );
}

function checkedPart({ checked }: EditorReport) {
  const titles = (by: 'working' | 'editing') =>
    checked.filter((each) => each.by === by).map(({ title }) => title);
  return part('What was checked', [
    paragraph(
      'Every row was read as it is written and worked stitch by stitch in every size; every line of the sizing sheet was worked out. Each of these was looked for everywhere. What no reckoning sees (whether the pattern is a pleasure to follow, whether it looks as it should) is left to the editor and to those who test it.',
    ),
    heading(2, 'In the words and the materials, and between pieces'),
    list('bulleted', titles('editing')),
    heading(2, 'In reading, grading and working'),
    list('bulleted', titles('working')),
  ]);
}

function countsPart(report: EditorReport) {
  const shown = (n: number | null) => (n === null ? '–' : String(n));
  return part(
    'Stitches after every row',
    report.rows.flatMap(({ piece, make, rows }): readonly Block[] =>
      rows.length === 0
        ? []
        : [
            table({
              caption: `${piece.trim() || 'Piece without a name'}${make > 1 ? ` (make ${make})` : ''}`,
              corner: 'Row',
              heads: report.sizes,
              rows: rows.map(({ label, side, stitches }) => [
                side === null ? label : `${label} (${side})`,
                ...stitches.map(shown),
              ]),
              told: 'by-row',
            }),
          ],
    ),
    true,
  );
}

/** The report as a booklet, in the market of its terms. */
export function reportBooklet(report: EditorReport): Booklet {
  const wording = wordingIn(report.terms);
  const title = titleOf(report);
  const about = part('Technical edit', [
    paragraph(totals(report), 'lead'),
    entries('facts', [
      ['Pattern', title],
      ...(report.designer.trim() === '' ? [] : [['Designer', report.designer] as const]),
      [
        'Version',
        [report.version, report.date].filter((word) => word.trim() !== '').join(', ') || 'not given',
      ],
      ['Sizes', report.sizes.join(', ') || 'none'],
      [
        'Terms',
        report.terms === report.patternTerms
          ? wording.termsNote
          : `${wording.termsNote}; the pattern is written in ${wordingIn(report.patternTerms).termsNote}, and words quoted here are converted`,
      ],
    ]),
    paragraph(
      'For an editor. Quoted words are the pattern’s, with its numbers filled in: one for all sizes, or one for each size in order.',
    ),
  ]);
  const parts = [about, findingsPart(report), acceptedPart(report), checkedPart(report), countsPart(report)];
  return {
    meta: {
      title: `${title}: technical edit`,
      author: report.designer.trim(),
      language: wording.language,
      subject: 'Technical edit of a crochet pattern',
      keywords: ['crochet', 'technical edit', wording.termsNote],
      date: report.date.trim(),
      termsNote: wording.termsNote,
      version: versionWords(report, report.terms),
      sizeKey: report.sizes.length === 0 ? '' : `Sizes ${report.sizes.join(', ')}`,
    },
    cover: null,
    parts: parts.filter(({ blocks }) => blocks.length > 0),
  };
}
