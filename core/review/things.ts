/**
 * What a maker needs besides yarn and hook, by the words that call for it: buttons, markers, a needle. Each thing
 * knows the words that list it and the words that use it. Common practice, no source. It judges nothing.
 */
import type { Span } from '../finding.ts';
import { looking } from './scan.ts';

export interface Thing {
  readonly name: string;
  /** Names it in a list of materials. */
  readonly listed: RegExp;
  /** Asks for it in a text. */
  readonly used: RegExp;
  /** Work that needs it without naming it; a thing that is listed is used then. */
  readonly implied: RegExp | null;
  /** Bought by the piece, so that a number belongs to it. */
  readonly counted: boolean;
}

const thing = (
  name: string,
  listed: RegExp,
  used: RegExp,
  { counted = false, implied = null }: { readonly counted?: boolean; readonly implied?: RegExp | null } = {},
): Thing => ({ name, listed, used, counted, implied });

export const THINGS: readonly Thing[] = [
  thing(
    'buttons',
    /button/iu,
    /(?<!\p{L})buttons?(?![\p{L}]|[- ](?:holes?|bands?|loops?|edge|side|placket))/giu,
    { counted: true, implied: /button/iu },
  ),
  thing('stitch markers', /marker/iu, /(?<!\p{L})(?:stitch |locking )?markers?(?!\p{L})/giu, {
    counted: true,
    implied: /(?<!\p{L})(?:mark\p{L}*|pm)(?!\p{L})/iu,
  }),
  thing('safety eyes', /\beyes?\b/iu, /(?<!\p{L})(?:safety|plastic|toy) eyes?(?!\p{L})/giu, {
    counted: true,
    implied: /\beyes?\b/iu,
  }),
  thing('beads', /bead/iu, /(?<!\p{L})beads?(?!\p{L}| stitch)/giu, { counted: true, implied: /bead/iu }),
  thing('toggles', /toggle/iu, /(?<!\p{L})toggles?(?!\p{L})/giu, { counted: true }),
  thing(
    'snap fasteners',
    /snap|press stud|popper/iu,
    /(?<!\p{L})(?:snap fasteners?|press studs?|poppers)(?!\p{L})/giu,
    { counted: true },
  ),
  thing(
    'stuffing',
    /stuff|fill|wadding/iu,
    /(?<!\p{L})(?:stuffing|(?:toy|polyester|fib(?:re|er)) ?fill(?:ing)?|fib(?:re|er)fill|wadding)(?!\p{L})/giu,
    { implied: /(?<!\p{L})(?:stuff|fill)/iu },
  ),
  thing('a zip', /zip/iu, /(?<!\p{L})zip(?:per|s|pers)?(?!\p{L})/giu),
  thing(
    'elastic',
    /elastic/iu,
    /(?<!\p{L})(?:hat |sewing |round |flat )?elastic(?= (?:band|cord|thread|through|into|around)|[.,;]|$)/giu,
    { implied: /elastic/iu },
  ),
  thing('ribbon', /ribbon/iu, /(?<!\p{L})ribbons?(?!\p{L})/giu),
  thing(
    'a needle',
    /needle/iu,
    /(?<!\p{L})(?:yarn|tapestry|darning|wool|sewing|embroidery|blunt) needles?(?!\p{L})/giu,
    {
      implied:
        /(?<!\p{L})(?:weave|weaving|sew|sewing|seam|whip|mattress|graft|close|gather|embroider|darn|needle|tails?)/iu,
    },
  ),
  thing('sewing thread', /thread/iu, /(?<!\p{L})(?:sewing|embroidery|matching) thread(?!\p{L})/giu, {
    implied: /thread|button|zip|ribbon/iu,
  }),
  thing('a buckle', /buckle/iu, /(?<!\p{L})buckles?(?!\p{L})/giu, { counted: true }),
  thing('pom-pom maker', /pom-?\s?pom/iu, /(?<!\p{L})pom-?\s?pom makers?(?!\p{L})/giu, {
    implied: /pom-?\s?pom/iu,
  }),
];

/** Tools that every maker has to hand and no text names. */
export const AT_HAND = /scissors|snips|tape measure|measuring tape|ruler|pins?\b|hook|row counter/iu;

/** "no buttons", "without a zip": it is named to say that it is not there. */
const DENIED =
  /\b(?:no|not|without|never|instead of|rather than|omit|leave off|optional(?:ly)?)\s+(?:(?:an?|the|any)\s+)?$/iu;

/** Letters before a thing in which it may be denied: no more are looked at, however long the text. */
const NEAR = 80;

export interface Asked extends Span {
  readonly thing: Thing;
}

/** The things that texts ask for, each use of each. */
export const thingsAsked = looking((text): readonly Asked[] =>
  THINGS.flatMap((each) =>
    [...text.matchAll(each.used)].flatMap((match) =>
      DENIED.test(text.slice(Math.max(0, match.index - NEAR), match.index))
        ? []
        : [{ thing: each, from: match.index, to: match.index + match[0].length }],
    ),
  ),
);
