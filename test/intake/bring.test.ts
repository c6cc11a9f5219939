/**
 * What old patterns become: every row with its count in every size, parts in their places, and no word lost. The
 * counts stand beside the sample texts and were worked out by hand.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkTree } from '../../core/document/check.ts';
import { compose } from '../../core/document/compose.ts';
import type { Pattern } from '../../core/document/pattern.ts';
import { type Brought, bring } from '../../core/intake/bring.ts';
import { study } from '../../core/study/index.ts';
import { type OldPattern, oldPatterns } from './old-patterns.ts';

function brought(text: string, terms: 'us' | 'uk' | null = null): Brought {
  const result = bring(text, { terms, title: 'File', date: '2026-01-01' });
  if (!result.ok) throw new Error(result.message);
  return result.brought;
}

/** For each piece, the stitches that each written row leaves in every size; one number where all are the same. */
function countsOf(pattern: Pattern): OldPattern['pieces'] {
  return study(pattern).pieces.map(({ piece, blocks }) => ({
    name: piece.name,
    ...(piece.make === 1 ? {} : { make: piece.make }),
    counts: blocks
      .filter(({ block }) => block.type === 'row' || block.type === 'repeat')
      .map(({ sizes }) => {
        const each = sizes.map((size) => size?.tally.stitches ?? null);
        return each.every((count) => count === each[0]) ? (each[0] ?? [null]) : each;
      }),
  }));
}

describe.each(oldPatterns)('$style', (old) => {
  const result = brought(old.text);

  test('title, sizes, pieces and the count of every row', () => {
    expect(result.pattern.about.title).toBe(old.title);
    expect(result.pattern.sizes.map(({ label }) => label)).toEqual(old.sizes);
    expect(countsOf(result.pattern)).toEqual(old.pieces);
  });

  test('every row is followed, and the terms are known without asking', () => {
    expect(result.market).toMatchObject({ terms: old.terms, sure: true });
    const written = old.pieces.reduce((sum, { counts }) => sum + counts.length, 0);
    expect(result.rows).toEqual({ written, followed: written });
  });

  test('the other parts', () => {
    expect(old.also?.(result.pattern)).toEqual(old.expected);
  });
});

test.each([
  ['400 m of DK weight yarn, 4.5 mm hook', ['DK weight yarn'], [4.5]],
  ['3 balls of Aran yarn and a 5 mm hook', ['Aran yarn'], [5]],
  ['DK yarn, 50 g / 120 m, 4 mm and 5 mm hooks', ['DK yarn'], [4, 5]],
  ['Cotton yarn, hook 3.5 mm', ['Cotton yarn'], [3.5]],
  ['4 mm hook for the body in worsted yarn', [], [4]],
] as const)('materials on one line: %s', (line, yarns, hooks) => {
  const { pattern } = brought(
    `Shawl\n\nMaterials: ${line}\n\nBody\nCh 9.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (8 sc)`,
    'us',
  );
  expect(pattern.yarns).toHaveLength(yarns.length);
  for (const [i, name] of yarns.entries()) expect(pattern.yarns[i]!.name).toContain(name.split(' ')[0]!);
  expect(pattern.hooks.map(({ mm }) => mm)).toEqual(hooks);
});

test.each([
  ['80% merino wool, 20% nylon, 100 g = 400 m', '80% merino wool, 20% nylon', 'Fen Sock yarn'],
  ['(100 % organic cotton), 50 g / 120 m', '100 % organic cotton', 'Fen Sock yarn'],
  ['60% alpaca/40% silk; 50 g/100 m', '60% alpaca/40% silk', 'Fen Sock yarn'],
  ['in a cotton that is not too shiny', '', 'Fen Sock yarn, in a cotton that is not too shiny'],
])('the fibre of a yarn: %s', (words, fibre, name) => {
  const { pattern } = brought(
    `Shawl\n\nMaterials\nFen Sock yarn, ${words}\n4 mm hook\n\nBody\nCh 9.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (8 sc)`,
    'us',
  );
  expect(pattern.yarns[0]).toMatchObject({ fibre, name });
});

test.each([
  ['Recommended ease: 5 to 10 cm', '5 to 10 cm'],
  ['Finished with 5 cm (2 in) of positive ease', 'Finished with 5 cm (2 in) of positive ease.'],
  ['Shown in size M with 8 cm ease at the bust.', 'Shown in size M with 8 cm ease at the bust.'],
])('ease said among the sizes is how it is worn, and no measurement: %s', (line, fit) => {
  const { pattern } = brought(
    `Tabard\n\nSizes: S (M, L)\nFinished bust: 90 (100, 110) cm\n${line}\n\nBody\nCh 9.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (8 sc)`,
    'us',
  );
  expect(pattern.about.fit).toBe(fit);
  expect(pattern.lines.map(({ name }) => name)).toEqual(['finished bust']);
  expect(pattern.notes).toEqual([]);
});

