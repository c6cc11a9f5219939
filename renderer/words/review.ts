/** Words of the place "Review". */
import { SEVERITY_WORDS } from './severity.ts';

const many = (n: number, one: string, more: string): string => (n === 1 ? `1 ${one}` : `${n} ${more}`);

export const reviewWords = {
  severity: SEVERITY_WORDS,
  working: 'Being worked out …',
  summary: (errors: number, warnings: number, notes: number): string => {
    if (errors > 0)
      return `${many(errors, 'mistake stands', 'mistakes stand')} between this pattern and sale.`;
    if (warnings > 0)
      return `No mistake was found. ${many(warnings, 'thing wants', 'things want')} a look before sale.`;
    if (notes > 0) return 'No mistake was found. The notes tell what was taken for granted.';
    return 'Nothing was found against this pattern.';
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
