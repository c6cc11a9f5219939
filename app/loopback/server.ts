/**
 * The loopback host: the studio's page and its calls over HTTP on 127.0.0.1, on a port and with a secret of
 * this run. It checks who speaks (guard), takes no more than it must (body), and hands each call to the window's
 * host. It listens on no other address and speaks to nobody.
 */
import { randomBytes } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Folders } from '../host/folders.ts';
import { FRAME_TYPE, packFrame, unpackFrame } from '../host/frame.ts';
import { BadCall, callExport, callHost, callPrint, isShortCall } from '../services/calls.ts';
import { PAGE_HEADERS } from '../services/page-policy.ts';
import { isThemed, type Page, pagesIn, themedPage } from '../services/pages.ts';
import type { StudioHost, WindowShell } from '../services/studio-host.ts';
import type { StudioServices } from '../services/studio-services.ts';
import { bodyLimit, readBody } from './body.ts';
import { callFolders, isFolderCall } from './folder-calls.ts';
import {
  CALLS_PATH,
  type GuardedRequest,
  type Refused,
  refusedAddress,
  refusedCall,
  refusedPage,
  windowOf,
} from './guard.ts';
import { Windows } from './windows.ts';

export interface LoopbackOptions {
  readonly services: StudioServices;
  readonly folders: Folders;
  /** Folder of the built studio. */
  readonly studio: string;
  /** Path of the file to begin with. */
  readonly open?: string | null;
  readonly reveal?: (path: string) => Promise<boolean>;
  readonly graceMs?: number;
  readonly emptyMs?: number;
  /** How often open files are looked at. */
  readonly lookMs?: number;
  /** The last page has been gone for a while. */
  readonly onEmpty?: () => void;
  /** A fault of ours, for the terminal. Never a secret, a handle or a maker's words. */
  readonly log?: (line: string) => void;
}

export interface Loopback {
  readonly port: number;
  /** An address that lets one page in, once: the word behind `#` is no use afterwards. */
  invite(): string;
  close(): Promise<void>;
}

const secretWord = (): string => randomBytes(24).toString('base64url');

/** Calls of the loopback host's own: entering, events, leaving, inviting another page. */
const ENTER = 'enter';
const EVENTS = 'events';
const LEAVE = 'leave';
const INVITE = 'invite';

class LoopbackServer implements Loopback {
  readonly #options: LoopbackOptions;
  readonly #secret = secretWord();
  readonly #invitations = new Set<string>();
  readonly #pages: ReadonlyMap<string, Page>;
  readonly #windows: Windows;
  readonly #server: Server;
  #closed = false;

