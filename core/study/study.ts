/**
 * From a pattern to everything known about it, on one page.
 *
 *     Pattern ──grade──▶ Sheet (every line, every size)
 *        │                  │
 *        ├──read──▶ trees   │  rows and definitions, once per text
 *        │           │      │
 *        └──work─────┴──────┴──▶ PieceStudy (every row, every size: fabric, counts, labels, sides)
 *                                      │
 *                                      └──tell──▶ findings
 *
 * Pure. With the study before an edit, everything that the edit did not reach comes back as the identical
 * object; a study from scratch is equal to it. Rules beyond grading and working live in `core/review`.
 */
import type { Pattern } from '../document/pattern.ts';
import type { Finding } from '../finding.ts';
import { gradeSheet, type Sheet } from '../grading/index.ts';
import { sheetFindings } from './findings.ts';
import { Memory } from './memory.ts';
import type { PieceStudy } from './piece-study.ts';
import { workPieces } from './pieces.ts';
import { type Readings, readPattern } from './reading.ts';

export interface Study {
  readonly pattern: Pattern;
  readonly sheet: Sheet;
  readonly readings: Readings;
  readonly pieces: readonly PieceStudy[];
  /** Of reading, grading and working; the technical edit adds its own. */
  readonly findings: readonly Finding[];
  /** What the next study may reuse. Not part of the result. */
  readonly memory: Memory;
}

/** Studies a pattern, reusing what it can of the study before the edit. Total. */
export function study(pattern: Pattern, previous: Study | null = null): Study {
  if (previous !== null && previous.pattern === pattern) return previous;
  const memory = previous?.memory ?? new Memory();
  const sheet = gradeSheet(
    pattern.sizes,
    pattern.lines,
    pattern.gauges,
    pattern.tolerance,
    previous?.sheet ?? null,
  );
  const readings = readPattern(pattern, previous?.readings ?? null);
  const pieces = workPieces(pattern, sheet, readings, memory, previous?.pieces ?? []);
  const findings = [
    ...sheetFindings(pattern, sheet),
    ...readings.findings,
    ...pieces.flatMap((piece) => piece.findings),
  ];
  return { pattern, sheet, readings, pieces, findings, memory };
}
