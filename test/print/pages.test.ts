/** Laws of the whole layout, over random booklets: nothing is lost, nothing leaves the margins, nothing is stranded. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Block,
  type Booklet,
  caution,
  drawing,
  entries,
  figure,
  heading,
  list,
  numbers,
  pageBreak,
  paragraph,
  part,
  picture,
  row,
  sizeKey,
  space,
  table,
  together,
  type Words,
  withNext,
} from '../../core/print/content.ts';
import { breakPages } from '../../core/print/flow.ts';
import { type Layout, layOut } from '../../core/print/layout.ts';
import type { Page, Tag, TextMark } from '../../core/print/page.ts';
import { BREAK, holdEnds, slice } from '../../core/print/slice.ts';
import type { Edition, Paper } from '../../core/print/style.ts';
import { SIZES, sample } from './sample.ts';
import { owned, resources, squeeze, textByTag, walk } from './tools.ts';

const WORD = fc.constantFrom(
  'Ch',
  '2,',
  'hdc',
  'in',
  'next',
  'st;',
  '(dc,',
  'ch',
  '1,',
  'dc)',
  'skip',
  'to',
  'last',
  '½',
  '×',
  'turn.',
  'fläche',
  'boat-necked',
);
const TEXT = fc.array(WORD, { minLength: 1, maxLength: 45 }).map((words) => words.join(' '));
const SHORT = fc.array(WORD, { minLength: 1, maxLength: 4 }).map((words) => words.join(' '));
const LIST = fc
  .array(fc.integer({ min: 1, max: 200 }), { minLength: 2, maxLength: 10 })
  .map(([a, ...rest]) => `${a} (${rest.join(', ')}) sts`);

const ROW = fc
  .record({
    n: fc.integer({ min: 1, max: 200 }),
    body: TEXT,
    count: fc.option(LIST),
    side: fc.constantFrom('RS', 'WS', null),
    only: fc.option(SHORT, { freq: 6 }),
  })
  .map(
    ({ n, body, count, side, only }): Block =>
      row(`Row ${n}`, body, { side, only, count: count === null ? null : [numbers(count)] }),
  );
const TABLE = fc
  .record({
    wish: fc.integer({ min: 1, max: 12 }),
    rows: fc.integer({ min: 1, max: 8 }),
    cell: SHORT,
    head: SHORT,
    numeric: fc.boolean(),
  })
  .map(({ wish, rows, cell, head, numeric }): Block => {
    // Few enough columns of words to fit in one piece; splitting by size has tests of its own.
    const columns = numeric ? wish : Math.min(wish, 4);
    return table({
      caption: `Table of ${columns}`,
      corner: 'Size',
      heads: Array.from({ length: columns }, (_, c) => `H${c}`),
      rows: Array.from({ length: rows }, (_, r) => [
        `${head} ${r}`,
        ...Array.from({ length: columns }, (_, c) => (numeric ? `${r}${c} (${c})` : cell)),
      ]),
      align: numeric ? 'numbers' : 'words',
      note: rows > 4 ? 'A note under it.' : null,
    });
  });
const BLOCK: fc.Arbitrary<Block> = fc.oneof(
  { weight: 8, arbitrary: ROW },
  { weight: 3, arbitrary: TEXT.map((text) => paragraph(text)) },
  {
    weight: 2,
    arbitrary: fc
      .record({ level: fc.constantFrom(2, 3), text: SHORT })
      .map(({ level, text }) => heading(level as 2 | 3, text)),
  },
  {
    weight: 1,
    arbitrary: fc
      .array(TEXT, { minLength: 1, maxLength: 5 })
      .chain((items) => fc.constantFrom(list('bulleted', items), list('numbered', items))),
  },
  {
    weight: 1,
    arbitrary: fc
      .array(fc.tuple(SHORT, TEXT), { minLength: 1, maxLength: 14 })
      .chain((items) => fc.constantFrom(entries('terms', items), entries('facts', items))),
  },
  { weight: 1, arbitrary: TABLE },
  {
    weight: 1,
    arbitrary: fc.array(TEXT, { minLength: 1, maxLength: 3 }).map((texts) => caution('Take care', texts)),
  },
  { weight: 1, arbitrary: TEXT.map((text) => sizeKey('How to read sizes', text)) },
  {
    weight: 1,
    arbitrary: fc.constantFrom(
      figure(picture('cover'), 'A swatch', 'A caption', 'half'),
      figure(drawing('none', 1.6), 'A place kept', null, 'page'),
    ),
  },
  { weight: 1, arbitrary: fc.constantFrom(space('small'), space('large'), pageBreak) },
  { weight: 1, arbitrary: fc.tuple(SHORT, TEXT).map(([a, b]) => together(heading(3, a), paragraph(b))) },
  { weight: 1, arbitrary: TEXT.map((text) => withNext(paragraph(text))) },
);
const BOOKLET: fc.Arbitrary<Booklet> = fc
  .record({
    cover: fc.boolean(),
    parts: fc.array(
      fc.record({ title: SHORT, newPage: fc.boolean(), blocks: fc.array(BLOCK, { maxLength: 40 }) }),
      { minLength: 1, maxLength: 4 },
    ),
  })
  .map(({ cover, parts }) => ({
    ...sample(),
    cover: cover ? sample().cover : null,
    parts: parts.map((one) => part(one.title, one.blocks, one.newPage)),
  }));
const OPTIONS = fc.record({
  paper: fc.constantFrom<Paper>('a4', 'letter'),
  edition: fc.constantFrom<Edition>('standard', 'large-print', 'ink-saving'),
});

const plainText = (words: Words): string => squeeze(words.map((run) => run.text).join(''));

/** What should be read, block by block, in order, with the marks the layout adds (colons, bullets, numbers). */
function* expected(block: Block, edition: Edition): Generator<string> {
  const told = edition === 'large-print';
  switch (block.kind) {
    case 'heading':
    case 'paragraph':
      yield plainText(block.words);
      break;
    case 'row':
      yield `${block.label}${block.side === null ? '' : ` (${block.side})`}:`;
      yield squeeze(
        `${block.only === null ? '' : `${block.only}: `}${plainText(block.body)} ${block.count ? plainText(block.count) : ''}`,
      );
      break;
    case 'list':
      for (const [i, item] of block.items.entries())
        yield* [block.form === 'numbered' ? `${i + 1}.` : '•', plainText(item)];
      break;
    case 'entries':
      for (const item of block.items) {
        yield `${plainText(item.label)}${told || block.form === 'facts' ? ':' : ''}`;
        yield plainText(item.value);
      }
      break;
    case 'table':
      yield plainText(block.caption);
      if (told) {
        for (const line of block.rows) {
          yield plainText(line.head);
          for (const [c, cell] of line.cells.entries())
            yield* [`${plainText(block.heads[c]!)}:`, plainText(cell)];
        }
      } else {
        yield* [block.corner, ...block.heads].map(plainText);
        for (const line of block.rows) yield* [line.head, ...line.cells].map(plainText);
      }
      if (block.note) yield plainText(block.note);
      break;
    case 'figure':
      if (block.image.source === 'drawing') yield block.alt;
      if (block.caption) yield plainText(block.caption);
      break;
    case 'caution':
      yield block.title;
      for (const text of block.paragraphs) yield plainText(text);
      break;
    case 'key':
      yield told ? `${block.title}:` : block.title;
      yield plainText(block.words);
      break;
    case 'together':
      for (const inner of block.blocks) yield* expected(inner, edition);
      break;
    case 'with-next':
      yield* expected(block.block, edition);
      break;
    default:
      break;
  }
}

