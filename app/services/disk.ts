/**
 * The part of the file system that services use, as an interface, so that tests can put a failing disk in
 * its place; and what its errors mean for a maker. All sentences about disks stand here. It decides nothing.
 */
import fs from 'node:fs/promises';
import { basename } from 'node:path';

/** What is asked about a path. */
export interface DiskEntry {
  readonly size: number;
  readonly mode: number;
  /** When it was last written, in milliseconds since 1970. */
  readonly mtimeMs: number;
  /** Which file it is on its disk; a file put in its place has another. */
  readonly ino: number;
  isFile(): boolean;
  isDirectory(): boolean;
}

/** Something in a folder. */
export interface DiskItem {
  readonly name: string;
  isFile(): boolean;
  isDirectory(): boolean;
  isSymbolicLink(): boolean;
}

/** An open file or folder. */
export interface DiskHandle {
  read(
    into: Uint8Array,
    offset: number,
    length: number,
    position: number | null,
  ): Promise<{ readonly bytesRead: number }>;
  writeFile(bytes: Uint8Array): Promise<void>;
  chmod(mode: number): Promise<void>;
  sync(): Promise<void>;
  close(): Promise<void>;
}

/** Disk operations as in `node:fs/promises`; they reject with an error that has a `code`. */
export interface Disk {
  stat(path: string): Promise<DiskEntry>;
  /** Rejects when the file at `path` may not be changed. */
  mayWrite(path: string): Promise<void>;
  realpath(path: string): Promise<string>;
  open(path: string, flags: 'r' | 'wx'): Promise<DiskHandle>;
  rename(from: string, to: string): Promise<void>;
  unlink(path: string): Promise<void>;
  /** Makes the folder and those above it; one that is there is fine. */
  makeFolder(path: string): Promise<void>;
  /** What is in a folder, in no order. */
  list(path: string): Promise<readonly DiskItem[]>;
  /** Removes an empty folder. */
  removeFolder(path: string): Promise<void>;
}

/** The disk of this machine. */
export const localDisk: Disk = {
  stat: (path) => fs.stat(path),
  mayWrite: (path) => fs.access(path, fs.constants.W_OK),
  realpath: (path) => fs.realpath(path),
  open: (path, flags) => fs.open(path, flags),
  rename: (from, to) => fs.rename(from, to),
  unlink: (path) => fs.unlink(path),
  makeFolder: async (path) => {
    await fs.mkdir(path, { recursive: true });
  },
  list: (path) => fs.readdir(path, { withFileTypes: true }),
  removeFolder: (path) => fs.rmdir(path),
};

/** Why a file could not be opened or saved. */
export interface DiskError {
  readonly code: DiskErrorCode;
  readonly message: string;
}

const SENTENCES = {
  missing: (name: string) =>
    `There is no file “${name}” at this place. It may have been moved, renamed or deleted.`,
  folder: (name: string) => `“${name}” is a folder, not a pattern.`,
  'not-a-file': (name: string) => `“${name}” is not an ordinary file, so it cannot hold a pattern.`,
  'no-permission-to-open': (name: string) =>
    `You are not allowed to open “${name}”. Ask whoever owns the file, or copy it to your own folder.`,
  'no-permission-to-save': (name: string) =>
    `You are not allowed to save “${name}” here. Save it in another folder; nothing has been changed.`,
  'read-only': (name: string) =>
    `“${name}” may only be read, not changed. Save under another name or in another folder; nothing has been changed.`,
  'missing-folder': (name: string) =>
    `The folder for “${name}” is not there any more. Save it in another folder; nothing has been changed.`,
  'disk-full': (name: string) =>
    `The disk is full: “${name}” could not be saved. The file as it was before is untouched. Make room, or save on another disk.`,
  'in-use': (name: string) =>
    `Another program keeps “${name}” to itself. Close it there and try again; nothing has been changed.`,
  'name-too-long': () => 'The name of the file is too long for this disk. Choose a shorter one.',
  'being-written': (name: string) =>
    `“${name}” is being written by another program at this moment. Try again when it is done.`,
  'changed-on-disk': (name: string) =>
    `“${name}” was changed by another program since it was opened here, so it was not saved over. Nothing is lost: look at what is there, save a copy, or save over it.`,
  'gone-from-disk': (name: string) =>
    `“${name}” is not at its place any more: it was moved, renamed or deleted. Nothing is lost: save it there again, or somewhere else.`,
  'held-elsewhere': (name: string) =>
    `“${name}” is open in another window, so it was not saved here. Save under another name, or close it there first.`,
  'disk-failed-to-open': (name: string, fault: string) =>
    `“${name}” could not be read from the disk (${fault}).`,
  'disk-failed-to-save': (name: string, fault: string) =>
    `“${name}” could not be written to the disk (${fault}). The file as it was before is untouched. Save on another disk.`,
} as const satisfies Record<string, (...values: never[]) => string>;

/** Every reason there is. */
export type DiskErrorCode = keyof typeof SENTENCES;

/** The error for a reason; `path` is told by its last part. */
export function diskError<C extends DiskErrorCode>(code: C, path: string, fault = ''): DiskError {
  const sentence: (name: string, fault: string) => string = SENTENCES[code];
  return { code, message: sentence(basename(path), fault) };
}

/** The code of what the disk rejected with: "ENOENT". */
export const faultCode = (fault: unknown): string =>
  typeof fault === 'object' && fault !== null && 'code' in fault && typeof fault.code === 'string'
    ? fault.code
    : 'unknown fault';

const OPENING: Readonly<Record<string, DiskErrorCode>> = {
  ENOENT: 'missing',
  ENOTDIR: 'missing',
  EISDIR: 'folder',
  EACCES: 'no-permission-to-open',
  EPERM: 'no-permission-to-open',
  EBUSY: 'in-use',
  ENAMETOOLONG: 'name-too-long',
};

const SAVING: Readonly<Record<string, DiskErrorCode>> = {
  ENOENT: 'missing-folder',
  ENOTDIR: 'missing-folder',
  EISDIR: 'folder',
  EACCES: 'no-permission-to-save',
  EPERM: 'no-permission-to-save',
  EROFS: 'read-only',
  ENOSPC: 'disk-full',
  EDQUOT: 'disk-full',
  EFBIG: 'disk-full',
  EBUSY: 'in-use',
  ETXTBSY: 'in-use',
  ENAMETOOLONG: 'name-too-long',
};

/** What a rejection of the disk means while opening `path`. */
export function whileOpening(path: string, fault: unknown): DiskError {
  const code = faultCode(fault);
  return diskError(OPENING[code] ?? 'disk-failed-to-open', path, code);
}

/** What a rejection of the disk means while saving `path`. */
export function whileSaving(path: string, fault: unknown): DiskError {
  const code = faultCode(fault);
  return diskError(SAVING[code] ?? 'disk-failed-to-save', path, code);
}
