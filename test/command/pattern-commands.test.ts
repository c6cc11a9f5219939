import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { openPattern, savePattern } from '../../app/services/files.ts';
import { compose } from '../../core/document/compose.ts';
import type { Pattern } from '../../core/document/pattern.ts';
import { project } from '../../core/document/project.ts';
import { acceptanceOf, review } from '../../core/review/index.ts';
import { study } from '../../core/study/index.ts';
import { fileWith } from '../document/containers.ts';
import { command } from './harness.ts';
import { right, wrong } from './patterns.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'command-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

async function saved(pattern: Pattern, name = 'panel.turnchain'): Promise<string> {
  const path = join(folder, name);
  expect(await savePattern(path, compose(pattern), new Map())).toMatchObject({ ok: true });
  return path;
}

describe('report', () => {
  test('as JSON, with what is wrong and an exit code', async () => {
    const out = join(folder, 'edit.json');
    const { code, out: told } = await command(['report', await saved(wrong), '--out', out]);
    expect([code, told]).toEqual([1, `${out}\n`]);
    const report = JSON.parse(readFileSync(out, 'utf8'));
    expect(report).toMatchObject({ report: 1, title: 'Harbour vest', open: { error: 1 } });
    expect(report.parts[0].findings[0]).toMatchObject({ code: 'repeat-does-not-fit', row: 'Row 3' });
  });

  test('as a tagged PDF in the other terms', async () => {
    const out = join(folder, 'edit.pdf');
    const { code } = await command([
      'report',
      await saved(right),
      '--out',
      out,
      '--terms',
      'uk',
      '--paper',
      'letter',
    ]);
    expect(code).toBe(0);
    expect(readFileSync(out).subarray(0, 5).toString()).toBe('%PDF-');
  });

  test('tells which letters of a reason its fonts cannot print', async () => {
    const spoiled: Pattern = {
      ...right,
      notes: [...right.notes, { text: 'Mark the BOR with a thread.', figures: [] }],
    };
    const finding = review(study(spoiled)).find(({ code }) => code === 'abbreviation-not-explained')!;
    const accepted = [acceptanceOf(spoiled, finding, 'בסדר 🧶', '2026-11-27')];
    const path = await saved({ ...spoiled, workbook: { ...spoiled.workbook, accepted } });
    const { err } = await command(['report', path, '--out', join(folder, 'edit.pdf')]);
    expect(err).toContain('ב');
    expect(err).toContain('🧶');
    const json = join(folder, 'edit.json');
    await command(['report', path, '--out', json]);
    expect(JSON.parse(readFileSync(json, 'utf8')).accepted[0].why).toBe('בסדר 🧶');
  });

  test('says what is missing', async () => {
    const { code, err } = await command(['report', await saved(right), '--out', join(folder, 'edit.txt')]);
    expect(code).toBe(2);
    expect(err).toContain('ends in .pdf or .json');
  });
});

