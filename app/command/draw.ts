/** `turnchain draw`: schematics and stitch charts as SVG files. Reads the choices and lists the files; a service draws and writes them. */
import { drawingsOf, saveDrawings } from '../services/drawings.ts';
import { examine } from '../services/examine.ts';
import { FINDINGS, Refused, RIGHT } from './io.ts';
import { choiceOf, lastValue, oneFile } from './options.ts';
import { patternAt } from './pattern.ts';
import type { Command } from './run.ts';
import { apart, sizesOf } from './sizes.ts';

export const command: Command = {
  options: {
    out: { type: 'string' },
    terms: { type: 'string' },
    units: { type: 'string' },
    sizes: { type: 'string' },
    nested: { type: 'boolean' },
    what: { type: 'string' },
  },
  run: async (given, io) => {
    const { files, sizes } = apart(given);
    const path = oneFile(files, 'a .turnchain file, or - for standard input');
    const out = lastValue(given, 'out') ?? '.';
    if (out === '') throw new Refused('Say where the drawings go: --out and a folder.', true);
    const terms = choiceOf(given, 'terms', ['us', 'uk']);
    const units = choiceOf(given, 'units', ['metric', 'imperial']);
    const what = choiceOf(given, 'what', ['schematic', 'chart']) ?? 'schematic';
    const { document } = await patternAt(path, io);
    const { pattern, study } = examine(document);
    const drawn = drawingsOf(study, {
      terms: terms ?? pattern.terms,
      units: units ?? pattern.units,
      sizes: sizesOf(sizes, pattern),
      nested: given.flags.has('nested'),
      what,
    });
    for (const sentence of drawn.missing) io.stderr.write(`${sentence}\n`);
    if (drawn.files.length === 0) {
      io.stderr.write('turnchain draw: There is nothing to draw; no file was written.\n');
      return FINDINGS;
    }
    const outcome = await saveDrawings(drawn.files, out, io.disk);
    for (const file of outcome.files) io.stdout.write(`${file}\n`);
    if (outcome.stopped !== null) {
      const n = outcome.files.length;
      const whole =
        n === 0 ? 'No drawing was written.' : `${n} ${n === 1 ? 'drawing is' : 'drawings are'} whole.`;
      throw new Refused(`${outcome.stopped.message} ${whole}`);
    }
    return drawn.missing.length > 0 ? FINDINGS : RIGHT;
  },
};
