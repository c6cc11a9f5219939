/**
 * Starts the studio in a browser: the loopback host, and a window of a browser on it where there is one. Ends
 * when the last page has been gone for some seconds, or when it is told to.
 */
import { homedir } from 'node:os';
import { join } from 'node:path';
import { startLoopback } from '../loopback/server.ts';
import { dataFolder } from '../services/data-folder.ts';
import { FolderService } from '../services/folders.ts';
import { packageFolder } from '../services/resources.ts';
import { reveal } from '../services/reveal.ts';
import { StudioServices } from '../services/studio-services.ts';
import { findBrowser, hasScreen, openBrowser } from './browser.ts';

export interface LoopbackStart {
  readonly platform: NodeJS.Platform;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** Folder in which the command was given. */
  readonly folder: string;
  /** Path of the file to open. */
  readonly open: string | null;
  readonly say: (line: string) => void;
  /** Aborted when the program is to end. */
  readonly stop: AbortSignal;
  /** Only tell the address. */
  readonly addressOnly: boolean;
}

/** Pages that are open stay a while before the program takes it that nobody comes back. */
const EMPTY_MS = 5_000;

/** Resolves when all is over and tidied away. */
export async function runLoopback(start: LoopbackStart): Promise<void> {
  const { platform, env, folder, open, say, stop } = start;
  const home = homedir();
  const data = dataFolder(platform, env, home);
  const services = new StudioServices({ data, home, platform });
  const folders = new FolderService(services.handles, [
    ...(folder === home ? [] : [{ title: 'Where you started', path: folder }]),
    { title: 'Documents', path: join(home, 'Documents') },
    { title: 'Home', path: home },
  ]);
  let over: () => void = () => undefined;
  const ended = new Promise<void>((resolve) => {
    over = resolve;
  });
  stop.addEventListener('abort', over);
  const host = await startLoopback({
    services,
    folders,
    studio: join(packageFolder(), 'dist', 'studio'),
    open,
    emptyMs: EMPTY_MS,
    onEmpty: over,
    reveal: (path) => reveal(path, platform),
    log: (line) => process.stderr.write(`${line}\n`),
  });
  const browser = start.addressOnly || !hasScreen(platform, env) ? null : findBrowser(platform, env);
  const address = () =>
    say(`Open this address in a browser of this machine (it works once):\n${host.invite()}`);
  const opened = browser === null ? null : openBrowser(browser, host.invite(), join(data, 'browser'));
  if (opened === null) address();
  else {
    say('The studio is in a window of its own. It ends with that window, or here with Ctrl-C.');
    void opened.failed.then((code) => {
      say(`The browser could not open a window (it ended with ${code}).`);
      address();
    });
  }
  // Read while the window is still opening, which is when there is time: its first call asks for them.
  void services.examples();
  if (stop.aborted) over();
  await ended;
  opened?.end();
  await host.close();
  await services.close();
}
