import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { command } from './harness.ts';

const rows = (text: string | Uint8Array, ...more: string[]) =>
  command(['rows', '-', '--terms', 'us', ...more], { stdin: text });

// Counts: each is worked by hand from the row before (common practice, no source).
describe('rows for people', () => {
  test('one size, right', async () => {
    const text = [
      'Ch 20.',
      'Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (19 sc)',
      'Row 2: Ch 3 (counts as dc), dc in next st, *ch 1, sk 1 st, dc in next st; rep from * to last st, dc in last st, turn.',
    ].join('\n');
    const { code, out, err } = await rows(text);
    expect(out).toBe(
      `Foundation  20  ch
Row 1 (RS)  19  sc
Row 2       11  dc, 8 ch-sps

3 rows: nothing to put right.
`,
    );
    expect([code, err]).toEqual([0, '']);
  });

  test('three sizes, with a repeat that does not fit in two of them', async () => {
    const text = `Sizes: S (M, L)

Back
Ch 20 (24, 28).
Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. 19 (23, 27) sc
Row 2: Ch 1, *sc in next 2 sts, 3 dc in next st; rep from * across, turn.
`;
    const { code, out } = await rows(text);
    expect(out).toMatch(
      /^Back\n {12} S {3}M {3}L\nFoundation {2}20 {2}24 {2}28 {2}ch\nRow 1 \(RS\) {2}19 {2}23 {2}27 {2}sc\nRow 2 {2}/,
    );
    expect(out).toContain('    error: ');
    expect(out).toContain('This row works on a multiple of 3.');
    expect(out).toMatch(
      /\n {6}6 \| .*\*sc in next 2 sts, 3 dc in next st; rep from \* across.*\n {8}\| +\^+\n/,
    );
    expect(out).toMatch(/\n3 rows: 1 error\.\n$/);
    expect(code).toBe(1);
  });

  test('no line is wider than 80 columns, whatever the text', async () => {
    const sizes = Array.from({ length: 14 }, (_, i) => 100 + 10 * i);
    const list = `${sizes[0]} (${sizes.slice(1).join(', ')})`;
    const text = `Ch ${list}.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. ${'x'.repeat(300)} ${'y '.repeat(200)}`;
    const { out } = await rows(text);
    for (const line of out.split('\n')) expect([...line].length).toBeLessThanOrEqual(80);
    expect(out.replace(/\s+/g, ' ')).toContain(`Foundation ${sizes.join(' ')}`);
  });

  test('the words concerned stand over the carets, also after wide letters', async () => {
    const { out } = await rows('Ch 10.\nRow 1 毛糸 é: Sc in 2nd ch from hook, flarb in each ch across.');
    const lines = out.split('\n');
    const at = lines.findIndex((line) => /\^{5}$/.test(line) && line.includes('|'));
    expect(at).toBeGreaterThan(0);
    expect(out).toContain('flarb');
  });

  test('a pattern cannot speak to the terminal', async () => {
    const { out } = await rows('Ch 10.\n\u001B[2JRow 1: \u001B]0;x\u0007flarb \u202Eyarn in each ch.');
    for (const character of ['\u001B', '\u0007', '\u202E']) expect(out).not.toContain(character);
  });

  test('Windows line ends, old Macintosh ones and a mark at the start change nothing', async () => {
    const lines = [
      'Ch 20.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Row 2: Ch 1, sc across.',
    ];
    const plain = await rows(lines.join('\n'));
    expect(plain.out).toContain('Row 2       19  sc');
    for (const text of [lines.join('\r\n'), `\uFEFF${lines.join('\n')}\n`]) {
      expect((await rows(text)).out).toBe(plain.out);
    }
    const wide = Buffer.from(`\uFEFF${lines.join('\r\n')}`, 'utf16le');
    expect((await rows(wide)).out).toBe(plain.out);
  });

  test('text of an old word processor is read', async () => {
    const old = Buffer.from(
      'Ch 20.\nRow 1: Sc in 2nd ch from hook and in each ch across \x96 19 sc.',
      'latin1',
    );
    const { out, code } = await rows(old);
    expect(out).toContain('Row 1       19  sc');
    expect(code).toBe(0);
  });

  test('the same note is shown once', async () => {
    const { out, code } = await rows(
      'Magic ring.\nRnd 1: 6 sc in ring.\nRnd 2: inc around.\nRnd 3: (sc, inc) 6 times.',
    );
    expect(out).toBe(`Foundation   –  ring
Rnd 1        6  sc
Rnd 2       12  sc
    note: "inc" is read as 2 sc in one stitch; the abbreviations should say so.
      3 | Rnd 2: inc around.
        |        ^^^
Rnd 3       18  sc

4 rows: 2 notes (the same note is shown once).
`);
    expect(code).toBe(0);
  });

  test('nothing at all is no mistake', async () => {
    expect(await rows('')).toEqual({ code: 0, out: '0 rows: nothing to put right.\n', err: '' });
  });
});

