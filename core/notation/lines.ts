/**
 * Sorts the lines of a text: rows, headings, definitions, conventions, sizes and prose, and where one row ends
 * and the next begins. It throws nothing away in silence.
 */
import type { Fact, Span } from '../finding.ts';
import { readSaid } from './counts.ts';
import type { Cursor, ReadOptions } from './cursor.ts';
import { linesOf, onTheHook, over, type Range, readNames, readSizes } from './definitions.ts';
import { readItems } from './items.ts';
import { readLabel, readSizeFilter } from './labels.ts';
import type { Token } from './lexer.ts';
import { type Lexicon, lexiconOf, normaliseName, singular } from './lexicon.ts';
import { isNameWorked } from './named-inside.ts';
import { ROW } from './rows-again.ts';
import type { Convention, Item, Place, SizeFilter, StitchRef } from './tree.ts';
import { readWhole } from './wholes.ts';
import { readStitch } from './words.ts';

export type Part =
  | { readonly kind: 'blank' }
  | { readonly kind: 'heading'; readonly range: Range; readonly text: string; readonly section: boolean }
  | {
      readonly kind: 'definition';
      readonly names: readonly string[];
      readonly range: Range;
      readonly body: Range;
    }
  | { readonly kind: 'filter'; readonly filter: SizeFilter | null }
  | { readonly kind: 'convention'; readonly convention: Convention }
  | { readonly kind: 'row'; readonly range: Range; readonly labelled: boolean; readonly first: boolean }
  | { readonly kind: 'prose'; readonly range: Range };

const SECTIONS =
  /^(?:special st|stitch guide|st guide|abbreviation|note|pattern note|material|gauge|tension|instruction|pattern|finishing|size|yarn|hook|notion|supplie|stitch key|stitches used|key|terms|skill|measurement|direction|finished|legend|special)/iu;

/** Words that name pieces, not stitches, before a colon. */
const PIECES =
  /^(?:back|front|left|right|sleeves?|body|yoke|collar|neck\w*|\w*bands?|placket|lapel|button\w*|border|edging|cuffs?|hat|brim|crown|strap|pocket|hood|panel|square|motif|top|bottom|base|sides?|head|arms?|legs?|ears?|tail|thumb|hand|foot|heel|toe|gusset|flap|handle|trim|ribbing|hem|main|first|second|round|row|rnd|next|begin\w*|start\w*|foundation|set|setup|with|using|repeat|rep|turn|change|fasten|work|join|ch|chain|corner|assembly|finishing|materials|gauge|tension|hook|yarn|notes?|sizes?|rs|ws|to|for|in|from|how|tip|variation|row\w*|part|step|section|piece|measurements?|level|difficulty|designed|terms|important|abbreviations?|instructions?|forward|return|retp|fwd|fwp|passes|pass)$/iu;

/** "Join short ends with sl st to form a tube.", "Sew side seams.": how worked pieces are put together. */
const MAKING_UP =
  /^(?:sew|seam|stitch|join|whip ?stitch|slip ?stitch|sl\.? ?st|ss|graft) (?:(?:the|both|two|short|long|side|top|shoulder|open|cast-on|first|last|and|of|row) ){0,4}(?:ends?|edges?|sides?|seams?|panels?|pieces?|shoulders?|rows?) (?:together|with|to|using|and)\b/iu;

/** "2nd row forms dc fabric.", "Rows 2 and 3 form the pattern.": what rows that are there come to. */
const SAID_OF_ROWS =
  /^(?:the )?(?:(?:last|these|prev(?:ious)?) )?(?:\d{1,2} |two |three |four )?(?:\d{1,3}(?:st|nd|rd|th) (?:(?:and|to|&) \d{1,3}(?:st|nd|rd|th) )?)?(?:rows?|rnds?|rounds?)(?: \d{1,3}(?:(?: and | to | & |[-–])\d{1,3})?)? (?:forms?|sets?|establish(?:es)?|makes?) (?:the |a |one )?(?:\p{L}+ ){0,3}(?:fabric|patt(?:ern)?s?|repeat|rep)\b/iu;

/** "Return: yo, pull through 1 loop, …", "Row 1 return pass: …": the way back of the Tunisian row above. */
const RETURNS =
  /^(?:(?:row|rnd|round) \d+[ ,:–-]*)?[(]?(?:return|ret|retp|rtp|closing pass|reverse pass)(?: pass)?[)]?\s*[:–.-]/iu;

/** "Forward: …", "FwP: …": the way out, under a label of its own line. */
const FORWARD = /^(?:forward|fwp|fwd)(?: pass)?\s*[:–-]/iu;

