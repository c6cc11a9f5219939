/**
 * Writes a pattern's PDFs: every combination of terms, paper, edition and sizes that is asked for, one file
 * after the other, each whole or not at all. Reports progress and can be stopped. It lays out nothing, shows
 * nothing, and does not judge whether a pattern is fit to be printed.
 */
import { join } from 'node:path';
import type { Pictures } from '../../core/document/media.ts';
import type { Pattern } from '../../core/document/pattern.ts';
import type { Scene } from '../../core/drawing/scene.ts';
import type { Fact, Finding } from '../../core/finding.ts';
import { kindOf, tellAs } from '../../core/findings/index.ts';
import type { Booklet } from '../../core/print/content.ts';
import { editionCharts } from '../../core/print/edition/charts.ts';
import { editionSchematics } from '../../core/print/edition/schematics.ts';
import { bookletOf, type EditionFact } from '../../core/print/edition.ts';
import { reportBooklet } from '../../core/print/editor-report.ts';
import { fontsIn, layOut, type Resources, writePages } from '../../core/print/index.ts';
import { PRINT_KINDS } from '../../core/print/kinds.ts';
import { sheetOf } from '../../core/print/person-sheet.ts';
import { scenePen } from '../../core/print/scene-pen.ts';
import { listingOf } from '../../core/print/shop/listing.ts';
import { type Edition, type Paper, styleOf } from '../../core/print/style.ts';
import { cautionsForSize, cautionsOf } from '../../core/review/index.ts';
import { reportOf } from '../../core/review/report.ts';
import type { Study } from '../../core/study/study.ts';
import type { Terms } from '../../core/trade/stitches.ts';
import { type Disk, localDisk } from './disk.ts';
import { plainName } from './file-names.ts';
import { type FileError, replaceFile } from './files.ts';
import { prepareFolder } from './out-folder.ts';
import { fontsFolder } from './resources.ts';

/** What to print. Every combination makes one file. */
export interface ExportChoices {
  readonly terms: readonly Terms[];
  readonly papers: readonly Paper[];
  readonly editions: readonly Edition[];
  /** Ids of sizes that get a booklet alone; null = one booklet with all sizes. */
  readonly sizes: readonly (string | null)[];
  /** Ids of people whose own sheets are written besides: never part of a pattern for sale. */
  readonly people?: readonly string[] | undefined;
  /** Whether the report for a human editor is written besides, once for each terms and paper. */
  readonly report?: boolean | undefined;
}

/** One file to be written. */
export interface ExportItem {
  readonly terms: Terms;
  readonly paper: Paper;
  readonly edition: Edition;
  readonly size: string | null;
  /** Id of the person whose own sheet it is. */
  readonly person?: string | undefined;
  /** It is the report for a human editor. */
  readonly report?: boolean | undefined;
  /** Its name, without folder. */
  readonly file: string;
}

export interface ExportedFile extends ExportItem {
  readonly path: string;
  readonly pages: number;
  readonly bytes: number;
}

export interface ExportProgress {
  readonly item: ExportItem;
  /** From 1. */
  readonly number: number;
  readonly of: number;
  /** Pages written of this file; `pages` is 0 while it is being laid out. */
  readonly page: number;
  readonly pages: number;
}

export interface ExportWatch {
  readonly progress?: (progress: ExportProgress) => void;
  /** Stops between two pages; files that are whole by then stay. */
  readonly signal?: AbortSignal;
  readonly disk?: Disk;
}

export interface ExportOutcome {
  /** In the order written. */
  readonly files: readonly ExportedFile[];
  /** What could not be printed as it stands: characters that the fonts lack, pictures, terms in doubt. */
  readonly findings: readonly Finding[];
  /** Why it ended before all was written; null when nothing is missing. */
  readonly stopped: 'interrupted' | FileError | null;
}

/** Longest title in a name: file names are to be short and plain (ASCII), for shops and old systems alike. */
const LONGEST_TITLE = 40;
const LONGEST_PART = 20;

/** Title and version as they stand in file names. */
export function nameParts({ about }: Pattern): { readonly title: string; readonly version: string } {
  const version = about.version
    .toLowerCase()
    .replace(/[^a-z0-9.]+/g, '-')
    .replace(/^[-.]+|[-.]+$/g, '')
    .slice(0, LONGEST_PART);
  return { title: plainName(about.title, LONGEST_TITLE) || 'pattern', version: version && `v${version}` };
}

