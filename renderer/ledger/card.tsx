/** The card of a cell: what is counted, the repeats, the width, and the findings there, in the terms on screen. */
import type { Pattern } from '../../core/document/pattern.ts';
import type { BlockReport, FindingReport } from '../analysis/report.ts';
import type { Reading } from '../desk/desk.ts';
import { inTerms } from '../desk/terms.ts';
import { ledgerWords } from '../words/ledger.ts';
import { factsOf } from './cell.ts';

export interface CardProps {
  readonly id: string;
  readonly name: string;
  readonly pattern: Pattern;
  readonly report: BlockReport | null;
  readonly findings: readonly FindingReport[];
  /** Index of the size. */
  readonly size: number;
  readonly reading: Reading;
}

function noFacts(report: BlockReport | null, label: string): string {
  if (report === null) return ledgerWords.waiting;
  return report.isWritten ? ledgerWords.notWorked(label) : ledgerWords.notWritten;
}

export function Card({ id, name, pattern, report, findings, size, reading }: CardProps) {
  const label = pattern.sizes[size]?.label ?? '';
  const facts = report === null ? [] : factsOf(report, size, reading.terms, reading.units);
  return (
    <div className="ledger-card" id={id} role="tooltip">
      <p className="ledger-card-title">{ledgerWords.title(name, label)}</p>
      {facts.map((fact) => (
        <p key={fact}>{fact}</p>
      ))}
      {facts.length === 0 && <p>{noFacts(report, label)}</p>}
      {findings.map((finding) => (
        <p key={`${finding.code} ${finding.where.from}`} className={`ledger-finding is-${finding.severity}`}>
          {inTerms(finding.message, pattern, reading.terms, 'prose')}
        </p>
      ))}
      <p className="quiet">{findings.length > 0 ? ledgerWords.seeWords : ledgerWords.goToRow}</p>
    </div>
  );
}
