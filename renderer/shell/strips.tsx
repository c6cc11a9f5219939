/** Lines above a place that tell of something standing: a file that may not be written, terms that are not the pattern's. */
import { shellWords } from '../words/shell.ts';
import { useDesk, useDeskView, useStudioView } from './hooks.ts';

export function Strips() {
  const desk = useDesk();
  const own = useDeskView((view) => view.pattern.terms);
  const terms = useDeskView((view) => view.reading.terms);
  const file = useDeskView((view) => view.file);
  const trouble = useStudioView((view) => view.journalTrouble);
  // Print has the terms among its choices; nothing is written there.
  const isWritten = useStudioView((view) => view.place !== 'print');
  return (
    <>
      {trouble !== null && (
        <p className="strip" role="alert">
          {shellWords.journalTrouble(trouble)}
        </p>
      )}
      {file?.heldElsewhere && <p className="strip">{shellWords.heldElsewhere}</p>}
      {file?.readOnly && !file.heldElsewhere && <p className="strip">{shellWords.readOnly}</p>}
      {isWritten && terms !== own && (
        <p className="strip">
          <span>{shellWords.readingOther(terms, own)}</span>
          <button type="button" onClick={() => desk.read({ terms: own })}>
            {shellWords.backToOwn(own)}
          </button>
        </p>
      )}
    </>
  );
}
