/** Yarn and hours of every size with what they rest on. All numbers are the report's. */
import { HOURS_CARE, NOT_COUNTED } from '../../core/study/basis-words.ts';
import { setPart } from '../desk/edits.ts';
import { readNumber } from '../materials/edits.ts';
import { DraftField } from '../parts/fields.tsx';
import { useDesk, useDeskView } from '../shell/hooks.ts';
import { useReader } from '../shell/reader.ts';
import { materialsWords } from '../words/materials.ts';
import { workbookWords } from '../words/workbook.ts';
import { SizeTable } from './table.tsx';

const words = workbookWords.yarn;

export function Estimates() {
  const desk = useDesk();
  const yarns = useDeskView((view) => view.pattern.yarns);
  const margin = useDeskView((view) => view.pattern.workbook.yarnMargin);
  const report = useDeskView((view) => view.report.workbook);
  const sizes = useDeskView((view) => view.report.sizes);
  const { say } = useReader();
  const labels = sizes.map(({ label }) => label);
  return (
    <>
      <section className="materials-part" aria-labelledby="workbook-yarn">
        <h3 id="workbook-yarn">{words.title}</h3>
        <div className="fields">
          <DraftField
            label={words.margin}
            className="short"
            value={String(margin)}
            fault={workbookWords.notANumber}
            numeric
            onGive={(typed) => {
              const yarnMargin = readNumber(typed, 1000);
              if (yarnMargin === null || yarnMargin === undefined) return false;
              desk.dispatch(setPart<'workbook'>(desk.view().state, ['workbook'], { yarnMargin }));
              return true;
            }}
          />
        </div>
        {yarns.length === 0 && <p className="quiet">{words.noYarn}</p>}
        {report === null && <p className="quiet">{words.waiting}</p>}
        {yarns.map((yarn, index) => {
          const own = report?.yarns.find(({ id }) => id === yarn.id);
          if (own === undefined) return null;
          const name = materialsWords.yarn.item(yarn.key, say(yarn.name, 'prose'), index + 1);
          const rows = (['used', 'metres', 'yards', 'grams', 'balls'] as const).map((key) => ({
            head: words.rows[key],
            cells: own.sizes.map((size) => size?.[key] ?? null),
            isSum: key === 'balls',
          }));
          return (
            <div key={yarn.id} className="estimate">
              {own.basis === null ? (
                <>
                  <h4>{name}</h4>
                  <p>{own.worked ? words.nothing : words.unworked}</p>
                </>
              ) : (
                <>
                  <SizeTable
                    caption={words.table(name)}
                    sizes={labels}
                    rows={rows.filter(({ cells }) => cells.some((cell) => cell !== null))}
                  />
                  <p className="quiet">{words.rests(own.basis)}</p>
                  {Object.keys(yarn.metres).length > 0 && <p className="quiet">{words.typed}</p>}
                </>
              )}
            </div>
          );
        })}
        {report?.doubts.map((doubt) => (
          <p key={doubt}>{doubt}</p>
        ))}
        <p className="quiet">{NOT_COUNTED}</p>
      </section>
      <section className="materials-part" aria-labelledby="workbook-hours">
        <h3 id="workbook-hours">{workbookWords.hours.title}</h3>
        {report !== null &&
          (report.hours.basis === null ? (
            <p>{workbookWords.hours.nothing}</p>
          ) : (
            <>
              <SizeTable
                caption={workbookWords.hours.table}
                sizes={labels}
                rows={[{ head: workbookWords.hours.row, cells: report.hours.sizes }]}
              />
              <p className="quiet">{words.rests(report.hours.basis)}</p>
            </>
          ))}
        <p>{HOURS_CARE}</p>
      </section>
    </>
  );
}
