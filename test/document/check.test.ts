import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkTree } from '../../core/document/check.ts';
import { compose } from '../../core/document/compose.ts';
import { TREE_LIMITS, VALUE_LIMITS } from '../../core/document/limits.ts';
import type { Pattern } from '../../core/document/pattern.ts';
import type { RefusalCode } from '../../core/document/refusals.ts';
import { schema } from '../../core/document/schema.ts';
import { isId, isPlainText, tidyText } from '../../core/document/words.ts';
import { blank, goodTree } from './containers.ts';

// biome-ignore lint/suspicious/noExplicitAny: what tests spoil has no shape
type Tree = any;

const verdict = (tree: unknown): RefusalCode | 'a document' => {
  const checked = checkTree(tree);
  return checked.ok ? 'a document' : checked.error.code;
};

/** Paths into the good tree, by what stands there. */
const at = {
  doc: (tree: Tree) => tree,
  cover: (tree: Tree) => tree.content[0],
  sizing: (tree: Tree) => tree.content[1],
  sizes: (tree: Tree) => tree.content[1].content[0],
  size: (tree: Tree) => tree.content[1].content[0].content[0],
  ease: (tree: Tree) => tree.content[1].content[1].content[1],
  notes: (tree: Tree) => tree.content[4],
  pieces: (tree: Tree) => tree.content[5],
  piece: (tree: Tree) => tree.content[5].content[0],
  blocks: (tree: Tree) => tree.content[5].content[0].content[1],
  row: (tree: Tree) => tree.content[5].content[0].content[1].content[0],
};

/** A spoiler that puts `value` where `path` leads from a part. */
const set =
  (part: (tree: Tree) => Tree, path: string, value: unknown) =>
  (tree: Tree): void => {
    const keys = path.split('.');
    const last = keys.pop()!;
    keys.reduce((inner, key) => inner[key], part(tree))[last] = value;
  };

const text = (value: unknown) => [{ type: 'text', text: value }];
const row = (id: string) => ({ type: 'row', attrs: { id } });

/** A gauge, good but for what is given. */
const gauge = (attrs: object): Tree => ({ type: 'gauge', attrs: { id: 'gauge-1', ...attrs } });
const gauges = (tree: Tree) => tree.content[2].content[0];

