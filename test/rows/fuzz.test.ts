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
  'ChCh 4, sl st to first ch to form ring.\n' +
    'Rnd 1: Ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * two more times, sl st to top of ch 3 to close.\n' +
    'Rnd 2: Sl st into next 2 dc and into ch-2 sp. Ch 3, (2 dc, ch 2, 3 dc) in same sp, ch 1, *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1; rep from * around, sl st to top of ch 3 to close.\n' +
    'Rnd 3: Sl st into next 2 dc and into ch-2 sp. Ch 3, (2 dc, ch 2, 3 dc) in same sp, ch 1, 3 dc in ch-1 sp, ch 1, *(3 dc, ch 2, 3 dc) in corner ch-2 sp, ch 1, 3 dc in ch-1 sp, ch 1; rep from * around, sl st to top of ch ½ to close.',
  'Make 80 move*(90:100) ch, ss to join.',
  '(Ch 25.\nRow 1: Sc in 2nd ch from hook and in each ch across. (24 sc)\n' +
    'Row 2: Ch 1, turn, sc across, sc2tog over first 999999999999 and last 2 sts.',
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