/** Texts of the tags in the order of the tag tree, which is the order a reader aloud follows. */
function spoken(layout: Layout): string[] {
  const texts = textByTag(layout.pages);
  return [...walk<Tag>(layout.tags)].filter((one) => texts.has(one)).map((one) => squeeze(texts.get(one)!));
}

const isText = (mark: { kind: string }): mark is TextMark => mark.kind === 'text';
const body = (page: Page): TextMark[] => owned(page).filter(isText);
const RUNS = { numRuns: 120 };

describe('random booklets', () => {
  test('lose no word, and keep their order', () => {
    fc.assert(
      fc.property(BOOKLET, OPTIONS, (booklet, options) => {
        const layout = layOut({ ...booklet, cover: null }, options, resources);
        const wanted = booklet.parts.flatMap((one) => [
          one.title,
          ...one.blocks.flatMap((block) => [...expected(block, options.edition)]),
        ]);
        expect(spoken(layout)).toEqual(wanted);
      }),
      RUNS,
    );
  });

  test('keep everything within the margins, but for the picture of the cover', () => {
    fc.assert(
      fc.property(BOOKLET, OPTIONS, (booklet, options) => {
        const { pages, style } = layOut(booklet, options, resources);
        for (const page of pages) {
          for (const mark of page.marks) {
            if (mark.kind === 'image' && page.number === 1 && style.bleed && booklet.cover) {
              expect(mark.x + mark.width).toBeCloseTo(style.page.width, 6);
              expect(mark.y).toBeCloseTo(0, 6);
              continue;
            }
            const left = mark.x;
            const right =
              mark.kind === 'rule'
                ? mark.x2
                : mark.kind === 'text'
                  ? mark.x + mark.width - (mark.text.endsWith(' ') ? mark.size * 0.4 : 0)
                  : mark.x + mark.width;
            const bottom =
              mark.kind === 'text' ? mark.y : mark.kind === 'rule' ? mark.y2 : mark.y + mark.height;
            expect(left).toBeGreaterThanOrEqual(
              style.margin.left - style.spaces.inset - style.rules.bar - 0.01,
            );
            expect(right).toBeLessThanOrEqual(style.page.width - style.margin.right + 0.1);
            expect(mark.y).toBeGreaterThanOrEqual(style.margin.top - 0.01);
            expect(bottom).toBeLessThanOrEqual(style.page.height - style.footRise + 0.01);
          }
        }
      }),
      RUNS,
    );
  });

  test('never run into the foot', () => {
    fc.assert(
      fc.property(BOOKLET, OPTIONS, (booklet, options) => {
        const { pages } = layOut(booklet, options, resources);
        for (const page of pages) {
          const foot = page.marks.find(
            (mark) => isText(mark) && mark.tag === null && mark.text.startsWith('Saltmarsh'),
          ) as TextMark;
          const rule = foot.y - foot.size * 1.2;
          for (const mark of body(page)) expect(mark.y + mark.size * 0.25).toBeLessThan(rule);
        }
      }),
      RUNS,
    );
  });

  test('strand no heading at the foot of a page', () => {
    fc.assert(
      fc.property(BOOKLET, OPTIONS, (booklet, options) => {
        const layout = layOut(booklet, options, resources);
        const order = [...walk<Tag>(layout.tags)];
        const forcedAfter = (heading: Tag): boolean => {
          // Nothing follows it, or what follows was asked to begin a page.
          const section = layout.tags.children.find((one) => [...walk(one)].includes(heading))!;
          return section.children.at(-1) === heading;
        };
        const asked = JSON.stringify(booklet).includes('page-break');
        for (const page of layout.pages) {
          const last = body(page).at(-1)?.tag;
          if (!last || !/^H\d$/.test(last.type) || asked) continue;
          expect(order.indexOf(last)).toBeGreaterThanOrEqual(0);
          expect(forcedAfter(last)).toBe(true);
        }
      }),
      RUNS,
    );
  });

  test('keep every row label and list marker on the page and line where its text begins', () => {
    fc.assert(
      fc.property(BOOKLET, OPTIONS, (booklet, options) => {
        const { pages, style, tags } = layOut(booklet, options, resources);
        const first = new Map<Tag, { page: number; y: number }>();
        for (const page of pages) {
          for (const mark of body(page))
            if (mark.tag && !first.has(mark.tag)) first.set(mark.tag, { page: page.number, y: mark.y });
        }
        for (const item of walk<Tag>(tags)) {
          if (item.type !== 'LI') continue;
          const [label, value] = item.children.map((child) => first.get(child));
          if (!label || !value) continue;
          expect(value.page).toBe(label.page);
          if (style.hang > 0) expect(value.y).toBeCloseTo(label.y, 6);
        }
      }),
      RUNS,
    );
  });

  test('leave no line of a short paragraph or row alone', () => {
    fc.assert(
      fc.property(fc.array(ROW, { minLength: 20, maxLength: 80 }), OPTIONS, (blocks, options) => {
        const layout = layOut(
          { ...sample(), cover: null, parts: [part('Rows', blocks)] },
          options,
          resources,
        );
        const lines = new Map<Tag, Map<number, Set<number>>>();
        for (const page of layout.pages) {
          for (const mark of body(page)) {
            if (mark.tag?.type !== 'LBody') continue;
            const pages = lines.get(mark.tag) ?? new Map<number, Set<number>>();
            pages.set(page.number, (pages.get(page.number) ?? new Set()).add(mark.y));
            lines.set(mark.tag, pages);
          }
        }
        for (const pages of lines.values()) {
          if (pages.size > 1) for (const on of pages.values()) expect(on.size).toBeGreaterThan(1);
        }
      }),
      RUNS,
    );
  });

  test('come out the same twice', () => {
    fc.assert(
      fc.property(BOOKLET, OPTIONS, (booklet, options) => {
        const strip = (layout: Layout): unknown =>
          layout.pages.map((page) => page.marks.map(({ tag, ...mark }) => ({ ...mark, tag: tag?.type })));
        expect(strip(layOut(booklet, options, resources))).toEqual(
          strip(layOut(booklet, options, resources)),
        );
      }),
      { numRuns: 20 },
    );
  });
});

