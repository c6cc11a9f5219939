/** Which place of the studio shows what a finding is about, and how findings are told apart. It finds nothing itself. */
import type { Finding } from '../../core/finding.ts';
import type { FindingGroup } from '../../core/review/parts.ts';
import type { Place } from '../shell/studio.ts';

/**
 * A key for each finding of a list, by what it is about: the same when others come before it or go, so that what has
 * the focus stays. Of several that are alike, their order among themselves.
 */
export function keysOf(findings: readonly Finding[]): readonly string[] {
  const met = new Map<string, number>();
  return findings.map(({ code, where }) => {
    const about = `${code} ${where.node} ${where.from}`;
    const nth = met.get(about) ?? 0;
    met.set(about, nth + 1);
    return `${about} ${nth}`;
  });
}

/** The place that shows what a finding is about. */
export function placeFor(part: FindingGroup['part'], finding: Finding): Place {
  if (part === 'sizes') return 'sizes';
  if (part === 'materials') return 'materials';
  if (part === 'whole' && /^(?:gauge|hook|yarn|abbreviation)-/.test(finding.code)) return 'materials';
  return 'write';
}
