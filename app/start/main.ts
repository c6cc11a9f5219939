/**
 * `npm start [FILE]`: opens the studio in the best window that can be had: the desktop's, a browser's, or the
 * one that the maker opens at the address told. What is missing for a better one is said in one line.
 */
import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { packageFolder } from '../services/resources.ts';
import { hasScreen } from './browser.ts';
import { runDesktop } from './desktop.ts';
import { runLoopback } from './loopback.ts';
import { findRuntime } from './runtime.ts';

const HELP = `npm start [FILE]            opens the studio, with FILE if it is given
npm start -- --browser      in a window of the browser
npm start -- --address      tells the address only, and opens nothing
`;

const { env, platform } = process;
const words = process.argv.slice(2);
const root = packageFolder();
const say = (line: string): void => {
  process.stdout.write(`${line}\n`);
};

/** Where the command was given: npm changes into the package's folder first. */
const folder = env.INIT_CWD ?? process.cwd();
const named = words.find((word) => !word.startsWith('-'));
const open = named === undefined ? null : resolve(folder, named);

async function start(): Promise<void> {
  const stop = new AbortController();
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => stop.abort());
  const screen = hasScreen(platform, env);
  const addressOnly = words.includes('--address') || !screen;
  if (!addressOnly && !words.includes('--browser')) {
    const electron = join(root, 'node_modules', 'electron');
    const runtime = await findRuntime(electron, env, say, stop.signal);
    if (stop.signal.aborted) return;
    const why = runtime.ok
      ? await runDesktop({ program: runtime.program, folder: root, open, stop: stop.signal })
      : runtime.why;
    if (why === null) return;
    say(`The studio opens in the browser: ${why}.`);
  }
  if (!screen && !words.includes('--address')) say('There is no screen here to open a window on.');
  await runLoopback({ platform, env, folder, open, say, stop: stop.signal, addressOnly });
}

if (words.includes('--help') || words.includes('-h')) process.stdout.write(HELP);
else if (open !== null && !existsSync(open)) {
  process.stderr.write(`There is no file “${named}”. Begin without one, or give the file’s place.\n`);
  process.exitCode = 2;
} else if (!existsSync(join(root, 'dist', 'studio', 'index.html'))) {
  process.stderr.write('The studio is not built: run “npm run build” first.\n');
  process.exitCode = 2;
} else await start();
