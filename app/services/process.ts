/**
 * Which process is which, and whether it still runs: a number alone is not enough, because systems give
 * numbers of ended processes to new ones. It starts and ends nothing.
 */
import { readFileSync } from 'node:fs';
import { faultCode } from './disk.ts';

/** A process; `mark` tells it from a later one with the same number, where the system says so, else "0". */
export interface ProcessMark {
  readonly pid: number;
  readonly mark: string;
}

/** Linux: clock ticks from boot to the process's start, field 22 of proc_pid_stat(5), and which boot that was. */
function startOf(pid: number): string | null {
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, 'latin1');
    // The second field is a name in brackets and may hold spaces and brackets itself.
    const ticks = stat.slice(stat.lastIndexOf(')') + 2).split(' ')[19];
    const boot = readFileSync('/proc/sys/kernel/random/boot_id', 'latin1').slice(0, 8);
    return `${boot}-${ticks}`;
  } catch {
    return null;
  }
}

/** This process. */
export const thisProcess = (): ProcessMark => ({ pid: process.pid, mark: startOf(process.pid) ?? '0' });

/** Whether a process still runs. In doubt it does: what it holds is then left alone. */
export function isRunning({ pid, mark }: ProcessMark): boolean {
  try {
    process.kill(pid, 0);
  } catch (fault) {
    if (faultCode(fault) !== 'EPERM') return false;
  }
  const start = startOf(pid);
  return start === null || mark === '0' || start === mark;
}
