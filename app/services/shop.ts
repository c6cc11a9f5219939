/**
 * Packs a pattern for a shop: all PDFs of one edition in one market's terms, the text of the listing, and pictures of
 * pages, as one archive for each market. The same pattern gives the same bytes. Nothing is sent anywhere.
 */
import { join } from 'node:path';
import { strToU8, type Zippable, zipSync } from 'fflate';
import type { Pictures } from '../../core/document/media.ts';
import type { Finding } from '../../core/finding.ts';
import type { Booklet } from '../../core/print/content.ts';
import { listingNotes } from '../../core/print/shop/limits.ts';
import { type ListedFile, listingOf } from '../../core/print/shop/listing.ts';
import type { Study } from '../../core/study/study.ts';
import type { Terms } from '../../core/trade/stitches.ts';
import { localDisk } from './disk.ts';
import {
  type ExportChoices,
  type ExportItem,
  type ExportOutcome,
  type ExportWatch,
  exportItems,
  nameParts,
  Press,
} from './export.ts';
import { replaceFile } from './files.ts';
import { prepareFolder } from './out-folder.ts';

/** A picture of a page of an edition. */
export interface PagePicture {
  /** From 1. */
  readonly page: number;
  readonly png: Uint8Array;
}

/** Makes the pictures of an edition's first PDF, which has so many pages. */
export type PictureMaker = (pdf: Uint8Array, terms: Terms, pages: number) => Promise<readonly PagePicture[]>;

export interface Pack {
  readonly path: string;
  readonly terms: Terms;
  readonly bytes: number;
  /** Names of what is in it, in order. */
  readonly entries: readonly string[];
  readonly pages: number;
  readonly listing: string;
}

export interface PackOutcome {
  readonly packs: readonly Pack[];
  readonly findings: readonly Finding[];
  /** What goes beyond a marketplace's limits, in sentences. */
  readonly notes: readonly string[];
  readonly stopped: ExportOutcome['stopped'];
}

/** Zip holds local time without a zone; the first moment it can hold, in whatever zone this runs. */
const MOMENT = new Date(1980, 0, 1);

/**
 * Writes an archive for each of the terms chosen into `folder`. Sheets made for a person are never packed. Never rejects
 * for a full disk, a locked folder or an interruption: the outcome tells, and lists the archives that are whole.
 */
export async function packPattern(
  study: Study,
  media: Pictures,
  folder: string,
  choices: Omit<ExportChoices, 'people'>,
  pictures: PictureMaker,
  watch: ExportWatch = {},
): Promise<PackOutcome> {
  const { signal, progress, disk = localDisk } = watch;
  const press = new Press(study, media);
  const packs: Pack[] = [];
  const notes: string[] = [];
  const outcome = (stopped: PackOutcome['stopped']): PackOutcome => ({
    packs,
    findings: press.findings(),
    notes,
    stopped,
  });
  const unprepared = await prepareFolder(folder, 'the archives');
  if (unprepared !== null) return outcome(unprepared);
  const { terms: markets, papers, editions, sizes } = choices;
  const items = exportItems(study.pattern, { terms: markets, papers, editions, sizes });
  const { title, version } = nameParts(study.pattern);
  const file = (...parts: readonly string[]) => parts.filter(Boolean).join('_');
  try {
    for (const terms of markets) {
      const printed: { readonly item: ExportItem; readonly pdf: Uint8Array; readonly listed: ListedFile }[] =
        [];
      let booklet: Booklet | null = null;
      for (const [index, item] of items.entries()) {
        if (item.terms !== terms) continue;
        const report = (page: number, pages: number) =>
          progress?.({ item, number: index + 1, of: items.length, page, pages });
        signal?.throwIfAborted();
        report(0, 0);
        // Laying out takes a moment in which nothing else happens: let a progress line and a stop come first.
        await new Promise((resolve) => setImmediate(resolve));
        const made = await press.print(item, report, signal);
        const size = study.pattern.sizes.find(({ id }) => id === item.size)?.label ?? null;
        const { file: name, paper, edition } = item;
        printed.push({
          item,
          pdf: made.pdf,
          listed: { file: name, paper, edition, size, pages: made.pages },
        });
        if (booklet === null || item.size === null) booklet ??= made.booklet;
      }
      const [first] = printed;
      if (first === undefined || booklet === null) continue;
      const shown = await pictures(first.pdf, terms, first.listed.pages);
      signal?.throwIfAborted();
      const listing = listingOf(study, { terms, files: printed.map(({ listed }) => listed), booklet });
      const entries: Zippable = Object.fromEntries([
        ['listing.txt', strToU8(listing)],
        ...printed.map(({ item, pdf }) => [item.file, pdf] as const),
        ...shown.map(({ page, png }) => [file(title, terms, `page-${page}.png`), png] as const),
      ]);
      // PDFs and pictures are packed already.
      const bytes = zipSync(entries, { mtime: MOMENT, level: 0 });
      const name = `${file(title, terms, 'shop', version)}.zip`;
      const path = join(folder, name);
      const fault = await replaceFile(path, bytes, disk);
      if (fault !== null) return outcome(fault);
      packs.push({
        path,
        terms,
        bytes: bytes.length,
        entries: Object.keys(entries),
        pages: printed.reduce((sum, { listed }) => sum + listed.pages, 0),
        listing,
      });
      const files = printed.map(({ item, pdf }) => ({ name: item.file, bytes: pdf.length }));
      notes.push(...listingNotes({ name, bytes: bytes.length, files }));
    }
  } catch (fault) {
    if (signal?.aborted) return outcome('interrupted');
    throw fault;
  }
  return outcome(null);
}
