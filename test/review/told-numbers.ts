/**
 * Numbers that a text tells beside the rows, the gauge and the materials: multiples, sums, stitches from each end,
 * swatches, balls, markers. Wrong ones planted in the clean pattern, and right ones that must be left alone.
 * Invented; the clean panels have 72, 80 and 88 stitches at 16 stitches and 18 rows in 10 cm.
 */
import { inBlock, inLine, note, type Plant, repeat, reword, row } from './builder.ts';
import { all, finishing, notion, type Planted, prose, yarns } from './editing.ts';

/** Mesh in place of plain rows: 1 sc, then a chain and a sc again and again; an odd number of stitches. */
const mesh: Plant = all(
  inLine('stitches', { multiple: 2, plus: 1 }),
  ...['front', 'back'].flatMap((id) => [
    reword(`${id}-2`, 'Ch 1, sc in first st, *ch 1, sk 1 st, sc in next st; rep from * across, turn.'),
    inBlock(`${id}-2`, (block) => [
      block,
      row(`${id}-21`, 'Ch 1, sc in first st, *sc in next ch-sp, sc in next st; rep from * across, turn.'),
    ]),
    inBlock(`${id}-3`, () => [repeat(`${id}-3`, `${id}-2`, `${id}-21`, 'panel rows − 1')]),
  ]),
);

/** The same with two chains over two stitches: 3 for each repeat, and 1. */
const wide: Plant = all(
  inLine('stitches', { multiple: 3, plus: 1 }),
  ...['front', 'back'].flatMap((id) => [
    reword(`${id}-2`, 'Ch 1, sc in first st, *ch 2, sk 2 sts, sc in next st; rep from * across, turn.'),
    inBlock(`${id}-2`, (block) => [
      block,
      row(`${id}-21`, 'Ch 1, sc in first st, *2 sc in next ch-sp, sc in next st; rep from * across, turn.'),
    ]),
    inBlock(`${id}-3`, () => [repeat(`${id}-3`, `${id}-2`, `${id}-21`, 'panel rows − 1')]),
  ]),
);

const markers = (amount: number): Plant => notion('Stitch markers', { all: amount });

export const toldNumbers: readonly Planted[] = [
  {
    name: 'a multiple of another stitch pattern',
    plant: all(wide, note('The pattern works over a multiple of 4 sts plus 1.')),
    code: 'multiple-in-words-off',
    node: 'notes:0',
    words: 'multiple of 4 sts plus 1',
    saying: ['"Front"', 'a multiple of 3 sts plus 1'],
    fix: 'multiple of 3 sts plus 1',
  },
  {
    // Rows of 3 a repeat come out on 4, 7, 10 … stitches, which are chains less one: 5, 8, 11 …; 3, 6, 9 are neither.
    name: 'a multiple without what is left over',
    plant: all(wide, note('Begin with any multiple of three stitches.')),
    code: 'multiple-in-words-off',
    words: 'multiple of three stitches',
    fix: null,
  },
  {
    name: 'parts that do not come to their sum',
    plant: finishing('Pick up 24 sts from the front and 26 from the back: 52 sts.'),
    code: 'sum-in-words-off',
    node: 'finishing:1',
    words: '24 sts from the front and 26 from the back: 52 sts',
    saying: ['24 and 26 are 50 and not 52'],
  },
  {
    name: 'parts that come to their sum in all sizes but one',
    plant: note(
      'Work 24 (26, 28) sts from the front and 26 (28, 30) from the back for 50 (54, 60) sts in all.',
    ),
    code: 'sum-in-words-off',
    sizes: [2],
    saying: ['28 and 30 are 58 and not 60'],
  },
  {
    name: 'a part that the piece does not have',
    plant: finishing(
      'Work over the 70 (80, 88) sts of the front and 72 (80, 88) of the back: 142 (160, 176) sts.',
    ),
    code: 'sum-in-words-off',
    sizes: [0],
    saying: ['70 sts of Front', 'its last has 72'],
  },
  {
    name: 'marks that cross',
    // 2 × 42 are 84: more than 72 and 80, and not more than 88.
    plant: prose('front-3', 'Count 42 sts in from each end and place a thread there.'),
    code: 'ends-in-words-off',
    node: 'front-3-prose',
    words: '42 sts in from each end',
    sizes: [0, 1],
    saying: ['42 sts from each end are 84', 'the row has 72'],
  },
  {
    name: 'a stitch that is marked beyond the middle',
    plant: prose('front-3', 'Mark the 40th st from each end.'),
    code: 'ends-in-words-off',
    words: '40th st from each end',
    sizes: [0],
  },
  {
    name: 'a middle of another width',
    // 72 − 40 = 32, 80 − 44 = 36, 88 − 48 = 40.
    plant: finishing(
      'Sew front to back over 20 (22, 24) sts from each end, leaving the centre 32 (36, 42) sts open for the neck.',
    ),
    code: 'ends-in-words-off',
    sizes: [2],
    saying: ['24 sts from each end of 88 leave 40', 'and not 42'],
  },
  {
    name: 'a gauge in words',
    plant: note('Work to a gauge of eighteen stitches and twenty rows to ten centimetres.'),
    code: 'gauge-in-words-differs',
    words: 'eighteen stitches and twenty rows to ten centimetres',
  },
  {
    name: 'a gauge of one inch',
    // 16 sts in 10 cm are 4.06 in an inch.
    plant: note('That is five stitches to the inch.'),
    code: 'gauge-in-words-differs',
    words: 'five stitches to the inch',
  },
  {
    name: 'a square that is counted',
    plant: note('A 10 cm (4 in) square has 18 sts and 18 rows.'),
    code: 'gauge-in-words-differs',
    words: '10 cm (4 in) square has 18 sts and 18 rows',
  },
  {
    name: 'a swatch that is measured',
    // 24 sts at 16 in 10 cm are 15 cm; 27 rows at 18 are 15 cm.
    plant: note('A swatch of 24 sts and 27 rows measures 15 cm wide and 12.5 cm high.'),
    code: 'gauge-in-words-differs',
    words: 'swatch of 24 sts and 27 rows measures 15 cm wide and 12.5 cm',
  },
  {
    name: 'another number of balls in a note',
    // 500, 560 and 620 m at 90 m a ball: 6, 7 and 7 balls.
    plant: note('The vest takes 6 (7, 8) balls.'),
    code: 'balls-in-words-off',
    node: 'notes:0',
    words: '6 (7, 8) balls',
    sizes: [2],
    saying: ['8 balls', 'comes to 7'],
  },
  {
    name: 'one number of balls that no size has',
    plant: note('You will need five balls.'),
    code: 'balls-in-words-off',
    sizes: [0, 1, 2],
  },
  {
    name: 'balls of one size',
    plant: note('For size S, buy 7 balls.'),
    code: 'balls-in-words-off',
    sizes: [0],
  },
  {
    name: 'a marker in each corner, and fewer in the list',
    plant: all(markers(2), note('Place a marker in each of the four corners.')),
    code: 'notion-amount-short',
    words: 'a marker in each of the four corners',
    saying: ['4 of "Stitch markers"', 'list 2'],
  },
  {
    name: 'a marker in each corner, whose number another text tells',
    plant: all(
      markers(3),
      note('The yoke is a square with 4 corners.'),
      prose('front-3', 'Place a marker in each corner.'),
    ),
    code: 'notion-amount-short',
    node: 'front-3-prose',
  },
  {
    name: 'two markers at each end',
    plant: all(markers(3), note('Place 2 markers at each end.')),
    code: 'notion-amount-short',
  },
];

