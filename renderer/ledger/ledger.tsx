/**
 * The ledger: beside each row of the manuscript, its stitches in every size. A grid of its own in the scroller of
 * the editor, in line with it; only rows near the view are drawn. It shows the report and works nothing out.
 */
import type { EditorView } from 'prosemirror-view';
import { useLayoutEffect, useRef, useState } from 'react';
import { Grid } from './grid.tsx';
import { RowPlaces } from './row-places.ts';

export interface LedgerProps {
  /** The manuscript's editor, on screen in the same scroller. */
  readonly editor: EditorView;
}

export function Ledger({ editor }: LedgerProps) {
  const element = useRef<HTMLDivElement>(null);
  const [places, setPlaces] = useState<RowPlaces | null>(null);
  useLayoutEffect(() => {
    if (element.current === null) return;
    const made = new RowPlaces(editor, element.current);
    setPlaces(made);
    return () => made.stop();
  }, [editor]);
  return (
    <div className="ledger" ref={element}>
      {places !== null && <Grid places={places} editor={editor} />}
    </div>
  );
}
