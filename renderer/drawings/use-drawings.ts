/**
 * Asks for the drawings of the pattern as it is, again after each new report, while the place is in front. The drawings
 * of before stay until the new ones are there.
 */
import { useEffect, useState } from 'react';
import type { DrawingChoice, DrawingsReport } from '../analysis/drawings.ts';
import { useDesk, useDeskView } from '../shell/hooks.ts';

export function useDrawings(choice: DrawingChoice): {
  readonly drawings: DrawingsReport | null;
  readonly isWorking: boolean;
} {
  const desk = useDesk();
  const version = useDeskView((view) => view.report.version);
  const [drawings, setDrawings] = useState<DrawingsReport | null>(null);
  const [shown, setShown] = useState('');
  const { terms, units, focus, allSizes, nested, isNarrow } = choice;
  const asked = `${version} ${terms} ${units} ${focus} ${allSizes} ${nested} ${isNarrow}`;
  useEffect(() => {
    if (version < 0) return;
    let isWanted = true;
    void desk.draw({ terms, units, focus, allSizes, nested, isNarrow }).then((made) => {
      if (!isWanted) return;
      setDrawings(made);
      setShown(asked);
    });
    return () => {
      isWanted = false;
    };
  }, [desk, version, terms, units, focus, allSizes, nested, isNarrow, asked]);
  return { drawings, isWorking: shown !== asked };
}
