/**
 * Charts of patterns: which rows they show, on how many stitches, in whose words, and that they count what the study
 * counts. Expected numbers are worked out beside the words.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { EXAMPLES } from '../../app/command/examples.ts';
import { Writer } from '../../core/document/writer.ts';
import { type ChartDrawing, drawChart } from '../../core/drawing/chart/chart.ts';
import { planChart } from '../../core/drawing/chart/plan.ts';
import type { Shape } from '../../core/drawing/scene.ts';
import { textWidth } from '../../core/drawing/text-width.ts';
import { fabric, tally } from '../../core/fabric/index.ts';
import { study } from '../../core/study/index.ts';
import { vest } from '../../resources/examples/vest.ts';
import {
  chartOf,
  drawn,
  isGroup,
  lengthOf,
  middleOf,
  named,
  namesIn,
  pointsOf,
  rowGroup,
  US,
} from './drawn.ts';
import { readChart } from './read-chart.ts';
import { crosses, lying, meet } from './scenes.ts';

describe('charts of the examples', () => {
  for (const [name, pattern] of Object.entries(EXAMPLES)) {
    const of = study(pattern);
    test(`${name}: its own charts are drawn, on one sheet, without a problem`, () => {
      for (const chart of pattern.charts) {
        const drawing = drawChart(of, chart, US);
        expect(drawing.problem).toBeNull();
        expect(drawing.parts).toHaveLength(1);
        expect(drawing.key).not.toBeNull();
      }
    });

    test(`${name}: the rows of every piece, in every size, count what the study counts`, () => {
      let rows = 0;
      for (const piece of of.pieces) {
        for (const [at, block] of piece.blocks.entries()) {
          if (block.block.type !== 'row' || at % 3 !== 0) continue;
          for (const [i, size] of pattern.sizes.entries()) {
            if (i % 3 !== 0) continue;
            const chart = chartOf(piece.piece.id, block.block.id, block.block.id, size.id);
            const drawing = drawChart(of, chart, US);
            const plan = planChart(of, chart);
            if (drawing.problem !== null || drawing.notes.some((note) => /^Only the|shows a part/.test(note)))
              continue;
            const read = readChart(drawing.parts, plan.rows.length);
            const last = plan.rows[plan.rows.length - 1]!;
            const own = tally(fabric(last.trace.sites));
            expect(read[read.length - 1]).toMatchObject({ stitches: own.stitches, spaces: own.spaces });
            // On as many stitches as the size has, it is the study's count itself.
            if (!plan.notes.some(({ kind }) => kind === 'fewer')) {
              expect(own.stitches).toBe(block.sizes[i]!.tally.stitches);
            }
            rows += 1;
          }
        }
      }
      expect(rows).toBeGreaterThan(2);
    }, 60_000);
  }
});

describe('what a chart shows', () => {
  test('one repeat with its edges: the panel of the vest on 12 chains for a multiple of 3', () => {
    const of = study(vest);
    const [chart] = vest.charts;
    const plan = planChart(of, chart!);
    // Ch 12, sc in 11; ch 2, sk 2 sts, [V-st, sk 2] …: V-stitches in the 3rd, 6th and 9th, hdc in the 11th.
    const full = of.pieces[0]!.foundations[vest.sizes.findIndex(({ id }) => id === vest.sample)]! + 1;
    expect(plan.notes).toContainEqual({ kind: 'fewer', full, drawn: 12, chains: true });
    const read = readChart(drawChart(of, chart!, US).parts, 3);
    expect(read.map(({ stitches }) => stitches)).toEqual([11, 8, 11]);
    expect(read.map(({ spaces }) => spaces)).toEqual([0, 3, 0]);
  });

  test('rows of the right side from the right, of the wrong side from the left, told apart by weight and by words', () => {
    const { drawing } = drawn((work) => {
      work.foundation('Ch 8.');
      work.row('Sc in 2nd ch from hook and in each ch across, turn.');
      work.row('Ch 1, sc in each sc across, turn.');
    });
    const [sheet] = drawing.parts;
    const labels = sheet!.shapes.filter((shape) => isGroup(shape) && shape.name?.startsWith('label '));
    expect(labels.map((shape) => (isGroup(shape) ? shape.name : ''))).toEqual(['label 1 RS', 'label 2 WS']);
    const [first, second] = labels.map(middleOf);
    expect(first!.x).toBeGreaterThan(sheet!.width / 2);
    expect(second!.x).toBeLessThan(sheet!.width / 2);
    const strokes = [0, 1].map((index) => {
      const stitch = named(rowGroup(drawing, index), 'stitch t1')[0]!;
      const line = isGroup(stitch) ? stitch.shapes.find((shape) => shape.kind === 'path') : undefined;
      return line?.kind === 'path' ? [line.role, line.stroke] : [];
    });
    expect(strokes[0]![0]).toBe('outline');
    expect(strokes[1]![0]).toBe('other');
    expect(strokes[0]![1]).toBeGreaterThan(strokes[1]![1] as number);
  });

  test('increases fan from one place, decreases gather over theirs', () => {
    const { drawing } = drawn((work) => {
      work.foundation('Ch 8.');
      work.row('Sc in 2nd ch from hook, sc in next 2 ch, 3 sc in next ch, sc in next 3 ch, turn. (9 sc)');
      work.row('Ch 1, sc in first 3 sc, sc3tog over next 3 sc, sc in next 3 sc, turn. (7 sts)');
    });
    // In the order made: 3 sc, the three of one place, 3 sc.
    const row = named(rowGroup(drawing, 0), 'stitch t1');
    const starts = row.map((shape) => {
      const line = isGroup(shape) ? shape.shapes.find((one) => one.kind === 'path') : undefined;
      return line?.kind === 'path' ? line.steps[0]!.slice(1, 3).map(Number) : [0, 0];
    });
    const apart = (i: number, k: number) => Math.abs(starts[i]![0]! - starts[k]![0]!);
    expect(Math.max(apart(3, 4), apart(4, 5))).toBeLessThan(apart(0, 1) / 2);
    const [together] = named(rowGroup(drawing, 1), 'stitch tog3.t1');
    const centre = named(rowGroup(drawing, 0), 'stitch t1')[4]!;
    expect(middleOf(together!).x).toBeCloseTo(middleOf(centre).x, 0);
  });

  test('chains arch over the place that they leave', () => {
    const { drawing } = drawn((work) => {
      work.foundation('Ch 12.');
      work.row('Sc in 2nd ch from hook, *ch 7, sk 4 ch, sc in next ch; rep from * across, turn.');
    });
    const [space] = named(rowGroup(drawing, 0), 'space 7');
    const stitches = named(rowGroup(drawing, 0), 'stitch t1').map(middleOf);
    // Upwards is towards smaller y.
    expect(middleOf(space!).y).toBeLessThan(Math.min(...stitches.map(({ y }) => y)));
  });

  test('the corners of a square stand in its corners', () => {
    const { drawing } = drawn((work) => {
      work.round(
        'Make a magic ring, ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * 2 more times; join with sl st in top of beg ch-3. (12 dc)',
      );
      work.round(
        'Sl st in next 2 dc and in corner sp, ch 3 (counts as dc), (2 dc, ch 2, 3 dc) in same sp, *ch 1, (3 dc, ch 2, 3 dc) in next ch-2 sp; rep from * 2 more times, ch 1; join with sl st in top of beg ch-3. (24 dc)',
      );
    }, null);
    const ring = middleOf(
      drawing.parts[0]!.shapes.find((shape) => isGroup(shape) && shape.name === 'ring 0')!,
    );
    const angles = named(rowGroup(drawing, 1), 'space 2').map((shape) => {
      const { x, y } = middleOf(shape);
      return (Math.atan2(ring.y - y, x - ring.x) * 180) / Math.PI;
    });
    const off = angles.map((angle) => Math.abs((((angle % 90) + 90) % 90) - 45));
    expect(angles).toHaveLength(4);
    expect(Math.max(...off)).toBeLessThan(6);
  });

  test('rounds worked into a ring of chains are drawn about it, with all its chains, however many stitches they have', () => {
    const { drawing } = drawn((work) => {
      work.foundation('Ch 4, join with sl st to form a ring.');
      work.round('Ch 3 (counts as dc), 11 dc in ring, join with sl st in top of ch-3. (12 dc)');
      work.round(
        'Ch 3 (counts as dc), dc in same st, 2 dc in each st around, join with sl st in top of ch-3. (24 dc)',
      );
      work.round(
        'Ch 3 (counts as dc), dc in same st, dc in next st, *2 dc in next st, dc in next st; rep from * around, join with sl st in top of ch-3. (36 dc)',
      );
    }, null);
    expect(drawing.notes.join(' ')).toMatch(/^Read from the center outward and counterclockwise/u);
    expect(drawing.notes.join(' ')).not.toContain('instead of');
    expect(namesIn(drawing.parts[0]!.shapes)).toContain('ring 4');
    expect(readChart(drawing.parts, 3).map(({ stitches }) => stitches)).toEqual([12, 24, 36]);
  });

  test('a motif on a large ring of chains is drawn about it, its stitches no longer than they are', () => {
    const { drawing } = drawn((work) => {
      work.round('Ch 40, join with sl st in first ch to form a ring.');
      work.round('Ch 1, 24 sc in ring, join with sl st in first sc. (24 sc)');
    }, null);
    expect(drawing.parts).toHaveLength(1);
    expect(namesIn(drawing.parts[0]!.shapes)).toContain('ring 40');
    expect(readChart(drawing.parts, 1).map(({ stitches }) => stitches)).toEqual([24]);
    // About as high as wide, whatever stands at its beginning.
    const { width, height } = drawing.parts[0]!;
    expect(Math.abs(width - height)).toBeLessThan(0.1 * width);
    const longest = Math.max(...named(rowGroup(drawing, 0), 'stitch t1').map(lengthOf));
    expect(longest).toBeLessThan(20);
  });

  test('stitches that hook around one another row by row do not lie along each other', () => {
    const { drawing } = drawn((work) => {
      work.round('Ch 40, join with sl st in first ch to form a ring.');
      work.round('Ch 3 (counts as dc), dc in each ch around, join with sl st in top of ch-3.');
      for (let i = 0; i < 4; i++)
        work.round(
          'Ch 2 (does not count as a st), *fpdc around next st, bpdc around next st; rep from * around, join with sl st in first fpdc.',
        );
    }, null);
    const rows = [1, 2, 3, 4].map((row) => named(rowGroup(drawing, row), 'stitch fp.t3').map(lengthOf));
    // A row is 2.25 widths of 14 points high; its stems reach the upper part of the row below, in every row as in the first.
    for (const lengths of rows) {
      expect(lengths.length).toBeGreaterThan(1);
      expect(Math.max(...lengths)).toBeLessThan(1.45 * 2.25 * 14);
    }
    const [first, last] = [rows[0]!, rows[3]!].map((lengths) => Math.max(...lengths));
    expect(last! - first!).toBeLessThan(3);
    // The chains beside them stand one row high above one another.
    const chains = [1, 2, 3, 4].map((row) => pointsOf(named(rowGroup(drawing, row), 'turning 2')[0]!).ys);
    for (let i = 1; i < 4; i++) expect(Math.max(...chains[i]!)).toBeLessThan(Math.min(...chains[i - 1]!));
  });

  test('a chain that counts as nothing stands beside all the legs of the decrease after it', () => {
    const { drawing } = drawn((work) => {
      work.foundation('Ch 24, join with sl st in first ch to form a ring.');
      work.round('Ch 1, sc in each ch around, join with sl st in first sc.');
      work.round('Ch 1, *sc2tog, sc in each of next 2 sts; rep from * around, join with sl st in first sc.');
    }, null);
    const chain = pointsOf(named(rowGroup(drawing, 1), 'turning 1')[0]!).xs;
    const legs = named(rowGroup(drawing, 1), 'stitch tog2.t1').flatMap((shape) => pointsOf(shape).xs);
    expect(legs.length).toBeGreaterThan(0);
    expect(Math.min(...chain)).toBeGreaterThan(Math.max(...legs));
  });

  test('rounds about a chain are drawn about it on fewer chains too', () => {
    const { drawing } = drawn((work) => {
      work.foundation('Ch 27.');
      work.round(
        '2 sc in 2nd ch from hook, sc in each ch to last ch, 3 sc in last ch; working along opposite side of foundation, sc in each ch to last ch, sc in last ch; join with sl st in first sc.',
      );
    }, null);
    const base = drawing.parts[0]!.shapes.find((shape) => isGroup(shape) && shape.name === 'foundation')!;
    const { y } = middleOf(base);
    const stitches = named(rowGroup(drawing, 0), 'stitch t1').map((shape) => middleOf(shape).y - y);
    expect(stitches.filter((at) => at > 5).length).toBeGreaterThan(2);
    expect(stitches.filter((at) => at < -5).length).toBeGreaterThan(2);
  });

  test('the number of a round along sides stands clear of a chain that counts as nothing', () => {
    const { drawing } = drawn((work) => {
      work.round(
        'Ch 4, join with sl st to form ring. Ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * 2 more times; join with sl st in top of ch-3.',
      );
      work.round(
        'Ch 1, sc in each dc around, working (sc, ch 2, sc) in each ch-2 sp; join with sl st in first sc.',
      );
    }, null);
    const label = drawing.parts[0]!.shapes.find((shape) => isGroup(shape) && shape.name === 'label 2 ')!;
    const number = isGroup(label) ? label.shapes.find((shape) => shape.kind === 'text')! : label;
    const chain = pointsOf(named(rowGroup(drawing, 1), 'turning 1')[0]!);
    if (number.kind !== 'text') throw new Error('The round has no number.');
    const half = textWidth(number.words, number.size, true) / 2;
    const isOn = chain.xs.some((x, i) => {
      const y = chain.ys[i]!;
      return Math.abs(x - number.x) < half && y < number.y && y > number.y - number.size * 0.7;
    });
    expect(isOn).toBe(false);
  });

  test('rounds that begin a little after the ring are drawn with those that they stand on', () => {
    const { of } = drawn((work) => {
      work.round('Make a magic ring, ch 1, 6 sc in ring; join with sl st in first sc.');
      work.round('Ch 1, 2 sc in each st around; join with sl st in first sc.');
      work.round('Ch 1, *sc in next st, 2 sc in next st; rep from * around; join with sl st in first sc.');
      for (let n = 0; n < 8; n++) work.round('Ch 1, sc in each st around; join with sl st in first sc.');
    }, null);
    const ids = of.pieces[0]!.blocks.map(({ block }) => block.id);
    const plan = planChart(of, chartOf('piece', ids[2]!, ids[2]!));
    expect(plan.rows.map(({ number }) => number)).toEqual([1, 2, 3]);
    expect(drawChart(of, plan.chart, US).notes).toContain(
      'The chart begins with the first round, on which those from Round 3 on stand.',
    );
    // Far from the ring they are drawn alone.
    const far = planChart(of, chartOf('piece', ids[9]!, ids[9]!));
    expect(far.rows.map(({ number }) => number)).toEqual([10]);
  });

  describe('numbers of rounds that can be read', () => {
    const RING = 'Ch 4, join with sl st in first ch to form a ring.';
    const FIRST =
      'Ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * 2 more times; join with sl st in top of beg ch-3.';
    const TO_CORNER =
      'Sl st in next 2 dc and in next ch-2 sp, ch 3 (counts as dc), (2 dc, ch 2, 3 dc) in same sp, *ch 1, ';
    test.each([
      [
        'a flower, whose last petal comes over where its rounds begin',
        [
          'Make a magic ring, ch 1, 12 sc in ring; join with sl st in first sc.',
          'Ch 1, sc in first st, *ch 3, sk next st, sc in next st; rep from * to last st, ch 3, sk last st; join with sl st in first sc.',
          'Ch 1, *(sc, hdc, 3 dc, hdc, sc) in next ch-3 sp; rep from * around; join with sl st in first sc.',
        ],
      ],
      [
        'a granny square, whose rounds travel to the next corner',
        [
          RING,
          FIRST,
          `${TO_CORNER}(3 dc, ch 2, 3 dc) in next ch-2 sp; rep from * 2 more times, ch 1; join with sl st in top of beg ch-3.`,
          `${TO_CORNER}3 dc in next ch-1 sp, ch 1, (3 dc, ch 2, 3 dc) in next ch-2 sp; rep from * 2 more times, ch 1, 3 dc in next ch-1 sp, ch 1; join with sl st in top of beg ch-3.`,
        ],
      ],
    ] as const)('%s', (_, rounds) => {
      const { drawing } = drawn((work) => {
        for (const round of rounds) work.round(round);
      }, null);
      const [sheet] = drawing.parts;
      const all = lying(sheet!);
      const numbers = all.filter(({ name, text }) => name?.startsWith('label ') && text !== undefined);
      expect(numbers.map(({ text }) => text!.words)).toEqual(['1', '2', '3']);
      for (const { text, box } of numbers) {
        const met = all.filter(({ lines }) => lines.some((one) => crosses(one, box)));
        expect(
          met.map(({ name }) => name),
          `round ${text!.words}`,
        ).toEqual([]);
        expect(numbers.filter((other) => other.text !== text && meet(other.box, box))).toEqual([]);
        expect(box.left).toBeGreaterThanOrEqual(0);
        expect(box.right).toBeLessThanOrEqual(sheet!.width);
      }
    });
  });

  test.each([
    [
      'in rows of both sides',
      '*FPdc around next st, BPdc around next st; rep from * to last st, dc in last st',
      true,
    ],
    ['in right-side rows alone', 'dc in each st across', false],
  ])('front and back of posts are told as they are worked: %s', (_, wrongSide, isTold) => {
    const { drawing } = drawn((work) => {
      work.foundation('Ch 18.');
      work.row('Dc in 4th ch from hook and in each ch across, turn.');
      work.row(`Ch 2 (counts as dc), ${wrongSide}, turn.`);
      work.row(
        'Ch 2 (counts as dc), *FPdc around next st, BPdc around next st; rep from * to last st, dc in last st, turn.',
      );
    });
    expect(drawing.key!.alt.includes('in a wrong-side row, front is the wrong side')).toBe(isTold);
  });

  test('a ring too large for the sheet lies opened out under its stitches, which stand upright on it', () => {
    const { drawing } = drawn((work) => {
      work.round('Ch 150, join with sl st in first ch to form a ring.');
      work.round('Ch 3 (counts as dc), 159 dc in ring, join with sl st in top of ch-3. (160 dc)');
    }, null);
    expect(namesIn(drawing.parts[0]!.shapes)).toContain('ring 150');
    const stitches = drawing.parts.flatMap((_, part) => named(rowGroup(drawing, 0, part), 'stitch t3'));
    for (const shape of stitches) expect(lengthOf(shape)).toBeLessThan(36);
  });

  /** Middles of a row's stitches from left to right, y growing upwards. */
  const lineOf = (drawing: ChartDrawing, row: number) =>
    rowGroup(drawing, row)
      .filter((shape) => isGroup(shape) && /^stitch /u.test(shape.name ?? ''))
      .map(middleOf)
      .map(({ x, y }) => ({ x, y: -y }))
      .sort((a, b) => a.x - b.x);

  /** How often a line goes from rising to falling, or back, by more than a quarter of a stitch at a time. */
  const turnsIn = (line: readonly { y: number }[]): number => {
    const steps = line.slice(1).map(({ y }, i) => y - line[i]!.y);
    const signs = steps.filter((step) => Math.abs(step) > 3).map(Math.sign);
    return signs.filter((sign, i) => i > 0 && sign !== signs[i - 1]).length;
  };

  const RIPPLES: readonly (readonly [string, readonly string[], readonly number[], number])[] = [
    [
      'single crochet, three in a peak and two passed over in a valley',
      [
        'Ch 32.',
        'Sc in 2nd ch from hook, sc in each of next 3 chs, *3 sc in next ch, sc in each of next 4 chs, sk next 2 chs, sc in each of next 4 chs; rep from * to last 5 chs, 3 sc in next ch, sc in each of last 4 chs, turn.',
        'Ch 1, sk first st, sc in each of next 4 sts, *3 sc in next st, sc in each of next 4 sts, sk next 2 sts, sc in each of next 4 sts; rep from * to last 6 sts, 3 sc in next st, sc in each of next 4 sts, sk last st, turn.',
      ],
      [33, 33],
      // Three peaks, two valleys between them.
      5,
    ],
    [
      'double crochet, with decreases in the valleys',
      [
        'Ch 27.',
        'Dc in 4th ch from hook (skipped chs count as dc), dc in each of next 3 chs, dc2tog twice, dc in each of next 3 chs, *2 dc in each of next 2 chs, dc in each of next 3 chs, dc2tog twice, dc in each of next 3 chs; rep from * to last ch, 2 dc in last ch, turn.',
        'Ch 3 (counts as dc), dc in same st, dc in each of next 3 sts, dc2tog twice, dc in each of next 3 sts, *2 dc in each of next 2 sts, dc in each of next 3 sts, dc2tog twice, dc in each of next 3 sts; rep from * to last st, 2 dc in last st, turn.',
      ],
      [24, 24],
      // Two valleys, a peak between them.
      3,
    ],
  ];
  test.each(RIPPLES)('a ripple lies in waves: %s', (_, [chain, ...rows], counts, turns) => {
    const { drawing } = drawn((work) => {
      work.foundation(chain!);
      for (const row of rows) work.row(row);
    });
    expect(drawing.parts).toHaveLength(1);
    expect(readChart(drawing.parts, rows.length).map(({ stitches }) => stitches)).toEqual(counts);
    const lines = rows.map((_, row) => lineOf(drawing, row));
    for (const line of lines) expect(turnsIn(line)).toBe(turns);
    // A row lies as far above the one below it everywhere: no stitch is left behind.
    const [low, high] = lines as [(typeof lines)[0], (typeof lines)[0]];
    for (const { x, y } of high.slice(2, -2)) {
      const under = low.reduce((a, b) => (Math.abs(b.x - x) < Math.abs(a.x - x) ? b : a));
      expect(y).toBeGreaterThan(under.y);
    }
  });

  test.each([
    [
      'shells over one another',
      'Ch 3 (counts as dc), 2 dc in first st, *sk next 2 sts, sc in next st, sk next 2 sts, 5 dc in next st; rep from * to last 6 sts, sk next 2 sts, sc in next st, sk next 2 sts, 3 dc in last st, turn.',
    ],
    ['plain rows', 'Ch 1, sc in each st across, turn.'],
  ])('what drifts nowhere lies level: %s', (_, second) => {
    const { drawing } = drawn((work) => {
      work.foundation('Ch 20.');
      work.row(
        'Sc in 2nd ch from hook, *sk next 2 chs, 5 dc in next ch, sk next 2 chs, sc in next ch; rep from * across, turn.',
      );
      work.row(second);
    });
    const base = drawing.parts[0]!.shapes.find((shape) => isGroup(shape) && shape.name === 'foundation')!;
    const levels = isGroup(base) ? base.shapes.map((shape) => middleOf(shape).y) : [];
    expect(Math.max(...levels) - Math.min(...levels)).toBeLessThan(0.01);
  });

  test('fewer stitches end as the full row does, not with the last repeat cut short', () => {
    // 144 chains: 3 and one for the first, then ten repeats of 14. On 46 chains there are two and the last.
    const { of, chart } = drawn((work) => {
      work.foundation('Ch 144.');
      work.row(
        'Dc in 4th ch from hook, *dc in each of next 5 chs, dc3tog over next 3 chs, dc in each of next 5 chs, 3 dc in next ch; rep from * ending last rep with 2 dc in last ch. Turn.',
      );
      work.row(
        'Ch 3 (counts as dc), dc in same st, *dc in each of next 5 sts, dc3tog, dc in each of next 5 sts, 3 dc in next st; rep from * to end, ending last rep with 2 dc in top of ch-3. Turn.',
      );
    });
    const plan = planChart(of, chart);
    expect(plan.notes).toContainEqual({ kind: 'fewer', full: 144, drawn: 46, chains: true });
  });

  test.each([
    ['in next st', 1],
    ['in next st 1 row below', 1],
    ['in next st 2 rows below', 2],
  ])('a spike %s reaches past the row below, its cross in its own row', (into, rows) => {
    const { drawing } = drawn((work) => {
      work.foundation('Ch 13.');
      work.row('Sc in 2nd ch from hook and in each ch across, turn. (12 sc)');
      for (let i = 0; i < 2; i++) work.row('Ch 1, sc in each st across, turn. (12 sc)');
      work.row(`Ch 1, *sc in next 2 sts, spike sc ${into}; rep from * across, turn. (12 sts)`);
    });
    const row = rowGroup(drawing, 3);
    const [plain, spikes] = ['t1', 'spike.t1'].map((id) => named(row, `stitch ${id}`));
    expect(spikes).toHaveLength(4);
    const usual = lengthOf(plain![0]!);
    for (const spike of spikes!) expect(lengthOf(spike)).toBeGreaterThan((rows + 0.9) * usual);
    // The cross of each lies level with those of the plain stitches, above the row that its tail goes past.
    const crossOf = (shape: Shape): number =>
      middleOf(named(isGroup(shape) ? shape.shapes : [], 'cross')[0]!).y;
    for (const spike of spikes!) expect(crossOf(spike)).toBeCloseTo(crossOf(plain![0]!), 0);
  });

  test.each([
    ['the next row, which goes back', 'turn', (work: Writer, text: string) => work.row(text)],
    [
      'the next round, which goes on',
      'join with sl st in first sc',
      (work: Writer, text: string) => work.round(text),
    ],
  ])('each chain of a space carries its own stitch of %s', (_, end, put) => {
    const { drawing } = drawn((work) => {
      if (end === 'turn') work.foundation('Ch 13.');
      else work.round('Ch 12, join with sl st in first ch to form a ring.');
      const begin = end === 'turn' ? 'Sc in 2nd ch from hook and in each ch' : 'Ch 1, sc in each ch';
      put(work, `${begin} ${end === 'turn' ? 'across' : 'around'}, ${end}. (12 sc)`);
      put(work, `Ch 1, sc in next 4 sts, ch 3, sk next 3 sts, sc in next 5 sts, ${end}. (9 sc)`);
      put(work, `Ch 1, sc in each st and ch ${end === 'turn' ? 'across' : 'around'}, ${end}. (12 sc)`);
    });
    const [below, made] = [1, 2].map((row) => named(rowGroup(drawing, row), 'stitch t1').map(lengthOf));
    expect(made).toHaveLength(12);
    expect(drawing.notes.join(' ')).not.toContain('in one place');
    // None leans over others to a chain at the far end of the space.
    for (const length of made!) expect(length).toBeLessThan(1.25 * Math.max(...below!));
  });

  test('rows that fan out from a few chains have no bracket under them', () => {
    const { drawing } = drawn((work) => {
      work.foundation('Ch 4.');
      work.row('6 dc in 4th ch from hook (skipped chs count as dc), turn. (7 dc)');
      work.row('Ch 3 (counts as dc), dc in same st, 2 dc in each st across, turn. (14 dc)');
      work.row(
        'Ch 3 (counts as dc), dc in same st, *dc in next st, 2 dc in next st; rep from * to last st, 2 dc in last st, turn.',
      );
    });
    expect(namesIn(drawing.parts[0]!.shapes).filter((name) => name.startsWith('repeat'))).toEqual([]);
  });

  test('a round that does not come out is called a round', () => {
    const { drawing } = drawn((work) => {
      work.round('Make a magic ring, 6 sc in ring, join with sl st in first sc. (6 sc)');
      work.round('Ch 1, *sc in next 4 sts, 2 sc in next st; rep from * around, join with sl st in first sc.');
    });
    expect(drawing.notes.join(' ')).toContain('Round 2 does not come out as it is written');
  });

  test('stitches on a few chains over a long way stand on those chains, not along the way', () => {
    const { drawing } = drawn((work) => {
      work.foundation('Ch 25.');
      work.row('Sc in 2nd ch from hook and in each ch across, turn. (24 sc)');
      work.row('Ch 1, sc in next 6 sts, ch 3, sk next 12 sts, sc in last 6 sts, turn. (12 sc)');
      work.row('Ch 1, sc in each st and ch across, turn. (15 sc)');
    });
    const made = named(rowGroup(drawing, 2), 'stitch t1').map(lengthOf);
    expect(made).toHaveLength(15);
    for (const length of made) expect(length).toBeLessThan(1.5 * Math.min(...made));
  });

  test.each([
    [
      'a ring of yarn',
      'Make a magic ring, ch 3 (counts as dc), 11 dc in ring, join with sl st in top of ch-3. (12 dc)',
    ],
    [
      'a ring of chains',
      'Ch 4, join with sl st to form a ring, ch 3 (counts as dc), 11 dc in ring, join with sl st in top of ch-3. (12 dc)',
    ],
  ])('rounds from %s are not said to stand on fewer chains', (_, begin) => {
    const { of, chart } = drawn((work) => {
      work.round(begin);
      work.round(
        'Ch 3 (counts as dc), dc in same st, 2 dc in each st around, join with sl st in top of ch-3. (24 dc)',
      );
      for (const n of [1, 2])
        work.round(
          `Ch 3 (counts as dc), dc in same st, dc in next ${n} sts, *2 dc in next st, dc in next ${n} sts; rep from * around, join with sl st in top of ch-3. (${24 + 12 * n} dc)`,
        );
    }, null);
    const third = of.pattern.pieces[0]!.blocks[2]!;
    const plan = planChart(of, { ...chart, first: third.id });
    expect(plan.notes.map(({ kind }) => kind)).not.toContain('fewer');
    // With the rounds that they stand on.
    expect(plan.rows.map(({ trace }) => trace.sites.length)).toEqual([12, 24, 36, 48]);
  });

  test('a piece that begins on another keeps its turning chain', () => {
    const { of } = drawn((work) => {
      work.foundation('Ch 45.');
      work.row('Dc in 4th ch from hook (skipped chs count as dc) and in each ch across, turn. (43 dc)');
    });
    const work = new Writer('edging');
    const row = work.row(
      'Ch 1, sc in first st, *sk next 2 sts, 5 dc in next st, sk next 2 sts, sc in next st; rep from * across.',
    );
    const [main] = of.pattern.pieces;
    const edging = work.piece(
      'Edging',
      { kind: 'edges', edges: [{ piece: main!.id, kind: 'top', amount: null, which: 1 }], round: false },
      'RS',
    );
    const both = study({ ...of.pattern, pieces: [main!, edging] });
    const drawing = drawChart(both, { ...chartOf('edging', row.id, row.id) }, US);
    expect(namesIn(drawing.parts[0]!.shapes)).toContain('turning 1');
    expect(drawing.notes.join(' ')).not.toContain('stands on 2');
  });

  test('stitches that go back over others are told so in words', () => {
    const { drawing } = drawn((work) => {
      work.foundation('Ch 11.');
      work.row('Sc in 2nd ch from hook and in each ch across, turn. (10 sc)');
      work.row(
        'Ch 3 (counts as dc), *sk next st, dc in next st, dc in skipped st; rep from * to last st, dc in last st, turn. (10 dc)',
      );
    });
    expect(drawing.parts[0]!.alt).toContain(
      'ch 3 (counts as dc), [skip 1, dc, dc in a stitch passed over] 4 times, dc.',
    );
  });

  test('every chain of a foundation carries its stitch where the turning chain is made anew', () => {
    const { drawing } = drawn((work) => {
      work.foundation('Ch 12.');
      work.row('Ch 3, dc in 4th ch from hook and in each ch across, turn. (13 dc)');
    });
    const made = named(rowGroup(drawing, 0), 'stitch t3').map(lengthOf);
    // All upright: none longer than a stitch of its height.
    expect(made).toHaveLength(12);
    for (const length of made) expect(length).toBeLessThan(36);
    const base = drawing.parts[0]!.shapes.find((shape) => isGroup(shape) && shape.name === 'foundation')!;
    expect(isGroup(base) && base.shapes.length).toBe(12);
  });

  test('rounds about a foundation chain lie on both sides of it', () => {
    const { drawing } = drawn((work) => {
      work.foundation('Ch 9.');
      work.round(
        'Sc in 2nd ch from hook and in next 6 ch, 3 sc in last ch, working along opposite side of foundation ch, sc in next 6 ch, 2 sc in last ch, join with sl st in first sc. (18 sc)',
      );
      work.round(
        'Ch 1, 2 sc in first st, sc in next 6 sts, 2 sc in each of next 3 sts, sc in next 6 sts, 2 sc in each of next 2 sts, join with sl st in first sc. (24 sc)',
      );
    }, null);
    expect(drawing.parts).toHaveLength(1);
    expect(readChart(drawing.parts, 2).map(({ stitches }) => stitches)).toEqual([18, 24]);
    const chain = drawing.parts[0]!.shapes.find((shape) => isGroup(shape) && shape.name === 'foundation')!;
    const level = middleOf(chain).y;
    const [first, second] = [0, 1].map((row) => named(rowGroup(drawing, row), 'stitch t1').map(middleOf));
    // One in the first chain and six beyond it above; six on the way back below, and one of the last chain.
    const above = first!.slice(0, 7);
    const below = first!.slice(10, 16);
    for (const { y } of above) expect(y).toBeLessThan(level);
    for (const { y } of below) expect(y).toBeGreaterThan(level);
    // The way back begins under the end of the way out: the second chain before the last is used by both.
    expect(below[0]!.x).toBeCloseTo(above[6]!.x, 0);
    // The three of the last chain stand farthest out, and the second round lies outside the first.
    expect(Math.min(...first!.map(({ x }) => x))).toBe(Math.min(...first!.slice(7, 10).map(({ x }) => x)));
    const far = (points: readonly { x: number; y: number }[]) =>
      Math.max(...points.map(({ y }) => y)) - level;
    expect(far(second!)).toBeGreaterThan(far(first!));
  });

  test('a stitch without a symbol is a letter that the key explains', () => {
    const { drawing } = drawn((work) => {
      work.foundation('Ch 8.');
      work.row('Edc in 4th ch from hook and in each ch across, turn.');
    });
    const names = namesIn(rowGroup(drawing, 0));
    expect(names).toContain('stitch ext.t3');
    expect(namesIn(drawing.key!.shapes)).toContain('key extended double crochet (B)');
  });

  test('the key has every symbol of the chart and no other, in the terms of the reader', () => {
    const { of, chart, drawing } = drawn((work) => {
      work.foundation('Ch 9.');
      work.row('Dc in 4th ch from hook and in each ch across, turn.');
      work.row('Ch 3 (counts as dc), sk first dc, FPdc around next dc, dc in each st across.');
    });
    const says = (of_: ChartDrawing) =>
      namesIn(of_.key!.shapes).flatMap((name) => (name.startsWith('key ') ? [name.slice(4)] : []));
    expect(says(drawing).slice(0, 4)).toEqual([
      'chain',
      'double crochet',
      'front post double crochet',
      'back post double crochet',
    ]);
    const british = drawChart(of, chart, { ...US, terms: 'uk' });
    expect(says(british).slice(0, 4)).toEqual([
      'chain',
      'treble crochet',
      'front post treble',
      'back post treble',
    ]);
    expect(british.parts[0]!.shapes).toEqual(drawing.parts[0]!.shapes);
  });

  test('in words, it reads row by row', () => {
    const { drawing } = drawn((work) => {
      work.foundation('Ch 14.');
      work.row(
        'Sc in 2nd ch from hook, *sk 2 ch, 5 dc in next ch, sk 2 ch, sc in next ch; rep from * across, turn.',
      );
    });
    expect(drawing.parts[0]!.alt).toBe(
      'A foundation chain of 14 chains. Row 1 (RS), from right to left: ch 1 (not counted), [sc, skip 2, 5 dc in one place, skip 2] 2 times, sc.',
    );
  });
});

