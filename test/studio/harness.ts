/**
 * A real browser on the real studio: the built page, the loopback host over a data folder of its own, Chromium
 * without a window. Small on purpose: what a test does in the studio, it does by mouse and keys.
 */
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { startLoopback } from '../../app/loopback/server.ts';
import type { Disk } from '../../app/services/disk.ts';
import { FolderService } from '../../app/services/folders.ts';
import { StudioServices } from '../../app/services/studio-services.ts';

const root = resolve(import.meta.dirname, '../..');
const built = join(root, 'dist/studio');

function newest(folder: string): number {
  return fs.readdirSync(folder, { withFileTypes: true }).reduce((latest, entry) => {
    const path = join(folder, entry.name);
    return Math.max(latest, entry.isDirectory() ? newest(path) : fs.statSync(path).mtimeMs);
  }, 0);
}

const isFresh = (): boolean =>
  fs.existsSync(join(built, 'index.html')) &&
  fs.statSync(join(built, 'index.html')).mtimeMs >
    Math.max(newest(join(root, 'renderer')), newest(join(root, 'core')), newest(join(root, 'app/host')));

/** Builds the page when its sources are newer. Test files that run side by side build it once. */
export async function builtStudio(): Promise<string> {
  const lock = join(root, 'dist/studio.lock');
  fs.mkdirSync(join(root, 'dist'), { recursive: true });
  for (let waited = 0; !isFresh() && waited < 240; waited++) {
    let own = false;
    try {
      fs.mkdirSync(lock);
      own = true;
    } catch {
      await new Promise((done) => setTimeout(done, 500));
    }
    if (!own) continue;
    try {
      execFileSync('npx', ['vite', 'build', '--logLevel', 'error'], { cwd: root, stdio: 'inherit' });
    } finally {
      fs.rmdirSync(lock);
    }
  }
  // A lock that a killed build left behind, or that was copied with the folder: nothing is tried on an old page.
  if (!isFresh())
    throw new Error(`The studio's page is older than its sources and was not built: remove ${lock}.`);
  return built;
}

const PROGRAMS = [
  process.env.CHROMIUM,
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
];

export interface Studio {
  /** A window on the studio of this start, at the start screen. */
  window(): Promise<Page>;
  /** The maker's own folder, which the dialogs of the page begin in. */
  readonly folder: string;
  /** What the page complained of. A test ends by holding that it is empty. */
  readonly complaints: string[];
  close(): Promise<void>;
}

export interface StudioOptions {
  /** Path of the pattern to begin with. */
  readonly open?: string;
  readonly page?: BrowserContextOptions;
  /** The disk it works on; this machine's when left out. */
  readonly disk?: Disk;
}

/** A studio in a browser, just opened. */
export async function openStudio(options: StudioOptions = {}): Promise<Studio> {
  const studio = await builtStudio();
  const places = fs.realpathSync(fs.mkdtempSync(join(tmpdir(), 'studio-')));
  const folder = join(places, 'patterns');
  fs.mkdirSync(folder);
  const services = new StudioServices({
    data: join(places, 'data'),
    home: places,
    platform: 'linux',
    ...(options.disk && { disk: options.disk }),
  });
  const folders = new FolderService(services.handles, [{ title: 'Patterns', path: folder }]);
  const server = await startLoopback({ services, folders, studio, open: options.open ?? null });
  const executablePath = PROGRAMS.find((path) => path !== undefined && fs.existsSync(path));
  const browser: Browser = await chromium.launch({
    ...(executablePath === undefined ? {} : { executablePath }),
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, ...options.page });
  const complaints: string[] = [];
  return {
    folder,
    complaints,
    window: async () => {
      const page = await context.newPage();
      page.setDefaultTimeout(45_000);
      page.on('pageerror', (fault) => complaints.push(String(fault)));
      page.on('console', (message) => {
        // The browser asks for an icon on its own account.
        if (message.type() === 'error' && !message.location().url.endsWith('/favicon.ico'))
          complaints.push(`${message.text()} ${message.location().url}`);
      });
      await page.goto(server.invite());
      return page;
    },
    close: async () => {
      await browser.close();
      await server.close();
      await services.close();
      fs.rmSync(places, { recursive: true, force: true });
    },
  };
}

/** A window with one of the examples open, its study done. */
export async function exampleIn(studio: Studio, title: RegExp): Promise<Page> {
  const page = await studio.window();
  // Work of an earlier page may stand above them, under the same title.
  const examples = page.getByRole('region', { name: 'Examples' });
  await examples.getByRole('button', { name: title }).click();
  await page
    .locator('.row .label-words', { hasText: /^(Row|Rnd) 2\b/ })
    .first()
    .waitFor();
  return page;
}
