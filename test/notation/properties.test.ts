/**
 * Laws of the reader: it takes any text, its spans lie in the text and in one another and stand in order,
 * and it costs about as much as the text is long.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Cursor } from '../../core/notation/cursor.ts';
import { readRow, readText } from '../../core/notation/index.ts';
import { corpus } from '../rows/corpus.ts';

const TEXTS = Object.values(corpus).flatMap((cases) => cases.map((one) => one.text));

/** Faults of the spans in a tree: outside the text, outside the parent, or items out of order. */
function faults(tree: unknown, length: number): string[] {
  const found: string[] = [];
  const walk = (node: unknown, from: number, to: number, path: string): void => {
    if (Array.isArray(node)) {
      let last = from;
      for (const [i, part] of node.entries()) {
        walk(part, from, to, `${path}[${i}]`);
        if (path.endsWith('items') && typeof part.from === 'number') {
          if (part.from < last) found.push(`${path}[${i}] begins before ${last}`);
          last = part.to;
        }
      }
      return;
    }
    if (typeof node !== 'object' || node === null) return;
    const span = node as { from?: unknown; to?: unknown; type?: unknown };
    let low = from;
    let high = to;
    if (typeof span.from === 'number' && typeof span.to === 'number') {
      if (span.from < from || span.to > to || span.from > span.to) {
        found.push(`${path} ${span.from}-${span.to} in ${from}-${to}`);
      }
      low = span.from;
      high = span.to;
    }
    for (const [key, value] of Object.entries(node)) {
      // Work done again, and a size line above the row, stand elsewhere by their nature.
      if (key === 'only' || (key === 'items' && span.type === 'again'))
        walk(value, 0, length, `${path}.elsewhere`);
      else if (key === 'facts') walk(value, 0, length, `${path}.${key}`);
      else walk(value, low, high, `${path}.${key}`);
    }
  };
  walk(tree, 0, length, '');
  return found;
}

function hold(text: string, terms: 'us' | 'uk', sizes: number | null): void {
  expect(faults(readRow(text, { terms, sizes }), text.length)).toEqual([]);
  const tree = readText(text, { terms, sizes });
  for (const piece of tree.pieces) expect(faults(piece, text.length)).toEqual([]);
  for (const fact of tree.facts) expect(fact.to).toBeLessThanOrEqual(text.length);
}

/** How often the reader looks at a token while `read` runs: its work, whatever the machine does besides. */
function looks(read: () => void): number {
  const { peek } = Cursor.prototype;
  let count = 0;
  Cursor.prototype.peek = function (ahead) {
    count += 1;
    return peek.call(this, ahead);
  };
  try {
    read();
  } finally {
    Cursor.prototype.peek = peek;
  }
  return count;
}

const TERMS = fc.constantFrom('us' as const, 'uk' as const);
const SIZES = fc.constantFrom(null, 1, 3, 4);
const WORDS = fc.constantFrom(
  ...'* ** † ( ) [ ] { } . ; , - = to and of in next each first last same skip join with turn work sc dc 2tog'.split(
    ' ',
  ),
  ...['rep from *', 'ch 3', 'in next st', 'in each st across', '4 times', 'to last 3 sts', 'Row 1:', 'Rnd 2'],
  ...[
    'shell',
    'of next',
    'top of',
    'turning ch',
    '(24)',
    '24 (26, 28)',
    '\uFFFC',
    'counts as',
    '3rd',
    'from hook',
  ],
  ...[
    'until measures 10 cm',
    'as for Back',
    'dec 1 st',
    'every 4th row',
    '\n',
    '\n\n',
    'Sizes: S (M, L)',
    'only:',
  ],
  ...[
    'Shell: 5 dc in next st',
    'V-st =',
    'Note:',
    'rep around',
    'working in blo',
    'in ring work',
    'sp between',
  ],
);

describe('the reader', () => {
  it('takes any string', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 200 }), TERMS, SIZES, hold), {
      numRuns: 200,
    });
  });

  it('takes the words of the trade in any order', () => {
    const text = fc.array(WORDS, { maxLength: 30 }).map((words) => words.join(' '));
    fc.assert(fc.property(text, TERMS, SIZES, hold), { numRuns: 400 });
  });

  it('takes written rows with a slip of the pen in them', () => {
    const slip = fc
      .tuple(fc.constantFrom(...TEXTS), fc.nat(), fc.nat(20), fc.string({ unit: 'binary', maxLength: 4 }))
      .map(([text, at, cut, typed]) => {
        const place = at % (text.length + 1);
        return text.slice(0, place) + typed + text.slice(place + cut);
      });
    fc.assert(fc.property(slip, TERMS, SIZES, hold), { numRuns: 200 });
  });

  it.each(Object.entries(corpus))('keeps every written row of the corpus in order: %s', (_, cases) => {
    for (const { text } of cases) hold(text, 'us', null);
  });

  it.each([
    '(',
    '* ',
    '(sc, ',
    'rep from * ',
    '12 (',
    '1, ',
    'of next shell ',
    'work ',
    'a: b\n',
    'foo ',
    'next ',
    'and ',
    'sp between ',
    'in ring work ',
    'rep from * end ',
    'rep row 2 then row 2 ',
    '{[(',
    'Back\n',
    'sc in next st\n',
    'Row 1: sc in next st\n',
    'sc, dc all in ',
    'repeat around, sc, ',
    '1 cm / ',
    'total ',
    '*, ** ',
    'in next sp ',
    'in next sp work ',
    'sc in next st and in ',
    'alternate sc and ',
    'sc, dc alternately, ',
    '(sc, dc) alternately ',
    'ending last rep with ',
  ])('reads %j over and over, at a cost that grows with its length', (unit) => {
    const read = (times: number): number => {
      const text = unit.repeat(times);
      return looks(() => {
        const row = readRow(text, { terms: 'us', sizes: 3 });
        expect(row.to).toBeLessThanOrEqual(text.length);
        const { pieces } = readText(text, { terms: 'us' });
        expect(pieces.every((piece) => piece.to <= text.length)).toBe(true);
      });
    };
    // Twice the text, twice the work; a reading that goes over it again and again takes four times as much.
    expect(read(800) / read(400)).toBeLessThan(2.3);
  });
});
