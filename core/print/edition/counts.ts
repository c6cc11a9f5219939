/**
 * The count at a row's end, from the study: "(64 (70, 76) sts)", "(21 dc, 20 ch-2 sps)", "(64 sts: 60 dc, 4 tr)".
 * Where the author stated a count, the same things are counted, in the same order. It counts nothing itself.
 */
import type { Tally } from '../../fabric/index.ts';
import { normaliseName } from '../../notation/index.ts';
import type { Noun, RowTree, StatedCount } from '../../notation/tree.ts';
import { sharedList } from '../../study/index.ts';
import { baseOf, LADDER } from '../../trade/stitches.ts';
import { namesOf, stitchAbbreviation } from '../../trade/terms.ts';
import { firm, numbers, type Words } from '../content.ts';
import type { Reader } from './reader.ts';
import { uncapitalised } from './text.ts';

/** One thing counted: a number a size and what it is a number of. */
interface Part {
  readonly values: readonly (number | null)[];
  readonly noun: (many: boolean) => string;
}

type Tallies = readonly (Tally | null)[];

/** Kinds of stitch beyond which a list of them tells less than their sum. */
const MOST_KINDS = 3;

/**
 * The count to print for what the sizes shown have after a row; null when there is nothing to tell: a bare
 * foundation chain, a ring, a row that was not worked.
 */
export function countWords(tallies: Tallies, tree: RowTree | null, reader: Reader): Words | null {
  const there = tallies.filter((tally) => tally !== null);
  if (there.every((tally) => tally.stitches === 0 && tally.spaces === 0)) return null;
  if (there.every((tally) => tally.byKind.size === 1 && tally.byKind.has('chain'))) return null;
  const stated = tree === null ? null : asStated(tree, tallies, reader);
  const total = stated === null ? usual(tallies, reader) : null;
  const parts = stated ?? total!.parts;
  const words: Words = [
    ...(total?.sum == null ? [] : [numbers(`${partWords(total.sum)}${parts.length > 0 ? ':' : ''}`)]),
    ...parts.map((part) => numbers(partWords(part))),
  ];
  const joined = words.flatMap((run, i) => {
    if (i === 0) return [run];
    const led = words[i - 1]!.text.endsWith(':');
    return [{ ...run, text: led ? ' ' : ', ', hold: 'loose' as const }, run];
  });
  return [firm('('), ...joined, firm(')')];
}

function partWords(part: Part): string {
  const one = part.values.every((value) => value === null || value === 1);
  return `${sharedList(part.values)}\u00A0${part.noun(!one).replaceAll(' ', '\u00A0')}`;
}

const stitches = (tallies: Tallies): Part => ({
  values: tallies.map((tally) => tally?.stitches ?? null),
  noun: (many) => (many ? 'sts' : 'st'),
});

/**
 * Without a statement of the author's: stitches alone; stitches and spaces by kind; the sum before its kinds
 * where there are a few and every size has all of them. Stitches worked together count as the stitch they leave (common practice).
 */
function usual(tallies: Tallies, reader: Reader): { sum: Part | null; parts: readonly Part[] } {
  const kinds = stitchParts(tallies, reader);
  const spaces = spaceParts(tallies);
  const units = unitParts(tallies, reader);
  if (units.length > 0)
    return { sum: null, parts: [...units, { ...stitches(tallies), noun: () => 'sts in all' }] };
  if (spaces.length === 0) {
    const everywhere = kinds.every((kind) => kind.values.every((value) => value !== 0));
    const few = kinds.length > 1 && kinds.length <= MOST_KINDS && everywhere;
    return { sum: stitches(tallies), parts: few ? kinds : [] };
  }
  return { sum: null, parts: [...(kinds.length <= MOST_KINDS ? kinds : [stitches(tallies)]), ...spaces] };
}

/** A kind as it is counted: decreases, foundation and standing stitches leave the plain stitch. */
function countedAs(id: string): string {
  const base = baseOf(id);
  return base !== null && /^(?:tog\d+|fnd|standing|lnk|crs)\./.test(id) ? base : id;
}

function stitchParts(tallies: Tallies, reader: Reader): readonly Part[] {
  const ids = new Set<string>();
  const counted = tallies.map((tally) => {
    const own = new Map<string, number>();
    for (const [id, n] of tally?.byKind ?? []) {
      const kind = countedAs(id);
      own.set(kind, (own.get(kind) ?? 0) + n);
      ids.add(kind);
    }
    return own;
  });
  return [...ids]
    .sort((a, b) => rank(a) - rank(b))
    .map((id) => ({
      values: counted.map((own, i) => (tallies[i] === null ? null : (own.get(id) ?? 0))),
      noun: nounOf(id, reader),
    }));
}

/** Plain stitches by height, then the others as they come. */
function rank(id: string): number {
  const at = LADDER.indexOf(id as (typeof LADDER)[number]);
  return at < 0 ? LADDER.length : at;
}

function nounOf(id: string, reader: Reader): Part['noun'] {
  const special = /^special\.(.+)$/.exec(id);
  if (special) return unitNoun(special[1]!, reader);
  const abbr = stitchAbbreviation(id, reader.terms);
  // A cluster and its like are words; abbreviations of stitches are the same for one and for many.
  const word = /^(?:cluster|bobble|popcorn|puff)\./.exec(id) ? namesOf(id, reader.terms).name : null;
  return (many) => (word === null ? abbr : many ? plural(word) : word);
}

function plural(word: string): string {
  if (/(?:st|dc|tr|sc|tog)$/.test(word)) return /st$/.test(word) ? `${word}s` : word;
  return /(?:s|x|z|ch|sh)$/.test(word) ? `${word}es` : `${word}s`;
}

