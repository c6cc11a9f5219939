/**
 * Tells a count that the author states ("– 24 sts", "Total 48 dc") from work that looks like it. The parts of
 * a count are read in `counts`.
 */
import { readBracketCount, readCountParts } from './counts.ts';
import { type Cursor, OPENING } from './cursor.ts';
import { bracketValues, readAmount } from './numbers.ts';
import type { Item, StatedCount } from './tree.ts';

const COUNT_WORDS = [
  'total',
  'you will',
  'you should',
  'you now',
  'you have',
  'now you have',
  'there are',
  'there should',
  'there will',
  'st count',
  'for a total',
  'a total of',
  'total of',
  'giving',
  'to give',
  'gives',
  'leaves',
  'sts :',
  'sts =',
  'count #',
];

/** "**19 sts**", "*(24 sc)*": a count that a house prints in bold or slanted letters, which reach us as stars. */
export function readStarredCount(c: Cursor, before: readonly Item[]): boolean {
  if (before.length === 0 || c.depth > 0) return false;
  return (
    c.attempt(() => {
      const star = c.word();
      if (star !== '*' && star !== '**') return null;
      c.at++;
      const bracket = readBracketCount(c);
      const count = bracket ?? readCountParts(c);
      c.eatAny(['.']);
      if (!count || (bracket === null && isWorkable(count)) || c.word() !== star) return null;
      c.at++;
      if (!countMayEnd(c)) return null;
      c.counts.push(count);
      return true;
    }) === true
  );
}

/** "– 24 sts", "= 24", ". 24 (26, 28) sc" at the end of the row: a count behind a separator. */
export function readCountBehind(c: Cursor, items: readonly Item[]): boolean {
  if (items.length === 0 && c.counts.length === 0) return false;
  // "(1 sc - 1 inc) x 6": inside a repeat a dash parts stitches.
  if (c.depth > 0 && ['-', ';'].includes(c.word())) return false;
  return (
    c.attempt(() => {
      const sign = c.word();
      const dashed = c.attempt(() => {
        // "-12-" at the end.
        const start = c.at;
        c.at++;
        const amount = sign === '-' && c.peek() && !c.peek()!.gap ? readAmount(c) : null;
        if (!amount || c.word() !== '-') return null;
        c.at++;
        if (!countMayEnd(c)) return null;
        const span = c.span(start);
        return { parts: [{ amount, noun: null, ...amount }], turningChain: null, ...span } as StatedCount;
      });
      if (dashed) {
        c.counts.push(dashed);
        return true;
      }
      // A hyphen without a space parts no sentence; a long dash does: "across—24 sc".
      const dash = c.peek()!;
      const long = dash.text === '—' || (dash.text === '–' && c.tokens[c.at - 1]?.kind === 'word');
      const glued = sign === '-' && !dash.gap && !long;
      if (sign === '-' && bracketValues(c, c.at + 1)) {
        const count = readCountParts(c);
        if (!count || !countMayEnd(c)) return null;
        c.counts.push(count);
        return true;
      }
      c.at++;
      if (glued && c.peek() && !c.peek()!.gap) return null;
      const doubled = sign === '/' && c.word() === '/';
      while (['-', '=', ':', '.', ',', '>', '/', '_'].includes(c.word()) && !c.done) c.at++;
      const number = c.peek();
      const intro = c.isAny(COUNT_WORDS);
      if (
        !intro &&
        number?.kind !== 'number' &&
        number?.kind !== 'figure' &&
        !(number && number.word in OPENING)
      )
        return null;
      if (number && number.word in OPENING) {
        // "{8, 9, 10} sc": one number for each size, and no count in brackets.
        const all = c.sizes !== null && c.sizes > 1 ? bracketValues(c, c.at) : null;
        if (all?.values.length !== c.sizes || all.next >= c.end) return null;
      }
      const start = c.at;
      const count = readCountParts(c);
      if (!count) return null;
      // Trailing words such as "at end" are taken; only separators, asides or a turn may follow.
      const summed = /\b(?:total|in all|altogether)$/iu.test(
        c.words({ from: c.tokens[start]!.from, to: c.tokens[c.at - 1]!.to }),
      );
      const firm =
        intro ||
        summed ||
        doubled ||
        sign === '~' ||
        sign === '♯' ||
        sign === '_' ||
        (sign === '/' && countMayEnd(c) && !isWorkable(count)) ||
        sign === '=' ||
        sign === '<' ||
        sign === '…' ||
        sign === '...' ||
        sign === '..' ||
        sign === '→' ||
        sign === '>' ||
        sign === '|' ||
        (sign === '-' && !glued) ||
        count.parts.every(
          (part) => part.noun?.kind === 'stitch' && part.amount.from === count.parts[0]!.amount.from,
        );
      if (!countMayEnd(c) && !(summed && c.isAny([', ch', '; ch', '. ch', ', sl st to join', ', join'])))
        return null;
      if (!firm) {
        // ". 24 sc" is a count only where nothing but the end follows and something stood before it.
        if (sign !== '.' && sign !== ';' && sign !== ':') return null;
        if (count.parts[0]!.noun?.kind === 'chain') return null;
        // "Ch 1, turn. 5 sc, 5 hdc, 5 dc.": nothing else is worked, so this is.
        if (sign === '.' && items.every(({ type }) => PREPARES.includes(type)) && isOfStitches(count))
          return null;
        const bare = count.parts.some((part) => part.noun === null);
        if (bare && count.parts.length > 1) return null;
      }
      if (c.at === start) return null;
      c.counts.push(count);
      return true;
    }) === true
  );
}

