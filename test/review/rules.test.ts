/**
 * The technical edit, rule by rule: a fault is planted in a clean pattern and must be found, at its place and
 * in its sizes; what only looks like the fault must not be. Invented patterns.
 */
import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Making } from '../../core/document/workbook.ts';
import { CATALOGUE } from '../../core/findings/index.ts';
import { wordsPointedAt } from '../../core/review/accepted.ts';
import { RULES, review, reviewMeanwhile } from '../../core/review/index.ts';
import { study } from '../../core/study/index.ts';
import {
  cleanPattern,
  cm,
  findingsOf,
  inBlock,
  inLine,
  note,
  type Plant,
  repeat,
  reword,
  row,
  size,
  written,
} from './builder.ts';
import { about, all, editing, type Planted, sound, notion as withNotion } from './editing.ts';
import { rightNumbers, toldNumbers } from './told-numbers.ts';

const gauge =
  (change: object): Plant =>
  (pattern) => ({ ...pattern, gauges: pattern.gauges.map((each) => ({ ...each, ...change })) });

const yarn =
  (change: object): Plant =>
  (pattern) => ({ ...pattern, yarns: pattern.yarns.map((each) => ({ ...each, ...change })) });

const photo = (alt: string): Plant =>
  inBlock('front-2', (block) => [
    block,
    { type: 'photo', id: 'front-photo', media: { id: 'q', alt, caption: null } },
  ]);

const fan: Plant = (pattern) => ({
  ...pattern,
  specials: [
    ...pattern.specials,
    {
      id: 'fan',
      nameUs: 'fan stitch',
      nameUk: 'fan stitch',
      abbrUs: 'fan',
      abbrUk: 'fan',
      text: written('5 dc in next st'),
    },
  ],
});

const abbreviation =
  (short: string, meaning: string): Plant =>
  (pattern) => ({ ...pattern, abbreviations: { ...pattern.abbreviations, [short]: meaning } });

const uk: Plant = (pattern) => ({ ...pattern, terms: 'uk' });

/** Sizes for a baby, a child and an adult. */
const family: Plant = (pattern) => ({ ...pattern, sizes: [size('S', [1, 2]), size('M', [6, 8]), size('L')] });

const notion =
  (name: string, is: { smallPart?: boolean; cord?: boolean }): Plant =>
  (pattern) => ({
    ...pattern,
    notions: [{ id: 'notion', name, amount: null, smallPart: false, cord: false, price: null, ...is }],
  });

const frontRows = (...texts: readonly string[]): Plant =>
  inBlock('front-2', () => texts.map((text, i) => row(i === 0 ? 'front-2' : `front-2${i}`, text)));

const make = (id: string, change: Partial<Making>): Making => ({
  id,
  kind: 'sample',
  by: '',
  size: 'size-m',
  state: 'finished',
  used: [],
  hours: null,
  swatch: null,
  measured: {},
  note: '',
  ...change,
});

/** Metres that a making took in all. */
const metres = (amount: number) => [{ yarn: '', piece: '', grams: null, metres: amount }];

const makings =
  (...all: readonly Making[]): Plant =>
  (pattern) => ({ ...pattern, workbook: { ...pattern.workbook, makings: all } });

