/**
 * Reads what stands before a row's work: "Row 3 (RS):", "4th row.", "Rnds 5-8:", "Next row (dec):", "3.",
 * "Foundation row:", and the sizes a row is for. It tells labels from the same words inside a row.
 */
import { readBracketCount } from './counts.ts';
import { type Cursor, OPENING } from './cursor.ts';
import { bracketValues, LARGEST, numberWord, readAmount, readOrdinal } from './numbers.ts';
import type { Amount, Label, RowNumbers, SizeFilter } from './tree.ts';

const ROWS = ['rows', 'row', 'rnds', 'rnd'];

const TITLES: readonly (readonly [string, Label['kind']])[] = [
  ['foundation', 'foundation'],
  ['base', 'foundation'],
  ['beg', 'foundation'],
  ['start', 'foundation'],
  ['set up', 'set-up'],
  ['setup', 'set-up'],
  ['next', 'next'],
  ['foll', 'next'],
  ['this', 'next'],
];

const KIND_WORDS = [
  'dec',
  'inc',
  'decreasing',
  'increasing',
  'last',
  'final',
  'first',
  'joining',
  'join',
  'edging',
  'border',
  'shaping',
  'shape',
  'even',
  'plain',
  'turning',
  'crown',
  'brim',
  'ribbing',
  'rib',
  'eyelet',
  'shell',
  'mesh',
  'picot',
  'dividing',
  'divide',
  'division',
  'neck',
  'shoulder',
  'armhole',
  'sleeve',
  'body',
  'short',
  'rs',
  'ws',
  'partial',
  'lace',
  'trim',
  'patt',
  'buttonhole',
  'yoke',
  'hem',
  'cuff',
  'color',
  'filet',
  'cluster',
  'cl',
  'all other',
  'all even',
  'all odd',
  'every',
  'each',
  'center',
  'side',
  'left',
  'right',
  'front',
  'back',
  'top',
  'bottom',
  'lower',
  'upper',
  'outer',
  'inner',
  'opposite',
  'edge',
  'transition',
  'gap',
  ...['heel', 'toe', 'sole', 'foot', 'gusset', 'thumb', 'ear', 'flap', 'hood', 'pocket', 'strap', 'collar'],
  ...['neckband', 'button band', 'band', 'panel', 'head', 'arm', 'leg', 'tail', 'wing', 'chart', 'main'],
  ...['handle', 'waist', 'opening', 'bind off', 'cast off', 'binding off'],
];

/** Words by which a row is called again later: "Rep Dec Row". */
const TITLE_WORDS = [
  'dec',
  'inc',
  'decreasing',
  'increasing',
  'shaping',
  'even',
  'plain',
  'eyelet',
  'shell',
  'mesh',
  'picot',
  'neck',
  'armhole',
  'shoulder',
  'sleeve',
  'raglan',
  'rib',
  'ribbing',
  'lace',
  'patt',
  'cluster',
  'puff',
  'bobble',
  'buttonhole',
  'filet',
  'color',
];

function number(c: Cursor): Amount | null {
  const start = c.at;
  const token = c.peek();
  const named = token ? numberWord(token.word) : null;
  if (named !== null) {
    c.at++;
    return { kind: 'one', value: named, ...c.span(start) };
  }
  if (token?.kind === 'figure') {
    c.at++;
    return { kind: 'figure', index: token.value, ...c.span(start) };
  }
  // "Row – (–, 9, 9)": the first sizes have no such row.
  const none = token?.word === '-' && c.sizes !== null ? bracketValues(c, c.at + 1) : null;
  if (none && none.values.length + 1 === c.sizes) {
    c.at = none.next;
    return { kind: 'sizes', values: [null, ...none.values], ...c.span(start) };
  }
  if (token?.kind !== 'number' || !Number.isInteger(token.value)) return null;
  c.at++;
  const more = bracketValues(c, c.at);
  if (more && (more.values.length > 1 || (c.sizes === 2 && more.values[0]! >= token.value))) {
    c.at = more.next;
    if (c.sizes !== null && c.sizes !== more.values.length + 1) {
      c.fact('sizes-differ-in-length', c.span(start), { expected: c.sizes, got: more.values.length + 1 });
    }
    return { kind: 'sizes', values: [token.value, ...more.values], ...c.span(start) };
  }
  return { kind: 'one', value: Math.min(token.value, 1_000_000), ...c.span(start) };
}

