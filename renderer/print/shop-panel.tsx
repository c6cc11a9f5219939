/** The section "For the shop": the listing to copy, and archives with PDFs, listing and pictures of pages. */
import { useEffect, useId, useRef, useState } from 'react';
import type { ExportReport, ExportStep, FileRef, PicturedPage, PrintChoice } from '../../app/host/host.ts';
import type { Paper } from '../../core/print/style.ts';
import type { Terms } from '../../core/trade/stitches.ts';
import { useDesk, useStudio } from '../shell/hooks.ts';
import { printWords } from '../words/print.ts';
import { shellWords } from '../words/shell.ts';
import { shopWords } from '../words/shop.ts';
import { Boxes } from './export-panel.tsx';
import { openPdf } from './pdf.ts';
import { pagePng } from './pictures.ts';

interface ShopPanelProps {
  readonly shown: PrintChoice;
  /** Listing of the pages shown; null while there is none. */
  readonly listing: string | null;
  readonly pages: number;
}

type Outcome = { readonly report: ExportReport; readonly folder: FileRef } | { readonly fault: string };

/** Page numbers as typed; null when they are none. */
function numbersIn(words: string, pages: number): readonly number[] | null {
  const numbers = words
    .split(/[,;\s]+/u)
    .filter((word) => word !== '')
    .map(Number);
  const fits = numbers.every((n) => Number.isInteger(n) && n >= 1 && n <= pages);
  return fits ? [...new Set(numbers)] : null;
}

