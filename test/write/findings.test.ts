/** Marks of findings over states: mapped through edits, late reports let go, fixes put where the words are today. */
import { type Plugin, TextSelection } from 'prosemirror-state';
import { describe, expect, test } from 'vitest';
import type { Finding } from '../../core/finding.ts';
import { RULES } from '../../core/review/index.ts';
import { NOTHING_KNOWN, type Report } from '../../renderer/analysis/report.ts';
import { identity } from '../../renderer/desk/identity.ts';
import { listAt } from '../../renderer/desk/places.ts';
import { moveItem } from '../../renderer/write/commands/move.ts';
import { applyFix, findingToFix, goToFinding } from '../../renderer/write/findings/commands.ts';
import { allMarked, findingMarks, openFinding, takeFindings } from '../../renderer/write/findings/marks.ts';
import { piecesOf, run, stateOf } from './written.ts';

const plugins = (): readonly Plugin[] => [identity(), findingMarks(() => null)];

const begun = (...lines: readonly string[]) => stateOf([lines], [], plugins());

type State = ReturnType<typeof begun>;

const rowOf = (state: State, at: number) => listAt(state.doc, 'pieces').node.child(0).child(1).child(at);

/** A finding at words of a row. */
function finding(state: State, at: number, words: string, replacement: string | null = null): Finding {
  const row = rowOf(state, at);
  const from = row.textBetween(0, row.content.size, '', '\uFFFC').indexOf(words);
  return {
    code: 'word-not-read',
    severity: 'error',
    where: { node: row.attrs.id, from, to: from + words.length },
    sizes: [],
    message: `“${words}” is not understood.`,
    detail: null,
    fix: replacement === null ? null : { label: `Write ${replacement}`, replacement },
  };
}

function report(findings: readonly Finding[]): Report {
  const byNode = new Map<string | null, Finding[]>();
  for (const one of findings) byNode.set(one.where.node, [...(byNode.get(one.where.node) ?? []), one]);
  return { ...NOTHING_KNOWN, findings, byNode };
}

const told = (state: State, findings: readonly Finding[]): State =>
  state.apply(takeFindings(state.tr, report(findings)));

const marks = (state: State) => allMarked(state).map(({ from, to }) => state.doc.textBetween(from, to));

describe('marks', () => {
  test('stand at the words, and move with them', () => {
    const state = begun('row $0Ch 1, scc across.');
    let next = told(state, [finding(state, 0, 'scc')]);
    expect(marks(next)).toEqual(['scc']);
    next = next.apply(next.tr.insertText('Now '));
    expect(marks(next)).toEqual(['scc']);
  });

  test('go with words that are deleted, and come again with the next report that says the same', () => {
    const state = begun('row $0Ch 1, scc across.', 'row Sc.');
    const found = finding(state, 0, 'scc');
    const first = told(state, [found]);
    const moved = run(first, moveItem(1));
    const again = told(moved, [found]);
    expect(marks(again)).toEqual(['scc']);
    expect(allMarked(again)[0]!.from).toBeGreaterThan(allMarked(first)[0]!.from);
  });

  test('beside words that are deleted go with the next report that says nothing of them', () => {
    const state = begun('row $0Ch pan.');
    const first = told(state, [finding(state, 0, 'Ch'), finding(state, 0, 'pan')]);
    const pan = allMarked(first)[1]!;
    const next = first.apply(first.tr.delete(pan.from, pan.to));
    expect(marks(next)).toEqual(['Ch']);
    expect(marks(told(next, []))).toEqual([]);
  });

  test('of a text that says the same stay the identical marks', () => {
    const state = begun('row $0Ch 1, scc across.', 'row dcc across.');
    const one = report([finding(state, 0, 'scc'), finding(state, 1, 'dcc')]);
    const first = state.apply(takeFindings(state.tr, one));
    const two: Report = {
      ...one,
      byNode: new Map([...one.byNode].slice(0, 1)),
      findings: one.findings.slice(0, 1),
    };
    const second = first.apply(takeFindings(first.tr, two));
    expect(marks(second)).toEqual(['scc']);
    expect(allMarked(second)[0]!.finding).toBe(allMarked(first)[0]!.finding);
  });
});

