/**
 * What a maker is told of each fault that a disk has, while saving and while work is kept; and what is left of
 * settings and of a journal that this version does not understand. `failing-disk.test.ts` tries every step.
 */
import fs from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Disk } from '../../app/services/disk.ts';
import { StudioHost } from '../../app/services/studio-host.ts';
import { compose } from '../../core/document/compose.ts';
import { readContainer, writeContainer } from '../../core/document/container.ts';
import { project } from '../../core/document/project.ts';
import { blank } from '../document/containers.ts';
import { newPlaces, type Places, servicesOf, testShell } from '../host/worlds.ts';
import { broken, failingDisk, type Step } from './failing-disk.ts';

const titled = (title: string) => compose({ ...blank, about: { ...blank.about, title } });
const before = writeContainer(titled('Before'), new Map());
const after = writeContainer(titled('After'), new Map());

let places: Places;
let path: string;
/** What fails just now. */
let failing: { readonly step: Step; readonly within: string; readonly code: string } | null;

beforeEach(() => {
  places = newPlaces();
  path = join(places.folder, 'vest.turnchain');
  fs.writeFileSync(path, before);
  failing = null;
});
afterEach(() => fs.rmSync(places.root, { recursive: true, force: true }));

const disk: Disk = failingDisk((step, at) => {
  if (failing === null || failing.step !== step || !at.startsWith(failing.within)) return;
  // Of what is opened, only what is to be written.
  if (step === 'open' && !at.endsWith('.part')) return;
  throw broken(failing.code);
});

function windowOn(by: Disk) {
  const services = servicesOf(places, { disk: by });
  const { shell, choose } = testShell([], []);
  const host = new StudioHost({ services, shell, window: 'w', lookMs: 60_000 });
  return { host, choose, services };
}

const titleAt = (at: string): string => {
  const read = readContainer(fs.readFileSync(at));
  return read.ok ? read.document.firstChild!.firstChild!.textContent : read.error.code;
};

/** Fault codes are those of errno(3); the sentences are the program's. */
const FAILURES: readonly (readonly [Step, string, string])[] = [
  ['open', 'ENOSPC', 'disk-full'],
  ['writeFile', 'ENOSPC', 'disk-full'],
  ['writeFile', 'EDQUOT', 'disk-full'],
  ['writeFile', 'EIO', 'disk-failed-to-save'],
  ['sync', 'EIO', 'disk-failed-to-save'],
  ['open', 'EACCES', 'no-permission-to-save'],
  ['open', 'EROFS', 'read-only'],
  ['rename', 'EPERM', 'no-permission-to-save'],
  ['rename', 'EBUSY', 'in-use'],
  ['rename', 'EIO', 'disk-failed-to-save'],
];

describe('a save that fails', () => {
  test.each(FAILURES)('at %s with %s says %s, and the file is as it was', async (step, code, said) => {
    const { host, choose } = windowOn(disk);
    choose(path);
    const file = (await host.chooseFile())!;
    const read = await host.read(file.handle);
    if (!read.ok) throw new Error(read.error.message);
    failing = { step, within: places.folder, code };
    const saved = await host.save(file.handle, after, read.value.stamp, 'After');
    expect(saved).toMatchObject({ ok: false, error: { code: said } });
    expect(titleAt(path)).toBe('Before');
    expect(fs.readdirSync(places.folder)).toEqual(['vest.turnchain']);
    failing = null;
    expect(await host.save(file.handle, after, read.value.stamp, 'After')).toMatchObject({ ok: true });
    expect(titleAt(path)).toBe('After');
    await host.dispose();
  });

  test('because its folder is gone says so, and loses nothing', async () => {
    const { host, choose } = windowOn(disk);
    choose(join(places.folder, 'deep', 'new.turnchain'));
    const file = (await host.chooseSave('new'))!;
    expect(await host.save(file.handle, after, null, '')).toMatchObject({
      ok: false,
      error: { code: 'missing-folder' },
    });
    await host.dispose();
  });
});

