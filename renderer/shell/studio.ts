/**
 * The studio as one object: which pattern is on the desk, which place is in front, which question is asked, and
 * everything a maker can do with files. Views read its snapshot; commands call its methods. It draws nothing
 * and knows the machine through `Host` alone.
 */

import type { Node } from 'prosemirror-model';
import type { Plugin } from 'prosemirror-state';
import type { Answer, FileRef, Host, HostEvent, OpenedFile, Settings, Start } from '../../app/host/host.ts';
import { compose } from '../../core/document/compose.ts';
import type { Pictures } from '../../core/document/media.ts';
import type { Pattern } from '../../core/document/pattern.ts';
import { startWorker } from '../analysis/start-worker.ts';
import { type Asides, Desk, type DeskFile } from '../desk/desk.ts';
import { freshId } from '../desk/identity.ts';
import { Journal } from '../desk/journal.ts';
import { fileName, pack, unpack } from '../desk/pattern-file.ts';
import { shellWords } from '../words/shell.ts';
import { afterPaint } from './after-paint.ts';

export type Place = 'write' | 'sizes' | 'materials' | 'drawings' | 'workbook' | 'review' | 'print';

/** A form or a list that a command opened over the places. One at a time. */
export type Dialog = 'new' | 'bring' | 'versions' | 'commands' | 'keys' | 'about' | 'theme';

/** What must be answered first: it stands over everything, a dialog with all that is in it included. One at a time. */
export type Question =
  | { readonly kind: 'save-before'; readonly answer: (choice: 'save' | 'lose' | 'stay') => void }
  | { readonly kind: 'give-up-words'; readonly answer: (choice: 'lose' | 'stay') => void }
  | { readonly kind: 'changed-on-disk' }
  | { readonly kind: 'not-saved'; readonly message: string; readonly again: () => void }
  | { readonly kind: 'gone-from-disk' }
  | { readonly kind: 'trouble'; readonly title: string; readonly message: string };

/** Where a view is asked to go: shown by the place that can, then taken away. */
export interface Target {
  /** Id of a node, or a name such as "notes:0". */
  readonly node: string;
  readonly from: number;
  readonly to: number;
  /** Differs for each request, so that the same place can be asked for twice. */
  readonly serial: number;
}

/** Words that tell what just happened; those that something else shows already are only heard. */
export interface Notice {
  readonly words: string;
  readonly isSeen: boolean;
}

export interface StudioView {
  readonly start: Start;
  readonly settings: Settings;
  /** Null while the start screen is shown. */
  readonly desk: Desk | null;
  readonly place: Place;
  readonly dialog: Dialog | null;
  readonly question: Question | null;
  readonly saving: boolean;
  /** What just happened, for the line at the foot and for screen readers. */
  readonly notice: Notice | null;
  readonly journalTrouble: string | null;
  readonly target: Target | null;
}

/** What the studio is made with. */
export interface StudioParts {
  readonly host: Host;
  readonly start: Start;
  /** Plugins of the manuscript for a new desk. */
  readonly plugins: (studio: Studio) => readonly Plugin[];
  readonly today: () => string;
  /** Gives the document what is being typed in a field. */
  readonly giveTyped: () => void;
}

export class Studio {
  readonly host: Host;
  readonly #parts: StudioParts;
  readonly #listeners = new Set<() => void>();
  #view: StudioView;
  #journal: Journal | null = null;
  #serial = 0;
  #holds: (() => boolean) | null = null;

  constructor(parts: StudioParts) {
    this.host = parts.host;
    this.#parts = parts;
    this.#view = {
      start: parts.start,
      settings: parts.start.settings,
      desk: null,
      place: 'write',
      dialog: null,
      question: null,
      saving: false,
      notice: null,
      journalTrouble: null,
      target: null,
    };
    parts.host.listen((event) => void this.#heard(event));
  }

  readonly view = (): StudioView => this.#view;

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  /** Today as an ISO date, for a pattern that begins. */
  today(): string {
    return this.#parts.today();
  }

  get journal(): Journal | null {
    return this.#journal;
  }

  /** Brings a place to the front. What another place was asked to show and could not is not asked again there. */
  go(place: Place): void {
    this.#change({ place, target: null });
  }

