/** Formulas in plain English: what they come to, and what is said of those that come to nothing. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readFormula } from '../../core/grading/formula.ts';
import { vocabularyOf } from '../../core/grading/vocabulary.ts';
import {
  all,
  bare,
  body,
  cm,
  codes,
  ease,
  formula,
  gauge,
  grade,
  inches,
  numbers,
  percent,
  rows,
  spread,
  stitches,
  typed,
  women,
} from './sheets.ts';

const known = [
  typed('hip', all(cm(100))),
  typed('body hip', all(cm(96))),
  typed('length to waist', all(inches(16))),
  ease('ease', all(cm(6))),
  ease('snug', all(percent(-5))),
  typed('buttons', all(bare(7))),
  typed('x-factor', all(bare(3))),
  stitches('back stitches', 'hip ÷ 2'),
  rows('body rows', 'length to waist'),
  spread('yoke spread'),
];

function result(text: string) {
  const sheet = grade([...known, formula('it', text)], women('M'), [gauge(16, 4, 'in')]);
  const facts = sheet.lines.at(-1)!.facts.concat(sheet.lines.at(-1)!.sizes[0]!.facts);
  return {
    number: numbers(sheet, 'it')[0],
    facts,
    dimension: sheet.lines.at(-1)!.sizes[0]!.value?.dimension,
  };
}

describe('what a formula comes to', () => {
  it.each([
    // Lengths with units; an inch is 2.54 cm (16 CFR 500.19).
    ['hip', 100],
    ['hip + ease', 106],
    ['hip - 2 in', 94.92],
    ['hip − 25 mm', 97.5],
    ['hip – 2½"', 93.65],
    ['hip + 2 1/2 inches', 106.35],
    ['1/4 in + 0 cm', 0.635],
    ['2,5 cm + 1 cm', 3.5],
    ['.5 cm + 1 cm', 1.5],
    // Precedence and parentheses.
    ['hip + ease × 2', 112],
    ['(hip + ease) × 2', 212],
    ['(hip+ease)x2', 212],
    ['hip ÷ 2 ÷ 2', 25],
    ['hip / 4 * 3', 75],
    ['hip divided by 4 times 3', 75],
    ['hip minus ease plus 1 cm', 95],
    ['-ease + hip', 94],
    ['hip - -ease', 106],
    ['hip × 1/2', 50],
    ['hip + 0', 100],
    // Names: any case, hyphens, plural, the longest first.
    ['Body Hip', 96],
    ['body-hip + ease', 102],
    ['Body  Hips', 96],
    ['hip-ease', 94],
    ['the hip', 100],
    ['Length-to-Waist', 40.64],
    ['buttons', 7],
    ['button + 1', 8],
    ['x-factor x 2', 6],
    ['buttons x x-factor', 21],
    // Percentages apply to what they are added to.
    ['hip − 5 %', 95],
    ['hip + snug', 95],
    ['snug + hip', 95],
    ['hip × 5 %', 5],
    ['hip + 2 cm + snug', 96.9],
    ['hip + (snug + 10 per cent)', 105],
    ['hip × (100 % − 10 %)', 90],
    // Parts and choices.
    ['half of hip', 50],
    ['half of hip + 2 cm', 52],
    ['half the hip', 50],
    ['a quarter of (hip + ease)', 26.5],
    ['twice ease', 12],
    ['a third of 9 cm', 3],
    ['smaller of hip and body hip', 96],
    ['larger of hip and body hip', 100],
    ['the largest of hip, body hip and 110 cm', 110],
    ['larger of ease and hip ÷ 2 + 1 cm', 51],
    ['larger of (snug + 0 %) and 3 %', 0.03],
    ['larger of hip − 120 cm and 0', 0],
    // Rounding.
    ['hip ÷ 3 rounded to 0.5 cm', 33.5],
    ['hip ÷ 3, rounded up to 1 cm', 34],
    ['hip ÷ 3 rounded down to 1 cm', 33],
    ['(hip ÷ 3 rounded to the nearest 1 in) × 2', 66.04],
    ['back stitches ÷ 5 rounded to 2', 16],
    ['2.5 cm rounded to 1 cm', 3],
    // Counts: 16 sts per 4 in over 50 cm is 78.74, so 79 sts; 79 sts make 79 × 0.635 cm.
    ['back stitches', 79],
    ['back stitches + 2', 81],
    ['back stitches + 4 sts', 83],
    ['width of back stitches', 50.165],
    ['width of the back-stitches × 2', 100.33],
    ['length of body rows', 40.64],
    ['hip ÷ body hip × 96', 100],
    ['hip ÷ back stitches × 79', 100],
  ])('%s = %d', (text, expected) => {
    const { number, facts } = result(text);
    expect(facts).toEqual([]);
    expect(number).toBeCloseTo(expected, 10);
  });

  it.each([
    ['hip', 'length'],
    ['hip ÷ ease', 'ratio'],
    ['back stitches', 'count'],
    ['back stitches × 2', 'count'],
    ['back stitches ÷ buttons', 'ratio'],
    ['snug', 'percent'],
    ['5', 'ratio'],
    ['larger of 0 and hip', 'length'],
  ])('%s is a %s', (text, dimension) => {
    expect(result(text).dimension).toBe(dimension);
  });

  it('keeps thirds exact', () => {
    expect(result('hip ÷ 3 × 3').number).toBe(100);
    expect(result('⅓ × 3').number).toBe(1);
  });
});

describe('what is said of a formula that comes to nothing', () => {
  it.each([
    ['', 'formula-empty', '', {}],
    ['hipp + ease', 'formula-unknown-name', 'hipp', { name: 'hipp', nearest: 'hip' }],
    ['bdoy-hip + ease', 'formula-unknown-name', 'bdoy-hip', { nearest: 'body hip' }],
    ['cuff-ease', 'formula-unknown-name', 'cuff', { name: 'cuff', nearest: null }],
    ['back stiches − 2', 'formula-unknown-name', 'back stiches', { nearest: 'back stitches' }],
    ['hip-eese', 'formula-unknown-name', 'eese', { nearest: 'ease' }],
    ['waist', 'formula-unknown-name', 'waist', { nearest: 'length to waist' }],
    ['hip + sleeve', 'formula-unknown-name', 'sleeve', { nearest: null }],
    ['hip + 5', 'formula-missing-unit', '5', { number: 5, besideCm: 100 }],
    ['5 + hip', 'formula-missing-unit', '5', { number: 5 }],
    ['hip + -5', 'formula-missing-unit', '-5', { number: -5 }],
    ['larger of hip and 80', 'formula-missing-unit', '80', { number: 80 }],
    ['hip rounded to 5', 'formula-missing-unit', '5', { number: 5 }],
    ['hip + back stitches', 'formula-mixed', 'hip + back stitches', { first: 'length', second: 'count' }],
    ['5 % − hip', 'formula-mixed', '5 % − hip', { first: 'percent', second: 'length' }],
    ['buttons rounded to 1 cm', 'formula-mixed', 'buttons rounded to 1 cm', { first: 'count' }],
    ['hip × hip', 'formula-area', 'hip × hip', {}],
    ['3 ÷ hip', 'formula-divided-by-length', '3 ÷ hip', {}],
    ['hip ÷ 0', 'formula-divided-by-zero', '0', {}],
    ['hip ÷ (buttons − 7)', 'formula-divided-by-zero', '(buttons − 7)', {}],
    ['hip rounded to 0 cm', 'formula-divided-by-zero', '0 cm', {}],
    ['hip +', 'formula-operand-missing', '+', { after: '+' }],
    ['× 2', 'formula-operand-missing', '×', { after: null }],
    ['hip ease', 'formula-operator-missing', 'ease', { before: 'hip', after: 'ease' }],
    ['(hip + ease', 'formula-bracket-open', '(', {}],
    ['hip + ease)', 'formula-bracket-close', ')', {}],
    ['hip = ease', 'formula-unread', '= ease', { found: '= ease' }],
    ['? + 2', 'formula-unread', '?', { found: '?' }],
    ['hip rounded', 'formula-rounding-unread', 'rounded', {}],
    ['larger of hip', 'formula-choice-of-one', 'larger of hip', { pick: 'larger' }],
    ['width of hip', 'formula-not-fitted', 'width of hip', { name: 'hip' }],
    ['width of hipp', 'formula-unknown-name', 'hipp', { nearest: 'hip' }],
    ['yoke spread + 1', 'formula-no-number', 'yoke spread', { kind: 'spread' }],
    ['('.repeat(60), 'formula-too-deep', '(', {}],
    [`${'9'.repeat(50)} × 1`, 'formula-too-large', '9'.repeat(50), {}],
  ])('%s: %s', (text, code, words, data) => {
    const { facts, number } = result(text);
    expect(number).toBeNull();
    expect(facts[0]).toMatchObject({ code, data });
    expect(text.slice(facts[0]!.from, facts[0]!.to).startsWith(words)).toBe(true);
  });

  it('says it once when too long', () => {
    const { facts } = result('hip + '.repeat(300));
    expect(facts).toMatchObject([{ code: 'formula-too-long', data: { limit: 1000 } }]);
  });

  it('does not let chained products grow without end', () => {
    const chain = Array.from({ length: 60 }, (_, i) => formula(`n${i + 1}`, `n${i} × n${i}`));
    const sheet = grade([typed('n0', all(bare(1.001))), ...chain]);
    expect(sheet.lines.flatMap((line) => line.sizes[0]!.facts).map((fact) => fact.code)).toEqual([
      'formula-too-large',
    ]);
  });

  it('leaves a line alone that waits for another', () => {
    const sheet = grade([body('bust', 'elbow'), formula('chest', 'bust + 5 cm')]);
    expect(codes(sheet, 'bust')).toEqual(['body-measure-missing']);
    expect(sheet.lines[1]!.sizes[0]).toMatchObject({ value: null, facts: [], waitsFor: ['bust'] });
  });
});

describe('names', () => {
  it('prefers the exact name among names that differ only in number', () => {
    const sheet = grade([
      typed('stitch', all(bare(1))),
      typed('stitches', all(bare(2))),
      formula('a', 'stitch'),
      formula('b', 'Stitches'),
    ]);
    expect([numbers(sheet, 'a'), numbers(sheet, 'b')]).toEqual([[1], [2]]);
  });

  it('reads names with signs and numbers in them', () => {
    const sheet = grade([
      typed('panel (left)', all(cm(10))),
      typed('size 2 hem', all(cm(3))),
      typed('back + front', all(cm(7))),
      formula('a', 'panel (left) + size 2 hem + Back + Front'),
    ]);
    expect(numbers(sheet, 'a')).toEqual([20]);
  });
});

it('reads any text without throwing, with spans inside it', () => {
  const vocabulary = vocabularyOf(known.map((line) => line.name));
  const words = fc.constantFrom(
    ...known.map((line) => line.name),
    ...[
      '+',
      '-',
      '−',
      '×',
      '÷',
      '*',
      '/',
      'x',
      '(',
      ')',
      ',',
      '%',
      'cm',
      'in',
      '"',
      '2',
      '1/2',
      '½',
      '0',
      '2.5',
    ],
    ...[
      'half of',
      'twice',
      'width of',
      'length of',
      'smaller of',
      'larger of',
      'and',
      'rounded to',
      'rounded up to',
      'the',
      'hipp',
      '-',
      '…',
      '\uFFFC',
      ' ',
    ],
  );
  const texts = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 200 }),
    fc.array(words, { maxLength: 60 }).map((parts) => parts.join(' ')),
    fc.array(words, { maxLength: 60 }).map((parts) => parts.join('')),
  );
  fc.assert(
    fc.property(texts, (text) => {
      const read = readFormula(text, vocabulary);
      for (const fact of read.facts) {
        expect(fact.from).toBeGreaterThanOrEqual(0);
        expect(fact.to).toBeLessThanOrEqual(text.length);
        expect(fact.from).toBeLessThanOrEqual(fact.to);
      }
      const sheet = grade([...known, formula('it', text)]);
      const own = sheet.lines.at(-1)!;
      const { value, facts, waitsFor } = own.sizes[0]!;
      // Always either a value or a reason.
      expect(value !== null || own.facts.length + facts.length + waitsFor.length > 0).toBe(true);
    }),
    { numRuns: 800 },
  );
});

it('knows "width of" a fitted line from a line that is called width', () => {
  const { facts } = readFormula('width of back stitches + width', vocabularyOf(['width', 'back stitches']));
  expect(facts).toEqual([]);
  expect(readFormula('width of back stitches', vocabularyOf(['width', 'back stitches'])).tree.kind).toBe(
    'made',
  );
  expect(readFormula('width', vocabularyOf(['width', 'back stitches'])).tree.kind).toBe('line');
});