describe('page breaks', () => {
  const lines = (n: number, height: number, cost: (i: number) => number = () => BREAK.free) =>
    Array.from({ length: n }, (_, i) => slice(height, [], { cost: cost(i) }));

  test.each([
    ['fills pages when nothing speaks against it', lines(25, 10), 100, [0, 10, 20]],
    [
      'takes a heading to the next page with its text',
      lines(28, 10, (i) => (i === 10 ? BREAK.strand : BREAK.free)),
      100,
      [0, 9, 19],
    ],
    [
      'splits rather than leaves most of a page empty',
      lines(20, 10, (i) => (i > 2 ? BREAK.inside : BREAK.free)),
      100,
      [0, 10],
    ],
    [
      'holds a group of a third of a page together',
      lines(12, 10, (i) => (i > 7 ? BREAK.together : BREAK.free)),
      100,
      [0, 7],
    ],
    [
      'gives a slice taller than a page one of its own',
      [...lines(2, 10), ...lines(1, 150), ...lines(2, 10)],
      100,
      [0, 2, 3],
    ],
    ['leaves no nearly empty page at the end', lines(21, 10), 100, [0, 8, 17]],
    ['has no page for nothing', [], 100, []],
  ])('%s', (_, slices, height, starts) => {
    expect(breakPages(slices, height)).toEqual(starts);
  });

  test('come where they are asked for', () => {
    const slices = lines(6, 10).map((one, i) => (i === 2 ? { ...one, forced: true } : one));
    expect(breakPages(slices, 100)).toEqual([0, 2]);
  });

  test('come where a part opens, but not after a nearly empty page', () => {
    const opening = (at: number) => lines(20, 10).map((one, i) => (i === at ? { ...one, opens: true } : one));
    expect(breakPages(opening(5), 100)).toEqual([0, 5, 15]);
    expect(breakPages(opening(1), 100)).toEqual([0, 10]);
  });

  test('do not turn over for the end of a section alone', () => {
    const heading = { title: 'Sleeve', level: 1 } as const;
    // Eleven lines and five: the first section would be parted before its last line.
    const slices = lines(16, 10).map((one, i) => (i === 0 || i === 11 ? { ...one, bookmark: heading } : one));
    const held = holdEnds(slices, 30);
    expect(held.map(({ cost }) => cost === BREAK.together)).toEqual(
      slices.map((_, i) => [8, 9, 10, 13, 14, 15].includes(i)),
    );
    expect(breakPages(slices, 100)).toEqual([0, 10]);
    expect(breakPages(held, 100)).toEqual([0, 7]);
  });

  test('count the repeated head of a table', () => {
    const carry = lines(3, 10);
    const slices = lines(16, 10).map((one) => ({ ...one, carry }));
    const starts = breakPages(slices, 100);
    expect(starts[1]! - starts[0]!).toBeLessThanOrEqual(7);
  });
});

