/**
 * No damage to real rows makes the reader or the engine throw or hang. `npm run verify:long` runs 100,000 cases;
 * a case that hangs fails by the test's own time limit. A file of its own, so that it runs beside the others.
 */
import fc from 'fast-check';
import { describe, test } from 'vitest';
import { check, damaged, RUNS } from './damage.ts';

/** Texts that once made the reader throw. */
const ONCE_BROKE = [
  'Rnd 1\t6 sc in magic ring\t½\nRnd 2\tinc x 6\t12\nRnd 3\t(sc, inc) x 6\t18',
  ': Row 1: Ch 3.',
];

describe('real rows, damaged', () => {
  test.each(ONCE_BROKE)('%j is answered', (text) => {
    check(text, 'us');
    check(text, 'uk');
  });

  test('are answered', { timeout: 5_400_000 }, () => {
    fc.assert(
      fc.property(damaged, ({ text, terms }) => check(text, terms)),
      { numRuns: RUNS },
    );
  });
});
