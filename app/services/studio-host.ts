/**
 * The studio's host for one window, over the services of its process. The desktop shell and the loopback host
 * both use it; what differs between them (dialogs, windows) is a `WindowShell`. It keeps what belongs to the
 * window: which files and desks it has claimed, what it watches, who listens.
 */
import { join } from 'node:path';
import { readContainer } from '../../core/document/container.ts';
import { isId } from '../../core/document/words.ts';
import type {
  Answer,
  ExportReport,
  ExportRequest,
  ExportStep,
  FileRef,
  Host,
  HostError,
  HostEvent,
  JournalEntry,
  KeptVersion,
  OpenedFile,
  PrintChoice,
  PrintedBooklet,
  PrintJob,
  RecentFile,
  Recovered,
  RecoveredWork,
  SavedFile,
  Settings,
  Start,
} from '../host/host.ts';
import { Claims } from './claims.ts';
import { diskError } from './disk.ts';
import { drawingFile } from './file-names.ts';
import { loadFile, replaceFile } from './files.ts';
import type { HandleKind } from './handles.ts';
import { hostError } from './host-errors.ts';
import { linkToOpen } from './links.ts';
import type { PrintTask } from './printing-work.ts';
import { examples } from './resources.ts';
import { readStamped, realPlace, saveStamped, stampOf } from './saving.ts';
import { readSettings, writeSettings } from './settings.ts';
import { type StudioServices, titleOf } from './studio-services.ts';
import { type Change, Watching } from './watching.ts';

/** What a kind of window does in its own way. Paths stay on this side. */
export interface WindowShell {
  readonly kind: Start['about']['shell'];
  chooseFile(): Promise<string | null>;
  chooseSave(suggested: string): Promise<string | null>;
  chooseFolder(): Promise<string | null>;
  reveal(path: string): Promise<boolean>;
  /** The address has been judged. */
  openLink(address: string): Promise<boolean>;
  newWindow(): Promise<void>;
  close(answer: 'close' | 'stay'): Promise<void>;
  /** A pattern was opened or saved: for the system's own list of recent files. */
  remember?(path: string): void;
}

export interface StudioHostOptions {
  readonly services: StudioServices;
  readonly shell: WindowShell;
  /** Names the window among those of the process: letters, digits, hyphens. */
  readonly window: string;
  /** Path of the file that the window was opened for. */
  readonly open?: string | null;
  /** How often open files are looked at. */
  readonly lookMs?: number;
}

const done = { ok: true, value: null } as const;
const refused = (error: HostError): { readonly ok: false; readonly error: HostError } => ({
  ok: false,
  error: { code: error.code, message: error.message },
});
const answered = (error: HostError | null): Answer<null> => (error === null ? done : refused(error));
const deskThing = (desk: string): string => `desk ${desk}`;
const fileThing = (path: string): string => `file ${path}`;

export class StudioHost implements Host {
  readonly #services: StudioServices;
  readonly #shell: WindowShell;
  readonly #claims: Claims;
  readonly #watching: Watching;
  readonly #timer: NodeJS.Timeout;
  readonly #listeners = new Set<(event: HostEvent) => void>();
  /** Handles of the files that are open here, by real path. */
  readonly #open = new Map<string, Set<string>>();
  #toOpen: string | null;

  constructor({ services, shell, window, open = null, lookMs = 1000 }: StudioHostOptions) {
    this.#services = services;
    this.#shell = shell;
    this.#toOpen = open;
    this.#claims = new Claims({ folder: services.places.claims, window, disk: services.disk });
    this.#watching = new Watching((path, change) => this.#changed(path, change), services.disk);
    this.#timer = setInterval(() => void this.#watching.look(), lookMs).unref();
  }

