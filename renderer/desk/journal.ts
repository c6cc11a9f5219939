/**
 * Keeps the work in the host's journal: within two seconds of an edit, one state at a time, never two writes of
 * one desk at once. A picture is handed over once. It decides nothing about files.
 */
import type { Host } from '../../app/host/host.ts';
import { shownPictures } from '../../core/document/media.ts';
import type { Desk } from './desk.ts';

/** After an edit, how long to wait for the next one; and how long an edit waits at the most. In milliseconds. */
const PAUSE = 400;
const LONGEST = 1_200;

export class Journal {
  readonly #host: Host;
  readonly #desk: Desk;
  readonly #stop: () => void;
  readonly #given = new Set<string>();
  #kept: unknown;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #since = 0;
  #writing: Promise<void> | null = null;
  /** Why the last state could not be kept; told once for each new reason. */
  readonly #trouble: (message: string | null) => void;

  constructor(host: Host, desk: Desk, trouble: (message: string | null) => void) {
    this.#host = host;
    this.#desk = desk;
    this.#trouble = trouble;
    this.#kept = desk.isUnsaved ? null : desk.view().document;
    this.#stop = desk.subscribe(() => this.#changed());
    this.#changed();
  }

  /** Writes what is not written yet, and resolves when it is. */
  async flush(): Promise<void> {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    while (this.#writing !== null) await this.#writing;
    if (this.#desk.view().document === this.#kept) return;
    this.#writing = this.#write().finally(() => {
      this.#writing = null;
    });
    await this.#writing;
  }

  /** The work is in a file, or given up: the journal lets go of it. */
  async forget(): Promise<void> {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    while (this.#writing !== null) await this.#writing;
    this.#kept = this.#desk.view().document;
    this.#given.clear();
    await this.#host.forget(this.#desk.id);
  }

  stop(): void {
    clearTimeout(this.#timer);
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

  #changed(): void {
    if (this.#desk.view().document === this.#kept) return;
    const now = performance.now();
    if (this.#timer === undefined) this.#since = now;
    clearTimeout(this.#timer);
    const wait = Math.max(0, Math.min(PAUSE, this.#since + LONGEST - now));
    this.#timer = setTimeout(() => void this.flush(), wait);
  }

  async #write(): Promise<void> {
    const { document, file, pattern } = this.#desk.view();
    if (!this.#desk.isUnsaved) {
      this.#kept = document; // undone back to what the file holds
      return;
    }
    try {
      await this.givePictures();
      const answer = await this.#host.keep(this.#desk.id, {
        title: pattern.about.title,
        handle: file?.ref.handle ?? null,
        stamp: file?.stamp ?? null,
        document: document.toJSON(),
      });
      if (!answer.ok) throw new Error(answer.error.message);
      this.#kept = document;
      this.#trouble(null);
    } catch (fault) {
      this.#kept = document; // the next edit tries again; the same state would fail the same way
      this.#trouble(fault instanceof Error ? fault.message : String(fault));
    }
  }
}
