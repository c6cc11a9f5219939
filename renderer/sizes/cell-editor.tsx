/** The field that a cell becomes while an amount is typed in it. It gives what was typed; whether that is an amount is not for it to say. */
import { useEffect, useRef, useState } from 'react';
import { isForWindow } from '../parts/fields.tsx';
import { useHalfTyped } from '../shell/half-typed.ts';

/** The field in a cell. `onCommit` says whether it took what was typed; `onEnd` gets the key that leads on from it, "" to stay, null when the focus went elsewhere. */
export function CellEditor({
  label,
  text,
  onCommit,
  onRefused,
  onEnd,
}: {
  readonly label: string;
  readonly text: string;
  readonly onCommit: (text: string) => boolean;
  readonly onRefused: (text: string) => void;
  readonly onEnd: (next: string | null) => void;
}) {
  const [typed, setTyped] = useState(text);
  const [isWrong, setWrong] = useState(false);
  const isDone = useRef(false);
  const input = useRef<HTMLInputElement>(null);
  useEffect(() => {
    input.current?.focus();
    input.current?.setSelectionRange(text.length, text.length);
  }, [text]);
  useHalfTyped(typed === text ? null : typed, onCommit);
  const commit = (): boolean => {
    const isTaken = onCommit(typed);
    if (!isTaken) onRefused(typed);
    return isTaken;
  };
  const end = (next: string | null) => {
    isDone.current = true;
    onEnd(next);
  };
  return (
    <input
      ref={input}
      className="cell-field"
      aria-label={label}
      aria-invalid={isWrong || undefined}
      autoComplete="off"
      value={typed}
      onChange={({ target }) => {
        setTyped(target.value);
        setWrong(false);
      }}
      onMouseDown={(event) => event.stopPropagation()}
      onBlur={() => {
        if (isDone.current) return;
        commit();
        end(null);
      }}
      onKeyDown={(event) => {
        if (!isForWindow(event, typed !== text)) event.stopPropagation();
        if (event.nativeEvent.isComposing) return;
        const { key, shiftKey } = event;
        if (key === 'Escape') end('');
        else if (key === 'Enter' || key === 'Tab') {
          const next =
            key === 'Enter' ? (shiftKey ? 'ArrowUp' : 'ArrowDown') : shiftKey ? 'ArrowLeft' : 'ArrowRight';
          if (commit()) end(next);
          else setWrong(true);
        } else return;
        event.preventDefault();
      }}
    />
  );
}
