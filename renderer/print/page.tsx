/** One page of the booklet: its picture when it comes into view, and its text over it, to be selected and read aloud. */
import type { PDFDocumentProxy, PDFPageProxy, RenderTask } from 'pdfjs-dist';
import { useEffect, useRef, useState } from 'react';
import { printWords } from '../words/print.ts';
import { textLayer } from './pdf.ts';

export interface PdfPageProps {
  readonly pdf: PDFDocumentProxy;
  /** From 1. */
  readonly number: number;
  /** CSS pixels wide; null = as large as on paper (96 px an inch). */
  readonly width: number | null;
}

/** PDF points in an inch, and CSS pixels. */
const REAL = 96 / 72;

export function PdfPage({ pdf, number, width }: PdfPageProps) {
  const box = useRef<HTMLDivElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const text = useRef<HTMLDivElement>(null);
  const [page, setPage] = useState<PDFPageProxy | null>(null);
  const [isNear, setNear] = useState(number <= 2);

  useEffect(() => {
    let isLate = false;
    void pdf.getPage(number).then((loaded) => {
      if (!isLate) setPage(loaded);
    });
    return () => {
      isLate = true;
    };
  }, [pdf, number]);

  useEffect(() => {
    const element = box.current;
    if (element === null) return;
    const watch = new IntersectionObserver(([entry]) => setNear(entry?.isIntersecting ?? false), {
      rootMargin: '800px',
    });
    watch.observe(element);
    return () => watch.disconnect();
  }, []);

  const plain = page?.getViewport({ scale: 1 }) ?? null;
  const scale = plain === null ? 1 : width === null ? REAL : width / plain.width;

  useEffect(() => {
    const surface = canvas.current;
    const layer = text.current;
    if (page === null || !isNear || surface === null || layer === null) return;
    const viewport = page.getViewport({ scale });
    const sharp = Math.min(3, window.devicePixelRatio || 1);
    surface.width = Math.floor(viewport.width * sharp);
    surface.height = Math.floor(viewport.height * sharp);
    const task: RenderTask = page.render({
      canvas: surface,
      viewport,
      transform: [sharp, 0, 0, sharp, 0, 0],
    });
    task.promise.catch(() => undefined); // cancelled when the page is drawn anew
    layer.replaceChildren();
    layer.style.setProperty('--total-scale-factor', String(scale));
    const words = textLayer({
      textContentSource: page.streamTextContent({ includeMarkedContent: true }),
      container: layer,
      viewport,
    });
    words.render().catch(() => undefined);
    return () => {
      task.cancel();
      words.cancel();
    };
  }, [page, isNear, scale]);

  useEffect(() => {
    const element = box.current;
    if (element === null || plain === null) return;
    element.style.setProperty('--page-width', `${plain.width * scale}px`);
    element.style.setProperty('--page-height', `${plain.height * scale}px`);
  }, [plain, scale]);

  return (
    <section className="pdf-page" ref={box} aria-label={printWords.page(number, pdf.numPages)}>
      {isNear && (
        <>
          <canvas ref={canvas} />
          <div className="pdf-text" ref={text} />
        </>
      )}
    </section>
  );
}
