/**
 * What the maker keeps about people, testers and prices stays out of everything that is sold: the words of every
 * edition, the bytes of the PDFs, what the command line tells. And a person's own sheet says whom it is for.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkJson } from '../../app/command/check.ts';
import { examine } from '../../app/services/examine.ts';
import { exportItems } from '../../app/services/export.ts';
import { compose } from '../../core/document/compose.ts';
import type { Pattern } from '../../core/document/pattern.ts';
import { type Making, NO_WORKBOOK, type Person, type Workbook } from '../../core/document/workbook.ts';
import { schematicsOf } from '../../core/drawing/schematic.ts';
import { bookletOf } from '../../core/print/edition.ts';
import { layOut } from '../../core/print/layout.ts';
import { writePages } from '../../core/print/pen.ts';
import { sheetOf } from '../../core/print/person-sheet.ts';
import { review } from '../../core/review/index.ts';
import { study } from '../../core/study/index.ts';
import { pattern } from './pattern.ts';
import { booklet } from './plain-booklet.ts';
import { resources } from './tools.ts';

const base = pattern('us');
const sizeIds = base.sizes.map(({ id }) => id);
const lineIds = base.lines.map(({ id }) => id);

/** Words that stand nowhere in the pattern, and numbers that nothing in it comes to. */
const WORD = 'Zzyxquil';
const NUMBER = 9173.37;
const MARKS = [WORD, WORD.toLowerCase(), '9173.37', '9173', '3611.5', '3611½'];

const secret = fc.nat({ max: 99 }).map((n) => `${WORD}${n}`);
const hidden = fc.constantFrom({ value: NUMBER, unit: 'cm' as const }, { value: NUMBER, unit: '%' as const });
const values = fc.dictionary(fc.constantFrom(...lineIds), hidden, { maxKeys: 6 });

const people: fc.Arbitrary<readonly Person[]> = fc.array(
  fc.record({
    id: fc.nat({ max: 9999 }).map((n) => `person-${WORD}-${n}`),
    name: secret,
    base: fc.constantFrom('', ...sizeIds),
    values,
    note: secret,
  }),
  { minLength: 1, maxLength: 3 },
);

const makings: fc.Arbitrary<readonly Making[]> = fc.array(
  fc.record({
    id: fc.nat({ max: 9999 }).map((n) => `making-${WORD}-${n}`),
    kind: fc.constantFrom('sample' as const, 'tester' as const),
    by: secret,
    size: fc.constantFrom('', ...sizeIds),
    state: fc.constantFrom('asked' as const, 'working' as const, 'finished' as const),
    used: fc.array(
      fc.record({
        yarn: fc.constant(''),
        piece: fc.constant(''),
        grams: fc.integer({ min: 1, max: 900 }),
        metres: fc.constant(null),
      }),
      { maxLength: 2 },
    ),
    hours: fc.constantFrom(null, NUMBER),
    swatch: fc.constant(null),
    measured: values,
    note: secret,
  }),
  { maxLength: 3 },
);

const workbooks: fc.Arbitrary<Workbook> = fc.record({
  yarnMargin: fc.constantFrom(0, 10),
  pricing: fc.record({
    currency: fc.constant('XTS'),
    hourly: fc.constant(NUMBER),
    other: fc.array(fc.record({ name: secret, amount: fc.constant(NUMBER) }), { maxLength: 2 }),
    profit: fc.constant(NUMBER),
    fee: fc.constant(37),
  }),
  makings,
  people,
  accepted: fc.array(
    fc.record({
      code: fc.constant('cover-incomplete'),
      node: fc.constant(''),
      words: secret,
      reason: secret,
      date: fc.constant('2026-11-25'),
    }),
    { maxLength: 2 },
  ),
  doubts: fc.constant([]),
});

const kept = (workbook: Workbook): Pattern => ({
  ...base,
  yarns: base.yarns.map((yarn) => ({ ...yarn, metres: {}, ballPrice: NUMBER })),
  notions: base.notions.map((notion) => ({ ...notion, price: NUMBER })),
  workbook,
});

/**
 * Findings are for the maker, and tell what a finished piece measures where that is off; whose it is they do not
 * tell. So here they are held to all the rest.
 */
const unmeasured = (workbook: Workbook): Workbook => ({
  ...workbook,
  makings: workbook.makings.map((making) => ({ ...making, measured: {} })),
});

