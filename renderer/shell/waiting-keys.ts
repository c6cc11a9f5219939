/**
 * The keys that a maker presses for a dialog that is still being loaded: letters go to it once it is there, and
 * Escape gives it up, so that none of them changes the pattern behind it.
 */
import { useEffect, useRef } from 'react';

/** Takes the keys while `isWaiting`; `close` gives up what is waited for. */
export function useWaitingKeys(isWaiting: boolean, close: () => void): void {
  const typed = useRef('');
  useEffect(() => {
    if (!isWaiting) {
      const text = typed.current;
      typed.current = '';
      const field = document.activeElement;
      // As if typed there: the field tells its own change, and takes it back in one step.
      if (text !== '' && field instanceof HTMLInputElement) document.execCommand('insertText', false, text);
      return;
    }
    const hear = (event: KeyboardEvent): void => {
      if (event.isComposing) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      if (event.key === 'Escape') close();
      else if (event.key === 'Backspace') typed.current = typed.current.slice(0, -1);
      else if (event.key.length === 1 && !event.ctrlKey && !event.metaKey) typed.current += event.key;
    };
    window.addEventListener('keydown', hear, true);
    return () => window.removeEventListener('keydown', hear, true);
  }, [isWaiting, close]);
}
