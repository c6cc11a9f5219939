/**
 * The maker's settings. A file that is missing, damaged or of another version gives the usual values for what
 * it does not say, and what this version does not know stays in it.
 */
import * as z from 'zod';
import type { Settings } from '../host/host.ts';
import { type Disk, localDisk } from './disk.ts';
import type { FileError } from './files.ts';
import { readKept, writeKept } from './kept-file.ts';

export const USUAL_SETTINGS: Settings = {
  theme: 'system',
  terms: 'us',
  units: 'metric',
  spelling: true,
  textScale: 1,
};

const FIELDS = {
  theme: z.enum(['system', 'light', 'dark']),
  terms: z.enum(['us', 'uk']),
  units: z.enum(['metric', 'imperial']),
  spelling: z.boolean(),
  textScale: z.number().min(0.8).max(2),
} satisfies Record<keyof Settings, z.ZodType>;

/** Settings as a page may send them. */
export const SETTINGS: z.ZodType<Settings> = z.strictObject(FIELDS);

const isTable = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Each field for itself: one that is wrong does not take the others with it. */
function settingsIn(kept: unknown): Settings {
  if (!isTable(kept)) return USUAL_SETTINGS;
  const good = Object.entries(FIELDS).flatMap(([name, field]) => {
    const parsed = field.safeParse(kept[name]);
    return parsed.success ? [[name, parsed.data]] : [];
  });
  return { ...USUAL_SETTINGS, ...Object.fromEntries(good) };
}

export async function readSettings(path: string, disk: Disk = localDisk): Promise<Settings> {
  return settingsIn(await readKept(path, disk));
}

/** Null when they are saved, else why not. */
export async function writeSettings(
  path: string,
  settings: Settings,
  disk: Disk = localDisk,
): Promise<FileError | null> {
  const kept = await readKept(path, disk);
  return writeKept(path, { ...(isTable(kept) ? kept : {}), ...settings }, disk);
}
