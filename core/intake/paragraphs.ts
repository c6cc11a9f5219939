/** Lines of an old pattern as paragraphs and items of lists, where a margin broke them. It reads none of them. */
import { oneLine } from './written.ts';

/** Longest line of a list in small letters. */
const LONGEST_ITEM = 60;

/** Whether all lines, and so many, begin with a small letter: one which does says nothing of the line before it. */
function inSmallLetters(lines: readonly string[], atLeast: number): boolean {
  const begins = lines.filter((line) => /^\p{L}/u.test(line));
  return (
    begins.length >= atLeast && begins.every((line) => /^\p{Ll}/u.test(line) && line.length <= LONGEST_ITEM)
  );
}

/**
 * Lines as paragraphs: a line that does not end a sentence goes on in the next, where lines are as long as in a
 * text that was broken at a margin. In a list each line is an item unless it plainly goes on.
 */
export function paragraphsOf(lines: readonly string[], asList = false): readonly string[] {
  const isSmall = inSmallLetters(lines, asList ? 1 : 2);
  const found: string[] = [];
  let open: string[] = [];
  const close = (): void => {
    if (open.length > 0) found.push(oneLine(open.join('\n')));
    open = [];
  };
  for (const line of lines) {
    if (line === '') {
      close();
      continue;
    }
    const last = open.at(-1);
    const goesOn =
      last !== undefined &&
      ((!asList && last.length > 45 && !/[.!?:;)\]”"]$/u.test(last)) ||
        (!isSmall && /^\p{Ll}/u.test(line) && !(asList && /^an?\s\p{L}/u.test(line))) ||
        /^\([^)]*\d/u.test(line) ||
        /[,(&]$|\band$/u.test(last));
    if (!goesOn) close();
    open.push(line);
  }
  close();
  return found;
}
