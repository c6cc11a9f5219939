/**
 * Files being made in a folder that the maker chooses: how far that is, the way to stop it, and what came of it. Which
 * files, and what is made for them first, is for the panels to say.
 */
import { type ReactNode, useEffect, useRef, useState } from 'react';
import type { Answer, ExportReport, ExportStep, FileRef, PrintJob } from '../../app/host/host.ts';
import { useDesk, useStudio } from '../shell/hooks.ts';
import { printWords } from '../words/print.ts';

type Outcome = { readonly report: ExportReport; readonly folder: FileRef } | { readonly fault: string };

/** How far it is: a step of the host's, or words for what goes before those. */
export type Step = ExportStep | string;

/** Makes the files, and tells its steps. Rejects with words for the maker. */
export type Make = (
  job: PrintJob,
  folder: FileRef,
  tell: (step: Step) => void,
  signal: AbortSignal,
) => Promise<Answer<ExportReport>>;

export interface Making {
  readonly step: Step | null;
  readonly outcome: Outcome | null;
  /** Asks for the folder and begins. */
  run(first: Step, make: Make): Promise<void>;
  stop(): void;
}

/** @param stopped What is said when it was stopped before any file was begun. */
export function useMaking(stopped: string): Making {
  const studio = useStudio();
  const desk = useDesk();
  const [step, setStep] = useState<Step | null>(null);
  const [outcome, setOutcome] = useState<Outcome | null>(null);
  const control = useRef<AbortController | null>(null);
  useEffect(() => () => control.current?.abort(), []);
  const run = async (first: Step, make: Make) => {
    const folder = await studio.host.chooseFolder();
    if (folder === null) return;
    const own = new AbortController();
    control.current = own;
    setOutcome(null);
    setStep(first);
    try {
      await studio.journal?.givePictures();
      const job = { desk: desk.id, document: desk.view().document.toJSON() as unknown };
      const answer = await make(job, folder, setStep, own.signal);
      setOutcome(answer.ok ? { report: answer.value, folder } : { fault: answer.error.message });
    } catch (fault) {
      const words = fault instanceof Error ? fault.message : String(fault);
      setOutcome({ fault: own.signal.aborted ? stopped : words });
    } finally {
      control.current = null;
      setStep(null);
    }
  };
  return { step, outcome, run, stop: () => control.current?.abort() };
}

export interface MakingWords {
  /** What is being made. */
  readonly title: string;
  readonly button: string;
  readonly done: (files: number, folder: string) => string;
  readonly stopped: (files: number) => string;
  readonly written: string;
}

interface MakingPartProps {
  readonly making: Making;
  readonly words: MakingWords;
  readonly isReady: boolean;
  readonly onBegin: () => void;
  /** Told beside a file's name. */
  readonly about?: (file: ExportReport['files'][number]) => ReactNode;
}

/** The button that begins it; meanwhile how far it is; and then what came of it. */
export function MakingPart({ making, words, isReady, onBegin, about }: MakingPartProps) {
  const { step, outcome, stop } = making;
  return (
    <>
      {step === null ? (
        <button type="button" className="chief" disabled={!isReady} onClick={onBegin}>
          {words.button}
        </button>
      ) : (
        <div className="export-progress">
          <progress {...extent(step)} aria-label={words.title} />
          <p>
            {typeof step === 'string'
              ? step
              : printWords.working(step.number, step.of, step.page, step.pages)}
          </p>
          <button type="button" onClick={stop}>
            {printWords.cancel}
          </button>
        </div>
      )}
      <div role="status">
        {outcome !== null &&
          ('fault' in outcome ? (
            <p className="form-fault">{outcome.fault}</p>
          ) : (
            <Made {...outcome} words={words} about={about} />
          ))}
      </div>
    </>
  );
}

function extent(step: Step): { readonly max: number; readonly value: number } {
  if (typeof step === 'string') return { max: 1, value: 0 };
  return { max: step.of, value: step.number - 1 + (step.pages === 0 ? 0 : step.page / step.pages) };
}

interface MadeProps {
  readonly report: ExportReport;
  readonly words: MakingWords;
  readonly about: MakingPartProps['about'] | undefined;
  readonly folder: FileRef;
}

function Made({ report: { files, stopped, notes, findings }, folder, words, about }: MadeProps) {
  const studio = useStudio();
  const place = folder.folder === '' ? folder.name : `${folder.folder}/${folder.name}`;
  const [first] = files;
  const show = async () => {
    if (first === undefined || !(await studio.host.reveal(first.file.handle)))
      studio.trouble(printWords.show, printWords.cannotShow(place));
  };
  const isBroken = stopped !== null && stopped !== 'interrupted';
  return (
    <>
      <p className={isBroken ? 'form-fault' : undefined}>
        {isBroken && `${stopped.message} `}
        {stopped === null ? words.done(files.length, place) : words.stopped(files.length)}
      </p>
      {notes.map((note) => (
        <p key={note}>{note}</p>
      ))}
      {files.length > 0 && (
        <>
          <ul className="export-files" aria-label={words.written}>
            {files.map((written) => (
              <li key={written.file.handle}>
                {written.file.name} {about?.(written)}
              </li>
            ))}
          </ul>
          <button type="button" onClick={() => void show()}>
            {printWords.show}
          </button>
        </>
      )}
      {findings.length > 0 && (
        <ul>
          {findings.map(({ code, message }) => (
            <li key={`${code} ${message}`}>{message}</li>
          ))}
        </ul>
      )}
    </>
  );
}
