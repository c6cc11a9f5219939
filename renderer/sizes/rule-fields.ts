/**
 * A line's rule as a sentence to fill in: words and fields, each field with what it takes. What the sentence says
 * stands in the words; what a field does to the rule stands here.
 */
import type { LineRule } from '../../core/document/attributes.ts';
import type { Gauge, Pattern } from '../../core/document/pattern.ts';
import { bodyChart, bodyCharts, measureName } from '../../core/trade/bodies.ts';
import { LADDER, type Terms } from '../../core/trade/stitches.ts';
import { namesOf } from '../../core/trade/terms.ts';
import { parseQuantity } from '../../core/trade/units.ts';
import { SENTENCES, sizesWords } from '../words/sizes.ts';
import { quantityText } from './quantities.ts';

export type FieldName = Exclude<keyof typeof sizesWords.fields, 'name' | 'printed' | 'note'>;

/** A piece of the sentence: words, or a field. */
export type Part = { readonly words: string } | { readonly field: FieldName };

/** The sentence of a kind of line in its parts. */
export function partsOf(kind: LineRule['kind']): readonly Part[] {
  return SENTENCES[kind]
    .split(/(\{\w+\})/)
    .filter((part) => part !== '')
    .map((part) => (part.startsWith('{') ? { field: part.slice(1, -1) as FieldName } : { words: part }));
}

/** What a field of a rule takes, and what it holds now. */
export type FieldOf =
  | { readonly kind: 'formula'; readonly value: string }
  | {
      readonly kind: 'choice';
      readonly value: string;
      readonly options: readonly (readonly [string, string])[];
    }
  | { readonly kind: 'number'; readonly value: number; readonly least: number; readonly most: number }
  | { readonly kind: 'quantity'; readonly value: string };

type Rule<K extends LineRule['kind']> = Extract<LineRule, { kind: K }>;
const FORMULAS: readonly FieldName[] = ['formula', 'length', 'start', 'end', 'rows', 'changes', 'over'];
/** Fields that may be below zero. */
const SIGNED: readonly FieldName[] = ['plus', 'extra'];
const MOST = 10_000;

/** Measures of the charts that the pattern's sizes are from, else of all charts; the one chosen among them. */
function measuresFor(pattern: Pattern, chosen: string, terms: Terms): readonly (readonly [string, string])[] {
  const own = pattern.sizes.flatMap(({ audience }) => bodyChart(audience) ?? []);
  const charts = own.length > 0 ? own : Object.values(bodyCharts);
  const ids = new Set([chosen, ...charts.flatMap(({ measures }) => measures.map(({ id }) => id))]);
  return [...ids].map((id) => [id, measureName(id, terms)]);
}

/** A gauge by its stitch, converted for the reader; two alike are told apart by their place. */
function gaugeNames(
  gauges: readonly Gauge[],
  terms: Terms,
  say: (text: string) => string,
): readonly (readonly [string, string])[] {
  const names = gauges.map(({ pattern }) => say(pattern.trim()) || sizesWords.unnamedGauge(terms));
  return gauges.map(({ id }, at) => [
    id,
    names.filter((name) => name === names[at]).length > 1 ? `${names[at]} (${at + 1})` : names[at]!,
  ]);
}

/** How a field of this rule is filled in. `say` puts words of the pattern into the reader's terms. */
export function fieldOf(
  rule: LineRule,
  field: FieldName,
  pattern: Pattern,
  terms: Terms,
  say: (text: string) => string,
): FieldOf {
  if (FORMULAS.includes(field))
    return { kind: 'formula', value: String((rule as unknown as Record<string, unknown>)[field] ?? '') };
  switch (field) {
    case 'measure': {
      const { measure } = rule as Rule<'body'>;
      return { kind: 'choice', value: measure, options: measuresFor(pattern, measure, terms) };
    }
    case 'spread': {
      const { values } = rule as Rule<'typed'>;
      return choice('spread', 'all' in values ? 'all' : 'each');
    }
    case 'gauge': {
      const { gauge } = rule as Rule<'stitches'>;
      const known = gaugeNames(pattern.gauges, terms, say);
      const isKnown = known.some(([id]) => id === gauge);
      return {
        kind: 'choice',
        value: gauge,
        options: isKnown ? known : [[gauge, sizesWords.noGauge(terms)], ...known],
      };
    }
    case 'stitch': {
      const { stitch } = rule as Rule<'spread'>;
      const ids = LADDER.includes(stitch as (typeof LADDER)[number]) ? LADDER : [stitch, ...LADDER];
      return {
        kind: 'choice',
        value: stitch,
        options: ids.filter((id) => id !== 'slip').map((id) => [id, namesOf(id, terms).name]),
      };
    }
    case 'tolerance': {
      const { tolerance } = rule as Rule<'stitches'>;
      return { kind: 'quantity', value: tolerance === null ? '' : quantityText(tolerance) };
    }
    case 'bound':
    case 'state':
    case 'rounding':
    case 'parity':
    case 'counts':
    case 'change':
    case 'form':
      return choice(field, String((rule as unknown as Record<string, unknown>)[field]));
    default:
      return {
        kind: 'number',
        value: Number((rule as unknown as Record<string, unknown>)[field]),
        least: SIGNED.includes(field) ? -MOST : 0,
        most: MOST,
      };
  }
}

function choice(field: keyof typeof sizesWords.options, value: string): FieldOf {
  return { kind: 'choice', value, options: Object.entries(sizesWords.options[field]) };
}

/** The rule with a field filled in; null when what was typed cannot stand there. `spread` is the caller's. */
export function ruleWith(rule: LineRule, field: FieldName, typed: string): LineRule | null {
  if (field === 'tolerance') {
    const tolerance = typed.trim() === '' ? null : parseQuantity(typed);
    if (tolerance === null && typed.trim() !== '') return null;
    if (tolerance?.unit === 'none' || tolerance?.unit === '%') return null;
    return { ...rule, tolerance } as LineRule;
  }
  const isNumber = typeof (rule as unknown as Record<string, unknown>)[field] === 'number';
  if (!isNumber) return { ...rule, [field]: typed } as LineRule;
  const number = Number(typed.trim().replace('−', '-'));
  const least = SIGNED.includes(field) ? -MOST : 0;
  if (typed.trim() === '' || !Number.isInteger(number) || number < least || number > MOST) return null;
  return { ...rule, [field]: number } as LineRule;
}

/** The formula that a line's findings point into; null where they point at none. */
export function formulaFieldOf(rule: LineRule): FieldName | null {
  if (rule.kind === 'formula') return 'formula';
  return rule.kind === 'stitches' || rule.kind === 'rows' ? 'length' : null;
}

/** The rule of a projected line, without what every line has. */
export function ruleOf(line: Pattern['lines'][number]): LineRule {
  const { id: _, name: __, printed: ___, note: ____, ...rule } = line;
  return rule;
}
