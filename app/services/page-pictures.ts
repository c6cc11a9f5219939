/**
 * Pictures of a PDF's pages with the system's own tool for it, where there is one. The studio makes them in its page;
 * this is for the command line. It writes into a folder of its own and leaves nothing there.
 */
import { execFile } from 'node:child_process';
import fs from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import type { PagePicture } from './shop.ts';

const run = promisify(execFile);
const TOOL = 'pdftoppm';

/** Dots per inch: an A4 page is about 1240 dots wide, enough for a shop's page. */
const RESOLUTION = 150;

/** Whether the system has the tool. */
export async function hasPictureTool(): Promise<boolean> {
  try {
    await run(TOOL, ['-v']);
    return true;
  } catch {
    return false;
  }
}

/** Pictures of pages as PNG. Rejects where the tool fails, as for a page that is not there. */
export async function pagePictures(
  pdf: Uint8Array,
  pages: readonly number[],
  signal?: AbortSignal,
): Promise<readonly PagePicture[]> {
  const folder = await fs.mkdtemp(join(tmpdir(), 'turnchain-pages-'));
  try {
    const source = join(folder, 'pattern.pdf');
    await fs.writeFile(source, pdf);
    const pictures: PagePicture[] = [];
    for (const page of pages) {
      const target = join(folder, `page-${page}`);
      const range = ['-f', String(page), '-l', String(page), '-singlefile'];
      await run(TOOL, ['-png', '-r', String(RESOLUTION), ...range, source, target], signal ? { signal } : {});
      pictures.push({ page, png: await fs.readFile(`${target}.png`) });
    }
    return pictures;
  } finally {
    await fs.rm(folder, { recursive: true, force: true });
  }
}
