/** Samples, testers and swatches: an overview of them, and the form of each. What they come to is the report's. */
import type { AttributesOf } from '../../core/document/attributes.ts';
import type { Making } from '../../core/document/workbook.ts';
import { stitchName } from '../../core/trade/terms.ts';
import { parseQuantity } from '../../core/trade/units.ts';
import { made } from '../desk/edits.ts';
import { readNumber, setItem } from '../materials/edits.ts';
import { ItemList } from '../materials/list.tsx';
import { ChoiceField, DraftField } from '../parts/fields.tsx';
import { useDesk, useDeskView } from '../shell/hooks.ts';
import { useReader } from '../shell/reader.ts';
import { quantityText } from '../sizes/quantities.ts';
import { workbookWords } from '../words/workbook.ts';
import { Uses } from './uses.tsx';

const words = workbookWords.makings;

/** Stitches that a swatch can be worked in. */
const STITCHES = ['t1', 't2', 't3', 't4'] as const;

function useNames() {
  const sizes = useDeskView((view) => view.pattern.sizes);
  return (making: Making) =>
    words.item(making.kind, making.by, sizes.find(({ id }) => id === making.size)?.label ?? '');
}

export function Makings() {
  const makings = useDeskView((view) => view.pattern.workbook.makings);
  const sample = useDeskView((view) => view.pattern.sample);
  const name = useNames();
  return (
    <>
      <ItemList
        list="makings"
        title={words.title}
        add={words.add}
        none={words.none}
        items={makings}
        name={name}
        node={({ id }) => id}
        make={() =>
          made('making', makings.length === 0 ? { size: sample ?? '' } : { kind: 'tester', state: 'asked' })
        }
      >
        {(making, index) => <MakingFields making={making} index={index} />}
      </ItemList>
      {makings.length > 0 && <Overview makings={makings} />}
    </>
  );
}

