/**
 * The studio's host over HTTP, for a page that the loopback host served. It holds the secret of this run and the
 * name of its window, keeps the stream of events open, and puts both on every call. What the system would do in
 * a desktop window (choosing files, opening a window) the page does, through what it is given.
 */
import type { FolderListing, FolderRoot, Folders } from '../../app/host/folders.ts';
import { FRAME_TYPE, packFrame, unpackFrame } from '../../app/host/frame.ts';
import type {
  Answer,
  ExportReport,
  ExportStep,
  FileRef,
  Host,
  HostError,
  HostEvent,
} from '../../app/host/host.ts';
import type { ChooseRequest, Chooser } from './chooser.ts';
import { jsonLines } from './lines.ts';

export interface LoopbackPage {
  /** "http://127.0.0.1:41234". */
  readonly origin: string;
  readonly secret: string;
  /** Letters and figures, 8 or more: random, of this page alone. */
  readonly window: string;
  readonly fetch: typeof fetch;
  readonly chooser: Chooser;
  /** Opens an address in a browser window of its own; `own`: it is a page of this studio. */
  readonly openAddress: (address: string, own: boolean) => void;
  readonly closePage: () => void;
}

export interface LoopbackHost extends Host {
  /** Says that the page is leaving, so that what it has is free at once. Waits for nothing. */
  leave(): void;
  /** Ends the stream of events. */
  end(): void;
}

const AGAIN_MS = 300;

const GONE: HostError = {
  code: 'host-gone',
  message:
    'Turnchain’s part outside this page does not answer: it was ended. Keep this page open, start Turnchain again and save there; work up to two seconds ago is kept.',
};
const STOPPED: HostError = { code: 'interrupted', message: 'Stopped before it was done.' };

/** The host did not answer, or not as it does. */
class Unanswered extends Error {
  readonly status: number;
  constructor(status: number) {
    super(`the host answered ${status}`);
    this.status = status;
  }
}

/** Exchanges the word of an invitation, which works once, for the secret of this run; null when it does not work. */
export async function enterLoopback(
  origin: string,
  word: string,
  get: typeof fetch = fetch,
): Promise<string | null> {
  const response = await get(`${origin}/host/enter`, {
    method: 'POST',
    headers: { 'content-type': FRAME_TYPE },
    body: packFrame([word]),
  });
  if (!response.ok) return null;
  return String(unpackFrame(new Uint8Array(await response.arrayBuffer())));
}

/** Calls of one page, and its stream of events. */
class Line {
  readonly #page: LoopbackPage;
  readonly #listeners = new Set<(event: HostEvent) => void>();
  readonly #end = new AbortController();
  #attached: Promise<void>;

  constructor(page: LoopbackPage) {
    this.#page = page;
    this.#attached = this.#attach();
    this.#attached.catch(() => undefined); // the first call tells
  }

