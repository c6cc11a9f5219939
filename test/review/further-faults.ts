/**
 * Further faults as an editor meets them, planted one by one in copies of the examples: counts, corners, counts of
 * pieces, lengths in two units, advice on fit, numbers copied by hand, materials, sentences. Each says which finding it
 * must give, at which words and how its sentence begins. Invented.
 */
import type { Pattern, Piece } from '../../core/document/pattern.ts';
import { text as figured } from '../../core/document/writer.ts';
import { type Fault, type Plant, swap } from './faults.ts';

const note =
  (words: string): Plant =>
  (pattern) => ({ ...pattern, notes: [...pattern.notes, figured(words)] });
const finish =
  (words: string): Plant =>
  (pattern) => ({ ...pattern, finishing: [...pattern.finishing, figured(words)] });
const about =
  (change: Partial<Pattern['about']>): Plant =>
  (pattern) => ({ ...pattern, about: { ...pattern.about, ...change } });
/** A change of the first yarn or gauge. */
const yarn =
  (change: Partial<Pattern['yarns'][number]>): Plant =>
  (pattern) => ({
    ...pattern,
    yarns: pattern.yarns.map((each, i) => (i === 0 ? { ...each, ...change } : each)),
  });
const gauge =
  (change: Partial<Pattern['gauges'][number]>): Plant =>
  (pattern) => ({
    ...pattern,
    gauges: pattern.gauges.map((each, i) => (i === 0 ? { ...each, ...change } : each)),
  });
const explained =
  (short: string, meaning: string): Plant =>
  (pattern) => ({ ...pattern, abbreviations: { ...pattern.abbreviations, [short]: meaning } });
const piece =
  (id: string, change: (piece: Piece) => Partial<Piece>): Plant =>
  (pattern) => ({
    ...pattern,
    pieces: pattern.pieces.map((each) => (each.id === id ? { ...each, ...change(each) } : each)),
  });
/** A paragraph at the end of a piece. */
const prose = (id: string, words: string): Plant =>
  piece(id, ({ blocks }) => ({
    blocks: [...blocks, { type: 'prose', id: 'prose-new', text: figured(words), sizes: null }],
  }));

