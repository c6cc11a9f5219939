/** Abbreviations, special stitches and cautions: the author's own, and what follows from the pattern's words. */

import { useEffect } from 'react';
import type { AttributesOf } from '../../core/document/attributes.ts';
import { FIGURE } from '../../core/document/pattern.ts';
import { translate } from '../../core/notation/translate.ts';
import { made } from '../desk/edits.ts';
import { DraftField } from '../parts/fields.tsx';
import { useDesk, useDeskView, useStudio } from '../shell/hooks.ts';
import { useReader } from '../shell/reader.ts';
import { materialsWords } from '../words/materials.ts';
import { setItem } from './edits.ts';
import { ItemList } from './list.tsx';
import { specialFields } from './special-fields.ts';
import { WordsField } from './words-field.tsx';

/** Longest meaning that a document holds. */
const SENTENCE = 2_000;

export function Abbreviations() {
  const desk = useDesk();
  const own = useDeskView((view) => view.document);
  const printed = useDeskView((view) => view.report.abbreviations);
  const { terms, say } = useReader();
  const list = printed?.[terms] ?? [];
  useEffect(() => {
    desk.watch({ abbreviations: true });
    return () => desk.watch({});
  }, [desk]);
  const words = materialsWords.abbreviation;
  const set = (index: number, attributes: Partial<AttributesOf<'abbreviation'>>) => {
    desk.dispatch(setItem<'abbreviation'>(desk.view().state, 'abbreviations', index, attributes));
    return true;
  };
  const items = abbreviationsIn(own);
  return (
    <section aria-labelledby="abbreviations" className="materials-part">
      <h3 id="abbreviations">{words.title}</h3>
      <ItemList
        list="abbreviations"
        title={words.own}
        add={words.add}
        isPart
        note={words.ownNote}
        none={words.none}
        items={items}
        name={({ short }, index) => say(short, 'row').trim() || words.item(index + 1)}
        node={({ short }) => `abbreviation:${short}`}
        make={() => made('abbreviation', {})}
      >
        {({ short, meaning }, index) => (
          <div className="fields">
            <WordsField
              label={words.short}
              className="short"
              kind="row"
              value={short}
              onGive={(typed) => set(index, { short: typed })}
            />
            <WordsField
              label={words.meaning}
              most={SENTENCE}
              value={meaning}
              onGive={(typed) => set(index, { meaning: typed })}
            />
          </div>
        )}
      </ItemList>
      <section aria-labelledby="printed-abbreviations" className="materials-list">
        <h4 id="printed-abbreviations">{words.printed}</h4>
        <p className="quiet">{printed?.[terms].length === 0 ? words.nonePrinted : words.printedNote}</p>
        {list.length > 0 && (
          <dl className="abbreviation-list">
            {list.map(({ abbr, meaning }) => (
              <div key={abbr}>
                <dt>{abbr}</dt>
                <dd>{meaning}</dd>
              </div>
            ))}
          </dl>
        )}
      </section>
    </section>
  );
}

const known = new WeakMap<object, readonly AttributesOf<'abbreviation'>[]>();

/** The author's abbreviations as they stand, two of the same letters and none at all too. */
function abbreviationsIn(document: ReturnType<typeof made>): readonly AttributesOf<'abbreviation'>[] {
  const list = document.child(2).child(4);
  const before = known.get(list);
  if (before !== undefined) return before;
  const items = list.children.map(({ attrs }) => attrs as AttributesOf<'abbreviation'>);
  known.set(list, items);
  return items;
}

export function Specials() {
  const desk = useDesk();
  const studio = useStudio();
  const specials = useDeskView((view) => view.pattern.specials);
  const { terms, say } = useReader();
  const fields = specialFields(useDeskView((view) => view.pattern.terms)).flat();
  const words = materialsWords.special;
  return (
    <ItemList
      list="specials"
      title={words.title}
      add={words.add}
      none={words.none}
      items={specials}
      name={(special, index) =>
        (terms === 'us' ? special.nameUs || special.nameUk : special.nameUk || special.nameUs) ||
        words.item(index + 1)
      }
      node={({ id }) => id}
      make={() => made('special', {})}
    >
      {(special, index) => (
        <>
          <div className="fields">
            {fields.map((name) => (
              <DraftField
                key={name}
                label={words[name]}
                value={special[name]}
                onGive={(typed) => {
                  const value = typed.trim().slice(0, 200);
                  desk.dispatch(setItem<'special'>(desk.view().state, 'specials', index, { [name]: value }));
                  return true;
                }}
              />
            ))}
          </div>
          <p className="special-text">
            {special.text.text.trim() === ''
              ? words.noText
              : say(special.text.text.replaceAll(FIGURE, '…'), 'row')}
          </p>
          <button type="button" onClick={() => studio.goTo(special.id, 0, 0, 'write')}>
            {words.write}
          </button>
        </>
      )}
    </ItemList>
  );
}

export function Cautions() {
  const studio = useStudio();
  const cautions = useDeskView((view) => view.report.materials.cautions);
  const own = useDeskView((view) => view.pattern.cautions);
  const { terms, say } = useReader();
  const words = materialsWords.caution;
  // The trade's cautions are written in British English.
  const ours = (text: string) =>
    terms === 'uk' ? text : translate(text, 'uk', 'us', { kind: 'prose' }).text;
  return (
    <section aria-labelledby="cautions" className="materials-list">
      <h3 id="cautions">{words.title}</h3>
      <p className="quiet">{cautions.length === 0 ? words.none : words.note}</p>
      <ul className="caution-list">
        {cautions.map(({ title, text }) => (
          <li key={title}>
            <strong>{ours(title)}</strong>
            <p>{ours(text)}</p>
          </li>
        ))}
      </ul>
      <h4>{words.own}</h4>
      {own.length === 0 ? (
        <p className="quiet">{words.noneOwn}</p>
      ) : (
        <ul className="caution-list">
          {own.map((text) => (
            <li key={text}>
              <p>{say(text, 'prose')}</p>
            </li>
          ))}
        </ul>
      )}
      <button type="button" onClick={() => studio.goTo('part:closing', 0, 0, 'write')}>
        {words.write}
      </button>
    </section>
  );
}
