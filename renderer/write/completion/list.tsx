/**
 * The list of words at the caret, as it is drawn. The editor keeps the focus; the list follows its state a frame
 * later, so that no letter waits for it. The keys ask the state, not the list.
 */
import type { EditorView } from 'prosemirror-view';
import { type RefObject, useLayoutEffect, useRef } from 'react';
import { useSettledDeskView } from '../../shell/hooks.ts';
import { writeWords } from '../../words/write.ts';
import { accept, LIST, openCompletion, optionId } from './plugin.ts';

export function CompletionList({
  editor,
  sheet,
}: {
  readonly editor: EditorView;
  readonly sheet: RefObject<HTMLElement | null>;
}) {
  const list = useRef<HTMLDivElement>(null);
  const open = useSettledDeskView((view) => openCompletion(view.state));
  const report = useSettledDeskView((view) => view.report);
  const reading = useSettledDeskView((view) => view.reading);
  const lines = useSettledDeskView((view) => view.pattern.lines);
  const from = open?.from ?? -1;
  useLayoutEffect(() => {
    const [box, ground] = [list.current, sheet.current];
    if (from < 0 || box === null || ground === null || from > editor.state.doc.content.size) return;
    const caret = editor.coordsAtPos(from);
    const origin = ground.getBoundingClientRect();
    const room = ground.clientWidth - box.offsetWidth - 16;
    box.style.setProperty('--panel-left', `${Math.max(8, Math.min(caret.left - origin.left - 8, room))}px`);
    box.style.setProperty('--panel-top', `${caret.bottom - origin.top + 4}px`);
  }, [editor, from, sheet]);
  if (open === null) return null;
  const size = report.sizes.findIndex(({ id }) => id === reading.size);
  const lineValue = (name: string): string => {
    const line = lines.find((other) => other.name === name);
    const cell = line === undefined ? undefined : report.lines.get(line.id)?.cells[size];
    return cell?.value?.[reading.units] ?? '–';
  };
  return (
    <div ref={list} id={LIST} className="completion" role="listbox" aria-label={writeWords.completion}>
      {open.proposals.map((proposal, at) => (
        <div
          key={proposal.words}
          id={optionId(at)}
          role="option"
          tabIndex={-1}
          aria-selected={at === open.chosen}
          onMouseDown={(event) => {
            event.preventDefault();
            // Not what stands in a list that is going.
            if (openCompletion(editor.state) === open) accept(editor, open, at);
          }}
        >
          <span>{proposal.words}</span>
          <span className="value">{proposal.isFigure ? lineValue(proposal.words) : proposal.meaning}</span>
        </div>
      ))}
    </div>
  );
}
