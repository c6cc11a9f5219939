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
import { furtherStyles } from './further-styles.ts';
import { houseStyles } from './house-styles.ts';
import { moreStyles } from './more-styles.ts';
import { type OldPattern, oldPatterns } from './old-patterns.ts';

const allPatterns = [...oldPatterns, ...houseStyles, ...moreStyles, ...furtherStyles];

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

describe.each(allPatterns)('$style', (old) => {
  const result = brought(old.text);

  test('title, sizes, pieces and the count of every row', () => {
    expect(result.pattern.about.title).toBe(old.title);
    expect(result.pattern.sizes.map(({ label }) => label)).toEqual(old.sizes);
    expect(countsOf(result.pattern)).toEqual(old.pieces);
  });

  test('every row is followed, and the terms are known without asking', () => {
    expect(result.market).toMatchObject({ terms: old.terms, sure: true });
    const written = old.pieces.reduce((sum, { counts }) => sum + counts.length, 0);
    expect(result.rows).toEqual({ written, followed: written - (old.open ?? 0) });
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

test('a count that alone tells how a row is meant stays, and nothing comes out otherwise without it', () => {
  const { pattern, rows } = brought(
    `Panel\n\nFoundation: ch 26.\nRow 1: htr in 3rd ch from hook and each ch across [24 sts]\nRow 2: ch 2, turn, htr in each st across.`,
    'uk',
  );
  expect(rows).toEqual({ written: 3, followed: 3 });
  expect(countsOf(pattern)[0]!.counts).toEqual([26, 24, 24]);
});

test.each([
  ['Work as given for Back.'],
  ['Work exactly as for Back'],
  ['Make the same as the Back.'],
  ['As Back.'],
])('a piece that only sends to another has its rows: %s', (words) => {
  const { pattern, rows, doubts } = brought(
    `Tabard\n\nBACK\nCh 21.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)\nFasten off.\n\nFRONT\n${words}\n`,
    'us',
  );
  expect(countsOf(pattern).map(({ name, counts }) => [name, counts])).toEqual([
    ['BACK', [21, 20]],
    ['FRONT', [21, 20]],
  ]);
  expect(rows).toEqual({ written: 4, followed: 4 });
  expect(doubts.find(({ where }) => where === 'FRONT')?.why).toContain(`“${words}”`);
});

test('words of a row before its label and in brackets behind it are kept', () => {
  const { pattern } = brought(
    `Mitt\n\nCh 20, join.\nRnd 1: Ch 1, sc in each ch around, join. (20 sc)\nRnd 2 (thumb gusset): Ch 1, sc in each st around, join. (20 sc)\n\nBorder\nJoin yarn at the lower edge.\nRow 1: Sc in each st.`,
    'us',
  );
  const words = JSON.stringify(pattern.pieces);
  expect(words).toContain('Thumb gusset');
  expect(words).toContain('Join yarn at the lower edge. Sc in each st.');
});

test.each([
  ['Row 4 (4, 6): Ch 1, sc2tog, sc in each st across, turn. 19 (23, 27) sc', null],
  ['Row 5 (5, 7): Ch 1, sc2tog, sc in each st across, turn. 19 (23, 27) sc', '5, 5, 7'],
])('a label that differs by size is worked out, and told where it is another: %s', (row, told) => {
  const { doubts, rows } = brought(
    `Top\n\nSizes: S (M, L)\n\nBack\nCh 21 (25, 29).\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. 20 (24, 28) sc\nRows 2-3 (3, 5): Ch 1, sc in each st across, turn.\n${row}`,
    'us',
  );
  expect(rows.written - rows.followed).toBe(0);
  expect(doubts.filter(({ why }) => why.startsWith('The text calls')).map(({ why }) => why)).toEqual(
    told === null ? [] : [expect.stringContaining(`Row or Round ${told};`)],
  );
});

describe('no word is lost', () => {
  /** What stands in a pattern, and the words that its forms stand for. */
  function coveredBy({ pattern, leftOut }: Brought): string {
    return `${JSON.stringify(pattern)} ${leftOut.join(' ')}`.toLowerCase();
  }
  /** Labels, counts that agreed, heads of parts, units and what hooks and gauges are asked for in forms. */
  const FORMS =
    /^(?:rows?|rnds?|rounds?|next|only|sizes?|all|for|to|fit|and|by|make|hooks?|yarns?|notions?|materials?|supplies|you|will|need|gauge|tension|abbreviations?|abkürzungen|material|maschenprobe|fertigstellung|skill|level|easy|notes?|pattern|instructions|special|stitch(?:es)?|guide|finishing|finish|finished|measurements?|assembly|making|care|size|crochet|designed|this|is|written|in|us|terms|foundation|works?|repeat|rep|as|times|twelve|also|approx|x|g|m|mm|cm|ch|sc|hdc|dc|tr|htr|rd|st|nd|th|sts?|sps?|years|inc|dec|balls?|of|the|up|with|over|or|blocked|only|number|letter|two|skeins?|both|alike|free|what|let|started|yards|yds|inches|pair|intermediate|total|square|used|one|three|four|five|six|seven|fourteen|twenty|spaces|details|required|kids|list|through|american|even|numbered|sizing|terminology|per|after|blocking|pcs|australian|english|measures|information|difficulty|words|high|oz|yd|available|same|yrs)$/u;

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

  test.each(allPatterns)('$style', ({ text }) => {
    // The trade's own abbreviations are explained by the printed list, in the reader's terms.
    const trades =
      /^(?:magic|ring|single|double|half|treble|chain|space|stitch|skip|sl|slip|es|mr|st|sk|sp|ch|together|back|front|loops?|invisible|decrease)$/u;
    expect(lost(text).filter((word) => !trades.test(word))).toEqual([]);
  });

  const lines = allPatterns.flatMap(({ text }) => text.split('\n'));
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

const blocksOf = (text: string) =>
  brought(text, 'us').pattern.pieces.flatMap(({ blocks }) =>
    blocks.map((block) => [
      block.type,
      'text' in block && typeof block.text !== 'string' ? block.text.text : '',
    ]),
  );

test.each([
  ['Rows 2-5: Ch 1, sc in each st across, turn.\nFasten off.', 'Fasten off.'],
  [
    'Rows 2-5: Ch 1, sc in each st across, turn. Fasten off, leaving a long tail.',
    'Fasten off, leaving a long tail.',
  ],
])('yarn is cut once behind rows that are worked again: %s', (rows, words) => {
  expect(
    blocksOf(`Strip\n\nStrip\nCh 9.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\n${rows}`),
  ).toEqual([
    ['row', 'Ch 9.'],
    ['row', 'Sc in 2nd ch from hook and in each ch across, turn.'],
    ['row', 'Ch 1, sc in each st across, turn.'],
    ['repeat', ''],
    ['prose', words],
  ]);
});

test('cutting the yarn on a line of its own is no row', () => {
  const blocks = blocksOf(
    'Strip\n\nStrip\nCh 9.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\nRep Row 1 until piece measures 20 cm.\nFasten off.',
  );
  expect(blocks.at(-1)).toEqual(['prose', 'Fasten off.']);
});

const PANEL = 'Panel\nCh 9.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (8 sc)';

test.each([
  ['16 sc to 10cm, 8 rows to 10cm', 16, 8, 10, 10, 'cm'],
  ['18 sc = 4 in; 13 rows = 4 in', 18, 13, 4, 4, 'in'],
  ['4 sc per inch and 5 rows per inch', 4, 5, 1, 1, 'in'],
  ['16 sts = 10 cm, 12 rows = 8 cm', 16, 12, 10, 8, 'cm'],
  ['16 sc and 20 rows = 4" / 10 cm', 16, 20, 4, 4, 'in'],
  ['11 tr. and 6 rows to 2 ins.', 11, 6, 2, 2, 'in'],
] as const)('a gauge: %s', (words, stitches, rows, width, height, unit) => {
  const { pattern } = brought(`Cloth\n\nGauge: ${words}\n\n${PANEL}`, 'us');
  expect(pattern.gauges).toMatchObject([
    { stitches, rows, width: { value: width, unit }, height: { value: height, unit } },
  ]);
});

test.each([
  ['Finished size\nWingspan 60" (152 cm), depth 28" (71 cm)', ['One size'], ['wingspan', 'depth']],
  ['Finished size: width 30 cm; length 150 cm', ['One size'], ['width', 'length']],
  [
    'Sizes\nWomen’s S, M, L. Instructions are given for size S, with M and L in parentheses.\nFoot circumference: 8 (9, 10) inches',
    ['S', 'M', 'L'],
    ['foot circumference'],
  ],
] as const)('sizes and measurements: %s', (words, labels, lines) => {
  const { pattern } = brought(`Cloth\n\n${words}\n\n${PANEL}`, 'us');
  expect(pattern.sizes.map(({ label }) => label)).toEqual(labels);
  expect(pattern.lines.map(({ name }) => name)).toEqual(lines);
});

test.each([
  [
    'Fingering yarn, 400 m per 100 g ball: 2 balls in Sand (A), 1 ball in Reed (B)',
    [
      ['A', 800],
      ['B', 400],
    ],
  ],
  [
    'DK yarn, 50g/120m balls - 8 balls cream, 4 balls navy',
    [
      [null, 960],
      [null, 480],
    ],
  ],
  // For one of many: it is not what the whole takes.
  ['Worsted yarn, about 20 yd per square', [[null, null]]],
] as const)('how much yarn: %s', (line, amounts) => {
  const { pattern } = brought(`Cloth\n\nMaterials\n${line}\n4 mm hook\n\n${PANEL}`, 'us');
  expect(pattern.yarns.map(({ key, metres }) => [key, Object.values(metres)[0] ?? null])).toEqual(amounts);
});

test('how much yarn, by the labels of the sizes', () => {
  const { pattern } = brought(
    `Cloth\n\nSizes: S (M, L)\n\nMaterials\nSock yarn, fingering; 100 g = 420 m. S: 300 m; M: 350 m; L: 400 m\n4 mm hook\n\n${PANEL}`,
    'us',
  );
  expect(pattern.notions).toEqual([]);
  expect(pattern.yarns).toMatchObject([{ ballGrams: 100, ballMetres: 420 }]);
  expect(Object.values(pattern.yarns[0]!.metres)).toEqual([300, 350, 400]);
});

test.each([
  ['[', ']'],
  ['(', ')'],
])('a count behind the number of times, %s…%s, is no second size', (open, close) => {
  const count = (n: number) => `${open}${n}${close}`;
  const { pattern, rows } = brought(
    `Hat\n\nSizes: S (L)\n\nCrown\nRnd 1: Magic ring, 6 sc in ring ${count(6)}\nRnd 2: inc x 6 ${count(12)}\nRnd 3: (1 sc, inc) x 6 ${count(18)}\nRnd 4: (2 sc, inc) x 6 ${count(24)}`,
    'us',
  );
  expect(countsOf(pattern)).toEqual([{ name: 'Crown', counts: [6, 12, 18, 24] }]);
  expect(rows).toEqual({ written: 4, followed: 4 });
});

test('a measurement that fits no line keeps its name in the notes', () => {
  const { pattern } = brought(`Hat\n\nSizes: S (L)\n\nTo fit head: 54 (56, 58) cm\n\n${PANEL}`, 'us');
  expect(pattern.notes.map(({ text }) => text)).toEqual(['To fit head: 54 (56, 58) cm']);
});

test.each([
  ['To fit head: 54-56 (58-60) cm', ['body head from', 'body head up to'], [54, 58, 56, 60]],
  [
    'To Fit Bust: 28–30 (32–34) in / 71–76 (81–86) cm',
    ['body bust from', 'body bust up to'],
    [28, 32, 30, 34],
  ],
  ['Width 40–42 (44–46) cm', ['width from', 'width up to'], [40, 44, 42, 46]],
])('ranges are two lines, from and to: %s', (words, names, numbers) => {
  const { pattern } = brought(`Hat\n\nSizes: S (L)\n\n${words}\n\n${PANEL}`, 'us');
  expect(pattern.lines.map(({ name }) => name)).toEqual(names);
  const values = pattern.lines.flatMap((line) => {
    const each = line.kind === 'body' ? line.overtyped : line.kind === 'typed' ? line.values : {};
    return Object.values('each' in each ? each.each : each).map(
      (quantity) => (quantity as { value: number }).value,
    );
  });
  expect(values).toEqual(numbers);
  expect(pattern.notes).toEqual([]);
});

test.each([
  ['about 15 (20) cm across and 10 (14) cm high', ['across', 'height'], 0],
  ['Circumference: 36 (44) cm. Height: 15 (18) cm.', ['circumference', 'height'], 0],
  ['Chest, 18 (19) ins. Sleeve seam, 5½ (6) ins.', ['chest', 'sleeve seam'], 0],
] as const)('several measurements on a line: %s', (words, names, notes) => {
  const { pattern } = brought(`Hat\n\nSizes: S (L)\n\nMeasurements\n${words}\n\n${PANEL}`, 'us');
  expect(pattern.lines.map(({ name }) => name)).toEqual(names);
  expect(pattern.notes).toHaveLength(notes);
});

test('a pattern in small letters keeps its lines apart, and its heads', () => {
  const { pattern, rows } = brought(
    'fen bucket hat\nsizes: S/M (L/XL)\nto fit head: 54 (58) cm\nworsted cotton, 100 g, 4mm hook\ngauge: 18 sc x 20 rounds = 10cm\nworked in a spiral, do not join\n\ncrown\nmagic ring\nR1. 6 sc in ring [6]\nR2. inc x 6 [12]\nR3-4. sc around [12]\nbrim\nR5. (1 sc, inc) x 6 [18]\nR6. sc around [18]\nfasten off',
    'us',
  );
  expect(pattern.sizes.map(({ label }) => label)).toEqual(['S/M', 'L/XL']);
  expect(pattern.lines.map(({ name }) => name)).toEqual(['body head']);
  expect(pattern.gauges).toMatchObject([{ stitches: 18, rows: 20 }]);
  expect(pattern.yarns.map(({ name }) => name)).toEqual(['worsted cotton, 100 g']);
  expect(pattern.hooks.map(({ mm }) => mm)).toEqual([4]);
  expect(pattern.pieces.map(({ name }) => name)).toEqual(['crown and brim']);
  const headings = pattern.pieces[0]!.blocks.filter(({ type }) => type === 'heading');
  expect(headings).toMatchObject([{ text: 'crown' }, { text: 'brim' }]);
  expect(rows.followed).toBe(rows.written);
});

test('rounds with bare numbers below a list of materials are rounds', () => {
  const { pattern, rows } = brought(
    `Pip the Dormouse

You'll need:
- worsted yarn in brown
- 3.5mm hook, 2 safety eyes (8mm), fibrefill

Head (brown)
1. 6 sc in MR (6)
2. 6 inc (12)
3. (sc, inc) x6 (18)
4-5. 18 sc (18)
6. (sc, dec) x6 (12)
Stuff.
7. 6 dec (6)

Ears x2 (cream)
1. 5 sc in MR (5)
2. 5 inc (10)`,
    'us',
  );
  expect(countsOf(pattern)).toEqual([
    { name: 'Head (brown)', counts: [6, 12, 18, 18, 18, 12, 6] },
    { name: 'Ears (cream)', make: 2, counts: [5, 10] },
  ]);
  expect(rows.followed).toBe(rows.written);
  expect(pattern.notions.map(({ name }) => name)).toEqual(['safety eyes (8mm)', 'fibrefill']);
});

test('a numbered list of materials stays one', () => {
  const { pattern } = brought(
    `Cloth\n\nMaterials\n1. Cotton yarn, 50 g / 100 m\n2. 4 mm hook\n\n${PANEL}`,
    'us',
  );
  expect(pattern.pieces.map(({ name }) => name)).toEqual(['Panel']);
  expect(pattern.yarns).toHaveLength(1);
  expect(pattern.hooks.map(({ mm }) => mm)).toEqual([4]);
});

test('a foundation right below the gauge begins the rows', () => {
  const { pattern, rows } = brought(
    'POT HOLDER\nMATERIALS: WORSTED COTTON, 4 MM HOOK\nGAUGE: 4 SC = 1 INCH; 5 ROWS = 1 INCH.\nCH 25.\nROW 1: SC IN 2ND CH FROM HOOK AND IN EACH CH ACROSS. CH 1, TURN. (24 SC)\nROW 2: SC IN EACH SC ACROSS. CH 1, TURN.\nROWS 3-24: REPEAT ROW 2. FASTEN OFF.',
    'us',
  );
  expect(countsOf(pattern)).toEqual([{ name: 'POT HOLDER', counts: [25, 24, 24, 24] }]);
  expect(study(pattern).pieces[0]!.rows).toEqual([24]);
  expect(rows).toEqual({ written: 4, followed: 4 });
});

test.each([
  ['18 sts and 20 rows to 4 in in pattern', 'pattern'],
  ['18 sts and 20 rows = 10 cm in V-stitch pattern', 'V-stitch pattern'],
])('the stitch of a gauge: %s', (words, named) => {
  const { pattern } = brought(`Cloth\n\nGauge: ${words}\n\n${PANEL}`, 'us');
  expect(pattern.gauges[0]!.pattern).toBe(named);
});

test('a hook that only the gauge names is not lost', () => {
  const { pattern } = brought(
    `Cloth\n\nMaterials: DK yarn, 5 mm hook\nGauge: 16 sts and 12 rows = 10 cm in hdc with 5.5 mm hook\n\n${PANEL}`,
    'us',
  );
  expect(pattern.gauges[0]!.hook).toBeNull();
  expect(pattern.notes.map(({ text }) => text).join(' ')).toContain('5.5 mm hook');
});

test('the number of a hook is not the end of a sentence', () => {
  const { pattern } = brought(`Cloth\n\nMaterials: 3-ply wool; a No. 9 crochet hook.\n\n${PANEL}`, 'us');
  expect(pattern.notions).toEqual([]);
  expect(pattern.hooks).toMatchObject([{ purpose: expect.stringContaining('No. 9') }]);
});

test('parts whose rows go on in one count are one piece, and others are not', () => {
  const { pattern, rows, doubts } = brought(
    `Hat

Crown
Rnd 1: Magic ring, 6 sc in ring. (6 sc)
Rnd 2: 2 sc in each st around. (12 sc)

Sides
Rnds 3-5: Sc in each st around. (12 sc)

Brim
Rnd 6: *Sc in next st, 2 sc in next st; rep from * around. (18 sc)

Ear
Rnd 1: Magic ring, 5 sc in ring. (5 sc)`,
    'us',
  );
  expect(countsOf(pattern)).toEqual([
    { name: 'Crown, Sides and Brim', counts: [6, 12, 12, 12, 18] },
    { name: 'Ear', counts: [5] },
  ]);
  expect(rows).toEqual({ written: 6, followed: 6 });
  expect(doubts).toEqual([]);
});

test('shaping goes on with the piece that it stands in', () => {
  const { pattern, rows } = brought(
    `Vest\n\n${PANEL}\nRow 2: Ch 1, sc in each st across, turn. (8 sc)\n\nShape Armholes\nRow 3: Ch 1, sc in next 6 sts, turn, leaving rem sts unworked. (6 sc)`,
    'us',
  );
  expect(countsOf(pattern)).toEqual([{ name: 'Panel', counts: [9, 8, 8, 6] }]);
  expect(pattern.pieces[0]!.blocks.map(({ type }) => type)).toContain('heading');
  expect(rows).toEqual({ written: 4, followed: 4 });
});

test('a gauge that names rounds is no round', () => {
  const { pattern } = brought(`Cloth\n\nGauge\nRounds 1–3 measure 6 cm across.\n\n${PANEL}`, 'us');
  expect(pattern.pieces.map(({ name }) => name)).toEqual(['Panel']);
  expect(pattern.notes.map(({ text }) => text)).toContain('Rounds 1–3 measure 6 cm across.');
});

test('marks of plain text that stand for bold letters are no words', () => {
  const { pattern, rows } = brought(
    `# Gorse Coaster

**Designer:** Wren Tallow

## Materials
- Cotton DK
- 3.5 mm hook

## Coaster

**Rnd 1** – In a magic ring: ch 3 (counts as dc), 11 dc; sl st to join. **(12 dc)**
**Rnd 2** – Ch 3 (counts as dc), 1 dc in same st, 2 dc in each st around; sl st to join. **(24 dc)**
**Rnd 3** – Ch 3 (counts as dc), 1 dc in same st, dc in next st, \\*2 dc in next st, dc in next st\\*; repeat \\* to \\* around; sl st to join. **(36 dc)**`,
    'us',
  );
  expect(pattern.about).toMatchObject({ title: 'Gorse Coaster', designer: 'Wren Tallow' });
  expect(countsOf(pattern)).toEqual([{ name: 'Coaster', counts: [12, 24, 36] }]);
  expect(rows).toEqual({ written: 3, followed: 3 });
  expect(JSON.stringify(pattern)).not.toContain('**');
});

test('two stars where a repeat is cut short stay', () => {
  const { pattern } = brought(
    'Strip\n\nStrip\nCh 12.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (11 sc)\nRow 2: Ch 1, *sc in next st, ch 1, sk next st**, sc in next st, ch 1, sk next st; rep from * across, ending last rep at **, sc in last st, turn.',
    'us',
  );
  expect(JSON.stringify(pattern)).toContain('**');
});

test.each([
  ['', 'The text has no title; write one on the cover.'],
  ['jetty', 'The text has no title; the name of the file was taken.'],
])('a text without a title, from a file called “%s”', (title, told) => {
  const result = bring('Ch 24.\nRow 1: Sc in 2nd ch from hook and in each ch across.', {
    terms: null,
    title,
    date: '2026-01-01',
  });
  expect(result.ok && result.brought.doubts.map(({ why }) => why)).toContain(told);
});
