// Bundles the command line, so that the package's bin starts without a compiler. It is split where a module is
// loaded on demand: a program that only counts rows does not wait for the PDF writer.
import { rm } from 'node:fs/promises';
import { build } from 'esbuild';

await rm('dist/parts', { recursive: true, force: true });
await build({
  entryPoints: ['app/command/turnchain.ts'],
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
