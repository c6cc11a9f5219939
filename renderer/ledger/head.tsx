/**
 * The head of the ledger: the sizes by their labels, the one in focus marked. A chosen label puts its size in
 * focus. Folded to one column, the head is a list to choose from.
 */
import type { Size } from '../../core/document/pattern.ts';
import { ledgerWords } from '../words/ledger.ts';
import type { Columns } from './columns.ts';

/** Letters of a word that a column of the ledger has room for, and lines of a label. */
const ROOM = 5;
const LINES = 2;

/** Letters that are about half as wide again as others. */
const WIDE = /[mw]/giu;

const isLong = ({ label }: Size): boolean => {
  const words = label.split(/\s/);
  return (
    words.length > LINES || words.some((word) => word.length + (word.match(WIDE)?.length ?? 0) / 2 > ROOM)
  );
};

export interface HeadProps {
  readonly sizes: readonly Size[];
  readonly columns: Columns;
  /** Index of the size in focus. */
  readonly focus: number;
  /** Index of the size whose label takes the tab stop; -1 when none does. */
  readonly stop: number;
  readonly onChoose: (size: string) => void;
}

export function Head({ sizes, columns, focus, stop, onChoose }: HeadProps) {
  const isFolded = columns.count === 1 && sizes.length > 1;
  return (
    <thead className="ledger-head">
      <tr aria-rowindex={1} className={sizes.some(isLong) ? 'ledger-labels is-long' : 'ledger-labels'}>
        <th scope="col" aria-colindex={1} className="unseen">
          {ledgerWords.corner}
        </th>
        {isFolded ? (
          <th scope="col" aria-colindex={columns.first + 2} className="ledger-label in-focus">
            <select
              aria-label={ledgerWords.chooseSize}
              value={sizes[focus]?.id ?? ''}
              onChange={(event) => onChoose(event.target.value)}
            >
              {sizes.map((size) => (
                <option key={size.id} value={size.id}>
                  {size.label}
                </option>
              ))}
            </select>
          </th>
        ) : (
          sizes.slice(columns.first, columns.first + columns.count).map((size, at) => (
            <th
              key={size.id}
              scope="col"
              aria-colindex={columns.first + at + 2}
              tabIndex={columns.first + at === stop ? 0 : -1}
              className={columns.first + at === focus ? 'ledger-label in-focus' : 'ledger-label'}
              data-size={size.id}
              title={ledgerWords.sizeHead(size.label)}
              onClick={() => onChoose(size.id)}
              onKeyDown={(event) => {
                if (event.key !== 'Enter' && event.key !== ' ') return;
                event.preventDefault();
                onChoose(size.id);
              }}
            >
              <span>{size.label}</span>
              {columns.first + at === focus && <span className="unseen">, {ledgerWords.inFocus}</span>}
            </th>
          ))
        )}
      </tr>
    </thead>
  );
}
