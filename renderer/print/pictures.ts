/** Pictures of a PDF's pages as PNG, drawn by the page's own reader of PDFs. */
import type { PDFDocumentProxy } from 'pdfjs-dist';

/** Dots along the width of a picture: enough for a shop's page. */
const WIDTH = 1240;

/** One page as PNG. Rejects where the page's canvas gives none. */
export async function pagePng(pdf: PDFDocumentProxy, number: number): Promise<Uint8Array> {
  const page = await pdf.getPage(number);
  const plain = page.getViewport({ scale: 1 });
  const viewport = page.getViewport({ scale: WIDTH / plain.width });
  const canvas = document.createElement('canvas');
  canvas.width = Math.floor(viewport.width);
  canvas.height = Math.floor(viewport.height);
  await page.render({ canvas, viewport }).promise;
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
  if (blob === null) throw new Error(`no picture of page ${number}`);
  return new Uint8Array(await blob.arrayBuffer());
}
