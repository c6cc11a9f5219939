/** Writes the report for a human editor into a folder that the maker chooses. */
import { useEffect, useRef, useState } from 'react';
import { useDesk, useDeskView, useStudio } from '../shell/hooks.ts';
import { reviewWords } from '../words/review.ts';

export function EditorReport() {
  const studio = useStudio();
  const desk = useDesk();
  const units = useDeskView((view) => view.pattern.units);
  const [state, setState] = useState<'idle' | 'writing' | { readonly told: string }>('idle');
  const stop = useRef<AbortController | null>(null);
  useEffect(() => () => stop.current?.abort(), []);
  const write = async () => {
    const folder = await studio.host.chooseFolder();
    if (folder === null) return;
    const control = new AbortController();
    stop.current = control;
    setState('writing');
    try {
      await studio.journal?.givePictures();
      const answer = await studio.host.export(
        { desk: desk.id, document: desk.view().document.toJSON() as unknown },
        {
          terms: [desk.view().pattern.terms],
          papers: [units === 'imperial' ? 'letter' : 'a4'],
          editions: [],
          sizes: [],
          report: true,
          folder: folder.handle,
        },
        () => undefined,
        control.signal,
      );
      const stopped = answer.ok ? answer.value.stopped : answer.error;
      if (stopped === null && answer.ok) {
        const [file] = answer.value.files;
        setState({ told: reviewWords.reportWritten(file?.file.name ?? '') });
      } else if (stopped === 'interrupted' || stopped === null) setState('idle');
      else setState({ told: stopped.message });
    } catch (fault) {
      setState({ told: fault instanceof Error ? fault.message : String(fault) });
    } finally {
      stop.current = null;
    }
  };
  return (
    <div className="review-report">
      <button type="button" disabled={state === 'writing'} onClick={() => void write()}>
        {reviewWords.report}
      </button>
      <span className="quiet" role="status">
        {state === 'writing' ? reviewWords.working : typeof state === 'object' ? state.told : ''}
      </span>
    </div>
  );
}