describe('a piece that begins on another', () => {
  const back = `Tabard

Sizes: S (M)

Back
Ch 21 (25).
Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 (24) sc)
Row 2: Ch 1, sc in each st across, turn. (20 (24) sc)
Row 3: Ch 1, sc in first 8 (10) sts, turn, leaving rem sts unworked. (8 (10) sc)
Fasten off.

`;
  test.each([
    [
      'its last row',
      'Row 1: With RS facing, join yarn with sl st in first st, ch 1, sc in each st across. (8 (10) sc)',
      'top',
    ],
    [
      'its foundation, which its count shows',
      'Row 1: With RS facing, join yarn with sl st in first ch, ch 1, sc in each ch across. (20 (24) sc)',
      'foundation',
    ],
    [
      'its row-ends',
      'Row 1: With RS facing, join yarn, ch 1, sc in each row end along side edge. (3 sc)',
      'row-ends',
    ],
  ])('%s', (_, first, kind) => {
    const { pattern, rows, doubts } = brought(`${back}Border\n${first}\nFasten off.`, 'us');
    const [on, border] = pattern.pieces;
    expect(border!.start).toMatchObject({ kind: 'edges', edges: [{ piece: on!.id, kind }] });
    expect(rows).toEqual({ written: 5, followed: 5 });
    expect(doubts.find(({ node }) => node === border!.id)?.why).toContain('Check whether that is meant');
  });

  test('where nothing comes out it stays as it was, and its rows are told', () => {
    const { pattern, rows } = brought(
      `${back}Border\nRow 1: With RS facing, join yarn with sl st in first st, ch 1, sc in each st across. (99 sc)`,
      'us',
    );
    expect(pattern.pieces[1]!.start).toEqual({ kind: 'chain' });
    expect(rows.followed).toBe(4);
  });
});

describe('no word is lost', () => {
  /** What stands in a pattern, and the words that its forms stand for. */
  function coveredBy({ pattern, leftOut }: Brought): string {
    return `${JSON.stringify(pattern)} ${leftOut.join(' ')}`.toLowerCase();
  }
  /** Labels, counts that agreed, heads of parts, units and what hooks and gauges are asked for in forms. */
  const FORMS =
    /^(?:rows?|rnds?|rounds?|next|only|sizes?|all|for|to|fit|and|by|make|hooks?|yarns?|notions?|materials?|supplies|you|will|need|gauge|tension|abbreviations?|abkürzungen|material|maschenprobe|fertigstellung|skill|level|easy|notes?|pattern|instructions|special|stitch(?:es)?|guide|finishing|finish|finished|measurements?|assembly|making|care|size|crochet|designed|this|is|written|in|us|terms|foundation|works?|repeat|rep|as|times|twelve|also|approx|x|g|m|mm|cm|ch|sc|hdc|dc|tr|htr|rd|st|nd|th|sts?|sps?|years|inc|dec|balls?|of|the|up|with|over|or|blocked|only|number|letter|two|skein)$/u;

  const lost = (text: string): readonly string[] => {
    const all = coveredBy(brought(text));
    // What ligatures, soft hyphens and broken lines stand for is tested with passages.
    const words =
      text
        .replace(/\uFB01/gu, 'fi')
        .replace(/-\n/gu, '')
        .toLowerCase()
        .match(/\p{L}{2,}/gu) ?? [];
    return [...new Set(words)].filter((word) => !FORMS.test(word) && !all.includes(word));
  };

  test.each(oldPatterns)('$style', ({ text }) => {
    // The trade's own abbreviations are explained by the printed list, in the reader's terms.
    const trades =
      /^(?:magic|ring|single|double|half|treble|chain|space|stitch|skip|sl|slip|es|mr|st|sk|sp|ch)$/u;
    expect(lost(text).filter((word) => !trades.test(word))).toEqual([]);
  });

  const lines = oldPatterns.flatMap(({ text }) => text.split('\n'));
  test('whatever the order of the lines, and the pattern can be saved', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.oneof(fc.constantFrom(...lines), fc.constantFrom('', 'Zymurgy quondam', 'Quixotic: plangent')),
          {
            maxLength: 40,
          },
        ),
        (chosen) => {
          const text = chosen.join('\n');
          const result = bring(text, { terms: null, title: 'File', date: '2026-01-01' });
          if (!result.ok) return;
          expect(checkTree(compose(result.brought.pattern).toJSON()).ok).toBe(true);
          const all = coveredBy(result.brought);
          for (const word of ['zymurgy', 'quondam', 'quixotic', 'plangent'])
            if (text.toLowerCase().includes(word)) expect(all).toContain(word);
        },
      ),
      { numRuns: 60 },
    );
  }, 120_000);

  test('no text makes it throw', () => {
    const bits = fc.constantFrom(
      ...'( ) [ ] { } * ; : , . – / " \n \f \t 1 23 99999 ½ ﬁ \u0000 \uFFFC \uD800 Row Rnd R1: 1st # © ch dc sc in'.split(
        ' ',
      ),
      ' ',
      '\n',
    );
    fc.assert(
      fc.property(fc.array(bits, { maxLength: 120 }), (parts) => {
        const result = bring(parts.join(''), { terms: null, title: '', date: '2026-01-01' });
        if (result.ok) expect(checkTree(compose(result.brought.pattern).toJSON()).ok).toBe(true);
      }),
      { numRuns: 200 },
    );
  }, 120_000);
});