  constructor(options: LoopbackOptions) {
    this.#options = options;
    this.#pages = pagesIn(options.studio);
    const shell: WindowShell = {
      kind: 'browser',
      // Dialogs, windows and links are the page's own here.
      chooseFile: async () => null,
      chooseSave: async () => null,
      chooseFolder: async () => null,
      reveal: async (path) => (await options.reveal?.(path)) ?? false,
      openLink: async () => true,
      newWindow: async () => undefined,
      close: async () => undefined,
    };
    this.#windows = new Windows({
      services: options.services,
      shell,
      open: options.open ?? null,
      graceMs: options.graceMs ?? 2_000,
      emptyMs: options.emptyMs ?? 5_000,
      ...(options.lookMs === undefined ? {} : { lookMs: options.lookMs }),
      onEmpty: () => options.onEmpty?.(),
    });
    this.#server = createServer({ maxHeaderSize: 16 * 1024 }, (request, response) => {
      this.#answer(request, response).catch((fault: unknown) => this.#fail(response, fault));
    });
  }

  get port(): number {
    return (this.#server.address() as AddressInfo).port;
  }

  listen(): Promise<void> {
    return new Promise((resolve, reject) => {
      this.#server.once('error', reject);
      this.#server.listen(0, '127.0.0.1', () => resolve());
    });
  }

  invite(): string {
    const word = secretWord();
    this.#invitations.add(word);
    return `http://127.0.0.1:${this.port}/#${word}`;
  }

  async close(): Promise<void> {
    if (this.#closed) return;
    this.#closed = true;
    await this.#windows.close();
    const ended = new Promise<void>((resolve) => this.#server.close(() => resolve()));
    this.#server.closeAllConnections();
    await ended;
  }

  async #answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
    for (const [name, value] of Object.entries(PAGE_HEADERS)) response.setHeader(name, value);
    const { method = '', headers } = request;
    const path = (request.url ?? '').split('?')[0]!;
    const head: GuardedRequest = { method, path, headers };
    const stranger = refusedAddress(head, this.port);
    if (stranger !== null) return refuse(request, response, stranger);
    if (!path.startsWith(CALLS_PATH)) return this.#servePage(request, response, head);
    const call = path.slice(CALLS_PATH.length);
    const refused = refusedCall(head, this.port, call === ENTER ? null : this.#secret);
    if (refused !== null) return refuse(request, response, refused);
    const body = await readBody(request, bodyLimit(call));
    if (body === null) return refuse(request, response, { status: 413, reason: 'too long' });
    let values: unknown;
    try {
      values = unpackFrame(body);
    } catch {
      return refuse(request, response, { status: 400, reason: 'not a frame' });
    }
    try {
      await this.#carryOut(call, values, head, response);
    } catch (fault) {
      if (!(fault instanceof BadCall)) throw fault;
      refuse(request, response, { status: 400, reason: fault.message });
    }
  }

  async #servePage(request: IncomingMessage, response: ServerResponse, head: GuardedRequest): Promise<void> {
    const refused = refusedPage(head);
    if (refused !== null) return refuse(request, response, refused);
    const page = this.#pages.get(head.path);
    if (page === undefined) return refuse(request, response, { status: 404, reason: 'no such file' });
    const words = isThemed(page) ? await themedPage(page, await this.#options.services.theme()) : null;
    response.writeHead(200, { 'content-type': page.type });
    if (head.method === 'HEAD' || words !== null) {
      response.end(head.method === 'HEAD' ? undefined : words);
      return;
    }
    createReadStream(page.path)
      .on('error', () => response.destroy())
      .pipe(response);
  }

  async #carryOut(
    call: string,
    values: unknown,
    head: GuardedRequest,
    response: ServerResponse,
  ): Promise<void> {
    if (call === ENTER) return this.#enter(values, response);
    if (call === INVITE) return answer(response, this.invite());
    const name = windowOf(head);
    if (name === null) throw new BadCall('The call does not say from which window it is.');
    if (call === EVENTS) {
      response.writeHead(200, { 'content-type': 'application/x-ndjson' });
      this.#windows.attach(name, response);
      return;
    }
    if (call === LEAVE) {
      await this.#windows.leave(name);
      return answer(response, null);
    }
    const host = this.#windows.host(name);
    if (host === null) {
      response.writeHead(409).end('no such window');
      return;
    }
    return this.#callWindow(call, values, host, response);
  }

  #enter(values: unknown, response: ServerResponse): void {
    const word: unknown = Array.isArray(values) ? values[0] : null;
    if (typeof word !== 'string' || !this.#invitations.delete(word)) {
      response.writeHead(401).end('not invited');
      return;
    }
    answer(response, this.#secret);
  }

  async #callWindow(
    call: string,
    values: unknown,
    host: StudioHost,
    response: ServerResponse,
  ): Promise<void> {
    const gone = new AbortController();
    response.once('close', () => gone.abort());
    if (call === 'print') return answer(response, await callPrint(host, values, gone.signal));
    if (call === 'export') {
      let begun = false;
      const line = (value: unknown) => {
        if (!begun) response.writeHead(200, { 'content-type': 'application/x-ndjson' });
        begun = true;
        response.write(`${JSON.stringify(value)}\n`);
      };
      const report = await callExport(host, values, (step) => line({ step }), gone.signal);
      line({ answer: report });
      response.end();
      return;
    }
    if (isFolderCall(call)) return answer(response, await callFolders(this.#options.folders, call, values));
    if (!isShortCall(call)) throw new BadCall('There is no such call.');
    answer(response, await callHost(host, call, values));
  }

  #fail(response: ServerResponse, fault: unknown): void {
    if (response.destroyed) return; // the page went away in the middle of a word
    this.#options.log?.(fault instanceof Error ? (fault.stack ?? fault.message) : String(fault));
    if (response.headersSent) response.destroy();
    else response.writeHead(500).end('a fault of the host');
  }
}

function answer(response: ServerResponse, value: unknown): void {
  const frame = packFrame(value ?? null);
  response.writeHead(200, { 'content-type': FRAME_TYPE, 'content-length': frame.length }).end(frame);
}

/** Says no, and does not wait for the rest of what is being sent. */
function refuse(request: IncomingMessage, response: ServerResponse, { status, reason }: Refused): void {
  response.writeHead(status, { 'content-type': 'text/plain; charset=utf-8', connection: 'close' });
  response.end(reason, () => {
    if (!request.complete) request.destroy();
  });
}

/** Starts the host. Rejects when it cannot listen or the studio is not built. */
export async function startLoopback(options: LoopbackOptions): Promise<Loopback> {
  const server = new LoopbackServer(options);
  await server.listen();
  return server;
}
