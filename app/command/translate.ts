/** `turnchain translate`: a plain text in the other terms. The text goes to standard output and nothing else does. */
import { tell } from '../../core/findings/index.ts';
import { translate } from '../../core/notation/translate.ts';
import { findingLines, linesOf } from './findings.ts';
import { Refused, RIGHT, readWords } from './io.ts';
import { choiceOf, oneFile } from './options.ts';
import type { Command } from './run.ts';
import { columnsOf, paintFor } from './words.ts';

const TERMS = ['us', 'uk'] as const;

export const command: Command = {
  options: { from: { type: 'string' }, to: { type: 'string' } },
  run: async (given, io) => {
    const path = oneFile(given, 'a text file, or - for standard input');
    const from = choiceOf(given, 'from', TERMS);
    const to = choiceOf(given, 'to', TERMS);
    if (from === null || to === null) {
      throw new Refused('Say from which terms into which: --from us --to uk, or --from uk --to us.', true);
    }
    const text = await readWords(path, io);
    const { text: translated, doubts } = translate(text, from, to);
    io.stdout.write(translated);
    const at = linesOf(text);
    const facts = doubts.map((fact) => ({ size: null, fact }));
    for (const finding of tell(facts, { terms: from, labels: [], node: null, text })) {
      const { where, severity, message } = finding;
      const lines = findingLines(
        { severity, from: where.from, to: where.to, message },
        { whole: text, at, numbered: true },
        columnsOf(io.stderr),
        paintFor(io.stderr, io.env),
      );
      io.stderr.write(`${lines.join('\n')}\n`);
    }
    return RIGHT;
  },
};