/** Each changes the good tree, or returns another in its place. */
const cases: readonly (readonly [RefusalCode, string, (tree: Tree) => unknown])[] = [
  ['bad-structure', 'nothing', () => null],
  ['bad-structure', 'a number', () => 5],
  ['bad-structure', 'a list', () => []],
  ['bad-structure', 'a row by itself', () => row('row-1')],
  ['bad-structure', 'an unknown kind', set(at.row, 'type', 'stripe')],
  ['bad-structure', 'a kind that every object has', set(at.row, 'type', 'toString')],
  ['bad-structure', 'a kind that is no word', set(at.row, 'type', 7)],
  ['bad-structure', 'parts in another order', (tree) => void tree.content.reverse()],
  ['bad-structure', 'a part missing', (tree) => void tree.content.pop()],
  ['bad-structure', 'a part twice', (tree) => void tree.content.push(at.notes(tree))],
  ['bad-structure', 'a row among the sizes', (tree) => void at.sizes(tree).content.push(row('row-9'))],
  [
    'bad-structure',
    'a shaping of one row',
    (tree) => void at.blocks(tree).content.push({ type: 'shaping', attrs: { id: 'x' }, content: [row('y')] }),
  ],
  ['bad-structure', 'content that is no list', set(at.pieces, 'content', { 0: {} })],
  ['bad-structure', 'content that is text', set(at.row, 'content', 'Ch 3')],
  ['bad-structure', 'an empty text', set(at.row, 'content', text(''))],
  ['bad-structure', 'a text that is a number', set(at.row, 'content', text(3))],
  ['bad-structure', 'a text on a row', set(at.row, 'text', 'Ch 3')],
  ['bad-structure', 'marks', set(at.row, 'content', [{ ...text('a')[0], marks: [] }])],
  ['bad-structure', 'attributes that are a list', set(at.row, 'attrs', [])],
  ['bad-structure', 'a text in a gauge', set(gauges, 'content', [{ ...gauge({}), content: text('a') }])],
  [
    'nested-too-deep',
    'notes in notes',
    (tree) => {
      let deep: Tree = { type: 'notes' };
      for (let n = 0; n < 1_000; n++) deep = { type: 'notes', content: [deep] };
      tree.content[4] = deep;
    },
  ],
  ['bad-value', 'an unknown attribute', set(at.row, 'attrs.colour', 'red')],
  ['bad-value', 'attributes on what has none', set(at.notes, 'attrs', { id: 'notes' })],
  ['bad-value', 'other terms', set(at.doc, 'attrs.terms', 'au')],
  ['bad-value', 'a row without an id', set(at.row, 'attrs', {})],
  ['bad-value', 'an id with a slash', set(at.row, 'attrs.id', 'a/b')],
  ['bad-value', 'an id of the machinery', set(at.row, 'attrs.id', 'hasOwnProperty')],
  ['bad-value', 'an id that is too long', set(at.row, 'attrs.id', 'x'.repeat(65))],
  ['bad-value', 'level 5', set(at.cover, 'attrs.level', 5)],
  ['bad-value', 'a date of no day', set(at.cover, 'attrs.date', '2024-02-30')],
  ['bad-value', 'a language in words', set(at.cover, 'attrs.language', 'US English')],
  ['bad-value', 'a title that is a list of lines', set(at.row, 'attrs.title', 'a\nb')],
  ['bad-value', 'control characters in a row', set(at.row, 'content', text('a\u0007b'))],
  ['bad-value', 'half a character', set(at.row, 'content', text('a\uD83E'))],
  ['bad-value', 'a figure typed as a character', set(at.row, 'content', text('Ch \uFFFC'))],
  ['bad-value', 'an age below zero', set(at.size, 'attrs.age', [-1, 2])],
  ['bad-value', 'an age of three numbers', set(at.size, 'attrs.age', [1, 2, 3])],
  ['bad-value', 'a body that is not known', set(at.size, 'attrs.audience', 'cat')],
  ['bad-value', 'a length in yards', set(at.sizing, 'attrs.tolerance.unit', 'yd')],
  ['bad-value', 'a length that is words', set(at.sizing, 'attrs.tolerance.value', '2')],
  ['bad-value', 'a length beyond numbers', set(at.sizing, 'attrs.tolerance.value', Number.POSITIVE_INFINITY)],
  ['bad-value', 'a length that is no number', set(at.sizing, 'attrs.tolerance.value', Number.NaN)],
  ['bad-value', 'a length to the moon', set(at.sizing, 'attrs.tolerance.value', 4e8)],
  ['bad-value', 'a line of unknown kind', set(at.ease, 'attrs.rule.kind', 'magic')],
  ['bad-value', 'a line of two kinds', set(at.ease, 'attrs.rule.formula', '1')],
  ['bad-value', 'values both for all and for each', set(at.ease, 'attrs.rule.values.each', {})],
  ['bad-value', 'a piece made half a time', set(at.piece, 'attrs.make', 0.5)],
  ['bad-value', 'a negative gauge', set(gauges, 'content', [gauge({ stitches: -1 })])],
  [
    'bad-value',
    'a photograph of nothing',
    (tree) => void at.blocks(tree).content.push({ type: 'photo', attrs: { id: 'p' } }),
  ],
  ['repeated-id', 'two rows', (tree) => void at.blocks(tree).content.push(at.row(tree))],
  ['repeated-id', 'a row and a size', set(at.row, 'attrs.id', 'size-s')],
  [
    'too-many',
    'sizes',
    set(
      at.sizes,
      'content',
      Array.from({ length: 65 }, (_, n) => ({
        type: 'size',
        attrs: { id: `s${n}` },
      })),
    ),
  ],
  [
    'too-many',
    'rows',
    set(
      at.blocks,
      'content',
      Array.from({ length: TREE_LIMITS.rows + 1 }, (_, n) => row(`r${n}`)),
    ),
  ],
  ['too-many', 'characters in one row', set(at.row, 'content', text('x'.repeat(VALUE_LIMITS.paragraph + 1)))],
  [
    'too-many',
    'characters in all',
    set(
      at.blocks,
      'content',
      Array.from({ length: 51 }, (_, n) => ({
        ...row(`r${n}`),
        content: text('x'.repeat(VALUE_LIMITS.paragraph)),
      })),
    ),
  ],
  [
    'too-many',
    'characters in forms',
    set(
      at.doc,
      'content.2.content.4.content',
      Array.from({ length: 600 }, (_, n) => ({
        type: 'abbreviation',
        attrs: { short: `a${n}`, meaning: 'x'.repeat(VALUE_LIMITS.sentence) },
      })),
    ),
  ],
  [
    'too-many',
    'figures',
    set(
      at.row,
      'content',
      Array.from({ length: TREE_LIMITS.nodes }, () => ({ type: 'figure' })),
    ),
  ],
];