describe('a fix', () => {
  const fixed = (state: State): readonly [State, string] => {
    let outcome = '';
    const marked = findingToFix(state)!;
    const next = run(
      state,
      applyFix(marked, (is) => {
        outcome = is;
      }),
    );
    return [next, outcome];
  };
  const open = (state: State) =>
    run(
      state,
      goToFinding(1, () => undefined),
    );

  test('goes where the words are today', () => {
    const state = begun('row $0scc across.');
    const next = told(state, [finding(state, 0, 'scc', 'sc')]);
    const [after, outcome] = fixed(open(next.apply(next.tr.insertText('Ch 1, '))));
    expect(outcome).toBe('fixed');
    expect(piecesOf(after)[0]).toEqual(['row Ch 1, sc$0 across.']);
  });

  test('is refused when the words were changed since', () => {
    const state = begun('row $0scc across.');
    const next = told(state, [finding(state, 0, 'scc', 'sc')]);
    const { from } = allMarked(next)[0]!;
    const [after, outcome] = fixed(open(next.apply(next.tr.insertText('x', from + 1))));
    expect(outcome).toBe('changed');
    expect(piecesOf(after)[0]![0]).toContain('sxcc');
  });

  test('keeps the figure that stands in its words', () => {
    const state = begun('row $0Ch [a] scc.');
    const next = told(state, [finding(state, 0, '\uFFFC scc', '\uFFFC sc')]);
    const [after] = fixed(open(next));
    expect(piecesOf(after)[0]).toEqual(['row Ch [a] sc$0.']);
  });
});

describe('going from finding to finding', () => {
  test('goes round, and opens each', () => {
    const state = begun('row $0scc.', 'row dcc.');
    let next = told(state, [finding(state, 0, 'scc'), finding(state, 1, 'dcc')]);
    const seen: string[] = [];
    for (let i = 0; i < 3; i++) {
      next = run(
        next,
        goToFinding(1, (marked) => seen.push(marked!.words)),
      );
      expect(openFinding(next)!.words).toBe(seen.at(-1));
    }
    expect(seen).toEqual(['scc', 'dcc', 'scc']);
    expect(openFinding(next.apply(next.tr.insertText('x')))).toBeNull();
  });

  test('begins with the one at the caret that was not opened, as behind words just typed', () => {
    const state = begun('row Ch 1, scc$0', 'row dcc.');
    let next = told(state, [finding(state, 0, 'scc'), finding(state, 1, 'dcc')]);
    expect(openFinding(next)).toBeNull();
    const seen: string[] = [];
    for (let i = 0; i < 2; i++) {
      next = run(
        next,
        goToFinding(1, (marked) => seen.push(marked!.words)),
      );
    }
    expect(seen).toEqual(['scc', 'dcc']);
  });

  test('says so where there is none', () => {
    const heard: unknown[] = [];
    run(
      begun('row $0Sc.'),
      goToFinding(1, (marked) => heard.push(marked)),
    );
    expect(heard).toEqual([null]);
  });
});

describe('the caret', () => {
  const at = (state: State, code: string) => {
    const next = told(state, [{ ...finding(state, 0, 'scc'), code }]);
    return next.apply(next.tr.setSelection(TextSelection.create(next.doc, allMarked(next)[0]!.from + 1)));
  };

  test('opens the finding it comes to', () => {
    expect(openFinding(at(begun('row $0Ch 1, scc.'), 'word-not-read'))!.words).toBe('scc');
  });

  test.each(['rows-not-begun', 'piece-without-rows', 'row-without-words'])(
    'opens no finding that says only that nothing is written (%s); F8 does',
    (code) => {
      const state = at(begun('row $0Ch 1, scc.'), code);
      expect(openFinding(state)).toBeNull();
      expect(
        openFinding(
          run(
            state,
            goToFinding(1, () => undefined),
          ),
        )!.finding.code,
      ).toBe(code);
    },
  );

  test('codes that are held back are rules of the review', () => {
    const codes = RULES.map(({ code }) => code);
    expect(codes).toEqual(
      expect.arrayContaining(['rows-not-begun', 'piece-without-rows', 'row-without-words']),
    );
  });
});