/** The head of a line that names a side, with work behind it on the same line. */
const SIDES =
  /^(?:the )?(?:first|second|left|right|other|next)(?: [a-z]+){0,2} (?:side|front|back|shoulder|half|neck|neckline|edge|strap|sleeve)(?=\s*:)/iu;

/** "Divide for sleeves", "Shape armholes", "Neck shaping": what the next rows are for, with the first of them behind it. */
const PURPOSES =
  /^(?:(?:divide|dividing|split|splitting|separate|separating|shape|shaping|begin|start) (?:for|the|[a-z]+)\b.*|.* (?:shaping|division|divide|split|separation))$/iu;

/** Behind these a row is not at its end. */
const GOES_ON: ReadonlySet<string> = new Set([',', ';', 'and', 'in', 'to', 'next', 'the', 'st', 'from', '*']);

/** "Abbreviations: ch - chain; sc - single crochet; …", all on one line. */
const WORD_LIST =
  /^(?:abbreviations?|stitch abbreviations?|abbreviations? used|stitch key)(?: \([^()]{1,20}\))?\s*:\s*\S/iu;

/** How often lines are read again for names that other lines define. */
const MOST_ROUNDS = 30;

/** Words that begin an instruction for whole rows. */
const WHOLE: ReadonlySet<string> = new Set(
  'rep work cont dec inc alternate alt complete make as same then now'.split(' '),
);
/** "Sc around for five more rounds": a stitch, and how many rows of it. */
const FOR_ROWS = /^[^.;:*()[\]]{2,60} (?:for|over) [^.;:*()[\]]{1,30}\b(?:rows?|rnds?|rounds?)(?!\p{L})/iu;

const STITCHLIKE =
  /\b(?:st|sts|stitch|stitches|shell|cluster|cl|picot|bobble|popcorn|pop|pc|puff|v-?st|fan|inc|dec|increase|decrease|tog|block|spike|cable|sc|dc|hdc|tr|htr|dtr|bead|knot|loop|petal|leaf|lf|group|crab|beg|sh|bo|crossed|x-?st)\b/iu;

const WORKING: readonly Item['type'][] = [
  'chain',
  'work',
  'group',
  'repeat',
  'skip',
  'ring',
  'rows-again',
  'even',
  'shaping',
  'as-piece',
  'join',
  'fasten-off',
  'turn',
  'attach',
  'again',
];

/** True when the items are mostly work: what an unlabelled row must be. */
function isWork(items: readonly Item[]): boolean {
  const works = items.filter((item) => WORKING.includes(item.type)).length;
  const unread = items.filter((item) => item.type === 'unread').length;
  return works > 0 && unread <= works / 2;
}

/** Words of plain stitches only, with no number and no place: "single crochet". */
function isBareName(items: readonly Item[]): boolean {
  return items.every(
    (item) =>
      item.type === 'aside' ||
      item.type === 'unread' ||
      (item.type === 'chain' && item.amount.from === item.amount.to) ||
      (item.type === 'work' &&
        item.over === null &&
        item.places.every((p) => p.kind === 'next' && p.implied && p.amount.from === p.amount.to)),
  );
}

const hasHeight = (item: Item): boolean => item.type === 'work' && item.stitch.base !== null;

/** "sc in each sc across": before a colon these are the end of a row, and what follows is its count. */
function isWorked(items: readonly Item[]): boolean {
  const told = (place: Place) =>
    place.kind === 'across' || (place.kind === 'next' && !place.implied && place.bare !== true);
  return items.some((item) =>
    item.type === 'work' || item.type === 'group'
      ? item.places.some(told)
      : item.type === 'repeat' || item.type === 'turn' || item.type === 'join',
  );
}

export class Sorter {
  readonly parts: Part[] = [];
  readonly facts: Fact[] = [];
  sizes: string[] | null = null;
  /** Names that definitions give so far. */
  readonly names = new Set<string>();
  /** Names that only stand for a stitch of the trade. */
  readonly aliases = new Map<string, StitchRef>();
  private section = '';
  private open = false;
  private lastLine = -1;
  private lexicon: Lexicon | undefined;
  private lexiconSize = -1;

  constructor(
    private readonly text: string,
    private readonly tokens: readonly Token[],
    private readonly options: ReadOptions,
  ) {}

  private span(range: Range): Span {
    return { from: this.tokens[range.from]!.from, to: this.tokens[range.to - 1]!.to };
  }

  private words(range: Range): string {
    const span = this.span(range);
    return this.text.slice(span.from, span.to);
  }

  private cursor(range: Range): Cursor {
    const size = this.names.size + this.aliases.size;
    if (!this.lexicon || this.lexiconSize !== size) {
      this.lexiconSize = size;
      this.lexicon = lexiconOf(
        this.options.terms,
        [...(this.options.names ?? []), ...this.names],
        this.aliases,
      );
    }
    return over(this.text, this.tokens, range, this.options, this.lexicon);
  }

