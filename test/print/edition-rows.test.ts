/** Rows as an edition prints them: figures, typed lists, counts, repeats, shaping, what holds together. */
import { describe, expect, it } from 'vitest';
import type { Block, Edge, RowBlock } from '../../core/document/pattern.ts';
import { allRuns } from '../../core/print/content.ts';
import { bookletOf } from '../../core/print/edition.ts';
import { study } from '../../core/study/index.ts';
import { typedLists } from '../../core/study/typed-lists.ts';
import type { Terms } from '../../core/trade/stitches.ts';
import { pattern, row, text } from './pattern.ts';
import { booklet } from './plain-booklet.ts';

/** The lines of a piece made of these blocks, as an edition prints them. */
function lines(
  blocks: readonly Block[],
  options: { author?: Terms; terms?: Terms; sizes?: string; firstSide?: 'RS' | null } = {},
): readonly string[] {
  const { author = 'us', terms = author, sizes = 'all', firstSide = null } = options;
  const base = pattern(author);
  const own = study({
    ...base,
    notes: [],
    finishing: [],
    pieces: [
      {
        id: 'piece',
        name: 'Piece',
        make: 1,
        start: { kind: 'chain' },
        firstSide,
        gauge: '',
        blocks,
        meets: [],
      },
    ],
  });
  const words = booklet(bookletOf(own, { terms, sizes }).booklet).replaceAll('~', ' ');
  const from = words.indexOf('\n# Piece\n') + '\n# Piece\n'.length;
  return words.slice(from, words.indexOf('\n\n', from)).split('\n');
}

const foundation = (written: string): RowBlock => row('f', written, { form: 'foundation' });

describe('counts at the end of rows', () => {
  it('tells stitches alone, or stitches and spaces (open mesh: common practice, no source)', () => {
    // A multiple of 3 plus 5 chains, the first dc in the 8th: 20 repeats make 21 dc and 20 spaces.
    expect(
      lines([
        foundation('Ch 65'),
        row('r1', 'Dc in 8th ch from hook, *ch 2, sk 2 ch, dc in next ch; rep from * across, turn'),
        row(
          'r2',
          'Ch 3 (counts as dc), 2 dc in ch-2 sp, *dc in next dc, 2 dc in next ch-2 sp; rep from * across, dc in last dc, turn',
        ),
      ]),
    ).toEqual([
      'Foundation: Ch 65.',
      'Row 1: Dc in 8th ch from hook, *ch 2, sk 2 ch, dc in next ch; rep from * across, turn. (21 dc, 20 ch-2 sps)',
      expect.stringMatching(/^Row 2: .* turn\. \(61 sts\)$/),
    ]);
  });

  it('tells the kinds after the sum where there are a few', () => {
    expect(
      lines([foundation('Ch 11'), row('r1', 'Sc in 2nd ch from hook and in next 4 ch, hdc in next 5 ch')])[1],
    ).toBe('Row 1: Sc in 2nd ch from hook and in next 4 ch, hdc in next 5 ch. (10 sts: 5 sc, 5 hdc)');
  });

  it('counts stitches worked together as the stitch they leave (common practice, no source)', () => {
    expect(
      lines([
        foundation('Ch 11'),
        row('r1', 'Sc in 2nd ch from hook and in each ch across'),
        row('r2', 'Ch 1, sc2tog, sc in each st across'),
      ])[2],
    ).toContain('(9 sts)');
  });

  it.each([
    ['Sc in 2nd ch from hook and in each ch across, turn – 10 sts.', '(10 sts)'],
    ['Sc in 2nd ch from hook and in each ch across, turn. [10]', '(10 sts)'],
    ['Sc in 2nd ch from hook and in each ch across, turn. (10 sc)', '(10 sc)'],
    ['Sc in 2nd ch from hook and in each ch across, turn: 10 sc', '(10 sc)'],
    ['Sc in 2nd ch from hook and in each ch across, turn. (10 sts).', '(10 sts)'],
  ])('prints the stated count of "%s" once', (written, count) => {
    expect(lines([foundation('Ch 11'), row('r1', written)])[1]).toBe(
      `Row 1: Sc in 2nd ch from hook and in each ch across, turn. ${count}`,
    );
  });

  it('takes a stated count out of the middle of the words that end the row', () => {
    const first = row('r1', 'Sc in 2nd ch from hook and in each ch across, turn');
    expect(
      lines([foundation('Ch 11'), first, row('r2', 'Ch 1, sc in each st across (10 sc), turn.')])[2],
    ).toBe('Row 2: Ch 1, sc in each st across, turn. (10 sc)');
  });

  it('tells nothing after a ring or a chain', () => {
    expect(
      lines([foundation('Make a magic ring'), row('r1', 'Ch 1, 6 sc in ring', { form: 'round' })]),
    ).toEqual(['Foundation: Make a magic ring.', 'Rnd 1: Ch 1, 6 sc in ring. (6 sts)']);
  });
});