const planted: readonly Planted[] = [
  {
    name: 'rows without a size',
    plant: (pattern) => ({ ...pattern, sizes: [], sample: null }),
    code: 'sizes-not-given',
    node: null,
    saying: ['has no size'],
  },
  {
    name: 'a sample in a size that was taken out',
    plant: makings(make('a', { size: 'size-xl', used: metres(600) })),
    code: 'making-not-used',
    node: null,
    saying: ["a sample's", 'its size is not among the sizes'],
  },
  {
    name: 'a tester without a size',
    plant: makings(make('a', { used: metres(600) }), make('b', { kind: 'tester', size: '', hours: 20 })),
    code: 'making-not-used',
    node: null,
    saying: ["a tester's", 'choose its size'],
  },
  {
    name: 'a sample of a yarn that was taken out',
    plant: makings(make('a', { used: [{ yarn: 'gone', piece: '', grams: null, metres: 600 }] })),
    code: 'making-not-used',
    node: null,
    saying: ['a yarn that is not in the materials'],
  },
  {
    name: 'a sample of a piece that was taken out',
    plant: makings(
      make('a', { used: [...metres(600), { yarn: '', piece: 'gone', grams: null, metres: 100 }] }),
    ),
    code: 'making-not-used',
    node: null,
    saying: ['a piece that is not there'],
  },
  {
    name: 'pieces that took more than the whole',
    plant: makings(
      make('a', { used: [...metres(600), { yarn: '', piece: 'front', grams: null, metres: 700 }] }),
    ),
    code: 'making-not-used',
    node: null,
    saying: ['took more yarn than the whole'],
  },
  {
    name: 'a sample that weighs nothing',
    plant: makings(make('a', { used: [{ yarn: '', piece: '', grams: 0, metres: null }] })),
    code: 'making-not-used',
    node: null,
    saying: ['hold a 0'],
  },
  {
    // The sample's panels have 80 × 76 stitches, L's 88 × 80: 570 m are some 660 for L, of which 620 are given.
    name: 'less yarn than the sample says that a size takes',
    plant: makings(make('a', { used: metres(570) })),
    code: 'yarn-amount-off',
    node: 'yarn',
    sizes: [2],
    saying: ['620 m is less than the 66', 'with your margin'],
  },
  {
    name: 'much more yarn than the sample says',
    plant: makings(make('a', { used: metres(300) })),
    code: 'yarn-amount-off',
    node: 'yarn',
    sizes: [0, 1, 2],
    saying: ['much more than its stitches take, 300 m'],
  },
  {
    // S has 72 × 72 stitches, 0.85 of the sample's: by its 500 m that is some 427 m, and 555 are 30 % more.
    name: 'a tester who used a third more than the sample says',
    plant: makings(
      make('a', { used: metres(500) }),
      make('b', { kind: 'tester', by: 'Nim', size: 'size-s', used: metres(555) }),
    ),
    code: 'tester-used-off',
    node: 'yarn',
    sizes: [0],
    saying: ['a tester used 555 m', '30 % more', '10 % is usual'],
  },
  {
    name: 'a tester’s piece that is wider than the pattern says',
    plant: makings(make('b', { kind: 'tester', by: 'Nim', measured: { width: cm(53) } })),
    code: 'tester-measured-off',
    node: 'width',
    sizes: [1],
    saying: ['of a tester’s piece measures 53 cm', 'the pattern says 50 cm', '3 cm (1¼ in) more'],
  },
  {
    name: 'a row that was brought in and may be a remark',
    plant: (pattern) => ({
      ...pattern,
      workbook: { ...pattern.workbook, doubts: [{ node: 'back-2', why: 'This may be a remark.' }] },
    }),
    code: 'brought-in-unsure',
    node: 'back-2',
    at: [0, 33],
    saying: ['This may be a remark', 'confirm it'],
  },
  {
    name: 'no title and no description',
    plant: about({ title: ' ', description: '' }),
    code: 'cover-incomplete',
    node: 'cover:title',
    saying: ['no title and no description'],
  },
  { name: 'no designer', plant: about({ designer: '' }), code: 'cover-incomplete', saying: ['designer'] },

  {
    name: 'no gauge at all',
    plant: (pattern) => ({ ...pattern, gauges: [], lines: [] }),
    code: 'gauge-not-given',
    node: null,
  },
  {
    name: 'a gauge without its rows',
    plant: gauge({ rows: 0 }),
    code: 'gauge-not-given',
    node: 'gauge',
    saying: ['single crochet', 'how many rows'],
  },
  {
    name: 'a gauge that does not say which of two hooks',
    plant: all(gauge({ hook: null }), (pattern) => ({
      ...pattern,
      hooks: [...pattern.hooks, { id: 'small', mm: 3.5, purpose: 'for the edging' }],
    })),
    code: 'gauge-not-given',
    saying: ['with which hook'],
  },
  { name: 'no hook', plant: (pattern) => ({ ...pattern, hooks: [] }), code: 'hook-not-given', node: null },
  {
    name: 'a hook of no size',
    plant: (pattern) => ({ ...pattern, hooks: [{ id: 'hook', mm: 0, purpose: 'for the body' }] }),
    code: 'hook-not-given',
    node: 'hook',
    saying: ['for the body'],
  },
  { name: 'no yarn', plant: (pattern) => ({ ...pattern, yarns: [] }), code: 'yarn-not-given', node: null },
  {
    name: 'a yarn without weight and fibre',
    plant: yarn({ weight: null, fibre: '' }),
    code: 'yarn-not-given',
    node: 'yarn',
    saying: ['its weight and its fibre'],
  },
  {
    name: 'no amount for one size',
    plant: yarn({ metres: { 'size-s': 500, 'size-l': 0 } }),
    code: 'yarn-amount-not-given',
    node: 'yarn',
    sizes: [1],
    saying: ['size M'],
  },
  {
    name: 'no amount for any size',
    plant: yarn({ metres: {} }),
    code: 'yarn-amount-not-given',
    sizes: [0, 1, 2],
    saying: ['all sizes'],
  },

  {
    name: 'short forms in the notes',
    plant: note('Place a marker at BOR and move it up.'),
    code: 'abbreviation-not-explained',
    node: 'notes:0',
    at: [18, 21],
    saying: ['BOR'],
  },
  {
    name: 'letters without a vowel',
    plant: note('End with a blsk on the wrong side.'),
    code: 'abbreviation-not-explained',
    at: [11, 15],
  },
  {
    name: 'an abbreviation that nothing uses',
    plant: abbreviation('lgsh', 'large shell'),
    code: 'abbreviation-not-used',
    node: 'abbreviation:lgsh',
  },
  { name: 'a special stitch that nothing uses', plant: fan, code: 'special-not-used', node: 'fan' },

  {
    name: 'a word in prose that may be a stitch',
    plant: note('Work a treble at each corner, then fasten off the double.'),
    code: 'term-in-doubt',
    node: 'notes:0',
  },
  {
    name: 'a UK name in US prose',
    plant: note('Begin each round with a half treble.'),
    code: 'other-terms-in-prose',
    node: 'notes:0',
    at: [24, 35],
    saying: ['half treble', 'UK', 'US'],
  },
  {
    name: 'US abbreviations in UK prose',
    plant: all(uk, gauge({ pattern: 'double crochet' }), note('The edging is worked in hdc.')),
    code: 'other-terms-in-prose',
    at: [24, 27],
  },

  {
    name: 'no piece',
    plant: (pattern) => ({ ...pattern, pieces: [] }),
    code: 'piece-without-rows',
    node: null,
  },
  {
    name: 'pieces without one written row',
    plant: (pattern) => ({
      ...pattern,
      pieces: pattern.pieces.map((piece) => ({ ...piece, blocks: [row(`${piece.id}-1`, ' ')] })),
    }),
    code: 'rows-not-begun',
    node: 'front',
    saying: ['Front'],
  },
  {
    name: 'a piece with a heading alone',
    plant: (pattern) => ({
      ...pattern,
      pieces: [
        ...pattern.pieces,
        {
          id: 'pocket',
          name: 'Pocket',
          make: 1,
          start: { kind: 'chain' },
          firstSide: 'RS',
          gauge: '',
          blocks: [{ type: 'heading', id: 'h', text: 'Lining' }],
          meets: [],
        },
      ],
    }),
    code: 'piece-without-rows',
    node: 'pocket',
    saying: ['Pocket'],
  },
  {
    name: 'an empty row',
    plant: reword('front-2', ' '),
    code: 'row-without-words',
    node: 'front-2',
    saying: ['Front'],
  },
  {
    name: 'a photograph without a description',
    plant: photo(' '),
    code: 'photo-not-described',
    node: 'front-photo',
    saying: ['Front'],
  },
  {
    name: 'a cover without a description',
    plant: about({ cover: { id: 'p', alt: '', caption: 'The vest' } }),
    code: 'photo-not-described',
    node: 'cover:title',
    saying: ['cover'],
  },

  {
    name: 'a row that misses its first stitch each time',
    plant: reword('front-2', 'Ch 1, sk first st, sc in each st across, turn.'),
    code: 'count-drifts',
    node: 'front-3',
    sizes: [0, 1, 2],
    saying: ['loses', /Size S: .*71 .*Size M: /],
  },
  {
    name: 'two panels, each a little too wide',
    plant: all(
      inLine('stitches', { multiple: 5, tolerance: cm(2) }),
      inLine('width', { values: { all: cm(45.4) } }),
      (pattern) => ({
        ...pattern,
        tolerance: { value: 2, unit: 'cm' },
      }),
    ),
    code: 'finished-measurement-off',
    node: 'around',
    // 45.4 cm at 16 sts over 10 cm is 72.64 sts; 75 make 46.875 cm, two panels 93.75 cm for 90.8 asked.
    saying: ['94 cm', '91 cm', '3 cm', 'more'],
  },

  {
    name: 'panels of different length in one size',
    plant: inBlock('back-3', (block) => [
      { ...(block as Extract<typeof block, { type: 'repeat' }>), sizes: ['size-s', 'size-l'] },
      {
        ...repeat('back-4', 'back-2', 'back-2', 'panel rows − 2'),
        sizes: ['size-m'],
      } as typeof block,
    ]),
    code: 'pieces-do-not-meet',
    node: 'front',
    sizes: [1],
    // 42 cm at 18 rows over 10 cm is 75.6 rows, 76 to end on an even row.
    saying: ['size M', '76 and 74', '"Back" has 2 fewer'],
  },
  {
    name: 'an edge that is not there',
    plant: (pattern) => ({
      ...pattern,
      pieces: pattern.pieces.map((piece) =>
        piece.id === 'back'
          ? piece
          : {
              ...piece,
              meets: [
                {
                  mine: { piece: 'front', kind: 'opening', amount: null, which: 1 },
                  other: { piece: 'back', kind: 'top', amount: null, which: 1 },
                },
              ],
            },
      ),
    }),
    code: 'meeting-without-edge',
    node: 'front',
    saying: ['the opening of "Front"'],
  },
  {
    name: 'more of an edge than there is',
    plant: (pattern) => ({
      ...pattern,
      pieces: pattern.pieces.map((piece) => ({
        ...piece,
        meets: piece.meets.map(({ mine, other }) => ({
          mine: { ...mine, amount: '100' },
          other: { ...other, amount: '100' },
        })),
      })),
    }),
    code: 'meeting-without-edge',
    saying: ['100', '28 fewer'],
  },

  {
    name: 'a notion that is a cord, on a child’s size',
    plant: all(family, notion('elastic', { cord: true })),
    code: 'cord-on-child-size',
    node: 'notion',
    sizes: [0, 1],
    saying: ['elastic', 'sizes S and M'],
  },
  {
    name: 'ties in the finishing',
    plant: all(family, note('Sew one of the ties to each front edge.')),
    code: 'cord-on-child-size',
    node: 'notes:0',
    at: [15, 19],
  },
  {
    name: 'buttons, on the size for a baby',
    plant: all(family, note('Sew four buttons to the left front.')),
    code: 'small-part-on-child-size',
    node: 'notes:0',
    at: [9, 16],
    sizes: [0],
    saying: ['buttons', 'size S'],
  },
  {
    name: 'a hat for a baby',
    plant: all(about({ garment: 'hat' }), (pattern) => ({
      ...pattern,
      sizes: [size('S', [0, 1]), size('M', [6, 8]), size('L')],
    })),
    code: 'caution-printed',
    node: null,
    saying: ['Hats for babies'],
  },
];

