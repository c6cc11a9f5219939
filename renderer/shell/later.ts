/**
 * Loads the places and dialogs that no start shows, once the page rests, and at once when one is asked for sooner.
 * It holds them and draws nothing.
 */
import { useEffect, useSyncExternalStore } from 'react';
import { shellWords } from '../words/shell.ts';
import { useStudio } from './hooks.ts';

type LaterParts = typeof import('./later-parts.ts');

let parts: LaterParts | null = null;
let asked: Promise<boolean> | null = null;
const listeners = new Set<() => void>();

/** Loads them, once; false when the host did not give them. Whoever asks after that tries again. */
function loadLaterParts(): Promise<boolean> {
  asked ??= import('./later-parts.ts').then(
    (loaded) => {
      parts = loaded;
      for (const listener of listeners) listener();
      return true;
    },
    () => {
      asked = null;
      return false;
    },
  );
  return asked;
}

/** How long a page that has just been drawn is left to whoever begins to write, in milliseconds. */
const FIRST_KEYS = 1_000;

/** Loads them when the first keys have had their time and there is nothing else to do. */
export function loadLaterPartsAtRest(): void {
  setTimeout(() => requestIdleCallback(() => void loadLaterParts(), { timeout: 2_000 }), FIRST_KEYS);
}

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** The places and dialogs; null while they are being loaded, which this begins. The maker is told where that fails. */
export function useLaterParts(): LaterParts | null {
  const studio = useStudio();
  const there = useSyncExternalStore(subscribe, () => parts);
  useEffect(() => {
    void loadLaterParts().then((loaded) => {
      if (loaded) return;
      studio.show(null);
      studio.trouble(shellWords.notLoaded.title, shellWords.notLoaded.text);
    });
  }, [studio]);
  return there;
}
