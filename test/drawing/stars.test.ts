/**
 * Ripples worked in rounds: their points stand out and their valleys lie in where the rows say so, all the way to the
 * outermost round; what only looks like one stays as it was. Counts are worked out beside the words.
 */
import { describe, expect, test } from 'vitest';
import { type ChartDrawing, drawChart } from '../../core/drawing/chart/chart.ts';
import { type Graph, graphOf } from '../../core/drawing/chart/graph.ts';
import { planChart } from '../../core/drawing/chart/plan.ts';
import { pointsOf } from '../../core/drawing/chart/points.ts';
import { textWidth } from '../../core/drawing/text-width.ts';
import { drawn, isGroup, middleOf, pointsOf as pointsOfShape, rowGroup, US } from './drawn.ts';
import { readChart } from './read-chart.ts';

const TOP = 'join with sl st in top of ch-3.';
const FIRST = 'join with sl st in first sc.';
const sts = (n: number, stitch: string) =>
  n === 1 ? `${stitch} in next st` : `${stitch} in each of next ${n} sts`;

/** Double crochet, two on either side of a point and one lost on either side of a valley. */
const doubles = (points: number, rounds: number): readonly string[] => [
  `Make a magic ring, ch 3 (counts as dc), ${2 * points - 1} dc in ring, ${TOP}`,
  `Ch 3 (counts as dc), (dc, ch 2, 2 dc) in same st, sk next st, *(2 dc, ch 2, 2 dc) in next st, sk next st; rep from * around, ${TOP}`,
  ...Array.from({ length: rounds }, (_, k) => {
    const arm = `${sts(k + 1, 'dc')}, sk next 2 sts, ${sts(k + 1, 'dc')}`;
    return `Sl st in next dc and in next ch-2 sp, ch 3 (counts as dc), (dc, ch 2, 2 dc) in same sp, ${arm}, *(2 dc, ch 2, 2 dc) in next ch-2 sp, ${arm}; rep from * around, ${TOP}`;
  }),
];

/** Five in a point and three together in a valley. */
const together = (points: number): readonly string[] => [
  `Make a magic ring, ch 3 (counts as dc), ${2 * points - 1} dc in ring, ${TOP}`,
  `Ch 3 (counts as dc), 2 dc in same st, dc in next st, *3 dc in next st, dc in next st; rep from * around, ${TOP}`,
  `Sl st in next st, ch 3 (counts as dc), 4 dc in same st, dc3tog over next 3 sts, *5 dc in next st, dc3tog over next 3 sts; rep from * around, ${TOP}`,
  ...[1, 2].map((n) => {
    const arm = `${sts(n, 'dc')}, dc3tog over next 3 sts, ${sts(n, 'dc')}`;
    return `Sl st in next 2 sts, ch 3 (counts as dc), 4 dc in same st, ${arm}, *5 dc in next st, ${arm}; rep from * around, ${TOP}`;
  }),
];

/** Single crochet with a chain at the beginning that counts as nothing. */
const singles = (points: number): readonly string[] => {
  const round = (arm: string) =>
    `Sl st in ch-2 sp, ch 1, (2 sc, ch 2, 2 sc) in same sp, ${arm}, *(2 sc, ch 2, 2 sc) in next ch-2 sp, ${arm}; rep from * around; ${FIRST}`;
  return [
    `Make a magic ring, ${2 * points} sc in ring; ${FIRST}`,
    `Ch 1, (sc, ch 2, sc) in first st, sc in next st, *(sc, ch 2, sc) in next st, sc in next st; rep from * around; ${FIRST}`,
    round('sk next st, sc in next st, sk next st'),
    round('sc in each of next 2 sts, sk next st, sc in each of next 2 sts'),
    round('sc in each of next 3 sts, sk next 2 sts, sc in each of next 3 sts'),
  ];
};