  /** Goes to words of the pattern: to the place that shows them, with the words in view. */
  goTo(node: string, from: number, to: number, place: Place = 'write'): void {
    this.#serial += 1;
    this.#change({ place, target: { node, from, to, serial: this.#serial } });
  }

  /** The place that was asked to show a target has shown it. */
  reached(serial: number): void {
    if (this.#view.target?.serial === serial) this.#change({ target: null });
  }

  /** Opens a dialog in the place of the one that is open; null closes it. */
  show(dialog: Dialog | null): void {
    this.#change({ dialog });
  }

  /** A question that another one takes the place of is answered with staying. */
  ask(question: Question | null): void {
    const before = this.#view.question;
    this.#change({ question });
    if (before !== null && 'answer' in before) before.answer('stay');
  }

  /** A dialog holds words that no pattern has, as long as `holds` says so and until the function given back is called. */
  holdWords(holds: () => boolean): () => void {
    this.#holds = holds;
    return () => {
      if (this.#holds === holds) this.#holds = null;
    };
  }

  /** Whether the open dialog has words that are nowhere else. */
  get holdsWords(): boolean {
    return this.#holds?.() ?? false;
  }

  /** Closes the open dialog, unless it holds words and the maker stays with them. */
  async dismiss(): Promise<void> {
    if (await this.#mayDropWords()) this.show(null);
  }

  async #mayDropWords(): Promise<boolean> {
    if (!this.holdsWords) return true;
    const choice = await new Promise<'lose' | 'stay'>((answer) =>
      this.ask({ kind: 'give-up-words', answer }),
    );
    if (this.#view.question?.kind === 'give-up-words') this.ask(null);
    return choice === 'lose';
  }

  tell(words: string | null): void {
    this.#change({ notice: words === null ? null : { words, isSeen: true } });
  }

  /** For screen readers alone, where something else shows it. */
  say(words: string): void {
    this.#change({ notice: { words, isSeen: false } });
  }

  trouble(title: string, message: string): void {
    this.ask({ kind: 'trouble', title, message });
  }

  async saveSettings(settings: Partial<Settings>): Promise<void> {
    const next = { ...this.#view.settings, ...settings };
    this.#change({ settings: next });
    await this.host.saveSettings(next);
  }

  /** Puts a pattern that begins on the desk; false when the maker stays with the one that is there. */
  async begin(pattern: Pattern, pictures: Pictures = new Map()): Promise<boolean> {
    // The words of the dialog that made it are in it.
    if (!(await this.#mayLeavePattern())) return false;
    await this.#letGo();
    this.#lay({ document: compose(pattern), pictures, file: null, unsaved: true, place: 'write' });
    return true;
  }

  async openChosen(): Promise<void> {
    const file = await this.host.chooseFile();
    if (file !== null) await this.open(file);
  }

  /** `read`: what the host says of the file, where it was asked already. */
  async open(file: FileRef, read?: Promise<Answer<OpenedFile>>): Promise<void> {
    if (!(await this.#mayLeave())) return;
    await this.#layRead(await (read ?? this.host.read(file.handle)));
  }

  /** Lays a file on the desk. What cannot be opened leaves what is there, with its file and its journal. */
  async #layRead(answer: Answer<OpenedFile>): Promise<void> {
    if (!answer.ok) return this.trouble(shellWords.openFailed, answer.error.message);
    const { bytes, stamp, readOnly, heldElsewhere, file: ref } = answer.value;
    const unpacked = unpack(bytes);
    if (!unpacked.ok) {
      if (ref.handle !== this.#file()?.ref.handle) await this.host.release(ref.handle);
      return this.trouble(shellWords.openFailed, unpacked.message);
    }
    await this.#letGo(ref.handle);
    this.#lay({ ...unpacked, file: { ref, stamp, readOnly, heldElsewhere }, unsaved: false, place: 'write' });
  }

  /** An example is opened as a copy of the maker's own. */
  async openExample(name: string): Promise<void> {
    if (!(await this.#mayLeave())) return;
    const answer = await this.host.example(name);
    if (!answer.ok) return this.trouble(shellWords.openFailed, answer.error.message);
    const unpacked = unpack(answer.value);
    if (!unpacked.ok) return this.trouble(shellWords.openFailed, unpacked.message);
    await this.#letGo();
    this.#lay({ ...unpacked, file: null, unsaved: false, place: 'write' });
  }

  /** Work from the journal. It opens over no file that is newer: then it is a pattern not saved yet. */
  async recover(desk: string): Promise<void> {
    const found = this.#view.start.recovered.find((work) => work.desk === desk);
    if (found === undefined || !(await this.#mayLeave())) return;
    const answer = await this.host.recover(desk);
    if (!answer.ok) return this.trouble(shellWords.openFailed, answer.error.message);
    const { bytes, asides } = answer.value;
    const unpacked = unpack(bytes);
    if (!unpacked.ok) return this.trouble(shellWords.openFailed, unpacked.message);
    let file: DeskFile | null = null;
    if (found.file !== null && !found.fileIsNewer) {
      const read = await this.host.read(found.file.handle);
      if (read.ok) {
        const { stamp, readOnly, heldElsewhere, file: ref } = read.value;
        file = { ref, stamp, readOnly, heldElsewhere };
      }
    }
    await this.#letGo(file?.ref.handle);
    this.#lay({
      ...unpacked,
      file,
      unsaved: true,
      place: 'write',
      id: desk,
      asides: new Map(Object.entries(asides)),
    });
    this.#forgetRecovered(desk);
  }

  async forgetRecent(handle: string): Promise<void> {
    await this.host.forgetRecent(handle);
    this.#change({ start: { ...this.#view.start, recent: await this.host.recent() } });
  }

  async discardRecovered(desk: string): Promise<void> {
    await this.host.forget(desk);
    this.#forgetRecovered(desk);
  }

  /** True when the pattern is in its file now. */
  async save(): Promise<boolean> {
    const file = this.#file();
    if (file === null || file.readOnly || file.heldElsewhere) return this.saveAs();
    return this.#saveIn(file.ref, file.stamp);
  }

  async saveAs(): Promise<boolean> {
    const { desk } = this.#view;
    if (desk === null) return false;
    const { pattern, file: before } = desk.view();
    const ref = await this.host.chooseSave(before?.ref.name ?? `${fileName(pattern.about.title)}.turnchain`);
    if (ref === null) return false;
    const done = await this.#saveIn(ref, null);
    if (done && before !== null && before.ref.handle !== ref.handle)
      await this.host.release(before.ref.handle);
    return done;
  }

  /** Writes over whatever is in the file's place now. */
  async saveOver(): Promise<boolean> {
    const file = this.#file();
    return file === null ? this.saveAs() : this.#saveIn(file.ref, null);
  }

  /** Takes the pattern as the disk has it, and gives up what is on the desk. */
  async takeFromDisk(): Promise<void> {
    const file = this.#file();
    if (file !== null) await this.#layRead(await this.host.read(file.ref.handle));
  }

  /** Puts an earlier version on the desk, as a change that can be saved or left. */
  async restore(id: string): Promise<void> {
    const file = this.#file();
    if (file === null) return;
    const answer = await this.host.version(file.ref.handle, id);
    if (!answer.ok) return this.trouble(shellWords.openFailed, answer.error.message);
    const unpacked = unpack(answer.value);
    if (!unpacked.ok) return this.trouble(shellWords.openFailed, unpacked.message);
    if (!(await this.#mayLeave())) return;
    const now = this.#file(); // a save before leaving gave it another stamp
    await this.#letGo(now?.ref.handle);
    this.#lay({ ...unpacked, file: now, unsaved: true, place: 'write' });
  }

  /** Lets go of what is on the desk, which is in a file or given up; false when the maker wants to stay. */
  async leave(): Promise<boolean> {
    if (!(await this.#mayLeave())) return false;
    await this.#letGo();
    return true;
  }

  /** Asks about what no file holds; false when the maker wants to stay. Nothing is let go of yet. */
  async #mayLeave(): Promise<boolean> {
    return (await this.#mayDropWords()) && (await this.#mayLeavePattern());
  }

  async #mayLeavePattern(): Promise<boolean> {
    this.#parts.giveTyped();
    if (!this.#view.desk?.isUnsaved) return true;
    const choice = await new Promise<'save' | 'lose' | 'stay'>((answer) =>
      this.ask({ kind: 'save-before', answer }),
    );
    if (this.#view.question?.kind === 'save-before') this.ask(null);
    return choice === 'lose' || (choice === 'save' && (await this.save()));
  }

  /** `kept`: handle of a file that is needed on. */
  async #letGo(kept?: string): Promise<void> {
    await this.#journal?.forget();
    const handle = this.#file()?.ref.handle;
    if (handle !== undefined && handle !== kept) await this.host.release(handle);
  }

  #file(): DeskFile | null {
    return this.#view.desk?.view().file ?? null;
  }

  /** Back to the start screen. */
  async closePattern(): Promise<void> {
    if (!(await this.leave())) return;
    this.#clear();
    const [recent, recovered] = await Promise.all([this.host.recent(), this.host.recovered()]);
    this.#change({ desk: null, dialog: null, start: { ...this.#view.start, recent, recovered } });
  }

  async #saveIn(ref: FileRef, stamp: string | null): Promise<boolean> {
    const { desk } = this.#view;
    if (desk === null) return false;
    const { document, pictures, pattern } = desk.view();
    this.#change({ saving: true });
    const answer = await this.host.save(ref.handle, pack(document, pictures), stamp, pattern.about.title);
    this.#change({ saving: false });
    if (!answer.ok) {
      const { code, message } = answer.error;
      if (code === 'changed-on-disk' || code === 'gone-from-disk') this.#notInFile(code);
      else this.ask({ kind: 'not-saved', message, again: () => void this.#saveIn(ref, stamp) });
      return false;
    }
    const { file, stamp: now, notKept } = answer.value;
    desk.savedAs({ ref: file, stamp: now, readOnly: false, heldElsewhere: false }, document);
    await this.#journal?.settle();
    if (notKept === null) this.say(shellWords.saved);
    else this.trouble(shellWords.notKept.title, shellWords.notKept.text);
    return true;
  }

  /** The file does not hold what was opened or saved: until the maker chooses, the desk alone has it. */
  #notInFile(kind: 'changed-on-disk' | 'gone-from-disk'): void {
    this.#view.desk?.notSaved();
    this.ask({ kind });
  }

  async #heard(event: HostEvent): Promise<void> {
    switch (event.kind) {
      case 'open':
        return this.open(event.file);
      case 'changed-on-disk':
      case 'gone-from-disk':
        if (this.#file()?.ref.handle === event.handle) this.#notInFile(event.kind);
        return;
      case 'close-asked':
        await this.#journal?.flush();
        return this.host.close((await this.leave()) ? 'close' : 'stay');
      case 'command':
        for (const listener of this.#commandListeners) listener(event.command);
    }
  }

  readonly #commandListeners = new Set<(command: string) => void>();

  /** Hears commands of the native menu. */
  onCommand(listener: (command: string) => void): () => void {
    this.#commandListeners.add(listener);
    return () => this.#commandListeners.delete(listener);
  }

  #lay(work: {
    document: Node;
    pictures: Pictures;
    file: DeskFile | null;
    unsaved: boolean;
    place: Place;
    id?: string;
    asides?: Asides;
  }): void {
    this.#clear();
    const desk = new Desk({
      id: work.id ?? freshId(),
      document: work.document,
      pictures: work.pictures,
      file: work.file,
      unsaved: work.unsaved,
      ...(work.asides ? { asides: work.asides } : {}),
      worker: startWorker(afterPaint),
      plugins: this.#parts.plugins(this),
    });
    this.#journal = new Journal(this.host, desk, (journalTrouble) => {
      if (journalTrouble !== this.#view.journalTrouble) this.#change({ journalTrouble });
    });
    this.ask(null);
    this.#change({ desk, place: work.place, dialog: null, target: null, notice: null });
  }

  #clear(): void {
    this.#journal?.stop();
    this.#journal = null;
    this.#view.desk?.close();
  }

  #forgetRecovered(desk: string): void {
    const recovered = this.#view.start.recovered.filter((work) => work.desk !== desk);
    this.#change({ start: { ...this.#view.start, recovered } });
  }

  #change(part: Partial<StudioView>): void {
    this.#view = { ...this.#view, ...part };
    for (const listener of this.#listeners) listener();
  }
}
