/**
 * The technical edit on the examples: nothing is found on the clean ones, in either market's terms; every planted
 * fault is found, at its place, at its words and in its sizes, with no mistake told that does not follow from it.
 */
import { describe, expect, it } from 'vitest';
import { FIGURE, type FigureText, type Pattern } from '../../core/document/pattern.ts';
import type { Finding } from '../../core/finding.ts';
import { CATALOGUE } from '../../core/findings/index.ts';
import { bring } from '../../core/intake/bring.ts';
import { translate } from '../../core/notation/translate.ts';
import { hatPattern, panelPattern, raglanPattern } from '../../core/outlines/index.ts';
import { wordsPointedAt } from '../../core/review/accepted.ts';
import { RULES } from '../../core/review/index.ts';
import { writtenTexts } from '../../core/study/written.ts';
import { furtherStyles } from '../intake/further-styles.ts';
import { houseStyles } from '../intake/house-styles.ts';
import { oldPatterns } from '../intake/old-patterns.ts';
import { findingsOf } from './builder.ts';
import { type Example, examples, type Fault, faults as firstFaults } from './faults.ts';
import { furtherFaults } from './further-faults.ts';
import { houses } from './houses.ts';
import { moreFaults } from './more-faults.ts';

const faults = [...firstFaults, ...moreFaults, ...furtherFaults];

/** The same pattern written in the other market's terms. */
function inOtherTerms(pattern: Pattern): Pattern {
  const [from, to] = pattern.terms === 'us' ? (['us', 'uk'] as const) : (['uk', 'us'] as const);
  const own = pattern.specials.flatMap(({ nameUs, nameUk, abbrUs, abbrUk }) => [
    { us: nameUs, uk: nameUk },
    { us: abbrUs, uk: abbrUk },
  ]);
  const say = (text: string, kind: 'row' | 'prose') => translate(text, from, to, { kind, own }).text;
  const written = (text: FigureText, kind: 'row' | 'prose'): FigureText => ({
    ...text,
    text: say(text.text, kind),
  });
  const { about } = pattern;
  return {
    ...pattern,
    terms: to,
    about: {
      ...about,
      description: say(about.description, 'prose'),
      construction: say(about.construction, 'prose'),
      fit: say(about.fit, 'prose'),
    },
    gauges: pattern.gauges.map((gauge) => ({ ...gauge, pattern: say(gauge.pattern, 'prose') })),
    hooks: pattern.hooks.map((hook) => ({ ...hook, purpose: say(hook.purpose, 'prose') })),
    specials: pattern.specials.map((special) => ({ ...special, text: written(special.text, 'row') })),
    notes: pattern.notes.map((text) => written(text, 'prose')),
    finishing: pattern.finishing.map((text) => written(text, 'prose')),
    pieces: pattern.pieces.map((piece) => ({
      ...piece,
      blocks: piece.blocks.map((block) => {
        switch (block.type) {
          case 'row':
            return { ...block, text: written(block.text, 'row') };
          case 'prose':
            return { ...block, text: written(block.text, 'prose') };
          case 'shaping':
            return {
              ...block,
              shaped: { ...block.shaped, text: written(block.shaped.text, 'row') },
              even: { ...block.even, text: written(block.even.text, 'row') },
            };
          default:
            return block;
        }
      }),
    })),
  };
}

const told = (findings: readonly Finding[]) => findings.map(({ code, message }) => `${code}: ${message}`);
const names = Object.keys(examples) as readonly Example[];

describe('the clean examples', () => {
  /** A caution that is printed is told, as it should be: the hat has sizes for babies, the others take days. */
  const CAUTIONS: Readonly<Record<Example, string>> = {
    vest: "The maker's hands",
    hat: 'Hats for babies',
    tee: "The maker's hands",
  };

  it.each(names.flatMap((name) => [[name, 'its own'] as const, [name, 'the other'] as const]))(
    'have nothing to find: the %s in %s terms',
    (name, terms) => {
      const pattern = terms === 'its own' ? examples[name] : inOtherTerms(examples[name]);
      const found = findingsOf(pattern);
      expect(told(found)).toEqual([
        expect.stringContaining(`caution-printed: The caution "${CAUTIONS[name]}"`),
      ]);
    },
  );
});

