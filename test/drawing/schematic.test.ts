/**
 * Schematics: what they measure is what the study counts at the gauge and what the pattern prints; what is drawn is as
 * large as it is labelled; and no label lies on another, on a line or off the sheet, whatever the pattern.
 */
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Pattern } from '../../core/document/pattern.ts';
import { focusOf, lengthLabel, type Schematic, schematicsOf } from '../../core/drawing/schematic.ts';
import { drawSchematic, letterOf, type SceneOptions, undrawnIn } from '../../core/drawing/schematic-scene.ts';
import { measurementsOf } from '../../core/study/index.ts';
import { type Study, study } from '../../core/study/study.ts';
import { workedRows } from '../../core/study/worked.ts';
import { toNumber } from '../../core/trade/units.ts';
import { hat } from '../../resources/examples/hat.ts';
import { tee } from '../../resources/examples/tee.ts';
import { vest } from '../../resources/examples/vest.ts';
import { piece, row, smallPattern } from '../study/builder.ts';
import { crosses, type Lying, lying, meet } from './scenes.ts';

const examples: Record<string, { pattern: Pattern; study: Study; drawings: readonly Schematic[] }> = {};

beforeAll(() => {
  for (const [name, pattern] of Object.entries({ vest, tee, hat })) {
    const made = study(pattern);
    examples[name] = { pattern, study: made, drawings: schematicsOf(made).drawings };
  }
});

const f = (text: string) => row('', text, { form: 'foundation' });
const r = (text: string) => row('', text);
const rnd = (text: string) => row('', text, { form: 'round' });
const times = <T>(n: number, make: (i: number) => T): readonly T[] =>
  Array.from({ length: n }, (_, i) => make(i));

/** A pattern of one size and one piece, at 20 stitches and 20 rows to 10 cm: half a centimetre each. */
function alone(blocks: readonly ReturnType<typeof row>[], more: Partial<Pattern> = {}): Pattern {
  const base = smallPattern();
  return {
    ...base,
    sizes: base.sizes.slice(0, 1),
    sample: base.sizes[0]!.id,
    gauges: [
      {
        ...base.gauges[0]!,
        stitches: 20,
        rows: 20,
        width: { value: 10, unit: 'cm' },
        height: { value: 10, unit: 'cm' },
      },
    ],
    pieces: [
      piece(
        'p',
        'Piece',
        blocks.map((block, i) => ({ ...block, id: `b${i}` })),
      ),
    ],
    ...more,
  };
}

const told = (schematic: Schematic, size = 0): Record<string, number> =>
  Object.fromEntries(
    schematic.lengths.flatMap((length) => {
      const own = length.lengths[size];
      return own == null ? [] : [[lengthLabel(length), Math.round(toNumber(own) * 1000) / 1000]];
    }),
  );

const SC = 'Sc in 2nd ch from hook and in each ch across, turn.';
const EVEN = 'Ch 1, sc in each st across, turn.';

const TOP = 'join with sl st in top of ch-3.';
const CORNER = 'Sl st in next 2 sts and in next ch-2 sp, ch 3 (counts as dc), (2 dc, ch 2, 3 dc) in same sp';

