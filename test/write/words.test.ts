/** What is recognised while typing: labels that go, words that could follow, converted words. */
import { describe, expect, test } from 'vitest';
import { blankPattern } from '../../core/outlines/blank.ts';
import { writeWords } from '../../renderer/words/write.ts';
import { proposals, typedAt } from '../../renderer/write/completion/words.ts';
import { labelTyped, rangeTyped } from '../../renderer/write/labels.ts';
import { convertedWords } from '../../renderer/write/terms.ts';
import { figureTyped } from '../../renderer/write/typed-figures.ts';
import { document } from './written.ts';

describe('what is not written yet', () => {
  test.each([
    [writeWords.prompts.row('us'), 'Write the row, such as “Ch 1, sc in each st across, turn.”'],
    [writeWords.prompts.row('uk'), 'Write the row, such as “Ch 1, dc in each st across, turn.”'],
    [writeWords.prompts.round('us'), 'Write the round, such as “Ch 1, sc in each st around, join.”'],
    [writeWords.add.blocks(false, 'round'), 'Add a round'],
    [writeWords.add.blocks(true, 'row'), 'Add the first row'],
    [writeWords.add.repeat('round'), 'Add a repeat of rounds'],
  ])('is asked for as what it is: %s', (words, expected) => {
    expect(words).toBe(expected);
  });
});

describe('typed labels', () => {
  test.each([
    ['Row 3', { form: 'row', title: null }],
    ['row 12', { form: 'row', title: null }],
    ['Rnd 3', { form: 'round', title: null }],
    ['Round 3', { form: 'round', title: null }],
    ['Row 3 (RS)', { form: 'row', title: null }],
    ['Dec Row 5', { form: 'row', title: 'Dec' }],
    ['Foundation row', { form: 'foundation', title: null }],
  ])('“%s:” is one', (words, label) => {
    expect(labelTyped(words)).toEqual(label);
  });

  test.each([
    '',
    'Ch 1',
    'Note',
    'Sc in next st',
    'Ch 3 (counts as dc)',
    'Shell',
    'Work as Row 3',
    // What these say is worked out nowhere: it would be lost.
    'Edging',
    'Neck edging',
    'Cuff',
    'Edging row',
    'Border Rnd 1',
    'Set-up row',
    'Last row',
    'Row 7 (RS, dec)',
    'Rows 4-9',
    'Rnds 3 to 12',
    'Rows 2, 4 and 6',
    'Row 1 and all odd rows',
    'Next 3 rows',
  ])('“%s:” is none', (words) => {
    expect(labelTyped(words)).toBeNull();
  });

  test.each([
    ['Rows 4-9: Ch 1, sc in each st across, turn.', { form: 'row', rows: 6, length: 10 }],
    ['Rows 4 – 5:Ch 1, turn.', { form: 'row', rows: 2, length: 11 }],
    ['Rnds 3 to 12: Sc in each st around.', { form: 'round', rows: 10, length: 14 }],
    ['Rounds 3 through 12: Sc in each st around.', { form: 'round', rows: 10, length: 21 }],
    ['Row 4: Ch 1, turn.', null],
    ['Rows 4-9:', null],
    ['Rows 9-4: Ch 1, turn.', null],
    ['Rows 4-9: Rep Rows 2 and 3.', null],
    ['Rows 2, 4 and 6: Ch 1, turn.', null],
    ['Ch 1, turn.', null],
  ])('several rows: “%s”', (text, range) => {
    expect(rangeTyped(text)).toEqual(range);
  });
});

describe('words that could follow', () => {
  const pattern = {
    ...blankPattern({ title: 'Test', terms: 'us', units: 'metric', date: '2026-01-01' } as const),
    specials: [
      {
        id: 's',
        nameUs: 'small fan',
        nameUk: 'small fan',
        abbrUs: 'sfan',
        abbrUk: 'sfan',
        text: { text: '', figures: [] },
      },
    ],
  };
  const offered = (before: string, terms: 'us' | 'uk' = 'us') => {
    const typed = typedAt(before);
    return typed === null ? [] : proposals(typed, { ...pattern, terms }).map(({ words }) => words);
  };

  // hdc is a US name and htr a UK one: Craft Yarn Council's list of abbreviations, from memory.
  test.each([
    ['Ch 1, hd', 'us', 'hdc'],
    ['Ch 1, ht', 'uk', 'htr'],
    ['Ch 1, sf', 'us', 'sfan'],
    ['small', 'us', 'small fan'],
    ['Ch 2, =fin', 'us', 'finished bust'],
    ['Ch 2, =', 'us', 'bust'],
  ] as const)('“%s” in %s terms: %s', (before, terms, words) => {
    expect(offered(before, terms)).toContain(words);
  });

  test.each(['', 'Ch 1, ', 'Ch 1, h', 'dc', '2 dc', 'next st.', 'a=b', 'Ch = ', 'zzq'])(
    '“%s”: none',
    (before) => {
      expect(offered(before)).toEqual([]);
    },
  );
});

describe('figures typed out', () => {
  const lines = ['back stitches', 'body rows', 'ease'];
  test.each([
    ['Ch =back stitches', { at: 3, expression: 'back stitches' }],
    ['Ch =back stitches + 1', { at: 3, expression: 'back stitches + 1' }],
    ['Rep Row 2 =(body rows - 2) ÷ 2', { at: 10, expression: '(body rows - 2) ÷ 2' }],
    ['(=Back Stitches ', { at: 1, expression: 'Back Stitches' }],
    ['Ch =back', null],
    ['Ch =back stitches rows and', null],
    ['Ch =back stitches +', null],
    ['1 shell =3 dc', null],
    ['Ch = back stitches', null],
    ['Ch 3, back stitches', null],
    ['=', null],
  ])('“%s”', (before, typed) => {
    expect(figureTyped(before, lines)).toEqual(typed);
  });
});

describe('converted words', () => {
  test('are marks over the authored ones; the document is not touched', () => {
    const doc = document([['row Ch [a], sc in next dc, sk 2 sts.', 'prose Work in single crochet.']]);
    const shown = convertedWords(doc, 'uk')
      .find()
      .map(({ from, to, spec }) => [doc.textBetween(from, to), spec.replacement]);
    // US sc is UK dc, US dc is UK tr: terms.json and its sources.
    expect(shown).toEqual([
      ['sc', 'dc'],
      ['dc', 'tr'],
      ['sk', 'miss'],
      ['single crochet', 'double crochet'],
    ]);
  });
});
