/**
 * A line's new name in the words of formulas that name it: only the words of the name are replaced, wherever and
 * however they were written. Which texts of a pattern hold formulas is not known here.
 */
import { compileExpression } from './figure.ts';
import type { Vocabulary } from './vocabulary.ts';

/** Whether an expression names the line. */
export function namesLine(expression: string, vocabulary: Vocabulary, name: string): boolean {
  return compileExpression(expression, vocabulary).names.includes(name);
}

/** The expression with another name for the line `from`; the same string where it does not name it. */
export function renamedIn(expression: string, vocabulary: Vocabulary, from: string, to: string): string {
  const { mentions } = compileExpression(expression, vocabulary);
  let renamed = '';
  let at = 0;
  for (const mention of mentions) {
    if (mention.name !== from) continue;
    renamed += expression.slice(at, mention.from) + to;
    at = mention.to;
  }
  return renamed === '' ? expression : renamed + expression.slice(at);
}
