/**
 * Where a window was and how large, for the next start: kept small, checked, and never off every screen (one
 * may have been unplugged). Plain functions and one small file.
 */
import * as z from 'zod';
import { type Disk, localDisk } from '../services/disk.ts';
import { readKept, writeKept } from '../services/kept-file.ts';

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface WindowState {
  readonly box: Box | null;
  readonly maximised: boolean;
}

export const USUAL_SIZE = { width: 1280, height: 860 } as const;
export const LEAST_SIZE = { width: 480, height: 400 } as const;

const side = z.number().int().min(-100_000).max(100_000);
const STATE: z.ZodType<WindowState> = z.object({
  box: z.object({ x: side, y: side, width: side, height: side }).nullable(),
  maximised: z.boolean(),
});

export async function readWindowState(path: string, disk: Disk = localDisk): Promise<WindowState> {
  const parsed = STATE.safeParse(await readKept(path, disk));
  return parsed.success ? parsed.data : { box: null, maximised: false };
}

/** A comfort: where it cannot be written, the next window is of the usual size. */
export async function writeWindowState(
  path: string,
  state: WindowState,
  disk: Disk = localDisk,
): Promise<void> {
  await writeKept(path, state, disk);
}

const overlap = (a0: number, a1: number, b0: number, b1: number): number =>
  Math.max(0, Math.min(a1, b1) - Math.max(a0, b0));

/**
 * Where the window goes: as it was, no larger than the screen that holds most of it, and wholly on it. Null when
 * no screen holds enough of it to be taken hold of.
 */
export function placeOn(box: Box | null, screens: readonly Box[]): Box | null {
  if (box === null) return null;
  const shared = (screen: Box): number =>
    overlap(box.x, box.x + box.width, screen.x, screen.x + screen.width) *
    overlap(box.y, box.y + box.height, screen.y, screen.y + screen.height);
  const best = screens.reduce<Box | null>(
    (found, screen) => (found === null || shared(screen) > shared(found) ? screen : found),
    null,
  );
  if (best === null || shared(best) < 100 * 50) return null;
  const width = Math.min(Math.max(box.width, LEAST_SIZE.width), best.width);
  const height = Math.min(Math.max(box.height, LEAST_SIZE.height), best.height);
  return {
    x: Math.min(Math.max(box.x, best.x), best.x + best.width - width),
    y: Math.min(Math.max(box.y, best.y), best.y + best.height - height),
    width,
    height,
  };
}