describe('a piece, worked out by hand', () => {
  const cases: readonly (readonly [string, readonly ReturnType<typeof row>[], Record<string, number>])[] = [
    // 40 stitches of 0.5 cm, 30 rows of 0.5 cm.
    ['a rectangle', [f('Ch 41.'), r(SC), ...times(29, () => r(EVEN))], { Width: 20, Height: 15 }],
    // The mesh stands on 21 stitches: 11 dc and 10 chains between them.
    [
      'a mesh is as wide as what it stands on',
      [
        f('Ch 22.'),
        r(SC),
        r(
          'Ch 4 (counts as dc, ch 1), sk first 2 sts, dc in next st, *ch 1, sk next st, dc in next st; rep from * across, turn.',
        ),
      ],
      { Width: 10.5, Height: 1 },
    ],
    // 20 stitches and an increase at each end of 5 rows: 30. 6 rows in all.
    [
      'a piece that widens',
      [
        f('Ch 21.'),
        r(SC),
        ...times(5, () => r('Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st, turn.')),
      ],
      { 'Width at the start': 10, 'Width at the end': 15, Height: 3 },
    ],
    // 60 stitches, 10 rows; 5 left at each side, and 50 on 8 rows.
    [
      'armholes',
      [
        f('Ch 61.'),
        r(SC),
        ...times(9, () => r(EVEN)),
        r('Sl st in each of next 5 sts, ch 1, sc in each of next 50 sts, turn, leaving rem sts unworked.'),
        ...times(7, () => r(EVEN)),
      ],
      { 'Part 1: width': 30, 'Part 1: height': 5, 'Part 2: height': 4, 'Whole height': 9 },
    ],
    // 48 stitches round lie 24 wide, at 10 rounds.
    [
      'a tube',
      [
        f('Ch 48, join with sl st in first ch to form a ring.'),
        rnd('Ch 1, sc in each ch around; join with sl st in first sc.'),
        ...times(9, () => rnd('Ch 1, sc in each st around; join with sl st in first sc.')),
      ],
      { 'Width, lying flat': 12, Height: 5 },
    ],
    // The same without a chain: foundation stitches joined are no closed end.
    [
      'a tube on foundation stitches',
      [
        rnd('Fsc 48; join with sl st in first fsc to form a ring.'),
        ...times(9, () => rnd('Ch 1, sc in each st around; join with sl st in first sc.')),
      ],
      { 'Width, lying flat': 12, Height: 5 },
    ],
    // 7 rounds of 0.5 cm from the middle both ways.
    [
      'a circle',
      [
        rnd('Make a magic ring, 6 sc in ring.'),
        ...times(6, (i) =>
          rnd(`*${i === 0 ? '' : `Sc in each of next ${i} sts, `}2 sc in next st; rep from * around.`),
        ),
      ],
      { Across: 7 },
    ],
    // 3 rounds of 0.5 cm: the loops of the second reach as far as the petals in them ask.
    [
      'a flower',
      [
        rnd('Make a magic ring, ch 1, 12 sc in ring; join with sl st in first sc.'),
        rnd(
          'Ch 1, sc in first st, *ch 3, sk next st, sc in next st; rep from * to last st, ch 3, sk last st; join with sl st in first sc.',
        ),
        rnd(
          'Ch 1, *(sc, hdc, 3 dc, hdc, sc) in next ch-3 sp; rep from * around; join with sl st in first sc.',
        ),
      ],
      { Across: 3 },
    ],
    // The last round has 36 dc on four sides: 9 of 0.5 cm each.
    [
      'a square',
      [
        rnd(
          `Ch 4, join with sl st to form ring. Ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * 2 more times; ${TOP}`,
        ),
        rnd(`${CORNER}, *(3 dc, ch 2, 3 dc) in next ch-2 sp; rep from * 2 more times; ${TOP}`),
        rnd(
          `${CORNER}, 3 dc in next sp between groups, *(3 dc, ch 2, 3 dc) in next ch-2 sp, 3 dc in next sp between groups; rep from * 2 more times; ${TOP}`,
        ),
      ],
      { Side: 4.5 },
    ],
    // Row 2 is worked until there are 30 cm: 60 rows in all; then until 40 cm: 80.
    [
      'rows that go on until they measure a length',
      [
        f('Ch 41.'),
        r(SC),
        r(EVEN),
        r('Rep Row 2 until piece measures 30 cm from beg.'),
        r('Work even in sc until piece measures 40 cm.'),
      ],
      { Width: 20, Height: 40 },
    ],
    // 49 chains, of which 48 stitches: 24 wide where they lie double, 6 rows.
    [
      'a tube whose first row is worked flat and then joined',
      [
        f('Ch 49.'),
        r(
          'Sc in 2nd ch from hook and in each ch across, do not turn; being careful not to twist, join with sl st in first sc.',
        ),
        ...times(5, () => rnd('Ch 1, sc in each st around; join with sl st in first sc.')),
      ],
      { 'Width, lying flat': 12, Height: 3 },
    ],
    // 10 chains, of which one turns: 9 of 0.5 cm, and one round of 0.5 cm about them.
    [
      'an oval',
      [
        f('Ch 10.'),
        rnd(
          '2 sc in 2nd ch from hook, sc in each of next 7 chs, 3 sc in last ch; working along opposite side of foundation, sc in each of next 7 chs, sc in last ch; join with sl st in first sc.',
        ),
      ],
      { Length: 5.5, Across: 1 },
    ],
    // 16 round 7 chains: flat, and then sides of 9 rounds, lying 4 cm wide; the flat round is folded up with them.
    [
      'a basket on an oval',
      [
        f('Ch 8.'),
        rnd(
          '2 sc in 2nd ch from hook, sc in each of next 5 chs, 3 sc in last ch; working along opposite side of foundation, sc in each of next 5 chs, sc in last ch; join with sl st in first sc. (16 sc)',
        ),
        ...times(9, () => rnd('Ch 1, sc in each st around; join with sl st in first sc.')),
      ],
      { 'Width, lying flat': 4, Height: 5 },
    ],
    // 120 chains of 0.5 cm.
    ['a cord', [f('Ch 120. Fasten off.')], { Length: 60 }],
  ];
  test.each(cases)('%s', (_, blocks, expected) => {
    const [drawing] = schematicsOf(study(alone(blocks))).drawings;
    expect(told(drawing!)).toMatchObject(expected);
  });

  test('shaping is drawn at the side where it is made', () => {
    const decrease = (at: 'start' | 'end') =>
      at === 'start'
        ? 'Ch 1, sc2tog over next 2 sts, sc in each st across, turn.'
        : 'Ch 1, sc in each st to last 2 sts, sc2tog over next 2 sts, turn.';
    // Row 1 is RS and goes from right to left; rows 2, 4, 6 begin at the left edge.
    const made = (at: 'start' | 'end') => {
      const blocks = [f('Ch 31.'), r(SC), ...times(10, (i) => r(i % 2 === 0 ? decrease(at) : EVEN))];
      const area = schematicsOf(study(alone(blocks))).drawings[0]!.sketches[0]!.areas[0]!;
      const top = Math.max(...area.map(({ y }) => y));
      const xs = area.filter(({ y }) => y === top).map(({ x }) => x);
      return [Math.min(...xs), Math.max(...xs)].map((x) => Math.round(x * 100) / 100);
    };
    expect(made('start')).toEqual([2.5, 15]);
    expect(made('end')).toEqual([0, 12.5]);
  });

  test('a yoke in rows that grows at four corners in every row slopes, and lies neck up', () => {
    // 45 stitches, then 8 more in every one of 10 rows: 125. 12 rows in all.
    const grow =
      'Ch 2, *hdc in each st to next ch-1 sp, (hdc, ch 1, hdc) in ch-1 sp; rep from * 3 more times, hdc in each st to end, turn.';
    const blocks = [
      f('Ch 47.'),
      r('Hdc in 3rd ch from hook and in each ch across, turn. (45 hdc)'),
      r(
        'Ch 2 (does not count as a st), hdc in next 7 sts, (hdc, ch 1, hdc) in next st, hdc in next 6 sts, (hdc, ch 1, hdc) in next st, hdc in next 15 sts, (hdc, ch 1, hdc) in next st, hdc in next 6 sts, (hdc, ch 1, hdc) in next st, hdc in last 7 sts, turn. (49 hdc)',
      ),
      ...times(10, () => r(grow)),
    ];
    const [drawing] = schematicsOf(study(alone(blocks))).drawings;
    expect(Object.keys(told(drawing!))).toEqual(['Width at the start', 'Width at the end', 'Height']);
    expect(told(drawing!)).toMatchObject({ 'Width at the start': 22.5, Height: 6 });
    const { areas, notes } = drawing!.sketches[0]!;
    expect(areas[0]!.length).toBeLessThan(10);
    expect(notes).toContain('down-rows');
    // A body worked on from it has no corners.
    const body = [
      r('Ch 2, hdc in each st and ch across, turn.'),
      ...times(8, () => r('Ch 2, hdc in each st across, turn.')),
    ];
    const whole = schematicsOf(study(alone([...blocks, ...body]))).drawings[0]!;
    expect(whole.sketches[0]!.notes).toContain('down-rows');
  });

  test('a fan that grows all along its rows lies as a half circle', () => {
    // 7 dc more in every row: at 20 stitches and 9 rows to 10 cm the last of 6 rows, 42 dc or 21 cm, goes half round a
    // circle of 6.67 cm (20.9 cm).
    const grow = (n: number) =>
      n === 0
        ? 'Ch 3 (counts as dc), dc in same st, 2 dc in each st across, turn.'
        : `Ch 3 (counts as dc), dc in same st, dc in each of next ${n} sts, *2 dc in next st, dc in each of next ${n} sts; rep from * across, turn.`;
    const blocks = [
      f('Ch 4.'),
      r('6 dc in 4th ch from hook (skipped chs count as dc), turn. (7 dc)'),
      ...times(5, (i) => r(grow(i))),
    ];
    const pattern = alone(blocks);
    const gauges = [{ ...pattern.gauges[0]!, rows: 9 }];
    const [drawing] = schematicsOf(study({ ...pattern, gauges })).drawings;
    expect(told(drawing!)).toEqual({ Across: 13.333, Height: 6.667 });
    expect(drawing!.sketches[0]!.notes).toContain('half-circle');
    // In rows twice as low the same stitches lie in folds, and no half circle is promised.
    const folds = schematicsOf(study({ ...pattern, gauges: [{ ...gauges[0]!, rows: 18 }] })).drawings[0]!;
    expect(told(folds)).not.toHaveProperty('Across');
  });

  test('the side of a hat hangs from the crown that it is worked on from', () => {
    const base = alone([]);
    const crown = [
      rnd('Make a magic ring, 6 sc in ring.'),
      ...times(5, (i) =>
        rnd(`*${i === 0 ? '' : `Sc in each of next ${i} sts, `}2 sc in next st; rep from * around.`),
      ),
    ].map((block, i) => ({ ...block, id: `c${i}` }));
    const side = [
      ...times(8, () => rnd('Sc in each st around.')),
      rnd('*Sc in next 5 sts, 2 sc in next st; rep from * around.'),
    ].map((block, i) => ({ ...block, id: `s${i}` }));
    const on = {
      kind: 'edges',
      edges: [{ piece: 'crown', kind: 'top', amount: null, which: 1 }],
      round: true,
    } as const;
    const pieces = [piece('crown', 'Crown', crown), piece('side', 'Side', side, { start: on })];
    const notesOf = (title: string) =>
      schematicsOf(study({ ...base, pieces, about: { ...base.about, title } })).drawings.find(
        (one) => one.title === 'Side',
      )!.sketches[0]!.notes;
    expect(notesOf('Fen hat')).toContain('down');
    expect(notesOf('Fen basket')).not.toContain('down');
  });

  test('a shawl from the middle of its upper edge hangs at its spine', () => {
    // Each row adds 2 at the spine's two sides and 1 at each end: in a wing of 15 rows (7.5 cm) the last row has 45 dc
    // (22.5 cm), two thirds of what it gained towards the spine: hypot(15, 7.5) = 16.77 down the middle.
    const blocks = [
      r('Ch 4, join with sl st to form ring. Ch 3 (counts as dc), 2 dc in ring, ch 2, 3 dc in ring, turn.'),
      ...times(14, () =>
        r(
          'Ch 3 (counts as dc), dc in first st, dc in each st to ch-2 sp, (2 dc, ch 2, 2 dc) in ch-2 sp, dc in each st to last st, 2 dc in last st, turn.',
        ),
      ),
    ];
    const [drawing] = schematicsOf(study(alone(blocks))).drawings;
    expect(Math.abs(told(drawing!).Middle! - Math.hypot(15, 7.5))).toBeLessThan(0.6);
    const [area] = drawing!.sketches[0]!.areas;
    expect(area).toHaveLength(5);
  });

  test('so does one whose edges are a mesh of chains, with an edging of loops', () => {
    // 8 dc, and in each of 14 rows 2 at the spine's two sides and 1 in the space at each end: a wing of 46 dc (23 cm), two
    // thirds of what it gained towards the spine, on 16 rows (8 cm) with the edging: hypot(15.33, 8).
    const blocks = [
      f('Ch 5, join with sl st in first ch to form a ring.'),
      r('Ch 4 (counts as dc and ch 1), 3 dc in ring, ch 2, 3 dc in ring, ch 1, dc in ring, turn.'),
      ...times(14, () =>
        r(
          'Ch 4 (counts as dc and ch 1), dc in next ch-1 sp, dc in each dc to ch-2 sp, (2 dc, ch 2, 2 dc) in ch-2 sp, dc in each dc to last sp, dc in last sp, ch 1, dc in 3rd ch of ch-4, turn.',
        ),
      ),
      r('Ch 1, sc in first dc, *ch 3, sk next 2 dc, sc in next dc; rep from * across, turn.'),
    ];
    const [drawing] = schematicsOf(study(alone(blocks))).drawings;
    expect(Math.abs(told(drawing!).Middle! - Math.hypot(46 / 3, 8))).toBeLessThan(0.6);
    expect(drawing!.sketches[0]!.areas[0]).toHaveLength(5);
  });

  test('a round yoke slopes out to where it parts, and lies neck up', () => {
    // 60 chains; 72, 84 and 96 stitches with plain rounds between; 16 left for each sleeve, with 4 chains: 72.
    const plain = (n: number) =>
      times(n, () => rnd('Ch 1, sc in each st around; join with sl st in first sc.'));
    const grow = (n: number) =>
      rnd(
        `Ch 1, *2 sc in next st, sc in each of next ${n} sts; rep from * around; join with sl st in first sc.`,
      );
    const blocks = [
      f('Ch 60, join with sl st in first ch to form a ring.'),
      rnd('Ch 1, sc in each ch around; join with sl st in first sc.'),
      grow(4),
      ...plain(3),
      grow(5),
      ...plain(3),
      grow(6),
      ...plain(2),
      rnd(
        'Ch 1, sc in each of next 16 sts, ch 4, sk next 16 sts, sc in each of next 32 sts, ch 4, sk next 16 sts, sc in each st around; join with sl st in first sc.',
      ),
      rnd('Ch 1, sc in each st and ch around; join with sl st in first sc.'),
      ...plain(4),
    ];
    const [drawing] = schematicsOf(study(alone(blocks))).drawings;
    expect(told(drawing!)).toEqual({
      'Part 1: width at the start, lying flat': 15,
      'Part 1: width at the end, lying flat': 24,
      'Part 1: height': 6,
      'Part 2: width, lying flat': 18,
      'Part 2: height': 3,
      'Whole height': 9,
    });
    const { areas, notes } = drawing!.sketches[0]!;
    expect(notes).toContain('down');
    // Level are the neck, the underarms, and the hem: no round that widens is a step.
    const levels = areas[0]!.flatMap(({ y }, i) =>
      Math.abs(areas[0]!.at(i - 1)!.y - y) < 1e-6 ? [Math.round(y * 100) / 100] : [],
    );
    expect([...new Set(levels)].sort((a, b) => a - b)).toEqual([0, 3, 9]);
  });

  test('a mitten parts at its thumb in every size, and the thumb rises with the hand', () => {
    // A gore of 10, 12 and 14 in 40, 46 and 56: across the tube the hole takes 2, 2½ and 3 stitches at each side.
    const even = rnd('Ch 1, sc in each st around; join with sl st in first sc.');
    const blocks = [
      f('Ch 32 (36, 44), join with sl st in first ch to form a ring.'),
      rnd('Ch 1, sc in each ch around; join with sl st in first sc.'),
      rnd('Ch 1, 2 sc in each of next 8 (10, 12) sts, sc in each st around; join with sl st in first sc.'),
      even,
      rnd(
        'Ch 1, sc in each of next 15 (17, 21) sts, ch 2, sk next 10 (12, 14) sts, sc in each st around; join with sl st in first sc.',
      ),
      rnd('Ch 1, sc in each sc and in each ch around; join with sl st in first sc.'),
      even,
      rnd('Ch 1, *sc2tog over next 2 sts; rep from * around; join with sl st in first st.'),
    ];
    const hand = alone(blocks, { sizes: smallPattern().sizes });
    const opening = { piece: 'p', kind: 'opening', amount: null, which: 1 } as const;
    const thumb = piece(
      't',
      'Thumb',
      [rnd('Ch 1, sc in each st and ch around; join with sl st in first sc.'), even],
      {
        start: { kind: 'edges', edges: [opening], round: true },
      },
    );
    const { drawings } = schematicsOf(study({ ...hand, pieces: [...hand.pieces, thumb] }));
    expect(drawings).toHaveLength(2);
    for (const { lengths } of drawings)
      for (const { name, lengths: sizes } of lengths) expect(sizes, name).not.toContain(null);
    const [own, other] = drawings.map(({ sketches }) => sketches.map((sketch) => sketch!.notes));
    for (const notes of [...own!, ...other!]) expect(notes).not.toContain('down');
  });

  test('a piece lies one way in all sizes', () => {
    // 20 more on 48, 60 and 72: 1.42, 1.33 and 1.28 times as many, and with 1.4 a tube would hang from its beginning.
    const blocks = [
      f('Ch 48 (60, 72), join with sl st in first ch to form a ring.'),
      rnd('Ch 1, sc in each ch around; join with sl st in first sc.'),
      rnd('Ch 1, 2 sc in each of next 20 sts, sc in each st around; join with sl st in first sc.'),
      rnd('Ch 1, sc in each st around; join with sl st in first sc.'),
    ];
    const [drawing] = schematicsOf(study({ ...alone(blocks), sizes: smallPattern().sizes })).drawings;
    expect(drawing!.sketches.map((sketch) => sketch!.notes.includes('down'))).toEqual([false, false, false]);
  });

  test('rows for one shoulder and then for the other leave the neck between them', () => {
    const blocks = [
      f('Ch 41.'),
      r(SC),
      ...times(5, () => r(EVEN)),
      r('Ch 1, sc in each of next 12 sts, turn, leaving rem sts unworked.'),
      ...times(3, () => r(EVEN)),
      r('Ch 1, sc in each st across. Fasten off. Sk next 16 sts, join yarn with sl st in next st.'),
      r('Ch 1, sc in same st, sc in each of next 11 sts, turn.'),
      ...times(4, () => r(EVEN)),
    ];
    const [drawing] = schematicsOf(study(alone(blocks))).drawings;
    expect(told(drawing!)).toMatchObject({ 'Between the parts': 8, 'Whole height': 5.5 });
    expect(drawing!.sketches[0]!.areas).toHaveLength(2);
  });

  /** 10 chains in S, 20 in M, 30 in L; row 2 passes over 9: none are left in S, 10 and 20 are in M and L. */
  const emptied = (): Pattern => {
    const base = smallPattern();
    const blocks = [
      r('Ch 10 (20, 30).'),
      r('Sc in 2nd ch from hook and in each ch across, turn.'),
      r('Ch 1, sk next 9 sts, sc in each rem st across, turn.'),
      r(EVEN),
    ].map((block, i) => ({ ...block, id: `b${i}` }));
    return { ...base, lines: [], pieces: [piece('p', 'Flap', blocks)] };
  };
  const WHY = 'Flap is not drawn in size S: row 2 leaves no stitches there.';

  test('a size whose rows come to nothing has no outline, and it is told why', () => {
    const pattern = emptied();
    const { drawings, missing } = schematicsOf(study(pattern));
    expect(missing).toEqual([]);
    expect(drawings[0]!.sketches.map((sketch) => sketch === null)).toEqual([true, false, false]);
    expect(drawSchematic(drawings[0]!, options(pattern))!.notes).toContain(WHY);
    // Drawn in a size that has an outline where the one asked for has none; alone, not at all.
    const about = drawSchematic(drawings[0]!, options(pattern, { focus: 0, nested: true }))!;
    expect(about.notes[0]).toContain('size M');
    expect(about.notes).toContain(WHY);
    expect(drawSchematic(drawings[0]!, options(pattern, { focus: 0, sizes: [0] }))).toBeNull();
    expect(undrawnIn(drawings[0]!, options(pattern, { focus: 0, sizes: [0] }))).toEqual([WHY]);
    expect(drawSchematic(drawings[0]!, options(pattern, { focus: 1, sizes: [1] }))!.notes).not.toContain(WHY);
  });

  test('rows that change until a length is measured give no outline, and it is told why', () => {
    const blocks = [
      f('Ch 11.'),
      r(SC),
      r('Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st, turn.'),
      r('Rep Row 2 until piece measures 40 cm.'),
    ];
    const { drawings, missing } = schematicsOf(study(alone(blocks)));
    expect(drawings).toEqual([]);
    expect(missing.map(({ why }) => why)).toEqual([
      'Piece cannot be drawn yet: row 3 goes on until a length is measured, and how many rows that is cannot be reckoned. Write how many rows they are.',
    ]);
  });

  test('a length of more rows than can be drawn is told as such', () => {
    const blocks = [f('Ch 41.'), r(SC), r(EVEN), r('Rep Row 2 until piece measures 9000 cm.')];
    expect(schematicsOf(study(alone(blocks))).missing.map(({ why }) => why)).toEqual([
      'Piece has more rows than can be drawn.',
    ]);
  });

  test('a piece that comes to nothing in every size is not drawn, and it is told why', () => {
    const blocks = [f('Ch 10.'), r(SC), r('Ch 1, sk next 9 sts, sc in each rem st across, turn.'), r(EVEN)];
    const { drawings, missing } = schematicsOf(study(alone(blocks)));
    expect(drawings).toEqual([]);
    expect(missing.map(({ why }) => why)).toEqual([
      'Piece cannot be drawn yet: row 2 leaves no stitches. Put that row right.',
    ]);
  });
});

