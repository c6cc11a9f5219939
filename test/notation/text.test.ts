/** Whole texts: sizes, pieces, definitions, conventions, rows over several lines, prose. */
import { describe, expect, it } from 'vitest';
import { normaliseName, readItems, readRow, readText } from '../../core/notation/index.ts';
import type { TextTree } from '../../core/notation/tree.ts';
import { countsAs, items, row } from './compact.ts';

/** One line a thing: what `readText` finds. */
function outline(tree: TextTree): string[] {
  const lines: string[] = [];
  if (tree.sizes) lines.push(`sizes ${tree.sizes.join(' ')}`);
  for (const piece of tree.pieces) {
    lines.push(`piece ${piece.heading?.text ?? '-'}`);
    for (const one of piece.definitions) {
      const facts = one.facts.map((fact) => ` !${fact.code}`).join('');
      lines.push(`  ${one.names.join('/')} = ${items(one.items)}${facts}`);
    }
    for (const one of piece.conventions) {
      const chains = one.chains?.kind === 'one' ? one.chains.value : 'tch';
      lines.push(`  ${chains} ${countsAs(one.counts)}`);
    }
    for (const one of piece.rows) lines.push(`  ${row(one)}`);
  }
  for (const fact of tree.facts) lines.push(`${fact.code} ${fact.data.words}`);
  return lines;
}

function us(...lines: string[]): string[] {
  return outline(readText(lines.join('\n'), { terms: 'us' }));
}

describe('a text', () => {
  it('parts sizes, definitions, conventions, pieces, rows and prose', () => {
    expect(
      us(
        'Sizes: S (M, L)',
        'Special stitches:',
        'Shell: 5 dc in next st.',
        'V-st = (dc, ch 1, dc) in next st',
        'Large shell (lgsh): 7 dc in next st.',
        'mg (marigold st) – (dc, ch 3, dc) in next sp',
        'Picot: ch 3, sl st in 3rd ch from hook.',
        'Ch 3 counts as first dc throughout.',
        'Turning ch does not count as a st.',
        '',
        'Back (make 2)',
        'Ch 38 (42, 46). Row 1: Sc in 2nd ch from hook and in each ch across. 37 (41, 45) sc.',
        'Row 2: Ch 1, turn, sc in each st across,',
        'ending with sc in last st. (37 sts)',
        'Row 3: As Row 2.',
        'Weave in ends.',
        '',
        'SLEEVE:',
        'Ch 20.',
        'Rows 2-4: Rep Row 2. Row 5: ch 1, mg in next sp, sc in each st across.',
        '',
        'Rnd 1: 6 sc in ring.',
        '',
        'Fasten off. Block to measurements.',
      ),
    ).toEqual([
      'sizes S M L',
      'piece Back (make 2)',
      '  shell = 5 t3 @ next 1 st',
      '  v st = (1 t3 @ ~next 1 st; ch 1; 1 t3 @ ~next 1 st) @ next 1 st',
      '  large shell/lgsh = 7 t3 @ next 1 st',
      '  mg/marigold st = (1 t3 @ ~next 1 st; ch 3; 1 t3 @ ~next 1 st) @ next 1 sp',
      '  picot = ch 3; 1 slip @ own-ch 3',
      '  3 =t3 throughout',
      '  tch =0',
      '  ch 38/42/46',
      '  row 1: 1 t1 @ hook 2 & each ch across {37/41/45 t1}',
      '  row 2: ch 1; turn; 1 t1 @ each st across; 1 t1 @ last 1 st {37 st}',
      '  row 3: rep row 2-2',
      'piece SLEEVE',
      '  ch 20',
      '  row 2-4: rep row 2-2',
      "  row 5: ch 1; 1 'mg' @ next 1 sp; 1 t1 @ each st across",
      'piece -',
      '  round 1: 6 t1 @ ring',
      '  fasten-off; aside',
      'prose-passed-over Weave in ends.',
    ]);
  });

  it('begins a piece only where a blank line and a fresh start meet', () => {
    expect(
      us('Ch 10.', '', 'Row 1: sc in each ch.', '', 'Row 2: sc in each st.', '', 'Row 1: dc in each st.'),
    ).toEqual([
      'piece -',
      '  ch 10',
      '  row 1: 1 t1 @ each ch end',
      '  row 2: 1 t1 @ each st end',
      'piece -',
      '  row 1: 1 t3 @ each st end',
    ]);
  });

  it('gives the rows under a line of sizes to those sizes', () => {
    expect(
      us(
        'Sizes: S (M, L)',
        'Row 1: sc across.',
        'Sizes M (L) only:',
        'Row 2: sc 3 (4).',
        'All sizes:',
        'Row 3: sc across.',
      ),
    ).toEqual([
      'sizes S M L',
      'piece -',
      '  row 1: 1 t1 @ each st across',
      '  <M|L> row 2: 1 t1 @ ~next 3/4 st',
      '  row 3: 1 t1 @ each st across',
    ]);
  });

  it('explains no trade word by itself', () => {
    expect(
      us(
        'Abbreviations:',
        'sc = single crochet',
        'ch: chain',
        'sl st – slip stitch',
        '',
        'Row 1: sc in each st.',
      ),
    ).toEqual([
      'piece -',
      '  row 1: 1 t1 @ each st end',
      'prose-passed-over sc = single crochet',
      'prose-passed-over ch: chain',
      'prose-passed-over sl st – slip stitch',
    ]);
  });

  it('says when a definition tells how loops are drawn', () => {
    expect(
      us(
        'Puff: (yo, insert hook in st, pull up a loop) 3 times, yo, draw through all.',
        'Row 1: puff in next st.',
      ),
    ).toEqual(['piece -', '  puff = UNREAD !definition-in-loops', "  row 1: 1 'puff' @ next 1 st"]);
  });

  it('has spans in the whole text', () => {
    const text = 'Back\n\nRow 1: sc in 2nd ch from hook, ddc in next ch.';
    const [piece] = readText(text, { terms: 'us' }).pieces;
    const [fact] = piece!.rows[0]!.facts;
    expect(text.slice(fact!.from, fact!.to)).toBe('ddc');
    expect(fact!.data).toEqual({ words: 'ddc', expected: 'stitch', suggestion: 'dc' });
  });

  it.each([
    ['Row 1: sl in each st across.', 'sl', 'sl st'],
    ['Row 1: sc2tg, sc across.', 'tg', 'tog'],
    ['Row 1: sc2qq, sc across.', 'qq', null],
  ])('names the word meant: %s', (text, words, suggestion) => {
    const [fact] = readText(text, { terms: 'us' }).pieces[0]!.rows[0]!.facts;
    expect(fact!.data).toMatchObject({ words, suggestion });
  });

  it('is empty for no text', () => {
    expect(readText('  \n\n ', { terms: 'us' })).toEqual({ sizes: null, pieces: [], facts: [] });
  });
});