describe('check', () => {
  test('a right pattern', async () => {
    const { code, out, err } = await command(['check', await saved(right)]);
    // Counts worked by hand: 1 + 29 + 1 = 31 sc and 29 spaces over 60 sts, and 2 sc, 2 spaces more for each 4.
    expect(out).toBe(`Harbour vest
4 sizes, US terms

Back (make 2)
                           S   M   L  XL
Foundation                61  65  69  73  ch
Row 1 (RS)                60  64  68  72  sc
Row 2 (WS)                60  64  68  72  sc
Rows 3–20 (22, 24, 26)    60  64  68  72  sc
Row 21 (23, 25, 27) (RS)  31  33  35  37  sc, 29 (31, 33, 35) ch-sps

Nothing to put right.
`);
    expect([code, err]).toEqual([0, '']);
  });

  test('a wrong one', async () => {
    const { code, out } = await command(['check', await saved(wrong)]);
    expect(out).toContain('Row 3 (RS)  40  42  44  48  sc\n    error: This row works on a multiple of 3.');
    expect(out).toContain(
      '    | Ch 1, *sc in next 2 sts, sk 1 st; rep from * across. Fasten off.\n    |       ^^^^^^^^^^^^',
    );
    expect(out).toMatch(/\n\n1 error\.\n$/);
    expect(code).toBe(1);
  });

  test('for programs', async () => {
    const { code, out } = await command(['check', await saved(wrong), '--json']);
    const report = JSON.parse(out);
    expect(Object.keys(report)).toEqual(['title', 'sizes', 'findings', 'accepted', 'ledger']);
    expect(report).toMatchObject({ title: 'Harbour vest', sizes: ['S', 'M', 'L', 'XL'] });
    expect(report.ledger).toEqual([
      {
        piece: 'Back',
        rows: [
          {
            label: 'Foundation',
            side: null,
            counts: [61, 65, 69, 73],
            byKind: { ch: [61, 65, 69, 73] },
            spaces: [0, 0, 0, 0],
            text: 'Ch 61 (65, 69, 73).',
          },
          expect.objectContaining({ label: 'Row 1', side: 'RS', counts: [60, 64, 68, 72] }),
          expect.objectContaining({ label: 'Row 2', side: 'WS', byKind: { sc: [60, 64, 68, 72] } }),
          expect.objectContaining({ label: 'Row 3', side: 'RS' }),
        ],
      },
    ]);
    const [finding] = report.findings;
    expect(finding).toMatchObject({
      code: 'repeat-does-not-fit',
      severity: 'error',
      piece: 'Back',
      row: 'Row 3',
      sizes: [1, 2],
    });
    const text: string = report.ledger[0].rows[3].text;
    expect(text.slice(finding.from, finding.to)).toMatch(/^\*sc in next 2 sts.*across$/);
    expect(code).toBe(1);
  });

  test('what the maker accepted is counted and is no mistake any more', async () => {
    const studied = study(wrong);
    const errors = [...studied.findings, ...review(studied)].filter(({ severity }) => severity === 'error');
    const accepted = errors.map((finding) => acceptanceOf(wrong, finding, 'A half repeat.', '2026-11-25'));
    const { code, out } = await command([
      'check',
      await saved({ ...wrong, workbook: { ...wrong.workbook, accepted } }),
      '--json',
    ]);
    expect(errors.length).toBeGreaterThan(0);
    expect(code).toBe(0);
    const [first] = JSON.parse(out).accepted;
    expect(first).toMatchObject({
      code: 'repeat-does-not-fit',
      severity: 'error',
      reason: 'A half repeat.',
      date: '2026-11-25',
    });
    const told = await command([
      'check',
      await saved({ ...wrong, workbook: { ...wrong.workbook, accepted } }),
    ]);
    expect(told.out).toMatch(/; 1 accepted by the maker\.\n$/);
  });

  test('places after a figure are told in the words with the numbers', async () => {
    const [back] = right.pieces;
    const blocks = back!.blocks.map((block) =>
      block.id === 'row-0' && block.type === 'row'
        ? { ...block, text: { ...block.text, text: `Ch ${'\uFFFC'}, flarb.` } }
        : block,
    );
    const path = await saved({ ...right, pieces: [{ ...back!, blocks }] });
    const { out } = await command(['check', path, '--json']);
    const report = JSON.parse(out);
    const text: string = report.ledger[0].rows[0].text;
    expect(text).toBe('Ch 61 (65, 69, 73), flarb.');
    expect(
      report.findings.map(({ from, to }: { from: number; to: number }) => text.slice(from, to)),
    ).toContain('flarb');
  });

  test('from standard input', async () => {
    const stdin = readFileSync(await saved(right));
    expect((await command(['check', '-'], { stdin })).code).toBe(0);
  });
});

