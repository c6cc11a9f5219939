import fs from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { type Disk, localDisk } from '../../app/services/disk.ts';
import { examine } from '../../app/services/examine.ts';
import {
  type ExportChoices,
  type ExportProgress,
  exportItems,
  exportPattern,
} from '../../app/services/export.ts';
import { plainName } from '../../app/services/file-names.ts';
import { compose } from '../../core/document/compose.ts';
import { right } from '../command/patterns.ts';

let folder: string;
beforeEach(() => {
  folder = fs.mkdtempSync(join(tmpdir(), 'export-'));
});
afterEach(() => fs.rmSync(folder, { recursive: true, force: true }));

const { study, pattern } = examine(compose(right));
const two: ExportChoices = { terms: ['us', 'uk'], papers: ['a4'], editions: ['standard'], sizes: [null] };
const broken = (code: string) => Object.assign(new Error(code), { code });

/** A disk on which the n-th file that is opened for writing fails at one step, half written. */
function failing(nth: number, step: 'writeFile' | 'sync' | 'rename', code: string): Disk {
  let opened = 0;
  let renamed = 0;
  return {
    ...localDisk,
    open: async (path, flags) => {
      const handle = await localDisk.open(path, flags);
      if (flags !== 'wx') return handle;
      opened += 1;
      const fails = opened === nth;
      return {
        read: (...values) => handle.read(...values),
        chmod: (mode) => handle.chmod(mode),
        close: () => handle.close(),
        sync: async () => {
          if (fails && step === 'sync') throw broken(code);
          await handle.sync();
        },
        writeFile: async (bytes) => {
          if (fails && step === 'writeFile') {
            await handle.writeFile(bytes.subarray(0, bytes.length / 2));
            throw broken(code);
          }
          await handle.writeFile(bytes);
        },
      };
    },
    rename: async (from, to) => {
      renamed += 1;
      if (step === 'rename' && renamed === nth) throw broken(code);
      await localDisk.rename(from, to);
    },
  };
}

describe('file names', () => {
  test.each([
    ['Harbour Vest', 40, 'harbour-vest'],
    ['Été à Łódź, 2nd “try”!', 40, 'ete-a-lodz-2nd-try'],
    ['Straßen-Ærø', 40, 'strassen-aero'],
    ['Size 1½', 40, 'size-1-1-2'],
    ['  ../../etc/passwd ', 40, 'etc-passwd'],
    ['毛糸', 40, ''],
    ['a very long title that goes on and on', 20, 'a-very-long-title'],
    ['unbrokenunbrokenunbroken', 10, 'unbrokenun'],
  ])('%j', (text, longest, name) => {
    expect(plainName(text, longest)).toBe(name);
  });

  const named = (about: Partial<typeof pattern.about>, sizes: readonly string[] = []) =>
    exportItems(
      {
        ...pattern,
        about: { ...pattern.about, ...about },
        sizes: sizes.map((label, i) => ({ ...pattern.sizes[0]!, id: `s${i}`, label })),
      },
      { ...two, terms: ['us'], sizes: sizes.length > 0 ? sizes.map((_, i) => `s${i}`) : [null] },
    ).map(({ file }) => file);

  test.each<[string, Partial<typeof pattern.about>, readonly string[], readonly string[]]>([
    ['no title', { title: '毛糸' }, [], ['pattern_us_a4_standard_all-sizes_v1.0.pdf']],
    ['no version', { version: ' ' }, [], ['harbour-vest_us_a4_standard_all-sizes.pdf']],
    ['a strange version', { version: '../2 β' }, [], ['harbour-vest_us_a4_standard_all-sizes_v2.pdf']],
    [
      'sizes that look alike',
      {},
      ['1/2', '1-2', '毛'],
      [
        'harbour-vest_us_a4_standard_size-1-2_v1.0.pdf',
        'harbour-vest_us_a4_standard_size-1-2-2_v1.0.pdf',
        'harbour-vest_us_a4_standard_size-x_v1.0.pdf',
      ],
    ],
  ])('%s', (_, about, sizes, files) => {
    expect(named(about, sizes)).toEqual(files);
    for (const file of files) expect(file).toMatch(/^[a-z0-9._-]{1,120}\.pdf$/);
  });
});

