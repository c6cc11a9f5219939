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

/** All PDFs share one worker, which takes no new one while it lets another go: how often and how soon it is asked again. */
const ASKED = 40;
const SOON = 25;

/** Opens a PDF. Rejects for what is none that can be read. Whoever opens it destroys it. */
export async function openPdf(bytes: Uint8Array): Promise<PDFDocumentProxy> {
  loading ??= load();
  const reader = await loading;
  for (let asked = 1; ; asked++) {
    try {
      return await reader.getDocument({
        data: bytes.slice(),
        isEvalSupported: false,
        useWasm: false,
        useSystemFonts: false,
        disableFontFace: false,
      }).promise;
    } catch (fault) {
      if (asked === ASKED || !/being destroyed/u.test(String(fault))) throw fault;
      await new Promise((done) => setTimeout(done, SOON));
    }
  }
}

/** The words of a page of a PDF that is open, over its picture. */
export function textLayer(of: ConstructorParameters<typeof TextLayer>[0]): TextLayer {
  if (loaded === null) throw new Error('A page is shown before its PDF is open.');
  return new loaded.TextLayer(of);
}
