/**
 * Reads what is passed over: "sk 2 sts", "miss next ch-2 sp", "skip the st behind".
 */

import { readBothEnds } from './both-ends.ts';
import type { Cursor } from './cursor.ts';
import { one, readAmount } from './numbers.ts';
import { readBarePlace, readPlace } from './places.ts';
import type { Item, Place, Skip } from './tree.ts';
import { readStitch } from './words.ts';
import { impliedPlace } from './work.ts';

/** "sk 2 sts", "skip next ch-2 sp", "sk last sc", "skip the st behind". */
export function readSkip(c: Cursor): Skip | null {
  return c.attempt(() => {
    const start = c.at;
    if (!c.eat('sk')) {
      if (c.peek()?.text !== 'm' || c.lexicon.terms !== 'uk') return null;
      if (!(c.peek(1)?.kind === 'number' || c.is('next', 1))) return null;
      c.at++;
    }
    const behind = c.attempt(() => {
      c.eatAny(['over']);
      c.eat('the');
      c.eat('next');
      const amount = readAmount(c) ?? one(c);
      if (
        !c.eatAny([
          'sts behind',
          'st behind',
          'sts in back of',
          'st in back of',
          'dc behind',
          'sc behind',
          'tr behind',
          'hdc behind',
          'st directly behind',
        ])
      )
        return null;
      eatBehind(c);
      return amount;
    });
    if (behind) {
      return {
        type: 'skip',
        places: [{ ...impliedPlace(c, behind), implied: false }],
        behind: true,
        counts: null,
        ...c.span(start),
      };
    }
    c.eat('over');
    if (c.is('center #')) c.at++;
    const place = c.attempt(() => {
      const at = c.at;
      const found = readPlace(c);
      if (!found || found.kind === 'evenly' || found.from !== c.tokens[at]!.from) return null;
      return found;
    });
    const ends = place ? atEnds(c, place, start) : null;
    if (ends) return ends;
    if (place) {
      const places: Place[] = [place, ...readMore(c)];
      const behindIt = c.eat('behind');
      if (behindIt) eatBehind(c);
      return { type: 'skip', places, behind: behindIt, counts: null, ...c.span(start) };
    }
    const bare = readBarePlace(c);
    const bareEnds = bare ? atEnds(c, bare, start) : null;
    if (bareEnds) return bareEnds;
    if (bare) {
      const behindIt = c.eat('behind');
      if (behindIt) eatBehind(c);
      const places = behindIt ? [bare] : [bare, ...readMore(c)];
      return { type: 'skip', places, behind: behindIt, counts: null, ...c.span(start) };
    }
    if (!(c.done || c.peek()!.kind === 'sign')) return null;
    return { type: 'skip', places: [impliedPlace(c, one(c))], behind: false, counts: null, ...c.span(start) };
  });
}

/** "missing 1 st at each end": so many in the first places and in the last. */
function atEnds(c: Cursor, place: Place, start: number): Skip | null {
  const ends = place.kind === 'next' ? readBothEnds(c) : null;
  if (place.kind !== 'next' || ends === null) return null;
  const places = ends.map((one) => ('amount' in one ? { ...one, amount: place.amount } : one));
  return { type: 'skip', places, behind: false, counts: null, ...c.span(start) };
}

/** "sc in every st except first and last": what stays out of the way across that stands before it. */
export function readExcept(c: Cursor, before: readonly Item[]): Item[] | null {
  const across = before.at(-1);
  if (across?.type !== 'work' || across.places[0]?.kind !== 'across') return null;
  return c.attempt(() => {
    const start = c.at;
    c.eat(',');
    if (!c.eatAny(['except for', 'except in', 'except', 'excluding', 'but not in', 'but not', 'but']))
      return null;
    const place = readPlace(c) ?? readBarePlace(c);
    if (place?.kind !== 'first') return null;
    const places = [place, ...readMore(c)];
    // "except first and last st in both loops" says how those two are worked.
    if (places.some((one) => one.loop !== null) || !(c.done || c.peek()!.kind === 'sign')) return null;
    return [{ type: 'skip', places, behind: false, counts: null, ...c.span(start) }];
  });
}

/** "and next ch-2 sp", "and 1 tr": skipped as well, unless it is work with a place of its own. */
function readMore(c: Cursor): Place[] {
  const places: Place[] = [];
  for (;;) {
    const more = c.attempt(() => {
      if (!c.eatAny(['and', '&'])) return null;
      if (c.isAny(['ch #']) && !c.isAny(['ch # sp'])) return null;
      const found = readPlace(c) ?? readBarePlace(c);
      return found && found.kind !== 'across' && !c.isAny(['in', 'around', 'over', 'on']) ? found : null;
    });
    if (!more) return places;
    places.push(more);
  }
}

function eatBehind(c: Cursor): void {
  c.attempt(() => {
    c.eatAny(['each', 'the', 'last', 'these', 'this', 'post']);
    c.eatAny(['post']);
    return readStitch(c) || c.eatAny(['sts', 'st', 'it', 'them']) ? true : null;
  });
}
