/** One line in one size: its value, how it was fitted, what is wrong with it; or the field while it is typed in. */
import { memo } from 'react';
import type { Line, Quantity } from '../../core/document/pattern.ts';
import type { Finding } from '../../core/finding.ts';
import type { Units } from '../../core/trade/units.ts';
import type { CellReport } from '../analysis/report.ts';
import type { Reader } from '../shell/reader.ts';
import { sizesWords } from '../words/sizes.ts';

export interface CellProps {
  readonly row: number;
  readonly column: number;
  readonly line: Line;
  readonly own: Quantity | null;
  readonly isTypedIn: boolean;
  readonly report: CellReport | undefined;
  /** The gravest finding that concerns this cell. */
  readonly finding: Finding | null;
  readonly isFocus: boolean;
  readonly isChosen: boolean;
  readonly reader: Reader;
  readonly editor: React.ReactNode;
}

const GRAVITY = { error: 0, warning: 1, note: 2 } as const;

/** The gravest finding that names this size. */
export function gravest(findings: readonly Finding[], size: number): Finding | null {
  let found: Finding | null = null;
  for (const finding of findings) {
    if (!finding.sizes.includes(size)) continue;
    if (found === null || GRAVITY[finding.severity] < GRAVITY[found.severity]) found = finding;
  }
  return found;
}

export const GridCell = memo(function GridCell(props: CellProps) {
  const { row, column, line, own, isTypedIn, report, finding, isFocus, isChosen, reader, editor } = props;
  const kind = [
    'sizing-cell',
    isTypedIn ? 'typed' : 'worked-out',
    line.kind === 'shaping' || line.kind === 'spread' ? 'wordy' : '',
    line.kind === 'body' && own !== null ? 'overtyped' : '',
    finding?.severity ?? '',
  ];
  return (
    <td
      // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a cell of a grid is chosen and typed in
      role="gridcell"
      className={kind.filter(Boolean).join(' ')}
      data-cell={`${row} ${column}`}
      tabIndex={isFocus && editor === null ? 0 : -1}
      aria-selected={isChosen}
      aria-readonly={!isTypedIn}
    >
      {editor ?? <Shown line={line} own={own} report={report} finding={finding} reader={reader} />}
    </td>
  );
});

function Shown({
  line,
  own,
  report,
  finding,
  reader,
}: Pick<CellProps, 'line' | 'own' | 'report' | 'finding' | 'reader'>) {
  const { units, say } = reader;
  const value = report?.value?.[units] ?? null;
  const fitted = report?.fitted ?? null;
  return (
    <>
      {finding !== null && finding.severity !== 'note' && (
        <span className="cell-mark" title={say(finding.message)}>
          <span aria-hidden="true">{finding.severity === 'error' ? '✕' : '?'}</span>
          <span className="unseen">
            {finding.severity === 'error' ? sizesWords.mistake : sizesWords.doubtful}:{' '}
          </span>
        </span>
      )}
      <span className="cell-value">{value === null ? <Nothing report={report} /> : say(value, 'row')}</span>
      {line.kind === 'body' && own !== null && <small className="quiet">{sizesWords.overtyped}</small>}
      {fitted !== null && (
        <small className="fitted">
          <span>
            {sizesWords.asked} {fitted.asked[units]}
          </span>
          <span>
            {sizesWords.made} {fitted.made[units]}
          </span>
          <span className={fitted.off ? 'off' : undefined}>
            {differenceWords(fitted, units)}
            {fitted.off && (
              <>
                <br />
                <span aria-hidden="true">▲ </span>
                {sizesWords.past}
              </>
            )}
          </span>
        </small>
      )}
    </>
  );
}

function Nothing({ report }: { readonly report: CellReport | undefined }) {
  if (report !== undefined && report.waitsFor.length > 0)
    return <small className="quiet">{sizesWords.waits(report.waitsFor)}</small>;
  return (
    <>
      <span aria-hidden="true">–</span>
      <span className="unseen">{sizesWords.empty}</span>
    </>
  );
}

/** Two lengths that are shown alike are not told to differ by what rounding leaves. */
function differenceWords(fitted: NonNullable<CellReport['fitted']>, units: Units): string {
  const difference = fitted.difference[units];
  if (/^0(?!\.)\s/.test(difference) || fitted.asked[units] === fitted.made[units]) return sizesWords.exact;
  return difference.startsWith('−') ? sizesWords.under(difference.slice(1)) : sizesWords.over(difference);
}
