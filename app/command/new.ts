/** `turnchain new`: makes a pattern file, blank or from an example. Never replaces a file that is there. */
import { basename, extname } from 'node:path';
import type { Node } from 'prosemirror-model';
import { compose } from '../../core/document/compose.ts';
import type { Pictures } from '../../core/document/media.ts';
import { project } from '../../core/document/project.ts';
import { tidyText } from '../../core/document/words.ts';
import { blankPattern } from '../../core/outlines/blank.ts';
import { openPattern, savePattern } from '../services/files.ts';
import { type Example, examples } from '../services/resources.ts';
import { type Io, isThere, Refused, RIGHT } from './io.ts';
import { choiceOf, lastValue, oneFile } from './options.ts';
import type { Command } from './run.ts';

const ENDING = '.turnchain';

/** "harbour-vest.turnchain" makes "Harbour vest". */
function titleFrom(path: string): string {
  const words = tidyText(basename(path, extname(path)).replace(/[-_]+/g, ' ')).trim();
  return words.charAt(0).toUpperCase() + words.slice(1);
}

const listOf = (all: readonly Example[]): string =>
  all.length === 0 ? 'there are none in this installation' : all.map(({ name }) => name).join(', ');

async function exampleNamed(name: string, io: Io): Promise<{ document: Node; media: Pictures }> {
  const all = examples();
  const found = all.find((example) => example.name === name.trim().toLowerCase());
  if (found === undefined) {
    throw new Refused(`There is no example “${name}”. The examples are: ${listOf(all)}.`);
  }
  const opened = await openPattern(found.path, io.disk);
  if (!opened.ok) throw new Refused(opened.error.message);
  return opened;
}

export const command: Command = {
  options: {
    example: { type: 'string' },
    title: { type: 'string' },
    terms: { type: 'string' },
    units: { type: 'string' },
  },
  run: async (given, io) => {
    const example = lastValue(given, 'example');
    if (example?.trim().toLowerCase() === 'list') {
      const all = examples();
      io.stdout.write(all.map(({ name }) => `${name}\n`).join(''));
      return RIGHT;
    }
    const named = oneFile(given, 'the pattern file to make');
    if (named === '-') throw new Refused('A new pattern needs the name of a file, not -.', true);
    const path = extname(named) === '' ? `${named}${ENDING}` : named;
    const terms = choiceOf(given, 'terms', ['us', 'uk']);
    const units = choiceOf(given, 'units', ['metric', 'imperial']);
    const title = tidyText(lastValue(given, 'title') ?? '').trim() || null;
    if (example !== null && (terms !== null || units !== null)) {
      throw new Refused(
        'An example has terms and units of its own; leave --terms and --units away. It is exported in both terms.',
        true,
      );
    }
    if (await isThere(path, io)) {
      throw new Refused(`“${basename(path)}” is there already and stays as it is. Choose another name.`);
    }
    let made: { readonly document: Node; readonly media: Pictures };
    if (example === null) {
      const blank = blankPattern({
        title: title ?? titleFrom(path),
        terms: terms ?? 'us',
        units: units ?? 'metric',
        date: io.today,
      });
      made = { document: compose(blank), media: new Map() };
    } else {
      made = await exampleNamed(example, io);
      if (title !== null) {
        const pattern = project(made.document);
        made = { ...made, document: compose({ ...pattern, about: { ...pattern.about, title } }) };
      }
    }
    const saved = await savePattern(path, made.document, made.media, io.disk);
    if (!saved.ok) throw new Refused(saved.error.message);
    io.stdout.write(`${path}\n`);
    return RIGHT;
  },
};
