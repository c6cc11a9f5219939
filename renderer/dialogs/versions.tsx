/** Earlier versions of the file: what each holds, what of it differs from now, and taking one back. */
import type { Node } from 'prosemirror-model';
import { useEffect, useState } from 'react';
import type { KeptVersion } from '../../app/host/host.ts';
import { unpack } from '../desk/pattern-file.ts';
import { Modal } from '../parts/modal.tsx';
import { useStudio } from '../shell/hooks.ts';
import { versionWords } from '../words/dialogs.ts';
import { shellWords } from '../words/shell.ts';
import { timeShown } from '../words/time.ts';

/** One text of a version. */
interface Said {
  readonly key: string;
  readonly text: string;
  readonly isPiece: boolean;
  readonly differs: boolean;
}

const wordsOf = (node: Node): string =>
  node.textBetween(0, node.content.size, ' ', (atom) => `[${String(atom.attrs.expression ?? '')}]`);

/** The texts of a document; those that `now` does not hold word for word differ. */
export function textsOf(document: Node, now: Node): readonly Said[] {
  const today = new Set<string>();
  now.descendants((node) => {
    if (node.isTextblock) today.add(wordsOf(node));
    return !node.isTextblock;
  });
  const said: Said[] = [];
  document.descendants((node, pos, parent) => {
    if (!node.isTextblock) return true;
    const text = wordsOf(node);
    if (text.trim() !== '')
      said.push({
        key: String(pos),
        text,
        isPiece: parent?.type.name === 'piece',
        differs: !today.has(text),
      });
    return false;
  });
  return said;
}

export function Versions() {
  const studio = useStudio();
  const [kept, setKept] = useState<readonly KeptVersion[] | null>(null);
  const [shown, setShown] = useState<{ id: string; texts: readonly Said[] } | null>(null);
  const desk = studio.view().desk;
  const handle = desk?.view().file?.ref.handle ?? null;
  useEffect(() => {
    if (handle !== null) void studio.host.versions(handle).then(setKept);
  }, [studio, handle]);
  const [errata, setErrata] = useState<string | null>(null);
  const close = () => studio.show(null);
  const compare = async (id: string) => {
    if (handle === null || desk === null) return;
    const folder = await studio.host.chooseFolder();
    if (folder === null) return;
    setErrata(versionWords.comparing);
    const { document, pattern } = desk.view();
    await studio.journal?.givePictures();
    const answer = await studio.host.export(
      { desk: desk.id, document: document.toJSON() as unknown },
      {
        terms: ['us', 'uk'],
        papers: [pattern.units === 'imperial' ? 'letter' : 'a4'],
        editions: [],
        sizes: [],
        as: { kind: 'errata', handle, version: id },
        folder: folder.handle,
      },
      () => undefined,
    );
    const fault = answer.ok
      ? answer.value.stopped === null || answer.value.stopped === 'interrupted'
        ? null
        : answer.value.stopped.message
      : answer.error.message;
    const place = folder.folder === '' ? folder.name : `${folder.folder}/${folder.name}`;
    const names = answer.ok ? answer.value.files.map(({ file }) => file.name) : [];
    setErrata(fault ?? versionWords.compared(answer.ok ? answer.value.notes : [], names, place));
  };
  const look = async (id: string) => {
    if (handle === null || desk === null) return;
    const answer = await studio.host.version(handle, id);
    const unpacked = answer.ok ? unpack(answer.value) : { ok: false as const, message: answer.error.message };
    if (unpacked.ok) setShown({ id, texts: textsOf(unpacked.document, desk.view().document) });
    else studio.trouble(shellWords.openFailed, unpacked.message);
  };
  return (
    <Modal
      title={versionWords.title}
      onClose={close}
      className="versions"
      buttons={
        <>
          <button type="button" onClick={close}>
            {shellWords.close}
          </button>
          {shown !== null && (
            <button
              type="button"
              disabled={errata === versionWords.comparing}
              onClick={() => void compare(shown.id)}
            >
              {versionWords.errata}
            </button>
          )}
          {shown !== null && (
            <button type="button" className="chief" onClick={() => void studio.restore(shown.id)}>
              {versionWords.restore}
            </button>
          )}
        </>
      }
    >
      <p className="quiet">{kept?.length === 0 ? versionWords.none : versionWords.note}</p>
      <p role="status">{errata}</p>
      <div className="versions-body">
        <ul aria-label={versionWords.title}>
          {kept?.map((version) => (
            <li key={version.id}>
              <button
                type="button"
                aria-pressed={shown?.id === version.id}
                onClick={() => void look(version.id)}
              >
                {timeShown(version.time)}
                <small className="quiet">{versionWords.size(version.bytes)}</small>
              </button>
            </li>
          ))}
        </ul>
        <section
          aria-live="polite"
          aria-label={versionWords.look}
          className="version-text"
          // biome-ignore lint/a11y/noNoninteractiveTabindex: whoever has keys alone scrolls it by them
          tabIndex={0}
        >
          {shown === null ? (
            kept !== null && kept.length > 0 && <p className="quiet">{versionWords.choose}</p>
          ) : (
            <>
              <p>{versionWords.differ(shown.texts.filter(({ differs }) => differs).length)}</p>
              {shown.texts.map(({ key, text, isPiece, differs }) =>
                isPiece ? (
                  <h3 key={key}>{text}</h3>
                ) : (
                  <p key={key} className={differs ? 'differs' : undefined}>
                    {differs && <small>{versionWords.changed} </small>}
                    {text}
                  </p>
                ),
              )}
            </>
          )}
        </section>
      </div>
    </Modal>
  );
}
