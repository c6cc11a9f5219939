/** Takes a pattern from a file or from standard input, for the commands that work on one. Judges nothing. */
import { readContainer } from '../../core/document/container.ts';
import { FILE_LIMITS } from '../../core/document/limits.ts';
import { type Opened, openPattern } from '../services/files.ts';
import { type Io, Refused, readBytes } from './io.ts';

/** The pattern at `path`, or of `-`. Throws `Refused` with the reason when there is none. */
export async function patternAt(path: string, io: Io): Promise<Extract<Opened, { ok: true }>> {
  const opened =
    path === '-'
      ? readContainer(await readBytes(path, io, FILE_LIMITS.fileBytes))
      : await openPattern(path, io.disk);
  if (opened.ok) return opened;
  const { code, message } = opened.error;
  throw new Refused(
    code === 'not-a-container' ? `${message} Rows in plain text are checked with “turnchain rows”.` : message,
  );
}
