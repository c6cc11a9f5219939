/** The fonts and what they can print. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readRow } from '../../core/notation/index.ts';
import { bold, paragraph, part, plain, row, table } from '../../core/print/content.ts';
import { FACES, FONT_FILES, typefacesOf } from '../../core/print/fonts.ts';
import { cleanText, findUnprintable, spell } from '../../core/print/glyphs.ts';
import { layOut } from '../../core/print/layout.ts';
import { writePdf } from '../../core/print/pen.ts';
import { styleOf } from '../../core/print/style.ts';
import { sample } from './sample.ts';
import { FONTS_FOLDER, fonts, outside, resources, squeeze } from './tools.ts';

const faces = typefacesOf(fonts);
const style = styleOf('a4', 'standard');
const only = (...blocks: Parameters<typeof part>[1]) => ({
  ...sample(),
  cover: null,
  parts: [part('Text', blocks)],
});

/** What a pattern must be able to print: fractions, signs, quotation marks, names of European makers. */
const NEEDED =
  'ABCXYZabcxyz0123456789½¼¾⅛⅜⅝⅞⅓⅔×–—−°′″…“”‘’«»„·•©®™§†‡*&%@€£$()[]{}/éèêëłőűñßçãõåæøœðþšžčćřěůğışțąężźżńśÉŁŐÑŠŽŒÆØÅĆ';

describe('the fonts', () => {
  test('stand in resources with their licence', () => {
    const files = readdirSync(FONTS_FOLDER);
    for (const face of FACES) expect(files).toContain(FONT_FILES[face]);
    const licences = files.filter((file) => file.startsWith('LICENSE'));
    expect(licences.length).toBe(2);
    for (const file of licences) {
      expect(readFileSync(join(FONTS_FOLDER, file), 'utf8')).toContain('SIL Open Font License, Version 1.1');
    }
  });

  test.each(FACES)('%s has every character a pattern needs', (face) => {
    const missing = [...NEEDED].filter((character) => !faces.has(face, character.codePointAt(0)!));
    expect(missing).toEqual([]);
  });

  test.each(FACES)('%s has figures of one width', (face) => {
    const widths = new Set([...'0123456789'].map((figure) => faces.width(figure, face, 1000)));
    expect(widths.size).toBe(1);
  });

  test.each(FACES)('%s allows embedding and subsets', (face) => {
    const permission = (faces.font(face)['OS/2'] as unknown as { fsType: Record<string, boolean> }).fsType;
    expect(permission.noEmbedding).toBe(false);
    expect(permission.noSubsetting).toBe(false);
  });

  test('are given to the layout through one interface, each file once', () => {
    const asked: string[] = [];
    const source = {
      read: (file: string) => {
        asked.push(file);
        return readFileSync(join(FONTS_FOLDER, file));
      },
    };
    layOut(sample(), { paper: 'a4', edition: 'standard' }, { ...resources, fonts: source });
    layOut(sample(), { paper: 'letter', edition: 'ink-saving' }, { ...resources, fonts: source });
    expect(new Set(asked).size).toBe(asked.length);
  });
});

describe('cleaning text', () => {
  test.each([
    ['so\u00ADft', 'soft'],
    ['ch\u20112', 'ch-2'],
    ['a\u200Bb\uFEFF', 'ab'],
    ['5\u202Fmm', '5\u00A0mm'],
    ['e\u0301', 'é'],
    ['tab\tbed', 'tab bed'],
    ['\u0007bell', 'bell'],
    ['half \uD83D', 'half '],
    ['\u202Eright', 'right'],
  ])('%j', (text, expected) => {
    expect(cleanText(text)).toBe(expected);
  });

  test('is done after one pass', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        expect(cleanText(cleanText(text))).toBe(cleanText(text));
      }),
    );
  });
});

