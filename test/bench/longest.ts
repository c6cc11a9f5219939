/** Measures the longest case: the study of far more rows and sizes than a pattern has. */
import { study } from '../../core/study/study.ts';
import { say, timed } from './measure.ts';
import { longPattern } from './patterns.ts';

function longest(): void {
  const pattern = longPattern({ sizes: 50, rows: 3000, stitches: 200 });
  const { ms, value } = timed(() => study(pattern));
  say(`Longest case, 50 sizes × 3,000 rows: ${(ms / 1000).toFixed(1)} s, ${value.findings.length} findings`);
}

longest();