  sort(): void {
    const lines = linesOf(this.tokens);
    for (const line of lines) this.define(line);
    this.defineByOthers();
    this.section = '';
    for (let i = 0; i < lines.length; i++) {
      const line = lines[i]!;
      const number = this.tokens[line.from]!.line;
      if (this.lastLine >= 0 && number > this.lastLine + 1) {
        this.parts.push({ kind: 'blank' });
        this.open = false;
      }
      this.lastLine = this.tokens[line.to - 1]!.line;
      this.line(line, lines[i + 1] ?? null);
    }
  }

  /** First pass: collects the names that the text defines, for the rows that use them. */
  private define(line: Range): void {
    const heading = this.headingOf(line);
    if (heading) {
      this.section = heading.section ? heading.text : '';
      return;
    }
    this.aliasesIn(line);
    const definitions = this.definitionsIn(line);
    for (const definition of definitions) for (const name of definition.names) this.names.add(name);
    if (definitions.length === 0 && readNames(this.text, this.tokens, line) !== null)
      this.waiting.push({ line, section: this.section });
  }

  /** Lines with a name before a colon that define nothing by the words known so far. */
  private waiting: { readonly line: Range; readonly section: string }[] = [];

  /** "Fan: 2 shells in same sp" before "Shell: …": a definition in words that come later, read once they are known. */
  private defineByOthers(): void {
    for (let before = -1, round = 0; before < this.names.size && round < MOST_ROUNDS; round++) {
      before = this.names.size;
      if (before === 0) return;
      // From the last line up: what is used before it is defined is then found in one round.
      this.waiting = this.waiting.toReversed().filter(({ line, section }) => {
        this.section = section;
        const definitions = this.definitionsIn(line);
        for (const definition of definitions) for (const name of definition.names) this.names.add(name);
        return definitions.length === 0;
      });
    }
  }

  private labelAt(range: Range): boolean {
    const c = this.cursor(range);
    const filter = readSizeFilter(c);
    const at = c.at;
    const label = readLabel(c);
    return label !== null && !(filter === null && at === c.at) && label.kind !== 'none';
  }

  /** "2 sc in each" and "Rnd 3: …" in a line of its own: nothing that "each" could still be said of. */
  private numberedAt(line: Range, before: string): boolean {
    if (!['each', 'next', 'top'].includes(before)) return false;
    const c = this.cursor(line);
    const label = readLabel(c);
    return label?.numbers != null && this.tokens[line.from + c.at - 1]?.word === ':';
  }

  /** Definitions that a line holds: one behind another, and those behind "Special stitches:". */
  private definitionsIn(line: Range): Extract<Part, { kind: 'definition' }>[] {
    let range = line;
    const special =
      /^\W*(?:special(?: (?:stitch(?:es)?|sts?|abbreviations?|terms?))?(?: used)?|stitch guide|abbreviations|pattern stitch(?:es)?|stitch (?:key|definitions?)|notes?)\s*[:\-–]\s*/iu.exec(
        this.words(line),
      );
    let section = this.section;
    if (special) {
      const from = this.span(line).from + special[0].length;
      let start = line.from;
      while (start < line.to && this.tokens[start]!.from < from) start++;
      if (start >= line.to) return [];
      range = { from: start, to: line.to };
      section = 'special stitches';
    }
    const starts = [range.from];
    let depth = 0;
    for (let i = range.from; i < range.to - 1; i++) {
      const { word } = this.tokens[i]!;
      if (word === '(' || word === '[' || word === '{') depth++;
      if (word === ')' || word === ']' || word === '}') depth = Math.max(0, depth - 1);
      if (depth > 0 || !['.', ';', ')', ']'].includes(word) || !this.tokens[i + 1]!.gap) continue;
      const rest = { from: i + 1, to: range.to };
      // "Shell = 5 dc in same st; sc = single crochet": the second is none, and ends the first.
      const explained = readNames(this.text, this.tokens, rest)?.sure === true;
      if (explained || this.definitionIn(rest, section)) starts.push(i + 1);
    }
    return starts.flatMap(
      (from, i) => this.definitionIn({ from, to: starts[i + 1] ?? range.to }, section) ?? [],
    );
  }

