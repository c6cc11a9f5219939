/**
 * The names of stitches and words of the trade in US and in UK terms, looked up by an identity that does
 * not change with the market. It names things; it reads no text and converts none (see notation/translate).
 */
import data from '../../resources/trade/terms.json' with { type: 'json' };
import { type BaseStitch, LADDER, type Terms } from './stitches.ts';

/** How far a datum may be trusted; see the `certainty` table of the data files. */
export type Certainty =
  | 'published'
  | 'published-secondary'
  | 'memory'
  | 'memory-low'
  | 'common-practice'
  | 'derived'
  | 'gap';

/** What one market calls a stitch. `alt` mixes further names and abbreviations met in that market. */
export interface Names {
  readonly name: string;
  readonly abbr: string;
  readonly alt?: readonly string[];
}

/** A stitch, or a way of working one, with its names in both markets. */
export interface TermEntry {
  readonly id: string;
  readonly us: Names;
  readonly uk: Names;
  /** How it is made, in plain words; null where the name says it. */
  readonly meaning: string | null;
  readonly certainty: Certainty;
  /** Titles of the sources; empty when there is no named one. */
  readonly source: readonly string[];
}

/** Two forms that stand for each other, one for one. */
export interface WordPair {
  readonly us: string;
  readonly uk: string;
}

/** A word that differs between markets without being a stitch. */
export interface WordEntry {
  readonly id: string;
  /** `system`: words that say which terms a text is written in. */
  readonly kind: 'instruction' | 'word' | 'spelling' | 'weight' | 'system';
  readonly pairs: readonly WordPair[];
  /** Further forms of a market: [met, the form of `pairs` it stands for]. */
  readonly alsoUs?: readonly (readonly [string, string])[];
  readonly alsoUk?: readonly (readonly [string, string])[];
  readonly certainty: Certainty;
  readonly source: readonly string[];
}

/** Letters that mean another stitch in the other market; a meaning may be a remark where no id fits. */
export interface Collision {
  readonly abbr: string;
  readonly us: string;
  readonly uk: string;
  readonly certainty: Certainty;
}

interface TermData {
  readonly collisions: readonly Collision[];
  readonly usOnly: readonly string[];
  readonly ukOnly: readonly string[];
  readonly stitches: readonly TermEntry[];
  readonly modifiers: readonly Omit<TermEntry, 'meaning'>[];
  readonly words: readonly WordEntry[];
}

const table = data as unknown as TermData;

/** Every stitch of the table, the ladder first, in the order of the published charts. */
export const stitchTerms: readonly TermEntry[] = table.stitches;

/** Loops, spaces and rings: the same in both markets but listed so that they can be explained. */
export const modifierTerms: readonly TermEntry[] = table.modifiers.map((entry) => ({
  ...entry,
  meaning: null,
}));

/** Words, spellings and yarn weights that differ between the markets. */
export const wordTerms: readonly WordEntry[] = table.words;

/** Letters that both markets use for different stitches. */
export const collisions: readonly Collision[] = table.collisions;

/** Words that only one market uses: the evidence that a text is in its terms. */
export const onlyIn: Readonly<Record<Terms, readonly string[]>> = { us: table.usOnly, uk: table.ukOnly };

const byId: ReadonlyMap<string, TermEntry> = new Map(
  [...stitchTerms, ...modifierTerms].map((entry) => [entry.id, entry]),
);

/** The table's entry for an id ("t3", "fp.t3", "blo"); null when the table has none. */
export function termEntry(id: string): TermEntry | null {
  return byId.get(id) ?? null;
}

interface Composition {
  readonly name: (base: string) => string;
  readonly abbr: (base: string) => string;
}

/** How a compound is named from its base where the table has no line for it (common practice). */
function composition(prefix: string): Composition | null {
  const together = /^tog(\d+)$/.exec(prefix);
  if (together) {
    const n = together[1];
    return { name: (base) => `${base} ${n} together`, abbr: (base) => `${base}${n}tog` };
  }
  switch (prefix) {
    case 'fp':
      return { name: (base) => `front post ${base}`, abbr: (base) => `FP${base}` };
    case 'bp':
      return { name: (base) => `back post ${base}`, abbr: (base) => `BP${base}` };
    case 'ext':
      return { name: (base) => `extended ${base}`, abbr: (base) => `e${base}` };
    case 'fnd':
      return { name: (base) => `foundation ${base}`, abbr: (base) => `f${base}` };
    case 'lnk':
      return { name: (base) => `linked ${base}`, abbr: (base) => `L${base}` };
    case 'crs':
      return { name: (base) => `crossed ${base}`, abbr: (base) => `crossed ${base}` };
    case 'tun':
      return { name: () => 'Tunisian stitch', abbr: () => 'Tunisian st' };
    case 'rev':
      return { name: (base) => `reverse ${base}`, abbr: (base) => `rev ${base}` };
    case 'spike':
      return { name: (base) => `spike ${base}`, abbr: (base) => `spike ${base}` };
    case 'standing':
      return { name: (base) => `standing ${base}`, abbr: (base) => `standing ${base}` };
    case 'inc':
      return { name: (base) => `${base} increase`, abbr: (base) => `${base} inc` };
    case 'dec':
      return { name: (base) => `${base} decrease`, abbr: (base) => `${base} dec` };
    case 'cluster':
      return { name: (base) => `${base} cluster`, abbr: (base) => `${base} CL` };
    case 'bobble':
      return { name: (base) => `${base} bobble`, abbr: (base) => `${base} bo` };
    case 'popcorn':
      return { name: (base) => `${base} popcorn`, abbr: (base) => `${base} pc` };
    case 'puff':
      return { name: (base) => `${base} puff stitch`, abbr: (base) => `${base} puff` };
    case 'shell':
      return { name: (base) => `${base} shell`, abbr: (base) => `${base} sh` };
    case 'vst':
    case 'v-stitch':
      return { name: (base) => `${base} V-stitch`, abbr: (base) => `${base} V-st` };
    default:
      return null;
  }
}

