/**
 * What a maker is asked about the file on the disk, in a real browser: earlier versions looked at and put back,
 * a file changed or gone behind the studio, a second window on it, and the list of those last opened.
 */
import fs from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { compose } from '../../core/document/compose.ts';
import { writeContainer } from '../../core/document/container.ts';
import { panelPattern } from '../../core/outlines/index.ts';
import { broken, failingDisk } from '../services/failing-disk.ts';
import { violations } from './axe.ts';
import { openStudio, type Studio } from './harness.ts';

let folder: string;
let file: string;
let studio: Studio;
let page: Page;
/** Whether the disk has no room for anything new. */
let isFull: boolean;
/** Whether what a file held before cannot be kept. */
let isVersionLost: boolean;

/** The bytes of a pattern of this title. */
const bytesOf = (title: string): Uint8Array =>
  writeContainer(
    compose(
      panelPattern({
        title,
        terms: 'us',
        units: 'metric',
        date: '2024-05-01',
        gauge: { stitch: 't2', stitches: 16, rows: 12, over: { value: 10, unit: 'cm' }, hookMm: 4.5 },
      }),
    ),
    new Map(),
  );

/** A window of its own on the file. */
async function openFile(): Promise<void> {
  const disk = failingDisk((step, path) => {
    if (isFull && step === 'writeFile' && path.startsWith(folder)) throw broken('ENOSPC');
    if (isVersionLost && step === 'writeFile' && path.includes('versions')) throw broken('ENOSPC');
  });
  studio = await openStudio({ open: file, disk });
  page = await studio.window();
  await title().waitFor();
}

beforeEach(async () => {
  isFull = false;
  isVersionLost = false;
  folder = fs.realpathSync(fs.mkdtempSync(join(tmpdir(), 'files-')));
  file = join(folder, 'jetty.turnchain');
  fs.writeFileSync(file, bytesOf('Jetty'));
  await openFile();
});
afterEach(async () => {
  await studio.close();
  fs.rmSync(folder, { recursive: true, force: true });
  expect(studio.complaints).toEqual([]);
});

const title = (at: Page = page) => at.locator('.manuscript .title .words').first();
const state = () => page.getByTestId('file-state').textContent();
const dialog = (name: string) => page.getByRole('dialog', { name });

/** Words put before the title. */
async function write(words: string): Promise<void> {
  await title().click();
  await page.keyboard.press('Control+Home');
  await page.keyboard.type(words);
}

/** Answers the question of where to save: in the folder shown, under this name. */
async function saveHere(name: string): Promise<void> {
  const asked = page.getByRole('dialog');
  await asked.getByLabel('Name of the file').fill(name);
  await asked.getByRole('button', { name: 'Save here' }).click();
}

async function save(): Promise<void> {
  await page.keyboard.press('Control+s');
  await expect.poll(state).toContain('· Saved');
}

test('an earlier version is looked at, and put back as a change', async () => {
  await write('Old ');
  await save();
  await write('Very ');
  await save();
  await page.keyboard.press('Control+k');
  await page.getByRole('combobox', { name: 'Command' }).fill('earlier versions');
  await page.keyboard.press('Enter');
  const versions = dialog('Earlier versions');
  const kept = versions.getByRole('listitem').getByRole('button');
  await expect.poll(() => kept.count()).toBe(2);
  // The newest first: what the last save put aside.
  await kept.first().click();
  await versions.getByText('1 row or paragraph is not as it is now; it is marked.').waitFor();
  expect(await versions.locator('.differs').textContent()).toBe('differs Old Jetty');
  for (const theme of ['light', 'dark']) {
    await page.evaluate((name) => {
      document.documentElement.dataset.theme = name;
    }, theme);
    expect(await violations(page), theme).toEqual([]);
  }
  await versions.getByRole('button', { name: 'Restore this one' }).click();
  await expect.poll(() => title().textContent()).toBe('Old Jetty');
  expect(await state()).toContain('Changes not saved');
  await save();
});

test('a file changed by another program: mine is kept, or theirs is taken', async () => {
  const asked = dialog('The file was changed by another program');
  await write('My ');
  fs.writeFileSync(file, bytesOf('Theirs'));
  await asked.waitFor();
  expect(await violations(page)).toEqual([]);
  await asked.getByRole('button', { name: 'Keep mine' }).click();
  await expect.poll(state).toContain('· Saved');
  await write('Still ');
  fs.writeFileSync(file, bytesOf('Theirs again'));
  await asked.waitFor();
  await asked.getByRole('button', { name: 'Take the one from the disk' }).click();
  await expect.poll(() => title().textContent()).toBe('Theirs again');
  expect(await state()).toContain('· Saved');
});

test('a file that is gone is saved again at its old place', async () => {
  fs.rmSync(file);
  const asked = dialog('The file is not there any more');
  await asked.waitFor();
  expect(await violations(page)).toEqual([]);
  await asked.getByRole('button', { name: 'Save at the old place' }).click();
  await expect.poll(state).toContain('· Saved');
  expect(fs.existsSync(file)).toBe(true);
});

