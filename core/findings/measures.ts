/**
 * Parts of sentences about edges and measurements: names of edges, the sizes that lines say something of,
 * neighbouring numbers that would fit. Knows nothing of what is wrong.
 */
import type { FactValue } from '../finding.ts';
import type { SizedFact } from './kind.ts';
import { length, listed, number, plain, text, words } from './phrases.ts';

type Data = Readonly<Record<string, FactValue>>;

const EDGES: Readonly<Record<string, string>> = {
  top: 'the last row',
  foundation: 'the foundation edge',
  'row-ends': 'the row-ends',
  opening: 'the opening',
  seam: 'the seam',
};

/** An edge of a piece by its kind: "the row-ends". */
export function edgeName(kind: string): string {
  return EDGES[kind] ?? 'the edge';
}

const AUDIENCES: Readonly<Record<string, string>> = {
  woman: 'women',
  man: 'men',
  child: 'children',
  youth: 'youths',
  baby: 'babies',
  head: 'heads',
  hand: 'hands',
  foot: 'feet',
};

/** Whom a size is for, as a chart is named: "women". */
export function audienceName(data: Data): string {
  return AUDIENCES[text(data, 'audience')] ?? 'this audience';
}

/** "size M", "sizes M and L": the sizes that facts name in their data. */
export function sizesOf(facts: readonly SizedFact[]): string {
  const labels = [...new Set(facts.map(({ fact }) => text(fact.data, 'size')))];
  return `${labels.length === 1 ? 'size' : 'sizes'} ${listed(labels)}`;
}

/** The next numbers below and above that can be worked, with what they make. */
export function neighbours(data: Data): string {
  const sides = (['fewer', 'more'] as const).flatMap((side) =>
    typeof data[side] === 'number' ? [`${number(data, side)} make ${length(data, `${side}Makes`)}`] : [],
  );
  return listed(sides);
}

/** The values that two sizes have, as shown: lengths in both units, else plain numbers. */
export function shownValues(data: Data): readonly string[] {
  const [metric, imperial] = [words(data, 'shown'), words(data, 'shownIn')];
  if (metric.length > 0) return metric.map((shown, i) => `${shown} (${imperial[i]})`);
  const values = data.values;
  return Array.isArray(values) ? values.map((value) => plain(Number(value))) : [];
}