describe('the examples', () => {
  /** Printed measurements and what the schematics must say for them; a round lies double. Sheet and rows, by hand. */
  const PRINTED: readonly (readonly [string, string, string, string, number])[] = [
    ['vest', 'Finished bust', 'Panels and Back', 'Panels: width', 2],
    ['vest', 'Hem to armhole', 'Panels and Back', 'Panels: height', 1],
    ['vest', 'Armhole depth', 'Panels and Back', 'Back: height', 1],
    ['vest', 'Hem to shoulder', 'Panels and Back', 'Whole height', 1],
    ['tee', 'Finished bust', 'Yoke and Body', 'Body: width, lying flat', 2],
    ['tee', 'Yoke depth', 'Yoke and Body', 'Yoke: height', 1],
    ['tee', 'Neck edge to hem', 'Yoke and Body', 'Whole height', 1],
    ['tee', 'Underarm to hem', 'Yoke and Body', 'Body: height', 1],
    ['tee', 'Finished upper arm', 'Sleeves', 'Width at the start, lying flat', 2],
    ['tee', 'Cuff edge', 'Sleeves', 'Width at the end, lying flat', 2],
    ['tee', 'Underarm to cuff', 'Sleeves', 'Height', 1],
    ['hat', 'Hat circumference', 'Hat', 'Width, lying flat', 2],
    ['hat', 'Crown to brim', 'Hat', 'Height', 1],
  ];
  test.each(PRINTED)('%s: %s is what the drawing of %s has as %s', (name, heading, title, label, factor) => {
    const { study: made, drawings } = examples[name]!;
    const drawing = drawings.find((one) => one.title === title)!;
    const length = drawing.lengths.find((one) => lengthLabel(one) === label)!;
    const printed = measurementsOf(made.sheet).find((one) => one.heading === heading)!;
    expect(length.lengths.map((own) => own!.mul(factor).toFraction())).toEqual(
      printed.values.map((value) => (value !== null && 'length' in value ? value.length.toFraction() : null)),
    );
  });

  test('every part is as large as it is labelled, in every size', () => {
    for (const { drawings } of Object.values(examples)) {
      for (const { sketches, title } of drawings) {
        for (const sketch of sketches) {
          if (sketch!.notes.includes('broken')) continue;
          for (const { from, to, length, along, key } of sketch!.measures) {
            const drawn = along === 'across' ? to.x - from.x : Math.abs(to.y - from.y);
            expect(drawn, `${title} ${key}`).toBeCloseTo(toNumber(length), 6);
          }
        }
      }
    }
  });

  test('every row that the study counts is followed', () => {
    for (const { study: made } of Object.values(examples)) {
      for (const one of made.pieces) {
        made.pattern.sizes.forEach((_, size) => {
          const rows = workedRows(one, size)!.filter((own) => !own.onlyFoundation);
          expect(rows.length).toBe(one.rows[size]);
          expect(rows.at(-1)!.fabric).toBe(one.fabrics[size]);
          const last = one.blocks.findLast((block) => block.sizes[size] != null)!;
          expect(rows.at(-1)!.tally).toEqual(last.sizes[size]!.tally);
        });
      }
    }
  });

  test('pieces that go on from one another lie together, and the neck is measured', () => {
    expect(examples.vest!.drawings.map(({ title }) => title)).toEqual([
      'Panels and Back',
      'Panels, Front, Left Front Shoulder and Right Front Shoulder',
      'Neckband',
      'Armbands',
    ]);
    expect(examples.tee!.drawings.map(({ title }) => title)).toEqual([
      'Yoke and Body',
      'Sleeves',
      'Neckband',
    ]);
    // XS: 62 stitches of the yoke less two shoulders of 14: 34, at 16 to 4 in: 8½ in.
    const front = examples.vest!.drawings[1]!;
    const neck = front.lengths.find((one) => one.what === 'between')!;
    expect(neck.lengths[0]!.toFraction()).toBe('2159/100');
  });

  test('the same pattern gives the same drawings, and an unchanged piece the identical one', () => {
    const { pattern, study: made, drawings } = examples.vest!;
    const again = schematicsOf(made).drawings;
    expect(again).toBe(drawings);
    const retitled = study({ ...pattern, about: { ...pattern.about, description: 'x' } }, made);
    expect(schematicsOf(retitled).drawings).toBe(drawings);
    const pieces = pattern.pieces.map((one) =>
      one.name === 'Armbands' ? { ...one, blocks: one.blocks.slice(0, -2) } : one,
    );
    const edited = schematicsOf(study({ ...pattern, pieces }, made)).drawings;
    expect(edited[0]).toBe(drawings[0]);
    expect(edited[1]).toBe(drawings[1]);
    expect(edited[3]).not.toBe(drawings[3]);
  });
});

