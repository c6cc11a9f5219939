/**
 * Small JSON files of the program's own (settings, recent files, window state): read with a guard, written in
 * one step. A file that cannot be understood is put aside, never written over, and counts as not there.
 */
import { dirname } from 'node:path';
import { type Disk, faultCode } from './disk.ts';
import { type FileError, loadFile, replaceFile } from './files.ts';

/** The value in the file; undefined when there is none that can be read. */
export async function readKept(path: string, disk: Disk): Promise<unknown> {
  const loaded = await loadFile(path, disk);
  if (!loaded.ok) return undefined;
  try {
    return JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(loaded.bytes));
  } catch {
    await disk.rename(path, `${path}.damaged`).catch(() => undefined);
    return undefined;
  }
}

/** Writes the value; null when it is done. */
export async function writeKept(path: string, value: unknown, disk: Disk): Promise<FileError | null> {
  try {
    await disk.makeFolder(dirname(path));
  } catch (fault) {
    // `replaceFile` tells what is wrong with the place.
    if (faultCode(fault) === 'ENAMETOOLONG') throw fault;
  }
  return replaceFile(path, new TextEncoder().encode(`${JSON.stringify(value, null, 2)}\n`), disk);
}
