/** What the worker tells of lines that are being typed, and of materials. */

import { describe, expect, test } from 'vitest';
import { EXAMPLES } from '../../app/command/examples.ts';
import { bookletOf } from '../../core/print/edition.ts';
import { study } from '../../core/study/study.ts';
import { abbreviationsOf, materialsOf } from '../../renderer/analysis/materials.ts';
import { lineTrialOf } from '../../renderer/analysis/trial.ts';
import { wordsText } from '../print/plain-booklet.ts';
import { smallPattern } from '../study/builder.ts';

const pattern = smallPattern();
const studied = study(pattern);
const values = (id: string, rule: Parameters<typeof lineTrialOf>[1]) => {
  const { cells, problems } = lineTrialOf(id, rule, studied);
  return { values: cells.map(({ value }) => value?.metric ?? null), problems };
};

describe('a line that is being typed', () => {
  test('tells what it would come to in every size, over the other lines as they are', () => {
    // 45, 51, 57 cm wide; half and 1 cm more: by hand.
    const trial = values('ro', { kind: 'formula', formula: 'width ÷ 2 + 1 cm' });
    expect(trial).toEqual({ values: ['23.5 cm', '26.5 cm', '29.5 cm'], problems: [] });
  });

  test('tells what is wrong, at the words', () => {
    const { values: none, problems } = values('ro', { kind: 'formula', formula: '2 × lenght' });
    expect(none).toEqual([null, null, null]);
    expect(problems[0]).toMatchObject({ severity: 'error', where: { node: 'ro', from: 4, to: 10 } });
    expect(problems[0]!.fix?.replacement).toBe('length');
  });

  test('tells a circle', () => {
    expect(
      values('w', { kind: 'formula', formula: 'panel stitches × 1 cm' }).problems.length,
    ).toBeGreaterThan(0);
  });

  test('of a line that is gone tells nothing', () => {
    expect(values('gone', { kind: 'formula', formula: '1' })).toEqual({ values: [], problems: [] });
  });
});

describe('materials', () => {
  const wool = { key: null, name: 'wool', weight: 4, fibre: '', ballGrams: 50 } as const;
  const withYarn = study({
    ...pattern,
    yarns: [
      { ...wool, id: 'y', ballMetres: 90, ballPrice: null, metres: { 's-s': 270, 's-m': 271 } },
      { ...wool, id: 'z', ballMetres: null, ballPrice: null, metres: { 's-s': 270 } },
    ],
    abbreviations: { 'dc-lp': 'loop over a dc' },
  });

  test('whole balls for each size', () => {
    expect(materialsOf(withYarn, null).balls).toEqual({ y: [3, 4, null], z: [null, null, null] });
  });

  test('the abbreviations that are used, in each market’s terms', () => {
    const { us, uk } = abbreviationsOf(studied);
    const short = (list: typeof us) => list.map(({ abbr }) => abbr);
    expect(short(us)).toEqual(expect.arrayContaining(['ch', 'dc', 'dc2tog', 'sc', 'sk']));
    expect(short(uk)).toEqual(expect.arrayContaining(['ch', 'tr', 'tr2tog', 'dc']));
    expect(us.find(({ abbr }) => abbr === 'dc')?.meaning).toBe('double crochet');
    expect(uk.find(({ abbr }) => abbr === 'tr')?.meaning).toContain('treble');
    // An abbreviation that no text uses is not printed.
    expect(short(abbreviationsOf(withYarn).us)).not.toContain('dc-lp');
  });

  test.each(Object.keys(EXAMPLES))('the list of %s is the one that its booklets print', (name) => {
    const of = study(EXAMPLES[name]!);
    for (const terms of ['us', 'uk'] as const) {
      const { parts } = bookletOf(of, { terms, sizes: 'all' }).booklet;
      // The first such list is that of the abbreviations; the special stitches have one of their own behind it.
      const list = parts
        .flatMap(({ blocks }) => blocks)
        .find((block) => block.kind === 'entries' && block.form === 'terms');
      const printed = (list?.kind === 'entries' ? list.items : []).map(({ label, value }) => ({
        abbr: wordsText(label),
        meaning: wordsText(value),
      }));
      expect(printed.length).toBeGreaterThan(5);
      expect(abbreviationsOf(of)[terms]).toEqual(printed);
    }
  });

  test('a cord on a child’s size brings its caution, which sends to the rules and to testing', () => {
    const child = study({
      ...pattern,
      sizes: pattern.sizes.map((size) => ({ ...size, audience: 'child' as const, age: [4, 6] as const })),
      notions: [
        { id: 'n', name: 'drawstring', amount: { all: 1 }, smallPart: false, cord: true, price: null },
      ],
    });
    expect(materialsOf(studied, null).cautions).toEqual([]);
    const [caution] = materialsOf(child, null).cautions;
    expect(caution!.text).toContain('16 CFR part 1120');
    expect(caution!.text).toContain('accredited laboratory');
  });

  test('is the same object as long as it says the same', () => {
    const before = materialsOf(studied, null);
    expect(materialsOf(study(smallPattern()), before)).toBe(before);
  });
});
