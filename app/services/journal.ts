/**
 * The journal of unsaved work: per desk the document as it stands in a pattern file and its pictures, each
 * written in one step and synced. Work stays until `forget`, whatever happens to the program, to its file or to
 * this code: an entry carries the version of its format, and a later one is left alone.
 *
 * `<journal>/<desk>/work.json` and `<journal>/<desk>/<picture id>.picture`.
 */
import { join } from 'node:path';
import { strToU8, zipSync } from 'fflate';
import * as z from 'zod';
import { readContainer, writeContainer } from '../../core/document/container.ts';
import { EXTENSION, lookAt, type Picture, type Pictures } from '../../core/document/media.ts';
import { VERSION } from '../../core/document/migrations.ts';
import { isId } from '../../core/document/words.ts';
import type { Asides, HostError } from '../host/host.ts';
import { type Disk, localDisk, whileSaving } from './disk.ts';
import { type FileError, loadFile, replaceFile } from './files.ts';
import { hostError } from './host-errors.ts';

/** A state of the work. `path` and `stamp` tell which file it began from, and which state of it. */
export interface JournalWork {
  readonly title: string;
  readonly path: string | null;
  readonly stamp: string | null;
  /** ISO. */
  readonly time: string;
  readonly document: unknown;
  /** Words typed for a form and not put in yet. */
  readonly asides: Asides;
}

export type Restored =
  | { readonly ok: true; readonly bytes: Uint8Array; readonly asides: Asides }
  | { readonly ok: false; readonly error: HostError };

const FORMAT = 'turnchain-journal';
const JOURNAL_VERSION = 1;
const WORK = 'work.json';
const PICTURE = '.picture';

const ENTRY = z.object({
  format: z.literal(FORMAT),
  version: z.literal(JOURNAL_VERSION),
  /** Version of the pattern file that `document` is in the form of. */
  file: z.number().int().min(1),
  title: z.string(),
  path: z.string().nullable(),
  stamp: z.string().nullable(),
  time: z.string(),
  document: z.unknown(),
  asides: z.record(z.string(), z.string()).default({}),
});

export class Journal {
  readonly #folder: string;
  readonly #disk: Disk;
  /** Per desk, the last thing under way: states are written in the order in which they come. */
  readonly #last = new Map<string, Promise<unknown>>();

  constructor(folder: string, disk: Disk = localDisk) {
    this.#folder = folder;
    this.#disk = disk;
  }

  /** Writes a state of the work; null when it is safe on the disk. */
  keep(desk: string, work: JournalWork): Promise<FileError | null> {
    const entry = { format: FORMAT, version: JOURNAL_VERSION, file: VERSION, ...work };
    return this.#write(desk, WORK, strToU8(JSON.stringify(entry)));
  }

  /** Writes a picture of the desk, once. */
  keepPicture(desk: string, id: string, bytes: Uint8Array): Promise<FileError | null> {
    const look = lookAt(bytes);
    if ('code' in look) return Promise.resolve(look);
    return this.#write(desk, `${id}${PICTURE}`, bytes);
  }

  /** Removes the work, the document first: pictures alone are not work. */
  forget(desk: string): Promise<void> {
    const folder = this.#of(desk);
    return this.#inTurn(desk, async () => {
      await this.#disk.unlink(join(folder, WORK)).catch(() => undefined);
      for (const { name } of await this.#disk.list(folder).catch(() => [])) {
        await this.#disk.unlink(join(folder, name)).catch(() => undefined);
      }
      await this.#disk.removeFolder(folder).catch(() => undefined);
    });
  }

  /** Every desk that there is a folder of, work in it or not. */
  async desks(): Promise<readonly string[]> {
    const items = await this.#disk.list(this.#folder).catch(() => []);
    return items.flatMap((item) => (item.isDirectory() && isId(item.name) ? [item.name] : []));
  }

  /** The work of a desk; null when there is none, or none that this version understands. */
  async work(desk: string): Promise<(JournalWork & { readonly file: number }) | null> {
    const loaded = await loadFile(join(this.#of(desk), WORK), this.#disk);
    if (!loaded.ok) return null;
    try {
      const parsed = ENTRY.safeParse(JSON.parse(new TextDecoder().decode(loaded.bytes)));
      return parsed.success ? { ...parsed.data, document: parsed.data.document } : null;
    } catch {
      return null;
    }
  }

  /** Whether a desk has pictures at most: what is left when a window closed that had nothing unsaved. */
  async isEmpty(desk: string): Promise<boolean> {
    const items = await this.#disk.list(this.#of(desk)).catch(() => null);
    return items?.every(({ name }) => name !== WORK) ?? false;
  }

  /** The desk's pictures by id. */
  async pictures(desk: string): Promise<Pictures> {
    const folder = this.#of(desk);
    const pictures = new Map<string, Picture>();
    for (const { name } of await this.#disk.list(folder).catch(() => [])) {
      const id = name.endsWith(PICTURE) ? name.slice(0, -PICTURE.length) : '';
      if (!isId(id)) continue;
      const loaded = await loadFile(join(folder, name), this.#disk);
      const look = loaded.ok ? lookAt(loaded.bytes) : null;
      if (loaded.ok && look !== null && !('code' in look)) {
        pictures.set(id, { ...look, id, bytes: loaded.bytes });
      }
    }
    return pictures;
  }

  /**
   * The pattern file that the work makes. It goes through the reader of pattern files, so that work of an
   * older version is brought up to today's as a file would be.
   */
  async restore(desk: string): Promise<Restored> {
    const work = await this.work(desk);
    if (work === null) return { ok: false, error: hostError('unknown-desk') };
    const entries: Record<string, Uint8Array> = {
      'pattern.json': strToU8(
        JSON.stringify({ format: 'turnchain', version: work.file, document: work.document }),
      ),
    };
    for (const { id, kind, bytes } of (await this.pictures(desk)).values()) {
      entries[`media/${id}.${EXTENSION[kind]}`] = bytes;
    }
    const read = readContainer(zipSync(entries, { level: 0 }));
    if (!read.ok) return read;
    return { ok: true, bytes: writeContainer(read.document, read.media), asides: work.asides };
  }

  #of(desk: string): string {
    return join(this.#folder, desk);
  }

  #write(desk: string, name: string, bytes: Uint8Array): Promise<FileError | null> {
    return this.#inTurn(desk, async () => {
      const path = join(this.#of(desk), name);
      try {
        await this.#disk.makeFolder(this.#of(desk));
      } catch (fault) {
        return whileSaving(path, fault);
      }
      return replaceFile(path, bytes, this.#disk);
    });
  }

  #inTurn<T>(desk: string, run: () => Promise<T>): Promise<T> {
    const done = (this.#last.get(desk) ?? Promise.resolve()).then(run);
    const settled = done.catch(() => undefined);
    this.#last.set(desk, settled);
    void settled.then(() => {
      if (this.#last.get(desk) === settled) this.#last.delete(desk);
    });
    return done;
  }
}
