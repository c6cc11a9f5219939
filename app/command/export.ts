/** `turnchain export`: a pattern as PDFs. Reads the choices, shows the progress and lists the files; a service does the work. */
import type { Edition } from '../../core/print/style.ts';
import { examine } from '../services/examine.ts';
import type { ExportProgress, ExportWatch } from '../services/export.ts';
import { checkWords } from './check.ts';
import { findingLines, hasErrors } from './findings.ts';
import { FINDINGS, INTERRUPTED, type Io, Refused, RIGHT } from './io.ts';
import { choicesOf, lastValue, oneFile } from './options.ts';
import { patternAt } from './pattern.ts';
import type { Command } from './run.ts';
import { apart, sizesOf } from './sizes.ts';
import { columnsOf, cut, paintFor } from './words.ts';

const EDITIONS: Readonly<Record<'standard' | 'large' | 'large-print' | 'ink-saving', Edition>> = {
  standard: 'standard',
  large: 'large-print',
  'large-print': 'large-print',
  'ink-saving': 'ink-saving',
};

/** A line that is written over and over while a person watches, and taken away at the end. */
function progressLine({ stderr }: Io): { watch: Pick<ExportWatch, 'progress'>; end: () => void } {
  if (!stderr.isTTY) return { watch: {}, end: () => undefined };
  const clear = '\r\u001B[K';
  const show = ({ number, of, item, page, pages }: ExportProgress) => {
    const how = pages === 0 ? '' : ` ${page}/${pages}`;
    stderr.write(clear + cut(`[${number}/${of}] ${item.file}${how}`, columnsOf(stderr) - 1));
  };
  return { watch: { progress: show }, end: () => stderr.write(clear) };
}

export const command: Command = {
  options: {
    out: { type: 'string' },
    terms: { type: 'string' },
    paper: { type: 'string' },
    sizes: { type: 'string' },
    edition: { type: 'string' },
    anyway: { type: 'boolean' },
  },
  run: async (given, io) => {
    const { files, sizes } = apart(given);
    const path = oneFile(files, 'a .turnchain file, or - for standard input');
    const out = lastValue(given, 'out');
    if (out === null || out === '') throw new Refused('Say where the PDFs go: --out and a folder.', true);
    const terms = choicesOf(given, 'terms', ['us', 'uk'], []);
    const papers = choicesOf(given, 'paper', ['a4', 'letter'], ['a4']);
    const names = choicesOf(given, 'edition', Object.keys(EDITIONS) as (keyof typeof EDITIONS)[], [
      'standard',
    ]);
    const { document, media } = await patternAt(path, io);
    const examined = examine(document);
    const { pattern, study, findings } = examined;
    const choices = {
      terms: terms.length > 0 ? terms : [pattern.terms],
      papers,
      editions: [...new Set(names.map((name) => EDITIONS[name]))],
      sizes: sizesOf(sizes, pattern),
    };
    const wrong = hasErrors(findings);
    if (wrong && !given.flags.has('anyway')) {
      const errors = findings.filter(({ severity }) => severity === 'error');
      io.stderr.write(checkWords({ ...examined, findings: errors }, io.stderr, io.env, false));
      io.stderr.write('Nothing was exported: put the errors right, or export all the same with --anyway.\n');
      return FINDINGS;
    }
    const signal = io.interruption();
    const { exportPattern } = await import('../services/export.ts');
    const line = progressLine(io);
    const outcome = await exportPattern(study, media, out, choices, { ...line.watch, signal, disk: io.disk });
    line.end();
    for (const { path: at, pages } of outcome.files) {
      io.stdout.write(`${at}  ${pages} ${pages === 1 ? 'page' : 'pages'}\n`);
    }
    const paint = paintFor(io.stderr, io.env);
    for (const finding of outcome.findings) {
      const shown = { ...finding, from: 0, to: 0 };
      io.stderr.write(`${findingLines(shown, null, columnsOf(io.stderr), paint).join('\n')}\n`);
    }
    if (outcome.stopped === 'interrupted') {
      io.stderr.write(`turnchain export: Stopped. ${wholeFiles(outcome.files.length)}\n`);
      return INTERRUPTED;
    }
    if (outcome.stopped !== null) {
      throw new Refused(`${outcome.stopped.message} ${wholeFiles(outcome.files.length)}`);
    }
    if (wrong) {
      io.stderr.write('turnchain export: The pattern has errors; “turnchain check” lists them.\n');
      return FINDINGS;
    }
    return hasErrors(outcome.findings) ? FINDINGS : RIGHT;
  },
};

const wholeFiles = (n: number): string =>
  n === 0
    ? 'No PDF was written.'
    : `${n} ${n === 1 ? 'PDF was' : 'PDFs were'} written before and ${n === 1 ? 'is' : 'are'} whole.`;
