/** The place "Write": the manuscript in one scroller with what stands beside it, and the forms over it. */

import type { EditorView } from 'prosemirror-view';
import { useMemo, useRef, useState } from 'react';
import { PasteNoteStrip } from '../clipboard/note.tsx';
import { FindBar } from '../find/bar.tsx';
import { Ledger } from '../ledger/ledger.tsx';
import { Manuscript } from './manuscript.tsx';
import { Popups } from './popups.ts';

export function WritePlace() {
  const popups = useMemo(() => new Popups(), []);
  const [editor, setEditor] = useState<EditorView | null>(null);
  const sheet = useRef<HTMLDivElement>(null);
  return (
    <>
      {editor !== null && <FindBar editor={editor} />}
      <PasteNoteStrip />
      <div className="write">
        <div className="sheet" ref={sheet}>
          <Manuscript popups={popups} onEditor={setEditor} />
          {editor !== null && <Ledger editor={editor} />}
        </div>
      </div>
    </>
  );
}
