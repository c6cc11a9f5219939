/** Runs the desktop program and waits for its end. What it does is its own. */
import { spawn } from 'node:child_process';

/** A runtime that cannot show a window ends at once. */
const FAILS_WITHIN_MS = 5_000;

export interface DesktopRun {
  readonly program: string;
  /** Folder of this package. */
  readonly folder: string;
  readonly open: string | null;
  readonly stop: AbortSignal;
}

/** Null when it ran and ended; else why it could not. */
export function runDesktop({ program, folder, open, stop }: DesktopRun): Promise<string | null> {
  return new Promise((resolve) => {
    const begun = Date.now();
    const child = spawn(program, [folder, ...(open === null ? [] : [open])], { stdio: 'ignore' });
    stop.addEventListener('abort', () => child.kill());
    child.once('error', () => resolve('the desktop window’s runtime does not run on this machine'));
    child.once('exit', (code) => {
      const failed = code !== 0 && !stop.aborted && Date.now() - begun < FAILS_WITHIN_MS;
      resolve(failed ? `the desktop window could not open (its runtime ended with ${code})` : null);
    });
  });
}
