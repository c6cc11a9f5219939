/** Words of the place "Review". */
import { SEVERITY_WORDS } from './severity.ts';

const many = (n: number, one: string, more: string): string => (n === 1 ? `1 ${one}` : `${n} ${more}`);

export const reviewWords = {
  severity: SEVERITY_WORDS,
  working: 'Being worked out …',
  summary: (errors: number, warnings: number, notes: number, accepted: number): string => {
    const stand =
      accepted === 0 ? '' : ` ${many(accepted, 'finding is', 'findings are')} accepted, with reasons.`;
    if (errors > 0)
      return `${many(errors, 'mistake stands', 'mistakes stand')} between this pattern and sale.${stand}`;
    if (warnings > 0)
      return `No mistake was found. ${many(warnings, 'thing wants', 'things want')} a look before sale.${stand}`;
    if (notes > 0) return `No mistake was found. The notes tell what was taken for granted.${stand}`;
    return accepted === 0 ? 'Nothing was found against this pattern.' : `Nothing is open.${stand}`;
  },
  limits:
    'Every stitch of every size was worked. A tester with hook and yarn still sees what no reckoning does.',
  parts: {
    whole: 'The whole pattern',
    cover: 'Cover',
    sizes: 'Sizes and lines',
    materials: 'Materials',
    specials: 'Special stitches',
    notes: 'Notes',
    piece: 'Piece',
    finishing: 'Finishing',
    closing: 'Closing page',
  },
  unnamedPiece: 'Piece without a name',
  go: 'Go there',
  goTo: (message: string) => `Go there: ${message}`,
  accept: 'Let it stand…',
  acceptThis: (message: string) => `Let it stand: ${message}`,
  acceptWhy: 'Why it may stand, for your editor and for yourself',
  acceptError:
    'This is a mistake as far as the program can tell. Letting it stand changes nothing in the rows.',
  acceptNow: 'Let it stand',
  cancel: 'Cancel',
  accepted: 'Accepted. It is told again when its words change; undo takes it back.',
  acceptedTitle: 'Accepted',
  acceptedCount: (n: number) => many(n, 'finding', 'findings'),
  acceptedBecause: (reason: string, date: string) =>
    `Accepted${date === '' ? '' : ` on ${date}`}: ${reason.trim() === '' ? 'no reason is given.' : reason}`,
  takeBack: 'Take back',
  takeBackThis: (message: string) => `Take back: ${message}`,
  takenBack: 'Taken back: the finding is open again.',
  clear: 'Take away what is left over',
  cleared: 'Taken away.',
  confirm: 'It is right',
  confirmThis: (message: string) => `It is right: ${message}`,
  confirmed: 'Confirmed. Undo takes it back.',
  report: 'Report for an editor…',
  reportWritten: (name: string) => `Written: ${name}`,
  fixed: 'Fixed. Undo takes it back.',
  notFixed: 'The words have changed since; nothing was done.',
  why: 'Why this matters',
  show: 'Show',
  shown: {
    all: 'Everything',
    errors: 'Mistakes only',
    size: (label: string) => `What concerns size ${label}`,
  },
  sizes: (labels: string) => `Sizes: ${labels}`,
  allSizes: 'All sizes',
  counts: (errors: number, warnings: number, notes: number) =>
    [
      errors > 0 ? many(errors, 'mistake', 'mistakes') : '',
      warnings > 0 ? `${warnings} to look at` : '',
      notes > 0 ? many(notes, 'note', 'notes') : '',
    ]
      .filter(Boolean)
      .join(', '),
} as const;
