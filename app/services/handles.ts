/**
 * Opaque names for paths. A page holds handles and never a path: only what a dialog, the command line or the
 * recent list put here can be reached, and nothing else maps to the disk. Handles are random, differ in every
 * run, and are the same for the same path within one.
 */
import { randomBytes } from 'node:crypto';
import { basename, dirname } from 'node:path';
import type { FileRef } from '../host/host.ts';

export type HandleKind = 'file' | 'folder';

interface Known {
  readonly kind: HandleKind;
  readonly path: string;
}

/** Bytes of a handle: not to be guessed. */
const BYTES = 18;

export class Handles {
  readonly #byHandle = new Map<string, Known>();
  readonly #byPath = new Map<string, string>();
  readonly #home: string;

  constructor(home: string) {
    this.#home = home;
  }

  /** The handle for an absolute path, with what may be shown of it. */
  refer(path: string, kind: HandleKind = 'file'): FileRef {
    const key = `${kind} ${path}`;
    let handle = this.#byPath.get(key);
    if (handle === undefined) {
      handle = randomBytes(BYTES).toString('base64url');
      this.#byPath.set(key, handle);
      this.#byHandle.set(handle, { kind, path });
    }
    return { handle, name: basename(path) || path, folder: this.#shown(dirname(path)) };
  }

  /** The path behind a handle of this kind; null for any other text. */
  path(handle: string, kind: HandleKind = 'file'): string | null {
    const known = this.#byHandle.get(handle);
    return known?.kind === kind ? known.path : null;
  }

  /** A folder as the maker knows it: their own begins with "~". */
  #shown(folder: string): string {
    if (folder === this.#home) return '~';
    const within = folder.startsWith(this.#home) && /^[\\/]/.test(folder.slice(this.#home.length));
    return within ? `~${folder.slice(this.#home.length)}` : folder;
  }
}
