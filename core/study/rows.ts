/**
 * Plain written rows, read, worked and reported: what the command line prints for a text that is no pattern
 * file yet. Runs the same reader and the same engine as a pattern; holds no rule of its own.
 */
import {
  beginsAfresh,
  type Env,
  type PieceRecord,
  PieceWork,
  type RowResult,
  type Tracer,
  type Written,
  worksTurningChain,
} from '../fabric/index.ts';
import type { Fact, Finding } from '../finding.ts';
import { type SizedFact, tell } from '../findings/index.ts';
import { readText } from '../notation/index.ts';
import type {
  Amount,
  Convention,
  Definition,
  Item,
  PieceTree,
  RowTree,
  SizeFilter,
  TextTree,
} from '../notation/tree.ts';
import type { Terms } from '../trade/stitches.ts';
import { stitchAbbreviation } from '../trade/terms.ts';

/** A finding with its place in the text; `sizes` are indexes in the order in which sizes are listed. */
export interface ReportFinding {
  readonly code: string;
  readonly severity: Finding['severity'];
  readonly from: number;
  readonly to: number;
  readonly sizes: readonly number[];
  readonly message: string;
}

export interface ReportRow {
  /** The label as written, or "" when the row has none. */
  readonly label: string;
  readonly kind: 'row' | 'round' | 'foundation' | 'set-up' | 'next' | 'none';
  /** Where the row stands in the text. */
  readonly from: number;
  readonly to: number;
  readonly text: string;
  /** First and last row number it makes, one pair a size; null where it makes none. */
  readonly numbers: readonly (readonly [number, number] | null)[];
  /** False when a part of the row was not understood. */
  readonly read: boolean;
  /** Stitches of the finished row, one number a size; null where the size does not work it. */
  readonly counts: readonly (number | null)[];
  /** Stitches by the author's abbreviation; they add up to `counts`. */
  readonly byKind: Readonly<Record<string, readonly number[]>>;
  /** Chain-spaces. */
  readonly spaces: readonly (number | null)[];
  /** Passes of the row's main repeat. */
  readonly repeats: readonly (number | null)[];
  /** Special stitches (shells, V-stitches …) by name. */
  readonly units: Readonly<Record<string, readonly number[]>>;
  readonly findings: readonly ReportFinding[];
}

export interface RowsReport {
  readonly terms: Terms;
  readonly rows: readonly ReportRow[];
  /** Findings that belong to no row. */
  readonly findings: readonly ReportFinding[];
}

/** Reads `text` in the given terms and works every row in every size written in it. Total. */
export function reportRows(text: string, terms: Terms): RowsReport {
  return reportTree(readText(text, { terms }), text, terms);
}

/**
 * The report of a text that has been read already, for who wants its headings and sizes, too. `trace` records the
 * rows of the first size.
 */
export function reportTree(
  tree: TextTree,
  text: string,
  terms: Terms,
  trace: Tracer | null = null,
): RowsReport {
  const sizes = sizesOf(tree);
  const labels = tree.sizes ?? Array.from({ length: sizes }, (_, i) => String(i + 1));
  const telling = { terms, labels, node: null, text };
  const rows: ReportRow[] = [];
  const records: Map<string, PieceRecord>[] = Array.from({ length: sizes }, () => new Map());
  const loose: SizedFact[] = tree.facts.map((fact) => ({ size: null, fact }));
  const definitions: Definition[] = [];
  const conventions: Convention[] = [];
  const numberedAfresh = new Set<RowTree>();
  const pieces = tree.pieces.map((piece) => ({ ...piece, rows: othersNamed(piece.rows) }));
  for (const piece of joinedSections(pieces, numberedAfresh)) {
    definitions.push(...piece.definitions);
    conventions.push(...piece.conventions);
    for (const definition of piece.definitions)
      for (const fact of definition.facts) loose.push({ size: null, fact });
    const worked = Array.from({ length: sizes }, (_, size) =>
      workPiece(
        piece,
        size,
        sizes,
        labels,
        definitions,
        conventions,
        records[size]!,
        size === 0 ? trace : null,
      ),
    );
    piece.rows.forEach((row, i) => {
      rows.push(
        reportRow(
          row,
          worked.map((results) => (numberedAfresh.has(row) ? withoutNumber(results[i]!) : results[i]!)),
          text,
          terms,
          telling,
          sizes,
          definitions,
        ),
      );
    });
  }
  return { terms, rows, findings: tell(loose, telling).map(placed) };
}

