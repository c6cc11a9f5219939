import fc from 'fast-check';
import { Node } from 'prosemirror-model';
import { describe, expect, test } from 'vitest';
import { checkTree } from '../../core/document/check.ts';
import { compose } from '../../core/document/compose.ts';
import { FIGURE, type Pattern, type RowBlock } from '../../core/document/pattern.ts';
import { project } from '../../core/document/project.ts';
import { schema } from '../../core/document/schema.ts';
import { blankPattern } from '../../core/outlines/blank.ts';
import { anyPattern } from './patterns.ts';

const blank = blankPattern({ title: 'Harbour vest', terms: 'us', units: 'metric', date: '2024-05-01' });

const row = (id: string, text: string, figures: readonly string[] = []): RowBlock => ({
  type: 'row',
  id,
  text: { text, figures },
  sizes: null,
  form: 'row',
  title: null,
});

/** Two pieces of two rows, one line, one gauge, one note: something in each list that identity is tested on. */
const sample: Pattern = {
  ...blank,
  gauges: [
    {
      id: 'gauge-1',
      pattern: 'mesh',
      stitches: 18,
      rows: 9,
      width: { value: 10, unit: 'cm' },
      height: { value: 10, unit: 'cm' },
      blocked: true,
      stretch: null,
      hook: null,
      rounds: false,
    },
  ],
  notes: [{ text: `Ch ${FIGURE} counts.`, figures: ['edge chains'] }],
  abbreviations: { sh: 'shell' },
  pieces: ['front', 'back'].map((id) => ({
    ...blank.pieces[0]!,
    id,
    name: id,
    blocks: [row(`${id}-1`, `Ch ${FIGURE}.`, ['back chains']), row(`${id}-2`, 'Sc in each st across, turn.')],
  })),
  cautions: ['Keep cords short.'],
};

/** The same tree with the node at `path` (child indexes) changed; everything beside the path is kept. */
function edited(node: Node, path: readonly number[], change: (node: Node) => Node): Node {
  const [first, ...rest] = path;
  if (first === undefined) return change(node);
  return node.copy(node.content.replaceChild(first, edited(node.child(first), rest, change)));
}

const PIECES = 5;
const BLOCKS = 1;

describe('projecting and composing', () => {
  test('a pattern composed and projected is the same pattern', () => {
    fc.assert(
      fc.property(anyPattern, (pattern) => {
        expect(project(compose(pattern))).toEqual(pattern);
      }),
      { numRuns: 400 },
    );
  });

  test('a pattern survives the tree written as JSON and checked', () => {
    fc.assert(
      fc.property(anyPattern, (pattern) => {
        const checked = checkTree(JSON.parse(JSON.stringify(compose(pattern).toJSON())));
        expect(checked.ok ? project(checked.document) : checked.error).toEqual(pattern);
      }),
      { numRuns: 200 },
    );
  });

  test('a figure without an expression is an empty one, and one too many is left out', () => {
    const text = { text: `${FIGURE} and ${FIGURE}`, figures: ['a'] };
    expect(project(compose({ ...blank, notes: [text] })).notes[0]!.figures).toEqual(['a', '']);
    const more = { text: 'plain', figures: ['a'] };
    expect(project(compose({ ...blank, notes: [more] })).notes[0]).toEqual({ text: 'plain', figures: [] });
  });

  test('an object character pasted as text is not taken for a figure', () => {
    const paragraph = schema.nodes.paragraph.create(null, [
      schema.text(`a${FIGURE}b`),
      schema.nodes.figure.create({ expression: 'x' }),
    ]);
    const document = edited(compose(blank), [4], (notes) => notes.copy(notes.content.addToEnd(paragraph)));
    expect(project(document).notes).toEqual([{ text: `a\uFFFDb${FIGURE}`, figures: ['x'] }]);
  });

  test('offsets in projected text are offsets in the node', () => {
    const node = compose(sample).child(PIECES).child(0).child(BLOCKS).child(0);
    expect(node.content.size).toBe(
      (project(compose(sample)).pieces[0]!.blocks[0] as RowBlock).text.text.length,
    );
  });

  test('of two explanations of one abbreviation the first holds, and no key is inherited', () => {
    const node = (short: string, meaning: string) => schema.nodes.abbreviation.create({ short, meaning });
    const list = [node('sp', 'space'), node('sp', 'something else'), node('__proto__', 'odd')];
    const document = edited(compose(blank), [2, 4], (all) =>
      all.copy(all.content.append(all.type.create(null, list).content)),
    );
    const { abbreviations } = project(document);
    expect(abbreviations.sp).toBe('space');
    expect(Object.keys(abbreviations)).toEqual(['sp', '__proto__']);
    expect(abbreviations.constructor).toBeUndefined();
  });

  test('the smallest tree that the schema fills by itself is a document', () => {
    const filled = schema.nodes.doc.createAndFill()!;
    filled.check();
    expect(project(filled).pieces).toEqual([]);
    expect(compose(project(filled)).eq(filled)).toBe(true);
  });
});

