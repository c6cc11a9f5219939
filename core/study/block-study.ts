/**
 * Brings together what a block came to in every size, and tells what was noticed. It works nothing and judges nothing.
 */
import type { Block, FigureText, Pattern } from '../document/pattern.ts';
import type { Fact } from '../finding.ts';
import { type SizedFact, tell } from '../findings/index.ts';
import type { BlockInSize, BlockStudy } from './piece-study.ts';
import { type Readings, rowBlocks } from './reading.ts';
import type { At } from './sheet-figures.ts';
import { reportFigures, type SizeWork } from './size-work.ts';

/** The study of a block, by its index in the piece. */
export function blockStudy(
  block: Block,
  index: number,
  sizes: readonly SizeWork[],
  readings: Readings,
  at: At,
  telling: { readonly terms: Pattern['terms']; readonly labels: readonly string[] },
): BlockStudy {
  const isWords = block.type === 'prose' || block.type === 'heading' || block.type === 'photo';
  const text = block.type === 'row' || block.type === 'prose' ? block.text : null;
  const facts = new Map<string, SizedFact[]>();
  const report = (node: string, size: number | null, fact: Fact) => {
    const list = facts.get(node);
    if (list === undefined) facts.set(node, [{ size, fact }]);
    else list.push({ size, fact });
  };
  sizes.forEach((size, i) => {
    for (const { node, fact } of size.facts[index]!) report(node, i, fact);
  });
  for (const row of rowBlocks([block]))
    for (const fact of readings.row(row).facts) report(row.id, null, fact);
  if (block.type === 'prose') reportFigures(block.id, block.text, at, report, false);
  const nodes = block.type === 'shaping' ? [block.id, block.shaped.id, block.even.id] : [block.id];
  return {
    block,
    tree: block.type === 'row' ? readings.row(block) : null,
    sizes: isWords ? [] : sizes.map((size) => size.blocks[index] ?? null),
    figures: text === null ? [] : text.figures.map(at),
    findings:
      facts.size === 0
        ? []
        : nodes.flatMap((node) => tell(facts.get(node) ?? [], { ...telling, node, ...textOf(block, node) })),
  };
}

function textOf(block: Block, node: string): { readonly text: string; readonly figures?: readonly string[] } {
  if (block.type === 'row' || block.type === 'prose') return withFigures(block.text);
  if (block.type !== 'shaping') return { text: '' };
  if (node === block.shaped.id) return withFigures(block.shaped.text);
  return node === block.even.id ? withFigures(block.even.text) : { text: block.line };
}

const withFigures = ({ text, figures }: FigureText) => (figures.length === 0 ? { text } : { text, figures });

/** Whether two studies of one block say the same. Those that found anything are told anew. */
export function sameBlock(a: BlockStudy, b: BlockStudy): boolean {
  return (
    a.tree === b.tree &&
    a.findings.length === 0 &&
    b.findings.length === 0 &&
    a.sizes.length === b.sizes.length &&
    a.sizes.every((size, i) => sameInSize(size, b.sizes[i]!)) &&
    a.figures.length === b.figures.length &&
    a.figures.every((values, i) =>
      values.every((value, size) => value.count !== null && value.count === b.figures[i]![size]?.count),
    )
  );
}

function sameInSize(a: BlockInSize | null, b: BlockInSize | null): boolean {
  if (a === null || b === null) return a === b;
  return (
    a.first === b.first &&
    a.last === b.last &&
    a.side === b.side &&
    a.tally === b.tally &&
    a.repeats === b.repeats &&
    a.rows === b.rows
  );
}
