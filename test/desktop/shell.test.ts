/** The desktop's plain parts: menus, the file it is given, the window's place, the pages it serves, the bridge. */
import fs from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { type MainIpc, serveBridge } from '../../app/desktop/main-bridge.ts';
import { menuKey, menuTemplate } from '../../app/desktop/menu.ts';
import { fileInWords } from '../../app/desktop/opened-file.ts';
import { answerPage } from '../../app/desktop/serve-pages.ts';
import { placeOn, readWindowState, writeWindowState } from '../../app/desktop/window-state.ts';
import { COMMANDS } from '../../app/host/commands.ts';
import { pagesIn } from '../../app/services/pages.ts';
import { studioFolder } from '../host/worlds.ts';

const folder = fs.mkdtempSync(join(tmpdir(), 'desktop-'));
afterAll(() => fs.rmSync(folder, { recursive: true, force: true }));

describe('the menus', () => {
  test.each([
    ['Mod-s', 'CmdOrCtrl+S'],
    ['Mod-Shift-s', 'CmdOrCtrl+Shift+S'],
    ['Alt-ArrowUp', 'Alt+Up'],
    ['Mod--', 'CmdOrCtrl+-'],
    ['Mod-=', 'CmdOrCtrl+Plus'],
    ['Mod-.', 'CmdOrCtrl+.'],
    ['F8', 'F8'],
  ])('spell %s as %s', (key, spelled) => expect(menuKey(key)).toBe(spelled));

  test.each(['darwin', 'win32', 'linux'] as const)(
    'of %s hold every command once, and send its name',
    (platform) => {
      const sent: string[] = [];
      const menus = menuTemplate(
        platform,
        (command) => sent.push(command),
        () => undefined,
      );
      const items = menus.flatMap(({ submenu }) => (Array.isArray(submenu) ? submenu : []));
      const ours = items.filter(({ label, role }) => label !== undefined && role === undefined);
      for (const item of ours) item.click?.(item as never, undefined, {} as never);
      expect(sent.sort()).toEqual(COMMANDS.map(({ name }) => name).sort());
      expect(menus.some(({ role }) => role === 'appMenu')).toBe(platform === 'darwin');
    },
  );
});

describe('the file that the program is given', () => {
  test.each([
    [['vest.turnchain'], '/home/ada/vest.turnchain'],
    [['/a/Vest.TURNCHAIN'], '/a/Vest.TURNCHAIN'],
    [['--flag', 'vest.turnchain'], '/home/ada/vest.turnchain'],
    [['--file=vest.turnchain'], null],
    [['--', '--odd.turnchain'], '/home/ada/--odd.turnchain'],
    [['.', 'notes.txt'], null],
    [[], null],
  ])('in %j is %s', (words, found) => expect(fileInWords(words, '/home/ada')).toBe(found));
});

describe('a window', () => {
  const screen = { x: 0, y: 0, width: 1920, height: 1080 };
  const second = { x: 1920, y: 0, width: 1280, height: 1024 };
  test.each([
    [{ x: 100, y: 80, width: 1280, height: 860 }, [screen], { x: 100, y: 80, width: 1280, height: 860 }],
    // On the second screen, which is not there any more.
    [{ x: 2100, y: 80, width: 1000, height: 800 }, [screen], null],
    [
      { x: 2100, y: 80, width: 1000, height: 800 },
      [screen, second],
      { x: 2100, y: 80, width: 1000, height: 800 },
    ],
    // Half off the screen, and larger than it.
    [{ x: -600, y: -40, width: 1280, height: 860 }, [screen], { x: 0, y: 0, width: 1280, height: 860 }],
    [{ x: 0, y: 0, width: 4000, height: 3000 }, [screen], { x: 0, y: 0, width: 1920, height: 1080 }],
    [{ x: 10, y: 10, width: 1, height: 1 }, [screen], null],
    [null, [screen], null],
    [{ x: 0, y: 0, width: 800, height: 600 }, [], null],
  ])('that was at %j goes, on %j, to %j', (box, screens, place) =>
    expect(placeOn(box, screens)).toEqual(place),
  );

  test('is remembered, and a damaged memory is the usual', async () => {
    const path = join(folder, 'window.json');
    const state = { box: { x: 1, y: 2, width: 900, height: 700 }, maximised: true };
    expect(await readWindowState(path)).toEqual({ box: null, maximised: false });
    await writeWindowState(path, state);
    expect(await readWindowState(path)).toEqual(state);
    for (const damage of ['{"box":', '{"box":{"x":"1"},"maximised":true}', '[]', '']) {
      fs.writeFileSync(path, damage);
      expect(await readWindowState(path)).toEqual({ box: null, maximised: false });
    }
  });
});

describe('a page of the desktop’s own scheme', () => {
  const pages = pagesIn(studioFolder(folder));
  const get = (url: string, method = 'GET') => answerPage({ url, method }, pages, async () => 'dark');

  test('is a file of the studio, with the policy', async () => {
    const page = await get('turnchain://studio/assets/studio.js');
    expect([page.status, await page.text()]).toEqual([200, 'export {};']);
    expect(page.headers.get('content-type')).toMatch(/^text\/javascript/);
    expect(page.headers.get('content-security-policy')).toContain("default-src 'none'");
    expect((await get('turnchain://studio/')).status).toBe(200);
  });

  test.each(['', 'index.html'])('has the maker’s theme before any script runs: /%s', async (path) => {
    expect(await (await get(`turnchain://studio/${path}`)).text()).toContain(
      '<html lang="en" data-theme="dark">',
    );
  });

  test('may be a dictionary, as text', async () => {
    const page = await get('turnchain://studio/assets/words.dic');
    expect([page.status, page.headers.get('content-type'), await page.text()]).toEqual([
      200,
      'text/plain; charset=utf-8',
      '1\nyarn\n',
    ]);
    expect((await get('turnchain://studio/assets/words.aff')).status).toBe(200);
  });

  test.each([
    ['turnchain://studio/../../etc/passwd', 'GET', 404],
    ['turnchain://studio/%2e%2e/%2e%2e/etc/passwd', 'GET', 404],
    ['turnchain://studio/assets/..%2f..%2fetc%2fpasswd', 'GET', 404],
    ['turnchain://studio/assets/studio.js.map', 'GET', 404],
    ['turnchain://evil/index.html', 'GET', 404],
    ['turnchain://studio/index.html', 'POST', 405],
  ])('%s by %s is %i', async (url, method, status) => expect((await get(url, method)).status).toBe(status));
});

test('the bridge takes no call from a frame, a strange page or a window it does not know', async () => {
  const answers = new Map<string, Parameters<MainIpc['handle']>[1]>();
  serveBridge({ handle: (channel, answer) => void answers.set(channel, answer) }, () => null);
  expect(answers.size).toBe(4);
  for (const answer of answers.values()) {
    for (const sender of [
      null,
      { address: 'https://example.com/', isMainFrame: true },
      { address: 'turnchain://studio/', isMainFrame: false },
      { address: 'turnchain://studio/', isMainFrame: true },
    ]) {
      const message = { sender, window: 7, reply: () => undefined };
      await expect(answer(message, 'start', [])).rejects.toThrow('may not call');
    }
  }
});