describe('export', () => {
  const run = (path: string, ...more: string[]) =>
    command(['export', path, '--out', join(folder, 'pdf', 'deep'), ...more]);
  const names = () => readdirSync(join(folder, 'pdf', 'deep')).sort();

  test('every combination in one run', async () => {
    const path = await saved(right);
    const { code, out, err } = await run(
      path,
      ...['--terms', 'us,uk', '--paper', 'letter,a4', '--sizes', 'all,M', '--edition', 'standard,large'],
    );
    expect([code, err]).toEqual([0, '']);
    expect(names()).toHaveLength(16);
    expect(names()).toContain('harbour-vest_uk_letter_large-print_size-m_v1.0.pdf');
    const lines = out.trim().split('\n');
    expect(lines).toHaveLength(16);
    for (const line of lines) {
      const [, at, pages] = /^(.+\.pdf) {2}(\d+) pages?$/.exec(line)!;
      expect(Number(pages)).toBeGreaterThan(0);
      expect(readFileSync(at!).subarray(0, 5).toString()).toBe('%PDF-');
    }
  });

  test('one file when nothing is chosen, and the same bytes again', async () => {
    const path = await saved(right);
    expect((await run(path)).code).toBe(0);
    const [name] = names();
    expect(name).toBe('harbour-vest_us_a4_standard_all-sizes_v1.0.pdf');
    const before = readFileSync(join(folder, 'pdf', 'deep', name!));
    expect((await run(path)).code).toBe(0);
    expect(names()).toEqual([name]);
    expect(readFileSync(join(folder, 'pdf', 'deep', name!)).equals(before)).toBe(true);
  });

  test.each<[string, readonly string[], readonly string[]]>([
    ['each', ['--sizes', 'each'], ['l', 'm', 's', 'xl']],
    ['labels with commas, whatever their capitals', ['--sizes', 's,XL'], ['s', 'xl']],
    ['labels one after the other', ['--sizes', 'S', 'M'], ['m', 's']],
    ['labels given twice', ['--sizes', 'S,S', '--sizes', 'S'], ['s']],
  ])('sizes: %s', async (_, words, sizes) => {
    expect((await run(await saved(right), ...words)).code).toBe(0);
    expect(names()).toEqual(sizes.map((size) => `harbour-vest_us_a4_standard_size-${size}_v1.0.pdf`));
  });

  test('labels before the file', async () => {
    const path = await saved(right);
    const { code } = await command(['export', '--out', folder, '--sizes', 'S', 'M', path]);
    expect(code).toBe(0);
    expect(readdirSync(folder).filter((name) => name.endsWith('.pdf'))).toHaveLength(2);
  });

  test('a pattern with errors is not exported', async () => {
    const { code, out, err } = await run(await saved(wrong));
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain('This row works on a multiple of 3.');
    expect(err).toMatch(/Nothing was exported: .*--anyway\.\n$/);
    expect(existsSync(join(folder, 'pdf'))).toBe(false);
  });

  test('unless it is asked for all the same', async () => {
    const { code, out, err } = await run(await saved(wrong), '--anyway');
    expect(code).toBe(1);
    expect(out).toMatch(/\.pdf {2}\d+ pages?\n$/);
    expect(err).toContain('The pattern has errors');
  });

  test('progress is for a person who watches', async () => {
    const path = await saved(right);
    const words = ['export', path, '--out', folder, '--terms', 'us,uk'];
    const { err } = await command(words, { terminal: 80 });
    expect(err).toContain('\r\u001B[K[1/2] harbour-vest_us_a4_standard_all-sizes_v1.0.pdf');
    expect(err).toContain('[2/2] ');
    expect(err.endsWith('\r\u001B[K')).toBe(true);
    expect((await command(words)).err).toBe('');
  });

  test('an interrupted run leaves whole files only', async () => {
    const path = await saved(right);
    const stop = new AbortController();
    const out = join(folder, 'pdf');
    const {
      code,
      err,
      out: told,
    } = await command(['export', path, '--out', out, '--sizes', 'each', '--terms', 'us,uk'], {
      terminal: 80,
      signal: stop.signal,
      onError: (text) => {
        if (text.includes('[3/8]')) stop.abort();
      },
    });
    expect(code).toBe(130);
    expect(err).toContain('Stopped. 2 PDFs were written before and are whole.');
    expect(told.trim().split('\n')).toHaveLength(2);
    expect(readdirSync(out)).toHaveLength(2);
    for (const name of readdirSync(out)) {
      expect(readFileSync(join(out, name)).subarray(-6).toString()).toContain('%%EOF');
    }
  });
});

describe('new', () => {
  test('a blank pattern that opens', async () => {
    const path = join(folder, 'harbour-vest');
    const { code, out } = await command(['new', path, '--terms', 'uk', '--units', 'imperial']);
    expect([code, out]).toEqual([0, `${path}.turnchain\n`]);
    const opened = await openPattern(`${path}.turnchain`);
    if (!opened.ok) throw new Error(opened.error.message);
    const pattern = project(opened.document);
    expect(pattern).toMatchObject({ terms: 'uk', units: 'imperial' });
    expect(pattern.about).toMatchObject({ title: 'Harbour vest', date: '2024-05-01' });
  });

  test('a title', async () => {
    const path = join(folder, 'a.turnchain');
    await command(['new', path, '--title', 'Été “Nord”']);
    const opened = await openPattern(path);
    if (!opened.ok) throw new Error(opened.error.message);
    expect(project(opened.document).about.title).toBe('Été “Nord”');
  });

  test('a file that is there stays', async () => {
    const path = await saved(right);
    const before = statSync(path);
    const { code, err } = await command(['new', path]);
    expect(code).toBe(2);
    expect(err).toBe(
      'turnchain new: “panel.turnchain” is there already and stays as it is. Choose another name.\n',
    );
    expect(statSync(path).mtimeMs).toBe(before.mtimeMs);
  });

  test('an unknown example', async () => {
    const path = join(folder, 'b.turnchain');
    const { code, err } = await command(['new', path, '--example', 'sock']);
    expect(code).toBe(2);
    expect(err).toMatch(/^turnchain new: There is no example “sock”\. The examples are: /);
    expect(existsSync(path)).toBe(false);
  });
});

