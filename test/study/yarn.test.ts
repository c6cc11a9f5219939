/** Yarn, hours and price of a pattern from what was made of it; every expected number is worked out by hand. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Gauge, Notion, Pattern, Piece, Yarn } from '../../core/document/pattern.ts';
import { type Making, NO_WORKBOOK, type Pricing, type Use } from '../../core/document/workbook.ts';
import { blankPattern } from '../../core/outlines/blank.ts';
import { hoursOf } from '../../core/study/hours.ts';
import { study } from '../../core/study/index.ts';
import { priceOf } from '../../core/study/price.ts';
import { swatchCounts, yarnOf } from '../../core/study/yarn.ts';
import { countsFor, usesOf } from '../../core/study/yarn-counts.ts';
import { toNumber } from '../../core/trade/units.ts';
import { piece, row } from './builder.ts';

const size = (label: string) => ({
  id: `z-${label.toLowerCase()}`,
  label,
  audience: 'woman' as const,
  chart: null,
  age: null,
});

const yarn = (id: string, key: string | null, more: Partial<Yarn> = {}): Yarn => ({
  id,
  key,
  name: key === null ? 'Wool' : `Wool in ${key}`,
  weight: 4,
  fibre: 'wool',
  ballGrams: 50,
  ballMetres: 100,
  ballPrice: null,
  metres: {},
  ...more,
});

const making = (id: string, at: string, used: readonly Use[], more: Partial<Making> = {}): Making => ({
  id,
  kind: 'sample',
  by: '',
  size: at,
  state: 'finished',
  used,
  hours: null,
  swatch: null,
  measured: {},
  note: '',
  ...more,
});

const used = (grams: number | null, more: Partial<Use> = {}): Use => ({
  yarn: '',
  piece: '',
  grams,
  metres: null,
  ...more,
});

function pattern(pieces: readonly Piece[], makings: readonly Making[], more: Partial<Pattern> = {}): Pattern {
  return {
    ...blankPattern({ title: 'Strip', terms: 'us', units: 'metric', date: '2026-11-25' }),
    sizes: [size('S'), size('L')],
    sample: 'z-s',
    yarns: [yarn('wool', null)],
    workbook: { ...NO_WORKBOOK, makings },
    pieces,
    ...more,
  };
}

/** Ch 11; ten single crochets; then rows of ten that turn with a chain: in S two rows in all, in L twelve. */
const strip = (id: string, more: Partial<Piece> = {}) =>
  piece(
    id,
    id,
    [
      row(`${id}0`, 'Ch 11.', { form: 'foundation' }),
      row(`${id}1`, 'Sc in 2nd ch from hook and in each ch across, turn.'),
      row(`${id}2`, 'Ch 1, sc in each st across, turn.'),
      {
        type: 'repeat',
        id: `${id}3`,
        first: `${id}2`,
        last: `${id}2`,
        until: { kind: 'total', rows: '12' },
        sizes: ['z-l'],
      },
    ],
    more,
  );

/** Twenty rows to 10 cm. */
const even: Gauge = {
  id: 'g',
  pattern: 'single crochet',
  stitches: 20,
  rows: 20,
  width: { value: 10, unit: 'cm' },
  height: { value: 10, unit: 'cm' },
  blocked: false,
  stretch: null,
  hook: null,
  rounds: false,
};

/** The same ten stitches, and rows after them. */
const lengthened = (...rows: readonly string[]) =>
  piece('p', 'P', [
    row('p0', 'Ch 11.', { form: 'foundation' }),
    row('p1', 'Sc in 2nd ch from hook and in each ch across, turn.'),
    ...rows.map((text, i) => row(`p${i + 2}`, text)),
  ]);

const asObject = (counts: ReadonlyMap<string, number> | null) => Object.fromEntries(counts ?? []);