const options = (pattern: Pattern, more: Partial<SceneOptions> = {}): SceneOptions => ({
  units: pattern.units,
  sizes: pattern.sizes.map((_, i) => i),
  labels: pattern.sizes.map(({ label }) => label),
  focus: focusOf({ pattern }),
  nested: false,
  type: 8,
  width: 420,
  height: 340,
  scale: 6,
  key: 'elsewhere',
  say: (words) => words,
  ...more,
});

/** What is wrong with where things lie. */
function clashes(shapes: readonly Lying[], width: number, height: number): readonly string[] {
  const out: string[] = [];
  const labels = shapes.filter(({ text }) => text !== undefined);
  labels.forEach((one, i) => {
    const { box, text } = one;
    if (box.left < -0.01 || box.top < -0.01 || box.right > width + 0.01 || box.bottom > height + 0.01)
      out.push(`"${text!.words}" is off the sheet`);
    for (const other of labels.slice(i + 1))
      if (meet(box, other.box)) out.push(`"${text!.words}" lies on "${other.text!.words}"`);
    for (const shape of shapes) {
      if (shape.path === undefined || shape.path.stroke === 0) continue;
      if (shape.lines.some((line) => crosses(line, box)))
        out.push(`"${text!.words}" lies on a line of ${shape.name}`);
    }
  });
  // Lines of lengths keep off the outline: they run beside it and never along it.
  const edges = shapes.filter(({ name, path }) => name === 'outline' && path!.role === 'outline');
  for (const shape of shapes) {
    if (shape.path?.role !== 'measure') continue;
    for (const edge of edges)
      for (const a of shape.lines)
        for (const b of edge.lines)
          if (alongside(a, b)) out.push(`a line of ${shape.name} runs along the outline`);
  }
  return out;
}

