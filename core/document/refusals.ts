/**
 * Why a file is not opened, or a picture not taken: one sentence for each reason, for a maker. All sentences
 * of `core/document` stand here and nowhere else; nothing is detected here.
 */

import { tidyText } from './words.ts';

/** A reason with its sentence. `code` is stable; the sentence may be reworded. */
export interface Refusal {
  readonly code: RefusalCode;
  readonly message: string;
}

/** Words taken from a file, short and harmless enough to be shown. */
const quoted = (text: string): string => {
  const shown = tidyText(text);
  return shown.length > 60 ? `${shown.slice(0, 60)}…` : shown;
};

const megabytes = (bytes: number): string => `${Math.round(bytes / (1024 * 1024))} MB`;
const grouped = (number: number): string => String(number).replace(/\B(?=(\d{3})+$)/g, ',');

const SENTENCES = {
  'empty-file': () => 'The file is empty: there is no pattern in it.',
  'not-a-container': () => 'This is not a Turnchain pattern: it is another kind of file.',
  'cut-short': () =>
    'The file is cut short: its end is missing, as after a copy or download that stopped. Get it again from where it came, or open an earlier version.',
  damaged: (part: string) =>
    `The file is damaged (${quoted(part)}). Nothing was opened. Get it again from where it came, or open an earlier version.`,
  encrypted: () =>
    'The file is locked with a password, which Turnchain cannot open. Save it again without one.',
  'unsafe-name': (name: string) =>
    `The file holds a part with an unsafe name (“${quoted(name)}”), so it was not opened. Turnchain never writes such a file.`,
  'repeated-name': (name: string) =>
    `The file holds two parts with the same name (“${quoted(name)}”), and nobody can say which is meant. Turnchain never writes such a file.`,
  'strange-picture': (name: string) =>
    `The file holds “${quoted(name)}” among its pictures, which is not a picture that Turnchain keeps. It was not opened.`,
  'too-large': (what: string, limit: number) =>
    `The file is too large: ${what} would take more than ${megabytes(limit)}, the most a pattern may have.`,
  'too-many-parts': (limit: number) =>
    `The file holds more than ${grouped(limit)} parts, more than any pattern has. It was not opened.`,
  'no-pattern': () => 'There is no pattern in this file: it is a zip file of something else.',
  'unreadable-text': () =>
    'The pattern in this file cannot be read: its text is not in the form that Turnchain writes.',
  'nested-too-deep': (limit: number) =>
    `The pattern in this file cannot be read: it has parts within parts more than ${limit} deep.`,
  'forbidden-key': (key: string) =>
    `The pattern in this file uses a name that is not allowed there (“${quoted(key)}”). Turnchain never writes such a file.`,
  'wrong-format': () =>
    'There is no Turnchain pattern in this file: what it holds was made by another program.',
  'newer-version': (version: number, known: number) =>
    `This pattern was made by a newer Turnchain (file version ${version}; this one reads up to ${known}). Install the newest Turnchain to open it.`,
  'bad-version': () =>
    'The pattern in this file does not say which version of the file it is, so it cannot be read.',
  'bad-value': (part: string, value: string) =>
    `The pattern has a value that cannot be (${part}: ${quoted(value)}).`,
  'bad-structure': (part: string) => `The pattern is not put together as a pattern is (${part}).`,
  'repeated-id': (part: string, id: string) =>
    `Two parts of the pattern have the same id “${quoted(id)}” (the second is ${part}).`,
  'too-many': (what: string, limit: number) =>
    `The pattern has more ${what} than Turnchain can work with: ${grouped(limit)} is the most.`,
  'picture-unknown': () => 'The picture is neither PNG nor JPEG. Save it as one of these and add it again.',
  'picture-broken': () =>
    'The picture is damaged: its size cannot be read. Save it again from the program it came from.',
  'picture-too-heavy': (limit: number) =>
    `The picture takes more than ${megabytes(limit)}, the most one picture may have. Save it smaller and add it again.`,
  'picture-too-wide': (width: number, height: number, side: number) =>
    `The picture is ${grouped(width)} × ${grouped(height)} dots; ${grouped(side)} along a side and 100 million in all is the most. Save it smaller and add it again.`,
} as const satisfies Record<string, (...values: never[]) => string>;

/** Every reason there is. */
export type RefusalCode = keyof typeof SENTENCES;

/** The refusal for a reason, with the values its sentence needs. */
export function refuse<C extends RefusalCode>(
  code: C,
  ...values: Parameters<(typeof SENTENCES)[C]>
): Refusal {
  const sentence = SENTENCES[code] as (...values: Parameters<(typeof SENTENCES)[C]>) => string;
  return { code, message: sentence(...values) };
}

/** All codes, for tests and the description of the format. */
export const REFUSAL_CODES = Object.keys(SENTENCES) as readonly RefusalCode[];
