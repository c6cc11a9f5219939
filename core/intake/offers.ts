/**
 * Where numbers that a maker typed for every size are those of a line of the sizing sheet, and so could be figures.
 * It offers; nothing is changed until the maker takes an offer. Counts at the ends of rows are not offered: they are
 * computed.
 */
import { FIGURE, type FigureText, type Pattern } from '../document/pattern.ts';
import type { Span } from '../finding.ts';
import { evaluate, lineNamed, type Sheet } from '../grading/index.ts';
import type { Amount } from '../notation/tree.ts';
import { rowBlocks, type Study } from '../study/index.ts';
import { toCm } from '../trade/units.ts';
import { numbersIn } from './numbers.ts';

/** Words of a text that could be a figure. */
export interface Offer extends Span {
  /** The row or paragraph, by its id. */
  readonly node: string;
  /** The line, by its name: the expression of the figure. */
  readonly line: string;
  /** The words as typed: "64 (70, 76)". */
  readonly text: string;
}

/** What every line comes to, as one key for all sizes; only lines whose sizes differ. */
function linesByValues(sheet: Sheet): ReadonlyMap<string, string> {
  const lines = new Map<string, string>();
  for (const { line } of sheet.lines) {
    if (line.kind === 'shaping' || line.kind === 'spread' || line.name.trim() === '') continue;
    if (lineNamed(sheet, line.name)?.line !== line) continue;
    const values = sheet.sizes.map((_, size) => evaluate(line.name, sheet, size).value);
    const keys = values.map((value) =>
      value === null || (value.dimension !== 'count' && value.dimension !== 'length')
        ? null
        : `${value.dimension} ${value.value.toFraction()}`,
    );
    if (keys.some((key) => key === null) || new Set(keys).size < 2) continue;
    const key = keys.join(' | ');
    // The first line of the sheet that has the values is the one a maker thinks of.
    if (!lines.has(key)) lines.set(key, line.name);
  }
  return lines;
}

/** Lists for all sizes anywhere in a part of a tree. */
function listsIn(part: unknown, found: Extract<Amount, { kind: 'sizes' }>[] = []): typeof found {
  if (Array.isArray(part)) for (const one of part) listsIn(one, found);
  else if (typeof part === 'object' && part !== null) {
    const { kind, values } = part as { kind?: unknown; values?: unknown };
    if (kind === 'sizes' && Array.isArray(values)) found.push(part as (typeof found)[number]);
    else for (const one of Object.values(part)) listsIn(one, found);
  }
  return found;
}

/** Everything in a pattern that could be a figure, in its order. */
export function offersIn({ pattern, sheet, readings }: Study): readonly Offer[] {
  const sizes = pattern.sizes.length;
  if (sizes < 2) return [];
  const lines = linesByValues(sheet);
  if (lines.size === 0) return [];
  const offers: Offer[] = [];
  for (const { blocks } of pattern.pieces) {
    for (const row of rowBlocks(blocks)) {
      const seen = new Set<number>();
      for (const { values, from, to } of listsIn(readings.row(row).items)) {
        if (values.length !== sizes || seen.has(from)) continue;
        seen.add(from);
        const line = lines.get(values.map((value) => `count ${value}`).join(' | '));
        if (line !== undefined)
          offers.push({ node: row.id, from, to, line, text: row.text.text.slice(from, to) });
      }
    }
    for (const block of blocks) {
      if (block.type !== 'prose') continue;
      const { text } = block.text;
      for (const { values, unit, from, to } of numbersIn(text)) {
        if (values.length !== sizes || values.some((value) => value === null)) continue;
        const key = values.map((value) =>
          unit === 'none' ? `count ${value}` : `length ${toCm(value!, unit)?.toFraction()}`,
        );
        const line = lines.get(key.join(' | '));
        if (line !== undefined) offers.push({ node: block.id, from, to, line, text: text.slice(from, to) });
      }
    }
  }
  return offers.sort((a, b) => (a.node === b.node ? a.from - b.from : 0));
}

/** A text with figures in the place of the words of its offers. */
function withFigures({ text, figures }: FigureText, offers: readonly Offer[]): FigureText {
  let words = '';
  const own: string[] = [];
  let at = 0;
  let figure = 0;
  const copy = (to: number): void => {
    const part = text.slice(at, to);
    for (const sign of part) if (sign === FIGURE) own.push(figures[figure++] ?? '');
    words += part;
  };
  for (const offer of [...offers].sort((a, b) => a.from - b.from)) {
    if (offer.from < at) continue;
    copy(offer.from);
    words += FIGURE;
    own.push(offer.line);
    at = offer.to;
  }
  copy(text.length);
  return { text: words, figures: own };
}

/** The pattern with the offers taken. */
export function takeOffers(pattern: Pattern, offers: readonly Offer[]): Pattern {
  const byNode = new Map<string, Offer[]>();
  for (const offer of offers) byNode.set(offer.node, [...(byNode.get(offer.node) ?? []), offer]);
  if (byNode.size === 0) return pattern;
  return {
    ...pattern,
    pieces: pattern.pieces.map((piece) => ({
      ...piece,
      blocks: piece.blocks.map((block) => {
        const own = byNode.get(block.id);
        return own === undefined || (block.type !== 'row' && block.type !== 'prose')
          ? block
          : { ...block, text: withFigures(block.text, own) };
      }),
    })),
  };
}
