/** Words of bringing in an old pattern. */

const many = (n: number, one: string, more: string): string => `${n} ${n === 1 ? one : more}`;

export const bringWords = {
  title: 'Bring in a pattern',
  lead: 'Choose a document of your word processor (.docx), a PDF or a text file (.txt, .md), or paste the words. Rows, sizes and materials are recognised, and the pictures of a document come along; what is uncertain stays as words and is marked. Nothing is dropped, and your file stays as it is.',
  chooseFile: 'Choose a file…',
  paste: 'Or paste the whole pattern here',
  read: 'Read it',
  reading: 'Reading the pattern and working its rows…',
  again: 'Another pattern',
  make: 'Make the pattern',
  tooLong: 'Reading it took too long and was given up. Bring in one pattern at a time, as plain text.',
  pdfUnread:
    'This PDF could not be read: it is damaged or locked. Copy its text in another program and paste it here.',
  failed: 'It could not be read. Save it as plain text and bring that in.',
  summary: 'What was understood',
  name: 'Title',
  sizes: 'Sizes',
  pieces: 'Pieces',
  piece: (name: string, make: number, rows: number) =>
    `${name || 'A piece without a name'}${make === 1 ? '' : `, made ${make} times`}: ${many(rows, 'row', 'rows')}`,
  rows: (followed: number, written: number) => {
    const needs = written - followed;
    const all = `${followed} of ${many(written, 'row is', 'rows are')} followed`;
    return needs === 0 ? `${all}.` : `${all}; ${needs} ${needs === 1 ? 'needs' : 'need'} you.`;
  },
  parts: (yarns: number, hooks: number, notions: number, gauges: number, lines: number) =>
    [
      many(yarns, 'yarn', 'yarns'),
      many(hooks, 'hook', 'hooks'),
      many(notions, 'notion', 'notions'),
      many(gauges, 'gauge', 'gauges'),
      many(lines, 'measurement', 'measurements'),
    ].join(', '),
  pictures: (n: number) => (n === 1 ? 'One picture comes along.' : `${n} pictures come along.`),
  terms: 'Written in',
  termsSure: 'The words show it:',
  termsAsk:
    'The words do not show clearly in which terms it is written, and the same letters mean different stitches. Choose:',
  doubts: (n: number) => `To look at: ${n}`,
  doubtsNote: 'They are kept with the pattern until you have looked at them.',
  noDoubts: 'Nothing is in doubt.',
  offers: 'Numbers that could be figures',
  offersNote:
    'These numbers are those of a line of your sizing sheet in every size. As figures they follow the sheet from now on.',
  offer: (text: string, line: string) => `${text} as “${line}”`,
  allOffers: 'All of them',
  broughtIn: 'Brought in from an old pattern',
  done: 'Looked at',
  lookedAt: (why: string) => `Looked at: ${why}`,
  look: 'Look for such numbers',
  looking: 'Looking …',
  offersFound: (n: number) =>
    n === 0
      ? 'No typed numbers are those of a line in every size.'
      : `${many(n, 'list', 'lists')} of numbers could be figures.`,
  takeAll: (n: number) => `Make figures of all ${n}`,
  takeOne: (text: string) => `Make a figure of ${text}`,
  leftOut: (lines: readonly string[]) => `Left out as page numbers and running heads: ${lines.join(' · ')}`,
  unread: (name: string) => `“${name}” could not be read from the disk.`,
} as const;