/**
 * Sections under a heading of their own ("First Side", "Shape Armholes") whose first row begins nothing go on
 * with the piece before them.
 */
function joinedSections(pieces: readonly PieceTree[], numberedAfresh: Set<RowTree>): readonly PieceTree[] {
  const joined: PieceTree[] = [];
  for (const piece of pieces) {
    const before = joined[joined.length - 1];
    const first = piece.rows[0];
    if (
      before === undefined ||
      before.rows.length === 0 ||
      piece.heading === null ||
      first === undefined ||
      beginsAfresh(first)
    ) {
      joined.push(piece);
      continue;
    }
    numberedAfresh.add(first);
    joined[joined.length - 1] = {
      ...before,
      to: piece.to,
      definitions: [...before.definitions, ...piece.definitions],
      conventions: [...before.conventions, ...piece.conventions],
      rows: [...before.rows, ...piece.rows],
    };
  }
  return joined;
}

/** Rows under a heading of their own may be counted from any number. */
function withoutNumber(result: RowResult): RowResult {
  return { ...result, facts: result.facts.filter((fact) => fact.code !== 'row-number-out-of-order') };
}

type SizesAmount = Extract<Amount, { kind: 'sizes' }>;

/** Every list of numbers in a tree, in the order of the text. */
function listsIn(value: unknown): readonly SizesAmount[] {
  const found: SizesAmount[] = [];
  const visit = (inner: unknown): void => {
    if (typeof inner !== 'object' || inner === null) return;
    if (Array.isArray(inner)) {
      for (const one of inner) visit(one);
      return;
    }
    const amount = inner as Partial<SizesAmount>;
    if (amount.kind === 'sizes' && Array.isArray(amount.values)) found.push(inner as SizesAmount);
    else for (const one of Object.values(inner)) visit(one);
  };
  visit(value);
  return found;
}

/** More sizes than any pattern has; a longer list is no list of sizes. */
const MOST_SIZES = 100;

/**
 * How many sizes a text is written for: as many as its size line names, else the length that most of its
 * lists have; of two lengths that are as common, the one met first.
 */
export function sizesOf(tree: TextTree): number {
  if (tree.sizes !== null && tree.sizes.length > 0) return Math.min(tree.sizes.length, MOST_SIZES);
  const lengths = new Map<number, number>();
  for (const list of listsIn(tree.pieces))
    lengths.set(list.values.length, (lengths.get(list.values.length) ?? 0) + 1);
  let best = 1;
  let times = 0;
  for (const [length, n] of lengths) {
    if (n > times) {
      best = length;
      times = n;
    }
  }
  return Math.min(Math.max(1, best), MOST_SIZES);
}

/** Lists of a row that have not one number for each size it is for. */
function unevenLists(row: RowTree, sizes: number, labels: readonly string[]): readonly Fact[] {
  let expected = sizes;
  if (row.only !== null) {
    const chosen = labels.findIndex((_, size) => sizesFor(row, size, labels) !== 'none');
    const only = chosen < 0 ? null : sizesFor(row, chosen, labels);
    if (only !== null && only !== 'none') expected = only.length;
  }
  return listsIn([row.label, row.items, row.counts])
    .filter((list) => list.values.length !== expected && list.values.length !== sizes)
    .map((list) => ({
      code: 'sizes-differ-in-length',
      from: list.from,
      to: list.to,
      data: { expected, got: list.values.length },
    }));
}

function namesIn(definitions: readonly Definition[]): ReadonlyMap<string, Definition> {
  const names = new Map<string, Definition>();
  for (const definition of definitions) for (const name of definition.names) names.set(name, definition);
  return names;
}

