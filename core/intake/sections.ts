/**
 * Sorts the lines of an old pattern into its parts: sizes, materials, gauge, abbreviations, notes, rows, finishing,
 * by the heads that the trade sets over them. Every line comes out again in one part; none is read here.
 */
import { isTradeWord } from '../trade/known-words.ts';
import { isListOfAbbreviations } from './word-lists.ts';
import { AS_PIECE, type PassageOptions, readPassage, type Written } from './written.ts';

/** A part of a pattern by what its head announces. `opening`: what stands before any head. */
export type PartName =
  | 'opening'
  | 'sizes'
  | 'materials'
  | 'yarn'
  | 'hook'
  | 'notions'
  | 'gauge'
  | 'terms'
  | 'level'
  | 'abbreviations'
  | 'specials'
  | 'notes'
  | 'rows'
  | 'finishing'
  | 'care'
  | 'copyright'
  | 'contact'
  | 'designer'
  | 'fit';

export interface Section {
  readonly part: PartName;
  /** The head as it was written; empty where none stands over the lines. */
  readonly head: string;
  /** Lines without their line ends; an empty one for a gap. */
  readonly lines: readonly string[];
}

/**
 * Heads of parts, as makers write them (common practice, no source; the order of parts in a pattern:
 * "How to write a crochet pattern" and the like, see the notes on conventions).
 */