/** The files of an export, in the order in which they are written. Names differ, even without capitals. */
export function exportItems(pattern: Pattern, choices: ExportChoices): readonly ExportItem[] {
  const { title, version } = nameParts(pattern);
  const taken = new Set<string>();
  const free = (name: string): string => {
    for (let n = 1; ; n++) {
      const own = n === 1 ? name : `${name}-${n}`;
      if (!taken.has(own)) {
        taken.add(own);
        return own;
      }
    }
  };
  const sizeNames = new Map<string | null, string>();
  for (const size of choices.sizes) {
    if (size === null) sizeNames.set(null, 'all-sizes');
    else {
      const label = pattern.sizes.find(({ id }) => id === size)?.label ?? size;
      sizeNames.set(size, free(`size-${plainName(label, LONGEST_PART) || 'x'}`));
    }
  }
  const people = (choices.people ?? []).map((id) => {
    const name = pattern.workbook.people.find((person) => person.id === id)?.name ?? '';
    return { id, called: free(`made-for-${plainName(name, LONGEST_PART) || 'one-person'}`) };
  });
  const file = (...parts: readonly string[]) => `${parts.filter(Boolean).join('_')}.pdf`;
  const reports = choices.terms.flatMap((terms) =>
    (choices.report ? choices.papers : []).map(
      (paper): ExportItem => ({
        terms,
        paper,
        edition: 'standard',
        size: null,
        report: true,
        file: file(title, terms, paper, 'technical-edit', version),
      }),
    ),
  );
  const booklets = choices.terms.flatMap((terms) =>
    choices.papers.flatMap((paper) =>
      choices.editions.flatMap((edition): readonly ExportItem[] => {
        const named = (called: string) => file(title, terms, paper, edition, called, version);
        return [
          ...choices.sizes.map((size) => ({
            terms,
            paper,
            edition,
            size,
            file: named(sizeNames.get(size)!),
          })),
          ...people.map(({ id, called }) => ({
            terms,
            paper,
            edition,
            size: null,
            person: id,
            file: named(called),
          })),
        ];
      }),
    ),
  );
  return [...booklets, ...reports];
}

/** What is told in one sentence: characters that one text lacks and that become the same, else each fact alone. */
const sameWords = ({ node, fact }: { readonly node: string | null; readonly fact: Fact }): unknown =>
  fact.code === 'character-not-printable' ? `${node} ${fact.data.instead} ${fact.data.words}` : fact;

/** Gathers what layouts report, each thing once however many files it is in. */
class Troubles {
  readonly #findings = new Map<string, Finding>();
  readonly #pattern: Pattern;

  constructor(pattern: Pattern) {
    this.#pattern = pattern;
  }

  add(facts: readonly EditionFact[], layoutFacts: readonly Fact[]): void {
    const { terms, sizes } = this.#pattern;
    const labels = sizes.map(({ label }) => label);
    const told = [...facts, ...layoutFacts.map((fact) => ({ node: null, fact }))];
    const groups = new Map<unknown, (typeof told)[number][]>();
    for (const each of told) {
      const key = sameWords(each);
      groups.set(key, [...(groups.get(key) ?? []), each]);
    }
    for (const alike of groups.values()) {
      const { node, fact } = alike[0]!;
      const kind = PRINT_KINDS.find(({ code }) => code === fact.code) ?? kindOf(fact.code);
      const sized = alike.map((each) => ({ size: null, fact: each.fact }));
      // Places count in words that differ by edition; the sentence names the words itself.
      const finding = tellAs(kind, sized, { terms, labels, node, text: '' });
      this.#findings.set(`${finding.code} ${finding.message}`, finding);
    }
  }

  findings(): readonly Finding[] {
    return [...this.#findings.values()];
  }
}

/** One booklet, laid out and written. */
export interface PrintedPages {
  readonly pdf: Uint8Array;
  readonly pages: number;
  readonly booklet: Booklet;
}

/** Makes booklets of one pattern. What could not be printed as it stands gathers in `troubles`. */
export class Press {
  readonly #study: Study;
  readonly #resources: Resources;
  readonly #troubles: Troubles;

  constructor(study: Study, media: Pictures) {
    this.#study = study;
    this.#resources = { fonts: fontsIn(fontsFolder()), picture: (name) => media.get(name)?.bytes ?? null };
    this.#troubles = new Troubles(study.pattern);
  }

  findings(): readonly Finding[] {
    return this.#troubles.findings();
  }