describe('tables', () => {
  const labels = (n: number): string[] => Array.from({ length: n }, (_, i) => SIZES[i] ?? `${i - 3}X`);
  const wide = (columns: number, rows = 6): Block =>
    table({
      caption: 'Finished measurements',
      corner: 'Size',
      heads: labels(columns),
      rows: Array.from({ length: rows }, (_, r) => [
        `Measurement ${r + 1}`,
        ...labels(columns).map((_, c) => `${100 + 3 * c} (${39 + c}½)`),
      ]),
    });
  const tablesOf = (layout: Layout): Tag[] =>
    [...walk<Tag>(layout.tags)].filter((one) => one.type === 'Table');
  const lay = (block: Block, edition: Edition = 'standard', paper: Paper = 'a4'): Layout =>
    layOut({ ...sample(), cover: null, parts: [part('Sizes', [block])] }, { paper, edition }, resources);

  test.each([1, 4, 10, 12, 14])('of %i sizes fit the page in one piece', (columns) => {
    const layout = lay(wide(columns));
    expect(tablesOf(layout).length).toBe(1);
    for (const mark of body(layout.pages[0]!))
      expect(mark.size).toBeGreaterThanOrEqual(layout.style.tableLimit);
  });

  test('that goes over a page has its caption above each part of it', () => {
    const layout = lay(wide(4, 60));
    expect(layout.pages.length).toBeGreaterThan(1);
    for (const page of layout.pages)
      expect(page.marks.some((mark) => mark.kind === 'text' && mark.text === 'Finished measurements')).toBe(
        true,
      );
  });

  test.each([20, 30, 50])(
    'of %i sizes are split by size, each part with its heads and caption',
    (columns) => {
      for (const edition of ['standard', 'ink-saving'] as const) {
        for (const paper of ['a4', 'letter'] as const) {
          const layout = lay(wide(columns), edition, paper);
          const parts = tablesOf(layout);
          expect(parts.length).toBeGreaterThan(1);
          const texts = textByTag(layout.pages);
          const heads = parts.map((one) =>
            [...walk(one)].filter((cell) => cell.scope === 'Column').map((cell) => texts.get(cell)!),
          );
          for (const own of heads) expect(own[0]).toBe('Size');
          expect(heads.flatMap((own) => own.slice(1))).toEqual(labels(columns));
          for (const [i, one] of parts.entries()) {
            const own = heads[i]!;
            expect(texts.get(one.children[0]!)).toBe(`Finished measurements (${own[1]} to ${own.at(-1)})`);
            const rowHeads = [...walk(one)]
              .filter((cell) => cell.scope === 'Row')
              .map((cell) => texts.get(cell)!);
            expect(rowHeads).toEqual(Array.from({ length: 6 }, (_, r) => `Measurement ${r + 1}`));
          }
          // Each part as wide as the others, give or take the last column.
          const counts = heads.map((own) => own.length);
          expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(counts.length);
        }
      }
    },
  );

  test('repeat their head on every page, as an artifact', () => {
    const layout = lay(wide(6, 90));
    expect(layout.pages.length).toBeGreaterThan(2);
    expect(tablesOf(layout).length).toBe(1);
    for (const [i, page] of layout.pages.entries()) {
      const first = page.marks.filter(isText).filter((mark) => mark.text === 'XS');
      expect(first.length).toBe(1);
      expect(first[0]!.tag === null).toBe(i > 0);
      const rows = page.marks.filter(isText).filter((mark) => mark.text.startsWith('Measurement'));
      expect(rows.length).toBeGreaterThan(1);
      for (const mark of rows) expect(mark.y).toBeGreaterThan(first[0]!.y);
    }
  });

  test('in numbers stand flush right under their heads', () => {
    const layout = lay(wide(5, 3));
    const right = (mark: TextMark): number => mark.x + mark.width;
    const marks = body(layout.pages[0]!);
    for (const [c, label] of labels(5).entries()) {
      const head = marks.find((mark) => mark.text === label)!;
      const cell = marks.find((mark) => mark.text === `${100 + 3 * c} (${39 + c}½)`)!;
      expect(right(cell)).toBeCloseTo(right(head), 6);
    }
  });

  test('with a cell longer than a page go on on the next page', () => {
    const layout = lay(
      table({
        caption: 'Long',
        heads: ['Words'],
        rows: [['Much', 'dc in next st, '.repeat(900)]],
        align: 'words',
      }),
    );
    expect(layout.pages.length).toBeGreaterThan(1);
    const texts = textByTag(layout.pages);
    const cell = [...walk<Tag>(layout.tags)].find((one) => one.type === 'TD')!;
    expect(squeeze(texts.get(cell)!)).toBe(squeeze('dc in next st, '.repeat(900)));
  });

  test('with ragged rows lose no cell', () => {
    const layout = lay(table({ caption: 'Ragged', heads: ['A'], rows: [['one', '1', '2', '3'], ['two']] }));
    const texts = [...textByTag(layout.pages).values()];
    for (const text of ['1', '2', '3', 'two']) expect(texts).toContain(text);
  });

  test('are told in lines in large print, by row or by column', () => {
    const shape = {
      caption: 'Sizes',
      corner: 'Size',
      heads: ['S', 'M'],
      rows: [
        ['Chest', '90', '100'],
        ['Length', '50', '52'],
      ] as [string, ...string[]][],
    };
    expect(spoken(lay(table(shape), 'large-print')).slice(1)).toEqual([
      'Sizes',
      'Chest',
      'S:',
      '90',
      'M:',
      '100',
      'Length',
      'S:',
      '50',
      'M:',
      '52',
    ]);
    expect(spoken(lay(table({ ...shape, told: 'elsewhere' }), 'large-print')).slice(1)).toEqual([]);
    const both = { caption: 'Both', rows: [['Chest', '90 cm / 35½ in', '100 cm / 39½ in']] as const };
    expect(spoken(lay(table({ ...shape, lines: both }), 'large-print')).join(' ')).toContain(
      '90 cm / 35½ in',
    );
    expect(spoken(lay(table({ ...shape, told: 'by-column' }), 'large-print')).slice(1)).toEqual([
      'Sizes',
      'Size S',
      'Chest:',
      '90',
      'Length:',
      '50',
      'Size M',
      'Chest:',
      '100',
      'Length:',
      '52',
    ]);
  });

  /** Pages on which a text of the table stands. */
  const pagesOf = (layout: Layout, text: RegExp): Set<number> =>
    new Set(
      layout.pages
        .filter((page) => page.marks.some((mark) => isText(mark) && text.test(mark.text)))
        .map((p) => p.number),
    );
  /** The block after so many lines of text, so that it comes near the foot of a page in one of the cases. */
  const under = (lines: number, block: Block, edition: Edition): Layout =>
    layOut(
      {
        ...sample(),
        cover: null,
        parts: [part('Sizes', [...Array.from({ length: lines }, () => paragraph('dc in next st')), block])],
      },
      { paper: 'letter', edition },
      resources,
    );

  test('of a few rows are not parted, nor is a size that is told in lines', () => {
    const rows = Array.from({ length: 5 }, (_, r): [string, ...string[]] => [
      `Part ${r}`,
      ...labels(3).map((one) => `${one}-${r}`),
    ]);
    const few = { caption: 'Finished measurements', corner: 'Size', heads: labels(3), rows };
    for (let lines = 0; lines < 30; lines++) {
      expect(pagesOf(under(lines, table(few), 'standard'), /^Part \d/).size).toBe(1);
      const told = under(lines, table({ ...few, told: 'by-column' }), 'large-print');
      for (const size of labels(3))
        expect(pagesOf(told, new RegExp(`^(Size ${size}|${size}-\\d)$`)).size).toBe(1);
    }
  });
});

