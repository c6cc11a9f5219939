// Bundles the programs that run on Node, so that they start without a compiler: the command line, the start of the
// studio, the printing thread, the desktop's main process and preload. They are split where a module is loaded on
// demand: a program that only counts rows does not wait for the PDF writer. `node build.config.mjs [FOLDER]` puts
// them into that folder, otherwise into dist.
import { readdir, rm } from 'node:fs/promises';
import { join, relative } from 'node:path';
import { build } from 'esbuild';

const folder = process.argv[2] ?? 'dist';

// Packages that a start needs are bundled, for a few large files are read sooner than hundreds of small ones; those
// that only printing, spelling and bringing in need stay packages, loaded when they are asked for.
const later = ['pdfkit', 'fontkit', 'pngjs', 'mammoth', 'nspell', 'dictionary-en', 'dictionary-en-gb'];
const node = { bundle: true, platform: 'node', external: [...later, 'electron'], logLevel: 'warning' };
const { metafile } = await build({
  ...node,
  metafile: true,
  entryPoints: {
    turnchain: 'app/command/turnchain.ts',
    start: 'app/start/main.ts',
    'printing-worker': 'app/services/printing-worker.ts',
    'desktop/main': 'app/desktop/main.ts',
  },
  outdir: folder,
  outExtension: { '.js': '.mjs' },
  chunkNames: 'parts/[name]-[hash]',
  splitting: true,
  format: 'esm',
  target: 'node20',
});
// Parts of earlier builds go last: a program that runs meanwhile finds its own.
const built = new Set(Object.keys(metafile.outputs).map((path) => relative('.', path)));
for (const name of await readdir(join(folder, 'parts'))) {
  const part = join(folder, 'parts', name);
  if (!built.has(relative('.', part))) await rm(part);
}
// A sandboxed preload is one plain script.
await build({
  ...node,
  entryPoints: ['app/desktop/preload.ts'],
  outfile: join(folder, 'desktop', 'preload.cjs'),
  external: ['electron'],
  format: 'cjs',
  target: 'chrome130',
});
