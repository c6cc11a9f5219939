/** Finding and replacing in the manuscript: what is found, what is passed over, and undoing. */
import { history, undo } from 'prosemirror-history';
import { EditorState, TextSelection } from 'prosemirror-state';
import { describe, expect, test } from 'vitest';
import { compose } from '../../core/document/compose.ts';
import { project } from '../../core/document/project.ts';
import { blankPattern } from '../../core/outlines/blank.ts';
import { matchesIn, nextMatch } from '../../renderer/find/matches.ts';
import { find, finding, goToMatch, lookFor, replaceAll, replaceMatch } from '../../renderer/find/plugin.ts';
import { panelLines, piece, row } from '../study/builder.ts';

const document = compose({
  ...blankPattern({ title: 'Shell Cowl', terms: 'us', units: 'metric', date: '2026-01-01' }),
  lines: panelLines(),
  pieces: [
    piece('p', 'Shell panel', [
      row('a', 'Ch {panel stitches + 1}, turn.'),
      row('b', 'Sc in each sc across, ch 1, turn.'),
      row('c', 'Scarf  stitch: SC in {panel stitches} sc.'),
    ]),
  ],
});
const options = { words: '', matchCase: false, wholeWord: false };
const begin = () => EditorState.create({ doc: document, plugins: [history({ newGroupDelay: 0 }), find()] });
const texts = (state: EditorState) =>
  project(state.doc).pieces[0]!.blocks.map((block) => (block.type === 'row' ? block.text.text : ''));

describe('finding', () => {
  test.each([
    ['sc', {}, 5],
    ['sc', { wholeWord: true }, 4],
    ['sc', { matchCase: true }, 2],
    ['SC', { matchCase: true, wholeWord: true }, 1],
    ['shell', {}, 2],
    ['ch 1,', { wholeWord: true }, 1],
    ['scarf stitch', {}, 1],
    ['(', {}, 0],
    ['.', {}, 3],
    // A figure is no text, and nothing is found over one; names of lines are not in the manuscript.
    ['panel stitches', {}, 0],
    ['ch , turn', {}, 0],
    ['ch ', {}, 3],
    ['', {}, 0],
  ])('%j with %j: %i', (words, more, count) => {
    expect(matchesIn(document, { ...options, ...more, words }).length).toBe(count);
  });

  test('goes on from a place, and around the ends', () => {
    const matches = [
      { from: 5, to: 7 },
      { from: 9, to: 11 },
    ];
    expect([0, 5, 6, 9, 10].map((at) => nextMatch(matches, at, 1))).toEqual([0, 0, 1, 1, 0]);
    expect([0, 6, 7, 12].map((at) => nextMatch(matches, at, -1))).toEqual([1, 1, 0, 1]);
    expect(nextMatch([], 3, 1)).toBe(-1);
  });
});

describe('replacing', () => {
  test('one after the other, going on to the next', () => {
    let state = begin();
    state = state.apply(lookFor(state, { ...options, words: 'turn' }));
    expect(finding.getState(state)).toMatchObject({ current: 0 });
    state = state.apply(replaceMatch(state, 'flip'));
    expect(texts(state).slice(0, 2)).toEqual(['Ch \uFFFC, flip.', 'Sc in each sc across, ch 1, turn.']);
    state = state.apply(replaceMatch(state, 'flip'));
    expect(texts(state)[1]).toBe('Sc in each sc across, ch 1, flip.');
    expect(finding.getState(state)?.matches).toEqual([]);
  });

  test('all at once is one step of undoing', () => {
    let state = begin();
    state = state.apply(lookFor(state, { ...options, words: 'sc', wholeWord: true }));
    state = state.apply(replaceAll(state, 'hdc'));
    expect(texts(state)).toEqual([
      'Ch \uFFFC, turn.',
      'hdc in each hdc across, ch 1, turn.',
      'Scarf  stitch: hdc in \uFFFC hdc.',
    ]);
    undo(state, (transaction) => {
      state = state.apply(transaction);
    });
    expect(texts(state)).toEqual(texts(begin()));
  });

  test('by nothing takes the words away', () => {
    let state = begin();
    state = state.apply(lookFor(state, { ...options, words: ', turn' }));
    expect(texts(state.apply(replaceAll(state, '')))[0]).toBe('Ch \uFFFC.');
  });

  test('going to matches selects them', () => {
    let state = begin();
    state = state.apply(state.tr.setSelection(TextSelection.atStart(state.doc)));
    state = state.apply(lookFor(state, { ...options, words: 'ch 1' }));
    const { from, to } = state.selection;
    expect(state.doc.textBetween(from, to)).toBe('ch 1');
    expect(finding.getState(state.apply(goToMatch(state, 1)))).toMatchObject({ current: 0 });
  });
});