describe('trees from outside', () => {
  test('the good tree is a document', () => {
    expect(verdict(goodTree())).toBe('a document');
  });

  test.each(cases)('%s: %s', (code, _, spoil) => {
    const tree = goodTree();
    const other = spoil(tree);
    expect(verdict(other === undefined ? tree : other)).toBe(code);
  });

  test('missing attributes take their first values', () => {
    const tree = goodTree();
    at.row(tree).attrs = { id: 'row-first' };
    const checked = checkTree(tree);
    expect(checked.ok && checked.document.child(5).child(0).child(1).child(0).attrs).toEqual({
      id: 'row-first',
      sizes: null,
      form: 'row',
      title: null,
    });
  });

  test('the refusal names the part and the value', () => {
    const tree = goodTree();
    at.sizing(tree).attrs.tolerance.value = 1e300;
    const checked = checkTree(tree);
    expect(checked.ok ? null : checked.error.message).toContain('(the sizes: tolerance, value)');
  });

  test('what points at nothing is no reason to refuse: a half-written pattern opens', () => {
    const pattern: Pattern = {
      ...blank,
      sample: 'gone',
      lines: [],
      pieces: [
        {
          ...blank.pieces[0]!,
          start: {
            kind: 'edges',
            edges: [{ piece: 'gone', kind: 'top', amount: 'no such line', which: 1 }],
            round: true,
          },
          blocks: [
            {
              type: 'repeat',
              id: 'again',
              first: 'gone',
              last: '',
              until: { kind: 'times', times: '' },
              sizes: ['gone'],
            },
          ],
        },
      ],
    };
    expect(verdict(compose(pattern).toJSON())).toBe('a document');
  });

  test('any JSON at all is a document or is refused, and is never changed', () => {
    const kinds = Object.keys(schema.nodes);
    const { tree } = fc.letrec((tie) => ({
      tree: fc.oneof(
        { depthSize: 'small' },
        fc.jsonValue(),
        fc.record(
          {
            type: fc.constantFrom(...kinds),
            attrs: fc.oneof(fc.jsonValue(), fc.record({ id: fc.string(), terms: fc.constant('us') })),
            content: fc.array(tie('tree'), { maxLength: 4 }),
            text: fc.string(),
          },
          { requiredKeys: ['type'] },
        ),
      ),
    }));
    fc.assert(
      fc.property(tree, (value) => {
        const before = JSON.stringify(value);
        checkTree(value);
        expect(JSON.stringify(value)).toBe(before);
      }),
      { numRuns: 1_000 },
    );
  });
});

describe('words', () => {
  test('tidied text is plain, and plain text is left alone', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'binary' }),
        fc.constantFrom('', '\uD800', '\u0000', '\n', '\uFFFC'),
        (a, b) => {
          const tidy = tidyText(a + b);
          expect(isPlainText(tidy)).toBe(true);
          expect(tidyText(tidy)).toBe(tidy);
        },
      ),
    );
  });

  test.each([
    ['row-1', true],
    ['2XL', true],
    ['6mo', true],
    ['a_b', true],
    ['', false],
    ['-a', false],
    ['a.b', false],
    ['a b', false],
    ['é', false],
    ['__proto__', false],
    ['constructor', false],
    ['valueOf', false],
  ])('%j as an id: %s', (id, expected) => {
    expect(isId(id)).toBe(expected);
  });
});
