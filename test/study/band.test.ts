/**
 * Bands worked along other pieces: a fact of the trade (common practice, no source) is that a band in
 * alternating front and back post stitches over two panels and two seams, each seam one stitch, must be even.
 */
import { describe, expect, test } from 'vitest';
import type { Edge, Pattern } from '../../core/document/pattern.ts';
import { study } from '../../core/study/study.ts';
import { piece, row, smallPattern } from './builder.ts';

const edge = (of: string, kind: Edge['kind']): Edge => ({ piece: of, kind, amount: null, which: 1 });

/** Two panels of the given widths, and a band around both with a seam at each side. */
function banded(front: number, back: number): Pattern {
  const panel = (id: string, name: string, stitches: number) =>
    piece(id, name, [
      row(`${id}-0`, `Ch ${stitches + 1}.`, { form: 'foundation' }),
      row(`${id}-1`, 'Sc in 2nd ch from hook and in each ch across, turn.'),
      row(`${id}-2`, 'Ch 1, sc in each st across. Fasten off.'),
    ]);
  const edges = [edge('front', 'top'), edge('front', 'seam'), edge('back', 'top'), edge('back', 'seam')];
  return {
    ...smallPattern(),
    lines: [],
    pieces: [
      panel('front', 'Front', front),
      panel('back', 'Back', back),
      piece(
        'band',
        'Band',
        [
          row(
            'band-1',
            'Ch 3 (counts as dc), dc in next st and in each st around, join with sl st in top of beg ch-3.',
            { form: 'round' },
          ),
          row(
            'band-2',
            'Ch 2 (does not count as a st), *fpdc around next st, bpdc around next st; rep from * around, join with sl st in first fpdc.',
            { form: 'round' },
          ),
          row(
            'band-3',
            'Ch 2 (does not count as a st), *fpdc around next fpdc, bpdc around next bpdc; rep from * around, join with sl st in first fpdc.',
            { form: 'round' },
          ),
        ],
        { start: { kind: 'edges', edges, round: true } },
      ),
    ],
  };
}

describe('a band over two panels and two seams', () => {
  test.each([
    [20, 20, 42],
    [21, 21, 44],
    [19, 23, 44],
  ])('of %i and %i stitches has %i, which is even, and the rib goes round', (front, back, stitches) => {
    const { pieces, findings } = study(banded(front, back));
    const band = pieces.find(({ piece: of }) => of.id === 'band')!;
    expect(band.starts).toEqual([stitches, stitches, stitches]);
    expect(band.blocks.map((block) => block.sizes.map((size) => size?.tally.stitches))).toEqual(
      [stitches, stitches, stitches].map((n) => [n, n, n]),
    );
    expect(findings.filter(({ severity }) => severity !== 'note')).toEqual([]);
  });

  test.each([
    [20, 21],
    [18, 23],
  ])('of %i and %i stitches is odd, and the rib is said not to fit', (front, back) => {
    const { findings } = study(banded(front, back));
    const told = findings.filter(({ severity }) => severity === 'error');
    expect(told.map(({ code, where }) => [code, where.node])).toContainEqual([
      'repeat-does-not-fit',
      'band-2',
    ]);
    const total = front + back + 2;
    expect(told[0]!.message).toContain(`${total - 1} or ${total + 1} would fit`);
  });
});

describe('stitches left waiting', () => {
  test('are a sleeve: those skipped under a chain, and the chain itself', () => {
    const pattern: Pattern = {
      ...smallPattern(),
      lines: [],
      pieces: [
        piece('yoke', 'Yoke', [
          row('yoke-0', 'Ch 60, join with sl st in first ch to form a ring.', { form: 'foundation' }),
          row('yoke-1', 'Ch 1, sc in each ch around, join with sl st in first sc.', { form: 'round' }),
          row(
            'yoke-2',
            'Ch 1, sc in next 18 sts, ch 4, skip next 12 sts, sc in next 18 sts, ch 4, skip next 12 sts, join with sl st in first sc.',
            { form: 'round' },
          ),
        ]),
        piece(
          'sleeve',
          'Sleeve',
          [
            row('sleeve-1', 'Ch 1, sc in each st and ch around, join with sl st in first sc.', {
              form: 'round',
            }),
          ],
          { start: { kind: 'edges', edges: [{ ...edge('yoke', 'opening'), which: 2 }], round: true } },
        ),
      ],
    };
    const { pieces, findings } = study(pattern);
    expect(findings.filter(({ severity }) => severity !== 'note')).toEqual([]);
    expect(pieces[0]!.openings[0]!.map(({ sites, chains }) => [sites.length, chains])).toEqual([
      [12, 4],
      [12, 4],
    ]);
    expect(pieces[1]!.starts).toEqual([16, 16, 16]);
    expect(pieces[1]!.blocks[0]!.sizes.map((size) => size?.tally.stitches)).toEqual([16, 16, 16]);
  });
});
