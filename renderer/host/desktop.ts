/** The host of a desktop window: the one object that its preload put on the page. */
import type { Host } from '../../app/host/host.ts';

/** The name under which it stands. */
export const DESKTOP_KEY = 'turnchain';

/** Null in a page that is not in a desktop window. */
export function desktopHost(page: object): Host | null {
  return ((page as Record<string, unknown>)[DESKTOP_KEY] as Host | undefined) ?? null;
}
