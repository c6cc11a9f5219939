/**
 * Abbreviations and special stitches from their sections in an old pattern. What the trade's own list explains in the
 * same words is left to that list; everything else is kept as the maker wrote it.
 */
import { isTradeWord, wordsIn } from '../trade/known-words.ts';

export interface Explained {
  readonly short: string;
  readonly meaning: string;
}

/** Letters of an abbreviation, then a sign, then what it means. */
const PAIR = /(?:^|[,;.]\s+|\s{2,})([\p{L}\d][\p{L}\d/.()’' -]{0,24}?)\s*(?:=|:|\s[-–—](?=\s))\s*/gu;

/** "beg, beginning; ch, chain;": pairs parted by semicolons or bars, short and long by a comma or a sign. */
function partedPairs(line: string): readonly Explained[] {
  const parts = line.replace(/[.\s]+$/u, '').split(/\s*(?:;|\||\/\/)\s*/u);
  if (parts.length < 3) return [];
  const pairs = parts.map((part) => {
    const found =
      /^([\p{L}\d][\p{L}\d/.()’'-]{0,12}?(?:\s\p{L}{2,3})?)(?:\.?,\s+|\s*[:=]\s*|\s[-–—]\s)(\S.*)$/u.exec(
        part,
      );
    return found === null ? null : { short: found[1]!.replace(/\.$/u, ''), meaning: found[2]! };
  });
  return pairs.every((pair) => pair !== null) ? pairs : [];
}

/** "dc    double crochet     sc    single crochet": words set in columns by wide gaps. */
function gappedPairs(line: string): readonly Explained[] {
  const cells = line.trim().split(/\s{2,}/u);
  if (cells.length < 2 || cells.length % 2 !== 0) return [];
  const pairs = cells.flatMap((cell, i) =>
    i % 2 === 0 ? [{ short: cell, meaning: cells[i + 1]!.replace(/[\s,;.]+$/u, '') }] : [],
  );
  const isShort = ({ short }: Explained) => short.length <= 12 && short.split(' ').length <= 2;
  return pairs.every(isShort) &&
    pairs.some(({ short }) => isTradeWord(short.replace(/\(.*\)/u, '').split(' ')[0]!))
    ? pairs
    : [];
}

/** Whether a line explains abbreviations of the trade, several of them, with no head over it. */
export const isListOfAbbreviations = (line: string): boolean => {
  const pairs = partedPairs(line);
  return pairs.length > 2 && pairs.filter(isTrades).length * 2 >= pairs.length;
};

/** Pairs in a line: one, or several behind one another. */
function pairsIn(written: string): readonly Explained[] {
  // "(US) ch: chain; sc: single crochet"
  const line = written.replace(/^\((?:US|UK)(?:\s\p{L}+)?\)\s*/iu, '');
  const parted = partedPairs(line);
  if (parted.length > 0) return parted;
  const gapped = gappedPairs(line);
  if (gapped.length > 0) return gapped;
  const heads = [...line.matchAll(PAIR)].filter((head) => head[1]!.trim().split(/\s+/u).length <= 4);
  if (heads.length === 0 || line.slice(0, heads[0]!.index).trim() !== '') return [];
  return heads.map((head, i) => {
    const from = head.index + head[0].length;
    const meaning = line.slice(from, heads[i + 1]?.index ?? line.length).trim();
    return { short: head[1]!.trim(), meaning: meaning.replace(/[\s,;.]+$/u, '') };
  });
}

/** "sc single crochet": letters of the trade and words of the trade, in two columns. */
function columnsIn(line: string): Explained | null {
  const found = /^([\p{L}\d-]{1,10}(?:\(s\))?|sl st|inv dec)\s+(\p{L}.{2,60})$/u.exec(line);
  if (found === null || !isTradeWord(found[1]!.replace('(s)', '').split(' ')[0]!)) return null;
  const meaning = found[2]!.replace(/[\s,;.]+$/u, '');
  return isPlain(meaning) ? { short: found[1]!, meaning } : null;
}

const SMALL: ReadonlySet<string> = new Set(
  'a an the in of or and to on only as st sts ch stitches stitch s es chains rows rounds'.split(' '),
);
const isPlain = (words: string): boolean =>
  wordsIn(words).every((word) => isTradeWord(word) || SMALL.has(word) || /^\d$/u.test(word));

/** Whether an abbreviation and its meaning are the trade's own, so that the printed list explains it anyway. */
function isTrades({ short, meaning }: Explained): boolean {
  return isPlain(short) && isPlain(meaning) && !/\d/u.test(meaning.replace(/\d tog/u, ''));
}

/** The maker's own abbreviations among the lines of a list, and the lines that explain none. */
export function abbreviationsIn(lines: readonly string[]): {
  readonly own: readonly Explained[];
  readonly rest: readonly string[];
} {
  const own: Explained[] = [];
  const rest: string[] = [];
  for (const line of lines) {
    const pairs = pairsIn(line);
    const columns = pairs.length === 0 ? columnsIn(line) : null;
    // "ch chain, hdc half double crochet": such columns one after another.
    const parts = line.split(/\s*[,;]\s+/u);
    const inRow = pairs.length === 0 && parts.length > 1 ? parts.map(columnsIn) : [null];
    const row = inRow.every((one) => one !== null) ? inRow : pairs;
    const all = columns === null ? row : [columns];
    if (all.length === 0 || all.some(({ short, meaning }) => short === '' || meaning === '')) {
      if (line !== '') rest.push(line);
      continue;
    }
    own.push(...all.filter((one) => !isTrades(one)));
  }
  return { own, rest };
}

export interface DefinedStitch {
  readonly name: string;
  readonly abbreviation: string;
  readonly text: string;
}

/** Special stitches among paragraphs: a name, its letters in brackets, a sign, the definition. */
export function specialsIn(paragraphs: readonly string[]): {
  readonly specials: readonly DefinedStitch[];
  readonly rest: readonly string[];
} {
  const specials: { name: string; abbreviation: string; text: string }[] = [];
  const rest: string[] = [];
  for (const paragraph of paragraphs) {
    const found =
      /^(?:to (?:make|work)\s+(?:an?\s+)?)?([\p{L}\d][^:=([]{0,60}?)(?:\s*[([]([^)\]]{1,24})[)\]])?\s*(?::|=|\s[-–—](?=\s))\s*(\S.*)$/iu.exec(
        paragraph,
      );
    if (found !== null)
      specials.push({
        name: found[1]!.trim(),
        abbreviation: (found[2] ?? '').trim(),
        text: found[3]!.replace(/^[=:]\s*/u, ''),
      });
    else if (specials.length > 0) specials.at(-1)!.text += ` ${paragraph}`;
    else rest.push(paragraph);
  }
  return { specials, rest };
}

/** Lines of a list of abbreviations: each explains of its own, and only a line that explains none goes on another. */
export function paragraphsByPair(lines: readonly string[]): readonly string[] {
  const found: string[] = [];
  for (const line of lines) {
    const explains =
      /^[\p{L}\d][^=:]{0,24}(?:=|:|\s[-–—]\s)/u.test(line) ||
      /^\S{1,10}(?:\s|\s{2,}\S)\p{Ll}|^\S{1,10}(?:\s\S{1,4})?\s{2,}\S/u.test(line);
    const last = found.at(-1);
    // A sentence of its own is said of the pattern, not of the last word explained.
    const isSentence = /^\p{Lu}.*\s.*\.$/u.test(line) && /[.)]\s*$/u.test(last ?? '');
    // "…; tr =" and then "treble; ss = slip stitch": a list between semicolons that goes on over its lines.
    const isCut = last !== undefined && (/[=,]$/u.test(last) || /;[^;.]*[^;.\s]$/u.test(last));
    if (isCut && line !== '') found[found.length - 1] = `${last} ${line}`;
    else if (line === '' || explains || isSentence || last === undefined || last === '') found.push(line);
    else found[found.length - 1] = `${last} ${line}`;
  }
  return found;
}

/** Lines of definitions with a gap before each that names a stitch: "Block (bl): dc in next 3 sts". */
export function apartByName(lines: readonly string[]): readonly string[] {
  return withNamesBefore(lines).flatMap((line, i) =>
    i > 0 && /^\p{Lu}[^:=.,]{1,40}(?:\([^)]{1,16}\))?\s*[:=]\s/u.test(line) ? ['', line] : [line],
  );
}

/** "V-stitch (V-st)" on a line of its own, or in a column of its own, before the words that define it. */
function withNamesBefore(lines: readonly string[]): readonly string[] {
  const out: string[] = [];
  for (let at = 0; at < lines.length; at++) {
    // Set in two columns, with a gap between them.
    const line = lines[at]!.replace(/^(\p{L}[^:=.,;]{1,40}\([^()]{1,16}\))\s{2,}(?=\S)/u, '$1: ');
    const next = lines[at + 1] === '' ? at + 2 : at + 1;
    const words = lines[next] ?? '';
    const isName = /^\p{L}[^:=.,;]{1,40}\([^()]{1,16}\):?$/u.test(line);
    if (!isName || !/^[([\p{L}\d*]/u.test(words)) {
      out.push(line);
      continue;
    }
    out.push(`${line.replace(/:$/u, '')}: ${words}`);
    at = next;
  }
  return out;
}
