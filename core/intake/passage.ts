/**
 * A passage that is to be pasted, as lines of plain text, whatever program it came from. What was left out on the
 * way (page numbers, running heads) is told, so that nothing goes missing in silence.
 */
import { isLabelAlone, withLabelsBefore } from './label-lines.ts';
import { plainLabels } from './plain-labels.ts';

export interface Passage {
  /** Lines end with "\n"; a blank line stands between paragraphs that are apart. */
  readonly text: string;
  /** Lines that only numbered or headed pages. */
  readonly leftOut: readonly string[];
}

/** Presentation forms of Latin ligatures (Unicode, Alphabetic Presentation Forms), as PDFs carry them. */
const LIGATURES: Readonly<Record<string, string>> = {
  '\uFB00': 'ff',
  '\uFB01': 'fi',
  '\uFB02': 'fl',
  '\uFB03': 'ffi',
  '\uFB04': 'ffl',
  '\uFB05': 'st',
  '\uFB06': 'st',
};

/** Signs that lists are set with, before a line's words. An asterisk is not one: it begins repeats. */
const BULLET = /^[\u2022\u2023\u25AA\u25CF\u25E6\u2043\u00B7\uF0B7\uF0A7]\s+/u;

/** Small pictures and printers' flowers that adorn a line; "©", "®" and "™" are words of their own. */
const PICTURE = String.raw`(?![©®™])[\p{Extended_Pictographic}\u2605\u2606\u2726\u2727\u2756\u273F\u2740\u2766\u2767\u25A0-\u25A3\u25B6\u25B8\u25BA\u25C6\u25C7\u27A2\u27A4\u2192\u2713\u2714\u2610\u2661\u2665]\uFE0F?`;
const PICTURES_BEFORE = new RegExp(String.raw`^\s*(?:${PICTURE}\s*)+(?=[\p{L}\p{N}([*])`, 'u');
/** "BODY ⭐ (start with cream)": between a name and what stands in brackets behind it. */
const PICTURES_BETWEEN = new RegExp(String.raw`(?<=\p{L})\s*(?:${PICTURE}\s*)+(?=\([^()]*\)$)`, 'u');
const PICTURES_BEHIND = new RegExp(String.raw`(?<=[\p{L}\p{N}.!?:)\]])\s*(?:${PICTURE}\s*)+$`, 'u');

/** A line without what only adorns it: the sign of its list, small pictures at its ends. */
const unadorned = (line: string): string =>
  plainLabels(
    line
      .replace(/\s+$/u, '')
      .replace(BULLET, '')
      .replace(PICTURES_BEFORE, '')
      .replace(PICTURES_BEHIND, '')
      .replace(PICTURES_BETWEEN, ' '),
  );

/** Plain characters: ligatures opened, invisible signs taken out, every kind of space a space. */
export function plainCharacters(text: string): string {
  return (
    text
      .replace(/\r\n?|\u2028|\u2029/g, '\n')
      .replace(/[\uFB00-\uFB06]/g, (sign) => LIGATURES[sign] ?? sign)
      .replace(/[\u00AD\u200B-\u200D\u2060\uFEFF]/g, '')
      .replace(/[\u00A0\u2000-\u200A\u202F\u205F\u3000\t\v]/g, ' ')
      // Two hyphens between words are a typewriter's dash.
      .replace(/(?<=[\p{L}\p{N}.)\]])[ ]?--[ ]?(?=[\p{L}\p{N}(])/gu, ' – ')
  );
}

const pageNumber = (line: string): number | null => {
  const found =
    /^(?:page|p\.)?\s*(\d{1,4})(?:\s*(?:of|\/)\s*\d{1,4})?$/iu.exec(line) ??
    /^[-–—]\s*(\d{1,4})\s*[-–—]$/u.exec(line);
  return found === null ? null : Number(found[1]);
};
const surelyPage = (line: string): boolean =>
  /^(?:page|p\.)\s*\d{1,4}|^\d{1,4}\s*(?:of|\/)\s*\d{1,4}$|^[-–—]\s*\d{1,4}\s*[-–—]$/iu.test(line);

/**
 * Indexes of lines that only number pages: those that say so, and bare numbers that stand at a page break or go
 * up by one from each to the next.
 */
function pageLines(lines: readonly string[], atBreak: ReadonlySet<number>): ReadonlySet<number> {
  const found = new Set<number>();
  const bare: { at: number; number: number }[] = [];
  lines.forEach((line, at) => {
    const number = pageNumber(line.trim());
    if (number === null) return;
    if (surelyPage(line.trim()) || atBreak.has(at)) found.add(at);
    bare.push({ at, number });
  });
  const climbs =
    bare.length > 1 && bare.every(({ number }, i) => i === 0 || number === bare[i - 1]!.number + 1);
  if (climbs) for (const { at } of bare) found.add(at);
  return found;
}