describe('characters the fonts lack', () => {
  test('are reported with the words they stand in, and what is printed instead', () => {
    const booklet = only(paragraph(['Join with ', bold('a 🧶 of yarn')]), row('Row 1', '① then 編む.'));
    expect(
      findUnprintable(booklet, style, faces).map((fact) => ({ from: fact.from, to: fact.to, ...fact.data })),
    ).toEqual([
      { from: 2, to: 4, character: '🧶', codePoint: 'U+1F9F6', words: 'a 🧶 of yarn', instead: '' },
      { from: 0, to: 1, character: '①', codePoint: 'U+2460', words: '① then 編む.', instead: '1' },
      { from: 7, to: 8, character: '編', codePoint: 'U+7DE8', words: '① then 編む.', instead: '' },
      { from: 8, to: 9, character: 'む', codePoint: 'U+3080', words: '① then 編む.', instead: '' },
    ]);
    for (const fact of findUnprintable(booklet, style, faces))
      expect(fact.code).toBe('character-not-printable');
  });

  test('are none in the sample', () => {
    for (const edition of ['standard', 'large-print', 'ink-saving'] as const) {
      expect(findUnprintable(sample(), styleOf('a4', edition), faces)).toEqual([]);
    }
  });

  test.each([
    ['ﬃ', 'ffi'],
    ['㎝', 'cm'],
    ['Ⅷ', 'VIII'],
    ['✕', '×'],
    ['１', '1'],
    ['♥', ''],
    ['♡', '♥'],
    ['★', '*'],
    ['☆', '**'],
  ])('%s is spelled %j', (character, expected) => {
    const instead =
      faces.faceFor('serif', character.codePointAt(0)!) === null
        ? spell(character, 'serif', faces)
        : expected;
    expect(instead).toBe(expected);
  });

  test.each([...'∗⁎＊★☆✶✱✲✻✽⋆✦✧'])('%s, which marks a repeat, is never left out', (star) => {
    // The reader follows it: the sentence that points at it needs it.
    const [read] = readRow(`${star}sc in next st, 2 sc in next st; rep from ${star} around`, {
      terms: 'us',
    }).items;
    expect(read?.type).toBe('repeat');
    const isDrawn = faces.faceFor('serif', star.codePointAt(0)!) !== null;
    expect(isDrawn ? star : spell(star, 'serif', faces)).not.toBe('');
  });

  test('never reach the page as a box: every glyph drawn is a glyph of the font', async () => {
    const pdf = await writePdf(
      only(
        paragraph(`Yarn 🧶 ✕ ㎝ 編 □ ${NEEDED}`),
        table({ caption: 'Odd', heads: ['①'], rows: [['編み', '½']] }),
      ),
      { paper: 'a4', edition: 'standard' },
      resources,
    );
    const text = squeeze(outside('pdftotext', ['-enc', 'UTF-8', 'FILE', '-'], pdf));
    expect(text).toContain('Yarn × cm');
    expect(text).not.toMatch(/[🧶編\uFFFD]/u);
    for (const character of NEEDED) expect(text).toContain(character);
  });

  test('that are invisible leave every later hyphen and space as they are', async () => {
    // The hyphen and the soft hyphen are one glyph in the sans, the space and the no-break space in both faces:
    // whichever is drawn first is what copied text says ever after.
    const first = 'hy\u00ADphen no\u00A0break non\u2011breaking';
    const later = 'boat-necked ch-2 sp';
    const booklet = only(row('Row\u00A01', first), row('Row 2-3', later, { count: 'so\u00ADft-hearted' }));
    const pdf = await writePdf(booklet, { paper: 'a4', edition: 'large-print' }, resources);
    const text = outside('pdftotext', ['-enc', 'UTF-8', 'FILE', '-'], pdf);
    expect(text).not.toMatch(/[\u00AD\u00A0\u2010\u2011]/);
    for (const words of ['Row 1', 'hyphen no break non-breaking', 'Row 2-3', later, 'soft-hearted']) {
      expect(squeeze(text)).toContain(words);
    }
  });

  test('never break the layout, whatever they are', () => {
    fc.assert(
      fc.property(fc.array(fc.string({ unit: 'binary', maxLength: 60 }), { maxLength: 6 }), (texts) => {
        const booklet = only(...texts.flatMap((text) => [paragraph(text), row(text, text, { count: text })]));
        const { pages } = layOut(booklet, { paper: 'a4', edition: 'standard' }, resources);
        for (const page of pages) {
          for (const mark of page.marks) {
            if (mark.kind !== 'text') continue;
            for (const character of mark.text)
              expect(faces.has(mark.face, character.codePointAt(0)!)).toBe(true);
            expect(mark.text).not.toContain('\u00AD');
            expect(mark.text).not.toContain('\u00A0');
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  test('take another face where one face lacks what the other has', () => {
    // The reading serif has no ballot box; the sans has.
    expect(faces.has('serif', 0x25a1)).toBe(false);
    const { pages } = layOut(
      only(paragraph([plain('Tick □ here')])),
      { paper: 'a4', edition: 'standard' },
      resources,
    );
    const mark = pages[0]!.marks.find((one) => one.kind === 'text' && one.text.includes('□'));
    expect(mark).toMatchObject({ face: 'sans' });
  });
});
