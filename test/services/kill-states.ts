/**
 * The states of work that the kill test goes through: state `n` is the same document on both sides of the pipe,
 * differs from every other in many places, and carries a picture. Long enough that writing it takes a moment.
 */
import type { Node } from 'prosemirror-model';
import { compose } from '../../core/document/compose.ts';
import { covered } from '../document/containers.ts';

const NOTES = 40;

/** Words that do not shrink when they are packed: a linear congruential generator, in letters. */
function letters(seed: number): string {
  let state = seed >>> 0;
  return Array.from({ length: 240 }, () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state.toString(36);
  }).join(' ');
}

/** The title that state `n` has. */
export const titleOfState = (n: number): string => `Harbour vest ${n}`;

/** The number of a state, from its title. */
export const numberIn = (title: string): number =>
  Number(/^Harbour vest (\d+)$/.exec(title)?.[1] ?? Number.NaN);

export function stateOf(n: number): Node {
  return compose({
    ...covered,
    about: { ...covered.about, title: titleOfState(n) },
    notes: Array.from({ length: NOTES }, (_, at) => ({
      text: `${n}: ${letters(n * NOTES + at)}`,
      figures: [],
    })),
  });
}
