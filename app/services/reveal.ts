/**
 * Shows a file in the system's file manager, for hosts that have no window system of their own to ask. The
 * program and its arguments are worked out by a plain function; no shell reads them.
 */
import { spawn } from 'node:child_process';
import { dirname } from 'node:path';

export interface RevealCommand {
  readonly program: string;
  readonly words: readonly string[];
}

export function revealCommand(path: string, platform: NodeJS.Platform): RevealCommand {
  if (platform === 'darwin') return { program: 'open', words: ['-R', path] };
  if (platform === 'win32') return { program: 'explorer.exe', words: [`/select,${path}`] };
  // File managers differ in how a file is selected; its folder is what they all open.
  return { program: 'xdg-open', words: [dirname(path)] };
}

/** False when the system has no such program. */
export function reveal(path: string, platform: NodeJS.Platform = process.platform): Promise<boolean> {
  const { program, words } = revealCommand(path, platform);
  return new Promise((resolve) => {
    const child = spawn(program, words, { stdio: 'ignore', detached: true });
    child.once('error', () => resolve(false));
    child.once('spawn', () => {
      child.unref();
      resolve(true);
    });
  });
}
