/** An expression or a line that is still being written: what it would come to, and what keeps it from that. */
import type { LineRule } from '../../core/document/attributes.ts';
import { FIGURE } from '../../core/document/pattern.ts';
import { type SizedFact, tell } from '../../core/findings/index.ts';
import { evaluate, gradeSheet } from '../../core/grading/index.ts';
import { sheetFindings } from '../../core/study/findings.ts';
import type { Study } from '../../core/study/study.ts';
import { figureOf } from './figures.ts';
import type { FigureTrial, LineTrial } from './report.ts';
import { cellOf } from './reporter.ts';

/** Tries an expression over the study's sheet. Total. */
export function trialOf(expression: string, { sheet, pattern }: Study): FigureTrial {
  const facts: SizedFact[] = [];
  const values = sheet.sizes.map((_, size) => {
    const result = evaluate(expression, sheet, size);
    const at = { from: 0, to: 1 };
    for (const fact of result.facts)
      facts.push({ size, fact: { ...fact, ...at, data: { ...fact.data, figure: expression } } });
    if (result.waitsFor.length > 0) {
      const data = { figure: expression, lines: result.waitsFor };
      facts.push({ size, fact: { code: 'figure-waits', ...at, data } });
    }
    return figureOf(expression, result, pattern);
  });
  const labels = pattern.sizes.map(({ label }) => label);
  const findings = tell(facts, { terms: pattern.terms, labels, node: null, text: FIGURE });
  return { values, problems: findings.map(({ message }) => message) };
}

/** Tries a rule for a line of the study's sheet. Total; a line that is not there has no cells. */
export function lineTrialOf(id: string, rule: LineRule, { sheet, pattern }: Study): LineTrial {
  const lines = pattern.lines.map((line) => {
    const { name, printed, note } = line;
    return line.id === id ? { id, name, printed, note, ...rule } : line;
  });
  const tried = gradeSheet(pattern.sizes, lines, pattern.gauges, pattern.tolerance, sheet);
  const result = tried.lines.find(({ line }) => line.id === id);
  return {
    cells: result?.sizes.map((size) => cellOf(size, result, pattern)) ?? [],
    problems: sheetFindings({ ...pattern, lines }, tried).filter(({ where }) => where.node === id),
  };
}