describe('colour', () => {
  const wrong = { stdin: 'Ch 10.\nRow 1: flarb in each ch across.', terminal: 100 };
  const words = ['rows', '-', '--terms', 'us'];
  const sequence = '\u001B[';

  test.each<[string, Parameters<typeof command>[1], boolean]>([
    ['a pipe', { ...wrong, terminal: undefined as never }, false],
    ['a terminal', wrong, true],
    ['NO_COLOR', { ...wrong, env: { NO_COLOR: '1' } }, false],
    ['NO_COLOR set to nothing', { ...wrong, env: { NO_COLOR: '' } }, true],
    ['a terminal that cannot', { ...wrong, env: { TERM: 'dumb' } }, false],
  ])('%s', async (_, setting, coloured) => {
    expect((await command(words, setting)).out.includes(sequence)).toBe(coloured);
  });

  test('a narrow terminal gets narrow lines', async () => {
    const { out } = await command(words, { ...wrong, terminal: 50, env: { NO_COLOR: '1' } });
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(50);
  });
});

describe('rows for programs', () => {
  test('the shape is that of the contract', async () => {
    const { out, code } = await rows(
      'Ch 20 (24).\nRow 1: Sc in 2nd ch from hook and in each ch across. Flarb.',
      '--json',
    );
    const report = JSON.parse(out);
    expect(Object.keys(report)).toEqual(expect.arrayContaining(['terms', 'rows', 'findings']));
    expect(report.terms).toBe('us');
    const [chain, row] = report.rows;
    expect(chain).toMatchObject({ kind: 'foundation', text: 'Ch 20 (24).', counts: [20, 24], read: true });
    expect(row).toMatchObject({ label: 'Row 1', kind: 'row', counts: [19, 23], spaces: [0, 0], read: false });
    expect(row.byKind).toEqual({ sc: [19, 23] });
    for (const name of ['from', 'to', 'repeats', 'findings']) expect(row).toHaveProperty(name);
    const [finding] = row.findings;
    expect(Object.keys(finding).sort()).toEqual(['code', 'from', 'message', 'severity', 'sizes', 'to']);
    expect(finding.severity).toBe('error');
    expect(code).toBe(1);
  });
});

describe('multiple', () => {
  // Common practice, no source: an open mesh of ch-2 spaces works on a multiple of 3 plus 5 chains.
  const mesh =
    'Ch 50.\nRow 1: Dc in 8th ch from hook, *ch 2, sk 2 ch, dc in next ch; rep from * across, turn.';

  test('for people', async () => {
    expect(await command(['multiple', '-', '--terms', 'us'], { stdin: mesh })).toEqual({
      code: 0,
      out: 'These rows work on a multiple of 3 chains plus 5: 8, 11, 14, 17 and so on.\n',
      err: '',
    });
  });

  test('for programs', async () => {
    const { out, code } = await command(['multiple', '-', '--terms', 'us', '--json'], { stdin: mesh });
    expect(JSON.parse(out)).toEqual({ multiple: 3, plus: 5, from: 8 });
    expect(code).toBe(0);
  });

  test('any number', async () => {
    const stdin = 'Ch 20.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.';
    const { out } = await command(['multiple', '-', '--terms', 'us'], { stdin });
    expect(out).toBe('These rows work on any number of chains from 2: one for each stitch, and 1 more.\n');
  });

  test('none', async () => {
    const { code, out, err } = await command(['multiple', '-', '--terms', 'us', '--json'], {
      stdin: 'Hello.',
    });
    expect([code, out]).toEqual([1, 'null\n']);
    expect(err).toMatch(/^turnchain multiple: No multiple was found\./);
  });
});

describe('translate', () => {
  const translate = (stdin: string, from: string, to: string) =>
    command(['translate', '-', '--from', from, '--to', to], { stdin });

  test('the text and nothing else goes to standard output', async () => {
    const { out, err, code } = await translate('Row 1: Ch 3, dc in each st,\r\n  skip 1. ', 'us', 'uk');
    expect([out, err, code]).toEqual(['Row 1: Ch 3, tr in each st,\r\n  miss 1. ', '', 0]);
  });

  test('and back', async () => {
    expect((await translate('Row 1: tr in each st, miss 1.', 'uk', 'us')).out).toBe(
      'Row 1: dc in each st, skip 1.',
    );
    expect((await translate('dc', 'us', 'us')).out).toBe('dc');
  });
});

describe('any text', () => {
  const scraps = fc.constantFrom(
    'Row 1:', 'Rnd 2 ', 'ch 3', ', ', 'dc in next st', '*', '; rep from * across', '(', ')', '[', ']',
    'sc2tog', '20 (24, 28)', '\n', '\r\n', 'Rep Rows 2-5', 'to last 3 sts', 'turn.', '–', '½', '毛', '\u0000', '\u001B',
  ); // biome-ignore format: one line of scraps is easier to read
  const anything = fc.oneof(
    fc.array(scraps, { maxLength: 30 }).map((all) => all.join(' ')),
    fc.string({ unit: 'binary', maxLength: 80 }),
  );
  test('never throws, and ends with 0 or 1', async () => {
    await fc.assert(
      fc.asyncProperty(anything, fc.constantFrom('us', 'uk'), async (stdin, terms) => {
        const other = terms === 'us' ? 'uk' : 'us';
        for (const words of [
          ['rows', '-', '--terms', terms],
          ['rows', '-', '--terms', terms, '--json'],
          ['multiple', '-', '--terms', terms],
          ['translate', '-', '--from', terms, '--to', other],
        ]) {
          const { code, out } = await command(words, { stdin });
          expect([0, 1]).toContain(code);
          if (words.includes('--json')) expect(() => JSON.parse(out)).not.toThrow();
        }
      }),
      { numRuns: 150 },
    );
  });
});