  async start(): Promise<Start> {
    const { platform, version } = this.#services;
    const [settings, recent, recovered, examples] = await Promise.all([
      readSettings(this.#services.places.settings, this.#services.disk),
      this.recent(),
      this.recovered(),
      this.#services.examples(),
    ]);
    const open = this.#toOpen === null ? null : this.#refer(this.#toOpen);
    this.#toOpen = null; // a page that is loaded anew does not open it twice
    return {
      about: { version, platform, shell: this.#shell.kind },
      open,
      settings,
      recent,
      recovered,
      examples,
    };
  }

  async chooseFile(): Promise<FileRef | null> {
    return this.#chosen(await this.#shell.chooseFile(), 'file');
  }

  async chooseSave(suggested: string): Promise<FileRef | null> {
    return this.#chosen(await this.#shell.chooseSave(suggested), 'file');
  }

  async chooseFolder(): Promise<FileRef | null> {
    return this.#chosen(await this.#shell.chooseFolder(), 'folder');
  }

  async read(handle: string): Promise<Answer<OpenedFile>> {
    const path = this.#services.handles.path(handle);
    if (path === null) return refused(hostError('unknown-handle'));
    const { disk } = this.#services;
    const real = await realPlace(path, disk);
    const outcome = await readStamped(real, disk);
    if (!outcome.ok) return refused(outcome.error);
    const { bytes, stamp, readOnly } = outcome;
    const heldElsewhere = !(await this.#claims.take(fileThing(real)));
    this.#begin(real, handle, stamp);
    // The page that waits for its file does not wait for the list of files.
    void this.#remember(path, async () => {
      await new Promise((resolve) => setImmediate(resolve));
      const read = readContainer(bytes);
      return read.ok ? titleOf(read.document) : null;
    });
    return { ok: true, value: { file: this.#refer(path), bytes, stamp, readOnly, heldElsewhere } };
  }

  async save(
    handle: string,
    bytes: Uint8Array,
    stamp: string | null,
    title: string,
  ): Promise<Answer<SavedFile>> {
    const path = this.#services.handles.path(handle);
    if (path === null) return refused(hostError('unknown-handle'));
    const { disk, versions } = this.#services;
    const real = await realPlace(path, disk);
    if (!(await this.#claims.take(fileThing(real)))) return refused(diskError('held-elsewhere', path));
    const outcome = await this.#watching.during(real, async () => {
      const saved = await saveStamped(real, bytes, stamp, versions, disk);
      if (saved.ok) this.#begin(real, handle, saved.stamp);
      return saved;
    });
    if (!outcome.ok) return refused(outcome.error);
    await this.#remember(path, async () => title);
    const notKept = outcome.notKept?.message ?? null;
    return { ok: true, value: { file: this.#refer(path), stamp: outcome.stamp, notKept } };
  }

  async release(handle: string): Promise<void> {
    for (const [real, handles] of this.#open) {
      handles.delete(handle);
      if (handles.size > 0) continue;
      this.#open.delete(real);
      this.#watching.end(real);
      await this.#claims.giveUp(fileThing(real));
    }
  }

  async example(name: string): Promise<Answer<Uint8Array>> {
    const found = examples().find((example) => example.name === name);
    if (found === undefined) return refused(hostError('unknown-example', name.slice(0, 60)));
    return bytesOf(await loadFile(found.path, this.#services.disk));
  }

  async versions(handle: string): Promise<readonly KeptVersion[]> {
    const path = this.#services.handles.path(handle);
    if (path === null) return [];
    return this.#services.versions.list(await realPlace(path, this.#services.disk));
  }

  async version(handle: string, id: string): Promise<Answer<Uint8Array>> {
    const path = this.#services.handles.path(handle);
    if (path === null) return refused(hostError('unknown-handle'));
    return bytesOf(await this.#services.versions.read(await realPlace(path, this.#services.disk), id));
  }

  async keep(desk: string, entry: JournalEntry): Promise<Answer<null>> {
    if (!isId(desk)) return refused(hostError('unknown-desk'));
    await this.#claims.take(deskThing(desk));
    const { handles, journal, now } = this.#services;
    const { title, handle, stamp, document, asides = {} } = entry;
    const path = handle === null ? null : handles.path(handle);
    return answered(await journal.keep(desk, { title, path, stamp, time: isoTime(now()), document, asides }));
  }

  async keepPicture(desk: string, id: string, bytes: Uint8Array): Promise<Answer<null>> {
    if (!isId(desk) || !isId(id)) return refused(hostError('unknown-desk'));
    await this.#claims.take(deskThing(desk));
    return answered(await this.#services.journal.keepPicture(desk, id, bytes));
  }

  async forget(desk: string): Promise<void> {
    if (!isId(desk)) return;
    await this.#services.journal.forget(desk);
    await this.#claims.giveUp(deskThing(desk));
  }

  async recovered(): Promise<readonly Recovered[]> {
    const found: Recovered[] = [];
    for (const desk of await this.#services.journal.desks()) {
      const work = await this.#recoveredAt(desk);
      if (work !== null) found.push(work);
    }
    return found.sort((a, b) => (a.time < b.time ? 1 : -1));
  }

  async recover(desk: string): Promise<Answer<RecoveredWork>> {
    if (!isId(desk)) return refused(hostError('unknown-desk'));
    const restored = await this.#services.journal.restore(desk);
    if (!restored.ok) return refused(restored.error);
    return { ok: true, value: { bytes: restored.bytes, asides: restored.asides } };
  }

  async print(job: PrintJob, choice: PrintChoice, signal?: AbortSignal): Promise<Answer<PrintedBooklet>> {
    return this.#services.printing.print(await this.#work(job), choice, signal);
  }

  async export(
    job: PrintJob,
    { folder, as, ...request }: ExportRequest,
    progress: (step: ExportStep) => void,
    signal?: AbortSignal,
  ): Promise<Answer<ExportReport>> {
    const path = this.#services.handles.path(folder, 'folder');
    if (path === null) return refused(hostError('unknown-handle'));
    const work = await this.#work(job);
    let written: Extract<PrintTask, { kind: 'export' }>['as'] = null;
    if (as?.kind === 'pack') written = as;
    if (as?.kind === 'errata') {
      const earlier = await this.version(as.handle, as.version);
      if (!earlier.ok) return earlier;
      written = { kind: 'errata', against: earlier.value };
    }
    const { printing } = this.#services;
    const outcome = await printing.export(work, request, written, path, progress, signal);
    if (!outcome.ok) return outcome;
    const files = outcome.value.files.map(({ path: at, pages, bytes }) => ({
      file: this.#refer(at),
      pages,
      bytes,
    }));
    return { ok: true, value: { ...outcome.value, files } };
  }

  async saveDrawing(folder: string, name: string, svg: string): Promise<Answer<FileRef>> {
    const path = this.#services.handles.path(folder, 'folder');
    if (path === null) return refused(hostError('unknown-handle'));
    const at = join(path, drawingFile(name));
    const fault = await replaceFile(at, Buffer.from(svg, 'utf8'), this.#services.disk);
    return fault === null ? { ok: true, value: this.#refer(at) } : refused(fault);
  }

  async reveal(handle: string): Promise<boolean> {
    const { handles } = this.#services;
    const path = handles.path(handle) ?? handles.path(handle, 'folder');
    return path !== null && this.#shell.reveal(path);
  }

  async recent(): Promise<readonly RecentFile[]> {
    const { recent } = this.#services;
    return Promise.all(
      (await recent.list()).map(async ({ path, title, time }) => ({
        file: this.#refer(path),
        title,
        time,
        there: await recent.isThere(path),
      })),
    );
  }

  async forgetRecent(handle: string): Promise<void> {
    const path = this.#services.handles.path(handle);
    if (path !== null) await this.#services.recent.remove(path);
  }

  async saveSettings(settings: Settings): Promise<void> {
    await writeSettings(this.#services.places.settings, settings, this.#services.disk);
  }

  async openLink(address: string): Promise<boolean> {
    const link = linkToOpen(address);
    return link !== null && this.#shell.openLink(link);
  }

  newWindow(): Promise<void> {
    return this.#shell.newWindow();
  }

  close(answer: 'close' | 'stay'): Promise<void> {
    return this.#shell.close(answer);
  }

  listen(listener: (event: HostEvent) => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  /** Tells the window of something that the shell noticed. */
  tell(event: HostEvent): void {
    for (const listener of this.#listeners) listener(event);
  }

  /** Asks the window to open the file at `path`. */
  tellToOpen(path: string): void {
    this.tell({ kind: 'open', file: this.#refer(path) });
  }

  /** The window is gone: what it had is free again, and unsaved work is offered to the next. */
  async dispose(): Promise<void> {
    clearInterval(this.#timer);
    this.#listeners.clear();
    for (const real of this.#open.keys()) this.#watching.end(real);
    this.#open.clear();
    await this.#claims.giveUpAll();
    await this.#services.recent.settled();
  }

  #refer(path: string): FileRef {
    return this.#services.handles.refer(path);
  }

  /** Puts a file on top of the recent ones; not when it has no title after all. */
  #remember(path: string, titled: () => Promise<string | null>): Promise<void> {
    const time = isoTime(this.#services.now());
    return this.#services.recent.add(async () => {
      const title = await titled();
      if (title === null) return null;
      this.#shell.remember?.(path);
      return { path, title, time };
    });
  }

  #chosen(path: string | null, kind: HandleKind): FileRef | null {
    return path === null ? null : this.#services.handles.refer(path, kind);
  }

  #begin(real: string, handle: string, stamp: string): void {
    const handles = this.#open.get(real) ?? new Set();
    this.#open.set(real, handles.add(handle));
    this.#watching.begin(real, stamp);
  }

  #changed(real: string, kind: Change): void {
    for (const handle of this.#open.get(real) ?? []) this.tell({ kind, handle });
  }

  async #work({ desk, document }: PrintJob) {
    const media = isId(desk) ? await this.#services.journal.pictures(desk) : new Map();
    return { document, media };
  }

  /** The work of a desk that no living window sits at; null when there is none to be offered. */
  async #recoveredAt(desk: string): Promise<Recovered | null> {
    const { journal, disk } = this.#services;
    if (this.#claims.has(deskThing(desk)) || (await this.#claims.isTaken(deskThing(desk)))) return null;
    const work = await journal.work(desk);
    if (work === null) {
      // What cannot be read may be of a newer version, and stays.
      if (await journal.isEmpty(desk)) await journal.forget(desk);
      return null;
    }
    const { title, path, stamp, time } = work;
    if (path === null) return { desk, title, file: null, time, fileIsNewer: false };
    const loaded = await loadFile(await realPlace(path, disk), disk);
    const there = loaded.ok ? stampOf(loaded.bytes) : null;
    if (there !== null && there !== stamp) {
      const restored = await journal.restore(desk);
      if (restored.ok && stampOf(restored.bytes) === there) {
        await journal.forget(desk); // it was saved, and the program ended before it could say so
        return null;
      }
    }
    return { desk, title, file: this.#refer(path), time, fileIsNewer: there !== null && there !== stamp };
  }
}

const isoTime = (ms: number): string => new Date(ms).toISOString();

function bytesOf(
  outcome:
    | { readonly ok: true; readonly bytes: Uint8Array }
    | { readonly ok: false; readonly error: HostError },
): Answer<Uint8Array> {
  return outcome.ok ? { ok: true, value: outcome.bytes } : refused(outcome.error);
}
