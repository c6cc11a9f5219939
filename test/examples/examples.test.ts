/**
 * The example patterns: their files are what the sources make, nothing in them is to be put right, and the
 * counts of the size that is shown on the cover are those that pencil and paper give, row by row.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { EXAMPLES, exampleBytes, exampleFile } from '../../app/command/examples.ts';
import { compose } from '../../core/document/compose.ts';
import { readContainer } from '../../core/document/container.ts';
import type { FigureText, Pattern, RowBlock } from '../../core/document/pattern.ts';
import { project } from '../../core/document/project.ts';
import { translate } from '../../core/notation/translate.ts';
import { cautionsForSize, review } from '../../core/review/index.ts';
import { rowBlocks, study } from '../../core/study/index.ts';
import { ledgerOf } from '../../core/study/ledger.ts';
import { measurementsOf } from '../../core/study/measurements.ts';
import { yarnOf } from '../../core/study/yarn.ts';
import { toNumber } from '../../core/trade/units.ts';
import { valuesOf } from '../../resources/examples/build.ts';
import bodies from '../../resources/trade/body-sizes.json' with { type: 'json' };
import geometry from '../../resources/trade/stitch-geometry.json' with { type: 'json' };
import weights from '../../resources/trade/yarn-weights.json' with { type: 'json' };
import { BY_HAND } from './byHand.ts';

const patterns = Object.entries(EXAMPLES);
const studies = new Map(patterns.map(([name, pattern]) => [name, study(pattern)]));
const studyOf = (name: string) => studies.get(name)!;
const at = (name: string, expression: string) => valuesOf(studyOf(name).sheet, expression);

describe.each(patterns)('%s', (name, pattern) => {
  test('has a file that is what its source makes (npm run examples writes it)', () => {
    const bytes = new Uint8Array(readFileSync(exampleFile(name)));
    expect(bytes).toEqual(exampleBytes(pattern));
    const read = readContainer(bytes);
    expect(read.ok && project(read.document)).toEqual(pattern);
    expect(project(compose(pattern))).toEqual(pattern);
  });

  test('has nothing to put right, in any size', () => {
    const worked = studyOf(name);
    const findings = [...worked.findings, ...review(worked)];
    expect(findings.filter(({ severity }) => severity !== 'note')).toEqual([]);
    // A long project's rest for the hands, and hats for babies, are told with the pattern.
    expect(findings.map(({ code }) => code)).toEqual(['caution-printed']);
  });

  test('has the counts that were worked out by hand, row by row, in the size of the sample', () => {
    const size = pattern.sizes.findIndex(({ id }) => id === pattern.sample);
    const ledger = ledgerOf(studyOf(name), []);
    const found = ledger.pieces.map(({ piece, rows }) => [
      piece,
      rows.flatMap(({ node, counts, spaces }) => {
        const stitches = counts[size];
        if (stitches === null || stitches === undefined) return [];
        const block = studyOf(name)
          .pieces.flatMap(({ blocks }) => blocks)
          .find(({ block: { id } }) => id === node)!;
        return [[block.sizes[size]!.last ?? 0, stitches, spaces[size]]];
      }),
    ]);
    expect(found).toEqual(BY_HAND[name]);
  });

  test('grows from size to size, in every row and every measurement', () => {
    const worked = studyOf(name);
    for (const { rows } of ledgerOf(worked, []).pieces) {
      for (const { counts } of rows) {
        const there = counts.filter((count) => count !== null);
        expect(there).toEqual(there.toSorted((a, b) => a - b));
      }
    }
    for (const { heading, values } of measurementsOf(worked.sheet)) {
      const lengths = values.map((value) =>
        value !== null && 'length' in value ? toNumber(value.length) : Number.NaN,
      );
      const grows = lengths.every((length, i) => i === 0 || length > lengths[i - 1]!);
      const same = lengths.every((length) => length === lengths[0]);
      expect([heading, grows || same]).toEqual([heading, true]);
    }
  });

  test('comes within its tolerance of what was asked, in every fitted line', () => {
    for (const { line, sizes } of studyOf(name).sheet.lines) {
      for (const { fitted } of sizes) {
        if (fitted === null) continue;
        expect([line.name, fitted.difference.abs().compare(fitted.limit) <= 0]).toEqual([line.name, true]);
      }
    }
  });

  test('types no list of sizes: every number that differs is a figure', () => {
    const texts = [
      ...pattern.notes,
      ...pattern.finishing,
      ...pattern.pieces.flatMap(({ blocks }) => [
        ...rowBlocks(blocks).map((row) => row.text),
        ...blocks.flatMap((block) => (block.type === 'prose' ? [block.text] : [])),
      ]),
    ];
    for (const { text } of texts) expect(text).not.toMatch(/\d\s*\(\s*\d+\s*,/);
  });

  test('works out the same when its rows are written in the other terms', () => {
    const other = pattern.terms === 'us' ? 'uk' : 'us';
    const own = pattern.specials.flatMap(({ nameUs, nameUk, abbrUs, abbrUk }) => [
      { us: nameUs, uk: nameUk },
      { us: abbrUs, uk: abbrUk },
    ]);
    const said = (text: FigureText): FigureText => {
      const { text: words, doubts } = translate(text.text, pattern.terms, other, { kind: 'row', own });
      expect(doubts).toEqual([]);
      return { ...text, text: words };
    };
    const row = (block: RowBlock): RowBlock => ({ ...block, text: said(block.text) });
    const converted: Pattern = {
      ...pattern,
      terms: other,
      specials: pattern.specials.map((special) => ({ ...special, text: said(special.text) })),
      notes: [],
      pieces: pattern.pieces.map((piece) => ({
        ...piece,
        blocks: piece.blocks.map((block) => {
          if (block.type === 'row') return row(block);
          if (block.type === 'shaping') return { ...block, shaped: row(block.shaped), even: row(block.even) };
          return block;
        }),
      })),
    };
    const counts = (of: Pattern) =>
      ledgerOf(study(of), []).pieces.map(({ rows }) => rows.map((each) => [each.counts, each.spaces]));
    expect(study(converted).findings.filter(({ severity }) => severity !== 'note')).toEqual([]);
    expect(counts(converted)).toEqual(counts(pattern));
  });

  test('has yarn for every size, more for a larger one', () => {
    for (const { sizes } of yarnOf(study(pattern)).yarns) {
      const amounts = sizes.map((size) => size!.withMargin.metres!);
      expect(amounts).toEqual(amounts.toSorted((a, b) => a - b));
      expect(amounts[0]).toBeGreaterThan(0);
    }
  });

  // Source: Standard Yarn Weight System of the Craft Yarn Council (see resources/trade/yarn-weights.json).
  test('is worked with a hook of the range that the council gives for its yarn', () => {
    const [yarn] = pattern.yarns;
    const weight = weights.weights.find(({ number }) => number === yarn!.weight)!;
    const main = pattern.hooks.find(({ id }) => id === pattern.gauges[0]!.hook)!;
    expect(main.mm).toBeGreaterThanOrEqual(weight.hookMm[0]!);
    expect(main.mm).toBeLessThanOrEqual(weight.hookMm[1]!);
  });
});

describe('the vest', () => {
  const name = 'boxy-vest';
  const sizes = EXAMPLES[name]!.sizes.length;

  test('has ten adult sizes and is led by inches, in US terms', () => {
    const { terms, units } = EXAMPLES[name]!;
    expect([sizes, terms, units]).toEqual([10, 'us', 'imperial']);
  });

  test('has an even number of V-stitches of 3 sts and an edge st on either side', () => {
    for (const stitches of at(name, 'panel stitches')) expect((stitches - 2) % 6).toBe(0);
  });

  test('shares the sts of a panel out between underarms, shoulders and neck, and none is left', () => {
    const [panel, underarm, shoulder, neck] = [
      at(name, 'panel stitches'),
      at(name, 'underarm stitches'),
      at(name, 'shoulder stitches'),
      at(name, 'neck stitches'),
    ];
    for (let i = 0; i < sizes; i++) expect(2 * underarm![i]! + 2 * shoulder![i]! + neck![i]!).toBe(panel![i]);
  });

  // Common practice, no source: front and back post stitches in turn need an even number.
  test('has an even number of sts in its bands, two seams among them', () => {
    for (const count of [...at(name, 'neckband stitches'), ...at(name, 'armband stitches')])
      expect(count % 2).toBe(0);
  });

  // The edge that the neckband is picked up from, at 4 sts to the inch, against a head of 21 to 23½ in
  // (published range for women, resources/trade/body-sizes.json); the armband at the rib's own gauge.
  test('goes over the head and the arm', () => {
    const opening = at(name, 'neckband stitches').map((count) => count / 4);
    for (const around of opening) expect(around).toBeGreaterThan(23.5);
    const arms = at(name, 'armband stitches').map((count) => count / 4.5);
    const chart = bodies.charts.woman.measures.find(({ id }) => id === 'upper_arm')!.in;
    for (const [i, cell] of chart.entries()) expect(arms[i]).toBeGreaterThan(cell![1]! + 2);
  });

  // Source: the Craft Yarn Council's fit levels as reprinted: loose is 4 to 6 in larger than the body.
  test('is loose in every size', () => {
    const [chest, bust] = [at(name, 'width of panel stitches × 2'), at(name, 'bust')];
    for (let i = 0; i < sizes; i++) {
      expect((chest[i]! - bust[i]!) / 2.54).toBeGreaterThanOrEqual(4 - 1e-9);
      expect((chest[i]! - bust[i]!) / 2.54).toBeLessThanOrEqual(6 + 1e-9);
    }
  });
});

describe('the hat', () => {
  const name = 'crown-down-hat';

  test('has seven sizes from newborn to large adult and is led by centimetres, in UK terms', () => {
    const { terms, units, sizes } = EXAMPLES[name]!;
    expect([sizes.length, terms, units]).toEqual([7, 'uk', 'metric']);
  });

  // Source: flat circles in handbooks (resources/trade/stitch-geometry.json): half trebles begin with 8 and grow by 8 to 10.
  test('has a crown that lies flat', () => {
    const [lower, upper] = geometry.flatCircle.rounds.find(({ id }) => id === 't2')!.range;
    const { stitches, rows } = EXAMPLES[name]!.gauges[0]!;
    const needed = 2 * Math.PI * (stitches / rows);
    expect(needed).toBeGreaterThan(lower!);
    expect(needed).toBeLessThan(upper!);
    for (const increases of at(name, 'last increases')) expect([4, 8]).toContain(increases);
  });

  // Source: published depths and widths of finished hats (resources/trade/body-sizes.json): newborn, 0–6 and 6–12
  // months, toddler, child, woman, man. Depth is from the edge of the crown to the brow.
  test('is as wide and as deep as finished hats are', () => {
    const published = bodies.head.hats;
    const rows = [1, 2, 3, 4, 5, 7, 8];
    const around = at(name, 'width of hat stitches');
    const depth = at(name, '(side rounds + band rounds) × 10 cm ÷ 12');
    rows.forEach((row, i) => {
      expect(Math.abs(around[i]! - published.circumferenceIn[row]! * 2.54)).toBeLessThan(2.5);
      expect(Math.abs(depth[i]! - published.crownToBrowIn[row]! * 2.54)).toBeLessThan(0.5);
    });
  });

  test('has the caution for babies in the edition of a baby’s size, not in that of an adult’s', () => {
    const titles = (size: string) => cautionsForSize(studyOf(name), size).map(({ title }) => title);
    expect(titles('size-newborn')).toEqual(['Hats for babies']);
    expect(titles('size-adult')).toEqual([]);
  });

  test('carries its caution for babies', () => {
    const worked = studyOf(name);
    expect(review(worked).map(({ message }) => message)).toEqual([
      expect.stringContaining('Hats for babies'),
    ]);
    expect(EXAMPLES[name]!.cautions).toHaveLength(1);
  });
});

describe('the tee', () => {
  const name = 'raglan-tee';
  const { sizes } = EXAMPLES[name]!;

  test('has nine sizes and is led by centimetres, in US terms', () => {
    const { terms, units } = EXAMPLES[name]!;
    expect([sizes.length, terms, units]).toEqual([9, 'us', 'metric']);
  });

  test('divides the yoke into body and sleeves without a st left over', () => {
    const [yoke, front, sleeve] = [
      at(name, 'yoke stitches'),
      at(name, 'front stitches'),
      at(name, 'sleeve top stitches'),
    ];
    sizes.forEach((_, i) => {
      expect(2 * front[i]! + 2 * sleeve[i]!).toBe(yoke[i]);
    });
  });

  test('leaves two openings, each of a sleeve and its underarm chain', () => {
    const body = studyOf(name).pieces.find(({ piece }) => piece.id === 'body')!;
    const [sleeve, chains] = [at(name, 'sleeve top stitches'), at(name, 'underarm chains')];
    body.openings.forEach((openings, i) => {
      expect(openings.map((opening) => [opening.sites.length, opening.chains])).toEqual([
        [sleeve[i], chains[i]],
        [sleeve[i], chains[i]],
      ]);
    });
  });

  test('shapes at a pace of its own in every size', () => {
    const { sheet } = studyOf(name);
    const schedules = sheet.lines.filter(
      ({ line }) => line.name === 'raglan' || line.name === 'body shaping',
    );
    const said = sizes.map((_, i) =>
      JSON.stringify(
        schedules.map(({ sizes: each }) => {
          const value = each[i]!.value;
          return value !== null && value.dimension === 'schedule' ? value.schedule.shapings : null;
        }),
      ),
    );
    expect(new Set(said).size).toBe(sizes.length);
    expect(said.every((each) => !each.includes('null'))).toBe(true);
  });

  // Source: the Craft Yarn Council's fit levels as reprinted: standard is 2 to 4 in larger than the body. The
  // chart's bust is its upper end, so that the least is asked for.
  test('has a standard fit', () => {
    const [bust, body] = [at(name, 'width of body stitches'), at(name, 'bust')];
    bust.forEach((finished, i) => {
      expect(finished - body[i]!).toBeGreaterThan(3.5);
      expect(finished - body[i]!).toBeLessThan(10.2);
    });
  });
});

// The hat stands apart: its rounds name the sizes that work them, which are those of its own tension.
describe.each(['boxy-vest', 'raglan-tee'])('%s, when a maker changes the yarn', (name) => {
  test.each([0.9, 0.95, 1.05])('is worked out anew and comes out right at %d of its gauge', (factor) => {
    const pattern = EXAMPLES[name]!;
    const gauges = pattern.gauges.map((gauge) => ({
      ...gauge,
      stitches: gauge.stitches * factor,
      rows: gauge.rows * factor,
    }));
    const changed = study({ ...pattern, gauges });
    expect(changed.findings.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(changed.pieces[0]!.rows).not.toEqual(studyOf(name).pieces[0]!.rows);
  });
});

test('no example is a copy of another in its materials or its makers’ words', () => {
  const words = (pattern: Pattern) => [
    pattern.about.title,
    pattern.about.description,
    pattern.about.construction,
  ];
  const all = patterns.flatMap(([, pattern]) => words(pattern));
  expect(new Set(all).size).toBe(all.length);
});

/** Parts of the fabric as rectangles: width and height by expressions, and how often each is there. */
const AREAS: Readonly<Record<string, readonly (readonly [width: string, height: string, times: number])[]>> =
  {
    'boxy-vest': [
      ['width of panel stitches', 'length of panel rows', 2],
      ['width of panel stitches − 2 × width of underarm stitches', 'length of armhole rows', 2],
      ['neckband stitches × 4 in ÷ 18', 'band depth', 1],
      ['armband stitches × 4 in ÷ 18', 'band depth', 2],
    ],
    'crown-down-hat': [
      // The crown as a square on its radius, a little more than three times over; then the sides.
      ['(full crown rounds + 1) × 10 cm ÷ 12', '(full crown rounds + 1) × 10 cm ÷ 12', Math.PI],
      ['width of hat stitches', '(side rounds + band rounds) × 10 cm ÷ 12', 1],
    ],
    'raglan-tee': [
      ['width of body stitches', 'side length', 1],
      // The yoke widens from neck to underarm: the mean of both, over its depth.
      ['(neck stitches + yoke stitches) ÷ 2 × 10 cm ÷ 16', 'length of yoke rounds', 1],
      ['(width of sleeve stitches + width of cuff stitches) ÷ 2', 'sleeve length', 2],
      ['neck stitches × 10 cm ÷ 16', 'neckband rounds × 10 cm ÷ 12', 1],
    ],
  };

// The area of the pieces knows nothing of stitches: yarn in proportion to it is another way to the same amounts.
test.each(Object.entries(EXAMPLES))(
  'yarn of %s, counted by stitches from its sample, is in proportion to its area within a twentieth',
  (name, pattern) => {
    const known = study(pattern);
    const parts = AREAS[name]!.map(([width, height, times]) => {
      const heights = valuesOf(known.sheet, height);
      return valuesOf(known.sheet, width).map((each, i) => each * heights[i]! * times);
    });
    const areas = pattern.sizes.map((_, size) => parts.reduce((sum, part) => sum + part[size]!, 0));
    const made = pattern.sizes.findIndex(({ id }) => id === pattern.sample);
    const [main] = yarnOf(known).yarns;
    main!.sizes.forEach((size, i) => {
      const byArea = (main!.sizes[made]!.metres! * areas[i]!) / areas[made]!;
      expect(Math.abs(size!.metres! / byArea - 1), pattern.sizes[i]!.label).toBeLessThan(0.05);
    });
  },
);
