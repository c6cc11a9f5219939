/** The section "For the shop": the listing to copy, and archives with PDFs, listing and pictures of pages. */
import { useId, useState } from 'react';
import type { PicturedPage, PrintChoice, PrintJob } from '../../app/host/host.ts';
import type { Paper } from '../../core/print/style.ts';
import type { Terms } from '../../core/trade/stitches.ts';
import { useStudio } from '../shell/hooks.ts';
import { printWords } from '../words/print.ts';
import { shellWords } from '../words/shell.ts';
import { shopWords } from '../words/shop.ts';
import { Boxes } from './boxes.tsx';
import { type Make, MakingPart, useMaking } from './making.tsx';
import { openPdf } from './pdf.ts';
import { pagePng } from './pictures.ts';

interface ShopPanelProps {
  readonly shown: PrintChoice;
  /** Listing of the pages shown; null while there is none. */
  readonly listing: string | null;
  readonly pages: number;
}

/** Page numbers as typed; null when they are none. */
function numbersIn(words: string, pages: number): readonly number[] | null {
  const numbers = words
    .split(/[,;\s]+/u)
    .filter((word) => word !== '')
    .map(Number);
  const fits = numbers.every((n) => Number.isInteger(n) && n >= 1 && n <= pages);
  return fits ? [...new Set(numbers)] : null;
}

export function ShopPanel({ shown, listing, pages }: ShopPanelProps) {
  const studio = useStudio();
  const [terms, setTerms] = useState<readonly Terms[]>([shown.terms]);
  const [papers, setPapers] = useState<readonly Paper[]>(['a4', 'letter']);
  const [typed, setTyped] = useState('1');
  const making = useMaking(shopWords.stopped(0));
  const note = useId();
  const numbers = numbersIn(typed, Math.max(1, pages));

  const copy = async () => {
    try {
      await navigator.clipboard.writeText(listing ?? '');
      studio.tell(shopWords.copied);
    } catch {
      studio.tell(shopWords.notCopied);
    }
  };

  const picturesOf = async (job: PrintJob, signal: AbortSignal) => {
    const pictures: (PicturedPage & { readonly png: Uint8Array })[] = [];
    if (numbers === null || numbers.length === 0) return pictures;
    for (const own of terms) {
      const choice = { terms: own, paper: papers[0] ?? shown.paper, edition: shown.edition, size: null };
      const answer = await studio.host.print(job, choice, signal);
      if (!answer.ok) throw new Error(answer.error.message);
      const pdf = await openPdf(answer.value.pdf);
      try {
        for (const page of numbers.filter((n) => n <= pdf.numPages))
          pictures.push({ terms: own, page, png: await pagePng(pdf, page) });
      } finally {
        await pdf.destroy();
      }
    }
    return pictures;
  };

  const make: Make = async (job, folder, tell, signal) => {
    const pictures = await picturesOf(job, signal);
    return studio.host.export(
      job,
      {
        terms,
        papers,
        editions: [shown.edition],
        sizes: [null],
        as: { kind: 'pack', pages: pictures.map(({ terms: own, page }) => ({ terms: own, page })) },
        pictures: pictures.map(({ png }) => png),
        folder: folder.handle,
      },
      tell,
      signal,
    );
  };

  const isReady = terms.length > 0 && papers.length > 0 && numbers !== null;
  return (
    <section className="export" aria-labelledby="shop-title">
      <h3 id="shop-title">{shopWords.title}</h3>
      <p className="quiet">{shopWords.lead}</p>
      <label className="field">
        <span>{shopWords.listing}</span>
        <textarea rows={8} readOnly value={listing ?? ''} />
      </label>
      <p className="quiet">{shopWords.listingNote}</p>
      <button type="button" disabled={listing === null} onClick={() => void copy()}>
        {shopWords.copy}
      </button>
      <Boxes
        legend={printWords.terms}
        options={[
          ['us', shellWords.terms('us')],
          ['uk', shellWords.terms('uk')],
        ]}
        value={terms}
        onChange={setTerms}
      />
      <Boxes
        legend={printWords.paper}
        options={Object.entries(printWords.papers) as [Paper, string][]}
        value={papers}
        onChange={setPapers}
      />
      <label className="field">
        <span>{shopWords.pictures}</span>
        <input
          value={typed}
          inputMode="numeric"
          aria-describedby={note}
          aria-invalid={numbers === null}
          onChange={(event) => setTyped(event.target.value)}
        />
      </label>
      <p id={note} className={numbers === null ? 'form-fault' : 'quiet'}>
        {numbers === null ? shopWords.notPages(pages) : shopWords.picturesNote}
      </p>
      <MakingPart
        making={making}
        words={shopWords}
        isReady={isReady}
        onBegin={() => void making.run(shopWords.picturing, make)}
      />
    </section>
  );
}
