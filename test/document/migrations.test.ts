import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { compose } from '../../core/document/compose.ts';
import { readContainer } from '../../core/document/container.ts';
import {
  MIGRATIONS,
  type Migration,
  upgrade,
  VERSION,
  versionAfter,
} from '../../core/document/migrations.ts';
import { project } from '../../core/document/project.ts';
import { NO_WORKBOOK } from '../../core/document/workbook.ts';
import { covered, fileOf, goodFile, goodTree } from './containers.ts';

/** An invented history: version 1 kept the designer beside the tree, version 2 called terms "english". */
const HISTORY: readonly Migration[] = [
  {
    from: 1,
    change: 'The designer moved to the cover.',
    migrate: ({ designer, ...file }) => {
      // biome-ignore lint/suspicious/noExplicitAny: an old file has no type any more
      const document = structuredClone(file.document) as any;
      document.content[0].attrs.designer = designer;
      return { ...file, document };
    },
  },
  {
    from: 2,
    change: '“english” became “terms”.',
    migrate: (file) => {
      // biome-ignore lint/suspicious/noExplicitAny: an old file has no type any more
      const document = structuredClone(file.document) as any;
      const { english, ...attrs } = document.attrs;
      document.attrs = { ...attrs, terms: english };
      return { ...file, document };
    },
  },
];

/** The good tree as version 2 of the invented history had it. */
function older() {
  const tree = goodTree();
  const { terms, ...attrs } = tree.attrs;
  tree.attrs = { ...attrs, english: terms };
  return tree;
}

describe('older files', () => {
  test('the history is unbroken and ends at the version that is written', () => {
    expect(MIGRATIONS.map(({ from }) => from)).toEqual(MIGRATIONS.map((_, at) => at + 1));
    expect(VERSION).toBe(MIGRATIONS.length + 1);
    expect(versionAfter(HISTORY)).toBe(3);
  });

  test('a file goes through every migration after its version, in order', () => {
    const steps: number[] = [];
    const chain = HISTORY.map((step) => ({
      ...step,
      migrate: (file: Readonly<Record<string, unknown>>) => {
        steps.push(step.from);
        expect(file.version).toBe(step.from);
        return step.migrate(file);
      },
    }));
    const designer = 'A. Maker';
    const file = { format: 'turnchain', version: 1, designer, document: older() };
    expect(upgrade(file, 1, chain)).toMatchObject({ version: 3 });
    expect(steps).toEqual([1, 2]);
    expect(file.document.attrs.english).toBe('us');
  });

  test('reading migrates, says from where, and gives today’s document', () => {
    const read = readContainer(fileOf(older(), 2), HISTORY);
    expect(read.ok && [read.migratedFrom, read.document.eq(compose(covered))]).toEqual([2, true]);
    expect(read.ok && project(read.document)).toEqual(covered);
    const current = readContainer(fileOf(goodTree(), 3), HISTORY);
    expect(current.ok && current.migratedFrom).toBeNull();
    expect(readContainer(goodFile)).toMatchObject({ ok: true, migratedFrom: null });
  });

  test.each([
    ['a migration that finds nothing it expects', fileOf(null, 2), HISTORY, 'bad-structure'],
    ['a version with no migration of its own', fileOf(older(), 1), HISTORY.slice(1), 'bad-structure'],
    ['a version after the history', fileOf(older(), 4), HISTORY, 'newer-version'],
  ])('%s is refused', (_, bytes, chain, code) => {
    expect(readContainer(bytes, chain)).toMatchObject({ ok: false, error: { code } });
  });

  test('a file of version 1 opens as what it was, with empty records', () => {
    const bytes = readFileSync(new URL('files/version-1.turnchain', import.meta.url));
    const read = readContainer(bytes);
    expect(read.ok && read.migratedFrom).toBe(1);
    const pattern = read.ok ? project(read.document) : null;
    expect(pattern?.charts).toEqual([]);
    expect(pattern?.workbook).toEqual(NO_WORKBOOK);
    expect(pattern?.pieces.map(({ name, gauge }) => [name, gauge])).toEqual([['Hat', '']]);
    expect(pattern?.yarns.map(({ ballPrice }) => ballPrice)).toEqual([null]);
  });

  test('a newer file says which version it has and which is known', () => {
    const read = readContainer(fileOf(goodTree(), 7));
    expect(read.ok ? '' : read.error.message).toContain(`file version 7; this one reads up to ${VERSION}`);
  });
});
