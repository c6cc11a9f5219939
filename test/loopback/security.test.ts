/**
 * Who may speak to the loopback host: each way in that is known for servers on a machine's own address, tried
 * over real HTTP. (DNS rebinding, cross-site requests, path traversal: as OWASP describes them; from memory.)
 */
import fs from 'node:fs';
import { request } from 'node:http';
import { connect } from 'node:net';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { FRAME_TYPE, packFrame, unpackFrame } from '../../app/host/frame.ts';
import { type Loopback, startLoopback } from '../../app/loopback/server.ts';
import { FolderService } from '../../app/services/folders.ts';
import { reveal } from '../../app/services/reveal.ts';
import { USUAL_SETTINGS, writeSettings } from '../../app/services/settings.ts';
import type { StudioServices } from '../../app/services/studio-services.ts';
import { enterLoopback } from '../../renderer/host/loopback.ts';
import { browserFetch, newPlaces, servicesOf, studioFolder } from '../host/worlds.ts';

const places = newPlaces();
let services: StudioServices;
let server: Loopback;
let secret: string;
const log: string[] = [];

beforeAll(async () => {
  services = servicesOf(places);
  const folders = new FolderService(services.handles, [{ title: 'Home', path: places.root }]);
  server = await startLoopback({
    services,
    folders,
    studio: studioFolder(places.root),
    reveal: (path) => reveal(path, 'linux'),
    log: (line) => log.push(line),
  });
  const word = new URL(server.invite()).hash.slice(1);
  const origin = `http://127.0.0.1:${server.port}`;
  secret = (await enterLoopback(origin, word, browserFetch(origin)))!;
});
afterAll(async () => {
  await server.close();
  await services.close();
  fs.rmSync(places.root, { recursive: true, force: true });
});

interface Sent {
  readonly method?: string;
  readonly path?: string;
  readonly headers?: Record<string, string | undefined>;
  readonly body?: Uint8Array;
}

interface Got {
  readonly status: number;
  readonly headers: Record<string, unknown>;
  readonly body: Buffer;
}

/** A request as given, without the help of a browser; a header that is undefined is left away. */
function send({ method = 'POST', path = '/host/recent', headers = {}, body }: Sent): Promise<Got> {
  const usual: Record<string, string | undefined> = {
    host: `127.0.0.1:${server.port}`,
    origin: `http://127.0.0.1:${server.port}`,
    'content-type': FRAME_TYPE,
    'x-turnchain-secret': secret,
    'x-turnchain-window': 'windowone',
    ...headers,
  };
  const given = Object.fromEntries(Object.entries(usual).filter(([, value]) => value !== undefined));
  return new Promise((resolve, reject) => {
    const asked = request(
      {
        host: '127.0.0.1',
        port: server.port,
        method,
        path,
        headers: given as Record<string, string>,
        setHost: false,
      },
      (response) => {
        const parts: Buffer[] = [];
        response.on('data', (part: Buffer) => parts.push(part));
        response.on('error', reject);
        response.on('end', () =>
          resolve({ status: response.statusCode!, headers: response.headers, body: Buffer.concat(parts) }),
        );
      },
    );
    asked.on('error', reject);
    asked.end(method === 'GET' || method === 'HEAD' ? undefined : (body ?? packFrame([])));
  });
}

