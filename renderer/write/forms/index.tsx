/** The form that is open over the manuscript. */
import type { EditorView } from 'prosemirror-view';
import { useSyncExternalStore } from 'react';
import type { Popups } from '../popups.ts';
import { CoverForm, SpecialForm } from './about-forms.tsx';
import { BlockForm } from './block-form.tsx';
import { FigureForm } from './figure-form.tsx';
import { PieceForm } from './piece-form.tsx';

export function Forms({ popups, editor }: { readonly popups: Popups; readonly editor: EditorView }) {
  const popup = useSyncExternalStore(popups.subscribe, popups.view);
  if (popup === null) return null;
  const close = () => {
    popups.close();
    editor.focus();
  };
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
