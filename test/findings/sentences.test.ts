/**
 * What a maker reads: every kind of finding is raised by its example or by a planted pattern, and says it in
 * whole sentences, with the sizes named where their numbers differ, and without a programmer's word.
 */
import { describe, expect, it } from 'vitest';
import type { Finding } from '../../core/finding.ts';
import { CATALOGUE, type FindingKind, kindOf, tellAs } from '../../core/findings/index.ts';
import { RULES } from '../../core/review/index.ts';
import { reportRows } from '../../core/study/index.ts';
import { cleanPattern, findingsOf } from '../review/builder.ts';
import { FIGURED, PLANTS } from './plants.ts';

/** Words of the program, and what a missing value looks like in a sentence. */
const CODE =
  /\b(?:node|null|undefined|NaN|token|parse[dr]?|span|boolean|string|array|object|index|schema|attribute|regex|function|enum|value of type)\b|\[object|""|\bt[1-7]\b|\$\{|\uFFFC| {2}/;

function expectSentence(message: string): void {
  expect(message).toMatch(/^[\p{Lu}\d"−]/u);
  expect(message).toMatch(/[.!?]$/);
  expect(message.replace(/"[^"]*"/g, '"words"')).not.toMatch(CODE);
  expect(message).not.toMatch(/undefined|NaN|\[object/);
  expect(message.length).toBeGreaterThan(20);
}

function reported(text: string) {
  const report = reportRows(text, 'us');
  return [...report.findings, ...report.rows.flatMap((row) => row.findings)];
}

/** Faults that have another as their unavoidable consequence. */
const FOLLOWED: Readonly<Record<string, readonly string[]>> = {
  'number-too-large': ['place-does-not-exist'],
  'too-many-stitches': ['place-does-not-exist'],
};

describe('the example of a kind', () => {
  it.each(CATALOGUE.filter(({ example }) => example !== null))(
    '$code: raises it and nothing else',
    ({ code, example }) => {
      const findings = reported(example!);
      const codes = new Set(findings.map((finding) => finding.code));
      for (const other of FOLLOWED[code] ?? []) codes.delete(other);
      expect([...codes]).toEqual([code]);
      for (const { message } of findings) expectSentence(message);
    },
  );

  it('calls what has no name so', () => {
    const kind = kindOf('edge-not-there');
    expect(said(kind, [null, { piece: ' ', kind: 'top' }]).message).toMatch(
      /^The last row of one without a name is/,
    );
  });

  it('stands in every kind, or a sample of its facts does', () => {
    const bare = [...CATALOGUE, ...RULES].filter(
      ({ example, sample }) => example === null && sample === undefined,
    );
    expect(bare.map(({ code }) => code)).toEqual([]);
  });
});

const telling = { terms: 'us', labels: ['Petite', 'Middle', 'Tall'], node: null, text: '' } as const;

function said(
  kind: FindingKind,
  ...sized: readonly (readonly [number | null, NonNullable<FindingKind['sample']>])[]
): Finding {
  const facts = sized.map(([size, data]) => ({ size, fact: { code: kind.code, from: 0, to: 0, data } }));
  return tellAs(kind, facts, telling);
}

describe('a figure in a row', () => {
  it.each([
    ['Work {taper} flurbled.', 'word-not-read', '"Work [taper] flurbled" is not understood here'],
    ['Ch 1, flurble {front rows} and {taper}.', 'word-not-read', '"flurble [front rows]" is not understood'],
    ['{taper}.', 'figure-not-a-count', '"taper" plans a shaping over many rows, which one row cannot hold'],
  ])('%s: %s calls it by its name', (text, code, words) => {
    const findings = findingsOf(FIGURED(text)(cleanPattern()));
    expect(findings.find((finding) => finding.code === code)?.message).toContain(words);
  });
});

describe('a kind that needs a whole pattern', () => {
  const needing = CATALOGUE.filter(({ example }) => example === null);
  /** Numbers that no sheet hands on: whoever spreads without one must still be told. */
  const unreached = ['spread-invalid'];

  it.each(needing.filter(({ code }) => !unreached.includes(code)))(
    '$code: is raised by a pattern, in a sentence',
    ({ code }) => {
      const findings = findingsOf(PLANTS[code]!(cleanPattern())).filter((finding) => finding.code === code);
      expect(findings).not.toEqual([]);
      for (const { message, severity } of findings) {
        expectSentence(message);
        expect(severity).toBe(kindOf(code).severity);
      }
    },
  );

  it.each([...needing, ...RULES])('$code: says its sample in a sentence', (kind) => {
    expectSentence(said(kind, [null, kind.sample!]).message);
    expectSentence(said(kind, [0, kind.sample!], [2, kind.sample!]).message);
  });
});

describe('sizes', () => {
  /** Kinds whose numbers may differ by size, with the number that differs. */
  const differing: readonly (readonly [code: string, key: string, sample?: FindingKind['sample']])[] = [
    [
      'repeat-does-not-fit',
      'have',
      { passes: 6, left: 2, unit: 'st', multiple: 3, plus: 0, have: 20, lower: 18, upper: 21 },
    ],
    [
      'repeat-does-not-fit',
      'multiple',
      { passes: 6, left: 2, unit: 'st', multiple: 3, plus: 0, have: 20, lower: 18, upper: 21 },
    ],
    ['stated-count-wrong', 'worked', { stated: 20, worked: 18, noun: 'st', turning: false }],
    ['stitches-left-unworked', 'left', { left: 2, spaces: 0, have: 20, unit: 'st' }],
    ['stitches-passed-over', 'passed', { passed: 2, noun: 't3' }],
    ['place-does-not-exist', 'found', { noun: 'st', wanted: 20, found: 12, left: 0, have: 12 }],
    ['edge-chain-unclear', 'chain', { chain: 7, stitch: 't3', skipped: 6, rest: 3 }],
    ['row-not-known', 'number', { number: 9, rows: 4, last: false }],
    ['row-number-out-of-order', 'expected', { number: 9, expected: 4 }],
    ['repeat-beyond-total', 'rows'],
    ['shaping-not-as-planned', 'worked'],
    ['edge-too-short', 'have'],
    ['fit-off', 'number'],
    ['fit-below-smallest', 'number'],
    ['shaping-uneven', 'to'],
    ['shaping-too-many', 'rows'],
    ['spread-too-many', 'over'],
    ['count-not-whole', 'value'],
    ['count-negative', 'value'],
    ['formula-missing-unit', 'number'],
    ['pieces-do-not-meet', 'mine'],
    ['meeting-without-edge', 'have', { piece: 'Front', kind: 'top', wanted: 80, have: 60 }],
    ['count-drifts', 'after'],
    ['finished-measurement-off', 'got'],
  ];
  const all = [...CATALOGUE, ...RULES];

  const cases = differing.map(([code, key, given]) => ({ code, key, given }));

  it.each(cases)('$code: are named when $key differs', ({ code, key, given }) => {
    const kind = all.find((each) => each.code === code)!;
    const data = given ?? kind.sample!;
    const value = data[key];
    const other = typeof value === 'number' ? value + 4 : `9${value}`;
    const { message, sizes } = said(kind, [0, data], [1, { ...data, [key]: other }], [2, data]);
    expectSentence(message);
    expect(message).toMatch(/Sizes Petite and Tall: /);
    expect(message).toMatch(/Size Middle: /);
    expect(sizes).toEqual([0, 1, 2]);
  });

  it('that say the same share one sentence', () => {
    const data = { stated: 20, worked: 18, noun: 'st', turning: false };
    const kind = kindOf('stated-count-wrong');
    expect(said(kind, [0, data], [1, data], [2, data]).message).toBe(said(kind, [null, data]).message);
    expect(said(kind, [0, data], [2, data]).message).toBe(
      'In sizes Petite and Tall, the row says 20, but working it gives 18 sts, 2 fewer.',
    );
  });

  it('state a rule that they share once', () => {
    const data = { passes: 6, left: 2, unit: 'st', multiple: 3, plus: 1, have: 21, lower: 19, upper: 22 };
    const { message } = said(
      kindOf('repeat-does-not-fit'),
      [0, data],
      [1, { ...data, passes: 7, left: 1, have: 23, lower: 22, upper: 25 }],
    );
    expect(message).toBe(
      'This row works on a multiple of 3 plus 1. Size Petite: after 6 repeats 2 sts are left; you have 21; 19 or 22 would fit. Size Middle: after 7 repeats 1 st is left; you have 23; 22 or 25 would fit.',
    );
  });

  it('of a written text are named by its own labels', () => {
    const text = `Sizes: XS (S, M)
Ch 20 (22, 24).
Row 1: Sc in 2nd ch from hook and in each ch across. (19, 20, 22 sc)`;
    const [finding] = reported(text);
    expect(finding!.message).toMatch(
      /Size S: the row says 20, but working it gives 21 sc, 1 more\. Size M: /,
    );
    expect(finding!.sizes).toEqual([1, 2]);
  });
});

describe('a fix', () => {
  function fixesOf(
    text: string,
    data: NonNullable<FindingKind['sample']>,
    code: string,
    sizes: readonly (number | null)[] = [null],
  ) {
    const kind = kindOf(code);
    const facts = sizes.map((size) => ({ size, fact: { code, from: 0, to: text.length, data } }));
    const labels = sizes.length > 1 || sizes[0] !== null ? ['S', 'M', 'L'] : [];
    return tellAs(kind, facts, { terms: 'us', labels, node: null, text }).fix?.replacement ?? null;
  }
  const count = { stated: 11, worked: 10, noun: 'st', turning: false };

  it.each<[string, readonly (number | null)[], string | null]>([
    ['(11 sc)', [null], '(10 sc)'],
    ['– 11 sts', [0, 1, 2], '– 10 sts'],
    // One number for all sizes, wrong in one of them: no single number is right.
    ['(11 sc)', [1], null],
    // Another number stands beside it.
    ['(11 sts, 3 incs)', [null], null],
    ['(11 dc, 2 ch-2 sps)', [0, 1, 2], null],
    // The number is not the one that is wrong.
    ['(12 sc)', [null], null],
    ['(eleven sc)', [null], null],
    ['(9, 11, 13 sc)', [1], '(9, 10, 13 sc)'],
    ['(9, 11, 13 sc)', [0], null],
    ['(9, 11 sc)', [1], null],
  ])('of a wrong count: %s in sizes %j', (text, sizes, replacement) => {
    expect(fixesOf(text, count, 'stated-count-wrong', sizes)).toBe(replacement);
  });

  it('is none for a count of what was not worked at all', () => {
    expect(fixesOf('(11 hdc)', { ...count, worked: 0, noun: 't2' }, 'stated-count-wrong')).toBeNull();
  });

  it.each([
    ['other-terms', 'htr', { words: 'htr', taken: 't2', terms: 'us' }, 'hdc'],
    ['other-terms', 'half treble', { words: 'half treble', taken: 't2', terms: 'us' }, null],
    ['word-not-read', 'ddc', { words: 'ddc', expected: 'stitch', suggestion: 'dc' }, 'dc'],
    ['word-not-read', 'some words', { words: 'some words', expected: 'stitch', suggestion: null }, null],
    ['label-not-expected', 'Row 3:', { words: 'Row 3:' }, ''],
    // Without it, one row would be left of eight.
    ['label-not-expected', 'Rows 3–10:', { words: 'Rows 3–10:' }, null],
    ['formula-unknown-name', 'bsut', { line: 'a', field: 'formula', name: 'bsut', nearest: 'bust' }, 'bust'],
    // A figure is one sign in its text.
    ['formula-unknown-name', '\uFFFC', { figure: 'bsut', name: 'bsut', nearest: 'bust' }, null],
  ])('%s: %s', (code, text, data, replacement) => {
    expect(fixesOf(text, data, code)).toBe(replacement);
  });

  it('puts the example right', () => {
    const { example } = kindOf('stated-count-wrong');
    const report = reportRows(example!, 'us');
    const { from, to } = report.rows.flatMap((row) => row.findings)[0]!;
    const text = example!.slice(from, to);
    const replacement = fixesOf(
      text,
      { stated: 11, worked: 10, noun: 't1', turning: false },
      'stated-count-wrong',
    );
    expect(reported(example!.slice(0, from) + replacement + example!.slice(to))).toEqual([]);
  });
});
