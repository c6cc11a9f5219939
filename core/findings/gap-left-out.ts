/** A round closes without the gap that stands before its every repeat. Sentences only; `core/fabric` notices it. */
import type { FindingKind } from './kind.ts';
import { are, count, number, perSize } from './phrases.ts';

export const gapLeftOut: FindingKind = {
  code: 'gap-left-out',
  severity: 'note',
  title: 'A round closes without the gap before its first stitch',
  reason:
    'Where every repeat passes over stitches before it works, the same is expected between the last one and the first of the round. Without them the pattern is pressed together where the round closes.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const [gap, have] = [number(data, 'gap'), number(data, 'have')];
      const sts = count(gap, voice.stitch('st', gap), true);
      return `the last repeat ends right beside the round’s first stitch, though ${sts} ${are(gap)} passed over before every other; with ${have + gap} it comes out even all round`;
    }),
  example: `Rnd 1: 7 sc in magic ring.
Rnd 2: Ch 5 (counts as dc, ch 2), dc in same st, *sk 1 st, (dc, ch 2, dc) in next st; rep from * around, join with sl st to 3rd ch of ch-5.`,
};
