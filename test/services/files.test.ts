import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Disk } from '../../app/services/disk.ts';
import { openPattern, savePattern } from '../../app/services/files.ts';
import { thisProcess } from '../../app/services/process.ts';
import { compose } from '../../core/document/compose.ts';
import { FILE_LIMITS } from '../../core/document/limits.ts';
import { blank, cover, covered, goodFile, media } from '../document/containers.ts';
import { broken, failingAt, failingDisk, type Step } from './failing-disk.ts';

let folder: string;
let path: string;
const document = compose(covered);
const other = compose({ ...blank, about: { ...blank.about, title: 'Quay vest' } });

beforeEach(() => {
  folder = fs.mkdtempSync(join(tmpdir(), 'files-'));
  path = join(folder, 'vest.turnchain');
});
afterEach(() => fs.rmSync(folder, { recursive: true, force: true }));

describe('saving and opening', () => {
  test('what is saved is what is opened, with its pictures, and nothing is left beside it', async () => {
    const saved = await savePattern(path, document, media);
    expect(saved).toEqual({ ok: true, bytes: goodFile.length });
    expect(fs.readdirSync(folder)).toEqual(['vest.turnchain']);
    const opened = await openPattern(path);
    expect(opened.ok && opened.document.eq(document)).toBe(true);
    expect(opened.ok && opened.media.get(cover.id)).toEqual(cover);
  });

  test('a new file gets the usual permissions, and one that was there keeps its own', async () => {
    await savePattern(path, document, media);
    expect(fs.statSync(path).mode & 0o777).toBe(0o666 & ~process.umask());
    for (const mode of [0o600, 0o640, 0o664]) {
      fs.chmodSync(path, mode);
      await savePattern(path, other, media);
      expect(fs.statSync(path).mode & 0o777).toBe(mode);
    }
  });

  test('a link stays a link, and the file behind it is saved', async () => {
    const link = join(folder, 'link.turnchain');
    await savePattern(path, document, media);
    fs.symlinkSync(path, link);
    expect(await savePattern(link, other, media)).toMatchObject({ ok: true });
    expect(fs.lstatSync(link).isSymbolicLink()).toBe(true);
    const opened = await openPattern(path);
    expect(opened.ok && opened.document.eq(other)).toBe(true);
  });

  test('names with spaces, accents and the length of a whole name are names', async () => {
    for (const name of ['été – vest (2).turnchain', `${'x'.repeat(244)}.turnchain`]) {
      expect(await savePattern(join(folder, name), document, media)).toMatchObject({ ok: true });
      expect(await openPattern(join(folder, name))).toMatchObject({ ok: true });
    }
  });
});

describe('opening what cannot be opened', () => {
  const code = async (at: string, disk?: Disk) => {
    const opened = await openPattern(at, disk);
    if (opened.ok) return 'opened';
    expect(opened.error.message).toMatch(/^[“A-Z].*\.$/);
    expect(opened.error.message).not.toContain(folder);
    return opened.error.code;
  };

  test('a file that is not there, a folder, a file within a file', async () => {
    fs.writeFileSync(path, goodFile);
    expect(await code(join(folder, 'gone.turnchain'))).toBe('missing');
    expect(await code(folder)).toBe('folder');
    expect(await code(join(path, 'x.turnchain'))).toBe('missing');
  });

  test('a pipe, without waiting for it', async () => {
    const pipe = join(folder, 'pipe');
    execFileSync('mkfifo', [pipe]);
    expect(await code(pipe)).toBe('not-a-file');
  });

  test('a damaged file keeps its reason', async () => {
    fs.writeFileSync(path, goodFile.subarray(0, 200));
    expect(await code(path)).toBe('cut-short');
    fs.writeFileSync(path, '');
    expect(await code(path)).toBe('empty-file');
  });

  test('a file larger than any pattern, without reading it', async () => {
    fs.writeFileSync(path, '');
    fs.truncateSync(path, FILE_LIMITS.fileBytes + 1);
    const unopened = failingAt('open', 'EIO');
    expect(await code(path, unopened)).toBe('too-large');
  });

  test('a file that grows while it is read', async () => {
    fs.writeFileSync(path, goodFile);
    const growing = failingDisk((step) => {
      if (step === 'open') fs.appendFileSync(path, 'more');
    });
    expect(await code(path, growing)).toBe('being-written');
  });

  test.each([
    ['EACCES', 'no-permission-to-open'],
    ['EPERM', 'no-permission-to-open'],
    ['EBUSY', 'in-use'],
    ['EIO', 'disk-failed-to-open'],
    ['ENOENT', 'missing'],
  ])('a disk that answers %s', async (fault, expected) => {
    fs.writeFileSync(path, goodFile);
    expect(await code(path, failingAt('open', fault))).toBe(expected);
    expect(await code(path, failingAt('stat', fault))).toBe(expected);
  });
});

