/** A table with one column a size, which scrolls by itself where the window is narrow. It shows what it is given. */
import { useId } from 'react';

export interface SizeTableProps {
  readonly caption: string;
  readonly sizes: readonly string[];
  readonly rows: readonly {
    readonly head: string;
    readonly cells: readonly (string | null)[];
    readonly isSum?: boolean;
  }[];
}

export function SizeTable({ caption, sizes, rows }: SizeTableProps) {
  const id = useId();
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keyboard
    <section className="size-table" aria-labelledby={id} tabIndex={0}>
      <table>
        <caption id={id}>{caption}</caption>
        <thead>
          <tr>
            <td />
            {sizes.map((label, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a size is known by its place here
              <th key={i} scope="col">
                {label}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ head, cells, isSum }) => (
            <tr key={head} className={isSum ? 'sum' : undefined}>
              <th scope="row">{head}</th>
              {cells.map((cell, i) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: a size is known by its place here
                <td key={i}>{cell ?? '–'}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
