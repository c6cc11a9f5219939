/**
 * What the figures of a pattern show: every expression in its texts and repeats, in every size. An expression is
 * worked out again only when the sheet is another one.
 */
import type { Block, Pattern } from '../../core/document/pattern.ts';
import { evaluate, type FigureResult, type Sheet } from '../../core/grading/index.ts';
import { figureInSize } from '../../core/study/filled.ts';
import { roundPlans } from '../../core/study/plan-form.ts';
import { rowBlocks } from '../../core/study/reading.ts';
import type { Study } from '../../core/study/study.ts';
import type { Terms } from '../../core/trade/stitches.ts';
import type { BothUnits, FigureReport } from './report.ts';

/** A figure in one size: a length reads differently by the reader's units, all else does not. */
export function figureOf(expression: string, value: FigureResult, pattern: Pattern): BothUnits | null {
  const metric = figureInSize(expression, value, { ...pattern, units: 'metric' });
  if (metric === null) return null;
  if (value.value?.dimension !== 'length') return { metric, imperial: metric };
  return { metric, imperial: figureInSize(expression, value, { ...pattern, units: 'imperial' }) ?? metric };
}

/** What an expression shows in every size. */
export function figureReport(expression: string, { sheet, pattern }: Study): FigureReport {
  return sheet.sizes.map((_, size) => figureOf(expression, evaluate(expression, sheet, size), pattern));
}

/** Keeps what was told, and tells the whole table when it differs. */
export class FigureReporter {
  #sheet: Sheet | null = null;
  #terms: Terms | null = null;
  #inRounds = '';
  #known: ReadonlyMap<string, FigureReport> = new Map();

  /** The table of all expressions, or null when it is as it was told before. */
  changed(study: Study): readonly (readonly [string, FigureReport])[] | null {
    const { pattern, sheet } = study;
    const inRounds = [...roundPlans(pattern)].join('|');
    const isSame = sheet === this.#sheet && pattern.terms === this.#terms && inRounds === this.#inRounds;
    const kept = isSame ? this.#known : new Map();
    const next = new Map<string, FigureReport>();
    for (const expression of expressionsIn(pattern))
      next.set(expression, kept.get(expression) ?? figureReport(expression, study));
    const same =
      next.size === this.#known.size && [...next].every(([name, report]) => this.#known.get(name) === report);
    [this.#sheet, this.#terms, this.#inRounds, this.#known] = [sheet, pattern.terms, inRounds, next];
    return same ? null : [...next];
  }
}

const inBlocks = new WeakMap<readonly Block[], ReadonlySet<string>>();

function expressionsOf(blocks: readonly Block[]): ReadonlySet<string> {
  const known = inBlocks.get(blocks);
  if (known !== undefined) return known;
  const found = new Set<string>();
  for (const { text } of rowBlocks(blocks)) for (const expression of text.figures) found.add(expression);
  for (const block of blocks) {
    if (block.type === 'prose') for (const expression of block.text.figures) found.add(expression);
    if (block.type === 'repeat')
      found.add(block.until.kind === 'times' ? block.until.times : block.until.rows);
  }
  inBlocks.set(blocks, found);
  return found;
}

/** Every expression of the pattern once. Pieces that an edit left alone are not looked through again. */
function expressionsIn(pattern: Pattern): ReadonlySet<string> {
  return new Set([
    ...pattern.pieces.flatMap((piece) => [...expressionsOf(piece.blocks)]),
    ...pattern.specials.flatMap(({ text }) => text.figures),
    ...pattern.notes.flatMap(({ figures }) => figures),
    ...pattern.finishing.flatMap(({ figures }) => figures),
  ]);
}