describe('exit codes and messages', () => {
  const there = async () => ({
    '@right': await saved(right, 'right.turnchain'),
    '@wrong': await saved(wrong, 'wrong.turnchain'),
    '@text': join(folder, 'rows.txt'),
    '@poor': join(folder, 'poor.txt'),
    '@bad': join(folder, 'bad.turnchain'),
    '@folder': folder,
    '@out': join(folder, 'out'),
    '@none': join(folder, 'none.txt'),
  });

  test.each<[number, string, RegExp]>([
    [0, '--version', /^turnchain \d+\.\d+\.\d+\n$/],
    [0, '--help', /Usage: turnchain COMMAND/],
    [0, 'help', /Usage: turnchain COMMAND/],
    [0, 'help rows', /^turnchain rows: /],
    [0, 'export --help', /^turnchain export: /],
    [0, 'multiple x -h --terms nonsense', /^turnchain multiple: /],
    [2, '', /Usage: turnchain COMMAND/],
    [2, 'knit', /There is no command “knit”\. The commands are rows, /],
    [2, '--verbose', /There is no option “--verbose”/],
    [2, 'help knit', /There is no command “knit”/],
    [0, 'rows @text --terms us', /nothing to put right/],
    [0, 'rows --terms=US @text', /nothing to put right/],
    [0, 'rows @text --terms uk', /warning: "Sc" is a US term/],
    [1, 'rows @poor --terms us', /error: /],
    [2, 'rows @text', /Say which terms .*--terms us or --terms uk/],
    [2, 'rows @text --terms', /The option --terms needs a value\.\nUsage: turnchain rows /],
    [2, 'rows @text --terms fr', /--terms takes us or uk, not “fr”/],
    [2, 'rows @text --terms us --colour', /There is no option --colour\.\nUsage: turnchain rows /],
    [2, 'rows @text --terms us --json=yes', /The option --json takes no value/],
    [2, 'rows --terms us', /Say which file: a text file, or - for standard input/],
    [2, 'rows @text @text --terms us', /One file at a time/],
    [2, 'rows @none --terms us', /There is no file “none\.txt”/],
    [2, 'rows @folder --terms us', /is a folder, not a file/],
    [2, 'rows @right --terms us', /use “turnchain check”/],
    [1, 'multiple @poor --terms us', /No multiple was found/],
    [0, 'multiple @text --terms us', /any number of chains/],
    [2, 'translate @text --from us', /Say from which terms into which/],
    [0, 'translate @text --from us --to uk', /^Ch 20/],
    [0, 'check @right', /Nothing to put right/],
    [1, 'check @wrong', /1 error\./],
    [2, 'check @text', /another kind of file\. Rows in plain text are checked with “turnchain rows”/],
    [2, 'check @bad', /There is no Turnchain pattern in this file/],
    [2, 'check @none', /There is no file/],
    [2, 'check', /Say which file: a \.turnchain file/],
    [2, 'export @right', /Say where the PDFs go: --out/],
    [2, 'export @right --out @text', /“rows\.txt” is a file, not a folder/],
    [2, 'export @right --out @text/deep', /is a file, not a folder/],
    [2, 'export @right --out @out --paper a5', /--paper takes a4 or letter, not “a5”/],
    [2, 'export @right --out @out --terms us,', /--terms takes us or uk, not “”/],
    [2, 'export @right --out @out --sizes S,XXL', /no size “XXL”\. Its sizes are S, M, L, XL/],
    [2, 'export @right --out @out --edition tiny', /--edition takes standard, large, /],
    [1, 'export @wrong --out @out', /Nothing was exported/],
    [2, 'new', /Say which file: the pattern file to make/],
    [2, 'new -', /needs the name of a file/],
    [2, 'new @folder/nowhere/x.turnchain', /The folder for “x\.turnchain” is not there/],
    [2, 'new @folder/y.turnchain --example hat --terms us', /leave --terms and --units away/],
  ])('%i: turnchain %s', async (expected, line, told) => {
    const paths = await there();
    writeFileSync(paths['@text'], 'Ch 20.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\n');
    writeFileSync(paths['@poor'], 'Row 1: Flarb in each st.\n');
    writeFileSync(paths['@bad'], fileWith('{}'));
    const words = line
      .split(' ')
      .filter(Boolean)
      .map((word) => word.replace(/^@\w+/, (name) => paths[name as keyof typeof paths]));
    const { code, out, err } = await command(words);
    expect(`${out}${err}`).toMatch(told);
    expect(code).toBe(expected);
    if (expected === 2) {
      expect(out).toBe('');
      // One sentence or two, and the usage at most: no stack, no codes.
      expect(err).not.toMatch(/ENOENT|EISDIR|at .*\.ts|undefined|\[object/);
    }
  });

  test('too much text is refused plainly', async () => {
    const stdin = Buffer.alloc(5 * 1024 * 1024 + 1, 'ch 3 ');
    const { code, err } = await command(['rows', '-', '--terms', 'us'], { stdin });
    expect(code).toBe(2);
    expect(err).toBe(
      'turnchain rows: What standard input holds is larger than 5 MB, more than any pattern. Give one pattern at a time.\n',
    );
  });
});
