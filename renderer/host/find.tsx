/**
 * Finds the host of this page, whichever it is: the desktop shell's bridge if there is one, else the loopback
 * host, into which the word behind `#` lets the page once. The secret is kept for this tab alone, so that the
 * page can be loaded anew.
 */
import type { ReactNode } from 'react';
import type { Host } from '../../app/host/host.ts';
import { Asker, FolderDialogs } from '../dialogs/folder-dialog.tsx';
import { desktopHost } from './desktop.ts';
import { enterLoopback, loopbackHost } from './loopback.ts';

export interface FoundHost {
  readonly host: Host;
  /** What the host itself shows over the window (a browser page has no native file dialogs); null for none. */
  readonly overlay: ReactNode;
}

const KEPT = 'turnchain-secret';

async function secretHere(): Promise<string | null> {
  const word = location.hash.slice(1);
  if (word !== '') {
    // Out of sight before anything else: an address is copied and remembered.
    history.replaceState(null, '', location.pathname);
    const secret = await enterLoopback(location.origin, word);
    if (secret !== null) sessionStorage.setItem(KEPT, secret);
  }
  return sessionStorage.getItem(KEPT);
}

/** Null when the page was not let in: its address was used before, or is of an earlier start. */
export async function findHost(): Promise<FoundHost | null> {
  const desktop = desktopHost(window);
  if (desktop !== null) return { host: desktop, overlay: null };
  const secret = await secretHere();
  if (secret === null) return null;
  const asker = new Asker();
  const host = loopbackHost({
    origin: location.origin,
    secret,
    window: crypto.randomUUID().replaceAll('-', ''),
    fetch: (input, init) => fetch(input, init),
    chooser: asker.ask,
    openAddress: (address) => void window.open(address, '_blank', 'noopener,noreferrer'),
    closePage: () => window.close(),
  });
  window.addEventListener('pagehide', () => host.leave());
  return { host, overlay: <FolderDialogs asker={asker} /> };
}
