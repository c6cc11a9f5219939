/**
 * Holds the multiples found from rows against those that makers know. The smallest count that is found must
 * itself lie on the multiple.
 */
import { describe, expect, test } from 'vitest';
import { findMultiple } from '../../core/study/multiple.ts';
import { multiples } from './multiple.cases.ts';
import type { FoundMultiple } from './types.ts';

describe('multiple of the foundation', () => {
  test.each(multiples.map((c) => [`${c.terms}: ${c.name}`, c] as const))('%s', (_name, c) => {
    const found: FoundMultiple | null = findMultiple(c.text, c.terms);
    expect(found, c.text).not.toBeNull();
    if (found === null) return;
    expect({ multiple: found.multiple, plus: found.plus % found.multiple }, c.text).toEqual({
      multiple: c.multiple,
      plus: c.plus % c.multiple,
    });
    expect(found.from % found.multiple).toBe(c.plus % c.multiple);
    expect(found.from).toBeGreaterThan(0);
    if (c.from !== undefined) expect(found.from).toBe(c.from);
  });
});
