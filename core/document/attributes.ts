/**
 * The attributes of every kind of node: their shape, their bounds and what a new node starts with. This is
 * the one place that says which values a document may hold; whether they make sense together (a gauge that
 * is named exists, a repeat points at rows above it) is for findings, because a pattern that is half written
 * must still save and open.
 */
import * as z from 'zod';
import { TREE_LIMITS, VALUE_LIMITS } from './limits.ts';
import type { Block, Edge, Line, Media, Meeting, PerSize, PieceStart, Quantity } from './pattern.ts';
import { isId, isPlainText } from './words.ts';
import { type Making, NO_WORKBOOK, type Pricing, type Use } from './workbook.ts';

const text = (max: number) => z.string().max(max).refine(isPlainText, 'holds characters that are not text');
const name = text(VALUE_LIMITS.name);
const sentence = text(VALUE_LIMITS.sentence);
const id = z.string().refine(isId, 'is not an id');
/** An id of something else, or nothing chosen yet. */
const reference = z.union([z.literal(''), id]);
/** A node by its id, or a part without one by its list and place ("notes:0"). */
const part = sentence;
const number = z.number().min(-VALUE_LIMITS.number).max(VALUE_LIMITS.number);
const amount = number.min(0);
const count = z.int().min(0).max(VALUE_LIMITS.number);

const quantity = z.strictObject({
  value: number,
  unit: z.enum(['cm', 'mm', 'in', '%', 'none']),
}) satisfies z.ZodType<Quantity>;

const perSize = <T extends z.ZodType>(value: T) =>
  z.union([z.strictObject({ all: value }), z.strictObject({ each: z.record(id, value) })]);
perSize(quantity) satisfies z.ZodType<PerSize<Quantity>>;

const media = z.strictObject({
  id,
  alt: sentence,
  caption: sentence.nullable(),
}) satisfies z.ZodType<Media>;

const edge = z.strictObject({
  piece: reference,
  kind: z.enum(['top', 'foundation', 'row-ends', 'opening', 'seam']),
  amount: sentence.nullable(),
  which: z.int().min(1).max(1_000),
}) satisfies z.ZodType<Edge>;

const start = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('chain') }),
  z.strictObject({
    kind: z.literal('edges'),
    edges: z.array(edge).max(1_000).readonly(),
    round: z.boolean(),
  }),
]) satisfies z.ZodType<PieceStart>;

const meeting = z.strictObject({ mine: edge, other: edge }) satisfies z.ZodType<Meeting>;

/** What a line computes from: the part of a line that differs by kind. */
export type LineRule = Line extends infer L
  ? L extends Line
    ? Omit<L, 'id' | 'name' | 'printed' | 'note'>
    : never
  : never;

const use = z.strictObject({
  yarn: reference,
  piece: reference,
  grams: amount.nullable(),
  metres: amount.nullable(),
}) satisfies z.ZodType<Use>;

const swatch = z.strictObject({
  stitch: name,
  stitches: count,
  rows: count,
  chains: count,
}) satisfies z.ZodType<Making['swatch']>;

const pricing = z.strictObject({
  currency: z.string().regex(/^([A-Z]{3})?$/),
  hourly: amount.nullable(),
  other: z.array(z.strictObject({ name, amount })).max(100).readonly(),
  profit: z.number().min(0).max(10_000),
  fee: z.number().min(0).max(99),
}) satisfies z.ZodType<Pricing>;

