/**
 * The manuscript: one editor over the desk's state. The desk holds the state, the editor draws it; while it is on
 * screen, every transaction goes through it, so that document and drawing never differ.
 */
import type { Transaction } from 'prosemirror-state';
import { EditorView } from 'prosemirror-view';
import { useEffect, useId, useRef } from 'react';
import type { Desk } from '../desk/desk.ts';
import { useDesk } from '../shell/hooks.ts';
import { writeWords } from '../words/write.ts';
import { drawings } from './drawing/index.ts';
import { LiveParts } from './live.ts';
import type { Popups } from './popups.ts';
import { lendPopups } from './writing.ts';

export interface ManuscriptProps {
  readonly popups: Popups;
  /** Told when the editor is there, and with null when it is gone. */
  readonly onEditor: (editor: EditorView | null) => void;
}

export function Manuscript({ popups, onEditor }: ManuscriptProps) {
  const desk = useDesk();
  const host = useRef<HTMLDivElement>(null);
  const help = useId();
  useEffect(() => {
    if (host.current === null) return;
    const { editor, stop } = open(host.current, desk, popups, help);
    onEditor(editor);
    // The place that was left took the focus with it: whoever comes here by key may write on at once.
    const focused = document.activeElement;
    if (focused === document.body || focused === host.current.closest('main')) editor.focus();
    return () => {
      onEditor(null);
      stop();
    };
  }, [desk, popups, onEditor, help]);
  return (
    <>
      <p id={help} hidden>
        {writeWords.manuscriptHelp}
      </p>
      <div className="manuscript-host" ref={host} />
    </>
  );
}

/** Whether the manuscript may be typed in: not while it is read in other terms than its own. */
const mayType = (desk: Desk): boolean => {
  const { reading, pattern } = desk.view();
  return reading.terms === pattern.terms;
};

/**
 * React looks, at every commit, whether what has the focus is typed in, and if it is walks through all of its text
 * to remember the selection. The selection is the editor's own; the walk costs more than the key that was typed.
 */
function keepFromReact(dom: HTMLElement): void {
  Object.defineProperty(dom, 'contentEditable', {
    configurable: true,
    get: () => 'inherit',
    set: (value: string) => dom.setAttribute('contenteditable', value),
  });
}

function open(host: HTMLElement, desk: Desk, popups: Popups, help: string) {
  const live = new LiveParts(desk);
  const editor = new EditorView(host, {
    state: desk.view().state,
    nodeViews: drawings({ live, popups }),
    editable: () => mayType(desk),
    attributes: () => ({
      class: 'manuscript',
      role: 'textbox',
      'aria-multiline': 'true',
      'aria-label': writeWords.manuscript,
      'aria-describedby': help,
      'aria-readonly': String(!mayType(desk)),
      spellcheck: 'false',
      translate: 'no',
    }),
    dispatchTransaction: (transaction) => take(transaction),
  });
  const take = (transaction: Transaction): void => {
    desk.show(transaction);
    // Whoever heard of it may have changed the state further: what is drawn is the newest.
    const { state } = desk.view();
    if (!editor.isDestroyed && editor.state !== state) editor.updateState(state);
  };
  keepFromReact(editor.dom);
  lendPopups(editor, popups);
  live.attach(editor);
  desk.attach(take);
  let typed = mayType(desk);
  const leave = desk.subscribe(() => {
    if (typed === mayType(desk)) return;
    typed = mayType(desk);
    // The terms on screen changed: what may be typed in, and what words are shown.
    queueMicrotask(() => {
      if (!editor.isDestroyed) editor.updateState(desk.view().state);
    });
  });
  return {
    editor,
    stop: () => {
      leave();
      desk.attach(null);
      live.stop();
      editor.destroy();
    },
  };
}
