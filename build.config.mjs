// Bundles the command line into one file, so that the package's bin starts without a compiler.
import { build } from 'esbuild';

await build({
  entryPoints: ['app/command/turnchain.ts'],
  outfile: 'dist/turnchain.mjs',
  bundle: true,
  platform: 'node',
  format: 'esm',
  target: 'node20',
  packages: 'external',
  banner: { js: '#!/usr/bin/env node' },
  logLevel: 'warning',
});
