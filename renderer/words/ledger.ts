/** Words of the ledger: what a cell tells, and how its rows and columns are called. Sentences only. */

const counted = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;

export const ledgerWords = {
  name: 'Ledger: stitches after each row, in every size',
  corner: 'Row',
  size: 'Size',
  inFocus: 'in focus',
  sizeHead: (label: string) => `Size ${label}`,
  putInFocus: 'Put in focus',
  chooseSize: 'Size in focus',
  earlierSizes: 'Earlier sizes',
  laterSizes: 'Later sizes',
  inView: (first: number, last: number, all: number) => `${first}–${last} of ${all}`,
  /** How a row is called: its label, its side and its piece. */
  row: (label: string, side: string | null, piece: string) =>
    `${side === null ? label : `${label} (${side})`}, ${piece}`,
  unnamedPiece: 'piece without a name',
  waiting: 'Not worked yet',
  notWritten: 'Nothing is written in this row yet.',
  notWorked: (size: string) => `Size ${size} does not work this row.`,
  wrong: 'wrong',
  doubtful: 'to look at',
  title: (row: string, size: string) => `${row} · size ${size}`,
  stitches: (n: number) => counted(n, 'stitch', 'stitches'),
  spaces: (n: number) => counted(n, 'chain-space', 'chain-spaces'),
  repeats: (n: number) => counted(n, 'repeat', 'repeats'),
  rows: (n: number) => counted(n, 'row', 'rows'),
  width: (width: string) => `${width} wide at the gauge`,
  seeWords: 'Enter: go to the words',
  goToRow: 'Enter: go to the row',
} as const;