  /** The definition that a range holds, or null. */
  private definitionIn(range: Range, section: string): Extract<Part, { kind: 'definition' }> | null {
    if (this.labelAt(range)) return null;
    const named = readNames(this.text, this.tokens, range);
    if (!named) return null;
    const name = named.written;
    // "Corner: (3 dc, ch 2, 3 dc) in sp" is a stitch where rows work it: "corner in next sp".
    const cornerStitch = /^corners?$/iu.test(name) && isNameWorked(this.tokens, 'corner');
    if (
      !cornerStitch &&
      (PIECES.test(name) || (PIECES.test(name.split(/\s+/u)[0] ?? '') && !STITCHLIKE.test(name)))
    )
      return null;
    if (/^(?:sizes?|to fit|terms|row|rnd|round)\b/iu.test(name)) return null;
    if (isWorked(readItems(this.cursor(named.name)))) return null;
    const body = this.cursor(named.body);
    if (onTheHook(body)) return { kind: 'definition', names: named.names, range, body: named.body };
    const items = readItems(body);
    const stitchlike = STITCHLIKE.test(name);
    const some = items.some((item) => WORKING.includes(item.type));
    if (!isWork(items) && !(some && (named.sure || stitchlike))) return null;
    // "sc = single crochet", "ch: chain": an explanation of a trade word, which defines nothing.
    // "dec = hdc2tog" tells which decrease is meant.
    const which = named.sure && /^(?:inc|dec)(?:rease)?s?$/iu.test(name) && items.some(hasHeight);
    if (isBareName(items) && !which) return null;
    if (readSaid(this.cursor(range))) return null;
    const inSection = /special|stitch|abbrev/iu.test(section);
    if (!named.sure && !inSection && !stitchlike && !this.usedElsewhere(named.names, range)) return null;
    // "ch 3: …" is no name.
    if (/^ch \d/u.test(named.names[0] ?? '')) return null;
    return { kind: 'definition', names: named.names, range, body: named.body };
  }

  /** "X = sc, V = inc": letters that only stand for a stitch, wherever a line explains them. */
  private aliasesIn(line: Range): boolean {
    let found = false;
    for (let i = line.from + 1; i + 1 < line.to; i++) {
      if (this.tokens[i]!.word !== '=') continue;
      const name = this.tokens[i - 1]!;
      const before = this.tokens[i - 2]?.word ?? ':';
      if (name.kind !== 'word' || (i - 2 >= line.from && ![',', ';', ':', '.', '-', '•'].includes(before)))
        continue;
      const own = this.cursor({ from: i - 1, to: i });
      const known = readStitch(own) !== null && !this.aliases.has(normaliseName(name.text));
      if (known || own.isAny(['ch', 'chs', 'st', 'sts', 'sp', 'sk', 'rep', 'rnd', 'row'])) continue;
      const c = this.cursor({ from: i + 1, to: line.to });
      const stitch = readStitch(c);
      if (!stitch || stitch.special || !(c.done || [',', ';', '.'].includes(c.word()))) continue;
      this.aliases.set(normaliseName(name.text), stitch);
      found = true;
    }
    return found;
  }

  /** "sc = single crochet", "sk – skip", "BLO: back loop only": an abbreviation spelt out, which is no work. */
  private explains(line: Range): boolean {
    const named = readNames(this.text, this.tokens, line);
    if (!named) return false;
    const { from, to } = named.body;
    // "ch 30 - slip stitch to form a circle" is work.
    const chained = this.tokens.slice(named.name.from, named.name.to);
    if (chained.length > 1 && chained[0]!.word === 'ch' && chained[1]!.kind === 'number') return false;
    const body = this.tokens.slice(from, to);
    if (
      body.length > 7 ||
      body.some((token) => token.kind !== 'word' && !['-', '/', '(', ')', '.', ','].includes(token.word))
    ) {
      return false;
    }
    if (body.some((token) => ['in', 'next', 'each', 'across', 'around'].includes(token.word))) return false;
    if (named.sure || /abbrev|stitch|key|terms/iu.test(this.section)) return true;
    const c = this.cursor({ from: line.from, to: from });
    const trade = readStitch(c) !== null || c.isAny(['ch', 'chs']);
    return trade && isBareName(readItems(this.cursor(named.body)));
  }

  /** True when other words of the text use one of the names as a stitch. */
  private usedElsewhere(names: readonly string[], range: Range): boolean {
    const { words, places } = this.wordIndex();
    return names.some((name) => {
      const parts = name.split(' ');
      return (places.get(parts[0]!) ?? []).some((at) => {
        if (at >= range.from && at < range.to) return false;
        for (let k = 1; k < parts.length; k++) if (words[at + k] !== parts[k]) return false;
        return ['in', 'over', ',', ';', 'around', 'across'].includes(words[at + parts.length] ?? '');
      });
    });
  }

  private index: { words: string[]; places: Map<string, number[]> } | null = null;

