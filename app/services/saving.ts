/**
 * Opening and saving a pattern's bytes under a stamp: the hash of what is in the file. A file that another
 * program has changed or taken away is not written over; what was there before is kept as a version. Which
 * window may save is not asked here.
 */
import { createHash } from 'node:crypto';
import { basename, dirname, join } from 'node:path';
import { type Disk, type DiskError, diskError, faultCode, localDisk, whileSaving } from './disk.ts';
import { type FileError, loadFile, replaceFile, unsaveable } from './files.ts';
import type { Versions } from './versions.ts';

/** The stamp of a state of a file: the same for the same bytes, whoever wrote them and when. */
export const stampOf = (bytes: Uint8Array): string =>
  createHash('sha256').update(bytes).digest('hex').slice(0, 32);

export type ReadOutcome =
  | {
      readonly ok: true;
      readonly bytes: Uint8Array;
      readonly stamp: string;
      readonly readOnly: boolean;
    }
  | { readonly ok: false; readonly error: FileError };

export type SaveOutcome =
  | {
      readonly ok: true;
      readonly stamp: string;
      /** Why the state before could not be kept as a version; null when it was, or when there was none. */
      readonly notKept: FileError | null;
    }
  | { readonly ok: false; readonly error: FileError };

/** Where a file really is, behind links; also for a file that is yet to be written. */
export async function realPlace(path: string, disk: Disk = localDisk): Promise<string> {
  try {
    return await disk.realpath(path);
  } catch {
    const folder = await disk.realpath(dirname(path)).catch(() => dirname(path));
    return join(folder, basename(path));
  }
}

async function mayBeWritten(path: string, disk: Disk): Promise<boolean> {
  try {
    const { mode } = await disk.stat(path);
    if ((mode & 0o222) === 0) return false;
    await disk.mayWrite(path);
    // It is replaced by a file beside it, so its folder must be open, too.
    await disk.mayWrite(dirname(path));
    return true;
  } catch {
    return false;
  }
}

/** Reads a file whole, with its stamp. Whether it is a pattern is for the reader of patterns to say. */
export async function readStamped(path: string, disk: Disk = localDisk): Promise<ReadOutcome> {
  const loaded = await loadFile(path, disk);
  if (!loaded.ok) return loaded;
  const { bytes } = loaded;
  return { ok: true, bytes, stamp: stampOf(bytes), readOnly: !(await mayBeWritten(path, disk)) };
}

type Before =
  | { readonly state: 'absent' }
  | { readonly state: 'there'; readonly bytes: Uint8Array; readonly time: Date }
  | { readonly state: 'unknown'; readonly error: FileError };

async function stateBefore(path: string, disk: Disk): Promise<Before> {
  try {
    const { mtimeMs } = await disk.stat(path);
    const loaded = await loadFile(path, disk);
    if (!loaded.ok) return { state: 'unknown', error: loaded.error };
    return { state: 'there', bytes: loaded.bytes, time: new Date(mtimeMs) };
  } catch (fault) {
    if (faultCode(fault) === 'ENOENT') return { state: 'absent' };
    return { state: 'unknown', error: whileSaving(path, fault) };
  }
}

/** Why the file is not in the state that the stamp tells of; null when it is. */
function fault(path: string, before: Before, stamp: string): DiskError | null {
  if (before.state === 'absent') return diskError('gone-from-disk', path);
  if (before.state === 'there' && stampOf(before.bytes) !== stamp) return diskError('changed-on-disk', path);
  return null;
}

/** Why what was there is not among the versions now; null when it is, or when there was nothing. */
async function putAside(path: string, before: Before, versions: Versions): Promise<FileError | null> {
  if (before.state === 'there') return versions.keep(path, before.bytes, before.time);
  return before.state === 'unknown' ? before.error : null;
}

/**
 * Saves bytes at `path` (a real place) in one step. With a stamp, only over the state that it tells of; null
 * saves over whatever is there. Bytes that could not be opened again are refused.
 */
export async function saveStamped(
  path: string,
  bytes: Uint8Array,
  stamp: string | null,
  versions: Versions,
  disk: Disk = localDisk,
): Promise<SaveOutcome> {
  const unfit = unsaveable(bytes);
  if (unfit !== null) return { ok: false, error: unfit };
  const before = await stateBefore(path, disk);
  // What cannot be read cannot be compared: with a stamp it is left alone.
  if (stamp !== null && before.state === 'unknown') return { ok: false, error: before.error };
  const moved = stamp === null ? null : fault(path, before, stamp);
  if (moved !== null) return { ok: false, error: moved };
  const stampNow = stampOf(bytes);
  if (before.state === 'there' && stampOf(before.bytes) === stampNow) {
    return { ok: true, stamp: stampNow, notKept: null };
  }
  const notKept = await putAside(path, before, versions);
  const error = await replaceFile(path, bytes, disk);
  return error === null ? { ok: true, stamp: stampNow, notKept } : { ok: false, error };
}
