import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const folder = new URL('../../resources/trade/', import.meta.url);
const SCALE = [
  'published',
  'published-secondary',
  'memory',
  'memory-low',
  'common-practice',
  'derived',
  'gap',
];

/** Every value under a key that speaks of certainty, at any depth. */
function certainties(value: unknown, inside = false): unknown[] {
  if (typeof value === 'string') return inside ? [value] : [];
  if (Array.isArray(value)) return value.flatMap((item) => certainties(item, inside));
  if (value === null || typeof value !== 'object') return inside ? [value] : [];
  return Object.entries(value).flatMap(([key, item]) => certainties(item, inside || /certainty/i.test(key)));
}

describe.each(readdirSync(folder).filter((name) => name.endsWith('.json')))('%s', (name) => {
  const text = readFileSync(new URL(name, folder), 'utf8');
  const data = JSON.parse(text) as Record<string, unknown>;

  it('names sources without addresses', () => {
    expect(text).not.toMatch(/https?:|www\.|\b[a-z0-9-]+\.(?:com|net|org|uk|de|fi|eu)\b/i);
  });
  it('marks how sure each datum is, in the words of the scale', () => {
    const { certainty: _scale, ...rest } = data;
    const used = certainties(rest);
    expect(used.length).toBeGreaterThan(0);
    for (const value of used) expect(SCALE).toContain(value);
  });
  it('gives a source to what was read at one', () => {
    const walk = (value: unknown): void => {
      if (value === null || typeof value !== 'object') return;
      const { certainty, source } = value as { certainty?: unknown; source?: unknown };
      if (certainty === 'published-secondary' && Array.isArray(source)) expect(source).not.toEqual([]);
      for (const item of Object.values(value)) walk(item);
    };
    walk(data);
  });
});
