/**
 * Checks the counts that an author states against what a row really leaves. Tolerates what houses differ in
 * (the turning chain counted or not where the text says which; chains counted as stitches), never a wrong number.
 */
import type { Fact } from '../finding.ts';
import type { CountPart, Noun, StatedCount, StitchRef } from '../notation/tree.ts';
import { amountOf, type Env, type Figures } from './env.ts';
import type { Tally } from './fabric.ts';
import { GATHERED, isUnit, namesOf, unitName } from './kinds.ts';
import { nounId } from './places.ts';

function baseOf(id: string): string {
  return id.slice(id.lastIndexOf('.') + 1);
}

function ofNamed(ref: StitchRef, of: Tally, env: Env, alone: boolean): readonly number[] | null {
  const named = namesOf(ref).map((name) => env.names.get(name)?.names[0] ?? name);
  const units = Math.max(0, ...[unitName(ref), ...named].map((name) => of.units.get(name) ?? 0));
  if (ref.form === 'picot') return [of.picots];
  const sum = (test: (id: string) => boolean) => {
    let n = 0;
    for (const [id, count] of of.byKind) if (test(id)) n += count;
    return n;
  };
  if (named.some((name) => name.includes('picot'))) return [of.picots, units];
  if (isUnit(ref)) {
    const partly = (of.units.get(`beg ${unitName(ref)}`) ?? 0) + (of.units.get(`half ${unitName(ref)}`) ?? 0);
    // A shell that the row makes without naming it, or begins with its turning chain, is a shell all the same.
    const gathered = sum((id) => id.includes('tog'));
    // What a row writes out stitch by stitch, and not in one place, has no name to be counted by.
    if (ref.form === 'special' && units === 0 && of.groups === 0 && gathered === 0) return null;
    const unnamed = units === 0 ? of.groups : units + gathered;
    return [
      units,
      units + partly,
      unnamed,
      of.turning ? unnamed + 1 : unnamed,
      of.turning ? units + 1 : units,
    ];
  }
  // Increases are told for the reader's ease; the stitches they make are counted as what they are.
  if (ref.form === 'inc' || ref.form === 'dec') return null;
  if (ref.form === 'crossed') {
    // Told as pairs by some, as stitches by others; a pair worked step by step has no name to be counted by.
    const crossed = sum((id) => id.startsWith('crossed.'));
    return crossed > 0 ? [crossed / 2, crossed] : null;
  }
  if (GATHERED.has(ref.form)) {
    const made = sum((id) => id.startsWith(`${ref.form}.`));
    const gathered = sum((id) => id.startsWith(`${ref.form}.`) || id.includes('tog'));
    // Grannies' groups of 3 go by the name of clusters, too.
    const groups =
      ref.form === 'cluster' && units === 0 && gathered === 0 ? [of.runs, of.shared, of.groups] : [];
    return [Math.max(units, made), gathered, ...groups];
  }
  if (ref.together > 1)
    return [
      sum((id) => id.includes(`tog${ref.together}.`) && (ref.base === null || baseOf(id) === ref.base)),
    ];
  if (ref.post !== null) {
    const side = ref.post === 'front' ? 'fp.' : 'bp.';
    return [sum((id) => id.startsWith(side) && (ref.base === null || baseOf(id) === ref.base))];
  }
  if (ref.base === null) return null;
  const base = ref.base;
  const all = sum((id) => baseOf(id) === base);
  // In a row of one height the count is of all its stitches, decreases among them.
  if (alone && all === of.stitches) return [all];
  return [sum((id) => id === base), sum((id) => baseOf(id) === base && !/^[a-z]+\.[a-z]/.test(id)), all];
}

/** Numbers that would be right for the noun, the plainest first; null = nothing that can be checked. */
function right(
  noun: Noun | null,
  of: Tally,
  env: Env,
  figures: Figures,
  alone: boolean,
  soleSpace: boolean,
): readonly number[] | null {
  if (noun === null || noun.kind === 'stitch') {
    // Some houses count every chain, or every chain-space, as a stitch.
    return of.spaces > 0 ? [of.stitches, of.stitches + of.chains, of.stitches + of.spaces] : [of.stitches];
  }
  switch (noun.kind) {
    case 'named':
      return ofNamed(noun.stitch, of, env, alone);
    case 'chain':
      return of.spaces === 0 && of.byKind.has('chain') ? [of.stitches] : [of.chains, of.spaces];
    case 'space': {
      const chains = noun.chains === null ? null : amountOf(noun.chains, env, figures);
      if (chains === null) return [of.spaces];
      const n = of.spacesOf.get(chains) ?? 0;
      // Beside other spaces each is counted for itself.
      return n === of.spaces || n === 0 || !soleSpace ? [n] : [n, of.spaces];
    }
    case 'between': {
      // Stitches of one place are a group; so are those on either side of its space, a corner's two.
      let named = 0;
      for (const n of of.units.values()) named += n;
      return noun.groups ? [of.shared, of.runs, of.groups + named] : null;
    }
    default:
      return null;
  }
}

/** How many V-stitches and the like the same count says. */
function unitsSaid(stated: StatedCount, env: Env, figures: Figures): number {
  let said = 0;
  for (const { noun, amount } of stated.parts)
    if (noun?.kind === 'named' && isUnit(noun.stitch)) said += amountOf(amount, env, figures) ?? 0;
  return said;
}

