/** Writes PDFs: which, where, how far it is, and what came of it. */
import { useEffect, useRef, useState } from 'react';
import type { ExportReport, ExportStep, FileRef, PrintChoice } from '../../app/host/host.ts';
import type { Edition, Paper } from '../../core/print/style.ts';
import type { Terms } from '../../core/trade/stitches.ts';
import { useDesk, useDeskView, useStudio } from '../shell/hooks.ts';
import { printWords } from '../words/print.ts';
import { shellWords } from '../words/shell.ts';

type Span = 'all' | 'each';

interface Choices {
  readonly terms: readonly Terms[];
  readonly papers: readonly Paper[];
  readonly editions: readonly Edition[];
  readonly sizes: readonly Span[];
}

type Outcome = { readonly report: ExportReport; readonly folder: FileRef } | { readonly fault: string };

function toggled<T>(list: readonly T[], value: T): readonly T[] {
  return list.includes(value) ? list.filter((other) => other !== value) : [...list, value];
}

interface BoxesProps<T extends string> {
  readonly legend: string;
  readonly options: readonly (readonly [T, string])[];
  readonly value: readonly T[];
  readonly onChange: (value: readonly T[]) => void;
}

/** Boxes to tick, several at once. */
export function Boxes<T extends string>({ legend, options, value, onChange }: BoxesProps<T>) {
  return (
    <fieldset className="choices boxes">
      <legend>{legend}</legend>
      {options.map(([option, words]) => (
        <label key={option} className="choice">
          <input
            type="checkbox"
            checked={value.includes(option)}
            onChange={() => onChange(toggled(value, option))}
          />
          <span>{words}</span>
        </label>
      ))}
    </fieldset>
  );
}

export function ExportPanel({ shown }: { readonly shown: PrintChoice }) {
  const studio = useStudio();
  const desk = useDesk();
  const pattern = useDeskView((view) => view.pattern);
  const [choices, setChoices] = useState<Choices>({
    terms: ['us', 'uk'],
    papers: [shown.paper],
    editions: [shown.edition],
    sizes: ['all'],
  });
  const [step, setStep] = useState<ExportStep | null>(null);
  const [outcome, setOutcome] = useState<Outcome | null>(null);
  const stop = useRef<AbortController | null>(null);
  useEffect(() => () => stop.current?.abort(), []);
  const spans = choices.sizes.reduce((sum, span) => sum + (span === 'all' ? 1 : pattern.sizes.length), 0);
  const count = choices.terms.length * choices.papers.length * choices.editions.length * spans;

  const run = async () => {
    const folder = await studio.host.chooseFolder();
    if (folder === null) return;
    const control = new AbortController();
    stop.current = control;
    setOutcome(null);
    setStep({ file: '', number: 1, of: count, page: 0, pages: 0 });
    try {
      await studio.journal?.givePictures();
      const answer = await studio.host.export(
        { desk: desk.id, document: desk.view().document.toJSON() as unknown },
        {
          terms: choices.terms,
          papers: choices.papers,
          editions: choices.editions,
          sizes: [
            ...(choices.sizes.includes('all') ? [null] : []),
            ...(choices.sizes.includes('each') ? pattern.sizes.map(({ id }) => id) : []),
          ],
          folder: folder.handle,
        },
        setStep,
        control.signal,
      );
      setOutcome(answer.ok ? { report: answer.value, folder } : { fault: answer.error.message });
    } catch (fault) {
      setOutcome({ fault: fault instanceof Error ? fault.message : String(fault) });
    } finally {
      stop.current = null;
      setStep(null);
    }
  };

  return (
    <section className="export" aria-labelledby="export-title">
      <h3 id="export-title">{printWords.exportTitle}</h3>
      <Boxes
        legend={printWords.terms}
        options={[
          ['us', shellWords.terms('us')],
          ['uk', shellWords.terms('uk')],
        ]}
        value={choices.terms}
        onChange={(terms) => setChoices({ ...choices, terms })}
      />
      <Boxes
        legend={printWords.paper}
        options={Object.entries(printWords.papers) as [Paper, string][]}
        value={choices.papers}
        onChange={(papers) => setChoices({ ...choices, papers })}
      />
      <Boxes
        legend={printWords.edition}
        options={Object.entries(printWords.editions) as [Edition, string][]}
        value={choices.editions}
        onChange={(editions) => setChoices({ ...choices, editions })}
      />
      <Boxes
        legend={printWords.sizes}
        options={[
          ['all', printWords.allInOne],
          ['each', printWords.eachSize],
        ]}
        value={choices.sizes}
        onChange={(sizes) => setChoices({ ...choices, sizes })}
      />
      <p className="quiet">{count === 0 ? printWords.nothingChosen : printWords.files(count)}</p>
      {step === null ? (
        <button type="button" className="chief" disabled={count === 0} onClick={() => void run()}>
          {printWords.export}
        </button>
      ) : (
        <div className="export-progress">
          <progress
            max={step.of}
            value={step.number - 1 + (step.pages === 0 ? 0 : step.page / step.pages)}
            aria-label={printWords.exportTitle}
          />
          <p>{printWords.working(step.number, step.of, step.page, step.pages)}</p>
          <button type="button" onClick={() => stop.current?.abort()}>
            {printWords.cancel}
          </button>
        </div>
      )}
      <div role="status">{outcome !== null && <Came outcome={outcome} />}</div>
    </section>
  );
}

function Came({ outcome }: { readonly outcome: Outcome }) {
  const studio = useStudio();
  if ('fault' in outcome) return <p className="form-fault">{outcome.fault}</p>;
  const { report, folder } = outcome;
  const place = folder.folder === '' ? folder.name : `${folder.folder}/${folder.name}`;
  const [first] = report.files;
  const show = async () => {
    if (first === undefined || !(await studio.host.reveal(first.file.handle)))
      studio.trouble(printWords.show, printWords.cannotShow(place));
  };
  return (
    <>
      {report.stopped === null ? (
        <p>{printWords.done(report.files.length, place)}</p>
      ) : report.stopped === 'interrupted' ? (
        <p>{printWords.stopped(report.files.length)}</p>
      ) : (
        <p className="form-fault">
          {report.stopped.message} {printWords.stopped(report.files.length)}
        </p>
      )}
      {report.files.length > 0 && (
        <>
          <ul className="export-files" aria-label={printWords.written}>
            {report.files.map(({ file, pages }) => (
              <li key={file.handle}>
                {file.name} <small className="quiet">{printWords.laidOut(pages)}</small>
              </li>
            ))}
          </ul>
          <button type="button" onClick={() => void show()}>
            {printWords.show}
          </button>
        </>
      )}
      {report.findings.length > 0 && (
        <ul>
          {report.findings.map((finding) => (
            <li key={`${finding.code} ${finding.message}`}>{finding.message}</li>
          ))}
        </ul>
      )}
    </>
  );
}
