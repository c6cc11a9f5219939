/**
 * The cautions that a pattern calls for: its sizes, garment, notions, yarn, fabric and words, put to the
 * trade's conditions. It decides nothing about safety: every caution sends the seller to the rules of the
 * place.
 */
import type { Pattern, Size } from '../document/pattern.ts';
import type { BlockStudy, Study } from '../study/index.ts';
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

const inText = new WeakMap<Text, readonly Mention[]>();

function mentionsIn(of: Text): readonly Mention[] {
  if (of.kind !== 'prose') return NO_MENTIONS;
  const before = inText.get(of);
  if (before !== undefined) return before;
  const { node, text } = of;
  const made = (['cord', 'small-part'] as const).flatMap((thing) =>
    [...text.matchAll(WORDS[thing])].flatMap((match) =>
      DENIED.test(text.slice(0, match.index))
        ? []
        : [{ node, text, from: match.index, to: match.index + match[0].length, thing }],
    ),
  );
  inText.set(of, made);
  return made;
}

const NO_MENTIONS: readonly Mention[] = [];

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

/** What one block comes to for the conditions of cautions. */
interface Bulk {
  /** Whether a quarter of what it makes in some size is chains over holes: mesh or lace, not a corner. */
  readonly openwork: boolean;
  /** Stitches worked, one number a size. */
  readonly stitches: readonly number[];
}

const bulks = new WeakMap<BlockStudy, Bulk>();

function bulkOf(block: BlockStudy): Bulk {
  const before = bulks.get(block);
  if (before !== undefined) return before;
  const openwork = block.sizes.some((size) => {
    if (size === null) return false;
    let chains = 0;
    for (const [each, times] of size.tally.spacesOf) if (each >= HOLE) chains += each * times;
    return chains > 0 && chains * 4 >= size.tally.stitches + size.tally.chains;
  });
  const stitches = block.sizes.map((size) => (size === null ? 0 : size.rows * size.tally.stitches));
  const made: Bulk = { openwork, stitches };
  bulks.set(block, made);
  return made;
}

function isOpenwork({ pieces }: Study): boolean {
  return pieces.some(({ blocks }) => blocks.some((block) => bulkOf(block).openwork));
}

/** Stitches worked for the whole thing, all its pieces as often as they are made, one number a size. */
export function stitchesBySize(study: Study): readonly number[] {
  const before = totalsOf.get(study);
  if (before !== undefined) return before;
  const { pattern, pieces } = study;
  const totals = new Array<number>(pattern.sizes.length).fill(0);
  for (const { piece, blocks } of pieces) {
    const make = Math.max(1, piece.make);
    for (const block of blocks) {
      const { stitches } = bulkOf(block);
      for (let size = 0; size < stitches.length; size++) totals[size]! += make * stitches[size]!;
    }
  }
  totalsOf.set(study, totals);
  return totals;
}

const totalsOf = new WeakMap<Study, readonly number[]>();

/** What the conditions of cautions are asked of: the whole pattern, or an edition of some of its sizes alone. */
export function profileOf(study: Study, sizes: readonly Size[] = study.pattern.sizes): Profile {
  const { pattern } = study;
  const mentions = mentionsOf(pattern);
  return {
    youngest: youngestAge(sizes),
    garment: [pattern.about.garment, pattern.about.title].join(' '),
    cord: mentions.some(({ thing }) => thing === 'cord'),
    smallPart: mentions.some(({ thing }) => thing === 'small-part'),
    openwork: isOpenwork(study),
    fluffy: pattern.yarns.some((yarn) => FLUFFY.test(`${yarn.name} ${yarn.fibre}`)),
    long: Math.max(0, ...stitchesBySize(study)) >= LONG,
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

/** The cautions to print in an edition of one size alone: a hat for an adult says nothing of babies. */
export function cautionsForSize(study: Study, size: string): readonly Caution[] {
  const own = study.pattern.sizes.find(({ id }) => id === size);
  return own === undefined ? cautionsOf(study) : cautionsFor(profileOf(study, [own]));
}
