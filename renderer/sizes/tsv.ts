/** Tables as spreadsheets put them on the clipboard: tabs between cells, lines between rows, quotes where needed. */

/** One cell: quoted when its last quote stands at a cell's end, else all up to the next tab or line end. */
const CELL = /"((?:[^"]|"")*)"(?=\t|\r?\n|\r|$)|([^\t\r\n]*)/y;
const AFTER = /\t|\r\n|\n|\r/y;

/** The cells of a table. A line end at the very end begins no row. */
export function readTable(text: string): readonly (readonly string[])[] {
  const rows: string[][] = [[]];
  let at = 0;
  for (;;) {
    CELL.lastIndex = at;
    const [whole, quoted, plain] = CELL.exec(text)!;
    rows.at(-1)!.push(quoted === undefined ? plain! : quoted.replaceAll('""', '"'));
    at += whole.length;
    AFTER.lastIndex = at;
    const after = AFTER.exec(text);
    if (after === null) return rows;
    at += after[0].length;
    if (after[0] === '\t') continue;
    if (at >= text.length) return rows;
    rows.push([]);
  }
}

/** A table for the clipboard. */
export function writeTable(rows: readonly (readonly string[])[]): string {
  const cell = (text: string) => (/[\t\r\n"]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
  return rows.map((row) => row.map(cell).join('\t')).join('\n');
}
