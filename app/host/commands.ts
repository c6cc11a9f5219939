/**
 * The commands of the studio: their names, words, keys and places in the menus, for the native menus, the
 * menu in the window, the list of keys and the search for commands alike. What each does stands in the renderer.
 */

export type CommandGroup = 'file' | 'edit' | 'insert' | 'go' | 'view' | 'help';

/** Words of the groups, in the order of the menus. */
export const GROUPS: readonly { readonly group: CommandGroup; readonly title: string }[] = [
  { group: 'file', title: 'File' },
  { group: 'edit', title: 'Edit' },
  { group: 'insert', title: 'Insert' },
  { group: 'go', title: 'Go' },
  { group: 'view', title: 'View' },
  { group: 'help', title: 'Help' },
];

export interface CommandEntry {
  /** Stable name. */
  readonly name: string;
  readonly group: CommandGroup;
  readonly title: string;
  /** ProseMirror's spelling of keys ("Mod-s"): Mod is Command on a Mac and Control elsewhere. */
  readonly key?: string;
  /** More words it is found by. */
  readonly also?: string;
  /** Only while the manuscript has the caret, which handles the key itself. */
  readonly inText?: boolean;
}

const entries = [
  { name: 'new', group: 'file', title: 'New pattern…', key: 'Mod-Alt-n' },
  { name: 'open', group: 'file', title: 'Open…', key: 'Mod-o' },
  {
    name: 'bring',
    group: 'file',
    title: 'Bring in a pattern…',
    also: 'import old text word docx paste',
  },
  { name: 'save', group: 'file', title: 'Save', key: 'Mod-s' },
  { name: 'save-as', group: 'file', title: 'Save under another name…', key: 'Mod-Shift-s' },
  { name: 'versions', group: 'file', title: 'Earlier versions…', also: 'history restore kept' },
  { name: 'export', group: 'file', title: 'Export PDFs…', key: 'Mod-Shift-e', also: 'print booklet' },
  { name: 'start', group: 'file', title: 'Start screen', also: 'recent examples home' },
  { name: 'close', group: 'file', title: 'Close pattern', also: 'quit leave' },

  { name: 'undo', group: 'edit', title: 'Undo', key: 'Mod-z' },
  { name: 'redo', group: 'edit', title: 'Redo', key: 'Mod-Shift-z' },
  { name: 'find', group: 'edit', title: 'Find and replace…', key: 'Mod-f', also: 'search' },
  { name: 'next-finding', group: 'edit', title: 'Next finding', key: 'F8', also: 'mistake error' },
  { name: 'previous-finding', group: 'edit', title: 'Previous finding', key: 'Shift-F8' },
  { name: 'fix', group: 'edit', title: 'Fix the finding at the caret', key: 'Mod-.', also: 'mend correct' },
  {
    name: 'details',
    group: 'edit',
    title: 'Details of the row, block or piece…',
    key: 'Mod-Shift-Enter',
    also: 'kind sizes repeat seams make starts',
    inText: true,
  },
  {
    name: 'word-at-caret',
    group: 'edit',
    title: 'Spelling of the word at the caret',
    key: 'Mod-;',
    also: 'misspelt suggestion dictionary',
  },
  { name: 'move-up', group: 'edit', title: 'Move the row or piece up', key: 'Alt-ArrowUp', inText: true },
  {
    name: 'move-down',
    group: 'edit',
    title: 'Move the row or piece down',
    key: 'Alt-ArrowDown',
    inText: true,
  },

  {
    name: 'fill-right',
    group: 'edit',
    title: 'Fill the range to the right',
    key: 'Mod-r',
    also: 'sizes copy across',
  },
  { name: 'fill-down', group: 'edit', title: 'Fill the range down', key: 'Mod-d', also: 'sizes copy lines' },

  {
    name: 'insert-figure',
    group: 'insert',
    title: 'Figure',
    key: 'Mod-Enter',
    also: 'number line value',
    inText: true,
  },
  { name: 'insert-piece', group: 'insert', title: 'Piece', also: 'panel sleeve part' },
  { name: 'insert-row', group: 'insert', title: 'Row', also: 'line' },
  { name: 'insert-round', group: 'insert', title: 'Round', also: 'rnd' },
  { name: 'insert-repeat', group: 'insert', title: 'Repeat of rows', also: 'rows again' },
  { name: 'insert-shaping', group: 'insert', title: 'Shaping over rows', also: 'increase decrease' },
  { name: 'insert-prose', group: 'insert', title: 'Paragraph', also: 'text note prose' },
  { name: 'insert-heading', group: 'insert', title: 'Heading' },
  { name: 'insert-photo', group: 'insert', title: 'Photograph…', also: 'picture image' },

  { name: 'go-write', group: 'go', title: 'Write', key: 'Mod-1' },
  { name: 'go-sizes', group: 'go', title: 'Sizes', key: 'Mod-2', also: 'measurements grading lines' },
  { name: 'go-materials', group: 'go', title: 'Materials', key: 'Mod-3', also: 'gauge tension yarn hooks' },
  { name: 'go-drawings', group: 'go', title: 'Drawings', key: 'Mod-4', also: 'schematic outline svg' },
  { name: 'go-review', group: 'go', title: 'Review', key: 'Mod-5', also: 'findings errors' },
  { name: 'go-print', group: 'go', title: 'Print', key: 'Mod-6', also: 'pdf preview pages' },
  {
    name: 'go-workbook',
    group: 'go',
    title: 'Workbook',
    key: 'Mod-7',
    also: 'sample tester swatch yarn time price made to measure',
  },
  { name: 'go-outline', group: 'go', title: 'Outline', key: 'F6', also: 'pieces list' },
  { name: 'go-ledger', group: 'go', title: 'Ledger', key: 'Shift-F6', also: 'counts' },

  { name: 'switch-terms', group: 'view', title: 'Switch between US and UK terms', key: 'Mod-Shift-u' },
  { name: 'switch-units', group: 'view', title: 'Switch between centimetres and inches', key: 'Mod-Shift-m' },
  { name: 'next-size', group: 'view', title: 'Next size in focus', key: 'Mod-Shift-ArrowRight' },
  { name: 'previous-size', group: 'view', title: 'Previous size in focus', key: 'Mod-Shift-ArrowLeft' },
  { name: 'text-larger', group: 'view', title: 'Larger text', key: 'Mod-=', also: 'zoom' },
  { name: 'text-smaller', group: 'view', title: 'Smaller text', key: 'Mod--', also: 'zoom' },
  { name: 'spelling', group: 'view', title: 'Check spelling, or stop', also: 'dictionary words misspelt' },
  { name: 'theme', group: 'view', title: 'Look and spelling…', also: 'light dark theme night dictionary' },

  { name: 'commands', group: 'help', title: 'Find a command…', key: 'Mod-k', also: 'search menu' },
  { name: 'keys', group: 'help', title: 'List of keys', key: 'F1', also: 'shortcuts keyboard' },
  { name: 'about', group: 'help', title: 'About Turnchain' },
] as const satisfies readonly CommandEntry[];

export type CommandName = (typeof entries)[number]['name'];

/** Every command, group by group, in the order of the menus. */
export const COMMANDS: readonly (CommandEntry & { readonly name: CommandName })[] = entries;
