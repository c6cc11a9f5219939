/** Keys of commands: matching a key event, and how a key is written for the maker. */
import { COMMANDS, type CommandName } from '../../app/host/commands.ts';

/** Whether this machine's chief key is Command; taken from the page's platform. */
export const isMac = (): boolean => document.documentElement.dataset.platform === 'mac';

interface Combination {
  readonly key: string;
  readonly mod: boolean;
  readonly alt: boolean;
  readonly shift: boolean;
}

function parse(key: string): Combination {
  const parts = key === 'Mod--' ? ['Mod', '-'] : key.split('-');
  const last = parts.at(-1)!;
  return {
    key: last.length === 1 ? last.toLowerCase() : last,
    mod: parts.includes('Mod'),
    alt: parts.includes('Alt'),
    shift: parts.includes('Shift'),
  };
}

/** The command that a key event asks for; null when there is none. Keys of the text are the editor's own. */
export function commandOf(event: KeyboardEvent): CommandName | null {
  const mod = isMac() ? event.metaKey : event.ctrlKey;
  const pressed = event.key.length === 1 ? event.key.toLowerCase() : event.key;
  for (const entry of COMMANDS) {
    if (entry.key === undefined || entry.inText) continue;
    const { key, mod: wantsMod, alt, shift } = parse(entry.key);
    const same = key === pressed || (key === '=' && pressed === '+');
    if (same && wantsMod === mod && alt === event.altKey && (shift === event.shiftKey || pressed === '+'))
      return entry.name;
  }
  return null;
}

const WORDS: Readonly<Record<string, string>> = {
  ArrowUp: '↑',
  ArrowDown: '↓',
  ArrowLeft: '←',
  ArrowRight: '→',
  '=': '+',
};

/** "Ctrl+Shift+S", or "⇧⌘S" on a Mac. */
export function keyWords(key: string): string {
  const { key: last, mod, alt, shift } = parse(key);
  const name = WORDS[last] ?? (last.length === 1 ? last.toUpperCase() : last);
  if (isMac()) return `${alt ? '⌥' : ''}${shift ? '⇧' : ''}${mod ? '⌘' : ''}${name}`;
  return [mod && 'Ctrl', alt && 'Alt', shift && 'Shift', name].filter(Boolean).join('+');
}