describe('counts of a pattern', () => {
  test('take every row, repeats with their passes, turning chains and copies', () => {
    const known = study(pattern([strip('a', { make: 2 }), strip('b')], []));
    // One strip in S: 20 sc; 11 chains and the one that turns. In L: 120 sc, 11 + 11 chains. Twice, and once.
    expect(asObject(countsFor(known, 0, null, 'a'))).toEqual({ t1: 40, chain: 24 });
    expect(asObject(countsFor(known, 1, null, 'a'))).toEqual({ t1: 240, chain: 44 });
    expect(asObject(countsFor(known, 1, null, null))).toEqual({ t1: 360, chain: 66 });
  });

  test('rows that go on to a length are as many as the gauge makes of it', () => {
    const long = lengthened('Work even in sc until piece measures 15 (20) cm.');
    const known = study(pattern([long], [], { gauges: [even] }));
    // 30 rows of ten in S, 40 in L.
    expect(countsFor(known, 0, null, 'p')!.get('t1')).toBe(300);
    expect(countsFor(known, 1, null, 'p')!.get('t1')).toBe(400);
    expect(usesOf(known)[0]!.doubts).toEqual([]);
  });

  test('rows that change on the way to a length are counted once, and it is told', () => {
    const long = lengthened(
      'Ch 1, 2 sc in first st, sc in each st across, turn.',
      'Rep Row 2 until piece measures 15 cm.',
    );
    const [use] = usesOf(study(pattern([long], [], { gauges: [even] })));
    expect(use!.doubts.map(({ kind }) => kind)).toEqual(['rows-unreckoned']);
  });

  test.each<[string, readonly string[], Readonly<Record<string, number>>]>([
    [
      'a turning chain that counts is chains and no stitch',
      [
        'Ch 12.',
        'Dc in 4th ch from hook and in each ch across, turn.',
        'Ch 3 (counts as dc), dc in each st across.',
      ],
      // 12 chains, 9 dc beside the three that count; then 3 chains and 9 dc.
      { chain: 15, t3: 18 },
    ],
    [
      'spaces are chains, and a decrease is one stitch of its kind',
      [
        'Ch 7.',
        'Sc in 2nd ch from hook and in each ch across, turn.',
        'Ch 1, sc in first st, ch 2, sk 1, sc in next st, sc2tog, sc in last st.',
      ],
      // 7; 6 sc; 1 + 2 chains, 3 sc, one decrease.
      { chain: 10, t1: 9, 'tog2.t1': 1 },
    ],
    [
      'a cluster has the legs that its name tells',
      [
        'Ch 6.',
        'Sc in 2nd ch from hook and in each ch across, turn.',
        'Ch 1, sc in next st, 4-dc cluster in next st, sc in each of next 3 sts.',
      ],
      { chain: 7, t1: 9, 'cluster/4.t3': 1 },
    ],
  ])('%s', (_, rows, counts) => {
    const blocks = rows.map((text, i) => row(`r${i}`, text, i === 0 ? { form: 'foundation' } : {}));
    const known = study(pattern([piece('p', 'P', blocks)], []));
    expect(asObject(countsFor(known, 0, null, null))).toEqual(counts);
  });

  test('rounds that are joined take the slip stitch that closes them', () => {
    const blocks = [
      row('r1', 'Ch 4, join with sl st to form a ring.', { form: 'round' }),
      row('r2', 'Ch 1, 8 sc in ring, join with sl st in first sc.', { form: 'round' }),
      row('r3', 'Ch 1, 2 sc in each st around, join with sl st in first sc.', { form: 'round' }),
    ];
    const counts = asObject(countsFor(study(pattern([piece('p', 'P', blocks)], [])), 0, null, null));
    expect(counts.t1).toBe(24);
    expect(counts.slip).toBe(2);
  });

  test('slip stitches that bring the hook to where a round or a row begins take yarn and make no stitch', () => {
    const blocks = [
      row('r1', 'Ch 4, join with sl st to form a ring.', { form: 'round' }),
      row('r2', 'Ch 3, 2 dc in ring, ch 2, (3 dc in ring, ch 2) 3 times, join with sl st in top of ch-3.', {
        form: 'round',
      }),
      // Two slip stitches over the dc and one into the space.
      row(
        'r3',
        'Sl st in next 2 dc and in next ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, ch 1, *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1; rep from * around, join with sl st in top of ch-3.',
        { form: 'round' },
      ),
    ];
    const counts = asObject(countsFor(study(pattern([piece('p', 'P', blocks)], [])), 0, null, null));
    // 12 and 24 dc, of which the first of each round is a chain of 3; two joins and three on the way.
    expect(counts.t3).toBe(34);
    expect(counts.slip).toBe(5);
    const armhole = [
      row('a0', 'Ch 11.', { form: 'foundation' }),
      row('a1', 'Sc in 2nd ch from hook and in each ch across, turn.'),
      row('a2', 'Sl st in first 3 sts, ch 1, sc in each of next 4 sts, turn.'),
    ];
    const shaped = asObject(countsFor(study(pattern([piece('p', 'P', armhole)], [])), 0, null, null));
    expect([shaped.t1, shaped.slip]).toEqual([14, 3]);
  });

  test('a study from scratch and one after an edit count alike', () => {
    const first = study(pattern([strip('a'), strip('b')], []));
    usesOf(first);
    const edited = pattern([strip('a'), strip('b', { make: 3 })], []);
    expect(usesOf(study(edited, first)).map(({ sizes }) => sizes)).toEqual(
      usesOf(study(edited)).map(({ sizes }) => sizes),
    );
    // The piece that was not touched is not counted again.
    const [a] = first.pattern.pieces;
    const second = study({ ...first.pattern, pieces: [a!, strip('b', { make: 3 })] }, first);
    expect(usesOf(second)[0]).toBe(usesOf(first)[0]);
  });
});

