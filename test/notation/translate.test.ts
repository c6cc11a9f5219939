import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { translate } from '../../core/notation/translate.ts';
import type { Terms } from '../../core/trade/stitches.ts';
import { plural, stitchTerms, wordTerms } from '../../core/trade/terms.ts';

const to = (terms: Terms) => (terms === 'us' ? 'uk' : 'us');
const text = (from: Terms, words: string, options = {}) => translate(words, from, to(from), options).text;

/** The words in doubt of a text. */
const doubts = (from: Terms, words: string) =>
  translate(words, from, to(from)).doubts.map((fact) => fact.data.words);

const titled = (words: string) => words.replace(/\p{L}+/gu, (word) => word[0]!.toUpperCase() + word.slice(1));
const sentence = (words: string) => words.replace(/\p{L}/u, (letter) => letter.toUpperCase());

describe('the published ladder and compounds (UK shop’s guide, translation chart, UK publisher’s abbreviations)', () => {
  it.each([
    ['sc', 'dc'],
    ['hdc', 'htr'],
    ['dc', 'tr'],
    ['tr', 'dtr'],
    ['dtr', 'trtr'],
    ['single crochet', 'double crochet'],
    ['half double crochet', 'half treble crochet'],
    ['double crochet', 'treble crochet'],
    ['treble crochet', 'double treble crochet'],
    ['double treble crochet', 'triple treble crochet'],
    ['sc2tog', 'dc2tog'],
    ['dc2tog', 'tr2tog'],
    ['FPdc', 'FPtr'],
  ])('US %s is UK %s', (us, uk) => {
    expect(text('us', us, { kind: 'row' })).toBe(uk);
    expect(text('uk', uk, { kind: 'row' })).toBe(us);
  });
});

describe('how many a decrease takes away is the same word in both terms (common practice, no source)', () => {
  it.each([
    'Work a double decrease at the neck.',
    'a single increase at each end',
    'the double decreases lie one over the other',
  ])('%s', (words) => {
    expect(text('us', words)).toBe(words);
    expect(text('uk', words)).toBe(words);
  });

  it('while a decrease that names its stitch is converted', () => {
    expect(text('us', 'a double crochet decrease')).toBe('a treble decrease');
    expect(text('uk', 'a treble decrease')).toBe('a double crochet decrease');
  });
});

describe('a stitch that is all a text says (common practice, no source)', () => {
  it.each([
    ['uk', 'treble', 'double crochet'],
    ['uk', 'Trebles', 'Double crochets'],
    ['us', 'treble', 'double treble'],
    ['uk', 'double', 'single crochet'],
  ] as const)('%s: %s', (from, words, expected) => {
    expect(text(from, words)).toBe(expected);
    expect(doubts(from, words)).toEqual([]);
  });

  it.each(['single', 'triple', 'treble clef'])('while “%s” stays', (words) => {
    expect(text('uk', words)).toBe(words);
  });
});

describe('the article before a term (common practice, no source)', () => {
  it.each([
    ['us', 'A worsted wool with a firm twist', 'An aran wool with a firm twist'],
    ['us', 'use a worsted weight yarn', 'use an aran weight yarn'],
    ['uk', 'use an aran weight yarn', 'use a worsted weight yarn'],
    ['us', 'Work an sc in the corner.', 'Work a dc in the corner.'],
    ['us', 'Work a sc in the corner.', 'Work a dc in the corner.'],
    ['us', 'An hdc closes it.', 'An htr closes it.'],
    ['uk', 'Work a dc in the corner.', 'Work a sc in the corner.'],
    ['us', 'a single crochet', 'a double crochet'],
    // Yarns by their letters are no articles.
    ['us', 'Yarn A worsted weight, yarn B worsted weight', 'Yarn A aran weight, yarn B aran weight'],
    ['us', 'with A, sc in next st', 'with A, dc in next st'],
  ] as const)('%s: %s', (from, words, expected) => {
    expect(text(from, words)).toBe(expected);
  });
});

