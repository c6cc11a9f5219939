/**
 * Tells a table in labelled lines, for editions that avoid tables: for each row its head, then "column: cell"
 * line by line; or for each column, by the table's wish. Measures only.
 */
import { plain, type Table, type Words } from './content.ts';
import { type Desk, span, textOf, textSlices } from './desk.ts';
import { type Tag, tag } from './page.ts';
import { BREAK, bindAll, bindFirst, type Slice, withGap } from './slice.ts';

/** Up to so many lines under one head stay together: a reader looks for one size and wants to see all of it. */
const SHORT = 10;

/** The table in lines: for each row its head, then "column: cell" line by line; or for each column, by its wish. */
export function tellTable(table: Table, parent: Tag, desk: Desk): Slice[] {
  if (table.told === 'elsewhere') return [];
  const { looks, spaces } = desk.style;
  const { caption: title, rows } = table.lines ?? table;
  const slices: Slice[] = [];
  const caption = tag('P');
  parent.children.push(caption);
  slices.push(
    ...bindAll(
      textSlices(desk, [span(title, looks.tableCaption)], desk.left, desk.width, [caption]),
      BREAK.strand,
    ),
  );
  const groups =
    table.told === 'by-row'
      ? rows.map((row) => ({
          title: row.head,
          lines: table.heads.map((head, c) => ({ label: head, value: row.cells[c]! })),
        }))
      : table.heads.map((head, c) => ({
          title: textOf(table.corner) === '' ? head : [...table.corner, plain(' '), ...head],
          lines: rows.map((row) => ({ label: row.head, value: row.cells[c]! })),
        }));
  for (const [g, group] of groups.entries()) {
    const title = tag('P');
    const list = tag('L');
    parent.children.push(title);
    const own = bindAll(
      textSlices(desk, [span(group.title, looks.label)], desk.left, desk.width, [title]),
      BREAK.strand,
    );
    slices.push(...bindFirst(withGap(own, spaces.row), g === 0 ? BREAK.strand : BREAK.free));
    const told = group.lines.filter((one) => textOf(one.value) !== '');
    if (told.length > 0) parent.children.push(list);
    for (const [i, one] of told.entries()) {
      const label = tag('Lbl');
      const value = tag('LBody');
      list.children.push(tag('LI', {}, [label, value]));
      const spans = [span([...one.label, plain(': ')], looks.tableCell), span(one.value, looks.label)];
      const lines = textSlices(desk, spans, desk.left + 18, desk.width - 18, [label, value]);
      const lone = i === 1 || i === told.length - 1 || told.length <= SHORT;
      const cost = i === 0 ? BREAK.strand : lone ? BREAK.lone : BREAK.together;
      slices.push(...bindFirst(lines, cost));
    }
  }
  // Told in lines there is no rule to part it from them: it stands off like a paragraph.
  if (table.note) slices.push(...noteSlices(table.note, parent, desk, spaces.paragraph));
  return slices;
}

/** The remark under a table. */
export function noteSlices(note: Words, parent: Tag, desk: Desk, gap = 5): Slice[] {
  const own = tag('Note');
  parent.children.push(own);
  const slices = textSlices(desk, [span(note, desk.style.looks.caption)], desk.left, desk.width, [own]);
  return bindFirst(withGap(slices, gap), BREAK.strand);
}
