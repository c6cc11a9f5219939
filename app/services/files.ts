/**
 * Pattern files on disk: opening and saving. A file is never half written: the new one is written beside the
 * old, synced, and put in its place in one step; whatever fails before that step leaves the old file as it
 * was. No errors are thrown; no dialogs, no recent files, no Electron.
 */
import { dirname, join } from 'node:path';
import type { Node } from 'prosemirror-model';
import { readContainer, writeContainer } from '../../core/document/container.ts';
import { FILE_LIMITS } from '../../core/document/limits.ts';
import type { Pictures } from '../../core/document/media.ts';
import { type Refusal, refuse } from '../../core/document/refusals.ts';
import {
  type Disk,
  type DiskEntry,
  type DiskError,
  type DiskHandle,
  diskError,
  localDisk,
  whileOpening,
  whileSaving,
} from './disk.ts';
import { nameBeside, sweep } from './leftovers.ts';

/** A document that cannot be saved, because it could not be opened again. */
export interface Unsaveable {
  readonly code: 'unsaveable';
  readonly message: string;
  /** What reading would refuse. */
  readonly reason: Refusal;
}

export type FileError = DiskError | Refusal | Unsaveable;

export type Opened =
  | {
      readonly ok: true;
      readonly document: Node;
      readonly media: Pictures;
      /** Version the file had when it was older than today's, else null. */
      readonly migratedFrom: number | null;
    }
  | { readonly ok: false; readonly error: FileError };

export type Saved =
  | { readonly ok: true /** Size of the file. */; readonly bytes: number }
  | { readonly ok: false; readonly error: FileError };

/** Thrown within this module only, to leave at once with an error for the maker. */
class Failed extends Error {
  readonly error: FileError;
  constructor(error: FileError) {
    super(error.message);
    this.error = error;
  }
}

function mustBeFile(path: string, entry: DiskEntry): void {
  if (entry.isDirectory()) throw new Failed(diskError('folder', path));
  if (!entry.isFile()) throw new Failed(diskError('not-a-file', path));
}

/** All bytes of a file of known size; one that grows meanwhile is being written by somebody. */
async function readWhole(handle: DiskHandle, path: string, size: number): Promise<Uint8Array> {
  const bytes = new Uint8Array(size + 1);
  let filled = 0;
  while (filled <= size) {
    const { bytesRead } = await handle.read(bytes, filled, bytes.length - filled, null);
    if (bytesRead === 0) return bytes.subarray(0, filled);
    filled += bytesRead;
  }
  throw new Failed(diskError('being-written', path));
}

/** Bytes of the file at `path`, at most as many as a pattern may have. */
async function load(path: string, disk: Disk): Promise<Uint8Array> {
  // Asked before it is opened: opening a pipe would wait for ever.
  const entry = await disk.stat(path);
  mustBeFile(path, entry);
  if (entry.size > FILE_LIMITS.fileBytes) {
    throw new Failed(refuse('too-large', 'the file', FILE_LIMITS.fileBytes));
  }
  const handle = await disk.open(path, 'r');
  try {
    return await readWhole(handle, path, entry.size);
  } finally {
    await handle.close();
  }
}

/** All bytes of the file at `path`, unread: whether they are a pattern is not asked. */
export async function loadFile(
  path: string,
  disk: Disk = localDisk,
): Promise<
  { readonly ok: true; readonly bytes: Uint8Array } | { readonly ok: false; readonly error: FileError }
> {
  try {
    return { ok: true, bytes: await load(path, disk) };
  } catch (fault) {
    return { ok: false, error: fault instanceof Failed ? fault.error : whileOpening(path, fault) };
  }
}

/** Opens the pattern at `path`. Its size is checked before it is read, and it is read whole or not at all. */
export async function openPattern(path: string, disk: Disk = localDisk): Promise<Opened> {
  const loaded = await loadFile(path, disk);
  return loaded.ok ? readContainer(loaded.bytes) : loaded;
}

interface Target {
  /** Where the file really is, when `path` is a link. */
  readonly path: string;
  /** Permissions to keep, or null for a file that is new. */
  readonly mode: number | null;
}

async function targetOf(path: string, disk: Disk): Promise<Target> {
  let entry: DiskEntry;
  try {
    entry = await disk.stat(path);
  } catch (fault) {
    if (typeof fault === 'object' && fault !== null && 'code' in fault && fault.code === 'ENOENT') {
      return { path, mode: null };
    }
    throw fault;
  }
  mustBeFile(path, entry);
  // A rename asks the folder only, and would quietly replace a file that its owner has locked.
  const locked =
    (entry.mode & 0o222) === 0 ||
    (await disk.mayWrite(path).then(
      () => false,
      () => true,
    ));
  if (locked) throw new Failed(diskError('read-only', path));
  return { path: await disk.realpath(path), mode: entry.mode & 0o7777 };
}

async function writeSynced(handle: DiskHandle, bytes: Uint8Array, mode: number | null): Promise<void> {
  try {
    if (mode !== null) await handle.chmod(mode);
    await handle.writeFile(bytes);
    await handle.sync();
  } catch (fault) {
    await handle.close().catch(() => undefined); // the first fault is the one to tell
    throw fault;
  }
  await handle.close();
}

/** Makes the rename itself survive a power cut, where the system can. */
async function syncFolder(folder: string, disk: Disk): Promise<void> {
  try {
    const handle = await disk.open(folder, 'r');
    await handle.sync().finally(() => handle.close());
  } catch {
    // Some systems cannot sync a folder. The file is whole and in its place all the same.
  }
}

/** Puts `bytes` in the place of the file at `path`, in one step, keeping its permissions. Rejects as the disk does. */
async function replace(path: string, bytes: Uint8Array, disk: Disk): Promise<void> {
  const target = await targetOf(path, disk);
  const folder = dirname(target.path);
  await sweep(folder, disk); // first: what is left there may be what fills the disk
  const beside = join(folder, nameBeside());
  const handle = await disk.open(beside, 'wx');
  try {
    await writeSynced(handle, bytes, target.mode);
    await disk.rename(beside, target.path);
  } catch (fault) {
    await disk.unlink(beside).catch(() => undefined); // gone with the disk, or swept by the next who writes here
    throw fault;
  }
  await syncFolder(folder, disk);
}

/**
 * Puts any finished file in the place of what is at `path`, in one step: exports are written as patterns are
 * saved. Null when it is done, else why it was not; then what was there is untouched.
 */
export async function replaceFile(
  path: string,
  bytes: Uint8Array,
  disk: Disk = localDisk,
): Promise<FileError | null> {
  try {
    await replace(path, bytes, disk);
    return null;
  } catch (fault) {
    return fault instanceof Failed ? fault.error : whileSaving(path, fault);
  }
}

/** Why bytes are not to be saved as a pattern: they could not be opened again. Null when they can. */
export function unsaveable(bytes: Uint8Array): Unsaveable | null {
  const back = readContainer(bytes);
  if (back.ok) return null;
  const message = `The pattern cannot be saved as it is, and the file is unchanged. ${back.error.message}`;
  return { code: 'unsaveable', message, reason: back.error };
}

/**
 * Saves a pattern at `path`, in the place of what is there. What is written has been read back first, so a
 * file that was saved can be opened; a document that cannot be is refused and the old file stays.
 */
export async function savePattern(
  path: string,
  document: Node,
  media: Pictures,
  disk: Disk = localDisk,
): Promise<Saved> {
  const bytes = writeContainer(document, media);
  const error = unsaveable(bytes) ?? (await replaceFile(path, bytes, disk));
  return error === null ? { ok: true, bytes: bytes.length } : { ok: false, error };
}
