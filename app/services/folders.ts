/**
 * Lists folders by handle for a page that has no dialogs of the system. It shows folders and pattern files
 * only, reads nothing in them, and lets a page name a new file by one plain name in a folder that it was shown.
 */
import { dirname, join } from 'node:path';
import type { FolderItem, FolderListing, FolderRoot, Folders } from '../host/folders.ts';
import type { Answer, FileRef } from '../host/host.ts';
import { type Disk, faultCode, localDisk, whileSaving } from './disk.ts';
import type { Handles } from './handles.ts';
import { hostError } from './host-errors.ts';

export const ENDING = '.turnchain';

/** More than anybody scrolls through. */
const MOST_ITEMS = 2_000;
const LONGEST_NAME = 200;
/** Characters that one system or another does not have in names; Microsoft, "Naming Files, Paths, and Namespaces". */
const FORBIDDEN = /[\p{Cc}\p{Cs}<>:"/\\|?*]/u;
/** Names that Windows keeps for itself, with any ending (same source). */
const RESERVED = /^(con|prn|aux|nul|com[0-9¹²³]|lpt[0-9¹²³])(\.|$)/i;

/** The name without blanks at its ends, or null when it cannot name a file in a folder on every system. */
export function plainFileName(text: string): string | null {
  const name = text.trim();
  if (name === '' || name.length > LONGEST_NAME) return null;
  if (FORBIDDEN.test(name) || RESERVED.test(name) || name.startsWith('.') || name.endsWith('.')) return null;
  return name;
}

/** "Vest" and "Vest.turnchain" both name the pattern file "Vest.turnchain". */
export function patternFileName(text: string): string | null {
  const name = plainFileName(text);
  if (name === null) return null;
  return name.toLowerCase().endsWith(ENDING) ? name : `${name}${ENDING}`;
}

export class FolderService implements Folders {
  readonly #handles: Handles;
  readonly #places: readonly { readonly title: string; readonly path: string }[];
  readonly #disk: Disk;

  /** `places`: where looking begins; those that are not there are left out. */
  constructor(
    handles: Handles,
    places: readonly { readonly title: string; readonly path: string }[],
    disk: Disk = localDisk,
  ) {
    this.#handles = handles;
    this.#places = places;
    this.#disk = disk;
  }

  async roots(): Promise<readonly FolderRoot[]> {
    const found: FolderRoot[] = [];
    const seen = new Set<string>();
    for (const { title, path } of this.#places) {
      const entry = await this.#disk.stat(path).catch(() => null);
      if (!entry?.isDirectory() || seen.has(path)) continue;
      seen.add(path);
      found.push({ title, folder: this.#handles.refer(path, 'folder') });
    }
    return found;
  }

  async list(handle: string, files: boolean): Promise<Answer<FolderListing>> {
    const path = this.#handles.path(handle, 'folder');
    if (path === null) return { ok: false, error: hostError('unknown-handle') };
    const folder = this.#handles.refer(path, 'folder');
    const items: FolderItem[] = [];
    let cut = false;
    try {
      for (const item of await this.#disk.list(path)) {
        const kind = await this.#kindOf(path, item.name, item);
        if (kind === null || (kind === 'file' && !files)) continue;
        if (items.length === MOST_ITEMS) {
          cut = true;
          break;
        }
        items.push({ kind, ref: this.#handles.refer(join(path, item.name), kind) });
      }
    } catch (fault) {
      const gone = faultCode(fault) === 'ENOENT' || faultCode(fault) === 'ENOTDIR';
      return { ok: false, error: hostError(gone ? 'folder-gone' : 'folder-closed', folder.name) };
    }
    const order = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });
    items.sort((a, b) =>
      a.kind === b.kind ? order.compare(a.ref.name, b.ref.name) : a.kind === 'folder' ? -1 : 1,
    );
    const up = dirname(path);
    const above = up === path ? null : this.#handles.refer(up, 'folder');
    return { ok: true, value: { folder, above, items, cut } };
  }

  async newFile(
    handle: string,
    text: string,
  ): Promise<Answer<{ readonly file: FileRef; readonly there: boolean }>> {
    const folder = this.#handles.path(handle, 'folder');
    if (folder === null) return { ok: false, error: hostError('unknown-handle') };
    const name = patternFileName(text);
    if (name === null) return { ok: false, error: hostError('bad-name') };
    const path = join(folder, name);
    const there = await this.#disk.stat(path).then(
      () => true,
      () => false,
    );
    return { ok: true, value: { file: this.#handles.refer(path), there } };
  }

  async newFolder(handle: string, text: string): Promise<Answer<FileRef>> {
    const folder = this.#handles.path(handle, 'folder');
    if (folder === null) return { ok: false, error: hostError('unknown-handle') };
    const name = plainFileName(text);
    if (name === null) return { ok: false, error: hostError('bad-name') };
    const path = join(folder, name);
    try {
      await this.#disk.makeFolder(path);
    } catch (fault) {
      return { ok: false, error: whileSaving(path, fault) };
    }
    return { ok: true, value: this.#handles.refer(path, 'folder') };
  }

  /** What an item is to a maker; null for what is not shown. A link is what it leads to. */
  async #kindOf(
    folder: string,
    name: string,
    item: { isFile(): boolean; isDirectory(): boolean; isSymbolicLink(): boolean },
  ): Promise<'folder' | 'file' | null> {
    if (name.startsWith('.')) return null;
    const entry = item.isSymbolicLink() ? await this.#disk.stat(join(folder, name)).catch(() => null) : item;
    if (entry?.isDirectory()) return 'folder';
    return entry?.isFile() && name.toLowerCase().endsWith(ENDING) ? 'file' : null;
  }
}