/** " / 62 / 72" behind "Row 3 to 50": the last row of every further size, where the label ends behind them. */
function slashed(c: Cursor, first: Extract<Amount, { kind: 'one' }>): Amount | null {
  return c.attempt(() => {
    const values = [first.value];
    while (c.eat('/')) {
      const token = c.peek();
      if (token?.kind !== 'number' || !Number.isInteger(token.value)) return null;
      c.at++;
      values.push(Math.min(token.value, LARGEST));
    }
    const isWhole = values.length > 1 && values.length === c.sizes && labelEnds(c);
    return isWhole ? { kind: 'sizes', values, from: first.from, to: c.tokens[c.at - 1]!.to } : null;
  });
}

interface Range {
  readonly first: number;
  readonly last: number;
}

/** "2-7": a range of whole numbers, or null. */
function readRange(c: Cursor): Range | null {
  const first = c.peek();
  const last = c.peek(2);
  const dash = ['-', 'to', '~'].includes(c.word(1));
  if (first?.kind !== 'number' || !dash || last?.kind !== 'number') return null;
  if (!Number.isInteger(first.value) || !Number.isInteger(last.value)) return null;
  c.at += 3;
  return { first: Math.min(first.value, LARGEST), last: Math.min(last.value, LARGEST) };
}

/** ", 2-7, 2-9" behind "2-5": the same without a bracket, one for each size, none of which only goes on from the last. */
function readRangesListed(c: Cursor, own: Range): readonly Range[] {
  return (
    c.attempt(() => {
      const ranges: Range[] = [];
      let before = own;
      while (c.eatAny([',', ';', '/'])) {
        const range = readRange(c);
        if (range === null || range.first > before.last) return null;
        ranges.push(range);
        before = range;
      }
      return ranges.length + 1 === c.sizes && labelEnds(c) ? ranges : null;
    }) ?? []
  );
}

/** "(2-7, 2-9)" behind "2-5": the range of each further size; empty where the bracket holds anything else. */
function readRanges(c: Cursor): readonly Range[] {
  return (
    c.attempt(() => {
      const close = c.word() in OPENING ? c.partner[c.at]! : -1;
      if (close < 0 || close >= c.end || close - c.at > 160) return null;
      c.at++;
      const ranges: Range[] = [];
      while (c.at < close) {
        const range = readRange(c);
        if (range === null) return null;
        ranges.push(range);
        if (c.at < close && !c.eatAny([',', ';', ':', '/'])) return null;
      }
      c.at = close + 1;
      return ranges;
    }) ?? []
  );
}

