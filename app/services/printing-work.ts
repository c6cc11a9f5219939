/**
 * What the printing thread does: a document's tree and pictures in, a booklet or a folder of PDFs out. It runs
 * anywhere; `printing.ts` runs it in a thread, because laying out a long pattern takes seconds.
 */
import { join } from 'node:path';
import { checkTree } from '../../core/document/check.ts';
import { readContainer } from '../../core/document/container.ts';
import type { Pictures } from '../../core/document/media.ts';
import type { Finding } from '../../core/finding.ts';
import { errataNotes } from '../../core/print/errata/sheet.ts';
import type { Study } from '../../core/study/study.ts';
import type { Terms } from '../../core/trade/stitches.ts';
import type { Answer, ExportRequest, ExportStep, HostError, PrintChoice } from '../host/host.ts';
import { type Disk, localDisk } from './disk.ts';
import { errataOf, errataPdf } from './errata.ts';
import { examine } from './examine.ts';
import {
  type ExportOutcome,
  type ExportProgress,
  type ExportWatch,
  exportPattern,
  nameParts,
  printPattern,
} from './export.ts';
import { replaceFile } from './files.ts';
import { hostError } from './host-errors.ts';
import { prepareFolder } from './out-folder.ts';
import { type PictureMaker, packPattern } from './shop.ts';

/** The work to print, as it crosses to the thread. */
export interface PrintWork {
  readonly document: unknown;
  readonly media: Pictures;
}

export type PrintTask =
  | { readonly kind: 'print'; readonly work: PrintWork; readonly choice: PrintChoice }
  | {
      readonly kind: 'export';
      readonly work: PrintWork;
      readonly request: Omit<ExportRequest, 'folder' | 'as'>;
      /** What is written in place of loose PDFs; an earlier version as the bytes of its file. */
      readonly as:
        | Extract<ExportRequest['as'], { kind: 'pack' }>
        | { readonly kind: 'errata'; readonly against: Uint8Array }
        | null;
      /** Its path. */
      readonly folder: string;
    };

export interface PrintedTask {
  readonly kind: 'print';
  readonly pdf: Uint8Array;
  readonly pages: number;
  readonly findings: readonly Finding[];
  readonly listing: string | null;
}

export interface ExportedTask {
  readonly kind: 'export';
  readonly files: readonly { readonly path: string; readonly pages: number; readonly bytes: number }[];
  readonly findings: readonly Finding[];
  readonly notes: readonly string[];
  readonly listings: readonly { readonly terms: Terms; readonly text: string }[];
  readonly stopped: 'interrupted' | HostError | null;
}

export type TaskOutcome = Answer<PrintedTask | ExportedTask>;

/** Carries a task out. Never rejects for what is wrong with the document, the disk or an interruption. */
export async function carryOut(
  task: PrintTask,
  progress: (step: ExportStep) => void,
  signal: AbortSignal,
  disk?: Disk,
): Promise<TaskOutcome> {
  const checked = checkTree(task.work.document);
  if (!checked.ok) return checked;
  const { study } = examine(checked.document);
  const { media } = task.work;
  if (task.kind === 'print') {
    try {
      const printed = await printPattern(study, media, task.choice, signal);
      return { ok: true, value: { kind: 'print', ...printed } };
    } catch (fault) {
      if (signal.aborted) return { ok: false, error: hostError('interrupted') };
      throw fault;
    }
  }
  const watch = {
    signal,
    ...(disk ? { disk } : {}),
    progress: ({ item, number, of, page, pages }: ExportProgress) =>
      progress({ file: item.file, number, of, page, pages }),
  };
  if (task.as?.kind === 'errata') return writeErrata(study, task.as.against, task, watch);
  if (task.as?.kind === 'pack') {
    const { pictures = [] } = task.request;
    const all = task.as.pages.flatMap((page, i) => (pictures[i] ? [{ ...page, png: pictures[i] }] : []));
    const shown: PictureMaker = async (_, own) => all.filter((picture) => picture.terms === own);
    const { terms, papers, editions, sizes } = task.request;
    const choices = { terms, papers, editions, sizes };
    const outcome = await packPattern(study, media, task.folder, choices, shown, watch);
    const files = outcome.packs.map(({ path, pages, bytes }) => ({ path, pages, bytes }));
    const listings = outcome.packs.map(({ terms: own, listing }) => ({ terms: own, text: listing }));
    const { findings, notes } = outcome;
    return exported({ files, findings, notes, listings, stopped: outcome.stopped });
  }
  const outcome = await exportPattern(study, media, task.folder, task.request, watch);
  const files = outcome.files.map(({ path, pages, bytes }) => ({ path, pages, bytes }));
  return exported({ files, findings: outcome.findings, notes: [], listings: [], stopped: outcome.stopped });
}

type Came = Omit<ExportedTask, 'kind' | 'stopped'> & { readonly stopped: ExportOutcome['stopped'] };

/** What a page may know of an outcome. */
function exported({ stopped, ...came }: Came): TaskOutcome {
  const told =
    stopped === null || stopped === 'interrupted'
      ? stopped
      : { code: stopped.code, message: stopped.message };
  return { ok: true, value: { kind: 'export', ...came, stopped: told } };
}

/** The sheets of what changed since an earlier version, for each of the terms and papers. */
async function writeErrata(
  study: Study,
  against: Uint8Array,
  { request, folder }: Extract<PrintTask, { kind: 'export' }>,
  { signal, disk = localDisk }: ExportWatch,
): Promise<TaskOutcome> {
  const opened = readContainer(against);
  if (!opened.ok) return opened;
  const before = examine(opened.document).study;
  const files: { path: string; pages: number; bytes: number }[] = [];
  const notes: string[] = [];
  const came = (stopped: ExportOutcome['stopped']) =>
    exported({ files, findings: [], notes, listings: [], stopped });
  const unprepared = await prepareFolder(folder, 'the errata');
  if (unprepared !== null) return came(unprepared);
  const { title, version } = nameParts(study.pattern);
  try {
    for (const terms of request.terms) {
      const errata = errataOf(before, study, terms);
      if (notes.length === 0) notes.push(...errataNotes(errata));
      for (const paper of request.papers) {
        signal?.throwIfAborted();
        const { pdf, pages } = await errataPdf(
          errata,
          terms,
          study.pattern.about.designer.trim(),
          paper,
          signal,
        );
        const path = join(
          folder,
          `${[title, 'errata', terms, paper, version].filter(Boolean).join('_')}.pdf`,
        );
        const fault = await replaceFile(path, pdf, disk);
        if (fault !== null) return came(fault);
        files.push({ path, pages, bytes: pdf.length });
      }
    }
  } catch (fault) {
    if (signal?.aborted) return came('interrupted');
    throw fault;
  }
  return came(null);
}
