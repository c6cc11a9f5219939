/** Shorthand of toy makers, older spellings, sizes in other signs, and sentences of garments. See `cases.test.ts` for the form. */
export const shorthand = `
R1: MR 6 (6)
  row 1: 6 t1 @ ring {6} !stitch-assumed
R3: [1, inc]*6 (18)
  row 3: [1 t1 @ ~next 1 st; 1 inc @ ~next 1 st] x6 {18} !stitch-assumed
R3 6(1sc, 1inc) =18
  row 3: [1 t1 @ ~next 1 st; 1 inc @ ~next 1 st] x6 {18}
R3: 6x (sc, inc) (18)
  row 3: [1 t1 @ ~next 1 st; 1 inc @ ~next 1 st] x6 {18}
Rnd 2: inc x6 -12-
  round 2: 1 inc @ ~next 6 st {12}
Rnd 2: inc ×6 … 12
  round 2: 1 inc @ ~next 6 st {12}
5.-7. sc around (24)
  numbered 5-7: 1 t1 @ each st around {24}
5-6) sc in all 24 sts (24)
  numbered 5-6: 1 t1 @ next 24 st {24}
Rnd 5+6: sc in each st around (24)
  round 5,6: 1 t1 @ each st around {24}
R5~7: sc around (24)
  row 5-7: 1 t1 @ each st around {24}
Row #7: Ch 1, sc in each st across, turn. (14)
  row 7: ch 1; 1 t1 @ each st across; turn {14}
Row three: sc in each st across
  row 3: 1 t1 @ each st across
Row 14 - Inc row: Ch 1, 2 sc in first st, sc in each st across, turn. (14)
  row 14: ch 1; 2 t1 @ first 1 st; 1 t1 @ each st across; turn {14}
Foundation ring: Using yarn A, make 6ch and join with ss into 1st ch to form a ring.
  foundation: colour A; ring 6
Edging: Ch 1, sc evenly around
  next: ch 1; 1 t1 @ evenly st around
Rnd 1: start in second ch from the hook, inc in this st, sc in next 2 ch
  round 1: 1 inc @ hook 2; 1 t1 @ next 2 ch
Rnd 2: Starting in any dc with B, ch 1, 2 sc in each dc around; join.
  round 2: attach @ next 1 t3; colour B; ch 1; 2 t1 @ each t3 around; join
Rnd 1: In magic ring, ch 3 (counts as dc), 2 dc, (ch 2, 3 dc) 3 times, ch 2, join with sl st in top of ch-3.
  round 1: ch 3 {=t3}; (2 t3 @ ~next 1 st; [ch 2; 3 t3 @ ~next 1 st] x3; ch 2) @ ring; join slip @ turning-ch
Rnd 2: Ch 1, 2 sc in each st around, fasten off with an invisible join to first sc. (12)
  round 2: ch 1; 2 t1 @ each st around; fasten-off; join @ first 1 t1 {12}
Rnd 1: 11 dc in 4th ch from hook (skipped chs count as first dc), join with sl st in top of skipped chs. (12 dc)
  round 1: 11 t3 @ hook 4 {=t3}; join slip @ beg-ch {12 t3}
uk|1st round: 1 d.c. into each ch., ss to first d.c.
  round 1: 1 t1 @ each ch end; join slip @ first 1 t1
uk|2nd rnd.: 4 ch., * 1 tr. into next tr., 1 ch.; rep. from * to end, s.s. to 3rd of 4 ch. (16 sps.)
  round 2: ch 4; *[1 t3 @ next 1 t3; ch 1] to end; join slip @ turning-ch 3 {16 sp}
uk|1st round: 5 ch (to stand for 1 d tr and 1 ch), *1 d tr into ring, 1 ch; repeat from * 10 times more, ss to 4th of 5 ch.
  round 1: ch 5 {=t4+ch1}; *[1 t4 @ ring; ch 1] +10; join slip @ turning-ch 4
2nd rnd: * Ch 4, skip 1 s c, s c in next s c. Repeat from * around. (6 lps)
  round 2: *[ch 4; sk next 1 t1; 1 t1 @ next 1 t1] to around {6 sp}
R2: 2 sc/each st (12)
  row 2: 2 t1 @ each st end {12}
R4: *sc in 2, inc* around (24)
  row 4: *[1 t1 @ next 2 st; 1 inc @ ~next 1 st] to around {24}
R2：inc × 6（12）
  row 2: 1 inc @ ~next 6 st {12}
Rnd 5: *sc in next 3 sts, inc in next st*, repeat between asterisks 5 more times (30)
  round 5: *[1 t1 @ next 3 st; 1 inc @ next 1 st] +5 {30}
*sc 2, inc* rep 6 times (24)
  *[1 t1 @ ~next 2 st; 1 inc @ ~next 1 st] x6 {24}
Row 2: Ch 1, sc in first st, *dc in next st, sc in next st; repeat to end, turn.
  row 2: ch 1; 1 t1 @ first 1 st; *[1 t3 @ next 1 st; 1 t1 @ next 1 st] to end; turn
Row 3: Ch 1, *sc in next st, dc in next st*, rep to last st, sc in last st, turn.
  row 3: ch 1; *[1 t1 @ next 1 st; 1 t3 @ next 1 st] to before-last 1 st; 1 t1 @ last 1 st; turn
Rnd 4: A: sc 4, B: dec x 4, A: sc 4 (12)
  round 4: colour A; 1 t1 @ ~next 4 st; colour B; 1 dec^2 @ ~next 4 st; colour A; 1 t1 @ ~next 4 st {12}
Row 6: Flatten piece and sc through both layers in next 4 sts. (4)
  row 6: aside; 1 t1 @ next 4 st through layers {4}
Rnd 1: Ch 1, working in ends of rows, sc in each row-end around, join. (24 sc)
  round 1: ch 1; aside; 1 t1 @ each row-end around; join {24 t1}
Row 4: 1ch, 1dcblo in each st to end.
  row 4: ch 1; 1 t3 @ each st end back-loop
Row 5: Ch 1, BLsc in each st across, turn. (40)
  row 5: ch 1; 1 t1 @ each st across back-loop; turn {40}
Row 6: Ch 1, sc BL of each st across, turn. (40)
  row 6: ch 1; 1 t1 @ each st across back-loop; turn {40}
Row 3: Ch 3, dc in sp between first dc and first group, 3 dc in each sp between groups across
  row 3: ch 3; 1 t3 @ first 1 between; 3 t3 @ each between across
uk|5ch, *2tr into next 2ch-sp, 1tr into next tr, rep from * to end, working last tr into 3rd of 7ch at beg of previous row.
  ch 5; *[2 t3 @ next 1 ch2-sp; 1 t3 @ next 1 t3] to end last:ending(1 t3 @ turning-ch 3)
uk|*3ch, miss 3tr, 1dc into next tr, (1tr, 1ch, 1tr) into next dc; rep from * to end, omitting 1ch and last tr at end of last rep, turn.
  *[ch 3; sk next 3 t3; 1 t1 @ next 1 t3; (1 t3 @ ~next 1 st; ch 1; 1 t3 @ ~next 1 st) @ next 1 t1] to end last:omitting(ch 1; 1 t3 @ ~next 1 st); turn
Ch 31/35/39/43.
  ch 31/35/39/43
sc in each st. (30-34-38 sc)
  1 t1 @ each st end {30/34/38 t1}
3|Row 2: sc in each st, turn. – (22, 26) sts.
  row 2: 1 t1 @ each st end; turn {–/22/26 st}
3|2nd and 3rd sizes only: Row 2: 1ch, 1dc in each dc
  <2nd|3rd> row 2: ch 1; 1 t3 @ each t3 end
Row 2 (sizes M and L only): Ch 1, sc in each st across, turn.
  <M|L> row 2: ch 1; 1 t1 @ each st across; turn
Dec 1 st at both ends of next and 2 foll alt rows.
  dec 1 each now every 2 x2
Rep Row 2 until 5 sts remain.
  rep row 2-2 until 5 sts
Rep 2nd and 3rd rows until there are 22 dc.
  rep row 2-3 until 22 sts
2|Rep Rows 2 and 3 four (five) more times.
  rep row 2-3 x4/5
Work 36 sc evenly along side edge of cuff, working 1 sc in end of each row, turn.
  36 t1 @ evenly row-end; turn
Row 3: Csdc, dc in next 14 sts. Stacked sc in next st
  row 3: 1 t3.standing @ ~next 1 st; 1 t3 @ next 14 st; 1 t3.standing @ next 1 st
Ch 30, plus 1 for turning.
  ch 31
Row 2: sc in each sc across, turn. <24 sc>
  row 2: 1 t1 @ each t1 across; turn {24 t1}
Row 4: sc in each st to last 2 sts, sc2tog, turn. There are now 24 sts.
  row 4: 1 t1 @ each st before-last 2 st; 1 t1^2 @ ~next 1 st; turn {24 st}
Row 5: Ch 1, sc in each st except last, turn, leaving last st unworked.
  row 5: ch 1; 1 t1 @ each st before-last 1 st; turn; unworked rem st
Row 2: sk first dc and ch-1 sp, *dc in next dc, ch 1, sk next ch-1 sp; rep from * to turning ch
  row 2: sk first 1 t3 & next 1 ch1-sp; *[1 t3 @ next 1 t3; ch 1; sk next 1 ch1-sp] to before-last 1 turning-chain
uk|Next row: 1ch, work in dc across first 12 sts, turn, leave rem sts.
  next: ch 1; 1 t1 @ first 12 st; turn; unworked rem st
Row 2: Ch 1, sc in next 15 sts, turn, leaving remaining 25 sts for second side.
  row 2: ch 1; 1 t1 @ next 15 st; turn; unworked 25 st
Row 2: 2 hdc in each st around. (16) Circle should measure 2½” across.
  row 2: 2 t2 @ each st around; aside {16} !prose-passed-over
Rnd 2: Ch 1, sc around, decreasing 6 sts evenly spaced, join. (30 sc)
  round 2: ch 1; 1 t1 @ each st around; dec 6 evenly now; join {30 t1}
Round 1: 6 sc into MC (magic circle). 6 sts
  round 1: 6 t1 @ ring {6 st}
R1: 6 sc in mc (6)
  row 1: 6 t1 @ ring {6}
Row 4: 5 sc in MC, 4 sc in CC
  row 4: 1 t1 @ ~next 5 st; colour MC; 1 t1 @ ~next 4 st; colour CC
uk|Round 2: dc2inc in each st (12)
  round 2: 1 2-t1.inc @ each st end {12}
uk|Rnds 4-6 dc (18)
  round 4-6: 1 t1 @ each st end {18}
uk|Rnd 3 (dc1, dc2 into next st) 6 times (18)
  round 3: [1 t1 @ ~next 1 st; 2 t1 @ next 1 st] x6 {18}
R1: start with 6 sc in a MR (6)
  row 1: 6 t1 @ ring {6}
Rnd 1: Magic ring with 6 sc. (6)
  round 1: 6 t1 @ ring {6}
Rnd 3: Ch 1, sc in same lp, *ch 4, sc in next lp; rep from * around, ch 2, dc in first sc to form last lp. (6 lps)
  round 3: ch 1; 1 t1 @ same; *[ch 4; 1 t1 @ next 1 sp] to around; ch 2; join t3 @ first 1 t1 {6 sp}
Row 2: Ch 1, sc in each st across, work 10 fsc at end of row, turn. (50 sc)
  row 2: ch 1; 1 t1 @ each st across; 1 t1.foundation @ ~next 10 st; turn {50 t1}
Next 4 rows: Ch 1, sc2tog, sc in each st across, turn.
  next: ch 1; 1 t1^2 @ ~next 1 st; 1 t1 @ each st across; turn
Row 2: Ch 6, dc in 4th ch from hook, dc in next 2 chs, (sl st, ch 3, 3 dc) in ch-3 sp of previous block, turn.
  row 2: ch 6; 1 t3 @ hook 4; 1 t3 @ next 2 ch; (1 slip @ ~next 1 st; ch 3; 3 t3 @ ~next 1 st) @ next 1 ch3-sp; turn
Rnd 2: inc (12)
  round 2: 1 inc @ each st end {12}
Rnd 2: Sl st across to first ch-2 sp, ch 3, 2 dc in same sp
  round 2: 1 slip @ each st before-next ch2-sp; ch 3; 2 t3 @ same
Row 4: dc in each dc across to first corner sp, [2 dc, ch 1, 2 dc] in corner sp
  row 4: 1 t3 @ each t3 before-next sp; (2 t3 @ ~next 1 st; ch 1; 2 t3 @ ~next 1 st) @ next 1 sp
R1: 6 sc/MR (6)
  row 1: 6 t1 @ ring {6}
Rnd 5: inc (2 sc in same st) in next st, sc in next 23 sts (25)
  round 5: 1 inc @ next 1 st; 1 t1 @ next 23 st {25}
uk|Rnd 1: 3 ch, 2 tr into ring, 2 ch, ss to top of first 3 ch. (12 tr)
  round 1: ch 3; 2 t3 @ ring; ch 2; join slip @ turning-ch {12 t3}
uk|Row 2: dc next 2 dc tog, 1dc in each dc to last 2 dc, dc last 2 dc tog, turn.
  row 2: 1 t1^2 over 2 @ ~next 1 t1; 1 t1 @ each t1 before-last 2 t1; 1 t1^2 over 2 @ last 2 t1; turn
Round 3: *work 1 hdc in next st, 2 hdc in next st; rep from * to end of round — 30 sts.
  round 3: *[1 t2 @ next 1 st; 2 t2 @ next 1 st] to end {30 st}
`;