/** "4", "4-10", "4, 6 and 8", "6 and all even rows" behind "row". */
function readNumbers(c: Cursor): RowNumbers | null {
  const start = c.at;
  if (c.eatAny(['no', 'number', '♯'])) c.eat('.');
  const first = number(c);
  if (!first) {
    c.at = start;
    return null;
  }
  const last = c.attempt(() => {
    if (!c.eatAny(['-', '~', 'to', 'through', 'thru', '&'])) return null;
    // "R 5 thru R 100": the short word once more.
    if (c.peek()?.text === 'R' && c.peek(1)?.kind === 'number') c.at++;
    const dash = c.tokens[c.at - 1]!;
    c.eatAny(ROWS);
    if (c.word() === 'r' && !c.peek(1)?.gap) c.at++;
    const found = number(c);
    // "Row 5 - 3 dc": a dash with a gap before work is not a range.
    if (!found) return null;
    const each = found.kind === 'one' ? slashed(c, found) : null;
    if (each) return each;
    if (dash.word === '&') return null;
    if (dash.word === '-' && dash.gap && !labelEnds(c)) return null;
    return found;
  });
  if (last) {
    c.attempt(() => (c.eat('inclusive') ? true : null));
    const bracketed = first.kind === 'one' && last.kind === 'one' ? readRanges(c) : [];
    const ranges =
      bracketed.length === 0 && first.kind === 'one' && last.kind === 'one'
        ? readRangesListed(c, { first: first.value, last: last.value })
        : bracketed;
    if (ranges.length > 0 && first.kind === 'one' && last.kind === 'one') {
      const all = [{ first: first.value, last: last.value }, ...ranges];
      const span = c.span(start);
      if (c.sizes !== null && c.sizes !== all.length)
        c.fact('sizes-differ-in-length', span, { expected: c.sizes, got: all.length });
      return {
        kind: 'range',
        first: { kind: 'sizes', values: all.map((range) => range.first), ...span },
        last: { kind: 'sizes', values: all.map((range) => range.last), ...span },
        ...span,
      };
    }
    return { kind: 'range', first, last, ...c.span(start) };
  }
  const onward = c.attempt(() => {
    // "Row 3 onwards", "Rows 2+", "Rows 2 to end"
    if (c.eatAny(ONWARD)) return labelEnds(c) ? 1 : null;
    if (!c.eatAny(['and', '&'])) return null;
    if (
      c.eatAny([
        'all foll even',
        'all even',
        'every even',
        'all odd',
        'every odd',
        'every foll alt',
        'every alt',
        'every other',
        'all alt',
        'all ws',
        'all rs',
        'every ws',
        'every rs',
        'all other',
      ])
    ) {
      c.eatAny(['numbered']);
      c.eat('-');
      c.eatAny(['numbered']);
      return c.eatAny(ROWS) ? 2 : null;
    }
    if (c.eatAny(['every', 'all', 'each'])) {
      c.eatAny(['foll', 'rem', 'other']);
      const nth = readOrdinal(c);
      c.eat('foll');
      if (!c.eatAny(ROWS)) return null;
      c.eatAny([
        'after that',
        'after this',
        'after',
        'thereafter',
        'from here',
        'from now on',
        'from here on',
      ]);
      return nth?.kind === 'one' ? nth.value : 1;
    }
    return null;
  });
  if (onward) return { kind: 'onward', start: first, step: onward, ...c.span(start) };
  const numbers: Amount[] = [first];
  for (;;) {
    const more = c.attempt(() => {
      if (!c.eatAny([', and', ', &', ',', 'and', '&', '/', '+'])) return null;
      c.eatAny(ROWS);
      const found = number(c);
      return found && (labelEnds(c) || c.isAny([',', 'and', '&'])) ? found : null;
    });
    if (!more) break;
    numbers.push(more);
  }
  if (numbers.length > 1) return { kind: 'list', numbers, ...c.span(start) };
  return { ...c.span(start), kind: 'one', number: first };
}

/** Behind a row's number: it and all that come after. */
const ONWARD = [
  'and onwards',
  'and onward',
  'and on',
  'and up',
  'and beyond',
  'and after',
  'and foll',
  'onwards',
  'onward',
  'on',
  'through end',
  'to the end',
  'to end',
  '- end',
  '+',
];

function labelEnds(c: Cursor): boolean {
  return c.done || [':', '.', '(', '-', '[', ')'].includes(c.word());
}

