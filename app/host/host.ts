/**
 * What the studio asks of the machine it runs on, as one interface: files, recovery, printing, settings,
 * windows. The desktop shell and the loopback host implement it over the same services, and one contract test
 * holds both to it. Types only: nothing here runs, and nothing here names a path that a page could send back
 * (a page holds handles, which a dialog or the command line gave).
 */
import type { Finding } from '../../core/finding.ts';
import type { Edition, Paper } from '../../core/print/style.ts';
import type { Terms } from '../../core/trade/stitches.ts';

/** Why something was not done, in words for the maker. `code` is stable and may be acted on. */
export interface HostError {
  readonly code: string;
  readonly message: string;
}

export type Answer<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly error: HostError };

/** A file or folder that the maker chose. `handle` is a secret of this run of the host; the rest is for showing. */
export interface FileRef {
  readonly handle: string;
  /** "vest.turnchain". */
  readonly name: string;
  /** The folder it is in, as the maker knows it. */
  readonly folder: string;
}

/** Which state of a file was read or written: it differs as soon as another program changed the file. */
export type Stamp = string;

export interface OpenedFile {
  readonly file: FileRef;
  readonly bytes: Uint8Array;
  readonly stamp: Stamp;
  /** The file may be read but not changed. */
  readonly readOnly: boolean;
  /** Another window has it open for writing. */
  readonly heldElsewhere: boolean;
}

export interface SavedFile {
  readonly file: FileRef;
  readonly stamp: Stamp;
  /** The file is saved, but the version before could not be put aside: why, in a sentence. Null when it was. */
  readonly notKept: string | null;
}

export interface RecentFile {
  readonly file: FileRef;
  readonly title: string;
  /** ISO time of the last opening or saving. */
  readonly time: string;
  /** False when there is no file at the place any more. */
  readonly there: boolean;
}

export interface ExampleFile {
  readonly name: string;
  readonly title: string;
}

/** Work found in the journal that no file holds. */
export interface Recovered {
  readonly desk: string;
  readonly title: string;
  /** The file it belongs to; null for a pattern never saved. */
  readonly file: FileRef | null;
  /** ISO time of the last change kept. */
  readonly time: string;
  /** The file on disk was changed after the work began from it: restoring opens a copy, never over the file. */
  readonly fileIsNewer: boolean;
}

/** A version that a save put aside. */
export interface KeptVersion {
  readonly id: string;
  readonly time: string;
  readonly bytes: number;
}

/** A state of the work, for the journal. */
export interface JournalEntry {
  readonly title: string;
  readonly handle: string | null;
  readonly stamp: Stamp | null;
  /** The document's tree as JSON, as it stands in a pattern file. */
  readonly document: unknown;
  /** Words typed for a form and not put in yet, by what they are for. */
  readonly asides?: Asides | undefined;
}

/** Words by what they were typed for; no part of the document. */
export type Asides = Readonly<Record<string, string>>;

/** Work from the journal: a pattern file of it, and what was typed beside it. */
export interface RecoveredWork {
  readonly bytes: Uint8Array;
  readonly asides: Asides;
}

export interface Settings {
  readonly theme: 'system' | 'light' | 'dark';
  /** Terms and units that new patterns begin in. */
  readonly terms: Terms;
  readonly units: 'metric' | 'imperial';
  readonly spelling: boolean;
  /** Width of the manuscript's text relative to the usual, 0.8 to 2. */
  readonly textScale: number;
}

export interface PrintChoice {
  readonly terms: Terms;
  readonly paper: Paper;
  readonly edition: Edition;
  /** Id of the size that is printed alone; null = all sizes. */
  readonly size: string | null;
  /** Id of the person whose own sheet is printed in place of a pattern for sale. */
  readonly person?: string | undefined;
}

/** The work to print: pictures are those given to the desk with `keepPicture`. */
export interface PrintJob {
  readonly desk: string;
  readonly document: unknown;
}

export interface PrintedBooklet {
  readonly pdf: Uint8Array;
  readonly pages: number;
  /** What could not be printed as it stands. */
  readonly findings: readonly Finding[];
  /** The text of a shop's listing for it; null for a sheet that is not for sale. */
  readonly listing: string | null;
}

/** A page of an edition of which a shop gets a picture. */
export interface PicturedPage {
  readonly terms: Terms;
  /** From 1. */
  readonly page: number;
}

export interface ExportRequest {
  readonly terms: readonly Terms[];
  readonly papers: readonly Paper[];
  readonly editions: readonly Edition[];
  /** Ids of sizes, null for the booklet with all of them. */
  readonly sizes: readonly (string | null)[];
  /** Ids of people whose own sheets are wanted besides. */
  readonly people?: readonly string[] | undefined;
  /** Whether the report for a human editor is wanted besides. */
  readonly report?: boolean | undefined;
  /**
   * What is written in place of loose PDFs: an archive for a shop for each of the terms, with the PDFs, the listing and
   * the pictures of these pages; or the errata against a kept version of a file, for each of the terms and papers.
   */
  readonly as?:
    | { readonly kind: 'pack'; readonly pages: readonly PicturedPage[] }
    | { readonly kind: 'errata'; readonly handle: string; readonly version: string }
    | undefined;
  /** PNG of each page that a pack names, in their order. */
  readonly pictures?: readonly Uint8Array[] | undefined;
  /** Handle of the folder that the files go into. */
  readonly folder: string;
}