export const furtherFaults: readonly Fault[] = [
  {
    in: 'vest',
    name: 'a V-stitch too many in a count beside its plain ends',
    plant: swap('({panel V-stitches} V-sts, 2 hdc)', '({panel V-stitches + 1} V-sts, 2 hdc)'),
    code: 'stated-count-wrong',
    at: 'panel-3',
    words: '([panel V-stitches + 1] V-sts, 2 hdc)',
    saying:
      'Size XS: the row says 23, but working it gives 22 V-sts, 1 fewer. Size S: the row says 27, but working it',
  },
  {
    in: 'hat',
    name: 'a crown round with a stitch too many between its increases',
    plant: swap(
      '*1 htr in each of next 2 sts, 2 htr in next st',
      '*1 htr in each of next 3 sts, 2 htr in next st',
    ),
    code: 'stated-count-wrong',
    at: 'hat-5',
    words: '(32 htr)',
    saying: 'The row says 32, but working it gives 30 htr, 2',
    follows: ['repeat-does-not-fit'],
  },
  {
    in: 'hat',
    name: 'a rib of two and one over an even number',
    plant: swap(
      '*1 FPtr around next st, 1 BPtr around next st',
      '*1 FPtr around each of next 2 sts, 1 BPtr around next st',
    ),
    code: 'repeat-does-not-fit',
    at: 'hat-22',
    words: '*1 FPtr around each of next 2 sts, 1 BPtr around next st; rep from * around',
    sizes: ['Newborn', '3–6 months', '6–12 months', 'Toddler', 'Child', 'Large adult'],
    saying:
      'This row works on a multiple of 3. Size Newborn: after 18 repeats 2 sts are left; you have 56; 54 or 57 would',
    follows: ['stated-count-wrong'],
  },
  {
    in: 'hat',
    name: 'a band round joined to a stitch of the round before',
    plant: swap('join with ss in first FPtr', 'join with ss in first htr'),
    code: 'join-names-other-stitch',
    at: 'hat-22',
    words: 'in first htr',
    saying: '"in first htr" names another stitch than the first of this round, which is "FPtr"; put the name',
  },
  {
    in: 'tee',
    name: 'two together over three',
    plant: swap(
      'hdc2tog over next 2 sts, hdc in each st to last',
      'hdc2tog over next 3 sts, hdc in each st to last',
    ),
    code: 'together-differs',
    at: 'sleeve-5-shaped',
    words:
      'Ch 2 (does not count as a st), hdc2tog over next 3 sts, hdc in each st to last [underarm chains + 2] sts, hdc2tog over next 2 sts, hdc in each st to end; join with sl st in first hdc.',
    saying:
      'This works 2 sts together, but 3 are named; say "over next 2 sts", or how many are passed over between them',
    follows: ['count-in-words-off', 'repeat-does-not-fit', 'shaping-not-as-planned', 'stated-count-wrong'],
  },
  {
    in: 'tee',
    name: 'a fifth corner',
    plant: swap(
      'rep from * 3 more times, hdc in each hdc to end',
      'rep from * 4 more times, hdc in each hdc to end',
    ),
    code: 'place-does-not-exist',
    at: 'yoke-5-shaped',
    words:
      'Ch 2 (does not count as a st), *hdc in each hdc to next ch-1 sp, (hdc, ch 1, hdc) in ch-1 sp; rep from * 4 more times, hdc in each hdc to end; join with sl st in first hdc.',
    saying:
      'Size XS: there is no ch-1 sp to work into here, in repeat 5 of 5: all 96 sts of the row below are used. Size',
  },
  {
    in: 'tee',
    name: 'an underarm without its chains',
    plant: swap(
      'ch {underarm chains}, sk next ch-1 sp, sk next {sleeve top stitches} sts',
      'sk next ch-1 sp, sk next {sleeve top stitches} sts',
    ),
    code: 'stated-count-wrong',
    at: 'body-2',
    words: '([body stitches] hdc)',
    saying:
      'Size XS: the row says 128, but working it gives 122 hdc, 6 fewer. Size S: the row says 148, but working it',
  },
  {
    in: 'tee',
    name: 'a whole front in place of half a back',
    plant: swap('hdc in each of next {front stitches ÷ 2} sts', 'hdc in each of next {front stitches} sts'),
    code: 'place-does-not-exist',
    at: 'body-1',
    words: 'next ch-1 sp',
    saying:
      'Size XS: there is no ch-1 sp to work into here: of the 204 sts of the row below 15 are left. Size S: there is',
  },
  {
    in: 'vest',
    name: 'a multiple with a stitch too few',
    plant: swap('multiple of 3 sts plus 2', 'multiple of 3 sts plus 1'),
    code: 'multiple-in-words-off',
    at: 'notes:0',
    words: 'multiple of 3 sts plus 1',
    saying:
      '"multiple of 3 sts plus 1" is not what the rows need: those of "Panels" come out on a multiple of 3 sts plus',
  },
  {
    in: 'hat',
    name: 'a crown told half as wide again',
    plant: swap(
      'after 6 rounds it should be about 10 cm (4 in)',
      'after 6 rounds it should be about 15 cm (6 in)',
    ),
    code: 'rows-in-words-off',
    at: 'notes:2',
    words: 'after 6 rounds it should be about 15 cm',
    saying:
      '"after 6 rounds it should be about 15 cm": at the tension 6 rows come to 10 cm (4 in) across; put the number',
  },
  {
    in: 'hat',
    name: 'a growth of two stitches fewer a round',
    plant: swap('grows by 8 sts a round', 'grows by 6 sts a round'),
    code: 'growth-in-words-off',
    at: 'cover:construction',
    words: 'grows by 6 sts a round',
    saying: '"grows by 6 sts a round": no row gains or loses 6 sts; put the number or the rows',
  },
  {
    in: 'hat',
    name: 'a washing temperature that is hotter in Fahrenheit',
    plant: about({ care: 'Machine wash at 30 °C / 95 °F, dry flat.' }),
    code: 'units-disagree',
    at: 'cover:care',
    words: '30 °C / 95 °F',
    saying: '"30 °C / 95 °F" gives two different temperatures: 30 °C is 86 °F; put one of them',
  },
  {
    in: 'vest',
    name: 'three panels of which two are made',
    plant: swap('Two straight panels', 'Three straight panels'),
    code: 'pieces-in-words-off',
    at: 'cover:description',
    words: 'Three straight panels',
    saying:
      '"Three straight panels" is told here, but "Panels" is made twice; put the number right, or how many are',
  },
  {
    in: 'vest',
    name: 'buttons from another pattern',
    plant: finish('Sew the 6 buttons to the left front.'),
    code: 'notion-not-listed',
    at: 'finishing:1',
    words: 'buttons',
    saying: '"buttons" is used here, but the materials list no buttons; add it to the notions, with how',
  },
  {
    in: 'vest',
    name: 'sleeves to be set into a vest',
    plant: finish('Set in the sleeves.'),
    code: 'piece-in-words-not-there',
    at: 'finishing:1',
    words: 'sleeves',
    saying:
      '"sleeves" is to be sewn on here, but no piece of the pattern makes one; write the piece, or take the words',
  },
  {
    in: 'vest',
    name: 'a hood that nobody crochets',
    plant: finish('Sew the hood to the neck.'),
    code: 'piece-in-words-not-there',
    at: 'finishing:1',
    words: 'hood',
    saying:
      '"hood" is to be sewn on here, but no piece of the pattern makes one; write the piece, or take the words',
  },
  {
    in: 'tee',
    name: 'a round beyond the last one',
    plant: finish('Count from Rnd 60 of the Yoke.'),
    code: 'row-in-words-not-there',
    at: 'finishing:1',
    words: 'Rnd 60',
    saying: '"Rnd 60" is named here, but the longest piece has 40 rows; put the number',
  },
  {
    in: 'tee',
    name: 'a length twice as long in inches',
    plant: swap('6 rounds are 5 cm / 2 in', '6 rounds are 5 cm / 4 in'),
    code: 'units-disagree',
    at: 'body-5',
    words: '5 cm / 4 in',
    saying: '"5 cm / 4 in" gives two different lengths: 5 cm is 2 in; put one of them',
  },
  {
    in: 'tee',
    name: 'rounds that are told too high in both units',
    plant: swap('6 rounds are 5 cm / 2 in', '6 rounds are 8 cm / 3¼ in'),
    code: 'rows-in-words-off',
    at: 'body-5',
    words: '6 rounds are 8 cm',
    saying: '"6 rounds are 8 cm": at the gauge 6 rows come to 5 cm (2 in); put the number or the length',
  },
  {
    in: 'vest',
    name: 'rows for twice the length',
    plant: swap('for each ½ in (1.3 cm)', 'for each 1 in (2.5 cm)'),
    code: 'rows-in-words-off',
    at: 'panel-6',
    words: '2 rows more or fewer here for each 1 in',
    saying:
      '"2 rows more or fewer here for each 1 in": at the gauge 2 rows come to 1.5 cm (½ in); put the number or the',
  },
  {
    in: 'vest',
    name: 'no date',
    plant: about({ date: '' }),
    code: 'edition-not-stated',
    at: 'cover:title',
    words: 'The pattern does not give the date of this version; add it.',
    saying: 'The pattern does not give the date of this version; add',
  },
  {
    in: 'vest',
    name: 'a title that was never given',
    plant: about({ title: 'Untitled pattern' }),
    code: 'leftover-text',
    at: 'cover:title',
    words: 'Untitled pattern',
    saying: '"Untitled pattern" was left to be filled in; write what belongs here, or take it',
  },
  {
    in: 'vest',
    name: 'two letters in place of a number',
    plant: note('Work XX rows more if you like.'),
    code: 'leftover-text',
    at: 'notes:4',
    words: 'XX',
    saying: '"XX" was left to be filled in; write what belongs here, or take it',
  },
  {
    in: 'vest',
    name: 'an amount to be confirmed',
    plant: note('Yarn amount TBC.'),
    code: 'leftover-text',
    at: 'notes:4',
    words: 'TBC',
    saying: '"TBC" was left to be filled in; write what belongs here, or take it',
  },
  {
    in: 'vest',
    name: 'a hook with the letter of another',
    plant: note('Use a 4.5 mm (US J-10) hook.'),
    code: 'units-disagree',
    at: 'notes:4',
    words: '4.5 mm (US J-10)',
    saying: '"4.5 mm (US J-10)" gives two different hooks: 4.5 mm is US 7; put one of them',
  },
  {
    in: 'vest',
    name: 'the bands with a hook between two sizes',
    plant: swap('Work the bands with the 4 mm hook', 'Work the bands with the 3.75 mm hook'),
    code: 'hook-not-listed',
    at: 'neckband-1',
    words: '3.75 mm',
    saying:
      'The "3.75 mm" hook is not among the materials, which list 4.5 mm and 4 mm; add it to the hooks, or put the',
  },
  {
    in: 'vest',
    name: 'six markers of four',
    plant: swap('place a marker after them', 'place 6 markers after them'),
    code: 'notion-amount-short',
    at: 'back-7',
    words: '6 markers',
    saying: '6 of "Stitch markers" are used here, but the materials list 4; put one of the two',
  },
  {
    in: 'hat',
    name: 'a US name in the notes of a UK pattern',
    plant: note('Work a round of single crochet for a firm edge.'),
    code: 'other-terms-in-prose',
    at: 'notes:3',
    words: 'single crochet',
    saying:
      '"single crochet" is a US term in a pattern written in UK terms; write it in UK terms, and the other edition',
  },
  {
    in: 'vest',
    name: 'a UK spelling in the notes of a US pattern',
    plant: note('Change colour as you like.'),
    code: 'spelling-of-other-market',
    at: 'notes:4',
    words: 'colour',
    saying: '"colour" is the spelling of the other market in a pattern in US terms; write',
  },
  {
    in: 'vest',
    name: 'an article twice',
    plant: note('Work the the bands last.'),
    code: 'word-repeated',
    at: 'notes:4',
    words: 'the the',
    saying: '"the" stands twice in a row; take one out, or put in the word that was',
  },
  {
    in: 'vest',
    name: 'a comma without its space',
    plant: note('Wash,dry and press.'),
    code: 'punctuation-slip',
    at: 'notes:4',
    words: ',',
    saying: 'There is no space after a comma',
  },
  {
    in: 'vest',
    name: 'a sentence that begins small',
    plant: note('wash and dry the swatch.'),
    code: 'punctuation-slip',
    at: 'notes:4',
    words: 'w',
    saying: 'There is a small letter at the beginning',
  },
  {
    in: 'vest',
    name: 'a sentence without its stop',
    plant: note('Wash and dry the swatch before you measure it'),
    code: 'punctuation-slip',
    at: 'notes:4',
    words: 't',
    saying: 'There is no stop at the end',
  },
  {
    in: 'vest',
    name: 'a bracket left open in a note',
    plant: note('Measure the swatch (in the middle.'),
    code: 'punctuation-slip',
    at: 'notes:4',
    words: '(',
    saying: 'There is a bracket that does not close',
  },
  {
    in: 'vest',
    name: 'letters of the trade explained by half of another stitch',
    plant: explained('hdc', 'half treble crochet'),
    code: 'abbreviation-explained-otherwise',
    at: 'abbreviation:hdc',
    words:
      '"hdc" is explained as "half treble crochet", but in US terms it is "half double crochet"; put the list right, or take it out: the trade\'s own letters are explained by themselves.',
    saying:
      '"hdc" is explained as "half treble crochet", but in US terms it is "half double crochet"; put the list right,',
  },
  {
    in: 'vest',
    name: 'an abbreviation that no row uses',
    plant: explained('tbl', 'through back loop'),
    code: 'abbreviation-not-used',
    at: 'abbreviation:tbl',
    words:
      '"tbl" is explained, but nothing uses it, so it is not printed; take it out, or check how the rows spell it.',
    saying:
      '"tbl" is explained, but nothing uses it, so it is not printed; take it out, or check how the rows spell',
  },
  {
    in: 'vest',
    name: 'a ball of lace weight that is called DK',
    plant: yarn({ ballMetres: 400 }),
    code: 'ball-figures-off',
    at: 'yarn-main',
    words:
      'A ball of "A light yarn (DK), smooth and round" would have 800 m in 100 g, which is far too long for its weight; look at its band again.',
    saying:
      'A ball of "A light yarn (DK), smooth and round" would have 800 m in 100 g, which is far too long for its',
  },
  {
    in: 'vest',
    name: 'fibres of a hundred and five percent',
    plant: yarn({ fibre: '55% cotton, 50% wool' }),
    code: 'fibre-not-whole',
    at: 'yarn-main',
    words: 'The fibres "55% cotton, 50% wool" come to 105%, not 100%; put the parts right.',
    saying: 'The fibres "55% cotton, 50% wool" come to 105%, not 100%; put the parts',
  },
  {
    in: 'vest',
    name: 'a weight that the ball is not',
    plant: yarn({ weight: 0 }),
    code: 'ball-figures-off',
    at: 'yarn-main',
    words:
      'A ball of "A light yarn (DK), smooth and round" would have 224 m in 100 g, which is far too short for its weight; look at its band again.',
    saying:
      'A ball of "A light yarn (DK), smooth and round" would have 224 m in 100 g, which is far too short for its',
  },
  {
    in: 'vest',
    name: 'a gauge of half as many rows',
    plant: gauge({ rows: 8 }),
    code: 'size-values-equal',
    at: 'line-full-length',
    words:
      '"full length" is the same for S and M: 54.5 cm (21½ in); a finer multiple or another ease would tell them apart.',
    sizes: ['S', 'M'],
    saying:
      '"full length" is the same for S and M: 54.5 cm (21½ in); a finer multiple or another ease would tell them',
  },
  {
    in: 'vest',
    name: 'a gauge in the notes with two rows more',
    plant: note('Gauge: 16 sts and 18 rows = 4 in in V-stitch pattern.'),
    code: 'gauge-in-words-differs',
    at: 'notes:4',
    words: '16 sts and 18 rows = 4 in',
    saying:
      '"16 sts and 18 rows = 4 in" is not the gauge that the sizes are reckoned with (16 sts and 16 rows over 4 in',
  },
  {
    in: 'vest',
    name: 'two sizes that have changed places in a note',
    plant: note('Sizes S (XS, M, L, XL, 2X, 3X, 4X, 5X, 6X).'),
    code: 'sizes-in-words-off',
    at: 'notes:4',
    words: 'Sizes S (XS, M, L, XL, 2X, 3X, 4X, 5X, 6X)',
    saying:
      '"Sizes S (XS, M, L, XL, 2X, 3X, 4X, 5X, 6X)" tells the sizes in another order than the pattern, which goes',
  },
  {
    in: 'vest',
    name: 'a description of nine sizes',
    plant: about({ description: 'A boxy vest in nine sizes.' }),
    code: 'sizes-in-words-off',
    at: 'cover:description',
    words: 'in nine sizes',
    saying: '"in nine sizes" is not so: there are 10 sizes; put the number',
  },
  {
    in: 'vest',
    name: 'three numbers for ten sizes',
    plant: prose('back', 'Repeat for 10 (12, 14) rows.'),
    code: 'size-list-wrong-length',
    at: 'prose-new',
    words: '10 (12, 14)',
    saying:
      'This list has 3 numbers for 10 sizes, 7 too few; write one for each size, and – for a size that has',
  },
  {
    in: 'vest',
    name: 'advice on fit with the ease of another garment',
    plant: about({
      fit: 'Boxy: choose the size with a finished bust 8 to 10 in / 20 to 25.5 cm larger than yours.',
    }),
    code: 'ease-in-words-off',
    at: 'cover:fit',
    words: '8 to 10 in / 20 to 25.5 cm larger than yours',
    saying:
      '"8 to 10 in / 20 to 25.5 cm larger than yours" is not how it comes out: "Finished bust" is from 10 cm (4 in)',
  },
  {
    in: 'vest',
    name: 'an ease with another far end in centimetres',
    plant: about({
      fit: 'Boxy: choose the size with a finished bust 4 to 6 in / 10 to 20 cm larger than yours.',
    }),
    code: 'units-disagree',
    at: 'cover:fit',
    words: '4 to 6 in / 10 to 20 cm',
    saying: '"4 to 6 in / 10 to 20 cm" gives two different lengths: 6 in is 15 cm; put one of them',
  },
  {
    in: 'tee',
    name: 'rounds that the cover calls rows',
    plant: about({ construction: 'Worked in rows from the neck down.' }),
    code: 'rounds-contradicted',
    at: 'cover:construction',
    words: 'Worked in rows',
    saying:
      '"Worked in rows" says that it is worked in rows, but the rows work in rounds that are joined; change the',
  },
  {
    in: 'vest',
    name: 'one armband for two arms',
    plant: piece('armband', () => ({ make: 1 })),
    code: 'copies-not-said',
    at: 'armband',
    words: '"Armbands" are several, but one is made; enter how many, or name the piece for one.',
    saying: '"Armbands" are several, but one is made; enter how many, or name the piece for',
  },
  {
    in: 'vest',
    name: 'bands in rounds by the gauge of rows',
    plant: piece('armband', () => ({ gauge: 'gauge-v' })),
    code: 'gauge-worked-otherwise',
    at: 'armband',
    words:
      '"Armbands" is worked in rounds, but its gauge "V-stitch pattern (8 repeats of 2 rows)" is of a swatch in rows; measure one in rounds and give that gauge for the piece.',
    saying:
      '"Armbands" is worked in rounds, but its gauge "V-stitch pattern (8 repeats of 2 rows)" is of a swatch in',
  },
  {
    in: 'vest',
    name: 'panels that begin on the other side',
    plant: piece('panel', () => ({ firstSide: 'RS' })),
    code: 'side-of-work-off',
    at: 'panel-6',
    words: 'last row is a WS row',
    saying:
      'These words say that the last row is WS, but by the rows before it is RS; change the words, or the number of',
  },
  {
    in: 'vest',
    name: 'a shoulder begun with the wrong side facing',
    plant: swap('With RS facing, sk next {neck stitches} sts', 'With WS facing, sk next {neck stitches} sts'),
    code: 'side-of-work-off',
    at: 'right-shoulder-2',
    words: 'With WS facing',
    saying:
      'These words say WS, but by the rows before it RS faces here; change the words, or the side that the piece',
  },
  {
    in: 'vest',
    name: 'yarn cut where it goes on',
    plant: swap('Do not fasten off. The shoulders are worked', 'Fasten off. The shoulders are worked'),
    code: 'yarn-fastened-off-early',
    at: 'left-shoulder-2',
    words:
      '"Left Front Shoulder" goes on from "Front", where the yarn is fastened off, and no yarn is joined; write where it is joined, or "Do not fasten off." there.',
    saying:
      '"Left Front Shoulder" goes on from "Front", where the yarn is fastened off, and no yarn is joined; write',
  },
  {
    in: 'vest',
    name: 'a cover photograph described by its file',
    plant: about({ cover: { id: 'a'.repeat(32), alt: 'IMG_2041.jpg', caption: null } }),
    code: 'photo-not-described',
    at: 'cover:title',
    words: 'The cover photograph is not described; say in a sentence what it shows.',
    saying: 'The cover photograph is not described; say in a sentence what it',
  },
  {
    in: 'hat',
    name: 'a ribbon through a hat for babies',
    plant: finish('Thread a ribbon of 60 cm through the band.'),
    code: 'cord-on-child-size',
    at: 'finishing:1',
    words: 'ribbon',
    sizes: ['Newborn', '3–6 months', '6–12 months', 'Toddler', 'Child'],
    saying:
      '"ribbon" stands in a pattern with sizes Newborn, 3–6 months, 6–12 months, Toddler and Child for children, so',
  },
  {
    in: 'hat',
    name: 'buttons glued to a hat for babies',
    plant: finish('Glue two buttons to the band.'),
    code: 'small-part-on-child-size',
    at: 'finishing:1',
    words: 'buttons',
    sizes: ['Newborn', '3–6 months', '6–12 months', 'Toddler'],
    saying:
      '"buttons" stands in a pattern with sizes Newborn, 3–6 months, 6–12 months and Toddler for a child under',
  },
  {
    in: 'tee',
    name: 'one size with half of its yarn',
    plant: yarn({
      metres: {
        'size-xs': 880,
        'size-s': 1010,
        'size-m': 560,
        'size-l': 1250,
        'size-xl': 1370,
        'size-2x': 1500,
        'size-3x': 1630,
        'size-4x': 1760,
        'size-5x': 1900,
      },
    }),
    code: 'yarn-amount-off',
    at: 'yarn-main',
    words:
      'In size M, for the yarn "A light yarn (DK) with drape", 560 m is less than the 973 m that its stitches take, going by what finished pieces used; with your margin that makes 1119 m. Enter that, or take the amount out and the estimate is printed.',
    sizes: ['M'],
    saying:
      'In size M, for the yarn "A light yarn (DK) with drape", 560 m is less than the 973 m that its stitches take,',
  },
  {
    in: 'tee',
    name: 'balls in the description for half of the yarn',
    plant: about({ description: 'An easy tee. You need 2 (3, 3, 3, 4, 4, 4, 5, 5) balls of yarn.' }),
    code: 'balls-in-words-off',
    at: 'cover:description',
    words: '2 (3, 3, 3, 4, 4, 4, 5, 5) balls',
    saying:
      'Size XS: these words say 2 balls, but the amount of "A light yarn (DK) with drape" comes to 4; put the words',
  },
  {
    in: 'tee',
    name: 'a note that counts a chain which the rows do not count',
    plant: swap(
      'The ch 2 at the beginning of a round does not count as a st',
      'The ch 2 at the beginning of a round counts as a st',
    ),
    code: 'turning-chain-contradicted',
    at: 'yoke-3',
    words: 'does not count as a st',
    saying:
      'The notes say that ch 2 at the beginning counts as a stitch; here it says the contrary. Change the row, or',
  },
  {
    in: 'tee',
    name: 'the numbers of a line with one of them slipped',
    plant: swap(
      'half the back, a sleeve',
      '30 (32, 34, 34, 36, 36, 38, 38, 40) front sts, half the back, a sleeve',
    ),
    code: 'typed-numbers-near-line',
    at: 'yoke-4',
    words: '30 (32, 34, 34, 36, 36, 38, 38, 40)',
    sizes: ['5X'],
    saying:
      'These are the numbers of "front neck stitches" but for size 5X, where it has 38 and not 40; put the number',
  },
  {
    in: 'tee',
    name: 'a body shorter in inches',
    plant: note('The body is 33 cm / 10 in long.'),
    code: 'units-disagree',
    at: 'notes:3',
    words: '33 cm / 10 in',
    saying: '"33 cm / 10 in" gives two different lengths: 33 cm is 13 in; put one of them',
  },
  {
    in: 'tee',
    name: 'a page that another edition does not have',
    plant: note('See the schematic on page 4.'),
    code: 'page-in-words',
    at: 'notes:3',
    words: 'on page 4',
    saying: '"on page 4" is right in one edition only; name the section, the piece or the row',
  },
  {
    in: 'tee',
    name: 'an address that browsers warn of',
    plant: note('Video: http://clips.example/raglan'),
    code: 'link-not-plain',
    at: 'notes:3',
    words: 'http://clips.example/raglan',
    saying: '"http://clips.example/raglan" begins with http, which browsers warn of; write the address',
  },
  {
    in: 'vest',
    name: 'a swatch with a stitch too few',
    plant: swap('(26 sts, 8 V-sts)', '(25 sts, 8 V-sts)'),
    code: 'swatch-in-words-off',
    at: 'notes:2',
    words: 'ch 27 and work 20 rows of the pattern (25 sts, 8 V-sts)',
    saying: 'on 27 chains the rows of "Panels" make 18 or 26 sts',
  },
  {
    in: 'vest',
    name: 'a swatch with a V-stitch too many',
    plant: swap('(26 sts, 8 V-sts)', '(26 sts, 9 V-sts)'),
    code: 'swatch-in-words-off',
    at: 'notes:2',
    saying: 'on 27 chains the rows of "Panels" make 8 V-sts',
  },
  {
    in: 'vest',
    name: 'a swatch on a chain too many',
    plant: swap('ch 27 and work', 'ch 28 and work'),
    code: 'swatch-in-words-off',
    at: 'notes:2',
    saying: 'is no chain that the rows of "Panels" come out on; ch 27 or ch 30 would do',
  },
];