describe('entries', () => {
  test('whose numbers take a few lines are not parted', () => {
    // Seven lists of twenty-four numbers, as the measurements of a drawing are.
    const values = Array.from({ length: 7 }, (_, e) =>
      Array.from({ length: 48 }, (_, n) => `${100 * (e + 1) + n}.5`).join(', '),
    );
    for (let lines = 0; lines < 40; lines++) {
      const block = entries(
        'facts',
        values.map((value, e) => [`Letter ${e}`, value]),
      );
      const parts = [part('Schematics', [...Array.from({ length: lines }, () => paragraph('turn')), block])];
      const { pages } = layOut(
        { ...sample(), cover: null, parts },
        { paper: 'a4', edition: 'standard' },
        resources,
      );
      for (const [e] of values.entries()) {
        const holding = pages.filter(({ marks }) =>
          marks.some((mark) => mark.kind === 'text' && new RegExp(`\\b${e + 1}\\d\\d\\.5`).test(mark.text)),
        );
        expect(holding.length, `letter ${e} after ${lines} lines`).toBe(1);
      }
    }
  });
});

describe('structure', () => {
  test('headings that skip a level are tagged without the gap', () => {
    const layout = layOut(
      { ...sample(), cover: null, parts: [part('One', [heading(3, 'Three'), heading(2, 'Two')])] },
      { paper: 'a4', edition: 'standard' },
      resources,
    );
    expect([...walk<Tag>(layout.tags)].filter((one) => /^H/.test(one.type)).map((one) => one.type)).toEqual([
      'H1',
      'H2',
      'H2',
    ]);
  });

  test('rows that follow one another are one list; anything between begins another', () => {
    const layout = layOut(
      {
        ...sample(),
        cover: null,
        parts: [part('', [row('Row 1', 'a'), row('Row 2', 'b'), paragraph('c'), row('Row 3', 'd')])],
      },
      { paper: 'a4', edition: 'standard' },
      resources,
    );
    expect(layout.tags.children[0]!.children.map((one) => `${one.type} ${one.children.length}`)).toEqual([
      'L 2',
      'P 0',
      'L 1',
    ]);
  });

  test('a long cover goes on on a second page and loses nothing', () => {
    const cover = {
      ...sample().cover!,
      summary: Array.from({ length: 30 }, (_, i) => [
        { text: `Paragraph ${i} ${'of many words '.repeat(20)}`, emphasis: 'plain', hold: 'loose' } as const,
      ]),
    };
    for (const edition of ['standard', 'large-print', 'ink-saving'] as const) {
      const layout = layOut({ ...sample(), cover, parts: [] }, { paper: 'letter', edition }, resources);
      expect(layout.pages.length).toBeGreaterThan(1);
      const all = spoken(layout).join(' ');
      for (let i = 0; i < 30; i++) expect(all).toContain(`Paragraph ${i} `);
      expect(layout.pages[0]!.marks.some((mark) => mark.kind === 'image') || edition !== 'standard').toBe(
        true,
      );
    }
  });
});