/** "(RS)", "(WS facing)", "[right side]", ", RS": the side, and other remarks or a count in brackets. */
function readSide(c: Cursor): 'RS' | 'WS' | null {
  let side: 'RS' | 'WS' | null = null;
  const sideOf = (): 'RS' | 'WS' | null => {
    if (c.eatAny(['rs', 'right side'])) return 'RS';
    if (c.eatAny(['ws', 'wrong side'])) return 'WS';
    return null;
  };
  for (let n = 0; n < 3; n++) {
    const took = c.attempt(() => {
      if (c.word() in OPENING) {
        const close = c.partner[c.at]!;
        if (close < 0 || close >= c.end || close - c.at > 12) return null;
        const next = c.tokens[close + 1];
        const found = c.attempt(() => {
          c.at++;
          const said = sideOf();
          return said;
        });
        if (found) {
          side ??= found;
          c.at = close + 1;
          return true;
        }
        const ends = close + 1 >= c.end || [':', '.', '-', '('].includes(next?.word ?? '');
        if (!ends) return null;
        const sizes = c.attempt(() => {
          c.at++;
          const found = c.within(close, () => readSizeFilter(c));
          return found && found !== 'all' ? found : null;
        });
        if (sizes) {
          c.only = sizes;
          c.at = close + 1;
          return true;
        }
        const count = readBracketCount(c);
        if (count) {
          c.counts.push(count);
          return true;
        }
        c.at = close + 1;
        return true;
      }
      const comma = c.eatAny([',', '-', ':']);
      const said = sideOf();
      if (!said || (!comma && !labelEnds(c))) return null;
      if (comma && !labelEnds(c) && !c.eat('facing')) return null;
      c.eat('facing');
      side ??= said;
      return true;
    });
    if (!took) break;
  }
  return side;
}

/** Labels of "all sizes except S and M:", "every size but XL,", with the sign behind them; null when nothing is left out. */
function readLeftOut(c: Cursor): readonly string[] | null {
  return c.attempt(() => {
    if (!c.eatAny(['all sizes', 'all the sizes', 'every size'])) return null;
    if (!c.eatAny(['except for', 'except', 'excepting', 'excluding', 'apart from', 'other than', 'but']))
      return null;
    c.eatAny(['the', 'for']);
    c.eatAny(['sizes', 'size']);
    const known = c.labels.map((label) => label.toLowerCase());
    const labels: string[] = [];
    while (!c.done) {
      const from = c.at;
      let label = '';
      while (!c.done && !ENDS_LABEL.has(c.word())) {
        label += `${label !== '' && c.peek()!.gap ? ' ' : ''}${c.peek()!.text}`;
        c.at++;
      }
      const isOne =
        known.length > 0 ? known.includes(label.toLowerCase()) : /^\S{1,6}(?: \S{1,8})?$/u.test(label);
      if (!isOne) {
        // "All sizes except S, ch 1": what follows the comma is the row.
        if (labels.length === 0) return null;
        c.at = from;
        break;
      }
      labels.push(label);
      if (c.eatAny([', and', ',', 'and', '&', '/'])) continue;
      c.eatAny(['only']);
      c.eatAny([':', '-', '.']);
      break;
    }
    return labels.length === 0 ? null : labels;
  });
}

const ENDS_LABEL: ReadonlySet<string> = new Set([',', ':', '.', ';', '/', 'and', '&', 'only', ')', ']']);