  /** Singular words of the text, hyphens left out of account, and where each stands. */
  private wordIndex(): { words: string[]; places: Map<string, number[]> } {
    if (this.index) return this.index;
    const words = this.tokens.map((token) =>
      token.kind === 'word'
        ? singular(token.word)
        : token.kind === 'sign'
          ? token.word
          : token.text.toLowerCase(),
    );
    const places = new Map<string, number[]>();
    for (let i = 0; i < words.length; i++) {
      const list = places.get(words[i]!);
      if (!list) places.set(words[i]!, [i]);
      else if (list.length < 200) list.push(i);
    }
    this.index = { words, places };
    return this.index;
  }

  /** A heading line: "Back", "FRONT:", "## Sleeve", "Sleeve (make 2)". */
  private headingOf(line: Range): Extract<Part, { kind: 'heading' }> | null {
    const words = this.words(line);
    const hashes = /^#+\s*/u.exec(words);
    const count = line.to - line.from;
    if (hashes) {
      const text = words.slice(hashes[0].length).replace(/[:#\s]+$/u, '');
      return text === '' ? null : { kind: 'heading', range: line, text, section: SECTIONS.test(text) };
    }
    if (count > 14) return null;
    const text = words
      .replace(/^[*_]+|[*_]+$/gu, '')
      .replace(/\s*[:–-]\s*$/u, '')
      .replace(/[*_]+$/u, '')
      .trim();
    if (text === '' || /[.,;]$/u.test(text) || !/^\p{Lu}|^\d*\p{Lu}/u.test(text)) return null;
    if (SECTIONS.test(text) && count <= 4) return { kind: 'heading', range: line, text, section: true };
    if (this.labelAt(line)) return null;
    // "With B" says with which yarn the rows below are worked.
    if (/^(?:with|using)\s/iu.test(text)) return null;
    if (readSizes(this.text, this.tokens, line)) return null;
    const c = this.cursor(line);
    const items = readItems(c);
    const works = items.some((item) => WORKING.includes(item.type));
    // "Sleeve (make 2)" says how many; "Make 38 chain" is work.
    const told = /\bmake\b/iu.test(text) && !/^make\b.*ch(?:s|ains?)?\b/iu.test(text);
    const bare = items.length > 0 && isBareName(items) && count <= 3 && /:$/u.test(words);
    if (works && !bare && !told) {
      // "Body", "Shell Top": a stitch word in title case alone is no work.
      const plain = count <= 4 && isBareName(items) && items.some((item) => item.type === 'unread');
      if (!plain) return null;
    }
    if (c.counts.length > 0 && !told) return null;
    if (items.length > 0 && items.every((item) => item.type === 'aside') && count > 4 && !/:$/u.test(words))
      return null;
    return { kind: 'heading', range: line, text, section: SECTIONS.test(text) };
  }

  /** Where the colon is behind the name of a side that work follows on the same line; -1 where none is. */
  private sideColon(line: Range): number {
    let colon = line.from;
    while (colon < line.to && colon < line.from + 6 && this.tokens[colon]!.word !== ':') colon++;
    if (colon === line.from || colon + 1 >= line.to || this.tokens[colon]!.word !== ':') return -1;
    const name = SIDES.exec(this.words(line)) ?? this.pieceBefore(line, colon);
    return name !== null && !this.labelAt(line) ? colon : -1;
  }

  /** "Heel: Row 1: …", "Neckband: With A, ch 7": the name of a part, with its first row behind it. */
  private pieceBefore(line: Range, colon: number): string | null {
    if (colon === line.from) return null;
    const words = this.words({ from: line.from, to: colon }).replace(
      /\s*[([](?:make|work) \p{L}*\d*[)\]]$/iu,
      '',
    );
    if (this.names.has(normaliseName(words))) return null;
    if (!/^\p{Lu}[\p{L} ]*$/u.test(words)) return null;
    if (!PIECES.test(words.split(' ').at(-1)!) && !PURPOSES.test(words)) return null;
    const rest = { from: colon + 1, to: line.to };
    return this.labelAt(rest) || isWork(readItems(this.cursor(rest))) ? words : null;
  }

  /** "Heel opening, Rnd 11: …", "Shape crown - Row 3: …": where the sign is between a heading and a row's label; or -1. */
  private leadSign(line: Range): number {
    // "All sizes except S: Row 8: …" says for whom the row is.
    if (readSizeFilter(this.cursor(line)) !== null) return -1;
    const end = Math.min(line.to - 1, line.from + 7);
    for (let i = line.from; i < end; i++) {
      const token = this.tokens[i]!;
      if (token.kind === 'word') continue;
      // "Rep. 1st row": a word cut short, and no name.
      if (/^rep(?:eat)?$/u.test(this.tokens[line.from]!.word)) return -1;
      const ends = i > line.from && [':', '-', ',', '.', '–'].includes(token.word);
      if (!ends || !this.tokens[i + 1]!.gap || !this.labelAt({ from: i + 1, to: line.to })) return -1;
      // "Brim: Rnd 14: …": a border's own word is no label before another.
      const own = this.labelAt(line) ? readLabel(this.cursor(line)) : null;
      if (own !== null && own.numbers !== null) return -1;
      return this.headingOf({ from: line.from, to: i })?.section === false ? i : -1;
    }
    return -1;
  }

  private line(line: Range, next: Range | null): void {
    if (WORD_LIST.test(this.words(line))) {
      this.aliasesIn(line);
      const defined = this.definitionsIn(line);
      this.parts.push(...defined);
      if (defined.length === 0) this.pass(line);
      this.open = false;
      return;
    }
    if (this.open && RETURNS.test(this.words(line))) {
      this.extend(line);
      return;
    }
    if (FORWARD.test(this.words(line))) {
      const last = this.parts.at(-1);
      if (this.open && last?.kind === 'row' && this.isLabelOnly(last.range)) this.extend(line);
      else this.rows(line, false);
      return;
    }
    const sign = this.leadSign(line);
    if (sign > 0) {
      const rest = { from: sign + 1, to: line.to };
      this.line({ from: line.from, to: sign }, rest);
      this.line(rest, next);
      return;
    }
    const note = this.noteIn(line);
    if (note > line.from) {
      // "Ch 30. Note: for a wider scarf, add 4.": what stands before it is no note.
      this.line({ from: line.from, to: note }, next);
      const rest = { from: note, to: line.to };
      if (!this.conventions(rest)) this.pass(rest);
      return;
    }
    const said = this.saidOfRows(line);
    if (said > line.from) {
      this.pass({ from: line.from, to: said });
      if (said < line.to) this.line({ from: said, to: line.to }, next);
      return;
    }
    const colon = this.sideColon(line);
    if (colon > 0) {
      // "Second side: With RS facing, …": a heading, and work on the same line.
      const rest = { from: colon + 1, to: line.to };
      // A row above that ends without a full stop goes no further than this.
      const previous = this.tokens[line.from - 1]?.word ?? '.';
      if (PURPOSES.test(this.words({ from: line.from, to: colon })) || !GOES_ON.has(previous))
        this.open = false;
      this.line({ from: line.from, to: colon + 1 }, rest);
      this.line(rest, next);
      return;
    }
    if (!this.sizes) {
      const sizes = readSizes(this.text, this.tokens, line);
      if (sizes) {
        this.sizes = sizes;
        this.open = false;
        return;
      }
    }
    const alone = this.cursor(line);
    const filter = readSizeFilter(alone);
    if (filter && alone.done) {
      this.parts.push({ kind: 'filter', filter: filter === 'all' ? null : filter });
      this.open = false;
      return;
    }
    const before = this.tokens[line.from - 1]?.word ?? '.';
    const inside = this.open && /^(?:in|to|the|of|next|from|and|each|top)$/u.test(before);
    const labelled = (!inside || this.numberedAt(line, before)) && this.labelAt(line);
    if (!labelled) {
      const heading = this.headingOf(line);
      const previous = this.tokens[line.from - 1]?.word ?? '.';
      const middle = this.open && GOES_ON.has(previous);
      if (
        heading &&
        !middle &&
        (heading.section ||
          !this.open ||
          next === null ||
          this.words(line).startsWith('#') ||
          /[.)\]]/u.test(previous) ||
          this.labelAt(next))
      ) {
        this.parts.push(heading);
        this.section = heading.section ? heading.text : '';
        this.open = false;
        return;
      }
      if (!middle && (this.aliasesIn(line) || this.explains(line))) {
        this.pass(line);
        return;
      }
      const definitions = this.definitionsIn(line);
      if (definitions.length > 0 && !middle) {
        this.parts.push(...definitions);
        this.open = false;
        return;
      }
      if (!middle && this.conventions(line)) {
        this.open = false;
        return;
      }
      if (
        !middle &&
        MAKING_UP.test(this.words(line)) &&
        !/\b(?:next|each|every)\b/iu.test(this.words(line))
      ) {
        // "Join short ends with sl st. Working round top edge: …": what follows may be a row.
        let end = line.from;
        while (end < line.to && this.tokens[end]!.word !== '.') end++;
        this.pass({ from: line.from, to: Math.min(end + 1, line.to) });
        if (end + 1 < line.to) this.line({ from: end + 1, to: line.to }, next);
        return;
      }
      if (this.open && !this.startsProse(line, previous) && !this.startsAnew(line, previous)) {
        this.extend(line);
        return;
      }
    }
    this.rows(line, labelled);
  }

