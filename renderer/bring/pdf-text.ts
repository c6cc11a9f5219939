/** The words of a PDF as lines of text, for bringing an old pattern in. Pictures in it are not taken. */
import { type PlacedWords, textOfPages } from '../../core/intake/pdf-lines.ts';
import { openPdf } from '../print/pdf.ts';

/** More pages than any pattern has. */
const MOST_PAGES = 300;

/** The text; empty where there are no words in it (a scan). Rejects for what is no PDF that can be read. */
export async function textOfPdf(bytes: Uint8Array): Promise<string> {
  const pdf = await openPdf(bytes);
  try {
    const pages: PlacedWords[][] = [];
    for (let number = 1; number <= Math.min(pdf.numPages, MOST_PAGES); number++) {
      const page = await pdf.getPage(number);
      const { items } = await page.getTextContent();
      pages.push(
        items.flatMap((item): PlacedWords[] => {
          if (!('str' in item)) return [];
          const [, , skew = 0, tall = 0, left = 0, base = 0] = item.transform as number[];
          const size = Math.hypot(skew, tall) || item.height;
          return [{ words: item.str, left, width: item.width, base, size }];
        }),
      );
      page.cleanup();
    }
    return textOfPages(pages);
  } finally {
    await pdf.loadingTask.destroy();
  }
}