/** "Sizes M (L) only:", "S/M only", "All sizes:", "All other sizes:", "For size L only:". */
export function readSizeFilter(c: Cursor): SizeFilter | null | 'all' {
  return c.attempt(() => {
    const start = c.at;
    c.eat('for');
    if (c.eatAny(['all other sizes', 'other sizes', 'rem sizes', 'all rem sizes'])) {
      c.eatAny(['only', ':', '-', '.', ',']);
      return { labels: [], except: true, ...c.span(start) };
    }
    const left = readLeftOut(c);
    if (left !== null) return { labels: left, except: true, ...c.span(start) };
    if (c.eatAny(['all sizes'])) {
      c.eatAny([':', '-', '.', ',']);
      return 'all';
    }
    const nths = c.attempt(() => {
      // "2nd and 3rd sizes only": by their place in the list.
      const found: string[] = [];
      for (;;) {
        const token = c.peek();
        if (token?.kind !== 'ordinal' && !['first', 'second', 'third', 'last'].includes(token?.word ?? ''))
          break;
        found.push(token!.text);
        c.at++;
        if (!c.eatAny([', and', ',', 'and', '&'])) break;
      }
      return found.length > 0 && c.eatAny(['sizes only', 'size only']) ? found : null;
    });
    if (nths) {
      c.eatAny([':', '-', '.', ',']);
      return { labels: nths, except: false, ...c.span(start) };
    }
    let said = c.eatAny(['sizes', 'size']) !== null;
    const labels: string[] = [];
    let part = '';
    let words = 0;
    const flush = (): void => {
      if (part !== '') labels.push(part);
      part = '';
    };
    let ended = false;
    while (!c.done && words < 60) {
      const token = c.peek()!;
      if (token.word === 'only') {
        c.at++;
        ended = true;
        break;
      }
      if (token.word === ':' && said) {
        ended = true;
        break;
      }
      if (
        [',', '(', ')', '[', ']', '{', '}', '/', ';'].includes(token.word) ||
        token.word === 'and' ||
        token.word === '&'
      )
        flush();
      else if (token.kind === 'sign' && token.word !== '-' && token.word !== '+') return null;
      else if (['sizes', 'size'].includes(token.word) && c.word(1) === 'only' && part !== '') {
        flush();
        said = true;
      } else {
        const glue = part !== '' && token.gap ? ' ' : '';
        part = part + glue + token.text;
      }
      c.at++;
      words++;
    }
    flush();
    c.eatAny(['sizes', 'size']);
    c.eatAny([':', '-', '.', ',']);
    if (!ended || labels.length === 0) return null;
    const known = c.labels.map((label) => label.toLowerCase());
    if (!said && labels.every((label) => known.includes(label.toLowerCase())))
      return { labels, except: false, ...c.span(start) };
    if (!said && !labels.every((label) => /^(?:\d*-?X{0,6}[SML]|XS|one|\d+X?|[SML]\/[SML])$/iu.test(label)))
      return null;
    return { labels, except: false, ...c.span(start) };
  });
}

/** Takes bold marks and bullets before a label. */
function eatDecoration(c: Cursor): void {
  while (c.peek() && ['•', '·', '-', '>', '_', '◦', '▪'].includes(c.word())) c.at++;
}

/** "dec" of "Dec Row" or "decrease row", "neck dec" of "Neck Dec Row", at the position; null when there is none. */
export function readTitle(c: Cursor): { title: string; round: boolean } | null {
  return c.attempt(() => {
    const start = c.at;
    while (c.at - start < 4 && c.isAny(TITLE_WORDS)) c.eatAny(TITLE_WORDS);
    if (c.at === start || c.at - start > 4) return null;
    const title = c.tokens
      .slice(start, c.at)
      .map((token) => token.word.replace(/^(inc|dec)reasing$/u, '$1'))
      .join(' ');
    const word = c.eatAny(ROWS);
    return word ? { title, round: word.startsWith('rnd') } : null;
  });
}

/** What the label between `start` and the position calls its row. */
function titleOf(c: Cursor, start: number): string | null {
  const end = c.at;
  for (let at = start; at < end; at++) {
    if (!TITLE_WORDS.includes(c.tokens[at]!.word)) continue;
    c.at = at;
    const found = readTitle(c);
    c.at = end;
    if (found) return found.title;
  }
  return null;
}

const WORKS = ['ch', 'sk', 'turn', 'join', 'rep', 'with', 'work', 'fasten', 'inc', 'dec', 'in', 'rs', 'ws'];

