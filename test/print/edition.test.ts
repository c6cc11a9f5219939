/** Booklets of a whole pattern: golden text, laws over sizes and terms, the abbreviation list, units, cautions. */
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import type { Pattern } from '../../core/document/pattern.ts';
import type { Block, Booklet, Row } from '../../core/print/content.ts';
import { bookletOf, type EditionOptions } from '../../core/print/edition.ts';
import { layOut } from '../../core/print/layout.ts';
import { study } from '../../core/study/index.ts';
import { cautions, deferral } from '../../core/trade/cautions.ts';
import type { Terms } from '../../core/trade/stitches.ts';
import { anyPattern } from '../document/patterns.ts';
import { pattern, SIZES, text } from './pattern.ts';
import { booklet, wordsText } from './plain-booklet.ts';
import { samplePicture } from './sample.ts';
import { resources } from './tools.ts';

const studies = { us: study(pattern('us')), uk: study(pattern('uk')) };

function printed(author: Terms, options: EditionOptions): string {
  return booklet(bookletOf(studies[author], options).booklet);
}

function edited(change: (pattern: Pattern) => Partial<Pattern>): ReturnType<typeof study> {
  const base = pattern('us');
  return study({ ...base, ...change(base) });
}

function* blocksOf(of: Booklet): Generator<Block> {
  const inside = function* (block: Block): Generator<Block> {
    yield block;
    if (block.kind === 'together') for (const inner of block.blocks) yield* inside(inner);
    if (block.kind === 'with-next') yield* inside(block.block);
  };
  for (const part of of.parts) for (const block of part.blocks) yield* inside(block);
}

const rowsOf = (of: Booklet): readonly Row[] =>
  [...blocksOf(of)].filter((block): block is Row => block.kind === 'row');

const lineOf = (row: Row): string =>
  [row.label, row.side ?? '', wordsText(row.body), row.count === null ? '' : wordsText(row.count)]
    .join('|')
    .replaceAll('\u00A0', ' ');

it('has no findings to begin with', () => {
  expect(studies.us.findings).toEqual([]);
  expect(studies.uk.findings).toEqual([]);
});

it.each([
  ['us', 'all', 'imperial'],
  ['uk', 'all', 'metric'],
  ['us', 'l', 'metric'],
] as const)('golden: %s terms, sizes %s, %s first', async (terms, sizes, units) => {
  const text = printed('us', { terms, sizes, units, cautions: cautions.slice(1, 3) });
  await expect(text).toMatchFileSnapshot(`golden/edition-${terms}-${sizes}-${units}.txt`);
});