describe('forms of writing (common practice, no source)', () => {
  it.each([
    // capitals
    ['Dc', 'Tr'],
    ['DC in next st', 'TR in next st'],
    ['Double Crochet', 'Treble Crochet'],
    ['Double crochet', 'Treble crochet'],
    ['DOUBLE CROCHET', 'TREBLE CROCHET'],
    ['Treble Crochet', 'Double Treble Crochet'],
    ['FPDC', 'FPTR'],
    ['Fpdc', 'Fptr'],
    // plurals
    ['double crochets', 'treble crochets'],
    ['3 dcs', '3 trs'],
    ['half double crochets', 'half treble crochets'],
    ['front post double crochets', 'front post trebles'],
    // hyphens
    ['double-crochet', 'treble-crochet'],
    ['half-double crochet', 'half-treble crochet'],
    ['3-dc cluster', '3-tr cluster'],
    ['5-dc shell', '5-tr shell'],
    ['fp-dc', 'fp-tr'],
    // glued
    ['3dc', '3tr'],
    ['dc3tog', 'tr3tog'],
    ['fpdc', 'fptr'],
    ['dcfp', 'trfp'],
    ['bptr', 'bpdtr'],
    ['scinc', 'dcinc'],
    ['hhdc', 'hhtr'],
    // compounds
    ['extended single crochet', 'extended double crochet'],
    ['foundation sc', 'foundation dc'],
    ['standing dc', 'standing tr'],
    ['dc cluster', 'tr cluster'],
    ['half dc', 'half tr'],
    ['triple crochet', 'double treble crochet'],
    ['double crochet 2 together', 'treble 2 together'],
    // words
    ['sk 2 sts', 'miss 2 sts'],
    ['skip next st', 'miss next st'],
    ['Skipping the next stitch', 'Missing the next stitch'],
    ['in each skipped st', 'in each missed st'],
    ['Gauge: 16 sts', 'Tension: 16 sts'],
    ['yo, pull up a loop', 'yoh, pull up a loop'],
    ['Yarn over and pull through', 'Yarn over hook and pull through'],
    ['work even', 'work straight'],
    ['main color, gray, center', 'main colour, grey, centre'],
    ['Counterclockwise', 'Anticlockwise'],
    ['worsted weight yarn', 'aran weight yarn'],
    ['fingering weight', '4 ply weight'],
    ['super bulky yarn', 'super chunky yarn'],
    ['Written in US terms.', 'Written in UK terms.'],
    ['Gauge: 16 dc with a 5 mm (US H-8, UK 6) hook', 'Tension: 16 tr with a 5 mm (US H-8, UK 6) hook'],
    ['3 triples in next st', '3 double trebles in next st'],
    [
      'Skip 2, tr in next 2, working in front tr in the 2 skipped',
      'Miss 2, dtr in next 2, working in front dtr in the 2 missed',
    ],
    ['Uses single and double crochet stitches.', 'Uses double crochet and treble crochet stitches.'],
    ['single, half double, and double crochet', 'double crochet, half treble, and treble crochet'],
    // figures stand where numbers do
    ['\uFFFC dc', '\uFFFC tr'],
  ])('US %s becomes %s', (us, uk) => {
    expect(text('us', us)).toBe(uk);
  });

  it.each([
    ['rtrf', 'fpdc'],
    ['Rtrb', 'Bpdc'],
    ['rtr/f around next st', 'fpdc around next st'],
    ['raised treble front', 'front post double crochet'],
    ['front raised tr', 'front post dc'],
    ['2 trebles in next st', '2 double crochets in next st'],
    ['1 double into each loop', '1 single crochet into each loop'],
    ['half trebles', 'half double crochets'],
    ['long treble', 'treble crochet'],
    ['yrh', 'yo'],
    ['htc in next st', 'hdc in next st'],
    ['ttr', 'dtr'],
    ['4-ply yarn', 'fingering yarn'],
    ['miss 2 ch', 'skip 2 ch'],
    ['The treble is tall.', 'The double crochet is tall.'],
  ])('UK %s becomes %s', (uk, us) => {
    expect(text('uk', uk)).toBe(us);
  });
});

describe('what is the same in both markets stays', () => {
  it.each([
    'sl st in first ch',
    'ss in first ch',
    'ch-3 sp',
    'BLO, FLO, tbl',
    'inv dec',
    'picot, shell, bobble, V-st',
    'reverse crab stitch',
    'MC and CC',
    'RS facing, pm',
  ])('%s', (words) => {
    expect(text('us', words)).toBe(words);
    expect(text('uk', words)).toBe(words);
  });
});

describe('words that only look like terms stay', () => {
  it.each([
    'Work single rows of each stripe.',
    'It looks like a treble clef.',
    'Please double-check the schematic.',
    'Double the yarn for a firm edge.',
    'A single strand is enough.',
    'A double-pointed needle holds them.',
    'Cast on with double knitting yarn.',
    'Made with a single crochet hook.',
    'Skip this section if you know it.',
    'Use a hook gauge.',
    'Wrap the yarn over the hook.',
    'Work even rows in cream.',
    'See www.dc-and-sc.example or write to sc@dc.example.',
    'etc.',
    'UK treble crochet',
    'tr (UK)',
    'worsted (US) weight',
    'Triple rows of sand.',
    'Tops and pants.',
    'The yarn is dyed in Washington, DC.',
  ])('%s', (words) => {
    expect(text('us', words)).toBe(words);
    expect(doubts('us', words)).toEqual([]);
  });
  it.each([
    'If a ball is missing, write to me.',
    'Go back and find the missing stitch.',
    'The yarn is dyed in Washington, DC.',
    'Keep an even tension.',
    'Do not miss out!',
    'Miss Amber Hill, tester',
  ])('%s (UK)', (words) => {
    expect(text('uk', words)).toBe(words);
    expect(doubts('uk', words)).toEqual([]);
  });
});