describe('colours of the rows', () => {
  const two = [yarn('ya', 'A'), yarn('yb', 'B', { name: 'Cotton, dark green' })];
  const shares = (rows: readonly string[], between: string | null = null) => {
    const blocks = rows.map((text, i) => row(`r${i}`, text, i === 0 ? { form: 'foundation' } : {}));
    const prose = {
      type: 'prose',
      id: 'w',
      text: { text: between ?? '', figures: [] },
      sizes: null,
    } as const;
    const all = between === null ? blocks : [...blocks.slice(0, 2), prose, ...blocks.slice(2)];
    const known = study(pattern([piece('p', 'P', all)], [], { yarns: two }));
    return {
      a: asObject(countsFor(known, 0, 0, null)),
      b: asObject(countsFor(known, 0, 1, null)),
      doubts: usesOf(known)[0]!.doubts.map(({ kind, words }) => [kind, words]),
    };
  };
  const begin = ['Ch 11.', 'Sc in 2nd ch from hook and in each ch across, turn.'];

  test('rows are worked with the first yarn until they say otherwise', () => {
    expect(shares(begin)).toEqual({ a: { chain: 11, t1: 10 }, b: {}, doubts: [] });
  });

  test.each([
    ['With B, ch 1, sc in each st across, turn.'],
    ['Change to B. Ch 1, sc in each st across, turn.'],
    ['With dark green, ch 1, sc in each st across, turn.'],
    ['Join color B. Ch 1, sc in each st across, turn.'],
  ])('"%s" is worked with the second', (text) => {
    expect(shares([...begin, text])).toMatchObject({ a: { chain: 11, t1: 10 }, b: { chain: 1, t1: 10 } });
  });

  test('a change at the end of a row is for the next', () => {
    const rows = [
      ...begin,
      'Ch 1, sc in each st across, change to B in last st, turn.',
      'Ch 1, sc in each st across.',
    ];
    expect(shares(rows)).toEqual({ a: { chain: 12, t1: 20 }, b: { chain: 1, t1: 10 }, doubts: [] });
  });

  test('words between rows name the yarn too', () => {
    expect(shares([...begin, 'Ch 1, sc in each st across.'], 'With B:').b).toEqual({ chain: 1, t1: 10 });
  });

  test('a row that changes half way is shared where it changes', () => {
    // Chain and 3 of 10 single crochets with A: (5.4 + 3 × 10.6) ÷ (5.4 + 106) of the row; B has the rest.
    const { a, b, doubts } = shares([...begin, 'Ch 1, sc in next 3 sts, with B, sc in each of next 7 sts.']);
    const part = 37.2 / 111.4;
    expect(a.t1).toBeCloseTo(10 + 10 * part, 9);
    expect(b.t1).toBeCloseTo(10 * (1 - part), 9);
    expect(doubts).toEqual([]);
  });

  test.each([
    ['Ch 1, 3 sc in A, 7 sc in B.'],
    ['Ch 1, 3 sc A, 7 sc B.'],
    ['Ch 1, 3 sc (A), 7 sc (B).'],
    ['Ch 1, sc in next 3 sts with A, sc in each of next 7 sts with B.'],
  ])('"%s" names each colour behind its stitches', (text) => {
    // As above: the chain and 3 of 10 single crochets are A's.
    const { a, b, doubts } = shares([...begin, text]);
    const part = 37.2 / 111.4;
    expect(a.t1).toBeCloseTo(10 + 10 * part, 9);
    expect(b.t1).toBeCloseTo(10 * (1 - part), 9);
    expect(doubts).toEqual([]);
  });

  test('a change within a repeat is shared as one working of it is, and said', () => {
    // Four with A to one with B in each repeat; the turning chain is A's.
    const { b, doubts } = shares([
      ...begin,
      'With A, ch 1, *with A, sc in next 4 sts, with B, sc in next st; rep from * across.',
    ]);
    expect(b.t1).toBeCloseTo((10 * ((106 * 1) / 5)) / 111.4, 9);
    expect(doubts).toEqual([['shared-in-repeat', '']]);
  });

  test('a colour that is no yarn of the pattern is told, and changes nothing', () => {
    const { a, doubts } = shares([...begin, 'With pink, ch 1, sc in each st across.']);
    expect(a).toEqual({ chain: 12, t1: 20 });
    expect(doubts).toEqual([['unknown-colour', 'pink']]);
  });
});

