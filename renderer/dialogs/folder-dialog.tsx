/**
 * Choosing files and folders in a browser page, which has no dialogs of the system: a list to walk through by
 * mouse or keys, and a field for a new file's name. It holds handles and names only; what is on the disk the
 * host says.
 */
import { type KeyboardEvent, useEffect, useId, useRef, useState, useSyncExternalStore } from 'react';
import type { FolderItem, FolderListing, FolderRoot, Folders } from '../../app/host/folders.ts';
import type { FileRef } from '../../app/host/host.ts';
import type { ChooseRequest, Chooser } from '../host/chooser.ts';
import { Modal } from '../parts/modal.tsx';
import { folderWords } from '../words/folders.ts';
import { shellWords } from '../words/shell.ts';

interface Asked {
  readonly request: ChooseRequest;
  readonly folders: Folders;
  readonly answer: (file: FileRef | null) => void;
}

/** Between the host, which asks, and the dialog, which answers. */
export class Asker {
  #asked: Asked | null = null;
  /** The folder that was chosen in last, where the next dialog begins. */
  last: FileRef | null = null;
  readonly #listeners = new Set<() => void>();

  readonly ask: Chooser = (request, folders) =>
    new Promise((resolve) => {
      this.#asked?.answer(null); // one question at a time: an older one was not answered
      this.#set({
        request,
        folders,
        answer: (file) => {
          this.#set(null);
          resolve(file);
        },
      });
    });

  readonly asked = (): Asked | null => this.#asked;

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  #set(asked: Asked | null): void {
    this.#asked = asked;
    for (const listener of this.#listeners) listener();
  }
}

/** Shows a dialog whenever the host asks. */
export function FolderDialogs({ asker }: { readonly asker: Asker }) {
  const asked = useSyncExternalStore(asker.subscribe, asker.asked);
  return asked === null ? null : <FolderDialog asker={asker} asked={asked} />;
}

/** Moves the focus within a list by the arrow keys; Home and End go to its ends. */
function moveFocus(event: KeyboardEvent<HTMLElement>): void {
  const buttons = [...event.currentTarget.querySelectorAll('button')];
  const at = buttons.indexOf(document.activeElement as HTMLButtonElement);
  const to = { ArrowDown: at + 1, ArrowUp: at - 1, Home: 0, End: buttons.length - 1 }[event.key];
  if (to === undefined) return;
  event.preventDefault();
  buttons[Math.max(0, Math.min(buttons.length - 1, to))]?.focus();
}

