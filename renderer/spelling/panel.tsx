/**
 * Suggestions for the misspelt word at the caret. It never takes the focus by itself: a key leads into it, Escape
 * out of it.
 */
import type { EditorView } from 'prosemirror-view';
import { type RefObject, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { useLentCommands } from '../commands/context.ts';
import { useDeskView, useStudio } from '../shell/hooks.ts';
import { spellingWords } from '../words/spelling.ts';
import { addWord, misspeltAt, suggestionsFor } from './plugin.ts';

export interface SpellingPanelProps {
  readonly editor: EditorView;
  readonly sheet: RefObject<HTMLElement | null>;
}

export function SpellingPanel({ editor, sheet }: SpellingPanelProps) {
  const studio = useStudio();
  const state = useDeskView((view) => view.state);
  const mayChange = useDeskView((view) => view.reading.terms === view.pattern.terms);
  const panel = useRef<HTMLElement>(null);
  const [closed, close] = useState('');
  const [suggested, suggest] = useState<{ readonly word: string; readonly words: readonly string[] } | null>(
    null,
  );
  const place = mayChange ? misspeltAt(state) : null;
  const word = place === null ? '' : state.doc.textBetween(place.from, place.to);
  const isShown = place !== null && closed !== `${place.from} ${word}`;
  useEffect(() => {
    if (word === '') return;
    let isWanted = true;
    void suggestionsFor(word).then((words) => {
      if (isWanted) suggest({ word, words });
    });
    return () => {
      isWanted = false;
    };
  }, [word]);
  useLayoutEffect(() => {
    const [box, ground] = [panel.current, sheet.current];
    if (place === null || box === null || ground === null) return;
    const at = editor.coordsAtPos(place.from);
    const origin = ground.getBoundingClientRect();
    const room = ground.clientWidth - box.offsetWidth - 16;
    box.style.setProperty('--panel-left', `${Math.max(8, Math.min(at.left - origin.left, room))}px`);
    box.style.setProperty('--panel-top', `${at.bottom - origin.top + 6}px`);
  }, [editor, place, sheet]);
  const enter = useRef(() => {});
  enter.current = () => {
    if (place === null) studio.tell(spellingWords.nothing);
    else {
      close('');
      requestAnimationFrame(() => panel.current?.querySelector('button')?.focus());
    }
  };
  useLentCommands(
    useMemo(() => ({ 'word-at-caret': { hinders: () => null, run: () => enter.current() } }), []),
  );
  if (place === null || !isShown) return null;
  const words = suggested?.word === word ? suggested.words : null;
  const leave = () => {
    close(`${place.from} ${word}`);
    editor.focus();
  };
  return (
    <aside
      ref={panel}
      className="finding-panel note spelling-panel"
      aria-label={spellingWords.label(word)}
      onKeyDown={(event) => {
        if (event.key === 'Escape') leave();
      }}
    >
      <p>{spellingWords.notKnown(word)}</p>
      <div className="panel-buttons">
        {words?.map((other) => (
          <button
            key={other}
            type="button"
            onClick={() => {
              editor.dispatch(editor.state.tr.insertText(other, place.from, place.to));
              editor.focus();
            }}
          >
            {other}
          </button>
        ))}
        {words?.length === 0 && <span className="quiet">{spellingWords.none}</span>}
        <button
          type="button"
          onClick={() => {
            editor.dispatch(addWord(editor.state, word));
            studio.tell(spellingWords.added(word));
            editor.focus();
          }}
        >
          {spellingWords.add}
        </button>
        <button type="button" onClick={leave}>
          {spellingWords.close}
        </button>
      </div>
    </aside>
  );
}
