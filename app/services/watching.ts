/**
 * Tells when another program changes, moves or deletes a file that is open here. It looks at the files every
 * second, which works on every disk, and reads one only when it looks different. What this program saves itself
 * is told to it and is no alarm; neither is a file that was touched and holds the same.
 */
import { type Disk, faultCode, localDisk } from './disk.ts';
import { loadFile } from './files.ts';
import { stampOf } from './saving.ts';

export type Change = 'changed-on-disk' | 'gone-from-disk';

interface Watched {
  stamp: string;
  /** Size, time and number of the file when it was looked at last. */
  look: string;
  /** How often in turn there was no file. */
  absent: number;
  /** What was told last, so that it is told once. */
  told: string | null;
  busy: number;
}

/** Programs that save by putting a new file in place leave a moment without one. */
const ABSENT_LOOKS = 2;

export class Watching {
  readonly #disk: Disk;
  readonly #tell: (path: string, change: Change) => void;
  readonly #files = new Map<string, Watched>();
  #looking = false;

  constructor(tell: (path: string, change: Change) => void, disk: Disk = localDisk) {
    this.#tell = tell;
    this.#disk = disk;
  }

  /** From now on changes away from `stamp` are told. */
  begin(path: string, stamp: string): void {
    const watched = this.#files.get(path) ?? { stamp, look: '', absent: 0, told: null, busy: 0 };
    Object.assign(watched, { stamp, absent: 0, told: null, look: '' });
    this.#files.set(path, watched);
  }

  end(path: string): void {
    this.#files.delete(path);
  }

  /** Carries out a save of this program's own: nothing is told of the file meanwhile. */
  async during<T>(path: string, save: () => Promise<T>): Promise<T> {
    const watched = this.#files.get(path);
    if (watched === undefined) return save();
    watched.busy += 1;
    try {
      return await save();
    } finally {
      watched.busy -= 1;
    }
  }

  /** Looks at every file once. Called by a timer of whoever made this. */
  async look(): Promise<void> {
    if (this.#looking) return;
    this.#looking = true;
    try {
      for (const [path, watched] of this.#files) await this.#lookAt(path, watched);
    } finally {
      this.#looking = false;
    }
  }

  async #lookAt(path: string, watched: Watched): Promise<void> {
    if (watched.busy > 0) return;
    const { stamp: known } = watched;
    /** A save or a close meanwhile makes what was seen worthless. */
    const stale = () => watched.busy > 0 || watched.stamp !== known || this.#files.get(path) !== watched;
    let look: string;
    try {
      const { size, mtimeMs, ino } = await this.#disk.stat(path);
      look = `${size} ${mtimeMs} ${ino}`;
    } catch (fault) {
      if (faultCode(fault) !== 'ENOENT' || stale()) return; // not to be asked just now, which is no news
      watched.absent += 1;
      watched.look = '';
      if (watched.absent >= ABSENT_LOOKS) this.#report(path, watched, 'gone-from-disk', 'gone');
      return;
    }
    watched.absent = 0;
    if (look === watched.look) return;
    const loaded = await loadFile(path, this.#disk);
    if (!loaded.ok || stale()) return;
    watched.look = look;
    const stamp = stampOf(loaded.bytes);
    if (stamp === watched.stamp) watched.told = null;
    else this.#report(path, watched, 'changed-on-disk', stamp);
  }

  #report(path: string, watched: Watched, change: Change, what: string): void {
    if (watched.told === what) return;
    watched.told = what;
    this.#tell(path, change);
  }
}
