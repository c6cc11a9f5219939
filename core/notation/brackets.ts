/**
 * Reads everything a bracket can be at the start of an item: a repeat, a group in one place, a count, a
 * remark, what a chain counts as, or plain work.
 */
import { readBracketCount, readCountsAs, readSaid } from './counts.ts';
import { type Cursor, OPENING } from './cursor.ts';
import { DEEPEST } from './marks.ts';
import { readPlaces } from './places.ts';
import { endBefore, readInside, readLast, timesOf, tooDeep } from './repeats.ts';
import { readStop } from './stops.ts';
import { readTimes } from './times.ts';
import type { Item, Place, Times } from './tree.ts';
import { insideGroup } from './work.ts';

/** True when the brackets hold a remark: "(see note)", "(corner made)", "(RS)". */
function isRemark(c: Cursor, close: number, touching: boolean): boolean {
  const first = c.at + 1;
  const words = close - first;
  if (words <= 0) return true;
  const said = c.tokens.slice(first, close).map(({ word }) => word);
  // "(pm in last st made)" is something to do.
  const marks = said[0] === 'mark' || said.some((word) => ['pm', 'marker', 'markers'].includes(word));
  if (!marks && said.some((word) => ['made', 'completed', 'formed'].includes(word))) return true;
  if (
    words === 1 &&
    touching &&
    ['inc', 'dec', 'incs', 'invdec', 'corner', 'rs', 'ws', 'cl', 'shell', 'v', 'picot'].includes(
      c.tokens[first]!.word,
    )
  )
    return true;
  // "(last sc in top of ch)" behind the last stitches: where they lie anyway.
  if (
    touching &&
    ['last', 'final'].includes(c.tokens[first]!.word) &&
    ['in', 'on'].includes(c.tokens[first + 2]?.word ?? '')
  )
    return true;
  // "(dec row)" behind a label says what the row is.
  const rows = ['row', 'rnd', 'rows', 'rnds'].includes(c.tokens[close - 1]!.word);
  if (rows && words <= 3 && c.tokens.slice(first, close).every((token) => token.kind === 'word')) return true;
  // "(centre of shell)" behind a place.
  if (touching && c.isAny(['center of', 'middle of', 'top of', 'base of', 'corner of'], 1) && words < 6)
    return true;
  return ['see', 'rs', 'ws', 'note', 'optional', 'now', 'you', 'this', 'if', 'right', 'wrong'].includes(
    c.tokens[first]!.word,
  );
}

/** Everything a bracket can be at the start of an item. */
export function readBracket(c: Cursor, before: readonly Item[]): Item[] {
  const start = c.at;
  const open = c.tokens[start]!;
  const close = c.partner[start]!;
  if (close < 0 || close >= c.end) {
    c.at++;
    c.fact('bracket-not-closed', open, { sign: open.word });
    return [{ type: 'unread', from: open.from, to: open.to }];
  }
  if (c.depth >= DEEPEST) return tooDeep(c, start, close + 1);
  const closing = c.tokens[close]!;
  if (OPENING[open.word] !== closing.word)
    c.fact('bracket-not-closed', open, { sign: open.word, closed: closing.word });
  const end = pastStray(c, close);
  const previous = c.tokens[start - 1];
  const touching =
    before.length > 0 &&
    previous?.kind !== 'sign' &&
    previous?.word !== 'and' &&
    previous?.word !== 'then' &&
    previous?.word !== 'work' &&
    previous?.word !== 'rep';
  const aside = (): Item[] => {
    c.at = close + 1;
    return [{ type: 'aside', ...c.span(start) }];
  };
  const said = c.attempt(() => {
    c.at++;
    const found = c.within(close, () => {
      const sentence = readSaid(c);
      if (sentence) return sentence.convention.counts;
      return c.isAny([
        'counts',
        'count',
        'counting',
        'counted',
        'does not',
        "doesn't",
        'do not',
        'not',
        'stands',
        'equals',
        'here',
        'now',
        'throughout',
        'this',
        'to stand',
        'standing for',
        'to count',
      ])
        ? readCountsAs(c)
        : null;
    });
    return found;
  });
  if (!said && c.isAny(['counts as', 'count as', 'counting'], 1)) return aside();
  if (said) {
    c.at = close + 1;
    c.said.push(said);
    return [{ type: 'aside', ...c.span(start) }];
  }
  const worksAfter = worksBehind(c, end);
  if (!worksAfter) {
    const count = readBracketCount(c);
    if (count) {
      c.counts.push(count);
      return [];
    }
    if (isRemark(c, close, touching)) return aside();
  }
  const facts = c.facts.length;
  const counted = c.counts.length;
  c.at = start + 1;
  const items = readInside(c, close);
  c.at = end + 1;
  if (!worksAfter) {
    const works = items.filter((item) => item.type !== 'unread' && item.type !== 'aside').length;
    const unread = items.some((item) => item.type === 'unread');
    const last = before.at(-1);
    const explains =
      touching && last?.type === 'work' && last.stitch.form !== 'plain' && last.to === previous!.to;
    if ((unread && works === 0) || items.length === 0 || explains) {
      c.facts.length = facts;
      c.counts.length = counted;
      return aside();
    }
    return items;
  }
  let result: Item[] = items;
  const often = c.attempt(() => {
    eatSeparator(c);
    const rep = c.eatAny(['rep', 'work']) !== null;
    if (rep) eatBracketNamed(c);
    c.eatAny([',', 'this', 'these', 'all', 'alternately', 'by turns', 'in turn']);
    const at = c.at;
    const stop = readStop(c);
    if (stop && !c.isAny(['post', 'next', 'stem'])) {
      return { kind: 'to', stop, ...c.span(at) } as Times;
    }
    const found = readTimes(c, true);
    return found ? timesOf(c, at, found, rep && found.said === 'more') : null;
  });
  if (often) {
    // "[…] 5 times across": the end adds nothing.
    c.attempt(() => (often.kind === 'times' && readStop(c)?.kind === 'end' ? true : null));
    const ending = readLast(c, items);
    result = [
      {
        type: 'repeat',
        items,
        mark: 'bracket',
        times: often,
        last: ending.last,
        from: c.tokens[start]!.from,
        to: endBefore(c, start, ending.tail),
      },
      ...ending.tail,
    ];
  }
  const places = c.attempt(() => {
    c.eat(',');
    c.eatAny(['all', 'each', 'both']);
    c.eat('worked');
    if (
      !c.isAny([
        'in',
        'around',
        'rnd',
        'over',
        'on',
        'evenly',
        'to',
        'at',
        'across',
        'under',
        'between',
        'along',
      ])
    )
      return c.is('next') ? readPlaces(c) : null;
    return readPlaces(c);
  });
  if (!places) return result;
  const group: Item = {
    type: 'group',
    items: insideGroup(result),
    places: onChainMade(before, places),
    ...c.span(start),
  };
  const again = c.attempt(() => {
    const at = c.at;
    const found = readTimes(c);
    return found && found.said !== 'more' ? timesOf(c, at, found, false) : null;
  });
  if (!again) return [group];
  return [{ type: 'repeat', items: [group], mark: 'bracket', times: again, last: null, ...c.span(start) }];
}

