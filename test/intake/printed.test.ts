/**
 * What Turnchain prints is an old pattern one day: the text that another program (Poppler) reads from the PDF of an
 * example is brought in, and pieces come out with the rows and the counts that the example has.
 */
import { expect, test } from 'vitest';
import { EXAMPLES } from '../../app/command/examples.ts';
import { bring } from '../../core/intake/bring.ts';
import { bookletOf } from '../../core/print/edition.ts';
import { layOut } from '../../core/print/layout.ts';
import { writePages } from '../../core/print/pen.ts';
import type { PieceStudy } from '../../core/study/index.ts';
import { study } from '../../core/study/index.ts';
import { outside, resources } from '../print/tools.ts';

/** Rows of a piece in each size, and the stitches of the last. */
const ends = ({ piece, rows, fabrics }: PieceStudy) => ({
  name: piece.name,
  make: piece.make,
  rows,
  stitches: fabrics.map((fabric) => fabric?.sites.filter(({ kind }) => kind !== 'space').length ?? null),
});

test.each(['us', 'uk'] as const)(
  'the panels and shoulders of a vest, in %s terms',
  async (terms) => {
    const of = study(EXAMPLES['boxy-vest']!);
    const { booklet } = bookletOf(of, { terms, sizes: 'all' });
    const pages = layOut(booklet, { paper: 'a4', edition: 'standard' }, resources);
    const text = outside('pdftotext', ['FILE', '-'], await writePages(pages, booklet, resources));
    const result = bring(text, { terms: null, title: '', date: '2026-01-01' });
    if (!result.ok) throw new Error(result.message);
    const { pattern, leftOut } = result.brought;
    expect([pattern.about.title, pattern.terms]).toEqual(['Saltings Vest', terms]);
    expect(pattern.sizes.map(({ label }) => label)).toEqual(of.pattern.sizes.map(({ label }) => label));
    expect(leftOut.filter((line) => !/^(?:page \d+ of \d+|Saltings Vest ·|Sizes XS)/u.test(line))).toEqual(
      [],
    );
    const pieces = study(pattern).pieces.slice(0, 5);
    expect(pieces.flatMap(({ findings }) => findings.filter(({ severity }) => severity === 'error'))).toEqual(
      [],
    );
    expect(pieces.map(ends)).toEqual(of.pieces.slice(0, 5).map(ends));
  },
  60_000,
);