export function ShopPanel({ shown, listing, pages }: ShopPanelProps) {
  const studio = useStudio();
  const desk = useDesk();
  const [terms, setTerms] = useState<readonly Terms[]>([shown.terms]);
  const [papers, setPapers] = useState<readonly Paper[]>(['a4', 'letter']);
  const [typed, setTyped] = useState('1');
  const [step, setStep] = useState<ExportStep | 'pictures' | null>(null);
  const [outcome, setOutcome] = useState<Outcome | null>(null);
  const stop = useRef<AbortController | null>(null);
  const note = useId();
  useEffect(() => () => stop.current?.abort(), []);
  const numbers = numbersIn(typed, Math.max(1, pages));

  const copy = async () => {
    try {
      await navigator.clipboard.writeText(listing ?? '');
      studio.tell(shopWords.copied);
    } catch {
      studio.tell(shopWords.notCopied);
    }
  };

  const picturesOf = async (job: Parameters<typeof studio.host.print>[0], signal: AbortSignal) => {
    const pictures: (PicturedPage & { readonly png: Uint8Array })[] = [];
    if (numbers === null || numbers.length === 0) return pictures;
    for (const own of terms) {
      const choice = { terms: own, paper: papers[0] ?? shown.paper, edition: shown.edition, size: null };
      const answer = await studio.host.print(job, choice, signal);
      if (!answer.ok) throw new Error(answer.error.message);
      const pdf = await openPdf(answer.value.pdf);
      try {
        for (const page of numbers.filter((n) => n <= pdf.numPages))
          pictures.push({ terms: own, page, png: await pagePng(pdf, page) });
      } finally {
        await pdf.destroy();
      }
    }
    return pictures;
  };

  const run = async () => {
    const folder = await studio.host.chooseFolder();
    if (folder === null) return;
    const control = new AbortController();
    stop.current = control;
    setOutcome(null);
    setStep('pictures');
    try {
      await studio.journal?.givePictures();
      const job = { desk: desk.id, document: desk.view().document.toJSON() as unknown };
      const pictures = await picturesOf(job, control.signal);
      const answer = await studio.host.export(
        job,
        {
          terms,
          papers,
          editions: [shown.edition],
          sizes: [null],
          as: { kind: 'pack', pages: pictures.map(({ terms: own, page }) => ({ terms: own, page })) },
          pictures: pictures.map(({ png }) => png),
          folder: folder.handle,
        },
        setStep,
        control.signal,
      );
      setOutcome(answer.ok ? { report: answer.value, folder } : { fault: answer.error.message });
    } catch (fault) {
      const words = control.signal.aborted
        ? shopWords.stopped
        : fault instanceof Error
          ? fault.message
          : String(fault);
      setOutcome({ fault: words });
    } finally {
      stop.current = null;
      setStep(null);
    }
  };

  const isReady = terms.length > 0 && papers.length > 0 && numbers !== null;
  return (
    <section className="export" aria-labelledby="shop-title">
      <h3 id="shop-title">{shopWords.title}</h3>
      <p className="quiet">{shopWords.lead}</p>
      <label className="field">
        <span>{shopWords.listing}</span>
        <textarea rows={8} readOnly value={listing ?? ''} />
      </label>
      <p className="quiet">{shopWords.listingNote}</p>
      <button type="button" disabled={listing === null} onClick={() => void copy()}>
        {shopWords.copy}
      </button>
      <Boxes
        legend={printWords.terms}
        options={[
          ['us', shellWords.terms('us')],
          ['uk', shellWords.terms('uk')],
        ]}
        value={terms}
        onChange={setTerms}
      />
      <Boxes
        legend={printWords.paper}
        options={Object.entries(printWords.papers) as [Paper, string][]}
        value={papers}
        onChange={setPapers}
      />
      <label className="field">
        <span>{shopWords.pictures}</span>
        <input
          value={typed}
          inputMode="numeric"
          aria-describedby={note}
          aria-invalid={numbers === null}
          onChange={(event) => setTyped(event.target.value)}
        />
      </label>
      <p id={note} className={numbers === null ? 'form-fault' : 'quiet'}>
        {numbers === null ? shopWords.notPages(pages) : shopWords.picturesNote}
      </p>
      {step === null ? (
        <button type="button" className="chief" disabled={!isReady} onClick={() => void run()}>
          {shopWords.pack}
        </button>
      ) : (
        <div className="export-progress">
          <progress
            max={step === 'pictures' ? 1 : step.of}
            value={
              step === 'pictures' ? 0 : step.number - 1 + (step.pages === 0 ? 0 : step.page / step.pages)
            }
            aria-label={shopWords.title}
          />
          <p>
            {step === 'pictures'
              ? shopWords.picturing
              : printWords.working(step.number, step.of, step.page, step.pages)}
          </p>
          <button type="button" onClick={() => stop.current?.abort()}>
            {printWords.cancel}
          </button>
        </div>
      )}
      <div role="status">{outcome !== null && <Packed outcome={outcome} />}</div>
    </section>
  );
}

function Packed({ outcome }: { readonly outcome: Outcome }) {
  const studio = useStudio();
  if ('fault' in outcome) return <p className="form-fault">{outcome.fault}</p>;
  const { report, folder } = outcome;
  const place = folder.folder === '' ? folder.name : `${folder.folder}/${folder.name}`;
  const [first] = report.files;
  const show = async () => {
    if (first === undefined || !(await studio.host.reveal(first.file.handle)))
      studio.trouble(printWords.show, printWords.cannotShow(place));
  };
  const { stopped } = report;
  return (
    <>
      <p className={stopped === null || stopped === 'interrupted' ? undefined : 'form-fault'}>
        {stopped === null
          ? shopWords.done(report.files.length, place)
          : stopped === 'interrupted'
            ? shopWords.stopped
            : stopped.message}
      </p>
      {report.notes.map((words) => (
        <p key={words}>{words}</p>
      ))}
      {report.files.length > 0 && (
        <>
          <ul className="export-files" aria-label={shopWords.written}>
            {report.files.map(({ file }) => (
              <li key={file.handle}>{file.name}</li>
            ))}
          </ul>
          <button type="button" onClick={() => void show()}>
            {printWords.show}
          </button>
        </>
      )}
    </>
  );
}
