/** Disks that fail as they are told, over the real one. A write that fails leaves half of its bytes behind. */
import { type Disk, type DiskHandle, localDisk } from '../../app/services/disk.ts';

export const broken = (code: string) => Object.assign(new Error(code), { code });

export type Step = keyof Disk | 'writeFile' | 'chmod' | 'sync' | 'close';

/** A disk that asks `before` each step; it may throw. */
export function failingDisk(before: (step: Step, path: string) => void): Disk {
  const wrap = (handle: DiskHandle, at: string): DiskHandle => ({
    read: (...values) => handle.read(...values),
    writeFile: async (bytes) => {
      try {
        before('writeFile', at);
      } catch (fault) {
        await handle.writeFile(bytes.subarray(0, bytes.length / 2));
        throw fault;
      }
      await handle.writeFile(bytes);
    },
    chmod: async (mode) => {
      before('chmod', at);
      await handle.chmod(mode);
    },
    sync: async () => {
      before('sync', at);
      await handle.sync();
    },
    close: async () => {
      await handle.close();
      before('close', at);
    },
  });
  const step =
    <T>(name: Step, run: (path: string) => Promise<T>) =>
    async (at: string): Promise<T> => {
      before(name, at);
      return run(at);
    };
  return {
    stat: step('stat', localDisk.stat),
    mayWrite: step('mayWrite', localDisk.mayWrite),
    realpath: step('realpath', localDisk.realpath),
    unlink: step('unlink', localDisk.unlink),
    makeFolder: step('makeFolder', localDisk.makeFolder),
    list: step('list', localDisk.list),
    removeFolder: step('removeFolder', localDisk.removeFolder),
    open: async (at, flags) => {
      before('open', at);
      return wrap(await localDisk.open(at, flags), at);
    },
    rename: async (from, to) => {
      before('rename', from);
      await localDisk.rename(from, to);
    },
  };
}

/** A disk on which one kind of step always fails. */
export const failingAt = (wanted: Step, code: string): Disk =>
  failingDisk((step) => {
    if (step === wanted) throw broken(code);
  });
