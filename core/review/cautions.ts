/**
 * The cautions that a pattern calls for: its sizes, garment, notions, yarn, fabric and words, put to the
 * trade's conditions. It decides nothing about safety: every caution sends the seller to the rules of the
 * place.
 */
import type { Pattern, Size } from '../document/pattern.ts';
import type { Study } from '../study/index.ts';
import { type Caution, cautionsFor, type Profile, youngestAge } from '../trade/cautions.ts';
import { type Text, textsOf } from './texts.ts';

/** What a caution asks for in things: something to tie, or a small part. */
export type Thing = 'cord' | 'small-part';

/** A place of the pattern that calls for a cord or a small part. */
export interface Mention {
  readonly node: string;
  readonly text: string;
  readonly from: number;
  readonly to: number;
  readonly thing: Thing;
}

const CALLED: Readonly<Record<Thing, string>> = { cord: 'cord', 'small-part': 'small part' };

/** The words of a mention; what a notion without a name is called by its mark. */
export function wordsOf({ text, from, to, thing }: Mention): string {
  return text.slice(from, to).trim() || CALLED[thing];
}

/** Words that stand for a thing. "Tie" is a verb too, so it needs a word before it that makes it a thing. */
const WORDS: Readonly<Record<Thing, RegExp>> = {
  cord: /\b(?:draw-?strings?|draw-?cords?|i-?cords?|cords?|ribbons?|sash(?:es)?|ties|(?:an?|the|each|neck|chin|waist|bonnet|front|back|side|long|short|crochet(?:ed)?|chain) tie(?! off| in| the| ends| together| it)|(?:mitten|bonnet|neck|hood|apron|bib) strings?)\b/giu,
  'small-part':
    /\b(?:buttons?|beads?|pom-?\s?poms?|(?:safety|plastic|glass|toy|button) eyes?|bells?|sequins?|toggles?|snap fasteners?|press studs?|rattles?)\b/giu,
};

/** "no ties", "without a cord", "instead of buttons": it is named to say that it is not there. */
const DENIED =
  /\b(?:no|not|without|never|instead of|rather than|omit|leave off)\s+(?:(?:an?|the|any)\s+)?$/iu;

function mentionsIn({ node, text, kind }: Text): readonly Mention[] {
  if (kind !== 'prose') return [];
  return (['cord', 'small-part'] as const).flatMap((thing) =>
    [...text.matchAll(WORDS[thing])].flatMap((match) =>
      DENIED.test(text.slice(0, match.index))
        ? []
        : [{ node, text, from: match.index, to: match.index + match[0].length, thing }],
    ),
  );
}

/**
 * Every place that calls for a cord or a small part: notions marked so, and the first word for each in every
 * text. A notion that is marked is not told again for its own name.
 */
export function mentionsOf(pattern: Pattern): readonly Mention[] {
  const marked = pattern.notions.flatMap((notion): Mention[] => {
    const named = notion.name.trim() !== '';
    const at = { node: notion.id, text: notion.name, from: 0, to: named ? notion.name.length : 0 };
    return [
      ...(notion.cord ? [{ ...at, thing: 'cord' as const }] : []),
      ...(notion.smallPart ? [{ ...at, thing: 'small-part' as const }] : []),
    ];
  });
  const all = [...marked, ...textsOf(pattern).flatMap(mentionsIn)];
  const seen = new Set<string>();
  return all.filter(({ node, thing }) => {
    const key = `${node} ${thing}`;
    return !seen.has(key) && seen.add(key);
  });
}

/** Youngest age in years that a size is for; null for adults. */
export function ageOf(size: Size): number | null {
  return youngestAge([size]);
}

/** Yarns that shed. Common practice, no source. */
const FLUFFY = /\b(?:mohair|angora|brushed|eyelash|faux[- ]fur|fur|fluffy|boucl[eé])\b/iu;

/** A space of this many chains or more is a hole that a small finger goes into. Common practice, no source. */
const HOLE = 2;

/** Stitches that take some twenty hours, at a thousand an hour. Common practice, no source. */
const LONG = 20_000;

/** Whether a quarter of what some row makes is chains over holes: mesh or lace, not a corner. */
function isOpenwork({ pieces }: Study): boolean {
  return pieces.some(({ blocks }) =>
    blocks.some(({ sizes }) =>
      sizes.some((size) => {
        if (size === null) return false;
        let chains = 0;
        for (const [each, times] of size.tally.spacesOf) if (each >= HOLE) chains += each * times;
        return chains > 0 && chains * 4 >= size.tally.stitches + size.tally.chains;
      }),
    ),
  );
}

/** Stitches of the largest make of the pattern. */
function mostStitches({ pattern, pieces }: Study): number {
  const totals = pattern.sizes.map((_, size) =>
    pieces.reduce((sum, { piece, blocks }) => {
      const own = blocks.reduce((n, block) => {
        const worked = block.sizes[size];
        return worked ? n + worked.rows * worked.tally.stitches : n;
      }, 0);
      return sum + own * Math.max(1, piece.make);
    }, 0),
  );
  return Math.max(0, ...totals);
}

/** What the conditions of cautions are asked of. */
export function profileOf(study: Study): Profile {
  const { pattern } = study;
  const mentions = mentionsOf(pattern);
  return {
    youngest: youngestAge(pattern.sizes),
    garment: [pattern.about.garment, pattern.about.title].join(' '),
    cord: mentions.some(({ thing }) => thing === 'cord'),
    smallPart: mentions.some(({ thing }) => thing === 'small-part'),
    openwork: isOpenwork(study),
    fluffy: pattern.yarns.some((yarn) => FLUFFY.test(`${yarn.name} ${yarn.fibre}`)),
    long: mostStitches(study) >= LONG,
  };
}

const known = new WeakMap<Study, readonly Caution[]>();

/** The cautions to print, in printing order. The maker's own come after them. */
export function cautionsOf(study: Study): readonly Caution[] {
  const before = known.get(study);
  if (before !== undefined) return before;
  const cautions = cautionsFor(profileOf(study));
  known.set(study, cautions);
  return cautions;
}