/** Stitches outside all units of this kind. */
function singleOf(ref: StitchRef, of: Tally): number {
  let n = 0;
  for (const [id, count] of of.single) if (baseOf(id) === ref.base) n += count;
  return n;
}

/** "(22 V-sts, 2 hdc)": a turning chain that is one of the 2 hdc stands for no part of a V-stitch. */
function tellsTurning({ parts }: StatedCount, of: Tally, env: Env, figures: Figures): boolean {
  return (
    of.turning &&
    parts.some(
      ({ noun, amount }) =>
        noun?.kind === 'named' &&
        !isUnit(noun.stitch) &&
        noun.stitch.base !== null &&
        amountOf(amount, env, figures) === singleOf(noun.stitch, of),
    )
  );
}

function checkPart(
  part: CountPart,
  stated: StatedCount,
  of: Tally,
  apart: boolean,
  env: Env,
  figures: Figures,
): Fact | null {
  const said = amountOf(part.amount, env, figures);
  if (said === null) return null;
  // A list that is too short says nothing of the sizes it leaves out; that is told of the list itself.
  const { amount } = part;
  if (amount.kind === 'sizes' && env.only === null && env.size >= amount.values.length) return null;
  const soleSpace = stated.parts.filter((other) => other.noun?.kind === 'space').length < 2;
  const numbers = right(part.noun, of, env, figures, stated.parts.length === 1, soleSpace);
  // "(4 shells, 2 dc)": beside units, stitches are those outside them.
  const noun = part.noun?.kind === 'named' && !isUnit(part.noun.stitch) ? part.noun.stitch : null;
  const besideUnits = stated.parts.some(({ noun }) => noun?.kind === 'named' && isUnit(noun.stitch));
  const besideGroups = stated.parts.some((other) => other.noun?.kind === 'between');
  if ((besideUnits || besideGroups) && noun !== null && noun.base !== null) {
    // A shell written out in the row is a group to the engine.
    for (const outside of besideUnits ? [of.loose, of.single] : [of.single]) {
      let n = 0;
      for (const [id, count] of outside) if (baseOf(id) === noun.base) n += count;
      if (n === said) return null;
    }
  }
  if (numbers === null) return null;
  // "(10 V-sts, 10 ch-1 sps)": beside units, spaces are those between them.
  if (part.noun?.kind === 'space' && numbers.some((n) => n - unitsSaid(stated, env, figures) === said))
    return null;
  const stitches = part.noun === null || part.noun.kind === 'stitch' || part.noun.kind === 'named';
  const without = stitches && (stated.turningChain === 'without' || apart) && of.turning;
  const withExtra = stitches && stated.turningChain === 'with' && !of.turning;
  for (const n of numbers) {
    if (said === n && !(without && stated.turningChain === 'without')) return null;
    if (without && said === n - 1) return null;
    if (withExtra && said === n + 1) return null;
  }
  const nearest = numbers.reduce(
    (best, n) => (Math.abs(n - said) < Math.abs(best - said) ? n : best),
    numbers[0]!,
  );
  return {
    code: 'stated-count-wrong',
    from: stated.from,
    to: stated.to,
    data: {
      stated: said,
      worked: without ? nearest - 1 : nearest,
      noun: part.noun === null ? 'st' : nounId(part.noun),
      turning: stitches && of.turning && said === nearest - 1,
    },
  };
}

/** What the stated counts of a row say that is not so. */
export function checkStated(
  stated: readonly StatedCount[],
  of: Tally,
  env: Env,
  figures: Figures,
): readonly Fact[] {
  const facts: Fact[] = [];
  for (const count of stated) {
    const apart = count.parts.some((part) => part.noun?.kind === 'turning-chain');
    const wrong: { readonly part: CountPart; readonly fact: Fact }[] = [];
    const without = tellsTurning(count, of, env, figures) ? { ...of, turning: false } : of;
    for (const part of count.parts) {
      const isOfUnits = part.noun?.kind === 'named' && isUnit(part.noun.stitch);
      const fact = checkPart(part, count, isOfUnits ? without : of, apart, env, figures);
      if (fact !== null) wrong.push({ part, fact });
    }
    // One wrong number is told of the whole count, several each at its own words.
    const several = wrong.length > 1;
    for (const { part, fact } of wrong)
      facts.push(several ? { ...fact, from: part.from, to: part.to } : fact);
  }
  return facts.length > 1 && sumUp(stated, of, env, figures) ? [] : facts;
}

/** "… down side (30 sc), … across top (29 sc)": each count is of its own stretch, and together they are the row's. */
function sumUp(stated: readonly StatedCount[], of: Tally, env: Env, figures: Figures): boolean {
  let sum = 0;
  let noun: Noun | null = null;
  for (const count of stated) {
    const [part] = count.parts;
    if (count.parts.length !== 1 || part === undefined) return false;
    if (part.noun !== null && part.noun.kind !== 'stitch' && part.noun.kind !== 'named') return false;
    noun ??= part.noun;
    sum += amountOf(part.amount, env, figures) ?? 0;
  }
  return right(noun, of, env, figures, true, true)?.includes(sum) === true;
}