describe('numbers of the sizes', () => {
  const start = foundation('Ch {panel stitches + 1}');

  it('stand in lists, single where all agree', () => {
    expect(
      lines([
        start,
        row('r1', 'Sc in 2nd ch from hook and in each of next {panel stitches − 1} ch, turn'),
      ])[1],
    ).toBe(
      'Row 1: Sc in 2nd ch from hook and in each of next 73 (81, 89, 97) ch, turn. (74 (82, 90, 98) sts)',
    );
    expect(lines([foundation('Ch {10 + 1}')])[0]).toBe('Foundation: Ch 11.');
  });

  it.each([
    ['all', 'Sc in 2nd ch from hook and in next 73 (81, 89, 97) ch. (74 (82, 90, 98) sts)'],
    ['x', 'Sc in 2nd ch from hook and in next 97 ch. (98 sts)'],
  ])('typed as a list, they are kept for %s', (sizes, words) => {
    expect(
      lines([start, row('r1', 'sc in 2nd ch from hook and in next 73 (81, 89, 97) ch')], { sizes })[1],
    ).toBe(`Row 1: ${words}`);
  });

  it('print only the rows that the size works', () => {
    const blocks = [
      start,
      row('r1', 'Sc in 2nd ch from hook and in each ch across, turn'),
      row('r2', 'Ch 1, sc in each st across, turn', { sizes: ['m', 'l'] }),
      row('r3', 'Ch 1, hdc in each st across, turn'),
    ];
    expect(lines(blocks)[2]).toBe(
      'Row 2: [Sizes M and L only] Ch 1, sc in each st across, turn. (– (82, 90, –) sts)',
    );
    expect(lines(blocks)[3]).toContain('Row 2 (3, 3, 2): ');
    expect(lines(blocks, { sizes: 's' })).toHaveLength(3);
    expect(lines(blocks, { sizes: 'm' })[2]).toBe('Row 2: Ch 1, sc in each st across, turn. (82 sts)');
  });

  it('never stand in a run that may break inside a list', () => {
    const made = bookletOf(study(pattern('us')), { terms: 'us', sizes: 'all' }).booklet;
    for (const run of allRuns({ ...made, meta: { ...made.meta, sizeKey: '' } })) {
      if (run.hold === 'loose' && run.emphasis === 'plain') expect(run.text).not.toMatch(/\d \(\d/);
    }
  });
});

describe('typed lists', () => {
  it.each([
    ['dc in next 12 (14, 16) sts', 3, [['12', '14', '16']]],
    [
      '30 (32½, 34) cm / 12 (12¾, 13½) in',
      3,
      [
        ['30', '32½', '34'],
        ['12', '12¾', '13½'],
      ],
    ],
    ['8 (–, 10) times', 3, [['8', null, '10']]],
    ['24 (26, 28) [30, 32] sc', 5, [['24', '26', '28', '30', '32']]],
    ['12 (14, 16) sts', 4, []],
    ['3 (dc, ch 1, dc)', 3, []],
    ['ch-2 (3, 4) sp', 3, []],
    ['Row 7 (8, 9)', 3, [['7', '8', '9']]],
  ] as const)('%s for %i sizes', (written, sizes, values) => {
    expect(typedLists(written, sizes).map((list) => list.values)).toEqual(values);
  });
});

describe('repeats', () => {
  const blocks = (rows: string, last = 'r3'): readonly Block[] => [
    foundation('Ch 11'),
    row('r1', 'Sc in 2nd ch from hook and in each ch across, turn'),
    row('r2', 'Ch 1, sc in each st across, turn'),
    row('r3', 'Ch 2 (does not count as a st), hdc in each st across, turn'),
    row('r4', 'Ch 1, sc in each st across, turn'),
    { type: 'repeat', id: 'again', first: 'r2', last, until: { kind: 'rows', rows }, sizes: null },
  ];

  it.each([
    ['6', 'r3', 'Rows 5–10: Rep Rows 2 and 3. (10 sts)'],
    ['6', 'r2', 'Rows 5–10: Rep Row 2. (10 sts)'],
    ['6', 'r4', 'Rows 5–10: Rep Rows 2–4. (10 sts)'],
    ['5', 'r3', 'Rows 5–9: Rep Rows 2 and 3, ending with Row 2 (an RS row). (10 sts)'],
    ['4', 'r4', 'Rows 5–8: Rep Rows 2–4, ending with Row 2 (a WS row). (10 sts)'],
    ['shapings', 'r3', 'Rows 5–9 (10, 11, 11): Rep Rows 2 and 3, ending with Row 2 (3, 2, 2). (10 sts)'],
  ])('of %s rows up to %s', (rows, last, words) => {
    expect(lines(blocks(rows, last), { firstSide: 'RS' }).at(-1)).toBe(words);
  });

  it('name rounds as rounds', () => {
    expect(
      lines([
        row('r1', 'Ch 4, sl st in first ch to form a ring, ch 1, 8 sc in ring', { form: 'round' }),
        row('r2', 'Sc in each st around', { form: 'round' }),
        {
          type: 'repeat',
          id: 'again',
          first: 'r2',
          last: 'r2',
          until: { kind: 'times', times: '3' },
          sizes: null,
        },
      ]).at(-1),
    ).toBe('Rnds 3–5: Rep Rnd 2. (8 sts)');
  });

  it('tells the next so many where they do not begin with the same number in every size', () => {
    const again = (id: string, rows: string): Block => ({
      type: 'repeat',
      id,
      first: 'r2',
      last: 'r2',
      until: { kind: 'rows', rows },
      sizes: null,
    });
    const printed = (sizes: string) =>
      lines(
        [
          foundation('Ch 11'),
          row('r1', 'Sc in 2nd ch from hook and in each ch across, turn'),
          row('r2', 'Ch 1, sc in each st across, turn'),
          again('a', 'shapings'),
          again('b', 'shapings'),
        ],
        { sizes },
      ).slice(-2);
    expect(printed('all')).toEqual([
      'Rows 3–7 (8, 9, 9): Rep Row 2. (10 sts)',
      'Next 5 (6, 7, 7) rows: Rep Row 2. (10 sts)',
    ]);
    expect(printed('s')).toEqual(['Rows 3–7: Rep Row 2. (10 sts)', 'Rows 8–12: Rep Row 2. (10 sts)']);
  });
});

describe('stitches of the author’s own', () => {
  // A multiple of 3 sts plus 2, as common practice has it, no source: 7 repeats and an edge stitch at either end.
  const written =
    'Ch 2 (counts as hdc), sk first 2 sts, *V-st in next st, sk 2 sts; rep from * 5 more times, V-st in next st, sk next st, hdc in last st, turn.';

  it.each([
    ['(7 V-sts)', '(7 V-sts)'],
    ['(7 V-sts, 2 hdc)', '(7 V-sts, 2 hdc)'],
    ['(7 V-sts, 2 sts)', '(7 V-sts, 2 sts)'],
  ])('are counted %s as the rows call them, beside the stitches outside them', (stated, printed) => {
    const base = pattern('us');
    const own = study({
      ...base,
      specials: [
        {
          id: 'v',
          nameUs: 'V-stitch',
          nameUk: 'V-stitch',
          abbrUs: 'V-st',
          abbrUk: 'V-st',
          text: text('(hdc, ch 1, hdc) in st indicated'),
        },
      ],
      pieces: [
        {
          id: 'piece',
          name: 'Piece',
          make: 1,
          start: { kind: 'chain' },
          firstSide: null,
          gauge: '',
          blocks: [
            foundation('Ch 24'),
            row('r1', 'Sc in 2nd ch from hook and in each ch across, turn'),
            row('r2', `${written} ${stated}`),
          ],
          meets: [],
        },
      ],
    });
    const words = booklet(bookletOf(own, { terms: 'us', sizes: 'all' }).booklet).replaceAll('~', ' ');
    expect(words).toContain(`hdc in last st, turn. ${printed}`);
  });
});

describe('pieces that start from others', () => {
  const yoke = {
    id: 'yoke',
    name: 'Yoke',
    make: 1,
    start: { kind: 'chain' as const },
    firstSide: null,
    gauge: '',
    blocks: [
      row('y1', 'Ch 20, join with sl st in first ch to form a ring', { form: 'foundation' }),
      row('y2', 'Ch 1, sc in each ch around; join with sl st in first sc', { form: 'round' }),
      row(
        'y3',
        'Ch 1, sc in each of next 6 sts, ch 2, skip next 8 sts, sc in each of last 6 sts; join with sl st in first sc',
        { form: 'round' },
      ),
    ],
    meets: [],
  };
  const edge = (kind: Edge['kind'], amount: string | null = null): Edge => ({
    piece: 'yoke',
    kind,
    amount,
    which: 1,
  });
  const opening = (edges: readonly Edge[], round: boolean, make = 1): string => {
    const own = study({
      ...pattern('us'),
      notes: [],
      pieces: [
        yoke,
        { ...yoke, id: 'next', name: 'Next', make, start: { kind: 'edges', edges, round }, blocks: [] },
      ],
    });
    const words = booklet(bookletOf(own, { terms: 'us', sizes: 'all' }).booklet).replaceAll('~', ' ');
    return words.slice(words.indexOf('\n# Next') + 1).split('\n')[1]!;
  };

  it.each([
    [[edge('top', '12')], true, 1, 'Worked in rounds on 12 sts along the last round of Yoke.'],
    [
      [edge('foundation')],
      false,
      1,
      'Worked on 20 sts along the other side of the foundation chain of Yoke.',
    ],
    [[edge('opening')], true, 1, 'Worked in rounds on 10 sts around the first opening of Yoke.'],
    [[edge('opening')], true, 2, 'Worked in rounds on 10 sts around an opening of Yoke.'],
    [
      [edge('top', 'shapings'), edge('seam'), edge('row-ends', '2')],
      false,
      1,
      'Start from these edges, in this order: 5 (6, 7, 7) sts along the last round of Yoke, 1 st at the seam and 2 row-ends along the side edge of Yoke: 8 (9, 10, 10) in all.',
    ],
    [
      [edge('row-ends', '3'), edge('row-ends', '3')],
      false,
      1,
      'Worked on 6 row-ends along both side edges of Yoke.',
    ],
    [[edge('top', '4'), edge('top', '4')], false, 1, 'Worked on 8 sts along the last round of Yoke.'],
    // What is made twice has its other edges on the other side.
    [
      [edge('top', '12'), edge('seam')],
      true,
      2,
      'Start the first one from these edges, in this order all the way around: 12 sts along the last round of Yoke and 1 st at the seam: 13 in all. The other one starts from the edges that match these.',
    ],
    [
      [edge('top', '12'), edge('seam')],
      false,
      3,
      'Start the first one from these edges, in this order: 12 sts along the last round of Yoke and 1 st at the seam: 13 in all. The others start from the edges that match these.',
    ],
    [[edge('top', '3'), edge('top', '4')], false, 1, 'Worked on 7 sts along the last round of Yoke.'],
  ] as const)('say so (%#)', (edges, round, make, words) => {
    expect(opening(edges, round, make)).toBe(words);
  });
});

describe('words', () => {
  it.each([
    ['us', 'uk', 'FPdc around next st, sk 2 sts, dc2tog', /^FPtr around next st, miss 2 sts, tr2tog\.$/],
    ['us', 'us', 'turn ', /^Turn\.$/],
    ['us', 'us', '*sc in next st; rep from * across,', /^\*sc in next st; rep from \* across\.$/],
  ] as const)('from %s to %s: %s', (author, terms, written, said) => {
    const line = lines([{ type: 'prose', id: 'p', text: text(written), sizes: null }], { author, terms })[0]!;
    expect(line).toMatch(said);
  });

  it('marks prose that is for some sizes', () => {
    const prose: Block = { type: 'prose', id: 'p', text: text('Fasten off'), sizes: ['x'] };
    expect(lines([row('r', 'Ch 3'), prose])[1]).toBe('Size XL only: Fasten off.');
    expect(lines([row('r', 'Ch 3'), prose], { sizes: 's' })).toHaveLength(1);
  });

  it('gives lengths in both units and takes the author’s unit with them', () => {
    const prose: Block = {
      type: 'prose',
      id: 'p',
      text: text('Sew for {body length} cm from the hem'),
      sizes: null,
    };
    expect(lines([prose])[0]).toBe('Sew for 40 (42, 43, 45) cm / 15¾ (16½, 17, 17¾) in from the hem.');
    expect(lines([prose], { sizes: 'm' })[0]).toBe('Sew for 42 cm / 16½ in from the hem.');
  });
});