describe('where only the program’s own folder fails', () => {
  test.each(FAILURES)('at %s with %s, the file is saved all the same, and it is said', async (step, code) => {
    const { host, choose } = windowOn(disk);
    choose(path);
    const file = (await host.chooseFile())!;
    const read = await host.read(file.handle);
    if (!read.ok) throw new Error(read.error.message);
    failing = { step, within: places.data, code };
    const saved = await host.save(file.handle, after, read.value.stamp, 'After');
    if (!saved.ok) throw new Error(saved.error.message);
    expect(titleAt(path)).toBe('After');
    expect(saved.value.notKept).toMatch(/\.$/);
    await host.dispose();
  });

  test.each(FAILURES)(
    'at %s with %s, the journal says so and keeps the state before',
    async (step, code, said) => {
      const { host } = windowOn(disk);
      const entry = (title: string) => ({
        title,
        handle: null,
        stamp: null,
        document: titled(title).toJSON(),
      });
      expect(await host.keep('desk', entry('Before'))).toEqual({ ok: true, value: null });
      failing = { step, within: places.data, code };
      expect(await host.keep('desk', entry('After'))).toMatchObject({ ok: false, error: { code: said } });
      failing = null;
      await host.dispose();
      const next = windowOn(disk).host;
      expect(await next.recovered()).toMatchObject([{ desk: 'desk', title: 'Before' }]);
      expect(await next.recover('desk')).toMatchObject({ ok: true });
      await next.dispose();
    },
  );

  test('settings and recent files that cannot be kept stop nothing', async () => {
    const { host, choose } = windowOn(disk);
    failing = { step: 'open', within: places.data, code: 'ENOSPC' };
    choose(path);
    const file = (await host.chooseFile())!;
    expect(await host.read(file.handle)).toMatchObject({ ok: true });
    const { settings } = await host.start();
    await host.saveSettings({ ...settings, theme: 'dark' });
    expect(await host.recent()).toEqual([]);
    await host.dispose();
  });
});

test('a damaged settings file gives the usual settings and is put aside; strange fields stay', async () => {
  const { host, services } = windowOn(disk);
  const { settings: kept } = services.places;
  fs.mkdirSync(dirname(kept), { recursive: true });
  fs.writeFileSync(kept, '{"theme": "dark", ');
  const usual = (await host.start()).settings;
  expect(usual.theme).toBe('system');
  expect(fs.readdirSync(dirname(kept))).toContain(`${basename(kept)}.damaged`);
  fs.writeFileSync(kept, JSON.stringify({ theme: 'neon', terms: 'uk', textScale: 900, ofLater: { a: 1 } }));
  expect((await host.start()).settings).toEqual({ ...usual, terms: 'uk' });
  await host.saveSettings({ ...usual, theme: 'light' });
  expect(JSON.parse(fs.readFileSync(kept, 'utf8'))).toMatchObject({ theme: 'light', ofLater: { a: 1 } });
  await host.dispose();
});

test('work in the journal that a later version wrote is not offered, not read and not removed', async () => {
  const { host, services } = windowOn(disk);
  const folder = join(services.places.journal, 'desk-of-later');
  fs.mkdirSync(folder, { recursive: true });
  const later = JSON.stringify({ format: 'turnchain-journal', version: 99, secret: 'of later' });
  fs.writeFileSync(join(folder, 'work.json'), later);
  expect(await host.recovered()).toEqual([]);
  expect(fs.readFileSync(join(folder, 'work.json'), 'utf8')).toBe(later);
  await host.dispose();
});

test('work that an earlier version kept before an upgrade is given back as a pattern of today', async () => {
  const { host, services } = windowOn(disk);
  const folder = join(services.places.journal, 'desk-of-old');
  fs.mkdirSync(folder, { recursive: true });
  const old = fs.readFileSync(new URL('../document/files/version-1.turnchain', import.meta.url));
  const { document } = JSON.parse(strFromU8(unzipSync(old)['pattern.json']!));
  const time = '2026-01-05T08:00:00.000Z';
  const work = {
    format: 'turnchain-journal',
    version: 1,
    file: 1,
    title: 'Old hat',
    path: null,
    stamp: null,
  };
  fs.writeFileSync(join(folder, 'work.json'), JSON.stringify({ ...work, time, document }));
  expect(await host.recovered()).toMatchObject([{ desk: 'desk-of-old', title: 'Old hat', time }]);
  const given = await host.recover('desk-of-old');
  const read = given.ok ? readContainer(given.value.bytes) : null;
  expect(read).toMatchObject({ ok: true, migratedFrom: null });
  const pattern = read?.ok ? project(read.document) : null;
  expect(pattern?.pieces.map(({ name }) => name)).toEqual(['Hat']);
  expect(given).toMatchObject({ value: { asides: {} } });
  await host.dispose();
});