describe('charts of what is not there', () => {
  const of = study(vest);
  const [chart] = vest.charts;

  test.each([
    [{ ...chart!, piece: 'gone' }, /piece .* no longer/],
    [{ ...chart!, first: 'gone' }, /no longer where it was/],
    [{ ...chart!, first: chart!.last, last: chart!.first }, /no longer where it was/],
  ] as const)('says why there is none', (asked, reason) => {
    const drawing = drawChart(of, asked, US);
    expect(drawing.parts).toEqual([]);
    expect(drawing.problem).toMatch(reason);
  });

  test('whatever is asked for, there is an answer', () => {
    const ids = vest.pieces.flatMap((piece) => piece.blocks.map(({ id }) => id));
    const any = fc.record({
      id: fc.string(),
      piece: fc.constantFrom(...vest.pieces.map(({ id }) => id), 'gone'),
      first: fc.constantFrom(...ids, 'gone'),
      last: fc.constantFrom(...ids, 'gone'),
      size: fc.constantFrom('', 'gone', ...vest.sizes.map(({ id }) => id)),
      title: fc.string(),
    });
    fc.assert(
      fc.property(any, (asked) => {
        const drawing = drawChart(of, asked, US);
        expect(drawing.parts.length === 0).toBe(drawing.problem !== null);
      }),
      { numRuns: 60 },
    );
  }, 60_000);
});

test('rounds of a tube, drawn one above the other, are called rounds', () => {
  const { drawing } = drawn((work) => {
    work.foundation('Ch 12, join with sl st in first ch to form a ring.');
    for (let i = 0; i < 3; i++)
      work.round('Ch 1, sc in each st around, join with sl st in first sc. (12 sc)');
  });
  expect(drawing.notes.join(' ')).toContain('each round begins at its number');
});
