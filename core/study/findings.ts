/**
 * Findings of the sizing sheet: what grading noticed, at the line and in the words of the line's formula.
 * Detects nothing itself.
 */
import type { Pattern } from '../document/pattern.ts';
import type { Finding } from '../finding.ts';
import { type SizedFact, tell } from '../findings/index.ts';
import { type LineResult, orderFacts, type Sheet } from '../grading/index.ts';

const told = new WeakMap<LineResult, { labels: string; terms: string; findings: readonly Finding[] }>();

function ofLine(result: LineResult, pattern: Pattern, labels: readonly string[]): readonly Finding[] {
  const key = labels.join('|');
  const known = told.get(result);
  if (known !== undefined && known.labels === key && known.terms === pattern.terms) return known.findings;
  const facts: SizedFact[] = result.facts.map((fact) => ({ size: null, fact }));
  result.sizes.forEach((size, i) => {
    for (const fact of size.facts) facts.push({ size: i, fact });
  });
  const findings = tell(
    facts.map(({ size, fact }) => ({
      size,
      fact: { ...fact, data: { ...fact.data, line: result.line.name } },
    })),
    { terms: pattern.terms, labels, node: result.line.id, text: textOf(result.line) },
  );
  told.set(result, { labels: key, terms: pattern.terms, findings });
  return findings;
}

function textOf(line: LineResult['line']): string {
  switch (line.kind) {
    case 'formula':
      return line.formula;
    case 'stitches':
    case 'rows':
      return line.length;
    default:
      return line.name;
  }
}

/** Findings of every line, and of the sizes' order. */
export function sheetFindings(pattern: Pattern, sheet: Sheet): readonly Finding[] {
  const labels = pattern.sizes.map((size) => size.label);
  const order = orderFacts(sheet, pattern.sample);
  const lineName = (id: string | null) =>
    sheet.lines.find((result) => result.line.id === id)?.line.name ?? '';
  const ordered = order.flatMap(({ line, sizes, fact }) => {
    const [finding] = tell(
      [{ size: null, fact: { ...fact, data: { ...fact.data, line: lineName(line) } } }],
      {
        terms: pattern.terms,
        labels,
        node: line,
        text: lineName(line),
      },
    );
    return finding === undefined ? [] : [{ ...finding, sizes }];
  });
  return [...sheet.lines.flatMap((result) => ofLine(result, pattern, labels)), ...ordered];
}
