// Bundles the programs that run on Node, so that they start without a compiler: the command line, the start of the
// studio, the printing thread, the desktop's main process and preload. They are split where a module is loaded on
// demand: a program that only counts rows does not wait for the PDF writer.
import { rm } from 'node:fs/promises';
import { build } from 'esbuild';

await rm('dist/parts', { recursive: true, force: true });
const node = { bundle: true, platform: 'node', packages: 'external', logLevel: 'warning' };
await build({
  ...node,
  entryPoints: {
    turnchain: 'app/command/turnchain.ts',
    start: 'app/start/main.ts',
    'printing-worker': 'app/services/printing-worker.ts',
    'desktop/main': 'app/desktop/main.ts',
  },
  outdir: 'dist',
  outExtension: { '.js': '.mjs' },
  chunkNames: 'parts/[name]-[hash]',
  splitting: true,
  format: 'esm',
  target: 'node20',
});
// A sandboxed preload is one plain script.
await build({
  ...node,
  entryPoints: ['app/desktop/preload.ts'],
  outfile: 'dist/desktop/preload.cjs',
  packages: 'bundle',
  external: ['electron'],
  format: 'cjs',
  target: 'chrome130',
});
