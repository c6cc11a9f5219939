/** How the studio is started: which browser, which runtime, and the program itself from its start to its end. */
import { execFileSync, spawn } from 'node:child_process';
import fs from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { browserWords, findBrowser, hasScreen } from '../../app/start/browser.ts';
import { findRuntime, installedRuntime, runtimeHost } from '../../app/start/runtime.ts';
import { enterLoopback } from '../../renderer/host/loopback.ts';
import { browserFetch } from '../host/worlds.ts';

const root = resolve(import.meta.dirname, '../..');
const folder = fs.mkdtempSync(join(tmpdir(), 'start-'));
afterAll(() => fs.rmSync(folder, { recursive: true, force: true }));

describe('the browser', () => {
  test.each([
    ['linux', { PATH: '/usr/bin:/opt/x' }, '/opt/x/chromium', '/opt/x/chromium'],
    ['linux', { PATH: '/usr/bin', TURNCHAIN_BROWSER: '/own/browser' }, '/own/browser', '/own/browser'],
    ['linux', { PATH: '.:bin' }, 'bin/chromium', null],
    ['linux', {}, '/usr/bin/chromium', null],
    [
      'darwin',
      { HOME: '/Users/ada' },
      '/Users/ada/Applications/Chromium.app/Contents/MacOS/Chromium',
      '/Users/ada/Applications/Chromium.app/Contents/MacOS/Chromium',
    ],
  ] as const)('on %s with %j and %s is %s', (platform, env, there, found) =>
    expect(findBrowser(platform, env, (path) => path === there)).toBe(found),
  );

  test('shows one page with a profile of its own', () => {
    const words = browserWords('http://127.0.0.1:1/#x', '/data/browser');
    expect(words).toContain('--app=http://127.0.0.1:1/#x');
    expect(words).toContain('--user-data-dir=/data/browser');
    expect(words.every((word) => word.startsWith('--'))).toBe(true);
    expect(words).not.toContain('--no-sandbox');
  });

  test.each([
    ['linux', {}, false],
    ['linux', { DISPLAY: ':0' }, true],
    ['linux', { WAYLAND_DISPLAY: 'wayland-0' }, true],
    ['darwin', {}, true],
  ] as const)('can be seen on %s with %j: %s', (platform, env, seen) =>
    expect(hasScreen(platform, env)).toBe(seen),
  );
});

describe('the desktop’s runtime', () => {
  const never = new AbortController().signal;
  const package_ = (files: Record<string, string>): string => {
    const at = fs.mkdtempSync(join(folder, 'electron-'));
    for (const [name, text] of Object.entries(files)) {
      fs.mkdirSync(join(at, name, '..'), { recursive: true });
      fs.writeFileSync(join(at, name), text);
    }
    return at;
  };

  test('is what is installed', async () => {
    const at = package_({ 'path.txt': 'electron', 'dist/electron': '' });
    expect(await findRuntime(at, {}, () => undefined, never)).toEqual({
      ok: true,
      program: join(at, 'dist/electron'),
    });
    expect(installedRuntime(package_({ 'path.txt': 'electron' }))).toBeNull();
  });

  test('is not waited for where its place cannot be reached', async () => {
    const at = package_({ 'install.js': 'setInterval(() => {}, 1000)' });
    const found = await findRuntime(
      at,
      {},
      () => undefined,
      never,
      async () => false,
    );
    expect(found).toMatchObject({ ok: false, why: expect.stringContaining('github.com cannot be reached') });
    expect(await findRuntime(package_({}), {}, () => undefined, never)).toMatchObject({ ok: false });
  });

  test('is fetched by its own installer, and said once', async () => {
    const install = `const fs = require('fs'); fs.mkdirSync(__dirname + '/dist'); fs.writeFileSync(__dirname + '/dist/electron', ''); fs.writeFileSync(__dirname + '/path.txt', 'electron');`;
    const at = package_({ 'install.js': install, 'package.json': '{}' });
    const said: string[] = [];
    const found = await findRuntime(
      at,
      {},
      (line) => said.push(line),
      never,
      async () => true,
    );
    expect(found).toEqual({ ok: true, program: join(at, 'dist/electron') });
    expect(said).toHaveLength(1);
    const broken = package_({ 'install.js': 'process.exit(1)', 'package.json': '{}' });
    expect(
      await findRuntime(
        broken,
        {},
        () => undefined,
        never,
        async () => true,
      ),
    ).toMatchObject({ ok: false });
  });

  test.each([
    [{}, 'github.com'],
    [{ ELECTRON_MIRROR: 'https://mirror.example/electron/' }, 'mirror.example'],
    [{ ELECTRON_MIRROR: 'nonsense' }, 'github.com'],
  ])('with %j is at %s', (env, host) => expect(runtimeHost(env)).toBe(host));
});

