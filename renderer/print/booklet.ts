/**
 * The booklet on screen: asks the host for the PDF of a choice, again after each edit once the maker pauses, and
 * drops what comes too late. It lays nothing out.
 */
import type { PDFDocumentProxy } from 'pdfjs-dist';
import { useEffect, useRef, useState } from 'react';
import type { PrintChoice } from '../../app/host/host.ts';
import type { Finding } from '../../core/finding.ts';
import { useDesk, useDeskView, useStudio } from '../shell/hooks.ts';
import { openPdf } from './pdf.ts';

export interface Booklet {
  readonly pdf: PDFDocumentProxy | null;
  readonly findings: readonly Finding[];
  /** The text of a shop's listing for it; null while there is none. */
  readonly listing: string | null;
  readonly isWorking: boolean;
  readonly fault: string | null;
}

const NONE: Booklet = { pdf: null, findings: [], listing: null, isWorking: true, fault: null };

/** How long the maker pauses before the pages are laid out again, in milliseconds. */
const PAUSE = 500;

export function useBooklet(choice: PrintChoice): Booklet {
  const studio = useStudio();
  const desk = useDesk();
  const document = useDeskView((view) => view.document);
  const [booklet, setBooklet] = useState(NONE);
  const { terms, paper, edition, size } = choice;
  /** The first pages come at once; after an edit the maker's pause is waited for. */
  const isFirst = useRef(true);
  useEffect(() => {
    const stop = new AbortController();
    const work = async () => {
      setBooklet((before) => ({ ...before, isWorking: true }));
      await studio.journal?.givePictures();
      const job = { desk: desk.id, document: document.toJSON() as unknown };
      const answer = await studio.host.print(job, { terms, paper, edition, size }, stop.signal);
      if (stop.signal.aborted) return;
      isFirst.current = false;
      if (!answer.ok) {
        setBooklet((before) => ({ ...before, isWorking: false, fault: answer.error.message }));
        return;
      }
      const pdf = await openPdf(answer.value.pdf);
      if (stop.signal.aborted) {
        await pdf.destroy();
        return;
      }
      setBooklet((before) => {
        void before.pdf?.destroy();
        const { findings, listing } = answer.value;
        return { pdf, findings, listing, isWorking: false, fault: null };
      });
    };
    const timer = setTimeout(
      () =>
        void work().catch((fault: unknown) => {
          if (!stop.signal.aborted)
            setBooklet((before) => ({ ...before, isWorking: false, fault: String(fault) }));
        }),
      isFirst.current ? 0 : PAUSE,
    );
    return () => {
      clearTimeout(timer);
      stop.abort();
    };
  }, [studio, desk, document, terms, paper, edition, size]);
  return booklet;
}