const rounding = z.enum(['nearest', 'up', 'down']);
const rule = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('body'),
    measure: name,
    bound: z.enum(['lower', 'middle', 'upper']),
    overtyped: z.record(id, quantity),
  }),
  z.strictObject({ kind: z.literal('typed'), values: perSize(quantity) }),
  z.strictObject({ kind: z.literal('formula'), formula: sentence }),
  z.strictObject({ kind: z.literal('ease'), values: perSize(quantity) }),
  z.strictObject({
    kind: z.literal('stitches'),
    length: sentence,
    gauge: reference,
    state: z.enum(['relaxed', 'stretched']),
    multiple: count,
    plus: z.int().min(-10_000).max(10_000),
    rounding,
    parity: z.enum(['any', 'even', 'odd']),
    counts: z.enum(['stitches', 'spaces', 'repeats', 'chains']),
    extra: z.int().min(-10_000).max(10_000),
    tolerance: quantity.nullable(),
  }),
  z.strictObject({
    kind: z.literal('rows'),
    length: sentence,
    gauge: reference,
    cycle: count,
    endOn: count,
    before: count,
    rounding,
    tolerance: quantity.nullable(),
  }),
  z.strictObject({
    kind: z.literal('shaping'),
    start: sentence,
    end: sentence,
    rows: sentence,
    perEnd: count,
    ends: count,
    step: count,
  }),
  z.strictObject({
    kind: z.literal('spread'),
    changes: sentence,
    over: sentence,
    change: z.enum(['inc', 'dec']),
    form: z.enum(['flat', 'round']),
    stitch: name,
  }),
]) satisfies z.ZodType<LineRule>;

const until = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('times'), times: sentence }),
  z.strictObject({ kind: z.literal('rows'), rows: sentence }),
  z.strictObject({ kind: z.literal('total'), rows: sentence }),
]) satisfies z.ZodType<Extract<Block, { type: 'repeat' }>['until']>;

const date = z.union([z.literal(''), z.iso.date()]);
const language = z
  .string()
  .max(35)
  .regex(/^[A-Za-z]{2,8}(-[A-Za-z0-9]{1,8})*$/);
const age = z.number().min(0).max(120);

/** One attribute: which values it takes, and what a new node has. */
export interface Attribute<T> {
  readonly values: z.ZodType<T>;
  readonly initial: T;
}

const attribute = <S extends z.ZodType>(values: S, initial: NoInfer<z.infer<S>>): Attribute<z.infer<S>> => ({
  values: values as z.ZodType<z.infer<S>>,
  initial,
});

/** A node's own name within the document; empty until whoever made the node gives it one. */
const ownId = attribute(id, '');
const forSizes = attribute(z.array(id).max(TREE_LIMITS.sizes).readonly().nullable(), null);
const tenCentimetres: Quantity = { value: 10, unit: 'cm' };

