/** The frame of a form over the manuscript: its title, the way to remove what it is about, and the way out. */
import type { ReactNode } from 'react';
import { removeNode } from '../../desk/edits.ts';
import { Modal } from '../../parts/modal.tsx';
import { useDesk } from '../../shell/hooks.ts';
import { formWords } from '../../words/forms.ts';

export interface FormProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
  /** Id of the node that it is about; null where that cannot be removed. */
  readonly node: string | null;
  /** Words of the button that removes it. */
  readonly remove?: string;
}

export function Form({ title, onClose, children, node, remove = formWords.remove }: FormProps) {
  const desk = useDesk();
  return (
    <Modal
      title={title}
      onClose={onClose}
      className="form"
      buttons={
        <>
          {node !== null && (
            <button
              type="button"
              onClick={() => {
                onClose();
                desk.dispatch(removeNode(desk.view().state, node));
              }}
            >
              {remove}
            </button>
          )}
          <button type="button" className="chief" onClick={onClose}>
            {formWords.done}
          </button>
        </>
      }
    >
      {children}
    </Modal>
  );
}
