/**
 * What one cell of the ledger tells: its number, whether something is wrong there, and the lines of its card.
 * Made from the report; it works nothing out.
 */
import type { Severity } from '../../core/finding.ts';
import { kindName } from '../../core/study/rows.ts';
import type { Terms } from '../../core/trade/stitches.ts';
import type { Units } from '../../core/trade/units.ts';
import type { BlockReport, FindingReport } from '../analysis/report.ts';
import { ledgerWords } from '../words/ledger.ts';

/** Findings of a row that concern a size; the worst first, else in their order. */
export function findingsIn(findings: readonly FindingReport[], size: number): readonly FindingReport[] {
  const rank: Readonly<Record<Severity, number>> = { error: 0, warning: 1, note: 2 };
  return findings
    .filter(({ sizes }) => sizes.length === 0 || sizes.includes(size))
    .sort((a, b) => rank[a.severity] - rank[b.severity]);
}

/** How a cell is marked: by its worst finding. Notes mark nothing. */
export function markOf(findings: readonly FindingReport[]): 'error' | 'warning' | null {
  const severity = findings[0]?.severity;
  return severity === 'error' || severity === 'warning' ? severity : null;
}

/** What is counted in a size, line by line: stitches with their kinds, spaces, repeats, rows, width. */
export function factsOf(report: BlockReport, size: number, terms: Terms, units: Units): readonly string[] {
  const count = report.isWritten ? (report.counts[size] ?? null) : null;
  if (count === null) return [];
  const kinds = report.byKind
    .map(({ id, numbers }) => [numbers[size] ?? 0, kindName(id, terms)] as const)
    .filter(([n]) => n > 0);
  const told = kinds.map(([n, name]) => `${n} ${name}`).join(', ');
  const lines = [
    kinds.length === 0 ? ledgerWords.stitches(count) : `${ledgerWords.stitches(count)}: ${told}`,
  ];
  const spaces = report.spaces[size] ?? 0;
  if (spaces > 0) lines.push(ledgerWords.spaces(spaces));
  const repeats = report.repeats[size] ?? null;
  if (repeats !== null) lines.push(ledgerWords.repeats(repeats));
  const rows = report.rows[size] ?? 0;
  if (rows > 1) lines.push(ledgerWords.rows(rows));
  const width = report.widths[size] ?? null;
  if (width !== null) lines.push(ledgerWords.width(width[units]));
  return lines;
}
