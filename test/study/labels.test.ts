import { describe, expect, test } from 'vitest';
import type { Block, Piece, Size } from '../../core/document/pattern.ts';
import { plainFabric, tally } from '../../core/fabric/index.ts';
import { blockLabel, onlySizes, sizeKeyOf } from '../../core/study/labels.ts';
import type { BlockInSize, BlockStudy, PieceStudy, Side } from '../../core/study/piece-study.ts';

const counts = tally(plainFabric(10, 't1', 'flat'));

/** One size of a block: its first and last row, or a number for both, or null when it does not work it. */
type Worked = number | readonly [number, number] | 'unnumbered' | null;

function inSize(worked: Worked, side: Side | null): BlockInSize | null {
  if (worked === null) return null;
  const [first, last] =
    worked === 'unnumbered' ? [null, null] : typeof worked === 'number' ? [worked, worked] : worked;
  return { first, last, side, tally: counts, repeats: null, rows: first === null ? 0 : last! - first + 1 };
}

const text = { text: 'sc across', figures: [] };
const row = (form: 'row' | 'round' | 'foundation', title: string | null = null): Block => ({
  type: 'row',
  id: 'r',
  text,
  sizes: null,
  form,
  title,
});
const repeat: Block = {
  type: 'repeat',
  id: 'again',
  first: 'r',
  last: 'r',
  until: { kind: 'times', times: '3' },
  sizes: null,
};

function label(
  block: Block,
  worked: readonly Worked[],
  sides: readonly (Side | null)[] = [],
  above = row('row'),
) {
  const piece: Piece = {
    id: 'p',
    name: 'Back',
    make: 1,
    start: { kind: 'chain' },
    firstSide: 'RS',
    gauge: '',
    blocks: block === above ? [block] : [above, block],
    meets: [],
  };
  const sizes = worked.map((one, i) => inSize(one, sides[i] ?? sides[0] ?? null));
  const study: BlockStudy = { block, tree: null, sizes, figures: [], findings: [] };
  const whole: PieceStudy = {
    piece,
    blocks: [study],
    rows: [],
    fabrics: [],
    foundations: [],
    openings: [],
    starts: [],
    findings: [],
  };
  const found = blockLabel(whole, study);
  return found === null ? null : `${found.text}${found.side === null ? '' : ` | ${found.side}`}`;
}

// The notation for sizes, "64 (70, 76)", one number when all agree: see conventions of published patterns
// (size lists in ascending order, a dash as placeholder: common practice, no source).
describe('labels', () => {
  test.each<[string, Block, readonly Worked[], readonly (Side | null)[], Block?]>([
    ['Row 3 | RS', row('row'), [3, 3, 3], ['RS']],
    ['Row 3', row('row'), [3], [null]],
    ['Row 4 | WS', row('row'), [4, 4], ['WS']],
    ['Row 9 (11, 13) | RS', row('row'), [9, 11, 13], ['RS']],
    ['Row 9 (10, 11) | RS (WS, RS)', row('row'), [9, 10, 11], ['RS', 'WS', 'RS']],
    ['Row 9 (–, 13) | RS', row('row'), [9, null, 13], ['RS']],
    ['Row 9 | WS', row('row'), [null, 9, 9], ['WS']],
    ['Rnd 5', row('round'), [5, 5], ['RS']],
    ['Rnd 5 | WS', row('round'), [5, 5], ['WS']],
    ['Rnd 5 (6)', row('round'), [5, 6], [null]],
    ['Rows 4–9', row('row'), [[4, 9]], ['RS']],
    ['Foundation', row('foundation'), ['unnumbered', 'unnumbered'], [null]],
    ['Foundation', row('row'), [[1, 0]], [null]],
    ['Row 1', row('row'), [[1, 0]], [null], row('foundation')],
    [
      'Rnd 4',
      row('round'),
      [
        [4, 3],
        [4, 3],
      ],
      [null],
      row('round'),
    ],
    ['Dec Rnd 12 (14)', row('round', 'Dec'), [12, 14], ['RS']],
    ['Dec rnd', row('round', 'Dec rnd'), ['unnumbered'], ['RS']],
    ['Row 2', row('row', '  '), [2], [null]],
  ])('%s', (expected, block, worked, sides, above = block) => {
    expect(label(block, worked, sides, above)).toBe(expected);
  });

  test.each<[string, readonly Worked[], 'row' | 'round']>([
    [
      'Rows 4–9',
      [
        [4, 9],
        [4, 9],
        [4, 9],
      ],
      'row',
    ],
    ['Rnds 4–9', [[4, 9]], 'round'],
    [
      'Rows 4–9 (11, 13)',
      [
        [4, 9],
        [4, 11],
        [4, 13],
      ],
      'row',
    ],
    [
      'Rows 10–61 (12–65, 14–69)',
      [
        [10, 61],
        [12, 65],
        [14, 69],
      ],
      'row',
    ],
    [
      'Rows 4 (4–6)',
      [
        [4, 4],
        [4, 6],
      ],
      'row',
    ],
    ['Rows 4–9 (–, 13)', [[4, 9], null, [4, 13]], 'row'],
    ['Rows – (–, 4–44, 4–46)', [null, null, [4, 44], [4, 46]], 'row'],
    ['Row 4', [4, 4], 'row'],
  ])('repeats: %s', (expected, worked, form) => {
    expect(label(repeat, worked, [null], row(form))).toBe(expected);
  });

  test('a shaping is told by its rows', () => {
    const shaping: Block = {
      type: 'shaping',
      id: 's',
      line: 'raglan',
      shaped: row('round') as never,
      even: row('round') as never,
      sizes: null,
    };
    expect(
      label(shaping, [
        [3, 20],
        [3, 24],
      ]),
    ).toBe('Rnds 3–20 (24)');
  });

  test('what makes no row, or is worked in no size, has no label', () => {
    const prose: Block = { type: 'prose', id: 'n', text, sizes: null };
    expect(label(prose, [])).toBeNull();
    expect(label(row('row'), [null, null])).toBeNull();
  });
});

describe('sizes in words', () => {
  const size = (name: string): Size => ({ id: name, label: name, audience: 'woman', chart: null, age: null });
  const sizes = ['XS', 'S', 'M', 'L', 'XL'].map(size);

  test.each<[string | null, readonly string[] | null]>([
    [null, null],
    [null, ['XS', 'S', 'M', 'L', 'XL']],
    ['Size L only', ['L']],
    ['Sizes L and XL only', ['XL', 'L']],
    ['Sizes S, M and L only', ['S', 'M', 'L']],
    ['All sizes except XS', ['S', 'M', 'L', 'XL']],
  ])('%s', (expected, ids) => {
    expect(onlySizes(ids, sizes)).toBe(expected);
  });

  test('the key lists them as the numbers are listed', () => {
    expect(sizeKeyOf(sizes)).toBe('XS (S, M, L, XL)');
    expect(sizeKeyOf(sizes.slice(0, 1))).toBe('XS');
    expect(sizeKeyOf([])).toBe('');
  });
});
