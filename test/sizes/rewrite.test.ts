/** Rewriting a pattern in the other market's terms: what changes, what stays, and back again. */
import fs from 'node:fs';
import { join } from 'node:path';
import { EditorState } from 'prosemirror-state';
import { describe, expect, test } from 'vitest';
import { compose } from '../../core/document/compose.ts';
import { readContainer } from '../../core/document/container.ts';
import type { Pattern } from '../../core/document/pattern.ts';
import { project } from '../../core/document/project.ts';
import { review } from '../../core/review/review.ts';
import { study } from '../../core/study/study.ts';
import { rewriteIn } from '../../renderer/desk/rewrite.ts';
import { smallPattern, written } from '../study/builder.ts';

const examples = join(import.meta.dirname, '../../resources/examples');
const files = fs.readdirSync(examples).filter((name) => name.endsWith('.turnchain'));

function example(name: string): EditorState {
  const read = readContainer(new Uint8Array(fs.readFileSync(join(examples, name))));
  if (!read.ok) throw new Error(read.error.message);
  return EditorState.create({ doc: read.document });
}

/**
 * What the other terms have one way of saying for is lost on the way: "sk" and "skip" are both "miss", "half treble"
 * and "half treble crochet" both "half double crochet". The two are compared as one; all else is word for word.
 */
const alike = (pattern: Pattern): unknown =>
  JSON.parse(
    JSON.stringify(pattern)
      .replace(/\b([Ss])k\b/g, '$1kip')
      .replace(/\b(half treble)(s?)\b(?! crochet)/g, '$1 crochet$2'),
  );

test('rows, prose and forms change, names stay, figures keep their places', () => {
  const small = smallPattern();
  const state = EditorState.create({
    doc: compose({
      ...small,
      notions: [{ id: 'n', name: 'skip ring', amount: null, smallPart: false, cord: false, price: null }],
      abbreviations: { 'fan dc': 'dc in a fan' },
      notes: [written('Work {panel stitches} dc loosely.')],
      lines: small.lines.map((line) => (line.id === 'w' ? { ...line, printed: 'Width over dc' } : line)),
    }),
  });
  const { transaction, changed } = rewriteIn(state, 'uk');
  const next = project(state.apply(transaction).doc);
  expect(changed).toBeGreaterThan(10);
  expect(next.terms).toBe('uk');
  expect(next.gauges[0]!.pattern).toBe('treble crochet');
  expect(next.lines[0]).toMatchObject({ name: 'width', printed: 'Width over tr' });
  expect(next.abbreviations).toEqual({ 'fan tr': 'tr in a fan' });
  expect(next.notes).toEqual([written('Work {panel stitches} tr loosely.')]);
  expect(next.specials[0]).toMatchObject({ nameUs: 'fan', text: written('(tr, ch 1, tr) in same st') });
  expect(next.about.title).toBe('Panel');
  expect(next.pieces[0]!.blocks[3]).toMatchObject({
    text: written('Ch 3, *tr in next st, ch 1, miss 1 st, tr in next st; rep from * across, turn.'),
  });
});

test('a pattern that is in those terms already is left as it is', () => {
  const state = EditorState.create({ doc: compose(smallPattern()) });
  expect(rewriteIn(state, 'us').transaction.docChanged).toBe(false);
});

describe.each(files)('%s', (name) => {
  const state = example(name);
  const before = project(state.doc);
  const other = before.terms === 'us' ? 'uk' : 'us';
  const there = state.apply(rewriteIn(state, other).transaction);

  test('comes to the same counts in the other terms, without a mistake', () => {
    const [one, two] = [study(before), study(project(there.doc))];
    const counts = (of: typeof one) =>
      of.pieces.map(({ blocks }) =>
        blocks.map(({ sizes }) => sizes.map((size) => size?.tally.stitches ?? null)),
      );
    expect(counts(two)).toEqual(counts(one));
    const errors = [...two.findings, ...review(two)].filter(({ severity }) => severity === 'error');
    expect(errors.map(({ message }) => message)).toEqual([]);
  });

  test('is word for word what it was when rewritten back', () => {
    const back = there.apply(rewriteIn(there, before.terms).transaction);
    expect(alike(project(back.doc))).toEqual(alike(before));
  });
});
