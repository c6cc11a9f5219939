/** The form that is open over the manuscript. */
import type { EditorView } from 'prosemirror-view';
import { useEffect, useRef, useSyncExternalStore } from 'react';
import type { Terms } from '../../../core/trade/stitches.ts';
import { Modal } from '../../parts/modal.tsx';
import { useDesk, useDeskView } from '../../shell/hooks.ts';
import { formWords } from '../../words/forms.ts';
import { shellWords } from '../../words/shell.ts';
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
  const own = useDeskView((view) => view.pattern.terms);
  const reading = useDeskView((view) => view.reading.terms);
  if (popup === null) return null;
  const close = () => popups.close();
  if (reading !== own) return <NotNow terms={reading} own={own} onClose={close} />;
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

/** In the place of a form while the pattern is read in the other terms: why it is not open, and the way back to it. */
function NotNow({
  terms,
  own,
  onClose,
}: {
  readonly terms: Terms;
  readonly own: Terms;
  readonly onClose: () => void;
}) {
  const desk = useDesk();
  const words = formWords.otherTerms;
  return (
    <Modal
      title={words.title}
      onClose={onClose}
      buttons={
        <>
          <button type="button" onClick={onClose}>
            {shellWords.close}
          </button>
          {/* The form itself stands here then. */}
          <button type="button" className="chief" onClick={() => desk.read({ terms: own })}>
            {shellWords.backToOwn(own)}
          </button>
        </>
      }
    >
      <p className="dialog-text">{words.why(terms, own)}</p>
    </Modal>
  );
}