describe('a planted fault is found', () => {
  it.each([...planted, ...editing, ...toldNumbers])(
    '$code: $name',
    ({ plant, code, node, at, words, sizes, saying, fix }) => {
      const pattern = plant(cleanPattern());
      const found = findingsOf(pattern).filter((finding) => finding.code === code);
      const messages = found.map(({ message }) => message);
      expect(messages).not.toEqual([]);
      const [finding] = found;
      if (node !== undefined) expect(finding!.where.node).toBe(node);
      if (at !== undefined) expect([finding!.where.from, finding!.where.to]).toEqual(at);
      if (words !== undefined) expect(wordsPointedAt(pattern, finding!)).toBe(words);
      if (fix !== undefined) expect(finding!.fix?.replacement ?? null).toBe(fix);
      if (sizes !== undefined) expect(finding!.sizes).toEqual(sizes);
      for (const words of saying ?? []) {
        if (typeof words === 'string') expect(finding!.message.toLowerCase()).toContain(words.toLowerCase());
        else expect(finding!.message).toMatch(words);
      }
    },
  );

  it('for every rule', () => {
    expect(
      RULES.map(({ code }) => code).filter(
        (code) => ![...planted, ...editing, ...toldNumbers].some((each) => each.code === code),
      ),
    ).toEqual([]);
  });
});