const PREPARES: readonly Item['type'][] = ['chain', 'turn', 'aside', 'colour', 'loops', 'marker'];

/** "12 dc" may be work as well as a count; "12" and "12 sts" may not. */
const isWorkable = ({ parts }: StatedCount): boolean =>
  parts.some(({ noun }) => noun !== null && noun.kind !== 'stitch');

const isOfStitches = ({ parts }: StatedCount): boolean => parts.every(({ noun }) => noun?.kind === 'named');

function countMayEnd(c: Cursor): boolean {
  let ahead = 0;
  while (c.peek(ahead) && [',', ';', '.', ')', ']', '>', '|', '~', '_'].includes(c.word(ahead))) ahead++;
  // A sentence of its own behind the count.
  if (ahead > 0 && c.word(ahead - 1) === '.' && /^\p{Lu}\p{Ll}/u.test(c.peek(ahead)?.text ?? '')) return true;
  return (
    !c.peek(ahead) ||
    c.isAny(
      [
        'turn',
        'fasten',
        'do not',
        'join',
        'finish',
        'cut',
        'break',
        'weave',
        '(',
        'place',
        'now',
        'change',
        'rep',
      ],
      ahead,
    )
  );
}

/** "Total 48 dc", "24 sts", "24 sts at end": a count with no separator or bracket to show it. */
export function readOpenCount(c: Cursor, before: readonly Item[]): Item[] | null {
  const token = c.peek()!;
  const intro = c.isAny(COUNT_WORDS);
  if (
    before.length > 0 &&
    token.kind === 'number' &&
    Number.isInteger(token.value) &&
    c.at + 1 === c.end &&
    /\t/u.test(c.text.slice(c.tokens[c.at - 1]?.to ?? 0, token.from))
  ) {
    // A count in a column of its own.
    const amount = readAmount(c)!;
    c.counts.push({
      parts: [{ amount, noun: null, from: amount.from, to: amount.to }],
      turningChain: null,
      from: amount.from,
      to: amount.to,
    });
    return [];
  }
  const changed = readChange(c, before);
  if (changed) return changed;
  if (!intro && token.kind !== 'number' && token.kind !== 'figure') return null;
  if (!intro && before.length === 0) return null;
  if (['work', 'make', 'add'].includes(c.tokens[c.at - 1]?.word ?? '')) return null;
  return c.attempt(() => {
    const count = readCountParts(c);
    if (!count) return null;
    const only = count.parts[0]!;
    if (!intro && only.noun?.kind !== 'stitch') {
      const last = c.words({ from: only.from, to: c.tokens[c.at - 1]!.to });
      if (!/\b(?:at end|in total|in all|total|altogether)\b/iu.test(last)) return null;
    }
    if (!countMayEnd(c) || c.isAny(['rep'])) return null;
    c.counts.push(count);
    return [];
  });
}

/** "… turn. Inc 2; 28 sc.": behind the turn or the join, by how much the count has changed, and the count. */
function readChange(c: Cursor, before: readonly Item[]): Item[] | null {
  if (!c.isAny(['inc', 'dec', 'incs', 'decs'])) return null;
  const last = before.findLast((item) => item.type !== 'aside');
  if (last?.type !== 'turn' && last?.type !== 'join') return null;
  return c.attempt(() => {
    c.at++;
    if (!readAmount(c)) return null;
    c.eatAny(['sts', 'st']);
    if (c.done) return [];
    if (!c.eatAny([';', ',', ':', '-', '='])) return null;
    const count = readCountParts(c);
    if (!count || !countMayEnd(c)) return null;
    c.counts.push(count);
    return [];
  });
}

/** Does a bracket with a count stand here? Reads nothing. */
export function readBracketCountAhead(c: Cursor): boolean {
  const at = c.at;
  const facts = c.facts.length;
  const said = c.said.length;
  const found = readBracketCount(c) !== null;
  c.at = at;
  c.facts.length = facts;
  c.said.length = said;
  return found;
}
