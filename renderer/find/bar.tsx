/**
 * The bar to find and replace, at the top of the place "Write" while it is asked for. Escape gives the focus back
 * to the manuscript, with the match selected.
 */
import type { EditorView } from 'prosemirror-view';
import { type KeyboardEvent, useEffect, useId, useMemo, useRef, useState } from 'react';
import { tidyText } from '../../core/document/words.ts';
import { useLentCommands } from '../commands/context.ts';
import { useDesk, useDeskView, useStudio } from '../shell/hooks.ts';
import { findWords } from '../words/find.ts';
import type { FindOptions } from './matches.ts';
import { finding, goToMatch, lookFor, replaceAll, replaceMatch } from './plugin.ts';

export interface FindBarProps {
  readonly editor: EditorView;
}

export function FindBar({ editor }: FindBarProps) {
  const studio = useStudio();
  const desk = useDesk();
  const found = useDeskView((view) => finding.getState(view.state));
  const mayReplace = useDeskView((view) => view.reading.terms === view.pattern.terms);
  const [isOpen, setOpen] = useState(false);
  const [options, setOptions] = useState<FindOptions>({ words: '', matchCase: false, wholeWord: false });
  const [replacement, setReplacement] = useState('');
  const field = useRef<HTMLInputElement>(null);
  const id = useId();

  const look = (change: Partial<FindOptions>): void => {
    const next = { ...options, ...change };
    setOptions(next);
    desk.dispatch(lookFor(desk.view().state, next));
  };
  const close = (): void => {
    setOpen(false);
    desk.dispatch(lookFor(desk.view().state, null));
    editor.focus();
  };
  const openBar = useRef(() => {});
  openBar.current = () => {
    const { state } = desk.view();
    const { from, to } = state.selection;
    const chosen = to - from < 80 ? state.doc.textBetween(from, to, ' ').trim() : '';
    setOpen(true);
    if (chosen !== '') look({ words: chosen });
    else if (options.words !== '') look({});
    field.current?.select();
    field.current?.focus();
  };
  useLentCommands(useMemo(() => ({ find: { hinders: () => null, run: () => openBar.current() } }), []));
  useEffect(() => {
    if (!isOpen) return;
    field.current?.focus();
    field.current?.select();
  }, [isOpen]);
  useEffect(
    () => () => {
      if (finding.getState(desk.view().state)?.options != null)
        desk.dispatch(lookFor(desk.view().state, null));
    },
    [desk],
  );

  if (!isOpen) return null;
  const matches = found?.matches.length ?? 0;
  const go = (by: 1 | -1) => desk.dispatch(goToMatch(desk.view().state, by));
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === 'Escape') {
      event.preventDefault();
      close();
    }
    if (event.key !== 'Enter' || !(event.target instanceof HTMLInputElement)) return;
    if (event.target.type === 'checkbox') return;
    event.preventDefault();
    if (event.target === field.current) go(event.shiftKey ? -1 : 1);
    else if (mayReplace) one();
  };
  const all = (): void => {
    desk.dispatch(replaceAll(desk.view().state, tidyText(replacement)));
    studio.tell(findWords.replaced(matches));
    field.current?.focus();
  };
  const one = (): void => {
    desk.dispatch(replaceMatch(desk.view().state, tidyText(replacement)));
    // After the last one the button can do nothing more, and would lose the focus.
    if (finding.getState(desk.view().state)?.matches.length === 0) field.current?.focus();
  };
  return (
    <search className="find-bar" aria-label={findWords.label} onKeyDown={onKeyDown}>
      <div className="find-line">
        <label htmlFor={`${id}f`}>{findWords.find}</label>
        <input
          id={`${id}f`}
          ref={field}
          type="text"
          value={options.words}
          autoComplete="off"
          spellCheck={false}
          onChange={(event) => look({ words: event.target.value })}
        />
        <span className="find-told" role="status">
          {options.words.trim() === '' ? '' : findWords.told(found?.current ?? -1, matches)}
        </span>
        <button type="button" disabled={matches === 0} onClick={() => go(-1)}>
          {findWords.previous}
        </button>
        <button type="button" disabled={matches === 0} onClick={() => go(1)}>
          {findWords.next}
        </button>
        <label>
          <input
            type="checkbox"
            checked={options.matchCase}
            onChange={(event) => look({ matchCase: event.target.checked })}
          />{' '}
          {findWords.matchCase}
        </label>
        <label>
          <input
            type="checkbox"
            checked={options.wholeWord}
            onChange={(event) => look({ wholeWord: event.target.checked })}
          />{' '}
          {findWords.wholeWord}
        </label>
        <button type="button" className="bare find-close" onClick={close}>
          {findWords.close}
        </button>
      </div>
      <div className="find-line">
        <label htmlFor={`${id}r`}>{findWords.replace}</label>
        <input
          id={`${id}r`}
          type="text"
          value={replacement}
          autoComplete="off"
          spellCheck={false}
          disabled={!mayReplace}
          onChange={(event) => setReplacement(event.target.value)}
        />
        <button type="button" disabled={matches === 0 || !mayReplace} onClick={one}>
          {findWords.replaceOne}
        </button>
        <button type="button" disabled={matches === 0 || !mayReplace} onClick={all}>
          {findWords.replaceAll}
        </button>
        {!mayReplace && <span className="quiet">{findWords.readOnly}</span>}
      </div>
    </search>
  );
}