const clean: readonly {
  readonly name: string;
  readonly plant: Plant;
  readonly except?: readonly string[];
}[] = [
  { name: 'the pattern itself', plant: (pattern) => pattern },
  {
    name: 'amounts that the sample bears out, and a tester who agrees with it',
    plant: makings(
      make('a', { used: metres(500), measured: { width: cm(51) } }),
      make('b', { kind: 'tester', by: 'Nim', size: 'size-s', used: metres(440) }),
    ),
  },
  {
    name: 'no amount where the sample tells it',
    plant: all(yarn({ metres: {} }), makings(make('a', { used: metres(500) }))),
  },
  { name: 'a gauge without a hook where there is only one', plant: gauge({ hook: null }) },
  {
    name: 'no yarn of one colour in one size, said so',
    plant: yarn({ metres: { 'size-s': 0, 'size-m': 9, 'size-l': 9 } }),
  },
  {
    name: 'sizes, numerals, units and emphasis',
    plant: note('Version II: DO NOT turn here; the XL measures 50 cm (20 in), about 3 yds of DK.'),
  },
  {
    name: 'trade abbreviations in prose',
    plant: note('With RS facing, work sc along the ch-sps; yo twice, sl st to join.'),
  },
  {
    name: 'an abbreviation explained and used',
    plant: all(abbreviation('BOR', 'beginning of round'), note('Mark the BOR.')),
  },
  {
    name: 'a special stitch used in a note',
    plant: all(fan, note('Each fan stitch covers 5 sts.')),
  },
  {
    name: 'plain words that are terms in other places',
    plant: note('Keep an even tension and miss no stitch.'),
    except: ['term-in-doubt'],
  },
  {
    name: 'a line that compares the markets',
    plant: note('This pattern uses US terms: US hdc is UK htr.'),
    except: ['term-in-doubt'],
  },
  {
    name: 'a repeat that says its increases',
    plant: frontRows('Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st, turn.'),
    except: ['caution-printed'],
  },
  {
    name: 'rows that repeat a mesh',
    plant: all(
      inLine('stitches', { multiple: 2, plus: 1 }),
      frontRows('Ch 1, sc in first st, *ch 1, sk 1 st, sc in next st; rep from * across, turn.'),
      inBlock('front-2', (block) => [
        block,
        row('front-21', 'Ch 1, sc in first st, *sc in next ch-sp, sc in next st; rep from * across, turn.'),
      ]),
      inBlock('front-3', () => [repeat('front-3', 'front-2', 'front-21', 'panel rows − 1')]),
      inBlock('back-3', () => [repeat('back-3', 'back-2', 'back-2', 'panel rows − 1')]),
    ),
  },
  {
    name: 'photographs that are described',
    plant: all(
      about({ cover: { id: 'p', alt: 'The vest, worn', caption: null } }),
      photo('The front, laid flat'),
    ),
  },
  { name: 'a panel within the tolerance', plant: inLine('stitches', { multiple: 4 }) },
  {
    name: 'ties and buttons on sizes for adults',
    plant: all(withNotion('Buttons'), note('Sew the ties and the buttons to the fronts.')),
  },
  { name: 'ties that are left off', plant: all(family, note('Use no ties, and tie off the ends well.')) },
  {
    name: 'buttons on a size for a child of six',
    plant: all(
      (pattern) => ({ ...pattern, sizes: [size('S', [6, 8]), size('M'), size('L')] }),
      withNotion('Buttons'),
      note('Sew on the buttons.'),
    ),
  },
];

