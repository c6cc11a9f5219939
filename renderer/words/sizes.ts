/** Words of the place "Sizes": the sizing sheet, its lines as sentences, its forms. Sentences only. */
import type { LineRule } from '../../core/document/attributes.ts';
import type { Audience, Line } from '../../core/document/pattern.ts';
import type { Terms } from '../../core/trade/stitches.ts';

type Kind = LineRule['kind'];

const many = (n: number, one: string, more: string): string => (n === 1 ? `1 ${one}` : `${n} ${more}`);
const listed = (words: readonly string[], most = 3): string =>
  words.length <= most
    ? words.join(', ')
    : `${words.slice(0, most).join(', ')} and ${words.length - most} more`;

/** Each kind of line as a sentence to fill in: words, and fields in braces. */
export const SENTENCES: Readonly<Record<Kind, string>> = {
  body: '{measure} from the chart, {bound} of its range',
  typed: 'as typed here, {spread}',
  ease: 'ease, {spread}',
  formula: '{formula}',
  stitches:
    '{length} in {gauge}, {state}, as a multiple of {multiple} plus {plus}, rounded {rounding}, {parity}; counted in {counts}, with {extra} added; off by {tolerance} at most',
  rows: '{length} in {gauge}: after {before} rows, ending on row {endOn} of a repeat of {cycle}; rounded {rounding}; off by {tolerance} at most',
  shaping:
    'from {start} to {end} over {rows}, {perEnd} at each of {ends} ends, on rows a multiple of {step} apart',
  spread: '{changes} {change} over {over}, evenly, {form}, in {stitch}',
};

