/**
 * Measures what makers wait for, and prints it as ratios taken in one run on one machine. Not a test: it
 * passes or fails nothing. Each part is bundled as it ships and runs in a process of its own, so that its speed
 * and its memory are its own.
 */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { build } from 'esbuild';

const PARTS = ['typing', 'reading', 'longest', 'drawing', 'charts', 'print', 'studio', 'memory'] as const;

const root = join(import.meta.dirname, '../..');
const asked = process.argv.slice(2);
for (const part of PARTS) {
  if (asked.length > 0 && !asked.includes(part)) continue;
  const outfile = join(root, `out/bench/${part}.mjs`);
  await build({
    entryPoints: [join(import.meta.dirname, `${part}.ts`)],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
    logLevel: 'warning',
  });
  spawnSync(process.execPath, [outfile, root], { stdio: 'inherit' });
}