/** A label at the position, or null. */
export function readLabel(c: Cursor): Label | null {
  return c.attempt(() => {
    eatDecoration(c);
    const bold =
      c.word() === '**' && c.isAny(['row', 'rnd', 'rows', 'rnds', 'next', 'r', 'foundation', 'set'], 1);
    if (bold) c.at++;
    const start = c.at;
    const read = readNumbered(c) ?? readOrdinalLabel(c) ?? readTitled(c) ?? readShort(c) ?? readList(c);
    if (!read) return null;
    const side = readSide(c);
    // "Row 14 - Inc row:"
    c.attempt(() => {
      if (!c.eatAny(['-', ':', ','])) return null;
      let words = 0;
      while (words < 3 && c.eatAny(KIND_WORDS)) words++;
      return words > 0 && c.eatAny(ROWS) && c.word() === ':' ? true : null;
    });
    eatName(c);
    const span = c.span(start);
    const colonAt = c.at;
    if (bold) c.eat('**');
    c.eatAny([':', '.', '-', ')', ',', '=', '–']);
    if (bold) c.eat('**');
    // "Row 1:-" and "Row 1. -"
    c.eatAny(['-', ':']);
    if (c.at === colonAt && read.needsEnd && !side) return null;
    const title = titleOf(c, start);
    return {
      kind: read.kind,
      numbers: read.numbers,
      ...(read.rows ? { rows: read.rows } : {}),
      ...(title ? { title } : {}),
      ...(read.part ? { part: true as const } : {}),
      ...(read.short ? { short: true as const } : {}),
      side: side ?? read.side,
      ...span,
    };
  });
}

/** "Rnd 2 - thumb opening:": what the row is called, up to a colon, in words of which none works anything. */
function eatName(c: Cursor): void {
  c.attempt(() => {
    if (!c.eatAny(['-', '–', ','])) return null;
    let words = 0;
    for (; c.peek()?.kind === 'word' && words < 5; words++) {
      if (c.lexicon.bases.has(c.word()) || c.isAny(WORKS)) return null;
      c.at++;
    }
    return words > 0 && c.word() === ':' ? true : null;
  });
}

interface Head {
  readonly kind: Label['kind'];
  readonly numbers: RowNumbers | null;
  readonly rows?: Amount | null;
  readonly part?: boolean;
  readonly short?: boolean;
  readonly side: 'RS' | 'WS' | null;
  /** True when only a colon or stop behind it makes it a label. */
  readonly needsEnd: boolean;
}

/** "Row 4", "ROWS 5-12", "Rnd 3", "Edging rnd 2". */
function readNumbered(c: Cursor): Head | null {
  return c.attempt(() => {
    const word = c.eatAny(ROWS);
    if (!word) return null;
    c.eat('.');
    const numbers = readNumbers(c);
    if (!numbers) return null;
    if (c.isAny(['again', 'once', 'twice', 'times', 'only', 'of'])) return null;
    c.attempt(() => (c.eatAny(['and all even rows', 'and all odd rows']) ? true : null));
    return { kind: word.startsWith('rnd') ? 'round' : 'row', numbers, side: null, needsEnd: false };
  });
}

/** "4th row", "5th and 7th rows", "First round". */
function readOrdinalLabel(c: Cursor): Head | null {
  return c.attempt(() => {
    const numbers: Amount[] = [];
    const start = c.at;
    let range = false;
    for (;;) {
      const nth = readOrdinal(c);
      if (!nth) break;
      numbers.push(nth);
      if (c.eatAny(['to', '-', 'through'])) range = true;
      else if (!c.eatAny([', and', ',', 'and', '&'])) break;
    }
    if (numbers.length === 0) return null;
    const span = c.span(start);
    const word = c.eatAny(ROWS);
    if (!word) return null;
    const kind = word.startsWith('rnd') ? 'round' : 'row';
    const [first, last] = numbers;
    const read: RowNumbers =
      numbers.length === 1
        ? { kind: 'one', number: first!, ...span }
        : range && numbers.length === 2
          ? { kind: 'range', first: first!, last: last!, ...span }
          : { kind: 'list', numbers, ...span };
    return { kind, numbers: read, side: null, needsEnd: false };
  });
}

