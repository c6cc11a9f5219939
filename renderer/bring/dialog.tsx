/** Brings in an old pattern: choosing or pasting it, looking at what was understood, then a new unsaved pattern. */
import { useEffect, useRef, useState } from 'react';
import type { Picture } from '../../core/document/media.ts';
import type { Brought } from '../../core/intake/bring.ts';
import { fileKind } from '../../core/intake/file-kind.ts';
import { takeOffers } from '../../core/intake/offers.ts';
import { intakeRefusals } from '../../core/intake/sentences.ts';
import type { Terms } from '../../core/trade/stitches.ts';
import { Modal } from '../parts/modal.tsx';
import { useStudio } from '../shell/hooks.ts';
import { bringWords } from '../words/bring.ts';
import { shellWords } from '../words/shell.ts';
import type { Source } from './protocol.ts';
import { readOldPattern } from './reading.ts';
import { Review } from './review.tsx';

type State =
  | { readonly kind: 'choosing'; readonly fault: string | null }
  | { readonly kind: 'reading' }
  | { readonly kind: 'read'; readonly brought: Brought; readonly media: readonly Picture[] };

/** Why a PDF gives no words. */
class UnreadPdf extends Error {}

/** What is read: of a PDF its words, which only the page can take out of it. Rejects with the reason. */
async function inWords(source: Source): Promise<Source> {
  if (source.kind === 'words' || fileKind(source.bytes).kind !== 'pdf') return source;
  const text = await import('./pdf-text.ts')
    .then(({ textOfPdf }) => textOfPdf(source.bytes))
    .catch(() => {
      throw new UnreadPdf(bringWords.pdfUnread);
    });
  if (text.trim() === '') throw new UnreadPdf(intakeRefusals.scan);
  return { kind: 'words', text, name: source.name };
}

export function BringIn() {
  const studio = useStudio();
  const [state, setState] = useState<State>({ kind: 'choosing', fault: null });
  const [pasted, setPasted] = useState('');
  const [source, setSource] = useState<Source | null>(null);
  /** What the maker chose; null while the text itself shows it. */
  const [terms, setTerms] = useState<Terms | null>(null);
  const [title, setTitle] = useState('');
  const [taken, setTaken] = useState<ReadonlySet<number>>(new Set());
  const work = useRef<AbortController | null>(null);
  useEffect(() => () => work.current?.abort(), []);
  const close = () => void studio.dismiss();
  const isTouched = state.kind === 'read' && (taken.size > 0 || title !== state.brought.pattern.about.title);
  const holds = pasted.trim() !== '' || isTouched;
  useEffect(() => studio.holdWords(() => holds), [studio, holds]);

  const read = async (given: Source, chosen: Terms | null) => {
    work.current?.abort();
    const control = new AbortController();
    work.current = control;
    setTerms(chosen);
    setState({ kind: 'reading' });
    try {
      const from = await inWords(given);
      if (control.signal.aborted) return;
      setSource(from);
      const told = await readOldPattern(
        { source: from, terms: chosen, date: studio.today() },
        control.signal,
      );
      if (!told.ok) return setState({ kind: 'choosing', fault: told.message });
      setTitle(told.brought.pattern.about.title);
      setTaken(new Set());
      setState({ kind: 'read', brought: told.brought, media: told.media });
      studio.say(bringWords.rows(told.brought.rows.followed, told.brought.rows.written));
    } catch (error) {
      // Stopped, because something else is read or the dialog is gone; or it is a PDF that cannot be read.
      if (!control.signal.aborted && error instanceof UnreadPdf)
        setState({ kind: 'choosing', fault: error.message });
    }
  };

  const choose = () => {
    const input = document.createElement('input');
    input.type = 'file';
    input.accept = '.txt,.md,.text,.docx,.pdf,text/plain,application/pdf';
    input.addEventListener('change', () => {
      const file = input.files?.[0];
      if (file === undefined) return;
      file.arrayBuffer().then(
        (buffer) => read({ kind: 'file', name: file.name, bytes: new Uint8Array(buffer) }, null),
        () => setState({ kind: 'choosing', fault: bringWords.unread(file.name) }),
      );
    });
    input.click();
  };

  const make = (brought: Brought, media: readonly Picture[]) => {
    const offers = brought.offers.filter((_, i) => taken.has(i));
    const pattern = takeOffers(brought.pattern, offers);
    const pictures = new Map(media.map((picture) => [picture.id, picture]));
    void studio.begin({ ...pattern, about: { ...pattern.about, title: title.trim() } }, pictures);
  };

  const isAsked = state.kind === 'read' && terms === null && !state.brought.market.sure;
  return (
    <Modal
      title={bringWords.title}
      onClose={close}
      className="bring"
      buttons={
        <>
          <button type="button" onClick={close}>
            {shellWords.cancel}
          </button>
          {state.kind === 'read' && (
            <>
              <button type="button" onClick={() => setState({ kind: 'choosing', fault: null })}>
                {bringWords.again}
              </button>
              <button
                type="button"
                className="chief"
                disabled={isAsked}
                onClick={() => make(state.brought, state.media)}
              >
                {bringWords.make}
              </button>
            </>
          )}
        </>
      }
    >
      {state.kind === 'choosing' && (
        <>
          <p>{bringWords.lead}</p>
          {state.fault !== null && (
            <p className="form-fault" role="alert">
              {state.fault}
            </p>
          )}
          <button type="button" className="chief" onClick={choose}>
            {bringWords.chooseFile}
          </button>
          <label className="field">
            <span>{bringWords.paste}</span>
            <textarea rows={10} value={pasted} onChange={(event) => setPasted(event.target.value)} />
          </label>
          <button
            type="button"
            disabled={pasted.trim() === ''}
            onClick={() => void read({ kind: 'words', text: pasted, name: null }, null)}
          >
            {bringWords.read}
          </button>
        </>
      )}
      {state.kind === 'reading' && <p role="status">{bringWords.reading}</p>}
      {state.kind === 'read' && (
        <Review
          brought={state.brought}
          pictures={state.media.length}
          isAsked={isAsked}
          title={title}
          onTitle={setTitle}
          onTerms={(chosen) => source !== null && void read(source, chosen)}
          taken={taken}
          onTaken={setTaken}
        />
      )}
    </Modal>
  );
}
