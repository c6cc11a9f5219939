/** The forms of a special stitch's names and of what the cover tells besides its texts. */

import type { AttributesOf } from '../../../core/document/attributes.ts';
import { level, levels } from '../../../core/trade/levels.ts';
import { setAttributes, setPart } from '../../desk/edits.ts';
import { type SpecialField, specialFields } from '../../materials/special-fields.ts';
import { ChoiceField, DraftField } from '../../parts/fields.tsx';
import { useDesk, useDeskView } from '../../shell/hooks.ts';
import { formWords } from '../../words/forms.ts';
import { Form } from './form.tsx';

export function SpecialForm({ id, onClose }: { readonly id: string; readonly onClose: () => void }) {
  const desk = useDesk();
  const terms = useDeskView((view) => view.pattern.terms);
  const special = useDeskView((view) => view.pattern.specials).find((other) => other.id === id);
  if (special === undefined) return null;
  const words = formWords.special;
  const field = (name: SpecialField) => (
    <DraftField
      label={words[name]}
      value={special[name]}
      onGive={(value) => {
        desk.dispatch(setAttributes<'special'>(desk.view().state, id, { [name]: value.trim() }));
        return true;
      }}
    />
  );
  return (
    <Form title={words.title} onClose={onClose} node={id}>
      {specialFields(terms).map(([name, short]) => (
        <div key={name} className="form-line">
          {field(name)}
          {field(short)}
        </div>
      ))}
    </Form>
  );
}

export function CoverForm({ onClose }: { readonly onClose: () => void }) {
  const desk = useDesk();
  const about = useDeskView((view) => view.pattern.about);
  const words = formWords.cover;
  const set = (attributes: Partial<AttributesOf<'cover'>>) => {
    desk.dispatch(setPart<'cover'>(desk.view().state, ['cover'], attributes));
    return true;
  };
  return (
    <Form title={words.title} onClose={onClose} node={null}>
      <DraftField label={words.designer} value={about.designer} onGive={(designer) => set({ designer })} />
      <ChoiceField
        label={words.level}
        value={String(about.level)}
        options={levels.map((item) => [String(item.level), item.name] as const)}
        onGive={(value) => {
          const chosen = level(Number(value));
          if (chosen !== null) set({ level: chosen.level });
        }}
      />
      <DraftField label={words.garment} value={about.garment} onGive={(garment) => set({ garment })} />
      <div className="form-line">
        <DraftField label={words.version} value={about.version} onGive={(version) => set({ version })} />
        <div className="field">
          <label htmlFor="cover-date">{words.date}</label>
          <input
            id="cover-date"
            type="date"
            value={about.date}
            onChange={(event) => set({ date: event.target.value })}
          />
        </div>
      </div>
    </Form>
  );
}
