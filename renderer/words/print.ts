/** Words of the place "Print". */
import type { Edition, Paper } from '../../core/print/style.ts';

export const printWords = {
  pages: 'Pages as they will be printed',
  choices: 'Pages to show',
  terms: 'Terms',
  paper: 'Paper',
  edition: 'Edition',
  sizes: 'Sizes',
  allSizes: 'All sizes',
  papers: { a4: 'A4', letter: 'US Letter' } satisfies Record<Paper, string>,
  editions: {
    standard: 'Standard',
    'large-print': 'Large print',
    'ink-saving': 'Ink-saving',
  } satisfies Record<Edition, string>,
  size: (label: string) => `Size ${label}`,
  layingOut: 'Laying out the pages …',
  laidOut: (pages: number) => (pages === 1 ? '1 page' : `${pages} pages`),
  failed: (why: string) => `The pages could not be laid out. ${why}`,
  page: (page: number, of: number) => `Page ${page} of ${of}`,
  troubles: 'Not printed as it stands',
  errorsWaiting: (n: number) =>
    n === 1
      ? '1 mistake stands between this pattern and sale. You can export all the same.'
      : `${n} mistakes stand between this pattern and sale. You can export all the same.`,
  toReview: 'Look in Review',
  exporting: {
    title: 'Export PDFs',
    button: 'Export…',
    done: (n: number, folder: string) => (n === 1 ? `1 PDF is in ${folder}.` : `${n} PDFs are in ${folder}.`),
    stopped: (n: number) =>
      n === 0
        ? 'Stopped. No PDF was written.'
        : `Stopped. ${n === 1 ? '1 PDF' : `${n} PDFs`} written before are whole.`,
    written: 'PDFs written',
  },
  eachSize: 'Each size alone',
  allInOne: 'All sizes in one',
  files: (n: number) => (n === 1 ? '1 PDF' : `${n} PDFs`),
  nothingChosen: 'Choose at least one of each.',
  cancel: 'Stop',
  working: (number: number, of: number, page: number, pages: number) =>
    pages === 0 ? `PDF ${number} of ${of}: laying out` : `PDF ${number} of ${of}: page ${page} of ${pages}`,
  show: 'Show in folder',
  cannotShow: (folder: string) => `The folder cannot be shown from here. It is ${folder}.`,
  zoom: 'Size of the pages',
  fitWidth: 'Page width',
  realSize: 'As on paper',
} as const;
