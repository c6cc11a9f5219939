/**
 * Where the desktop window's runtime is, or why there is none: it comes with the installation, or is fetched
 * once by its own installer when that can be reached. Nothing waits long for a network that does not answer.
 */
import { spawn } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { connect } from 'node:net';
import { join } from 'node:path';

type Environment = Readonly<Record<string, string | undefined>>;

export type Runtime =
  | { readonly ok: true; readonly program: string }
  | { readonly ok: false; readonly why: string };

/** How long a connection may take, and the whole of fetching. */
const CONNECT_MS = 2_500;
const FETCH_MS = 120_000;

/** The runtime that is already there. */
export function installedRuntime(electron: string): string | null {
  const note = join(electron, 'path.txt');
  if (!existsSync(note)) return null;
  const program = join(electron, 'dist', readFileSync(note, 'utf8').trim());
  return existsSync(program) ? program : null;
}

/** Where the installer fetches from: its own setting, or its usual place. */
export function runtimeHost(env: Environment): string {
  const mirror = env.ELECTRON_MIRROR ?? env.npm_config_electron_mirror ?? '';
  return URL.canParse(mirror) ? new URL(mirror).hostname : 'github.com';
}

function isReachable(host: string): Promise<boolean> {
  return new Promise((resolve) => {
    const socket = connect({ host, port: 443, timeout: CONNECT_MS });
    const end = (reached: boolean) => () => {
      socket.destroy();
      resolve(reached);
    };
    socket.once('connect', end(true)).once('error', end(false)).once('timeout', end(false));
  });
}

function install(electron: string, stop: AbortSignal): Promise<boolean> {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, [join(electron, 'install.js')], {
      stdio: 'ignore',
      timeout: FETCH_MS,
      signal: stop,
    });
    child.once('error', () => resolve(false));
    child.once('exit', (code) => resolve(code === 0));
  });
}

/** The runtime, fetched if need be. `electron` is the folder of its package. */
export async function findRuntime(
  electron: string,
  env: Environment,
  say: (line: string) => void,
  stop: AbortSignal,
  reachable: (host: string) => Promise<boolean> = isReachable,
): Promise<Runtime> {
  const there = installedRuntime(electron);
  if (there !== null) return { ok: true, program: there };
  if (!existsSync(join(electron, 'install.js'))) {
    return { ok: false, why: 'the desktop window’s runtime is not part of this installation' };
  }
  const host = runtimeHost(env);
  // Behind a proxy only the installer knows the way.
  const proxied = env.ELECTRON_GET_USE_PROXY !== undefined;
  if (!proxied && !(await reachable(host))) {
    return { ok: false, why: `the desktop window’s runtime is not here yet, and ${host} cannot be reached` };
  }
  say('Fetching the desktop window’s runtime, once. “npm start -- --browser” does without it.');
  await install(electron, stop);
  const fetched = installedRuntime(electron);
  return fetched === null
    ? { ok: false, why: 'the desktop window’s runtime could not be fetched' }
    : { ok: true, program: fetched };
}