type Straight = readonly [number, number, number, number];

/** Do two level or upright lines lie on one another? */
function alongside(a: Straight, b: Straight): boolean {
  const inTurn = [0, 1] as const;
  return inTurn.some((axis) => {
    const other = 1 - axis;
    if (Math.abs(a[axis]! - a[axis + 2]!) > 0.01 || Math.abs(b[axis]! - b[axis + 2]!) > 0.01) return false;
    if (Math.abs(a[axis]! - b[axis]!) > 0.2) return false;
    const [a1, a2] = [a[other]!, a[other + 2]!].sort((x, y) => x - y) as [number, number];
    const [b1, b2] = [b[other]!, b[other + 2]!].sort((x, y) => x - y) as [number, number];
    return a1 < b2 - 0.5 && b1 < a2 - 0.5;
  });
}

describe('where things lie on the sheet', () => {
  test.each(['vest', 'tee', 'hat'])('the %s: all sizes, nested, each alone, in two sizes of type', (name) => {
    const { pattern, drawings } = examples[name]!;
    for (const drawing of drawings) {
      const ways: Partial<SceneOptions>[] = [
        {},
        { nested: true },
        { type: 18, width: 450, height: 560 },
        ...pattern.sizes.flatMap((_, size) => [
          { sizes: [size], focus: size },
          { sizes: [size], focus: size, type: 18, width: 450, height: 560 },
        ]),
      ];
      for (const way of ways) {
        const { scene } = drawSchematic(drawing, options(pattern, way))!;
        expect(clashes(lying(scene), scene.width, scene.height), drawing.title).toEqual([]);
        expect(scene.width).toBeLessThanOrEqual((way.width ?? 420) + 1);
      }
    }
  });

  test.each(['vest', 'tee', 'hat'])('the %s: no ground covers the line of another size', (name) => {
    const { pattern, drawings } = examples[name]!;
    for (const drawing of drawings) {
      const { scene } = drawSchematic(drawing, options(pattern, { nested: true }))!;
      const paths = lying(scene).flatMap(({ path }) => (path === undefined ? [] : [path]));
      const grounds = paths.map(({ role }) => role === 'ground');
      const others = paths.findIndex(({ role }) => role === 'other');
      // A neckband, broken because it is long, is the same line in every size.
      expect(others >= 0, drawing.title).toBe(drawing.title !== 'Neckband');
      if (others >= 0) expect(grounds.lastIndexOf(true), drawing.title).toBeLessThan(others);
    }
  });

  /** Rows of a random piece: shaping of all sorts, parts left, at any width. */
  const shaped = fc.record({
    stitches: fc.integer({ min: 6, max: 120 }),
    round: fc.boolean(),
    rows: fc.array(
      fc.constantFrom(
        EVEN,
        'Ch 1, sc2tog over next 2 sts, sc in each st across, turn.',
        'Ch 1, 2 sc in first st, sc in each st across, turn.',
        'Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st, turn.',
        'Ch 1, sc in each of next 5 sts, turn, leaving rem sts unworked.',
        'Sl st in each of next 4 sts, ch 1, sc in each st to last 4 sts, turn, leaving rem sts unworked.',
        'Ch 1, sc in next st, ch 3, sk next 3 sts, sc in each st across, turn.',
        'Ch 1, sc in each of next 3 sts, 3 sc in next st, sc in each st across, turn.',
      ),
      { minLength: 0, maxLength: 24 },
    ),
    gauge: fc.record({ stitches: fc.integer({ min: 8, max: 32 }), rows: fc.integer({ min: 6, max: 40 }) }),
  });

  test('no label of any pattern meets another, a line or the edge of the sheet', () => {
    fc.assert(
      fc.property(shaped, fc.integer({ min: 1, max: 3 }), ({ stitches, round, rows, gauge }, sizes) => {
        const base = smallPattern();
        const begin = round
          ? [
              f(`Ch ${stitches}, join with sl st in first ch to form a ring.`),
              rnd('Ch 1, sc in each ch around; join with sl st in first sc.'),
            ]
          : [f(`Ch ${stitches + 1}.`), r(SC)];
        const own = alone([
          ...begin,
          ...rows.map((text) =>
            round ? rnd(text.replace(', turn', '; join with sl st in first sc')) : r(text),
          ),
        ]);
        const pattern: Pattern = {
          ...own,
          sizes: base.sizes.slice(0, sizes),
          gauges: own.gauges.map((one) => ({ ...one, ...gauge })),
        };
        for (const drawing of schematicsOf(study(pattern)).drawings) {
          for (const way of [
            {},
            { sizes: [0], focus: 0 },
            { type: 18, width: 450 },
            { nested: true },
            { key: 'below' as const },
          ]) {
            const made = drawSchematic(drawing, options(pattern, way));
            if (made === null) continue;
            expect(clashes(lying(made.scene), made.scene.width, made.scene.height)).toEqual([]);
          }
        }
      }),
      {
        numRuns: 60,
        // A round that lies in folds is wider than its outline: its leaders once ran through the label of the height.
        examples: [
          [
            {
              stitches: 6,
              round: true,
              rows: [
                'Ch 1, sc in each of next 3 sts, 3 sc in next st, sc in each st across, turn.',
                'Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st, turn.',
                'Ch 1, sc in next st, ch 3, sk next 3 sts, sc in each st across, turn.',
                EVEN,
                'Ch 1, sc2tog over next 2 sts, sc in each st across, turn.',
              ],
              gauge: { stitches: 8, rows: 27 },
            },
            1,
          ],
        ],
      },
    );
  });
});

