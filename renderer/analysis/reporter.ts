/**
 * From a study to what the page is told of it. A block whose study is the identical object is not worded or
 * sent again, so an edit costs what it reached. It works nothing out that the study does not hold; widths are
 * the study's stitches at the pattern's gauge.
 */
import { isBlankRow } from '../../core/document/blank.ts';
import type { Pattern } from '../../core/document/pattern.ts';
import type { Finding } from '../../core/finding.ts';
import type { LineResult, SizeResult } from '../../core/grading/index.ts';
import { scheduleWords, spreadWords } from '../../core/grading/index.ts';
import type { AcceptedFinding, Settled } from '../../core/review/accepted.ts';
import { type EdgeInSize, meetingInSizes } from '../../core/review/meetings.ts';
import { gaugeOf, lengthOfCount, spansOf, stepsOf } from '../../core/study/gauge.ts';
import { blockLabel } from '../../core/study/labels.ts';
import type { BlockStudy, PieceStudy } from '../../core/study/piece-study.ts';
import { planForm } from '../../core/study/plan-form.ts';
import type { Study } from '../../core/study/study.ts';
import { formatLength, formatNumber, type Length } from '../../core/trade/units.ts';
import { FigureReporter } from './figures.ts';
import { materialsOf } from './materials.ts';
import type { Changes } from './protocol.ts';
import type {
  BlockReport,
  BothUnits,
  CellReport,
  LineReport,
  MaterialsReport,
  PieceReport,
} from './report.ts';

const both = (length: Length): BothUnits => ({
  metric: formatLength(length, 'metric'),
  imperial: formatLength(length, 'imperial'),
});
const plain = (words: string): BothUnits => ({ metric: words, imperial: words });

/** Keeps what was told, and tells what is new. One for each document that is open. */
export class Reporter {
  readonly #lines = new WeakMap<LineResult, { key: string; report: LineReport }>();
  readonly #blocks = new WeakMap<BlockStudy, { key: string; report: BlockReport }>();
  readonly #figures = new FigureReporter();
  #told: {
    sizes: string;
    lines: ReadonlyMap<string, LineReport>;
    pieces: string;
    blocks: ReadonlyMap<string, BlockReport>;
    findings: readonly Finding[];
    accepted: readonly AcceptedFinding[];
    materials: MaterialsReport | null;
  } = {
    sizes: '',
    lines: new Map(),
    pieces: '',
    blocks: new Map(),
    findings: [],
    accepted: [],
    materials: null,
  };

  /** What differs from what was told before. */
  changes(study: Study, { open: findings, accepted }: Settled, version: number): Changes {
    const told = this.#told;
    const { pattern, sheet } = study;
    const sizes = pattern.sizes.map(({ id, label }) => ({ id, label }));
    const lines = new Map(sheet.lines.map((line) => [line.line.id, this.#line(line, pattern)]));
    const blocks = new Map<string, BlockReport>();
    const pieces = study.pieces.map((piece): PieceReport => {
      const gauge = gaugeOf(piece, pattern, sheet);
      const stitch = gauge === null ? null : stepsOf(gauge).stitch;
      const spans = spansOf(piece);
      const ids = piece.blocks.flatMap((block, i) => {
        const report = this.#block(block, piece, pattern, stitch, spans[i] ?? []);
        if (report === null) return [];
        blocks.set(report.id, report);
        return [report.id];
      });
      return {
        id: piece.piece.id,
        blocks: ids,
        rows: piece.rows,
        starts: piece.starts,
        meets: meetsOf(piece, study),
      };
    });
    const figures = this.#figures.changed(study);
    const sizesKey = JSON.stringify(sizes);
    const piecesKey = JSON.stringify(pieces);
    const lineOrder = [...lines.keys()];
    const newLines = [...lines.values()].filter((line) => told.lines.get(line.id) !== line);
    const newBlocks = [...blocks.values()].filter((block) => told.blocks.get(block.id) !== block);
    const gone = [...told.blocks.keys()].filter((id) => !blocks.has(id));
    const sameOrder = sameList(lineOrder, [...told.lines.keys()]);
    const materials = materialsOf(study, told.materials);
    this.#told = { sizes: sizesKey, lines, pieces: piecesKey, blocks, findings, accepted, materials };
    return {
      version,
      ...(sizesKey === told.sizes ? {} : { sizes }),
      ...(newLines.length > 0 ? { lines: newLines } : {}),
      ...(sameOrder ? {} : { lineOrder }),
      ...(figures === null ? {} : { figures }),
      ...(piecesKey === told.pieces ? {} : { pieces }),
      ...(newBlocks.length > 0 ? { blocks: newBlocks } : {}),
      ...(gone.length > 0 ? { goneBlocks: gone } : {}),
      ...(sameList(findings, told.findings) ? {} : { findings }),
      ...(sameAccepted(accepted, told.accepted) ? {} : { accepted }),
      ...(materials === told.materials ? {} : { materials }),
    };
  }

  #line(result: LineResult, pattern: Pattern): LineReport {
    const key = `${pattern.terms} ${planForm(result.line.name, pattern)}`;
    const known = this.#lines.get(result);
    if (known?.key === key) return known.report;
    const report = { id: result.line.id, cells: result.sizes.map((size) => cellOf(size, result, pattern)) };
    this.#lines.set(result, { key, report });
    return report;
  }

  #block(
    block: BlockStudy,
    piece: PieceStudy,
    pattern: Pattern,
    stitch: Length | null,
    spans: readonly (number | null)[],
  ): BlockReport | null {
    const { block: of } = block;
    if (of.type === 'heading' || of.type === 'photo') return null;
    const label = of.type === 'prose' ? null : blockLabel(piece, block);
    const known = this.#blocks.get(block);
    const key = `${label?.text}|${label?.side}|${stitch?.toFraction()}|${spans}|${piece.piece.id}|${pattern.terms}`;
    if (known?.key === key) return known.report;
    const kinds = new Map<string, number[]>();
    block.sizes.forEach((size, i) => {
      for (const [id, n] of size?.tally.byKind ?? []) {
        const numbers = kinds.get(id) ?? block.sizes.map(() => 0);
        numbers[i]! += n;
        kinds.set(id, numbers);
      }
    });
    const report: BlockReport = {
      id: of.id,
      piece: piece.piece.id,
      label: label?.text ?? null,
      side: label?.side ?? null,
      isWritten: !isBlankRow(of),
      counts: block.sizes.map((size) => size?.tally.stitches ?? null),
      spaces: block.sizes.map((size) => size?.tally.spaces ?? null),
      byKind: [...kinds].map(([id, numbers]) => ({ id, numbers })),
      repeats: block.sizes.map((size) => size?.repeats ?? null),
      rows: block.sizes.map((size) => size?.rows ?? 0),
      widths: block.sizes.map((_, size) => {
        const span = spans[size] ?? null;
        return span === null || stitch === null ? null : both(lengthOfCount(span, stitch));
      }),
    };
    this.#blocks.set(block, { key, report });
    return report;
  }
}

