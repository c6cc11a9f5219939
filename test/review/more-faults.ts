/**
 * More faults as an editor meets them, planted one by one in copies of the examples. Each says which finding it must
 * give, where, at which words and in which sizes. Invented.
 */
import type { FigureText, Line, Pattern, Piece } from '../../core/document/pattern.ts';
import { text as figured } from '../../core/document/writer.ts';
import { type Fault, type Plant, swap } from './faults.ts';

const about =
  (change: Partial<Pattern['about']>): Plant =>
  (pattern) => ({ ...pattern, about: { ...pattern.about, ...change } });

const line =
  (name: string, change: Partial<Line>): Plant =>
  (pattern) => ({
    ...pattern,
    lines: pattern.lines.map((each) => (each.name === name ? ({ ...each, ...change } as Line) : each)),
  });

/** One size's value of a line whose values are typed. */
const typed =
  (name: string, size: string, value: number): Plant =>
  (pattern) => ({
    ...pattern,
    lines: pattern.lines.map((each) => {
      if (each.name !== name) return each;
      if (each.kind === 'body')
        return { ...each, overtyped: { ...each.overtyped, [size]: { value, unit: 'in' as const } } };
      if (each.kind !== 'typed' || !('each' in each.values)) return each;
      const own = each.values.each;
      return { ...each, values: { each: { ...own, [size]: { ...own[size]!, value } } } };
    }),
  });

const note =
  (words: string): Plant =>
  (pattern) => ({ ...pattern, notes: [...pattern.notes, figured(words)] });
const finish =
  (words: string): Plant =>
  (pattern) => ({ ...pattern, finishing: [...pattern.finishing, figured(words)] });
/** A change of the first yarn, gauge or hook. */
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
const hook =
  (change: Partial<Pattern['hooks'][number]>): Plant =>
  (pattern) => ({
    ...pattern,
    hooks: pattern.hooks.map((each, i) => (i === 0 ? { ...each, ...change } : each)),
  });
const size =
  (label: string, change: Partial<Pattern['sizes'][number]>): Plant =>
  (pattern) => ({
    ...pattern,
    sizes: pattern.sizes.map((each) => (each.label === label ? { ...each, ...change } : each)),
  });
const special =
  (text: FigureText): Plant =>
  (pattern) => ({ ...pattern, specials: pattern.specials.map((each) => ({ ...each, text })) });
const piece =
  (id: string, change: (piece: Piece) => Partial<Piece>): Plant =>
  (pattern) => ({
    ...pattern,
    pieces: pattern.pieces.map((each) => (each.id === id ? { ...each, ...change(each) } : each)),
  });
const all =
  (...plants: readonly Plant[]): Plant =>
  (pattern) =>
    plants.reduce((of, plant) => plant(of), pattern);