/** "(…)) 4 times": one of the two is too many, and what stands behind is said of the bracket. Answers the last of them. */
function pastStray(c: Cursor, close: number): number {
  const stray = c.tokens[close + 1];
  const doubled = close + 1 < c.end && stray?.word === c.tokens[close]!.word && c.partner[close + 1] === -1;
  if (!doubled || !worksBehind(c, close + 1)) return close;
  c.fact('bracket-not-opened', stray, { sign: stray.word });
  return close + 1;
}

/** "Ch 4, (2 dc, ch 2, 3 dc) in first ch": the chain made first lies farthest from the hook. */
function onChainMade(before: readonly Item[], places: readonly Place[]): readonly Place[] {
  const chain = before.findLast((item) => item.type !== 'aside');
  const place = places[0]!;
  if (chain?.type !== 'chain' || places.length > 1) return places;
  if (before.some((item) => !['chain', 'aside', 'colour'].includes(item.type))) return places;
  if (place.kind !== 'first' || place.noun.kind !== 'chain') return places;
  const { loop, post, below, from, to } = place;
  return [{ kind: 'from-hook', nth: chain.amount, counts: chain.counts, loop, post, below, from, to }];
}

/** A comma, or a dash with "repeat" behind it. */
function eatSeparator(c: Cursor): boolean {
  if (c.word() === '-' && !c.isAny(['rep', 'work'], 1)) return false;
  return c.eatAny([',', ';', '-']) !== null;
}

/** "repeat { } to last st", "rep from [ to ] across", "rep between brackets": the bracket, by its signs. */
function eatBracketNamed(c: Cursor): boolean {
  return (
    c.attempt(() => {
      if (c.eatAny(BRACKETS_NAMED)) return true;
      c.eatAny(['from', 'between', 'instructions in', 'section in']);
      if (!(c.word() in OPENING)) return null;
      const close = c.partner[c.at]!;
      const inside = close - c.at - 1;
      if (close < 0 || close >= c.end || inside > 1) return null;
      if (inside === 1 && !['to', 'and', '-', '…', '...'].includes(c.word(1))) return null;
      c.at = close + 1;
      return true;
    }) ?? false
  );
}

const BRACKETS_NAMED = ['between', 'in', 'inside', 'within', 'instructions in', 'what is in'].flatMap(
  (where) =>
    ['brackets', 'the brackets', 'parentheses', 'the parentheses', 'braces'].map(
      (signs) => `${where} ${signs}`,
    ),
);

/** True when a place or a number of times follows the closing bracket. */
function worksBehind(c: Cursor, close: number): boolean {
  const at = c.at;
  const facts = c.facts.length;
  c.at = close + 1;
  let ahead = 0;
  const comma = eatSeparator(c);
  if (comma) {
    c.at--;
    ahead++;
  }
  let found = false;
  if (c.isAny(['in', 'all in', 'both in', 'each in', 'worked in'], ahead) && !comma) found = true;
  else if (c.isAny(['all in'], ahead)) found = true;
  else if (
    !comma &&
    c.isAny(
      [
        'evenly',
        'between',
        'under',
        'around the post',
        'around post',
        'around next',
        'on next',
        'over next',
        'next',
      ],
      ahead,
    )
  )
    found = true;
  else {
    c.at += ahead;
    c.eatAny(['alternately', 'by turns', 'in turn']);
    const rep = c.eatAny(['rep', 'work']);
    const named = rep !== null && eatBracketNamed(c);
    if (named || !c.is('from')) {
      const stop = readStop(c);
      if (stop) found = true;
      else found = readTimes(c, !comma) !== null;
    }
  }
  c.at = at;
  c.facts.length = facts;
  return found;
}

/** "rep (…) 5 times", "rep [..] across": the bracket behind "rep". */
export function readRepBracket(c: Cursor, before: readonly Item[]): Item[] | null {
  return c.attempt(() => {
    if (!c.eatAny(['rep', 'work'])) return null;
    c.eat('the');
    // "Rep [Rows 2 and 3]" works whole rows again.
    if (!(c.word() in OPENING) || c.isAny(['row', 'rows', 'rnd', 'rnds'], 1)) return null;
    return readBracket(c, before);
  });
}
