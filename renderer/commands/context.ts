/** The commands, for components: to run one, to lend some while a place is in front. */
import { createContext, useContext, useEffect } from 'react';
import type { CommandName } from '../../app/host/commands.ts';
import type { Action, Commands } from './commands.ts';

export const CommandsContext = createContext<Commands | null>(null);

export function useCommands(): Commands {
  const commands = useContext(CommandsContext);
  if (commands === null) throw new Error('A component stands outside the studio.');
  return commands;
}

/** Lends actions while the component is on screen. Give the same object again unless they changed. */
export function useLentCommands(actions: Partial<Record<CommandName, Action>>): void {
  const commands = useCommands();
  useEffect(() => commands.lend(actions), [commands, actions]);
}