describe('a call is refused', () => {
  const port = () => server.port;
  test.each<[string, () => Sent, number]>([
    ['for another name of this machine', () => ({ headers: { host: `localhost:${port()}` } }), 421],
    ['for a name that was bent to this machine', () => ({ headers: { host: 'evil.example' } }), 421],
    [
      'for a name that only begins right',
      () => ({ headers: { host: `127.0.0.1:${port()}.evil.example` } }),
      421,
    ],
    ['for another port', () => ({ headers: { host: '127.0.0.1:80' } }), 421],
    ['from another site', () => ({ headers: { origin: 'https://evil.example' } }), 403],
    ['from another port of this machine', () => ({ headers: { origin: 'http://127.0.0.1:80' } }), 403],
    ['from this machine by another name', () => ({ headers: { origin: `http://localhost:${port()}` } }), 403],
    ['from a page without an origin', () => ({ headers: { origin: 'null' } }), 403],
    ['from what tells no origin', () => ({ headers: { origin: undefined } }), 403],
    ['from another site by a browser’s word', () => ({ headers: { 'sec-fetch-site': 'cross-site' } }), 403],
    ['without the secret', () => ({ headers: { 'x-turnchain-secret': undefined } }), 401],
    ['with an empty secret', () => ({ headers: { 'x-turnchain-secret': '' } }), 401],
    [
      'with a secret of the right length',
      () => ({ headers: { 'x-turnchain-secret': 'x'.repeat(secret.length) } }),
      401,
    ],
    [
      'with the secret in the address',
      () => ({ path: `/host/recent?secret=${secret}`, headers: { 'x-turnchain-secret': undefined } }),
      401,
    ],
    ['by GET', () => ({ method: 'GET' }), 405],
    ['by OPTIONS', () => ({ method: 'OPTIONS' }), 405],
    ['by PUT', () => ({ method: 'PUT' }), 405],
    ['as a form', () => ({ headers: { 'content-type': 'application/x-www-form-urlencoded' } }), 415],
    [
      'as plain text, which needs no leave of the browser',
      () => ({ headers: { 'content-type': 'text/plain' } }),
      415,
    ],
    ['as JSON', () => ({ headers: { 'content-type': 'application/json' } }), 415],
    ['with a body that is no frame', () => ({ body: Buffer.from('hello') }), 400],
    ['with a frame that says it is longer', () => ({ body: new Uint8Array([255, 255, 255, 255, 1]) }), 400],
    ['with a frame that names bytes it has not', () => ({ body: frameNaming(0, 10) }), 400],
    ['with more than its kind may have', () => ({ body: new Uint8Array(70 * 1024) }), 413],
    ['without a window', () => ({ headers: { 'x-turnchain-window': undefined } }), 400],
    [
      'with a window’s name that is a path',
      () => ({ headers: { 'x-turnchain-window': '../../etc/x' } }),
      400,
    ],
    ['from a window that was never opened', () => ({}), 409],
  ])('%s', async (_, sent, status) => {
    const got = await send(sent());
    expect(got.status).toBe(status);
    expect(got.headers['access-control-allow-origin']).toBeUndefined();
    expect(got.body.toString()).not.toContain(secret);
  });
});

function frameNaming(offset: number, length: number): Uint8Array {
  const json = Buffer.from(JSON.stringify([{ $bytes: [offset, length] }]));
  const head = Buffer.alloc(4);
  head.writeUInt32BE(json.length);
  return Buffer.concat([head, json]);
}

describe('a page of an open window', () => {
  let stream: ReturnType<typeof request>;
  beforeAll(
    () =>
      new Promise<void>((resolve, reject) => {
        stream = request(
          {
            host: '127.0.0.1',
            port: server.port,
            method: 'POST',
            path: '/host/events',
            headers: {
              origin: `http://127.0.0.1:${server.port}`,
              'content-type': FRAME_TYPE,
              'x-turnchain-secret': secret,
              'x-turnchain-window': 'windowone',
            },
          },
          (response) => response.once('data', () => resolve()),
        );
        stream.on('error', reject);
        stream.end(packFrame([]));
      }),
  );
  afterAll(() => {
    stream.on('error', () => undefined);
    stream.destroy();
  });

  test('may call', async () => {
    const got = await send({});
    expect([got.status, unpackFrame(got.body)]).toEqual([200, []]);
  });

  test.each<[string, string, readonly unknown[]]>([
    ['a call that there is not', 'constructor', []],
    ['a call of the object itself', '__proto__', []],
    ['a choice that only the desktop has, with too much', 'chooseFile', ['x']],
    ['too few values', 'read', []],
    ['too many', 'read', ['a', 'b']],
    ['a number for a handle', 'read', [1]],
    ['a list for a handle', 'read', [['a']]],
    ['text for bytes', 'save', ['a', 'bytes', null, '']],
    ['a desk that is a path', 'keep', ['../../x', { title: '', handle: null, stamp: null, document: {} }]],
    ['a desk that is a name of every object', 'forget', ['constructor']],
    ['a picture that is a path', 'keepPicture', ['desk', '../x', new Uint8Array(1)]],
    [
      'more in an entry than there is',
      'keep',
      ['desk', { title: '', handle: null, stamp: null, document: {}, path: '/x' }],
    ],
    ['settings that are none', 'saveSettings', [{ theme: 'neon' }]],
    ['an answer that is none', 'close', ['perhaps']],
    ['a folder call with a path for its kind', 'folders.list', ['x', '/']],
    ['a folder call that there is not', 'folders.constructor', []],
  ])('is refused %s', async (_, call, values) => {
    const got = await send({ path: `/host/${call}`, body: packFrame(values) });
    expect(got.status).toBe(400);
  });

  test.each(['/etc', '..', '~', 'x', '/'])('sees no folder by the path %s', async (path) => {
    const got = await send({ path: '/host/folders.list', body: packFrame([path, true]) });
    expect(unpackFrame(got.body)).toMatchObject({ ok: false, error: { code: 'unknown-handle' } });
  });

  test.each([
    '../x',
    '..',
    '.',
    '.hidden',
    'a/b',
    'a\\b',
    'a:b',
    'a\u0000b',
    'CON',
    'nul.turnchain',
    'a.',
    '',
    ' ',
    'x'.repeat(250),
  ])('names no file %j', async (name) => {
    const roots = unpackFrame((await send({ path: '/host/folders.roots' })).body) as {
      folder: { handle: string };
    }[];
    for (const call of ['newFile', 'newFolder']) {
      const body = packFrame([roots[0]!.folder.handle, name]);
      const got = await send({ path: `/host/folders.${call}`, body });
      expect(unpackFrame(got.body)).toMatchObject({ ok: false, error: { code: 'bad-name' } });
    }
  });

  test('gets no invitation by an old word', async () => {
    const word = new URL(server.invite()).hash.slice(1);
    const enter = () => send({ path: '/host/enter', body: packFrame([word]) });
    expect((await enter()).status).toBe(200);
    expect((await enter()).status).toBe(401);
    for (const wrong of ['', 'x', word.slice(1), `${word}x`]) {
      expect((await send({ path: '/host/enter', body: packFrame([wrong]) })).status).toBe(401);
    }
  });
});

