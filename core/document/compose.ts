/**
 * From a typed pattern to the document's tree: the inverse of `project`. New files, examples and tests are
 * made this way. It builds and does not judge: values out of bounds are found by `checkTree`.
 */
import type { Node } from 'prosemirror-model';
import type { Attributed, AttributesOf } from './attributes.ts';
import {
  type About,
  type Block,
  FIGURE,
  type FigureText,
  type Line,
  type Pattern,
  type Piece,
  type RowBlock,
  type Special,
} from './pattern.ts';
import { type Kind, schema } from './schema.ts';
import type { Workbook } from './workbook.ts';

/** A node without attributes of its own. */
const make = (kind: Exclude<Kind, Attributed>, content: readonly Node[] = []): Node =>
  schema.nodes[kind].create(null, content);

/** A node with all of its attributes. */
const made = <K extends Attributed>(
  kind: K,
  attributes: AttributesOf<K>,
  content: readonly Node[] = [],
): Node => schema.nodes[kind].create({ ...attributes }, content);

const words = (text: string): readonly Node[] => (text === '' ? [] : [schema.text(text)]);

/** Text nodes with a figure atom at each object character; a character without an expression gets an empty one. */
function written({ text, figures }: FigureText): readonly Node[] {
  return text
    .split(FIGURE)
    .flatMap((part, index) => [
      ...(index === 0 ? [] : [made('figure', { expression: figures[index - 1] ?? '' })]),
      ...words(part),
    ]);
}

const paragraph = (text: FigureText): Node => make('paragraph', written(text));

function cover(about: About): Node {
  const { title, description, construction, fit, care, copyright, contact, ...attributes } = about;
  return made('cover', attributes, [
    make('title', words(title)),
    make('description', words(description)),
    make('construction', words(construction)),
    make('fit', words(fit)),
  ]);
}

function line({ id, name, printed, note, ...rule }: Line): Node {
  return made('line', { id, name, printed, note, rule });
}

function special({ text, ...attributes }: Special): Node {
  return made('special', attributes, written(text));
}

function row({ type: _, text, ...attributes }: RowBlock): Node {
  return made('row', attributes, written(text));
}

/** One block of a piece as a node. */
export function blockNode(from: Block): Node {
  switch (from.type) {
    case 'row':
      return row(from);
    case 'repeat': {
      const { type: _, ...attributes } = from;
      return made('repeat', attributes);
    }
    case 'shaping': {
      const { type: _, shaped, even, ...attributes } = from;
      return made('shaping', attributes, [row(shaped), row(even)]);
    }
    case 'prose': {
      const { type: _, text, ...attributes } = from;
      return made('prose', attributes, written(text));
    }
    case 'heading':
      return made('heading', { id: from.id }, words(from.text));
    case 'photo':
      return made('photo', { id: from.id, media: from.media });
  }
}

function piece({ name, blocks, ...attributes }: Piece): Node {
  return made('piece', attributes, [make('title', words(name)), make('blocks', blocks.map(blockNode))]);
}

function workbook({ makings, people, accepted, doubts, ...attributes }: Workbook): Node {
  return made('workbook', attributes, [
    make(
      'makings',
      makings.map((making) => made('making', making)),
    ),
    make(
      'people',
      people.map((person) => made('person', person)),
    ),
    make(
      'accepted',
      accepted.map((acceptance) => made('acceptance', acceptance)),
    ),
    make(
      'doubts',
      doubts.map((doubt) => made('doubt', doubt)),
    ),
  ]);
}

/** The document that means `pattern`: `project(compose(pattern))` equals `pattern`. */
export function compose(pattern: Pattern): Node {
  const { about, terms, units, sample, tolerance } = pattern;
  return made('doc', { terms, units, words: [] }, [
    cover(about),
    made('sizing', { sample, tolerance }, [
      make(
        'sizes',
        pattern.sizes.map((size) => made('size', size)),
      ),
      make('lines', pattern.lines.map(line)),
    ]),
    make('materials', [
      make(
        'gauges',
        pattern.gauges.map((gauge) => made('gauge', gauge)),
      ),
      make(
        'yarns',
        pattern.yarns.map((yarn) => made('yarn', yarn)),
      ),
      make(
        'hooks',
        pattern.hooks.map((hook) => made('hook', hook)),
      ),
      make(
        'notions',
        pattern.notions.map((notion) => made('notion', notion)),
      ),
      make(
        'abbreviations',
        Object.entries(pattern.abbreviations).map(([short, meaning]) =>
          made('abbreviation', { short, meaning }),
        ),
      ),
    ]),
    make('specials', pattern.specials.map(special)),
    make('notes', pattern.notes.map(paragraph)),
    make('pieces', pattern.pieces.map(piece)),
    make('finishing', pattern.finishing.map(paragraph)),
    make('closing', [
      make('care', words(about.care)),
      make('copyright', words(about.copyright)),
      make('contact', words(about.contact)),
      make(
        'cautions',
        pattern.cautions.map((caution) => make('caution', words(caution))),
      ),
    ]),
    make(
      'charts',
      pattern.charts.map((chart) => made('chart', chart)),
    ),
    workbook(pattern.workbook),
  ]);
}
