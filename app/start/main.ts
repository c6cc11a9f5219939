/**
 * `npm start [FILE]`: opens the studio in the window that can be had. What is missing for a better one is said
 * in one line.
 */
import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { packageFolder } from '../services/resources.ts';
import { runLoopback } from './loopback.ts';

const words = process.argv.slice(2);
const say = (line: string): void => {
  process.stdout.write(`${line}\n`);
};

/** Where the command was given: npm changes into the package's folder first. */
const folder = process.env.INIT_CWD ?? process.cwd();
const named = words.find((word) => !word.startsWith('-'));
const open = named === undefined ? null : resolve(folder, named);

if (open !== null && !existsSync(open)) {
  process.stderr.write(`There is no file “${named}”. Begin without one, or give the file’s place.\n`);
  process.exitCode = 2;
} else if (!existsSync(join(packageFolder(), 'dist', 'studio', 'index.html'))) {
  process.stderr.write('The studio is not built: run “npm run build” first.\n');
  process.exitCode = 2;
} else {
  const stop = new AbortController();
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => stop.abort());
  await runLoopback({
    platform: process.platform,
    env: process.env,
    folder,
    open,
    say,
    stop: stop.signal,
    addressOnly: words.includes('--address'),
  });
}
