/** The reference of all findings is generated; the file must be the one that the sources make now. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { REFERENCE, reference } from '../../app/command/reference.ts';
import { CATALOGUE } from '../../core/findings/index.ts';
import { PRINT_KINDS } from '../../core/print/kinds.ts';
import { ACCEPTANCE_STALE, RULES } from '../../core/review/index.ts';

describe('the reference of all findings', () => {
  const text = reference();

  it('is current (else run: npm run findings)', () => {
    expect(readFileSync(REFERENCE, 'utf8')).toBe(text);
  });

  it('has one entry for every code', () => {
    const codes = [...text.matchAll(/^### (.+)$/gm)].map((match) => match[1]);
    expect([...codes].sort()).toEqual(
      [...new Set([...CATALOGUE, ...RULES, ACCEPTANCE_STALE, ...PRINT_KINDS].map(({ code }) => code))].sort(),
    );
  });
});
