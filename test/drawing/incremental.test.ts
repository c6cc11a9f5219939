/**
 * Incremental equals from scratch, for drawings: after any run of edits, drawn at every step, the rows that are
 * followed and the schematics are those of the study made afresh; and what an edit did not reach is the same object.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Block, Pattern } from '../../core/document/pattern.ts';
import { schematicsOf } from '../../core/drawing/schematic.ts';
import { type Study, study } from '../../core/study/study.ts';
import { followedRows } from '../../core/study/taped.ts';
import { type WorkedRow, workedRows } from '../../core/study/worked.ts';
import { piece, row, smallPattern, written } from '../study/builder.ts';
import { edits } from '../study/edits.ts';

const plainly = (row: WorkedRow) => ({
  block: row.block,
  number: row.number,
  side: row.side,
  round: row.round,
  foundation: row.foundation,
  onlyFoundation: row.onlyFoundation,
  openings: row.openings.map(({ sites, chains }) => [sites.map((site) => site.key), chains]),
  tally: [row.tally.stitches, row.tally.chains, [...row.tally.byKind]],
  below: row.below?.sites.map((site) => site.key),
  fabric: [row.fabric.sites.map((site) => site.key), row.fabric.form, row.fabric.turned],
  words: row.seen === null,
});

/** All that drawings are made from, and the schematics, as plain data. */
function drawn(of: Study) {
  const schematics = schematicsOf(of);
  return {
    rows: of.pieces.map((one) =>
      of.pattern.sizes.map((_, size) => {
        const followed = followedRows(one, size, 1);
        return [
          workedRows(one, size)?.map(plainly) ?? null,
          followed && [
            followed.rows.map(plainly),
            followed.spans,
            followed.unreckoned && plainly(followed.unreckoned),
          ],
        ];
      }),
    ),
    schematics: JSON.parse(
      JSON.stringify(schematics, (_, value: unknown) => (typeof value === 'bigint' ? String(value) : value)),
    ) as unknown,
  };
}

describe('drawings after edits', () => {
  test('are those of the study made afresh', { timeout: 5_400_000 }, () => {
    fc.assert(
      fc.property(fc.array(edits, { minLength: 1, maxLength: 10 }), (run) => {
        let pattern = smallPattern();
        let current = study(pattern);
        drawn(current);
        for (const edit of run) {
          pattern = edit(pattern);
          current = study(pattern, current);
          // What is remembered of this study must not show in the next.
          drawn(current);
        }
        expect(drawn(current)).toEqual(drawn(study(pattern)));
      }),
      { numRuns: Number(process.env.TURNCHAIN_EDITS ?? 100) },
    );
  });

  /** The panel with one of its rows reworded. */
  const reworded = (pattern: Pattern, id: string, text: string): Pattern => ({
    ...pattern,
    pieces: pattern.pieces.map((one) => ({
      ...one,
      blocks: one.blocks.map((block) =>
        block.id === id && block.type === 'row' ? { ...block, text: written(text) } : block,
      ),
    })),
  });

  test('follow only the rows of blocks that the edit reached', () => {
    const pattern = smallPattern();
    const [panel] = pattern.pieces;
    const even = (id: string) => row(id, 'Ch 3, dc in each st across, turn.');
    const blocks = [...panel!.blocks.slice(0, 3), ...['a', 'b', 'c', 'd'].map(even)];
    const plain = { ...pattern, pieces: [{ ...panel!, blocks }] };
    const before = study(plain);
    const after = study(reworded(plain, 'r-2', 'Ch 3, dc in each st across, turn.'), before);
    pattern.sizes.forEach((_, size) => {
      const [was, is] = [workedRows(before.pieces[0]!, size)!, workedRows(after.pieces[0]!, size)!];
      // The row behind the reworded one stands on another fabric, and leaves the one that it left before.
      expect(is.map((own, i) => own === was[i])).toEqual(was.map(({ block }) => block < 2 || block > 3));
    });
  });

  test('tell a row behind words that were put in by its new place', () => {
    const pattern = smallPattern();
    const [panel, band] = pattern.pieces;
    const before = study(pattern);
    const rows = workedRows(before.pieces[0]!, 0)!.map(plainly);
    const words: Block = { type: 'prose', id: 'w', text: written('Place a marker.'), sizes: null };
    const own = { ...panel!, blocks: [...panel!.blocks.slice(0, 2), words, ...panel!.blocks.slice(2)] };
    const after = study({ ...pattern, pieces: [own, band!] }, before);
    expect(workedRows(after.pieces[0]!, 0)!.map(plainly)).toEqual(
      rows.map((one) => ({ ...one, block: one.block < 2 ? one.block : one.block + 1 })),
    );
  });

  test('follow a row that goes into one far before it anew', () => {
    const round = (id: string, text: string) => row(id, text, { form: 'round' });
    const made = (first: string): Pattern => ({
      ...smallPattern(),
      pieces: [
        piece('p', 'Tube', [
          row('r-0', 'Ch 40, join with sl st in first ch.', { form: 'foundation' }),
          round('r-1', first),
          round('r-2', 'Ch 1, sc in next 5 sts, ch 8, sk 8 sts, sc in each st around, join.'),
          round('r-3', 'Ch 1, sc in each sc and ch around, join. Fasten off.'),
          round(
            'r-4',
            'Join yarn with sl st in first skipped hdc, ch 1, sc in each of 8 skipped hdc and 8 chs around.',
          ),
        ]),
      ],
    });
    const [tall, short] = [
      made('Ch 1, hdc in each ch around, join.'),
      made('Ch 1, sc in each ch around, join.'),
    ];
    const first = study(tall);
    drawn(first);
    expect(drawn(study(short, first))).toEqual(drawn(study(short)));
  });

  test('of a piece that the edit did not reach are the identical ones', () => {
    const pattern = smallPattern();
    const two = {
      ...pattern,
      pieces: [pattern.pieces[0]!, { ...pattern.pieces[0]!, id: 'p-2', name: 'Other' }],
    };
    const before = study(two);
    const was = schematicsOf(before).drawings;
    const edited = two.pieces.map((one, i) => (i === 1 ? { ...one, blocks: one.blocks.slice(0, 4) } : one));
    const is = schematicsOf(study({ ...two, pieces: edited }, before)).drawings;
    expect(is[0]).toBe(was[0]);
    expect(is[1]).not.toBe(was[1]);
  });
});