test('a file that was moved: it stays where it is, and the pattern is saved under another name', async () => {
  const moved = join(folder, 'attic.turnchain');
  fs.renameSync(file, moved);
  const there = fs.readFileSync(moved);
  const asked = dialog('The file is not there any more');
  await asked.waitFor();
  await asked.getByRole('button', { name: 'Later' }).click();
  expect(await state()).toContain('Changes not saved');
  await write('My ');
  await page.keyboard.press('Control+s');
  await asked.getByRole('button', { name: 'Save under another name…' }).click();
  await saveHere('mine');
  await expect.poll(state).toBe('mine.turnchain · Saved');
  expect(fs.existsSync(file)).toBe(false);
  expect(fs.readFileSync(moved).equals(there)).toBe(true);
});

test('a file that may only be read is told, and saving asks for another name', async () => {
  await studio.close();
  fs.chmodSync(file, 0o444);
  const there = fs.readFileSync(file);
  await openFile();
  const strip = page.getByText('This file may only be read. Save under another name to keep changes.');
  await strip.waitFor();
  await write('My ');
  await page.keyboard.press('Control+s');
  await saveHere('mine');
  await expect.poll(state).toBe('mine.turnchain · Saved');
  expect(await strip.count()).toBe(0);
  expect(fs.readFileSync(file).equals(there)).toBe(true);
  expect(await title().textContent()).toBe('My Jetty');
});

test('a full disk is told with what can be done; what was written is still there, and saved once there is room', async () => {
  const there = fs.readFileSync(file);
  isFull = true;
  await write('My ');
  await page.keyboard.press('Control+s');
  const told = dialog('The pattern could not be saved');
  await told.getByText('The disk is full: “jetty.turnchain” could not be saved.').waitFor();
  expect(await violations(page)).toEqual([]);
  await told.getByRole('button', { name: 'Try again' }).click();
  await told.getByText('The disk is full').waitFor();
  expect(fs.readFileSync(file).equals(there)).toBe(true);
  expect(fs.readdirSync(folder)).toEqual(['jetty.turnchain']);
  expect(await title().textContent()).toBe('My Jetty');
  expect(await state()).toContain('Changes not saved');
  await told.getByRole('button', { name: 'Save under another name…' }).click();
  isFull = false;
  await saveHere('elsewhere');
  await expect.poll(state).toBe('elsewhere.turnchain · Saved');
  expect(fs.readFileSync(file).equals(there)).toBe(true);
});

test('the pattern closed is the first of those last opened, and opens from there', async () => {
  await page.keyboard.press('Control+k');
  await page.getByRole('combobox', { name: 'Command' }).fill('close pattern');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: /jetty/i }).first().click();
  await expect.poll(() => title().textContent()).toBe('Jetty');
});

test('a second window on one file is told', async () => {
  const second = await studio.window();
  await second.getByRole('button', { name: /jetty/i }).first().click();
  await title(second).waitFor();
  await second.getByText('This pattern is open in another window.').waitFor();
  expect(await violations(second)).toEqual([]);
  expect(await page.getByText('This pattern is open in another window.').count()).toBe(0);
});

test('a file that another program left unreadable is not taken: what is here stays here, unsaved', async () => {
  await write('My ');
  fs.writeFileSync(file, 'no pattern at all');
  await dialog('The file was changed by another program')
    .getByRole('button', { name: 'Take the one from the disk' })
    .click();
  await dialog('The pattern could not be opened').getByRole('button', { name: 'Close' }).click();
  expect(await title().textContent()).toBe('My Jetty');
  expect(await state()).toContain('Changes not saved');
  expect(fs.readFileSync(file, 'utf8')).toBe('no pattern at all');
});

test('a file that cannot be opened leaves the pattern on the desk with its file', async () => {
  fs.writeFileSync(join(studio.folder, 'broken.turnchain'), 'no pattern at all');
  await page.keyboard.press('Control+o');
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /^broken/ })
    .click();
  await dialog('The pattern could not be opened').getByRole('button', { name: 'Close' }).click();
  expect(await title().textContent()).toBe('Jetty');
  const second = await studio.window();
  await second.getByRole('button', { name: /jetty/i }).first().click();
  await second.getByText('This pattern is open in another window.').waitFor();
});

test('a pattern whose file holds something else now does not pass for saved', async () => {
  fs.writeFileSync(file, bytesOf('Theirs'));
  const asked = dialog('The file was changed by another program');
  await asked.getByRole('button', { name: 'Cancel' }).click();
  expect(await state()).toContain('Changes not saved');
});

test('an earlier version is put back after saving what was there, and is saved in its turn', async () => {
  await write('Old ');
  await save();
  await write('Very ');
  await page.keyboard.press('Control+k');
  await page.getByRole('combobox', { name: 'Command' }).fill('earlier versions');
  await page.keyboard.press('Enter');
  const versions = dialog('Earlier versions');
  await versions.getByRole('listitem').getByRole('button').first().click();
  await versions.getByRole('button', { name: 'Restore this one' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Save', exact: true }).click();
  await expect.poll(() => title().textContent()).toBe('Jetty');
  await save();
  expect(await page.getByRole('dialog').count()).toBe(0);
});

test('a save that could not keep the version before says so', async () => {
  isVersionLost = true;
  await write('My ');
  await page.keyboard.press('Control+s');
  const told = dialog('Saved, but the version before was not kept');
  await told.getByText('Your pattern is in its file.').waitFor();
  await told.getByRole('button', { name: 'Close' }).click();
  expect(await state()).toContain('· Saved');
});
