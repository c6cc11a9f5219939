/** Whole rows as published patterns write them. See `cases.test.ts` for the form. */
export const passages = `
Row 1: Ch 1, sc in first st and in each st across to last st, 2 sc in last st; turn.
  row 1: ch 1; 1 t1 @ first 1 st & each st before-last 1 st; 2 t1 @ last 1 st; turn
With right side facing, join A with sl st in first st of Row 1, ch 1, sc evenly around.
  colour A; attach slip @ first 1 st; ch 1; 1 t1 @ evenly st around
Rnd 2: Ch 1, 2 sc in same st as joining, 2 sc in each sc around; join in first sc.
  round 2: ch 1; 2 t1 @ same; 2 t1 @ each t1 around; join @ first 1 t1
Rnd 3: *Sc in next sc, 2 sc in next sc; repeat from * around, sl st in first sc to join, turn.
  round 3: *[1 t1 @ next 1 t1; 2 t1 @ next 1 t1] to around; join slip @ first 1 t1; turn
Rnd 4: Ch 3, dc in same st, ch 2, 2 dc in next st, (2 dc, ch 2, 2 dc) in each ch-2 corner sp around.
  round 4: ch 3; 1 t3 @ same; ch 2; 2 t3 @ next 1 st; (2 t3 @ ~next 1 st; ch 2; 2 t3 @ ~next 1 st) @ each ch2-sp around
Row 2: Ch 4 (counts as dc and ch 1), skip next ch-1 sp, *dc in next dc, ch 1, skip next ch-1 sp; rep from * across to last dc, dc in last dc, dc in 3rd ch of beginning ch-4, turn.
  row 2: ch 4 {=t3+ch1}; sk next 1 ch1-sp; *[1 t3 @ next 1 t3; ch 1; sk next 1 ch1-sp] to before-last 1 t3; 1 t3 @ last 1 t3; 1 t3 @ beg-ch 3; turn
Row 3: Ch 1, sc in first dc, *skip next 2 dc, 5 dc in next dc, skip next 2 dc, sc in next dc; rep from * to end, turn. (4 shells, 5 sc)
  row 3: ch 1; 1 t1 @ first 1 t3; *[sk next 2 t3; 5 t3 @ next 1 t3; sk next 2 t3; 1 t1 @ next 1 t3] to end; turn {4 shell, 5 t1}
Row 2: Ch 1, sc in first 3 sts, (ch 3, skip next 2 sts, sc in next st) across to last 2 sts, sc in last 2 sts.
  row 2: ch 1; 1 t1 @ first 3 st; [ch 3; sk next 2 st; 1 t1 @ next 1 st] to before-last 2 st; 1 t1 @ last 2 st
Row 4: Ch 3, *skip next st, (dc, ch 1, dc) in next st; rep from * to last st, dc in last st. Turn.
  row 4: ch 3; *[sk next 1 st; (1 t3 @ ~next 1 st; ch 1; 1 t3 @ ~next 1 st) @ next 1 st] to before-last 1 st; 1 t3 @ last 1 st; turn
Rnd 5: Sl st in next ch sp, ch 3, 2 dc in same ch sp, *3 dc in next ch sp; rep from *, ending with sl st in top of ch-3.
  round 5: 1 slip @ next 1 sp; ch 3; 2 t3 @ same; *[3 t3 @ next 1 sp] to end; join slip @ turning-ch
Row 6: Sc in each of first 5 sc, hdc in each of next 5 sc, dc in each sc to end.
  row 6: 1 t1 @ first 5 t1; 1 t2 @ next 5 t1; 1 t3 @ each t1 end
Rnd 1: In ring work ch 3, 11 dc; join with sl st to top of ch-3.
  round 1: ch 3; 11 t3 @ ring; join slip @ turning-ch
Rnd 1: Into ring: ch 1, 6 sc. Do not join; place marker in first st.
  round 1: ch 1; 6 t1 @ ring; no-join; marker place @ first 1 st
Rnd 1: Make a magic ring, ch 1, work 8 hdc into the ring, pull tight, sl st to first hdc.
  round 1: ring; ch 1; 8 t2 @ ring; aside; join slip @ first 1 t2
Rnd 2: inc in each st around (12)
  round 2: 1 inc @ each st around {12}
Rnd 3: [inc, sc in next st] 6 times (18 sts)
  round 3: [1 inc @ ~next 1 st; 1 t1 @ next 1 st] x6 {18 st}
Rnd 4: (inc, 2 sc) x6 (24)
  round 4: [1 inc @ ~next 1 st; 1 t1 @ ~next 2 st] x6 {24}
Rnd 4: (2 sc, inc) 6x [24]
  round 4: [1 t1 @ ~next 2 st; 1 inc @ ~next 1 st] x6 {24}
Rnd 5-8: sc around (24)
  round 5-8: 1 t1 @ each st around {24}
Rnd 9: *dec, sc in next 2; repeat from * 5 more times. (18 sts)
  round 9: *[1 dec^2 @ ~next 1 st; 1 t1 @ next 2 st] +5 {18 st}
Rnd 10: sc, dec x 6, sc
  round 10: 1 t1 @ ~next 1 st; 1 dec^2 @ ~next 6 st; 1 t1 @ ~next 1 st
R11: 6 sc, [inv dec, 1 sc] x 3, 6 sc - 21 sts
  row 11: 1 t1 @ ~next 6 st; [1 dec^2 @ ~next 1 st; 1 t1 @ ~next 1 st] x3; 1 t1 @ ~next 6 st {21 st}
Row 2: ch 2 (does not count as st here and throughout), hdc in the first st, fphdc around next st, *bphdc around next st, fphdc around next st; rep from * to last st, hdc in last st, turn.
  row 2: ch 2 {=0 throughout}; 1 t2 @ first 1 st; 1 fp:t2 @ next 1 st; *[1 bp:t2 @ next 1 st; 1 fp:t2 @ next 1 st] to before-last 1 st; 1 t2 @ last 1 st; turn
uk|Row 2: 1 ch, 1 dc in each dc to end, turn.
  row 2: ch 1; 1 t1 @ each t1 end; turn
uk|Row 3: 3 ch (counts as 1 tr), miss first tr, *1 tr in next tr, 1 ch, miss 1 tr; rep from * to last 2 tr, 1 tr in each of last 2 tr, turn. [25 tr]
  row 3: ch 3 {=t3}; sk first 1 t3; *[1 t3 @ next 1 t3; ch 1; sk next 1 t3] to before-last 2 t3; 1 t3 @ last 2 t3; turn {25 t3}
uk|4th row: 1ch, 1dc into first tr, *3ch, miss 2tr, 1dc into next tr; rep from * to end, working last dc into top of turning ch, turn.
  row 4: ch 1; 1 t1 @ first 1 t3; *[ch 3; sk next 2 t3; 1 t1 @ next 1 t3] to end last:ending(1 t1 @ turning-ch); turn
uk|Round 1: 5ch (counts as 1tr, 2ch), [1tr, 2ch] 7 times into ring, ss to 3rd of 5ch.
  round 1: ch 5 {=t3+ch2}; ([1 t3 @ ~next 1 st; ch 2] x7) @ ring; join slip @ turning-ch 3
uk|Round 2: ss into next 2ch-sp, 3ch, (1tr, 2ch, 2tr) in same sp, *(2tr, 2ch, 2tr) in next 2ch-sp; rep from * to end, ss to top of 3ch.
  round 2: 1 slip @ next 1 ch2-sp; ch 3; (1 t3 @ ~next 1 st; ch 2; 2 t3 @ ~next 1 st) @ same; *[(2 t3 @ ~next 1 st; ch 2; 2 t3 @ ~next 1 st) @ next 1 ch2-sp] to end; join slip @ turning-ch
uk|Row 5: 2 ch, htr2tog over first 2 sts, htr in each st to last 2 sts, htr2tog, turn.
  row 5: ch 2; 1 t2^2 over 2 @ first 2 st; 1 t2 @ each st before-last 2 st; 1 t2^2 @ ~next 1 st; turn
uk|Next row: dc2tog, dc to last 2 sts, dc2tog. 20 sts.
  next: 1 t1^2 @ ~next 1 st; 1 t1 @ each st before-last 2 st; 1 t1^2 @ ~next 1 st {20 st}
uk|Row 2: 4 ch (counts as 1 tr and 1 ch), *1 tr in next ch sp, 1 ch; rep from * ending 1 tr in 3rd ch of 4 ch, turn.
  row 2: ch 4 {=t3+ch1}; *[1 t3 @ next 1 sp; ch 1] to end last:ending(1 t3 @ turning-ch 3); turn
uk|1 tr tr into next st, 2 dtr in next st, 1 quad tr in last st
  1 t5 @ next 1 st; 2 t4 @ next 1 st; 1 t6 @ last 1 st
uk|Work 1 row dc, turn.
  even 1 t1; turn
Row 7: Ch 1, sc in back loop only of each st across, turn.
  row 7: ch 1; 1 t1 @ each st across back-loop; turn
Row 8: Ch 1, working in front loops only, sc in each st across, turn.
  row 8: ch 1; loops front; 1 t1 @ each st across; turn
Row 9: Ch 1, sc in both loops of first st, sc in blo of each st to last st, sc in both loops of last st, turn.
  row 9: ch 1; 1 t1 @ first 1 st both-loop; 1 t1 @ each st before-last 1 st back-loop; 1 t1 @ last 1 st both-loop; turn
Row 3: Ch 1, turn, sc in each sc across – 12 sc.
  row 3: ch 1; turn; 1 t1 @ each t1 across {12 t1}
Row 3: Ch 1; sc in next sc; *dc in next dc; ch 1; rep from *; end sc in last st.
  row 3: ch 1; 1 t1 @ next 1 t1; *[1 t3 @ next 1 t3; ch 1] to end last:ending(1 t1 @ last 1 st)
Row 12: Sc2tog, sc in next 8 sts, leave remaining 6 sts unworked, turn.
  row 12: 1 t1^2 @ ~next 1 st; 1 t1 @ next 8 st; unworked 6 st; turn
Rnd 12: *Sc in next 3 sts, sc2tog over next 2 sts, repeat from * around.
  round 12: *[1 t1 @ next 3 st; 1 t1^2 over 2 @ ~next 1 st] to around
Rnd 2: Ch 3, dc in base of ch-3, *ch 1, sk 1 ch, 2 dc in next st; rep from * 5 times more, ch 1, sl st in 3rd ch of beg ch-3.
  round 2: ch 3; 1 t3 @ same; *[ch 1; sk next 1 ch; 2 t3 @ next 1 st] +5; ch 1; join slip @ beg-ch 3
Rnd 3: Sl st in next dc and into ch-1 sp, ch 3, 4 dc in same sp, ch 1, *5 dc in next sp, ch 1, rep from * around, join.
  round 3: 1 slip @ next 1 t3 & next 1 ch1-sp; ch 3; 4 t3 @ same; ch 1; *[5 t3 @ next 1 sp; ch 1] to around; join
Row 1: Hdc in third chain from hook and in each chain across. 20 hdc.
  row 1: 1 t2 @ hook 3 & each ch across {20 t2}
Row 1 (right side): Working in back bumps, sc in second ch from hook, sc in next 18 chs.
  row 1 RS: loops third; 1 t1 @ hook 2; 1 t1 @ next 18 ch
Row 5: Ch 3, dc in next 3 sts, 2-dc cluster in next st, ch 1, 3-dc bobble in next st, puff st in next, popcorn in next st.
  row 5: ch 3; 1 t3 @ next 3 st; 1 2-t3.cluster @ next 1 st; ch 1; 1 3-t3.bobble @ next 1 st; 1 puff @ next 1 st; 1 popcorn @ next 1 st
Row 5: ch 2, 3-dc cl over next 3 sts, *ch 2, 3-dc cl; rep from * across
  row 5: ch 2; 1 3-t3.cluster over 3 @ ~next 1 st; *[ch 2; 1 3-t3.cluster @ ~next 1 st] to across
Row 6: Ch 1, sc in each st and ch across.
  row 6: ch 1; 1 t1 @ each st+ch across
Row 6: *(Sc, hdc, dc) in next st, sk 2 sts; rep from * across to last st, sc in last st.
  row 6: *[(1 t1 @ ~next 1 st; 1 t2 @ ~next 1 st; 1 t3 @ ~next 1 st) @ next 1 st; sk next 2 st] to before-last 1 st; 1 t1 @ last 1 st
Row 6: (Sc, hdc, dc in next st, sk 2 sts) across.
  row 6: [1 t1 @ ~next 1 st; 1 t2 @ ~next 1 st; 1 t3 @ next 1 st; sk next 2 st] to across
Row 7: Ch 3, 2 dc in first sp, *3 dc in next sp; rep from * across, dc in last st.
  row 7: ch 3; 2 t3 @ first 1 sp; *[3 t3 @ next 1 sp] to across; 1 t3 @ last 1 st
Rnd 7: Ch 3, 2 dc in same sp, *[3 dc in next sp] twice, (3 dc, ch 2, 3 dc) in corner sp; rep from * around, join with sl st to top of ch-3. Fasten off.
  round 7: ch 3; 2 t3 @ same; *[[3 t3 @ next 1 sp] x2; (3 t3 @ ~next 1 st; ch 2; 3 t3 @ ~next 1 st) @ next 1 sp] to around; join slip @ turning-ch; fasten-off
Row 2: V-st in each V-st across.
  row 2: 1 v-stitch @ each v-stitch across
Row 2: Ch 3, V-st in ch-1 sp of each V-st across, dc in last st.
  row 2: ch 3; 1 v-stitch @ centre ch1-sp of each v-stitch across; 1 t3 @ last 1 st
Row 3: sc in ch-1 sp of next V-st, ch 3, sc in center dc of next shell, picot
  row 3: 1 t1 @ centre ch1-sp of next v-stitch; ch 3; 1 t1 @ centre t3 of next shell; 1 picot @ ~next 1 st
Row 8: Sc in each st across to 3 sts before end, turn.
  row 8: 1 t1 @ each st before-last 3 st; turn
Rnd 8: Sc in each st to marker, 3 sc in marked st, sc to end of rnd, move marker up.
  round 8: 1 t1 @ each st to-marker; 3 t1 @ marked; 1 t1 @ each st end; marker move
Row 10: Ch 1, sc in each st across changing to B in last st, turn.
  row 10: ch 1; 1 t1 @ each st across; colour B; turn
Row 10: With MC, sc in next 5 sts, with CC, sc in next 5 sts.
  row 10: colour MC; 1 t1 @ next 5 st; colour CC; 1 t1 @ next 5 st
Row 1: Foundation sc 24, turn.
  row 1: 1 t1.foundation @ ~next 24 st; turn
Row 1: 24 fsc, turn.
  row 1: 1 t1.foundation @ ~next 24 st; turn
Row 1: Fsc 24. Turn.
  row 1: 1 t1.foundation @ ~next 24 st; turn
Rnd 1: 2 sc in 2nd ch from hook, sc in next 7 chs, 4 sc in last ch, working along opposite side of foundation ch, sc in next 7 chs, 2 sc in last ch. (22 sc)
  round 1: 2 t1 @ hook 2; 1 t1 @ next 7 ch; 4 t1 @ last 1 ch; other-side; 1 t1 @ next 7 ch; 2 t1 @ last 1 ch {22 t1}
Row 4: Ch 1, sc in first st, [ch 5, sk 3 sts, sc in next st] 4 (5, 6, 7) times, turn.
  row 4: ch 1; 1 t1 @ first 1 st; [ch 5; sk next 3 st; 1 t1 @ next 1 st] x4/5/6/7; turn
4|Row 4: Ch 1, sc in first st, [ch 5, sk 3 sts, sc in next st] 4 (5, 6, 7) times, turn.
  row 4: ch 1; 1 t1 @ first 1 st; [ch 5; sk next 3 st; 1 t1 @ next 1 st] x4/5/6/7; turn
4|Row 5: Ch 3, dc in next 5 (7, 9, 11) sts, *ch 1, sk 1, dc in next 3 sts; rep from * 4 (5, 6, 7) more times, turn. 25 (29, 33, 37) sts.
  row 5: ch 3; 1 t3 @ next 5/7/9/11 st; *[ch 1; sk next 1 st; 1 t3 @ next 3 st] +4/5/6/7; turn {25/29/33/37 st}
Rep Rows 2 and 3 until piece measures 12 in, ending after a Row 2.
  rep row 2-3 until 12in end 2
Rep Row 2 until piece measures 10 (10½, 11) in from beg.
  rep row 2-2 until 10/10.5/11in
Rows 6-10: Rep Row 5.
  row 6-10: rep row 5-5
Row 11: Repeat Row 3.
  row 11: rep row 3-3
Rep last row 5 (6, 7) times more.
  rep row last 1 x5/6/7
Work 5 more rows in pattern.
  even 5
Rep rows 3-6, 4 times, then rows 3 and 4 once more.
  rep row 3-6 x4; rep row 3-4 x1
Next row: Sl st in first 4 sts, ch 1, sc to last 4 sts, turn leaving rem sts unworked.
  next: 1 slip @ first 4 st; ch 1; 1 t1 @ each st before-last 4 st; turn; unworked rem st
Row 3: Ch 1, sc in first 3 sts, sk next 2 sts, 5 dc in next ch sp, sk 2 sts, sc in next 3 sc.
  row 3: ch 1; 1 t1 @ first 3 st; sk next 2 st; 5 t3 @ next 1 sp; sk next 2 st; 1 t1 @ next 3 t1
Row 3: Ch 1, dec, sc across to last 2 sts, dec.
  row 3: ch 1; 1 dec^2 @ ~next 1 st; 1 t1 @ each st before-last 2 st; 1 dec^2 @ ~next 1 st
uk|Row 1: Using A, work 6dc into magic ring. Join with ss.
  row 1: colour A; 6 t1 @ ring; join slip
Ch 3, turn, dc in next dc, *ch 2, sk 2 dc, dc in next dc, rep from * 3 times.
  ch 3; turn; 1 t3 @ next 1 t3; *[ch 2; sk next 2 t3; 1 t3 @ next 1 t3] +3
Row 1: ch 3 (count as dc), dc in next st, ch 2, sk 1 st, *dc in next 4 sts, ch 2, sk 1 st*, repeat from * to *, dc in last 2 sts
  row 1: ch 3 {=t3}; 1 t3 @ next 1 st; ch 2; sk next 1 st; *[1 t3 @ next 4 st; ch 2; sk next 1 st] to end; 1 t3 @ last 2 st
*Sc in next 3 sts, ch 3, sl st in 3rd ch from hook (picot made), rep from * around.
  *[1 t1 @ next 3 st; ch 3; 1 slip @ own-ch 3; aside] to around
*Sc in next 3 sts, picot; rep from * around, join with sl st in first sc. Fasten off, weave in ends.
  *[1 t1 @ next 3 st; 1 picot @ ~next 1 st] to around; join slip @ first 1 t1; fasten-off
`;