/** What rows themselves settle for the rows after them: "(counts as dc here and throughout)". */
export function conventionsIn(rows: readonly RowTree[]): readonly Convention[] {
  const found: Convention[] = [];
  for (const row of rows) for (const convention of conventionsOfRow(row)) found.push(convention);
  return found;
}

const inRow = new WeakMap<RowTree, readonly Convention[]>();

function conventionsOfRow(row: RowTree): readonly Convention[] {
  const known = inRow.get(row);
  if (known !== undefined) return known;
  const made = row.items.flatMap((item): readonly Convention[] =>
    item.type === 'chain' && item.counts !== null
      ? [{ from: item.from, to: item.to, chains: item.amount, counts: item.counts }]
      : [],
  );
  inRow.set(row, made);
  return made;
}

/** "All other sizes:" leaves out the sizes that the rows right before it are for. */
function othersNamed(rows: readonly RowTree[]): readonly RowTree[] {
  let named: string[] = [];
  return rows.map((row) => {
    const { only } = row;
    if (only === null) named = [];
    else if (!only.except) named.push(...only.labels);
    else if (only.labels.length === 0) return { ...row, only: { ...only, labels: [...named] } };
    return row;
  });
}

/** The labels that a row is for, in lower case; "2nd size" by its label. */
function wantedIn(only: SizeFilter, labels: readonly string[]): readonly string[] {
  return only.labels.map((label) => {
    // "2nd and 3rd sizes only"
    const nth = /^(\d+)(?:st|nd|rd|th)$/i.exec(label);
    const named = nth === null || labels.includes(label) ? label : (labels[Number(nth[1]) - 1] ?? label);
    return named.toLowerCase();
  });
}

/** Sizes that a row is for and that there are not. `named`: the text calls its sizes by names. */
function unknownSizes(row: RowTree, labels: readonly string[], named: boolean): readonly Fact[] {
  const { only } = row;
  if (only === null) return [];
  const known = labels.map((label) => label.toLowerCase());
  const wanted = wantedIn(only, labels);
  const missing = only.labels.filter((_, i) => !known.includes(wanted[i]!));
  if (missing.length === 0) return [];
  const data = { missing, sizes: named ? labels : [] };
  return [{ code: 'row-for-unknown-size', from: only.from, to: only.to, data }];
}

/** Indexes of the sizes a row is for; null = all; 'none' = not this size. */
export function sizesFor(
  row: RowTree,
  size: number,
  labels: readonly string[],
): readonly number[] | null | 'none' {
  if (row.only === null) return null;
  const wanted = wantedIn(row.only, labels);
  const named = labels.flatMap((label, i) => (wanted.includes(label.toLowerCase()) ? [i] : []));
  const chosen = row.only.except ? labels.map((_, i) => i).filter((i) => !named.includes(i)) : named;
  return chosen.includes(size) ? chosen : 'none';
}

function workPiece(
  piece: PieceTree,
  size: number,
  sizes: number,
  labels: readonly string[],
  definitions: readonly Definition[],
  conventions: readonly Convention[],
  records: Map<string, PieceRecord>,
  trace: Tracer | null,
): readonly RowResult[] {
  const env: Env = {
    size,
    sizes,
    only: null,
    names: namesIn(definitions),
    conventions: [...conventionsIn(piece.rows), ...conventions],
    turningChainWorked: piece.rows.some((row) => worksTurningChain(row.items)),
    rowEnds: 0,
    foundation: 0,
    earlier: null,
    parts: null,
    trace,
    of: null,
  };
  const work = new PieceWork(null, env, undefined, records);
  const entries: Written[] = piece.rows.map((row) => ({ row, figures: [] }));
  const results = work.workAll(entries, (row) => sizesFor(row, size, labels));
  const name = piece.heading?.text ?? `#${records.size}`;
  records.set(name.toLowerCase(), work.record(name));
  return results;
}

function placed(finding: Finding): ReportFinding {
  const { code, severity, where, sizes, message } = finding;
  return { code, severity, from: where.from, to: where.to, sizes, message };
}