describe('half-written patterns', () => {
  test('give what is known, and a sentence for what is not', () => {
    expect(schematicsOf(study(alone([]))).missing).toEqual([
      { piece: 'p', why: 'Piece has no rows to draw yet.' },
    ]);
    const gaugeless = alone([f('Ch 21.'), r(SC)], { gauges: [] });
    expect(schematicsOf(study(gaugeless))).toEqual({
      drawings: [],
      missing: [
        {
          piece: 'p',
          why: 'Piece cannot be drawn yet: give its gauge, in stitches and in rows, under Materials.',
        },
      ],
    });
  });

  test('whatever is left out of an example, something is said', () => {
    const { pattern } = examples.tee!;
    fc.assert(
      fc.property(fc.array(fc.nat(60), { maxLength: 12 }), fc.nat(3), (out, gone) => {
        const cut: Pattern = {
          ...pattern,
          sizes: pattern.sizes.slice(0, 2),
          pieces: pattern.pieces
            .filter((_, i) => i !== gone)
            .map((one, i) => ({
              ...one,
              blocks: one.blocks.filter((_block, at) => !out.includes(at + 13 * i)),
            })),
        };
        const { drawings, missing } = schematicsOf(study(cut));
        expect(drawings.length + missing.length).toBeGreaterThan(0);
        for (const drawing of drawings) drawSchematic(drawing, options(cut));
      }),
      { numRuns: 12 },
    );
  });

  test('letters go on behind the alphabet, without those that read as numbers', () => {
    expect([0, 7, 8, 12, 13, 23, 24, 25].map(letterOf)).toEqual(['A', 'H', 'J', 'N', 'P', 'Z', 'AA', 'AB']);
  });
});
