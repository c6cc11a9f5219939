/** A command that tells of one pattern: as text for people, or as JSON for programs. It knows nothing of what is told. */
import type { Study } from '../../core/study/study.ts';
import { examine } from '../services/examine.ts';
import { RIGHT } from './io.ts';
import { oneFile } from './options.ts';
import { patternAt } from './pattern.ts';
import type { Command } from './run.ts';
import { columnsOf, type Paint, paintFor } from './words.ts';

/** Told from the study alone: `words` for a terminal of some width, `json` with --json. Nothing it tells is a fault. */
export function telling(
  words: (study: Study, width: number, paint: Paint) => string,
  json: (study: Study) => unknown,
): Command {
  return {
    options: { json: { type: 'boolean' } },
    run: async (given, io) => {
      const path = oneFile(given, 'a .turnchain file, or - for standard input');
      const { document } = await patternAt(path, io);
      const { study } = examine(document);
      io.stdout.write(
        given.flags.has('json')
          ? `${JSON.stringify(json(study))}\n`
          : words(study, columnsOf(io.stdout), paintFor(io.stdout, io.env)),
      );
      return RIGHT;
    },
  };
}
