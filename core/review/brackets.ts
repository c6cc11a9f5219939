/**
 * Which brackets the texts of a pattern use, and for what: parts that are worked several times, and numbers that
 * stand one for each size. It says what stands where; which bracket is right is the rules' concern.
 */
import { FIGURE, type FigureText, type Pattern } from '../document/pattern.ts';
import type { Span } from '../finding.ts';
import { evaluate, sizeList } from '../grading/index.ts';
import { figureInSize } from '../study/filled.ts';
import type { Study } from '../study/index.ts';
import { writtenTexts } from '../study/written.ts';
import { listsTyped } from './lists.ts';
import { looking } from './scan.ts';
import type { Text } from './texts.ts';

export type Bracket = '(' | '[' | '{';

/** A use of brackets, from the opening one to the closing one; of a list of sizes with the first number. */
export interface Bracketed extends Span {
  readonly bracket: Bracket;
}

export interface BracketedText {
  readonly text: Text;
  readonly uses: readonly Bracketed[];
}

const CLOSING: Readonly<Record<Bracket, string>> = { '(': ')', '[': ']', '{': '}' };

const NAMES: Readonly<Record<Bracket, string>> = { '(': 'round', '[': 'square', '{': 'curly' };

/** "round": what brackets are called in a sentence. */
export const bracketName = (bracket: Bracket): string => NAMES[bracket];

const AMOUNT = String.raw`(?:\d+|${FIGURE}|two|three|four|five|six|seven|eight|nine|ten|twelve)`;
const LIST = String.raw`(?:\s?[([][^()[\]]{0,60}[)\]])*`;
/** What follows a part that is worked several times. `(dc, ch 1, dc) in next sp` is no such part. */
const REPEATED = new RegExp(
  [
    String.raw`^\s?[x×]\s?${AMOUNT}`,
    String.raw`^\s${AMOUNT}${LIST}\s(?:more\s)?times\b`,
    String.raw`^\s(?:once more|twice)\b`,
    String.raw`^\s(?:across|around|to (?:the )?(?:end|last))\b(?!\s(?:the\s)?(?:next|each|same|post|ch))`,
  ].join('|'),
  'iu',
);

/** Letters after a bracket in which it is said how often the part is worked. */
const NEAR = 100;

/** Brackets around parts that are worked several times, the outermost of those that stand in one another. */
export function repeatBrackets(text: string): readonly Bracketed[] {
  const open: { readonly bracket: Bracket; readonly at: number }[] = [];
  const found: Bracketed[] = [];
  for (const { 0: sign, index } of text.matchAll(/[()[\]{}]/gu)) {
    if (sign in CLOSING) {
      open.push({ bracket: sign as Bracket, at: index });
      continue;
    }
    const own = open.pop();
    if (own === undefined || CLOSING[own.bracket] !== sign) return found;
    if (!REPEATED.test(text.slice(index + 1, index + 1 + NEAR))) continue;
    while (found.length > 0 && found.at(-1)!.from > own.at) found.pop();
    found.push({ bracket: own.bracket, from: own.at, to: index + 1 });
  }
  return found;
}

const repeats = looking((text, kind) => (kind === 'row' ? repeatBrackets(text) : []));

/** The repeats in brackets, text by text, of rows and definitions. */
export const repeatsInBrackets = (pattern: Pattern): readonly BracketedText[] =>
  repeats(pattern).map(({ text, hits }) => ({ text, uses: hits }));

/** The typed lists of one number for each size, by the bracket that they begin with. */
export function listsInBrackets(pattern: Pattern): readonly BracketedText[] {
  const sizes = pattern.sizes.length;
  if (sizes < 2) return [];
  return listsTyped(pattern).map(({ text, hits }) => ({
    text,
    uses: hits
      .filter(({ values }) => values.length === sizes)
      .map(({ from, to }) => ({
        bracket: /[([]/u.exec(text.text.slice(from, to))![0] as Bracket,
        from,
        to,
      })),
  }));
}

const printsList = ({ pattern, sheet }: Study, { figures }: FigureText): boolean =>
  figures.some((expression) =>
    sizeList(
      pattern.sizes.map((_, size) => figureInSize(expression, evaluate(expression, sheet, size), pattern)),
    ).includes('('),
  );

/** In which brackets a text has numbers for the sizes; a figure that differs by size is printed in round ones. */
export function sizeBrackets(study: Study): (node: string) => ReadonlySet<Bracket> {
  const lists = new Map(listsInBrackets(study.pattern).map(({ text: { node }, uses }) => [node, uses]));
  return (node) => {
    const own = new Set(lists.get(node)?.map(({ bracket }) => bracket));
    const written = writtenTexts(study.pattern).get(node);
    if (!own.has('(') && written !== undefined && printsList(study, written)) own.add('(');
    return own;
  };
}

/** Whether any text has such a figure. */
export const anyListOfFigures = (study: Study): boolean =>
  [...writtenTexts(study.pattern).values()].some((written) => printsList(study, written));

/**
 * A use of brackets with others in their place; null where those stand in it already, or where it has several pairs
 * side by side.
 */
export function inOtherBrackets(words: string, from: Bracket, to: Bracket): string | null {
  const start = words.indexOf(from);
  const inner = words.slice(start + 1, -1);
  const [open, close] = [inner.indexOf(from), inner.indexOf(CLOSING[from])];
  const sideBySide = close >= 0 && (open < 0 || close < open);
  return sideBySide || inner.includes(to) ? null : `${words.slice(0, start)}${to}${inner}${CLOSING[to]}`;
}
