/** How grave a finding is, in words: the same in every place. */
import type { Severity } from '../../core/finding.ts';

export const SEVERITY_WORDS: Readonly<Record<Severity, string>> = {
  error: 'Mistake',
  warning: 'Look at this',
  note: 'Note',
};
