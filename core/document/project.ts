/**
 * From the document's tree to the typed pattern. Every result is kept for its node, and nodes never change:
 * a part that an edit did not touch gives the identical object, and a list none of whose items changed gives
 * the identical array. Total: any tree the schema can hold gives a pattern. Nothing is judged here.
 */
import type { Node } from 'prosemirror-model';
import type { Attributed, AttributesOf } from './attributes.ts';
import {
  type About,
  type Block,
  type Chart,
  FIGURE,
  type FigureText,
  type Gauge,
  type Hook,
  type Line,
  type Notion,
  type Pattern,
  type Piece,
  type RowBlock,
  type Size,
  type Special,
  type Yarn,
} from './pattern.ts';
import type { Acceptance, Doubt, Making, Person, Workbook } from './workbook.ts';

/** Keeps one result for each node, for as long as the node lives. */
function perNode<T>(make: (node: Node) => T): (node: Node) => T {
  const made = new WeakMap<Node, { readonly value: T }>();
  return (node) => {
    let kept = made.get(node);
    if (!kept) {
      kept = { value: make(node) };
      made.set(node, kept);
    }
    return kept.value;
  };
}

const listOf = <T>(item: (node: Node) => T): ((node: Node) => readonly T[]) =>
  perNode((list) => list.children.map(item));

/** A node's attributes, typed by its kind. The schema and `checkTree` make the promise true. */
function attributes<K extends Attributed>(node: Node, _kind: K): AttributesOf<K> {
  return node.attrs as AttributesOf<K>;
}

/** What stands for an object character that came in as text: it would be taken for a figure. */
const STRAY = '\uFFFD';

const written = perNode((node): FigureText => {
  let text = '';
  const figures: string[] = [];
  for (const child of node.children) {
    if (child.isText) {
      text += (child.text ?? '').replaceAll(FIGURE, STRAY);
    } else {
      text += FIGURE;
      figures.push(attributes(child, 'figure').expression);
    }
  }
  return { text, figures };
});

const words = (node: Node): string => node.textContent;

const sizes = listOf(perNode((node): Size => ({ ...attributes(node, 'size') })));

const lines = listOf(
  perNode((node): Line => {
    const { rule, ...rest } = attributes(node, 'line');
    return { ...rest, ...rule };
  }),
);

const gauges = listOf(perNode((node): Gauge => ({ ...attributes(node, 'gauge') })));
const yarns = listOf(perNode((node): Yarn => ({ ...attributes(node, 'yarn') })));
const hooks = listOf(perNode((node): Hook => ({ ...attributes(node, 'hook') })));
const notions = listOf(perNode((node): Notion => ({ ...attributes(node, 'notion') })));

/** A table with no keys but its own, so that no abbreviation is found that nobody explained; the first wins. */
const abbreviations = perNode((list): Readonly<Record<string, string>> => {
  const table: Record<string, string> = Object.create(null);
  for (const node of list.children) {
    const { short, meaning } = attributes(node, 'abbreviation');
    if (!(short in table)) table[short] = meaning;
  }
  return table;
});

const specials = listOf(
  perNode((node): Special => ({ ...attributes(node, 'special'), text: written(node) })),
);
const paragraphs = listOf(written);
const cautions = listOf(words);

const row = perNode((node): RowBlock => ({ type: 'row', ...attributes(node, 'row'), text: written(node) }));

const block = perNode((node): Block => {
  switch (node.type.name) {
    case 'repeat':
      return { type: 'repeat', ...attributes(node, 'repeat') };
    case 'shaping':
      return {
        type: 'shaping',
        ...attributes(node, 'shaping'),
        shaped: row(node.child(0)),
        even: row(node.child(1)),
      };
    case 'prose':
      return { type: 'prose', ...attributes(node, 'prose'), text: written(node) };
    case 'heading':
      return { type: 'heading', ...attributes(node, 'heading'), text: words(node) };
    case 'photo':
      return { type: 'photo', ...attributes(node, 'photo') };
    default:
      return row(node);
  }
});

const blocks = listOf(block);

const pieces = listOf(
  perNode((node): Piece => {
    const [title, body] = node.children as [Node, Node];
    return { ...attributes(node, 'piece'), name: words(title), blocks: blocks(body) };
  }),
);

const charts = listOf(perNode((node): Chart => ({ ...attributes(node, 'chart') })));

const makings = listOf(perNode((node): Making => ({ ...attributes(node, 'making') })));
const people = listOf(perNode((node): Person => ({ ...attributes(node, 'person') })));
const accepted = listOf(perNode((node): Acceptance => ({ ...attributes(node, 'acceptance') })));
const doubts = listOf(perNode((node): Doubt => ({ ...attributes(node, 'doubt') })));

const workbook = perNode(
  (node): Workbook => ({
    ...attributes(node, 'workbook'),
    makings: makings(node.child(0)),
    people: people(node.child(1)),
    accepted: accepted(node.child(2)),
    doubts: doubts(node.child(3)),
  }),
);

/** The cover and the closing page both tell about the pattern; kept for the pair of them. */
const aboutFor = perNode((cover) =>
  perNode((closing): About => {
    const [title, description, construction, fit] = cover.children as [Node, Node, Node, Node];
    const [care, copyright, contact] = closing.children as [Node, Node, Node, Node];
    return {
      ...attributes(cover, 'cover'),
      title: words(title),
      description: words(description),
      construction: words(construction),
      fit: words(fit),
      care: words(care),
      copyright: words(copyright),
      contact: words(contact),
    };
  }),
);

/** The typed pattern that a document means. The same node gives the same pattern. */
export const project: (document: Node) => Pattern = perNode((document): Pattern => {
  const [cover, sizing, materials, specialList, notes, pieceList, finishing, closing, chartList, records] =
    document.children as [Node, Node, Node, Node, Node, Node, Node, Node, Node, Node];
  const { sample, tolerance } = attributes(sizing, 'sizing');
  const { terms, units } = attributes(document, 'doc');
  return {
    terms,
    units,
    about: aboutFor(cover)(closing),
    sizes: sizes(sizing.child(0)),
    sample,
    tolerance,
    lines: lines(sizing.child(1)),
    gauges: gauges(materials.child(0)),
    yarns: yarns(materials.child(1)),
    hooks: hooks(materials.child(2)),
    notions: notions(materials.child(3)),
    abbreviations: abbreviations(materials.child(4)),
    specials: specials(specialList),
    notes: paragraphs(notes),
    pieces: pieces(pieceList),
    finishing: paragraphs(finishing),
    cautions: cautions(closing.child(3)),
    charts: charts(chartList),
    workbook: workbook(records),
  };
});
