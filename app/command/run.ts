/**
 * Runs one command line: finds the command, reads its options, turns a refusal into a sentence and an exit
 * code. Each command stands in a module of its own and is loaded when it is asked for.
 */
import { packageVersion } from '../services/resources.ts';
import { COMMANDS, type CommandName, HELP, helpPage, overview } from './help.ts';
import { type Io, MISUSE, Refused, RIGHT } from './io.ts';
import { type Arguments, type Options, readArguments } from './options.ts';

/** A command's module. `run` gives the exit code. */
export interface Command {
  readonly options: Options;
  readonly run: (given: Arguments, io: Io) => Promise<number>;
}

const MODULES: Readonly<Record<CommandName, () => Promise<{ readonly command: Command }>>> = {
  rows: () => import('./rows.ts'),
  multiple: () => import('./multiple.ts'),
  translate: () => import('./translate.ts'),
  check: () => import('./check.ts'),
  draw: () => import('./draw.ts'),
  export: () => import('./export.ts'),
  report: () => import('./report.ts'),
  new: () => import('./new.ts'),
  bring: () => import('./bring.ts'),
  compare: () => import('./compare.ts'),
  yarn: () => import('./yarn.ts'),
  price: () => import('./price.ts'),
  measured: () => import('./measured.ts'),
  pack: () => import('./pack.ts'),
};

const isCommand = (word: string): word is CommandName => (COMMANDS as readonly string[]).includes(word);
const asksHelp = (word: string): boolean => word === '--help' || word === '-h';

/** Runs `words` (without the program's own name) and gives the exit code. Rejects only where the program is wrong. */
export async function run(words: readonly string[], io: Io): Promise<number> {
  const [first, ...rest] = words;
  if (first === undefined) {
    io.stderr.write(overview());
    return MISUSE;
  }
  if (first === '--version' || first === '-V') {
    io.stdout.write(`turnchain ${packageVersion()}\n`);
    return RIGHT;
  }
  if (first === 'help' || asksHelp(first)) return help(rest, io);
  if (!isCommand(first)) {
    const what = first.startsWith('-') ? 'option' : 'command';
    io.stderr.write(`turnchain: There is no ${what} “${first}”. The commands are ${COMMANDS.join(', ')}.\n`);
    io.stderr.write('“turnchain help” tells more.\n');
    return MISUSE;
  }
  const end = rest.indexOf('--');
  if ((end < 0 ? rest : rest.slice(0, end)).some(asksHelp)) return help([first], io);
  try {
    const { command } = await MODULES[first]();
    return await command.run(readArguments(rest, command.options), io);
  } catch (fault) {
    if (!(fault instanceof Refused)) throw fault;
    io.stderr.write(`turnchain ${first}: ${fault.message}\n`);
    if (fault.usage) {
      io.stderr.write(`Usage: ${HELP[first].usage}\n“turnchain help ${first}” tells more.\n`);
    }
    return MISUSE;
  }
}

function help(words: readonly string[], io: Io): number {
  const about = words.find((word) => !asksHelp(word));
  if (about === undefined) {
    io.stdout.write(overview());
    return RIGHT;
  }
  if (!isCommand(about)) {
    io.stderr.write(`turnchain: There is no command “${about}”. The commands are ${COMMANDS.join(', ')}.\n`);
    return MISUSE;
  }
  io.stdout.write(helpPage(about));
  return RIGHT;
}
