/**
 * The PDF reader of the page, with its own worker. Nothing is fetched: fonts are in the PDFs. The reader is large and
 * no other place needs it, so it is loaded when the first PDF is opened.
 */
import type { PDFDocumentProxy, TextLayer } from 'pdfjs-dist';

type Reader = typeof import('pdfjs-dist');

let loading: Promise<Reader> | null = null;
let loaded: Reader | null = null;

async function load(): Promise<Reader> {
  const reader = await import('pdfjs-dist');
  reader.GlobalWorkerOptions.workerPort = new Worker(
    new URL('pdfjs-dist/build/pdf.worker.mjs', import.meta.url),
    { type: 'module' },
  );
  loaded = reader;
  return reader;
}

export async function openPdf(bytes: Uint8Array): Promise<PDFDocumentProxy> {
  loading ??= load();
  const reader = await loading;
  return reader.getDocument({
    data: bytes.slice(),
    isEvalSupported: false,
    useWasm: false,
    useSystemFonts: false,
    disableFontFace: false,
  }).promise;
}

/** The words of a page of a PDF that is open, over its picture. */
export function textLayer(of: ConstructorParameters<typeof TextLayer>[0]): TextLayer {
  if (loaded === null) throw new Error('A page is shown before its PDF is open.');
  return new loaded.TextLayer(of);
}
