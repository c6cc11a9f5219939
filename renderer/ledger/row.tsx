/** One row of the ledger. Drawn again only when its place, its numbers or its findings changed. */
import { memo } from 'react';
import type { Size } from '../../core/document/pattern.ts';
import type { BlockReport, FindingReport } from '../analysis/report.ts';
import { ledgerWords } from '../words/ledger.ts';
import { findingsIn, markOf } from './cell.ts';

export interface RowProps {
  readonly id: string;
  readonly index: number;
  readonly top: number;
  readonly height: number;
  readonly line: number;
  /** Its numbers keep below the head while any of the row is in view. Costly, and so not asked of every row. */
  readonly atEdge: boolean;
  readonly name: string;
  readonly report: BlockReport | null;
  readonly findings: readonly FindingReport[];
  readonly sizes: readonly Size[];
  readonly first: number;
  readonly count: number;
  /** Index of the size in focus. */
  readonly focus: number;
  /** Index of the size whose cell takes the tab stop; -1 when none of this row's does. */
  readonly stop: number;
  /** Id of the card that tells about the cell with the tab stop, while it is open. */
  readonly card: string | undefined;
  /** The row of the manuscript that has the caret. */
  readonly isCurrent: boolean;
}

export const Row = memo(function Row(props: RowProps) {
  const { id, index, top, height, line, atEdge, name, sizes, first, count, isCurrent } = props;
  const classes = ['ledger-row'];
  if (isCurrent) classes.push('is-current');
  if (atEdge) classes.push('at-edge');
  return (
    <tr
      aria-rowindex={index + 2}
      className={classes.join(' ')}
      data-row={id}
      style={{ top, height, '--line-middle': `${line}px` }}
    >
      <th scope="row" aria-colindex={1} className="unseen">
        {name}
      </th>
      {sizes.slice(first, first + count).map((size, at) => (
        <Cell key={size.id} {...props} size={size} at={first + at} />
      ))}
    </tr>
  );
});

function Cell({
  report,
  findings,
  size,
  at,
  focus,
  stop,
  card,
  isCurrent,
}: RowProps & { readonly size: Size; readonly at: number }) {
  // The row that is about to be written is not wrong.
  const told = isCurrent ? findings.filter(({ code }) => code !== 'row-without-words') : findings;
  const mark = markOf(findingsIn(told, at));
  const count = report === null || !report.isWritten ? undefined : (report.counts[at] ?? null);
  const classes = ['ledger-cell'];
  if (at === focus) classes.push('in-focus');
  if (mark !== null) classes.push(`has-${mark}`);
  return (
    <td
      aria-colindex={at + 2}
      tabIndex={at === stop ? 0 : -1}
      aria-describedby={at === stop ? card : undefined}
      className={classes.join(' ')}
      data-size={size.id}
    >
      <span className="ledger-count">{count === undefined ? '\u00A0' : (count ?? '–')}</span>
      {mark !== null && (
        <span className="unseen">, {mark === 'error' ? ledgerWords.wrong : ledgerWords.doubtful}</span>
      )}
    </td>
  );
}
