import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  cautions,
  cautionsFor,
  cautionText,
  deferral,
  type Profile,
  youngestAge,
} from '../../core/trade/cautions.ts';

const plain: Profile = {
  youngest: null,
  garment: 'pullover',
  cord: false,
  smallPart: false,
  openwork: false,
  fluffy: false,
  long: false,
};

const ids = (profile: Partial<Profile>) => cautionsFor({ ...plain, ...profile }).map(({ id }) => id);

describe('which cautions apply', () => {
  it.each<[string, Partial<Profile>, string[]]>([
    ['nothing for an adult pullover', {}, []],
    ['nothing for an adult cord', { cord: true }, []],
    ['cords up to 14 years', { youngest: 8, cord: true }, ['cord-child']],
    ['no cord caution at 15', { youngest: 15, cord: true }, []],
    ['the nearer cord caution for a toddler', { youngest: 2, cord: true }, ['cord-baby']],
    ['buttons under three', { youngest: 2, smallPart: true }, ['small-parts']],
    ['no small-part caution from three', { youngest: 3, smallPart: true }, []],
    ['a toy at any age', { garment: 'Stuffed animals' }, ['toy']],
    ['nightwear', { youngest: 4, garment: 'dressing gown' }, ['sleepwear']],
    ['no nightwear caution for adults', { garment: 'robe' }, []],
    ['a baby’s blanket', { youngest: 0, garment: 'Blanket' }, ['blanket-baby']],
    ['a baby blanket without sizes', { garment: 'Baby blanket' }, ['blanket-unsized']],
    ['one blanket caution, not two', { youngest: 0, garment: 'Baby blanket' }, ['blanket-baby']],
    ['lace for a baby', { youngest: 0, openwork: true }, ['lace-baby']],
    ['a baby’s hat', { youngest: 0, garment: 'hat' }, ['hat-sleep']],
    ['mohair for a baby', { youngest: 1, fluffy: true }, ['fluffy']],
    ['a clip', { garment: 'dummy clip' }, ['near-neck-baby']],
    ['a small child’s scarf', { youngest: 4, garment: 'scarf' }, ['scarf-child']],
    ['a pot holder', { garment: 'Pot holders' }, ['hot']],
    ['a pet’s coat', { garment: 'dog coat' }, ['pet']],
    ['a long project', { long: true }, ['hands']],
    ['whole words only', { garment: 'chatelaine, doily' }, []],
  ])('%s', (_, profile, expected) => {
    expect(ids(profile)).toEqual(expected);
  });
});

describe('what they say', () => {
  it.each(cautions.map((caution) => [caution.id, caution] as const))(
    '%s ends with the deferral and promises nothing',
    (_, caution) => {
      const text = cautionText(caution);
      expect(text.endsWith(deferral)).toBe(true);
      expect(text).not.toMatch(/\bsafe(?:ly)?\b|complian|\bcertified\b|\bapproved\b|guarantee/i);
      expect(text).not.toMatch(/https?:|www\./);
      for (const rule of caution.rules) expect(text).toContain(rule.name);
    },
  );
  it('defers to local rules and accredited testing', () => {
    expect(deferral).toMatch(/rules where it is sold/);
    expect(deferral).toMatch(/accredited laboratory/);
  });
  it('points to the rules by name: CPSC and legislation pages', () => {
    const rules = (id: string) =>
      cautions.find((caution) => caution.id === id)!.rules.map(({ name }) => name);
    expect(rules('cord-child')).toEqual(['16 CFR part 1120', 'ASTM F1816', 'EN 14682']);
    expect(rules('small-parts')).toContain('16 CFR part 1501');
    expect(rules('sleepwear').join()).toContain('SI 1985/2043');
  });
});

describe('the youngest wearer', () => {
  it.each([
    [[{ audience: 'woman', age: null }], null],
    [[{ audience: 'baby', age: null }], 0],
    [
      [
        { audience: 'child', age: [8, 10] as const },
        { audience: 'woman', age: null },
      ],
      8,
    ],
    [[{ audience: 'child', age: null }], 2],
    // Charts of heads, hands and feet are for every age: their sizes tell it by their names.
    [[{ audience: 'hand', age: null, chart: 'Baby 0-3 months', label: 'XS' }], 0],
    [[{ audience: 'hand', age: null, chart: 'Toddler 6 months-3 years' }], 0.5],
    [[{ audience: 'hand', age: null, chart: 'Child 3-14 years' }], 3],
    [[{ audience: 'hand', age: null, chart: 'Woman', label: 'Woman' }], null],
    [[{ audience: 'head', age: null, chart: '3-6 months' }], 0.25],
    [[{ audience: 'head', age: null, chart: 'Teen' }], 12],
    [[{ audience: 'foot', age: null, chart: 'infant/toddler 4-8' }], 0],
    [[{ audience: 'other', age: null, chart: null, label: 'Newborn' }], 0],
    [[{ audience: 'other', age: null, chart: null, label: '2 to 4 years' }], 2],
    [[{ audience: 'hand', age: [6, 10] as const, chart: 'Child 3-14 years' }], 6],
    // A letter for a grown-up is no child's.
    [[{ audience: 'woman', age: null, chart: 'S', label: 'Baby blue' }], null],
    [[], null],
  ])('%j: %s', (sizes, expected) => {
    expect(youngestAge(sizes)).toBe(expected);
  });
});

it('answers any garment words', () => {
  fc.assert(
    fc.property(fc.string(), fc.option(fc.float()), (garment, youngest) => {
      expect(Array.isArray(cautionsFor({ ...plain, garment, youngest }))).toBe(true);
    }),
  );
});
