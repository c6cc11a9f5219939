/** The search for commands: which comes first, and so is run by Enter. */
import { expect, test } from 'vitest';
import { matching } from '../../renderer/dialogs/commands.tsx';

test.each([
  // A whole title, though commands of earlier menus hold the word.
  ['piece', 'insert-piece'],
  ['Row', 'insert-row'],
  ['round', 'insert-round'],
  ['figure', 'insert-figure'],
  // A beginning, without the mark that a form follows.
  ['open', 'open'],
  ['photo', 'insert-photo'],
  ['find', 'find'],
  ['find a command', 'commands'],
  // A word of a title before one of the other words.
  ['finding', 'next-finding'],
  // Only the other words.
  ['zoom', 'text-larger'],
])('%s finds %s first', (typed, name) => {
  expect(matching(typed)[0]?.name).toBe(name);
});

test('what holds not every word is not found', () => {
  expect(matching('piece yarn')).toEqual([]);
});

test('nothing typed finds every command', () => {
  expect(new Set(matching('').map(({ name }) => name)).size).toBe(matching('').length);
  expect(matching('')[0]?.name).toBe('new');
});
