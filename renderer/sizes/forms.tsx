/** What is asked over the sizing sheet: a size's form, sizes from a chart, and before something goes away. */
import { useState } from 'react';
import type { AttributesOf } from '../../core/document/attributes.ts';
import type { Audience } from '../../core/document/pattern.ts';
import { bodyChart, bodyCharts } from '../../core/trade/bodies.ts';
import { setAttributes, setPart } from '../desk/edits.ts';
import { type Use, usesOfLine } from '../desk/line-names.ts';
import { CheckField, ChoiceField, DraftField } from '../parts/fields.tsx';
import { Modal } from '../parts/modal.tsx';
import { useDesk, useDeskView } from '../shell/hooks.ts';
import { useReader } from '../shell/reader.ts';
import { shellWords } from '../words/shell.ts';
import { sizesWords } from '../words/sizes.ts';
import { addSizes, removeLine, removeSize } from './edits.ts';
import type { Asked } from './grid.tsx';

const AUDIENCES = Object.entries(sizesWords.audiences) as [Audience, string][];

interface FormProps {
  readonly onClose: () => void;
}

/** The question or form that is asked for. */
export function AskedForm({
  asked,
  onAsk,
}: {
  readonly asked: Asked | null;
  readonly onAsk: (asked: Asked | null) => void;
}) {
  const close = () => onAsk(null);
  switch (asked?.kind) {
    case 'size':
      return (
        <SizeForm
          id={asked.id}
          onClose={close}
          onRemove={() => onAsk({ kind: 'remove-size', id: asked.id })}
        />
      );
    case 'remove-size':
      return <RemoveSize id={asked.id} onClose={close} />;
    case 'remove-line':
      return <RemoveLine id={asked.id} onClose={close} />;
    case 'add-sizes':
      return <AddSizes onClose={close} />;
    default:
      return null;
  }
}

function SizeForm({
  id,
  onClose,
  onRemove,
}: FormProps & { readonly id: string; readonly onRemove: () => void }) {
  const desk = useDesk();
  const size = useDeskView((view) => view.pattern.sizes).find((other) => other.id === id);
  const sample = useDeskView((view) => view.pattern.sample);
  if (size === undefined) return null;
  const words = sizesWords.sizeForm;
  const set = (attributes: Partial<AttributesOf<'size'>>) => {
    desk.dispatch(setAttributes<'size'>(desk.view().state, id, attributes));
    return true;
  };
  const chart = bodyChart(size.audience);
  const age = (at: 0 | 1, typed: string): boolean => {
    if (typed.trim() === '') return set({ age: null });
    const years = Number(typed.trim().replace(',', '.'));
    if (!Number.isFinite(years) || years < 0 || years > 120) return false;
    const [from, to] = size.age ?? [years, years];
    return set({ age: at === 0 ? [years, Math.max(years, to)] : [Math.min(from, years), years] });
  };
  return (
    <Modal
      title={words.title(size.label)}
      onClose={onClose}
      className="size-form"
      buttons={
        <>
          <button type="button" onClick={onRemove}>
            {words.remove}
          </button>
          <button type="button" className="chief" onClick={onClose}>
            {sizesWords.done}
          </button>
        </>
      }
    >
      <div className="fields">
        <DraftField
          label={words.label}
          value={size.label}
          onGive={(label) => set({ label: label.trim().slice(0, 200) })}
        />
        <ChoiceField
          label={words.audience}
          value={size.audience}
          options={AUDIENCES}
          onGive={(value) => {
            const audience = value as Audience;
            const isThere = bodyChart(audience)?.sizes.includes(size.chart ?? '') ?? false;
            set({ audience, chart: isThere ? size.chart : null });
          }}
        />
        {chart !== null && (
          <ChoiceField
            label={words.chart}
            value={size.chart ?? ''}
            options={[['', words.noChart], ...chart.sizes.map((name) => [name, name] as const)]}
            onGive={(value) => set({ chart: value === '' ? null : value })}
            note={sizesWords.addForm.source(chart.issuer)}
          />
        )}
      </div>
      <div className="fields">
        <DraftField
          label={words.ageFrom}
          value={size.age === null ? '' : String(size.age[0])}
          onGive={(typed) => age(0, typed)}
          className="short"
          numeric
        />
        <DraftField
          label={words.ageTo}
          value={size.age === null ? '' : String(size.age[1])}
          onGive={(typed) => age(1, typed)}
          className="short"
          numeric
        />
      </div>
      <p className="quiet form-note">{words.ageNote}</p>
      <CheckField
        label={words.sample}
        checked={sample === id}
        onGive={(checked) =>
          desk.dispatch(setPart<'sizing'>(desk.view().state, ['sizing'], { sample: checked ? id : null }))
        }
      />
    </Modal>
  );
}

function Ask({
  title,
  act,
  onClose,
  children,
}: FormProps & { readonly title: string; readonly act: () => void; readonly children: React.ReactNode }) {
  return (
    <Modal
      title={title}
      onClose={onClose}
      buttons={
        <>
          <button type="button" onClick={onClose}>
            {sizesWords.keep}
          </button>
          <button
            type="button"
            className="chief"
            onClick={() => {
              act();
              onClose();
            }}
          >
            {sizesWords.remove}
          </button>
        </>
      }
    >
      <div className="dialog-text">{children}</div>
    </Modal>
  );
}