const editions = (['us', 'uk'] as const).flatMap((terms) =>
  ['all', ...sizeIds].map((sizes) => ({ terms, sizes })),
);

function expectNoMark(text: string): void {
  for (const mark of MARKS) expect(text).not.toContain(mark);
}

describe('what is sold', () => {
  test('has no word and no number of the workbook in any edition, findings or file name', () => {
    fc.assert(
      fc.property(workbooks, (workbook) => {
        const own = study(kept(workbook));
        for (const options of editions) expectNoMark(JSON.stringify(bookletOf(own, options).booklet));
        const edited = study(kept(unmeasured(workbook)));
        expectNoMark(JSON.stringify([edited.findings, review(edited)]));
        // Drawings, their words and what they say to who cannot see them; exact numbers as text.
        const drawn = JSON.stringify(schematicsOf(own), (_, value: unknown) =>
          typeof value === 'bigint' ? String(value) : value,
        );
        expectNoMark(drawn);
        const items = exportItems(own.pattern, {
          terms: ['us'],
          papers: ['a4'],
          editions: ['standard'],
          sizes: [null, ...sizeIds],
        });
        expectNoMark(JSON.stringify(items));
      }),
      { numRuns: 8 },
    );
  });

  test('the check for programs tells nothing of people, testers or prices', () => {
    fc.assert(
      fc.property(workbooks, (workbook) => {
        // A reason for letting a finding stand is for the report: it is the maker's word about the pattern.
        const pattern = kept({ ...unmeasured(workbook), accepted: [] });
        expectNoMark(JSON.stringify(checkJson(examine(compose(pattern)))));
      }),
      { numRuns: 8 },
    );
  });

  test('is the same with people and without', async () => {
    const [with3] = fc.sample(
      people.filter((all) => all.length === 3),
      1,
    );
    const bytes = async (own: Pattern) => {
      const { booklet: made } = bookletOf(study(own), { terms: 'us', sizes: 'all' });
      return writePages(layOut(made, { paper: 'a4', edition: 'standard' }, resources), made, resources);
    };
    const without = await bytes(kept(NO_WORKBOOK));
    const withPeople = await bytes(kept({ ...NO_WORKBOOK, people: with3! }));
    expect(Buffer.from(withPeople).equals(Buffer.from(without))).toBe(true);
    // And by the words of every edition, which the bytes follow from.
    fc.assert(
      fc.property(people, workbooks, (all, workbook) => {
        const [a, b] = [study(kept({ ...workbook, people: all })), study(kept({ ...workbook, people: [] }))];
        for (const options of editions)
          expect(bookletOf(a, options).booklet).toEqual(bookletOf(b, options).booklet);
      }),
      { numRuns: 4 },
    );
  });
});

describe('a person’s own sheet', () => {
  const chest = base.lines.find((line) => line.kind === 'body')!;
  const person: Person = {
    id: 'person-a',
    name: 'Ottilie',
    base: 'm',
    values: { [chest.id]: { value: 97, unit: 'cm' } },
    note: 'Likes it loose',
  };
  const own = study({ ...base, workbook: { ...NO_WORKBOOK, people: [person] } });

  test('names the person, says that it is not for sale, and keeps the note', () => {
    const { booklet: made, facts } = sheetOf(own, 'person-a', 'us', () => []);
    const words = booklet(made).replaceAll('~', ' ');
    expect(facts).toEqual([]);
    expect(made.meta.sizeKey).toBe('Made to measure for Ottilie · not for sale');
    expect(words).toContain('This sheet is for Ottilie alone');
    expect(words).toContain('97 cm');
    expect(words).not.toContain('Likes it loose');
  });

  test('has the base size’s rows where the person has no number of their own', () => {
    const plain = study({ ...base, workbook: { ...NO_WORKBOOK, people: [{ ...person, values: {} }] } });
    // From the first row on: what is before names the size or the person.
    const rows = (made: ReturnType<typeof bookletOf>) => {
      const words = booklet(made.booklet);
      return words.slice(words.search(/\bCh~?\s?\d/u));
    };
    expect(rows(bookletOf(own, { terms: 'us', sizes: 'm' })).length).toBeGreaterThan(1000);
    expect(rows(sheetOf(plain, 'person-a', 'us', () => []))).toBe(
      rows(bookletOf(own, { terms: 'us', sizes: 'm' })),
    );
  });
});
