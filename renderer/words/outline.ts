/** Words of the outline: names of the parts, what moving a piece says. Sentences only. */

const counted = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;

export const outlineWords = {
  name: 'Outline of the pattern',
  toggle: (current: string | null) => (current === null ? 'Outline' : `Outline: ${current}`),
  cover: 'Cover',
  specials: 'Special stitches',
  notes: 'Notes',
  finishing: 'Finishing',
  closing: 'Closing page',
  unnamed: (number: number) => `Piece ${number}`,
  add: 'Add a piece',
  earlier: 'Move earlier',
  later: 'Move later',
  moving: (name: string) => `Place of “${name}”`,
  moved: (name: string, place: number, of: number) => `${name} is now piece ${place} of ${of}.`,
  first: (name: string) => `${name} is the first piece already.`,
  last: (name: string) => `${name} is the last piece already.`,
  notMoved: (name: string) => `${name} stays where it was.`,
  added: 'A new piece was added.',
  errors: (n: number) => counted(n, 'mistake', 'mistakes'),
  warnings: (n: number) => counted(n, 'thing to look at', 'things to look at'),
} as const;
