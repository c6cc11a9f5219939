/** Finds the host of this page: the desktop shell's bridge where there is one, else the loopback host. */
import type { ReactNode } from 'react';
import type { Host } from '../../app/host/host.ts';

declare global {
  interface Window {
    /** Put there by the desktop shell's preload. */
    readonly turnchain?: Host;
  }
}

export interface FoundHost {
  readonly host: Host;
  /** What the host itself shows over the window (a browser page has no native file dialogs); null for none. */
  readonly overlay: ReactNode;
}

export function findHost(): FoundHost {
  if (window.turnchain !== undefined) return { host: window.turnchain, overlay: null };
  throw new Error('There is no host.');
}
