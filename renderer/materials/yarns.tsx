/** Yarn and hooks: weight by its names in the reader's market, amounts for each size. Balls come from the report. */
import type { AttributesOf } from '../../core/document/attributes.ts';
import type { Yarn } from '../../core/document/pattern.ts';
import { hookLabel } from '../../core/trade/hooks.ts';
import { yarnWeightLabel, yarnWeights } from '../../core/trade/yarn-weights.ts';
import { made } from '../desk/edits.ts';
import { ChoiceField, DraftField } from '../parts/fields.tsx';
import { useDesk, useDeskView } from '../shell/hooks.ts';
import { useReader } from '../shell/reader.ts';
import { materialsWords } from '../words/materials.ts';
import { readMetres, readNumber, setItem } from './edits.ts';
import { ItemList } from './list.tsx';
import { WordsField } from './words-field.tsx';

export function Yarns() {
  const yarns = useDeskView((view) => view.pattern.yarns);
  const { say } = useReader();
  const words = materialsWords.yarn;
  return (
    <ItemList
      list="yarns"
      title={words.title}
      add={words.add}
      none={words.none}
      items={yarns}
      name={({ key, name }, index) => words.item(key, say(name, 'prose'), index + 1)}
      node={({ id }) => id}
      make={() => made('yarn', {})}
    >
      {(yarn, index) => <YarnFields yarn={yarn} index={index} />}
    </ItemList>
  );
}

function YarnFields({ yarn, index }: { readonly yarn: Yarn; readonly index: number }) {
  const desk = useDesk();
  const { terms, say } = useReader();
  const words = materialsWords.yarn;
  const set = (attributes: Partial<AttributesOf<'yarn'>>) => {
    desk.dispatch(setItem<'yarn'>(desk.view().state, 'yarns', index, attributes));
    return true;
  };
  const amount = (label: string, name: 'ballGrams' | 'ballMetres') => (
    <DraftField
      label={label}
      className="short"
      value={yarn[name] === null ? '' : String(yarn[name])}
      fault={materialsWords.notANumber}
      note={name === 'ballMetres' ? words.yards : undefined}
      onGive={(typed) => {
        const number = name === 'ballMetres' ? readMetres(typed) : readNumber(typed);
        return number === null ? false : set({ [name]: number ?? null });
      }}
      numeric
    />
  );
  return (
    <>
      <div className="fields">
        <DraftField
          label={words.key}
          className="short"
          hint={words.keyHint}
          value={yarn.key ?? ''}
          onGive={(typed) => set({ key: typed.trim() === '' ? null : typed.trim().slice(0, 200) })}
        />
        <WordsField
          label={words.name}
          hint={words.nameHint}
          value={yarn.name}
          onGive={(name) => set({ name })}
        />
        <WordsField label={words.fibre} value={yarn.fibre} onGive={(fibre) => set({ fibre })} />
      </div>
      <div className="fields">
        <ChoiceField
          label={words.weight}
          value={yarn.weight === null ? '' : String(yarn.weight)}
          options={[
            ['', words.noWeight],
            ...yarnWeights.map(
              ({ number }) => [String(number), yarnWeightLabel(number, terms) ?? ''] as const,
            ),
          ]}
          onGive={(weight) => set({ weight: weight === '' ? null : Number(weight) })}
        />
        {amount(words.ballGrams, 'ballGrams')}
        {amount(words.ballMetres, 'ballMetres')}
      </div>
      <Amounts yarn={yarn} name={words.item(yarn.key, say(yarn.name, 'prose'), index + 1)} set={set} />
    </>
  );
}

function Amounts({
  yarn,
  name,
  set,
}: {
  readonly yarn: Yarn;
  readonly name: string;
  readonly set: (attributes: Partial<AttributesOf<'yarn'>>) => boolean;
}) {
  const sizes = useDeskView((view) => view.pattern.sizes);
  const reported = useDeskView((view) => view.report.sizes);
  const balls = useDeskView((view) => view.report.materials.balls)[yarn.id];
  const words = materialsWords.yarn;
  if (sizes.length === 0) return <p className="quiet form-note">{words.noSizes}</p>;
  return (
    <fieldset className="amounts">
      <legend>{words.metres}</legend>
      <div className="fields">
        {sizes.map(({ id, label }) => {
          const whole = balls?.[reported.findIndex((size) => size.id === id)] ?? null;
          return (
            <DraftField
              key={id}
              label={label}
              name={words.metresFor(name, label)}
              className="amount"
              note={whole === null ? undefined : words.balls(whole)}
              value={yarn.metres[id] === undefined ? '' : String(yarn.metres[id])}
              fault={materialsWords.notANumber}
              onGive={(typed) => {
                const number = readMetres(typed);
                if (number === null) return false;
                const { [id]: _, ...others } = yarn.metres;
                return set({ metres: number === undefined ? others : { ...others, [id]: number } });
              }}
              numeric
            />
          );
        })}
      </div>
    </fieldset>
  );
}

export function Hooks() {
  const desk = useDesk();
  const hooks = useDeskView((view) => view.pattern.hooks);
  const { terms } = useReader();
  const words = materialsWords.hook;
  const set = (index: number, attributes: Partial<AttributesOf<'hook'>>) => {
    desk.dispatch(setItem<'hook'>(desk.view().state, 'hooks', index, attributes));
    return true;
  };
  return (
    <ItemList
      list="hooks"
      title={words.title}
      add={words.add}
      none={words.none}
      items={hooks}
      name={({ mm }) => hookLabel(mm, terms)}
      node={({ id }) => id}
      make={() => made('hook', { mm: 5 })}
    >
      {(hook, index) => (
        <div className="fields">
          <DraftField
            label={words.mm}
            className="short"
            value={String(hook.mm)}
            fault={materialsWords.notANumber}
            note={words.printedAs(hookLabel(hook.mm, terms))}
            onGive={(typed) => {
              const mm = readNumber(typed, 100);
              return mm === null || mm === undefined ? false : set(index, { mm });
            }}
            numeric
          />
          <WordsField
            label={words.purpose}
            hint={words.purposeHint}
            value={hook.purpose}
            onGive={(purpose) => set(index, { purpose })}
          />
        </div>
      )}
    </ItemList>
  );
}
