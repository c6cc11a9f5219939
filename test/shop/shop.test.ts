/** The listing's words, the archive for a shop, and what is told of a marketplace's limits. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { unzipSync } from 'fflate';
import { afterAll, describe, expect, test } from 'vitest';
import { hasPictureTool, pagePictures } from '../../app/services/page-pictures.ts';
import { packPattern } from '../../app/services/shop.ts';
import type { Pattern } from '../../core/document/pattern.ts';
import { atOneGlance, drawing, figure, heading, part, together } from '../../core/print/content.ts';
import { bookletOf } from '../../core/print/edition.ts';
import { listingNotes } from '../../core/print/shop/limits.ts';
import { listingOf } from '../../core/print/shop/listing.ts';
import { study } from '../../core/study/index.ts';
import { hat } from '../../resources/examples/hat.ts';
import { cm, smallPattern } from '../study/builder.ts';

const folder = mkdtempSync(join(tmpdir(), 'shop-'));
afterAll(() => rmSync(folder, { recursive: true }));

const pattern: Pattern = {
  ...smallPattern(),
  about: {
    ...smallPattern().about,
    title: 'Été Panel',
    garment: 'panel',
    description: 'A panel for a gray day.',
    level: 2,
    version: '1.2',
    date: '2026-03-04',
  },
  lines: smallPattern().lines.map((line) => (line.id === 'w' ? { ...line, printed: 'Width' } : line)),
  hooks: [{ id: 'hook', mm: 5, purpose: '' }],
  yarns: [
    {
      id: 'yarn',
      key: null,
      name: 'a round yarn',
      weight: 4,
      fibre: '100% wool',
      ballGrams: 100,
      ballMetres: 180,
      ballPrice: null,
      metres: { 's-s': 300, 's-m': 360, 's-l': 420 },
    },
  ],
  workbook: {
    ...smallPattern().workbook,
    people: [{ id: 'someone', name: 'Wilhelmina', base: '', values: { w: cm(99) }, note: 'private' }],
  },
};
const studied = study(pattern);

function listing(terms: 'us' | 'uk'): string {
  const { booklet } = bookletOf(studied, { terms, sizes: 'all' });
  const files = [{ file: 'a.pdf', paper: 'a4', edition: 'standard', size: null, pages: 1 } as const];
  return listingOf(studied, { terms, files, booklet });
}

describe('the listing', () => {
  test('tells charts and schematics apart, and a chart in parts with its key as one', () => {
    const { booklet } = bookletOf(studied, { terms: 'us', sizes: 'all' });
    const drawn = (name: string) => figure(drawing(name, 1, 100), 'What it shows.');
    const shown = part('Drawings', [
      together(heading(2, 'Back'), drawn('schematic back')),
      drawn('schematic sleeve'),
      atOneGlance(drawn('chart c-1 0'), drawn('chart c-1 1')),
      atOneGlance(drawn('chart c-2 0')),
      atOneGlance(drawn('chart c-2 1'), drawn('chart c-2 2')),
    ]);
    const words = listingOf(studied, {
      terms: 'us',
      files: [],
      booklet: { ...booklet, parts: [...booklet.parts, shown] },
    });
    expect(words).toContain('2 schematics\n2 stitch charts\n');
  });

  test.each([
    [
      'what it is',
      'This is a crochet pattern: instructions to make the panel yourself. It is not a finished item.',
    ],
    ['terms', 'Terms: US terms'],
    ['sizes', 'Sizes: S (M, L)'],
    // 16 stitches in 10 cm: 73, 82 and 91 stitches make 45.6, 51.25 and 56.9 cm, to the half 45.5, 51.5 and 57.
    ['measurements in both units', /Width: 45\.5 \(51\.5, 57\) cm \/ 18 \(20¼, 22½\) in/],
    // 5 mm is US H-8 (Craft Yarn Council, hook sizes).
    ['hook', 'Hook: 5 mm (US H-8)'],
    // 300, 360 and 420 m of balls of 180 m: 2, 2 and 3.
    [
      'yarn of every size',
      /S: 300 m \/ 330 yd, 2 balls; M: 360 m \/ \d+ yd, 2 balls; L: 420 m \/ \d+ yd, 3 balls/,
    ],
    ['the files', 'a.pdf: 1 page, A4, standard edition, all sizes'],
    ['version', 'Version 1.2, March 4, 2026'],
  ])('tells %s', (_, words) => {
    expect(listing('us')).toMatch(
      typeof words === 'string' ? new RegExp(words.replace(/[.()]/gu, '\\$&'), 'u') : words,
    );
  });

  test('in the other market’s terms and English', () => {
    const words = listing('uk');
    expect(words).toContain('Terms: UK terms');
    expect(words).toMatch(/Tension: 16 sts and 9 rows/u);
    expect(words).not.toContain('US H-8');
    expect(words).toContain('grey day');
  });

  test('estimates are said to be such once', () => {
    const hatStudy = study(hat);
    const { booklet } = bookletOf(hatStudy, { terms: 'us', sizes: 'all' });
    const words = listingOf(hatStudy, { terms: 'us', files: [], booklet });
    expect(words).toMatch(/Newborn: \d+ m \/ \d+ yd \(\d+ g\), 1 ball; 3–6 months: /u);
    // Once in the maker's own description, and once of the amounts.
    expect(words.match(/estimates?/gu)).toHaveLength(2);
    expect(words).toContain(
      'Amounts of yarn are estimates, reckoned from the yarn that finished pieces took, with 15% to spare.',
    );
  });

  test('holds nothing of the maker’s private records', () => {
    expect(listing('us')).not.toMatch(/Wilhelmina|private|99/u);
  });
});

describe('the archive', () => {
  const choices = { terms: ['us', 'uk'], papers: ['a4'], editions: ['ink-saving'], sizes: [null] } as const;
  const png = new Uint8Array([0x89, 0x50, 0x4e, 0x47]);
  const packed = (into: string) =>
    packPattern(studied, new Map(), join(folder, into), choices, async () => [{ page: 1, png }]);

  test('one for each market, names in ASCII with title, terms, paper and version, the same bytes again', async () => {
    const [once, again] = [await packed('once'), await packed('again')];
    expect(once.stopped).toBe(null);
    expect(once.packs.map(({ path }) => basename(path))).toEqual([
      'ete-panel_us_shop_v1.2.zip',
      'ete-panel_uk_shop_v1.2.zip',
    ]);
    for (const [i, { path }] of once.packs.entries())
      expect(readFileSync(path).equals(readFileSync(again.packs[i]!.path))).toBe(true);
    const entries = unzipSync(readFileSync(once.packs[1]!.path));
    expect(Object.keys(entries)).toEqual([
      'listing.txt',
      'ete-panel_uk_a4_ink-saving_all-sizes_v1.2.pdf',
      'ete-panel_uk_page-1.png',
    ]);
    expect(new TextDecoder().decode(entries['listing.txt'])).toBe(once.packs[1]!.listing);
  }, 60_000);

  test('a stop leaves no half archive', async () => {
    const stop = new AbortController();
    const outcome = await packPattern(studied, new Map(), join(folder, 'stopped'), choices, async () => [], {
      signal: stop.signal,
      progress: () => stop.abort(),
    });
    expect(outcome).toMatchObject({ packs: [], stopped: 'interrupted' });
  });

  test('pictures of pages, where the system has the tool', async () => {
    const { packs } = await packed('pictures');
    const pdf = unzipSync(readFileSync(packs[0]!.path))['ete-panel_us_a4_ink-saving_all-sizes_v1.2.pdf']!;
    if (!(await hasPictureTool())) {
      await expect(pagePictures(pdf, [1])).rejects.toThrow();
      return;
    }
    const pictures = await pagePictures(pdf, [1]);
    expect(pictures.map(({ page }) => page)).toEqual([1]);
    // PNG signature (W3C Portable Network Graphics, 5.2).
    expect([...pictures[0]!.png.subarray(0, 4)]).toEqual([...png]);
  }, 60_000);
});

describe('a marketplace’s limits', () => {
  const file = (bytes: number) => ({ name: 'a.pdf', bytes });
  const MB = 1024 * 1024;
  test.each([
    [19 * MB, [file(MB)], 0],
    [21 * MB, [file(MB)], 1],
    [MB, Array.from({ length: 6 }, () => file(10)), 1],
    [45 * MB, [file(21 * MB), file(21 * MB)], 3],
  ])('an archive of %i bytes', (bytes, files, notes) => {
    expect(listingNotes({ name: 'x.zip', bytes, files })).toHaveLength(notes);
  });
});
