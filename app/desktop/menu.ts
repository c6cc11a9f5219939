/**
 * The native menus, from the studio's own table of commands: each item sends its command's name to the window in
 * front. Only what the system itself does (copying, hiding, leaving) has a role instead. A plain function.
 */
import type { MenuItemConstructorOptions } from 'electron';
import { COMMANDS, type CommandGroup, GROUPS } from '../host/commands.ts';

/** "Mod-Shift-s" as menus spell it: "CmdOrCtrl+Shift+S". */
export function menuKey(key: string): string {
  const parts = key.split(/-(?!$)/);
  const named: Readonly<Record<string, string>> = {
    Mod: 'CmdOrCtrl',
    ArrowUp: 'Up',
    ArrowDown: 'Down',
    ArrowLeft: 'Left',
    ArrowRight: 'Right',
    '=': 'Plus',
  };
  return parts.map((part) => named[part] ?? (part.length === 1 ? part.toUpperCase() : part)).join('+');
}

const SEPARATOR = { type: 'separator' } as const;

/** The system fills it; only macOS has such a menu. */
const recentDocuments: MenuItemConstructorOptions = {
  role: 'recentDocuments',
  submenu: [{ role: 'clearRecentDocuments' }],
};

const WORDS = {
  newWindow: 'New window',
} as const;

/** What the system does, in the menu in which it is looked for. */
function ofTheSystem(group: CommandGroup, mac: boolean, newWindow: () => void): MenuItemConstructorOptions[] {
  if (group === 'file') {
    return [
      SEPARATOR,
      { label: WORDS.newWindow, accelerator: 'CmdOrCtrl+Shift+N', click: newWindow },
      ...(mac ? [recentDocuments] : [SEPARATOR, { role: 'quit' as const }]),
    ];
  }
  if (group === 'edit') {
    return [
      SEPARATOR,
      { role: 'cut' },
      { role: 'copy' },
      { role: 'paste' },
      { role: 'pasteAndMatchStyle' },
      { role: 'selectAll' },
    ];
  }
  return group === 'view' ? [SEPARATOR, { role: 'togglefullscreen' }] : [];
}

/** The whole menu bar. `send` gets the name of the command that was chosen. */
export function menuTemplate(
  platform: NodeJS.Platform,
  send: (command: string) => void,
  newWindow: () => void,
): MenuItemConstructorOptions[] {
  const mac = platform === 'darwin';
  const menus = GROUPS.map(({ group, title }): MenuItemConstructorOptions => {
    const own = COMMANDS.filter((command) => command.group === group).map(
      ({ name, title: label, key }): MenuItemConstructorOptions => ({
        label,
        // The page hears its keys itself, as in a browser: here they are shown.
        ...(key === undefined ? {} : { accelerator: menuKey(key), registerAccelerator: false }),
        click: () => send(name),
      }),
    );
    return { label: title, submenu: [...own, ...ofTheSystem(group, mac, newWindow)] };
  });
  if (!mac) return menus;
  const help = menus.pop();
  return [{ role: 'appMenu' }, ...menus, { role: 'windowMenu' }, ...(help ? [help] : [])];
}
