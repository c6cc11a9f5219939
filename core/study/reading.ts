/**
 * Reads every text of a pattern that the engine needs: rows, special stitches, and what the notes settle once
 * for all rows. Each text is read once; an unchanged text gives the identical tree. Works nothing.
 */
import type { Block, FigureText, Pattern, RowBlock } from '../document/pattern.ts';
import type { Finding, Span } from '../finding.ts';
import { tell } from '../findings/index.ts';
import { normaliseName, readItems, readRow, readText } from '../notation/index.ts';
import type { Convention, Definition, Item, Label, RowTree } from '../notation/tree.ts';
import type { Terms } from '../trade/stitches.ts';

export interface Readings {
  /** Names that rows may use besides the trade's, in the order of the pattern. */
  readonly names: readonly string[];
  /** Definitions by every name they go by. */
  readonly definitions: ReadonlyMap<string, Definition>;
  readonly conventions: readonly Convention[];
  readonly findings: readonly Finding[];
  readonly row: (block: RowBlock) => RowTree;
}

interface Kept {
  readonly terms: Terms;
  readonly names: readonly string[];
  readonly sizes: number;
  readonly tree: RowTree;
}

const rows = new WeakMap<RowBlock, Kept>();
const notes = new WeakMap<
  FigureText,
  { readonly terms: Terms; readonly conventions: readonly Convention[] }
>();

const byWords = new WeakMap<readonly string[], Map<string, RowTree>>();

/** Rows remembered by their words; past it the memory starts afresh. */
const WORDS_KEPT = 10_000;

/** Rows of the same words share one tree, and with it everything that is remembered of working it. */
function shared(names: readonly string[], key: string, read: () => RowTree): RowTree {
  let known = byWords.get(names);
  if (known === undefined) {
    known = new Map();
    byWords.set(names, known);
  }
  const same = known.get(key);
  if (same !== undefined) return same;
  const tree = read();
  if (known.size >= WORDS_KEPT) known.clear();
  known.set(key, tree);
  return tree;
}

function sameList<T>(a: readonly T[], b: readonly T[]): boolean {
  return a.length === b.length && a.every((value, i) => value === b[i]);
}

function labelled(tree: RowTree, form: RowBlock['form']): RowTree {
  const at: Span = { from: tree.from, to: tree.from };
  const kind = form === 'round' ? 'round' : form === 'foundation' ? 'foundation' : 'row';
  const label: Label = { ...at, kind, numbers: null, side: null };
  return { ...tree, label };
}

function conventionsOf(note: FigureText, terms: Terms): readonly Convention[] {
  const known = notes.get(note);
  if (known !== undefined && known.terms === terms) return known.conventions;
  const tree = readText(note.text, { terms });
  const conventions = tree.pieces.flatMap((piece) => piece.conventions);
  notes.set(note, { terms, conventions });
  return conventions;
}

/** Everything read, keeping what the readings before the edit held and the edit did not touch. */
export function readPattern(pattern: Pattern, previous: Readings | null): Readings {
  const { terms, specials } = pattern;
  const fresh = specials.flatMap((special) =>
    [terms === 'us' ? special.nameUs : special.nameUk, terms === 'us' ? special.abbrUs : special.abbrUk]
      .filter((name) => name.trim() !== '')
      .map(normaliseName),
  );
  const names = previous !== null && sameList(previous.names, fresh) ? previous.names : fresh;
  const findings: Finding[] = [];
  const found = new Map<string, Definition>();
  for (const special of specials) {
    const own = [
      normaliseName(terms === 'us' ? special.nameUs : special.nameUk),
      normaliseName(terms === 'us' ? special.abbrUs : special.abbrUk),
    ].filter((name) => name !== '');
    const definition = definitionOf(special.text, own, terms, names);
    for (const name of own) if (!found.has(name)) found.set(name, definition);
    findings.push(
      ...tell(
        definition.facts
          .filter((fact) => fact.code !== 'word-not-read')
          .map((fact) => ({ size: null, fact })),
        { terms, labels: pattern.sizes.map((size) => size.label), node: special.id, text: special.text.text },
      ),
    );
  }
  for (const [abbreviation, meaning] of Object.entries(pattern.abbreviations)) {
    const name = normaliseName(abbreviation);
    if (name === '' || found.has(name)) continue;
    const definition = meaningOf(meaning, name, terms, names);
    if (definition !== null) found.set(name, definition);
  }
  const definitions =
    previous !== null && sameMap(previous.definitions, found) ? previous.definitions : found;
  const said = pattern.notes.flatMap((note) => conventionsOf(note, terms));
  const conventions = previous !== null && sameList(previous.conventions, said) ? previous.conventions : said;
  const sizes = pattern.sizes.length;
  const row = (block: RowBlock): RowTree => {
    const known = rows.get(block);
    if (
      known !== undefined &&
      known.terms === terms &&
      known.sizes === sizes &&
      sameList(known.names, names)
    ) {
      return known.tree;
    }
    const tree = shared(names, `${terms}|${sizes}|${block.form}|${block.text.text}`, () =>
      labelled(readRow(block.text.text, { terms, names, sizes, figures: true, label: false }), block.form),
    );
    rows.set(block, { terms, names, sizes, tree });
    return tree;
  };
  return { names, definitions, conventions, findings, row };
}

const specials = new WeakMap<
  FigureText,
  { terms: Terms; names: readonly string[]; own: string; definition: Definition }
>();

function definitionOf(
  text: FigureText,
  own: readonly string[],
  terms: Terms,
  names: readonly string[],
): Definition {
  const known = specials.get(text);
  if (
    known !== undefined &&
    known.terms === terms &&
    known.own === own.join('|') &&
    sameList(known.names, names)
  ) {
    return known.definition;
  }
  const { items, facts } = readItems(text.text, { terms, names });
  const definition: Definition = { from: 0, to: text.text.length, names: own, items, facts };
  specials.set(text, { terms, names, own: own.join('|'), definition });
  return definition;
}

const meanings = new Map<string, Definition | null>();
/** Meanings remembered; past it the memory starts afresh. */
const REMEMBERED = 2000;

/** An explained abbreviation that tells how it is worked ("2 sc in next st") serves as a definition. */
function meaningOf(meaning: string, name: string, terms: Terms, names: readonly string[]): Definition | null {
  const key = `${terms}|${name}|${names.join(',')}|${meaning}`;
  const known = meanings.get(key);
  if (known !== undefined) return known;
  const { items, facts } = readItems(meaning, { terms, names });
  const tells = facts.length === 0 && items.some(placesSomething);
  const definition = tells ? { from: 0, to: meaning.length, names: [name], items, facts } : null;
  if (meanings.size > REMEMBERED) meanings.clear();
  meanings.set(key, definition);
  return definition;
}

function placesSomething(item: Item): boolean {
  if (item.type === 'group') return true;
  return item.type === 'work' && item.places.some((place) => place.kind !== 'next' || !place.implied);
}

function sameMap(a: ReadonlyMap<string, Definition>, b: ReadonlyMap<string, Definition>): boolean {
  if (a.size !== b.size) return false;
  for (const [name, definition] of a) if (b.get(name) !== definition) return false;
  return true;
}

/** Row blocks of a piece, those inside shaping blocks included, in order. */
export function rowBlocks(blocks: readonly Block[]): readonly RowBlock[] {
  return blocks.flatMap((block) =>
    block.type === 'row' ? [block] : block.type === 'shaping' ? [block.shaped, block.even] : [],
  );
}
