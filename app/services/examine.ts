/**
 * A pattern with everything that is known about it: what checking and exporting begin with. It runs the study
 * and the technical edit and adds nothing of its own.
 */
import type { Node } from 'prosemirror-model';
import type { Pattern } from '../../core/document/pattern.ts';
import { project } from '../../core/document/project.ts';
import type { Finding } from '../../core/finding.ts';
import { review } from '../../core/review/review.ts';
import { type Study, study } from '../../core/study/study.ts';

export interface Examined {
  readonly pattern: Pattern;
  readonly study: Study;
  /** Of the study and of the technical edit. */
  readonly findings: readonly Finding[];
}

/** Studies and reviews a document. Total. */
export function examine(document: Node): Examined {
  const pattern = project(document);
  const studied = study(pattern);
  return { pattern, study: studied, findings: [...studied.findings, ...review(studied)] };
}
