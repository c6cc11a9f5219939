/** Facts of the pattern that no other place edits, and its own terms and units. */
import { useContext, useState } from 'react';
import type { AttributesOf } from '../../core/document/attributes.ts';
import { level, levels } from '../../core/trade/levels.ts';
import type { Units } from '../../core/trade/units.ts';
import { setDocument, setPart } from '../desk/edits.ts';
import { rewriteIn } from '../desk/rewrite.ts';
import { ChoiceField, DraftField } from '../parts/fields.tsx';
import { FindingList, useFindings } from '../parts/findings.tsx';
import { Modal } from '../parts/modal.tsx';
import { useDesk, useDeskView } from '../shell/hooks.ts';
import { materialsWords } from '../words/materials.ts';
import { shellWords } from '../words/shell.ts';
import { TellContext } from './list.tsx';
import { WordsField } from './words-field.tsx';

export function About() {
  const desk = useDesk();
  const about = useDeskView((view) => view.pattern.about);
  const units = useDeskView((view) => view.pattern.units);
  const own = useDeskView((view) => view.pattern.terms);
  const findings = useFindings('cover:title');
  const [isAsking, setAsking] = useState(false);
  const words = materialsWords.about;
  const set = (attributes: Partial<AttributesOf<'cover'>>) => {
    desk.dispatch(setPart<'cover'>(desk.view().state, ['cover'], attributes));
    return true;
  };
  return (
    <section aria-labelledby="about-pattern" className="materials-list">
      <h3 id="about-pattern">{words.title}</h3>
      <div className="fields">
        <DraftField
          label={words.designer}
          className="wide"
          value={about.designer}
          onGive={(typed) => set({ designer: typed.trim().slice(0, 200) })}
        />
        <WordsField
          label={words.garment}
          hint={words.garmentHint}
          value={about.garment}
          onGive={(garment) => set({ garment })}
        />
        <ChoiceField
          label={words.level}
          value={String(about.level)}
          options={levels.map((item) => [String(item.level), item.name] as const)}
          note={level(about.level)?.meaning}
          onGive={(value) => {
            const chosen = level(Number(value));
            if (chosen !== null) set({ level: chosen.level });
          }}
        />
      </div>
      <div className="fields">
        <DraftField
          label={words.version}
          className="short"
          value={about.version}
          onGive={(typed) => set({ version: typed.trim().slice(0, 200) })}
        />
        <div className="field">
          <label htmlFor="pattern-date">{words.date}</label>
          <input
            id="pattern-date"
            type="date"
            value={about.date}
            onChange={({ target }) => set({ date: target.value })}
          />
        </div>
        <ChoiceField
          label={words.units}
          value={units}
          options={[
            ['metric', words.metric],
            ['imperial', words.imperial],
          ]}
          note={words.unitsNote}
          onGive={(value) => desk.dispatch(setDocument(desk.view().state, { units: value as Units }))}
        />
        <div className="field">
          <span>{words.terms}</span>
          <div className="own-terms">
            <strong>{words.termsOf(own)}</strong>
            <button type="button" onClick={() => setAsking(true)}>
              {words.change(own === 'us' ? 'uk' : 'us')}
            </button>
          </div>
        </div>
      </div>
      <FindingList findings={findings} />
      {isAsking && <Rewrite onClose={() => setAsking(false)} />}
    </section>
  );
}

/** Asks whether the words are to be changed, or only what they are said to be. */
function Rewrite({ onClose }: { readonly onClose: () => void }) {
  const desk = useDesk();
  const tell = useContext(TellContext);
  const [from] = useState(desk.view().pattern.terms);
  const to = from === 'us' ? 'uk' : 'us';
  const words = materialsWords.rewrite;
  const rewrite = () => {
    const { transaction, changed, doubts } = rewriteIn(desk.view().state, to);
    desk.dispatch(transaction);
    tell(words.done(to, changed, doubts));
    onClose();
  };
  const declare = () => {
    desk.dispatch(setDocument(desk.view().state, { terms: to }));
    tell(words.declared(to));
    onClose();
  };
  return (
    <Modal
      title={words.title(to)}
      onClose={onClose}
      buttons={
        <>
          <button type="button" onClick={onClose}>
            {shellWords.cancel}
          </button>
          <button type="button" onClick={declare}>
            {words.declare(to)}
          </button>
          <button type="button" className="chief" onClick={rewrite}>
            {words.rewrite(to)}
          </button>
        </>
      }
    >
      <div className="dialog-text">
        <p>{words.text(from, to)}</p>
        <p>{words.already(to)}</p>
      </div>
    </Modal>
  );
}
