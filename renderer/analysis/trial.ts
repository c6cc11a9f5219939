/** An expression that is still being written: what it would show, and what keeps it from showing anything. */
import { FIGURE } from '../../core/document/pattern.ts';
import { type SizedFact, tell } from '../../core/findings/index.ts';
import { evaluate } from '../../core/grading/index.ts';
import type { Study } from '../../core/study/study.ts';
import { figureOf } from './figures.ts';
import type { FigureTrial } from './report.ts';

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
    return figureOf(result, pattern);
  });
  const labels = pattern.sizes.map(({ label }) => label);
  const findings = tell(facts, { terms: pattern.terms, labels, node: null, text: FIGURE });
  return { values, problems: findings.map(({ message }) => message) };
}