/** Attributes by kind of node. A kind that is not listed has none. */
export const ATTRIBUTES = {
  doc: {
    terms: attribute(z.enum(['us', 'uk']), 'us'),
    units: attribute(z.enum(['metric', 'imperial']), 'metric'),
    /** Words that spelling takes for right in this pattern. */
    words: attribute(z.array(name).max(TREE_LIMITS.items).readonly(), []),
  },
  cover: {
    designer: attribute(name, ''),
    level: attribute(z.union([z.literal(1), z.literal(2), z.literal(3), z.literal(4)]), 1),
    garment: attribute(name, ''),
    cover: attribute(media.nullable(), null),
    version: attribute(name, ''),
    date: attribute(date, ''),
    language: attribute(language, 'en'),
  },
  sizing: {
    sample: attribute(id.nullable(), null),
    tolerance: attribute(quantity, { value: 2, unit: 'cm' }),
  },
  size: {
    id: ownId,
    label: attribute(name, ''),
    audience: attribute(
      z.enum(['woman', 'man', 'child', 'youth', 'baby', 'head', 'hand', 'foot', 'other']),
      'other',
    ),
    chart: attribute(name.nullable(), null),
    age: attribute(z.tuple([age, age]).readonly().nullable(), null),
  },
  line: {
    id: ownId,
    name: attribute(name, ''),
    printed: attribute(name.nullable(), null),
    note: attribute(sentence.nullable(), null),
    rule: attribute(rule, { kind: 'typed', values: { each: {} } }),
  },
  gauge: {
    id: ownId,
    pattern: attribute(name, ''),
    stitches: attribute(amount, 0),
    rows: attribute(amount, 0),
    width: attribute(quantity, tenCentimetres),
    height: attribute(quantity, tenCentimetres),
    blocked: attribute(z.boolean(), true),
    stretch: attribute(z.strictObject({ lies: quantity, worn: quantity }).nullable(), null),
    hook: attribute(id.nullable(), null),
    rounds: attribute(z.boolean(), false),
  },
  yarn: {
    id: ownId,
    key: attribute(name.nullable(), null),
    name: attribute(name, ''),
    weight: attribute(z.int().min(0).max(7).nullable(), null),
    fibre: attribute(name, ''),
    ballGrams: attribute(amount.nullable(), null),
    ballMetres: attribute(amount.nullable(), null),
    ballPrice: attribute(amount.nullable(), null),
    metres: attribute(z.record(id, amount), {}),
  },
  hook: { id: ownId, mm: attribute(z.number().min(0).max(100), 0), purpose: attribute(name, '') },
  notion: {
    id: ownId,
    name: attribute(name, ''),
    amount: attribute(perSize(amount).nullable(), null),
    smallPart: attribute(z.boolean(), false),
    cord: attribute(z.boolean(), false),
    price: attribute(amount.nullable(), null),
  },
  abbreviation: { short: attribute(name, ''), meaning: attribute(sentence, '') },
  special: {
    id: ownId,
    nameUs: attribute(name, ''),
    nameUk: attribute(name, ''),
    abbrUs: attribute(name, ''),
    abbrUk: attribute(name, ''),
  },
  piece: {
    id: ownId,
    make: attribute(z.int().min(0).max(1_000), 1),
    start: attribute(start, { kind: 'chain' }),
    firstSide: attribute(z.enum(['RS', 'WS']).nullable(), 'RS'),
    gauge: attribute(reference, ''),
    meets: attribute(z.array(meeting).max(1_000).readonly(), []),
  },
  row: {
    id: ownId,
    sizes: forSizes,
    form: attribute(z.enum(['row', 'round', 'foundation']), 'row'),
    title: attribute(name.nullable(), null),
  },
  repeat: {
    id: ownId,
    first: attribute(reference, ''),
    last: attribute(reference, ''),
    until: attribute(until, { kind: 'times', times: '1' }),
    sizes: forSizes,
  },
  shaping: { id: ownId, line: attribute(name, ''), sizes: forSizes },
  prose: { id: ownId, sizes: forSizes },
  heading: { id: ownId },
  photo: { id: ownId, media: attribute(media, { id: '', alt: '', caption: null }) },
  figure: { expression: attribute(sentence, '') },
  chart: {
    id: ownId,
    piece: attribute(reference, ''),
    first: attribute(reference, ''),
    last: attribute(reference, ''),
    size: attribute(reference, ''),
    title: attribute(name, ''),
  },
  workbook: {
    yarnMargin: attribute(z.number().min(0).max(1_000), NO_WORKBOOK.yarnMargin),
    pricing: attribute(pricing, NO_WORKBOOK.pricing),
  },
  making: {
    id: ownId,
    kind: attribute(z.enum(['sample', 'tester', 'swatch']), 'sample'),
    by: attribute(name, ''),
    size: attribute(reference, ''),
    state: attribute(z.enum(['asked', 'working', 'finished']), 'finished'),
    used: attribute(z.array(use).max(TREE_LIMITS.items).readonly(), []),
    hours: attribute(amount.nullable(), null),
    swatch: attribute(swatch.nullable(), null),
    measured: attribute(z.record(id, quantity), {}),
    note: attribute(sentence, ''),
  },
  person: {
    id: ownId,
    name: attribute(name, ''),
    base: attribute(reference, ''),
    values: attribute(z.record(id, quantity), {}),
    note: attribute(sentence, ''),
  },
  acceptance: {
    code: attribute(name, ''),
    node: attribute(part, ''),
    words: attribute(sentence, ''),
    reason: attribute(sentence, ''),
    date: attribute(date, ''),
  },
  doubt: { node: attribute(part, ''), why: attribute(sentence, '') },
} as const satisfies Record<string, Record<string, Attribute<never> | Attribute<unknown>>>;

/** Kinds of node that carry attributes. */
export type Attributed = keyof typeof ATTRIBUTES;

/** The attributes of one kind of node, as values. */
export type AttributesOf<K extends Attributed> = {
  readonly [A in keyof (typeof ATTRIBUTES)[K]]: (typeof ATTRIBUTES)[K][A] extends Attribute<infer T>
    ? T
    : never;
};