  listen(listener: (event: HostEvent) => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  end(): void {
    this.#end.abort();
    this.#listeners.clear();
  }

  /** The answer to a call; `Unanswered` when there is none. */
  async call<T>(name: string, values: readonly unknown[], signal?: AbortSignal): Promise<T> {
    const response = await this.respond(name, values, signal);
    return unpackFrame(new Uint8Array(await response.arrayBuffer())) as T;
  }

  async respond(name: string, values: readonly unknown[], signal?: AbortSignal): Promise<Response> {
    await this.#attached;
    let response = await this.post(name, values, { signal });
    if (response.status === 409) {
      // The host gave this window up: the machine slept, or the stream broke. Come back as what it was.
      this.#attached = this.#attach();
      await this.#attached;
      response = await this.post(name, values, { signal });
    }
    if (!response.ok) throw new Unanswered(response.status);
    return response;
  }

  post(
    name: string,
    values: readonly unknown[],
    { signal, keepalive = false }: { signal?: AbortSignal | undefined; keepalive?: boolean } = {},
  ): Promise<Response> {
    const { origin, secret, window, fetch: get } = this.#page;
    return get(`${origin}/host/${name}`, {
      method: 'POST',
      headers: {
        'content-type': FRAME_TYPE,
        'x-turnchain-secret': secret,
        'x-turnchain-window': window,
      },
      body: packFrame(values),
      keepalive,
      ...(signal ? { signal } : {}),
    });
  }

  /** Opens the stream, and opens it again whenever it drops. */
  async #attach(): Promise<void> {
    const response = await this.post('events', [], { signal: this.#end.signal });
    if (!response.ok || response.body === null) throw new Unanswered(response.status);
    void this.#hear(response.body);
  }

  async #hear(body: ReadableStream<Uint8Array>): Promise<void> {
    try {
      for await (const event of jsonLines(body)) {
        for (const listener of this.#listeners) listener(event as HostEvent);
      }
    } catch {
      // It broke; what matters is that it is open again.
    }
    while (!this.#end.signal.aborted) {
      await new Promise((resolve) => setTimeout(resolve, AGAIN_MS));
      if (this.#end.signal.aborted) return;
      const open = await this.#attach().then(
        () => true,
        () => false,
      );
      if (open) return;
    }
  }
}

/** The host of this page. */
export function loopbackHost(page: LoopbackPage): LoopbackHost {
  const line = new Line(page);
  const folders: Folders = {
    roots: () => line.call<readonly FolderRoot[]>('folders.roots', []),
    list: (folder, files) => asked<FolderListing>('folders.list', [folder, files]),
    newFile: (folder, name) => asked('folders.newFile', [folder, name]),
    newFolder: (folder, name) => asked('folders.newFolder', [folder, name]),
  };
  const choose = (request: ChooseRequest): Promise<FileRef | null> => page.chooser(request, folders);

  /** A call whose answer may be an error: a host that is gone is one, too. */
  async function asked<T>(
    name: string,
    values: readonly unknown[],
    signal?: AbortSignal,
  ): Promise<Answer<T>> {
    try {
      return await line.call<Answer<T>>(name, values, signal);
    } catch {
      return { ok: false, error: signal?.aborted ? STOPPED : GONE };
    }
  }

  async function exported(
    values: readonly unknown[],
    progress: (step: ExportStep) => void,
    signal?: AbortSignal,
  ): Promise<Answer<ExportReport>> {
    try {
      const response = await line.respond('export', values, signal);
      if (response.body !== null) {
        for await (const said of jsonLines(response.body)) {
          const { step, answer } = said as { step?: ExportStep; answer?: Answer<ExportReport> };
          if (step !== undefined) progress(step);
          if (answer !== undefined) return answer;
        }
      }
      return { ok: false, error: GONE };
    } catch {
      return { ok: false, error: signal?.aborted ? STOPPED : GONE };
    }
  }

  return {
    start: () => line.call('start', []),
    chooseFile: () => choose({ kind: 'open' }),
    chooseSave: (suggested) => choose({ kind: 'save', suggested }),
    chooseFolder: () => choose({ kind: 'folder' }),
    read: (handle) => asked('read', [handle]),
    save: (handle, bytes, stamp, title) => asked('save', [handle, bytes, stamp, title]),
    release: (handle) => line.call('release', [handle]),
    example: (name) => asked('example', [name]),
    versions: (handle) => line.call('versions', [handle]),
    version: (handle, id) => asked('version', [handle, id]),
    keep: (desk, entry) => asked('keep', [desk, entry]),
    keepPicture: (desk, id, bytes) => asked('keepPicture', [desk, id, bytes]),
    forget: (desk) => line.call('forget', [desk]),
    recovered: () => line.call('recovered', []),
    recover: (desk) => asked('recover', [desk]),
    print: (job, choice, signal) => asked('print', [job, choice], signal),
    export: (job, request, progress, signal) => exported([job, request], progress, signal),
    saveDrawing: (folder, name, svg) => asked('saveDrawing', [folder, name, svg]),
    reveal: (handle) => line.call('reveal', [handle]),
    recent: () => line.call('recent', []),
    forgetRecent: (handle) => line.call('forgetRecent', [handle]),
    saveSettings: (settings) => line.call('saveSettings', [settings]),
    openLink: async (address) => {
      if (!(await line.call<boolean>('openLink', [address]))) return false;
      page.openAddress(address, false);
      return true;
    },
    newWindow: async () => page.openAddress(await line.call<string>('invite', []), true),
    close: async (answer) => {
      if (answer === 'close') page.closePage();
    },
    listen: (listener) => line.listen(listener),
    leave: () => {
      line.post('leave', [], { keepalive: true }).catch(() => undefined);
    },
    end: () => line.end(),
  };
}