/** Strip in the data's units: S 20 × 10.6 + 12 × 5.4 = 276.8; L 120 × 10.6 + 22 × 5.4 = 1390.8. */
const [SMALL, LARGE] = [276.8, 1390.8];

describe('yarn of every size', () => {
  const of = (makings: readonly Making[], more: Partial<Pattern> = {}) =>
    yarnOf(study(pattern([strip('a')], makings, more)));

  test('there is no amount without something made', () => {
    const [wool] = of([]).yarns;
    expect(wool).toMatchObject({ basis: null, sizes: [null, null], worked: true });
  });

  test('follows from the grams of one sample', () => {
    // 20 g of a ball of 50 g and 100 m are 40 m. L takes 40 × 1390.8 ÷ 276.8 = 200.98 m, 100.49 g.
    const [wool] = of([making('m', 'z-s', [used(20)])]).yarns;
    const [s, l] = wool!.sizes;
    expect(s!.metres).toBeCloseTo(40, 6);
    expect(l!.metres).toBeCloseTo((40 * LARGE) / SMALL, 6);
    expect(l!.grams).toBeCloseTo((20 * LARGE) / SMALL, 6);
    // With ten percent more 221.08 m: three balls.
    expect(l!.withMargin.metres).toBeCloseTo((44 * LARGE) / SMALL, 6);
    expect(l!.balls).toBe(3);
    expect(wool!.basis).toMatchObject({ unit: 'metres', spread: null, heldBack: null });
    expect(wool!.basis!.makings.map(({ id }) => id)).toEqual(['m']);
  });

  test.each<[string, readonly Use[]]>([
    ['metres are taken before grams', [used(999, { metres: 40 })]],
    ['a piece by itself', [used(20, { piece: 'a' })]],
    ['the whole and its piece are not counted twice', [used(20), used(20, { piece: 'a' })]],
    ['by the yarn’s name', [used(20, { yarn: 'wool' })]],
  ])('%s', (_, uses) => {
    expect(of([making('m', 'z-s', uses)]).yarns[0]!.sizes[0]!.metres).toBeCloseTo(40, 4);
  });

  test.each<[string, Making]>([
    ['a tester who is still at it', making('m', 'z-s', [used(20)], { kind: 'tester', state: 'working' })],
    ['a making in no size', making('m', '', [used(20)])],
    ['a yarn that is not there', making('m', 'z-s', [used(20, { yarn: 'gone' })])],
    ['no amount', making('m', 'z-s', [used(null)])],
    ['nothing used', making('m', 'z-s', [used(0)])],
  ])('%s tells nothing', (_, one) => {
    expect(of([one]).yarns[0]!.basis).toBeNull();
  });

  test('a weighed swatch serves: rows of stitches, its foundation and the chains that turn', () => {
    // 20 sc by 20 rows on 21 chains: 400 × 10.6 + (21 + 19) × 5.4 = 4456 took 44.56 m, a hundredth a unit.
    const swatch = { stitch: 't1', stitches: 20, rows: 20, chains: 21 };
    const one = making('m', '', [used(null, { metres: 44.56 })], { kind: 'swatch', swatch });
    expect(asObject(swatchCounts(one))).toEqual({ t1: 400, chain: 40 });
    expect(of([one]).yarns[0]!.sizes[0]!.metres).toBeCloseTo(2.768, 6);
    // Double crochets turn with three chains that stand for the first: 19 a row.
    const tall = { ...one, swatch: { stitch: 't3', stitches: 20, rows: 10, chains: 22 } };
    expect(asObject(swatchCounts(tall))).toEqual({ t3: 190, chain: 22 + 27 });
  });

  test('a ball without its length is reckoned in grams, and one without either has no balls', () => {
    const wool = yarn('wool', null, { ballMetres: null });
    const [grams] = of([making('m', 'z-s', [used(20)])], { yarns: [wool] }).yarns;
    expect(grams!.basis!.unit).toBe('grams');
    expect(grams!.sizes[1]).toMatchObject({ metres: null, balls: 3 });
    expect(grams!.sizes[1]!.grams).toBeCloseTo((20 * LARGE) / SMALL, 6);
    const bare = yarn('wool', null, { ballMetres: null, ballGrams: null });
    expect(of([making('m', 'z-s', [used(20)])], { yarns: [bare] }).yarns[0]!.sizes[0]!.balls).toBeNull();
  });

  test('a ball that is used up to its last metre is not two', () => {
    // 40 m, no margin, balls of 10 m and 5 g.
    const wool = yarn('wool', null, { ballMetres: 10, ballGrams: 5 });
    const workbook = { ...NO_WORKBOOK, yarnMargin: 0, makings: [making('m', 'z-s', [used(20)])] };
    expect(of([], { yarns: [wool], workbook }).yarns[0]!.sizes[0]!.balls).toBe(4);
  });

  test('testers are held against one another', () => {
    const tester = (id: string, at: string, grams: number) =>
      making(id, at, [used(grams)], { kind: 'tester', by: id });
    // L by the sample: 100.49 g. One tester used that to a hundredth, the other a fifth more.
    const large = (20 * LARGE) / SMALL;
    const report = of([
      making('m', 'z-s', [used(20)]),
      tester('p', 'z-l', large * 1.01),
      tester('q', 'z-l', large * 1.2),
    ]);
    const [sample, p, q] = report.compared;
    expect(q!.off).toBeGreaterThan(0.15);
    expect(q!.others).toBeLessThan(0.02);
    expect(Math.abs(p!.off!)).toBeLessThan(0.15);
    expect(sample!.making.id).toBe('m');
    expect(report.yarns[0]!.basis!.heldBack).toBeGreaterThan(0.05);
  });

  test('yarns of one weight share a hand; one of another weight has none', () => {
    const yarns = [yarn('ya', 'A'), yarn('yb', 'B'), yarn('yc', 'C', { weight: 2 })];
    const blocks = [
      ...strip('a').blocks,
      row('x', 'With B, ch 1, sc in each st across, turn.'),
      row('y', 'With C, ch 1, sc in each st across.'),
    ];
    const known = study(
      pattern([piece('a', 'A', blocks)], [making('m', 'z-s', [used(20, { yarn: 'ya' })])], { yarns }),
    );
    const [a, b, c] = yarnOf(known).yarns;
    expect(a!.sizes[0]!.metres).toBeCloseTo(40, 6);
    // Ten single crochets and a chain: 111.4 of 276.8.
    expect(b!.sizes[0]!.metres).toBeCloseTo((40 * 111.4) / SMALL, 6);
    expect(c).toMatchObject({ basis: null, worked: true });
  });
});

