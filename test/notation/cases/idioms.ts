/** Idioms one by one: labels, chains, places, repeats, counts, sizes, whole rows. See `cases.test.ts` for the form. */
export const idioms = `
Row 1: Sc in 2nd ch from hook and in each ch across. (24 sts)
  row 1: 1 t1 @ hook 2 & each ch across {24 st}
Row 1 (RS): Dc in 4th ch from hook (3 skipped ch count as dc), dc in each ch across, turn. – 24 dc.
  row 1 RS: 1 t3 @ hook 4 {=t3}; 1 t3 @ each ch across; turn {24 t3}
Row 2: Ch 3 (counts as first dc), dc in next st and in each st across, dc in top of turning ch, turn. (24 dc)
  row 2: ch 3 {=t3}; 1 t3 @ next 1 st & each st across; 1 t3 @ turning-ch; turn {24 t3}
Row 3: Ch 1, sc in first st, *ch 3, sk 2 sts, sc in next st; rep from * across, turn. (8 ch-3 sps, 9 sc)
  row 3: ch 1; 1 t1 @ first 1 st; *[ch 3; sk next 2 st; 1 t1 @ next 1 st] to across; turn {8 ch3-sp, 9 t1}
Rnd 1: 6 sc in magic ring. (6)
  round 1: 6 t1 @ ring {6}
Rnd 2: 2 sc in each st around. (12)
  round 2: 2 t1 @ each st around {12}
Rnd 3: (sc in next st, 2 sc in next st) 6 times. (18)
  round 3: [1 t1 @ next 1 st; 2 t1 @ next 1 st] x6 {18}
Rnd 4: *Sc 2, inc; rep from * around. (24)
  round 4: *[1 t1 @ ~next 2 st; 1 inc @ ~next 1 st] to around {24}
Rnd 5: [sc 3, inc] x 6 (30)
  round 5: [1 t1 @ ~next 3 st; 1 inc @ ~next 1 st] x6 {30}
Rnd 6: (3 sc, inc) * 6 (30 sts)
  round 6: [1 t1 @ ~next 3 st; 1 inc @ ~next 1 st] x6 {30 st}
Rnd 3: Ch 3 (counts as dc), (2 dc, ch 2, 3 dc) in same sp, *ch 1, (3 dc, ch 2, 3 dc) in next ch-2 sp; rep from * 2 more times, ch 1, join with sl st in top of beg ch-3. (24 dc)
  round 3: ch 3 {=t3}; (2 t3 @ ~next 1 st; ch 2; 3 t3 @ ~next 1 st) @ same; *[ch 1; (3 t3 @ ~next 1 st; ch 2; 3 t3 @ ~next 1 st) @ next 1 ch2-sp] +2; ch 1; join slip @ beg-ch {24 t3}
Ch 38 (42, 46, 50).
  ch 38/42/46/50
Row 5: Ch 1, sc2tog, sc in each st to last 2 sts, sc2tog, turn. (22 (26, 30, 34) sts)
  row 5: ch 1; 1 t1^2 @ ~next 1 st; 1 t1 @ each st before-last 2 st; 1 t1^2 @ ~next 1 st; turn {22/26/30/34 st}
Row 6: Ch 1, sc in next 4 sts, dc2tog over next 2 sts, shell in next sp.
  row 6: ch 1; 1 t1 @ next 4 st; 1 t3^2 over 2 @ ~next 1 st; 1 shell @ next 1 sp
Rep Rows 2 and 3 five more times.
  rep row 2-3 x5
Rows 4-60: Rep Rows 2 and 3.
  row 4-60: rep row 2-3
Work 10 rows even.
  even 10
dec 1 st at each end of every 4th row 5 (6, 6) times, then every 2nd row 3 (3, 4) times.
  dec 1 each every 4 x5/6/6 every 2 x3/3/4
Work as for Back to **.
  as Back to-mark
Rep last 2 rows until piece measures 30 (32, 34) cm, ending with a WS row.
  rep row last 2 until 30/32/34cm end WS
Row 2: ddc in next st, turn.
  row 2: UNREAD; aside; turn !word-not-read
uk|Row 2: 3 ch (counts as first tr), 1 tr into each of next 4 tr, miss 2 ch, 1 dc into next ch-sp, rtrf around next st, turn.
  row 2: ch 3 {=t3}; 1 t3 @ next 4 t3; sk next 2 ch; 1 t1 @ next 1 sp; 1 fp:t3 @ next 1 st; turn
uk|Row 2: sc in next st.
  row 2: 1 t1 @ next 1 st !other-terms
Row 2: htr in next st
  row 2: 1 t2 @ next 1 st !other-terms
Ch 4, sl st in first ch to form a ring.
  ring 4
Rnd 1: Ch 3, 11 dc in ring, join with sl st in top of beg ch-3. 12 dc
  round 1: ch 3; 11 t3 @ ring; join slip @ beg-ch {12 t3}
Row 3: Ch 1, sc in first 2 sts, *sc in next 3, 2 sc in next; rep from * to last 3 sts, sc in last 3.
  row 3: ch 1; 1 t1 @ first 2 st; *[1 t1 @ next 3 st; 2 t1 @ next 1 st] to before-last 3 st; 1 t1 @ last 3 st
*Shell in next ch-2 sp, sk 2 sts; rep from * across, ending last rep with sc in last st, turn.
  *[1 shell @ next 1 ch2-sp; sk next 2 st] to across last:ending(1 t1 @ last 1 st); turn
*Sc in next st, ch 1, **, dc in next sp; rep from * around, ending last rep at **, join.
  *[1 t1 @ next 1 st; ch 1; mark **; 1 t3 @ next 1 sp] to around last:at2; join
*Ch 2, dc in next st, ch 2; rep from * across, omitting last ch 2, turn.
  *[ch 2; 1 t3 @ next 1 st; ch 2] to across last:omitting(ch 2); turn
Sk 2, tr in next 2, working in front, tr in the 2 skipped.
  sk next 2 st; 1 t4 @ next 2 st; aside; 1 t4 @ skipped 2 st
fpdc around next st, bpdc around post of next dc, FPDC around post of st 2 rows below
  1 fp:t3 @ next 1 st; 1 bp:t3 @ next 1 t3; 1 fp:t3 @ next 1 st below2
dc in 3rd dc of next shell, ch 2, sc in centre of next shell
  1 t3 @ 3 t3 of next shell; ch 2; 1 t1 @ centre st of next shell
Rnd 7: Sc in blo of each st around.
  round 7: 1 t1 @ each st around back-loop
working in back loops only, sc in each st across
  loops back; 1 t1 @ each st across
Fasten off and weave in ends.
  fasten-off
With B, ch 20.
  colour B; ch 20
change to A in last yo
  colour A
Leave rem sts unworked.
  unworked rem st
sc in each of next 3 sts, turn, leaving last 4 sts unworked
  1 t1 @ next 3 st; turn; unworked 4 st
dc in each sc and each ch-1 sp across
  1 t3 @ each t1+ch1-sp across
dc, ch 1, dc all in next st
  (1 t3 @ ~next 1 st; ch 1; 1 t3 @ ~next 1 st) @ next 1 st
In next ch-2 sp work (2 dc, ch 2, 2 dc), sc in next st
  (2 t3 @ ~next 1 st; ch 2; 2 t3 @ ~next 1 st) @ next 1 ch2-sp; 1 t1 @ next 1 st
In next ch-2 sp work 2 dc, ch 2, 2 dc; sc in next st
  (2 t3 @ ~next 1 st; ch 2; 2 t3 @ ~next 1 st) @ next 1 ch2-sp; 1 t1 @ next 1 st
Into ring: ch 3, 11 dc, join
  ch 3; 11 t3 @ ring; join
ch 3, sl st in first ch
  ch 3; 1 slip @ own-ch
dc 4 times in next sp, sc next 4, sc x 4, 4 dc in next
  4 t3 @ next 1 sp; 1 t1 @ next 4 st; 1 t1 @ ~next 4 st; 4 t3 @ next 1 st
picot (ch 3, sl st in first ch), sc in next
  1 picot @ ~next 1 st; aside; 1 t1 @ next 1 st
sc next 2 tog, sc 2 tog, 3-dc cl in next st, 5-dc shell in next st, dc cluster
  1 t1^2 over 2 @ ~next 1 st; 1 t1^2 @ ~next 1 st; 1 3-t3.cluster @ next 1 st; 1 5-t3.shell @ next 1 st; 1 t3.cluster @ ~next 1 st
Sizes M (L) only: Row 3: sc in each st.
  <M|L> row 3: 1 t1 @ each st end
2 dc in first st, dc in each st across to last st, 2 dc in last st
  2 t3 @ first 1 st; 1 t3 @ each st before-last 1 st; 2 t3 @ last 1 st
Total 48 dc.
  {48 t3}
Row 4 (WS): sc in each st.
  row 4 WS: 1 t1 @ each st end
4th row. Sc in each st.
  row 4: 1 t1 @ each st end
Rnd 3 - sc in each st.
  round 3: 1 t1 @ each st end
Round 3. sc in each st around
  round 3: 1 t1 @ each st around
R3: sc in each st
  row 3: 1 t1 @ each st end
3. sc in each st
  numbered 3: 1 t1 @ each st end
Rows 5–12: sc in each st
  row 5-12: 1 t1 @ each st end
Rows 5 to 12: Rep Row 4.
  row 5-12: rep row 4-4
Rows 5 & 7: As Row 3.
  row 5,7: rep row 3-3
5th and 7th rows: As 3rd row.
  row 5,7: rep row 3-3
Row 6 and all even rows: sc in each st across.
  row 6+2n: 1 t1 @ each st across
Next row (dec): sc2tog, sc to end.
  next: 1 t1^2 @ ~next 1 st; 1 t1 @ each st end
Dec rnd: *sc 4, sc2tog; rep from * around.
  round: *[1 t1 @ ~next 4 st; 1 t1^2 @ ~next 1 st] to around
ROW 2. Sc in each st.
  row 2: 1 t1 @ each st end
4|Row 9 (9, 11, 11): sc in each st.
  row 9/9/11/11: 1 t1 @ each st end
4|Rows 6–14 (16, 18, 20): Rep Row 5.
  row 6-14/16/18/20: rep row 5-5
Rows 3, 5, 7: as Row 1
  row 3,5,7: rep row 1-1
Set-up row (WS): sc in each st
  set-up WS: 1 t1 @ each st end
Foundation ch: Ch 38.
  foundation: ch 38
Row 2: ch 1, sc in each st across; turn (24)
  row 2: ch 1; 1 t1 @ each st across; turn {24}
38 ch
  ch 38
Make 38 chain
  ch 38
make a chain of 40
  ch 40
Fsc 36
  1 t1.foundation @ ~next 36 st
Row 1: sc in 2nd ch from hook (skipped ch does not count), sc in each rem ch across
  row 1: 1 t1 @ hook 2 {=0}; 1 t1 @ each ch across
Row 1: Dc in 4th ch from hook (the 3 skipped ch count as a dc) and in each ch across
  row 1: 1 t3 @ hook 4 {=t3} & each ch across
work 6 sc into ring
  6 t1 @ ring
6 sc in adjustable ring
  6 t1 @ ring
6 sc in magic loop
  6 t1 @ ring
Ch 3 counts as first dc throughout, dc in next st
  ch 3 {=t3 throughout}; 1 t3 @ next 1 st
Ch 3 (counts as dc, ch 1), dc in next st
  ch 3 {=t3+ch1}; 1 t3 @ next 1 st
Ch 1 (does not count as a st), sc in each st
  ch 1 {=0}; 1 t1 @ each st end
Ch 5 (counts as first dc and ch 2), sk 2 sts, dc in next st
  ch 5 {=t3+ch2}; sk next 2 st; 1 t3 @ next 1 st
1 ch to turn, 1 dc in each st
  ch 1; 1 t3 @ each st end
uk|3 ch, miss first st, 1 tr in each st to end, 1 tr in top of turning ch
  ch 3; sk first 1 st; 1 t3 @ each st end; 1 t3 @ turning-ch
dc in sp formed by turning ch
  1 t3 @ next 1 sp
sc in each of next 4
  1 t1 @ next 4 st
1 dc into each of next 4 tr
  1 t3 @ next 4 t4
dc 5 times in next sp
  5 t3 @ next 1 sp
3 sc in next
  3 t1 @ next 1 st
2 hdc in every other st
  2 t2 @ each st every2 end
sc in ea st
  1 t1 @ each st end
work 12 sc evenly across edge
  12 t1 @ evenly row-end
inc in every 3rd st
  1 inc @ each st every3 end
2 dc in each sp, 1 dc in each dc
  2 t3 @ each sp end; 1 t3 @ each t3 end
make shell in next sp
  1 shell @ next 1 sp
beg shell in first st, half shell in last st
  1 beg:shell @ first 1 st; 1 half:shell @ last 1 st
dc around the post of next dc from the front
  1 t3 @ next 1 t3 front-post
dcfp around next st
  1 fp:t3 @ next 1 st
uk|rtrf around next st, rtr/f round next st, dc/fp, trfp
  1 fp:t3 @ next 1 st; 1 fp:t3 @ next 1 st; 1 fp:t1 @ ~next 1 st; 1 fp:t3 @ ~next 1 st
fpdc around st 2 rows below, skip the st behind, sc in next
  1 fp:t3 @ next 1 st below2; sk behind next 1 st; 1 t1 @ next 1 st
reverse sc in each st around
  1 t1.reverse @ each st around
blo sc in next 3 sts, sc tbl in next
  1 t1 @ next 3 st back-loop; 1 t1 @ next 1 st back-loop
hdc in third loop of each st around
  1 t2 @ each st around third-loop
hdc in the bar below
  1 t2 @ ~next 1 st third-loop
dc between next 2 dc
  1 t3 @ between 1 t3
3 dc in sp between groups
  3 t3 @ between 1 between
sl st across next 5 sts
  1 slip @ next 5 st
sl st to next ch-sp
  1 slip @ each st before-next sp
sl st in next 3 sts and in next ch-2 sp
  1 slip @ next 3 st & next 1 ch2-sp
sc2tog, dc2tog over next 2 sts, dec over next 2, inv dec, skip 1
  1 t1^2 @ ~next 1 st; 1 t3^2 over 2 @ ~next 1 st; 1 dec^2 over 2 @ ~next 1 st; 1 dec^2 @ ~next 1 st; sk next 1 st
dec 1 at each end
  dec 1 each now
dec 6 sts evenly around
  dec 6 evenly now
*sc in next st, ch 1; rep from * to within last 2 sts, sc in last 2 sts
  *[1 t1 @ next 1 st; ch 1] to before-last 2 st; 1 t1 @ last 2 st
*sc in next st, ch 1; rep from * until 2 sts remain, sc in last 2 sts
  *[1 t1 @ next 1 st; ch 1] to before-last 2 st; 1 t1 @ last 2 st
*sc in next st, ch 1* 4 times
  *[1 t1 @ next 1 st; ch 1] x4
[sc in next st, ch 1] x 4
  [1 t1 @ next 1 st; ch 1] x4
(sc in next st, ch 1) * 4
  [1 t1 @ next 1 st; ch 1] x4
[sc, {ch 1, dc} 4 times, sc] twice
  [1 t1 @ ~next 1 st; [ch 1; 1 t3 @ ~next 1 st] x4; 1 t1 @ ~next 1 st] x2
*sc 2, **ch 3, dc in next; rep from ** twice; sc 2; rep from * across
  *[1 t1 @ ~next 2 st; *[ch 3; 1 t3 @ next 1 st] +2; 1 t1 @ ~next 2 st] to across
*2 dc in next, ch 1* across
  *[2 t3 @ next 1 st; ch 1] to across
†sc in next, ch 1†, dc in next; rep from † to † 3 times
  mark †; 1 t1 @ next 1 st; ch 1; mark †; 1 t3 @ next 1 st; again[1 t1 @ next 1 st; ch 1] x3
*sc in next, ch 2**, dc in next; rep from * to ** once more
  1 t1 @ next 1 st; ch 2; mark **; 1 t3 @ next 1 st; again[1 t1 @ next 1 st; ch 2] x1
*sc, ch 2; rep from * across, ending with 1 dc in top of turning ch
  *[1 t1 @ ~next 1 st; ch 2] to across last:ending(1 t3 @ turning-ch)
*sc, ch 2; rep from * across, ending last rep with 2 dc
  *[1 t1 @ ~next 1 st; ch 2] to across last:ending(1 t3 @ ~next 2 st)
(sc, ch 2), across
  [1 t1 @ ~next 1 st; ch 2] to across
*1 tr in next st, 2 ch; repeat 4 times from *
  *[1 t4 @ next 1 st; ch 2] +4
*sc 2, inc; rep from * 5 times (6 in total)
  *[1 t1 @ ~next 2 st; 1 inc @ ~next 1 st] +5
*sc 2, inc; rep from * 6 times in all
  *[1 t1 @ ~next 2 st; 1 inc @ ~next 1 st] x6
*sc 2, inc; rep from * 7 times
  *[1 t1 @ ~next 2 st; 1 inc @ ~next 1 st] +7
(sc 2, inc) 7 times
  [1 t1 @ ~next 2 st; 1 inc @ ~next 1 st] x7
last dc in top of turning ch
  1 t3 @ turning-ch
dc in 3rd ch of turning ch
  1 t3 @ turning-ch 3
sc in same st as join
  1 t1 @ same
sc in marked st
  1 t1 @ marked
ch 2, turn after ch
  ch 2; turn
sl st in first sc to join
  join slip @ first 1 t1
ss to 1st dc
  join slip @ first 1 t3
join as before
  join
join with hdc in first ch to close the loop
  join t2 @ first 1 ch
sc to last 4 sts, turn
  1 t1 @ each st before-last 4 st; turn
finish off
  fasten-off
break yarn
  fasten-off
attach yarn in same sp
  attach @ same
sc in each st (24 sc)
  1 t1 @ each st end {24 t1}
sc in each st [24]
  1 t1 @ each st end {24}
sc in each st - 24 sts.
  1 t1 @ each st end {24 st}
sc in each st: 24 sts
  1 t1 @ each st end {24 st}
sc in each st. 24 (26, 28) sc at end
  1 t1 @ each st end {24/26/28 t1}
sc in each st — 12 shells
  1 t1 @ each st end {12 shell}
sc in each st (8 ch-2 sps, 9 dc)
  1 t1 @ each st end {8 ch2-sp, 9 t3}
sc in each st (30 sts: 24 sc, 6 hdc)
  1 t1 @ each st end {30 st, 24 t1, 6 t2}
sc in each st, 24 sts + turning ch
  1 t1 @ each st end {24 st without tch}
sc in each st (24 sts, not counting turning ch)
  1 t1 @ each st end {24 st without tch}
sc in each st (24 sts counting beg ch)
  1 t1 @ each st end {24 st with tch}
sc in each st. Total 48 dc.
  1 t1 @ each st end {48 t3}
uk|1 dc in each st. 30 htr + 2 ch
  1 t1 @ each st end {30 t2, 2 ch}
4|sc in next 24 (26-28-30)
  1 t1 @ next 24/26/28/30 st
4|sc in next 24(26:28:30) sts
  1 t1 @ next 24/26/28/30 st
4|sc in next 24 [26, 28, 30] sts
  1 t1 @ next 24/26/28/30 st
4|sc in next (24, 26, 28, 30) sts
  1 t1 @ next 24/26/28/30 st
5|sc in next 24 (26, 28) (30, 32) sts
  1 t1 @ next 24/26/28/30/32 st
4|sc in next 24, 26, 28, 30 sts
  1 t1 @ next 24/26/28/30 st
4|ch 0 (2, 4, –), sc in next 3 (–, 4, no) sts
  ch 0/2/4/–; 1 t1 @ next 3/–/4/– st
4|sc in next 24 (26, 28) sts
  1 t1 @ next 24/26/28 st !sizes-differ-in-length
S/M only: sc 3
  <S|M> 1 t1 @ ~next 3 st
All sizes: sc 3
  1 t1 @ ~next 3 st
All other sizes: sc 3
  <others> 1 t1 @ ~next 3 st
Rep Row 2.
  rep row 2-2
Rep Rows 2 and 3 for pattern.
  rep row 2-3
Rep Rows 2–5 four more times, then Rows 2 and 3 once.
  rep row 2-5 x4; rep row 2-3 x1
Work even in pattern for 8 rows.
  even 8
Work even until piece measures 12½ in.
  even until 12.5in
Work as for Front to Row 20, reversing shaping.
  as Front to row 20-20 reversed
1 double into each loop, 3 chain, miss 2
  1 t3 @ each sp end; ch 3; sk next 2 st
rep from * 7 times
  UNREAD !repeat-not-opened
*sc in next 3
  mark *; 1 t1 @ next 3 st !repeat-not-closed
(sc in next 3
  UNREAD; 1 t1 @ next 3 st !bracket-not-closed
sc in next 3) twice
  1 t1 @ next 3 st; UNREAD; UNREAD !bracket-not-opened !word-not-read
2 sc in next 2 sts
  2 t1 @ next 2 st !each-not-said
sc in next 9000000 sts
  1 t1 @ next 1000000 st !number-too-large
us<shell,v st>|5-dc shell in next st, shell in next shell, V-st in next v-st, beg shell
  1 5-t3.shell @ next 1 st; 1 'shell' @ next 1 'shell'; 1 'v st' @ next 1 'v st'; 1 beg:'shell' @ ~next 1 st
us<marigold st,mg>|marigold st in next st, 2 mg in next sp, sc in next Marigold Stitch
  1 'marigold st' @ next 1 st; 2 'mg' @ next 1 sp; 1 t1 @ next 1 'marigold st'
dc2tog over next 2 sts 3 times, hdc-inc in next st
  1 t3^2 over 2 @ ~next 3 st; 1 t2.inc @ next 1 st
`;
