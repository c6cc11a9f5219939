/** Writes PDFs: which, where, how far it is, and what came of it. */
import { useState } from 'react';
import type { PrintChoice } from '../../app/host/host.ts';
import type { Edition, Paper } from '../../core/print/style.ts';
import type { Terms } from '../../core/trade/stitches.ts';
import { useDeskView, useStudio } from '../shell/hooks.ts';
import { printWords } from '../words/print.ts';
import { shellWords } from '../words/shell.ts';
import { Boxes } from './boxes.tsx';
import { type Make, MakingPart, useMaking } from './making.tsx';

type Span = 'all' | 'each';

interface Choices {
  readonly terms: readonly Terms[];
  readonly papers: readonly Paper[];
  readonly editions: readonly Edition[];
  readonly sizes: readonly Span[];
}

export function ExportPanel({ shown }: { readonly shown: PrintChoice }) {
  const studio = useStudio();
  const pattern = useDeskView((view) => view.pattern);
  const [choices, setChoices] = useState<Choices>({
    terms: ['us', 'uk'],
    papers: [shown.paper],
    editions: [shown.edition],
    sizes: ['all'],
  });
  const making = useMaking(printWords.exporting.stopped(0));
  const spans = choices.sizes.reduce((sum, span) => sum + (span === 'all' ? 1 : pattern.sizes.length), 0);
  const count = choices.terms.length * choices.papers.length * choices.editions.length * spans;

  const make: Make = (job, folder, tell, signal) =>
    studio.host.export(
      job,
      {
        terms: choices.terms,
        papers: choices.papers,
        editions: choices.editions,
        sizes: [
          ...(choices.sizes.includes('all') ? [null] : []),
          ...(choices.sizes.includes('each') ? pattern.sizes.map(({ id }) => id) : []),
        ],
        folder: folder.handle,
      },
      tell,
      signal,
    );

  return (
    <section className="export" aria-labelledby="export-title">
      <h3 id="export-title">{printWords.exporting.title}</h3>
      <Boxes
        legend={printWords.terms}
        options={[
          ['us', shellWords.terms('us')],
          ['uk', shellWords.terms('uk')],
        ]}
        value={choices.terms}
        onChange={(terms) => setChoices({ ...choices, terms })}
      />
      <Boxes
        legend={printWords.paper}
        options={Object.entries(printWords.papers) as [Paper, string][]}
        value={choices.papers}
        onChange={(papers) => setChoices({ ...choices, papers })}
      />
      <Boxes
        legend={printWords.edition}
        options={Object.entries(printWords.editions) as [Edition, string][]}
        value={choices.editions}
        onChange={(editions) => setChoices({ ...choices, editions })}
      />
      <Boxes
        legend={printWords.sizes}
        options={[
          ['all', printWords.allInOne],
          ['each', printWords.eachSize],
        ]}
        value={choices.sizes}
        onChange={(sizes) => setChoices({ ...choices, sizes })}
      />
      <p className="quiet">{count === 0 ? printWords.nothingChosen : printWords.files(count)}</p>
      <MakingPart
        making={making}
        words={printWords.exporting}
        isReady={count > 0}
        onBegin={() => void making.run({ file: '', number: 1, of: count, page: 0, pages: 0 }, make)}
        about={({ pages }) => <small className="quiet">{printWords.laidOut(pages)}</small>}
      />
    </section>
  );
}