describe('identity', () => {
  const before = compose(sample);
  const first = project(before);

  test('the same document gives the same pattern', () => {
    expect(project(before)).toBe(first);
  });

  test('editing one row changes that row, its piece and nothing else', () => {
    const after = project(
      edited(before, [PIECES, 0, BLOCKS, 1], (node) =>
        node.copy(schema.nodes.row.create(null, schema.text('Dc.')).content),
      ),
    );
    expect((after.pieces[0]!.blocks[1] as RowBlock).text.text).toBe('Dc.');
    expect(after.pieces[0]!.blocks[0]).toBe(first.pieces[0]!.blocks[0]);
    expect(after.pieces[0]!.start).toBe(first.pieces[0]!.start);
    expect(after.pieces[1]).toBe(first.pieces[1]);
    for (const key of [
      'about',
      'sizes',
      'lines',
      'gauges',
      'yarns',
      'hooks',
      'notions',
      'specials',
      'abbreviations',
      'notes',
      'finishing',
      'cautions',
      'tolerance',
    ] as const) {
      expect(after[key], key).toBe(first[key]);
    }
  });

  test('editing a line leaves the sizes, the gauges and the pieces as they were', () => {
    const after = project(
      edited(before, [1, 1, 1], (node) =>
        node.type.create({
          ...node.attrs,
          rule: { kind: 'ease', values: { all: { value: 8, unit: 'cm' } } },
        }),
      ),
    );
    expect(after.lines[1]).not.toBe(first.lines[1]);
    expect(after.lines[0]).toBe(first.lines[0]);
    expect(after.lines).not.toBe(first.lines);
    for (const key of ['about', 'sizes', 'gauges', 'pieces'] as const)
      expect(after[key], key).toBe(first[key]);
  });

  test('renaming a piece, or changing how often it is made, leaves its blocks the identical array', () => {
    const renamed = project(
      edited(before, [PIECES, 0, 0], (title) => title.type.create(null, schema.text('Left front'))),
    );
    const doubled = project(
      edited(before, [PIECES, 0], (node) => node.type.create({ ...node.attrs, make: 2 }, node.content)),
    );
    expect(renamed.pieces[0]!.name).toBe('Left front');
    expect(doubled.pieces[0]!.make).toBe(2);
    for (const after of [renamed, doubled]) expect(after.pieces[0]!.blocks).toBe(first.pieces[0]!.blocks);
  });

  test('changing the terms, the title or a caution leaves every list but the one concerned', () => {
    const uk = project(
      edited(before, [], (doc) => doc.type.create({ ...doc.attrs, terms: 'uk' }, doc.content)),
    );
    expect([uk.terms, uk.about, uk.pieces]).toEqual(['uk', first.about, first.pieces]);
    expect(uk.about).toBe(first.about);
    const retitled = project(
      edited(before, [0, 0], (title) => title.type.create(null, schema.text('Quay vest'))),
    );
    expect(retitled.about.title).toBe('Quay vest');
    expect(retitled.cautions).toBe(first.cautions);
    const cautioned = project(
      edited(before, [7, 3, 0], (node) => node.type.create(null, schema.text('Keep cords very short.'))),
    );
    expect(cautioned.cautions).toEqual(['Keep cords very short.']);
    expect(cautioned.pieces).toBe(first.pieces);
  });

  test('an edit taken back gives the first objects again', () => {
    const original = before.child(PIECES).child(0);
    const away = edited(before, [PIECES, 0, 0], (title) => title.type.create(null, schema.text('Other')));
    project(away);
    const back = edited(away, [PIECES, 0], () => original);
    expect(project(back).pieces[0]).toBe(first.pieces[0]);
  });

  test('reading the same JSON again gives an equal pattern of new objects', () => {
    const again = project(Node.fromJSON(schema, before.toJSON()));
    expect(again).toEqual(first);
    expect(again.pieces[0]).not.toBe(first.pieces[0]);
  });
});
