/** `turnchain pack`: PDFs, listing and pictures for a shop in one archive. A service does the work; nothing is sent. */
import { examine } from '../services/examine.ts';
import { findingLines, hasErrors } from './findings.ts';
import { FINDINGS, INTERRUPTED, Refused, RIGHT } from './io.ts';
import { choicesOf, lastValue, oneFile } from './options.ts';
import { patternAt } from './pattern.ts';
import type { Command } from './run.ts';
import { columnsOf, paintFor, wrap } from './words.ts';

/** Page numbers as typed: "1,3"; an empty list for none. */
function pagesFrom(words: string | null): readonly number[] {
  if (words === null) return [1];
  const numbers = words.split(',').filter((word) => word.trim() !== '');
  return numbers.map((word) => {
    const page = Number(word.trim());
    if (!Number.isInteger(page) || page < 1 || page > 999)
      throw new Refused(`The option --pictures takes page numbers such as 1,3, not “${words}”.`, true);
    return page;
  });
}

export const command: Command = {
  options: {
    out: { type: 'string' },
    terms: { type: 'string' },
    paper: { type: 'string' },
    edition: { type: 'string' },
    pictures: { type: 'string' },
    listing: { type: 'boolean' },
    anyway: { type: 'boolean' },
  },
  run: async (given, io) => {
    const path = oneFile(given, 'a .turnchain file, or - for standard input');
    const out = lastValue(given, 'out');
    if (out === null || out === '')
      throw new Refused('Say where the archive goes: --out and a folder.', true);
    const pages = pagesFrom(lastValue(given, 'pictures'));
    const papers = choicesOf(given, 'paper', ['a4', 'letter'], ['a4', 'letter']);
    const editions = choicesOf(given, 'edition', ['standard', 'large-print', 'ink-saving'], ['standard']);
    const { document, media } = await patternAt(path, io);
    const { pattern, study, findings } = examine(document);
    const terms = choicesOf(given, 'terms', ['us', 'uk'], [pattern.terms]);
    if (hasErrors(findings) && !given.flags.has('anyway')) {
      throw new Refused(
        'The pattern has errors, so nothing was packed; “turnchain check” lists them. Put them right, or pack all the same with --anyway.',
      );
    }
    const { hasPictureTool, pagePictures } = await import('../services/page-pictures.ts');
    const { packPattern } = await import('../services/shop.ts');
    const canPicture = pages.length === 0 || (await hasPictureTool());
    if (!canPicture)
      io.stderr.write(
        'turnchain pack: No pictures of pages: they need the program pdftoppm (of Poppler), which this system does not have. The studio makes them without it.\n',
      );
    const signal = io.interruption();
    const outcome = await packPattern(
      study,
      media,
      out,
      { terms, papers, editions, sizes: [null] },
      async (pdf, _, of) =>
        canPicture
          ? pagePictures(
              pdf,
              pages.filter((page) => page <= of),
              signal,
            )
          : [],
      { signal, disk: io.disk },
    );
    const width = columnsOf(io.stdout);
    for (const { path: at, entries, listing } of outcome.packs) {
      io.stdout.write(`${at}\n${entries.map((name) => `  ${name}\n`).join('')}`);
      if (given.flags.has('listing')) io.stdout.write(`\n${listing}\n`);
    }
    for (const note of outcome.notes) io.stderr.write(`${wrap(note, width).join('\n')}\n`);
    const paint = paintFor(io.stderr, io.env);
    for (const finding of outcome.findings)
      io.stderr.write(
        `${findingLines({ ...finding, from: 0, to: 0 }, null, columnsOf(io.stderr), paint).join('\n')}\n`,
      );
    if (outcome.stopped === 'interrupted') {
      io.stderr.write('turnchain pack: Stopped. Archives that are whole stay.\n');
      return INTERRUPTED;
    }
    if (outcome.stopped !== null) throw new Refused(outcome.stopped.message);
    return hasErrors(findings) || hasErrors(outcome.findings) ? FINDINGS : RIGHT;
  },
};
