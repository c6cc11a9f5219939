/**
 * Hosts of every kind over a folder of their own, for the one contract that they are held to: in this process,
 * and over real HTTP as a page speaks to it.
 */
import fs from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { type MainIpc, passEvents, serveBridge } from '../../app/desktop/main-bridge.ts';
import { type PageIpc, pageBridge } from '../../app/desktop/page-bridge.ts';
import type { Folders } from '../../app/host/folders.ts';
import type { FileRef, Host } from '../../app/host/host.ts';
import { startLoopback } from '../../app/loopback/server.ts';
import type { Disk } from '../../app/services/disk.ts';
import { FolderService } from '../../app/services/folders.ts';
import { StudioHost, type WindowShell } from '../../app/services/studio-host.ts';
import { StudioServices } from '../../app/services/studio-services.ts';
import type { Chooser } from '../../renderer/host/chooser.ts';
import { hostOver } from '../../renderer/host/desktop.ts';
import { enterLoopback, loopbackHost } from '../../renderer/host/loopback.ts';

/** A window as a contract sees it: its host, and a way to say what the maker will choose. */
export interface TestWindow {
  readonly host: Host;
  /** The path that the next dialog gives, or null for none. */
  choose(path: string | null): void;
  close(): Promise<void>;
}

export interface World {
  /** A folder for the maker's files. */
  readonly folder: string;
  /** The program's data folder. */
  readonly data: string;
  /** Addresses that were opened and paths that were shown. */
  readonly opened: string[];
  readonly revealed: string[];
  window(open?: string): Promise<TestWindow>;
  close(): Promise<void>;
}

export interface WorldOptions {
  readonly disk?: Disk;
  readonly now?: () => number;
}

export interface Places {
  readonly root: string;
  readonly folder: string;
  readonly data: string;
}

/** Folders of a world, made anew. */
export function newPlaces(): Places {
  const root = fs.realpathSync(fs.mkdtempSync(join(tmpdir(), 'host-')));
  const folder = join(root, 'patterns');
  fs.mkdirSync(folder);
  return { root, folder, data: join(root, 'data') };
}

export function servicesOf({ root, data }: Places, options: WorldOptions = {}): StudioServices {
  return new StudioServices({ data, home: root, platform: 'linux', ...options });
}

/** A shell whose dialogs give what they are told. */
export function testShell(opened: string[], revealed: string[]) {
  let next: string | null = null;
  const chosen = async () => {
    const path = next;
    next = null;
    return path;
  };
  const shell: WindowShell = {
    kind: 'desktop',
    chooseFile: chosen,
    chooseSave: chosen,
    chooseFolder: chosen,
    reveal: async (path) => {
      revealed.push(path);
      return true;
    },
    openLink: async (address) => {
      opened.push(address);
      return true;
    },
    newWindow: async () => undefined,
    close: async () => undefined,
  };
  return {
    shell,
    choose: (path: string | null) => {
      next = path;
    },
  };
}

/** Hosts in this process, without anything between. */
export async function plainWorld(options: WorldOptions = {}): Promise<World> {
  const places = newPlaces();
  const services = servicesOf(places, options);
  const hosts: StudioHost[] = [];
  const opened: string[] = [];
  const revealed: string[] = [];
  return {
    ...places,
    opened,
    revealed,
    window: async (open) => {
      const { shell, choose } = testShell(opened, revealed);
      const host = new StudioHost({
        services,
        shell,
        window: `w${hosts.length}`,
        open: open ?? null,
        lookMs: 20,
      });
      hosts.push(host);
      return { host, choose, close: () => host.dispose() };
    },
    close: async () => {
      for (const host of hosts) await host.dispose();
      await services.close();
      fs.rmSync(places.root, { recursive: true, force: true });
    },
  };
}

/** Electron's two ends as plain objects: values are copied on the way, as they are between processes. */
function ipcPair() {
  const answers = new Map<string, Parameters<MainIpc['handle']>[1]>();
  const listeners = new Map<string, ((event: unknown, ...values: unknown[]) => void)[]>();
  const send = (channel: string, ...values: unknown[]) => {
    const copies = values.map((value) => structuredClone(value));
    for (const listener of listeners.get(channel) ?? []) listener(null, ...copies);
  };
  const main: MainIpc = { handle: (channel, answer) => void answers.set(channel, answer) };
  const page: PageIpc = {
    invoke: async (channel, ...values) => {
      const answer = answers.get(channel);
      if (answer === undefined) throw new Error(`nobody hears ${channel}`);
      const sender = { address: 'turnchain://studio/index.html', isMainFrame: true };
      const copies = values.map((value) => structuredClone(value));
      return structuredClone(await answer({ sender, window: 1, reply: send }, ...copies));
    },
    on: (channel, listener) => listeners.set(channel, [...(listeners.get(channel) ?? []), listener]),
  };
  return { main, page, send };
}

