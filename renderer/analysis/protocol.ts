/**
 * What the page and the worker say to each other. Edits cross as ProseMirror steps, so that the worker's copy
 * of the document keeps the identity of all that was not touched; results cross as what changed.
 */
import type { LineRule } from '../../core/document/attributes.ts';
import type { DrawingChoice, DrawingsReport } from './drawings.ts';
import type {
  AbbreviationsReport,
  BlockReport,
  FigureReport,
  FigureTrial,
  FindingReport,
  LineReport,
  LineTrial,
  MaterialsReport,
  PieceReport,
  Report,
} from './report.ts';
import type { PersonReport, WorkbookReport } from './workbook-report.ts';

export type ToWorker =
  | { readonly kind: 'document'; readonly version: number; readonly document: unknown }
  /** Steps that lead from the version before to `version`. */
  | { readonly kind: 'steps'; readonly version: number; readonly steps: readonly unknown[] }
  /** What would this expression show? Answered with the same serial. */
  | { readonly kind: 'figure-asked'; readonly serial: number; readonly expression: string }
  /** What would this line come to by another rule? Answered with the same serial. */
  /** What is on screen and worth its time: the workbook's numbers, and whose own column. */
  | ({ readonly kind: 'watched' } & Watched)
  | { readonly kind: 'line-asked'; readonly serial: number; readonly id: string; readonly rule: LineRule }
  /** The drawings of the newest state. Answered with the same serial. */
  | { readonly kind: 'drawings-asked'; readonly serial: number; readonly choice: DrawingChoice };

/** Reports that are made only while they are looked at. */
export interface Watched {
  readonly workbook: boolean;
  /** Id of the person whose column is shown, or null. */
  readonly person: string | null;
  /** The printed lists of abbreviations. */
  readonly abbreviations: boolean;
}

export const NOTHING_WATCHED: Watched = { workbook: false, person: null, abbreviations: false };

export type FromWorker =
  | ({ readonly kind: 'changes' } & Changes)
  /** The worker's copy is not what the steps were made for: it asks for the whole document. */
  | { readonly kind: 'lost' }
  | { readonly kind: 'figure-told'; readonly serial: number; readonly trial: FigureTrial }
  | { readonly kind: 'line-told'; readonly serial: number; readonly trial: LineTrial }
  | { readonly kind: 'drawings-told'; readonly serial: number; readonly drawings: DrawingsReport };

/** What became different since the last message; a list that is left out is as it was. */
export interface Changes {
  readonly version: number;
  readonly sizes?: Report['sizes'];
  readonly lines?: readonly LineReport[];
  readonly lineOrder?: readonly string[];
  /** All expressions, with the lists of those that show the same as before kept by the page. */
  readonly figures?: readonly (readonly [string, FigureReport])[];
  readonly pieces?: readonly PieceReport[];
  readonly blocks?: readonly BlockReport[];
  readonly goneBlocks?: readonly string[];
  readonly findings?: readonly FindingReport[];
  readonly accepted?: Report['accepted'];
  readonly materials?: MaterialsReport;
  readonly workbook?: WorkbookReport | null;
  readonly person?: PersonReport | null;
  readonly abbreviations?: AbbreviationsReport | null;
}

/** The report after the changes. Untouched parts keep their identity. */
export function applyChanges(report: Report, changes: Changes): Report {
  let { sizes, lines, figures, pieces, blocks, findings, byNode } = report;
  const materials = changes.materials ?? report.materials;
  const accepted = changes.accepted ?? report.accepted;
  const workbook = changes.workbook === undefined ? report.workbook : changes.workbook;
  const person = changes.person === undefined ? report.person : changes.person;
  const abbreviations = changes.abbreviations === undefined ? report.abbreviations : changes.abbreviations;
  if (changes.sizes) sizes = changes.sizes;
  if (changes.lineOrder || changes.lines) {
    const next = new Map(lines);
    for (const line of changes.lines ?? []) next.set(line.id, line);
    const order = changes.lineOrder ?? [...next.keys()];
    lines = new Map(order.flatMap((id) => (next.has(id) ? [[id, next.get(id)!] as const] : [])));
  }
  if (changes.figures) figures = new Map(changes.figures);
  if (changes.pieces) pieces = changes.pieces;
  if (changes.blocks || changes.goneBlocks) {
    const next = new Map(blocks);
    for (const id of changes.goneBlocks ?? []) next.delete(id);
    for (const block of changes.blocks ?? []) next.set(block.id, block);
    blocks = next;
  }
  if (changes.findings) {
    findings = changes.findings;
    byNode = grouped(findings, byNode);
  }
  return {
    version: changes.version,
    sizes,
    lines,
    figures,
    pieces,
    blocks,
    findings,
    byNode,
    accepted,
    materials,
    workbook,
    person,
    abbreviations,
  };
}

/** Findings by node; a node whose findings say the same keeps its list. */
function grouped(findings: readonly FindingReport[], before: Report['byNode']): Report['byNode'] {
  const next = new Map<string | null, FindingReport[]>();
  for (const finding of findings) {
    const list = next.get(finding.where.node);
    if (list === undefined) next.set(finding.where.node, [finding]);
    else list.push(finding);
  }
  return new Map(
    [...next].map(([node, list]) => {
      const old = before.get(node);
      const same = old !== undefined && JSON.stringify(old) === JSON.stringify(list);
      return [node, same ? old : list];
    }),
  );
}