describe('terms in doubt are left and reported with both readings', () => {
  it.each([
    ['us', 'Hold the yarn double throughout', 'double', 'treble'],
    ['us', 'The designer lives in Springfield, DC.', 'DC', 'TR'],
    ['us', 'Skip it if you wish.', 'Skip', 'Miss'],
    ['us', 'Shown in Dove Gray.', 'Gray', 'Grey'],
    ['us', 'The seam is bulky.', 'bulky', 'chunky'],
    ['us', 'tc in next st', 'tc', 'dtr'],
    ['uk', 'You will not miss it.', 'miss', 'skip'],
    ['us', 'Make one single crochet square.', 'single crochet', 'double crochet'],
  ] as const)('%s: %s', (from, words, doubtful, reading) => {
    const result = translate(words, from, to(from));
    expect(result.text).toBe(words);
    expect(result.doubts).toHaveLength(1);
    const fact = result.doubts[0]!;
    expect(fact.code).toBe('term-in-doubt');
    expect(words.slice(fact.from, fact.to)).toBe(doubtful);
    expect(fact.data).toEqual({ words: doubtful, readings: [reading, doubtful] });
  });
  it('every term of a line that compares both markets', () => {
    expect(doubts('us', 'In US terms a dc is a tr in UK terms.')).toEqual(['US terms', 'dc', 'tr']);
  });
  it('rows are certain where prose is not', () => {
    expect(text('us', 'skip it', { kind: 'row' })).toBe('miss it');
    expect(text('us', 'skip it', { kind: 'prose' })).toBe('skip it');
    expect(text('us', 'Row 2: Skip it.\nSkip it.')).toBe('Row 2: Miss it.\nSkip it.');
  });
});

it('converts a row as a whole', () => {
  expect(
    text(
      'us',
      'Row 3 (RS): Ch 3 (counts as dc), skip first st, 2 dc in next st, *FPdc around next dc, sc in next hdc; rep from * across, dc2tog over last 2 sts, turn. (24 dc)',
    ),
  ).toBe(
    'Row 3 (RS): Ch 3 (counts as tr), miss first st, 2 tr in next st, *FPtr around next tr, dc in next htr; rep from * across, tr2tog over last 2 sts, turn. (24 tr)',
  );
});

it('never converts a term twice', () => {
  expect(text('us', 'sc, hdc, dc, tr, dtr, trtr')).toBe('dc, htr, tr, dtr, trtr, quadtr');
  expect(text('uk', 'dc, htr, tr, dtr, trtr, quadtr')).toBe('sc, hdc, dc, tr, dtr, trtr');
});

it('goes by the pattern’s own names first', () => {
  const own = [
    { us: 'double shell', uk: 'double shell' },
    { us: 'LgDc', uk: 'LgTr' },
    { us: 'twin dc', uk: 'twin treble' },
  ];
  expect(text('us', 'double shell, LgDc, lgdc, twin dcs, Twin dc, dc', { own })).toBe(
    'double shell, LgTr, LgTr, twin trebles, Twin treble, tr',
  );
  expect(text('uk', 'twin treble', { own })).toBe('twin dc');
});

describe('spans', () => {
  it('tell what was replaced, in the text given', () => {
    expect(translate('3dc, sk 1', 'us', 'uk', { kind: 'row' }).spans).toEqual([
      { from: 1, to: 3, original: 'dc', replacement: 'tr' },
      { from: 5, to: 7, original: 'sk', replacement: 'miss' },
    ]);
  });
  it('are none when nothing is to be done', () => {
    expect(translate('3 dc', 'us', 'us')).toEqual({ text: '3 dc', spans: [], doubts: [] });
    expect(translate('', 'us', 'uk')).toEqual({ text: '', spans: [], doubts: [] });
  });
});

