/**
 * Findings for a terminal: how grave, the sentence, and the words concerned with a line of carets under them.
 * The sentences come finished; nothing is worded or judged here.
 */
import type { Severity } from '../../core/finding.ts';
import { harmless, headOf, type Paint, tailOf, widthOf, wrap } from './words.ts';

/** What is shown of a finding. `from` and `to` count in the text that is given with it. */
export interface Shown {
  readonly severity: Severity;
  readonly from: number;
  readonly to: number;
  readonly message: string;
}

/** The line of a text that a place is in, and the number of that line. */
export type LineFinder = (offset: number) => {
  readonly from: number;
  readonly to: number;
  readonly number: number;
};

/** Finds lines of `text`; CR LF, LF and CR alone end one. */
export function linesOf(text: string): LineFinder {
  const starts = [0];
  for (const match of text.matchAll(/\r\n|\n|\r/g)) starts.push(match.index + match[0].length);
  return (offset) => {
    let low = 0;
    let high = starts.length - 1;
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if (starts[middle]! <= offset) low = middle;
      else high = middle - 1;
    }
    const from = starts[low]!;
    const next = starts[low + 1] ?? text.length;
    const body = text.slice(from, next).replace(/[\r\n]+$/, '');
    return { from, to: from + body.length, number: low + 1 };
  };
}

/** The words from `from` to `to` of one line in `columns`, and the carets under them; `null` where there are no words. */
export function excerpt(
  line: string,
  from: number,
  to: number,
  columns: number,
): { readonly words: string; readonly carets: string } | null {
  const whole = harmless(line);
  if (whole.trim() === '') return null;
  const mark = headOf(whole.slice(from, to), columns - 2);
  let before = whole.slice(0, from).trimStart();
  let after = whole.slice(from + mark.length).trimEnd();
  const room = columns - widthOf(mark);
  const wide = (text: string) => (text.length > columns * 8 ? Number.POSITIVE_INFINITY : widthOf(text));
  const left = room - Math.min(wide(after), Math.floor(room / 2));
  if (wide(before) > left) before = `…${tailOf(before, left - 1)}`;
  const right = room - widthOf(before);
  if (wide(after) > right) after = `${headOf(after, right - 1)}…`;
  return {
    words: before + mark + after,
    carets: ' '.repeat(widthOf(before)) + '^'.repeat(Math.max(1, widthOf(mark))),
  };
}

const INDENT = '    ';

/**
 * One finding in lines of at most `width`. With `text`, the words concerned are shown, with the number of
 * their line when `numbered`.
 */
export function findingLines(
  finding: Shown,
  text: { readonly whole: string; readonly at: LineFinder; readonly numbered: boolean } | null,
  width: number,
  paint: Paint,
): string[] {
  const head = `${finding.severity}: `;
  const [first = '', ...rest] = wrap(harmless(finding.message), width - INDENT.length - head.length);
  const hang = INDENT + ' '.repeat(head.length);
  const out = [
    `${INDENT}${paint(finding.severity, head.trimEnd())} ${first}`,
    ...rest.map((line) => hang + line),
  ];
  if (text === null || finding.to <= finding.from) return out;
  const line = text.at(finding.from);
  const gutter = text.numbered ? `${INDENT}${String(line.number).padStart(3)} | ` : `${INDENT}| `;
  const shown = excerpt(
    text.whole.slice(line.from, line.to),
    finding.from - line.from,
    Math.min(finding.to, line.to) - line.from,
    width - gutter.length,
  );
  if (shown === null) return out;
  const blank = `${' '.repeat(gutter.length - 2)}| `;
  out.push(
    paint('quiet', gutter) + shown.words,
    paint('quiet', blank) + paint(finding.severity, shown.carets),
  );
  return out;
}

/** Lets a note pass the first time that it is said: the same words under every row would hide the rest. */
export class NotesOnce {
  readonly #said = new Set<string>();
  /** Notes that were not let pass. */
  passedOver = 0;

  readonly passes = ({ severity, message }: Shown): boolean => {
    if (severity !== 'note') return true;
    const fresh = !this.#said.has(message);
    this.#said.add(message);
    if (!fresh) this.passedOver += 1;
    return fresh;
  };
}

/** The last line: "5 errors, 2 notes (the same note is shown once)", or that there is nothing. */
export function closingWords(findings: readonly { readonly severity: Severity }[], notes: NotesOnce): string {
  const once = notes.passedOver > 0 ? ' (the same note is shown once)' : '';
  return `${countWords(findings)}${once}`;
}

/** "1 error, 2 warnings"; "" when there is nothing. */
function countWords(findings: readonly { readonly severity: Severity }[]): string {
  const words = (['error', 'warning', 'note'] as const).flatMap((severity) => {
    const n = findings.filter((finding) => finding.severity === severity).length;
    return n === 0 ? [] : [`${n} ${severity}${n === 1 ? '' : 's'}`];
  });
  return words.join(', ');
}

export const hasErrors = (findings: readonly { readonly severity: Severity }[]): boolean =>
  findings.some((finding) => finding.severity === 'error');