  /** A line behind a finished row that is a sentence of its own and no work. */
  private startsProse(line: Range, previous: string): boolean {
    if (!['.', ')', ']', '!'].includes(previous)) return false;
    const first = this.tokens[line.from]!;
    if (!/^\p{Lu}/u.test(first.text)) return false;
    const items = readItems(this.cursor(line));
    return !isWork(items) && items.every((item) => item.type === 'aside' || item.type === 'unread');
  }

  /** A line behind a finished sentence that is a row of its own: "Rep last 2 rows …", or a row without label. */
  private startsAnew(line: Range, previous: string): boolean {
    const ended = ['.', ')', ']', '!', 'turn'].includes(previous);
    // "… 38 sts" without a full stop, and "Rep last row …" in a line of its own.
    const capital = /^\p{Lu}/u.test(this.tokens[line.from]!.text);
    if (!ended && (!capital || /^(?:[,;:*(-]|and|then|in|to|the|next|or)$/u.test(previous))) return false;
    if (this.wholeAt(line)) return true;
    if (!ended) return false;
    // "Flatten ear: dc through both layers": nothing of the round above is left for it.
    if (
      /^(?:flatten|fold|pinch|press)$/u.test(this.tokens[line.from]!.word) &&
      isWork(readItems(this.cursor(line)))
    )
      return true;
    const open = this.parts.at(-1);
    if (open?.kind !== 'row' || open.labelled) return false;
    const first = this.tokens[line.from]!;
    // "Ch 4." and then "Join with sl st …" make one ring.
    return !/^(?:join|sl|ss|slip|and|then)$/u.test(first.word);
  }

  /** True where an instruction for whole rows begins: "Rep Rows 2 and 3 …", "Work 8 rows even". */
  private wholeAt(range: Range): boolean {
    const first = this.tokens[range.from]!.word;
    const counted =
      this.tokens[range.from]!.kind === 'number' && ROW.includes(this.tokens[range.from + 1]?.word ?? '');
    if (
      !counted &&
      !WHOLE.has(first) &&
      !FOR_ROWS.test(this.words({ ...range, to: Math.min(range.to, range.from + 14) }))
    )
      return false;
    const c = this.cursor({ from: range.from, to: Math.min(range.to, range.from + 80) });
    // "Cont in dc, dec 1 st at each end …": the stitch first, then what is done with it.
    c.attempt(() =>
      c.eatAny(['cont in', 'work in', 'working in']) && readStitch(c) && c.eat(',') ? true : null,
    );
    const whole = readWhole(c)?.[0];
    if (!whole || !(c.done || c.peek()!.kind === 'sign')) return false;
    return whole.type !== 'shaping' || whole.schedule.length > 0 || whole.until !== null;
  }

  /** Conventions in a line: "Ch 3 counts as first dc throughout. Turning ch does not count as a st." */
  private conventions(line: Range): boolean {
    const found: Part[] = [];
    let from = line.from;
    const first = this.tokens[from]!.word;
    const note = first === 'note' || first === 'notes' || /note/iu.test(this.section);
    if (['•', '-', '*', '·'].includes(first)) from++;
    else if (this.tokens[from]!.kind === 'number' && this.tokens[from + 1]?.word === '.') from += 2;
    for (let i = from; i <= line.to; i++) {
      const stop =
        i === line.to || (this.tokens[i]!.word === '.' && (i + 1 === line.to || this.tokens[i + 1]!.gap));
      if (!stop) continue;
      if (i > from) {
        const c = this.cursor({ from, to: i });
        const said = readSaid(c);
        if (said && !said.skipped && (c.done || note))
          found.push({ kind: 'convention', convention: said.convention });
        else if (!note) return false;
      }
      from = i + 1;
    }
    if (found.length === 0) {
      if (first === 'note' || first === 'notes') {
        this.pass(line);
        return true;
      }
      return false;
    }
    this.parts.push(...found);
    return true;
  }

  private pass(range: Range): void {
    this.parts.push({ kind: 'prose', range });
    this.open = false;
  }

  private extend(line: Range): void {
    for (let i = this.parts.length - 1; i >= 0; i--) {
      const part = this.parts[i]!;
      if (part.kind !== 'row') continue;
      this.parts.pop();
      // Only the new line can hold new labels; its own start is known to be none.
      const starts = [part.range.from, ...this.starts(line).slice(1)];
      this.pushRows({ from: part.range.from, to: line.to }, starts, part.labelled);
      return;
    }
    this.rows(line, false);
  }

  /** Where rows begin inside a range: its start, and each label behind the end of a sentence. */
  private starts(range: Range): number[] {
    const starts = [range.from];
    const some = this.isForSome(range);
    let depth = 0;
    for (let i = range.from + 1; i < range.to; i++) {
      const before = this.tokens[i - 1]!;
      if (before.word === '(' || before.word === '[' || before.word === '{') depth++;
      if (before.word === ')' || before.word === ']' || before.word === '}') depth = Math.max(0, depth - 1);
      if (depth > 0) continue;
      const token = this.tokens[i]!;
      const breaks = ['.', ')', ']', '}', ';', '!'].includes(before.word) || token.line !== before.line;
      if (!breaks || !token.gap) continue;
      if (token.kind !== 'ordinal' && token.kind !== 'word') continue;
      if (
        ['.', ')', ']'].includes(before.word) &&
        /^\p{Lu}/u.test(token.text) &&
        // "Rows 2 to 9. Repeat row 1.": behind its label it is the row itself.
        !this.isLabelOnly({ from: starts.at(-1)!, to: i }) &&
        this.wholeAt({ from: i, to: range.to })
      ) {
        starts.push(i);
        continue;
      }
      if (
        !/^(?:rows?|rnds?|r|next|foundation|base|set|setup|dec|inc|last|first|second|third|fourth|fifth|sixth|edging|border|trim|sizes?|for|all|joining|foll)$/u.test(
          token.word,
        ) &&
        token.kind !== 'ordinal'
      )
        continue;
      const c = this.cursor({ from: i, to: Math.min(i + 60, range.to) });
      const sizes = readSizeFilter(c);
      const label = readLabel(c);
      // "Row 2: Size S only: … All other sizes: …": the same row for others.
      if (sizes && (label || (some && sizes !== 'all'))) {
        starts.push(i);
        continue;
      }
      if (!label) continue;
      const end = this.tokens[i + c.at - 1];
      if (end && [':', '.', '-', ')'].includes(end.word) && i + c.at < range.to) starts.push(i);
    }
    return starts;
  }

  /** Where a note begins behind the words of a row; -1 where none does. */
  private noteIn(line: Range): number {
    let depth = 0;
    for (let i = line.from + 1; i + 1 < line.to; i++) {
      const { word, text } = this.tokens[i]!;
      if (word === '(' || word === '[' || word === '{') depth++;
      if (word === ')' || word === ']' || word === '}') depth = Math.max(0, depth - 1);
      if (depth > 0 || !/^notes?$/iu.test(text) || !/^N/u.test(text)) continue;
      const ended = ['.', ')', ']', '!'].includes(this.tokens[i - 1]!.word);
      if (ended && this.tokens[i + 1]!.word === ':') return i;
    }
    return -1;
  }

  /** Where the sentence "2nd row forms the fabric." ends that begins a line; its start where none does. */
  private saidOfRows(line: Range): number {
    if (!SAID_OF_ROWS.test(this.words(line))) return line.from;
    let end = line.from;
    while (end < line.to && this.tokens[end]!.word !== '.') end++;
    return Math.min(end + 1, line.to);
  }

  /** Is there nothing in a range but the label of a row? */
  private isLabelOnly(range: Range): boolean {
    const c = this.cursor(range);
    readSizeFilter(c);
    if (readLabel(c) === null) return false;
    while (!c.done && ['.', ':', ')', '-'].includes(c.word())) c.at++;
    return c.done;
  }

  /** Does the row say at its beginning that it is for some sizes? */
  private isForSome(range: Range): boolean {
    const c = this.cursor({ from: range.from, to: Math.min(range.from + 60, range.to) });
    const before = readSizeFilter(c);
    const label = readLabel(c);
    const filter = before ?? (label ? readSizeFilter(c) : null);
    return filter !== null && filter !== 'all';
  }

  private rows(line: Range, labelled: boolean): void {
    const starts = this.starts(line);
    if (!labelled) {
      const first: Range = { from: line.from, to: starts[1] ?? line.to };
      const c = this.cursor(first);
      const filter = readSizeFilter(c);
      const items = readItems(c);
      if (!isWork(items) && !(filter && c.done && items.length === 0 && starts.length > 1)) {
        this.pass(first);
        if (starts.length > 1) this.pushRows({ from: starts[1]!, to: line.to }, starts.slice(1), true);
        return;
      }
    }
    this.pushRows(line, starts, labelled);
  }

  private pushRows(range: Range, starts: readonly number[], labelled: boolean): void {
    for (let i = 0; i < starts.length; i++) {
      const from = starts[i]!;
      const to = starts[i + 1] ?? range.to;
      this.parts.push({ kind: 'row', range: { from, to }, labelled: labelled || i > 0, first: false });
    }
    this.open = true;
  }
}