export const moreFaults: readonly Fault[] = [
  {
    in: 'tee',
    name: 'a count before the cuff that is two too many',
    plant: swap('There are {cuff stitches} sts.', 'There are {cuff stitches + 2} sts.'),
    code: 'count-in-words-off',
    at: 'sleeve-6',
    words: '[cuff stitches + 2]',
    saying: 'Size XS: these words state 46 sts, but the row before makes 44, 2 fewer',
  },
  {
    in: 'hat',
    name: 'a stated figure four short',
    plant: swap('({hat stitches} tr)', '({hat stitches − 4} tr)'),
    code: 'stated-count-wrong',
    at: 'hat-21',
    words: '([hat stitches − 4] tr)',
    saying: 'Size Newborn: the row says 52, but working it gives 56 tr, 4 more',
  },
  {
    in: 'vest',
    name: 'a corner that draws in one stitch too few',
    plant: swap(
      'hdc3tog over next 3 sts, hdc in each of next {neck stitches − 4} sts',
      'hdc2tog over next 2 sts, hdc in each of next {neck stitches − 4} sts',
    ),
    code: 'stitches-left-unworked',
    at: 'neckband-4',
    words: 'hdc in each of next [neck rows] sts',
    saying: 'Sizes XS, S and M: 1 st of 102 is left at the end and the row does not say so',
  },
  {
    in: 'hat',
    name: 'a ring with two stitches too many',
    plant: swap('8 htr in ring', '10 htr in ring'),
    code: 'stated-count-wrong',
    at: 'hat-2',
    words: '(8 htr)',
    saying: 'The row says 8, but working it gives 10 htr, 2 more',
    follows: ['repeat-does-not-fit'],
  },
  {
    in: 'hat',
    name: 'a crown that would be half as wide again',
    plant: swap('about 10 cm (4 in) across', 'about 15 cm (6 in) across'),
    code: 'rows-in-words-off',
    at: 'notes:2',
    words: 'after 6 rounds it should be about 15 cm',
    saying: '"after 6 rounds it should be about 15 cm": at the tension 6 rows come to 10 cm (4 in) across',
  },
  {
    in: 'hat',
    name: 'a growth of another crown',
    plant: swap('The crown grows by 8 sts a round', 'The crown grows by 6 sts a round'),
    code: 'growth-in-words-off',
    at: 'cover:construction',
    words: 'grows by 6 sts a round',
    saying: '"grows by 6 sts a round": no row gains or loses 6 sts',
  },
  {
    in: 'tee',
    name: 'rounds of another tension',
    plant: swap('6 rounds are 5 cm / 2 in', '8 rounds are 5 cm / 2 in'),
    code: 'rows-in-words-off',
    at: 'body-5',
    words: '8 rounds are 5 cm',
    saying: '"8 rounds are 5 cm": at the gauge 8 rows come to 6.5 cm (2½ in)',
  },
  {
    in: 'vest',
    name: 'two rows told as twice as high',
    plant: swap(
      '2 rows more or fewer here for each ½ in (1.3 cm)',
      '2 rows more or fewer here for each 1 in (2.5 cm)',
    ),
    code: 'rows-in-words-off',
    at: 'panel-6',
    words: '2 rows more or fewer here for each 1 in',
    saying: '"2 rows more or fewer here for each 1 in": at the gauge 2 rows come to 1.5 cm (½ in)',
  },
  {
    in: 'tee',
    name: 'an ease in inches of another size',
    plant: about({
      fit: 'Standard: choose the size with a finished bust 4 to 10 cm / 1½ to 6 in larger than yours.',
    }),
    code: 'units-disagree',
    at: 'cover:fit',
    words: '4 to 10 cm / 1½ to 6 in',
    saying: '"4 to 10 cm / 1½ to 6 in" gives two different lengths: 10 cm is 4 in',
  },
  {
    in: 'hat',
    name: 'a washing temperature with its scales apart',
    plant: about({ care: 'Machine wash at 40 °C / 86 °F on a gentle cycle, dry flat.' }),
    code: 'units-disagree',
    at: 'cover:care',
    words: '40 °C / 86 °F',
    saying: '"40 °C / 86 °F" gives two different temperatures: 40 °C is 104 °F',
  },
  {
    in: 'vest',
    name: 'a ball that weighs nothing',
    plant: yarn({ ballGrams: 0 }),
    code: 'ball-figures-off',
    at: 'yarn-main',
    saying: 'A ball of "A light yarn (DK), smooth and round" has 0 g',
  },
  {
    in: 'vest',
    name: 'a ball with no yarn on it',
    plant: yarn({ ballMetres: 0 }),
    code: 'ball-figures-off',
    at: 'yarn-main',
    saying: 'A ball of "A light yarn (DK), smooth and round" has 0 m',
  },
  {
    in: 'vest',
    name: 'a size with the body of another',
    plant: size('2X', { chart: 'XL' }),
    code: 'sizes-come-out-equal',
    at: null,
    sizes: ['XL', '2X'],
    saying: 'XL and 2X come out the same in all 5 printed measurements',
  },
  {
    in: 'tee',
    name: 'no version',
    plant: about({ version: '' }),
    code: 'edition-not-stated',
    at: 'cover:title',
    saying: 'The pattern does not give its version',
  },
  {
    in: 'hat',
    name: 'rounds that are called rows',
    plant: about({ construction: 'Worked from the crown down in rows.' }),
    code: 'rounds-contradicted',
    at: 'cover:construction',
    words: 'Worked from the crown down in rows',
    saying:
      '"Worked from the crown down in rows" says that it is worked in rows, but the rows work in rounds tha',
  },
  {
    in: 'hat',
    name: 'the band with a hook that is not listed',
    plant: swap('Change to the 4 mm hook', 'Change to the 3.5 mm hook'),
    code: 'hook-not-listed',
    at: 'hat-20',
    words: '3.5 mm',
    saying: 'The "3.5 mm" hook is not among the materials, which list 4.5 mm and 4 mm',
  },
  {
    in: 'tee',
    name: 'markers that are not on the list',
    plant: (pattern) => ({
      ...pattern,
      notions: pattern.notions.filter(({ name }) => !name.includes('marker')),
    }),
    code: 'notion-not-listed',
    at: 'yoke-4',
    words: 'marker',
    saying: '"marker" is used here, but the materials list no stitch markers',
  },
  {
    in: 'hat',
    name: 'a photograph among the rows without a description',
    plant: piece('hat', ({ blocks }) => ({
      blocks: [...blocks, { type: 'photo', id: 'photo', media: { id: 'picture', alt: '', caption: null } }],
    })),
    code: 'photo-not-described',
    at: 'photo',
    saying: 'A photograph in "Hat" is not described',
  },
  {
    in: 'vest',
    name: 'a special stitch with a chain more',
    plant: special(figured('(hdc, ch 2, hdc) in st indicated')),
    code: 'stated-count-wrong',
    at: 'panel-4',
    words: '([panel stitches] sc)',
    saying: 'Size XS: the row says 68, but working it gives 46 sc, 22 fewer',
    follows: [
      'edge-too-short',
      'meeting-without-edge',
      'pieces-do-not-meet',
      'place-does-not-exist',
      'repeat-does-not-fit',
      'stitches-left-unworked',
    ],
  },
  {
    in: 'vest',
    name: 'a short form that the pattern does not use',
    plant: swap('join with sl st in first FPhdc', 'join with ss in first FPhdc'),
    code: 'wording-differs',
    at: 'neckband-5',
    words: 'ss',
    saying: '"ss" is written here, but the pattern mostly has "sl st"',
  },
  {
    in: 'tee',
    name: 'a UK spelling among the rows',
    plant: swap('Rounds begin at the center back', 'Rounds begin at the centre back'),
    code: 'spelling-of-other-market',
    at: 'yoke-1',
    words: 'centre',
    saying: '"centre" is the spelling of the other market in a pattern in US terms',
  },
  {
    in: 'vest',
    name: 'a UK spelling in the notes',
    plant: note('Any colour will do.'),
    code: 'spelling-of-other-market',
    at: 'notes:4',
    words: 'colour',
    saying: '"colour" is the spelling of the other market in a pattern in US terms',
  },
  {
    in: 'hat',
    name: 'a US spelling in the notes',
    plant: note('Any color will do.'),
    code: 'spelling-of-other-market',
    at: 'notes:3',
    words: 'color',
    saying: '"color" is the spelling of the other market in a pattern in UK terms',
  },
  {
    in: 'tee',
    name: 'a neck with a figure slipped',
    plant: typed('front neck stitches', 'size-l', 44),
    code: 'size-step-out-of-line',
    at: 'line-front-neck-stitches',
    sizes: ['L'],
    saying:
      'In size L, the value of "front neck stitches" goes 34, 44, 36 from size to size, which does not go w',
  },
  {
    in: 'hat',
    name: 'a band with a figure too many',
    plant: typed('band rounds', 'size-child', 14),
    code: 'size-step-out-of-line',
    at: 'line-band-rounds',
    sizes: ['Child'],
    saying:
      'In size Child, the value of "band rounds" goes 4, 14, 4 from size to size, which does not go with th',
  },
  {
    in: 'vest',
    name: 'a bust with a figure lost',
    plant: typed('bust', 'size-6x', 6),
    code: 'fit-not-positive',
    at: 'line-underarm-stitches',
    words: '(width of panel stitches − yoke width) ÷ 2',
    sizes: ['6X'],
    saying: 'In size 6X, the length of "underarm stitches" comes to −11.5 cm (−4½ in)',
    follows: ['figure-waits', 'repeat-does-not-fit', 'stitches-left-unworked'],
  },
  {
    in: 'hat',
    name: 'a tension over inches for centimetres',
    plant: gauge({ width: { value: 10, unit: 'in' } }),
    code: 'repeat-does-not-fit',
    at: 'hat-14',
    words: '*1 htr in each of next [stitches between] sts, 2 htr in next st; rep from * around',
    sizes: ['6–12 months', 'Adult'],
    saying: 'Size 6–12 months: after 10 repeats 4 sts are left',
    follows: ['stated-count-wrong'],
  },
  {
    in: 'vest',
    name: 'a hook without its point',
    plant: hook({ mm: 45 }),
    code: 'hook-size-off',
    at: 'hook-body',
    saying: 'No hook has 45 mm; look for the point, 4.5 mm may be meant',
  },
  {
    in: 'vest',
    name: 'a ball with a figure lost',
    plant: yarn({ ballMetres: 11 }),
    code: 'ball-figures-off',
    at: 'yarn-main',
    saying:
      'A ball of "A light yarn (DK), smooth and round" would have 22 m in 100 g, which is far too short for',
  },
  {
    in: 'hat',
    name: 'no title',
    plant: about({ title: '' }),
    code: 'cover-incomplete',
    at: 'cover:title',
    saying: 'The pattern has no title yet',
  },
  {
    in: 'tee',
    name: 'an address without its ending',
    plant: about({ contact: 'patterns@quillfeather' }),
    code: 'link-not-plain',
    at: 'cover:contact',
    words: 'patterns@quillfeather',
    saying: '"patterns@quillfeather" is no whole address: what stands behind the @ has no ending',
  },
  {
    in: 'hat',
    name: 'a join to the second stitch',
    plant: swap('join with ss in first FPtr', 'join with ss in first BPtr'),
    code: 'join-names-other-stitch',
    at: 'hat-22',
    words: 'in first BPtr',
    saying: '"in first BPtr" names another stitch than the first of this round, which is "FPtr"',
  },
  {
    in: 'hat',
    name: 'a join that names the round before',
    plant: swap('join with ss in first tr', 'join with ss in first htr'),
    code: 'join-names-other-stitch',
    at: 'hat-21',
    words: 'in first htr',
    saying: '"in first htr" names another stitch than the first of this round, which is "tr"',
  },
  {
    in: 'vest',
    name: 'a shoulder that meets three stitches more',
    plant: piece('left-shoulder', ({ meets }) => ({
      meets: meets.map((each) => ({ ...each, other: { ...each.other, amount: 'shoulder stitches + 3' } })),
    })),
    code: 'pieces-do-not-meet',
    at: 'left-shoulder',
    saying:
      'Size XS: the last row of "Left Front Shoulder" and the last row of "Back" are to meet, but have 14 and 17',
  },
  {
    in: 'vest',
    name: 'a neckband that forgets a seam',
    plant: piece('neckband', ({ start }) => ({
      start: start.kind === 'edges' ? { ...start, edges: start.edges.filter((_, i) => i !== 1) } : start,
    })),
    code: 'place-does-not-exist',
    at: 'neckband-2',
    words: 'in each of next [neck rows] row-ends',
    saying: 'Sizes XS, S and M: there is no row-end to work into here: all 101 sts of the row below are used',
    follows: ['repeat-does-not-fit', 'stated-count-wrong'],
  },
  {
    in: 'vest',
    name: 'a neckband that never ends',
    plant: piece('neckband', ({ blocks }) => ({
      blocks: blocks.filter((block) => block.type !== 'prose' || !block.text.text.includes('Fasten')),
    })),
    code: 'yarn-not-fastened-off',
    at: 'neckband-6',
    saying: 'Nothing says what becomes of the yarn at the end of "Neckband"',
  },
  {
    in: 'tee',
    name: 'a yoke cut off from its body',
    plant: swap(
      'Try the yoke on: it should reach the underarm. Do not fasten off.',
      'Try the yoke on: it should reach the underarm. Fasten off.',
    ),
    code: 'yarn-fastened-off-early',
    at: 'body-1',
    saying: '"Body" goes on from "Yoke", where the yarn is fastened off, and no yarn is joined',
  },
  {
    in: 'vest',
    name: 'a front cut off from its shoulders',
    plant: swap('Do not fasten off. The shoulders are', 'Fasten off. The shoulders are'),
    code: 'yarn-fastened-off-early',
    at: 'left-shoulder-2',
    saying:
      '"Left Front Shoulder" goes on from "Front", where the yarn is fastened off, and no yarn is joined',
  },
  {
    in: 'hat',
    name: 'a note that begins small',
    plant: swap('Your crown is your', 'your crown is your'),
    code: 'punctuation-slip',
    at: 'notes:2',
    words: 'y',
    saying: 'There is a small letter at the beginning here',
  },
  {
    in: 'hat',
    name: 'a note without its stop',
    plant: note('Wash the swatch as you will the hat'),
    code: 'punctuation-slip',
    at: 'notes:3',
    words: 't',
    saying: 'There is no stop at the end here',
  },
  {
    in: 'tee',
    name: 'a space before a stop',
    plant: swap('center back. Take care', 'center back . Take care'),
    code: 'punctuation-slip',
    at: 'yoke-1',
    words: ' .',
    saying: 'There is a space before a stop here',
  },
  {
    in: 'tee',
    name: 'a comma without its space',
    plant: swap('too tall or too short, try', 'too tall or too short,try'),
    code: 'punctuation-slip',
    at: 'notes:2',
    words: ',',
    saying: 'There is no space after a comma here',
  },
  {
    in: 'vest',
    name: 'a bracket of a note left open',
    plant: swap('(26 sts, 8 V-sts).', '(26 sts, 8 V-sts.'),
    code: 'punctuation-slip',
    at: 'notes:2',
    words: '(',
    saying: 'There is a bracket that does not close here',
  },
  {
    in: 'tee',
    name: 'five corners',
    plant: swap('rep from * 3 more times', 'rep from * 4 more times'),
    code: 'place-does-not-exist',
    at: 'yoke-5-shaped',
    words:
      'Ch 2 (does not count as a st), *hdc in each hdc to next ch-1 sp, (hdc, ch 1, hdc) in ch-1 sp; rep from * 4 more times, hdc in each hdc to end; join with sl st in first hdc.',
    saying:
      'Size XS: there is no ch-1 sp to work into here, in repeat 5 of 5: all 96 sts of the row below are used',
  },
  {
    in: 'tee',
    name: 'six sides',
    plant: swap('rep from * once more', 'rep from * twice more'),
    code: 'place-does-not-exist',
    at: 'yoke-7-shaped',
    words:
      'Ch 2 (does not count as a st), *hdc in each hdc to next ch-1 sp, (hdc, ch 1) in ch-1 sp, hdc in each hdc to next ch-1 sp, (ch 1, hdc) in ch-1 sp; rep from * twice more, hdc in each hdc to end; join with sl st in first hdc.',
    saying:
      'Size XS: there is no ch-1 sp to work into here, in repeat 3 of 3: all 200 sts of the row below are used',
  },
  {
    in: 'hat',
    name: 'a repeat from a mark that is not there',
    plant: swap('rep from * around', 'rep from ** around'),
    code: 'repeat-not-closed',
    at: 'hat-4',
    words: '*',
    saying: 'This "*" begins a repeat, but nothing says where it ends and how often it is worked',
    follows: ['repeat-does-not-fit', 'repeat-not-opened', 'stated-count-wrong', 'stitches-left-unworked'],
  },
  {
    in: 'hat',
    name: 'the largest size forgotten in the crown',
    plant: piece('hat', ({ blocks }) => ({
      blocks: blocks.map((block) =>
        block.type === 'row' && block.sizes !== null ? { ...block, sizes: block.sizes.slice(0, -1) } : block,
      ),
    })),
    code: 'repeat-does-not-fit',
    at: 'hat-14',
    words: '*1 htr in each of next [stitches between] sts, 2 htr in next st; rep from * around',
    sizes: ['Large adult'],
    saying: 'In size Large adult, after 2 repeats 4 sts are left',
    follows: ['stated-count-wrong'],
  },
  {
    in: 'tee',
    name: 'a collar that nobody makes',
    plant: finish('Sew the collar to the neck edge.'),
    code: 'piece-in-words-not-there',
    at: 'finishing:1',
    words: 'collar',
    saying: '"collar" is to be sewn on here, but no piece of the pattern makes one',
  },
  {
    in: 'hat',
    name: 'a page by its number',
    plant: note('See the chart on page 3.'),
    code: 'page-in-words',
    at: 'notes:3',
    words: 'on page 3',
    saying: '"on page 3" is right in one edition only',
  },
  {
    in: 'vest',
    name: 'a size that was added and not told',
    plant: about({ description: 'A boxy vest in nine sizes to throw over a shirt.' }),
    code: 'sizes-in-words-off',
    at: 'cover:description',
    words: 'in nine sizes',
    saying: '"in nine sizes" is not so: there are 10 sizes',
  },
  {
    in: 'vest',
    name: 'the last size not told',
    plant: about({ description: 'A boxy vest in sizes XS to 5X.' }),
    code: 'sizes-in-words-off',
    at: 'cover:description',
    words: 'sizes XS to 5X',
    saying: '"sizes XS to 5X" does not go with the sizes, which are XS to 6X',
  },
  {
    in: 'tee',
    name: 'fibres that are more than the whole',
    plant: yarn({ fibre: '60% cotton, 50% viscose' }),
    code: 'fibre-not-whole',
    at: 'yarn-main',
    saying: 'The fibres "60% cotton, 50% viscose" come to 110%, not 100%',
  },
  {
    in: 'hat',
    name: 'two colours of one letter',
    plant: all(
      (pattern) => ({
        ...pattern,
        yarns: [
          { ...pattern.yarns[0]!, key: 'A' },
          { ...pattern.yarns[0]!, id: 'yarn-other', key: 'A', name: 'A second yarn' },
        ],
      }),
      note('Work the band in A.'),
    ),
    code: 'name-used-twice',
    at: 'yarn-other',
    saying: 'There is a yarn called "A" before this one',
  },
  {
    in: 'hat',
    name: 'the ages of two sizes changed',
    plant: all(size('Toddler', { age: [4, 10] }), size('Child', { age: [1, 3] })),
    code: 'size-ages-out-of-order',
    at: 'size-child',
    saying: 'The sizes Toddler and Child are for ages that are not in order',
  },
  {
    in: 'tee',
    name: 'two measurements of one name',
    plant: line('finished upper arm', { printed: 'Finished bust' }),
    code: 'name-used-twice',
    at: 'line-finished-upper-arm',
    saying: 'There is a printed measurement called "Finished bust" before this one',
  },
  {
    in: 'tee',
    name: 'the same hook twice',
    plant: (pattern) => ({
      ...pattern,
      hooks: [...pattern.hooks, { id: 'hook-hem', mm: 4, purpose: 'for the hem' }],
    }),
    code: 'hook-size-off',
    at: 'hook-hem',
    saying: 'The 4 mm hook is listed twice',
  },
  {
    in: 'hat',
    name: 'no marker for the adults',
    plant: (pattern) => ({
      ...pattern,
      notions: pattern.notions.map((each, i) =>
        i === 0
          ? {
              ...each,
              amount: { each: Object.fromEntries(pattern.sizes.slice(0, 5).map(({ id }) => [id, 1])) },
            }
          : each,
      ),
    }),
    code: 'notion-amount-not-given',
    at: 'notion-marker',
    sizes: ['Adult', 'Large adult'],
    saying: 'It is not said how many of "Stitch marker" sizes Adult and Large adult take',
  },
  {
    in: 'vest',
    name: 'two special stitches of one name',
    plant: (pattern) => ({
      ...pattern,
      specials: [
        ...pattern.specials,
        { ...pattern.specials[0]!, id: 'special-other', text: figured('(dc, ch 1, dc) in st indicated') },
      ],
    }),
    code: 'name-used-twice',
    at: 'special-other',
    saying: 'There is a special stitch called "V-stitch" before this one',
  },
  {
    in: 'vest',
    name: 'two bands of one name',
    plant: piece('armband', () => ({ name: 'Neckband' })),
    code: 'name-used-twice',
    at: 'armband',
    saying: 'There is a piece called "Neckband" before this one',
  },
  {
    in: 'tee',
    name: 'a name mistyped in a figure',
    plant: swap('{cuff stitches} sts. Change', '{cuff stiches} sts. Change'),
    code: 'formula-unknown-name',
    at: 'sleeve-6',
    words: '[cuff stiches]',
    saying: 'There is no line called "cuff stiches", which the figure "cuff stiches" names',
  },
  {
    in: 'tee',
    name: 'no date',
    plant: about({ date: '' }),
    code: 'edition-not-stated',
    at: 'cover:title',
    saying: 'The pattern does not give the date of this version',
  },
  {
    in: 'tee',
    name: 'two sleeves made as one',
    plant: piece('sleeve', () => ({ make: 1 })),
    code: 'copies-not-said',
    at: 'sleeve',
    saying: '"Sleeves" are several, but one is made',
  },
  {
    in: 'vest',
    name: 'two armbands made as one',
    plant: piece('armband', () => ({ make: 1 })),
    code: 'copies-not-said',
    at: 'armband',
    saying: '"Armbands" are several, but one is made',
  },
  {
    in: 'hat',
    name: 'letters explained in the other terms',
    plant: (pattern) => ({ ...pattern, abbreviations: { htr: 'half double crochet' } }),
    code: 'abbreviation-explained-otherwise',
    at: 'abbreviation:htr',
    saying: '"htr" is explained as "half double crochet", but in UK terms it is "half treble crochet"',
  },
  {
    in: 'hat',
    name: 'terms that are not those of the pattern',
    plant: note('This pattern is written in US terms.'),
    code: 'terms-said-otherwise',
    at: 'notes:3',
    words: 'pattern is written in US terms',
    saying:
      '"pattern is written in US terms" is not so: this pattern is written in UK terms, and every edition s',
  },
  {
    in: 'vest',
    name: 'the last row on the other side',
    plant: swap('The last row is a WS row of sc', 'The last row is an RS row of sc'),
    code: 'side-of-work-off',
    at: 'panel-6',
    words: 'last row is an RS row',
    saying: 'These words say that the last row is RS, but by the rows before it is WS',
  },
  {
    in: 'tee',
    name: 'an ease in one unit',
    plant: about({ fit: 'Worn with 20 cm / 8 in of positive ease.' }),
    code: 'length-in-one-unit',
    at: 'cover:fit',
    words: '20 cm',
    saying: '"20 cm" is told in one unit only',
  },
  {
    in: 'vest',
    name: 'a gauge of another swatch',
    plant: note('Gauge: 14 sts and 16 rows = 4 in in V-stitch pattern.'),
    code: 'gauge-in-words-differs',
    at: 'notes:4',
    words: '14 sts and 16 rows = 4 in',
    saying:
      '"14 sts and 16 rows = 4 in" is not the gauge that the sizes are reckoned with (16 sts and 16 rows ov',
  },
  {
    in: 'hat',
    name: 'a sample of a size that is not there',
    plant: about({ description: 'A plain warm hat. Shown in size 4X.' }),
    code: 'sizes-in-words-off',
    at: 'cover:description',
    words: 'size 4X',
    saying: '"size 4X" does not go with the sizes, which are Newborn to Large adult',
  },
  {
    in: 'hat',
    name: 'a tester in a size that was taken out',
    plant: (pattern) => ({
      ...pattern,
      workbook: {
        ...pattern.workbook,
        makings: [
          ...pattern.workbook.makings,
          {
            id: 'making-gone',
            kind: 'tester',
            by: 'Nim',
            size: 'size-gone',
            state: 'finished',
            used: [{ yarn: 'yarn-main', piece: '', grams: 60, metres: null }],
            hours: null,
            swatch: null,
            measured: {},
            note: '',
          },
        ],
      },
    }),
    code: 'making-not-used',
    at: null,
    saying: "A tester's figures are not reckoned with, because its size is not among the sizes",
  },
  {
    in: 'tee',
    name: 'all sizes taken out',
    plant: (pattern) => ({ ...pattern, sizes: [], sample: null }),
    code: 'sizes-not-given',
    at: null,
    saying: 'The pattern has no size, so no row is worked and nothing can be checked',
  },
  {
    in: 'vest',
    name: 'a multiple of another stitch pattern',
    plant: swap('a multiple of 3 sts plus 2', 'a multiple of 4 sts plus 1'),
    code: 'multiple-in-words-off',
    at: 'notes:0',
    words: 'multiple of 4 sts plus 1',
    saying:
      '"multiple of 4 sts plus 1" is not what the rows need: those of "Panels" come out on a multiple of 3 sts plus 2',
  },
  {
    in: 'tee',
    name: 'a sum that its parts do not come to',
    plant: finish('Pick up 30 sts from the front neck and 26 from the back neck: 58 sts.'),
    code: 'sum-in-words-off',
    at: 'finishing:1',
    saying: '30 and 26 are 56 and not 58',
  },
  {
    in: 'vest',
    name: 'shoulders counted with the numbers of the neck',
    plant: swap('Count {shoulder stitches} sts from each end', 'Count {neck stitches} sts from each end'),
    code: 'ends-in-words-off',
    at: { text: 'from each end of the last row' },
    words: '[neck stitches] sts from each end',
  },
  {
    in: 'hat',
    name: 'balls for no size',
    plant: note('The hat takes 3 balls.'),
    code: 'balls-in-words-off',
    at: 'notes:3',
    words: '3 balls',
  },
];