describe('what is right is left alone', () => {
  it.each([...clean, ...sound, ...rightNumbers])('$name', ({ plant, except = [] }) => {
    const found = findingsOf(plant(cleanPattern())).filter(({ code }) => !except.includes(code));
    expect(found.map(({ code, message }) => `${code}: ${message}`)).toEqual([]);
  });
});

describe('the rules', () => {
  it('are the files of their folder, each with its own code', () => {
    const files = readdirSync(new URL('../../core/review/rules', import.meta.url)).map((name) =>
      name.replace('.ts', ''),
    );
    expect(RULES.map(({ code }) => code).sort()).toEqual(files.sort());
  });

  it('take no code of reading, working or grading, but for the doubts of prose', () => {
    const codes = new Set(CATALOGUE.map(({ code }) => code));
    expect(RULES.map(({ code }) => code).filter((code) => codes.has(code))).toEqual(['term-in-doubt']);
  });

  it('that follow every row keep what they found while somebody types, and lose nothing without makings', () => {
    const before = study(makings(make('a', { used: metres(570) }))(cleanPattern()));
    const found = review(before);
    const typed = study(reword('back-2', 'Ch 1, hdc in each st across, turn.')(before.pattern), before);
    const [kept] = found.filter(({ code }) => code === 'yarn-amount-off');
    expect(kept).toBeDefined();
    expect(reviewMeanwhile(typed, found)).toContain(kept);
    const plain = study(cleanPattern());
    expect(reviewMeanwhile(plain, found)).toBe(review(plain));
  });

  it('give the caution’s whole text with the place to look further', () => {
    const [finding] = findingsOf(all(family, notion('ribbon', { cord: true }))(cleanPattern())).filter(
      ({ code }) => code === 'cord-on-child-size',
    );
    expect(finding!.detail).toMatch(/16 CFR part 1120.*ASTM F1816.*EN 14682/);
    expect(finding!.detail).toMatch(/accredited laboratory/);
  });
});

describe('a gauge of rounds', () => {
  const around = ['Ch {panel stitches}, join with sl st in first ch.', 'Ch 1, sc in each st around, join.'];
  const flat = ['Ch {panel stitches}.', 'Sc in 2nd ch from hook and in each ch across, turn.'];

  it.each([
    ['is not held against rounds that are called rows', around, false],
    ['is held against rows', flat, true],
  ])('%s', (_, texts, isHeld) => {
    const pattern = gauge({ rounds: true })(cleanPattern());
    const [first] = pattern.pieces;
    const blocks = texts.map((text, i) => row(`only-${i}`, text));
    const codes = findingsOf({ ...pattern, pieces: [{ ...first!, blocks, meets: [] }] }).map(
      ({ code }) => code,
    );
    expect(codes.includes('gauge-worked-otherwise')).toBe(isHeld);
  });
});
