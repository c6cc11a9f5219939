/**
 * A question or a form over the window: the platform's own modal dialog, which keeps the focus inside and gives
 * it back. Escape closes it.
 */
import { type ReactNode, useId, useLayoutEffect, useRef } from 'react';

export interface ModalProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
  /** Buttons at the foot, the chief one last. */
  readonly buttons?: ReactNode;
  readonly className?: string;
}

export function Modal({ title, onClose, children, buttons, className }: ModalProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const heading = useId();
  // In the layout phase, because the dialog gives the focus back only if it is closed before it leaves the page.
  useLayoutEffect(() => {
    const element = dialog.current;
    const before = document.activeElement;
    if (element !== null && !element.open) element.showModal();
    return () => {
      // A caret left in a field of the dialog goes with it, and the field that gets the focus back has none: it looks
      // ready and takes no letter (Chromium). The manuscript keeps its own place.
      const isField = before instanceof HTMLInputElement || before instanceof HTMLTextAreaElement;
      if (isField && element?.contains(document.activeElement)) getSelection()?.removeAllRanges();
      element?.close();
    };
  }, []);
  return (
    <dialog
      ref={dialog}
      aria-labelledby={heading}
      className={className}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
      onClose={() => {
        // Chromium closes it without asking when Escape is pressed again before anything else: it stays until the
        // one who opened it takes it away. One that was taken away is closed too, and is nobody's business then.
        const element = dialog.current;
        if (element === null || element.open) return;
        element.showModal();
        onClose();
      }}
    >
      <h2 id={heading}>{title}</h2>
      {children}
      {buttons && <div className="dialog-buttons">{buttons}</div>}
    </dialog>
  );
}
