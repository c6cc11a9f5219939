/** How often a repeat is worked was left unsaid. Sentences only; `core/fabric` notices it. */
import type { FindingKind } from './kind.ts';
import { number } from './phrases.ts';

export const repeatInAllAssumed: FindingKind = {
  code: 'repeat-in-all-assumed',
  severity: 'note',
  title: 'A repeat is taken as so many times in all',
  reason:
    '"Rep from * 6 times" after one working means 6 more to most readers, 7 in all; some mean 6 in all. A pattern says which.',
  message: (facts) => {
    const times = number(facts[0]!.fact.data, 'times');
    return `"${times} times" is read as ${times} times in all, because ${times + 1} would not come out; write "${times - 1} more times", which cannot be misread`;
  },
  example: `Rnd 1: 6 sc in magic ring.
Rnd 2: 2 sc in each st around. (12)
Rnd 3: *Sc in next st, 2 sc in next st; rep from * 6 times. (18)`,
};
