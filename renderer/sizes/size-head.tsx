/** The head of a size: a button that opens the size's form. */
import type { Size } from '../../core/document/pattern.ts';
import { sizesWords } from '../words/sizes.ts';

export function SizeHead({
  size,
  column,
  isSample,
  isFocus,
  onOpen,
}: {
  readonly size: Size;
  readonly column: number;
  readonly isSample: boolean;
  readonly isFocus: boolean;
  readonly onOpen: () => void;
}) {
  const chart = size.chart !== null && size.chart !== size.label ? size.chart : null;
  return (
    <th scope="col" className="size-head">
      <button
        type="button"
        className="bare"
        data-cell={`-1 ${column}`}
        data-size={size.id}
        tabIndex={isFocus ? 0 : -1}
        onClick={onOpen}
      >
        <span>{size.label.trim() === '' ? sizesWords.unnamedSize : size.label}</span>
        {(chart !== null || isSample) && (
          <small>{[chart, isSample ? sizesWords.isSample : null].filter(Boolean).join(' · ')}</small>
        )}
      </button>
    </th>
  );
}
