/** The errata between two versions of a pattern, and the sheet of them as a PDF. It shows and asks nothing. */
import type { Fact } from '../../core/finding.ts';
import { type Errata, errataBetween } from '../../core/print/errata/errata.ts';
import { errataSheet } from '../../core/print/errata/sheet.ts';
import { fontsIn, layOut, writePages } from '../../core/print/index.ts';
import type { Paper } from '../../core/print/style.ts';
import { cautionsForSize, cautionsOf } from '../../core/review/index.ts';
import type { Study } from '../../core/study/study.ts';
import type { Terms } from '../../core/trade/stitches.ts';
import { fontsFolder } from './resources.ts';

/** What changed between two versions, with the cautions that each prints. */
export function errataOf(before: Study, after: Study, terms: Terms): Errata {
  return errataBetween(before, after, {
    terms,
    cautionsOf: (study, size) => (size === null ? cautionsOf(study) : cautionsForSize(study, size)),
  });
}

/** The sheet for buyers. It runs on without a cover page: it is to be printed and kept with the pattern. */
export async function errataPdf(
  errata: Errata,
  terms: Terms,
  author: string,
  paper: Paper,
  signal?: AbortSignal,
): Promise<{ readonly pdf: Uint8Array; readonly pages: number; readonly facts: readonly Fact[] }> {
  const resources = { fonts: fontsIn(fontsFolder()), picture: () => null };
  const booklet = errataSheet(errata, terms, author);
  const layout = layOut(booklet, { paper, edition: 'ink-saving' }, resources);
  const pdf = await writePages(layout, booklet, resources, signal === undefined ? {} : { signal });
  return { pdf, pages: layout.pages.length, facts: layout.facts };
}
