/**
 * The page's side of the study: hands edits to the worker and holds the newest report. A report is of one state
 * of the document, known by its number; whoever shows places in the text maps or drops what is late.
 */
import type { Node } from 'prosemirror-model';
import type { Step } from 'prosemirror-transform';
import type { LineRule } from '../../core/document/attributes.ts';
import type { DrawingChoice, DrawingsReport } from './drawings.ts';
import { applyChanges, type FromWorker, NOTHING_WATCHED, type ToWorker, type Watched } from './protocol.ts';
import { type FigureTrial, type LineTrial, NOTHING_KNOWN, type Report } from './report.ts';

/** The part of a Worker that is used, so that tests can run the same code without one. */
export interface WorkerLike {
  postMessage(message: ToWorker): void;
  onmessage: ((event: { readonly data: FromWorker }) => void) | null;
  terminate(): void;
}

export class Analyst {
  report: Report = NOTHING_KNOWN;
  /** Number of the newest state handed over. */
  version = 0;
  readonly #worker: WorkerLike;
  #document: Node;
  readonly #asked = new Map<number, (trial: FigureTrial) => void>();
  readonly #askedDrawings = new Map<number, (drawings: DrawingsReport) => void>();
  readonly #askedLines = new Map<number, (trial: LineTrial) => void>();
  #serial = 0;

  /** `told` is called after each new report. */
  constructor(document: Node, worker: WorkerLike, told: (report: Report) => void) {
    this.#worker = worker;
    this.#document = document;
    worker.onmessage = ({ data }) => {
      if (data.kind === 'lost') {
        this.#hand();
        return;
      }
      if (data.kind === 'figure-told') {
        this.#asked.get(data.serial)?.(data.trial);
        this.#asked.delete(data.serial);
        return;
      }
      if (data.kind === 'line-told') {
        this.#askedLines.get(data.serial)?.(data.trial);
        this.#askedLines.delete(data.serial);
        return;
      }
      if (data.kind === 'drawings-told') {
        this.#askedDrawings.get(data.serial)?.(data.drawings);
        this.#askedDrawings.delete(data.serial);
        return;
      }
      this.report = applyChanges(this.report, data);
      told(this.report);
    };
    this.#hand();
  }

  /** Takes the steps that led to `document`. */
  edited(document: Node, steps: readonly Step[]): void {
    this.#document = document;
    this.version += 1;
    this.#worker.postMessage({
      kind: 'steps',
      version: this.version,
      steps: steps.map((step) => step.toJSON()),
    });
  }

  /** What an expression that is not in the document would show. Never answered after `stop`. */
  tryFigure(expression: string): Promise<FigureTrial> {
    this.#serial += 1;
    const serial = this.#serial;
    return new Promise((answer) => {
      this.#asked.set(serial, answer);
      this.#worker.postMessage({ kind: 'figure-asked', serial, expression });
    });
  }

  /** What a line would come to by another rule. Never answered after `stop`. */
  tryLine(id: string, rule: LineRule): Promise<LineTrial> {
    this.#serial += 1;
    const serial = this.#serial;
    return new Promise((answer) => {
      this.#askedLines.set(serial, answer);
      this.#worker.postMessage({ kind: 'line-asked', serial, id, rule });
    });
  }

  /** Says what is on screen, for what is reckoned only while it is looked at. */
  watch(watched: Partial<Watched>): void {
    this.#worker.postMessage({ kind: 'watched', ...NOTHING_WATCHED, ...watched });
  }

  /** The drawings of the newest state. Never answered after `stop`. */
  draw(choice: DrawingChoice): Promise<DrawingsReport> {
    this.#serial += 1;
    const serial = this.#serial;
    return new Promise((answer) => {
      this.#askedDrawings.set(serial, answer);
      this.#worker.postMessage({ kind: 'drawings-asked', serial, choice });
    });
  }

  /** Whether the report is of the newest state. */
  get isCurrent(): boolean {
    return this.report.version === this.version;
  }

  stop(): void {
    this.#worker.onmessage = null;
    this.#asked.clear();
    this.#askedLines.clear();
    this.#askedDrawings.clear();
    this.#worker.terminate();
  }

  #hand(): void {
    this.#worker.postMessage({
      kind: 'document',
      version: this.version,
      document: this.#document.toJSON(),
    });
  }
}
