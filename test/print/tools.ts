/** What the print tests share: programs that read PDFs from outside, the sample's resources, the tag tree as read back. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type FontSource, fontsIn } from '../../core/print/fonts.ts';
import type { Resources } from '../../core/print/layout.ts';
import type { Mark, Page, Tag } from '../../core/print/page.ts';
import { samplePicture } from './sample.ts';

export const FONTS_FOLDER = fileURLToPath(new URL('../../resources/fonts', import.meta.url));
export const fonts: FontSource = fontsIn(FONTS_FOLDER);

const cover = samplePicture();
export const resources: Resources = { fonts, picture: (name) => (name === 'cover' ? cover : null) };

const PACKAGES: Readonly<Record<string, string>> = {
  qpdf: 'qpdf',
  pdffonts: 'poppler-utils',
  pdftotext: 'poppler-utils',
  pdfinfo: 'poppler-utils',
  pdftoppm: 'poppler-utils',
};

/** Runs a program on a PDF (`FILE` in the arguments) and gives what it wrote; a missing program fails loudly. */
export function outsideBytes(program: string, args: readonly string[], pdf: Uint8Array): Uint8Array {
  const folder = mkdtempSync(join(tmpdir(), 'turnchain-print-'));
  try {
    const file = join(folder, 'pattern.pdf');
    writeFileSync(file, pdf);
    const own = args.map((arg) => (arg === 'FILE' ? file : arg));
    return execFileSync(program, own, { maxBuffer: 1 << 28, stdio: ['ignore', 'pipe', 'pipe'] });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') {
      const name = PACKAGES[program] ?? program;
      throw new Error(`This test needs ${program}: install ${name} (apt-get install ${name}).`);
    }
    throw error;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The same, as text. */
export function outside(program: string, args: readonly string[], pdf: Uint8Array): string {
  return Buffer.from(outsideBytes(program, args, pdf)).toString('utf8');
}

/** One structure element as the finished file has it. */
export interface Element {
  readonly type: string;
  readonly scope: string | null;
  readonly numbering: string | null;
  readonly alt: string | null;
  readonly id: string | null;
  readonly box: readonly number[] | null;
  readonly content: number;
  readonly children: readonly Element[];
}

export interface Objects {
  readonly get: (reference: unknown) => Record<string, unknown>;
  readonly all: readonly Record<string, unknown>[];
  readonly catalog: Record<string, unknown>;
  readonly trailer: Record<string, unknown>;
}

/** The objects of a PDF as qpdf reads them. */
export function objectsOf(pdf: Uint8Array): Objects {
  const json = JSON.parse(outside('qpdf', ['--json=2', '--json-key=qpdf', 'FILE'], pdf)) as {
    qpdf: [
      unknown,
      Record<string, { value?: Record<string, unknown>; stream?: { dict: Record<string, unknown> } }>,
    ];
  };
  const table = json.qpdf[1];
  const contentOf = (entry: (typeof table)[string] | undefined): Record<string, unknown> =>
    entry?.value ?? entry?.stream?.dict ?? {};
  const get = (reference: unknown): Record<string, unknown> =>
    typeof reference === 'string' && / \d+ R$/.test(reference)
      ? contentOf(table[`obj:${reference}`])
      : ((reference ?? {}) as Record<string, unknown>);
  const trailer = contentOf(table.trailer);
  return { get, all: Object.values(table).map(contentOf), catalog: get(trailer['/Root']), trailer };
}

/** The tag tree of a PDF from its root element. */
export function tagsOf(objects: Objects): Element {
  const text = (value: unknown): string | null =>
    typeof value === 'string' ? value.replace(/^u:/, '') : null;
  const read = (reference: unknown): Element => {
    const element = objects.get(reference);
    const attributes = objects.get(element['/A']);
    const kids = (
      Array.isArray(element['/K']) ? element['/K'] : element['/K'] === undefined ? [] : [element['/K']]
    ) as unknown[];
    const isElement = (kid: unknown): boolean => typeof kid === 'string' && / R$/.test(kid);
    return {
      type: String(element['/S']).slice(1),
      scope: text(attributes['/Scope'])?.slice(1) ?? null,
      numbering: text(attributes['/ListNumbering'])?.slice(1) ?? null,
      alt: text(element['/Alt']),
      id: text(element['/ID']),
      box: (attributes['/BBox'] as number[] | undefined) ?? null,
      content: kids.filter((kid) => !isElement(kid)).length,
      children: kids.filter(isElement).map(read),
    };
  };
  const root = objects.get(objects.catalog['/StructTreeRoot']);
  return read((root['/K'] as unknown[])[0]);
}

export function* walk<T extends { readonly children: readonly T[] }>(element: T): Generator<T> {
  yield element;
  for (const child of element.children) yield* walk(child);
}

/** Text of each tag, from the marks of all pages. */
export function textByTag(pages: readonly Page[]): Map<Tag, string> {
  const texts = new Map<Tag, string>();
  for (const page of pages) {
    for (const mark of page.marks) {
      if (mark.kind === 'text' && mark.tag) texts.set(mark.tag, (texts.get(mark.tag) ?? '') + mark.text);
    }
  }
  return texts;
}

export const squeeze = (text: string): string => text.replace(/[\s\u00A0]+/g, ' ').trim();

/** Marks of the text itself, without artifacts. */
export const owned = (page: Page): Extract<Mark, { kind: 'text' | 'image' }>[] =>
  page.marks.filter((mark): mark is Extract<Mark, { kind: 'text' | 'image' }> => mark.tag !== null);
