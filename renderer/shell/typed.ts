/** What is being typed in a field, and not the document's yet. */
import { flushSync } from 'react-dom';

/**
 * Gives what is being typed in a field to the document, as leaving the field does, before something is done that
 * would go past it: saving, leaving the place, closing. The focus stays where it was, or goes to what held the field.
 */
export function giveTyped(): void {
  const field = document.activeElement;
  if (!(field instanceof HTMLElement) || !field.matches('input, textarea')) return;
  const around = field.parentElement?.closest<HTMLElement>('[tabindex]');
  // At once, so that it is known whether the field is still there: some go when they are left.
  flushSync(() => field.blur());
  if (field.isConnected) field.focus({ preventScroll: true });
  if (document.activeElement === document.body) around?.focus({ preventScroll: true });
}

/** A form or a question stands over the window: nothing behind it can be gone to. */
export const isModalOpen = (): boolean => document.querySelector('dialog:modal') !== null;

/**
 * Whether undoing is the field's own: what is typed in it becomes the document's only when a button is pressed, so
 * that undoing in it has nothing to do with the document.
 */
export const hasOwnUndo = (target: EventTarget | null): boolean =>
  target instanceof Element && target.closest('[data-own-undo]') !== null;
