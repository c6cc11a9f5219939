/**
 * The files that were opened or saved last, newest first, for all windows. It remembers paths; what a page
 * gets of them is a handle. A list that cannot be read begins anew.
 */
import * as z from 'zod';
import { type Disk, localDisk } from './disk.ts';
import { readKept, writeKept } from './kept-file.ts';

export interface RecentEntry {
  readonly path: string;
  readonly title: string;
  /** ISO. */
  readonly time: string;
}

/** More than anybody looks through. */
const MOST = 20;
/** A disk in the network that does not answer must not hold up the start. */
const PATIENCE_MS = 800;

const ENTRY = z.object({ path: z.string().min(1), title: z.string(), time: z.string() });

export class Recent {
  readonly #path: string;
  readonly #disk: Disk;
  /** One change after the other. */
  #last: Promise<unknown> = Promise.resolve();

  constructor(path: string, disk: Disk = localDisk) {
    this.#path = path;
    this.#disk = disk;
  }

  /** The entries, once the changes asked for before are made. */
  async list(): Promise<readonly RecentEntry[]> {
    await this.#last;
    return this.#read();
  }

  async #read(): Promise<readonly RecentEntry[]> {
    const kept = await readKept(this.#path, this.#disk);
    if (!Array.isArray(kept)) return [];
    return kept.flatMap((value) => {
      const parsed = ENTRY.safeParse(value);
      return parsed.success ? [parsed.data] : [];
    });
  }

  /** Puts an entry on top. `made` gives it when its turn comes; null when there is nothing to remember after all. */
  add(made: () => Promise<RecentEntry | null>): Promise<void> {
    return this.#change(async (list) => {
      const entry = await made();
      if (entry === null) return list;
      return [entry, ...list.filter(({ path }) => path !== entry.path)].slice(0, MOST);
    });
  }

  remove(path: string): Promise<void> {
    return this.#change(async (list) => list.filter((entry) => entry.path !== path));
  }

  /** Whether there is a file at the place; one that cannot be asked in time counts as away. */
  async isThere(path: string): Promise<boolean> {
    let timer: NodeJS.Timeout | undefined;
    const late = new Promise<boolean>((resolve) => {
      timer = setTimeout(() => resolve(false), PATIENCE_MS);
    });
    const asked = this.#disk.stat(path).then(
      (entry) => entry.isFile(),
      () => false,
    );
    return Promise.race([asked, late]).finally(() => clearTimeout(timer));
  }

  /** Waits until all that was asked for is written. */
  async settled(): Promise<void> {
    await this.#last;
  }

  /** The list is a comfort: where it cannot be written, work goes on without it. */
  #change(change: (list: readonly RecentEntry[]) => Promise<readonly RecentEntry[]>): Promise<void> {
    const done = this.#last.then(async () => {
      const before = await this.#read();
      const after = await change(before);
      if (after !== before) await writeKept(this.#path, after, this.#disk);
    });
    this.#last = done.catch(() => undefined);
    return this.#last as Promise<void>;
  }
}
