/**
 * What the printing thread does: a document's tree and pictures in, a booklet or a folder of PDFs out. It runs
 * anywhere; `printing.ts` runs it in a thread, because laying out a long pattern takes seconds.
 */
import { checkTree } from '../../core/document/check.ts';
import type { Pictures } from '../../core/document/media.ts';
import type { Finding } from '../../core/finding.ts';
import type { Answer, ExportRequest, ExportStep, HostError, PrintChoice } from '../host/host.ts';
import type { Disk } from './disk.ts';
import { examine } from './examine.ts';
import { exportPattern, printPattern } from './export.ts';
import { hostError } from './host-errors.ts';

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
      readonly request: Omit<ExportRequest, 'folder'>;
      /** Its path. */
      readonly folder: string;
    };

export interface PrintedTask {
  readonly kind: 'print';
  readonly pdf: Uint8Array;
  readonly pages: number;
  readonly findings: readonly Finding[];
}

export interface ExportedTask {
  readonly kind: 'export';
  readonly files: readonly { readonly path: string; readonly pages: number; readonly bytes: number }[];
  readonly findings: readonly Finding[];
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
  const outcome = await exportPattern(study, media, task.folder, task.request, {
    signal,
    ...(disk ? { disk } : {}),
    progress: ({ item, number, of, page, pages }) => progress({ file: item.file, number, of, page, pages }),
  });
  const files = outcome.files.map(({ path, pages, bytes }) => ({ path, pages, bytes }));
  const stopped =
    outcome.stopped === null || outcome.stopped === 'interrupted'
      ? outcome.stopped
      : { code: outcome.stopped.code, message: outcome.stopped.message };
  return { ok: true, value: { kind: 'export', files, findings: outcome.findings, stopped } };
}
