/** The finding at the caret: what is wrong in words, the numbers of the sizes, the fix. It never takes the focus. */
import type { EditorView } from 'prosemirror-view';
import { type RefObject, useLayoutEffect, useRef } from 'react';
import { useCommands } from '../../commands/context.ts';
import { keyWords } from '../../commands/keys.ts';
import { inTerms } from '../../desk/terms.ts';
import { useDeskView } from '../../shell/hooks.ts';
import { writeWords } from '../../words/write.ts';
import { openFinding, openFindingOf, showFinding } from './marks.ts';

const words = writeWords.finding;

export function FindingPanel({
  editor,
  sheet,
}: {
  readonly editor: EditorView;
  readonly sheet: RefObject<HTMLElement | null>;
}) {
  const panel = useRef<HTMLElement>(null);
  const commands = useCommands();
  const finding = useDeskView((view) => openFindingOf(view.state));
  const pattern = useDeskView((view) => view.pattern);
  const reading = useDeskView((view) => view.reading);
  useLayoutEffect(() => {
    const marked = finding === null ? null : openFinding(editor.state);
    const [box, ground] = [panel.current, sheet.current];
    if (marked === null || box === null || ground === null) return;
    const end = editor.coordsAtPos(marked.to, -1);
    const start = editor.coordsAtPos(marked.from, 1);
    const origin = ground.getBoundingClientRect();
    const left = start.top === end.top ? start.left : end.left;
    const room = ground.clientWidth - box.offsetWidth - 16;
    box.style.setProperty('--panel-left', `${Math.max(8, Math.min(left - origin.left, room))}px`);
    box.style.setProperty('--panel-top', `${end.bottom - origin.top + 6}px`);
    box.scrollIntoView({ block: 'nearest' });
  }, [editor, finding, sheet]);
  if (finding === null) return null;
  const shown = (text: string) => inTerms(text, pattern, reading.terms, 'mixed');
  const isReadOnly = reading.terms !== pattern.terms;
  return (
    <aside ref={panel} className={`finding-panel ${finding.severity}`} aria-label={words.label}>
      <p>
        <strong>{writeWords.severity(finding.severity)}.</strong> {shown(finding.message)}
      </p>
      {finding.detail !== null && <p className="detail">{shown(finding.detail)}</p>}
      <div className="panel-buttons">
        {finding.fix !== null && (
          <button type="button" className="chief" disabled={isReadOnly} onClick={() => commands.run('fix')}>
            {shown(finding.fix.label)} <kbd>{keyWords('Mod-.')}</kbd>
          </button>
        )}
        <button type="button" onClick={() => commands.run('next-finding')}>
          {words.next} <kbd>{keyWords('F8')}</kbd>
        </button>
        <button
          type="button"
          onClick={() => {
            editor.dispatch(showFinding(editor.state.tr, null));
            editor.focus();
          }}
        >
          {words.close}
        </button>
      </div>
    </aside>
  );
}
