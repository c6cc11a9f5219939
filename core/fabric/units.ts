/**
 * Units that a pattern defines in its own words (shell, cluster, its own stitches): what their definition
 * takes of the row below, and making one. Definitions are read by `core/notation`; nothing is assumed here.
 */
import type { Definition, Group, Item, StitchRef, Work } from '../notation/tree.ts';
import type { Env } from './env.ts';
import { GATHERED, namesOf } from './kinds.ts';
import type { Progress } from './progress.ts';
import { stitchSite } from './site.ts';
import { steps } from './steps.ts';
import { beginsHere, run } from './work.ts';

/** Definitions inside definitions beyond this are not worked. */
const DEEPEST = 200;

export interface Defined {
  readonly definition: Definition;
  /**
   * 'placed': all of it goes into one place, which the row names ("5 dc in next st").
   * 'running': it takes several places by itself ("sk 1, dc in next st, dc in skipped st").
   * 'free': it goes into nothing but its own chains ("ch 3, sl st in 3rd ch from hook").
   * 'words': told in steps of the hook; it makes one stitch.
   */
  readonly kind: 'placed' | 'running' | 'free' | 'words';
}

const kinds = new WeakMap<Definition, Defined>();

function takes(items: readonly Item[]): number {
  let n = 0;
  for (const item of items) {
    if (item.type === 'skip') n += 2;
    else if (item.type === 'repeat') n += takes(item.items);
    else if (item.type === 'group') n += item.places.some((place) => place.kind !== 'same') ? 1 : 0;
    else if (item.type === 'work') {
      if (item.over !== null) n += 2;
      else if (
        item.stitch.together > 1 &&
        item.places.some((place) => place.kind === 'next' && place.implied)
      )
        n += item.stitch.together;
      for (const place of item.places) {
        if (place.kind === 'next' && !place.implied)
          n += place.amount.kind === 'one' ? place.amount.value : 2;
        else if (place.kind === 'skipped' || place.kind === 'across' || place.kind === 'of-unit') n += 2;
        else if (place.kind === 'turning-chain' || place.kind === 'last') n += 1;
      }
    }
  }
  return n;
}

function works(items: readonly Item[]): boolean {
  return items.some(
    (item) =>
      item.type === 'work' ||
      item.type === 'chain' ||
      ((item.type === 'group' || item.type === 'repeat') && works(item.items)),
  );
}

function free(items: readonly Item[]): boolean {
  return items.every((item) => {
    if (item.type === 'group' || item.type === 'repeat') return false;
    return (
      item.type !== 'work' ||
      item.places.every((place) => place.kind === 'own-chain' || place.kind === 'from-hook')
    );
  });
}

function classify(definition: Definition): Defined {
  const known = kinds.get(definition);
  if (known !== undefined) return known;
  const unread = definition.items.some((item) => item.type === 'unread');
  let kind: Defined['kind'] = takes(definition.items) > 1 ? 'running' : 'placed';
  if (!works(definition.items) || unread) kind = 'words';
  else if (free(definition.items)) kind = 'free';
  const made: Defined = { definition, kind };
  kinds.set(definition, made);
  return made;
}

/** The pattern's own definition of what the word names, or null. */
export function definitionOf(p: Progress, ref: StitchRef): Defined | null {
  if (p.env.names.size === 0 || ref.form === 'plain') return null;
  // "5-dc shell" and "3-dc cluster" say themselves what they are.
  if (ref.parts !== null && ref.base !== null) return null;
  for (const name of namesOf(ref)) {
    const definition = p.env.names.get(name);
    if (definition !== undefined) return classify(definition);
  }
  return null;
}

const circles = new WeakMap<Env['names'], Map<Definition, boolean>>();