/** On a sheet as wide as asked. */
function chartOf(rounds: readonly string[], width = 800): { drawing: ChartDrawing; graph: Graph } {
  const { of, chart } = drawn((work) => {
    for (const round of rounds) work.round(round);
  }, null);
  const plan = planChart(of, chart);
  return { drawing: drawChart(of, chart, { ...US, width }), graph: graphOf(plan.rows, plan.sides) };
}

/** How far the tops of a round's stitches are from the centre, in the order of their angles. */
function reachOf(drawing: ChartDrawing, index: number): readonly number[] {
  const ring = drawing.parts[0]!.shapes.find((shape) => isGroup(shape) && /^ring /u.test(shape.name ?? ''))!;
  const box = pointsOfShape(ring);
  const [x, y] = [box.xs, box.ys].map((all) => (Math.min(...all) + Math.max(...all)) / 2) as [number, number];
  return rowGroup(drawing, index)
    .filter((shape) => isGroup(shape) && /^stitch /u.test(shape.name ?? ''))
    .map((shape) => {
      const at = middleOf(shape);
      const { xs, ys } = pointsOfShape(shape);
      return {
        angle: Math.atan2(at.y - y, at.x - x),
        far: Math.max(...xs.map((one, i) => Math.hypot(one - x, ys[i]! - y))),
      };
    })
    .sort((a, b) => a.angle - b.angle)
    .map(({ far }) => far);
}

/** How many times a round goes out past the middle between its nearest and its farthest stitch. */
function pointsIn(reach: readonly number[]): number {
  const half = (Math.min(...reach) + Math.max(...reach)) / 2;
  return reach.filter((far, i) => far > half && reach.at(i - 1)! <= half).length;
}

const spreadOf = (reach: readonly number[]) => Math.max(...reach) / Math.min(...reach);

