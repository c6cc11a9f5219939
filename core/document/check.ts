/**
 * Whether a tree from outside is a document: known kinds, possible values, unique ids, sane size. It refuses
 * with one reason, the first it meets, and never changes what it is given. Sense (a repeat of rows that are
 * not there) is no concern of this module.
 */
import { Node } from 'prosemirror-model';
import { ATTRIBUTES, type Attribute } from './attributes.ts';
import { TREE_LIMITS, VALUE_LIMITS } from './limits.ts';
import { type Refusal, refuse } from './refusals.ts';
import { type Kind, schema } from './schema.ts';
import { isPlainText } from './words.ts';

export type Checked =
  | { readonly ok: true; readonly document: Node }
  | { readonly ok: false; readonly error: Refusal };

/** What a maker calls a part, where the kind's own name would not do. */
const CALLED: Partial<Record<Kind, string>> = {
  doc: 'the pattern',
  cover: 'the cover',
  sizing: 'the sizes',
  shaping: 'a shaping',
  prose: 'a paragraph',
  photo: 'a photograph',
  special: 'a special stitch',
  chart: 'a stitch chart',
  making: 'something made',
  acceptance: 'an accepted finding',
};

const called = (kind: string): string =>
  CALLED[kind as Kind] ?? `${/^[aeiou]/.test(kind) ? 'an' : 'a'} ${kind}`;

/** How many of a kind there may be, and what they are together. */
const BOUNDED: Partial<Record<Kind, readonly [what: string, limit: number]>> = {
  size: ['sizes', TREE_LIMITS.sizes],
  line: ['lines', TREE_LIMITS.lines],
  piece: ['pieces', TREE_LIMITS.pieces],
  row: ['rows', TREE_LIMITS.rows],
  repeat: ['repeats of rows', TREE_LIMITS.rows],
  shaping: ['shapings', TREE_LIMITS.rows],
  prose: ['paragraphs', TREE_LIMITS.rows],
  heading: ['headings', TREE_LIMITS.items],
  photo: ['photographs', TREE_LIMITS.items],
  gauge: ['gauges', TREE_LIMITS.items],
  yarn: ['yarns', TREE_LIMITS.items],
  hook: ['hooks', TREE_LIMITS.items],
  notion: ['notions', TREE_LIMITS.items],
  abbreviation: ['abbreviations', TREE_LIMITS.items],
  special: ['special stitches', TREE_LIMITS.items],
  paragraph: ['notes', TREE_LIMITS.items],
  caution: ['cautions', TREE_LIMITS.items],
  chart: ['charts', TREE_LIMITS.items],
  making: ['makings', TREE_LIMITS.items],
  person: ['people', TREE_LIMITS.items],
  acceptance: ['accepted findings', TREE_LIMITS.items],
  doubt: ['doubts', TREE_LIMITS.rows],
};

const PARTS = new Set(['type', 'attrs', 'content', 'text']);

const isTable = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Counts what the whole tree uses up. */
class Tally {
  readonly #kinds = new Map<string, number>();
  readonly #ids = new Set<string>();
  #nodes = 0;
  #characters = 0;

