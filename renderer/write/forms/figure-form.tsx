/** Choosing a figure: a line of the sizing sheet with its live value, or a short sum of lines with its own. */
import type { EditorView } from 'prosemirror-view';
import { useId, useMemo, useState } from 'react';
import { foldName } from '../../../core/grading/index.ts';
import { Modal } from '../../parts/modal.tsx';
import { useDeskView } from '../../shell/hooks.ts';
import { formWords } from '../../words/forms.ts';
import { putFigure } from '../commands/insert.ts';
import type { Popup } from '../popups.ts';
import { TrialResult, useTrial } from './expression.tsx';

const words = formWords.figure;

export function FigureForm({
  popup,
  editor,
  onClose,
}: {
  readonly popup: Extract<Popup, { kind: 'figure' }>;
  readonly editor: EditorView;
  readonly onClose: () => void;
}) {
  const [typed, setTyped] = useState(popup.expression);
  const [active, setActive] = useState(-1);
  const [isFresh, setFresh] = useState(true);
  const lines = useDeskView((view) => view.pattern.lines);
  const report = useDeskView((view) => view.report);
  const reading = useDeskView((view) => view.reading);
  const id = useId();
  const found = useMemo(() => {
    const wanted = isFresh ? '' : foldName(typed);
    return lines.filter(({ name }) => name.trim() !== '' && foldName(name).includes(wanted));
  }, [lines, typed, isFresh]);
  const trial = useTrial(typed);
  const size = report.sizes.findIndex((other) => other.id === reading.size);
  const insert = (expression: string) => {
    onClose();
    if (expression.trim() !== '')
      putFigure(popup.from, popup.to, expression.trim())(editor.state, editor.dispatch);
  };
  const move = (by: number) => setActive((at) => Math.max(-1, Math.min(found.length - 1, at + by)));
  const option = (at: number) => `${id}-${at}`;
  return (
    <Modal
      title={words.title}
      onClose={onClose}
      className="figure-form"
      buttons={
        <>
          <button type="button" onClick={onClose}>
            {formWords.cancel}
          </button>
          <button
            type="button"
            className="chief"
            disabled={typed.trim() === ''}
            onClick={() => insert(typed)}
          >
            {words.insert}
          </button>
        </>
      }
    >
      <div className="field">
        <label htmlFor={id}>{words.what}</label>
        <input
          id={id}
          role="combobox"
          data-own-undo
          aria-expanded={found.length > 0}
          aria-controls={`${id}-list`}
          aria-autocomplete="list"
          aria-activedescendant={active >= 0 ? option(active) : undefined}
          autoComplete="off"
          placeholder={words.hint}
          value={typed}
          // biome-ignore lint/a11y/noAutofocus: the form is opened to be typed in, at once
          autoFocus
          onChange={(event) => {
            setTyped(event.target.value);
            setFresh(false);
            setActive(-1);
          }}
          onKeyDown={(event) => {
            if (event.nativeEvent.isComposing) return;
            if (event.key === 'ArrowDown') move(1);
            else if (event.key === 'ArrowUp') move(-1);
            else if (event.key === 'Enter') insert(active >= 0 ? found[active]!.name : typed);
            else return;
            event.preventDefault();
          }}
        />
      </div>
      <TrialResult trial={trial} />
      {lines.length === 0 && <p className="quiet">{words.none}</p>}
      <div id={`${id}-list`} className="line-list" aria-label={words.lines} role="listbox">
        {found.map((line, at) => (
          <div
            key={line.id}
            id={option(at)}
            role="option"
            tabIndex={-1}
            aria-selected={at === active}
            onMouseDown={(event) => {
              event.preventDefault();
              insert(line.name);
            }}
            ref={(element) => {
              if (at === active) element?.scrollIntoView({ block: 'nearest' });
            }}
          >
            <span>{line.name}</span>
            <span className="value">
              {report.lines.get(line.id)?.cells[size]?.value?.[reading.units] ?? '–'}
            </span>
          </div>
        ))}
      </div>
    </Modal>
  );
}
