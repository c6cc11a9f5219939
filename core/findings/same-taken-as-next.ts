/** "In same st" means the next one. Sentences only; `core/fabric` notices it. */
import type { FindingKind } from './kind.ts';

export const sameTakenAsNext: FindingKind = {
  code: 'same-taken-as-next',
  severity: 'warning',
  title: 'Work in the same stitch is taken for work in the next',
  reason:
    'Some makers write "sc in next st, 2 sc in same st" for an increase in the stitch after. Worked as it is written, all three go into one stitch. Where the count at the end is right only for the increase, that is worked.',
  message: (_, voice) =>
    `"${voice.words}" is taken as "in next st", since the row comes to its count only so; makers may work it in the st before`,
  example: `Rnd 1: 6 sc in magic ring. (6 sc)
Rnd 2: 2 sc in each st around. (12 sc)
Rnd 3: *Sc in next st, 2 sc in same st; rep from * around. (18 sc)`,
};
