/**
 * The ledger: each piece's rows with their labels and counts in every size, and each finding at the row it
 * belongs to, in words with the numbers filled in. What a screen or a machine lists; it knows neither, and it
 * works nothing out that the study does not hold.
 */
import { isBlankRow } from '../document/blank.ts';
import type { Block, FigureText, Pattern } from '../document/pattern.ts';
import type { Finding, Severity } from '../finding.ts';
import type { Sheet } from '../grading/index.ts';
import { type FilledText, filledText } from './filled.ts';
import { blockLabel, formOf } from './labels.ts';
import type { BlockStudy, PieceStudy } from './piece-study.ts';
import { kindName } from './rows.ts';
import type { Study } from './study.ts';
import { writtenTexts } from './written.ts';

/** A finding with its words. `from` and `to` count in `text`; `sizes` are indexes. */
export interface LedgerFinding {
  readonly code: string;
  readonly severity: Severity;
  readonly from: number;
  readonly to: number;
  readonly sizes: readonly number[];
  readonly message: string;
  /** The text it speaks of, numbers filled in; null when it speaks of no text. */
  readonly text: string | null;
}

export interface LedgerRow {
  readonly node: string;
  /** "Row 4–9 (11, 13)", without the side. */
  readonly label: string;
  /** "RS", "WS", a list of them where sizes differ, or null. */
  readonly side: string | null;
  /** Stitches after it, one number a size; null where the size does not work it, or nothing is written. */
  readonly counts: readonly (number | null)[];
  /** Stitches by the author's abbreviation; they add up to `counts`. */
  readonly byKind: Readonly<Record<string, readonly number[]>>;
  /** Chain-spaces. */
  readonly spaces: readonly (number | null)[];
  /** The row's words with their numbers; null for repeats and shapings. */
  readonly text: string | null;
  readonly findings: readonly LedgerFinding[];
}

export interface LedgerPiece {
  readonly piece: string;
  readonly make: number;
  readonly rows: readonly LedgerRow[];
  /** Findings of the piece that belong to none of its rows. */
  readonly findings: readonly LedgerFinding[];
}

export interface Ledger {
  /** Labels of the sizes, in order. */
  readonly sizes: readonly string[];
  readonly pieces: readonly LedgerPiece[];
  /** Findings of the whole pattern. */
  readonly findings: readonly LedgerFinding[];
}

/** The ledger of a study, with `findings` (the study's own, or those of the technical edit) in their places. */
export function ledgerOf(study: Study, findings: readonly Finding[]): Ledger {
  const { pattern } = study;
  const byNode = new Map<string | null, Finding[]>();
  for (const finding of findings) {
    const list = byNode.get(finding.where.node);
    if (list === undefined) byNode.set(finding.where.node, [finding]);
    else list.push(finding);
  }
  const take = (node: string | null): readonly Finding[] => {
    const own = byNode.get(node);
    if (own === undefined) return NO_FINDINGS;
    byNode.delete(node);
    return own;
  };
  let texts: ((node: string) => FilledText | null) | null = null;
  /** The findings of a node that is no row. */
  const rest = (node: string | null): readonly LedgerFinding[] => {
    const own = take(node);
    if (own.length === 0) return [];
    texts ??= textsOf(study);
    const text = node === null ? null : texts(node);
    return own.map((finding) => placed(finding, text));
  };
  const pieces = study.pieces.map((piece): LedgerPiece => {
    const rows = piece.blocks.flatMap((block) => rowOf(block, piece, study, take) ?? []);
    const others = byNode.size === 0 ? [] : [piece.piece.id, ...piece.piece.blocks.flatMap(nodesOf)];
    return {
      piece: piece.piece.name,
      make: piece.piece.make,
      rows,
      findings: others.flatMap(rest),
    };
  });
  const findingsLeft = [...byNode.keys()].flatMap(rest);
  return { sizes: pattern.sizes.map((size) => size.label), pieces, findings: findingsLeft };
}

const NO_FINDINGS: readonly Finding[] = [];

