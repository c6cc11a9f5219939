/**
 * What a host without dialogs of its own tells a page of the disk, so that the page can offer one: folders and
 * pattern files by handle. Types only. A page never sends a path; it sends a handle that a listing gave it, and
 * for a new file a plain name besides.
 */
import type { Answer, FileRef } from './host.ts';

export interface FolderItem {
  readonly kind: 'folder' | 'file';
  readonly ref: FileRef;
}

export interface FolderListing {
  readonly folder: FileRef;
  /** The folder that this one is in; null at the top. */
  readonly above: FileRef | null;
  /** Folders first, by name. */
  readonly items: readonly FolderItem[];
  /** There were more than are listed. */
  readonly cut: boolean;
}

/** A place to begin from: "Home", "Documents". */
export interface FolderRoot {
  readonly title: string;
  readonly folder: FileRef;
}

export interface Folders {
  roots(): Promise<readonly FolderRoot[]>;
  /** `files`: pattern files besides folders. */
  list(folder: string, files: boolean): Promise<Answer<FolderListing>>;
  /** A file that may be saved; `there`: there is one of this name already. */
  newFile(folder: string, name: string): Promise<Answer<{ readonly file: FileRef; readonly there: boolean }>>;
  newFolder(folder: string, name: string): Promise<Answer<FileRef>>;
}
