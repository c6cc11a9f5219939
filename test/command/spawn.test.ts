/** The program itself, as a shell starts it. */
import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, test } from 'vitest';
import { savePattern } from '../../app/services/files.ts';
import { compose } from '../../core/document/compose.ts';
import { right } from './patterns.ts';

const ENTRY = fileURLToPath(new URL('../../app/command/turnchain.ts', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'spawn-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const start = (words: readonly string[]): ChildProcess =>
  spawn(process.execPath, ['--import', 'tsx', ENTRY, ...words], { stdio: 'pipe' });

function ended(child: ChildProcess): Promise<{ code: number | null; out: string; err: string }> {
  let out = '';
  let err = '';
  child.stdout!.on('data', (data) => {
    out += data;
  });
  child.stderr!.on('data', (data) => {
    err += data;
  });
  return new Promise((resolve) => child.on('close', (code) => resolve({ code, out, err })));
}

describe('the program', () => {
  test('runs as the package’s bin, fonts and all', async () => {
    const root = fileURLToPath(new URL('../../', import.meta.url));
    execFileSync(process.execPath, ['build.config.mjs'], { cwd: root });
    const path = join(folder, 'bin.turnchain');
    await savePattern(path, compose(right), new Map());
    const bin = join(root, 'dist', 'turnchain.mjs');
    const out = execFileSync(process.execPath, [bin, 'export', path, '--out', join(folder, 'bin')], {
      cwd: folder,
      encoding: 'utf8',
    });
    expect(out).toMatch(/harbour-vest_us_a4_standard_all-sizes_v1\.0\.pdf {2}\d+ pages\n$/);
  });

  test('reads standard input and ends with the exit code', async () => {
    const child = start(['rows', '-', '--terms', 'us']);
    child.stdin!.end('Ch 20.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (18 sc)\n');
    const { code, out, err } = await ended(child);
    expect(out).toMatch(/^Foundation {2}20 {2}ch\nRow 1 {7}19 {2}sc\n {4}error: /);
    expect([code, err]).toEqual([1, '']);
  });

  test('says nothing when its reader goes away', async () => {
    const child = start(['translate', '-', '--from', 'us', '--to', 'uk']);
    child.stdout!.destroy();
    child.stdin!.on('error', () => undefined); // it may end before it has read all
    child.stdin!.end('dc in next st\n'.repeat(100_000));
    const { err } = await ended(child);
    expect(err).toBe('');
  });

  test('leaves whole PDFs only when it is interrupted', async () => {
    const path = join(folder, 'panel.turnchain');
    await savePattern(path, compose(right), new Map());
    const out = join(folder, 'pdf');
    const all = '--sizes all,each --terms us,uk --paper a4,letter --edition standard,large,ink-saving';
    const child = start(['export', path, '--out', out, ...all.split(' ')]);
    const end = ended(child);
    const written = (): readonly string[] => {
      try {
        return readdirSync(out).filter((name) => name.endsWith('.pdf'));
      } catch {
        return [];
      }
    };
    while (written().length === 0) await new Promise((resolve) => setTimeout(resolve, 20));
    child.kill('SIGINT');
    const { code, out: told, err } = await end;
    expect(code).toBe(130);
    expect(err).toMatch(/^turnchain export: Stopped\. /);
    const names = readdirSync(out);
    expect(names.length).toBeLessThan(60);
    expect(names.every((name) => name.endsWith('.pdf'))).toBe(true);
    expect(told.trim().split('\n')).toHaveLength(names.length);
  });
});