/** Hosts behind the desktop's bridge, both its ends, with plain objects for Electron's. */
export async function bridgedWorld(options: WorldOptions = {}): Promise<World> {
  const world = await plainWorld(options);
  return {
    ...world,
    window: async (open) => {
      const plain = await world.window(open);
      const { main, page, send } = ipcPair();
      serveBridge(main, (window) => (window === 1 ? (plain.host as StudioHost) : null));
      passEvents(plain.host as StudioHost, send);
      return { ...plain, host: hostOver(pageBridge(page)) };
    },
  };
}

/** What a maker does in the dialog of the page: goes to the folder, picks or names. */
async function choosePath(
  folders: Folders,
  kind: 'open' | 'save' | 'folder',
  path: string,
): Promise<FileRef> {
  const [root] = await folders.roots();
  if (root === undefined) throw new Error('no place to begin from');
  const at = kind === 'folder' ? path : dirname(path);
  const above = dirname(at) === at ? [] : at.split('/').slice(1);
  let here = root.folder;
  for (;;) {
    const listed = await folders.list(here.handle, true);
    if (!listed.ok) throw new Error(listed.error.message);
    if (listed.value.above === null) break;
    here = listed.value.above;
  }
  for (const name of above) {
    const listed = await folders.list(here.handle, true);
    const next = listed.ok && listed.value.items.find(({ ref }) => ref.name === name);
    if (!next) throw new Error(`no folder ${name}`);
    here = next.ref;
  }
  if (kind === 'folder') return here;
  if (kind === 'save') {
    const made = await folders.newFile(here.handle, path.slice(at.length + 1));
    if (!made.ok) throw new Error(made.error.message);
    return made.value.file;
  }
  const listed = await folders.list(here.handle, true);
  const file = listed.ok && listed.value.items.find(({ ref }) => ref.name === path.slice(at.length + 1));
  if (!file) throw new Error('no such file');
  return file.ref;
}

/** A folder with a page in it, in place of the built studio. */
export function studioFolder(root: string): string {
  const studio = join(root, 'studio');
  fs.mkdirSync(join(studio, 'assets'), { recursive: true });
  fs.writeFileSync(
    join(studio, 'index.html'),
    '<!doctype html>\n<html lang="en" data-theme="system"><title>Studio</title></html>',
  );
  fs.writeFileSync(join(studio, 'assets', 'words.dic'), '1\nyarn\n');
  fs.writeFileSync(join(studio, 'assets', 'words.aff'), 'SET UTF-8\n');
  fs.writeFileSync(join(studio, 'assets', 'studio.js'), 'export {};');
  fs.writeFileSync(join(studio, 'assets', 'studio.js.map'), '{}');
  return studio;
}

/** Fetches as a page of this origin does: a browser says where a call comes from, and no page can keep it back. */
export const browserFetch =
  (origin: string): typeof fetch =>
  (input, init) => {
    const headers = new Headers(init?.headers);
    headers.set('origin', origin);
    return fetch(input, { ...init, headers });
  };

let windows = 0;

/** Hosts over HTTP, as a page has them. */
export async function loopbackWorld(options: WorldOptions = {}): Promise<World> {
  const places = newPlaces();
  const services = servicesOf(places, options);
  const opened: string[] = [];
  const revealed: string[] = [];
  const servers: Awaited<ReturnType<typeof startLoopback>>[] = [];
  const hosts: ReturnType<typeof loopbackHost>[] = [];
  const folders = new FolderService(services.handles, [{ title: 'Home', path: places.root }]);
  const start = async (open: string | null) => {
    const server = await startLoopback({
      services,
      folders,
      studio: studioFolder(places.root),
      open,
      graceMs: 50,
      lookMs: 20,
      reveal: async (path) => {
        revealed.push(path);
        return true;
      },
    });
    servers.push(server);
    return server;
  };
  return {
    ...places,
    opened,
    revealed,
    window: async (open) => {
      const server = open === undefined && servers[0] ? servers[0] : await start(open ?? null);
      const origin = `http://127.0.0.1:${server.port}`;
      const browser = browserFetch(origin);
      const secret = await enterLoopback(origin, new URL(server.invite()).hash.slice(1), browser);
      if (secret === null) throw new Error('not let in');
      let next: string | null = null;
      const chooser: Chooser = async ({ kind }, from) => {
        const path = next;
        next = null;
        return path === null ? null : choosePath(from, kind, path);
      };
      const host = loopbackHost({
        origin,
        secret,
        window: `window${String(++windows).padStart(4, '0')}`,
        fetch: browser,
        chooser,
        openAddress: (address) => opened.push(address),
        closePage: () => undefined,
      });
      hosts.push(host);
      return {
        host,
        choose: (path) => {
          next = path;
        },
        close: async () => {
          host.leave();
          host.end();
          await new Promise((resolve) => setTimeout(resolve, 150));
        },
      };
    },
    close: async () => {
      for (const host of hosts) host.end();
      for (const server of servers) await server.close();
      await services.close();
      fs.rmSync(places.root, { recursive: true, force: true });
    },
  };
}
