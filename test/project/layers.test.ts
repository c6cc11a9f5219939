/**
 * Holds the import rules: which folder may know which. The rules are the table of DEVELOPERS.md; what is not
 * allowed there is absent here by test, so that the core stays free of disk, clock, DOM and Electron.
 */
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';

const root = resolve(import.meta.dirname, '../..');

/** For each folder: folders of ours that it may import, and packages. `types:` marks imports of types alone, `file:` one module. */
const RULES: Readonly<
  Record<string, { ours: readonly string[]; packages: readonly string[]; node?: boolean }>
> = {
  'core/trade': { ours: ['core', 'resources/trade'], packages: ['fraction.js'] },
  'core/notation': { ours: ['core', 'core/trade'], packages: [] },
  'core/document': { ours: ['core', 'core/trade'], packages: ['prosemirror-model', 'zod', 'fflate'] },
  'core/grading': { ours: ['core', 'core/trade', 'types:core/document'], packages: ['fraction.js'] },
  'core/fabric': { ours: ['core', 'core/notation', 'core/trade'], packages: [] },
  'core/outlines': { ours: ['core', 'core/trade', 'core/document', 'core/grading'], packages: [] },
  'core/findings': { ours: ['core', 'core/trade'], packages: [] },
  'core/study': {
    ours: [
      'core',
      'core/trade',
      'core/notation',
      'core/document',
      'core/grading',
      'core/fabric',
      'core/findings',
    ],
    packages: [],
  },
  'core/intake': {
    ours: [
      'core',
      'core/trade',
      'core/notation',
      'core/document',
      'core/grading',
      'core/fabric',
      'core/findings',
      'core/study',
      'core/outlines',
    ],
    packages: ['fflate'],
  },
  'core/review': {
    ours: [
      'core',
      'core/trade',
      'core/notation',
      'core/document',
      'core/grading',
      'core/fabric',
      'core/findings',
      'core/study',
    ],
    packages: [],
  },
  'core/drawing': {
    ours: [
      'core',
      'core/trade',
      'core/notation',
      'core/document',
      'core/grading',
      'core/fabric',
      'core/findings',
      'core/study',
    ],
    packages: [],
  },
  'core/print': {
    ours: [
      'core',
      'core/trade',
      'core/notation',
      'core/document',
      'core/grading',
      'core/fabric',
      'core/findings',
      'core/study',
      'core/drawing',
      'types:core/review',
    ],
    packages: ['pdfkit', 'fontkit', 'pngjs'],
    node: true,
  },
  'app/host': { ours: ['types:core'], packages: [] },
  renderer: {
    ours: [
      'core',
      'core/trade',
      'core/notation',
      'core/document',
      'core/grading',
      'core/fabric',
      'core/findings',
      'core/study',
      'core/review',
      'core/outlines',
      'core/intake',
      'core/drawing',
      // Editions and papers by their names, and the words that an edition prints; how they look is print's own.
      'types:core/print',
      'file:core/print/edition.ts',
      'app/host',
      'resources/trade',
    ],
    packages: [
      'react',
      'react-dom',
      'prosemirror-commands',
      'prosemirror-history',
      'prosemirror-inputrules',
      'prosemirror-keymap',
      'prosemirror-model',
      'prosemirror-state',
      'prosemirror-transform',
      'prosemirror-view',
      'pdfjs-dist',
      'nspell',
      'dictionary-en',
      'dictionary-en-gb',
      'mammoth',
    ],
  },
  'app/services': {
    ours: ['core', 'app/host', 'resources'],
    packages: ['prosemirror-model', 'fflate', 'zod', 'mammoth'],
    node: true,
  },
  'app/loopback': { ours: ['core/document', 'app/host', 'app/services'], packages: ['zod'], node: true },
  'app/desktop': { ours: ['app/host', 'app/services'], packages: ['electron', 'zod'], node: true },
  'app/start': { ours: ['app/services', 'app/loopback'], packages: [], node: true },
  'app/command': {
    ours: ['core', 'app/services', 'resources'],
    packages: ['prosemirror-model', 'string-width'],
    node: true,
  },
};

function filesUnder(folder: string): readonly string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    if (statSync(path).isDirectory()) return filesUnder(path);
    return /\.tsx?$/.test(name) ? [path] : [];
  });
}

