/** The folder that files are written into: made when it is not there, or a sentence why not. */
import fs from 'node:fs/promises';
import { basename } from 'node:path';
import { type DiskError, diskError, whileSaving } from './disk.ts';

/** Makes the folder that is not there. `what` goes into it. */
export async function prepareFolder(folder: string, what: string): Promise<DiskError | null> {
  try {
    await fs.mkdir(folder, { recursive: true });
    if ((await fs.stat(folder)).isDirectory()) return null;
  } catch (fault) {
    const code = (fault as NodeJS.ErrnoException).code;
    if (code !== 'EEXIST' && code !== 'ENOTDIR') return whileSaving(folder, fault);
  }
  const error = diskError('not-a-file', folder);
  return {
    ...error,
    message: `“${basename(folder)}” is a file, not a folder for ${what}. Name another folder.`,
  };
}