/** Indexes of lines that are the same but for a number at their end, which goes up by one from each to the next. */
function numberedHeads(lines: readonly string[]): readonly number[] {
  const heads = new Map<string, { readonly at: number; readonly number: number }[]>();
  lines.forEach((line, at) => {
    const found = /^(\S.*\S)\s{3,}(\d{1,4})$/u.exec(line.trim());
    if (found === null || !/\p{L}{3}/u.test(found[1]!)) return;
    heads.set(found[1]!, [...(heads.get(found[1]!) ?? []), { at, number: Number(found[2]) }]);
  });
  return [...heads.values()].flatMap((all) =>
    all.length > 1 && all.every(({ number }, i) => i === 0 || number === all[i - 1]!.number + 1)
      ? all.map(({ at }) => at)
      : [],
  );
}

/** Words that only rows have: the same end of a row may stand at the foot of many pages. */
const WORKS =
  /\b(?:s[cs]|sl st|h?dc|h?tr|dtr|ch|sts?|sps?|turn|rep|across|around|inc|dec|join|tog|row|rnd)\b/iu;

/** How many lines a running head or foot has at most. */
const HEAD_LINES = 4;

/**
 * Indexes of the lines that stand outermost on three pages or more, but for what is left out already: a running head or
 * foot, line for line from the edge. Words of rows are none, however many pages begin or end with the same.
 */
function runningHeads(
  lines: readonly string[],
  pages: readonly (readonly number[])[],
  known: ReadonlySet<number>,
): ReadonlySet<number> {
  const out = new Set(known);
  if (pages.length < 3) return out;
  for (let round = 0; round < HEAD_LINES; round++) {
    const edges = new Map<string, number[]>();
    for (const page of pages) {
      const left = page.filter((at) => !out.has(at));
      for (const at of new Set([left[0], left.at(-1)])) {
        if (at === undefined || isLabelAlone(lines[at]!) || WORKS.test(lines[at]!)) continue;
        const words = lines[at]!.trim().replace(/\d+/g, '#');
        edges.set(words, [...(edges.get(words) ?? []), at]);
      }
    }
    const running = [...edges.values()].filter((places) => places.length > 2).flat();
    if (running.length === 0) break;
    for (const at of running) out.add(at);
  }
  return out;
}

/** A line that plain text makes bold in whole or at its beginning, or a head. */
const MARKED = /^[ ]*(?:[-*] )?(?:\*\*[^*\n]{1,80}\*\*|#{1,4} \S)/gmu;

/** Without the stars that stand for bold letters, where a text has such. Two stars in a repeat mark a place in it. */
function unmarked(text: string): string {
  if ((text.match(MARKED) ?? []).length < 2) return text;
  return (
    text
      // "**YARN** Sock yarn": what is bold at the beginning of a line heads it.
      .replace(/^([ ]*)\*\*([\p{L}\d][^*\n]{0,28}[\p{L}\d)])\*\*[ ]+(?=[\p{L}\d(*])/gmu, '$1$2: ')
      .replace(/(^|[\s(])\*\*(?=\S)([^*\n]+?)(?<=\S)\*\*(?=$|[\s.,;:)])/gmu, '$1$2')
      .replace(/\\([*_#[\]()~-])/gu, '$1')
  );
}

/** "1  With 9 mm hook …" on three lines or more, counted on from 1: a list without its stops. */
function stopped(lines: readonly string[]): readonly string[] {
  const NUMBERED = /^(\s*)(\d{1,2})\s{2,}(?=\p{L}|[*([\d])/u;
  let last = 0;
  const found = new Set<number>();
  lines.forEach((line, at) => {
    const number = Number(NUMBERED.exec(line)?.[2] ?? Number.NaN);
    if (number !== last + 1) return;
    last = number;
    found.add(at);
  });
  return found.size < 3
    ? lines
    : lines.map((line, at) => (found.has(at) ? line.replace(NUMBERED, '$1$2. ') : line));
}

/** Plain text as it comes from a reader of PDFs, a letter, a text file. */
export function passageOfText(raw: string): Passage {
  const pages = unmarked(plainCharacters(raw)).split('\f');
  const lines: string[] = [];
  const atBreak = new Set<number>();
  /** Of each page, the indexes of its lines with words. */
  const ofPages: number[][] = [];
  for (const page of pages) {
    const own = stopped(page.split('\n')).map(unadorned);
    const filled = own.flatMap((line, i) => (line.trim() === '' ? [] : [lines.length + i]));
    if (pages.length > 1) for (const at of [filled[0], filled.at(-1)]) if (at !== undefined) atBreak.add(at);
    ofPages.push(filled);
    lines.push(...own);
  }
  const out = new Set(pageLines(lines, atBreak));
  // The same words with numbers that climb behind a wide gap are one as well, wherever pages break.
  for (const at of numberedHeads(lines)) out.add(at);
  for (const at of runningHeads(lines, ofPages, out)) out.add(at);
  // A row that went on over the page goes on in the next line: the gap goes with the number.
  const kept: string[] = [];
  lines.forEach((line, at) => {
    if (out.has(at)) return;
    const besideNumber = line.trim() === '' && (out.has(at - 1) || out.has(at + 1));
    if (!besideNumber) kept.push(line);
  });
  return {
    text: withLabelsBefore(kept)
      .join('\n')
      .replace(/^\n+|\n+$/g, '')
      .replace(/\n{3,}/g, '\n\n'),
    leftOut: [...out].sort((a, b) => a - b).map((at) => lines[at]!.trim()),
  };
}
