/** `turnchain check`: findings of a pattern and its ledger. Prints what the study and the review hold; judges nothing. */
import { titleOf } from '../../core/document/title.ts';
import { type LedgerFinding, ledgerOf } from '../../core/study/ledger.ts';
import { type Examined, examine } from '../services/examine.ts';
import { closingWords, findingLines, hasErrors, linesOf, NotesOnce } from './findings.ts';
import { FINDINGS, type Io, RIGHT, type Sink } from './io.ts';
import { oneFile } from './options.ts';
import { patternAt } from './pattern.ts';
import { kindWords } from './rows.ts';
import type { Command } from './run.ts';
import { type TableLine, table } from './table.ts';
import { columnsOf, cut, harmless, type Paint, paintFor, wrap } from './words.ts';

/** A finding of a text in the pattern, with its words; those of a text without one row's label say where they are. */
function lines(finding: LedgerFinding, width: number, paint: Paint): string[] {
  const { text } = finding;
  const shown = text === null ? null : { whole: text, at: linesOf(text), numbered: false };
  return findingLines(finding, shown, width, paint);
}

/** "Row 3 (RS)", or "Row 9 (10, 11), RS (WS, RS)" where the side is a list too. */
function labelWords(label: string, side: string | null): string {
  if (side === null) return label;
  return side.includes('(') ? `${label}, ${side}` : `${label} (${side})`;
}

/** "1 note; 2 accepted": what there is, and what the maker let stand. */
function closing(found: string, accepted: number): string {
  const words = found || 'Nothing to put right';
  return accepted === 0 ? words : `${words}; ${accepted} accepted by the maker`;
}

/** The check as lines for people: every row, or with `all` false only those that something was found in. */
export function checkWords(
  { pattern, study, findings, accepted }: Examined,
  sink: Sink,
  env: Io['env'],
  all = true,
): string {
  const width = columnsOf(sink);
  const paint = paintFor(sink, env);
  const ledger = ledgerOf(study, findings);
  const notes = new NotesOnce();
  const title = harmless(titleOf(pattern.about));
  const sizes = `${ledger.sizes.length} ${ledger.sizes.length === 1 ? 'size' : 'sizes'}`;
  let out = [
    ...wrap(title, width).map((line) => paint('strong', line)),
    `${sizes}, ${pattern.terms.toUpperCase()} terms`,
  ];
  if (ledger.findings.length > 0) out.push('', paint('strong', 'The whole pattern'));
  for (const finding of ledger.findings.filter(notes.passes)) out.push(...lines(finding, width, paint));
  const heads = ledger.sizes.length > 1 ? ledger.sizes.map(harmless) : [];
  for (const piece of ledger.pieces) {
    const told = all ? piece.rows : piece.rows.filter((row) => row.findings.length > 0);
    if (!all && told.length === 0 && piece.findings.length === 0) continue;
    const name = harmless(piece.piece.trim()) || 'Unnamed piece';
    out.push('', paint('strong', cut(piece.make > 1 ? `${name} (make ${piece.make})` : name, width)));
    for (const finding of piece.findings.filter(notes.passes)) out.push(...lines(finding, width, paint));
    const rows = told.map(
      (row): TableLine => ({
        label: harmless(labelWords(row.label, row.side)),
        cells: row.counts.map((count) => (count === null ? '–' : String(count))),
        remark: harmless(kindWords(row.byKind, row.spaces)),
        under: row.findings.filter(notes.passes).flatMap((finding) => lines(finding, width, paint)),
      }),
    );
    if (rows.length > 0) out = out.concat(table(heads, rows, width, paint));
  }
  out.push('', ...wrap(`${closing(closingWords(findings, notes), accepted.length)}.`, width));
  return `${out.join('\n')}\n`;
}

/** The check for programs. `row` is null for what belongs to no row, `piece` for what belongs to the whole pattern. */
export function checkJson({ pattern, study, findings, accepted }: Examined): unknown {
  const ledger = ledgerOf(study, findings);
  const told =
    (piece: string | null, row: string | null) =>
    ({ code, severity, from, to, sizes, message }: LedgerFinding) => ({
      code,
      severity,
      piece,
      row,
      from,
      to,
      sizes,
      message,
    });
  return {
    title: pattern.about.title,
    sizes: ledger.sizes,
    findings: [
      ...ledger.findings.map(told(null, null)),
      ...ledger.pieces.flatMap((piece) => [
        ...piece.findings.map(told(piece.piece, null)),
        ...piece.rows.flatMap((row) => row.findings.map(told(piece.piece, row.label))),
      ]),
    ],
    accepted: accepted.map(({ finding: { code, severity, message }, acceptance }) => ({
      code,
      severity,
      message,
      reason: acceptance.reason,
      date: acceptance.date,
    })),
    ledger: ledger.pieces.map((piece) => ({
      piece: piece.piece,
      rows: piece.rows.map(({ label, side, counts, byKind, spaces, text }) => ({
        label,
        side,
        counts,
        byKind,
        spaces,
        ...(text === null ? {} : { text }),
      })),
    })),
  };
}

export const command: Command = {
  options: { json: { type: 'boolean' } },
  run: async (given, io) => {
    const path = oneFile(given, 'a .turnchain file, or - for standard input');
    const { document } = await patternAt(path, io);
    const examined = examine(document);
    io.stdout.write(
      given.flags.has('json')
        ? `${JSON.stringify(checkJson(examined))}\n`
        : checkWords(examined, io.stdout, io.env),
    );
    return hasErrors(examined.findings) ? FINDINGS : RIGHT;
  },
};
