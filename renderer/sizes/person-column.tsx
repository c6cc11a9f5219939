/**
 * The private column of one person beside the sizes: what each line comes to in that person's measurements. Marked as
 * private by a word and a double line; typed in under Workbook, and never a size of the pattern.
 */
import type { Person } from '../../core/document/workbook.ts';
import { useDeskView } from '../shell/hooks.ts';
import type { Reader } from '../shell/reader.ts';
import { sizesWords } from '../words/sizes.ts';
import { personName } from '../workbook/people.tsx';

export function PersonHead({ person }: { readonly person: Person }) {
  return (
    <th scope="col" className="size-head private-cell">
      <span className="private-mark">{sizesWords.isPrivate}</span>
      <small>{sizesWords.privateOf(personName(person))}</small>
    </th>
  );
}

export function PersonCell({
  line,
  person,
  reader: { units, say },
}: {
  readonly line: string;
  readonly person: Person;
  readonly reader: Reader;
}) {
  const told = useDeskView((view) => view.report.person);
  const cell = told?.id === person.id ? told.lines[line] : undefined;
  const value = cell?.own.value?.[units];
  return (
    // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a cell of a grid, read only
    // biome-ignore lint/a11y/useFocusableInteractive: the keys move in the sizes alone; it is read with its row
    <td role="gridcell" aria-readonly="true" className="sizing-cell worked-out private-cell">
      <span className="cell-value">{value === undefined ? '–' : say(value, 'row')}</span>
    </td>
  );
}
