/** Rows in the styles of several houses, UK ones first. See `cases.test.ts` for the form. */
export const houses = `
uk|Foundation row: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. [24 dc]
  foundation: 1 t1 @ hook 2; 1 t1 @ each ch end; turn {24 t1}
uk|Row 1: Miss 3 ch (counts as 1 tr), 1 tr in next ch, 1 tr in each ch to end.
  row 1: sk next 3 ch {=t3}; 1 t3 @ next 1 ch; 1 t3 @ each ch end
uk|1st row (RS): 1 tr into 4th ch from hook, 1 tr into each ch to end, turn.
  row 1 RS: 1 t3 @ hook 4; 1 t3 @ each ch end; turn
uk|2nd row: 3 ch, *miss 1 tr, 1 tr into next tr, 1 ch; rep from * ending 1 tr into 3rd of 3 ch, turn.
  row 2: ch 3; *[sk next 1 t3; 1 t3 @ next 1 t3; ch 1] to end last:ending(1 t3 @ turning-ch 3); turn
uk|3rd row: 1 ch, 1 dc into each of next 3 tr, *5 ch, miss 3 tr, 1 dc into each of next 5 tr; rep from * to last 3 tr, 1 dc into each of last 2 tr, 1 dc into top of tch, turn.
  row 3: ch 1; 1 t1 @ next 3 t3; *[ch 5; sk next 3 t3; 1 t1 @ next 5 t3] to before-last 3 t3; 1 t1 @ last 2 t3; 1 t1 @ turning-ch; turn
uk|Next row: Ss over first 4 sts, 3 ch, patt to last 3 sts, turn.
  next: 1 slip @ first 4 st; ch 3; 1  @ each st before-last 3 st; turn !pattern-counted-even
uk|Next row: 3 ch, tr2tog over next 2 tr, tr to last 3 sts, tr2tog, 1 tr in last st.
  next: ch 3; 1 t3^2 over 2 @ ~next 1 t3; 1 t3 @ each st before-last 3 st; 1 t3^2 @ ~next 1 st; 1 t3 @ last 1 st
uk|Round 1: 2 dc in each dc round. 12 dc
  round 1: 2 t1 @ each t1 around {12 t1}
uk|Round 2: *1 dc in next dc, 2 dc in next dc; rep from * to end of round, ss to first dc.
  round 2: *[1 t1 @ next 1 t1; 2 t1 @ next 1 t1] to end; join slip @ first 1 t1
uk|Round 3: 6 dc into ring, ss to join.
  round 3: 6 t1 @ ring; join slip
uk|Work 3 rounds in dc without shaping.
  even 3 t1
uk|htr in blo across
  1 t2 @ each st across back-loop
uk|exdc in next st, etr, rtr front round next st
  1 t1.extended @ next 1 st; 1 t3.extended @ ~next 1 st; 1 fp:t3 @ next 1 st
uk|3 tr cl in next st, 4-tr bobble, 5tr popcorn in next st, 3tr-cl
  1 3-t3.cluster @ next 1 st; 1 4-t3.bobble @ ~next 1 st; 1 5-t3.popcorn @ next 1 st; 1 3-t3.cluster @ ~next 1 st
uk|dc2tog across to last st, dc in last st
  1 t1^2 @ each st before-last 1 st; 1 t1 @ last 1 st
uk|1 dtr round stem of next st
  1 t4 @ next 1 st front-post
uk|[1 tr, 1 ch] 3 times in next sp, 1 tr in same sp
  ([1 t3 @ ~next 1 st; ch 1] x3) @ next 1 sp; 1 t3 @ same
uk|miss next 2ch-sp, 3 tr in next 1ch-sp
  sk next 1 ch2-sp; 3 t3 @ next 1 ch1-sp
uk|shell in 2ch-sp of shell
  1 shell @ centre ch2-sp of next shell
Ch 3, 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * twice more, sl st to top of ch 3.
  ch 3; 2 t3 @ ring; ch 2; *[3 t3 @ ring; ch 2] +2; 1 slip @ turning-ch
Rnd 1: Ch 3 (counts as dc here and throughout), 2 dc, ch 2, *3 dc, ch 2, rep from * 2 times more, join with sl st in top of ch-3 – 4 ch-2 sps.
  round 1: ch 3 {=t3 throughout}; 1 t3 @ ~next 2 st; ch 2; *[1 t3 @ ~next 3 st; ch 2] +2; join slip @ turning-ch {4 ch2-sp}
Rnd 2: Sl st into corner ch-2 sp, (ch 3, 2 dc, ch 2, 3 dc) in same sp, ch 1, *(3 dc, ch 2, 3 dc) in next corner, ch 1; rep from * around; join.
  round 2: 1 slip @ next 1 ch2-sp; (ch 3; 2 t3 @ ~next 1 st; ch 2; 3 t3 @ ~next 1 st) @ same; ch 1; *[(3 t3 @ ~next 1 st; ch 2; 3 t3 @ ~next 1 st) @ next 1 sp; ch 1] to around; join
Rnd 2: (ch 3, dc, ch 2, 2 dc) in first sp, (2 dc, ch 2, 2 dc) in each sp around, join
  round 2: (ch 3; 1 t3 @ ~next 1 st; ch 2; 2 t3 @ ~next 1 st) @ first 1 sp; (2 t3 @ ~next 1 st; ch 2; 2 t3 @ ~next 1 st) @ each sp around; join
Rnd 1: Ch 1, sc 6 in ring, join with sl st to first sc. (6 sc)
  round 1: ch 1; 6 t1 @ ring; join slip @ first 1 t1 {6 t1}
Rnd 1: 8sc in mr (8)
  round 1: 8 t1 @ ring {8}
Rnd 3: (inc, sc1)*8 [24]
  round 3: [1 inc @ ~next 1 st; 1 t1 @ ~next 1 st] x8 {24}
Rnd 4: sc1, inc, (sc2, inc)*7, sc1 (32)
  round 4: 1 t1 @ ~next 1 st; 1 inc @ ~next 1 st; [1 t1 @ ~next 2 st; 1 inc @ ~next 1 st] x7; 1 t1 @ ~next 1 st {32}
Rnd 5: sc in each st (32 sts).
  round 5: 1 t1 @ each st end {32 st}
Rnd 6: 3sc, dec, repeat to end (24)
  round 6: *[1 t1 @ ~next 3 st; 1 dec^2 @ ~next 1 st] to end {24} !repeat-start-not-said
Rnd 6: *3 sc, dec; repeat from * to end of round.
  round 6: *[1 t1 @ ~next 3 st; 1 dec^2 @ ~next 1 st] to end
Rnd 6: {3 sc, dec} x6 (24)
  round 6: [1 t1 @ ~next 3 st; 1 dec^2 @ ~next 1 st] x6 {24}
Rnd 6: 3 sc, dec, x6 (24)
  round 6: *[1 t1 @ ~next 3 st; 1 dec^2 @ ~next 1 st] x6 {24} !repeat-start-not-said
Rnd 7: dec around (12). Stuff.
  round 7: 1 dec^2 @ each st around; aside {12}
Rnd 8: dec x6, fasten off, leaving a long tail for sewing.
  round 8: 1 dec^2 @ ~next 6 st; fasten-off
Rnd 9: sc 5, hdc 2, dc 3 in next st, hdc 2, sc 5
  round 9: 1 t1 @ ~next 5 st; 1 t2 @ ~next 2 st; 3 t3 @ next 1 st; 1 t2 @ ~next 2 st; 1 t1 @ ~next 5 st
Rnd 9: 5 sc, 1 hdc, (hdc, dc) in next st, dc inc, 2 hdc inc, 3 sc
  round 9: 1 t1 @ ~next 5 st; 1 t2 @ ~next 1 st; (1 t2 @ ~next 1 st; 1 t3 @ ~next 1 st) @ next 1 st; 1 t3.inc @ ~next 1 st; 1 t2.inc @ ~next 2 st; 1 t1 @ ~next 3 st
Rnd 9: sl st, ch 2, 3 dc in the same st, ch 2, sl st in same st
  round 9: 1 slip @ ~next 1 st; ch 2; 3 t3 @ same; ch 2; 1 slip @ same
Rnd 9: BLO: sc around (24)
  round 9: loops back; 1 t1 @ each st around {24}
Rnd 9: sc around in BLO (24)
  round 9: 1 t1 @ each st around back-loop {24}
Rnd 9: in FLO, 2 dc in each st around
  round 9: loops front; 2 t3 @ each st around
Rnd 9: sc in each st around, working through both thicknesses
  round 9: 1 t1 @ each st around through layers
Row 1 (WS): Ch 1, sc in each st to end of row. Turn. (30 sts)
  row 1 WS: ch 1; 1 t1 @ each st end; turn {30 st}
Row 1: Starting in 2nd ch from hook, sc in each ch across.
  row 1: 1 t1 @ hook 2 & each ch across
Row 1: Beginning in 4th ch from hook, dc in each ch across.
  row 1: 1 t3 @ hook 4 & each ch across
Row 1: Starting in the second chain from the hook, work 1 sc in each chain to end (20 sts).
  row 1: 1 t1 @ hook 2 & each ch end {20 st}
Row 1: Skip first ch, sc in each of next 10 ch.
  row 1: sk first 1 ch; 1 t1 @ next 10 ch
Row 1: Sk 3 ch, dc in each rem ch. (20 dc)
  row 1: sk next 3 ch; 1 t3 @ each ch end {20 t3}
Row 1: dc in 5th ch from hook, *ch 1, sk next ch, dc in next ch; rep from * across.
  row 1: 1 t3 @ hook 5; *[ch 1; sk next 1 ch; 1 t3 @ next 1 ch] to across
Row 1: dc in 8th ch from hook, *ch 2, skip 2 ch, dc in next ch; rep from * to end.
  row 1: 1 t3 @ hook 8; *[ch 2; sk next 2 ch; 1 t3 @ next 1 ch] to end
Row 1: (dc, ch 1, dc) in 5th ch from hook, *sk 2 ch, (dc, ch 1, dc) in next ch; rep from * to last 2 ch, sk 1 ch, dc in last ch
  row 1: (1 t3 @ ~next 1 st; ch 1; 1 t3 @ ~next 1 st) @ hook 5; *[sk next 2 ch; (1 t3 @ ~next 1 st; ch 1; 1 t3 @ ~next 1 st) @ next 1 ch] to before-last 2 ch; sk next 1 ch; 1 t3 @ last 1 ch
Row 1: 2 dc in 4th ch from hook, sk 2 ch, sc in next ch
  row 1: 2 t3 @ hook 4; sk next 2 ch; 1 t1 @ next 1 ch
Row 2: Ch 3, dc in first st (counts as 2 dc), dc in next st
  row 2: ch 3; 1 t3 @ first 1 st; aside; 1 t3 @ next 1 st
Row 2: Ch 1, sc in first st, ch 1, *sk next st, sc in next st, ch 1; rep from * to last 2 sts, sk next st, sc in last st. (25 sts, including ch-1 sps)
  row 2: ch 1; 1 t1 @ first 1 st; ch 1; *[sk next 1 st; 1 t1 @ next 1 st; ch 1] to before-last 2 st; sk next 1 st; 1 t1 @ last 1 st {25 st}
Row 3: Ch 1, sc in first st, sc in next ch-1 sp, *ch 1, sk next sc, sc in next ch-1 sp; rep from * across to last st, sc in last st.
  row 3: ch 1; 1 t1 @ first 1 st; 1 t1 @ next 1 ch1-sp; *[ch 1; sk next 1 t1; 1 t1 @ next 1 ch1-sp] to before-last 1 st; 1 t1 @ last 1 st
Row 3: Ch 1, (sc, ch 1, sc) in first ch-1 sp and in each ch-1 sp across
  row 3: ch 1; (1 t1 @ ~next 1 st; ch 1; 1 t1 @ ~next 1 st) @ first 1 ch1-sp & each ch1-sp across
Row 3: Ch 2, *puff st in next ch-1 sp, ch 1; rep from * to end, hdc in last st.
  row 3: ch 2; *[1 puff @ next 1 ch1-sp; ch 1] to end; 1 t2 @ last 1 st
Row 3: Ch 4, dc in next dc, (ch 1, dc in next dc) across
  row 3: ch 4; 1 t3 @ next 1 t3; [ch 1; 1 t3 @ next 1 t3] to across
Row 3: *dc in next st, fpdc around next st; rep from * across to last 2 sts, dc in next st, hdc in last st
  row 3: *[1 t3 @ next 1 st; 1 fp:t3 @ next 1 st] to before-last 2 st; 1 t3 @ next 1 st; 1 t2 @ last 1 st
Row 3: fpdc around each of next 2 sts, bpdc around each of next 2 sts
  row 3: 1 fp:t3 @ next 2 st; 1 bp:t3 @ next 2 st
Row 3: fpdc around the next fpdc, bpdc around the next bpdc
  row 3: 1 fp:t3 @ next 1 fp:t3; 1 bp:t3 @ next 1 bp:t3
Row 3: sk next 3 sts, fptr around each of next 3 sts, working in front of last 3 sts, fptr around each of 3 skipped sts
  row 3: sk next 3 st; 1 fp:t4 @ next 3 st; aside; 1 fp:t4 @ skipped 3 st
Row 3: Sk next 2 sts, dc in next st, dc in each of 2 skipped sts
  row 3: sk next 2 st; 1 t3 @ next 1 st; 1 t3 @ skipped 2 st
Row 3: Sk 1 st, dc in next st, dc in skipped st
  row 3: sk next 1 st; 1 t3 @ next 1 st; 1 t3 @ skipped 1 st
Row 3: Sk next st, tr in next st, working behind tr just made, tr in skipped st
  row 3: sk next 1 st; 1 t4 @ next 1 st; aside; 1 t4 @ skipped 1 st
Row 3: *Sk next dc, dc in next dc, dc in skipped dc; rep from * across
  row 3: *[sk next 1 t3; 1 t3 @ next 1 t3; 1 t3 @ skipped 1 t3] to across
Row 3: X-st over next 2 sts, crossed dc over next 2 sts
  row 3: 1 crossed @ next 2 st; 1 t3.crossed @ next 2 st
Row 4: sc in next 5 sc, sc in top of picot, sc in next picot
  row 4: 1 t1 @ next 5 t1; 1 t1 @ centre st of next picot; 1 t1 @ next 1 picot
Row 4: dc in next 3 dc, 2 dc in next sp, ch 2, 2 dc in same sp, dc in next 3 dc
  row 4: 1 t3 @ next 3 t3; 2 t3 @ next 1 sp; ch 2; 2 t3 @ same; 1 t3 @ next 3 t3
Row 4: sc in each sc across to last 5 sc, turn; leave rem sc unworked.
  row 4: 1 t1 @ each t1 before-last 5 t1; turn; unworked rem t1
Row 4: Ch 1, sk first sc, sc in next 3 sc
  row 4: ch 1; sk first 1 t1; 1 t1 @ next 3 t1
Row 5: Ch 1, sc in first 10 sts. Turn, leaving remaining sts unworked. (10 sts)
  row 5: ch 1; 1 t1 @ first 10 st; turn; unworked rem st {10 st}
Row 5: Sk next 4 sts, join yarn in next st, ch 1, sc in same st and in each st across.
  row 5: sk next 4 st; attach @ next 1 st; ch 1; 1 t1 @ same & each st across
Row 5: sc in next 12 sts, ch 6, sk next 6 sts, sc in next 12 sts.
  row 5: 1 t1 @ next 12 st; ch 6; sk next 6 st; 1 t1 @ next 12 st
Row 5: *sc in next 2 sc, ch 3, sl st in last sc made (picot made); rep from *
  row 5: *[1 t1 @ next 2 t1; ch 3; 1 slip @ own-ch; aside] to end
Row 5: ch 3, sl st into third ch from hook
  row 5: ch 3; 1 slip @ hook 3
Row 5: ch 3, sl st in base of ch, sc in next st
  row 5: ch 3; 1 slip @ same; 1 t1 @ next 1 st
Row 5: sc in next st, ch 3, sl st in same st, sc in next
  row 5: 1 t1 @ next 1 st; ch 3; 1 slip @ same; 1 t1 @ next 1 st
Row 6: sc to end, 2 sc in last st, rotate, sc evenly down side
  row 6: 1 t1 @ each st end; 2 t1 @ last 1 st; other-side; 1 t1 @ evenly row-end
4|Row 2: Ch 1, sc in first 3 (4, 4, 5) sts, *2 sc in next st, sc in next 5 (5, 6, 6) sts; rep from * 3 (4, 4, 5) times, sc in each st to end. – 30 (36, 40, 46) sts.
  row 2: ch 1; 1 t1 @ first 3/4/4/5 st; *[2 t1 @ next 1 st; 1 t1 @ next 5/5/6/6 st] +3/4/4/5; 1 t1 @ each st end {30/36/40/46 st}
4|Row 2: Ch 1, sc in next 3[4:5:6] sts
  row 2: ch 1; 1 t1 @ next 3/4/5/6 st
4|Sizes S (M) only: Row 5: sc across. (30 (36) sc)
  <S|M> row 5: 1 t1 @ each st across {30/36 t1}
4|Next row: work 4 (5, 6, 7) rows even.
  next: even 4/5/6/7
4|Rep Rows 2-3 4 (5, 6, 7) more times.
  rep row 2-3 x4/5/6/7
4|Rep last 2 rows 3 (3, 4, 4) more times, then Row 2 once more.
  rep row last 2 x3/3/4/4; rep row 2-2 x1
4|Ch 3, dc in next 20 (22, 24, 26) dc, turn. [21 (23, 25, 27) dc]
  ch 3; 1 t3 @ next 20/22/24/26 t3; turn {21/23/25/27 t3}
4|dec 1 st at each end of next 3 (3, 4, 5) rows
  dec 1 each every 1 x3/3/4/5
4|Inc 1 st at each end of every foll 4th row until there are 40 (44, 48, 52) sts.
  inc 1 each every 4 until 40/44/48/52
`;
