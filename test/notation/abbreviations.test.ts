import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { abbreviationsIn } from '../../core/notation/abbreviations.ts';
import { translate } from '../../core/notation/translate.ts';
import { abbreviationList, termsNote, tradeWords } from '../../core/trade/abbreviations.ts';
import type { Terms } from '../../core/trade/stitches.ts';
import { stitchTerms } from '../../core/trade/terms.ts';
import terms from '../../resources/trade/terms.json' with { type: 'json' };

const list = (text: string, terms: Terms = 'us', own: Record<string, string> = {}) =>
  abbreviationList(abbreviationsIn([text], terms, Object.keys(own)), terms, own).map(
    ({ abbr, meaning }) => `${abbr}: ${meaning}`,
  );

describe('the list is made from use', () => {
  it.each<[string, string, string[]]>([
    [
      'a plain row',
      'Row 2: Ch 1, sc in each st across, turn.',
      ['ch: chain', 'sc: single crochet', 'st: stitch'],
    ],
    [
      'stitches of many',
      'Row 2: Sc in next 3 sts, 2 dcs in next ch-2 sp.',
      ['ch: chain', 'dc: double crochet', 'sc: single crochet', 'sp: space', 'st: stitch'],
    ],
    [
      'decreases',
      'Rnd 4: Sc2tog, dc3tog over next 3 sts.',
      ['dc3tog: double crochet 3 together', 'rnd: round', 'sc2tog: single crochet 2 together', 'st: stitch'],
    ],
    [
      'posts as written',
      'Row 2: fpdc around next st, BPdc around next st.',
      ['BPdc: back post double crochet', 'fpdc: front post double crochet', 'st: stitch'],
    ],
    [
      'a capital that only begins a sentence',
      'Row 2: Fpdc in next st. Sk 2 sts.',
      ['FPdc: front post double crochet', 'sk: skip', 'st: stitch'],
    ],
    ['slip stitch as written', 'Row 2: Ss in next st.', ['ss: slip stitch', 'st: stitch']],
    ['words in capitals', 'Row 1 (RS): with MC, ch 3.', ['ch: chain', 'MC: main color', 'RS: right side']],
    ['glued loops', 'Row 2: scblo in next st.', ['BLO: back loop only', 'sc: single crochet', 'st: stitch']],
    [
      'two words',
      'Rnd 2: sl st in first st, inv dec, V-st in next ch-sp.',
      [
        'ch-sp: chain space',
        'inv dec: invisible decrease',
        'rnd: round',
        'sl st: slip stitch',
        'st: stitch',
        'V-st: V-stitch',
      ],
    ],
    [
      'shells',
      'Rnd 2: sh in next st, 3-dc cl in next st',
      ['cl: cluster', 'dc: double crochet', 'rnd: round', 'sh: shell', 'st: stitch'],
    ],
    ['nothing in prose', 'I beg you, place a bet and pat the cat. PS: hello.', []],
    ['no addresses', 'www.sc-dc.example', []],
    ['full words', 'Row 1: double crochet in each stitch.', []],
  ])('%s', (_, text, expected) => {
    expect(list(text)).toEqual(expected);
  });

  it('in UK terms', () => {
    expect(list('Row 2: tr in next st, yrh, rtrf around next st, dc2tog, CC', 'uk')).toEqual([
      'CC: contrast colour',
      'dc2tog: double crochet 2 together',
      'rtrf: raised treble front',
      'st: stitch',
      'tr: treble crochet',
      'yrh: yarn round hook',
    ]);
  });

  it('with the pattern’s own, whose meaning goes first', () => {
    const own = { sm: 'small motif', LgSh: 'large shell', unused: 'not there' };
    expect(list('Rnd 2: lgsh in next st, sm around', 'us', own)).toEqual([
      'LgSh: large shell',
      'rnd: round',
      'sm: small motif',
      'st: stitch',
    ]);
  });

  it('names UK dc2tog, FLO, RS and WS: UK craft publisher’s abbreviations page', () => {
    expect(list('Row 2 (WS): dc2tog in FLO, RS facing', 'uk')).toEqual([
      'dc2tog: double crochet 2 together',
      'FLO: front loop only',
      'RS: right side',
      'WS: wrong side',
    ]);
  });

  it('explains every abbreviation of the Craft Yarn Council’s list (from memory)', () => {
    // "m" is also the metre and "yd" a unit; "ch-" is no word of its own.
    const listed = Object.keys(terms.abbreviations.items).filter(
      (abbr) => !['m', 'yd', 'ch-'].includes(abbr),
    );
    for (const abbr of listed.flatMap((words) => words.split(' or '))) {
      expect(list(`Row 2: 3 ${abbr} in next st.`).map((line) => line.split(':')[0])).toContain(abbr);
    }
  });

  it('gives the Craft Yarn Council’s meanings (from memory)', () => {
    for (const [abbr, meaning] of [
      ['foll', 'following'],
      ['rem', 'remaining'],
      ['tog', 'together'],
      ['yo', 'yarn over'],
    ] as const) {
      expect(abbreviationList([abbr], 'us')).toEqual([{ abbr, meaning }]);
    }
  });
});

