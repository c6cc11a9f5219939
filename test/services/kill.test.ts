/**
 * The host killed in the middle of its work, 200 times: SIGKILL at a random moment while one window keeps and
 * saves. A killed process does not take the system's own buffers with it: what a power cut does to those is the
 * failing disk's test, here it is that no moment leaves half of anything.
 */
import { spawn } from 'node:child_process';
import fs from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openPattern } from '../../app/services/files.ts';
import { realPlace } from '../../app/services/saving.ts';
import { StudioHost } from '../../app/services/studio-host.ts';
import { StudioServices } from '../../app/services/studio-services.ts';
import { readContainer, writeContainer } from '../../core/document/container.ts';
import { cover, media } from '../document/containers.ts';
import { testShell } from '../host/worlds.ts';
import { numberIn, stateOf, titleOfState } from './kill-states.ts';

const KILLS = 200;
/** Makers at work at the same time, each with a folder of their own, so that the machine is never idle. */
const MAKERS = 4;
/** A place has at most the one file that was being written when the end came. */
const PLACES = ['the pattern', 'its versions', 'the journal', 'the recent list'];

let root: string;
let worker: string;

beforeAll(async () => {
  root = fs.realpathSync(fs.mkdtempSync(join(tmpdir(), 'kill-')));
  worker = join(root, 'worker.mjs');
  await build({
    entryPoints: [join(import.meta.dirname, 'kill-worker.ts')],
    outfile: worker,
    bundle: true,
    platform: 'node',
    format: 'esm',
    // The package's folder is found from the program's place.
    define: { 'import.meta.url': JSON.stringify(new URL('../../dist/x.mjs', import.meta.url).href) },
    logLevel: 'error',
  });
});
afterAll(() => fs.rmSync(root, { recursive: true, force: true }));

/** Random numbers from 0 to 1 that are the same in every run (mulberry32). */
function randomness(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

type Word = 'keep' | 'kept' | 'save' | 'saved' | 'forget' | 'forgotten';
type Said = readonly [Word, number];

/** Lets the worker work until it has said `words` things and so many milliseconds more, and kills it. */
function killed(
  path: string,
  data: string,
  from: number,
  words: number,
  ms: number,
): Promise<readonly Said[]> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [worker, path, data, String(from)], { stdio: 'pipe' });
    let said = '';
    let complaint = '';
    let dying = false;
    child.stdout.on('data', (bytes) => {
      said += bytes;
      if (dying || said.split('\n').length <= words) return;
      dying = true;
      setTimeout(() => child.kill('SIGKILL'), ms);
    });
    child.stderr.on('data', (bytes) => {
      complaint += bytes;
    });
    child.on('error', reject);
    child.on('close', (_, signal) => {
      if (signal !== 'SIGKILL') return reject(new Error(`it ended by itself: ${complaint}`));
      const lines = said.split('\n').filter((line) => line !== '');
      resolve(lines.map((line) => line.split(' ')).map(([word, n]) => [word as Word, Number(n)] as const));
    });
  });
}

function filesIn(folder: string): readonly string[] {
  return fs.existsSync(folder)
    ? fs.readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((name) => join(folder, name))
    : [];
}

const partsIn = (...folders: string[]): readonly string[] =>
  folders.flatMap(filesIn).filter((name) => name.endsWith('.part'));

/** The last number said with a word; `none` when it was not said. */
const last = (said: readonly Said[], word: Word, none: number): number =>
  said.findLast(([other]) => other === word)?.[1] ?? none;

/** A whole state and no other, with its picture; its number. */
function whole(bytes: Uint8Array): number {
  const read = readContainer(bytes);
  if (!read.ok) throw new Error(read.error.message);
  const n = numberIn(read.document.firstChild!.firstChild!.textContent);
  expect(read.document.eq(stateOf(n))).toBe(true);
  expect(read.media.get(cover.id)).toEqual(cover);
  return n;
}

/**
 * What a start after the end finds: the number in the file, and that of the work that is offered. Versions are
 * read whole, each once: `seen` remembers which.
 */
async function found(path: string, data: string, seen: Set<string>) {
  const services = new StudioServices({ data, home: root, platform: 'linux' });
  const { shell } = testShell([], []);
  const host = new StudioHost({ services, shell, window: 'after' });
  const file = fs.existsSync(path) ? whole(new Uint8Array(fs.readFileSync(path))) : -1;
  const offered = await host.recovered();
  const work: { n: number; fileIsNewer: boolean }[] = [];
  for (const { desk, title, fileIsNewer } of offered) {
    const answer = await host.recover(desk);
    if (!answer.ok) throw new Error(answer.error.message);
    const n = whole(answer.value.bytes);
    expect(title).toBe(titleOfState(n));
    work.push({ n, fileIsNewer });
  }
  const real = await realPlace(path);
  const versions = (await services.versions.list(real)).map(({ id }) => id);
  for (const id of versions.filter((id) => !seen.has(id))) {
    const version = await services.versions.read(real, id);
    if (!version.ok) throw new Error(version.error.message);
    whole(version.bytes);
    seen.add(id);
  }
  const recent = await host.recent();
  await host.dispose();
  await services.close();
  return { file, work, versions, recent };
}