describe('patterns in other houses’ styles', () => {
  it.each(Object.entries(houses))('have nothing to find: %s', (_, pattern) => {
    expect(told(findingsOf(pattern))).toEqual([]);
  });

  /** Rules of how numbers, repeats, fit and sides are told, which old patterns keep to in their own ways. */
  const OF_STYLE = new Set([
    'repeat-in-size-brackets',
    'brackets-differ',
    'fit-in-words-off',
    'last-side-differs',
  ]);

  it.each(oldPatterns.map((old) => [old.style, old] as const))('brought in: %s', (_, { text, terms }) => {
    const result = bring(text, { terms, title: 'File', date: '2026-01-01' });
    const found = result.ok ? findingsOf(result.brought.pattern) : null;
    expect(told(found!.filter(({ code }) => OF_STYLE.has(code)))).toEqual([]);
  });

  /** What an old pattern does not say, and what is told of every pattern of its kind. */
  const NOT_SAID = new Set([
    'brought-in-unsure',
    'cover-incomplete',
    'edition-not-stated',
    'gauge-not-given',
    'notion-amount-not-given',
    'yarn-amount-not-given',
    'yarn-not-given',
    'caution-printed',
    'cord-on-child-size',
    'small-part-on-child-size',
  ]);

  it.each([...houseStyles, ...furtherStyles].map((old) => [old.style, old] as const))(
    'brought in, and right as it was: %s',
    (_, { text, terms, told: own = [] }) => {
      const result = bring(text, { terms, title: 'File', date: '2026-01-01' });
      const found = result.ok ? findingsOf(result.brought.pattern) : [];
      const open = found.filter(({ code, severity }) => severity !== 'note' && !NOT_SAID.has(code));
      expect(open.map(({ code }) => code)).toEqual(own);
    },
  );

  /** What an outline leaves to the maker, and says so. */
  const LEFT_OPEN = new Set([
    'cover-incomplete',
    'edition-not-stated',
    'yarn-not-given',
    'caution-printed',
    'finishing-not-given',
  ]);

  it.each(
    (['us', 'uk'] as const).flatMap((terms) =>
      (['t1', 't2', 't3'] as const).flatMap((stitch) =>
        Object.entries({ panelPattern, hatPattern, raglanPattern }).map(
          ([name, make]) => [name, terms, stitch, make] as const,
        ),
      ),
    ),
  )('outlines: %s in %s terms, %s', (_, terms, stitch, make) => {
    const units = terms === 'us' ? ('imperial' as const) : ('metric' as const);
    const over = terms === 'us' ? ({ value: 4, unit: 'in' } as const) : ({ value: 10, unit: 'cm' } as const);
    const gauge = { stitch, stitches: 16, rows: 12, over, hookMm: 4.5 };
    const pattern = make({ title: 'Trial', terms, units, date: '2024-05-01', gauge });
    expect(told(findingsOf(pattern).filter(({ code }) => !LEFT_OPEN.has(code)))).toEqual([]);
  });
});

/** The node that a fault names, or the one whose text has its words, figures in braces. */
function nodeOf(pattern: Pattern, at: Fault['at']): string | null {
  if (at === null || typeof at === 'string') return at;
  for (const [node, written] of writtenTexts(pattern)) {
    let figure = 0;
    const whole = written.text.replaceAll(FIGURE, () => `{${written.figures[figure++]}}`);
    if (whole.includes(at.text)) return node;
  }
  throw new Error(`No text has “${at.text}”`);
}

function find(
  pattern: Pattern,
  findings: readonly Finding[],
  { code, at, words }: Fault,
): Finding | undefined {
  const node = nodeOf(pattern, at);
  return findings.find(
    (finding) =>
      finding.code === code &&
      finding.where.node === node &&
      (words === undefined || wordsPointedAt(pattern, finding) === words),
  );
}

describe('a fault planted in an example', () => {
  it.each(faults)('is found: $name ($code, $in)', (fault) => {
    const pattern = fault.plant(examples[fault.in]);
    const findings = findingsOf(pattern);
    const finding = find(pattern, findings, fault);
    expect(told(findings).join('\n'), 'the fault is found').toSatisfy(() => finding !== undefined);
    expect(finding!.message).toContain(fault.saying ?? '');
    const sizes = finding!.sizes.map((size) => pattern.sizes[size]!.label);
    if (fault.sizes !== undefined) expect(sizes).toEqual(fault.sizes);
    else expect([0, pattern.sizes.length]).toContain(sizes.length);
    const errors = findings.filter(({ severity, code }) => severity === 'error' && code !== fault.code);
    expect([...new Set(errors.map(({ code }) => code))].sort()).toEqual(fault.follows ?? []);
  });

  it('is there for every rule, and for a hundred and twenty in all', () => {
    const planted = new Set(faults.map(({ code }) => code));
    expect(RULES.map(({ code }) => code).filter((code) => !planted.has(code))).toEqual([]);
    expect(faults.length).toBeGreaterThanOrEqual(120);
    expect(CATALOGUE.filter(({ code }) => planted.has(code)).length).toBeGreaterThanOrEqual(20);
  });
});

describe('several faults at once', () => {
  /** Faults after which the rest of the pattern is as it was, and which leave one another alone. */
  const calm = firstFaults.filter(({ follows }) => follows === undefined);

  it.each(Array.from({ length: 10 }, (_, seed) => seed + 1))('are all found: seed %i', (seed) => {
    let state = seed * 2_654_435_761;
    const random = (below: number) => {
      state = (state * 1_103_515_245 + 12_345) % 2 ** 31;
      return state % below;
    };
    const name = names[seed % names.length]!;
    const own = calm.filter((fault) => fault.in === name);
    const chosen: Fault[] = [];
    let pattern: Pattern = examples[name];
    while (chosen.length < 4) {
      const fault = own[random(own.length)]!;
      if (chosen.includes(fault)) continue;
      try {
        pattern = fault.plant(pattern);
        chosen.push(fault);
      } catch {
        // Another fault has taken the words away that this one changes.
      }
    }
    const findings = findingsOf(pattern);
    const codes = new Set(findings.map(({ code }) => code));
    expect(chosen.map(({ code }) => code).filter((code) => !codes.has(code))).toEqual([]);
  });
});
