/** Rows with colours, markers, edges, loops and increases. See `cases.test.ts` for the form. */
export const makers = `
Row 3: Ch 2, turn, *FPDC around next 2 stitches, BPDC around next 2 stitches*, repeat between *s across, hdc in top of turning chain.
  row 3: ch 2; turn; *[1 fp:t3 @ next 2 st; 1 bp:t3 @ next 2 st] to across; 1 t2 @ turning-ch
Row 3: Ch 1. Sc in first 4 sts. (Ch 3. Sk 3 sts. Sc in next 5 sts) 3 times. Turn.
  row 3: ch 1; 1 t1 @ first 4 st; [ch 3; sk next 3 st; 1 t1 @ next 5 st] x3; turn
Rnd 4: Ch 3, [dc in next 2 dc, (dc, ch 2, dc) in next ch-2 sp] around, join.
  round 4: ch 3; [1 t3 @ next 2 t3; (1 t3 @ ~next 1 st; ch 2; 1 t3 @ ~next 1 st) @ next 1 ch2-sp] to around; join
Rnd 4: *1 sc in each of next 2 sts, 2 sc in next st.* Repeat from * to * 5 more times. (24)
  round 4: *[1 t1 @ next 2 st; 2 t1 @ next 1 st] +5 {24}
Rnd 4: 1 sc in each of the next 2 sts, inc in the next st. Repeat around. (24)
  round 4: *[1 t1 @ next 2 st; 1 inc @ next 1 st] to around {24} !repeat-start-not-said
Rnd 4: Sc in next 2 sts, inc. Repeat 5 more times. [24]
  round 4: *[1 t1 @ next 2 st; 1 inc @ ~next 1 st] +5 {24} !repeat-start-not-said
Rnd 4: Repeat (sc in next 2 sts, inc) 6 times. (24)
  round 4: [1 t1 @ next 2 st; 1 inc @ ~next 1 st] x6 {24}
Rnd 4: Repeat [sc 2, inc] around. (24)
  round 4: [1 t1 @ ~next 2 st; 1 inc @ ~next 1 st] to around {24}
Rnd 4: rep (2sc, inc) around (24)
  round 4: [1 t1 @ ~next 2 st; 1 inc @ ~next 1 st] to around {24}
Rnd 4: (2sc, inc) rep 6 times (24)
  round 4: [1 t1 @ ~next 2 st; 1 inc @ ~next 1 st] x6 {24}
Rnd 4: (2sc, inc) repeat around (24)
  round 4: [1 t1 @ ~next 2 st; 1 inc @ ~next 1 st] to around {24}
Rnd 7: 36 sc
  round 7: 1 t1 @ ~next 36 st
Rnd 7: sc in all 36 sts
  round 7: 1 t1 @ next 36 st
Rnd 7: sc in each of the 36 sts around
  round 7: 1 t1 @ next 36 st
Rnd 7: sc all around
  round 7: 1 t1 @ each st around
Rnds 7-10 (4 rnds): sc in each st around. [36]
  round 7-10: 1 t1 @ each st around {36}
Rnd 11: [sc in next 4 sts, sc2tog] around: 30 sts.
  round 11: [1 t1 @ next 4 st; 1 t1^2 @ ~next 1 st] to around {30 st}
Rnd 12: *4 sc, dec*, repeat from * 6 times total.
  round 12: *[1 t1 @ ~next 4 st; 1 dec^2 @ ~next 1 st] x6
Rnd 12: (3 sc, dec) 6 times = 24 sts
  round 12: [1 t1 @ ~next 3 st; 1 dec^2 @ ~next 1 st] x6 {24 st}
Rnd 2: Ch 2 (counts as hdc now and throughout), hdc in same place as joining, 2 hdc in each st around, sl st in top of beginning ch-2 to join. -- 16 hdc
  round 2: ch 2 {=t2 throughout}; 1 t2 @ same; 2 t2 @ each st around; join slip @ beg-ch {16 t2}
Row 2: Turn, ch 1, sc across. 15 sc.
  row 2: turn; ch 1; 1 t1 @ each st across {15 t1}
Row 2: Ch 1 & turn, sc in each st across.
  row 2: ch 1; turn; 1 t1 @ each st across
Row 2: ch 3 and turn; dc in next st
  row 2: ch 3; turn; 1 t3 @ next 1 st
Row 2: ch1, turn. Sc in the 2nd st from hook, sc to end.
  row 2: ch 1; turn; 1 t1 @ hook 2; 1 t1 @ each st end
Row 5: Skip first st, sl st in next 3 sts, ch 1, sc in same st as last sl st, sc to last 3 sts, leave last 3 sts unworked.
  row 5: sk first 1 st; 1 slip @ next 3 st; ch 1; 1 t1 @ same; 1 t1 @ each st before-last 3 st; unworked 3 st
Row 5: Ch 1, (sc, dc) in first st, *sk next st, (sc, dc) in next st; rep from * to last 2 sts, sk next st, sc in last st.
  row 5: ch 1; (1 t1 @ ~next 1 st; 1 t3 @ ~next 1 st) @ first 1 st; *[sk next 1 st; (1 t1 @ ~next 1 st; 1 t3 @ ~next 1 st) @ next 1 st] to before-last 2 st; sk next 1 st; 1 t1 @ last 1 st
Row 5: Ch 3, *dc2tog over next 2 sts, ch 1; rep from * across, dc in last st.
  row 5: ch 3; *[1 t3^2 over 2 @ ~next 1 st; ch 1] to across; 1 t3 @ last 1 st
Row 5: Ch 3, yo, insert hook in next st, pull up a loop, dc in next st.
  row 5: ch 3; UNREAD; aside; aside; 1 t3 @ next 1 st !word-not-read
Row 6: Ch 4, sk first 2 sts, dc in next st, *ch 1, sk 1, dc in next; rep from * ending with dc in tch
  row 6: ch 4; sk first 2 st; 1 t3 @ next 1 st; *[ch 1; sk next 1 st; 1 t3 @ next 1 st] to end last:ending(1 t3 @ turning-ch)
Row 6: Ch 4 (counts as dc, ch 1 here and throughout), dc in next ch-1 sp
  row 6: ch 4 {=t3+ch1 throughout}; 1 t3 @ next 1 ch1-sp
Row 6: Ch 6 (counts as tr and ch 2), tr in next tr, *ch 2, tr in next tr, rep from * to turning ch, tr in 4th ch of turning ch
  row 6: ch 6 {=t4+ch2}; 1 t4 @ next 1 t4; *[ch 2; 1 t4 @ next 1 t4] to before-last 1 turning-chain; 1 t4 @ turning-ch 4
Row 6: Ch 3 (counts as first dc, here and throughout), turn.
  row 6: ch 3 {=t3 throughout}; turn
Row 6: sc in first st, ch 2 (counts as first dc), dc in next st
  row 6: 1 t1 @ first 1 st; ch 2 {=t3}; 1 t3 @ next 1 st
Row 6: Standing dc in first st, dc in each st across
  row 6: 1 t3.standing @ first 1 st; 1 t3 @ each st across
Row 6: Join B with standing sc in any st, sc in next st
  row 6: colour B; attach t1.standing @ next 1 st; 1 t1 @ next 1 st
Row 6: Join with a sl st to the first sc.
  row 6: join slip @ first 1 t1
Row 6: Join with slip stitch to beginning chain 3.
  row 6: join slip @ beg-ch
Row 6: Join to first st with sl st.
  row 6: join slip @ first 1 st
Row 6: sl st to beg sc.
  row 6: join slip @ first 1 beg:t1
Row 6: slip stitch to join.
  row 6: join slip
Row 6: Join rnd.
  row 6: join
Row 6: sl st to 1st st, ch 1, turn.
  row 6: join slip @ first 1 st; ch 1; turn
Rnd 6: sl st in beg ch-3, fasten off.
  round 6: join slip @ beg-ch; fasten-off
Row 7: (Sk 2 sts, 5 dc in next st, sk 2 sts, sc in next st) 4 times, turn.
  row 7: [sk next 2 st; 5 t3 @ next 1 st; sk next 2 st; 1 t1 @ next 1 st] x4; turn
Row 7: Ch 3, (2 dc, ch 1, 2 dc) in ch-1 sp of next shell, *ch 2, dc in next sc, ch 2, shell in ch-sp of next shell; rep from * across.
  row 7: ch 3; (2 t3 @ ~next 1 st; ch 1; 2 t3 @ ~next 1 st) @ centre ch1-sp of next shell; *[ch 2; 1 t3 @ next 1 t1; ch 2; 1 shell @ centre sp of next shell] to across
Row 7: shell in next shell, V-st in next V-st
  row 7: 1 shell @ next 1 shell; 1 v-stitch @ next 1 v-stitch
Row 7: 3 dc in 3rd dc of 5-dc group, ch 1
  row 7: 3 t3 @ 3 t3 of next between; ch 1
Row 7: sc in sp between 2 dc of next V-st
  row 7: 1 t1 @ centre between of next v-stitch
Row 7: dc in next 2 dc, 2 dc in next ch-2 space, dc in next 2 dc
  row 7: 1 t3 @ next 2 t3; 2 t3 @ next 1 ch2-sp; 1 t3 @ next 2 t3
Row 7: Dc in each dc across to corner sp, (2 dc, ch 2, 2 dc) in corner sp; rep around
  row 7: *[1 t3 @ each t3 before-next sp; (2 t3 @ ~next 1 st; ch 2; 2 t3 @ ~next 1 st) @ next 1 sp] to around !repeat-start-not-said
Row 7: Dc in each st across to next corner ch-2 sp, (2 dc, ch 2, 2 dc) in ch-2 sp
  row 7: 1 t3 @ each st before-next ch2-sp; (2 t3 @ ~next 1 st; ch 2; 2 t3 @ ~next 1 st) @ next 1 ch2-sp
Row 7: *dc in each dc to next corner, (2 dc, ch 2, 2 dc) in corner ch-2 sp; rep from * 3 more times
  row 7: *[1 t3 @ each t3 before-next sp; (2 t3 @ ~next 1 st; ch 2; 2 t3 @ ~next 1 st) @ next 1 ch2-sp] +3
Row 8: Ch 1, sc in next 5 sts, pm, sc in next 10 sts, place marker in last st made, sc to end
  row 8: ch 1; 1 t1 @ next 5 st; marker place; 1 t1 @ next 10 st; marker place @ own-ch; 1 t1 @ each st end
Row 8: Sc to 1 st before marker, 3 sc in next st
  row 8: 1 t1 @ each st 1 before marker; 3 t1 @ next 1 st
Row 8: Sc in each st until 2 sts before marker, sc2tog
  row 8: 1 t1 @ each st 2 before marker; 1 t1^2 @ ~next 1 st
Row 9: Sc in each st across, working in BLO
  row 9: 1 t1 @ each st across back-loop
Row 9: BLO sc across
  row 9: 1 t1 @ each st across back-loop
Row 9: In BLO: sc in each st across
  row 9: loops back; 1 t1 @ each st across
Row 9: (Work in BLO) sc in each st
  row 9: loops back; 1 t1 @ each st end
Row 9: Working in back loops of sts on prev row, sc in each st
  row 9: loops back; 1 t1 @ each st end
Row 9: sc in FLO of next st, dc in unworked front loop of st 1 row below
  row 9: 1 t1 @ next 1 st front-loop; 1 t3 @ next 1 st front-loop below1
Row 9: sc in next st, dc in the st below next st
  row 9: 1 t1 @ next 1 st; 1 t3 @ next 1 st below1
Row 9: *Sc in next st, long sc in next st 2 rows below; rep from *
  row 9: *[1 t1 @ next 1 st; 1 t1.spike @ next 1 st below2] to end
Row 9: spike st in next st, tr around post of dc 3 rows below, skip sc behind tr
  row 9: 1 t1.spike @ next 1 st; 1 t4 @ next 1 t3 front-post below3; sk behind next 1 st
Row 10: Ch 1, sc evenly along edge
  row 10: ch 1; 1 t1 @ evenly row-end
Row 10: Sc evenly across row ends
  row 10: 1 t1 @ evenly row-end
Row 10: work 24 sc along side edge, 3 sc in corner, sc in each st across top
  row 10: 24 t1 @ evenly row-end end; 3 t1 @ next 1 sp; 1 t1 @ each st across
Row 10: 2 sc in end of each row
  row 10: 2 t1 @ each row-end end
Row 10: sc in each row-end across
  row 10: 1 t1 @ each row-end across
Row 10: sc in end of next 10 rows
  row 10: 1 t1 @ next 10 row-end
Row 11: Sc in each st across, change to color B in last st. Fasten off color A.
  row 11: 1 t1 @ each st across; colour B; fasten-off
Row 11: With color B, ch 1, sc across.
  row 11: colour B; ch 1; 1 t1 @ each st across
Row 11: sc in next 5 sts with A, sc in next 5 sts with B
  row 11: 1 t1 @ next 5 st; colour A; 1 t1 @ next 5 st; colour B
Row 11: [With MC sc 2, with CC sc 2] across.
  row 11: [colour MC; 1 t1 @ ~next 2 st; colour CC; 1 t1 @ ~next 2 st] to across
Row 12: Inc in first st, sc to last st, inc in last st. 14 sts
  row 12: 1 inc @ first 1 st; 1 t1 @ each st before-last 1 st; 1 inc @ last 1 st {14 st}
Row 12: Inc 1, sc to end
  row 12: 1 inc @ ~next 1 st; 1 t1 @ each st end
Row 12: sc inc, hdc inc in next st, dc inc
  row 12: 1 t1.inc @ ~next 1 st; 1 t2.inc @ next 1 st; 1 t3.inc @ ~next 1 st
Row 12: 3-in-1 inc in next st, sc 2
  row 12: 1 3-inc @ next 1 st; 1 t1 @ ~next 2 st
Row 12: 2 sc into each st
  row 12: 2 t1 @ each st end
Row 12: Sc2tog twice, sc in each st across to last 4 sts, (sc2tog) twice.
  row 12: 1 t1^2 @ ~next 2 st; 1 t1 @ each st before-last 4 st; [1 t1^2 @ ~next 1 st] x2
Row 12: dc2tog 3 times, dc 3 tog over next 3 sts, dc 4tog
  row 12: 1 t3^2 @ ~next 3 st; 1 t3^3 over 3 @ ~next 1 st; 1 t3^4 @ ~next 1 st
Row 12: sc 3 together, sc2tog across
  row 12: 1 t1^3 @ ~next 1 st; 1 t1^2 @ each st across
Row 12: (dc2tog over next st and following ch-sp)
  row 12: 1 t3^2 @ next 1 st & next 1 sp
Row 12: dc2tog, working first leg in same st and second leg in next st
  row 12: 1 t3^2 @ same & next 1 st
Row 12: dc2tog inserting hook in same sp and next sp
  row 12: 1 t3^2 @ same & next 1 sp
`;
