/**
 * What a maker is told of a pattern that was brought in: why a part is in doubt, what the terms were taken from.
 * Sentences only; who notices stands elsewhere.
 */
import type { Terms } from '../trade/stitches.ts';

const short = (words: string): string => (words.length > 80 ? `${words.slice(0, 79).trimEnd()}…` : words);

const EDGES = {
  top: 'the last row',
  foundation: 'the foundation',
  'row-ends': 'the row-ends',
} as const;

export const intakeWords = {
  noSizes: 'The text names no sizes, so the pattern has one.',
  countedSizes: (lists: number) =>
    `The text names no sizes, but its lists have ${lists} numbers each. The sizes are numbered for now: give them their names in Sizes.`,
  sizesFromMeasure: (name: string) =>
    `The text gives no labels for its sizes, so they are called by “${short(name) || 'Measurement'}”. Give them their names in Sizes.`,
  areaGuessed: (words: string) =>
    `“${short(words)}” does not say which is the width and which is the length. The first was taken for the width.`,
  otherUnit: (words: string) =>
    `“${short(words)}” does not come to the same length in both units. The first was taken; check it in Sizes.`,
  otherLength: (words: string, got: number, sizes: number) =>
    `“${short(words)}” has ${got} numbers for ${sizes} sizes, so it stays a note. Put it into Sizes when it is clear what is missing.`,
  hookFromLetter: (letter: string, mm: number) =>
    `The text names the hook by its US size ${letter.replace(/^size\s/iu, '')} only; ${mm} mm was taken for it.`,
  hookFromOldNumber: (number: string, mm: number) =>
    `The text names the hook by the old number ${number} only; ${mm} mm was taken for it.`,
  hookWithoutSize: 'No size could be read for this hook. Give it in Materials.',
  gaugeNotRead: 'The gauge could not be read from these words: give its stitches and rows in Materials.',
  gaugeWithoutRows: 'The gauge gives no rows, so heights cannot be reckoned. Give them in Materials.',
  repeatedName: (name: string) => `“${short(name)}” is explained twice. The first explanation was taken.`,
  renumbered: (typed: string, now: string) =>
    `The text calls this Row or Round ${typed}; by its order it is ${now}.`,
  otherSide: (typed: string, now: string) =>
    `The text says that the ${typed} faces here; by the order of the rows it is the ${now}.`,
  notWorked: 'This row was not followed to its end.',
  countKept: (words: string) =>
    `The count “${short(words)}” is not what the row leaves, or could not be checked. It stays in the words.`,
  looksLikeWork:
    'These words look like instructions but were not read as a row. Number them as a row if they are one.',
  startTried: (kind: 'top' | 'foundation' | 'row-ends', piece: string) =>
    `The text makes no beginning of its own here. On ${EDGES[kind]} of “${short(piece)}” the rows come out, so it begins there. Check whether that is meant.`,
  rowsGiven: (words: string, piece: string) =>
    `The text says “${short(words)}”, so the rows of “${short(piece)}” are written out here. Check whether all of them are meant.`,
  sizesNotKnown: (words: string) =>
    `“${short(words)}” names sizes that the pattern does not have, so the row is for all sizes. Check for which it is.`,
  pictureLost: (shows: string) =>
    `A picture${shows === '' ? '' : ` (“${short(shows)}”)`} could not be taken over: it is not there, or of a kind that is not read. Add it as a photograph.`,
  remark: (words: string) =>
    `At the side of the document stands a remark, which is not in the pattern: “${words.length > 600 ? `${words.slice(0, 599)}…` : words}”`,
  pictureMoved:
    'In the text this picture stood outside the rows. A pattern has pictures on its cover and between rows, so it was put here.',
  noTitle: (fallback: string) =>
    fallback.trim() === ''
      ? 'The text has no title; write one on the cover.'
      : 'The text has no title; the name of the file was taken.',
  titleGuessed: 'The first line was taken for the title.',
  cut: 'The text is longer than one part of a pattern may be, so it was parted here.',
} as const;

const MARKET: Readonly<Record<Terms, string>> = { us: 'US', uk: 'UK' };

/** One reason for a market's terms. */
export const evidenceWords = {
  said: (words: string) => `The text says so: “${short(words)}”.`,
  word: (terms: Terms, word: string, times: number) =>
    `“${word}” is met ${times === 1 ? 'once' : `${times} times`}: a word of ${MARKET[terms]} terms.`,
  chain: (terms: Terms, words: string) =>
    `“${short(words)}” fits the heights of stitches in ${MARKET[terms]} terms.`,
} as const;

/** Why a text is not taken. */
export const intakeRefusals = {
  empty: 'There are no words to bring in.',
  tooLong: (most: number) =>
    `The text is longer than any pattern (more than ${most.toLocaleString('en-GB')} letters). Bring in one pattern at a time.`,
  pdf: 'This is a PDF, which the studio brings in (npm start). Or open it, select all of its text, copy it, and save it as a text file.',
  scan: 'This PDF has no words in it, only pictures of its pages, and words in a picture are not read.',
  otherDocument:
    'This document is of a kind that is not read. Open it in the word processor and save it as .docx, or copy its words.',
  webPage:
    'This is a web page. Open it in the browser, select the pattern, copy it, and paste it here or into a text file.',
  picture: 'This is a picture, and words in a picture are not read. Type them, or copy them from a text.',
  noText: 'This is no text: it is of a kind that is not read. Save the pattern as .docx or as plain text.',
  notDocx:
    'This is not a .docx document that can be read. Open it in the word processor and save it again as .docx.',
  docxTooLarge: 'The document unpacks to more than any pattern has, so it was not opened.',
  docxStrange: 'The document holds a part that word processors do not write there, so it was not opened.',
} as const;