function RemoveSize({ id, onClose }: FormProps & { readonly id: string }) {
  const desk = useDesk();
  const size = useDeskView((view) => view.pattern.sizes).find((other) => other.id === id);
  if (size === undefined) return null;
  const words = sizesWords.removeSize;
  return (
    <Ask
      title={words.title(size.label)}
      onClose={onClose}
      act={() => desk.dispatch(removeSize(desk.view().state, id))}
    >
      <p>{words.text}</p>
    </Ask>
  );
}

function RemoveLine({ id, onClose }: FormProps & { readonly id: string }) {
  const desk = useDesk();
  const document = useDeskView((view) => view.document);
  const line = useDeskView((view) => view.pattern.lines).find((other) => other.id === id);
  const describe = useUseWords();
  if (line === undefined) return null;
  const words = sizesWords.removeLine;
  const uses = usesOfLine(document, line.name).filter((use) => use.node !== id);
  const named = [...new Set(uses.map(describe))];
  return (
    <Ask
      title={words.title(line.name)}
      onClose={onClose}
      act={() => desk.dispatch(removeLine(desk.view().state, id))}
    >
      {named.length === 0 ? (
        <p>{words.free}</p>
      ) : (
        <>
          <p>{words.named}</p>
          <ul className="use-list">
            {named.map((use) => (
              <li key={use}>{use}</li>
            ))}
          </ul>
          <p>{words.after}</p>
        </>
      )}
    </Ask>
  );
}

/** Who names a line, in words: "a figure in Row 3, Back". */
function useUseWords(): (use: Use) => string {
  const pattern = useDeskView((view) => view.pattern);
  const blocks = useDeskView((view) => view.report.blocks);
  return ({ kind, node }) => {
    const words = sizesWords.use;
    if (kind === 'line') return words.line(pattern.lines.find(({ id }) => id === node)?.name ?? '');
    if (kind === 'piece') return words.piece(pattern.pieces.find(({ id }) => id === node)?.name ?? '');
    if (node?.startsWith('notes:')) return words.figure(sizesWords.inNotes);
    if (node?.startsWith('finishing:')) return words.figure(sizesWords.inFinishing);
    const special = pattern.specials.find(({ id }) => id === node);
    if (special) return words.figure(sizesWords.inSpecial(special.nameUs || special.nameUk));
    const holds = (block: (typeof pattern.pieces)[number]['blocks'][number]) =>
      block.id === node || (block.type === 'shaping' && (block.shaped.id === node || block.even.id === node));
    const piece = pattern.pieces.find((each) => each.blocks.some(holds));
    const block = piece?.blocks.find(holds);
    const label = block === undefined ? null : (blocks.get(block.id)?.label ?? null);
    const where = [label, sizesWords.inPiece(piece?.name ?? '')].filter(Boolean).join(', ');
    return kind === 'figure' ? words.figure(where) : words[kind](where);
  };
}

function AddSizes({ onClose }: FormProps) {
  const desk = useDesk();
  const sizes = useDeskView((view) => view.pattern.sizes);
  const { terms, say } = useReader();
  const words = sizesWords.addForm;
  const [audience, setAudience] = useState<Audience>('woman');
  const [chosen, setChosen] = useState<readonly string[]>([]);
  const [labels, setLabels] = useState('');
  const chart = bodyChart(audience);
  const own = labels
    .split(/[,;\n]/)
    .map((label) => label.trim().slice(0, 200))
    .filter((label) => label !== '');
  const isThere = (name: string) => sizes.some((size) => size.audience === audience && size.chart === name);
  const added = chart === null ? own : chart.sizes.filter((name) => chosen.includes(name));
  const add = () => {
    desk.dispatch(
      addSizes(
        desk.view().state,
        added.map((label) => ({ label, audience, chart: chart === null ? null : label })),
      ),
    );
    onClose();
  };
  return (
    <Modal
      title={words.title}
      onClose={onClose}
      className="add-sizes"
      buttons={
        <>
          <button type="button" onClick={onClose}>
            {shellWords.cancel}
          </button>
          <button type="button" className="chief" disabled={added.length === 0} onClick={add}>
            {words.add(added.length)}
          </button>
        </>
      }
    >
      <div className="fields">
        <ChoiceField
          label={words.from}
          value={audience}
          options={[
            ...Object.keys(bodyCharts).map(
              (name) => [name, words.chart(sizesWords.audiences[name as Audience])] as const,
            ),
            ['other', words.own] as const,
          ]}
          onGive={(value) => {
            setAudience(value as Audience);
            setChosen([]);
          }}
        />
      </div>
      {chart === null ? (
        <div className="fields">
          <div className="field">
            <label htmlFor="own-sizes">{words.labels}</label>
            <input
              id="own-sizes"
              value={labels}
              placeholder={words.labelsHint}
              autoComplete="off"
              onChange={({ target }) => setLabels(target.value)}
              onKeyDown={(event) => {
                if (event.key === 'Enter' && added.length > 0) add();
              }}
            />
          </div>
        </div>
      ) : (
        <>
          <p className="quiet form-note">
            {words.source(chart.issuer)}
            {chart.note !== null && ` ${terms === 'uk' ? chart.note : say(chart.note, 'prose')}`}
          </p>
          <fieldset className="choices size-list">
            <legend>{words.choose}</legend>
            {chart.sizes.map((name) => (
              <label key={name}>
                <input
                  type="checkbox"
                  checked={chosen.includes(name)}
                  disabled={isThere(name)}
                  onChange={({ target }) =>
                    setChosen(target.checked ? [...chosen, name] : chosen.filter((other) => other !== name))
                  }
                />
                <span>{isThere(name) ? `${name} (${words.there})` : name}</span>
              </label>
            ))}
          </fieldset>
        </>
      )}
    </Modal>
  );
}