/** Nodes that findings of a block name: its own, and the two rows of a shaping. */
function nodesOf(block: Block): readonly string[] {
  return block.type === 'shaping' ? [block.id, block.shaped.id, block.even.id] : [block.id];
}

/** A row as it was last listed, and what it was listed from besides its block. */
interface Listed {
  readonly terms: Pattern['terms'];
  readonly units: Pattern['units'];
  /** Only where the row has figures. */
  readonly sheet: Sheet | null;
  readonly form: ReturnType<typeof formOf>;
  readonly findings: readonly Finding[];
  readonly row: LedgerRow;
}

const listed = new WeakMap<BlockStudy, Listed>();

/** The row of a block; after an edit almost every row is the one of before. */
function rowOf(
  block: BlockStudy,
  piece: PieceStudy,
  study: Study,
  take: (node: string) => readonly Finding[],
): LedgerRow | null {
  const own = block.block;
  if (own.type === 'prose' || own.type === 'heading' || own.type === 'photo') return null;
  const { terms, units } = study.pattern;
  const form = formOf(piece.piece.blocks, own);
  const hasFigures = own.type === 'shaping' || (own.type === 'row' && own.text.figures.length > 0);
  const sheet = hasFigures ? study.sheet : null;
  const findings = nodesOf(own).flatMap(take);
  const before = listed.get(block);
  if (
    before !== undefined &&
    before.terms === terms &&
    before.units === units &&
    before.sheet === sheet &&
    before.form === form &&
    before.findings.length === findings.length &&
    before.findings.every((finding, i) => finding === findings[i])
  )
    return before.row;
  const row = madeRow(block, piece, study, findings);
  listed.set(block, { terms, units, sheet, form, findings, row });
  return row;
}

function madeRow(
  block: BlockStudy,
  piece: PieceStudy,
  study: Study,
  findings: readonly Finding[],
): LedgerRow {
  const own = block.block;
  const unworked = formOf(piece.piece.blocks, own) === 'round' ? 'Rnd –' : 'Row –';
  const label = blockLabel(piece, block) ?? { text: unworked, side: null };
  const sizes = block.sizes.length;
  const isBlank = isBlankRow(own);
  const byKind: Record<string, number[]> = {};
  block.sizes.forEach((size, i) => {
    for (const [id, n] of (isBlank ? null : size?.tally.byKind) ?? []) {
      const name = kindName(id, study.pattern.terms);
      byKind[name] ??= new Array<number>(sizes).fill(0);
      byKind[name][i]! += n;
    }
  });
  const fill = (text: FigureText) => filledText(text, study.sheet, study.pattern);
  const words = own.type === 'row' ? fill(own.text) : null;
  return {
    node: own.id,
    label: label.text,
    side: label.side,
    counts: block.sizes.map((size) => (isBlank ? null : (size?.tally.stitches ?? null))),
    byKind,
    spaces: block.sizes.map((size) => (isBlank ? null : (size?.tally.spaces ?? null))),
    text: words?.text ?? null,
    findings: findings.map((finding) => {
      const { node } = finding.where;
      if (own.type !== 'shaping') return placed(finding, words);
      const shown = [own.shaped, own.even].find(({ id }) => id === node);
      return placed(finding, shown === undefined ? null : fill(shown.text));
    }),
  };
}

function placed(finding: Finding, text: FilledText | null): LedgerFinding {
  const { code, severity, where, sizes, message } = finding;
  return text === null
    ? { code, severity, from: where.from, to: where.to, sizes, message, text: null }
    : {
        code,
        severity,
        from: text.place(where.from),
        to: text.place(where.to),
        sizes,
        message,
        text: text.text,
      };
}

/** Texts of the pattern by their node, filled when they are first asked for. */
function textsOf(study: Study): (node: string) => FilledText | null {
  const { pattern } = study;
  const found = writtenTexts(pattern);
  const filled = new Map<string, FilledText>();
  return (node) => {
    const text = found.get(node);
    if (text === undefined) return null;
    const known = filled.get(node) ?? filledText(text, study.sheet, pattern);
    filled.set(node, known);
    return known;
  };
}