/** What the edges of a piece's seams give, in every size. */
function meetsOf({ piece }: PieceStudy, study: Study): PieceReport['meets'] {
  const given = (edge: EdgeInSize | null) =>
    edge === null ? null : Math.min(edge.wanted ?? edge.have, edge.have);
  return piece.meets.map((meeting) => {
    const sizes = meetingInSizes(study, piece, meeting);
    return {
      mine: sizes.map((size) => (size === null ? null : given(size.mine))),
      other: sizes.map((size) => (size === null ? null : given(size.other))),
    };
  });
}

function sameList<T>(a: readonly T[], b: readonly T[]): boolean {
  return a.length === b.length && a.every((value, i) => value === b[i]);
}

function sameAccepted(a: readonly AcceptedFinding[], b: readonly AcceptedFinding[]): boolean {
  return (
    a.length === b.length &&
    a.every((one, i) => one.finding === b[i]!.finding && one.acceptance === b[i]!.acceptance)
  );
}

/** What a line comes to in one size, as it is shown. */
export function cellOf(size: SizeResult, result: LineResult, pattern: Pattern): CellReport {
  const { value, fitted, waitsFor } = size;
  return {
    value: value === null ? null : wordsOf(value, result, pattern),
    fitted:
      fitted === null
        ? null
        : {
            asked: both(fitted.asked),
            made: both(fitted.got),
            difference: both(fitted.difference),
            off: fitted.difference.abs().compare(fitted.limit) > 0,
            repeats: fitted.repeats,
          },
    waitsFor,
  };
}

function wordsOf(value: NonNullable<SizeResult['value']>, { line }: LineResult, pattern: Pattern): BothUnits {
  switch (value.dimension) {
    case 'schedule':
      return plain(scheduleWords([value.schedule], planForm(line.name, pattern)) || '0');
    case 'spread':
      return plain(spreadWords(value.spread, pattern.terms));
    case 'length':
      return both(value.value);
    case 'percent':
      return plain(`${formatNumber(value.value.mul(100))} %`);
    default:
      return plain(formatNumber(value.value, 'decimal', line.kind === 'formula' ? 3 : 2));
  }
}
