import { describe, expect, it } from 'vitest';
import { LADDER } from '../../core/trade/stitches.ts';
import {
  collisions,
  namesOf,
  onlyIn,
  plural,
  stitchAbbreviation,
  stitchName,
  stitchTerms,
  termEntry,
} from '../../core/trade/terms.ts';

describe('the ladder: UK yarn shop’s guide and terms translation chart', () => {
  it.each([
    ['slip', 'slip stitch', 'slip stitch'],
    ['t1', 'single crochet', 'double crochet'],
    ['t2', 'half double crochet', 'half treble crochet'],
    ['t3', 'double crochet', 'treble crochet'],
    ['t4', 'treble crochet', 'double treble crochet'],
    ['t5', 'double treble crochet', 'triple treble crochet'],
  ])('%s is US %s, UK %s', (id, us, uk) => {
    expect([stitchName(id, 'us'), stitchName(id, 'uk')]).toEqual([us, uk]);
  });
  it.each([
    ['t1', 'sc', 'dc'],
    ['t2', 'hdc', 'htr'],
    ['t3', 'dc', 'tr'],
    ['t4', 'tr', 'dtr'],
    ['t5', 'dtr', 'trtr'],
  ])('%s is US %s, UK %s in short', (id, us, uk) => {
    expect([stitchAbbreviation(id, 'us'), stitchAbbreviation(id, 'uk')]).toEqual([us, uk]);
  });
  it('UK names stand one step above US names', () => {
    for (const stitch of LADDER.slice(3, 7)) {
      const next = LADDER[LADDER.indexOf(stitch) + 1]!;
      expect(stitchAbbreviation(stitch, 'uk')).toBe(stitchAbbreviation(next, 'us'));
    }
  });
});

it('UK dc2tog, tr2tog and FPtr: UK craft publisher’s abbreviations page', () => {
  expect(['tog2.t1', 'tog2.t3', 'fp.t3'].map((id) => stitchAbbreviation(id, 'uk'))).toEqual([
    'dc2tog',
    'tr2tog',
    'FPtr',
  ]);
});

it('US fsc, fhdc, fdc: one maker’s notes', () => {
  expect(['fnd.t1', 'fnd.t2', 'fnd.t3'].map((id) => stitchAbbreviation(id, 'us'))).toEqual([
    'fsc',
    'fhdc',
    'fdc',
  ]);
});

it('post stitches and extended stitches (from memory)', () => {
  expect(['fp.t1', 'bp.t2', 'ext.t1', 'ext.t3'].map((id) => stitchAbbreviation(id, 'us'))).toEqual([
    'FPsc',
    'BPhdc',
    'esc',
    'edc',
  ]);
  expect(['fp.t1', 'bp.t2', 'ext.t1', 'ext.t3'].map((id) => stitchAbbreviation(id, 'uk'))).toEqual([
    'FPdc',
    'BPhtr',
    'edc',
    'etr',
  ]);
});

describe('compounds that the table does not list', () => {
  it.each([
    ['tog4.t3', 'double crochet 4 together', 'dc4tog', 'treble 4 together', 'tr4tog'],
    ['tog5.t1', 'single crochet 5 together', 'sc5tog', 'double crochet 5 together', 'dc5tog'],
    ['3-cluster.t3', '3-dc cluster', '3-dc CL', '3-tr cluster', '3-tr CL'],
    ['5-shell.t4', '5-tr shell', '5-tr sh', '5-dtr shell', '5-dtr sh'],
    ['cluster.t4', 'treble crochet cluster', 'tr CL', 'double treble cluster', 'dtr CL'],
    ['fp.t6', 'front post triple treble crochet', 'FPtrtr', 'front post quadruple treble', 'FPquadtr'],
    ['standing.t2', 'standing half double crochet', 'standing hdc', 'standing half treble', 'standing htr'],
    ['ch-2 sp', 'ch-2 space', 'ch-2 sp', 'ch-2 space', 'ch-2 sp'],
  ])('%s', (id, us, usShort, uk, ukShort) => {
    expect(namesOf(id, 'us')).toMatchObject({ name: us, abbr: usShort });
    expect(namesOf(id, 'uk')).toMatchObject({ name: uk, abbr: ukShort });
  });
});

it('composes every listed compound of the tall stitches as the table has it', () => {
  const prefixes = ['fp', 'bp', 'ext', 'fnd', 'tog2', 'tog3'];
  for (const { id, us } of stitchTerms) {
    const [prefix = '', base = ''] = id.split('.');
    if (!prefixes.includes(prefix)) continue;
    expect(us.name).toContain(stitchName(base, 'us'));
    expect(us.abbr.toLowerCase()).toContain(stitchAbbreviation(base, 'us'));
  }
});

describe('letters that mean two stitches', () => {
  it.each([
    ['dc', 't3', 't1'],
    ['tr', 't4', 't3'],
    ['dtr', 't5', 't4'],
    ['tr2tog', 'tog2.t4', 'tog2.t3'],
  ])('%s is US %s, UK %s: published term charts', (abbr, us, uk) => {
    expect(collisions.find((line) => line.abbr === abbr)).toMatchObject({ us, uk });
    expect(namesOf(us, 'us').abbr).toBe(abbr);
    expect(namesOf(uk, 'uk').abbr).toBe(abbr);
  });
  it('words of one market are no stitch of the other', () => {
    for (const terms of ['us', 'uk'] as const) {
      const others = stitchTerms.map((entry) => entry[terms === 'us' ? 'uk' : 'us'].abbr);
      for (const word of onlyIn[terms].filter((item) => item !== 'ss')) expect(others).not.toContain(word);
    }
  });
});

it('counts more than one', () => {
  expect([1, 2, 0].map((n) => stitchName('t3', 'us', n))).toEqual([
    'double crochet',
    'double crochets',
    'double crochets',
  ]);
  expect(['stitch', 'slip stitch', 'V-stitch', 'shell', 'dc 2 together'].map(plural)).toEqual([
    'stitches',
    'slip stitches',
    'V-stitches',
    'shells',
    'dc 2 together',
  ]);
});

it('leaves a pattern’s own stitch as it is', () => {
  expect([stitchName('zigzag', 'uk'), stitchName('zigzag', 'us', 2)]).toEqual(['zigzag', 'zigzags']);
  expect(termEntry('zigzag')).toBeNull();
  expect(namesOf('constructor', 'us').name).toBe('constructor');
});