function FolderDialog({ asker, asked }: { readonly asker: Asker; readonly asked: Asked }) {
  const { request, folders, answer } = asked;
  const { kind } = request;
  const [roots, setRoots] = useState<readonly FolderRoot[]>([]);
  const [listing, setListing] = useState<FolderListing | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const [name, setName] = useState(kind === 'save' ? request.suggested : '');
  const [there, setThere] = useState<FileRef | null>(null);
  const list = useRef<HTMLUListElement>(null);
  const useThis = useRef<HTMLButtonElement>(null);
  const keysHint = useId();

  async function enter(folder: FileRef): Promise<void> {
    const listed = await folders.list(folder.handle, kind !== 'folder');
    if (listed.ok) {
      setListing(listed.value);
      setTrouble(null);
      setThere(null);
    } else setTrouble(listed.error.message);
  }

  // biome-ignore lint/correctness/useExhaustiveDependencies: once for each question
  useEffect(() => {
    void folders.roots().then((found) => {
      setRoots(found);
      const first = asker.last ?? found[0]?.folder;
      if (first !== undefined) void enter(first);
    });
  }, []);

  // The list has other entries now: the focus goes to the first, unless a name is being typed. Where there is none to
  // go into, the folder itself is what is asked for.
  useEffect(() => {
    if (listing !== null && kind !== 'save')
      (list.current?.querySelector('button') ?? useThis.current)?.focus();
  }, [listing, kind]);

  function choose(file: FileRef | null): void {
    if (file !== null && listing !== null) asker.last = listing.folder;
    answer(file);
  }

  function take(item: FolderItem): void {
    if (item.kind === 'folder') void enter(item.ref);
    else if (kind === 'save') setName(item.ref.name);
    else choose(item.ref);
  }

  async function save(): Promise<void> {
    if (listing === null) return;
    const made = await folders.newFile(listing.folder.handle, name);
    if (!made.ok) setTrouble(made.error.message);
    else if (made.value.there) setThere(made.value.file);
    else choose(made.value.file);
  }

  function keys(event: KeyboardEvent<HTMLElement>): void {
    if (event.key === 'Backspace' && listing?.above) {
      event.preventDefault();
      void enter(listing.above);
    } else moveFocus(event);
  }

  if (there !== null) {
    return (
      <Modal
        key="there"
        title={folderWords.title[kind]}
        onClose={() => setThere(null)}
        buttons={
          <>
            <button type="button" onClick={() => setThere(null)}>
              {folderWords.otherName}
            </button>
            <button type="button" className="chief" onClick={() => choose(there)}>
              {folderWords.replace}
            </button>
          </>
        }
      >
        <p className="dialog-text">{folderWords.there(there.name)}</p>
      </Modal>
    );
  }

  return (
    <Modal
      key="list"
      title={folderWords.title[kind]}
      className="folder-dialog"
      onClose={() => choose(null)}
      buttons={
        <>
          <button type="button" onClick={() => choose(null)}>
            {shellWords.cancel}
          </button>
          {kind === 'folder' && (
            <button
              ref={useThis}
              type="button"
              className="chief"
              disabled={listing === null}
              onClick={() => choose(listing?.folder ?? null)}
            >
              {folderWords.useFolder}
            </button>
          )}
          {kind === 'save' && (
            <button type="button" className="chief" disabled={listing === null} onClick={() => void save()}>
              {folderWords.save}
            </button>
          )}
        </>
      }
    >
      {kind === 'save' && (
        <NameField label={folderWords.name} name={name} onName={setName} onEnter={() => void save()} />
      )}
      <nav aria-label={folderWords.begin} className="folder-roots">
        {roots.map(({ title, folder }) => (
          <button key={folder.handle} type="button" onClick={() => void enter(folder)}>
            {title}
          </button>
        ))}
      </nav>
      {trouble !== null && (
        <p className="dialog-text" role="alert">
          {trouble}
        </p>
      )}
      {listing === null ? (
        <p className="dialog-text">{trouble === null ? folderWords.loading : ''}</p>
      ) : (
        <>
          <div className="folder-head">
            <button
              type="button"
              disabled={listing.above === null}
              onClick={() => listing.above !== null && void enter(listing.above)}
            >
              {folderWords.above}
            </button>
            <p aria-live="polite">
              <strong>{listing.folder.name}</strong> <span className="quiet">{listing.folder.folder}</span>
            </p>
          </div>
          <ul
            ref={list}
            className="folder-list"
            aria-label={folderWords.inFolder(listing.folder.name)}
            aria-describedby={keysHint}
            onKeyDown={keys}
          >
            {listing.items.map((item) => (
              <li key={item.ref.handle}>
                <button type="button" className="bare" onClick={() => take(item)}>
                  <span>{item.ref.name}</span>
                  <span className="quiet">{folderWords[item.kind]}</span>
                </button>
              </li>
            ))}
          </ul>
          {listing.items.length === 0 && (
            <p className="quiet">{folderWords.empty[kind === 'folder' ? 'folders' : 'files']}</p>
          )}
          {listing.cut && <p className="quiet">{folderWords.cut}</p>}
          <p id={keysHint} className="quiet folder-keys">
            {folderWords.keys}
          </p>
          {kind !== 'open' && (
            <NewFolder
              key={listing.folder.handle}
              make={async (text) => {
                const made = await folders.newFolder(listing.folder.handle, text);
                if (made.ok) await enter(made.value);
                else setTrouble(made.error.message);
              }}
            />
          )}
        </>
      )}
    </Modal>
  );
}

interface NameFieldProps {
  readonly label: string;
  readonly name: string;
  readonly onName: (name: string) => void;
  readonly onEnter: () => void;
}

function NameField({ label, name, onName, onEnter }: NameFieldProps) {
  const field = useRef<HTMLInputElement>(null);
  const id = useId();
  useEffect(() => {
    field.current?.focus();
    const dot = field.current?.value.lastIndexOf('.') ?? -1;
    field.current?.setSelectionRange(0, dot > 0 ? dot : (field.current.value.length ?? 0));
  }, []);
  return (
    <p className="folder-name">
      <label htmlFor={id}>{label}</label>
      <input
        ref={field}
        id={id}
        data-own-undo
        value={name}
        autoComplete="off"
        spellCheck={false}
        onChange={(event) => onName(event.target.value)}
        onKeyDown={(event) => {
          if (event.key === 'Enter' && !event.nativeEvent.isComposing) onEnter();
        }}
      />
    </p>
  );
}

/** Opens to a field when it is wanted. */
function NewFolder({ make }: { readonly make: (name: string) => Promise<void> }) {
  const [open, setOpen] = useState(false);
  const [name, setName] = useState('');
  if (!open) {
    return (
      <button type="button" onClick={() => setOpen(true)}>
        {folderWords.newFolder}
      </button>
    );
  }
  return (
    <div className="folder-new">
      <NameField
        label={folderWords.newFolderName}
        name={name}
        onName={setName}
        onEnter={() => void make(name)}
      />
      <button type="button" onClick={() => void make(name)}>
        {folderWords.make}
      </button>
    </div>
  );
}
