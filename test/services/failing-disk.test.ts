/**
 * A host on a disk that fails: at each single step of a save and of a keep, and from each step on, as when the
 * disk is pulled out. What is found afterwards, on a disk that works again, is whole and what the host said.
 */
import fs from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Answer } from '../../app/host/host.ts';
import type { Disk } from '../../app/services/disk.ts';
import { StudioHost } from '../../app/services/studio-host.ts';
import { StudioServices } from '../../app/services/studio-services.ts';
import { readContainer, writeContainer } from '../../core/document/container.ts';
import { cover, media } from '../document/containers.ts';
import { testShell } from '../host/worlds.ts';
import { broken, failingDisk, type Step } from './failing-disk.ts';
import { numberIn, stateOf, titleOfState } from './kill-states.ts';

let root: string;
let path: string;
const packed = [0, 1, 2, 3].map((n) => writeContainer(stateOf(n), media));

beforeEach(() => {
  root = fs.realpathSync(fs.mkdtempSync(join(tmpdir(), 'failing-')));
});
afterEach(() => fs.rmSync(root, { recursive: true, force: true }));

const openedHosts: { host: StudioHost; services: StudioServices }[] = [];
afterEach(async () => {
  for (const { host, services } of openedHosts.splice(0)) {
    await host.dispose();
    await services.close();
  }
});

/** A place with a file of two states, a version, and kept work: made once, and put there again each time. */
async function placeAnew(): Promise<string> {
  const folder = join(root, 'place');
  const made = join(root, 'made');
  path = join(folder, 'vest.turnchain');
  if (fs.existsSync(made)) {
    fs.rmSync(folder, { recursive: true });
    fs.cpSync(made, folder, { recursive: true });
    return folder;
  }
  fs.mkdirSync(folder);
  const { host, handle } = await hostOn(folder);
  for (const n of [0, 1]) {
    expect(await host.save(handle, packed[n]!, null, titleOfState(n))).toMatchObject({ ok: true });
    await keep(host, 1);
  }
  await host.dispose();
  fs.cpSync(folder, made, { recursive: true });
  return folder;
}

async function hostOn(folder: string, disk?: Disk) {
  const services = new StudioServices({
    data: join(folder, 'data'),
    home: folder,
    platform: 'linux',
    ...(disk === undefined ? {} : { disk }),
  });
  const { shell, choose } = testShell([], []);
  const host = new StudioHost({ services, shell, window: 'w1', lookMs: 60_000 });
  openedHosts.push({ host, services });
  choose(path);
  const { handle } = (await host.chooseFile())!;
  return { host, services, handle };
}

async function keep(host: StudioHost, n: number): Promise<Answer<null>> {
  const picture = await host.keepPicture('desk-1', cover.id, cover.bytes);
  if (!picture.ok) return picture;
  const entry = { title: titleOfState(n), handle: null, stamp: null, document: stateOf(n).toJSON() };
  return host.keep('desk-1', entry);
}

function numberOf(bytes: Uint8Array): number {
  const read = readContainer(bytes);
  if (!read.ok) throw new Error(read.error.message);
  const n = numberIn(read.document.firstChild!.firstChild!.textContent);
  expect(read.document.eq(stateOf(n)) && read.media.has(cover.id)).toBe(true);
  return n;
}

/** What a later start finds there on a disk that works. */
async function found(folder: string) {
  const { host, services, handle } = await hostOn(folder);
  const versions: number[] = [];
  for (const { id } of await host.versions(handle)) {
    const version = await host.version(handle, id);
    if (!version.ok) throw new Error(version.error.message);
    versions.push(numberOf(version.value));
  }
  const work = await services.journal.restore('desk-1');
  if (!work.ok) throw new Error(work.error.message);
  return { file: numberOf(new Uint8Array(fs.readFileSync(path))), work: numberOf(work.bytes), versions };
}

/** Steps that a run takes on a disk that works. */
async function stepsOf(run: (host: StudioHost, handle: string) => Promise<unknown>): Promise<number> {
  const folder = await placeAnew();
  const seen: Step[] = [];
  const { host, handle } = await hostOn(
    folder,
    failingDisk((step) => void seen.push(step)),
  );
  await run(host, handle);
  return seen.length;
}

const WAYS = [
  ['one step fails', (at: number, failing: number) => at === failing, 'ENOSPC'],
  ['everything fails from a step on', (at: number, failing: number) => at >= failing, 'EIO'],
] as const;

describe.each(WAYS)('a disk on which %s', (_, fails, code) => {
  const failingFrom = (failing: number): Disk => {
    let at = 0;
    return failingDisk(() => {
      if (fails(at++, failing)) throw broken(code);
    });
  };

  test('a save: the file is whole, as old or as new as was said, and so are all its versions', async () => {
    const save = (host: StudioHost, handle: string) => host.save(handle, packed[2]!, null, titleOfState(2));
    const steps = await stepsOf(save);
    expect(steps).toBeGreaterThan(30);
    for (let failing = 0; failing < steps; failing++) {
      const folder = await placeAnew();
      const { host, handle } = await hostOn(folder, failingFrom(failing));
      const answer = await save(host, handle);
      const after = await found(folder);
      expect(after.file, `step ${failing}`).toBe(answer.ok ? 2 : 1);
      if (!answer.ok) expect(answer.error.message).toMatch(/^[“A-Z].*\.$/);
      if (answer.ok && answer.value.notKept === null) expect(after.versions, `step ${failing}`).toContain(1);
      expect(after.versions).toContain(0);
    }
  });

  test('a keep: the journal holds the state before or this one, whole, and says which', async () => {
    const steps = await stepsOf((host) => keep(host, 2));
    expect(steps).toBeGreaterThan(20);
    for (let failing = 0; failing < steps; failing++) {
      const folder = await placeAnew();
      const { host } = await hostOn(folder, failingFrom(failing));
      const answer = await keep(host, 2);
      const after = await found(folder);
      expect(after.work, `step ${failing}`).toBe(answer.ok ? 2 : 1);
      if (!answer.ok) expect(answer.error.message).toMatch(/^[“A-Z].*\.$/);
      expect(after.file).toBe(1);
    }
  });

  test('a save after that, on a disk that works again, is a save as any other', async () => {
    const folder = await placeAnew();
    const { host, handle } = await hostOn(folder, failingFrom(12));
    await host.save(handle, packed[2]!, null, titleOfState(2));
    await host.dispose();
    const again = await hostOn(folder);
    const read = await again.host.read(again.handle);
    if (!read.ok) throw new Error(read.error.message);
    expect(await again.host.save(again.handle, packed[3]!, read.value.stamp, titleOfState(3))).toMatchObject({
      ok: true,
      value: { notKept: null },
    });
    expect(await found(folder)).toMatchObject({ file: 3 });
  });
});