  /** Rejects with the signal's reason when it is stopped. */
  async print(
    choice: Omit<ExportItem, 'file'>,
    progress: (page: number, pages: number) => void,
    signal: AbortSignal | undefined,
  ): Promise<PrintedPages> {
    const { terms, paper, edition, size, person, report } = choice;
    const cautions = size === null ? cautionsOf(this.#study) : cautionsForSize(this.#study, size);
    const scenes = new Map<string, Scene>();
    const schematics = (of: Study, sizes: string) => {
      const made = editionSchematics(of, { terms, sizes }, styleOf(paper, edition));
      for (const [name, scene] of made.scenes) scenes.set(name, scene);
      return made.drawings;
    };
    const charts = (of: Study, sizes: string) => {
      const made = editionCharts(of, { terms, sizes }, styleOf(paper, edition));
      for (const [name, scene] of made.scenes) scenes.set(name, scene);
      return made.charts;
    };
    const { fonts } = this.#resources;
    const resources: Resources = {
      ...this.#resources,
      drawing: (name) => {
        const scene = scenes.get(name);
        return scene === undefined ? null : scenePen(scene, fonts);
      },
    };
    const sizes = size ?? 'all';
    const { booklet, facts } = report
      ? { booklet: reportBooklet(reportOf(this.#study, terms)), facts: [] }
      : person === undefined
        ? bookletOf(this.#study, {
            terms,
            sizes,
            cautions,
            schematics: schematics(this.#study, sizes),
            charts: charts(this.#study, sizes),
          })
        : sheetOf(
            this.#study,
            person,
            terms,
            (own) => cautionsForSize(own, person),
            (own) => schematics(own, person),
            (own) => charts(own, person),
          );
    const layout = layOut(booklet, { paper, edition }, resources);
    this.#troubles.add(facts, layout.facts);
    const watch = { progress, ...(signal ? { signal } : {}) };
    const pdf = await writePages(layout, booklet, resources, watch);
    return { pdf, pages: layout.pages.length, booklet };
  }
}

/** One booklet's bytes, for looking at before anything is exported: the same bytes that the export writes. */
export async function printPattern(
  study: Study,
  media: Pictures,
  choice: Omit<ExportItem, 'file'>,
  signal?: AbortSignal,
): Promise<
  Omit<PrintedPages, 'booklet'> & { readonly findings: readonly Finding[]; readonly listing: string | null }
> {
  const press = new Press(study, media);
  const { pdf, pages, booklet } = await press.print(choice, () => undefined, signal);
  const { terms, paper, edition, size, person } = choice;
  const [item] = exportItems(study.pattern, {
    terms: [terms],
    papers: [paper],
    editions: [edition],
    sizes: [size],
  });
  const label = study.pattern.sizes.find(({ id }) => id === size)?.label ?? null;
  const listing =
    person !== undefined || item === undefined
      ? null
      : listingOf(study, {
          terms,
          files: [{ file: item.file, paper, edition, size: label, pages }],
          booklet,
        });
  return { pdf, pages, findings: press.findings(), listing };
}

/**
 * Writes the PDFs into `folder`, which is made when it is not there. Never rejects for a full disk, a locked
 * folder or an interruption: the outcome tells, and lists the files that are whole. A file of the same name
 * is replaced in one step.
 */
export async function exportPattern(
  study: Study,
  media: Pictures,
  folder: string,
  choices: ExportChoices,
  watch: ExportWatch = {},
): Promise<ExportOutcome> {
  const { signal, progress, disk = localDisk } = watch;
  const items = exportItems(study.pattern, choices);
  const files: ExportedFile[] = [];
  const press = new Press(study, media);
  const outcome = (stopped: ExportOutcome['stopped']): ExportOutcome => ({
    files,
    findings: press.findings(),
    stopped,
  });
  const unprepared = await prepareFolder(folder, 'the PDFs');
  if (unprepared !== null) return outcome(unprepared);
  for (const [index, item] of items.entries()) {
    const report = (page: number, pages: number) =>
      progress?.({ item, number: index + 1, of: items.length, page, pages });
    try {
      signal?.throwIfAborted();
      report(0, 0);
      // Laying out takes a moment in which nothing else happens: let a progress line and a stop come first.
      await new Promise((resolve) => setImmediate(resolve));
      signal?.throwIfAborted();
      const { pdf: bytes, pages } = await press.print(item, report, signal);
      signal?.throwIfAborted();
      const path = join(folder, item.file);
      const fault = await replaceFile(path, bytes, disk);
      if (fault !== null) return outcome(fault);
      files.push({ ...item, path, pages, bytes: bytes.length });
    } catch (fault) {
      if (signal?.aborted) return outcome('interrupted');
      throw fault;
    }
  }
  return outcome(null);
}
