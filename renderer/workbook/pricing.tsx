/** What a price is made of, and the price of every size. The sums are the report's. */
import type { Pricing as Prices } from '../../core/document/workbook.ts';
import { setAttributes, setPart } from '../desk/edits.ts';
import { readNumber } from '../materials/edits.ts';
import { DraftField } from '../parts/fields.tsx';
import { useDesk, useDeskView } from '../shell/hooks.ts';
import { useReader } from '../shell/reader.ts';
import { materialsWords } from '../words/materials.ts';
import { workbookWords } from '../words/workbook.ts';
import { SizeTable } from './table.tsx';

const words = workbookWords.price;

export function Pricing() {
  const desk = useDesk();
  const pattern = useDeskView((view) => view.pattern);
  const report = useDeskView((view) => view.report.workbook);
  const sizes = useDeskView((view) => view.report.sizes);
  const { say } = useReader();
  const { pricing } = pattern.workbook;
  const set = (change: Partial<Prices>) => {
    const now = desk.view().pattern.workbook.pricing;
    desk.dispatch(setPart<'workbook'>(desk.view().state, ['workbook'], { pricing: { ...now, ...change } }));
    return true;
  };
  const setOther = (index: number, change: Partial<Prices['other'][number]>) =>
    set({ other: pricing.other.map((one, i) => (i === index ? { ...one, ...change } : one)) });
  const amount = (
    label: string,
    value: number | null,
    give: (value: number | null) => boolean,
    more: { readonly note?: string; readonly most?: number; readonly name?: string } = {},
  ) => (
    <DraftField
      label={label}
      className="short"
      value={value === null ? '' : String(value)}
      fault={workbookWords.notANumber}
      numeric
      onGive={(typed) => {
        const number = readNumber(typed, more.most);
        return number === null ? false : give(number ?? null);
      }}
      {...(more.note === undefined ? {} : { note: more.note })}
      {...(more.name === undefined ? {} : { name: more.name })}
    />
  );
  return (
    <section className="materials-part" aria-labelledby="workbook-price">
      <h3 id="workbook-price">{words.title}</h3>
      <div className="fields">
        <DraftField
          label={words.currency}
          className="short"
          value={pricing.currency}
          note={words.currencyNote}
          fault={words.notACurrency}
          onGive={(typed) => {
            const currency = typed.trim().toUpperCase();
            return /^(?:[A-Z]{3})?$/.test(currency) ? set({ currency }) : false;
          }}
        />
        {amount(words.hourly, pricing.hourly, (hourly) => set({ hourly }), { note: words.hourlyNote })}
        {amount(words.profit, pricing.profit, (profit) => set({ profit: profit ?? 0 }), { most: 10_000 })}
        {amount(words.fee, pricing.fee, (fee) => set({ fee: fee ?? 0 }), { most: 99 })}
      </div>
      {pattern.yarns.length > 0 && (
        <fieldset className="amounts">
          <legend>{words.balls}</legend>
          <div className="fields">
            {pattern.yarns.map((yarn, index) => (
              <div key={yarn.id}>
                {amount(
                  materialsWords.yarn.item(yarn.key, say(yarn.name, 'prose'), index + 1),
                  yarn.ballPrice,
                  (ballPrice) => {
                    desk.dispatch(setAttributes<'yarn'>(desk.view().state, yarn.id, { ballPrice }));
                    return true;
                  },
                )}
              </div>
            ))}
          </div>
        </fieldset>
      )}
      {pattern.notions.length > 0 && (
        <fieldset className="amounts">
          <legend>{words.notions}</legend>
          <div className="fields">
            {pattern.notions.map((notion) => (
              <div key={notion.id}>
                {amount(say(notion.name, 'prose'), notion.price, (price) => {
                  desk.dispatch(setAttributes<'notion'>(desk.view().state, notion.id, { price }));
                  return true;
                })}
              </div>
            ))}
          </div>
        </fieldset>
      )}
      <fieldset className="amounts">
        <legend>{words.others}</legend>
        {pricing.other.map((other, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a cost has no name but what is typed here
          <div className="fields" key={index}>
            <DraftField
              label={words.other}
              value={other.name}
              onGive={(name) => setOther(index, { name: name.trim().slice(0, 200) })}
            />
            {amount(words.amount, other.amount, (value) => setOther(index, { amount: value ?? 0 }))}
            <button
              type="button"
              aria-label={words.removeOther(other.name)}
              onClick={({ currentTarget }) => {
                currentTarget.closest('fieldset')?.querySelector<HTMLElement>(':scope > .add-item')?.focus();
                set({ other: pricing.other.filter((_, i) => i !== index) });
              }}
            >
              {workbookWords.makings.remove}
            </button>
          </div>
        ))}
        <button
          type="button"
          className="add-item"
          onClick={() => set({ other: [...pricing.other, { name: '', amount: 0 }] })}
        >
          {words.addOther}
        </button>
      </fieldset>
      {report !== null && (
        <>
          {report.price.missing.length > 0 && <p>{words.missing(report.price.missing)}</p>}
          {(['bought', 'used'] as const).map((way) => {
            const all = report.price.sizes;
            if (all.every((size) => size[way] === null)) return null;
            const part = (key: 'yarn' | 'cost' | 'profit' | 'fee' | 'price') => ({
              head: words.rows[key],
              cells: all.map((size) => size[way]?.[key] ?? null),
              isSum: key === 'cost' || key === 'price',
            });
            return (
              <SizeTable
                key={way}
                caption={words[way]}
                sizes={sizes.map(({ label }) => label)}
                rows={[
                  part('yarn'),
                  { head: words.rows.notions, cells: all.map(({ notions }) => notions) },
                  { head: words.rows.other, cells: all.map(({ other }) => other) },
                  { head: words.rows.labour, cells: all.map(({ labour }) => labour) },
                  part('cost'),
                  part('profit'),
                  part('fee'),
                  part('price'),
                ]}
              />
            );
          })}
          {report.price.unpriced.length > 0 && (
            <p className="quiet">{words.unpriced(report.price.unpriced.map((name) => say(name, 'prose')))}</p>
          )}
        </>
      )}
    </section>
  );
}
