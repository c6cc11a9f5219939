/**
 * The desktop program itself, with Playwright's driver, where the runtime is there. Where it is not, the one test
 * says by its name that nothing was tried.
 */
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { _electron } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { installedRuntime } from '../../app/start/runtime.ts';

const root = resolve(import.meta.dirname, '../..');
const runtime = installedRuntime(join(root, 'node_modules', 'electron'));
const screen = process.platform !== 'linux' || Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY);

if (runtime === null || !screen) {
  const why = runtime === null ? 'the Electron runtime is not installed' : 'there is no screen';
  test(`launch not tried: ${why}`, () => {
    expect(runtime === null || !screen).toBe(true);
    console.warn(`The desktop window was not launched: ${why}.`);
  });
} else {
  describe('the desktop program', () => {
    test('opens the studio in a shut-off window and closes it', async () => {
      for (const words of [['build.config.mjs'], ['node_modules/vite/bin/vite.js', 'build']]) {
        execFileSync(process.execPath, words, { cwd: root });
      }
      const data = fs.mkdtempSync(join(tmpdir(), 'launch-'));
      const app = await _electron.launch({
        executablePath: runtime,
        args: [root, ...(process.getuid?.() === 0 ? ['--no-sandbox'] : [])],
        env: { ...(process.env as Record<string, string>), TURNCHAIN_DATA: data },
      });
      try {
        const page = await app.firstWindow();
        await page.getByRole('heading', { name: 'Turnchain' }).waitFor();
        expect(page.url()).toBe('turnchain://studio/index.html');
        const inside = await page.evaluate(() => ({
          node: 'require' in globalThis || 'process' in globalThis,
          host: Object.keys((globalThis as unknown as { turnchain: object }).turnchain).sort(),
        }));
        expect(inside.node).toBe(false);
        expect(inside.host).toContain('save');
        const outside = await page.evaluate(() =>
          fetch('https://example.com/').then(
            () => 'reached',
            () => 'refused',
          ),
        );
        expect(outside).toBe('refused');
      } finally {
        await app.close();
        fs.rmSync(data, { recursive: true, force: true });
      }
    });
  });
}
