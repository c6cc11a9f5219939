/** Made to measure: the people, each with a private column, and the printing of one person's own sheet. */
import { useState } from 'react';
import type { AttributesOf } from '../../core/document/attributes.ts';
import type { Line } from '../../core/document/pattern.ts';
import type { Person } from '../../core/document/workbook.ts';
import { made } from '../desk/edits.ts';
import { setItem } from '../materials/edits.ts';
import { ItemList } from '../materials/list.tsx';
import { ChoiceField, DraftField } from '../parts/fields.tsx';
import { useDesk, useDeskView, useStudio } from '../shell/hooks.ts';
import { useReader } from '../shell/reader.ts';
import { isTypedIn, quantityText, readCell } from '../sizes/quantities.ts';
import { workbookWords } from '../words/workbook.ts';

const words = workbookWords.people;

export const personName = ({ name }: Person): string => (name.trim() === '' ? words.unnamed : name.trim());

export function People() {
  const people = useDeskView((view) => view.pattern.workbook.people);
  return (
    <ItemList
      list="people"
      title={words.title}
      note={words.note}
      add={words.add}
      none={words.none}
      items={people}
      name={personName}
      node={({ id }) => id}
      make={() => made('person', {})}
    >
      {(person, index) => <PersonFields person={person} index={index} />}
    </ItemList>
  );
}

function PersonFields({ person, index }: { readonly person: Person; readonly index: number }) {
  const desk = useDesk();
  const sizes = useDeskView((view) => view.pattern.sizes);
  const chosen = useDeskView((view) => view.reading.person) === person.id;
  const set = (attributes: Partial<AttributesOf<'person'>>) => {
    desk.dispatch(setItem<'person'>(desk.view().state, 'people', index, attributes));
    return true;
  };
  const name = personName(person);
  return (
    <>
      <div className="fields">
        <DraftField
          label={words.name}
          value={person.name}
          onGive={(typed) => set({ name: typed.trim().slice(0, 200) })}
        />
        <ChoiceField
          label={words.base}
          value={person.base}
          options={[['', words.sample], ...sizes.map(({ id, label }) => [id, label] as const)]}
          onGive={(base) => set({ base })}
        />
        <DraftField
          label={words.about}
          value={person.note}
          onGive={(note) => set({ note: note.trim().slice(0, 2000) })}
        />
      </div>
      <div className="fields">
        <button
          type="button"
          aria-expanded={chosen}
          aria-label={chosen ? words.hide(name) : words.show(name)}
          onClick={() => desk.read({ person: chosen ? null : person.id })}
        >
          {chosen ? words.hideShort : words.showShort}
        </button>
        <PrintSheet person={person} />
      </div>
      {chosen && <Column person={person} set={(values) => set({ values })} />}
    </>
  );
}

function Column({
  person,
  set,
}: {
  readonly person: Person;
  readonly set: (values: Person['values']) => boolean;
}) {
  const lines = useDeskView((view) => view.pattern.lines);
  const report = useDeskView((view) => view.report.person);
  const { units, say } = useReader();
  if (report === null || report.id !== person.id) return null;
  const id = `column-${person.id}`;
  const give = (line: Line, typed: string): boolean => {
    const { [line.id]: _, ...others } = person.values;
    if (typed.trim() === '') return set(others);
    const quantity = readCell(typed, line, person.base, units);
    return quantity === null ? false : set({ ...others, [line.id]: quantity });
  };
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keyboard
    <section className="size-table private" aria-labelledby={id} tabIndex={0}>
      <table>
        <caption id={id}>
          <span className="private-mark">{words.isPrivate}</span> {words.table(personName(person))}
        </caption>
        <thead>
          <tr>
            {words.heads(report.base).map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {lines.map((line) => {
            const told = report.lines[line.id];
            const own = person.values[line.id];
            const base = told?.base.value?.[units];
            const comes = told?.own.value?.[units];
            return (
              <tr key={line.id}>
                <th scope="row">{say(line.name)}</th>
                <td>
                  {isTypedIn(line) ? (
                    <DraftField
                      label={words.own(say(line.name))}
                      className="amount bare-label"
                      value={own === undefined ? '' : quantityText(own)}
                      fault={words.notAnAmount}
                      onGive={(typed) => give(line, typed)}
                    />
                  ) : null}
                </td>
                <td>{base === undefined ? '–' : say(base, 'row')}</td>
                <td className={comes !== base ? 'differs' : undefined}>
                  {comes === undefined ? '–' : say(comes, 'row')}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}

function PrintSheet({ person }: { readonly person: Person }) {
  const studio = useStudio();
  const desk = useDesk();
  const terms = useDeskView((view) => view.reading.terms);
  const units = useDeskView((view) => view.pattern.units);
  const [told, setTold] = useState('');
  const [isBusy, setBusy] = useState(false);
  const run = async () => {
    const folder = await studio.host.chooseFolder();
    if (folder === null) return;
    setBusy(true);
    setTold(words.printing);
    try {
      await studio.journal?.givePictures();
      const answer = await studio.host.export(
        { desk: desk.id, document: desk.view().document.toJSON() as unknown },
        {
          terms: [terms],
          papers: [units === 'imperial' ? 'letter' : 'a4'],
          editions: ['standard'],
          sizes: [],
          people: [person.id],
          folder: folder.handle,
        },
        () => undefined,
      );
      if (!answer.ok) setTold(answer.error.message);
      else if (answer.value.stopped !== null && answer.value.stopped !== 'interrupted')
        setTold(answer.value.stopped.message);
      else setTold(answer.value.files[0] === undefined ? '' : words.printed(answer.value.files[0].file.name));
    } catch (fault) {
      setTold(fault instanceof Error ? fault.message : String(fault));
    } finally {
      setBusy(false);
    }
  };
  return (
    <>
      <button
        type="button"
        disabled={isBusy}
        aria-label={words.printOf(personName(person))}
        onClick={() => void run()}
      >
        {words.print}
      </button>
      <span role="status">{told}</span>
    </>
  );
}
