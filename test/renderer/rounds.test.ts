/** What is worked in rounds is told in rounds: plans of shaping, and rows that are repeated. */
import { describe, expect, test } from 'vitest';
import type { Block, Pattern } from '../../core/document/pattern.ts';
import { settled } from '../../core/review/accepted.ts';
import { filledText } from '../../core/study/filled.ts';
import { study } from '../../core/study/study.ts';
import { Reporter } from '../../renderer/analysis/reporter.ts';
import { blockWords } from '../../renderer/words/blocks.ts';
import { row, smallPattern, written } from '../study/builder.ts';

type Form = 'row' | 'round';

/** The panel shaped once for each form, by the same plan. */
function shapedIn(...forms: readonly Form[]): Pattern {
  const before = smallPattern();
  const [panel] = before.pieces;
  const shapings = forms.map(
    (form, i): Block => ({
      type: 'shaping',
      id: `q-${form}-${i}`,
      line: 'Taper',
      sizes: null,
      shaped: row(`s-${form}-${i}`, 'Ch 3, dc2tog, dc in each st to end.', { form }),
      even: row(`e-${form}-${i}`, 'Ch 3, dc in each st to end.', { form }),
    }),
  );
  const others = panel!.blocks.filter(({ type }) => type !== 'shaping');
  return {
    ...before,
    notes: [written('Work as follows: {taper}.')],
    pieces: [{ ...panel!, blocks: [...others, ...shapings] }],
  };
}

const IN_ROWS = 'Dec 1 st at each end of next and every 4th row 4 more times';
const IN_ROUNDS = 'Dec 1 st at each side of next and every 4th rnd 4 more times';

describe('a plan of shaping', () => {
  test.each<[readonly Form[], string]>([
    [[], IN_ROWS],
    [['row'], IN_ROWS],
    [['round'], IN_ROUNDS],
    [['round', 'round'], IN_ROUNDS],
    // One plan for both is told once, in the words that are never wrong of a flat piece.
    [['round', 'row'], IN_ROWS],
  ])('shaped by %j is told "%s"', (forms, words) => {
    const pattern = shapedIn(...forms);
    const of = study(pattern, null);
    expect(filledText(pattern.notes[0]!, of.sheet, pattern).text).toBe(`Work as follows: ${words}.`);
    const { lines, figures } = new Reporter().changes(of, settled(of), 1);
    expect(lines?.find(({ id }) => id === 'ta')?.cells[0]?.value?.metric).toBe(words);
    expect(new Map(figures).get('taper')?.[0]?.metric).toBe(words);
  });

  test('is told anew when its rows become rounds, though the plan is the same', () => {
    const reporter = new Reporter();
    const pattern = shapedIn('row');
    const before = study(pattern, null);
    reporter.changes(before, settled(before), 1);
    const after = study({ ...pattern, pieces: shapedIn('round').pieces }, before);
    const { lines, figures } = reporter.changes(after, settled(after), 2);
    expect(lines?.map(({ cells }) => cells[0]?.value?.metric)).toEqual([IN_ROUNDS]);
    expect(new Map(figures).get('taper')?.[0]?.metric).toBe(IN_ROUNDS);
  });
});

test.each([
  ['Row 2', 'Row 3', 'rows', 'Repeat Rows 2 and 3 for 8 more rows.'],
  ['Rnd 2', 'Rnd 3', 'rows', 'Repeat Rnds 2 and 3 for 8 more rounds.'],
  ['Rnd 2', 'Rnd 2', 'total', 'Repeat Rnd 2 until there are 8 rounds.'],
  ['Rnd 2', 'Rnd 5', 'times', 'Repeat Rnds 2–5, 8 times more.'],
] as const)('%s to %s, %s: "%s"', (first, last, until, words) => {
  expect(blockWords.repeat(first, last, until, '8')).toBe(words);
});
