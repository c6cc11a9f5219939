/**
 * The worker that studies the pattern while the maker types: takes the document's steps, works, and tells what
 * changed. Steps that arrive while it works are taken together before it works again. It knows no view.
 */
import { Node } from 'prosemirror-model';
import { Step } from 'prosemirror-transform';
import { project } from '../../core/document/project.ts';
import { schema } from '../../core/document/schema.ts';
import { settled } from '../../core/review/accepted.ts';
import { type Study, study } from '../../core/study/study.ts';
import type { FromWorker, ToWorker } from './protocol.ts';
import { Reporter } from './reporter.ts';
import { lineTrialOf, trialOf } from './trial.ts';

let document: Node | null = null;
let version = -1;
let studied: Study | null = null;
let reporter = new Reporter();
let waiting = false;
/** Version that was told last. */
let reported = -1;

const tell = (message: FromWorker): void => self.postMessage(message);

function work(): void {
  waiting = false;
  if (document === null || reported === version) return;
  reported = version;
  studied = study(project(document), studied);
  tell({ kind: 'changes', ...reporter.changes(studied, settled(studied), version) });
}

/** Answers with what the newest state has. */
function tryFigure(serial: number, expression: string): void {
  if (waiting) work();
  if (studied !== null) tell({ kind: 'figure-told', serial, trial: trialOf(expression, studied) });
}

/** Works once all messages that are here already have been taken. */
function workSoon(): void {
  if (waiting) return;
  waiting = true;
  setTimeout(work, 0);
}

self.onmessage = ({ data }: MessageEvent<ToWorker>): void => {
  if (data.kind === 'figure-asked') {
    tryFigure(data.serial, data.expression);
    return;
  }
  if (data.kind === 'line-asked') {
    if (waiting) work();
    const { serial, id, rule } = data;
    if (studied !== null) tell({ kind: 'line-told', serial, trial: lineTrialOf(id, rule, studied) });
    return;
  }
  if (data.kind === 'document') {
    document = Node.fromJSON(schema, data.document);
    reporter = new Reporter();
    studied = null;
    reported = -1;
  } else {
    for (const step of data.steps) {
      const applied = document === null ? null : Step.fromJSON(schema, step).apply(document);
      if (applied?.doc == null) {
        document = null;
        tell({ kind: 'lost' });
        return;
      }
      document = applied.doc;
    }
  }
  version = data.version;
  workSoon();
};
