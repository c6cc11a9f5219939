/**
 * Measures what makers wait for, and prints it as ratios taken in one run on one machine. Not a test: it
 * passes or fails nothing.
 */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { build } from 'esbuild';
import { readText } from '../../core/notation/index.ts';
import { study } from '../../core/study/study.ts';
import { longPattern, withRowChanged } from './patterns.ts';

function timed<T>(run: () => T): { ms: number; value: T } {
  const start = performance.now();
  const value = run();
  return { ms: performance.now() - start, value };
}

function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)]!;
}

function percentile(values: readonly number[], part: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * part))]!;
}

const ms = (value: number) => `${value < 10 ? value.toFixed(2) : value.toFixed(0)} ms`;
const say = (line: string) => process.stdout.write(`${line}\n`);

function typing(): void {
  const pattern = longPattern({ sizes: 12, rows: 400, stitches: 200 });
  const wide = study(pattern);
  const counts = wide.pieces[0]!.fabrics.map((fabric) => fabric?.sites.length ?? 0);
  say(
    `Study of 12 sizes × 400 rows, ${Math.min(...counts)}–${Math.max(...counts)} stitches wide, ${wide.findings.length} findings`,
  );
  const cold = median(Array.from({ length: 5 }, () => timed(() => study(structuredClone(pattern))).ms));
  for (const at of [40, 200, 390]) {
    let current = study(pattern);
    let edited = pattern;
    const edits: number[] = [];
    for (let i = 0; i < 60; i++) {
      edited = withRowChanged(edited, at, i);
      const { ms: took, value } = timed(() => study(edited, current));
      current = value;
      if (i >= 10) edits.push(took);
    }
    const usual = median(edits);
    say(
      `  after editing row ${at}: ${(cold / usual).toFixed(0)} times faster than cold (${ms(cold)} cold, ${ms(usual)} median, ${ms(percentile(edits, 0.95))} at the 95th percentile)`,
    );
  }
}

function longest(): void {
  const pattern = longPattern({ sizes: 50, rows: 3000, stitches: 200 });
  const { ms: took, value } = timed(() => study(pattern));
  say(
    `Longest case, 50 sizes × 3,000 rows: ${(took / 1000).toFixed(1)} s, ${value.findings.length} findings`,
  );
}

/** Four times the text is to take about four times as long, however it is mistyped. */
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

typing();
reading();
longest();
// Bundled as it ships and in a process of its own, so that its memory is its own.
const root = join(import.meta.dirname, '../..');
const bundle = join(root, 'out/bench/print.mjs');
await build({
  entryPoints: [join(import.meta.dirname, 'print.ts')],
  outfile: bundle,
  bundle: true,
  platform: 'node',
  format: 'esm',
  packages: 'external',
  logLevel: 'warning',
});
spawnSync(process.execPath, [bundle, root], { stdio: 'inherit' });
