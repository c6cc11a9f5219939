/**
 * Documents of word processors: tables, lists, headings, numbered paragraphs become lines; hostile archives are told
 * and never open. The documents are written here, part by part, as ECMA-376 has them.
 */
import { strToU8, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { readDocx } from '../../app/services/docx.ts';
import { bring } from '../../core/intake/bring.ts';
import { DOCX_LIMITS, textOfDocx } from '../../core/intake/docx.ts';
import { textOfMarkup } from '../../core/intake/markup.ts';
import { study } from '../../core/study/index.ts';
import { docx, heading, numbered, p, table, W } from './documents.ts';

const textOf = async (bytes: Uint8Array): Promise<string> => {
  const result = await textOfDocx(bytes, readDocx);
  return result.ok ? result.text : `refused: ${result.message}`;
};

describe('a document', () => {
  const coaster = docx(
    [
      heading('Lichen Coaster'),
      p('A coaster, in |US| terms.'),
      heading('Materials'),
      p('Cotton, 20 g; 4 mm hook'),
      heading('Coaster'),
      p('Worked in a spiral.'),
      table([
        ['Rnd', 'Instruction', 'Stitches'],
        ['1', '6 sc in magic ring', '6'],
        ['2', '2 sc in each st around', '12'],
        ['3', '*sc in next st, 2 sc in next st; rep from * around', '18'],
        ['4–5', 'sc in each st around', '18'],
      ]),
      heading('Strap'),
      p('Ch 11.'),
      numbered('Sc in 2nd ch from hook and in each ch across, turn. (10 sc)'),
      numbered('Ch 1, sc in each st across, turn. (10 sc)'),
      heading('Finishing'),
      p('Weave in the ends &amp; wash.'),
    ].join(''),
  );

  test('its words as lines', async () => {
    expect(await textOf(coaster)).toBe(`Lichen Coaster
A coaster, in US terms.

Materials
Cotton, 20 g; 4 mm hook

Coaster
Worked in a spiral.
Rnd 1: 6 sc in magic ring (6)
Rnd 2: 2 sc in each st around (12)
Rnd 3: *sc in next st, 2 sc in next st; rep from * around (18)
Rnd 4–5: sc in each st around (18)

Strap
Ch 11.
1. Sc in 2nd ch from hook and in each ch across, turn. (10 sc)
2. Ch 1, sc in each st across, turn. (10 sc)

Finishing
Weave in the ends & wash.`);
  });

  test('every row has its count', async () => {
    const result = bring(await textOf(coaster), { terms: null, title: '', date: '2026-01-01' });
    if (!result.ok) throw new Error(result.message);
    const { pattern, rows } = result.brought;
    const counts = study(pattern).pieces.map(({ piece, blocks }) => [
      piece.name,
      ...blocks.filter(({ block }) => block.type !== 'prose').map(({ sizes }) => sizes[0]?.tally.stitches),
    ]);
    // Rounds of 6, 12 and 18; two more of 18. A strap of 11 chains: 10 sc.
    expect(counts).toEqual([
      ['Coaster', 6, 12, 18, 18, 18],
      ['Strap', 11, 10, 10],
    ]);
    expect(rows).toEqual({ written: 8, followed: 8 });
    expect(pattern.finishing.map(({ text }) => text)).toEqual(['Weave in the ends & wash.']);
  });
});

describe('what is no document', () => {
  test.each([
    ['plain words', strToU8('Row 1: Sc across.'), 'not a .docx'],
    ['an archive of something else', zipSync({ 'a.txt': strToU8('a') }), 'not a .docx'],
    ['a document cut short', docx(p('Row 1')).subarray(0, 900), 'not a .docx'],
    [
      'entities that would grow',
      docx('', {
        'word/document.xml': `<!DOCTYPE x [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;">]><w:document xmlns:w="${W}"><w:body>&b;</w:body></w:document>`,
      }),
      'do not write there',
    ],
    [
      'elements within elements',
      docx('<w:sdt><w:sdtContent>'.repeat(300) + '</w:sdtContent></w:sdt>'.repeat(300)),
      'unpacks to more',
    ],
    ['markup that is not whole', docx('<w:p><w:r>'), 'not a .docx'],
  ])('%s is told', async (_, bytes, words) => {
    const result = await textOfDocx(bytes, readDocx);
    expect(result.ok ? '' : result.message).toContain(words);
  });

  test('a part that unpacks to more than any pattern is never unpacked', async () => {
    const bomb = docx('', { 'word/document.xml': 'a'.repeat(DOCX_LIMITS.partBytes + 1) });
    expect(bomb.length).toBeLessThan(100_000);
    const result = await textOfDocx(bomb, () => {
      throw new Error('the library was asked');
    });
    expect(result.ok ? '' : result.message).toContain('unpacks to more');
  });
});

test.each([
  ['<p>a</p><p>b</p>', 'a\nb'],
  ['<ul><li>a</li><li>b</li></ul>', 'a\nb'],
  ['<ol><li>a<ol><li>b</li></ol></li><li>c</li></ol>', '1. a\n1. b\n2. c'],
  ['<p>2 &lt; 3 &#189;</p>', '2 < 3 ½'],
  ['<p>Row 1<sup><a href="#footnote-1" id="footnote-ref-1">[1]</a></sup></p>', 'Row 1'],
  ['<p>see <a href="x">the chart</a> below</p>', 'see the chart below'],
  ['<table><tr><td>a</td><td><p>b</p><p>c</p></td></tr></table><p>d</p>', 'a b c\nd'],
  ['</td></table></a>x', 'x'],
])('markup %s', (html, expected) => {
  expect(textOfMarkup(html)).toBe(expected);
});

test('a table of abbreviations and one of the sizes with the yarn of each', async () => {
  const text = await textOf(
    docx(
      [
        heading('Windrow Vest'),
        heading('Sizes'),
        table([
          ['', 'S', 'M', 'L'],
          ['Finished bust', '96 cm', '106 cm', '116 cm'],
          ['Yarn', '5 balls', '6 balls', '7 balls'],
        ]),
        heading('Materials'),
        p('Fen DK, 100% wool, 50 g / 120 m'),
        heading('Abbreviations'),
        table([
          ['ch', 'chain', 'RS', 'right side'],
          ['lgsh', 'large shell', 'sk', 'skip'],
        ]),
        heading('Panel (make 2)'),
        p('Ch 79 (87, 95).'),
        p('Row 1: Dc in 4th ch from hook and in each ch across, turn. (77 (85, 93) dc)'),
      ].join(''),
    ),
  );
  expect(text).toContain('ch = chain\nRS = right side\nlgsh = large shell\nsk = skip');
  const result = bring(text, { terms: 'us', title: 'File', date: '2026-01-01' });
  const { pattern } = (result as Extract<typeof result, { ok: true }>).brought;
  // Five, six and seven balls of 120 m.
  expect(pattern.yarns.map(({ name, metres }) => [name, Object.values(metres)])).toEqual([
    ['Fen DK', [600, 720, 840]],
  ]);
  expect(pattern.abbreviations).toEqual({ lgsh: 'large shell', RS: 'right side' });
});

describe('documents that are tables for the most part', () => {
  const broughtFrom = async (body: readonly string[]) => {
    const result = bring(await textOf(docx(body.join(''))), {
      terms: null,
      title: 'File',
      date: '2026-01-01',
    });
    if (!result.ok) throw new Error(result.message);
    const { pattern, rows, doubts } = result.brought;
    const counts = study(pattern).pieces.map(({ blocks }) =>
      blocks
        .filter(({ block }) => block.type === 'row' || block.type === 'repeat')
        .map(({ sizes }) => sizes.map((size) => size?.tally.stitches)),
    );
    return { pattern, rows, doubts, counts };
  };

  test('ranges to fit, and a second table with the yarn of each size', async () => {
    const { pattern, rows, doubts, counts } = await broughtFrom([
      heading('Fulmar Tank'),
      p('by Isa Brackwater'),
      p('Written in UK terms.'),
      heading('Sizes'),
      table([
        ['Size', '1', '2', '3', '4'],
        ['To fit bust', '76–81 cm', '86–91 cm', '97–102 cm', '107–112 cm'],
        ['Finished bust', '84 cm', '94 cm', '105 cm', '115 cm'],
      ]),
      heading('Yarn'),
      p('Gannet 4 ply, 50 g / 175 m, 100% cotton'),
      table([
        ['Size', '1', '2', '3', '4'],
        ['Metres', '600', '680', '760', '850'],
        ['Balls', '4', '4', '5', '5'],
      ]),
      heading('Hook'),
      p('3.5 mm'),
      heading('Back and front (make 2)'),
      p('Ch 86 (96, 107, 117).'),
      p('Row 1 (RS): Tr in 4th ch from hook and in each ch to end, turn. 84 (94, 105, 115) tr.'),
      p('Row 2: Ch 3 (counts as tr), miss first tr, tr in each tr to end, turn.'),
      p('Rows 3–30 (30, 31, 31): As Row 2.'),
    ]);
    expect(pattern.lines.map(({ name }) => name)).toEqual([
      'body bust from',
      'body bust up to',
      'finished bust',
      'back and front repeated rows',
    ]);
    // The balls are those metres in balls of 175 m (3.4, 3.9, 4.3 and 4.9), and so not told twice.
    expect(pattern.yarns.map(({ name, metres }) => [name, Object.values(metres)])).toEqual([
      ['Gannet 4 ply', [600, 680, 760, 850]],
    ]);
    expect(pattern.notes).toEqual([]);
    expect(doubts).toEqual([]);
    expect(rows).toEqual({ written: 4, followed: 4 });
    // 3 chains passed over stand for a treble: 2 fewer.
    const each = [84, 94, 105, 115];
    expect(counts).toEqual([[[86, 96, 107, 117], each, each, each]]);
  });

  test('facts beside their names, rows with their side in a column', async () => {
    const { pattern, rows, counts } = await broughtFrom([
      heading('Marram Cushion'),
      table([
        ['Level', 'Easy'],
        ['Yarn', 'Dune Chunky, 4 balls (100 g, 110 m)'],
        ['Hook', '7 mm'],
        ['Notions', '5 buttons; 45 cm cushion pad'],
        ['Gauge', '11 dc and 6 rows = 10 cm'],
      ]),
      p('This pattern uses US terms.'),
      heading('Panel'),
      table([
        ['Row', 'What to do', 'Side', 'Stitches'],
        ['–', 'Ch 51.', '', '51'],
        ['1', 'Dc in 4th ch from hook and in each ch across; turn.', 'RS', '49'],
        ['2', 'Ch 3, dc in next st and in each st across; turn.', 'WS', '49'],
        ['3–27', 'Repeat row 2.', '', '49'],
        [
          '28',
          'Ch 1, sc in first 5 sts, (ch 3, sk 3 sts, sc in next 6 sts) 4 times, ch 3, sk 3 sts, sc in last 5 sts; turn.',
          'WS',
          '34 sc',
        ],
      ]),
    ]);
    expect(pattern.about.level).toBe(2);
    expect(pattern.yarns.map(({ name, metres }) => [name, Object.values(metres)])).toEqual([
      ['Dune Chunky', [440]],
    ]);
    expect(pattern.hooks.map(({ mm }) => mm)).toEqual([7]);
    expect(pattern.notions.map(({ name, amount }) => [name, amount])).toEqual([
      ['buttons', { all: 5 }],
      ['45 cm cushion pad', null],
    ]);
    expect(pattern.gauges.map(({ stitches, rows: high }) => [stitches, high])).toEqual([[11, 6]]);
    expect(rows).toEqual({ written: 5, followed: 5 });
    // 49 dc; 5, four times 6 and 5 single crochets, with 3 chains over the five gaps.
    expect(counts).toEqual([[[51], [49], [49], [49], [34]]]);
  });
});

describe('what stands beside the words of a document', () => {
  const part = (name: string, body: string) => `<w:${name} xmlns:w="${W}">${body}</w:${name}>`;
  const strap = [
    heading('Reed Strap'),
    heading('Strap'),
    p('Ch 11.'),
    p('Row 1: Sc in 2nd ch from hook and in each ch across.'),
  ];
  const parts = {
    'word/header1.xml': part('hdr', p('Fallow Crafts')),
    'word/header2.xml': part('hdr', p('Fallow Crafts')),
    'word/footer1.xml': part(
      'ftr',
      `${p('© 2019 Ines Fallow|, for your own use')}${p('Page |3| of |9')}${p('4')}`,
    ),
    'word/comments.xml': part(
      'comments',
      `<w:comment w:id="0">${p('Is this 11 or 12?')}${p('Ask Ines &amp; Ove.')}</w:comment><w:comment w:id="1">${p(' ')}</w:comment>`,
    ),
  };

  test('is told, and whose the rights are is said in the pattern', async () => {
    const read = await textOfDocx(docx(strap.join(''), parts), readDocx);
    if (!read.ok) throw new Error(read.message);
    const { text, edges, remarks } = read;
    expect(edges).toEqual(['Fallow Crafts', '© 2019 Ines Fallow, for your own use']);
    expect(remarks).toEqual(['Is this 11 or 12? Ask Ines & Ove.']);
    const result = bring(text, { terms: 'us', title: 'File', date: '2026-01-01', edges, remarks });
    if (!result.ok) throw new Error(result.message);
    const { pattern, leftOut, doubts } = result.brought;
    expect(pattern.about.copyright).toBe('© 2019 Ines Fallow, for your own use');
    expect(leftOut).toEqual(['Fallow Crafts']);
    expect(doubts.map(({ why }) => why)).toEqual([
      'At the side of the document stands a remark, which is not in the pattern: “Is this 11 or 12? Ask Ines & Ove.”',
    ]);
    expect(pattern.pieces.map(({ name }) => name)).toEqual(['Strap']);
  });
});
