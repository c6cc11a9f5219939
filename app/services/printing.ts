/**
 * Printing in a thread of its own, so that the host never waits for a layout. Previews share one thread, which
 * stays warm for a while; an export has its own, so that a preview need not wait for it. A preview that is not
 * wanted any more is given up at once. Nothing is laid out here.
 */
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import type { Answer, ExportStep, PrintChoice } from '../host/host.ts';
import { hostError } from './host-errors.ts';
import type { ExportedTask, PrintedTask, PrintTask, PrintWork, TaskOutcome } from './printing-work.ts';
import type { FromWorker, ToWorker } from './printing-worker.ts';
import { packageFolder } from './resources.ts';

/** The thread is ended when nobody has printed for so long. */
const IDLE_MS = 60_000;

/** Built, the thread is a file of its own; from the sources it begins with their compiler. */
function startThread(): Worker {
  const built = !import.meta.url.endsWith('.ts');
  const file = built
    ? join(packageFolder(), 'dist', 'printing-worker.mjs')
    : new URL('./printing-thread.mjs', import.meta.url);
  return new Worker(file, { execArgv: [] });
}

interface Waiting {
  readonly settle: (outcome: TaskOutcome) => void;
  readonly step: (step: ExportStep) => void;
}

/** One thread with the tasks given to it. */
class Thread {
  readonly #worker = startThread();
  readonly #waiting = new Map<number, Waiting>();
  #next = 1;
  /** Not to be used any more. */
  ended = false;

  constructor() {
    this.#worker.unref();
    this.#worker.on('message', (message: FromWorker) => this.#receive(message));
    this.#worker.on('error', (fault) => this.#fail(String(fault)));
    this.#worker.on('exit', () => this.#fail('it ended'));
  }

  get busy(): boolean {
    return this.#waiting.size > 0;
  }

  run(task: PrintTask, step: (step: ExportStep) => void, signal?: AbortSignal): Promise<TaskOutcome> {
    const id = this.#next++;
    return new Promise((resolve) => {
      const stop = () => {
        this.#send({ kind: 'stop', id });
        // A preview has nothing to tidy away: whoever asked need not wait until the thread hears of it.
        if (task.kind === 'print') settle({ ok: false, error: hostError('interrupted') });
      };
      const settle = (outcome: TaskOutcome) => {
        signal?.removeEventListener('abort', stop);
        this.#waiting.delete(id);
        resolve(outcome);
      };
      this.#waiting.set(id, { settle, step });
      this.#send({ kind: 'task', id, task });
      signal?.addEventListener('abort', stop);
    });
  }

  async end(): Promise<void> {
    this.ended = true;
    await this.#worker.terminate();
  }

  #send(message: ToWorker): void {
    this.#worker.postMessage(message);
  }

  #receive(message: FromWorker): void {
    if (message.kind === 'fault') {
      this.#fail(message.fault);
      return;
    }
    const waiting = this.#waiting.get(message.id);
    if (message.kind === 'step') waiting?.step(message.step);
    else waiting?.settle(message.outcome);
  }

  #fail(fault: string): void {
    this.ended = true;
    for (const { settle } of [...this.#waiting.values()]) {
      settle({ ok: false, error: hostError('printing-failed', fault) });
    }
  }
}

/** What prints, for all windows. */
export class Printing {
  #previews: Thread | null = null;
  readonly #exports = new Set<Thread>();
  #idle: NodeJS.Timeout | undefined;

  /** One booklet's bytes. */
  async print(
    work: PrintWork,
    choice: PrintChoice,
    signal?: AbortSignal,
  ): Promise<Answer<Omit<PrintedTask, 'kind'>>> {
    if (signal?.aborted) return { ok: false, error: hostError('interrupted') };
    clearTimeout(this.#idle);
    if (this.#previews === null || this.#previews.ended) this.#previews = new Thread();
    const thread = this.#previews;
    const outcome = await thread.run({ kind: 'print', work, choice }, () => undefined, signal);
    if (!thread.busy) this.#endWhenIdle(thread);
    if (!outcome.ok) return outcome;
    const { pdf, pages, findings, listing } = outcome.value as PrintedTask;
    return { ok: true, value: { pdf, pages, findings, listing } };
  }

  /** Writes the PDFs into the folder at `path`. */
  async export(
    work: PrintWork,
    request: Extract<PrintTask, { kind: 'export' }>['request'],
    as: Extract<PrintTask, { kind: 'export' }>['as'],
    path: string,
    step: (step: ExportStep) => void,
    signal?: AbortSignal,
  ): Promise<Answer<Omit<ExportedTask, 'kind'>>> {
    if (signal?.aborted)
      return {
        ok: true,
        value: { files: [], findings: [], notes: [], listings: [], stopped: 'interrupted' },
      };
    const thread = new Thread();
    this.#exports.add(thread);
    const outcome = await thread.run({ kind: 'export', work, request, as, folder: path }, step, signal);
    this.#exports.delete(thread);
    await thread.end();
    if (!outcome.ok) return outcome;
    const { kind: _, ...exported } = outcome.value as ExportedTask;
    return { ok: true, value: exported };
  }

  /** Ends the threads; what they were doing is answered as failed. */
  async close(): Promise<void> {
    clearTimeout(this.#idle);
    await Promise.all([this.#previews, ...this.#exports].map((thread) => thread?.end()));
    this.#previews = null;
  }

  #endWhenIdle(thread: Thread): void {
    clearTimeout(this.#idle);
    this.#idle = setTimeout(() => {
      if (this.#previews === thread && !thread.busy) this.#previews = null;
      if (!thread.busy) void thread.end();
    }, IDLE_MS).unref();
  }
}