const HEADS: readonly (readonly [PartName, RegExp])[] = [
  [
    'sizes',
    /^(?:available |included |finished |approx(?:imate)?\.? |to fit |(?:child(?:ren)?|bab(?:y|ies)|kids?|wom[ae]n|m[ae]n|lad(?:y|ies)|adults?|teens?)(?:['’]?s)?['’]? )?(?:sizes?|sizing|measurements?|dimensions)(?: included| available| guide| chart| information)?$|^(?:to fit|finished (?:sizes?|measurements?|block|square|motif|piece)|actual (?:size|measurements?)|sizes? and (?:finished )?measurements?)\b.{0,40}$|^(?:chest|bust|length|width|height|circumference|measures)$/u,
  ],
  [
    'materials',
    /^(?:materials?(?: for (?:one|each|the|a) .{2,24})?|suppl(?:y|ies)|you will need|you['’]ll need|you need|what you(?:['’]ll| will)? need|requirements|materials? (?:and|&) (?:tools?|equipment|suppl(?:y|ies)|notions)|yarn (?:and|&) hooks?|yarns?,? hooks?(?:,? (?:and|&)? ?.*)?|tools?(?: (?:and|&) materials?)?|details)(?: list| needed| required)?$/u,
  ],
  ['yarn', /^(?:yarns?|wools?|threads?|colou?rs?|yarn requirements?)(?: used| needed| required)?$/u],
  ['hook', /^(?:crochet )?hooks?(?: sizes?| used| needed)?$/u],
  [
    'notions',
    /^(?:notions?|other (?:materials?|suppl(?:y|ies))|also needed|extras?|haberdashery|equipment|additional (?:materials?|suppl(?:y|ies)))$/u,
  ],
  [
    'gauge',
    /^(?:(?:crochet )?(?:gauge|tension)|gauge swatch|tension (?:square|swatch)|gauge and tension|stitch gauge)$/u,
  ],
  [
    'terms',
    /^(?:terms?|terminology|crochet terms?|pattern terms?|written in|(?:u\.?s\.?a?\.?|u\.?k\.?|american|british)(?: crochet)? (?:terms?|terminology)(?: used)?)$/u,
  ],
  ['level', /^(?:skill(?: level)?|level|difficulty(?: level)?|skill rating|experience level)$/u],
  [
    'abbreviations',
    /^(?:(?:stitch(?:es)? |crochet |list of |pattern |u\.?[sk]\.? |american |british )?(?:abbreviations?|abbrevs?\.?|abbrs?\.?)(?: used)?(?: .{0,24})?|stitch key|stitches|stitches used|words used|stitches(?: and| &) abbreviations?|abbreviations?(?: and| &) stitches|key|legend)$/u,
  ],
  [
    'specials',
    /^(?:special (?:stitches|stitch|sts|abbreviations?|techniques?)(?: used)?(?: .{0,24})?|stitch (?:guide|explanations?|glossary)|st guide|special instructions?|techniques?)$/u,
  ],
  [
    'notes',
    /^(?:(?:pattern |general |designer['’]?s? |important |stitch |construction )?notes?(?: .{0,24})?|(?:crochet |working |general |useful )?(?:information|info)|crochet tips?|before you (?:begin|start)|tips?|good to know|please (?:note|read))$/u,
  ],
  [
    'rows',
    /^(?:the )?(?:instructions?|directions?|pattern|method|to make|working instructions?|crochet instructions?|how to make(?: it)?|let['’]s (?:begin|start|crochet|get started)|get started)$/u,
  ],
  [
    'finishing',
    /^(?:finishing(?: touches| off| up)?|assembly|assembling|making up|to make up|make up|sewing up|to finish|blocking|blocking and finishing|finishing and blocking|putting (?:it )?together|joining(?: the (?:pieces|squares|motifs|blocks|seams))?|construction and finishing|completing)$/u,
  ],
  ['care', /^(?:care|care (?:instructions?|of .{1,30})|washing(?: instructions?)?|aftercare)$/u],
  ['copyright', /^(?:copyright(?: notice)?|legal|licen[cs]e|terms of use)$/u],
  ['contact', /^(?:contact|questions?\??|support|pattern support|help)$/u],
  ['designer', /^(?:designer|designed by|design|design by|by|author|pattern by|a (?:crochet )?pattern by)$/u],
  ['fit', /^(?:fit|ease|recommended ease|fit and ease|sizing and fit)$/u],
];

/** "You will need 150 g of DK cotton and a 4 mm hook. The bag …": materials said in a sentence. */
const YOU_NEED =
  /^you(?:['’]ll| will)? need (\d[^.]*(?:\.\d[^.]*)*|[^.]*\b(?:yarn|wool|cotton|hook)\b[^.]*(?:\.\d[^.]*)*)\.\s*(.*)$/iu;

/** Parts of one paragraph: a gap ends them. */
const SHORT: ReadonlySet<PartName> = new Set(['copyright', 'terms', 'level', 'designer', 'contact', 'fit']);

/** Parts that may begin, with words behind their head, among the rows. */
const AMONG_ROWS: ReadonlySet<PartName> = new Set([
  'abbreviations',
  'specials',
  'finishing',
  'care',
  'copyright',
  'contact',
  'materials',
  'gauge',
]);

/** Signs that only adorn a line. */
const ADORNED = /^[\s#*_=~•▪●◦·>+-]+|[\s#*_=~•·+!-]+$/gu;

/** Longest line that is looked at as a head. */
const LONGEST_HEAD = 60;

function partNamed(phrase: string): PartName | null {
  const words = phrase
    .replace(ADORNED, '')
    .replace(/^\d{1,2}[.)]\s+/u, '')
    .replace(/\s+/gu, ' ')
    .toLowerCase()
    .trim();
  return HEADS.find(([, head]) => head.test(words))?.[0] ?? null;
}

/** The part that a phrase announces; of a head in two languages each half is tried. */
function partOf(phrase: string): PartName | null {
  if (phrase.length > LONGEST_HEAD) return null;
  const whole = partNamed(phrase);
  if (whole !== null) return whole;
  // "5.5 mm (I) hook" is a thing in the list, and no head.
  if (/\d/u.test(phrase)) return null;
  const halves = phrase.split(/\s*[/|]\s*|\s+[-–—]\s+|\s*[()]\s*/u).filter((half) => half.trim() !== '');
  if (halves.length < 2 || halves.length > 3) return null;
  return halves.map(partNamed).find((part) => part !== null) ?? null;
}

interface Head {
  readonly part: PartName;
  readonly head: string;
  /** Words behind the head on its line. */
  readonly rest: string;
}

function headOf(line: string): Head | null {
  const bare = line.replace(ADORNED, '');
  if (bare === '') return null;
  if (/^(?:©|\(c\)\s|copyright\b)/iu.test(bare)) return { part: 'copyright', head: '', rest: line };
  // "81 [86:91:97] cm" has colons between its numbers; old leaflets lead on with a stop and a dash.
  const colon =
    /^([^:]{2,60}?)\s*:(?!(?<=\d:)\d)\s*(.*)$/u.exec(bare) ??
    /^([^.–—]{2,40}?)\s*\.\s?[–—]\s*(.*)$/u.exec(bare) ??
    /^([^–—]{2,40}?)\s[-–—]\s+(.*)$/u.exec(bare) ??
    // "Hook             4.5 mm" in columns, "MATERIALS REQUIRED. 1 ball" in capitals.
    /^(\S[^:]{1,28}?)\s{2,}(\S.*)$/u.exec(bare) ??
    /^(\p{Lu}[\p{Lu} &]{3,38})\.\s+(\S.*)$/u.exec(bare);
  if (colon !== null) {
    const part = partOf(colon[1]!);
    if (part !== null) return { part, head: colon[1]!, rest: colon[2]! };
  }
  const by =
    /^(designed by|(?:an? )?(?:crochet )?design by|a (?:crochet )?pattern by|pattern by|by)\s+(\S.*)$/iu.exec(
      bare,
    );
  if (by !== null && bare.length <= LONGEST_HEAD && !/[.:;]$/u.test(bare))
    return { part: 'designer', head: by[1]!, rest: by[2]! };
  // "To fit a baby of 3 months (6 months, 9 months)".
  const aged =
    /^to fit (?:an? )?(?:bab(?:y|ies)|child(?:ren)?|toddlers?|kids?)(?: of| aged)?,? (?=\d)(.+)$/iu.exec(
      bare,
    );
  if (aged !== null) return { part: 'sizes', head: 'Sizes', rest: aged[1]!.replace(/\.$/u, '') };
  const sizes = /^((?:finished |available |[\p{L}]+['’]?s?['’]? )?sizes?)\s+(\S.*)$/iu.exec(bare);
  const isSized =
    sizes !== null &&
    (namesSizes(sizes[2]!) || /^(?:approx\S* |about )?\d[^,;]*\b(?:cm|in|inch(?:es)?)\b/iu.test(sizes[2]!));
  if (sizes !== null && isSized) return { part: 'sizes', head: sizes[1]!, rest: sizes[2]! };
  // "FINISHED CHEST 86 {94} (102, 110) CM", "GAUGE 14 HDC X 10 ROWS = 10 CM": a head with its numbers right behind it.
  if (/^(?:finished|actual|to fit)\s[\p{L} ]{3,24}\s\d[^.]*\b(?:cm|in|ins|inch(?:es)?)\b/iu.test(bare))
    return { part: 'sizes', head: '', rest: bare };
  const counted = /^(gauge|tension)\s+(\d.*\b(?:(?:rows|rnds|rounds)\b.*\d|\d+\s?(?:cm|in)\b).*)$/iu.exec(
    bare,
  );
  if (counted !== null) return { part: 'gauge', head: counted[1]!, rest: counted[2]! };
  const stopped = bare.replace(/\.$/u, '');
  // In a list of notes it is one of them.
  if (stopped !== bare && /^[\p{L}\d]/u.test(line) && partOf(stopped) === 'terms')
    return { part: 'terms', head: stopped, rest: '' };
  const part = /[;,]$|[^A-Z]\.$/u.test(bare) ? null : partOf(bare.replace(/\s*[:.]$/u, ''));
  return part === null ? null : { part, head: bare, rest: '' };
}

/** "XS/S/M/L", "S (M, L)", "2, 4, 6 years": labels of sizes and nothing else. */
function namesSizes(words: string): boolean {
  const labels = words.split(/[\s,/()[\]{}:;|]+/u).filter((label) => label !== '');
  const ONE =
    /^(?:x{0,4}[sml]|[a-h]|\d{1,2}x[sl]?|\d{1,2}(?:-\d{1,2})?|\d{1,2}t|small|medium|large|and|years?|yrs?|months?|mths?|m|t)$/iu;
  return labels.length > 1 && labels.every((label) => ONE.test(label));
}

const LABEL =
  /^\W{0,4}(?:(?:for )?sizes?\b[^:]{1,40}:\s*)?(?:(?:[\p{L}-]+\s){0,2}(?:rows?|rnds?|rds?|rounds?)\s*(?:\d|(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\p{L}+teen|twenty)\b)|(?:foundation|base|set-?up|first|next)\s+(?:rows?|rnds?|rounds?|ch(?:ain)?)\b|(?:foundation|base|set[- ]?up)\s*:|r\s?\d+\s*[-–:.(]|\d{1,3}(?:st|nd|rd|th)\s(?:(?:and|to|-|–|&)\s\d{1,3}(?:st|nd|rd|th)\s)?(?:rows?|rnds?|rounds?)\b)/iu;
const BEGINS =
  /^\W{0,4}(?:(?:with|using)\s(?:[^,.]{1,40}[,.]\s*|.{1,40}?\shooks?\s))?(?:(?:ch|chain|make|work|begin with|start with|commence with)\s+(?:an?\s|\d)|\d{1,3}\s?ch(?:ain)?s?\b|(?:ch|chain)-?\d|(?:magic|adjustable) (?:ring|circle|loop)|mr\b)/iu;

/** "1. 6 sc in MR (6)": a number alone over work. */
const BARE =
  /^\W{0,4}\d{1,3}(?:\s?[-–]\s?\d{1,3})?\s?[.):]\s+(?=.*(?:\b|\d)(?:sc|dc|hdc|htr|tr|dtr|ch|inc|dec|mr|magic ring|sl st|ss)\b)/iu;
/** "Rounds 1–3 measure 6 cm": rows that something is said of. */
const SAID_OF =
  /^\W{0,4}(?:rows?|rnds?|rds?|rounds?)\s*\d+(?:\s*[-–]\s*\d+)?\s+(?:measures?|should|are|is|equals?|makes?|=)(?=\s)/iu;

/** Whether a line has the label of a row. */
function isLabelled(line: string): boolean {
  const begin = line.slice(0, 120);
  return LABEL.test(begin) && !SAID_OF.test(begin);
}

/** Whether a line is the label of a row, or the chain or ring that a piece begins with. */
function startsRows(line: string): boolean {
  const begin = line.slice(0, 120);
  return isLabelled(line) || BEGINS.test(begin) || BARE.test(begin) || AS_PIECE.test(begin);
}

/** Whether a line may be the name of a piece: few words, no sentence. */
function isName(line: string): boolean {
  const bare = line.replace(ADORNED, '').replace(/\s*:$/u, '');
  return (
    bare.length <= LONGEST_HEAD &&
    bare.split(/\s+/u).length <= 9 &&
    /^[\p{Lu}\d]/u.test(bare) &&
    // Old leaflets set a stop behind their heads: "THE BACK."
    !/[,;]$|[^\p{Lu})]\.$/u.test(bare)
  );
}

/** Parts of whose lines a chain or a row is no sign that the rows begin, unless it is a numbered one. */
const TELLS_WORK: ReadonlySet<PartName> = new Set([
  'abbreviations',
  'specials',
  'gauge',
  'notes',
  'finishing',
]);

/** "Adult small only", "Sizes M and L only:", "All sizes": for whom the rows below are, and no name. */
const FOR_SIZES =
  /^(?:for\s+)?(?:[^.:]{1,60}\bonly|all (?:other )?sizes|(?:other|remaining) sizes)\s*[:.]?$/iu;

/** How many lines below its name a piece may begin. */
const LOOKED_AHEAD = 4;

/** Whether rows begin at a line: it is one, or the name of a piece with rows below it. */
function beginRows(lines: readonly string[], at: number, from: PartName): boolean {
  const line = lines[at]!;
  const strict = TELLS_WORK.has(from);
  if (strict ? isLabelled(line) : startsRows(line)) return true;
  const next = lines.slice(at + 1).find((below) => below !== '');
  if (strict && BEGINS.test(line.slice(0, 120)) && next !== undefined && isLabelled(next)) return true;
  // The first line names the pattern, not a piece of it.
  if (from === 'opening' && lines.slice(0, at).every((above) => above === '')) return false;
  if (isSmallName(line, lines[at + 1])) return true;
  if (!isName(line) || FOR_SIZES.test(line) || /^[^:]{1,40}[:=]\s*\S/u.test(line)) return false;
  let seen = 0;
  for (let i = at + 1; i < lines.length && seen < LOOKED_AHEAD; i++) {
    const below = lines[i]!;
    if (below.trim() === '' || FOR_SIZES.test(below)) continue;
    seen += 1;
    if (startsRows(below)) return true;
    if (headOf(below) !== null) return false;
    // The name nearest to the rows is theirs; one over it stands apart and is plainly a name: "Sleeves", then "Cuff".
    if (isName(below) && !(seen === 1 && lines[at - 1] === '' && /^[^,;\d]{1,30}$/u.test(line))) return false;
    // Over several lines of prose only a sentence or two may come between.
    if (!/[.!]$/u.test(below.trim()) && !isName(below)) return false;
  }
  return false;
}

/** "crown" on a line of its own right over a row: a name in small letters. */
function isSmallName(line: string, below: string | undefined): boolean {
  const words = line.replace(/\s*:$/u, '').split(/\s+/u);
  return (
    words.length <= 2 &&
    words.every((word) => /^\p{Ll}[\p{L}'’-]+$/u.test(word) && !isTradeWord(word)) &&
    below !== undefined &&
    startsRows(below)
  );
}

/** Words that begin an instruction, not the name of a piece. */
const INSTRUCTS =
  /^(?:\d+(?:st|nd|rd|th)\b|all|with|using|join|change|fasten|stuff|turn|rep(?:eat)?|work|next|sizes?|for|cont(?:inue)?|note|now|then|do|weave|cut|sew|place|in|on|at)(?![\p{L}\d])/iu;

/** Marks the names of pieces among the lines of rows, so that they are taken for nothing else. */
export function withNamesMarked(lines: readonly string[]): readonly string[] {
  return lines.map((line, at) => {
    const before = lines[at - 1] ?? '';
    const apart = before === '' || /[.!)\]]$/u.test(before);
    const isPiece =
      apart &&
      !line.startsWith('#') &&
      !INSTRUCTS.test(line) &&
      !startsRows(line) &&
      beginRows(lines, at, 'rows');
    return isPiece ? `## ${line.replace(ADORNED, '').replace(/\.$/u, '')}` : line;
  });
}

/** Reads a passage that is pasted: rows, with the names of pieces over them. */
export const readPasted = (text: string, options: PassageOptions): Written =>
  readPassage(withNamesMarked(text.split('\n')).join('\n'), options);

/** Parts of the lines of a passage, in their order. Joined again they are the passage. */
export function sectionsOf(text: string): readonly Section[] {
  const lines = titleApart(text.split('\n').map((line) => line.trim())).flatMap(namedApart);
  const sections: { part: PartName; head: string; lines: string[] }[] = [];
  let part: PartName = 'opening';
  let before: PartName = 'opening';
  const open = (next: PartName, head: string): void => {
    sections.push({ part: next, head, lines: [] });
    if (!SHORT.has(next)) before = next;
    part = next;
  };
  open('opening', '');
  lines.forEach((line, at) => {
    if (line === '') {
      if (SHORT.has(part) && sections.at(-1)!.lines.length > 0) open(before, '');
      sections.at(-1)!.lines.push('');
      return;
    }
    // Whoever designed it is named on one line.
    if (part === 'designer' && /[^,&\s]$/u.test(sections.at(-1)!.lines.at(-1) ?? '')) open(before, '');
    const head = headOf(line);
    const isRowLine = isLabelled(line);
    if (head !== null && !isRowLine && takes(part, head)) {
      open(head.part, head.head);
      if (head.rest !== '') sections.at(-1)!.lines.push(head.rest);
      return;
    }
    if (part !== 'rows' && part !== 'abbreviations' && isListOfAbbreviations(line)) {
      open('abbreviations', '');
      sections.at(-1)!.lines.push(line);
      return;
    }
    const needs = YOU_NEED.exec(line);
    if (part === 'opening' && needs !== null) {
      open('materials', '');
      sections.at(-1)!.lines.push(needs[1]!);
      open('opening', '');
      if (needs[2] !== '') sections.at(-1)!.lines.push(needs[2]!);
      return;
    }
    if (part !== 'rows' && beginRows(lines, at, part)) open('rows', '');
    sections.at(-1)!.lines.push(line);
  });
  return sections.filter(({ head, lines: own }) => head !== '' || own.some((line) => line !== ''));
}

/** "THE BACK.—Make 59 ch.": the name of a piece, as old leaflets set it, on a line of its own. */
function namedApart(line: string): readonly string[] {
  const found = /^(\p{Lu}[\p{Lu} &'’-]{2,30}(?:\s\([^()]{3,30}\))?)\.?\s?[–—]\s*(\S.*)$/u.exec(line);
  if (found === null || headOf(line) !== null || !startsRows(found[2]!)) return [line];
  return ['', found[1]!, found[2]!];
}

/** The first line with what stands beside the title, between bars, on lines of its own. */
function titleApart(lines: readonly string[]): readonly string[] {
  const at = lines.findIndex((line) => line !== '');
  const parts = (lines[at] ?? '').split(/\s+\|\s+/u);
  return parts.length < 2 ? lines : [...lines.slice(0, at), ...parts, ...lines.slice(at + 1)];
}

/** Whether a head ends the part that is open. */
function takes(part: PartName, { part: next, rest }: Head): boolean {
  if (part !== 'rows' && part !== 'finishing') return true;
  if (next === 'copyright') return true;
  return rest === '' ? next !== 'sizes' && next !== 'hook' && next !== 'yarn' : AMONG_ROWS.has(next);
}