describe('saving where it cannot be saved', () => {
  const code = async (at: string, disk?: Disk) => {
    const saved = await savePattern(at, other, media, disk);
    if (saved.ok) return 'saved';
    expect(saved.error.message).toMatch(/^[“A-Z].*\.$/);
    return saved.error.code;
  };

  test('in a folder that is gone, over a folder, over a pipe', async () => {
    expect(await code(join(folder, 'gone', 'vest.turnchain'))).toBe('missing-folder');
    fs.mkdirSync(path);
    expect(await code(path)).toBe('folder');
    const pipe = join(folder, 'pipe');
    execFileSync('mkfifo', [pipe]);
    expect(await code(pipe)).toBe('not-a-file');
  });

  test('over a file that may only be read, though its folder would allow it', async () => {
    fs.writeFileSync(path, goodFile, { mode: 0o444 });
    expect(await code(path)).toBe('read-only');
    fs.chmodSync(path, 0o644);
    expect(await code(path, failingAt('mayWrite', 'EACCES'))).toBe('read-only');
    expect(new Uint8Array(fs.readFileSync(path))).toEqual(goodFile);
  });

  test('a document that could not be opened again is not saved', async () => {
    fs.writeFileSync(path, goodFile);
    const endless = compose({ ...blank, notes: [{ text: 'x'.repeat(20_001), figures: [] }] });
    const saved = await savePattern(path, endless, media);
    expect(saved).toMatchObject({ ok: false, error: { code: 'unsaveable', reason: { code: 'too-many' } } });
    expect(new Uint8Array(fs.readFileSync(path))).toEqual(goodFile);
  });

  test.each([
    ['ENOSPC', 'disk-full'],
    ['EDQUOT', 'disk-full'],
    ['EROFS', 'read-only'],
    ['EACCES', 'no-permission-to-save'],
    ['EPERM', 'no-permission-to-save'],
    ['EBUSY', 'in-use'],
    ['ENAMETOOLONG', 'name-too-long'],
    ['EIO', 'disk-failed-to-save'],
  ])('a disk that answers %s to writing', async (fault, expected) => {
    expect(await code(path, failingAt('writeFile', fault))).toBe(expected);
    expect(await code(path, failingAt('open', fault))).toBe(expected);
    expect(fs.readdirSync(folder)).toEqual([]);
  });
});

describe('what a program left that was ended while it wrote', () => {
  const left = (name: string, ageMs = 0) => {
    const at = join(folder, name);
    fs.writeFileSync(at, 'half');
    const time = (Date.now() - ageMs) / 1000;
    fs.utimesSync(at, time, time);
  };
  const HOURS = 2 * 60 * 60 * 1000;
  const me = thisProcess();
  const boot = me.mark.split('-')[0];
  const random = '0123456789abcdef';

  test.each([
    ['of an ended process of this machine', `.turnchain-4194999.${boot}-1.${random}.part`, 0, false],
    ['of a process whose number another has now', `.turnchain-${me.pid}.${boot}-1.${random}.part`, 0, false],
    ['of this process', `.turnchain-${me.pid}.${me.mark}.${random}.part`, HOURS, true],
    ['of a machine that cannot be asked, just now', `.turnchain-1.0abc1234-1.${random}.part`, 0, true],
    ['of a machine that cannot be asked, long ago', `.turnchain-1.0abc1234-1.${random}.part`, HOURS, false],
    ['of a system without marks, just now', `.turnchain-4194999.0.${random}.part`, 0, true],
    ['of a system without marks, long ago', `.turnchain-4194999.0.${random}.part`, HOURS, false],
    ['of another program', '.turnchain-notes.part', HOURS, true],
    ['of another program', 'vest.part', HOURS, true],
  ])('%s: %s', async (_, name, age, stays) => {
    left(name, age);
    expect(await savePattern(path, document, media)).toMatchObject({ ok: true });
    expect(fs.readdirSync(folder).includes(name)).toBe(stays);
  });

  test('is no reason not to save when it cannot be removed', async () => {
    left(`.turnchain-4194999.${boot}-1.${random}.part`);
    expect(await savePattern(path, document, media, failingAt('unlink', 'EACCES'))).toMatchObject({
      ok: true,
    });
    expect(await savePattern(path, document, media, failingAt('list', 'EACCES'))).toMatchObject({ ok: true });
  });
});

describe('a disk that fails on the way', () => {
  /** The steps of one save over a file that is there, in order. */
  async function steps(): Promise<readonly Step[]> {
    const seen: Step[] = [];
    fs.writeFileSync(path, goodFile);
    await savePattern(
      path,
      other,
      media,
      failingDisk((step) => void seen.push(step)),
    );
    return seen;
  }

  test('the order is: sweep, write beside, sync, close, put in place, sync the folder', async () => {
    expect(await steps()).toEqual([
      'stat',
      'mayWrite',
      'realpath',
      'list',
      'open',
      'chmod',
      'writeFile',
      'sync',
      'close',
      'rename',
      'open',
      'sync',
      'close',
    ]);
  });

  test('whichever step fails, the file is whole: the old one with an error, or the new one without', async () => {
    const count = (await steps()).length;
    for (let failing = 0; failing < count; failing++) {
      fs.writeFileSync(path, goodFile);
      let at = 0;
      const disk = failingDisk(() => {
        if (at++ === failing) throw broken('ENOSPC');
      });
      const saved = await savePattern(path, other, media, disk);
      const opened = await openPattern(path);
      expect(opened.ok && opened.document.eq(saved.ok ? other : document), `step ${failing}`).toBe(true);
      expect(fs.readdirSync(folder), `step ${failing}`).toEqual(['vest.turnchain']);
    }
  });

  test('when everything fails from some step on, as when the power goes, the file is whole', async () => {
    const count = (await steps()).length;
    const results: boolean[] = [];
    for (let failing = 0; failing < count; failing++) {
      fs.writeFileSync(path, goodFile);
      let at = 0;
      const disk = failingDisk(() => {
        if (at++ >= failing) throw broken('EIO');
      });
      const saved = await savePattern(path, other, media, disk);
      results.push(saved.ok);
      const opened = await openPattern(path);
      expect(opened.ok && opened.document.eq(saved.ok ? other : document), `step ${failing}`).toBe(true);
    }
    // Up to and including the rename it is an error; after it the file is in place.
    expect(results.lastIndexOf(false)).toBe((await steps()).indexOf('rename'));
    expect(results.indexOf(true)).toBe((await steps()).indexOf('rename') + 1);
  });
});
