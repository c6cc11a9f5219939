/** Words of the start screen and of the dialogs that commands open. */

export const startWords = {
  lead: 'Write crochet patterns in every size.',
  begin: 'Begin',
  newPattern: 'New pattern…',
  open: 'Open a pattern…',
  bring: 'Bring in a pattern…',
  bringNote:
    'Bring in a pattern that you have as a document or a text: its rows, sizes and materials are read, and every stitch is counted.',
  recent: 'Last opened',
  noRecent: 'Patterns that you open or save are listed here.',
  notThere: 'not there any more',
  forget: (name: string) => `Take ${name} off the list`,
  forgetShort: 'Take off the list',
  examples: 'Examples',
  examplesNote: 'Each opens as a copy of your own.',
  /** By the example's name. */
  exampleWords: {
    'boxy-vest': 'A vest of two panels with a yoke and ribbed bands, in rows, ten sizes, US terms.',
    'crown-down-hat':
      'A hat in rounds from the crown down, seven sizes from newborn to large adult, UK terms.',
    'raglan-tee': 'A raglan tee without a seam, in rounds from the neck down, nine sizes, US terms.',
  } as Readonly<Record<string, string>>,
  recovered: 'Work that was not saved',
  recoveredNote: 'Turnchain ended before these changes were saved in a file. Nothing of them is lost.',
  recover: 'Go on with it',
  recoverThis: (name: string) => `Go on with it: ${name}`,
  discard: 'Throw it away',
  discardThis: (name: string) => `Throw it away: ${name}`,
  discardAsk: {
    title: (name: string) => `Throw away the changes to “${name}”?`,
    text: 'They are in no file, and cannot be brought back.',
    yes: 'Throw away',
  },
  never: 'not saved in a file yet',
  belongs: (file: string, folder: string) => `changes to ${file} in ${folder}`,
  newerFile: (file: string) =>
    `changes to ${file}, which was saved since from elsewhere; they open as a pattern of their own`,
} as const;

export const newWords = {
  title: 'New pattern',
  kind: 'Begin with',
  kinds: {
    blank: ['A blank pattern', 'Sizes and one empty piece; everything else is yours.'],
    panel: ['A top in two panels', 'Back and front, straight, nine sizes.'],
    hat: ['A hat in rounds', 'From the crown down, five sizes from baby to adult.'],
    raglan: ['A raglan from the neck down', 'Yoke, body and sleeves in rounds, nine sizes.'],
  },
  name: 'Title',
  terms: 'Written in',
  units: 'Measured in',
  metric: 'centimetres',
  imperial: 'inches',
  gauge: (uk: boolean) => (uk ? 'Your tension' : 'Your gauge'),
  gaugeNote: (over: string) =>
    `Counted over ${over}, after blocking. All sizes are worked out from it; you can change it later.`,
  stitch: 'Stitch',
  stitches: 'Stitches',
  rows: 'Rows or rounds',
  hook: 'Hook (mm)',
  missing: 'Give the stitches, the rows and the hook of your swatch; all sizes are worked out from them.',
  create: 'Begin the pattern',
} as const;

export const versionWords = {
  title: 'Earlier versions',
  none: 'There is no earlier version yet. One is put aside each time you save.',
  note: 'One is put aside each time you save. Restoring puts it on your desk; the file changes only when you save.',
  look: 'Words of the chosen version',
  restore: 'Restore this one',
  errata: 'Errata against this one…',
  comparing: 'Comparing what both print …',
  compared: (notes: readonly string[], files: readonly string[], folder: string) =>
    [...notes, files.length === 0 ? '' : `In ${folder}: ${files.join(', ')}.`]
      .filter((words) => words !== '')
      .join(' '),
  size: (bytes: number) => `${Math.max(1, Math.round(bytes / 1024))} kB`,
  differ: (rows: number) =>
    rows === 0
      ? 'All its words are as they are now.'
      : rows === 1
        ? '1 row or paragraph is not as it is now; it is marked.'
        : `${rows} rows and paragraphs are not as they are now; they are marked.`,
  changed: 'differs',
  choose: 'Choose a version to look at it.',
} as const;

export const commandWords = {
  title: 'Find a command',
  label: 'Command',
  hint: 'Type a part of its name',
  none: 'No command is called that.',
  /** Why a command cannot be done now, behind its name. */
  hindrances: {
    noPattern: 'no pattern is open',
    inNoFile: 'the pattern is in no file yet; save it first',
    nothingToUndo: 'nothing to undo',
    nothingToDoAgain: 'nothing was undone',
    noSizes: 'there are no sizes yet',
    notToChange: 'the words cannot be changed just now',
    noOutline: 'the outline is not shown',
  },
} as const;

export const keyListWords = {
  title: 'Keys',
  inText: 'In the manuscript',
  leave: ['Escape, then Tab', 'Leave the manuscript for what comes after it'],
  text: [
    ['Enter', 'Next row; on a figure or a repeat, its form'],
    ['Tab', 'Next figure of the row, then the next row'],
    ['Shift+Tab', 'Figure before'],
    ['Escape', 'Close what is open at the caret'],
  ],
} as const;

export const themeWords = {
  title: 'Look and spelling',
  theme: 'Light or dark',
  options: { system: 'As the system', light: 'Light', dark: 'Dark' },
  writing: 'Writing',
  spelling: 'Check spelling while writing',
  spellingNote: 'Stitches, titles and names are not looked at.',
} as const;

export const aboutWords = {
  title: 'About Turnchain',
  version: (version: string) => `Version ${version}`,
  what: 'A studio for writing crochet patterns that can be followed in every size.',
  fonts: 'Set in Source Serif and Source Sans, under the SIL Open Font License 1.1.',
  data: 'Sources of the trade’s data stand beside each datum in the program’s resources.',
  private: 'Turnchain sends nothing anywhere. Your patterns stay in your files.',
} as const;
