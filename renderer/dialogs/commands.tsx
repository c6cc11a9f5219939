/** All commands behind one search box: the menu of the window. A list box that the arrow keys walk while the caret stays in the box. */
import { useId, useState } from 'react';
import { flushSync } from 'react-dom';
import { COMMANDS, type CommandEntry, type CommandName, GROUPS } from '../../app/host/commands.ts';
import { useCommands } from '../commands/context.ts';
import { keyWords } from '../commands/keys.ts';
import { Modal } from '../parts/modal.tsx';
import { useStudio } from '../shell/hooks.ts';
import { commandWords } from '../words/dialogs.ts';

type Entry = CommandEntry & { readonly name: CommandName };

/**
 * Commands whose title or other words hold every word that was typed. First the one that is called so, then those
 * whose title begins so, those whose title holds the words, and the others; by menus among themselves.
 */
export function matching(typed: string): readonly Entry[] {
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
  const name = words.join(' ');
  const holds = (text: string) => words.every((word) => text.toLowerCase().includes(word));
  const distance = ({ title, also }: Entry): number => {
    const own = title.toLowerCase().replace('…', '');
    if (own === name) return 0;
    if (own.startsWith(name)) return 1;
    if (holds(title)) return 2;
    return holds(`${title} ${also ?? ''}`) ? 3 : Number.POSITIVE_INFINITY;
  };
  return GROUPS.flatMap(({ group }) => COMMANDS.filter((entry: Entry) => entry.group === group))
    .map((entry: Entry) => ({ entry, distance: distance(entry) }))
    .filter((found) => found.distance < Number.POSITIVE_INFINITY)
    .toSorted((a, b) => a.distance - b.distance)
    .map(({ entry }) => entry);
}

export function CommandSearch() {
  const studio = useStudio();
  const commands = useCommands();
  const [typed, setTyped] = useState('');
  const [at, setAt] = useState(0);
  const list = useId();
  const found = matching(typed).filter(({ name }) => commands.find(name) !== null);
  const chosen = Math.min(at, found.length - 1);
  const hinders = ({ name }: Entry) => commands.find(name)?.hinders() ?? null;
  const close = () => studio.show(null);
  const run = (entry: Entry | undefined) => {
    if (entry === undefined || hinders(entry) !== null) return;
    // The dialog is gone before the command runs: what lies behind an open one cannot take the focus.
    flushSync(close);
    commands.run(entry.name);
  };
  const groupOf = (entry: Entry) => GROUPS.find(({ group }) => group === entry.group)!.title;
  return (
    <Modal title={commandWords.title} onClose={close} className="command-search">
      <input
        role="combobox"
        aria-label={commandWords.label}
        aria-expanded="true"
        aria-controls={list}
        aria-activedescendant={found.length > 0 ? `${list}-${chosen}` : undefined}
        aria-autocomplete="list"
        placeholder={commandWords.hint}
        value={typed}
        onChange={(event) => {
          setTyped(event.target.value);
          setAt(0);
        }}
        onKeyDown={(event) => {
          if (event.key === 'ArrowDown') setAt(Math.min(found.length - 1, chosen + 1));
          else if (event.key === 'ArrowUp') setAt(Math.max(0, chosen - 1));
          else if (event.key === 'Enter') run(found[chosen]);
          else return;
          event.preventDefault();
        }}
      />
      <div role="listbox" id={list} aria-label={commandWords.title} className="command-list">
        {found.map((entry, index) => {
          const isFirst = index === 0 || found[index - 1]!.group !== entry.group;
          const hindrance = hinders(entry);
          return (
            <div
              key={entry.name}
              id={`${list}-${index}`}
              role="option"
              tabIndex={-1}
              aria-selected={index === chosen}
              aria-disabled={hindrance !== null}
              ref={(element) => {
                if (index === chosen) element?.scrollIntoView({ block: 'nearest' });
              }}
              onClick={() => run(entry)}
              onKeyDown={() => undefined}
            >
              <span className="command-group">{isFirst ? groupOf(entry) : ''}</span>
              <span>
                {entry.title}
                {hindrance !== null && <small className="quiet"> · {hindrance}</small>}
              </span>
              <kbd>{entry.key === undefined ? '' : keyWords(entry.key)}</kbd>
            </div>
          );
        })}
        {found.length === 0 && <p className="quiet">{commandWords.none}</p>}
      </div>
    </Modal>
  );
}
