/**
 * Finding nodes of the document: by id, by list, by the names that findings use for texts without an id
 * ("cover:title", "notes:0"), whole parts as "part:notes". Indexes are kept per document node, so asking twice
 * costs once.
 */
import type { Node } from 'prosemirror-model';

export interface Placed {
  readonly node: Node;
  /** Position before the node. */
  readonly pos: number;
}

/** Lists that forms and grids edit, with the way to each from the root. */
const LISTS = {
  sizes: ['sizing', 'sizes'],
  lines: ['sizing', 'lines'],
  gauges: ['materials', 'gauges'],
  yarns: ['materials', 'yarns'],
  hooks: ['materials', 'hooks'],
  notions: ['materials', 'notions'],
  abbreviations: ['materials', 'abbreviations'],
  specials: ['specials'],
  notes: ['notes'],
  pieces: ['pieces'],
  finishing: ['finishing'],
  cautions: ['closing', 'cautions'],
  charts: ['charts'],
  makings: ['workbook', 'makings'],
  people: ['workbook', 'people'],
  accepted: ['workbook', 'accepted'],
  doubts: ['workbook', 'doubts'],
} as const;

/** Parts of the document that have a place of their own and are not drawn among the manuscript's texts. */
export const ELSEWHERE: ReadonlySet<string> = new Set(['sizing', 'materials', 'charts', 'workbook']);

export type ListName = keyof typeof LISTS;

/** Follows names of node kinds from the root. The schema guarantees that each is there once. */
export function partAt(document: Node, path: readonly string[]): Placed {
  let node = document;
  let pos = -1;
  for (const name of path) {
    let inside = pos + 1;
    let found: Node | null = null;
    for (const child of node.children) {
      if (child.type.name === name) {
        found = child;
        break;
      }
      inside += child.nodeSize;
    }
    if (found === null) throw new RangeError(`The document has no part ${path.join(' ')}.`);
    node = found;
    pos = inside;
  }
  return { node, pos };
}

export function listAt(document: Node, list: ListName): Placed {
  return partAt(document, LISTS[list]);
}

const indexes = new WeakMap<Node, ReadonlyMap<string, Placed>>();

function indexOf(document: Node): ReadonlyMap<string, Placed> {
  const known = indexes.get(document);
  if (known !== undefined) return known;
  const index = new Map<string, Placed>();
  document.descendants((node, pos) => {
    const { id } = node.attrs;
    if (typeof id === 'string' && id !== '' && !index.has(id)) index.set(id, { node, pos });
    return !node.isTextblock;
  });
  for (const part of ['title', 'description', 'construction', 'fit'] as const) {
    index.set(`cover:${part}`, partAt(document, ['cover', part]));
  }
  for (const part of ['care', 'copyright', 'contact'] as const) {
    index.set(`cover:${part}`, partAt(document, ['closing', part]));
  }
  for (const part of ['cover', 'specials', 'notes', 'pieces', 'finishing', 'closing'] as const) {
    index.set(`part:${part}`, partAt(document, [part]));
  }
  for (const list of ['notes', 'finishing'] as const) {
    const { node, pos } = listAt(document, list);
    node.forEach((child, offset, at) => {
      index.set(`${list}:${at}`, { node: child, pos: pos + 1 + offset });
    });
  }
  indexes.set(document, index);
  return index;
}

/** The node that a finding, a form or a command names; null when there is none (any more). */
export function placeOf(document: Node, name: string): Placed | null {
  return indexOf(document).get(name) ?? null;
}
