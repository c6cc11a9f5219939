/** Laws and cases of breaking words into lines. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bold,
  firm,
  holdNumbers,
  holdPhrases,
  italic,
  numbers,
  plain,
  type Run,
} from '../../core/print/content.ts';
import { typefacesOf } from '../../core/print/fonts.ts';
import { breakLines, firmWidth, JOIN, type Line, naturalWidth } from '../../core/print/lines.ts';
import { styleOf } from '../../core/print/style.ts';
import { fonts, squeeze } from './tools.ts';

const faces = typefacesOf(fonts);
const look = styleOf('a4', 'standard').looks.body;
const textOfLine = (line: Line): string => line.segments.map((segment) => segment.text).join('');
const set = (runs: readonly Run[], width: number): string[] =>
  breakLines([{ words: runs, look }], width, faces).map(textOfLine);

const WORD = fc.constantFrom(
  'dc',
  'in',
  'next',
  'st,',
  'skip',
  'ch-2',
  'sp',
  'turn.',
  'évasé',
  '½',
  'across;',
  '*hdc',
  'together',
);
const PROSE = fc.array(WORD, { minLength: 1, maxLength: 40 }).map((words) => plain(`${words.join(' ')} `));
const SIZE_LIST = fc
  .array(fc.integer({ min: 1, max: 220 }), { minLength: 2, maxLength: 10 })
  .map(([first, ...rest]) => numbers(`${first} (${rest.join(', ')}) sts`));
const BRACKET = fc
  .constantFrom('(dc, ch 1, dc)', '[hdc in next st]', '(see note)')
  .map((text) => plain(`${text} `));
const RUNS = fc.array(
  fc.oneof(
    PROSE,
    SIZE_LIST,
    BRACKET,
    PROSE.map((run) => bold(run.text)),
    PROSE.map((run) => italic(run.text)),
    fc.constant(plain(' ')),
  ),
  {
    minLength: 1,
    maxLength: 12,
  },
);
const WIDTH = fc.double({ min: 60, max: 500, noNaN: true });

describe('breaking lines', () => {
  test('loses nothing and adds nothing', () => {
    fc.assert(
      fc.property(RUNS, WIDTH, (runs, width) => {
        expect(squeeze(set(runs, width).join(''))).toBe(squeeze(runs.map((run) => run.text).join('')));
      }),
    );
  });

  test('keeps every line within the width', () => {
    fc.assert(
      fc.property(RUNS, WIDTH, (runs, width) => {
        for (const line of breakLines([{ words: runs, look }], width, faces)) {
          expect(line.width).toBeLessThanOrEqual(width + 0.02);
          const last = line.segments.at(-1)!;
          expect(line.width).toBeCloseTo(last.x + faces.width(last.text.trimEnd(), last.face, last.size), 6);
        }
      }),
    );
  });

  test('never breaks a list of numbers that fits a line', () => {
    fc.assert(
      fc.property(PROSE, SIZE_LIST, PROSE, WIDTH, (before, list, after, width) => {
        fc.pre(naturalWidth([{ words: [list], look }], faces) < width);
        expect(set([before, list, plain(' '), after], width).some((line) => line.includes(list.text))).toBe(
          true,
        );
      }),
    );
  });

  test('breaks a list of numbers wider than the line only after a bracket or a comma, where it can', () => {
    const list = numbers('1064 (1170, 1276, 1382, 1488, 1594, 1700, 1806, 1912, 2018)');
    const lines = set([list], 120);
    expect(lines.length).toBeGreaterThan(1);
    for (const line of lines.slice(0, -1)) expect(line.trimEnd()).toMatch(/[,)]$/);
  });

  test('leaves short brackets whole and long ones no more broken than they must be', () => {
    fc.assert(
      fc.property(
        PROSE,
        BRACKET,
        PROSE,
        fc.double({ min: 150, max: 400, noNaN: true }),
        (before, bracket, after, width) => {
          expect(
            set([before, bracket, after], width).some((line) => line.includes(bracket.text.trim())),
          ).toBe(true);
        },
      ),
    );
  });

  test('keeps the count with the last words of its row', () => {
    const words = 'Ch 2, hdc in first st, ch 2, skip next 2 sts, hdc in each st across to the last st, turn.';
    for (let width = 170; width < 420; width += 10) {
      const lines = breakLines(
        [
          { words: [plain(words), plain(JOIN)], look },
          { words: [numbers('(65 (71, 77, 83) sts)')], look },
        ],
        width,
        faces,
      ).map(textOfLine);
      expect(lines.at(-1)).toMatch(/turn\. \(65 \(71, 77, 83\) sts\)$/);
    }
  });

  test('keeps the word that a list counts beside the list', () => {
    for (let width = 120; width < 400; width += 7) {
      const lines = set(
        [plain('Work to last '), numbers('4 (5, 6, 7)'), plain(' sts, then turn and go on as before.')],
        width,
      );
      expect(lines.some((line) => line.includes('4 (5, 6, 7) sts,'))).toBe(true);
    }
  });

  test('breaks inside a no-break space or a firm run only when a line cannot hold it', () => {
    const runs = [plain('Sl st in '), firm('front loop only of next stitch'), plain(', then ch\u00A03.')];
    expect(set(runs, 180).some((line) => line.includes('front loop only of next stitch'))).toBe(true);
    for (const line of set(runs, 90)) expect(line).not.toMatch(/ch $/);
  });

  test('cuts a word only when it is longer than the line', () => {
    const lines = set([plain('see worsted-weight-linen-and-cotton-blend-in-undyed-natural now')], 100);
    expect(lines.join('')).toContain('undyed-natural now');
    expect(lines.length).toBeGreaterThan(3);
  });

  test('collapses runs of white space and drops what stands at the ends', () => {
    expect(set([plain('  dc  \t in '), plain('  '), plain(' next\nst ')], 400)).toEqual(['dc in next st']);
    expect(set([plain('   ')], 400)).toEqual([]);
    expect(set([], 400)).toEqual([]);
  });

  test('measures the firm width below which it must break badly', () => {
    const span = [{ words: [plain('Length (37¾) in all')], look }];
    expect(firmWidth(span, faces)).toBeLessThan(naturalWidth(span, faces));
    expect(firmWidth(span, faces)).toBeGreaterThan(faces.width('Length', 'serif', look.size) - 0.01);
  });

  test('takes a paragraph of 4,000 words in stride', () => {
    const lines = set([plain('dc in next st, '.repeat(1000))], 370);
    expect(lines.length).toBeGreaterThan(100);
  });
});

describe('helpers that hold words together', () => {
  test.each([
    ['sl st in next ch-2 sp', ['sl st', 'ch-2 sp'], 'sl\u00A0st in next ch-2\u00A0sp'],
    ['Sl st, sl stitch', ['sl st'], 'Sl st, sl stitch'],
    ['a (b c) d', ['b c'], 'a (b\u00A0c) d'],
    ['nothing here', [], 'nothing here'],
  ])('holdPhrases %j', (text, phrases, expected) => {
    expect(holdPhrases(text, phrases)).toBe(expected);
  });

  test.each([
    ['ch 3, skip 2 sts', 'ch\u00A03, skip\u00A02\u00A0sts'],
    ['4.5 mm hook', '4.5\u00A0mm hook'],
    ['60 % cotton', '60\u00A0% cotton'],
    ['about 15¼ in long', 'about\u00A015¼\u00A0in long'],
    ['remaining 12 balls', 'remaining 12\u00A0balls'],
  ])('holdNumbers %j', (text, expected) => {
    expect(holdNumbers(text)).toBe(expected);
  });
});
