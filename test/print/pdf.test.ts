/**
 * The finished file, read by programs from outside: qpdf, the poppler tools and pdf.js. What is asked of a
 * PDF/UA-1 file follows ISO 14289-1 and the failure conditions of the Matterhorn Protocol 1.1, named by number.
 */
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { beforeAll, describe, expect, test } from 'vitest';
import { caution, figure, paragraph, part, picture, row, table } from '../../core/print/content.ts';
import { layOut } from '../../core/print/layout.ts';
import { writePdf } from '../../core/print/pen.ts';
import type { Edition, Paper } from '../../core/print/style.ts';
import { sample } from './sample.ts';
import { type Element, type Objects, objectsOf, outside, resources, squeeze, tagsOf, walk } from './tools.ts';

const PAPERS: readonly Paper[] = ['a4', 'letter'];
const EDITIONS: readonly Edition[] = ['standard', 'large-print', 'ink-saving'];
const COMBINATIONS = PAPERS.flatMap((paper) => EDITIONS.map((edition) => ({ paper, edition })));

interface Read {
  readonly text: string;
  readonly pages: readonly string[];
  readonly outside: readonly string[];
  readonly outline: readonly { title: string; items: readonly { title: string }[] }[];
  readonly metadata: Map<string, unknown>;
  readonly info: Record<string, unknown>;
}

async function readWithPdfjs(pdf: Uint8Array): Promise<Read> {
  const document = await getDocument({ data: pdf.slice(), verbosity: 0 }).promise;
  const pages: string[] = [];
  const stray: string[] = [];
  for (let n = 1; n <= document.numPages; n++) {
    const content = await (await document.getPage(n)).getTextContent({ includeMarkedContent: true });
    let text = '';
    const open: boolean[] = [];
    for (const item of content.items) {
      if ('str' in item) {
        text += item.str + (item.hasEOL ? '\n' : '');
        if (item.str.trim() !== '' && !open.some(Boolean)) stray.push(item.str);
      } else if (item.type === 'endMarkedContent') {
        open.pop();
      } else {
        open.push((item as { tag?: string }).tag === 'Artifact' || item.id !== null);
      }
    }
    pages.push(text);
  }
  const metadata = await document.getMetadata();
  const read: Read = {
    text: pages.join('\n'),
    pages,
    outside: stray,
    outline: ((await document.getOutline()) ?? []) as Read['outline'],
    metadata: new Map(metadata.metadata as unknown as Iterable<[string, unknown]>),
    info: metadata.info as Record<string, unknown>,
  };
  await document.loadingTask.destroy();
  return read;
}