function Overview({ makings }: { readonly makings: readonly Making[] }) {
  const report = useDeskView((view) => view.report.workbook);
  const sizes = useDeskView((view) => view.pattern.sizes);
  const lines = useDeskView((view) => view.pattern.lines);
  const { units, say } = useReader();
  const cells = (making: Making): readonly string[] => {
    const own = report?.makings[making.id];
    const used = making.used.flatMap(({ grams, metres }) => [
      ...(grams === null ? [] : [`${grams} g`]),
      ...(metres === null ? [] : [`${metres} m`]),
    ]);
    const measured = own?.measured.map(({ line, difference, isOff }) => {
      const length = difference[units];
      const how = /^[−-]?0(?!\.)\s/.test(length)
        ? words.exact
        : length.startsWith('−')
          ? words.less(length.slice(1))
          : words.more(length);
      const named = say(lines.find(({ id }) => id === line)?.name ?? '');
      return `${named}: ${how}${isOff ? ` (${words.past})` : ''}`;
    });
    const yarn = own?.yarn.map(({ off, isMore }) => (isMore ? words.yarnMore(off) : words.yarnLess(off)));
    return [
      sizes.find(({ id }) => id === making.size)?.label ?? '',
      words.states[making.state],
      used.join(', '),
      yarn?.join(', ') ?? '',
      making.hours === null ? '' : String(making.hours),
      measured?.join('; ') ?? '',
    ];
  };
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keyboard
    <section className="size-table words" aria-labelledby="makings-overview" tabIndex={0}>
      <table>
        <caption id="makings-overview">{words.overview}</caption>
        <thead>
          <tr>
            {words.heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {makings.map((making) => (
            <tr key={making.id}>
              <th scope="row">
                {words.kinds[making.kind]}: {making.by.trim() === '' ? words.you : making.by.trim()}
              </th>
              {cells(making).map((cell, i) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: a column is known by its place
                <td key={i}>{cell === '' ? words.nothing : cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function MakingFields({ making, index }: { readonly making: Making; readonly index: number }) {
  const desk = useDesk();
  const sizes = useDeskView((view) => view.pattern.sizes);
  const { terms } = useReader();
  const set = (attributes: Partial<AttributesOf<'making'>>) => {
    desk.dispatch(setItem<'making'>(desk.view().state, 'makings', index, attributes));
    return true;
  };
  const swatch = making.swatch ?? { stitch: 't1', stitches: 0, rows: 0, chains: 0 };
  const count = (label: string, key: 'stitches' | 'rows' | 'chains') => (
    <DraftField
      label={label}
      className="short"
      value={String(swatch[key])}
      fault={workbookWords.notANumber}
      numeric
      onGive={(typed) => {
        const number = readNumber(typed);
        return number === null || number === undefined || !Number.isInteger(number)
          ? false
          : set({ swatch: { ...swatch, [key]: number } });
      }}
    />
  );
  return (
    <>
      <div className="fields">
        <ChoiceField
          label={words.kind}
          value={making.kind}
          options={Object.entries(words.kinds)}
          onGive={(kind) => set({ kind: kind as Making['kind'], swatch: kind === 'swatch' ? swatch : null })}
        />
        {making.kind === 'tester' && (
          <DraftField
            label={words.by}
            value={making.by}
            onGive={(by) => set({ by: by.trim().slice(0, 200) })}
          />
        )}
        {making.kind !== 'swatch' && (
          <>
            <ChoiceField
              label={words.size}
              value={making.size}
              options={[['', words.noSize], ...sizes.map(({ id, label }) => [id, label] as const)]}
              onGive={(size) => set({ size })}
            />
            <ChoiceField
              label={words.state}
              value={making.state}
              options={Object.entries(words.states)}
              onGive={(state) => set({ state: state as Making['state'] })}
            />
          </>
        )}
        <DraftField
          label={words.hours}
          className="short"
          value={making.hours === null ? '' : String(making.hours)}
          fault={workbookWords.notANumber}
          numeric
          onGive={(typed) => {
            const hours = readNumber(typed);
            return hours === null ? false : set({ hours: hours ?? null });
          }}
        />
        <DraftField
          label={words.note}
          value={making.note}
          onGive={(note) => set({ note: note.trim().slice(0, 2000) })}
        />
      </div>
      {making.kind === 'swatch' && (
        <fieldset className="amounts">
          <legend>{words.swatch}</legend>
          <div className="fields">
            <ChoiceField
              label={words.stitch}
              value={swatch.stitch}
              options={STITCHES.map((stitch) => [stitch, stitchName(stitch, terms)] as const)}
              onGive={(stitch) => set({ swatch: { ...swatch, stitch } })}
            />
            {count(words.stitches, 'stitches')}
            {count(words.rows, 'rows')}
            {count(words.chains, 'chains')}
          </div>
        </fieldset>
      )}
      <Uses making={making} set={(used) => set({ used })} />
      {making.kind !== 'swatch' && <Measured making={making} set={(measured) => set({ measured })} />}
    </>
  );
}

function Measured({
  making,
  set,
}: {
  readonly making: Making;
  readonly set: (measured: Making['measured']) => boolean;
}) {
  const lines = useDeskView((view) => view.pattern.lines);
  const said = useDeskView((view) => view.report.workbook?.said);
  const column = useDeskView((view) => view.report.sizes).findIndex(({ id }) => id === making.size);
  const { units, say } = useReader();
  if (said === undefined) return null;
  const shown = lines.filter(({ id }) => said[id]?.some((value) => value !== null));
  if (shown.length === 0) return null;
  return (
    <fieldset className="amounts">
      <legend>{words.measured}</legend>
      <div className="fields">
        {shown.map((line) => {
          const own = making.measured[line.id];
          const says = said[line.id]?.[column]?.[units];
          return (
            <DraftField
              key={line.id}
              label={say(line.name)}
              className="short"
              value={own === undefined ? '' : quantityText(own)}
              note={says === undefined ? undefined : words.says(says)}
              fault={workbookWords.people.notAnAmount}
              onGive={(typed) => {
                const { [line.id]: _, ...others } = making.measured;
                if (typed.trim() === '') return set(others);
                const quantity = parseQuantity(typed);
                if (quantity === null || quantity.unit === '%') return false;
                const unit = quantity.unit === 'none' ? (units === 'metric' ? 'cm' : 'in') : quantity.unit;
                return set({ ...others, [line.id]: { ...quantity, unit } });
              }}
            />
          );
        })}
      </div>
    </fieldset>
  );
}
