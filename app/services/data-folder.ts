/**
 * Where the program keeps what is its own on this machine: journal, kept versions, settings. Each system has a
 * place for that. It makes nothing and reads nothing.
 *
 * Sources: Apple, File System Programming Guide ("Library/Application Support"); Microsoft, Known Folders
 * (FOLDERID_RoamingAppData); freedesktop.org, XDG Base Directory Specification 0.8 (XDG_DATA_HOME).
 */
import { isAbsolute, join } from 'node:path';

type Environment = Readonly<Record<string, string | undefined>>;

const absolute = (path: string | undefined): string | null =>
  path !== undefined && isAbsolute(path) ? path : null;

/** The data folder; `TURNCHAIN_DATA` names another, as tests and portable installations need. */
export function dataFolder(platform: NodeJS.Platform, env: Environment, home: string): string {
  const own = absolute(env.TURNCHAIN_DATA);
  if (own !== null) return own;
  if (platform === 'darwin') return join(home, 'Library', 'Application Support', 'Turnchain');
  if (platform === 'win32')
    return join(absolute(env.APPDATA) ?? join(home, 'AppData', 'Roaming'), 'Turnchain');
  return join(absolute(env.XDG_DATA_HOME) ?? join(home, '.local', 'share'), 'turnchain');
}

/** The parts of the data folder, so that nobody else spells a path. */
export interface DataPlaces {
  readonly journal: string;
  readonly versions: string;
  readonly claims: string;
  readonly recent: string;
  readonly settings: string;
  readonly window: string;
}

export function dataPlaces(folder: string): DataPlaces {
  return {
    journal: join(folder, 'journal'),
    versions: join(folder, 'versions'),
    claims: join(folder, 'claims'),
    recent: join(folder, 'recent.json'),
    settings: join(folder, 'settings.json'),
    window: join(folder, 'window.json'),
  };
}
