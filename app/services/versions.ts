/**
 * Versions that saves put aside, per file, in the program's own folder: everything of the last day, one a day
 * for a month, one a month before that, and never more than so many bytes. It never touches the file itself.
 *
 * `<versions>/<key of the real path>/<time>-<start of the hash>.turnchain`.
 */
import { createHash } from 'node:crypto';
import { join } from 'node:path';
import type { KeptVersion } from '../host/host.ts';
import { type Disk, localDisk, whileSaving } from './disk.ts';
import { type FileError, loadFile, replaceFile } from './files.ts';

const DAY = 24 * 60 * 60 * 1000;
/** Bytes that the versions of one file may take. */
const MOST_BYTES = 512 * 1024 * 1024;
/** Whatever their size, so many of the newest stay. */
const AT_LEAST = 3;
const ENDING = '.turnchain';
/** "20240501T101530123Z-1a2b3c4d". */
const ID = /^(\d{4})(\d\d)(\d\d)T(\d\d)(\d\d)(\d\d)(\d{3})Z-([0-9a-f]{8})$/;

const hashOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');
const idOf = (time: Date, bytes: Uint8Array): string =>
  `${time.toISOString().replace(/[-:.]/g, '')}-${hashOf(bytes).slice(0, 8)}`;

function timeOf(id: string): string | null {
  const match = ID.exec(id);
  if (!match) return null;
  const [, y, m, d, h, min, s, ms] = match;
  return `${y}-${m}-${d}T${h}:${min}:${s}.${ms}Z`;
}

/** Which of the versions stay; `newest` first. Days and months are those of UTC. */
export function versionsToStay(newest: readonly KeptVersion[], now: number): ReadonlySet<string> {
  const stay = new Set<string>();
  const seen = new Set<string>();
  let bytes = 0;
  for (const [index, version] of newest.entries()) {
    const age = now - Date.parse(version.time);
    const span = age <= DAY ? version.id : version.time.slice(0, age <= 30 * DAY ? 10 : 7);
    if (seen.has(span)) continue;
    bytes += version.bytes;
    if (index >= AT_LEAST && bytes > MOST_BYTES) break;
    seen.add(span);
    stay.add(version.id);
  }
  return stay;
}

export class Versions {
  readonly #folder: string;
  readonly #disk: Disk;
  readonly #now: () => number;

  constructor(folder: string, disk: Disk = localDisk, now: () => number = Date.now) {
    this.#folder = folder;
    this.#disk = disk;
    this.#now = now;
  }

  /** Newest first. `path` is the real path of the file. */
  async list(path: string): Promise<readonly KeptVersion[]> {
    const folder = this.#of(path);
    const kept: KeptVersion[] = [];
    for (const { name } of await this.#disk.list(folder).catch(() => [])) {
      const id = name.slice(0, -ENDING.length);
      const time = name.endsWith(ENDING) ? timeOf(id) : null;
      if (time === null) continue;
      const entry = await this.#disk.stat(join(folder, name)).catch(() => null);
      if (entry !== null) kept.push({ id, time, bytes: entry.size });
    }
    return kept.sort((a, b) => (a.id < b.id ? 1 : -1));
  }

  async read(
    path: string,
    id: string,
  ): Promise<
    { readonly ok: true; readonly bytes: Uint8Array } | { readonly ok: false; readonly error: FileError }
  > {
    const name = ID.test(id) ? `${id}${ENDING}` : 'no such version';
    return loadFile(join(this.#of(path), name), this.#disk);
  }

  /**
   * Puts a state of the file aside; `time` is when it was written. The same bytes as the newest version are
   * not kept twice. Null when it is kept.
   */
  async keep(path: string, bytes: Uint8Array, time: Date): Promise<FileError | null> {
    const folder = this.#of(path);
    const id = idOf(time, bytes);
    const before = await this.list(path);
    if (before[0]?.id.slice(-8) === id.slice(-8) && before[0].bytes === bytes.length) return null;
    const target = join(folder, `${id}${ENDING}`);
    try {
      await this.#disk.makeFolder(folder);
    } catch (fault) {
      return whileSaving(target, fault);
    }
    const fault = await replaceFile(target, bytes, this.#disk);
    if (fault !== null) return fault;
    await this.#thin(path);
    return null;
  }

  async #thin(path: string): Promise<void> {
    const all = await this.list(path);
    const stay = versionsToStay(all, this.#now());
    for (const { id } of all) {
      if (stay.has(id)) continue;
      await this.#disk.unlink(join(this.#of(path), `${id}${ENDING}`)).catch(() => undefined);
    }
  }

  #of(path: string): string {
    return join(this.#folder, hashOf(Buffer.from(path)).slice(0, 32));
  }
}
