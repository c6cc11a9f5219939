/** Claims between windows of real processes: one has the thing, whoever is killed gives it up. */
import { type ChildProcess, spawn } from 'node:child_process';
import fs from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { Claims } from '../../app/services/claims.ts';

const folder = fs.mkdtempSync(join(tmpdir(), 'claims-'));
const children: ChildProcess[] = [];
afterAll(() => {
  for (const child of children) child.kill('SIGKILL');
  fs.rmSync(folder, { recursive: true, force: true });
});

const CLAIMER = fileURLToPath(new URL('claimer.ts', import.meta.url));

/** A process that takes things when it is told, and says whether it has them. */
function claimer(name: string) {
  const child = spawn(process.execPath, ['--import', 'tsx', CLAIMER, folder, name], { stdio: 'pipe' });
  children.push(child);
  const lines: string[] = [];
  let wake: () => void = () => undefined;
  child.stdout.on('data', (part) => {
    lines.push(...String(part).trim().split('\n'));
    wake();
  });
  const line = async (): Promise<string> => {
    while (lines.length === 0) {
      await new Promise<void>((resolve) => {
        wake = resolve;
      });
    }
    return lines.shift()!;
  };
  return {
    ready: line,
    take: (thing: string) => {
      child.stdin.write(`${thing}\n`);
      return line();
    },
    kill: () =>
      new Promise<void>((resolve) => {
        child.once('exit', () => resolve());
        child.kill('SIGKILL');
      }),
  };
}

let a: ReturnType<typeof claimer>;
let b: ReturnType<typeof claimer>;
beforeAll(async () => {
  a = claimer('a');
  b = claimer('b');
  await Promise.all([a.ready(), b.ready()]);
});

test('of two processes one has the file, and a killed one gives it up', async () => {
  expect(await a.take('file vest')).toBe('yes');
  expect(await b.take('file vest')).toBe('no');
  expect(await b.take('file hat')).toBe('yes');
  const here = new Claims({ folder, window: 'here' });
  expect(await here.take('file vest')).toBe(false);
  // Many at once: never two.
  for (let n = 0; n < 25; n++) {
    const taken = await Promise.all([a.take(`file ${n}`), b.take(`file ${n}`)]);
    expect(taken.filter((said) => said === 'yes').length).toBeLessThanOrEqual(1);
  }
  await a.kill();
  expect(await here.take('file vest')).toBe(true);
  expect(await b.take('file vest')).toBe('no');
  await here.giveUpAll();
  expect(await b.take('file vest')).toBe('yes');
});

test('a number that went to another process claims nothing', async () => {
  const running = (process: { mark: string }) => process.mark === 'abc-1';
  const old = new Claims({ folder, window: 'w', me: { pid: 77, mark: 'abc-0' }, running });
  const young = new Claims({ folder, window: 'w', me: { pid: 77, mark: 'abc-1' }, running });
  expect(await old.take('thing')).toBe(true);
  expect(await young.take('thing')).toBe(true);
  expect(young.has('thing')).toBe(true);
});
