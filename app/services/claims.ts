/**
 * Who has a thing open, among all windows of all processes of this user: an empty file per claim, whose name
 * says which thing, process and window. There is no lock to break and none to forget: a claim counts while its
 * process runs, and of two that come at once at most one gets the thing.
 */
import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { type Disk, localDisk } from './disk.ts';
import { isRunning, type ProcessMark, thisProcess } from './process.ts';

export interface ClaimsOptions {
  readonly folder: string;
  /** Letters, digits and hyphens: names the window within its process. */
  readonly window: string;
  readonly disk?: Disk;
  readonly me?: ProcessMark;
  readonly running?: (process: ProcessMark) => boolean;
}

interface Entry extends ProcessMark {
  readonly name: string;
  readonly window: string;
}

const TRIES = 6;

const keyOf = (thing: string): string => createHash('sha256').update(thing).digest('hex').slice(0, 32);

function entryOf(name: string): Entry | null {
  const match = /^[0-9a-f]{32}\.(\d+)\.([0-9a-f-]+)\.([\w-]+)$/.exec(name);
  return match ? { name, pid: Number(match[1]), mark: match[2]!, window: match[3]! } : null;
}

export class Claims {
  readonly #folder: string;
  readonly #window: string;
  readonly #disk: Disk;
  readonly #me: ProcessMark;
  readonly #running: (process: ProcessMark) => boolean;
  /** Things that this window has, with the name of the claim's file. */
  readonly #mine = new Map<string, string>();

  constructor({ folder, window, disk = localDisk, me = thisProcess(), running = isRunning }: ClaimsOptions) {
    this.#folder = folder;
    this.#window = window;
    this.#disk = disk;
    this.#me = me;
    this.#running = running;
  }

  /**
   * Takes the thing for this window; false when another has it. Where claims cannot be written (the disk is
   * full) it is given: not to be able to work would be worse than to be two.
   */
  async take(thing: string): Promise<boolean> {
    if (this.#mine.has(thing)) return true;
    const name = `${keyOf(thing)}.${this.#me.pid}.${this.#me.mark}.${this.#window}`;
    for (let tries = 0; tries < TRIES; tries++) {
      if (await this.isTaken(thing)) return false;
      try {
        await this.#disk.makeFolder(this.#folder);
        await (await this.#disk.open(join(this.#folder, name), 'wx')).close();
      } catch {
        return true;
      }
      // Somebody may have come between looking and writing. Both see each other now, and both step back.
      if (!(await this.isTaken(thing))) {
        this.#mine.set(thing, name);
        return true;
      }
      await this.#remove(name);
      await new Promise((resolve) => setTimeout(resolve, 5 + Math.random() * 40 * (tries + 1)));
    }
    return false;
  }

  /** Whether this window has the thing. */
  has(thing: string): boolean {
    return this.#mine.has(thing);
  }

  /** Whether another living window has the thing. */
  async isTaken(thing: string): Promise<boolean> {
    const key = keyOf(thing);
    let taken = false;
    for (const { name } of await this.#disk.list(this.#folder).catch(() => [])) {
      const entry = name.startsWith(key) ? entryOf(name) : null;
      if (entry === null || this.#isMine(entry)) continue;
      if (this.#running(entry)) taken = true;
      else await this.#remove(name);
    }
    return taken;
  }

  async giveUp(thing: string): Promise<void> {
    const name = this.#mine.get(thing);
    this.#mine.delete(thing);
    if (name !== undefined) await this.#remove(name);
  }

  async giveUpAll(): Promise<void> {
    for (const thing of [...this.#mine.keys()]) await this.giveUp(thing);
  }

  #isMine({ pid, mark, window }: Entry): boolean {
    return pid === this.#me.pid && mark === this.#me.mark && window === this.#window;
  }

  async #remove(name: string): Promise<void> {
    await this.#disk.unlink(join(this.#folder, name)).catch(() => undefined); // somebody else was quicker
  }
}