describe('there and back again', () => {
  const cases: readonly (readonly [string, (words: string) => string])[] = [
    ['as printed', (words) => words],
    ['in capitals', (words) => words.toUpperCase()],
    ['in lower case', (words) => words.toLowerCase()],
    ['as a title', titled],
    ['at the start of a sentence', sentence],
    ['for many', plural],
    ['in a row', (words) => `2 ${words} in next st, ${words}; ${words}.`],
    ['with hyphens', (words) => words.replace(/ /g, '-')],
  ];
  const back = (words: string, from: Terms) => {
    const there = translate(words, from, to(from), { kind: 'row' });
    return translate(there.text, to(from), from, { kind: 'row' }).text;
  };
  describe.each(cases)('%s', (_, write) => {
    it.each(stitchTerms.map((entry) => [entry.id, entry] as const))('%s', (_id, entry) => {
      for (const terms of ['us', 'uk'] as const) {
        for (const words of [entry[terms].name, entry[terms].abbr]) {
          expect(back(write(words), terms)).toBe(write(words));
        }
      }
    });
    it.each(wordTerms.map((entry) => [entry.id, entry] as const))('%s', (id, entry) => {
      if (id === 'system' && write('US terms').slice(0, 2) !== 'US') return;
      for (const pair of entry.pairs) {
        const words = entry.kind === 'weight' ? `${pair.us} yarn` : pair.us;
        expect(back(write(words), 'us')).toBe(write(words));
      }
    });
  });
  it('names each stitch as the table does', () => {
    for (const { us, uk } of stitchTerms) {
      const given = (words: string) => (/^(?:sl st|surface sl st|puff)$/.test(words) ? null : words);
      expect(text('us', us.name, { kind: 'row' })).toBe(uk.name);
      if (given(us.abbr)) expect(text('us', us.abbr, { kind: 'row' })).toBe(uk.abbr);
    }
  });
  it('of a short word comes back as the long one, and then stays', () => {
    expect(back('sk 2 sts', 'us')).toBe('skip 2 sts');
    expect(back('skip 2 sts', 'us')).toBe('skip 2 sts');
  });

  const stitch = fc.constantFrom(
    ...stitchTerms.flatMap(({ us }) => [us.abbr, us.name, us.abbr.toLowerCase()]),
  );
  const place = fc.constantFrom(
    'in next st',
    'in each st across',
    'in same ch-2 sp',
    'around',
    'in next 3 sts',
    'in ring',
  );
  const item = fc.oneof(
    fc
      .tuple(fc.integer({ min: 1, max: 40 }), stitch, place)
      .map(([n, name, where]) => `${n} ${name} ${where}`),
    fc.tuple(stitch, place).map(([name, where]) => `${name} ${where}`),
    fc.constantFrom(
      'ch 3 (counts as dc)',
      'skip next st',
      'skip 2 ch',
      'sl st in first ch',
      'turn',
      'yo, pull up a loop',
    ),
    fc.tuple(stitch, stitch).map(([a, b]) => `(${a}, ch 1, ${b}) in next ch-1 sp`),
    stitch.map((name) => `*${name} in next 2 sts, skip next st; rep from * across`),
    stitch.map((name) => `[3 ${name} in next st] 6 times`),
  );
  const row = fc
    .tuple(fc.integer({ min: 1, max: 99 }), fc.array(item, { minLength: 1, maxLength: 8 }), stitch)
    .map(([n, items, last]) => `Row ${n}: ${items.join(', ')}. (${n} ${last})`);
  it('is the identity on rows made of the vocabulary', () => {
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 4 }), (rows) => {
        const us = rows.join('\n');
        const uk = translate(us, 'us', 'uk');
        const again = translate(uk.text, 'uk', 'us');
        expect(again.text).toBe(us);
        expect([...uk.doubts, ...again.doubts]).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });
});

describe('any text', () => {
  const noise = fc.oneof(
    fc.string({ unit: 'grapheme', maxLength: 60 }),
    fc
      .array(
        fc.constantFrom(
          'dc',
          'double',
          'treble',
          ' ',
          '-',
          '\n',
          '2',
          'half',
          'raised',
          'r',
          'front',
          '/',
          'US',
          'skip',
          '*',
          'İ',
          'ſc',
        ),
        {
          maxLength: 40,
        },
      )
      .map((parts) => parts.join('')),
  );
  it('is answered, with spans that rebuild the result', () => {
    fc.assert(
      fc.property(noise, fc.constantFrom('us', 'uk'), (words, from) => {
        const result = translate(words, from as Terms, to(from as Terms));
        let built = '';
        let end = 0;
        for (const span of result.spans) {
          expect(span.from).toBeGreaterThanOrEqual(end);
          expect(words.slice(span.from, span.to)).toBe(span.original);
          built += words.slice(end, span.from) + span.replacement;
          end = span.to;
        }
        expect(built + words.slice(end)).toBe(result.text);
        for (const fact of result.doubts) expect(words.slice(fact.from, fact.to)).toBe(fact.data.words);
      }),
      { numRuns: 500 },
    );
  });
  it.each(['dc ', 'double ', 'a', ' ', '-', '\n', 'raised ', 'skip ', '2', '://'])(
    'gets to the end of a very long text: %j',
    (part) => {
      // Long enough that going over it again and again would not be done in the test's time.
      const words = part.repeat(200_000);
      const { text, spans } = translate(words, 'us', 'uk');
      expect(text.length).toBeGreaterThan(0);
      expect(spans.every((span) => span.to <= words.length)).toBe(true);
    },
  );
});
