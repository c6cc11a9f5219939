/**
 * The host of this page, whichever it is: the desktop's if there is one, else the loopback host's, into which
 * the word behind `#` lets it once. The secret is kept for this tab alone, so that it can be loaded anew.
 */
import type { Host } from '../../app/host/host.ts';
import type { Chooser } from './chooser.ts';
import { desktopHost } from './desktop.ts';
import { enterLoopback, loopbackHost } from './loopback.ts';

const KEPT = 'turnchain-secret';

async function secretHere(): Promise<string | null> {
  const word = location.hash.slice(1);
  if (word !== '') {
    // Out of sight before anything else: the address may be copied or remembered.
    history.replaceState(null, '', location.pathname);
    const secret = await enterLoopback(location.origin, word);
    if (secret !== null) sessionStorage.setItem(KEPT, secret);
  }
  return sessionStorage.getItem(KEPT);
}

/** Null when this page was not let in: its address was used before, or is from an earlier run. */
export async function hostHere(chooser: Chooser): Promise<Host | null> {
  const desktop = desktopHost(window);
  if (desktop !== null) return desktop;
  const secret = await secretHere();
  if (secret === null) return null;
  const host = loopbackHost({
    origin: location.origin,
    secret,
    window: crypto.randomUUID().replaceAll('-', ''),
    fetch: (input, init) => fetch(input, init),
    chooser,
    openAddress: (address) => void window.open(address, '_blank', 'noopener,noreferrer'),
    closePage: () => window.close(),
  });
  window.addEventListener('pagehide', () => host.leave());
  return host;
}
