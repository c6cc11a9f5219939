/** `turnchain compare`: what changed in the instructions between two versions, as text, JSON, or a sheet for buyers. */
import { basename, extname } from 'node:path';
import { project } from '../../core/document/project.ts';
import type { Errata } from '../../core/print/errata/errata.ts';
import { betweenWords, errataNotes, erratumHead } from '../../core/print/errata/sheet.ts';
import { study } from '../../core/study/study.ts';
import type { Terms } from '../../core/trade/stitches.ts';
import { replaceFile } from '../services/files.ts';
import { FINDINGS, type Io, Refused, RIGHT } from './io.ts';
import { choiceOf, lastValue } from './options.ts';
import { patternAt } from './pattern.ts';
import type { Command } from './run.ts';
import { columnsOf, harmless, wrap } from './words.ts';

/** The errata for people. */
function errataWords(errata: Errata, terms: Terms, io: Io): string {
  const width = columnsOf(io.stdout);
  const say = (words: string, indent: string) =>
    wrap(harmless(words), width - indent.length).map((line) => `${indent}${line}`);
  const out = [harmless(`${errata.title}: ${betweenWords(errata, terms).replaceAll('\u00A0', ' ')}`)];
  if (errata.errata.length === 0) out.push('Nothing in the instructions has changed.');
  let part = '';
  for (const erratum of errata.errata) {
    if (erratum.part !== part) out.push('', harmless(erratum.part));
    part = erratum.part;
    const head = erratumHead(erratum);
    if (head !== '') out.push(...say(head, '  '));
    if (erratum.was !== null) out.push(...say(`was: ${erratum.was}`, '    '));
    if (erratum.read !== null)
      out.push(...say(`${erratum.was === null ? 'add' : 'read'}: ${erratum.read}`, '    '));
  }
  return `${out.join('\n')}\n`;
}

export const command: Command = {
  options: {
    out: { type: 'string' },
    terms: { type: 'string' },
    paper: { type: 'string' },
    json: { type: 'boolean' },
  },
  run: async (given, io) => {
    const [older, newer, more] = given.operands.map(({ text }) => text);
    if (older === undefined || newer === undefined || more !== undefined)
      throw new Refused('Say two files: the version that buyers have, then the new one.', true);
    if (older === '-' && newer === '-')
      throw new Refused('Only one of the two can come from standard input.', true);
    const [before, after] = [await patternAt(older, io), await patternAt(newer, io)].map(({ document }) =>
      study(project(document)),
    ) as [ReturnType<typeof study>, ReturnType<typeof study>];
    const terms = choiceOf(given, 'terms', ['us', 'uk']) ?? after.pattern.terms;
    const paper = choiceOf(given, 'paper', ['a4', 'letter']) ?? 'a4';
    const { errataOf, errataPdf } = await import('../services/errata.ts');
    const errata = errataOf(before, after, terms);
    const out = lastValue(given, 'out');
    if (out !== null) {
      if (out === '') throw new Refused('Say where the errata sheet goes: --out errata.pdf.', true);
      const path = extname(out) === '' ? `${out}.pdf` : out;
      const { pdf, pages } = await errataPdf(
        errata,
        terms,
        after.pattern.about.designer.trim(),
        paper,
        io.interruption(),
      );
      const fault = await replaceFile(path, pdf, io.disk);
      if (fault !== null) throw new Refused(`${basename(path)}: ${fault.message}`);
      io.stderr.write(`${path}  ${pages} ${pages === 1 ? 'page' : 'pages'}\n`);
    }
    // How many there are is seen from the list itself.
    for (const note of errataNotes(errata).slice(1))
      io.stderr.write(`${wrap(note, columnsOf(io.stderr)).join('\n')}\n`);
    io.stdout.write(
      given.flags.has('json') ? `${JSON.stringify({ terms, ...errata })}\n` : errataWords(errata, terms, io),
    );
    return errata.errata.length > 0 ? FINDINGS : RIGHT;
  },
};
