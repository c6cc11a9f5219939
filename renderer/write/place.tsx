/** The place "Write": the manuscript in one scroller with what stands beside it, and the forms over it. */

import type { Command } from 'prosemirror-state';
import type { EditorView } from 'prosemirror-view';
import { type RefObject, useLayoutEffect, useMemo, useRef, useState } from 'react';
import type { CommandName } from '../../app/host/commands.ts';
import { PasteNoteStrip } from '../clipboard/note.tsx';
import type { Action } from '../commands/commands.ts';
import { useLentCommands } from '../commands/context.ts';
import type { Desk } from '../desk/desk.ts';
import { FindBar } from '../find/bar.tsx';
import { Ledger } from '../ledger/ledger.tsx';
import { PhotoCommands } from '../photos/commands.tsx';
import { useDesk, useStudio } from '../shell/hooks.ts';
import type { Studio } from '../shell/studio.ts';
import { SpellingPanel } from '../spelling/panel.tsx';
import { commandWords } from '../words/dialogs.ts';
import { writeWords } from '../words/write.ts';
import { type BlockKind, insertBlock, insertPiece } from './commands/insert.ts';
import { moveItem } from './commands/move.ts';
import { CompletionList } from './completion/list.tsx';
import { applyFix, findingToFix, goToFinding } from './findings/commands.ts';
import type { Marked } from './findings/marks.ts';
import { FindingPanel } from './findings/panel.tsx';
import { Forms } from './forms/index.tsx';
import { openFigure, openForm } from './keys.ts';
import { Manuscript } from './manuscript.tsx';
import { Popups } from './popups.ts';
import { useTarget } from './target.ts';

export function WritePlace() {
  const studio = useStudio();
  const popups = useMemo(() => new Popups(), []);
  const [editor, setEditor] = useState<EditorView | null>(null);
  const sheet = useRef<HTMLDivElement>(null);
  useLentCommands(useMemo(() => (editor === null ? {} : actionsOf(editor, studio)), [editor, studio]));
  const scroller = useWhereItWasLeft(editor);
  useTarget(editor);
  return (
    <>
      {editor !== null && <FindBar editor={editor} />}
      <PasteNoteStrip />
      {editor !== null && <PhotoCommands editor={editor} />}
      <div className="write" ref={scroller}>
        <div className="sheet" ref={sheet}>
          <Manuscript popups={popups} onEditor={setEditor} />
          {editor !== null && <Ledger editor={editor} />}
          {editor !== null && <FindingPanel editor={editor} sheet={sheet} />}
          {editor !== null && <SpellingPanel editor={editor} sheet={sheet} />}
          {editor !== null && <CompletionList editor={editor} sheet={sheet} />}
        </div>
        {editor !== null && <Forms popups={popups} editor={editor} />}
      </div>
    </>
  );
}

/** The first text that was in view when another place came to the front, and how far from the top it stood. */
const leftAt = new WeakMap<Desk, { readonly text: number; readonly below: number }>();

/** Comes back to what was in view. By a text, because what stands above it takes its full height a moment later. */
function useWhereItWasLeft(editor: EditorView | null): RefObject<HTMLDivElement | null> {
  const desk = useDesk();
  const scroller = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const element = scroller.current;
    if (editor === null || element === null) return;
    const texts = () => [...element.querySelectorAll('.manuscript .words')];
    const below = (text: Element) => text.getBoundingClientRect().top - element.getBoundingClientRect().top;
    const left = leftAt.get(desk);
    const there = left && texts()[left.text];
    if (there) element.scrollTop += below(there) - left.below;
    return () => {
      const all = texts();
      const first = all.findIndex((text) => below(text) >= 0);
      if (first >= 0) leftAt.set(desk, { text: first, below: below(all[first]!) });
    };
  }, [desk, editor]);
  return scroller;
}

const BLOCKS: readonly BlockKind[] = ['row', 'round', 'repeat', 'shaping', 'prose', 'heading'];

/** The commands that the manuscript lends while it is on screen. */
function actionsOf(editor: EditorView, studio: Studio): Partial<Record<CommandName, Action>> {
  const can = () => (editor.editable && !editor.isDestroyed ? null : commandWords.hindrances.notToChange);
  const run = (command: Command, hinders: Action['hinders'] = can): Action => ({
    hinders,
    run: () => {
      editor.focus();
      command(editor.state, editor.dispatch, editor);
    },
  });
  const told = (marked: Marked | null) =>
    marked === null
      ? studio.tell(writeWords.finding.none)
      : studio.say(writeWords.finding.told(marked.finding.severity, marked.finding.message));
  const always = () => null;
  const actions: Partial<Record<CommandName, Action>> = {
    'next-finding': run(goToFinding(1, told), always),
    'previous-finding': run(goToFinding(-1, told), always),
    fix: { hinders: can, run: () => fix(editor, studio) },
    'move-up': run(moveItem(-1)),
    'move-down': run(moveItem(1)),
    'insert-figure': run(openFigure),
    'insert-piece': run(insertPiece),
    details: run(openForm),
  };
  for (const kind of BLOCKS) actions[`insert-${kind}` as CommandName] = run(insertBlock(kind));
  return actions;
}

function fix(editor: EditorView, studio: Studio): void {
  const words = writeWords.finding;
  const marked = findingToFix(editor.state);
  if (marked === null) {
    studio.tell(words.noFix);
    return;
  }
  applyFix(marked, (outcome) => {
    if (outcome === 'fixed') studio.tell(words.fixed(marked.finding.fix!.label));
    else studio.tell(outcome === 'changed' ? words.changed : words.noFix);
  })(editor.state, editor.dispatch);
  editor.focus();
}
