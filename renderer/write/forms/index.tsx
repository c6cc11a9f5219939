/** The form that is open over the manuscript. */
import type { EditorView } from 'prosemirror-view';
import { useEffect, useRef, useSyncExternalStore } from 'react';
import type { Popups } from '../popups.ts';
import { CoverForm, SpecialForm } from './about-forms.tsx';
import { BlockForm } from './block-form.tsx';
import { FigureForm } from './figure-form.tsx';
import { PieceForm } from './piece-form.tsx';

export function Forms({ popups, editor }: { readonly popups: Popups; readonly editor: EditorView }) {
  const popup = useSyncExternalStore(popups.subscribe, popups.view);
  const wasOpen = useRef(false);
  useEffect(() => {
    // While a form is open nothing behind it can take the focus: it goes back when the form is gone.
    if (wasOpen.current && popup === null && !editor.isDestroyed) editor.focus();
    wasOpen.current = popup !== null;
  }, [popup, editor]);
  if (popup === null) return null;
  const close = () => popups.close();
  switch (popup.kind) {
    case 'figure':
      return <FigureForm popup={popup} editor={editor} onClose={close} />;
    case 'block':
      return <BlockForm id={popup.id} onClose={close} />;
    case 'piece':
      return <PieceForm id={popup.id} onClose={close} />;
    case 'special':
      return <SpecialForm id={popup.id} onClose={close} />;
    case 'cover':
      return <CoverForm onClose={close} />;
  }
}
