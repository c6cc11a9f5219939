/** `turnchain measured`: prints one person's own sheet. Reckons nothing itself. */
import { baseOfPerson } from '../../core/study/measured-for.ts';
import { examine } from '../services/examine.ts';
import { INTERRUPTED, Refused, RIGHT } from './io.ts';
import { choiceOf, lastValue } from './options.ts';
import { patternAt } from './pattern.ts';
import type { Command } from './run.ts';
import { columnsOf, harmless, wrap } from './words.ts';

export const command: Command = {
  options: { out: { type: 'string' }, terms: { type: 'string' }, paper: { type: 'string' } },
  run: async (given, io) => {
    const [file, name, third] = given.operands.map(({ text }) => text);
    if (file === undefined || file === '')
      throw new Refused('Say which file: a .turnchain file, or - for standard input.', true);
    if (name === undefined || name.trim() === '')
      throw new Refused('Say whose sheet: the person’s name.', true);
    if (third !== undefined)
      throw new Refused(`One person at a time; put a name of several words in quotation marks.`, true);
    const out = lastValue(given, 'out');
    if (out === null || out === '') throw new Refused('Say where the PDF goes: --out and a folder.', true);
    const terms = choiceOf(given, 'terms', ['us', 'uk']);
    const paper = choiceOf(given, 'paper', ['a4', 'letter']) ?? 'a4';
    const { document, media } = await patternAt(file, io);
    const { pattern, study } = examine(document);
    const { people } = pattern.workbook;
    const wanted = name.trim().toLowerCase();
    const found = people.filter((person) => person.name.trim().toLowerCase() === wanted);
    if (found.length === 0) {
      const names = people.map((person) => person.name.trim()).filter((each) => each !== '');
      throw new Refused(
        names.length === 0
          ? 'Nobody is entered in this pattern. Enter the person in the studio, under Workbook.'
          : `Nobody called “${name.trim()}” is entered. There are ${names.join(', ')}.`,
      );
    }
    if (found.length > 1) throw new Refused(`Two people are called “${name.trim()}”. Give one another name.`);
    if (pattern.sizes.length === 0)
      throw new Refused('The pattern has no size to begin from. Add one in the studio, under Sizes.');
    const [person] = found;
    const base = baseOfPerson(pattern, person!);
    if (person!.base !== '' && base !== null && base.id !== person!.base)
      io.stderr.write(
        `${wrap(harmless(`The size that was to lend what “${person!.name.trim()}” has no number of is not in the pattern any more; size ${base.label} lends it now.`), columnsOf(io.stderr)).join('\n')}\n`,
      );
    const { exportPattern } = await import('../services/export.ts');
    const { files, stopped } = await exportPattern(
      study,
      media,
      out,
      {
        terms: [terms ?? pattern.terms],
        papers: [paper],
        editions: ['standard'],
        sizes: [],
        people: found.map(({ id }) => id),
      },
      { signal: io.interruption(), disk: io.disk },
    );
    for (const { path, pages } of files)
      io.stdout.write(`${path}  ${pages} ${pages === 1 ? 'page' : 'pages'}\n`);
    if (stopped === null) return RIGHT;
    if (stopped === 'interrupted') {
      io.stderr.write('turnchain measured: Stopped. No PDF was written.\n');
      return INTERRUPTED;
    }
    throw new Refused(`${stopped.message} No PDF was written.`);
  },
};