/** "Next row (dec)", "Foundation row", "Set-up rnd 1", "Dec rnd", "Foundation ch". */
function readTitled(c: Cursor): Head | null {
  return c.attempt(() => {
    let kind: Label['kind'] | null = null;
    for (const [phrase, title] of TITLES) {
      if (c.eat(phrase)) {
        kind = title;
        break;
      }
    }
    let words = 0;
    while (words < 3 && c.isAny(KIND_WORDS)) {
      c.eatAny(KIND_WORDS);
      words++;
    }
    if (kind === null && words === 0) return null;
    const rows = c.attempt(() => {
      const found = readAmount(c);
      return found && c.isAny(ROWS) ? found : null;
    });
    const word = c.eatAny(ROWS);
    if (!word) {
      if (kind === 'foundation') c.eatAny(['ch', 'ring', 'chs']);
      const edge = ['edge', 'edging', 'border', 'trim', 'hem', 'cuff', 'brim', 'ribbing', 'off'].includes(
        c.tokens[c.at - 1]!.word,
      );
      // "beg ch-3" and "base of ch" are no labels: without "row", only a colon makes one.
      if (c.word() !== ':') return null;
      // "Beg shell:" is the name of a stitch that begins rows.
      const named = c.tokens.slice(0, c.at).some((token) => token.word === 'beg') && words > 0;
      if (kind === 'foundation' && named && !/^(?:beg|ch|chs|ring)$/u.test(c.tokens[c.at - 1]!.word))
        return null;
      if (kind === 'foundation' || kind === 'set-up')
        return { kind, numbers: null, side: null, needsEnd: true };
      return edge && kind === null ? { kind: 'next', numbers: null, side: null, needsEnd: true } : null;
    }
    const round = word.startsWith('rnd');
    const numbers = readNumbers(c);
    if (kind === 'foundation' && c.tokens[c.at - 1]?.word === 'beg') return null;
    const part = words > 0 && numbers !== null;
    return { kind: kind ?? (round ? 'round' : 'row'), numbers, rows, part, side: null, needsEnd: true };
  });
}

/** "R5:", "R5-8:", "Rd 3". */
function readShort(c: Cursor): Head | null {
  return c.attempt(() => {
    const token = c.peek();
    if (token?.text !== 'R' && token?.text !== 'r') return null;
    if (c.peek(1)?.kind !== 'number') return null;
    c.at++;
    const numbers = readNumbers(c);
    // "R1 6 sc in MR": a capital R with its number needs no colon.
    return numbers ? { kind: 'row', numbers, short: true, side: null, needsEnd: token.text !== 'R' } : null;
  });
}

/** "3." or "3)" in a numbered list. */
function readList(c: Cursor): Head | null {
  return c.attempt(() => {
    const start = c.at;
    const token = c.peek();
    if (token?.kind !== 'number' || !Number.isInteger(token.value)) return null;
    c.at++;
    const amount: Amount = { kind: 'one', value: token.value, ...c.span(start) };
    const last = c.attempt<Amount>(() => {
      // "5-7.", "5.-7.", "5-6)": a range.
      c.eat('.');
      if (!c.eatAny(['-', '~', 'to'])) return null;
      const at = c.at;
      const to = c.peek();
      if (to?.kind !== 'number' || to.value <= token.value || to.gap) return null;
      c.at++;
      return { kind: 'one', value: to.value, ...c.span(at) };
    });
    if (!['.', ')', ':'].includes(c.word()) || c.peek()!.gap) return null;
    if (!c.peek(1)) return null;
    if (last) {
      const range: RowNumbers = { kind: 'range', first: amount, last, ...c.span(start) };
      return { kind: 'numbered', numbers: range, side: null, needsEnd: true };
    }
    return {
      kind: 'numbered',
      numbers: { kind: 'one', number: amount, ...c.span(start) },
      side: null,
      needsEnd: true,
    };
  });
}
