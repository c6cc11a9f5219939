/** Which file a desktop gives the program to open, from the words that it is started with. A plain function. */
import { resolve } from 'node:path';

const ENDING = '.turnchain';

/**
 * The last word that names a pattern file; null when there is none. Switches are the system's and Chromium's
 * own, and `--` ends them.
 */
export function fileInWords(words: readonly string[], folder: string): string | null {
  const end = words.indexOf('--');
  const plain = words.filter((word, at) => at > end && (end >= 0 || !word.startsWith('-')));
  const named = plain.filter((word) => word.toLowerCase().endsWith(ENDING)).at(-1);
  return named === undefined ? null : resolve(folder, named);
}