interface Import {
  readonly from: string;
  readonly typeOnly: boolean;
}

function importsOf(file: string): readonly Import[] {
  const source = readFileSync(file, 'utf8');
  const found: Import[] = [];
  for (const match of source.matchAll(/^(?:import|export)\s+(type\s+)?[^'";]*?from\s+'([^']+)'/gm)) {
    found.push({ from: match[2]!, typeOnly: match[1] !== undefined });
  }
  for (const match of source.matchAll(/(?:^|[^\w.])import\(\s*'([^']+)'\s*\)/gm))
    found.push({ from: match[1]!, typeOnly: false });
  for (const match of source.matchAll(/^import\s+'([^']+)'/gm))
    found.push({ from: match[1]!, typeOnly: false });
  return found;
}

function folderOf(path: string): string {
  const parts = relative(root, path).split('/');
  if (parts[0] === 'resources') return parts.length > 2 ? `resources/${parts[1]}` : 'resources';
  if (parts[0] === 'core' && parts.length === 2) return 'core';
  if (parts[0] === 'renderer') return 'renderer';
  return parts.slice(0, 2).join('/');
}

describe('every folder imports only what it may', () => {
  for (const [folder, rule] of Object.entries(RULES)) {
    test(folder, () => {
      const broken: string[] = [];
      for (const file of filesUnder(join(root, folder))) {
        for (const { from, typeOnly } of importsOf(file)) {
          const where = relative(root, file);
          if (from.startsWith('.')) {
            const path = resolve(dirname(file), from);
            const target = folderOf(path);
            if (target === folder) continue;
            const allowed = rule.ours.some(
              (ours) =>
                ours === target ||
                (ours.startsWith('file:') && ours.slice(5) === relative(root, path)) ||
                (ours === 'core' && folder.startsWith('app') && target.startsWith('core')) ||
                (ours.startsWith('types:') && typeOnly && ours.slice(6) === target) ||
                (ours === 'types:core' && typeOnly && target.startsWith('core')) ||
                (ours === 'resources' && target.startsWith('resources')),
            );
            if (!allowed) broken.push(`${where} imports ${typeOnly ? 'types of ' : ''}${target}`);
          } else if (from.startsWith('node:')) {
            if (!rule.node) broken.push(`${where} imports ${from}`);
          } else {
            const name = from.startsWith('@') ? from.split('/').slice(0, 2).join('/') : from.split('/')[0]!;
            if (!rule.packages.includes(name)) broken.push(`${where} imports the package ${name}`);
          }
        }
      }
      expect(broken).toEqual([]);
    });
  }

  test('no folder of the core is without a rule', () => {
    const folders = readdirSync(join(root, 'core')).filter((name) =>
      statSync(join(root, 'core', name)).isDirectory(),
    );
    const ruled = folders.filter((name) => filesUnder(join(root, 'core', name)).length > 0);
    expect(ruled.filter((name) => !(`core/${name}` in RULES))).toEqual([]);
  });
});

describe('the house style that a reader can rely on', () => {
  const sources = ['core', 'app', 'renderer', 'test'].flatMap((folder) => filesUnder(join(root, folder)));

  test('every module of core and app opens with a sentence that says what it is for', () => {
    const bare = sources.filter((file) => {
      if (file.includes('/test/') || file.endsWith('index.ts')) return false;
      return !/^(#!.*\n)?\/\*\*/.test(readFileSync(file, 'utf8'));
    });
    expect(bare.map((file) => relative(root, file))).toEqual([]);
  });

  test('no clock, no chance and no console in the core', () => {
    const loose = sources.filter((file) => {
      if (!relative(root, file).startsWith('core/')) return false;
      return /\b(Date\.now|new Date\(\)|Math\.random|console\.)/.test(readFileSync(file, 'utf8'));
    });
    expect(loose.map((file) => relative(root, file))).toEqual([]);
  });

  test('no test is skipped or alone', () => {
    const marked = sources.filter((file) =>
      /\b(test|it|describe)\.(skip|only|todo)\b/.test(readFileSync(file, 'utf8')),
    );
    expect(
      marked.map((file) => relative(root, file)).filter((file) => !file.endsWith('layers.test.ts')),
    ).toEqual([]);
  });
});