describe('a list from ids', () => {
  it('takes built-up ids apart, each abbreviation once, in alphabetical order', () => {
    expect(abbreviationList(['5-shell.t3', 't3', 'ch-2 sp', 'fp.t4', 'slip', 'blo', 'zigzag'], 'us')).toEqual(
      [
        { abbr: 'BLO', meaning: 'back loop only' },
        { abbr: 'ch', meaning: 'chain' },
        { abbr: 'dc', meaning: 'double crochet' },
        { abbr: 'FPtr', meaning: 'front post treble crochet' },
        { abbr: 'sh', meaning: 'shell' },
        { abbr: 'sl st', meaning: 'slip stitch' },
        { abbr: 'sp', meaning: 'space' },
      ],
    );
  });
  it('explains every stitch and word in both markets', () => {
    for (const market of ['us', 'uk'] as const) {
      const ids = stitchTerms.map((entry) => entry.id).filter((id) => id !== 'picot'); // has no abbreviation
      for (const id of [...ids, ...Object.keys(tradeWords)]) {
        const lines = abbreviationList([id], market);
        expect(lines.length, id).toBeGreaterThan(0);
        for (const { abbr, meaning } of lines) expect(abbr === '' || meaning === '').toBe(false);
      }
    }
  });
});

describe('the note that says which terms are used', () => {
  it.each<[Terms, string[], string]>([
    ['us', ['t1', 't3', 't1'], 'This pattern uses US crochet terms. In UK terms sc is dc and dc is tr.'],
    [
      'uk',
      ['tog2.t3', 't2', 't1'],
      'This pattern uses UK crochet terms. In US terms dc is sc, htr is hdc and tr2tog is dc2tog.',
    ],
    ['us', ['chain', 'st'], 'This pattern uses US crochet terms.'],
  ])('%s: %j', (terms, used, expected) => {
    expect(termsNote(used, terms)).toBe(expected);
  });
});

it('a converted text has the same list, entry for entry, in the other terms', () => {
  const stitch = fc.constantFrom(
    ...stitchTerms
      .filter(({ us }) => /^[A-Za-z]+(?:\dtog)?$/.test(us.abbr) && us.abbr !== us.name)
      .map(({ us }) => us.abbr),
  );
  fc.assert(
    fc.property(fc.array(stitch, { minLength: 1, maxLength: 8 }), (stitches) => {
      const us = `Row 2: ${stitches.map((name) => `${name} in next st`).join(', ')}.`;
      const ids = (text: string, terms: Terms) =>
        abbreviationsIn([text], terms).map((used) => (typeof used === 'string' ? used : used.id));
      expect(ids(translate(us, 'us', 'uk').text, 'uk')).toEqual(ids(us, 'us'));
    }),
  );
});

it('any text is answered', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), fc.array(fc.string()), (text, own) => {
      const used = abbreviationsIn([text, text], 'us', own);
      expect(abbreviationsIn([text], 'us', own)).toEqual(used);
    }),
  );
});
