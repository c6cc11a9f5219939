/** Words of the place "Drawings". */
export const drawingsWords = {
  schematics: 'Schematics',
  choices: 'What is drawn',
  sizes: 'Sizes',
  allSizes: 'All sizes',
  size: (label: string) => `Size ${label}`,
  nested: 'Outlines of all sizes',
  zoom: 'Size of the drawings',
  fits: 'As the window has room',
  zooms: { 50: '50 %', 75: '75 %', 100: '100 %', 150: '150 %', 200: '200 %', 300: '300 %' } as Readonly<
    Record<number, string>
  >,
  working: 'Drawing …',
  drawn: (n: number) => (n === 1 ? '1 schematic' : `${n} schematics`),
  none: 'There is nothing to draw yet. A piece is drawn when it has rows and the pattern has a gauge.',
  missing: 'Not drawn yet',
  /** A drawing that scrolls when it is large. */
  scrolls: (title: string) => `Schematic of ${title}`,
  lengths: (title: string) => `Lengths of ${title}`,
  key: 'Letter',
  length: 'Length',
  numbers: 'Finished',
  inWords: 'In words',
  save: 'Save the drawing…',
  saveOf: (title: string) => `Save the drawing…: schematic of ${title}`,
  fileName: (pattern: string, title: string, terms: string, size: string | null) =>
    [pattern, 'schematic', title, terms, size === null ? 'all sizes' : `size ${size}`].join(' '),
  saved: (file: string) => `The drawing is saved as ${file}.`,
  notSaved: (why: string) => `The drawing could not be saved. ${why}`,
} as const;
