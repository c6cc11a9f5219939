/**
 * A pattern with everything that is known about it: what checking and exporting begin with. It runs the study
 * and the technical edit and adds nothing of its own.
 */
import type { Node } from 'prosemirror-model';
import type { Pattern } from '../../core/document/pattern.ts';
import { project } from '../../core/document/project.ts';
import type { Finding } from '../../core/finding.ts';
import { type AcceptedFinding, settled } from '../../core/review/accepted.ts';
import { type Study, study } from '../../core/study/study.ts';

export interface Examined {
  readonly pattern: Pattern;
  readonly study: Study;
  /** Of the study and of the technical edit, but for what the maker accepted. */
  readonly findings: readonly Finding[];
  readonly accepted: readonly AcceptedFinding[];
}

/** Studies and reviews a document. Total. */
export function examine(document: Node): Examined {
  const pattern = project(document);
  const studied = study(pattern);
  const { open, accepted } = settled(studied);
  return { pattern, study: studied, findings: open, accepted };
}
