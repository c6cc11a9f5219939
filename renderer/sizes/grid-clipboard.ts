/**
 * Hears of copying, cutting and pasting while a cell of the grid has the focus, and hands it on as plain text. It
 * leaves what is copied in fields, and in the rest of the page, alone.
 */
import { type RefObject, useEffect, useRef } from 'react';
import type { GridDeeds } from './grid-deeds.ts';

/** @param isOn Whether the focus is on a cell with an amount, and not on a head. */
export function useGridClipboard(
  grid: RefObject<HTMLTableElement | null>,
  isOn: boolean,
  { copied, clear, paste }: GridDeeds,
): void {
  /** The newest of what the listeners, which stay, are to do. */
  const now = useRef({ isOn, copied, clear, paste });
  now.current = { isOn, copied, clear, paste };
  useEffect(() => {
    const isMine = () => {
      const active = document.activeElement;
      const onCell = active instanceof HTMLElement && active.matches('td') && grid.current?.contains(active);
      return onCell && now.current.isOn;
    };
    const copy = (event: ClipboardEvent) => {
      if (!isMine()) return;
      event.clipboardData?.setData('text/plain', now.current.copied());
      event.preventDefault();
    };
    const cut = (event: ClipboardEvent) => {
      if (!isMine()) return;
      copy(event);
      now.current.clear();
    };
    const onPaste = (event: ClipboardEvent) => {
      if (!isMine()) return;
      event.preventDefault();
      now.current.paste(event.clipboardData?.getData('text/plain') ?? '');
    };
    document.addEventListener('copy', copy);
    document.addEventListener('cut', cut);
    document.addEventListener('paste', onPaste);
    return () => {
      document.removeEventListener('copy', copy);
      document.removeEventListener('cut', cut);
      document.removeEventListener('paste', onPaste);
    };
  }, [grid]);
}
