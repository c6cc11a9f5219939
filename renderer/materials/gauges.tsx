/** Gauges: what was counted over what, in which stitch. */
import type { AttributesOf } from '../../core/document/attributes.ts';
import type { Gauge, Quantity } from '../../core/document/pattern.ts';
import { hookLabel } from '../../core/trade/hooks.ts';
import { parseQuantity } from '../../core/trade/units.ts';
import { made } from '../desk/edits.ts';
import { CheckField, ChoiceField, DraftField } from '../parts/fields.tsx';
import { useDesk, useDeskView } from '../shell/hooks.ts';
import { useReader } from '../shell/reader.ts';
import { quantityText } from '../sizes/quantities.ts';
import { materialsWords } from '../words/materials.ts';
import { readNumber, setItem } from './edits.ts';
import { ItemList } from './list.tsx';
import { WordsField } from './words-field.tsx';

const words = materialsWords.gauge;
const tenCentimetres: Quantity = { value: 10, unit: 'cm' };
const fourInches: Quantity = { value: 4, unit: 'in' };

export function Gauges() {
  const gauges = useDeskView((view) => view.pattern.gauges);
  const hooks = useDeskView((view) => view.pattern.hooks);
  const { terms, units, say } = useReader();
  return (
    <ItemList
      list="gauges"
      title={words.title(terms)}
      add={words.add(terms)}
      none={words.none}
      items={gauges}
      name={({ pattern }) => words.item(say(pattern, 'prose'), terms)}
      node={({ id }) => id}
      // The only hook there is worked it.
      make={() =>
        made('gauge', {
          ...(hooks.length === 1 ? { hook: hooks[0]!.id } : {}),
          ...(units === 'imperial' ? { width: fourInches, height: fourInches } : {}),
        })
      }
    >
      {(gauge, index) => <GaugeFields gauge={gauge} index={index} />}
    </ItemList>
  );
}

function GaugeFields({ gauge, index }: { readonly gauge: Gauge; readonly index: number }) {
  const desk = useDesk();
  const hooks = useDeskView((view) => view.pattern.hooks);
  const { terms, units } = useReader();
  const set = (attributes: Partial<AttributesOf<'gauge'>>) => {
    desk.dispatch(setItem<'gauge'>(desk.view().state, 'gauges', index, attributes));
    return true;
  };
  const count = (name: 'stitches' | 'rows') => (typed: string) => {
    const number = readNumber(typed);
    return number === null ? false : set({ [name]: number ?? 0 });
  };
  const length = (typed: string): Quantity | null => {
    const quantity = parseQuantity(typed);
    if (quantity === null || quantity.unit === '%' || quantity.value <= 0) return null;
    return quantity.unit === 'none' ? { ...quantity, unit: units === 'metric' ? 'cm' : 'in' } : quantity;
  };
  const lengthField = (label: string, value: Quantity, give: (length: Quantity) => boolean) => (
    <DraftField
      label={label}
      className="short"
      value={quantityText(value)}
      fault={materialsWords.notALength}
      onGive={(typed) => {
        const read = length(typed);
        return read !== null && give(read);
      }}
    />
  );
  const number = (label: string, value: number, give: (typed: string) => boolean) => (
    <DraftField
      label={label}
      className="short"
      value={value === 0 ? '' : String(value)}
      fault={materialsWords.notANumber}
      onGive={give}
      numeric
    />
  );
  const { stretch } = gauge;
  return (
    <>
      <div className="fields">
        <WordsField
          label={words.pattern}
          hint={words.patternHint(terms)}
          value={gauge.pattern}
          onGive={(pattern) => set({ pattern })}
        />
        <ChoiceField
          label={words.hook}
          value={gauge.hook ?? ''}
          options={[['', words.noHook], ...hooks.map(({ id, mm }) => [id, hookLabel(mm, terms)] as const)]}
          onGive={(hook) => set({ hook: hook === '' ? null : hook })}
        />
      </div>
      <div className="fields">
        {number(words.stitches, gauge.stitches, count('stitches'))}
        {lengthField(words.width, gauge.width, (width) => set({ width }))}
        {number(gauge.rounds ? words.rounds : words.rows, gauge.rows, count('rows'))}
        {lengthField(words.height, gauge.height, (height) => set({ height }))}
      </div>
      <div className="fields">
        <CheckField label={words.blocked} checked={gauge.blocked} onGive={(blocked) => set({ blocked })} />
        <CheckField label={words.inRounds} checked={gauge.rounds} onGive={(rounds) => set({ rounds })} />
        <CheckField
          label={words.stretches}
          checked={stretch !== null}
          onGive={(on) => set({ stretch: on ? { lies: tenCentimetres, worn: tenCentimetres } : null })}
        />
        {stretch !== null && (
          <>
            {lengthField(words.lies, stretch.lies, (lies) => set({ stretch: { ...stretch, lies } }))}
            {lengthField(words.worn, stretch.worn, (worn) => set({ stretch: { ...stretch, worn } }))}
          </>
        )}
      </div>
    </>
  );
}
