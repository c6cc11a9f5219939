/**
 * What a command reads from and writes to, as an interface, so that commands run in a test as they run in a
 * terminal; and how input is taken: whole, limited in size, decoded. No command's own words are here.
 */
import { createReadStream } from 'node:fs';
import { basename } from 'node:path';
import { type Disk, whileOpening } from '../services/disk.ts';

export interface Sink {
  write(text: string): void;
  readonly isTTY: boolean;
  /** Columns of the terminal; undefined when it is none. */
  readonly columns: number | undefined;
}

export interface Io {
  readonly stdin: AsyncIterable<Uint8Array>;
  readonly stdout: Sink;
  readonly stderr: Sink;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** Today's date, ISO: a new pattern's first version has one. */
  readonly today: string;
  /**
   * From the call on, an interruption aborts the signal in place of ending the program: for work that has
   * something to tidy away.
   */
  readonly interruption: () => AbortSignal;
  readonly disk: Disk;
}

/** What a command ends with. */
export const RIGHT = 0;
export const FINDINGS = 1;
export const MISUSE = 2;
/** As shells have it for a program that was interrupted: 128 and the signal's number. */
export const INTERRUPTED = 130;

/** Ends a command with a sentence on standard error and exit code 2. `usage`: the usage line helps, too. */
export class Refused extends Error {
  readonly usage: boolean;
  constructor(message: string, usage = false) {
    super(message);
    this.usage = usage;
  }
}

/** Whether something is at `path` already. */
export async function isThere(path: string, io: Io): Promise<boolean> {
  try {
    await io.disk.stat(path);
    return true;
  } catch (fault) {
    // Whatever else is wrong with the place is told when the file is saved.
    return (fault as NodeJS.ErrnoException).code !== 'ENOENT';
  }
}

/** More text than any pattern has. */
export const MOST_TEXT = 5 * 1024 * 1024;

/** All bytes of `-` (standard input) or of the file at `path`, at most `limit`. */
export async function readBytes(path: string, io: Io, limit: number): Promise<Uint8Array> {
  const name = path === '-' ? 'standard input' : `“${basename(path)}”`;
  const parts: Uint8Array[] = [];
  let length = 0;
  try {
    for await (const part of path === '-' ? io.stdin : createReadStream(path)) {
      const bytes: Uint8Array = part;
      length += bytes.length;
      if (length > limit) {
        throw new Refused(
          `What ${name} holds is larger than ${Math.round(limit / (1024 * 1024))} MB, more than any pattern. Give one pattern at a time.`,
        );
      }
      parts.push(bytes);
    }
  } catch (fault) {
    if (fault instanceof Refused) throw fault;
    if (path === '-') throw new Refused('Standard input could not be read to its end.');
    throw new Refused(opening(path, fault));
  }
  return Buffer.concat(parts);
}

/** The disk's sentences speak of patterns; text is asked for here. */
function opening(path: string, fault: unknown): string {
  const error = whileOpening(path, fault);
  return error.code === 'folder' ? `“${basename(path)}” is a folder, not a file.` : error.message;
}

const starts = (bytes: Uint8Array, text: string): boolean =>
  Buffer.from(bytes.subarray(0, text.length)).toString('latin1') === text;

/**
 * Plain text from a file or `-`. UTF-8, or UTF-16 with its mark (as some editors save); what is not UTF-8 is
 * read as Windows-1252, in which older word processors write their ½ and –.
 */
export async function readWords(path: string, io: Io): Promise<string> {
  const bytes = await readBytes(path, io, MOST_TEXT);
  if (starts(bytes, 'PK\u0003\u0004')) {
    throw new Refused(
      'This is a packed file, not plain text. For a pattern file use “turnchain check”; from a word processor save the rows as plain text.',
    );
  }
  if (starts(bytes, '%PDF-')) {
    throw new Refused('This is a PDF, not plain text. Copy the rows out of it into a text file.');
  }
  return wordsOf(bytes);
}

/** The text that bytes are: UTF-8, UTF-16 with its mark, else Windows-1252. */
export function wordsOf(bytes: Uint8Array): string {
  if (starts(bytes, '\u00FF\u00FE')) return new TextDecoder('utf-16le').decode(bytes);
  if (starts(bytes, '\u00FE\u00FF')) return new TextDecoder('utf-16be').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return fromWindows1252(bytes);
  }
}

/** What bytes 80 to 9F are in Windows-1252 (WHATWG Encoding, index windows-1252); the five gaps stay as they are. */
const WINDOWS_1252 = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008DŽ\u008F\u0090‘’“”•–—˜™š›œ\u009DžŸ';

/** Spelled out because the decoder of some Node 20 and 22 takes Windows-1252 for Latin-1. */
function fromWindows1252(bytes: Uint8Array): string {
  return Buffer.from(bytes)
    .toString('latin1')
    .replace(/[\u0080-\u009F]/g, (letter) => WINDOWS_1252[letter.charCodeAt(0) - 0x80]!);
}
