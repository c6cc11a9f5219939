/** What the maker accepted is set apart, comes back when its words change, and is told when it is left over. */
import { describe, expect, it } from 'vitest';
import { compose } from '../../core/document/compose.ts';
import { readContainer, writeContainer } from '../../core/document/container.ts';
import type { Pattern } from '../../core/document/pattern.ts';
import { project } from '../../core/document/project.ts';
import type { Acceptance } from '../../core/document/workbook.ts';
import { reportBooklet } from '../../core/print/editor-report.ts';
import { acceptanceOf, settled, wordsPointedAt } from '../../core/review/accepted.ts';
import { review } from '../../core/review/index.ts';
import { reportOf } from '../../core/review/report.ts';
import { study } from '../../core/study/index.ts';
import { cleanPattern, findingsOf, note, type Plant, reword } from './builder.ts';

const all =
  (...plants: readonly Plant[]): Plant =>
  (pattern) =>
    plants.reduce((of, plant) => plant(of), pattern);

const accepting =
  (...accepted: readonly Acceptance[]): Plant =>
  (pattern) => ({ ...pattern, workbook: { ...pattern.workbook, accepted } });

const codes = (pattern: Pattern) => {
  const { open, accepted } = settled(study(pattern));
  return { open: open.map(({ code }) => code), accepted: accepted.map(({ finding }) => finding.code) };
};

const cuff = note('Mark the BOR with a thread.');
const spoiled = cuff(cleanPattern());
const [unknown] = findingsOf(spoiled);
const letStand = acceptanceOf(spoiled, unknown!, 'The testers all knew it.', '2026-11-25');

describe('an accepted finding', () => {
  it('was found to begin with', () => {
    expect(unknown!.code).toBe('abbreviation-not-explained');
    expect(letStand).toEqual({
      code: 'abbreviation-not-explained',
      node: 'notes:0',
      words: 'BOR',
      reason: 'The testers all knew it.',
      date: '2026-11-25',
    });
  });

  it.each<[string, Plant, readonly string[], readonly string[]]>([
    ['is set apart', cuff, [], ['abbreviation-not-explained']],
    [
      'stays accepted when a note is written above it',
      all(note('Work loosely.'), cuff),
      [],
      ['abbreviation-not-explained'],
    ],
    [
      'stays accepted when the words around it change',
      note('Put a thread at the BOR.'),
      [],
      ['abbreviation-not-explained'],
    ],
    [
      'is told again when its words change, and the acceptance as left over',
      note('Mark the BSR with a thread.'),
      ['abbreviation-not-explained', 'acceptance-stale'],
      [],
    ],
    ['is told as left over when it is gone', (pattern) => pattern, ['acceptance-stale'], []],
  ])('%s', (_, plant, open, accepted) => {
    expect(codes(all(plant, accepting(letStand))(cleanPattern()))).toEqual({ open, accepted });
  });

  it('does not take another of its kind with it', () => {
    const pattern = all(cuff, note('End at the EOR.'), accepting(letStand))(cleanPattern());
    expect(codes(pattern)).toEqual({
      open: ['abbreviation-not-explained'],
      accepted: ['abbreviation-not-explained'],
    });
  });

  it('may be a mistake', () => {
    const wrong = reword('front-2', 'Ch 1, sc in each st across, turn. (70 sc)')(cleanPattern());
    const [error] = findingsOf(wrong).filter(({ severity }) => severity === 'error');
    const kept = accepting(acceptanceOf(wrong, error!, 'The count is told without the edge.', ''))(wrong);
    expect(error!.code).toBe('stated-count-wrong');
    expect(codes(kept).open).not.toContain('stated-count-wrong');
    expect(codes(kept).accepted).toEqual(['stated-count-wrong']);
  });

  it('is known by its sentence where it points at no words', () => {
    const bare = { ...cleanPattern(), yarns: [] };
    const [finding] = review(study(bare));
    expect(wordsPointedAt(bare, finding!)).toBe(finding!.message);
    expect(codes(accepting(acceptanceOf(bare, finding!, 'A swatch.', ''))(bare)).open).toEqual([]);
  });

  it('shows a figure among its words as its expression', () => {
    const pattern = reword('front-2', 'Ch 1, sc in next {panel stitches} dcs across, turn.')(cleanPattern());
    const where = { node: 'front-2', from: 6, to: 24 };
    const finding = { ...unknown!, where };
    expect(wordsPointedAt(pattern, finding)).toBe('sc in next [panel stitches] dcs a');
  });

  it('names what it was told of when it is left over', () => {
    const { open } = settled(study(accepting(letStand)(cleanPattern())));
    expect(open[0]!.message).toBe(
      '"An abbreviation is not explained" at "BOR" was accepted ("The testers all knew it."), but nothing of the kind is found there now; take the acceptance away.',
    );
  });
});

