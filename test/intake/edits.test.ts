/** Taking offers and doubts in an open pattern: one edit each, which undo takes back; words that changed are left. */
import { EditorState } from 'prosemirror-state';
import { expect, test } from 'vitest';
import { compose } from '../../core/document/compose.ts';
import { project } from '../../core/document/project.ts';
import { offersIn, takeOffers } from '../../core/intake/offers.ts';
import { study } from '../../core/study/index.ts';
import { settleDoubt, takeFigures } from '../../renderer/bring/edits.ts';
import { piece, row, smallPattern } from '../study/builder.ts';

// Widths 45, 51 and 57 cm at 16 stitches in 10 cm: 72, 81.6 and 91.2, as multiples of 3 and 1 more 73, 82 and 91.
const pattern = {
  ...smallPattern(),
  pieces: [
    piece('p', 'Panel', [
      row('r', 'Ch 73 (82, 91), turn, sc in next 73 (82, 91) sts.'),
      row('q', 'Ch 73 (82, 91).'),
    ]),
  ],
  workbook: {
    ...smallPattern().workbook,
    doubts: [
      { node: 'r', why: 'One.' },
      { node: 'q', why: 'Two.' },
    ],
  },
};
const state = EditorState.create({ doc: compose(pattern) });
const offers = offersIn(study(pattern));

test('all offers at once are what the pattern with figures is', () => {
  expect(offers).toHaveLength(3);
  const after = state.apply(takeFigures(state, offers)!);
  after.doc.check();
  expect(project(after.doc)).toEqual(takeOffers(pattern, offers));
});

test('an offer whose words have changed is left, and with none left nothing is done', () => {
  const edited = state.apply(
    state.tr.insertText('x', state.doc.resolve(1).end(1), state.doc.resolve(1).end(1)),
  );
  expect(takeFigures(edited, offers)).not.toBeNull();
  expect(
    takeFigures(
      state,
      offers.map((offer) => ({ ...offer, text: '9 (9, 9)' })),
    ),
  ).toBeNull();
  expect(takeFigures(state, [{ ...offers[0]!, node: 'gone' }])).toBeNull();
});

test('a doubt that was looked at is gone, the others stay', () => {
  const after = state.apply(settleDoubt(state, 0));
  expect(project(after.doc).workbook.doubts).toEqual([{ node: 'q', why: 'Two.' }]);
});
