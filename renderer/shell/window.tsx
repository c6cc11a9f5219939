/**
 * The window: the bar, the outline, the place in front, and what stands over them. It hands keys to commands and
 * holds no state of its own.
 */
import { useEffect, useMemo, useRef } from 'react';
import { COMMANDS, type CommandName } from '../../app/host/commands.ts';
import { Commands } from '../commands/commands.ts';
import { CommandsContext } from '../commands/context.ts';
import { commandOf } from '../commands/keys.ts';
import { Outline } from '../outline/outline.tsx';
import { StartScreen } from '../start/screen.tsx';
import { shellWords } from '../words/shell.ts';
import { WritePlace } from '../write/place.tsx';
import { Bar } from './bar.tsx';
import { Dialogs } from './dialogs.tsx';
import { DeskContext, StudioContext, useStudio, useStudioView } from './hooks.ts';
import { useLaterParts } from './later.ts';
import { NoticeLine } from './notice.tsx';
import { ScrollBack } from './scroll-back.tsx';
import { Strips } from './strips.tsx';
import type { Place, Studio } from './studio.ts';
import { giveTyped, hasOwnUndo, isModalOpen } from './typed.ts';

/** What can be done while a form stands over the window. */
const IN_FORMS: ReadonlySet<CommandName> = new Set(['save', 'undo', 'redo', 'text-larger', 'text-smaller']);

const isCommand = (name: string): name is CommandName => COMMANDS.some((entry) => entry.name === name);

const isAsked = (studio: Studio): boolean => studio.view().dialog !== null || studio.view().question !== null;

export function Window({ studio }: { readonly studio: Studio }) {
  const commands = useMemo(() => new Commands(studio), [studio]);
  useEffect(() => {
    const run = (name: CommandName): boolean => {
      // A form keeps what is typed in it until it is put in: only what can be done within it is done.
      if (isModalOpen() && !IN_FORMS.has(name)) return true;
      giveTyped();
      return commands.run(name);
    };
    const onKey = (event: KeyboardEvent) => {
      if (event.defaultPrevented || event.isComposing) return;
      const name = commandOf(event);
      if (name === null || isAsked(studio)) return;
      if ((name === 'undo' || name === 'redo') && hasOwnUndo(event.target)) return;
      if (run(name)) event.preventDefault();
    };
    window.addEventListener('keydown', onKey);
    const stop = studio.onCommand((name) => {
      if (isCommand(name)) run(name);
    });
    return () => {
      window.removeEventListener('keydown', onKey);
      stop();
    };
  }, [commands, studio]);
  return (
    <StudioContext value={studio}>
      <CommandsContext value={commands}>
        <Settled />
        <Dialogs />
      </CommandsContext>
    </StudioContext>
  );
}

/** The start screen, or the pattern on the desk. */
function Settled() {
  const studio = useStudio();
  const desk = useStudioView((view) => view.desk);
  const place = useStudioView((view) => view.place);
  const { theme, textScale } = useStudioView((view) => view.settings);
  useEffect(() => {
    document.documentElement.dataset.theme = theme;
    document.documentElement.style.setProperty('--text-scale', String(textScale));
  }, [theme, textScale]);
  useEffect(() => {
    const onLeave = (event: BeforeUnloadEvent) => {
      giveTyped();
      void studio.journal?.flush();
      if (studio.view().desk?.isUnsaved || studio.holdsWords) event.preventDefault();
    };
    const inBrowser = studio.view().start.about.shell === 'browser';
    if (inBrowser) window.addEventListener('beforeunload', onLeave);
    return () => window.removeEventListener('beforeunload', onLeave);
  }, [studio]);
  useEffect(() => {
    // The clocks of a page that is out of sight run slow: what waits to be kept is kept now.
    const onHidden = () => {
      if (document.visibilityState === 'hidden') void studio.journal?.flush();
    };
    document.addEventListener('visibilitychange', onHidden);
    return () => document.removeEventListener('visibilitychange', onHidden);
  }, [studio]);
  const shown = desk === null ? 'start' : `${desk.id} ${place}`;
  const before = useRef(shown);
  useEffect(() => {
    if (before.current === shown) return;
    before.current = shown;
    // What had the focus may have gone with the place that had it: the keyboard goes on from the new one.
    if (document.activeElement === document.body) document.querySelector<HTMLElement>('main')?.focus();
  }, [shown]);
  if (desk === null) return <StartScreen />;
  return (
    <DeskContext value={desk} key={desk.id}>
      <div className="window">
        <a className="skip" href="#place">
          {shellWords.skip}
        </a>
        <Bar />
        <nav className="outline" aria-label={shellWords.outline}>
          <Outline />
        </nav>
        <main className="place" id="place" tabIndex={-1}>
          <Strips />
          <InFront place={place} />
        </main>
        <NoticeLine />
      </div>
    </DeskContext>
  );
}

/** A place. One that is still being loaded shows nothing until it is there. */
function InFront({ place }: { readonly place: Place }) {
  return (
    <>
      <ScrollBack key={`left ${place}`} place={place} />
      {place === 'write' ? <WritePlace /> : <LaterPlace key={place} place={place} />}
    </>
  );
}

function LaterPlace({ place }: { readonly place: Exclude<Place, 'write'> }) {
  const parts = useLaterParts();
  if (parts === null) return null;
  const Shown = parts.PLACES[place];
  return <Shown />;
}