function spaceParts(tallies: Tallies): readonly Part[] {
  const chains = new Set(tallies.flatMap((tally) => [...(tally?.spacesOf.keys() ?? [])]));
  if (chains.size === 0) return [];
  const noun = (name: string) => (many: boolean) => (many ? `${name}s` : name);
  if (chains.size > 2) {
    return [{ values: tallies.map((tally) => tally?.spaces ?? null), noun: noun('ch-sp') }];
  }
  return [...chains]
    .sort((a, b) => b - a)
    .map((n) => ({
      values: tallies.map((tally) => (tally === null ? null : (tally.spacesOf.get(n) ?? 0))),
      noun: noun(`ch-${n} sp`),
    }));
}

function unitParts(tallies: Tallies, reader: Reader): readonly Part[] {
  const names = new Set(tallies.flatMap((tally) => [...(tally?.units.keys() ?? [])]));
  return [...names]
    .filter((name) => !['inc', 'dec', 'increase', 'decrease'].includes(name))
    .map((name) => ({
      values: tallies.map((tally) => (tally === null ? null : (tally.units.get(name) ?? 0))),
      noun: unitNoun(name, reader),
    }));
}

/** A special stitch as the reader's market calls it; by its short name where the rows call it so. */
function unitNoun(name: string, reader: Reader): Part['noun'] {
  const { pattern, terms } = reader;
  const called = (word: string): boolean => word.trim() !== '' && normaliseName(word) === name;
  for (const special of pattern.specials) {
    const { nameUs, nameUk, abbrUs, abbrUk } = special;
    const pairs = [[nameUs, nameUk] as const, [abbrUs, abbrUk] as const] as const;
    if (!pairs.some((both) => both.some(called))) continue;
    const [named, short] = pairs.map(
      ([us, uk]) => (terms === 'us' ? us : uk).trim() || us.trim() || uk.trim(),
    );
    // As the author's rows call it: "28 V-sts" where they say V-st, "16 shells" where they say shell.
    if (short && pairs[1].some((abbr) => saidInRows(abbr, pattern)))
      return (many) => (many ? `${short}s` : short);
    const word = uncapitalised(named || short!);
    return (many) => (many ? plural(word) : word);
  }
  return (many) => (many ? plural(name) : name);
}

function saidInRows(abbr: string, pattern: Reader['pattern']): boolean {
  const word = abbr.trim().replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  if (word === '') return false;
  const said = new RegExp(`(?<![\\p{L}-])${word}s?(?![\\p{L}-])`, 'iu');
  return pattern.pieces.some(({ blocks }) =>
    blocks.some((block) => block.type === 'row' && said.test(block.text.text)),
  );
}

/**
 * The author's own way of counting the row, where each part of it can be counted and the numbers do not
 * contradict it; null when the author stated none, or counts what the study does not.
 */
function asStated(tree: RowTree, tallies: Tallies, reader: Reader): readonly Part[] | null {
  const stated = tree.counts.at(-1);
  if (stated === undefined || stated.turningChain !== null) return null;
  // "(28 V-sts, 2 hdc)": beside units, stitches are those outside them.
  const beside = stated.parts.length > 1 && stated.parts.some(({ noun }) => unitNamed(noun) !== null);
  const parts = stated.parts.map(({ noun }) => statedPart(noun, tallies, beside, reader));
  if (parts.length === 0 || parts.some((part) => part === null)) return null;
  return agrees(stated, tallies, beside) ? (parts as readonly Part[]) : null;
}

/** The name of the unit that a count counts: a shell, a V-stitch, a stitch of the author's. */
function unitNamed(noun: Noun | null): string | null {
  if (noun?.kind !== 'named') return null;
  const { form, special } = noun.stitch;
  return form === 'shell' || form === 'v-stitch' || form === 'special' ? (special ?? form) : null;
}

function statedPart(noun: Noun | null, tallies: Tallies, beside: boolean, reader: Reader): Part | null {
  const kinds = tallies.map((tally) => (beside ? tally?.loose : tally?.byKind) ?? null);
  if (noun === null || noun.kind === 'stitch')
    return { ...stitches(tallies), values: kinds.map((own) => own && sumOf(own.values())) };
  if (noun.kind === 'space') {
    const spaces = spaceParts(tallies);
    return spaces.length === 1 ? spaces[0]! : null;
  }
  if (noun.kind !== 'named') return null;
  const { stitch } = noun;
  const name = unitNamed(noun);
  if (name !== null) {
    const values = tallies.map((tally) => (tally === null ? null : (tally.units.get(name) ?? 0)));
    return values.some((value) => value !== 0) ? { values, noun: unitNoun(name, reader) } : null;
  }
  if (stitch.form !== 'plain' || stitch.together !== 1 || stitch.post !== null || stitch.base === null)
    return null;
  const id = stitch.base;
  const values = kinds.map(
    (own) => own && sumOf([...own].filter(([kind]) => countedAs(kind) === id).map(([, count]) => count)),
  );
  return { values, noun: nounOf(id, reader) };
}

function sumOf(counts: Iterable<number>): number {
  let sum = 0;
  for (const count of counts) sum += count;
  return sum;
}

/**
 * Typed numbers of stitches must be the study's: a house that counts chains among the stitches would otherwise
 * get another number than it means.
 */
function agrees(stated: StatedCount, tallies: Tallies, beside: boolean): boolean {
  const counted = (tally: Tally): number => (beside ? sumOf(tally.loose.values()) : tally.stitches);
  if (tallies.every((tally) => (tally?.spaces ?? 0) === 0)) return true;
  return stated.parts.every(({ amount, noun }) => {
    if (noun !== null && noun.kind !== 'stitch') return true;
    return (
      amount.kind === 'one' && tallies.every((tally) => tally === null || counted(tally) === amount.value)
    );
  });
}
