/**
 * The worker that studies the pattern while the maker types: takes the document's steps, works, and tells what
 * changed. Steps that arrive while it works are taken together before it works again. It knows no view.
 */
import { Node } from 'prosemirror-model';
import { Step } from 'prosemirror-transform';
import type { Pattern } from '../../core/document/pattern.ts';
import { project } from '../../core/document/project.ts';
import { schema } from '../../core/document/schema.ts';
import type { Finding } from '../../core/finding.ts';
import { settle, settled } from '../../core/review/accepted.ts';
import { review, reviewMeanwhile } from '../../core/review/review.ts';
import { measuredFor } from '../../core/study/measured-for.ts';
import { type Study, study } from '../../core/study/study.ts';
import { drawingsReport } from './drawings.ts';
import { abbreviationsOf } from './materials.ts';
import { type Changes, type FromWorker, NOTHING_WATCHED, type ToWorker, type Watched } from './protocol.ts';
import type { AbbreviationsReport } from './report.ts';
import { Reporter } from './reporter.ts';
import { lineTrialOf, trialOf } from './trial.ts';
import { personOf, workbookOf } from './workbook.ts';
import type { PersonReport, WorkbookReport } from './workbook-report.ts';

let document: Node | null = null;
let version = -1;
let studied: Study | null = null;
let reporter = new Reporter();
let waiting = false;
/** Version that was told last. */
let reported = -1;

const tell = (message: FromWorker): void => self.postMessage(message);

/** How long the maker pauses before what follows every row is done again, in milliseconds. */
const PAUSE = 700;

/** What the rules found last, those that wait for a pause among them; and the sizes they speak of. */
let reviewed: readonly Finding[] = [];
let sizes: Pattern['sizes'] | null = null;
let later: ReturnType<typeof setTimeout> | null = null;
let watched: Watched = NOTHING_WATCHED;
let personStudy: Study | null = null;

function work(): void {
  waiting = false;
  if (document === null || reported === version) return;
  reported = version;
  studied = study(project(document), studied);
  const waits = studied.pattern.workbook.makings.length > 0 && sizes === studied.pattern.sizes;
  sizes = studied.pattern.sizes;
  if (later !== null) clearTimeout(later);
  later = waits ? setTimeout(finish, PAUSE) : null;
  if (!waits) reviewed = review(studied);
  const { pattern } = studied;
  const found = waits
    ? settle(pattern, [...studied.findings, ...reviewMeanwhile(studied, reviewed)])
    : settled(studied);
  tell({ kind: 'changes', ...reporter.changes(studied, found, version), ...watching(studied) });
}

/** The maker pauses: what follows every row is told too. */
function finish(): void {
  later = null;
  if (studied === null || reported !== version) return;
  reviewed = review(studied);
  tell({ kind: 'changes', ...reporter.changes(studied, settled(studied), version) });
}

/** What is looked at besides: the workbook's numbers, one person's column, printed lists, as far as they differ. */
function watching(of: Study): Pick<Changes, 'workbook' | 'person' | 'abbreviations'> {
  const workbook = watched.workbook ? workbookOf(of) : null;
  const person = of.pattern.workbook.people.find(({ id }) => id === watched.person);
  const measured = person === undefined ? null : measuredFor(of.pattern, person);
  personStudy = measured === null ? null : study(measured.pattern, personStudy);
  const column = personStudy === null || measured === null ? null : personOf(personStudy, of, measured);
  const abbreviations = watched.abbreviations ? abbreviationsOf(of) : null;
  return {
    ...(lastAbbreviations.isNew(abbreviations) ? { abbreviations } : {}),
    ...(lastWorkbook.isNew(workbook) ? { workbook } : {}),
    ...(lastPerson.isNew(column) ? { person: column } : {}),
  };
}

/** Remembers what was told last, to tell it once. */
class Told<T> {
  #key: string | null = null;
  isNew(value: T): boolean {
    const key = JSON.stringify(value);
    if (key === this.#key) return false;
    this.#key = key;
    return true;
  }
  forget(): void {
    this.#key = null;
  }
}
const lastWorkbook = new Told<WorkbookReport | null>();
const lastPerson = new Told<PersonReport | null>();
const lastAbbreviations = new Told<AbbreviationsReport | null>();

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
  if (data.kind === 'watched') {
    watched = data;
    if (waiting) work();
    if (studied !== null) tell({ kind: 'changes', version: reported, ...watching(studied) });
    return;
  }
  if (data.kind === 'drawings-asked') {
    if (waiting) work();
    const { serial, choice } = data;
    if (studied !== null) tell({ kind: 'drawings-told', serial, drawings: drawingsReport(studied, choice) });
    return;
  }
  if (data.kind === 'document') {
    document = Node.fromJSON(schema, data.document);
    reporter = new Reporter();
    studied = null;
    reported = -1;
    sizes = null;
    lastWorkbook.forget();
    lastPerson.forget();
    lastAbbreviations.forget();
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
