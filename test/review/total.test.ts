/** Laws of the technical edit: it never fails, whatever the pattern, and points at what is there. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { review, textsOf } from '../../core/review/index.ts';
import { study } from '../../core/study/index.ts';
import { writtenTexts } from '../../core/study/written.ts';
import { anyPattern } from '../document/patterns.ts';
import { cleanPattern } from './builder.ts';

describe('the technical edit', () => {
  it('says something sound of any pattern', () => {
    fc.assert(
      fc.property(anyPattern, (pattern) => {
        const texts = [
          ...textsOf(pattern).map(({ node, text }) => [node, text] as const),
          ...[...writtenTexts(pattern)].map(([node, { text }]) => [node, text] as const),
        ];
        for (const { where, sizes, message, detail, code } of review(study(pattern))) {
          expect(message, code).not.toMatch(/undefined|NaN|\[object/);
          expect(detail ?? '').not.toMatch(/undefined|NaN|\[object/);
          expect(sizes.every((size) => size >= 0 && size < pattern.sizes.length)).toBe(true);
          expect(where.from).toBeGreaterThanOrEqual(0);
          const longest = Math.max(
            0,
            ...texts.map(([node, text]) => (node === where.node ? text.length : 0)),
          );
          expect(where.to).toBeLessThanOrEqual(longest);
        }
      }),
      { numRuns: 150 },
    );
  });

  it('gives the same list for the same study', () => {
    const known = study(cleanPattern());
    expect(review(known)).toBe(review(known));
  });

  it('does not depend on what the study remembers', () => {
    const before = study(cleanPattern());
    const pattern = { ...cleanPattern(), yarns: [] };
    expect(review(study(pattern, before))).toEqual(review(study(pattern)));
  });
});