/** Name and abbreviation of a stitch built of a stated number of base stitches: "5-dc shell". */
const BUILT: ReadonlyMap<string, Names> = new Map(
  Object.entries({
    cluster: { name: 'cluster', abbr: 'CL' },
    bobble: { name: 'bobble', abbr: 'bo' },
    popcorn: { name: 'popcorn', abbr: 'pc' },
    puff: { name: 'puff stitch', abbr: 'puff' },
    shell: { name: 'shell', abbr: 'sh' },
    inc: { name: 'increase', abbr: 'inc' },
  }),
);

/** Plain words that ids may hold besides stitches: the same in both markets (common practice). */
const PLAIN: ReadonlyMap<string, Names> = new Map([
  ...BUILT,
  ...Object.entries({
    st: { name: 'stitch', abbr: 'st' },
    sp: { name: 'space', abbr: 'sp' },
    lp: { name: 'loop', abbr: 'lp' },
    ch: { name: 'chain', abbr: 'ch' },
    'ch-sp': { name: 'chain space', abbr: 'ch-sp' },
    tch: { name: 'turning chain', abbr: 'tch' },
    'turning-chain': { name: 'turning chain', abbr: 'tch' },
    'row-end': { name: 'row-end', abbr: 'row-end' },
    vst: { name: 'V-stitch', abbr: 'V-st' },
    'v-stitch': { name: 'V-stitch', abbr: 'V-st' },
    'inv-dec': { name: 'invisible decrease', abbr: 'inv dec' },
  }),
]);

/** UK compounds drop "crochet" after treble ("front post treble") and keep it in "double crochet". */
function baseName(base: BaseStitch, terms: Terms): string {
  const name = byId.get(base)?.[terms].name ?? base;
  return terms === 'uk' && base !== 't1' ? name.replace(/ crochet$/, '') : name;
}

const isBase = (id: string): id is BaseStitch => LADDER.includes(id as BaseStitch);

/**
 * Names of a stitch id in one market: from the table, else composed from the base stitch ("tog4.t3",
 * "3-cluster.t3", "ch-2 sp"). An id that names no stitch of the trade (a pattern's own) comes back as it is.
 */
export function namesOf(id: string, terms: Terms): Names {
  const entry = byId.get(id);
  if (entry) return entry[terms];
  const plain = PLAIN.get(id);
  if (plain) return plain;
  const space = /^ch-(\d+) sp$/.exec(id);
  if (space) return { name: `ch-${space[1]} space`, abbr: `ch-${space[1]} sp` };
  const dot = id.lastIndexOf('.');
  const base = dot < 0 ? '' : id.slice(dot + 1);
  const prefix = dot < 0 ? id : id.slice(0, dot);
  const counted = /^(\d+)-([a-z]+)$/.exec(prefix);
  const built = counted ? BUILT.get(counted[2]!) : undefined;
  if (counted && built) {
    const inner = isBase(base) ? `-${byId.get(base)![terms].abbr}` : '-part';
    const head = `${counted[1]}${inner}`;
    return { name: `${head} ${built.name}`, abbr: `${head} ${built.abbr}` };
  }
  const compose = isBase(base) ? composition(prefix) : null;
  if (!compose || !isBase(base)) return { name: id, abbr: id };
  return { name: compose.name(baseName(base, terms)), abbr: compose.abbr(byId.get(base)![terms].abbr) };
}

/** A name for more than one: "stitches", "V-stitches"; what ends in "together" stays as it is. */
export function plural(name: string): string {
  if (/together$/.test(name)) return name;
  return /(?:s|x|z|ch|sh)$/.test(name) ? `${name}es` : `${name}s`;
}

/** Name of a stitch id for n of them: "front post treble", "front post trebles". */
export function stitchName(id: string, terms: Terms, n = 1): string {
  const { name } = namesOf(id, terms);
  return n === 1 ? name : plural(name);
}

/** Abbreviation of a stitch id: "FPtr". The same for one and for many. */
export function stitchAbbreviation(id: string, terms: Terms): string {
  return namesOf(id, terms).abbr;
}
