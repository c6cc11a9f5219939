/** The pages of the booklet in their own scroller, as wide as there is room. */
import type { PDFDocumentProxy } from 'pdfjs-dist';
import { useEffect, useRef, useState } from 'react';
import { printWords } from '../words/print.ts';
import { PdfPage } from './page.tsx';

/** Width of the pages in the window; never wider than comfortable to read. */
function useWidth(): { readonly ref: React.RefObject<HTMLDivElement | null>; readonly width: number } {
  const ref = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(640);
  useEffect(() => {
    const element = ref.current;
    if (element === null) return;
    const watch = new ResizeObserver(([entry]) => {
      if (entry) setWidth(Math.max(200, Math.min(900, Math.floor(entry.contentRect.width))));
    });
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  return { ref, width };
}

export interface PagesProps {
  readonly pdf: PDFDocumentProxy | null;
  readonly isWorking: boolean;
  /** As large as on paper. */
  readonly isReal: boolean;
}

export function Pages({ pdf, isWorking, isReal }: PagesProps) {
  const { ref, width } = useWidth();
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keyboard
    <section className="pdf-pages" aria-label={printWords.pages} aria-busy={isWorking} tabIndex={0}>
      <div ref={ref}>
        {pdf !== null &&
          Array.from({ length: pdf.numPages }, (_, index) => (
            <PdfPage
              // biome-ignore lint/suspicious/noArrayIndexKey: a page is its number
              key={`${pdf.fingerprints[0]}-${index}`}
              pdf={pdf}
              number={index + 1}
              width={isReal ? null : width}
            />
          ))}
      </div>
    </section>
  );
}
