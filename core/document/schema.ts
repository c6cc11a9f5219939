/**
 * The tree a pattern is written in, as a ProseMirror schema. Text that a maker writes is text in the tree;
 * whatever a form or a grid edits is a node with attributes (see `attributes`); each list stands in a node of
 * its own, so that an edit in one list leaves the others untouched, object for object. How nodes look on
 * screen is not here.
 */
import { type AttributeSpec, type NodeSpec, Schema } from 'prosemirror-model';
import { ATTRIBUTES } from './attributes.ts';

/** Text with figures. */
const WRITTEN = '(text | figure)*';

const list = (content: string): NodeSpec => ({ content: `${content}*` });
const plain: NodeSpec = { content: 'text*', defining: true };
/** Edited in a form or a grid, and never chosen in the text: an arrow key goes past it. */
const item: NodeSpec = { atom: true, selectable: false };

const NODES = {
  doc: { content: 'cover sizing materials specials notes pieces finishing closing charts workbook' },

  cover: { content: 'title description construction fit' },
  title: plain,
  description: plain,
  construction: plain,
  fit: plain,

  sizing: { content: 'sizes lines' },
  sizes: list('size'),
  size: item,
  lines: list('line'),
  line: item,

  materials: { content: 'gauges yarns hooks notions abbreviations' },
  gauges: list('gauge'),
  gauge: item,
  yarns: list('yarn'),
  yarn: item,
  hooks: list('hook'),
  hook: item,
  notions: list('notion'),
  notion: item,
  abbreviations: list('abbreviation'),
  abbreviation: item,

  specials: list('special'),
  special: { content: WRITTEN, defining: true },

  notes: list('paragraph'),
  paragraph: { content: WRITTEN },

  pieces: list('piece'),
  piece: { content: 'title blocks', isolating: true, defining: true },
  blocks: list('block'),
  row: { content: WRITTEN, group: 'block' },
  repeat: { group: 'block', atom: true },
  /** The row worked on shaping rows, then the row worked between. */
  shaping: { content: 'row row', group: 'block', isolating: true, defining: true },
  prose: { content: WRITTEN, group: 'block' },
  heading: { content: 'text*', group: 'block', defining: true },
  photo: { group: 'block', atom: true, draggable: true },

  finishing: list('paragraph'),

  closing: { content: 'care copyright contact cautions' },
  care: plain,
  copyright: plain,
  contact: plain,
  cautions: list('caution'),
  caution: plain,

  charts: list('chart'),
  chart: item,

  workbook: { content: 'makings people accepted doubts' },
  makings: list('making'),
  making: item,
  people: list('person'),
  person: item,
  accepted: list('acceptance'),
  acceptance: item,
  doubts: list('doubt'),
  doubt: item,

  text: {},
  figure: { inline: true, atom: true },
} as const satisfies Record<string, NodeSpec>;

/** Every kind of node there is. */
export type Kind = keyof typeof NODES;

/**
 * Initial values only. The schema does not judge values: it would throw in the middle of an edit, where a
 * node may be without an id for a moment. `checkTree` judges, at the door.
 */
function attributesOf(kind: string): Record<string, AttributeSpec> {
  const attributes = ATTRIBUTES[kind as keyof typeof ATTRIBUTES] ?? {};
  return Object.fromEntries(
    Object.entries(attributes).map(([name, { initial }]) => [name, { default: initial }]),
  );
}

/** The one schema of Turnchain documents. It has no marks: emphasis is the print's business. */
export const schema: Schema<Kind, never> = new Schema<Kind, never>({
  nodes: Object.fromEntries(
    Object.entries(NODES).map(([kind, spec]) => [kind, { ...spec, marks: '', attrs: attributesOf(kind) }]),
  ) as Record<Kind, NodeSpec>,
});
