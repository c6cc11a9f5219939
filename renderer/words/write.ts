/** Words of the place "Write": headings, prompts where nothing is written yet, forms, and what is announced. */
import type { Severity } from '../../core/finding.ts';
import type { Terms } from '../../core/trade/stitches.ts';
import { SEVERITY_WORDS } from './severity.ts';

/** The stitch that examples are worked in, as each market calls it. */
const SHORTEST = { us: 'sc', uk: 'dc' } as const satisfies Record<Terms, string>;

export const writeWords = {
  manuscript: 'Manuscript',
  /** Told to screen readers once, with the manuscript's name. */
  manuscriptHelp:
    'Each paragraph is a row, a note or a field. Enter begins the next row. Tab goes to the next figure, then to the next row. F8 goes to the next finding. To leave the manuscript by keyboard, press Escape, then Tab.',
  canLeave: 'Tab now leaves the manuscript.',
  parts: {
    cover: 'Cover',
    specials: 'Special stitches',
    notes: 'Notes',
    pieces: 'Pieces',
    finishing: 'Finishing',
    closing: 'Closing page',
  },
  fields: {
    title: 'Title',
    description: 'Description',
    construction: 'Construction',
    fit: 'Fit',
    care: 'Care',
    copyright: 'Copyright',
    contact: 'Contact',
    caution: 'Caution',
  },
  prompts: {
    title: 'What the pattern is called',
    description: 'What it is, in a few sentences: the look, the yarn, what makes it pleasant to work',
    construction: 'How it is made: pieces and seams, or in one piece, from which end',
    fit: 'How it is meant to fit, and how much ease the sample is shown with',
    care: 'How to wash, dry and block it',
    copyright: 'Whose pattern it is, and what may be done with it',
    contact: 'Where makers can ask for help',
    caution: 'A caution of your own',
    special: 'How it is worked, such as “5 dc in next st”',
    note: 'Something that holds for the whole pattern',
    finishing: 'A step of the finishing: seams, borders, ends, blocking',
    pieceTitle: 'Name of the piece',
    row: (terms: Terms) => `Write the row, such as “Ch 1, ${SHORTEST[terms]} in each st across, turn.”`,
    round: (terms: Terms) => `Write the round, such as “Ch 1, ${SHORTEST[terms]} in each st around, join.”`,
    foundation: 'How the piece begins, such as “Ch 24.” Type = for a number from the sizing sheet',
    prose: 'Text between the rows',
    heading: 'A heading between the rows',
  },
  add: {
    specials: 'Add a special stitch',
    notes: 'Add a note',
    pieces: 'Add a piece',
    finishing: 'Add a finishing step',
    cautions: 'Add a caution of your own',
    blocks: (isFirst: boolean, form: 'row' | 'round') => {
      const noun = form === 'round' ? 'round' : 'row';
      return isFirst ? `Add the first ${noun}` : `Add a ${noun}`;
    },
    repeat: (form: 'row' | 'round') => `Add a repeat of ${form === 'round' ? 'rounds' : 'rows'}`,
  },
  labels: {
    prose: 'Text',
    heading: 'Heading',
    shaping: 'Shaping',
    repeat: 'Repeat',
    noRow: 'Row',
    noRound: 'Rnd',
    noFoundation: 'Foundation',
    unnamedSpecial: 'Not named yet',
  },
  /** The rows of a shaping: the one on which it shapes, and the one that lies between. */
  ofShaping: (which: 'shaped' | 'even', isRound: boolean) => {
    if (which === 'shaped') return isRound ? 'Shaping rnd' : 'Shaping row';
    return isRound ? 'Rnd between' : 'Row between';
  },
  withSide: (label: string, side: string | null) => (side === null ? label : `${label} (${side})`),
  changeBlock: (label: string) => `${label}: change`,
  completion: 'Words that could follow',
  changePiece: 'Change the piece’s details',
  figureEmpty: 'figure',
  figure: (expression: string, value: string | null) =>
    value === null ? `Figure: ${expression}, no value yet` : `Figure: ${expression}, ${value}`,
  inAllSizes: (pairs: readonly (readonly [size: string, value: string | null])[]) =>
    pairs.map(([size, value]) => `${size}: ${value ?? '–'}`).join('\n'),
  severity: (severity: Severity) => SEVERITY_WORDS[severity],
  finding: {
    label: 'Finding at the caret',
    fix: (label: string) => label,
    next: 'Next',
    close: 'Close',
    told: (severity: Severity, message: string) => `${SEVERITY_WORDS[severity]}: ${message}`,
    none: 'No findings in the manuscript.',
    noFix: 'There is no fix for this finding that is sure to be right.',
    fixed: (label: string) => `Done: ${label}`,
    changed: 'The words were changed since. Look at them again.',
  },
  acrossParts:
    'The selection reaches over more than one part of the pattern. Select within one part to delete.',
} as const;