describe.each(COMBINATIONS)('the sample, $edition on $paper', ({ paper, edition }) => {
  let pdf: Uint8Array;
  let read: Read;
  let objects: Objects;
  let root: Element;
  beforeAll(async () => {
    pdf = await writePdf(sample(), { paper, edition }, resources);
    read = await readWithPdfjs(pdf);
    objects = objectsOf(pdf);
    root = tagsOf(objects);
  });

  test('is a sound file', () => {
    expect(outside('qpdf', ['--check', 'FILE'], pdf)).toContain('No syntax or stream encoding errors found');
  });

  test('embeds every font as a subset with a way back to Unicode', () => {
    const lines = outside('pdffonts', ['FILE'], pdf).trim().split('\n').slice(2);
    expect(lines.length).toBeGreaterThanOrEqual(edition === 'large-print' ? 2 : 4);
    for (const line of lines) {
      expect(line).toMatch(/^[A-Z]{6}\+/);
      expect(line.trim()).toMatch(/yes yes yes +\d+ +\d+$/);
    }
  });

  test('has no soft hyphen, and keeps its hyphens', () => {
    const text = outside('pdftotext', ['-enc', 'UTF-8', 'FILE', '-'], pdf);
    expect(text).not.toContain('\u00AD');
    expect(read.text).not.toContain('\u00AD');
    for (const word of ['boat-necked', 'ch-2', 'Kołodziej-Nuñez', 'H-8']) {
      expect(squeeze(text)).toContain(word);
      expect(read.text).toContain(word);
    }
  });

  test('says terms, version, sizes and page on every page', () => {
    expect(read.pages.length).toBe(Number(/Pages: +(\d+)/.exec(outside('pdfinfo', ['FILE'], pdf))?.[1]));
    for (const [i, page] of read.pages.entries()) {
      const text = squeeze(page);
      expect(text).toContain('Saltmarsh Top · US terms · Version 1.2');
      expect(text).toContain('Sizes XS (S, M, L, XL, 2X, 3X, 4X, 5X, 6X)');
      expect(text).toContain(`page ${i + 1} of ${read.pages.length}`);
    }
  });

  test('is on the paper asked for', () => {
    // ISO 216 A4 and US Letter in points.
    const size = paper === 'a4' ? '595.28 x 841.89 pts (A4)' : '612 x 792 pts (letter)';
    expect(outside('pdfinfo', ['FILE'], pdf)).toContain(size);
  });

  test('carries its metadata', () => {
    expect(read.info).toMatchObject({
      Title: 'Saltmarsh Top',
      Author: 'Édith Kołodziej-Nuñez',
      Language: 'en-US',
      CreationDate: 'D:20260418000000Z',
    });
    expect(read.metadata.get('pdfuaid:part')).toBe('1');
    expect(read.metadata.get('dc:title')).toBe('Saltmarsh Top');
    expect(read.metadata.get('dc:language')).toBe('en-US');
  });

  test('has its headings as bookmarks', () => {
    expect(read.outline.map((item) => item.title)).toEqual([
      'Saltmarsh Top',
      'Materials and sizes',
      'Before you begin',
      'Instructions',
      'Finishing',
    ]);
    expect(read.outline[2]!.items.map((item) => item.title)).toEqual([
      'Abbreviations',
      'Special stitches',
      'Notes',
    ]);
  });

  test('marks all its text as content or artifact (01-005)', () => {
    expect(read.outside).toEqual([]);
  });

  test('declares itself tagged, with language and shown title (06-001, 07-001, 11-006)', () => {
    expect(objects.get(objects.catalog['/MarkInfo'])['/Marked']).toBe(true);
    expect(objects.catalog['/Lang']).toBe('u:en-US');
    expect(objects.get(objects.catalog['/ViewerPreferences'])['/DisplayDocTitle']).toBe(true);
    expect(
      objects.all.filter((one) => one['/Type'] === '/Page').every((page) => page['/Tabs'] === '/S'),
    ).toBe(true);
  });

  test('skips no heading level and begins with the first (14-002, 14-003)', () => {
    const levels = [...walk(root)].filter((one) => /^H\d$/.test(one.type)).map((one) => Number(one.type[1]));
    expect(levels[0]).toBe(1);
    for (const [i, level] of levels.entries())
      if (i > 0) expect(level).toBeLessThanOrEqual(levels[i - 1]! + 1);
  });

  test('nests lists and tables by the rules, with scope on every head (09-004 to 09-006, 15-003)', () => {
    expect(root.type).toBe('Document');
    const allowed: Record<string, readonly string[]> = {
      L: ['LI'],
      LI: ['Lbl', 'LBody'],
      Table: ['Caption', 'THead', 'TBody'],
      THead: ['TR'],
      TBody: ['TR'],
      TR: ['TH', 'TD'],
    };
    for (const element of walk(root)) {
      for (const child of element.children) {
        const inside = allowed[element.type];
        if (inside) expect(inside).toContain(child.type);
      }
      if (element.type === 'TH') expect(element.scope).toMatch(/^(Column|Row)$/);
      if (element.type === 'Table') {
        const widths = [...walk(element)]
          .filter((one) => one.type === 'TR')
          .map((one) => one.children.length);
        expect(new Set(widths).size).toBe(1);
      }
      if (element.children.length === 0) expect(element.content).toBeGreaterThan(0);
    }
    expect([...walk(root)].some((one) => one.type === 'Table')).toBe(edition !== 'large-print');
  });

  test('gives every figure words and a box on the paper (13-004)', () => {
    const figures = [...walk(root)].filter((one) => one.type === 'Figure');
    expect(figures.length).toBe(2);
    const [width, height] = paper === 'a4' ? [595.28, 841.89] : [612, 792];
    for (const one of figures) {
      expect(one.alt?.length).toBeGreaterThan(20);
      const [x, y, x2, y2] = one.box!;
      expect(x).toBeGreaterThanOrEqual(0);
      expect(y).toBeGreaterThanOrEqual(0);
      expect(x2).toBeLessThanOrEqual(width! + 0.01);
      expect(y2).toBeLessThanOrEqual(height! + 0.01);
      expect(x2! - x!).toBeGreaterThan(100);
    }
  });

  test('gives notes ids of their own and lists them (19-003, 19-004)', () => {
    const ids = [...walk(root)].filter((one) => one.type === 'Note').map((one) => one.id);
    expect(ids.length).toBe(1);
    expect(new Set(ids).size).toBe(ids.length);
    expect(objects.get(objects.catalog['/StructTreeRoot'])['/IDTree']).toBeDefined();
  });

  test('writes no incomplete set of glyphs (31-012)', () => {
    const descriptors = objects.all.filter((one) => one['/Type'] === '/FontDescriptor');
    expect(descriptors.length).toBeGreaterThan(0);
    for (const one of descriptors) {
      expect(one['/CIDSet']).toBeUndefined();
      expect(one['/FontFile2']).toBeDefined();
    }
  });

  test('is the same, byte for byte, a second time', async () => {
    const again = await writePdf(sample(), { paper, edition }, resources);
    expect(Buffer.compare(Buffer.from(pdf), Buffer.from(again))).toBe(0);
  });

  if (edition === 'large-print') {
    test('has no type under 18 pt, one face of letter, black only', () => {
      const layout = layOut(sample(), { paper, edition }, resources);
      for (const page of layout.pages) {
        for (const mark of page.marks) {
          if (mark.kind === 'text') {
            expect(mark.size).toBeGreaterThanOrEqual(18);
            expect(mark.face).toMatch(/^sans/);
            expect(mark.colour).toBe('#000000');
          }
          if (mark.kind === 'rule') expect(mark.colour).toBe('#000000');
        }
      }
    });
  }
  if (edition === 'ink-saving') {
    test('prints no fill but the caution bar, and black only', () => {
      const layout = layOut(sample(), { paper, edition }, resources);
      for (const page of layout.pages) {
        for (const mark of page.marks) {
          if (mark.kind === 'fill') expect(mark.width).toBeLessThan(1);
          if (mark.kind === 'text') expect(mark.colour).toBe('#000000');
          if (mark.kind === 'image') expect(mark.x).toBeGreaterThanOrEqual(layout.style.margin.left);
        }
      }
    });
  }
});

