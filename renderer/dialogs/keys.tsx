/** The list of all keys. */
import { COMMANDS, GROUPS } from '../../app/host/commands.ts';
import { keyWords } from '../commands/keys.ts';
import { Modal } from '../parts/modal.tsx';
import { useStudio } from '../shell/hooks.ts';
import { keyListWords } from '../words/dialogs.ts';
import { shellWords } from '../words/shell.ts';

export function KeyList() {
  const studio = useStudio();
  const close = () => studio.show(null);
  const inText = [...keyListWords.text, keyListWords.leave];
  return (
    <Modal
      title={keyListWords.title}
      onClose={close}
      className="key-list"
      buttons={
        <button type="button" className="chief" onClick={close}>
          {shellWords.close}
        </button>
      }
    >
      {GROUPS.map(({ group, title }) => {
        const entries = COMMANDS.filter((entry) => entry.group === group && entry.key !== undefined);
        return (
          entries.length > 0 && (
            <section key={group}>
              <h3>{title}</h3>
              <dl>
                {entries.map((entry) => (
                  <div key={entry.name}>
                    <dt>{entry.title}</dt>
                    <dd>
                      <kbd>{keyWords(entry.key!)}</kbd>
                    </dd>
                  </div>
                ))}
              </dl>
            </section>
          )
        );
      })}
      <section>
        <h3>{keyListWords.inText}</h3>
        <dl>
          {inText.map(([key, what]) => (
            <div key={key}>
              <dt>{what}</dt>
              <dd>
                <kbd>{key}</kbd>
              </dd>
            </div>
          ))}
        </dl>
      </section>
    </Modal>
  );
}