describe('a ripple about a centre', () => {
  test.each([
    // 12 in the ring; 4 at each of 6 points; then one more on either side of each valley in every round.
    ['double crochet, six points', doubles(6, 2), 6, [12, 24, 36, 48], 2],
    ['double crochet, eight points', doubles(8, 2), 8, [16, 32, 48, 64], 2],
    // 16 in the ring; 3 and 1; 5 and one gathered: 6 for each of 8; two more in each round.
    ['five in a point, three together in a valley', together(8), 8, [16, 32, 48, 64, 80], 3],
    // 10 in the ring; 2 and 1; 4 and 1; 4 and 4; 4 and 6.
    ['single crochet, five points', singles(5), 5, [10, 15, 25, 40, 50], 3],
  ] as const)(
    'has points that stand out and valleys that lie in: %s',
    (_, rounds, points, counts, pointed) => {
      const { drawing } = chartOf(rounds);
      expect(drawing.parts).toHaveLength(1);
      expect(readChart(drawing.parts, rounds.length).map(({ stitches }) => stitches)).toEqual(counts);
      const last = rounds.length - 1;
      const reaches = rounds.map((_, index) => reachOf(drawing, index));
      expect(pointsIn(reaches[last]!)).toBe(points);
      expect(spreadOf(reaches[last]!)).toBeGreaterThan(1.08);
      // The round that all begins on lies as the circle that it is.
      expect(spreadOf(reaches[0]!)).toBeLessThan(1.02);
      // Both the points and the valleys lie farther out from round to round.
      for (let index = last - pointed + 1; index <= last; index++) {
        expect(Math.max(...reaches[index]!)).toBeGreaterThan(Math.max(...reaches[index - 1]!));
        expect(Math.min(...reaches[index]!)).toBeGreaterThan(Math.min(...reaches[index - 1]!));
        expect(spreadOf(reaches[index]!)).toBeGreaterThan(spreadOf(reaches[index - 1]!));
      }
    },
  );

  test('counts what its rounds count, however many points and rounds it has, and crowds no two stitches', () => {
    for (let points = 4; points <= 10; points++) {
      for (let rounds = 1; rounds <= 3; rounds++) {
        const { drawing, graph } = chartOf(doubles(points, rounds), 2000);
        expect(pointsOf(graph.rows)?.count).toBe(points);
        const read = readChart(drawing.parts, rounds + 2);
        // 2 in the ring for each point, 4 in it, and 2 more in each round.
        expect(read.map(({ stitches }) => stitches)).toEqual(
          [2, 4, 6, 8, 10].slice(0, rounds + 2).map((n) => n * points),
        );
        const tops = rowGroup(drawing, rounds + 1)
          .filter((shape) => isGroup(shape) && shape.name === 'stitch t3')
          .map(middleOf);
        tops.forEach(({ x, y }, i) => {
          const near = tops.filter((_, k) => k !== i).map((other) => Math.hypot(other.x - x, other.y - y));
          expect(Math.min(...near)).toBeGreaterThan(4);
        });
      }
    }
  });

  test('turned between its rounds, stands on the same points', () => {
    const [ring, first, ...rest] = doubles(8, 1);
    const back = (round: string) => round.replace(/\.$/u, ' Turn.').replace('ch-3 Turn', 'ch-3, turn');
    const { drawing } = chartOf([ring!, first!, ...rest.map((round) => back(round))]);
    expect(pointsIn(reachOf(drawing, 2))).toBe(8);
  });

  test.each([
    [
      'a circle',
      [
        `Make a magic ring, ch 3 (counts as dc), 11 dc in ring, ${TOP}`,
        `Ch 3 (counts as dc), dc in same st, 2 dc in each st around, ${TOP}`,
        `Ch 3 (counts as dc), dc in same st, dc in next st, *2 dc in next st, dc in next st; rep from * around, ${TOP}`,
      ],
    ],
    [
      'shells over one another with single crochet between',
      [
        `Make a magic ring, 12 sc in ring; ${FIRST}`,
        `Ch 1, sc in first st, *5 dc in next st, sc in next st; rep from * to last st, 5 dc in last st; ${FIRST}`,
        `Ch 1, sc in first st, *sk next 2 sts, 7 dc in next st, sk next 2 sts, sc in next st; rep from * to last 5 sts, sk next 2 sts, 7 dc in next st, sk last 2 sts; ${FIRST}`,
      ],
    ],
    ['one round with points on a circle', doubles(8, 0)],
  ])('is not what has no valleys that go on: %s', (_, rounds) => {
    const { drawing, graph } = chartOf(rounds);
    expect(drawing.problem).toBeNull();
    expect(graph.form).toBe('rounds');
    expect(pointsOf(graph.rows)).toBeNull();
  });
});

describe('the arc of a repeat', () => {
  test('lies on the sheet with its words, also where a part shows fewer rounds than it goes about', () => {
    let arcs = 0;
    for (const rounds of [doubles(6, 2), doubles(10, 3), doubles(12, 2)]) {
      for (const sheet of chartOf(rounds, 480).drawing.parts) {
        for (const shape of sheet.shapes) {
          if (!isGroup(shape) || !/^repeat times /u.test(shape.name ?? '')) continue;
          arcs += 1;
          for (const part of shape.shapes) {
            if (part.kind === 'text') {
              const wide = textWidth(part.words, part.size);
              const left = part.x - (part.anchor === 'start' ? 0 : part.anchor === 'end' ? wide : wide / 2);
              expect(left).toBeGreaterThanOrEqual(0);
              expect(left + wide).toBeLessThanOrEqual(sheet.width);
            } else if (part.kind === 'path') {
              for (const step of part.steps) {
                if (step.length < 3) continue;
                const [x, y] = step.slice(-2) as [number, number];
                expect(x >= 0 && x <= sheet.width && y >= 0 && y <= sheet.height).toBe(true);
              }
            }
          }
        }
      }
    }
    expect(arcs).toBe(3);
  });
});
