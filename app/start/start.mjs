/**
 * What `npm start` runs: builds what is not built, or older than its sources, and hands over to the built
 * program. Plain JavaScript, because it runs before anything is compiled.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';

const root = resolve(import.meta.dirname, '../..');
const at = (...parts) => join(root, ...parts);
const time = (path) => (existsSync(path) ? statSync(path).mtimeMs : 0);

/** When the newest file of a folder was changed. */
function newest(folder) {
  return readdirSync(folder, { withFileTypes: true }).reduce((latest, entry) => {
    const path = join(folder, entry.name);
    return Math.max(latest, entry.isDirectory() ? newest(path) : statSync(path).mtimeMs);
  }, 0);
}

const sources = ['app', 'core', 'renderer'].filter((folder) => existsSync(at(folder)));
const changed = Math.max(...sources.map((folder) => newest(at(folder))), time(at('vite.config.ts')));
const built = Math.min(time(at('dist', 'start.mjs')), time(at('dist', 'studio', 'index.html')));

if (built < changed && existsSync(at('build.config.mjs'))) {
  process.stdout.write('Building the studio …\n');
  for (const words of [
    ['build.config.mjs'],
    ['node_modules/vite/bin/vite.js', 'build', '--logLevel', 'warn'],
  ]) {
    const { status } = spawnSync(process.execPath, words, { cwd: root, stdio: 'inherit' });
    if (status !== 0) {
      process.stderr.write('The studio could not be built. “npm ci” brings what is missing.\n');
      process.exit(status ?? 1);
    }
  }
}
await import(pathToFileURL(at('dist', 'start.mjs')).href);
