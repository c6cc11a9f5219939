/** The start screen: work that was not saved, a new pattern, a file, the last files, the examples. */

import { useEffect, useRef, useState } from 'react';
import type { Recovered } from '../../app/host/host.ts';
import { titleOf } from '../../core/document/title.ts';
import { useCommands } from '../commands/context.ts';
import { Modal } from '../parts/modal.tsx';
import { useStudio, useStudioView } from '../shell/hooks.ts';
import { startWords } from '../words/dialogs.ts';
import { shellWords } from '../words/shell.ts';
import { timeShown } from '../words/time.ts';

export function StartScreen() {
  const commands = useCommands();
  const start = useStudioView((view) => view.start);
  const { recovered } = start;
  const main = useRef<HTMLElement>(null);
  const before = useRef(start);
  useEffect(() => {
    if (before.current === start) return;
    before.current = start;
    // The button that took something off a list went with it: the keyboard goes on from here.
    if (document.activeElement === document.body) main.current?.focus();
  }, [start]);
  return (
    <main className="start" tabIndex={-1} ref={main}>
      <header>
        <h1>{shellWords.product}</h1>
        <p className="quiet">{startWords.lead}</p>
      </header>
      {recovered.length > 0 && <RecoveredWork works={recovered} />}
      <section aria-labelledby="start-begin">
        <h2 id="start-begin">{startWords.begin}</h2>
        <div className="start-buttons">
          <button type="button" className="chief" onClick={() => commands.run('new')}>
            {startWords.newPattern}
          </button>
          <button type="button" onClick={() => commands.run('open')}>
            {startWords.open}
          </button>
          <button type="button" onClick={() => commands.run('bring')}>
            {startWords.bring}
          </button>
          <button type="button" className="bare" onClick={() => commands.run('commands')}>
            {shellWords.menu}
          </button>
        </div>
        <p className="quiet start-note">{startWords.bringNote}</p>
      </section>
      <RecentFiles />
      <Examples />
    </main>
  );
}

function RecoveredWork({ works }: { readonly works: readonly Recovered[] }) {
  const studio = useStudio();
  const [asked, setAsked] = useState<Recovered | null>(null);
  const about = (work: Recovered): string =>
    work.file === null
      ? startWords.never
      : work.fileIsNewer
        ? startWords.newerFile(work.file.name)
        : startWords.belongs(work.file.name, work.file.folder);
  return (
    <section aria-labelledby="start-recovered" className="recovered">
      <h2 id="start-recovered">{startWords.recovered}</h2>
      <p>{startWords.recoveredNote}</p>
      <ul>
        {works.map((work) => (
          <li key={work.desk}>
            <div>
              <strong>{titleOf(work)}</strong>
              <p className="quiet">
                {timeShown(work.time)} · {about(work)}
              </p>
            </div>
            <button
              type="button"
              className="chief"
              aria-label={startWords.recoverThis(titleOf(work))}
              onClick={() => void studio.recover(work.desk)}
            >
              {startWords.recover}
            </button>
            <button
              type="button"
              aria-label={startWords.discardThis(titleOf(work))}
              onClick={() => setAsked(work)}
            >
              {startWords.discard}
            </button>
          </li>
        ))}
      </ul>
      {asked !== null && (
        <Modal
          title={startWords.discardAsk.title(titleOf(asked))}
          onClose={() => setAsked(null)}
          buttons={
            <>
              <button type="button" className="chief" onClick={() => setAsked(null)}>
                {shellWords.cancel}
              </button>
              <button
                type="button"
                onClick={() => {
                  setAsked(null);
                  void studio.discardRecovered(asked.desk);
                }}
              >
                {startWords.discardAsk.yes}
              </button>
            </>
          }
        >
          <p className="dialog-text">{startWords.discardAsk.text}</p>
        </Modal>
      )}
    </section>
  );
}

function RecentFiles() {
  const studio = useStudio();
  const recent = useStudioView((view) => view.start.recent);
  return (
    <section aria-labelledby="start-recent">
      <h2 id="start-recent">{startWords.recent}</h2>
      {recent.length === 0 ? (
        <p className="quiet">{startWords.noRecent}</p>
      ) : (
        <ul className="start-list">
          {recent.map(({ file, title, time: at, there }) => (
            <li key={file.handle}>
              <button type="button" className="bare" disabled={!there} onClick={() => void studio.open(file)}>
                <span>{title || file.name}</span>
                <small className="quiet">
                  {file.name} · {file.folder} · {there ? timeShown(at) : startWords.notThere}
                </small>
              </button>
              <button
                type="button"
                className="bare"
                aria-label={startWords.forget(file.name)}
                onClick={() => void studio.forgetRecent(file.handle)}
              >
                {startWords.forgetShort}
              </button>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

function Examples() {
  const studio = useStudio();
  const examples = useStudioView((view) => view.start.examples);
  if (examples.length === 0) return null;
  return (
    <section aria-labelledby="start-examples">
      <h2 id="start-examples">{startWords.examples}</h2>
      <p className="quiet">{startWords.examplesNote}</p>
      <ul className="start-list">
        {examples.map((example) => (
          <li key={example.name}>
            <button type="button" className="bare" onClick={() => void studio.openExample(example.name)}>
              <span>{example.title}</span>
              <small className="quiet">{startWords.exampleWords[example.name]}</small>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