describe('a row', () => {
  it('has figures in order', () => {
    const text = 'sc in next \uFFFC sts, dc in each of next \uFFFC sts, turn. (\uFFFC sts)';
    expect(row(readRow(text, { terms: 'us', figures: true }))).toBe(
      '1 t1 @ next #0 st; 1 t3 @ next #1 st; turn {#2 st}',
    );
  });

  it('without a label tells of one typed', () => {
    const tree = readRow('Row 3: sc 3', { terms: 'us', label: false });
    expect(tree.label).toBeNull();
    expect(tree.facts.map((fact) => fact.code)).toEqual(['label-not-expected']);
  });

  it('is not read when a part was not understood, however deep', () => {
    expect(readRow('*sc, (flurble, sc) twice; rep from * across', { terms: 'us' }).read).toBe(false);
    expect(readRow('*sc, (dc, sc) twice; rep from * across', { terms: 'us' }).read).toBe(true);
  });

  it('stops at too deep a nest and says so', () => {
    const tree = readRow(`${'(sc, '.repeat(40)}dc${') twice'.repeat(40)}`, { terms: 'us' });
    expect(tree.facts.map((fact) => fact.code)).toContain('too-deep');
  });
});

describe('names', () => {
  it.each([
    ['V-Stitch', 'v st'],
    ['v st', 'v st'],
    ['V-sts', 'v st'],
    ['Large  Shells', 'large shell'],
    ['Marigold Stitches', 'marigold st'],
    ['bush', 'bush'],
    ['Branches', 'branch'],
    ['Cross', 'cross'],
  ])('%s is %s', (written, name) => {
    expect(normaliseName(written)).toBe(name);
  });

  it('are read in the body of a definition', () => {
    const { items: body, facts } = readItems('(tr, ch 1, tr) in next st', { terms: 'uk' });
    expect(items(body)).toBe('(1 t3 @ ~next 1 st; ch 1; 1 t3 @ ~next 1 st) @ next 1 st');
    expect(facts).toEqual([]);
  });
});

describe('a line that begins with a colon', () => {
  it('names no part', () => {
    expect(readText(': Ch 5.', { terms: 'us' }).pieces).toHaveLength(1);
  });
});
