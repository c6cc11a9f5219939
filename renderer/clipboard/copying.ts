/**
 * What is copied out of the manuscript: clean text as a reader of the pattern would have it, with labels, the
 * figures of all sizes and the counts, in the terms and units on screen. Plain text, and HTML for programs that
 * take it. From the document and the report; the document stays as it is.
 */
import type { Node } from 'prosemirror-model';
import { onlySizes, sharedList } from '../../core/study/labels.ts';
import { kindName } from '../../core/study/rows.ts';
import type { BlockReport } from '../analysis/report.ts';
import type { DeskView } from '../desk/desk.ts';
import { ELSEWHERE } from '../desk/places.ts';
import { inTerms } from '../desk/terms.ts';
import { blockWords } from '../words/blocks.ts';
import { writeWords } from '../words/write.ts';

/** One line of what is copied. */
export interface CopiedLine {
  readonly kind: 'text' | 'title' | 'heading' | 'row';
  /** "Row 3 (RS)"; null where the line has none. */
  readonly label: string | null;
  readonly text: string;
}

/** The lines of a range of the document. */
export function linesOf(view: DeskView, from: number, to: number): readonly CopiedLine[] {
  const lines: CopiedLine[] = [];
  view.document.nodesBetween(from, to, (node, pos, parent) => {
    const name = node.type.name;
    if (ELSEWHERE.has(name)) return false;
    if (name === 'repeat') {
      lines.push(repeatLine(node, view));
      return false;
    }
    if (name === 'shaping') lines.push(shapingLine(node, view));
    if (!node.isTextblock) return true;
    const start = Math.max(from, pos + 1);
    const end = Math.min(to, pos + 1 + node.content.size);
    const isWhole = start === pos + 1 && end === pos + 1 + node.content.size;
    if (node.content.size === 0 || end <= start) return false;
    const words = wordsOf(node.cut(start - pos - 1, end - pos - 1), view);
    if (name === 'row') lines.push(rowLine(node, words, isWhole, view, parent));
    else {
      const isTitle = name === 'title';
      lines.push({
        kind: isTitle ? 'title' : name === 'heading' ? 'heading' : 'text',
        label: null,
        text: words,
      });
    }
    return false;
  });
  return lines;
}

/** Text with each figure as the list of what the sizes show, in the terms and units on screen. */
function wordsOf(node: Node, { report, reading, pattern }: DeskView): string {
  let text = '';
  node.forEach((child) => {
    if (child.isText) {
      text += child.text ?? '';
      return;
    }
    const expression: string = child.attrs.expression ?? '';
    const values = report.figures.get(expression);
    const shown = values?.map((value) => value?.[reading.units] ?? null) ?? [];
    text += shown.every((value) => value === null) ? `[${expression.trim() || '?'}]` : sharedList(shown);
  });
  return inTerms(text, pattern, reading.terms, node.type.name === 'row' ? 'row' : 'mixed').trim();
}

/** The number of stitches at a row's end, as it is printed: of one kind by its name, else all together. */
function countWords(block: BlockReport, view: DeskView): string | null {
  const { counts, byKind } = block;
  if (counts.every((count) => count === null || count === 0)) return null;
  const [only, ...others] = byKind.filter(({ numbers }) => numbers.some((n) => n > 0));
  if (only === undefined || (others.length === 0 && only.id === 'chain')) return null;
  const one = counts.every((count) => count === null || count === 1);
  const noun = others.length === 0 ? kindName(only.id, view.reading.terms) : one ? 'st' : 'sts';
  return `(${sharedList(counts)} ${noun})`;
}

const ENDS_WITH_COUNT = /\(\s*\d[^()]*(?:\([^()]*\)[^()]*)?\)\s*\.?$/u;

function labelOf(block: BlockReport | undefined, node: Node, view: DeskView): string | null {
  if (block?.label == null) return null;
  const sizes = onlySizes(node.attrs.sizes ?? null, view.pattern.sizes);
  return `${sizes === null ? '' : `${sizes}, `}${writeWords.withSide(block.label, block.side)}`;
}

function rowLine(
  node: Node,
  words: string,
  isWhole: boolean,
  view: DeskView,
  parent: Node | null,
): CopiedLine {
  if (!isWhole) return { kind: 'row', label: null, text: words };
  if (parent?.type.name === 'shaping') {
    const which = parent.firstChild === node ? 'shaped' : 'even';
    return { kind: 'row', label: writeWords.ofShaping(which, node.attrs.form === 'round'), text: words };
  }
  const block = view.report.blocks.get(node.attrs.id);
  // Without a report of this very document a number could be an old one.
  const count =
    block === undefined || !view.isReportCurrent || ENDS_WITH_COUNT.test(words)
      ? null
      : countWords(block, view);
  return {
    kind: 'row',
    label: labelOf(block, node, view),
    text: count === null ? words : `${words} ${count}`,
  };
}

function repeatLine(node: Node, view: DeskView): CopiedLine {
  const { report, reading } = view;
  const { first, last, until } = node.attrs;
  const label = (id: string) => report.blocks.get(id)?.label ?? null;
  const expression: string = until.kind === 'times' ? until.times : until.rows;
  const values = report.figures.get(expression)?.map((value) => value?.[reading.units] ?? null) ?? [];
  const shown = values.some((value) => value !== null) ? sharedList(values) : expression;
  const block = report.blocks.get(node.attrs.id);
  const count = block === undefined || !view.isReportCurrent ? null : countWords(block, view);
  const text = blockWords.repeat(label(first), label(last), until.kind, shown);
  return {
    kind: 'row',
    label: labelOf(block, node, view),
    text: count === null ? text : `${text} ${count}`,
  };
}

function shapingLine(node: Node, view: DeskView): CopiedLine {
  const { report, reading, pattern } = view;
  const line = pattern.lines.find(({ name }) => name === node.attrs.line);
  const cells = line === undefined ? [] : (report.lines.get(line.id)?.cells ?? []);
  const values = cells.map((cell, i) => {
    const value = cell.value?.[reading.units] ?? null;
    return value === null ? null : `${pattern.sizes[i]?.label ?? ''}: ${value}`;
  });
  const told = values.filter((value) => value !== null).join('; ');
  const words = told === '' ? null : inTerms(told, pattern, reading.terms, 'row');
  return {
    kind: 'row',
    label: labelOf(report.blocks.get(node.attrs.id), node, view),
    text: blockWords.shaping(node.attrs.line, words),
  };
}

/** As plain text: a line for each; a piece or a heading is set apart. */
export function plainText(lines: readonly CopiedLine[]): string {
  return lines
    .map(({ kind, label, text }, at) => {
      const words = label === null ? text : `${label}: ${text}`;
      const apart = at > 0 && (kind === 'title' || kind === 'heading');
      return apart ? `\n${words}` : words;
    })
    .join('\n');
}

const escaped = (text: string): string =>
  text.replace(
    /[&<>"]/g,
    (sign) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[sign] ?? sign,
  );

/** As HTML: paragraphs and headings, labels in bold. */
export function htmlText(lines: readonly CopiedLine[]): string {
  return lines
    .map(({ kind, label, text }) => {
      const tag = kind === 'title' ? 'h2' : kind === 'heading' ? 'h3' : 'p';
      const words = label === null ? escaped(text) : `<b>${escaped(label)}:</b> ${escaped(text)}`;
      return `<${tag}>${words}</${tag}>`;
    })
    .join('');
}
