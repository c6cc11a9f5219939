/** The PDF reader of the page, with its own worker. Nothing is fetched: fonts are in the PDFs. */
import * as reader from 'pdfjs-dist';

let isReady = false;

export function openPdf(bytes: Uint8Array): Promise<reader.PDFDocumentProxy> {
  if (!isReady) {
    reader.GlobalWorkerOptions.workerPort = new Worker(
      new URL('pdfjs-dist/build/pdf.worker.mjs', import.meta.url),
      { type: 'module' },
    );
    isReady = true;
  }
  return reader.getDocument({
    data: bytes.slice(),
    isEvalSupported: false,
    useWasm: false,
    useSystemFonts: false,
    disableFontFace: false,
  }).promise;
}

export const { TextLayer } = reader;
