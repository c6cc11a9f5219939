/**
 * The files that are written beside another before they take its place: their names, and the removal of those
 * whose program was ended in the middle. A name tells whose it is, so that what another program is writing at
 * this moment is left alone. It removes nothing else, and never fails.
 */
import { randomBytes } from 'node:crypto';
import { join } from 'node:path';
import type { Disk } from './disk.ts';
import { isRunning, type ProcessMark, thisProcess } from './process.ts';

/** `.turnchain-<process>.<its mark>.<random>.part`. */
const NAME = /^\.turnchain-(\d+)\.([0-9a-f-]+)\.[0-9a-f]{16}\.part$/;

/**
 * A folder may be shared with a machine whose processes are not to be seen from here. What was written to
 * within this time is left alone, unless it is of a process of this machine that is no more.
 */
const PATIENCE_MS = 60 * 60 * 1000;

let me: ProcessMark | undefined;

/** A new name for a file that is being written by this process. */
export function nameBeside(): string {
  me ??= thisProcess();
  return `.turnchain-${me.pid}.${me.mark}.${randomBytes(8).toString('hex')}.part`;
}

/** Whether two marks are of the same start of the same machine. Where the system gives none, nobody knows. */
function sameMachine(mark: string): boolean {
  me ??= thisProcess();
  return mark !== '0' && mark.split('-')[0] === me.mark.split('-')[0];
}

/** Removes from a folder what programs left that were ended while they wrote. */
export async function sweep(folder: string, disk: Disk): Promise<void> {
  for (const { name } of await disk.list(folder).catch(() => [])) {
    const [, pid, mark] = NAME.exec(name) ?? [];
    if (pid === undefined || mark === undefined) continue;
    if (sameMachine(mark) && isRunning({ pid: Number(pid), mark })) continue;
    const path = join(folder, name);
    if (!sameMachine(mark)) {
      const entry = await disk.stat(path).catch(() => null);
      if (entry === null || Date.now() - entry.mtimeMs < PATIENCE_MS) continue;
    }
    await disk.unlink(path).catch(() => undefined); // somebody else was quicker, or it may not be removed
  }
}