describe.each([
  { paper: 'a4', edition: 'standard' },
  { paper: 'letter', edition: 'large-print' },
  { paper: 'a4', edition: 'ink-saving' },
] as const)('golden: $edition on $paper', ({ paper, edition }) => {
  test('text in reading order', async () => {
    const pdf = await writePdf(sample(), { paper, edition }, resources);
    const text = outside('pdftotext', ['-raw', '-enc', 'UTF-8', 'FILE', '-'], pdf);
    await expect(text).toMatchFileSnapshot(`golden/${edition}-${paper}.text.txt`);
  });

  test('tag tree with its text', async () => {
    const pdf = await writePdf(sample(), { paper, edition }, resources);
    const tree = outside('pdfinfo', ['-struct-text', 'FILE'], pdf);
    await expect(tree).toMatchFileSnapshot(`golden/${edition}-${paper}.tags.txt`);
  });
});

describe('writing', () => {
  test('tells its progress page by page', async () => {
    const told: string[] = [];
    await writePdf(sample(), { paper: 'a4', edition: 'standard' }, resources, {
      progress: (page, pages) => told.push(`${page}/${pages}`),
    });
    expect(told).toEqual(told.map((_, i) => `${i + 1}/${told.length}`));
    expect(told.length).toBeGreaterThan(3);
  });

  test('stops when told to, before and between pages', async () => {
    await expect(
      writePdf(sample(), { paper: 'a4', edition: 'standard' }, resources, { signal: AbortSignal.abort() }),
    ).rejects.toThrow();
    const controller = new AbortController();
    let last = 0;
    const writing = writePdf(sample(), { paper: 'a4', edition: 'standard' }, resources, {
      signal: controller.signal,
      progress: (page) => {
        last = page;
        if (page === 2) controller.abort(new Error('enough'));
      },
    });
    await expect(writing).rejects.toThrow('enough');
    expect(last).toBe(2);
  });

  test('depends on every word: another version, another file id', async () => {
    const id = async (version: string): Promise<unknown> => {
      const booklet = sample();
      const pdf = await writePdf(
        { ...booklet, meta: { ...booklet.meta, version } },
        { paper: 'a4', edition: 'standard' },
        resources,
      );
      return (objectsOf(pdf).trailer['/ID'] as unknown[])[0];
    };
    expect(await id('Version 1.2')).toBe(await id('Version 1.2'));
    expect(await id('Version 1.2')).not.toBe(await id('Version 1.3'));
  });

  test('does not depend on what was written before it: every full stop can still be read', async () => {
    const own = (): typeof resources => ({ ...resources, fonts: { read: resources.fonts.read } });
    const written = (label: string, from: typeof resources) =>
      writePdf(
        { ...sample(), cover: null, parts: [part('', [row(label, 'sc in each st')], false)] },
        { paper: 'a4', edition: 'large-print' },
        from,
      );
    const alone = await written('At 16.5 cm', own());
    // The dots of a colon are full stops: embedding the one must not spoil the other.
    const shared = own();
    await written('Row', shared);
    const after = await written('At 16.5 cm', shared);
    expect(Buffer.from(after).equals(Buffer.from(alone))).toBe(true);
    expect((await readWithPdfjs(after)).text).toContain('16.5 cm');
  });

  test('escapes what XML would misread', async () => {
    const booklet = sample();
    const pdf = await writePdf(
      { ...booklet, meta: { ...booklet.meta, title: 'Salt & Reed <2>', keywords: ['a&b'] } },
      { paper: 'a4', edition: 'standard' },
      resources,
    );
    const read = await readWithPdfjs(pdf);
    expect(read.metadata.get('dc:title')).toBe('Salt & Reed <2>');
    expect(read.info.Title).toBe('Salt & Reed <2>');
  });

  test('keeps the place of a picture that cannot be read, and says so', async () => {
    const booklet = {
      ...sample(),
      cover: null,
      parts: [
        part('Pictures', [
          figure(picture('broken'), 'A swatch with its corners pinned'),
          paragraph('After it.'),
        ]),
      ],
    };
    const broken = { ...resources, picture: () => new Uint8Array([0xff, 0xd8, 1, 2, 3]) };
    const layout = layOut(booklet, { paper: 'a4', edition: 'standard' }, broken);
    expect(layout.facts.map((fact) => [fact.code, fact.data.name])).toEqual([
      ['picture-not-readable', 'broken'],
    ]);
    const pdf = await writePdf(booklet, { paper: 'a4', edition: 'standard' }, broken);
    expect(outside('pdftotext', ['FILE', '-'], pdf)).toContain('A swatch with its corners pinned');
  });

  test('draws a drawing where one is supplied', async () => {
    const boxes: number[] = [];
    const pdf = await writePdf(
      sample(),
      { paper: 'a4', edition: 'standard' },
      {
        ...resources,
        drawing: (name) =>
          name === 'schematic'
            ? (document, box) => {
                boxes.push(box.width / box.height);
                document.rect(box.x, box.y, box.width, box.height).stroke('#000000');
              }
            : null,
      },
    );
    expect(boxes.map((aspect) => aspect.toFixed(2))).toEqual(['3.20']);
    expect(outside('qpdf', ['--check', 'FILE'], pdf)).toContain('No syntax');
  });

  test('writes an empty booklet as one page', async () => {
    const pdf = await writePdf(
      { ...sample(), cover: null, parts: [] },
      { paper: 'a4', edition: 'standard' },
      resources,
    );
    expect(outside('pdfinfo', ['FILE'], pdf)).toMatch(/Pages: +1\n/);
  });

  test('writes a booklet of more than twenty-four pages', async () => {
    const booklet = sample();
    const many = Array.from({ length: 360 }, (_, i) =>
      row(
        `Row ${i + 1}`,
        'Ch 2, hdc in first st, *ch 2, skip next 2 sts, (dc, ch 1, dc) in next st; rep from * across, turn.',
        {
          side: i % 2 === 0 ? 'RS' : 'WS',
          count: '(65 (71, 77, 83, 89, 95, 101, 107, 113, 119) sts)',
        },
      ),
    );
    const long = {
      ...booklet,
      parts: [
        ...booklet.parts,
        part(
          'More',
          [
            ...many,
            caution('Ends', ['Weave them in.']),
            table({ caption: 'Rows', heads: ['Count'], rows: [['All', '360']] }),
          ],
          true,
        ),
      ],
    };
    const pdf = await writePdf(long, { paper: 'a4', edition: 'standard' }, resources);
    const pages = Number(/Pages: +(\d+)/.exec(outside('pdfinfo', ['FILE'], pdf))?.[1]);
    expect(pages).toBeGreaterThanOrEqual(24);
  });
});
