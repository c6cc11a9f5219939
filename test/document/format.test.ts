import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { ATTRIBUTES } from '../../core/document/attributes.ts';
import { FORMAT } from '../../core/document/container.ts';
import { FILE_LIMITS, TREE_LIMITS, VALUE_LIMITS } from '../../core/document/limits.ts';
import { MIGRATIONS, VERSION } from '../../core/document/migrations.ts';
import { REFUSAL_CODES } from '../../core/document/refusals.ts';
import { schema } from '../../core/document/schema.ts';

const page = readFileSync(new URL('../../resources/format.md', import.meta.url), 'utf8');
const MiB = 1024 * 1024;

/** Numbers as the page writes them. */
const written = (value: number): string =>
  value >= MiB && value % MiB === 0 ? `${value / MiB} MiB` : value.toLocaleString('en-US');

describe('the description of the format', () => {
  test.each(Object.entries({ ...FILE_LIMITS, ...TREE_LIMITS, ...VALUE_LIMITS }))(
    'tells the limit %s',
    (_, value) => {
      expect(page).toMatch(new RegExp(`(^|[^\\d,])${written(value)}($|[^\\d,])`, 'm'));
    },
  );

  test.each(REFUSAL_CODES.map((code) => [code]))('lists the refusal %s', (code) => {
    expect(page).toContain(`\`${code}\``);
  });

  test.each(Object.keys(schema.nodes).map((kind) => [kind]))('describes the node %s', (kind) => {
    const section = page.split('\n').filter((line) => line.startsWith(`| \`${kind}\``));
    expect(section).toHaveLength(1);
    for (const name of Object.keys(ATTRIBUTES[kind as keyof typeof ATTRIBUTES] ?? {})) {
      expect(section[0], name).toContain(`\`${name}\``);
    }
  });

  test('names the format, the version and every change', () => {
    expect(page).toContain(`"format": "${FORMAT}"`);
    expect(page).toContain(`"version": ${VERSION}`);
    for (const { change } of MIGRATIONS) expect(page).toContain(change);
  });
});
