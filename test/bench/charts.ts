/**
 * Measures drawing the charts of the examples against studying their patterns from cold, in a process of its own:
 * charts are made when they are asked for, and not while rows are typed.
 */
import { drawChart } from '../../core/drawing/chart/chart.ts';
import { type Study, study } from '../../core/study/index.ts';
import { hat } from '../../resources/examples/hat.ts';
import { vest } from '../../resources/examples/vest.ts';

const TIMES = 7;

const middle = (times: number[]): number => times.sort((a, b) => a - b)[Math.floor(times.length / 2)]!;

for (const [name, pattern] of Object.entries({ vest, hat })) {
  const studies: number[] = [];
  const charts: number[] = [];
  for (let i = 0; i < TIMES; i++) {
    let start = performance.now();
    // A pattern of its own each time, so that nothing is remembered of it.
    const of: Study = study(structuredClone(pattern));
    studies.push(performance.now() - start);
    start = performance.now();
    for (const chart of of.pattern.charts) drawChart(of, chart, { terms: 'us', width: 480, large: false });
    charts.push(performance.now() - start);
  }
  const ratio = middle(charts) / middle(studies);
  process.stdout.write(
    `charts of the ${name}: ${pattern.charts.length}, ${ratio.toFixed(2)} of the study from cold (medians of ${TIMES})\n`,
  );
}
