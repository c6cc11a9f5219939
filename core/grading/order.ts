/**
 * Looks along each line of the sheet for sizes that are out of order or come out equal, and at the sizes
 * themselves: labels used twice, a sample that is not among them. It reports facts and changes nothing.
 */
import type { Size } from '../document/pattern.ts';
import type { Fact } from '../finding.ts';
import { formatLength, toNumber } from '../trade/units.ts';
import type { LineResult, Sheet } from './sheet.ts';
import type { Amount } from './value.ts';

/** A fact about the order of sizes, with the line it was seen at (null for the sizes themselves). */
export interface OrderFact {
  /** Id of the line. */
  readonly line: string | null;
  /** Indexes of the sizes concerned. */
  readonly sizes: readonly number[];
  readonly fact: Fact;
}

/** Every fact about the order of the sizes. `sample` is the id of the size really made. */
export function orderFacts(sheet: Sheet, sample: string | null): readonly OrderFact[] {
  return [
    ...labelFacts(sheet.sizes),
    ...sampleFacts(sheet.sizes, sample),
    ...sheet.lines.flatMap(lineFacts),
    ...twinFacts(sheet),
  ];

  function lineFacts(result: LineResult): OrderFact[] {
    return growthFacts(sheet.sizes, result);
  }
}

const factOf = (code: string, data: Fact['data']): Fact => ({ code, from: 0, to: 0, data });

function labelFacts(sizes: readonly Size[]): OrderFact[] {
  const byLabel = new Map<string, number[]>();
  for (const [index, size] of sizes.entries()) {
    const label = size.label.trim().toLowerCase();
    byLabel.set(label, [...(byLabel.get(label) ?? []), index]);
  }
  return [...byLabel].flatMap(([label, indexes]) => {
    const first = sizes[indexes[0]!]!.label;
    if (label === '') return [{ line: null, sizes: indexes, fact: factOf('size-label-empty', {}) }];
    return indexes.length > 1
      ? [
          {
            line: null,
            sizes: indexes,
            fact: factOf('size-labels-equal', { label: first, times: indexes.length }),
          },
        ]
      : [];
  });
}

function sampleFacts(sizes: readonly Size[], sample: string | null): OrderFact[] {
  if (sizes.length === 0 || sizes.some((size) => size.id === sample)) return [];
  return [{ line: null, sizes: [], fact: factOf('sample-size-missing', { chosen: sample !== null }) }];
}

/** Lines in which a larger size should measure more: from the body, or printed and not an allowance. */
function shouldGrow({ line }: LineResult): boolean {
  if (line.kind === 'body') return true;
  return line.printed !== null && line.kind !== 'ease';
}

/** The number each size compares by: what a fitted line makes, else its value; null for none. */
function amountsOf(result: LineResult): (Amount | null)[] {
  return result.sizes.map(({ value, fitted }) => {
    if (fitted) return { dimension: 'length', value: fitted.got };
    return value && value.dimension !== 'schedule' && value.dimension !== 'spread' ? value : null;
  });
}

/** Whether all sizes that have a value have the same one. */
function isConstant(amounts: readonly (Amount | null)[]): boolean {
  const first = amounts.find((amount) => amount !== null);
  return amounts.every((amount) => amount === null || isEqual(amount, first!));
}

function isEqual(a: Amount, b: Amount): boolean {
  return a.dimension === b.dimension && a.value.equals(b.value);
}

/**
 * A length along the body that was typed: sleeves, depths and heights are often the same in two sizes, as in the
 * charts, and whoever typed them meant it.
 */
function isTypedAlong({ kind, printed }: LineResult['line']): boolean {
  return (
    kind === 'typed' &&
    /\b(?:length|depth|height|sleeves?|armholes?|yoke|cuffs?|brim|hem|neck|rise)\b/iu.test(printed ?? '')
  );
}

/**
 * A value below that of a smaller size is out of order. Equal neighbours are told for printed lines, unless
 * all sizes are equal (a band that is the same for all is meant) and unless it is a body line: the standard
 * charts themselves repeat a figure (the council gives sizes M and L one arm length).
 */
function growthFacts(sizes: readonly Size[], result: LineResult): OrderFact[] {
  if (!shouldGrow(result)) return [];
  const { line } = result;
  const amounts = amountsOf(result);
  const known = amounts.flatMap((amount, index) => (amount ? [{ amount, index }] : []));
  if (isConstant(amounts)) return [];
  return known.slice(1).flatMap(({ amount, index }, position) => {
    const before = known[position]!;
    if (before.amount.dimension !== amount.dimension) return [];
    const order = amount.value.compare(before.amount.value);
    if (order > 0 || (order === 0 && (line.kind === 'body' || isTypedAlong(line)))) return [];
    const pair = [before.index, index];
    const data = {
      line: line.name,
      kind: line.kind,
      dimension: amount.dimension,
      sizes: pair.map((each) => sizes[each]!.label),
      values: pair.map((each) => toNumber(amounts[each]!.value)),
      ...(amount.dimension === 'length'
        ? {
            shown: pair.map((each) => formatLength(amounts[each]!.value, 'metric')),
            shownIn: pair.map((each) => formatLength(amounts[each]!.value, 'imperial')),
          }
        : {}),
    };
    const code = order === 0 ? 'size-values-equal' : 'size-values-out-of-order';
    return [{ line: line.id, sizes: pair, fact: factOf(code, data) }];
  });
}

/**
 * Neighbouring sizes that every printed line makes equal: one of them is not needed. Nothing is said while no
 * printed line differs at all: the sheet is not that far yet.
 */
function twinFacts(sheet: Sheet): OrderFact[] {
  const printed = sheet.lines.filter((result) => result.line.printed !== null && result.line.kind !== 'ease');
  const columns = printed.map(amountsOf).filter((amounts) => amounts.some(Boolean));
  if (columns.every(isConstant)) return [];
  return sheet.sizes.slice(1).flatMap((size, before) => {
    const index = before + 1;
    const isTwin = (amounts: (Amount | null)[]) => {
      const [a, b] = [amounts[before], amounts[index]];
      return a && b && isEqual(a, b);
    };
    if (!columns.every(isTwin)) return [];
    const labels = [sheet.sizes[before]!.label, size.label];
    return [
      {
        line: null,
        sizes: [before, index],
        fact: factOf('sizes-come-out-equal', { sizes: labels, lines: printed.length }),
      },
    ];
  });
}
