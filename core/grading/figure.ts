/**
 * Figures in rows and prose: short expressions over the sheet's lines ("back stitches − 2") that give each
 * size its number. A figure is a whole number or a length; everything else is a fact.
 */
import type { Fact } from '../finding.ts';
import { type Formula, readFormula } from './formula.ts';
import { asCount, type LineValue, offerOf } from './lines.ts';
import { reckon } from './reckon.ts';
import { lineNamed, type Sheet } from './sheet.ts';
import { lengthData } from './value.ts';
import type { Vocabulary } from './vocabulary.ts';

/** A figure's value for one size. */
export interface FigureResult {
  /** A count, a length (not below zero), or the schedule or spread of a line that is named alone. */
  readonly value: LineValue | null;
  /** The number itself when it is a count; else null. */
  readonly count: number | null;
  readonly facts: readonly Fact[];
  /** Lines without a value that it needs. Their own facts say what is wrong. */
  readonly waitsFor: readonly string[];
}

/** Read expressions by the names they were read with. Only a memory: the same words read the same. */
const compiled = new WeakMap<Vocabulary, Map<string, Formula>>();

/** More expressions than a long pattern has; past it the memory starts afresh. */
const REMEMBERED = 2000;

/** Reads a figure's expression over the sheet's names. The same text gives the identical object. */
export function compileExpression(expression: string, vocabulary: Vocabulary): Formula {
  let known = compiled.get(vocabulary);
  if (!known || known.size >= REMEMBERED) {
    known = new Map<string, Formula>();
    compiled.set(vocabulary, known);
  }
  const formula = known.get(expression) ?? readFormula(expression, vocabulary);
  known.set(expression, formula);
  return formula;
}

/**
 * What an expression comes to for one size of the sheet. Facts carry the places in the expression: what could
 * not be read, and a number that is not whole, below zero, or a percentage. Never throws.
 */
export function evaluate(expression: string | Formula, sheet: Sheet, size: number): FigureResult {
  const formula =
    typeof expression === 'string' ? compileExpression(expression, sheet.vocabulary) : expression;
  const nothing = { value: null, count: null, facts: formula.facts, waitsFor: [] };
  if (!formula.read) return nothing;
  const at = (name: string) => {
    const result = lineNamed(sheet, name);
    const own = result?.sizes[size];
    return result && own ? { line: result.line, own } : null;
  };
  const { tree } = formula;
  const alone = tree.kind === 'line' ? at(tree.name) : null;
  if (alone && (alone.line.kind === 'shaping' || alone.line.kind === 'spread')) {
    const { value } = alone.own;
    return { ...nothing, value, waitsFor: value ? [] : [alone.line.name] };
  }
  const { amount, facts, waitsFor } = reckon(formula, (name) => {
    const found = at(name);
    return found && offerOf(found.line, found.own);
  });
  if (!amount) return { ...nothing, facts, waitsFor };
  const fact = (code: string, data: Fact['data']) => ({
    ...nothing,
    facts: [{ code, from: 0, to: formula.text.length, data }],
  });
  if (amount.dimension === 'length') {
    return amount.value.compare(0) < 0
      ? fact('length-negative', lengthData('value', amount.value))
      : { ...nothing, value: amount };
  }
  const count = asCount(amount);
  if (typeof count !== 'number') return fact(count.code, count.data);
  return { ...nothing, value: { dimension: 'count', value: amount.value }, count };
}
