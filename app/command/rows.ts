/** `turnchain rows`: counts and findings of rows in plain text. Prints what the report holds; reckons nothing. */
import { sizeList } from '../../core/grading/schedule-words.ts';
import { readText } from '../../core/notation/index.ts';
import { type ReportRow, reportRows, reportTree } from '../../core/study/rows.ts';
import type { Terms } from '../../core/trade/stitches.ts';
import { closingWords, findingLines, hasErrors, linesOf, NotesOnce } from './findings.ts';
import { FINDINGS, type Io, Refused, RIGHT, readWords } from './io.ts';
import { type Arguments, choiceOf, oneFile } from './options.ts';
import type { Command } from './run.ts';
import { type TableLine, table } from './table.ts';
import { columnsOf, cut, harmless, paintFor } from './words.ts';

const TERMS = ['us', 'uk'] as const;

/** The terms that rows are written in; they must be said. */
export function termsOf(given: Arguments): Terms {
  const terms = choiceOf(given, 'terms', TERMS);
  if (terms === null) {
    throw new Refused(
      'Say which terms the rows are written in, --terms us or --terms uk: the same letters mean different stitches.',
      true,
    );
  }
  return terms;
}

/** "12 (14, 16) sc, 6 dc, 5 (6, 7) ch-sps"; one kind of stitch alone needs no number. */
export function kindWords(
  byKind: Readonly<Record<string, readonly number[]>>,
  spaces: readonly (number | null)[],
): string {
  const kinds = Object.entries(byKind);
  const gaps = spaces.some((n) => (n ?? 0) > 0)
    ? [`${sizeList(spaces)} ${spaces.every((n) => (n ?? 1) === 1) ? 'ch-sp' : 'ch-sps'}`]
    : [];
  const [only] = kinds;
  if (kinds.length === 1 && only !== undefined) return [only[0], ...gaps].join(', ');
  return [...kinds.map(([kind, counts]) => `${sizeList(counts)} ${kind}`), ...gaps].join(', ');
}

/** What a row is called: its label, or its first words. */
function nameOf(row: ReportRow): string {
  const label = harmless(row.label).replace(/[\s:.–-]+$/, '');
  if (label !== '') return label;
  return row.kind === 'foundation' ? 'Foundation' : cut(harmless(row.text), 24);
}

/** A ring is a beginning without stitches. */
const isRing = (row: ReportRow): boolean =>
  row.kind === 'foundation' && row.read && row.counts.every((count) => count === 0);

/** The report of a text as lines for people. */
export function rowsWords(text: string, terms: Terms, io: Io): { words: string; errors: boolean } {
  const tree = readText(text, { terms });
  const { pieces, sizes } = tree;
  const report = reportTree(tree, text, terms);
  const width = columnsOf(io.stdout);
  const paint = paintFor(io.stdout, io.env);
  const at = linesOf(text);
  const whole = { whole: text, at, numbered: true };
  const amount = report.rows[0]?.counts.length ?? 1;
  const labels = sizes ?? Array.from({ length: amount }, (_, i) => `size ${i + 1}`);
  const heads = amount > 1 ? labels.map(harmless) : [];
  const notes = new NotesOnce();
  let out: string[] = [];
  for (const finding of report.findings.filter(notes.passes))
    out.push(...findingLines(finding, whole, width, paint));
  let next = 0;
  for (const piece of pieces) {
    const rows = report.rows.slice(next, next + piece.rows.length);
    next += rows.length;
    if (rows.length === 0) continue;
    if (out.length > 0) out.push('');
    if (piece.heading !== null) out.push(paint('strong', cut(harmless(piece.heading.text), width)));
    const lines = rows.map(
      (row): TableLine => ({
        label: nameOf(row),
        cells: row.counts.map((count) => (count === null || isRing(row) ? '–' : String(count))),
        remark: isRing(row) ? 'ring' : harmless(kindWords(row.byKind, row.spaces)),
        under: row.findings
          .filter(notes.passes)
          .flatMap((finding) => findingLines(finding, whole, width, paint)),
      }),
    );
    out = out.concat(table(heads, lines, width, paint));
  }
  const findings = [...report.findings, ...report.rows.flatMap((row) => row.findings)];
  if (out.length > 0) out.push('');
  const rows = `${report.rows.length} ${report.rows.length === 1 ? 'row' : 'rows'}`;
  out.push(`${rows}: ${closingWords(findings, notes) || 'nothing to put right'}.`);
  return { words: `${out.join('\n')}\n`, errors: hasErrors(findings) };
}

export const command: Command = {
  options: { terms: { type: 'string' }, json: { type: 'boolean' } },
  run: async (given, io) => {
    const path = oneFile(given, 'a text file, or - for standard input');
    const terms = termsOf(given);
    const text = await readWords(path, io);
    if (given.flags.has('json')) {
      const report = reportRows(text, terms);
      io.stdout.write(`${JSON.stringify(report)}\n`);
      return hasErrors([...report.findings, ...report.rows.flatMap((row) => row.findings)])
        ? FINDINGS
        : RIGHT;
    }
    const { words, errors } = rowsWords(text, terms, io);
    io.stdout.write(words);
    return errors ? FINDINGS : RIGHT;
  },
};