describe('a reason', () => {
  const kept = (reason: string): Pattern =>
    accepting(acceptanceOf(spoiled, unknown!, reason, '2026-11-25'))(spoiled);
  /** The pattern as it comes back from a file. */
  const reopened = (pattern: Pattern): Pattern => {
    const read = readContainer(writeContainer(compose(pattern), new Map()));
    if (!read.ok) throw new Error(read.error.message);
    return project(read.document);
  };

  it.each([
    ['is empty', '', ''],
    ['is blank', '   ', ''],
    ['is as long as there is room for', 'x'.repeat(2000), 'x'.repeat(2000)],
    ['is enormous', 'Because. '.repeat(30_000), 'Because. '.repeat(222).concat('Be')],
    // 1999 letters and then a picture of two units, which is not cut in half.
    ['ends in a picture where the room does', `${'x'.repeat(1999)}🧶`, 'x'.repeat(1999)],
    ['has pictures of several signs', 'Testers liked it 👩🏽‍🎨🧶', 'Testers liked it 👩🏽‍🎨🧶'],
    ['runs from right to left', 'בסדר גמור — مقبول', 'בסדר גמור — مقبول'],
    ['runs over lines', ' one\ntwo\tthree\u0000 ', 'one two three'],
    ['has half of a sign', 'a\ud83d b', 'a b'],
  ])('that %s is kept, saved, opened again and told to the editor', (_, reason, expected) => {
    const pattern = reopened(kept(reason));
    expect(pattern.workbook.accepted.map((own) => own.reason)).toEqual([expected]);
    expect(codes(pattern)).toEqual({ open: [], accepted: ['abbreviation-not-explained'] });
    const report = reportOf(study(pattern));
    expect(JSON.parse(JSON.stringify(report)).accepted).toMatchObject([{ why: expected }]);
    const words = JSON.stringify(reportBooklet(report).parts);
    expect(words).toContain(expected === '' ? 'no reason is given' : JSON.stringify(expected).slice(1, -1));
  });

  it('given twice for the same is the later one, and nothing is left over', () => {
    const again = { ...letStand, reason: 'On second thoughts.', date: '2026-11-26' };
    const pattern = accepting(letStand, again)(spoiled);
    expect(codes(pattern)).toEqual({ open: [], accepted: ['abbreviation-not-explained'] });
    expect(settled(study(pattern)).accepted.map(({ acceptance }) => acceptance.reason)).toEqual([
      'On second thoughts.',
    ]);
  });

  it('given twice for what is gone is told as left over once', () => {
    const pattern = accepting(letStand, { ...letStand, reason: 'Again.' })(cleanPattern());
    expect(codes(pattern).open).toEqual(['acceptance-stale']);
  });

  it('stands for the whole of words that are longer than there is room for', () => {
    // 1998 letters, so that the room for words ends within a picture.
    const long = note(`${'x'.repeat(1998)}🧶🧶`)(cleanPattern());
    const finding = { ...unknown!, where: { node: 'notes:0', from: 0, to: 2002 } };
    expect(wordsPointedAt(long, finding)).toBe(`${'x'.repeat(1998)}🧶`);
    const odd = note(`${'x'.repeat(1999)}🧶🧶`)(cleanPattern());
    expect(wordsPointedAt(odd, finding)).toBe('x'.repeat(1999));
  });
});

describe('a part that was brought in', () => {
  const doubting =
    (node: string): Plant =>
    (pattern) => ({
      ...pattern,
      workbook: { ...pattern.workbook, doubts: [{ node, why: 'This may be a row or a remark.' }] },
    });

  it.each([
    ['front-2', 'Ch 1, sc in each st across, turn.'.length],
    ['front', 0],
    ['finishing:0', cleanPattern().finishing[0]!.text.length],
  ])('at %s is told until the maker confirms it', (node, to) => {
    const found = review(study(doubting(node)(cleanPattern())));
    expect(found.map(({ code, where }) => [code, where])).toEqual([
      ['brought-in-unsure', { node, from: 0, to }],
    ]);
    expect(found[0]!.message).toContain('This may be a row or a remark;');
  });

  it('is not told once it is gone', () => {
    expect(review(study(doubting('no-such-row')(cleanPattern())))).toEqual([]);
  });
});
