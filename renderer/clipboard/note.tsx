/** A note over the manuscript that tells what became of a pasted passage, until it is closed. */
import { useDesk, useDeskView } from '../shell/hooks.ts';
import { clipboardWords } from '../words/clipboard.ts';
import { pasteNotes } from './plugin.ts';

export function PasteNoteStrip() {
  const desk = useDesk();
  const note = useDeskView((view) => pasteNotes.getState(view.state) ?? null);
  if (note === null) return null;
  const close = () => desk.dispatch(desk.view().state.tr.setMeta(pasteNotes, null));
  return (
    <section className="strip paste-note" aria-label={clipboardWords.label}>
      <ul>
        {clipboardWords.told(note.report, note.leftOut).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <button type="button" onClick={close}>
        {clipboardWords.close}
      </button>
    </section>
  );
}
