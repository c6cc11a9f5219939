/** Measures that four times the text takes about four times as long to read, however it is mistyped. */
import { readText } from '../../core/notation/index.ts';
import { median, say, timed } from './measure.ts';

function reading(): void {
  const units = ['sc in next st, ', '(sc, ', 'rep from * ', 'in ring work ', '*, ** ', '12 ('];
  for (const unit of units) {
    const cost = (times: number) =>
      median(
        Array.from(
          { length: 3 },
          () => timed(() => readText(`Row 1: ${unit.repeat(times)}`, { terms: 'us' })).ms,
        ),
      );
    cost(400);
    const ratio = cost(1600) / cost(400);
    say(`Reading four times as much of "${unit.trim()}" takes ${ratio.toFixed(1)} times as long`);
  }
}

reading();
