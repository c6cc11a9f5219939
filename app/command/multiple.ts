/** `turnchain multiple`: which foundation chains rows work on. Prints what was found; looks for nothing itself. */
import { findMultiple, type Multiple } from '../../core/study/multiple.ts';
import { FINDINGS, RIGHT, readWords } from './io.ts';
import { oneFile } from './options.ts';
import { termsOf } from './rows.ts';
import type { Command } from './run.ts';

const NONE =
  'No multiple was found. The rows need a foundation chain in their first line (“Ch 20.”), and every row must come out on more than one length of chain; “turnchain rows” tells where they do not.';

/** The finding in a sentence, with the first lengths. */
export function multipleWords({ multiple, plus, from }: Multiple): string {
  const first = Array.from({ length: 4 }, (_, i) => from + i * multiple).join(', ');
  if (multiple === 1) {
    const own = plus > 0 ? `: one for each stitch, and ${plus} more` : '';
    return `These rows work on any number of chains from ${from}${own}.`;
  }
  const rest = plus > 0 ? ` plus ${plus}` : '';
  return `These rows work on a multiple of ${multiple} chains${rest}: ${first} and so on.`;
}

export const command: Command = {
  options: { terms: { type: 'string' }, json: { type: 'boolean' } },
  run: async (given, io) => {
    const path = oneFile(given, 'a text file, or - for standard input');
    const terms = termsOf(given);
    const found = findMultiple(await readWords(path, io), terms);
    if (given.flags.has('json')) io.stdout.write(`${JSON.stringify(found)}\n`);
    else if (found !== null) io.stdout.write(`${multipleWords(found)}\n`);
    if (found === null) io.stderr.write(`turnchain multiple: ${NONE}\n`);
    return found === null ? FINDINGS : RIGHT;
  },
};