describe('files', () => {
  test('are those of the studio, with a strict policy', async () => {
    const got = await send({ method: 'GET', path: '/' });
    expect([got.status, got.headers['content-type']]).toEqual([200, 'text/html; charset=utf-8']);
    expect(got.headers['x-content-type-options']).toBe('nosniff');
    expect(got.headers['cache-control']).toBe('no-store');
    const policy = String(got.headers['content-security-policy']);
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("script-src 'self';");
    expect(policy).not.toMatch(/unsafe|\*|https?:/);
    for (const shut of ['frame-ancestors', 'base-uri', 'form-action'])
      expect(policy).toContain(`${shut} 'none'`);
  });

  test.each([
    '/../../../../etc/passwd',
    '/%2e%2e/%2e%2e/etc/passwd',
    '/..%2f..%2fetc%2fpasswd',
    '/assets/../../data/settings.json',
    '/assets\\..\\..\\x',
    '//etc/passwd',
    '/assets',
    '/assets/',
    '/assets/studio.js.map',
    '/assets/studio.js%00.html',
    '/index.html/',
    'http://127.0.0.1/index.html',
    '/constructor',
    '/__proto__',
  ])('are not to be had by %s', async (path) => {
    expect((await send({ method: 'GET', path })).status).toBe(404);
  });

  test('have the maker’s theme before any script runs', async () => {
    const page = async () => String((await send({ method: 'GET', path: '/' })).body);
    expect(await page()).toContain('<html lang="en" data-theme="system">');
    await writeSettings(services.places.settings, { ...USUAL_SETTINGS, theme: 'dark' });
    expect(await page()).toContain('<html lang="en" data-theme="dark">');
    // What the renderer is built from has the words that are looked for.
    const built = fs.readFileSync(join(import.meta.dirname, '../../renderer/index.html'), 'utf8');
    expect(built).toContain('<html lang="en" data-theme="system">');
  });

  test.each(['aff', 'dic'])('may be a dictionary (.%s), as text', async (ending) => {
    const { status, headers } = await send({ method: 'GET', path: `/assets/words.${ending}` });
    expect([status, headers['content-type']]).toEqual([200, 'text/plain; charset=utf-8']);
  });

  test('are only read, and not by another name of the machine', async () => {
    expect((await send({ method: 'DELETE', path: '/index.html' })).status).toBe(405);
    expect((await send({ method: 'GET', path: '/', headers: { host: 'evil.example' } })).status).toBe(421);
  });
});

test('listens on 127.0.0.1 and on no other address of this machine', async () => {
  const others = ['::1', '127.0.0.2'];
  for (const host of others) {
    const reached = await new Promise<boolean>((resolve) => {
      const socket = connect({ host, port: server.port, timeout: 1_000 });
      socket
        .once('connect', () => resolve(true))
        .once('error', () => resolve(false))
        .once('timeout', () => resolve(false));
      socket.unref();
    });
    expect(reached).toBe(false);
  }
});

test('a body that is told to be too long is not waited for', async () => {
  const socket = connect(server.port, '127.0.0.1');
  const said: string[] = [];
  socket.on('data', (part) => said.push(part.toString()));
  socket.write(
    [
      'POST /host/keep HTTP/1.1',
      `host: 127.0.0.1:${server.port}`,
      `origin: http://127.0.0.1:${server.port}`,
      `content-type: ${FRAME_TYPE}`,
      `x-turnchain-secret: ${secret}`,
      'content-length: 99999999999',
      '',
      'x',
    ].join('\r\n'),
  );
  await new Promise<void>((resolve) => socket.once('close', () => resolve()));
  expect(said.join('')).toMatch(/^HTTP\/1\.1 413 /);
});

test('says nothing of secrets, and nothing at all while all is well', () => {
  expect(log).toEqual([]);
});