  node(kind: string): Refusal | null {
    this.#nodes += 1;
    if (this.#nodes > TREE_LIMITS.nodes) return refuse('too-many', 'parts', TREE_LIMITS.nodes);
    const bound = BOUNDED[kind as Kind];
    if (!bound) return null;
    const seen = (this.#kinds.get(kind) ?? 0) + 1;
    this.#kinds.set(kind, seen);
    return seen > bound[1] ? refuse('too-many', ...bound) : null;
  }

  text(length: number): Refusal | null {
    this.#characters += length;
    return this.#characters > TREE_LIMITS.characters
      ? refuse('too-many', 'characters of text', TREE_LIMITS.characters)
      : null;
  }

  id(kind: string, id: string): Refusal | null {
    if (this.#ids.has(id)) return refuse('repeated-id', called(kind), id);
    this.#ids.add(id);
    return null;
  }
}

/** Characters of every string within a value that has already been found to be of a known shape. */
function charactersOf(value: unknown): number {
  if (typeof value === 'string') return value.length;
  if (typeof value !== 'object' || value === null) return 0;
  return Object.values(value).reduce((sum: number, part) => sum + charactersOf(part), 0);
}

function faultOfAttributes(kind: string, given: unknown, tally: Tally): Refusal | null {
  const known: Readonly<Record<string, Attribute<unknown>>> =
    ATTRIBUTES[kind as keyof typeof ATTRIBUTES] ?? {};
  if (given !== undefined && !isTable(given)) return refuse('bad-structure', called(kind));
  const attrs = given ?? {};
  for (const name of Object.keys(attrs)) {
    if (!Object.hasOwn(known, name)) return refuse('bad-value', called(kind), name);
  }
  for (const [name, { values, initial }] of Object.entries(known)) {
    const value = Object.hasOwn(attrs, name) ? attrs[name] : initial;
    const parsed = values.safeParse(value);
    if (!parsed.success) {
      const path = [name, ...(parsed.error.issues[0]?.path ?? [])].map(String).join(', ');
      return refuse('bad-value', called(kind), path);
    }
    const fault = (name === 'id' ? tally.id(kind, value as string) : null) ?? tally.text(charactersOf(value));
    if (fault) return fault;
  }
  return null;
}

function faultOfText(text: unknown, tally: Tally): Refusal | null {
  if (typeof text !== 'string' || text === '') return refuse('bad-structure', 'text');
  if (text.length > VALUE_LIMITS.paragraph) {
    return refuse('too-many', 'characters in one paragraph', VALUE_LIMITS.paragraph);
  }
  if (!isPlainText(text)) return refuse('bad-value', 'text', 'characters that are not text');
  return tally.text(text.length);
}

/** The first thing that keeps `root` from being a document's tree, or null. Walks with a stack of its own. */
function faultOf(root: unknown): Refusal | null {
  const tally = new Tally();
  const waiting: { readonly value: unknown; readonly depth: number }[] = [{ value: root, depth: 1 }];
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    const { value, depth } = next;
    if (depth > TREE_LIMITS.depth) return refuse('nested-too-deep', TREE_LIMITS.depth);
    if (!isTable(value) || typeof value.type !== 'string')
      return refuse('bad-structure', 'a part without a kind');
    const kind = value.type;
    if (!Object.hasOwn(schema.nodes, kind)) return refuse('bad-structure', 'a part of unknown kind');
    if (Object.keys(value).some((key) => !PARTS.has(key))) return refuse('bad-structure', called(kind));
    const isText = kind === 'text';
    if (isText !== 'text' in value) return refuse('bad-structure', called(kind));
    const fault =
      tally.node(kind) ??
      (isText ? faultOfText(value.text, tally) : null) ??
      faultOfAttributes(kind, value.attrs, tally);
    if (fault) return fault;
    if (value.content === undefined) continue;
    if (!Array.isArray(value.content)) return refuse('bad-structure', called(kind));
    // Last first, so that the first fault met is the first in the document.
    for (let at = value.content.length - 1; at >= 0; at--) {
      waiting.push({ value: value.content[at], depth: depth + 1 });
    }
  }
  return null;
}

/** The document that `tree` (as parsed from JSON) stands for, or the reason why it stands for none. */
export function checkTree(tree: unknown): Checked {
  const fault = faultOf(tree);
  if (fault) return { ok: false, error: fault };
  try {
    const document = Node.fromJSON(schema, tree);
    if (document.type.name !== 'doc')
      return { ok: false, error: refuse('bad-structure', called(document.type.name)) };
    document.check();
    return { ok: true, document };
  } catch {
    // The library reports what may stand where by throwing; its words are for programmers.
    return { ok: false, error: refuse('bad-structure', 'parts missing or out of place') };
  }
}
