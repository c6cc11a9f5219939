/** `turnchain report`: the technical edit for a human editor, as a PDF or as JSON. Reads the choices; the core makes the report. */
import type { Finding } from '../../core/finding.ts';
import { type EditorReport, reportOf } from '../../core/review/report.ts';
import { examine } from '../services/examine.ts';
import { replaceFile } from '../services/files.ts';
import { findingLines, hasErrors } from './findings.ts';
import { FINDINGS, Refused, RIGHT } from './io.ts';
import { choicesOf, lastValue, oneFile } from './options.ts';
import { patternAt } from './pattern.ts';
import type { Command } from './run.ts';
import { columnsOf, paintFor } from './words.ts';

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
    const { bytes, unprinted } =
      ending === 'json'
        ? { bytes: jsonOf(reportOf(study, choice.terms)), unprinted: [] }
        : await pdfOf(study, choice);
    const fault = await replaceFile(out, bytes, io.disk);
    if (fault !== null) throw new Refused(fault.message);
    io.stdout.write(`${out}\n`);
    const paint = paintFor(io.stderr, io.env);
    for (const finding of unprinted) {
      const shown = { ...finding, from: 0, to: 0 };
      io.stderr.write(`${findingLines(shown, null, columnsOf(io.stderr), paint).join('\n')}\n`);
    }
    return hasErrors(findings) ? FINDINGS : RIGHT;
  },
};

const jsonOf = (report: EditorReport): Uint8Array =>
  new TextEncoder().encode(`${JSON.stringify(report, null, 2)}\n`);

/** The PDF, with what of its words the fonts cannot print: a reason in other letters would be left out in silence. */
async function pdfOf(
  study: ReturnType<typeof examine>['study'],
  choice: { readonly terms: 'us' | 'uk'; readonly paper: 'a4' | 'letter' },
): Promise<{ readonly bytes: Uint8Array; readonly unprinted: readonly Finding[] }> {
  const { printPattern } = await import('../services/export.ts');
  const { pdf, findings } = await printPattern(study, new Map(), {
    ...choice,
    edition: 'standard',
    size: null,
    report: true,
  });
  return { bytes: pdf, unprinted: findings };
}
