/**
 * Rows of a pattern from a table: a spreadsheet's cells, or a table of a word processor. A column of labels, one of
 * words and columns of counts become written rows; any other table keeps its words, cell after cell.
 */
import { isTradeWord } from '../trade/known-words.ts';
import { plainCharacters } from './passage.ts';

const LABEL = /^(?:rows?|rnds?|rounds?|r)?\s*\d+(?:\s*[-–]\s*\d+)?(?:\s*\((?:rs|ws)\))?\s*[.:)]?$/iu;
const COUNT = /^[([]?\s*\d+(?:\s*\([\d\s,–-]+\))?\s*(?:\p{L}[\p{L}-]*\.?)?\s*[)\]]?$/u;
const HEAD = {
  label: /^(?:rows?|rnds?|rounds?)(?:\s*(?:no\.?|number|#))?$/iu,
  count: /^(?:sts?|stitch(?:es)?|counts?|totals?|stitch count)\.?$/iu,
};

/** Cells of a spreadsheet's plain text: tabs between cells; a cell in quotes may hold line breaks. */
export function cellsOfTabs(text: string): readonly (readonly string[])[] {
  const rows: string[][] = [[]];
  let cell = '';
  let quoted = false;
  const source = text.replace(/\r\n?/g, '\n').replace(/\n$/, '');
  for (let i = 0; i < source.length; i++) {
    const sign = source[i]!;
    if (quoted) {
      if (sign === '"' && source[i + 1] === '"') {
        cell += '"';
        i += 1;
      } else if (sign === '"') quoted = false;
      else cell += sign;
    } else if (sign === '"' && cell === '') quoted = true;
    else if (sign === '\t' || sign === '\n') {
      rows.at(-1)!.push(cell);
      cell = '';
      if (sign === '\n') rows.push([]);
    } else cell += sign;
  }
  rows.at(-1)!.push(cell);
  return rows;
}

/** Whether plain text is a table: several lines, most of them with as many tabs as the first. */
export function isTabbed(text: string): boolean {
  const lines = text.replace(/\n$/, '').split(/\r?\n/);
  const tabs = lines[0]!.split('\t').length - 1;
  return tabs > 0 && lines.filter((line) => line.split('\t').length - 1 === tabs).length * 2 > lines.length;
}

/** A table as lines of text, one for each of its rows. */
export function textOfTable(cells: readonly (readonly string[])[]): string {
  const rows = cells.map((row) => row.map((cell) => plainCharacters(cell).replace(/\s+/g, ' ').trim()));
  const sized = sizesOfTable(rows);
  if (sized !== null) return sized.join('\n');
  const pairs = pairTable(rows);
  if (pairs !== null) return pairs.join('\n');
  const [head] = rows;
  const isRound = head !== undefined && /^(?:rnds?|rounds?)/iu.test(head[0] ?? '');
  const isHead = head !== undefined && HEAD.label.test(head[0] ?? '');
  const sizes = isHead ? sizesIn(head) : null;
  const facts = factTable(rows);
  if (facts !== null) return facts.join('\n');
  const lines = rows.flatMap((row, index) => (isHead && index === 0 ? [] : [lineOf(row, isRound)]));
  return [...(sizes === null ? [] : [sizes]), ...lines].join('\n');
}

/** A table of abbreviations beside what they mean, in one pair of columns or two; null when it is none. */
function pairTable(rows: readonly (readonly string[])[]): readonly string[] | null {
  const columns = rows[0]?.length ?? 0;
  if (rows.length < 2 || columns < 2 || columns % 2 !== 0) return null;
  const pairs = rows.flatMap((row) =>
    row.flatMap((cell, i) => (i % 2 === 0 ? [[cell, row[i + 1] ?? ''] as const] : [])),
  );
  const told = pairs.filter(([short, meaning]) => short !== '' || meaning !== '');
  const isPair = ([short, meaning]: readonly [string, string]) =>
    short !== '' &&
    short.length <= 14 &&
    !/\d\s?mm\b/u.test(short) &&
    /^\p{L}/u.test(meaning) &&
    !/[.:]\s*$/u.test(short);
  const known = told.filter(([short]) => isTradeWord(short.replace(/\(.*\)/u, '').split(/[\s/]/u)[0]!));
  return told.every(isPair) && known.length * 2 >= told.length
    ? told.map(([short, meaning]) => `${short} = ${meaning}`)
    : null;
}

/** A table of two columns, what is told beside its name: "Hook | 7 mm"; null when it is none. */
function factTable(rows: readonly (readonly string[])[]): readonly string[] | null {
  const isFact = (row: readonly string[]) =>
    row.length === 2 &&
    /^\p{L}[\p{L} /&’'-]{1,27}$/u.test(row[0]!) &&
    row[1] !== '' &&
    !LABEL.test(row[0]!) &&
    !HEAD.label.test(row[0]!);
  return rows.length > 1 && rows.every(isFact) ? rows.map(([name, told]) => `${name}: ${told}`) : null;
}

/** Labels of sizes as tables head their columns with them. */
const SIZE =
  /^(?:(?:x{0,3}[sl]|m|\d{1,2}x[ls]?|xs[/-]s|s[/-]m|m[/-]l|l[/-]xl|(?:extra |x-?)?small|medium|(?:extra |x-?)?large|newborn|preemie|baby|toddler|child|teen|adult|one size)(?: (?:adult|child))?|\d{1,2}(?:\s?[-–/]\s?\d{1,2})?(?:\s?(?:months?|mths?|mos?|years?|yrs?|t))?)\.?$/iu;
/** What stands over or before labels of sizes, or nothing. */
const NAMES_SIZES = /^(?:sizes?|ages?|to fit|measurements?|finished measurements?)?:?$/iu;

const turned = (rows: readonly (readonly string[])[]): readonly (readonly string[])[] =>
  (rows[0] ?? []).map((_, column) => rows.map((row) => row[column] ?? ''));

/** A table of what sizes measure, either way round, as lines of text; null when it names no sizes. */
export const sizesOfTable = (rows: readonly (readonly string[])[]): readonly string[] | null =>
  sizeTable(rows) ?? sizeTable(turned(rows));

/** A table of what sizes measure as lines of text; null when its head does not name sizes. */
function sizeTable(rows: readonly (readonly string[])[]): readonly string[] | null {
  const [head = [], ...others] = rows;
  const [corner = '', ...labels] = head;
  if (labels.length < 2 || others.length === 0 || !NAMES_SIZES.test(corner)) return null;
  // Bare numbers are sizes only where the table says that it is of sizes.
  const areSizes =
    labels.every((label) => SIZE.test(label) && (corner !== '' || /\p{L}/u.test(label))) ||
    labels.every((label, i) => label === String.fromCharCode(65 + i));
  const isFull = others.every((row) => row.length === head.length && row[0] !== '');
  if (!areSizes || !isFull) return null;
  return [`Sizes: ${listed(labels)}`, ...others.map(measuresOf)];
}

const listed = ([first = '', ...more]: readonly string[]): string => `${first} (${more.join(', ')})`;

/** "Bust: 76 (86, 97) cm / 30 (34, 38) in": a line of such a table, its units said once. */
function measuresOf([name = '', ...cells]: readonly string[]): string {
  const inName = /\s*[([](cm|mm|in|ins|inches|m|yds?|yards|g|balls)[)\]]\s*:?$/iu.exec(name);
  const called = (inName === null ? name : name.slice(0, inName.index)).replace(/\s*:$/u, '');
  const parts = cells.map((cell) =>
    [
      ...cell.matchAll(
        /(\d[\d.,½¼¾⅛⅜⅝⅞ ]*(?:\d\/\d)?(?:[-–]\d[\d.,½¼¾]*)?)\s*(cm|mm|in(?:s|ch|ches)?\b\.?|["”]|m|yds?|yards?|g|balls?|skeins?)?(?=$|[\s/()])/giu,
      ),
    ].map(([, number = '', unit = '']) => [number.trim(), unit] as const),
  );
  const bare = cells.map((cell) =>
    cell.replace(
      /[\d.,½¼¾⅛⅜⅝⅞\s/()"”–-]|cm|mm|in(?:s|ch|ches)?\b\.?|\b(?:m|yds?|yards?|g|balls?|skeins?)\b/giu,
      '',
    ),
  );
  const units = (parts[0] ?? []).map(([, unit]) => unit);
  const alike = parts.every(
    (own) => own.length === units.length && own.length > 0 && own.every(([, unit], i) => unit === units[i]),
  );
  if (!alike || bare.some((rest) => rest !== ''))
    return `${called}: ${listed(cells)}${inName === null ? '' : ` ${inName[1]}`}`;
  const lists = units.map((unit, i) => {
    const said = unit === '' ? (inName?.[1] ?? '') : unit;
    return `${listed(parts.map((own) => own[i]![0]))} ${said}`.trim();
  });
  return `${called}: ${lists.join(' / ')}`;
}

/** A head such as "Row | Instruction | S | M | L" names the sizes of the counts below. */
function sizesIn(head: readonly string[]): string | null {
  const labels = head.slice(2).filter((label) => label !== '');
  if (labels.length < 2 || labels.some((label) => HEAD.count.test(label))) return null;
  return `Sizes: ${labels[0]} (${labels.slice(1).join(', ')})`;
}

function lineOf(row: readonly string[], isRound: boolean): string {
  const [first = '', ...others] = row;
  const isOpen = /^[-–—]?$/u.test(first) && others.some((cell) => COUNT.test(cell));
  if (!LABEL.test(first) && !isOpen) return row.filter((cell) => cell !== '').join(' ');
  const side = others.find((cell) => /^(?:RS|WS)$/u.test(cell)) ?? null;
  let words = others.filter((cell) => cell !== '' && cell !== side);
  const counts: string[] = [];
  while (words.length > 1 && COUNT.test(words.at(-1)!)) {
    counts.unshift(words.at(-1)!);
    words = words.slice(0, -1);
  }
  const bare = /^\d/.test(first);
  const sided = side === null || first.includes('(') ? '' : ` (${side})`;
  const label = `${bare ? (isRound ? 'Rnd ' : 'Row ') : ''}${first.replace(first.includes('(') ? /\s*[.:]$/ : /\s*[.:)]$/, '')}`;
  const [one, ...rest] = counts.map((count) => count.replace(/^[([]\s*|\s*[)\]]$/g, ''));
  const count =
    one === undefined
      ? ''
      : rest.length === 0
        ? ` (${counts[0]!.replace(/^[([]\s*/, '').replace(/^(\d[^()]*)\)$/, '$1')})`
        : ` – ${one} (${rest.join(', ')})`;
  // A chain that is begun with has no number of its own, and says how many it is.
  return isOpen ? words.join(' ') : `${label}${sided}: ${words.join(' ')}${count}`;
}
