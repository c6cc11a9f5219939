/**
 * Schematics in the booklet: in every edition and on both papers they stand after the measurements, whole, with no
 * letter smaller than the edition's own, in the reader's terms, and one figure of the tag tree each.
 */
import { describe, expect, test } from 'vitest';
import type { Pattern } from '../../core/document/pattern.ts';
import type { Shape } from '../../core/drawing/scene.ts';
import { editionSchematics } from '../../core/print/edition/schematics.ts';
import { bookletOf } from '../../core/print/edition.ts';
import { layOut, type Resources, writePdf } from '../../core/print/index.ts';
import { scenePen } from '../../core/print/scene-pen.ts';
import { styleOf } from '../../core/print/style.ts';
import { study } from '../../core/study/study.ts';
import { hat } from '../../resources/examples/hat.ts';
import { tee } from '../../resources/examples/tee.ts';
import { vest } from '../../resources/examples/vest.ts';
import { fonts, objectsOf, outside, squeeze, tagsOf, walk } from './tools.ts';

const studies = { vest: study(vest), tee: study(tee), hat: study(hat) };

const resourcesOf = (made: ReturnType<typeof editionSchematics>): Resources => ({
  fonts,
  picture: () => null,
  drawing: (name) => {
    const scene = made.scenes.get(name);
    return scene === undefined ? null : scenePen(scene, fonts);
  },
});

function* sizesIn(shapes: readonly Shape[]): Generator<number> {
  for (const shape of shapes) {
    if (shape.kind === 'group') yield* sizesIn(shape.shapes);
    else if (shape.kind === 'text') yield shape.size;
  }
}

function* groupsIn(shapes: readonly Shape[]): Generator<string | null> {
  for (const shape of shapes) {
    if (shape.kind !== 'group') continue;
    yield shape.name;
    yield* groupsIn(shape.shapes);
  }
}

const CASES = (['vest', 'tee', 'hat'] as const).flatMap((name) =>
  (['a4', 'letter'] as const).flatMap((paper) =>
    (['standard', 'large-print', 'ink-saving'] as const).flatMap((edition) =>
      (['all', 'one'] as const).map((sizes) => [name, paper, edition, sizes] as const),
    ),
  ),
);

describe('every edition', () => {
  test.each(CASES)('%s on %s, %s, %s sizes', (name, paper, edition, sizes) => {
    const made = studies[name];
    const style = styleOf(paper, edition);
    const choice = { terms: 'uk' as const, sizes: sizes === 'all' ? 'all' : made.pattern.sample! };
    const schematics = editionSchematics(made, choice, style);
    expect(schematics.drawings.length).toBe({ vest: 4, tee: 3, hat: 1 }[name]);
    const { booklet } = bookletOf(made, { ...choice, schematics: schematics.drawings });
    const { pages } = layOut(booklet, { paper, edition }, resourcesOf(schematics));
    const images = pages.flatMap(({ marks }) => marks.filter((mark) => mark.kind === 'image'));
    expect(images.length).toBe(schematics.drawings.length);
    // An edition of all sizes shows the outlines of all of them and says which is which; a neckband, broken because it
    // is long, looks the same in all, and nothing is said of lines that nobody sees.
    for (const { name: shown, title, notes = [] } of schematics.drawings) {
      const nested = sizes === 'all' && title !== 'Neckband';
      const { shapes } = schematics.scenes.get(shown)!;
      expect(notes.some((words) => words.includes('broken lines are the other sizes'))).toBe(nested);
      expect([...groupsIn(shapes)].includes('other size')).toBe(nested);
    }
    // What is said of a drawing is on its page.
    for (const { marks } of pages) {
      const own = marks.flatMap((mark) => (mark.kind === 'image' ? [mark.name] : []));
      const words = marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])).join(' ');
      for (const { name: shown, notes = [] } of schematics.drawings)
        if (own.includes(shown) && notes.length > 0) expect(words).toContain(notes[0]!.slice(0, 9));
    }
    for (const image of images) {
      const scene = schematics.scenes.get(image.name)!;
      // Printed as large as it was made: its type is the edition's.
      expect(image.width).toBeCloseTo(scene.width, 6);
      expect(Math.min(...sizesIn(scene.shapes))).toBeGreaterThanOrEqual(
        edition === 'large-print' ? 18 : style.looks.caption.size,
      );
      expect(image.x + image.width).toBeLessThanOrEqual(style.page.width - style.margin.right + 0.01);
      // A small piece grows with the type beside it.
      if (edition === 'large-print') expect(scene.width).toBeGreaterThan(9 * 18);
      // One size alone has its own numbers and nobody else's.
      if (sizes === 'one') expect(scene.alt).not.toMatch(/\d \(\d|\(.*, .*\)/);
    }
  });
});

test('the numbers can be read and searched, and each drawing is one figure with all of it in words', async () => {
  const style = styleOf('a4', 'standard');
  const choice = { terms: 'us' as const, sizes: 'size-m' };
  const schematics = editionSchematics(studies.tee, choice, style);
  const { booklet } = bookletOf(studies.tee, { ...choice, schematics: schematics.drawings });
  const pdf = await writePdf(booklet, { paper: 'a4', edition: 'standard' }, resourcesOf(schematics));
  // Size M: the body of 164 stitches at 16 to 10 cm lies 51.25 cm wide, shown to the half.
  expect(squeeze(outside('pdftotext', ['FILE', '-'], pdf))).toContain('51.5 cm / 20¼ in');
  const figures = [...walk(tagsOf(objectsOf(pdf)))].filter(({ type }) => type === 'Figure');
  expect(figures.map(({ alt }) => alt)).toEqual([...schematics.scenes.values()].map(({ alt }) => alt));
  expect(figures[0]!.alt).toContain('Body: width, lying flat: 51.5 cm / 20¼ in');
  expect(outside('qpdf', ['--check', 'FILE'], pdf)).toContain('No syntax');
});

test('names of pieces are in the reader’s terms', () => {
  const named: Pattern = {
    ...tee,
    pieces: tee.pieces.map((piece) =>
      piece.name === 'Sleeves' ? { ...piece, name: 'Single crochet sleeves' } : piece,
    ),
  };
  const { drawings } = editionSchematics(
    study(named),
    { terms: 'uk', sizes: 'all' },
    styleOf('a4', 'standard'),
  );
  expect(drawings[1]!.title).toBe('Double crochet sleeves');
  expect(drawings[1]!.alt).toMatch(/^Schematic of Double crochet sleeves\./);
});