export const sizesWords = {
  grid: 'Sizing sheet: lines down, sizes across',
  corner: 'Line',
  unnamedLine: 'line without a name',
  unnamedSize: 'size without a label',
  kinds: {
    body: 'Body measurement',
    typed: 'Typed amounts',
    ease: 'Ease',
    formula: 'Worked out from others',
    stitches: 'Stitches for a width',
    rows: 'Rows for a length',
    shaping: 'Shaping over rows',
    spread: 'Changes spread evenly',
  } satisfies Record<Kind, string>,
  newNames: {
    body: 'body measurement',
    typed: 'length',
    ease: 'ease',
    formula: 'finished width',
    stitches: 'stitches',
    rows: 'row count',
    shaping: 'shaping',
    spread: 'increases',
  } satisfies Record<Kind, string>,
  addLine: 'Add a line',
  add: 'Add',
  addSizes: 'Add sizes…',
  sample: 'Sample in size',
  noSample: 'none chosen',
  person: 'Private column of',
  nobody: 'nobody',
  isPrivate: 'private',
  privateOf: (name: string) => `${name}, made to measure`,
  isSample: 'sample',
  tolerance: 'Off by at most',
  noSizes: 'There are no sizes yet. Add them from a chart, or your own.',
  noLines:
    'There are no lines yet. A line is a measurement or a number that has a value for every size: a body measurement from a chart, the ease, the stitches of the back.',
  keys: 'Arrows move, Shift and arrows choose a range, typing or F2 changes a cell, F2 on a line’s or a size’s head changes it, Alt and arrows move it.',

  field: (line: string, field: string) => `${field}, ${line}`,
  fields: {
    name: 'Name',
    measure: 'Measurement',
    bound: 'Where in the chart’s range',
    spread: 'Alike or size by size',
    formula: 'Formula',
    length: 'Width or length asked for',
    gauge: 'Gauge',
    state: 'How the fabric lies',
    multiple: 'Multiple of',
    plus: 'Plus',
    rounding: 'Rounded',
    parity: 'Even or odd',
    counts: 'What is counted',
    extra: 'Added after fitting',
    tolerance: 'Off by at most',
    endOn: 'Last row of the repeat',
    cycle: 'Rows of the repeat',
    before: 'Rows before it begins',
    start: 'Stitches at the start',
    end: 'Stitches at the end',
    rows: 'Rows it may take',
    perEnd: 'Stitches at each end',
    ends: 'Ends',
    step: 'Rows between, a multiple of',
    changes: 'How many',
    change: 'Increases or decreases',
    over: 'Stitches before',
    form: 'Row or round',
    stitch: 'Stitch',
    printed: 'Printed as',
    note: 'Compared with the body’s',
  } as const,
  options: {
    bound: { lower: 'the smaller end', middle: 'the middle', upper: 'the larger end' },
    spread: { all: 'alike for all sizes', each: 'size by size' },
    state: { relaxed: 'as it lies', stretched: 'as it is worn' },
    rounding: { nearest: 'to the nearest', up: 'up', down: 'down' },
    parity: { any: 'even or odd', even: 'even', odd: 'odd' },
    counts: { stitches: 'stitches', spaces: 'spaces', repeats: 'repeats', chains: 'chains' },
    change: { inc: 'increases', dec: 'decreases' },
    form: { flat: 'in a row', round: 'in a round' },
  } as const,
  noGauge: (terms: Terms) => (terms === 'uk' ? 'no tension chosen' : 'no gauge chosen'),
  unnamedGauge: (terms: Terms) => (terms === 'uk' ? 'tension without a stitch' : 'gauge without a stitch'),
  emptyFormula: 'what?',
  patternTolerance: 'the pattern’s tolerance',
  more: (line: string) => `More about ${line}`,
  moreShort: 'More',
  printedHint: 'not printed',
  noBody: 'nothing',
  moveUp: 'Move up',
  moveDown: 'Move down',
  moveLeft: 'Move before',
  moveRight: 'Move after',
  remove: 'Remove',
  keep: 'Keep it',
  done: 'Done',
  removeLine: {
    title: (name: string) => `Remove the line “${name}”?`,
    free: 'Nothing else names it.',
    named: 'It is still named by:',
    after: 'Those will say that they miss it. Undo brings it back.',
  },
  removeSize: {
    title: (label: string) => `Remove size ${label}?`,
    text: 'All that was typed for this size goes with it: amounts, yarn, and its place in rows for some sizes only. Undo brings it back.',
  },
  use: {
    line: (name: string) => `the line “${name}”`,
    figure: (where: string) => `a figure in ${where}`,
    shaping: (piece: string) => `a shaping in ${piece}`,
    repeat: (piece: string) => `a repeat of rows in ${piece}`,
    piece: (name: string) => `an edge of ${name}`,
  },
  inNotes: 'the notes',
  inFinishing: 'the finishing',
  inSpecial: (name: string) => `the special stitch ${name}`,
  inPiece: (name: string) => name || 'a piece without a name',

  renameTaken: (name: string) => `Another line is called “${name}” already. A name stands for one line only.`,
  renameMisread: (name: string, text: string) =>
    `With the name “${name}”, “${text}” would be read otherwise than now. Choose another name.`,

  asked: 'asked',
  made: 'makes',
  exact: 'as asked',
  over: (difference: string) => `${difference} over`,
  under: (difference: string) => `${difference} under`,
  past: 'past the tolerance',
  overtyped: 'typed over the chart',
  waits: (names: readonly string[]) => `waits for ${listed(names)}`,
  empty: 'no value yet',
  mistake: 'mistake',
  doubtful: 'to look at',
  cellName: (line: string, size: string) => `${line}, size ${size}`,

  workedOut: 'This is worked out from the line’s sentence. F2 on the line’s name changes it.',
  notAnAmount: (text: string) =>
    `“${text}” is not an amount. Write a number with its unit, such as 12 cm, 4 3/4 in or 5%.`,
  pasted: (cells: number) => `${many(cells, 'cell was', 'cells were')} filled.`,
  unread: (cells: readonly { readonly text: string; readonly line: string; readonly size: string }[]) =>
    `${many(cells.length, 'cell', 'cells')} could not be read and ${cells.length === 1 ? 'keeps what it' : 'keep what they'} had: ${listed(cells.map(({ text, line, size }) => `“${text.slice(0, 40)}” for ${line}, ${size}`))}.`,
  skipped: (cells: number) =>
    `${many(cells, 'cell is', 'cells are')} worked out and ${cells === 1 ? 'was' : 'were'} left as ${cells === 1 ? 'it is' : 'they are'}.`,
  outside: (cells: number) =>
    `${many(cells, 'amount', 'amounts')} past the last line or size ${cells === 1 ? 'was' : 'were'} left out.`,
  cleared: (cells: number) => `${many(cells, 'cell', 'cells')} emptied.`,
  noLongerAlike: (line: string, size: string) =>
    `“${line}” was alike for all sizes. Only ${size} was changed; to change the others too, fill right from it.`,
  filledRight: 'Filled right.',
  filledDown: 'Filled down.',
  nothingToFill: 'Choose a range whose first cell holds an amount of its own.',
  fillRight: 'Fill right',
  fillDown: 'Fill down',
  moved: (name: string, place: number, of: number) => `${name} is now ${place} of ${of}.`,
  fix: 'Fixed. Undo takes it back.',
  notFixed: 'The words have changed since; nothing was done.',

  formulaHint:
    'Names of lines and amounts with + − × ÷ and parentheses: “bust + ease”, “half of (hip − 2 cm)”, “width of back stitches”, “larger of 8 and rows ÷ 2”, “… rounded to 2”.',
  formulaLines: 'Lines that could be named here',
  trial: 'Would come to',

  sizeForm: {
    title: (label: string) => (label.trim() === '' ? 'Size' : `Size ${label}`),
    label: 'Label',
    audience: 'For',
    chart: 'Chart size',
    noChart: 'none',
    ageFrom: 'Youngest age in years',
    ageTo: 'Oldest age in years',
    ageNote: 'Cautions for children’s things depend on the age. Leave both empty for adults.',
    sample: 'The sample is made in this size',
    remove: 'Remove this size…',
  },
  audiences: {
    woman: 'women',
    man: 'men',
    child: 'children',
    youth: 'youth',
    baby: 'babies',
    head: 'heads',
    hand: 'hands',
    foot: 'feet',
    other: 'something else',
  } satisfies Record<Audience, string>,
  addForm: {
    title: 'Add sizes',
    from: 'From',
    own: 'your own measurements',
    chart: (audience: string) => `the chart for ${audience}`,
    source: (issuer: string) => `Source: ${issuer}.`,
    choose: 'Sizes',
    labels: 'Labels, with commas between them',
    labelsHint: 'such as S, M, L',
    there: 'there already',
    add: (n: number) => (n === 0 ? 'Add' : `Add ${many(n, 'size', 'sizes')}`),
  },
} as const;

/** What a field of a line's sentence is called in the reader's market. */
export const fieldName = (field: keyof typeof sizesWords.fields, terms: Terms): string =>
  field === 'gauge' && terms === 'uk' ? 'Tension' : sizesWords.fields[field];

/** What a kind of line is called, for the list of kinds. */
export const kindOf = ({ kind }: Pick<Line, 'kind'>): string => sizesWords.kinds[kind];