export interface ExportStep {
  readonly file: string;
  /** From 1. */
  readonly number: number;
  readonly of: number;
  readonly page: number;
  /** 0 while the file is being laid out. */
  readonly pages: number;
}

export interface ExportReport {
  readonly files: readonly { readonly file: FileRef; readonly pages: number; readonly bytes: number }[];
  readonly findings: readonly Finding[];
  /** What goes beyond a marketplace's limits, and how many errata there are: sentences. */
  readonly notes: readonly string[];
  /** Texts of listings, for packs. */
  readonly listings: readonly { readonly terms: Terms; readonly text: string }[];
  /** Why it ended before all was written; null when nothing is missing. */
  readonly stopped: 'interrupted' | HostError | null;
}

export interface About {
  readonly version: string;
  readonly platform: 'mac' | 'windows' | 'linux';
  readonly shell: 'desktop' | 'browser';
}

/** What the window begins with. */
export interface Start {
  readonly about: About;
  /** A file given on the command line or by the desktop. */
  readonly open: FileRef | null;
  readonly settings: Settings;
  readonly recent: readonly RecentFile[];
  readonly recovered: readonly Recovered[];
  readonly examples: readonly ExampleFile[];
}

/** Commands that the native menu may send; the studio's own command list knows each by this name. */
export type MenuCommand = string;

export type HostEvent =
  | { readonly kind: 'changed-on-disk'; readonly handle: string }
  | { readonly kind: 'gone-from-disk'; readonly handle: string }
  | { readonly kind: 'open'; readonly file: FileRef }
  | { readonly kind: 'command'; readonly command: MenuCommand }
  /** The window is about to be closed: answer with `close`. */
  | { readonly kind: 'close-asked' };

export interface Host {
  start(): Promise<Start>;

  /** Lets the maker choose; null when nothing was chosen. */
  chooseFile(): Promise<FileRef | null>;
  chooseSave(suggested: string): Promise<FileRef | null>;
  chooseFolder(): Promise<FileRef | null>;

  /** Reads a pattern's bytes, claims the file for this window, remembers it as recent, watches it for changes. */
  read(handle: string): Promise<Answer<OpenedFile>>;
  /**
   * Saves in one step, keeping the version before. With a stamp that is no longer the file's, nothing is written
   * and the error is `changed-on-disk` or `gone-from-disk`; null writes all the same. A file that another window
   * has open is never written (`held-elsewhere`). `title` is for the recent list.
   */
  save(handle: string, bytes: Uint8Array, stamp: Stamp | null, title: string): Promise<Answer<SavedFile>>;
  /** Gives the file up: another window may have it, changes are no longer told. */
  release(handle: string): Promise<void>;
  example(name: string): Promise<Answer<Uint8Array>>;

  /** Newest first. */
  versions(handle: string): Promise<readonly KeptVersion[]>;
  version(handle: string, id: string): Promise<Answer<Uint8Array>>;

  /** Journals a state of the work at a desk (a random name that the studio gives each document it opens). */
  keep(desk: string, entry: JournalEntry): Promise<Answer<null>>;
  /** Gives the desk a picture; needed once, before `keep`, `print` or `export` of a document that shows it. */
  keepPicture(desk: string, id: string, bytes: Uint8Array): Promise<Answer<null>>;
  /** The work is saved or given up: the journal forgets it. */
  forget(desk: string): Promise<void>;
  recovered(): Promise<readonly Recovered[]>;
  /** The pattern file's bytes for work in the journal. It stays there until `forget`. */
  recover(desk: string): Promise<Answer<RecoveredWork>>;

  print(job: PrintJob, choice: PrintChoice, signal?: AbortSignal): Promise<Answer<PrintedBooklet>>;
  export(
    job: PrintJob,
    request: ExportRequest,
    progress: (step: ExportStep) => void,
    signal?: AbortSignal,
  ): Promise<Answer<ExportReport>>;
  /**
   * Writes a drawing into a folder that was chosen, in one step. `name` says what it shows; the file's name is made of
   * it, with `.svg`. A file of that name is replaced.
   */
  saveDrawing(folder: string, name: string, svg: string): Promise<Answer<FileRef>>;
  /** Shows a file in the system's file manager; false when that is not possible here. */
  reveal(handle: string): Promise<boolean>;

  recent(): Promise<readonly RecentFile[]>;
  forgetRecent(handle: string): Promise<void>;
  saveSettings(settings: Settings): Promise<void>;
  /** http, https and mailto only; anything else is refused. */
  openLink(address: string): Promise<boolean>;
  newWindow(): Promise<void>;
  /** Answer to `close-asked`, or the studio's own wish to close. */
  close(answer: 'close' | 'stay'): Promise<void>;

  /** Tells of events until the function given back is called. */
  listen(listener: (event: HostEvent) => void): () => void;
}