export const rightNumbers: readonly {
  readonly name: string;
  readonly plant: Plant;
  readonly except?: readonly string[];
}[] = [
  { name: 'the multiple of the rows', plant: all(mesh, note('A multiple of 2 sts plus 1.')) },
  { name: 'a multiple of two repeats', plant: all(wide, note('A multiple of 6 sts + 4.')) },
  { name: 'the same multiple in chains', plant: all(wide, note('Chain a multiple of 3 plus 2.')) },
  { name: 'a multiple where no row repeats', plant: note('Any multiple of 4 sts will do.') },
  {
    name: 'parts that come to their sum',
    plant: finishing('Pick up 24 sts from the front and 26 from the back: 50 sts.'),
  },
  {
    name: 'parts of which some are there twice',
    plant: finishing('Pick up 12 sts from each front edge and 26 from the back: 50 sts.'),
  },
  {
    name: 'numbers that are no parts',
    plant: note('Leave 10 sts at the sides, 12 in the middle, and go on.'),
  },
  {
    name: 'all stitches of two pieces',
    plant: finishing(
      'Work over the 72 (80, 88) sts of the front and 72 (80, 88) of the back: 144 (160, 176) sts.',
    ),
    except: ['typed-numbers-of-line'],
  },
  {
    name: 'stitches from each end, and the middle between',
    plant: prose(
      'front-3',
      'Count 20 (22, 24) sts from each end: 32 (36, 40) sts in the middle. Then mark the 21st st from each end.',
    ),
    except: ['notion-not-listed'],
  },
  { name: 'a few stitches from each edge', plant: note('Decrease 2 sts in from each edge.') },
  {
    name: 'the gauge in other words',
    plant: note('Sixteen stitches and eighteen rows to ten centimetres, or four stitches to the inch.'),
  },
  {
    name: 'a swatch that is right',
    plant: note('A swatch of 24 sts and 27 rows should measure 15 cm (6 in) wide by 15 cm (6 in) high.'),
  },
  { name: 'a square that is right', plant: note('A 10 cm (4 in) square has 16 sts and 18 rows.') },
  { name: 'the balls of the list', plant: note('The vest takes 6 (7, 7) balls.') },
  { name: 'the balls of some size', plant: note('You will need 7 balls.') },
  { name: 'the balls of the sample', plant: note('The sample needs 5 balls.') },
  {
    name: 'balls of one of two yarns, and of both',
    plant: all(
      yarns('B'),
      note(
        'It takes 6 (7, 7) balls of A. You need 13 balls altogether. Work two rows in A, then two rows in B.',
      ),
    ),
  },
  {
    name: 'as many markers as corners',
    plant: all(markers(4), note('Place a marker in each of the 4 corners.')),
  },
  { name: 'a marker that is moved along', plant: all(markers(1), note('Move the marker up at each end.')) },
  { name: 'how often, close to its cross', plant: note('Work the edging of each panel x2.') },
  { name: 'corners that nobody counts', plant: all(markers(1), note('Place a marker in each corner.')) },
];