/** Stitches that items name, whatever they stand in. */
function stitchesIn(items: readonly Item[]): readonly StitchRef[] {
  return items.flatMap((item) => {
    if (item.type === 'work') return [item.stitch];
    return item.type === 'group' || item.type === 'repeat' || item.type === 'again'
      ? stitchesIn(item.items)
      : [];
  });
}

/** Does the definition come back to itself? Known before it is worked: what has no end is not begun. */
function inCircle(p: Progress, definition: Definition): boolean {
  const known = circles.get(p.env.names) ?? new Map<Definition, boolean>();
  circles.set(p.env.names, known);
  const before = known.get(definition);
  if (before !== undefined) return before;
  const met = new Set<Definition>();
  const open = [definition];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    for (const ref of stitchesIn(next.items)) {
      const used = definitionOf(p, ref)?.definition;
      if (used === undefined || met.has(used)) continue;
      met.add(used);
      open.push(used);
    }
  }
  known.set(definition, met.has(definition));
  return met.has(definition);
}

/** Makes one unit by its definition; `index` is the place for a 'placed' one. */
export function expand(
  p: Progress,
  ref: StitchRef,
  defined: Defined,
  index: number | null,
  item: Work | Group,
): boolean {
  if (inCircle(p, defined.definition)) {
    p.note('definition-in-circle', item, { name: p.nameOf(ref) });
    p.misfit = true;
    return true;
  }
  if (p.depth >= DEEPEST) {
    p.note('too-deep', item, { limit: DEEPEST, of: 'definitions' });
    p.misfit = true;
    return true;
  }
  const gathered = GATHERED.has(ref.form);
  const from = p.made.length;
  const open = p.pending;
  const start = from + (open > 0 ? 1 : 0);
  if (defined.kind === 'words') {
    const base = ref.base ?? 't3';
    const site = stitchSite(gathered ? `${ref.form}.${base}` : `special.${p.nameOf(ref)}`, base);
    // What the hook does was told, and the definition says already what that is taken for.
    const told = defined.definition.facts.some((fact) => fact.code === 'definition-in-loops');
    if (!gathered && !told)
      p.note('definition-assumed', ref, { name: p.nameOf(ref), stitch: base, parts: 1 });
    p.recording?.by(ref, null);
    if (!p.make(site, 1, index ?? p.last)) return false;
    if (!gathered) p.gather(p.nameOf(ref), start);
    return true;
  }
  const { here, hereAlways, prevailing } = p;
  p.depth += 1;
  if (defined.kind !== 'running') {
    p.here = index ?? p.last;
    p.hereAlways = true;
  } else {
    p.here = null;
    p.hereAlways = false;
  }
  const facts = p.facts.length;
  const items = steps(defined.definition.items);
  const begun =
    defined.kind === 'placed' && !gathered && ref.form !== 'picot'
      ? beginsHere(p, items, p.here ?? p.last)
      : 0;
  const ok = run(p, items, begun, false);
  // What goes wrong inside a definition is told at the words that used it.
  for (let i = facts; i < p.facts.length; i++) p.facts[i] = { ...p.facts[i]!, from: ref.from, to: ref.to };
  p.depth -= 1;
  p.here = here;
  p.hereAlways = hereAlways;
  if (!ok) return false;
  if (defined.kind === 'placed') p.last = index ?? p.last;
  p.prevailing = prevailing;
  if (ref.form === 'inc' || ref.form === 'dec') return true;
  if (gathered && p.made.length - start !== 1) {
    // Whatever it is built of, a cluster or a bobble is one stitch to the row above.
    const base = ref.base ?? p.made[start]?.base ?? 't3';
    const pending = p.pending;
    p.made.length = start;
    p.recording?.collapse(start);
    p.pending = 0;
    p.recording?.by(ref, null);
    if (!p.make(stitchSite(`${ref.form}.${base}`, base), 1, p.last)) return false;
    p.pending = pending;
    return true;
  }
  if (!gathered && defined.kind !== 'free') p.gather(p.nameOf(ref), start);
  return true;
}
