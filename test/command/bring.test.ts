/** `turnchain bring`: a file from words, the report, what is asked and refused. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { openPattern } from '../../app/services/files.ts';
import { project } from '../../core/document/project.ts';
import { command } from './harness.ts';

const folder = mkdtempSync(join(tmpdir(), 'bring-'));
afterAll(() => rmSync(folder, { recursive: true }));

let files = 0;
function file(words: string, name = `old-${++files}.txt`): string {
  writeFileSync(join(folder, name), words);
  return join(folder, name);
}
const target = () => join(folder, `new-${++files}.turnchain`);

// 11 chains leave 10 sc; the second row gains one.
const COWL = `Sea Cowl
Sizes: S (M)
Ch 11 (13).
Row 1: Sc in 2nd ch from hook and in each ch across, turn. (10 (12) sc)
Row 2: Ch 1, 2 sc in first st, sc in each st across, turn. (11 (13) sc)
`;

test('a text becomes a pattern, and the report tells how much was followed', async () => {
  const out = target();
  const ran = await command(['bring', file(COWL), '--out', out]);
  expect(ran).toMatchObject({ code: 0, err: '' });
  expect(ran.out).toContain('3 of 3 rows are followed.');
  const opened = await openPattern(out);
  if (!opened.ok) throw new Error(opened.error.message);
  const { about, sizes, pieces } = project(opened.document);
  expect([about.title, about.date, sizes.map(({ label }) => label), pieces.length]).toEqual([
    'Sea Cowl',
    '2024-05-01',
    ['S', 'M'],
    1,
  ]);
});

test('what needs the maker is listed with its place, and kept in the file', async () => {
  const out = target();
  const ran = await command(['bring', file(COWL.replace('11 (13) sc', '12 (13) sc')), '--out', out]);
  expect(ran.code).toBe(1);
  expect(ran.out).toContain('2 of 3 rows are followed; 1 needs you.');
  expect(ran.out).toMatch(/Sea Cowl, Row 2: .*\n.*\n? {4}\S/);
  const opened = await openPattern(out);
  if (!opened.ok) throw new Error(opened.error.message);
  expect(project(opened.document).workbook.doubts).toHaveLength(1);
});

test('the pictures of a document come along, without what was written into them besides', async () => {
  const out = target();
  const ran = await command([
    'bring',
    join(import.meta.dirname, '../intake/files/cardigan.docx'),
    '--out',
    out,
  ]);
  expect(ran.out).toContain('3 pictures came along.');
  const opened = await openPattern(out);
  if (!opened.ok) throw new Error(opened.error.message);
  const { about, pieces } = project(opened.document);
  const photos = pieces.flatMap(({ blocks }) =>
    blocks.flatMap((block) => (block.type === 'photo' ? [block.media] : [])),
  );
  const sides = [about.cover!, ...photos].map(({ id }) => {
    const { kind, width, height } = opened.media.get(id)!;
    return [kind, width, height];
  });
  // As they were put into the document.
  expect(sides).toEqual([
    ['png', 80, 50],
    ['jpeg', 60, 90],
    ['jpeg', 50, 50],
  ]);
});

test('for programs', async () => {
  const ran = await command(['bring', '-', '--out', target(), '--json'], { stdin: COWL });
  expect(JSON.parse(ran.out)).toMatchObject({
    title: 'Sea Cowl',
    terms: 'us',
    rows: { written: 3, followed: 3 },
    sizes: ['S', 'M'],
    doubts: [],
    leftOut: [],
  });
});

test('terms that the words do not show are asked for', async () => {
  const vague = file('Cowl\nCh 24.\nRow 1: Dc in each ch across.\n');
  const asked = await command(['bring', vague, '--out', target()]);
  expect(asked.code).toBe(2);
  expect(asked.err).toContain('--terms us or --terms uk');
  expect((await command(['bring', vague, '--out', target(), '--terms', 'uk'])).code).not.toBe(2);
});

test('nothing that is there is replaced, and what is no text is told', async () => {
  const there = file('precious', 'there.turnchain');
  const ran = await command(['bring', file(COWL), '--out', there]);
  expect(ran.code).toBe(2);
  expect(readFileSync(there, 'utf8')).toBe('precious');
  expect((await command(['bring', file(COWL)])).err).toContain('--out');
  const empty = await command(['bring', file(' \n'), '--out', target()]);
  expect(empty).toMatchObject({ code: 2 });
  expect(empty.err).toContain('no words');
});