describe('exporting', () => {
  test('reports each file and each page', async () => {
    const seen: ExportProgress[] = [];
    const { files, stopped, findings } = await exportPattern(study, new Map(), folder, two, {
      progress: (progress) => seen.push(progress),
    });
    expect(stopped).toBeNull();
    expect(findings).toEqual([]);
    expect(files.map(({ path }) => fs.existsSync(path))).toEqual([true, true]);
    for (const { path, bytes } of files) expect(fs.statSync(path).size).toBe(bytes);
    expect(seen.map(({ number, of, page }) => [number, of, page])).toEqual(
      files.flatMap(({ pages }, i) => Array.from({ length: pages + 1 }, (_, page) => [i + 1, 2, page])),
    );
  });

  test.each(['writeFile', 'sync', 'rename'] as const)('a disk that is full at %s', async (step) => {
    const out = join(folder, 'pdf');
    const { files, stopped } = await exportPattern(study, new Map(), out, two, {
      disk: failing(2, step, 'ENOSPC'),
    });
    expect(stopped).toMatchObject({ code: 'disk-full' });
    expect(files).toHaveLength(1);
    expect(fs.readdirSync(out)).toEqual([files[0]!.file]);
  });

  test('a file that is there stays when its new one fails', async () => {
    const [item] = exportItems(pattern, two);
    const path = join(folder, item!.file);
    fs.writeFileSync(path, 'the old one');
    await exportPattern(study, new Map(), folder, two, { disk: failing(1, 'writeFile', 'EIO') });
    expect(fs.readdirSync(folder)).toEqual([item!.file]);
    expect(fs.readFileSync(path, 'utf8')).toBe('the old one');
  });

  test('the report for an editor, once for each terms and paper, beside no booklet', async () => {
    const { files, stopped } = await exportPattern(study, new Map(), folder, {
      terms: ['us', 'uk'],
      papers: ['letter'],
      editions: [],
      sizes: [],
      report: true,
    });
    expect(stopped).toBe(null);
    expect(files.map(({ file }) => file)).toEqual([
      'harbour-vest_us_letter_technical-edit_v1.0.pdf',
      'harbour-vest_uk_letter_technical-edit_v1.0.pdf',
    ]);
    expect(files.every(({ pages }) => pages > 1)).toBe(true);
  });

  test('stopped before it began, nothing is written', async () => {
    const { files, stopped } = await exportPattern(study, new Map(), folder, two, {
      signal: AbortSignal.abort(),
    });
    expect([files, stopped]).toEqual([[], 'interrupted']);
    expect(fs.readdirSync(folder)).toEqual([]);
  });

  test('stopped between two pages, the file begun is not there', async () => {
    const stop = new AbortController();
    const { files, stopped } = await exportPattern(study, new Map(), folder, two, {
      signal: stop.signal,
      progress: ({ number, page }) => {
        if (number === 2 && page === 1) stop.abort();
      },
    });
    expect(stopped).toBe('interrupted');
    expect(fs.readdirSync(folder)).toEqual(files.map(({ file }) => file));
    expect(files).toHaveLength(1);
  });

  test('a folder that is a file', async () => {
    const path = join(folder, 'taken');
    fs.writeFileSync(path, '');
    const { stopped } = await exportPattern(study, new Map(), path, two);
    expect(stopped).toMatchObject({
      message: '“taken” is a file, not a folder for the PDFs. Name another folder.',
    });
  });

  test('characters that the fonts lack are told once, whatever the number of files', async () => {
    const odd = examine(compose({ ...right, about: { ...right.about, description: 'A panel \u{1F9F6}.' } }));
    const { files, findings } = await exportPattern(odd.study, new Map(), folder, two);
    expect(files).toHaveLength(2);
    expect(findings.map(({ code }) => code)).toEqual(['character-not-printable']);
  });

  test('characters that one text lacks are told in one sentence', async () => {
    const title = '\u05E9\u05DC\u05D5\u05DD Vest';
    const odd = examine(compose({ ...right, about: { ...right.about, title } }));
    const { findings } = await exportPattern(odd.study, new Map(), folder, two);
    expect(findings.filter(({ message }) => message.includes(`in "${title}"`))).toHaveLength(1);
  });
});
