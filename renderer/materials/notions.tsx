/** Notions, with the marks that cautions depend on. */
import type { AttributesOf } from '../../core/document/attributes.ts';
import type { Notion } from '../../core/document/pattern.ts';
import { made } from '../desk/edits.ts';
import { CheckField, ChoiceField, DraftField } from '../parts/fields.tsx';
import { useDesk, useDeskView } from '../shell/hooks.ts';
import { useReader } from '../shell/reader.ts';
import { materialsWords } from '../words/materials.ts';
import { readNumber, setItem } from './edits.ts';
import { ItemList } from './list.tsx';
import { WordsField } from './words-field.tsx';

const words = materialsWords.notion;
type How = keyof typeof words.amounts;

export function Notions() {
  const notions = useDeskView((view) => view.pattern.notions);
  const { say } = useReader();
  return (
    <ItemList
      list="notions"
      title={words.title}
      add={words.add}
      none={words.none}
      items={notions}
      name={({ name }, index) => say(name, 'prose').trim() || words.item(index + 1)}
      node={({ id }) => id}
      make={() => made('notion', {})}
    >
      {(notion, index) => <NotionFields notion={notion} index={index} />}
    </ItemList>
  );
}

/** The amount told in another way, beginning with what it was. */
function amountAs({ amount }: Notion, how: How, sizes: readonly { readonly id: string }[]): Notion['amount'] {
  if (how === 'none') return null;
  const known = amount === null ? [] : 'all' in amount ? [amount.all] : Object.values(amount.each);
  const first = known[0] ?? 1;
  if (how === 'all') return { all: first };
  const each = amount !== null && 'each' in amount ? amount.each : {};
  return { each: Object.fromEntries(sizes.map(({ id }) => [id, each[id] ?? first])) };
}

function NotionFields({ notion, index }: { readonly notion: Notion; readonly index: number }) {
  const desk = useDesk();
  const sizes = useDeskView((view) => view.pattern.sizes);
  const { say } = useReader();
  const set = (attributes: Partial<AttributesOf<'notion'>>) => {
    desk.dispatch(setItem<'notion'>(desk.view().state, 'notions', index, attributes));
    return true;
  };
  const { amount } = notion;
  const how: How = amount === null ? 'none' : 'all' in amount ? 'all' : 'each';
  const give = (put: (number: number | undefined) => Notion['amount']) => (typed: string) => {
    const number = readNumber(typed);
    return number === null ? false : set({ amount: put(number) });
  };
  const name = say(notion.name, 'prose').trim() || words.item(index + 1);
  return (
    <>
      <div className="fields">
        <WordsField
          label={words.name}
          hint={words.nameHint}
          value={notion.name}
          onGive={(typed) => set({ name: typed })}
        />
        <ChoiceField
          label={words.amount}
          value={how}
          options={Object.entries(words.amounts)}
          onGive={(next) => set({ amount: amountAs(notion, next as How, sizes) })}
        />
        {amount !== null && 'all' in amount && (
          <DraftField
            label={words.number}
            className="short"
            value={String(amount.all)}
            fault={materialsWords.notANumber}
            onGive={give((number) => (number === undefined ? null : { all: number }))}
            numeric
          />
        )}
      </div>
      {amount !== null && 'each' in amount && (
        <div className="fields">
          {sizes.map(({ id, label }) => (
            <DraftField
              key={id}
              label={label}
              name={words.numberFor(name, label)}
              className="amount"
              value={amount.each[id] === undefined ? '' : String(amount.each[id])}
              fault={materialsWords.notANumber}
              onGive={give((number) => {
                const { [id]: _, ...others } = amount.each;
                return { each: number === undefined ? others : { ...others, [id]: number } };
              })}
              numeric
            />
          ))}
        </div>
      )}
      <div className="fields">
        <CheckField
          label={words.smallPart}
          checked={notion.smallPart}
          onGive={(smallPart) => set({ smallPart })}
        />
        <CheckField label={words.cord} checked={notion.cord} onGive={(cord) => set({ cord })} />
      </div>
    </>
  );
}
