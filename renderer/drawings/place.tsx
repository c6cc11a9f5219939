/** The place "Drawings": the schematics of the pieces as their rows make them, for all sizes or the one in focus. */
import { useState } from 'react';
import { TellContext } from '../materials/list.tsx';
import { useDesk, useDeskView } from '../shell/hooks.ts';
import { useMedia } from '../shell/media.ts';
import { drawingsWords } from '../words/drawings.ts';
import { PLACE_WORDS } from '../words/shell.ts';
import { Charts } from './charts.tsx';
import { Schematic } from './schematic.tsx';
import { suffixes } from './titles.ts';
import { useDrawings } from './use-drawings.ts';

/** Less room than two columns of a chart's key take before their letters are too small to read. */
const NARROW = '(max-width: 42rem)';

const ZOOMS = Object.keys(drawingsWords.zooms).map(Number);

export function DrawingsPlace() {
  const desk = useDesk();
  const pattern = useDeskView((view) => view.pattern);
  const reading = useDeskView((view) => view.reading);
  const [allSizes, setAllSizes] = useState(true);
  const [nested, setNested] = useState(false);
  const [zoom, setZoom] = useState<number | null>(null);
  const [told, setTold] = useState('');
  const several = pattern.sizes.length > 1;
  const isNarrow = useMedia(NARROW);
  const isAll = allSizes && several;
  const { drawings, isWorking } = useDrawings({
    terms: reading.terms,
    units: reading.units,
    focus: reading.size,
    allSizes: isAll || !several,
    nested,
    isNarrow,
  });
  const label = pattern.sizes.find(({ id }) => id === reading.size)?.label ?? null;
  const count = drawings?.schematics.length ?? 0;
  const apart = suffixes(drawings?.schematics.map(({ shown }) => shown.title) ?? []);
  return (
    <div className="drawings">
      <h2 className="unseen">{PLACE_WORDS.drawings}</h2>
      <fieldset className="drawings-choices">
        <legend className="unseen">{drawingsWords.choices}</legend>
        {several && (
          <label className="field">
            <span>{drawingsWords.sizes}</span>
            <select
              value={isAll ? '' : (reading.size ?? '')}
              onChange={({ target: { value } }) => {
                setAllSizes(value === '');
                if (value !== '') desk.read({ size: value });
              }}
            >
              <option value="">{drawingsWords.allSizes}</option>
              {pattern.sizes.map((size) => (
                <option key={size.id} value={size.id}>
                  {drawingsWords.size(size.label)}
                </option>
              ))}
            </select>
          </label>
        )}
        <label className="field">
          <span>{drawingsWords.zoom}</span>
          <select
            value={zoom ?? ''}
            onChange={({ target: { value } }) => setZoom(value === '' ? null : Number(value))}
          >
            <option value="">{drawingsWords.fits}</option>
            {ZOOMS.map((each) => (
              <option key={each} value={each}>
                {drawingsWords.zooms[each]}
              </option>
            ))}
          </select>
        </label>
        {isAll && (
          <label className="choice">
            <input type="checkbox" checked={nested} onChange={({ target }) => setNested(target.checked)} />
            <span>{drawingsWords.nested}</span>
          </label>
        )}
      </fieldset>
      <p role="status" className="quiet">
        {drawings === null || isWorking
          ? drawingsWords.working
          : count === 0
            ? drawingsWords.none
            : drawingsWords.drawn(count)}
      </p>
      {drawings !== null && (
        <section aria-labelledby="drawings-schematics">
          <h3 id="drawings-schematics">{drawingsWords.schematics}</h3>
          {drawings.schematics.map((report, index) => (
            <Schematic
              key={report.id}
              report={report}
              name={`${report.shown.title}${apart[index]}`}
              zoom={zoom === null ? null : zoom / 100}
              fileName={drawingsWords.fileName(
                pattern.about.title,
                `${report.shown.title}${apart[index]}`,
                reading.terms,
                isAll || !several ? null : label,
              )}
            />
          ))}
          {drawings.missing.length > 0 && (
            <section aria-labelledby="drawings-missing" className="drawings-missing">
              <h4 id="drawings-missing">{drawingsWords.missing}</h4>
              <ul>
                {drawings.missing.map((sentence) => (
                  <li key={sentence}>{sentence}</li>
                ))}
              </ul>
            </section>
          )}
        </section>
      )}
      <TellContext value={setTold}>
        <Charts reports={drawings?.charts ?? []} zoom={zoom === null ? null : zoom / 100} />
      </TellContext>
      <p role="status" className={told === '' ? 'unseen' : 'quiet'}>
        {told}
      </p>
    </div>
  );
}
