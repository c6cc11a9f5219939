/**
 * The windows of the loopback host. A page is a window while its stream of events is open; when it drops, the
 * window keeps what it has for a moment, in which the same page may come back, and is then given up. Tells when
 * the last one has been gone for a while.
 */
import type { ServerResponse } from 'node:http';
import type { HostEvent } from '../host/host.ts';
import { StudioHost, type WindowShell } from '../services/studio-host.ts';
import type { StudioServices } from '../services/studio-services.ts';

export interface WindowsOptions {
  readonly services: StudioServices;
  readonly shell: WindowShell;
  /** The first window opens this file. */
  readonly open: string | null;
  /** How long a window is kept after its stream dropped. */
  readonly graceMs: number;
  /** How long there must be no window before `onEmpty` is called. */
  readonly emptyMs: number;
  readonly onEmpty: () => void;
  readonly lookMs?: number;
}

interface Window {
  readonly host: StudioHost;
  stream: ServerResponse | null;
  leaving: NodeJS.Timeout | undefined;
}

/** A stream that says nothing looks like one that broke. */
const BEAT_MS = 15_000;

export class Windows {
  readonly #options: WindowsOptions;
  readonly #windows = new Map<string, Window>();
  readonly #beat: NodeJS.Timeout;
  #empty: NodeJS.Timeout | undefined;
  #open: string | null;

  constructor(options: WindowsOptions) {
    this.#options = options;
    this.#open = options.open;
    this.#beat = setInterval(() => {
      for (const { stream } of this.#windows.values()) stream?.write('\n');
    }, BEAT_MS).unref();
  }

  /** The host of a window that is open; null for any other. */
  host(name: string): StudioHost | null {
    return this.#windows.get(name)?.host ?? null;
  }

  get count(): number {
    return this.#windows.size;
  }

  /** Opens the window's stream of events, one JSON text a line. */
  attach(name: string, stream: ServerResponse): void {
    clearTimeout(this.#empty);
    const window = this.#windows.get(name) ?? this.#create(name);
    clearTimeout(window.leaving);
    window.stream?.end(); // a page has one stream: an earlier one is dead and does not know it
    window.stream = stream;
    stream.once('close', () => {
      if (window.stream !== stream) return;
      window.stream = null;
      window.leaving = setTimeout(() => void this.leave(name), this.#options.graceMs);
    });
    stream.write('\n');
  }

  /** Gives the window up. */
  async leave(name: string): Promise<void> {
    const window = this.#windows.get(name);
    if (window === undefined) return;
    this.#windows.delete(name);
    clearTimeout(window.leaving);
    window.stream?.end();
    await window.host.dispose();
    if (this.#windows.size > 0) return;
    clearTimeout(this.#empty);
    this.#empty = setTimeout(() => this.#options.onEmpty(), this.#options.emptyMs);
  }

  async close(): Promise<void> {
    clearInterval(this.#beat);
    for (const name of [...this.#windows.keys()]) await this.leave(name);
    clearTimeout(this.#empty);
  }

  #create(name: string): Window {
    const { services, shell, lookMs = 1000 } = this.#options;
    const host = new StudioHost({ services, shell, window: name, open: this.#open, lookMs });
    this.#open = null;
    const window: Window = { host, stream: null, leaving: undefined };
    host.listen((event: HostEvent) => window.stream?.write(`${JSON.stringify(event)}\n`));
    this.#windows.set(name, window);
    return window;
  }
}
