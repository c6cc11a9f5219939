/**
 * Reads the words after a command: options and files. What cannot be read ends in one plain sentence; no
 * command's own meaning is here.
 */
import { type ParseArgsConfig, parseArgs } from 'node:util';
import { Refused } from './io.ts';

export type Options = NonNullable<ParseArgsConfig['options']>;

/** A word of the command line that is no option, and the option that it follows without a break, if any. */
export interface Operand {
  readonly text: string;
  readonly after: string | null;
}

export interface Arguments {
  /** Values by option; an option given twice has both. */
  readonly values: Readonly<Record<string, readonly string[] | undefined>>;
  readonly flags: ReadonlySet<string>;
  readonly operands: readonly Operand[];
}

const codeOf = (fault: unknown): string =>
  fault instanceof Error && 'code' in fault ? String(fault.code) : '';

/** The option that the parser complains of, as it was typed. */
const named = (fault: unknown): string =>
  /'(-[^' ]*)/.exec(fault instanceof Error ? fault.message : '')?.[1]?.replace(/,$/, '') ?? 'an option';

/** Reads `words` by `options`. Throws `Refused` only. */
export function readArguments(words: readonly string[], options: Options): Arguments {
  const repeatable = Object.fromEntries(
    Object.entries(options).map(([name, option]) => [
      name,
      option.type === 'string' ? { ...option, multiple: true } : option,
    ]),
  );
  try {
    const { values, tokens } = parseArgs({
      args: [...words],
      options: repeatable,
      allowPositionals: true,
      strict: true,
      tokens: true,
    });
    const operands: Operand[] = [];
    let after: string | null = null;
    for (const token of tokens) {
      if (token.kind === 'positional') operands.push({ text: token.value, after });
      else after = token.kind === 'option' && token.value !== undefined ? token.name : null;
    }
    const flags = new Set(Object.keys(values).filter((name) => values[name] === true));
    const strings = Object.entries(values).filter(([, value]) => Array.isArray(value));
    return { values: Object.fromEntries(strings) as Record<string, string[]>, flags, operands };
  } catch (fault) {
    switch (codeOf(fault)) {
      case 'ERR_PARSE_ARGS_UNKNOWN_OPTION':
        throw new Refused(`There is no option ${named(fault)}.`, true);
      case 'ERR_PARSE_ARGS_INVALID_OPTION_VALUE': {
        const flag = Object.entries(options).some(
          ([name, option]) => option.type === 'boolean' && named(fault).includes(name),
        );
        throw new Refused(`The option ${named(fault)} ${flag ? 'takes no value' : 'needs a value'}.`, true);
      }
      default:
        throw fault;
    }
  }
}

/** The one file that a command works on. */
export function oneFile(given: Arguments, what: string): string {
  const [first, second] = given.operands;
  if (first === undefined) throw new Refused(`Say which file: ${what}.`, true);
  if (second !== undefined) {
    throw new Refused(`One file at a time: “${first.text}” and “${second.text}” are two.`, true);
  }
  if (first.text === '') throw new Refused(`The name of the file is empty: ${what}.`, true);
  return first.text;
}

/** The last value of an option; null when it was not given. */
export function lastValue(given: Arguments, option: string): string | null {
  return given.values[option]?.at(-1) ?? null;
}

const either = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;

/** One of `choices`, whatever its capitals; null when the option was not given. */
export function choiceOf<T extends string>(
  given: Arguments,
  option: string,
  choices: readonly T[],
): T | null {
  const value = lastValue(given, option);
  return value === null ? null : oneOf(value, option, choices);
}

function oneOf<T extends string>(value: string, option: string, choices: readonly T[]): T {
  const found = choices.find((choice) => choice === value.trim().toLowerCase());
  if (found === undefined) {
    throw new Refused(`The option --${option} takes ${either(choices)}, not “${value}”.`, true);
  }
  return found;
}

/** Values with commas between them, each one of `choices`, none twice; `initial` when the option was not given. */
export function choicesOf<T extends string>(
  given: Arguments,
  option: string,
  choices: readonly T[],
  initial: readonly T[],
): readonly T[] {
  const values = given.values[option];
  if (values === undefined) return initial;
  const words = values.flatMap((value) => value.split(','));
  return [...new Set(words.map((word) => oneOf(word, option, choices)))];
}
