/**
 * A text with its figures filled in: "Ch [back chains]" becomes "Ch 64 (70, 76)", and places in the text find
 * their new places. For lists, findings and machines; printing sets runs of its own. No figure is judged here.
 */
import { FIGURE, type FigureText, type Pattern } from '../document/pattern.ts';
import {
  evaluate,
  type FigureResult,
  type Sheet,
  scheduleWords,
  sizeList,
  spreadWords,
} from '../grading/index.ts';
import { formatLength } from '../trade/units.ts';
import { planForm } from './plan-form.ts';

export interface FilledText {
  readonly text: string;
  /** Where a place of the written text stands in `text`. The end of a figure is the end of its words. */
  readonly place: (offset: number) => number;
}

/** What one size shows for a figure, in the pattern’s units and terms; null where it has no value. */
export function figureInSize(
  expression: string,
  { value, count }: FigureResult,
  pattern: Pattern,
): string | null {
  if (count !== null) return String(count);
  if (value === null) return null;
  switch (value.dimension) {
    case 'schedule':
      return scheduleWords([value.schedule], planForm(expression, pattern));
    case 'spread':
      return spreadWords(value.spread, pattern.terms);
    case 'length':
      return formatLength(value.value, pattern.units);
    default:
      return value.value.toFraction();
  }
}

/** A figure in all sizes; its expression in brackets when no size has a value. */
function figureWords(expression: string, sheet: Sheet, pattern: Pattern): string {
  const results = pattern.sizes.map((_, size) => evaluate(expression, sheet, size));
  const schedules = results.map(({ value }) => (value?.dimension === 'schedule' ? value.schedule : null));
  if (schedules.some((schedule) => schedule !== null))
    return scheduleWords(schedules, planForm(expression, pattern));
  const words = results.map((result) => figureInSize(expression, result, pattern));
  if (words.every((word) => word === null)) return `[${expression.trim() || '?'}]`;
  const same = words.every((word) => word === words[0]);
  if (same || results.every(({ value }) => value?.dimension !== 'spread')) return sizeList(words);
  return pattern.sizes.map(({ label }, size) => `${label}: ${words[size] ?? '–'}`).join('; ');
}

/** Fills a text with the sheet's values. Total: a figure without a value shows its expression. */
export function filledText(text: FigureText, sheet: Sheet, pattern: Pattern): FilledText {
  if (text.figures.length === 0) return { text: text.text, place: (offset) => offset };
  const parts = text.text.split(FIGURE);
  let filled = parts[0]!;
  /** For each figure: where it stood, and how much longer the text is after it. */
  const moves: { readonly after: number; readonly by: number }[] = [];
  let at = filled.length;
  for (let i = 1; i < parts.length; i++) {
    const words = figureWords(text.figures[i - 1] ?? '', sheet, pattern);
    filled += words + parts[i]!;
    moves.push({ after: at, by: words.length - FIGURE.length });
    at += FIGURE.length + parts[i]!.length;
  }
  const place = (offset: number) =>
    moves.reduce((sum, { after, by }) => (offset > after ? sum + by : sum), offset);
  return { text: filled, place };
}
