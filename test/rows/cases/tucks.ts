/**
 * Words that mean another thing than they say at first sight, where the rest of the row shows it.
 * Each count was worked out by hand.
 */
import { lines, type RowCase } from '../types.ts';

export const tucks: readonly RowCase[] = [
  {
    name: 'in same st for an increase',
    terms: 'us',
    text: lines(
      'Rnd 1: 6 sc in magic ring. (6)',
      'Rnd 2: 2 sc in same st around. (12)',
      'Rnd 3: *Sc in next st, 2 sc in same st; rep from * around. (18)',
    ),
    counts: [6, 12, 18],
    findings: [{ row: 2, code: 'same-taken-as-next', words: 'in same st', severity: 'warning' }],
  },
  {
    name: 'definitions thirteen deep and before their use',
    terms: 'us',
    text: lines(
      'Special stitches',
      'Amber: basalt in same st.',
      'Basalt: cobalt in same st.',
      'Cobalt: dolmen in same st.',
      'Dolmen: ember in same st.',
      'Ember: fathom in same st.',
      'Fathom: garnet in same st.',
      'Garnet: hollow in same st.',
      'Hollow: indigo in same st.',
      'Indigo: jasper in same st.',
      'Jasper: krill in same st.',
      'Krill: lumen in same st.',
      'Lumen: marrow in same st.',
      'Marrow: (dc, ch 1, dc) in same st.',
      '',
      'Ch 15.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Row 2: Ch 1, sc in first st, *sk next st, amber in next st; rep from * to last st, sc in last st.',
    ),
    counts: [15, 14, 14],
    spaces: [null, null, 6],
  },
];