/** Addresses of this machine's open connections that are of the process, from /proc/net/tcp: proc_net(5). */
function foreignConnections(pid: number): readonly string[] {
  const sockets = new Set(
    fs.readdirSync(`/proc/${pid}/fd`).flatMap((fd) => {
      try {
        return /^socket:\[(\d+)\]$/.exec(fs.readlinkSync(`/proc/${pid}/fd/${fd}`))?.[1] ?? [];
      } catch {
        return [];
      }
    }),
  );
  return ['tcp', 'tcp6', 'udp', 'udp6'].flatMap((table) =>
    fs
      .readFileSync(`/proc/${pid}/net/${table}`, 'utf8')
      .split('\n')
      .slice(1)
      .map((line) => line.trim().split(/\s+/))
      // Field 1 is the own end, hexadecimal: 0100007F is 127.0.0.1.
      .filter((fields) => sockets.has(fields[9] ?? '') && !fields[1]!.startsWith('0100007F:'))
      .map((fields) => `${table} ${fields[1]} ${fields[2]}`),
  );
}

describe('the program', () => {
  const run = async (words: readonly string[]) => {
    const child = spawn(process.execPath, [join(root, 'dist', 'start.mjs'), ...words], {
      env: {
        ...process.env,
        TURNCHAIN_DATA: join(folder, 'data'),
        DISPLAY: '',
        WAYLAND_DISPLAY: '',
        INIT_CWD: folder,
      },
      stdio: 'pipe',
    });
    let out = '';
    let err = '';
    child.stdout.on('data', (part) => {
      out += part;
    });
    child.stderr.on('data', (part) => {
      err += part;
    });
    const ended = new Promise<number | null>((done) => child.once('close', (code) => done(code)));
    const address = async (): Promise<string> => {
      for (;;) {
        const found = /http:\S+/.exec(out)?.[0];
        if (found !== undefined) return found;
        if (child.exitCode !== null) throw new Error(err);
        await new Promise((wait) => setTimeout(wait, 20));
      }
    };
    return { child, ended, address, said: () => out, failed: () => err };
  };

  test('serves the studio, speaks to nobody else, and ends when told', async () => {
    execFileSync(process.execPath, ['build.config.mjs'], { cwd: root });
    const studio = join(root, 'dist', 'studio', 'index.html');
    if (!fs.existsSync(studio)) {
      execFileSync(process.execPath, ['node_modules/vite/bin/vite.js', 'build', '--logLevel', 'error'], {
        cwd: root,
      });
    }
    fs.copyFileSync(join(root, 'resources/examples/boxy-vest.turnchain'), join(folder, 'vest.turnchain'));
    const started = await run(['vest.turnchain']);
    const address = new URL(await started.address());
    expect(address.hostname).toBe('127.0.0.1');
    const get = browserFetch(address.origin);
    expect((await get(address.origin)).status).toBe(200);
    expect(await enterLoopback(address.origin, address.hash.slice(1), get)).not.toBeNull();
    expect(await enterLoopback(address.origin, address.hash.slice(1), get)).toBeNull();
    if (process.platform === 'linux') expect(foreignConnections(started.child.pid!)).toEqual([]);
    started.child.kill('SIGTERM');
    expect(await started.ended).toBe(0);
    expect(started.failed()).toBe('');

    const missing = await run(['no-such.turnchain']);
    expect(await missing.ended).toBe(2);
    expect(missing.failed()).toMatch(/^There is no file “no-such\.turnchain”/);
  });
});
