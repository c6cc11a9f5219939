// Bundles the programs that run on Node, so that they start without a compiler: the command line, the start of the
// studio, the printing thread. They are split where a module is loaded on demand: a program that only counts rows
// does not wait for the PDF writer.
import { rm } from 'node:fs/promises';
import { build } from 'esbuild';

await rm('dist/parts', { recursive: true, force: true });
await build({
  entryPoints: {
    turnchain: 'app/command/turnchain.ts',
    start: 'app/start/main.ts',
    'printing-worker': 'app/services/printing-worker.ts',
  },
  outdir: 'dist',
  outExtension: { '.js': '.mjs' },
  chunkNames: 'parts/[name]-[hash]',
  splitting: true,
  bundle: true,
  platform: 'node',
  format: 'esm',
  target: 'node20',
  packages: 'external',
  logLevel: 'warning',
});
