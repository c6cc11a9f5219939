/**
 * The corpus of written rows by group. Adding a file of cases means adding it here.
 */

import { accessories } from './cases/accessories.ts';
import { afterthoughts } from './cases/afterthoughts.ts';
import { beforeSpaces } from './cases/beforeSpaces.ts';
import { bundles } from './cases/bundles.ts';
import { byways } from './cases/byways.ts';
import { chatter } from './cases/chatter.ts';
import { circles } from './cases/circles.ts';
import { closings } from './cases/closings.ts';
import { counts } from './cases/counts.ts';
import { dictionary } from './cases/dictionary.ts';
import { dolls } from './cases/dolls.ts';
import { edges } from './cases/edges.ts';
import { edgings } from './cases/edgings.ts';
import { endsOfRows } from './cases/endsOfRows.ts';
import { everyday } from './cases/everyday.ts';
import { flat } from './cases/flat.ts';
import { foundations } from './cases/foundations.ts';
import { garments } from './cases/garments.ts';
import { gathers } from './cases/gathers.ts';
import { gleanings } from './cases/gleanings.ts';
import { grades } from './cases/grades.ts';
import { granny } from './cases/granny.ts';
import { hats } from './cases/hats.ts';
import { hollows } from './cases/hollows.ts';
import { houses } from './cases/houses.ts';
import { jottings } from './cases/jottings.ts';
import { loops } from './cases/loops.ts';
import { makings } from './cases/makings.ts';
import { marked } from './cases/marked.ts';
import { mesh } from './cases/mesh.ts';
import { motifs } from './cases/motifs.ts';
import { namings } from './cases/namings.ts';
import { necklines } from './cases/necklines.ts';
import { older } from './cases/older.ts';
import { ovals } from './cases/ovals.ts';
import { partRows } from './cases/partRows.ts';
import { phrases } from './cases/phrases.ts';
import { plainRows } from './cases/plainRows.ts';
import { posts } from './cases/posts.ts';
import { proofs } from './cases/proofs.ts';
import { remainders } from './cases/remainders.ts';
import { repeats } from './cases/repeats.ts';
import { ripples } from './cases/ripples.ts';
import { rounds } from './cases/rounds.ts';
import { samplers } from './cases/samplers.ts';
import { scraps } from './cases/scraps.ts';
import { shaping } from './cases/shaping.ts';
import { shells } from './cases/shells.ts';
import { shortRows } from './cases/shortRows.ts';
import { sizes } from './cases/sizes.ts';
import { spelledOut } from './cases/spelledOut.ts';
import { spirals } from './cases/spirals.ts';
import { studies } from './cases/studies.ts';
import { textures } from './cases/textures.ts';
import { toys } from './cases/toys.ts';
import { trimmings } from './cases/trimmings.ts';
import { tucks } from './cases/tucks.ts';
import { tunisian } from './cases/tunisian.ts';
import { typed } from './cases/typed.ts';
import { undersides } from './cases/undersides.ts';
import { unlabelled } from './cases/unlabelled.ts';
import { unsaid } from './cases/unsaid.ts';
import { wardrobe } from './cases/wardrobe.ts';
import { wearables } from './cases/wearables.ts';
import { wheels } from './cases/wheels.ts';
import { wholeRows } from './cases/wholeRows.ts';
import { wordedRounds } from './cases/wordedRounds.ts';
import { workroom } from './cases/workroom.ts';
import { wrong } from './cases/wrong.ts';
import type { RowCase } from './types.ts';

export const corpus: Readonly<Record<string, readonly RowCase[]>> = {
  foundations,
  edges,
  flat,
  everyday,
  shaping,
  rounds,
  spirals,
  wheels,
  hollows,
  gathers,
  plainRows,
  bundles,
  afterthoughts,
  remainders,
  beforeSpaces,
  endsOfRows,
  spelledOut,
  wordedRounds,
  partRows,
  closings,
  necklines,
  circles,
  ovals,
  granny,
  marked,
  mesh,
  shells,
  textures,
  dictionary,
  posts,
  loops,
  repeats,
  sizes,
  'whole rows': wholeRows,
  'short rows': shortRows,
  counts,
  ripples,
  garments,
  wardrobe,
  workroom,
  proofs,
  samplers,
  toys,
  dolls,
  motifs,
  hats,
  edgings,
  older,
  unlabelled,
  unsaid,
  typed,
  phrases,
  undersides,
  grades,
  trimmings,
  tucks,
  makings,
  wearables,
  studies,
  accessories,
  gleanings,
  jottings,
  scraps,
  houses,
  namings,
  byways,
  tunisian,
  chatter,
  wrong,
};
