/**
 * Keeps the work in the host's journal: within two seconds of an edit, one state at a time, never two writes of
 * one desk at once. What is being typed in a field is kept as though the field had been left. A picture is handed
 * over once. It decides nothing about files.
 */
import type { Host } from '../../app/host/host.ts';
import { shownPictures } from '../../core/document/media.ts';
import { project } from '../../core/document/project.ts';
import type { Desk, DeskView } from './desk.ts';

/** After an edit, how long to wait for the next one; and how long an edit waits at the most. In milliseconds. */
const PAUSE = 400;
const LONGEST = 1_200;
/** A state of the work, as far as the journal cares. */
interface Held extends Pick<DeskView, 'document' | 'file'> {
  readonly halfTyped: object;
}

/** After a state could not be kept: room is made on a disk without anything being typed. */
const AGAIN = 5_000;

export class Journal {
  readonly #host: Host;
  readonly #desk: Desk;
  readonly #stop: () => void;
  readonly #given = new Set<string>();
  /** The state that the host's journal was last brought up to; null when it was not. */
  #held: Held | null = null;
  /** The host's journal holds work of this desk. */
  #isKept = false;
  #timer: ReturnType<typeof setTimeout> | undefined;
  /** Since when something waits to be kept; null while nothing does. */
  #since: number | null = null;
  /** What the host is doing for this desk. One thing at a time. */
  #busy: Promise<void> | null = null;
  #stopped = false;
  /** Why the last state could not be kept; null when one was again. */
  readonly #trouble: (message: string | null) => void;

  constructor(host: Host, desk: Desk, trouble: (message: string | null) => void) {
    this.#host = host;
    this.#desk = desk;
    this.#trouble = trouble;
    this.#stop = desk.subscribe(() => this.#changed());
    this.#changed();
  }

  /** Writes what is not written yet, and resolves when it is. */
  async flush(): Promise<void> {
    this.#rest();
    while (this.#busy !== null) await this.#busy;
    if (this.#isBehind()) await this.#do(() => this.#write());
  }

  /** The work is in its file: the journal lets go of it, unless there is more, half typed in a field. */
  async settle(): Promise<void> {
    if (this.#desk.isUnsaved || this.#desk.isHalfTyped) await this.flush();
    else await this.forget();
  }

  /**
   * The work is in a file, or given up: the journal lets go of it. What is typed while it waits to do so is new
   * work, which it keeps.
   */
  async forget(): Promise<void> {
    this.#rest();
    const { document } = this.#desk.view();
    while (this.#busy !== null) await this.#busy;
    if (this.#desk.view().document !== document) return;
    await this.#do(async () => {
      this.#held = null;
      await this.#drop();
      this.#trouble(null);
    });
  }

  stop(): void {
    this.#stopped = true;
    this.#rest();
    this.#stop();
  }

  /** Gives the desk's pictures to the host, so that it can print and keep a document that shows them. */
  async givePictures(): Promise<void> {
    const { document, pictures } = this.#desk.view();
    for (const id of shownPictures(document)) {
      const picture = pictures.get(id);
      if (picture === undefined || this.#given.has(id)) continue;
      const answer = await this.#host.keepPicture(this.#desk.id, id, picture.bytes);
      if (!answer.ok) throw new Error(answer.error.message);
      this.#given.add(id);
    }
  }

  /** Whether there is work that neither the file nor the journal holds as it is. */
  #isBehind(): boolean {
    const { document, file } = this.#desk.view();
    const { halfTyped } = this.#desk;
    // Work that begins from another state of its file than the journal says would look older than the file.
    const isHeld =
      this.#held?.document === document &&
      this.#held.halfTyped === halfTyped &&
      this.#held.file?.stamp === file?.stamp;
    return !isHeld && (this.#isKept || this.#desk.isUnsaved || this.#desk.isHalfTyped);
  }

  #changed(): void {
    if (!this.#isBehind()) return;
    const now = performance.now();
    this.#since ??= now;
    this.#wait(Math.max(0, Math.min(PAUSE, this.#since + LONGEST - now)));
  }

  #wait(ms: number): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.flush(), ms);
  }

  #rest(): void {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    this.#since = null;
  }

  #do(work: () => Promise<void>): Promise<void> {
    const done = work();
    this.#busy = done
      .catch(() => undefined) // told to whoever asked for it
      .then(() => {
        this.#busy = null;
      });
    return done;
  }

  async #write(): Promise<void> {
    const { document, file, saved } = this.#desk.view();
    const { halfTyped, asides } = this.#desk;
    const typed = this.#desk.asTyped();
    try {
      // What was typed in a field was taken back, or refused: the file has it all.
      if (typed === saved && asides.size === 0) {
        if (this.#isKept) await this.#drop();
      } else {
        await this.givePictures();
        const answer = await this.#host.keep(this.#desk.id, {
          title: project(typed).about.title,
          handle: file?.ref.handle ?? null,
          stamp: file?.stamp ?? null,
          document: typed.toJSON(),
          asides: Object.fromEntries(asides),
        });
        if (!answer.ok) throw new Error(answer.error.message);
        this.#isKept = true;
      }
      this.#held = { document, file, halfTyped };
      this.#trouble(null);
    } catch (fault) {
      this.#trouble(fault instanceof Error ? fault.message : String(fault));
      if (!this.#stopped && this.#timer === undefined) this.#wait(AGAIN);
    }
  }

  async #drop(): Promise<void> {
    this.#isKept = false;
    this.#given.clear();
    await this.#host.forget(this.#desk.id);
  }
}
