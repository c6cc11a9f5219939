/** Accepting a finding in the document: once, twice, taken back, undone. */
import { history, undo } from 'prosemirror-history';
import { EditorState } from 'prosemirror-state';
import { expect, test } from 'vitest';
import { compose } from '../../core/document/compose.ts';
import { project } from '../../core/document/project.ts';
import { keyOfFinding, settled } from '../../core/review/accepted.ts';
import { study } from '../../core/study/index.ts';
import { accept, takeBack } from '../../renderer/review/acceptances.ts';
import { cleanPattern, findingsOf, note } from '../review/builder.ts';

const spoiled = note('Mark the BOR with a thread.')(cleanPattern());
const [finding] = findingsOf(spoiled);
const begun = (): EditorState => EditorState.create({ doc: compose(spoiled), plugins: [history()] });
const letStand = (state: EditorState, reason: string): EditorState =>
  state.apply(accept(state, spoiled, finding!, reason, '2026-11-27'));
const reasons = ({ doc }: EditorState) => project(doc).workbook.accepted.map(({ reason }) => reason);
const open = ({ doc }: EditorState) => settled(study(project(doc))).open.map(({ code }) => code);

test('a finding that is accepted before the study is back is accepted once, with the later reason', () => {
  const twice = letStand(letStand(begun(), 'Known.'), 'Known to all testers.');
  expect(reasons(twice)).toEqual(['Known to all testers.']);
  expect(open(twice)).toEqual([]);
});

test('taking it back and undoing that are one step each', () => {
  let state = letStand(begun(), 'Known.');
  const [acceptance] = project(state.doc).workbook.accepted;
  state = state.apply(takeBack(state, acceptance!));
  expect([reasons(state), open(state)]).toEqual([[], ['abbreviation-not-explained']]);
  undo(state, (transaction) => {
    state = state.apply(transaction);
  });
  expect([reasons(state), open(state)]).toEqual([['Known.'], []]);
  undo(state, (transaction) => {
    state = state.apply(transaction);
  });
  expect([reasons(state), open(state)]).toEqual([[], ['abbreviation-not-explained']]);
});

test('a finding is known by the same words before it is saved and after', () => {
  expect(keyOfFinding(project(compose(spoiled)), finding!)).toBe(keyOfFinding(spoiled, finding!));
});
