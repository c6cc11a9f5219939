/** Whatever stands over the window just now: the lists and forms that commands open, and questions over them. */

import { useCallback } from 'react';
import { titleOf } from '../../core/document/title.ts';
import { Modal } from '../parts/modal.tsx';
import { shellWords } from '../words/shell.ts';
import { useStudio, useStudioView } from './hooks.ts';
import { useLaterParts } from './later.ts';
import type { Dialog, Question, Studio } from './studio.ts';
import { useWaitingKeys } from './waiting-keys.ts';

export function Dialogs() {
  const studio = useStudio();
  const dialog = useStudioView((view) => view.dialog);
  const question = useStudioView((view) => view.question);
  return (
    <>
      {dialog !== null && <LaterDialog key={dialog} kind={dialog} />}
      {question !== null && <Asked key={question.kind} studio={studio} question={question} />}
    </>
  );
}

function Asked({ studio, question }: { readonly studio: Studio; readonly question: Question }) {
  switch (question.kind) {
    case 'save-before':
      return <SaveBefore studio={studio} answer={question.answer} />;
    case 'give-up-words':
      return <GiveUpWords answer={question.answer} />;
    case 'changed-on-disk':
      return <ChangedOnDisk studio={studio} />;
    case 'gone-from-disk':
      return <Gone studio={studio} />;
    case 'not-saved':
      return <NotSaved studio={studio} message={question.message} again={question.again} />;
    case 'trouble':
      return (
        <Modal
          title={question.title}
          onClose={() => studio.ask(null)}
          buttons={
            <button type="button" className="chief" onClick={() => studio.ask(null)}>
              {shellWords.close}
            </button>
          }
        >
          <p className="dialog-text">{question.message}</p>
        </Modal>
      );
  }
}

/** A dialog that stands in a module of its own. Keys that are pressed before it is there are its own. */
function LaterDialog({ kind }: { readonly kind: Dialog }) {
  const studio = useStudio();
  const parts = useLaterParts();
  const close = useCallback(() => studio.show(null), [studio]);
  useWaitingKeys(parts === null, close);
  if (parts === null) return null;
  const Shown = parts.DIALOGS[kind];
  return <Shown />;
}

function nameOf(studio: Studio): string {
  const view = studio.view().desk?.view();
  return view?.file?.ref.name ?? titleOf(view?.pattern.about ?? { title: '' });
}

function SaveBefore({
  studio,
  answer,
}: {
  readonly studio: Studio;
  readonly answer: (choice: 'save' | 'lose' | 'stay') => void;
}) {
  const words = shellWords.saveBefore;
  const isInFile = studio.view().desk?.view().file != null;
  return (
    <Modal
      title={words.title(nameOf(studio))}
      onClose={() => answer('stay')}
      buttons={
        <>
          <button type="button" onClick={() => answer('stay')}>
            {shellWords.cancel}
          </button>
          <button type="button" onClick={() => answer('lose')}>
            {shellWords.dontSave}
          </button>
          <button type="button" className="chief" onClick={() => answer('save')}>
            {shellWords.save}
          </button>
        </>
      }
    >
      <p className="dialog-text">{isInFile ? words.text : words.never}</p>
    </Modal>
  );
}

function GiveUpWords({ answer }: { readonly answer: (choice: 'lose' | 'stay') => void }) {
  const words = shellWords.giveUpWords;
  return (
    <Modal
      title={words.title}
      onClose={() => answer('stay')}
      buttons={
        <>
          <button type="button" className="chief" onClick={() => answer('stay')}>
            {words.stay}
          </button>
          <button type="button" onClick={() => answer('lose')}>
            {words.lose}
          </button>
        </>
      }
    >
      <p className="dialog-text">{words.text}</p>
    </Modal>
  );
}

function ChangedOnDisk({ studio }: { readonly studio: Studio }) {
  const words = shellWords.changedOnDisk;
  return (
    <FileQuestion
      studio={studio}
      title={words.title}
      text={words.text(nameOf(studio))}
      choices={[
        [shellWords.cancel, () => undefined],
        [words.takeTheirs, () => void studio.takeFromDisk()],
        [words.saveAs, () => void studio.saveAs()],
        [words.keepMine, () => void studio.saveOver()],
      ]}
    />
  );
}

function Gone({ studio }: { readonly studio: Studio }) {
  const words = shellWords.gone;
  return (
    <FileQuestion
      studio={studio}
      title={words.title}
      text={words.text(nameOf(studio))}
      choices={[
        [words.later, () => undefined],
        [words.saveAs, () => void studio.saveAs()],
        [words.again, () => void studio.saveOver()],
      ]}
    />
  );
}

function NotSaved({
  studio,
  message,
  again,
}: {
  readonly studio: Studio;
  readonly message: string;
  readonly again: () => void;
}) {
  const words = shellWords.cannotSave;
  return (
    <FileQuestion
      studio={studio}
      title={words.title}
      text={words.text(message)}
      choices={[
        [words.later, () => undefined],
        [words.saveAs, () => void studio.saveAs()],
        [words.again, again],
      ]}
    />
  );
}

interface FileQuestionProps {
  readonly studio: Studio;
  readonly title: string;
  readonly text: string;
  /** Words and what they do once the question is closed; the chief one last. */
  readonly choices: readonly (readonly [words: string, run: () => void])[];
}

/** What to do about the file on the disk. Closing it does nothing. */
function FileQuestion({ studio, title, text, choices }: FileQuestionProps) {
  return (
    <Modal
      title={title}
      onClose={() => studio.ask(null)}
      buttons={choices.map(([words, run], index) => (
        <button
          key={words}
          type="button"
          className={index === choices.length - 1 ? 'chief' : undefined}
          onClick={() => {
            studio.ask(null);
            run();
          }}
        >
          {words}
        </button>
      ))}
    >
      <p className="dialog-text">{text}</p>
    </Modal>
  );
}