describe('hours of every size', () => {
  test('follow from the movements of the stitches', () => {
    // S: 20 sc of 3 movements and 12 chains of 1 are 72; L: 120 × 3 + 22 = 382. Two hours for S are 10.61 for L.
    const known = study(pattern([strip('a')], [making('m', 'z-s', [], { hours: 2 })]));
    const { sizes, makings, heldBack } = hoursOf(known);
    expect(sizes[0]).toBeCloseTo(2, 9);
    expect(sizes[1]).toBeCloseTo((2 * 382) / 72, 6);
    expect(makings.map(({ id }) => id)).toEqual(['m']);
    expect(heldBack).toBeNull();
    expect(hoursOf(study(pattern([strip('a')], []))).sizes).toEqual([null, null]);
  });
});

describe('the price of a piece made to order', () => {
  const pricing: Pricing = {
    currency: 'EUR',
    hourly: 12,
    other: [
      { name: 'label', amount: 0.5 },
      { name: 'parcel', amount: 4.5 },
    ],
    profit: 25,
    fee: 10,
  };
  const button: Notion = {
    id: 'n',
    name: 'button',
    amount: { all: 3 },
    smallPart: true,
    cord: false,
    price: 0.7,
  };
  const priced = (more: Partial<Pattern> = {}, own: Partial<Pricing> = {}) => {
    const workbook = {
      ...NO_WORKBOOK,
      yarnMargin: 0,
      pricing: { ...pricing, ...own },
      makings: [making('m', 'z-s', [used(20)], { hours: 2 })],
    };
    const wool = yarn('wool', null, { ballPrice: 6 });
    const known = study(pattern([strip('a')], [], { yarns: [wool], notions: [button], workbook, ...more }));
    return priceOf(known, yarnOf(known), hoursOf(known));
  };

  test('adds up as it does on paper', () => {
    // S takes 40 m: 1 ball, 6.00 bought; 0.4 of it, 2.40 used. Buttons 2.10, others 5.00, two hours 24.00.
    //   bought: 37.10; a quarter more 46.375; that is 90 % of the price: 51.527777…
    //   used:   33.50; 41.875; 46.527777…
    const [s] = priced().sizes;
    expect(toNumber(s!.bought!.cost)).toBeCloseTo(37.1, 9);
    expect(toNumber(s!.bought!.profit)).toBeCloseTo(9.275, 9);
    expect(toNumber(s!.bought!.price)).toBeCloseTo(46.375 / 0.9, 9);
    expect(toNumber(s!.bought!.fee)).toBeCloseTo(46.375 / 9, 9);
    expect(toNumber(s!.used!.price)).toBeCloseTo(41.875 / 0.9, 6);
    expect(s!.missing).toEqual([]);
  });

  test.each<[string, Partial<Pattern>, Partial<Pricing>, readonly unknown[]]>([
    ['a ball without a price', { yarns: [yarn('wool', null)] }, {}, [{ what: 'ball-price', yarn: 'Wool' }]],
    ['no hourly rate', {}, { hourly: null }, [{ what: 'hourly' }]],
    ['no currency', {}, { currency: '' }, [{ what: 'currency' }]],
    [
      'nothing made',
      { workbook: { ...NO_WORKBOOK, pricing } },
      {},
      [{ what: 'yarn-amount', yarn: 'Wool' }, { what: 'hours' }],
    ],
  ])('names what is missing: %s', (_, more, own, missing) => {
    const [s] = priced(more, own).sizes;
    expect(s!.missing).toEqual(missing);
  });

  test('work that nothing is asked for needs no hours', () => {
    const workbook = {
      ...NO_WORKBOOK,
      pricing: { ...pricing, hourly: 0 },
      makings: [making('m', 'z-s', [used(20)])],
    };
    const [s] = priced({ workbook }).sizes;
    expect(s!.bought).not.toBeNull();
    expect(s!.missing).toEqual([]);
  });

  test('what is asked, less the fee, is the costs and the profit; a notion without a price is named', () => {
    const money = fc.double({ min: 0, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(
        money,
        fc.double({ min: 0, max: 300, noNaN: true }),
        fc.double({ min: 0, max: 99, noNaN: true }),
        (hourly, profit, fee) => {
          const [s] = priced({}, { hourly, profit, fee }).sizes;
          const { price, fee: kept, cost, profit: gain } = s!.bought!;
          expect(price.sub(kept).equals(cost.add(gain))).toBe(true);
        },
      ),
      { numRuns: 50 },
    );
    expect(priced({ notions: [{ ...button, price: null }] }).unpriced).toHaveLength(1);
  });
});
