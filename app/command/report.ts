/** `turnchain report`: the technical edit for a human editor, as a PDF or as JSON. Reads the choices; the core makes the report. */
import { reportOf } from '../../core/review/report.ts';
import { examine } from '../services/examine.ts';
import { replaceFile } from '../services/files.ts';
import { hasErrors } from './findings.ts';
import { FINDINGS, Refused, RIGHT } from './io.ts';
import { choicesOf, lastValue, oneFile } from './options.ts';
import { patternAt } from './pattern.ts';
import type { Command } from './run.ts';

export const command: Command = {
  options: { out: { type: 'string' }, terms: { type: 'string' }, paper: { type: 'string' } },
  run: async (given, io) => {
    const path = oneFile(given, 'a .turnchain file, or - for standard input');
    const out = lastValue(given, 'out');
    const ending = /\.(pdf|json)$/iu.exec(out ?? '')?.[1]?.toLowerCase();
    if (out === null || ending === undefined)
      throw new Refused('Say where the report goes: --out and a name that ends in .pdf or .json.', true);
    const terms = choicesOf(given, 'terms', ['us', 'uk'], []);
    const papers = choicesOf(given, 'paper', ['a4', 'letter'], ['a4']);
    const { document } = await patternAt(path, io);
    const { study, findings, pattern } = examine(document);
    const choice = { terms: terms.at(-1) ?? pattern.terms, paper: papers.at(-1) ?? 'a4' } as const;
    const bytes =
      ending === 'json'
        ? new TextEncoder().encode(`${JSON.stringify(reportOf(study, choice.terms), null, 2)}\n`)
        : await pdfOf(study, choice);
    const fault = await replaceFile(out, bytes, io.disk);
    if (fault !== null) throw new Refused(fault.message);
    io.stdout.write(`${out}\n`);
    return hasErrors(findings) ? FINDINGS : RIGHT;
  },
};

async function pdfOf(
  study: ReturnType<typeof examine>['study'],
  choice: { readonly terms: 'us' | 'uk'; readonly paper: 'a4' | 'letter' },
): Promise<Uint8Array> {
  const { printPattern } = await import('../services/export.ts');
  const { pdf } = await printPattern(study, new Map(), {
    ...choice,
    edition: 'standard',
    size: null,
    report: true,
  });
  return pdf;
}
