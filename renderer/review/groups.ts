/** Which place of the studio shows what a finding is about. It finds nothing itself. */
import type { Finding } from '../../core/finding.ts';
import type { FindingGroup } from '../../core/review/parts.ts';
import type { Place } from '../shell/studio.ts';

/** The place that shows what a finding is about. */
export function placeFor(part: FindingGroup['part'], finding: Finding): Place {
  if (part === 'sizes') return 'sizes';
  if (part === 'materials') return 'materials';
  if (part === 'whole' && /^(?:gauge|hook|yarn|abbreviation)-/.test(finding.code)) return 'materials';
  return 'write';
}