/** One maker, whose program is killed again and again; how often it was in the middle of each thing. */
async function maker(at: number, kills: number, middle: Map<string, number>): Promise<void> {
  const random = randomness(1000 + at);
  const folder = join(root, `maker-${at}`);
  const data = join(folder, 'data');
  const patterns = join(folder, 'patterns');
  fs.mkdirSync(patterns, { recursive: true });
  const path = join(patterns, 'vest.turnchain');
  let saved = -1;
  let kept = -1;
  let state = 0;
  const seen = new Set<string>();
  let versions: readonly string[] = [];
  for (let i = 0; i < kills; i++) {
    const said = await killed(path, data, state, 1 + Math.floor(random() * 14), random() * 12);
    const where = `maker ${at}, kill ${i}: ${said.slice(-6).join(' ')}`;
    const begun = { save: last(said, 'save', saved), keep: last(said, 'keep', kept) };
    saved = last(said, 'saved', saved);
    kept = last(said, 'kept', kept);
    for (const [begin, end] of [
      ['keep', 'kept'],
      ['save', 'saved'],
      ['forget', 'forgotten'],
    ] as const) {
      if (last(said, begin, 0) !== last(said, end, 0)) middle.set(begin, (middle.get(begin) ?? 0) + 1);
    }
    const after = await found(path, data, seen);
    // The file: never half, never older than what was said to be saved.
    expect([saved, begun.save], where).toContain(after.file);
    // The work: at most one offer, of a state that was being kept or was kept.
    expect(after.work.length, where).toBeLessThanOrEqual(1);
    const [work] = after.work;
    if (work !== undefined) {
      expect(work.n, where).toBeGreaterThanOrEqual(kept);
      expect(work.n, where).toBeLessThanOrEqual(begun.keep);
    }
    // Nothing that was kept or saved is lost between the two.
    expect(Math.max(after.file, work?.n ?? -1), where).toBeGreaterThanOrEqual(Math.max(saved, kept));
    // Versions: all of them open, and none goes away.
    expect(after.versions, where).toEqual(expect.arrayContaining([...versions]));
    versions = after.versions;
    if (after.file >= 0 && saved >= 0)
      expect(after.recent.map(({ file }) => file.name)).toContain('vest.turnchain');
    // What was begun is left beside at most once in each place.
    expect(partsIn(patterns, data).length, where).toBeLessThanOrEqual(PLACES.length);
    expect(filesIn(data).filter((name) => name.endsWith('.damaged'))).toEqual([]);
    [saved, kept] = [after.file, Math.max(kept, work?.n ?? -1)];
    state = Math.max(state, begun.keep);
  }
  await afterwards(path, data, patterns, state);
}

/** One quiet session after all that: it opens, keeps, saves, forgets, and nothing half is left anywhere. */
async function afterwards(path: string, data: string, patterns: string, state: number): Promise<void> {
  const services = new StudioServices({ data, home: root, platform: 'linux' });
  const { shell, choose } = testShell([], []);
  const host = new StudioHost({ services, shell, window: 'quiet' });
  choose(path);
  const file = (await host.chooseFile())!;
  const opened = await host.read(file.handle);
  expect(opened).toMatchObject({ ok: true, value: { heldElsewhere: false, readOnly: false } });
  if (!opened.ok) return;
  const n = state + 1;
  for (const { desk } of await host.recovered()) await host.forget(desk);
  const entry = { title: titleOfState(n), handle: file.handle, stamp: opened.value.stamp };
  expect(await host.keep('desk-2', { ...entry, document: stateOf(n).toJSON() })).toMatchObject({ ok: true });
  const bytes = writeContainer(stateOf(n), media);
  expect(await host.save(file.handle, bytes, opened.value.stamp, titleOfState(n))).toMatchObject({
    ok: true,
    value: { notKept: null },
  });
  await host.forget('desk-2');
  expect(await openPattern(path)).toMatchObject({ ok: true });
  expect(await host.recovered()).toEqual([]);
  await host.dispose();
  await services.close();
  expect(partsIn(patterns, data)).toEqual([]);
  expect(fs.readdirSync(patterns)).toEqual(['vest.turnchain']);
  expect(fs.readdirSync(join(data, 'journal'))).toEqual([]);
  expect(fs.readdirSync(join(data, 'claims'))).toEqual([]);
}

describe('a host that is killed', () => {
  test(`${KILLS} times while it keeps and saves loses nothing it had, and leaves nothing half`, {
    timeout: 900_000,
  }, async () => {
    const middle = new Map<string, number>();
    await Promise.all(Array.from({ length: MAKERS }, (_, at) => maker(at, KILLS / MAKERS, middle)));
    // The test is worth something only when the end came in the middle of things.
    expect(middle.get('keep') ?? 0).toBeGreaterThan(KILLS / 8);
    expect(middle.get('save') ?? 0).toBeGreaterThan(KILLS / 8);
  });
});
