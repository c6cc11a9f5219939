/**
 * Cautions that a pattern calls for by its ages, its garment and its notions. Each is data with the rules
 * named; this module only decides which apply. It never says that an item may be used or sold: every text
 * ends by sending the seller to the rules of the place and to an accredited laboratory.
 */
import data from '../../resources/trade/cautions.json' with { type: 'json' };
import type { Certainty } from './terms.ts';

/** A public rule by its name, and how surely it was read. */
export interface Rule {
  readonly name: string;
  readonly certainty: Certainty;
}

/** Conditions; those that are given must all hold. Ages are in years. */
export interface Trigger {
  /** The youngest wearer is at most this old. */
  readonly ageUpTo?: number;
  /** The youngest wearer is younger than this. */
  readonly ageUnder?: number;
  readonly notion?: 'cord' | 'small-part';
  /** One of these words stands in the name of the garment. */
  readonly garments?: readonly string[];
  readonly openwork?: boolean;
  readonly fluffy?: boolean;
  readonly long?: boolean;
}

export interface Caution {
  readonly id: string;
  readonly title: string;
  readonly when: Trigger;
  readonly text: string;
  readonly rules: readonly Rule[];
}

/** What the conditions are asked of. */
export interface Profile {
  /** Age in years of the youngest wearer over all sizes; null when every size is for adults. */
  readonly youngest: number | null;
  /** What is made, in the maker's words: "baby blanket", "Hat". */
  readonly garment: string;
  readonly cord: boolean;
  readonly smallPart: boolean;
  /** The fabric has large holes: mesh, lace. */
  readonly openwork: boolean;
  /** Mohair, brushed or shedding yarn. */
  readonly fluffy: boolean;
  /** A project of many hours. */
  readonly long: boolean;
}

/** Every caution, in the order in which they are printed. */
export const cautions: readonly Caution[] = data.cautions as readonly Caution[];

/** The sentence that every caution ends with. */
export const deferral: string = data.deferral;

/** Ages in years of the audiences whose sizes tell no age; adults have none. */
const AUDIENCE_AGE: Readonly<Record<string, number>> = { baby: 0, child: 2, youth: 12 };

/** Words of sizes of heads, hands and feet, with the age that they begin at. */
const NAMED_AGES: readonly (readonly [RegExp, number])[] = [
  [/\b(?:preemie|premature|newborn|infant|bab(?:y|ies))\b/iu, 0],
  [/\btoddlers?\b/iu, 1],
  [/\b(?:child|children|kids?)\b/iu, 2],
  [/\b(?:teens?|teenagers?|youth)\b/iu, 12],
];

/** The age that a size's name begins at ("3–6 months", "Child 3-14 years", "Newborn"); undefined where it tells none. */
function namedAge(name: string): number | undefined {
  const [, from, unit] =
    /(\d+(?:\.\d+)?)\s*(months?|years?)?\s*(?:[-–]|to)\s*\d+(?:\.\d+)?\s*(?:months?|years?)/iu.exec(name) ??
    [];
  if (from !== undefined) {
    const last = /(months?|years?)\s*$/iu.exec(name)?.[1];
    return Number(from) / (/^month/iu.test(unit ?? last ?? '') ? 12 : 1);
  }
  return NAMED_AGES.find(([words]) => words.test(name))?.[1];
}

/** Charts that measure people of every age. */
const ALL_AGES: ReadonlySet<string> = new Set(['head', 'hand', 'foot', 'other']);

export interface AgedSize {
  readonly audience: string;
  readonly age: readonly [number, number] | null;
  readonly label?: string;
  readonly chart?: string | null;
}

function ageOf({ audience, age, label, chart }: AgedSize): number | undefined {
  if (age !== null) return age[0];
  if (!ALL_AGES.has(audience)) return AUDIENCE_AGE[audience];
  return namedAge(chart ?? '') ?? namedAge(label ?? '');
}

/**
 * The youngest age in a list of sizes: the age given, else what the audience implies (a baby is under one,
 * a child two or more, a youth twelve or more), or what a size of heads, hands or feet is called. Null when no size
 * is for a child.
 */
export function youngestAge(sizes: readonly AgedSize[]): number | null {
  const ages = sizes.map(ageOf).filter((age): age is number => age !== undefined && Number.isFinite(age));
  return ages.length === 0 ? null : ages.reduce((least, age) => Math.min(least, age));
}

/** The words of a name, lower case, with a space at either end: for finding whole words. */
function wordsOf(name: string): string {
  return ` ${name
    .toLowerCase()
    .split(/[^\p{L}\p{N}']+/u)
    .filter((word) => word !== '')
    .join(' ')} `;
}

/** Whether a caution's conditions hold. A condition that is not given asks nothing. */
function holds(when: Trigger, profile: Profile): boolean {
  const { youngest } = profile;
  if (when.ageUpTo !== undefined && (youngest === null || youngest > when.ageUpTo)) return false;
  if (when.ageUnder !== undefined && (youngest === null || youngest >= when.ageUnder)) return false;
  if (when.notion === 'cord' && !profile.cord) return false;
  if (when.notion === 'small-part' && !profile.smallPart) return false;
  if (when.openwork && !profile.openwork) return false;
  if (when.fluffy && !profile.fluffy) return false;
  if (when.long && !profile.long) return false;
  if (!when.garments) return true;
  const name = wordsOf(profile.garment);
  return when.garments.some((word) => name.includes(` ${word} `) || name.includes(` ${word}s `));
}

/**
 * The cautions a pattern calls for, in printing order. Where a caution for babies and the wider one for
 * children both hold, or a blanket's own words already brought its caution, only the nearer one is given.
 */
export function cautionsFor(profile: Profile): readonly Caution[] {
  const found = cautions.filter((caution) => holds(caution.when, profile));
  const has = (id: string) => found.some((caution) => caution.id === id);
  return found.filter(
    ({ id }) =>
      !(id === 'cord-child' && has('cord-baby')) && !(id === 'blanket-unsized' && has('blanket-baby')),
  );
}

/** The whole text of a caution: what to mind, the rules by name, and the deferral. */
export function cautionText(caution: Caution): string {
  const names = caution.rules.map((rule) => rule.name).join('; ');
  return `${caution.text}${names ? ` Rules to look up: ${names}.` : ''} ${deferral}`;
}
