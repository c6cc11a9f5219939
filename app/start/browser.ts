/**
 * Finds a browser that can show one page as a window of its own (Chromium's app mode), and opens it with a
 * profile of Turnchain's own, so that neither the maker's tabs nor their extensions meet the studio. Where there
 * is none, or no screen, the address is all there is. It fetches nothing.
 */
import { spawn } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { delimiter, isAbsolute, join } from 'node:path';

type Environment = Readonly<Record<string, string | undefined>>;

/** Names on the search path, and places where installers put the program. */
export function browserCandidates(platform: NodeJS.Platform, env: Environment): readonly string[] {
  if (platform === 'darwin') {
    const apps = ['Google Chrome', 'Chromium', 'Microsoft Edge'];
    const folders = ['/Applications', ...(env.HOME ? [join(env.HOME, 'Applications')] : [])];
    return folders.flatMap((folder) => apps.map((app) => `${folder}/${app}.app/Contents/MacOS/${app}`));
  }
  if (platform === 'win32') {
    const folders = [env.PROGRAMFILES, env['PROGRAMFILES(X86)'], env.LOCALAPPDATA].filter(
      (folder) => folder !== undefined,
    );
    const programs = [
      'Google\\Chrome\\Application\\chrome.exe',
      'Chromium\\Application\\chrome.exe',
      'Microsoft\\Edge\\Application\\msedge.exe',
    ];
    return folders.flatMap((folder) => programs.map((program) => `${folder}\\${program}`));
  }
  return ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'microsoft-edge'];
}

/** Whether a window can be shown at all. */
export const hasScreen = (platform: NodeJS.Platform, env: Environment): boolean =>
  platform !== 'linux' || Boolean(env.DISPLAY || env.WAYLAND_DISPLAY);

function mayRun(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** The first browser that is there; `TURNCHAIN_BROWSER` names another. Null when there is none. */
export function findBrowser(
  platform: NodeJS.Platform,
  env: Environment,
  runs: (path: string) => boolean = mayRun,
): string | null {
  const own = env.TURNCHAIN_BROWSER;
  const names = own ? [own] : browserCandidates(platform, env);
  const folders = (env.PATH ?? '').split(delimiter).filter(isAbsolute);
  for (const name of names) {
    const paths = /[\\/]/.test(name) ? [name] : folders.map((folder) => join(folder, name));
    const found = paths.find(runs);
    if (found !== undefined) return found;
  }
  return null;
}

/** Words for the browser: one page without tabs, a profile of its own, nothing fetched on the side. */
export const browserWords = (address: string, profile: string): readonly string[] => [
  `--app=${address}`,
  `--user-data-dir=${profile}`,
  '--no-first-run',
  '--no-default-browser-check',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-default-apps',
  '--disable-domain-reliability',
  '--disable-extensions',
  '--disable-features=Translate,OptimizationHints,MediaRouter,InterestFeedContentSuggestions,CertificateTransparencyComponentUpdater',
  '--disable-quic',
  '--disable-sync',
  '--metrics-recording-only',
  '--no-pings',
  '--window-size=1280,860',
];

/** A browser that fails does so at once: no sandbox, no screen. */
const FAILS_WITHIN_MS = 3_000;

export interface OpenedBrowser {
  /** Resolves when it failed soon after its start, with its exit code; never when it stays. */
  readonly failed: Promise<number>;
  /** Ends it. */
  end(): void;
}

export function openBrowser(program: string, address: string, profile: string): OpenedBrowser {
  const child = spawn(program, browserWords(address, profile), { stdio: 'ignore' });
  const begun = Date.now();
  const failed = new Promise<number>((resolve) => {
    child.once('error', () => resolve(-1));
    child.once('exit', (code) => {
      // One that hands over to a window that is open already ends well.
      if (code !== 0 && code !== null && Date.now() - begun < FAILS_WITHIN_MS) resolve(code);
    });
  });
  return { failed, end: () => child.kill() };
}
