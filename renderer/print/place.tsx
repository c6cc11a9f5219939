/** The place "Print": the pages as they will be printed, beside what is chosen for them, and the export. */
import { useState } from 'react';
import type { PrintChoice } from '../../app/host/host.ts';
import type { Edition, Paper } from '../../core/print/style.ts';
import type { Terms } from '../../core/trade/stitches.ts';
import { useDesk, useDeskView, useStudio } from '../shell/hooks.ts';
import { useMedia } from '../shell/media.ts';
import { printWords } from '../words/print.ts';
import { PLACE_WORDS, shellWords } from '../words/shell.ts';
import { useBooklet } from './booklet.ts';
import { ExportPanel } from './export-panel.tsx';
import { Pages } from './pages.tsx';
import { ShopPanel } from './shop-panel.tsx';

/** Where the choices and the pages have no room beside each other; `print.css` says the same. */
const NARROW = '(max-width: 54rem)';

export function PrintPlace() {
  const studio = useStudio();
  const desk = useDesk();
  const pattern = useDeskView((view) => view.pattern);
  const terms = useDeskView((view) => view.reading.terms);
  const errors = useDeskView((view) => view.report).findings.filter(
    ({ severity }) => severity === 'error',
  ).length;
  const [paper, setPaper] = useState<Paper>(pattern.units === 'imperial' ? 'letter' : 'a4');
  const [edition, setEdition] = useState<Edition>('standard');
  const [chosen, setSize] = useState<string | null>(null);
  const [isReal, setReal] = useState(false);
  const size = pattern.sizes.some(({ id }) => id === chosen) ? chosen : null;
  const choice: PrintChoice = { terms, paper, edition, size };
  const { pdf, findings, listing, isWorking, fault } = useBooklet(choice);
  const isNarrow = useMedia(NARROW);
  const count = pdf?.numPages ?? 0;
  const pages = <Pages pdf={pdf} isWorking={isWorking} isReal={isReal} />;
  return (
    <div className="print">
      <h2 className="unseen">{PLACE_WORDS.print}</h2>
      <div className="print-choices">
        <fieldset className="choices">
          <legend className="unseen">{printWords.choices}</legend>
          <label className="field">
            <span>{printWords.terms}</span>
            <select value={terms} onChange={(event) => desk.read({ terms: event.target.value as Terms })}>
              <option value="us">{shellWords.terms('us')}</option>
              <option value="uk">{shellWords.terms('uk')}</option>
            </select>
          </label>
          <label className="field">
            <span>{printWords.paper}</span>
            <select value={paper} onChange={(event) => setPaper(event.target.value as Paper)}>
              {(Object.keys(printWords.papers) as Paper[]).map((each) => (
                <option key={each} value={each}>
                  {printWords.papers[each]}
                </option>
              ))}
            </select>
          </label>
          <label className="field">
            <span>{printWords.edition}</span>
            <select value={edition} onChange={(event) => setEdition(event.target.value as Edition)}>
              {(Object.keys(printWords.editions) as Edition[]).map((each) => (
                <option key={each} value={each}>
                  {printWords.editions[each]}
                </option>
              ))}
            </select>
          </label>
          <label className="field">
            <span>{printWords.sizes}</span>
            <select value={size ?? ''} onChange={(event) => setSize(event.target.value || null)}>
              <option value="">{printWords.allSizes}</option>
              {pattern.sizes.map(({ id, label }) => (
                <option key={id} value={id}>
                  {printWords.size(label)}
                </option>
              ))}
            </select>
          </label>
          <label className="field">
            <span>{printWords.zoom}</span>
            <select
              value={isReal ? 'real' : 'fit'}
              onChange={(event) => setReal(event.target.value === 'real')}
            >
              <option value="fit">{printWords.fitWidth}</option>
              <option value="real">{printWords.realSize}</option>
            </select>
          </label>
        </fieldset>
        <p role="status" className="quiet">
          {fault !== null
            ? printWords.failed(fault)
            : isWorking
              ? printWords.layingOut
              : printWords.laidOut(count)}
        </p>
        {errors > 0 && (
          <div className="print-errors">
            <p>{printWords.errorsWaiting(errors)}</p>
            <button type="button" onClick={() => studio.go('review')}>
              {printWords.toReview}
            </button>
          </div>
        )}
        {findings.length > 0 && (
          <section className="print-troubles">
            <h3>{printWords.troubles}</h3>
            <ul>
              {findings.map((finding) => (
                <li key={`${finding.code} ${finding.message}`}>{finding.message}</li>
              ))}
            </ul>
          </section>
        )}
        {/* In the order in which they are seen: between what is chosen for them and what is made of them. */}
        {isNarrow && pages}
        <ExportPanel shown={choice} />
        <ShopPanel shown={choice} listing={listing} pages={count} />
      </div>
      {!isNarrow && pages}
    </div>
  );
}