function reportRow(
  row: RowTree,
  results: readonly RowResult[],
  text: string,
  terms: Terms,
  telling: Parameters<typeof tell>[1],
  sizes: number,
  definitions: readonly Definition[],
): ReportRow {
  const uneven = row.facts.some((fact) => fact.code === 'sizes-differ-in-length')
    ? []
    : unevenLists(row, sizes, telling.labels);
  const named = telling.labels.some((label, i) => label !== String(i + 1));
  const unknown = unknownSizes(row, telling.labels, named);
  const facts: SizedFact[] = [...row.facts, ...uneven, ...unknown].map((fact) => ({ size: null, fact }));
  results.forEach((result, size) => {
    for (const fact of result.facts) facts.push({ size: sizes === 1 ? null : size, fact });
  });
  const said = wordsFor(row, text, definitions);
  const byKind: Record<string, number[]> = {};
  const units: Record<string, number[]> = {};
  results.forEach((result, size) => {
    for (const [id, n] of result.tally?.byKind ?? []) {
      const name = said.stitches.get(id) ?? kindName(id, terms);
      byKind[name] ??= new Array<number>(sizes).fill(0);
      byKind[name][size]! += n;
    }
    for (const [known, n] of result.tally?.units ?? []) {
      const name = said.units.get(known) ?? known;
      units[name] ??= new Array<number>(sizes).fill(0);
      units[name][size]! += n;
    }
  });
  const label = row.label;
  return {
    label: label === null ? '' : text.slice(label.from, label.to).trim(),
    kind:
      label === null
        ? startsPiece(row)
          ? 'foundation'
          : 'none'
        : label.kind === 'numbered'
          ? 'row'
          : label.kind,
    from: row.from,
    to: row.to,
    text: text.slice(row.from, row.to),
    numbers: results.map((result) =>
      result.first === null || result.last === null ? null : [result.first, result.last],
    ),
    read: row.read,
    counts: results.map((result) => result.tally?.stitches ?? null),
    byKind,
    spaces: results.map((result) => result.tally?.spaces ?? null),
    repeats: results.map((result) => result.repeats),
    units,
    findings: tell(facts, telling).map(placed),
  };
}

/**
 * What the row itself calls its special stitches and its raised stitches, where houses differ: unit names and
 * stitch ids to the words of the text.
 */
function wordsFor(
  row: RowTree,
  text: string,
  definitions: readonly Definition[],
): { units: ReadonlyMap<string, string>; stitches: ReadonlyMap<string, string> } {
  const units = new Map<string, string>();
  const stitches = new Map<string, string>();
  const visit = (items: readonly Item[]): void => {
    for (const item of items) {
      if (item.type === 'group' || item.type === 'repeat' || item.type === 'again') visit(item.items);
      if (item.type !== 'work') continue;
      const { stitch } = item;
      const words = text.slice(stitch.from, stitch.to);
      const defined = definitions.find((definition) =>
        definition.names.includes(stitch.special ?? stitch.form),
      );
      const unit =
        defined?.names[0] ?? (stitch.form === 'v-stitch' ? 'V-st' : (stitch.special ?? stitch.form));
      if (words !== '' && !units.has(unit)) units.set(unit, words);
      if (stitch.post !== null && stitch.base !== null && stitch.together === 1 && /^\S{2,8}$/.test(words)) {
        stitches.set(`${stitch.post === 'front' ? 'fp' : 'bp'}.${stitch.base}`, words);
      }
    }
  };
  visit(row.items);
  return { units, stitches };
}

/** The author's word for a kind: special stitches by their names, all else by abbreviation. */
export function kindName(id: string, terms: Terms): string {
  if (id === 'chain') return 'ch';
  if (id.startsWith('special.')) return id.slice('special.'.length);
  return stitchAbbreviation(id, terms);
}

function startsPiece(row: RowTree): boolean {
  return (
    row.items.some((item) => item.type === 'chain' || item.type === 'ring') &&
    !row.items.some((item) => item.type === 'work' || item.type === 'repeat' || item.type === 'group')
  );
}