it('tells both ends of what each size is for on the cover', () => {
  const own = edited(({ sizes }) => ({
    lines: (['from', 'up to'] as const).map((end, i) => ({
      id: `body-${i}`,
      name: `bust ${end}`,
      printed: `To fit bust ${end}`,
      note: null,
      kind: 'body' as const,
      measure: 'bust',
      bound: 'middle' as const,
      overtyped: Object.fromEntries(
        sizes.map(({ id }, n) => [id, { value: 80 + 10 * n + 5 * i, unit: 'cm' as const }]),
      ),
    })),
  }));
  const { cover } = bookletOf(own, { terms: 'us', sizes: 'all', units: 'metric' }).booklet;
  const told = (cover?.glance ?? []).map(({ label, value }) => `${wordsText(label)}: ${wordsText(value)}`);
  expect(told.filter((words) => words.startsWith('To fit'))).toEqual([
    expect.stringMatching(/^To fit bust from: 80 \(90, /u),
    expect.stringMatching(/^To fit bust up to: 85 \(95, /u),
  ]);
});

it.each([
  ['Buttons', 1, '1 button'],
  ['buttons, 15 mm across', 1, '1 button, 15 mm across'],
  ['Stitch marker', 4, '4 stitch markers'],
  ['Safety eyes: 6 mm', 2, '2 safety eyes: 6 mm'],
  ['cushion pad 45 cm', 1, '1 cushion pad 45 cm'],
  ['buttonhole elastic', 2, '2 buttonhole elastic'],
] as const)('things are told in the number that is listed: %s, %i', (name, amount, expected) => {
  const own = edited(() => ({
    notions: [{ id: 'n', name, amount: { all: amount }, smallPart: false, cord: false, price: null }],
  }));
  const words = booklet(bookletOf(own, { terms: 'us', sizes: 'all' }).booklet).replaceAll('~', ' ');
  expect(words).toContain(expected);
  expect(words).not.toContain(`${expected}s`);
});

describe('terms', () => {
  it('gives the same US booklet whichever way the author writes', () => {
    expect(printed('uk', { terms: 'us', sizes: 'all' })).toBe(printed('us', { terms: 'us', sizes: 'all' }));
  });

  it('gives the same UK booklet but for the slip stitch, which UK readers know by both names', () => {
    const plain = (words: string) => words.replace(/\bsl[ ~]st\b|\bss\b/g, 'slip');
    expect(plain(printed('us', { terms: 'uk', sizes: 'all' }))).toBe(
      plain(printed('uk', { terms: 'uk', sizes: 'all' })),
    );
  });

  it('leaves every word of the author as it is when author and reader share their terms', () => {
    const words = 'A double, a treble clef, single rows, skip it, gauge it';
    const own = edited(({ notes }) => ({ notes: [...notes, text(words)] }));
    const { booklet: made, facts } = bookletOf(own, { terms: 'us', sizes: 'all' });
    expect(booklet(made)).toContain(words);
    expect(facts).toEqual([]);
  });

  it('says in which language and terms it is', () => {
    expect(bookletOf(studies.us, { terms: 'us', sizes: 'all' }).booklet.meta).toMatchObject({
      language: 'en-US',
      termsNote: 'US terms',
      sizeKey: 'Sizes S (M, L, XL)',
      date: '2026-04-18',
    });
    expect(bookletOf(studies.us, { terms: 'uk', sizes: 'm' }).booklet.meta).toMatchObject({
      language: 'en-GB',
      termsNote: 'UK terms',
      sizeKey: 'Size M',
    });
  });

  it('leaves a word in doubt and reports it', () => {
    const own = edited(({ about }) => ({ about: { ...about, description: 'Skip the band if you like.' } }));
    const { facts } = bookletOf(own, { terms: 'uk', sizes: 'all' });
    expect(facts.map(({ fact }) => fact.code)).toEqual(['term-in-doubt']);
  });

  it.each([
    ['us', 'The end of an sc row', 'uk', 'The end of a dc row'],
    ['us', 'An hdc here', 'uk', 'An htr here'],
    ['uk', 'Work an htr, then ss in first dc', 'us', 'Work an hdc, then sl st in first sc'],
  ] as const)('%s "%s" is %s "%s"', (author, written, terms, said) => {
    const base = pattern(author);
    const own = study({ ...base, notes: [text(written)] });
    expect(booklet(bookletOf(own, { terms, sizes: 'all' }).booklet).replaceAll('~', ' ')).toContain(said);
  });
});

describe('one size', () => {
  /** The i-th entry of every list that has one for each size; "4–56 (58, 60)" shares its beginning. */
  const reduced = (words: string, i: number): string =>
    words.replace(
      /(\d+–|)(\d+(?:–\d+)?|–) \(([^()]*)\)/g,
      (whole, lead: string, first: string, rest: string) => {
        const all = [first, ...rest.split(', ')];
        if (all.length !== SIZES.length || !all.every((one) => /^[\d–]+$/.test(one))) return whole;
        const own =
          rest.includes('–') && lead !== ''
            ? [`${lead}${first}`, ...all.slice(1)]
            : all.map((one) => lead + one);
        return own[i]!;
      },
    );

  it.each(SIZES.map((size, i) => [size.label, size.id, i] as const))(
    'size %s has its own numbers of every list, and only its own rows',
    (_, id, i) => {
      const whole = rowsOf(bookletOf(studies.us, { terms: 'us', sizes: 'all' }).booklet)
        .filter((row) => row.only === null || 'lx'.includes(id))
        .filter((row) => !/^Dec\u00A0/.test(wordsText(row.body)))
        .map((row) => reduced(lineOf(row), i));
      const alone = rowsOf(bookletOf(studies.us, { terms: 'us', sizes: id }).booklet)
        .filter((row) => !/^Dec\u00A0/.test(wordsText(row.body)))
        .map(lineOf);
      expect(alone).toEqual(whole);
    },
  );

  it.each(SIZES.map((size, i) => [size.label, size.id, i] as const))(
    'size %s ends each row with the count that the study has',
    (_, id, i) => {
      const { booklet: made } = bookletOf(studies.us, { terms: 'us', sizes: id });
      const counts = rowsOf(made).flatMap((row) => {
        if (row.count === null) return [];
        const words = wordsText(row.count);
        return [
          Number(
            /(\d+)\u00A0sts in all/.exec(
              words.replaceAll('\u00A0sts\u00A0in\u00A0all', '\u00A0sts in all'),
            )?.[1] ?? /\d+/.exec(words)![0],
          ),
        ];
      });
      const studied = studies.us.pieces.flatMap((piece) =>
        piece.blocks.flatMap((block) => {
          const own = block.sizes[i] ?? null;
          return own === null || own.tally.byKind.has('chain') ? [] : [own.tally.stitches];
        }),
      );
      expect(counts).toEqual(studied);
    },
  );

  it('prints no list of sizes anywhere', () => {
    const { booklet: made } = bookletOf(studies.us, { terms: 'us', sizes: 'm' });
    expect(booklet(made)).not.toMatch(/\d \(\d+(?:[.½¼¾\d]*)?, /);
    expect(booklet(made)).not.toContain('–, ');
  });

  it('leaves a typed list with a dash for the size as it is, and says so', () => {
    const own = edited(() => ({ notes: [text('Leave 3 (–, 5, 6) sts for the strap')] }));
    const { booklet: made, facts } = bookletOf(own, { terms: 'us', sizes: 'm' });
    expect(booklet(made)).toContain('3 (–, 5, 6)~sts');
    expect(facts.map(({ fact }) => [fact.code, fact.data])).toEqual([
      ['size-without-number', { list: '3 (–, 5, 6)', size: 'M' }],
    ]);
    expect(booklet(bookletOf(own, { terms: 'us', sizes: 'l' }).booklet)).toContain('Leave~5~sts');
  });

  it('takes a size that is not there for all sizes, and says so', () => {
    const { booklet: made, facts } = bookletOf(studies.us, { terms: 'us', sizes: 'xxl' });
    expect(made.meta.sizeKey).toBe('Sizes S (M, L, XL)');
    expect(facts.map(({ fact }) => fact.code)).toEqual(['size-not-known']);
  });

  it('reports a figure that has no number', () => {
    const own = edited(() => ({ notes: [text('Leave {nothing of the kind} sts')] }));
    const { booklet: made, facts } = bookletOf(own, { terms: 'us', sizes: 'm' });
    expect(booklet(made)).toContain('Leave – sts');
    expect(facts.map(({ fact }) => fact.code)).toEqual(['figure-without-number']);
  });
});

describe('abbreviations', () => {
  const listed = (of: Booklet): readonly string[] => {
    const part = of.parts.find((one) => one.title === 'Terms and abbreviations')!;
    const at = part.blocks.findIndex(
      (block) => block.kind === 'heading' && wordsText(block.words) === 'Abbreviations',
    );
    const block = part.blocks[at + 1]!;
    return block.kind === 'entries' ? block.items.map((item) => wordsText(item.label)) : [];
  };

  it.each(['us', 'uk'] as const)('are those used in the %s edition: none missing, none extra', (terms) => {
    const { booklet: made } = bookletOf(studies.us, { terms, sizes: 'all' });
    const words = listed(made);
    const elsewhere = booklet({
      ...made,
      parts: made.parts.filter((part) => part.title !== 'Terms and abbreviations'),
    }).replaceAll('~', ' ');
    const special = wordsText(
      (
        made.parts.find((part) => part.title === 'Terms and abbreviations')!.blocks.at(-1) as Extract<
          Block,
          { kind: 'entries' }
        >
      ).items[0]!.value,
    ).replaceAll('\u00A0', ' ');
    for (const word of words) {
      expect(`${elsewhere} ${special}`).toMatch(new RegExp(`(?<!\\p{L})${word}s?(?!\\p{Ll})`, 'iu'));
    }
    const stitches = terms === 'us' ? ['sc', 'hdc', 'dc', 'sc2tog'] : ['dc', 'htr', 'tr', 'dc2tog'];
    expect(words).toEqual(
      expect.arrayContaining([...stitches, 'ch', 'st', 'RS', 'WS', 'rep', 'dec', 'rnd', 'sl st']),
    );
    expect(words).toHaveLength(new Set(words).size);
    expect(words).not.toContain('sh');
    expect(words).not.toContain(terms === 'us' ? 'tr' : 'sc');
  });

  it('lists the short name of a special stitch that rows use, and what the maker explains', () => {
    const own = edited((base) => ({
      notes: [text('Work sh where the note says so, then tbf')],
      abbreviations: { tbf: 'through both fabrics', xyz: 'never used' },
      pieces: base.pieces,
    }));
    const words = listed(bookletOf(own, { terms: 'us', sizes: 'all' }).booklet);
    expect(words).toContain('sh');
    expect(words).toContain('tbf');
    expect(words).not.toContain('xyz');
  });
});

describe('numbers in the facts about the pattern', () => {
  // 74 sts at 16 in 10 cm are 46.25 cm; two panels 92.5 cm, 36.42 in (1 in = 2.54 cm, 16 CFR 500.19).
  it('tells what the fitted stitches make, not what was asked for', () => {
    const words = printed('us', { terms: 'us', sizes: 'all' });
    expect(words).toContain('| Finished bust | 92.5 | 102.5 | 112.5 | 122.5');
    expect(words).toContain('| Finished bust | 36½ | 40¼ | 44¼ | 48¼');
  });

  it('puts the leading unit first', () => {
    expect(printed('us', { terms: 'us', sizes: 's', units: 'imperial' })).toContain('36½~in / 92.5~cm');
    expect(printed('us', { terms: 'us', sizes: 's', units: 'metric' })).toContain('92.5~cm / 36½~in');
  });

  // 588.4 m ÷ 180 m a ball = 3.27: four balls; 588.4 m = 643.5 yd (1 yd = 0.9144 m), up to the next 5.
  it('tells amounts of yarn in metres, yards and whole balls', () => {
    expect(printed('us', { terms: 'uk', sizes: 'm' })).toContain('Amount: 590~m~/ 645~yd, 4~balls');
  });

  it.each([
    ['us', 'worsted weight (category 4: Medium)', '5~mm~(US~H-8)', 'Gauge', 'April~18, 2026'],
    ['uk', 'aran weight (category 4: Medium)', '5~mm for the panels', 'Tension', '18~April~2026'],
  ] as const)('speaks the %s market’s language', (terms, ...said) => {
    const words = printed('us', { terms, sizes: 'all' });
    for (const one of said) expect(words).toContain(one);
  });

  it('keeps a place for schematics only when there are some', () => {
    const schematics = [
      { name: 'schematic', aspect: 2, alt: 'The panel with its measurements', caption: null },
    ];
    const made = bookletOf(studies.us, { terms: 'us', sizes: 'all', schematics }).booklet;
    expect(booklet(made)).toContain('[schematic: The panel with its measurements]');
    expect(printed('us', { terms: 'us', sizes: 'all' })).not.toContain('Schematic');
  });
});

describe('cautions', () => {
  it('tells the trade’s with their rules, ends once with what all of them end with, and adds the maker’s', () => {
    const own = edited(() => ({ cautions: ['Keep the shawl pin away from children'] }));
    const words = booklet(
      bookletOf(own, { terms: 'us', sizes: 'all', cautions: [...cautions.slice(0, 2), 'Mind the color'] })
        .booklet,
    );
    expect(words).toContain(`! ${cautions[0]!.title.replace("'", '’')}`);
    expect(words).toContain('Rules to look up: 16 CFR');
    expect(words.replaceAll('~', ' ').split(deferral)).toHaveLength(2);
    expect(words).toContain('! Keep the shawl pin away from children');
    expect(words).toContain('! Mind the color');
  });

  it('do not bring the letters of rules into the abbreviations', () => {
    const words = printed('us', { terms: 'uk', sizes: 'all', cautions });
    expect(words).toContain('CEN/TR');
    expect(words).not.toMatch(/^- TR:/mu);
  });

  it('has no such part without any', () => {
    expect(printed('us', { terms: 'us', sizes: 'all' })).not.toContain('# Cautions');
  });
});

it.each([
  ['a4', 'standard'],
  ['letter', 'large-print'],
  ['a4', 'ink-saving'],
] as const)('fits %s, %s, with nothing that cannot be printed', (paper, edition) => {
  for (const sizes of ['all', 'x']) {
    const { booklet: made } = bookletOf(studies.us, { terms: 'uk', sizes, cautions });
    const layout = layOut(made, { paper, edition }, { ...resources, picture: () => samplePicture(60, 40) });
    expect(layout.facts).toEqual([]);
    expect(layout.bookmarks.map((mark) => mark.title)).toEqual(
      expect.arrayContaining(['Materials and tension', 'Front and back (make 2)', 'Finishing']),
    );
  }
});

it('makes a booklet of any pattern at all, in any terms, for all sizes and for each', () => {
  fc.assert(
    fc.property(anyPattern, fc.constantFrom<Terms>('us', 'uk'), (any, terms) => {
      const known = study(any);
      for (const sizes of ['all', ...any.sizes.slice(0, 2).map((size) => size.id)]) {
        const { booklet: made } = bookletOf(known, { terms, sizes });
        expect(made.parts.every((part) => part.blocks.length > 0)).toBe(true);
        expect(booklet(made)).not.toMatch(/undefined|\[object|NaN/);
      }
    }),
    { numRuns: 150, seed: 7 },
  );
});

test('a pattern without a title is printed under the words that stand for one everywhere', () => {
  const untitled = edited(({ about }) => ({ about: { ...about, title: '  ' } }));
  const { meta } = bookletOf(untitled, { terms: 'uk', sizes: 'all' }).booklet;
  expect(meta.title).toBe('Untitled pattern');
});
