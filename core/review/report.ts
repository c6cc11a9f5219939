/**
 * What a human editor is handed: every finding with its place, its words and its numbers; what the maker accepted
 * and why; what was checked; and the counts of every row in every size to check against. Data only; printing and
 * JSON show it. Nothing of the maker's workbook is in it but the reasons of acceptances: no names of testers, no
 * prices, no measurements of people.
 */
import type { Pattern } from '../document/pattern.ts';
import type { Finding, Severity } from '../finding.ts';
import { CATALOGUE } from '../findings/index.ts';
import { translate } from '../notation/translate.ts';
import { filledText } from '../study/filled.ts';
import { ledgerOf } from '../study/ledger.ts';
import type { Study } from '../study/study.ts';
import { writtenTexts } from '../study/written.ts';
import type { Terms } from '../trade/stitches.ts';
import { ACCEPTANCE_STALE, type AcceptedFinding, settled } from './accepted.ts';
import { groupsOf, type PatternPart } from './parts.ts';
import { RULES } from './rules.ts';

/** Version of the JSON; it grows when a key changes its meaning or goes. */
export const REPORT_VERSION = 1;

export interface ReportFinding {
  readonly code: string;
  readonly severity: Severity;
  readonly title: string;
  /** Label of its row ("Row 3"), or null where it is in none. */
  readonly row: string | null;
  /** The words that it points at, numbers filled in; null where it points at none. */
  readonly words: string | null;
  /** Labels of the sizes concerned; empty when it does not depend on the size. */
  readonly sizes: readonly string[];
  readonly message: string;
  readonly detail: string | null;
  /** Why it matters. */
  readonly reason: string;
  /** What the program would put in place of the words. */
  readonly fix: string | null;
}

export interface ReportPart {
  readonly part: PatternPart;
  /** Name of the piece; null for the other parts. */
  readonly piece: string | null;
  readonly findings: readonly ReportFinding[];
}

export interface EditorReport {
  readonly report: typeof REPORT_VERSION;
  readonly title: string;
  readonly designer: string;
  readonly version: string;
  readonly date: string;
  /** Terms that the report is in; sentences and words are converted where the pattern is in the other. */
  readonly terms: Terms;
  readonly patternTerms: Terms;
  readonly sizes: readonly string[];
  readonly open: Readonly<Record<Severity, number>>;
  readonly parts: readonly ReportPart[];
  readonly accepted: readonly (ReportFinding & {
    readonly piece: string | null;
    readonly why: string;
    readonly date: string;
  })[];
  /** Everything that was looked for, by the layer that looks. */
  readonly checked: readonly {
    readonly code: string;
    readonly title: string;
    readonly severity: Severity;
    readonly by: 'working' | 'editing';
  }[];
  readonly rows: readonly {
    readonly piece: string;
    readonly make: number;
    readonly rows: readonly {
      readonly label: string;
      readonly side: string | null;
      /** Stitches after it, one a size; null where the size does not work it. */
      readonly stitches: readonly (number | null)[];
      readonly spaces: readonly (number | null)[];
    }[];
  }[];
}

const KINDS = new Map([...CATALOGUE, ...RULES, ACCEPTANCE_STALE].map((kind) => [kind.code, kind]));

/** Longest words that are quoted whole. */
const LONGEST = 160;

type Say = (text: string) => string;

function sayIn(pattern: Pattern, terms: Terms): Say {
  if (terms === pattern.terms) return (text) => text;
  const own = pattern.specials.flatMap(({ nameUs, nameUk, abbrUs, abbrUk }) => [
    { us: nameUs, uk: nameUk },
    { us: abbrUs, uk: abbrUk },
  ]);
  return (text) => translate(text, pattern.terms, terms, { kind: 'mixed', own }).text;
}

function wordsOf({ pattern, sheet }: Study, { where }: Finding): string | null {
  const { node, from, to } = where;
  const written = node === null || to <= from ? undefined : writtenTexts(pattern).get(node);
  if (written === undefined) return null;
  const { text, place } = filledText(written, sheet, pattern);
  const words = text.slice(place(from), place(to));
  const letters = [...words];
  return letters.length <= LONGEST ? words : `${letters.slice(0, LONGEST).join('')} …`;
}

/** The report of a study, in the terms asked for. The same study gives the same report. */
export function reportOf(study: Study, terms: Terms = study.pattern.terms): EditorReport {
  const { pattern } = study;
  const { open, accepted } = settled(study);
  const say = sayIn(pattern, terms);
  const ledger = ledgerOf(study, []);
  const labels = new Map(ledger.pieces.flatMap(({ rows }) => rows.map(({ node, label }) => [node, label])));
  for (const piece of pattern.pieces) {
    for (const block of piece.blocks) {
      if (block.type !== 'shaping') continue;
      const label = labels.get(block.id);
      if (label === undefined) continue;
      labels.set(block.shaped.id, label);
      labels.set(block.even.id, label);
    }
  }
  const told = (finding: Finding): ReportFinding => {
    const { code, severity, where, sizes, message, detail, fix } = finding;
    const kind = KINDS.get(code);
    const words = wordsOf(study, finding);
    return {
      code,
      severity,
      title: kind?.title ?? code,
      row: where.node === null ? null : (labels.get(where.node) ?? null),
      words: words === null ? null : say(words),
      sizes: sizes.flatMap((size) => pattern.sizes[size]?.label ?? []),
      message: say(message),
      detail: detail === null ? null : say(detail),
      reason: kind === undefined ? '' : say(kind.reason),
      fix: fix === null ? null : say(fix.replacement),
    };
  };
  const count = (severity: Severity) => open.filter((finding) => finding.severity === severity).length;
  const places = new Map(
    groupsOf(
      pattern,
      accepted.map(({ finding }) => finding),
    ).flatMap(({ piece, findings }) => findings.map((finding) => [finding, piece] as const)),
  );
  const letStand = ({ finding, acceptance }: AcceptedFinding) => ({
    ...told(finding),
    piece: places.get(finding) ?? null,
    why: acceptance.reason,
    date: acceptance.date,
  });
  const editing = new Set(RULES.map(({ code }) => code));
  const { about } = pattern;
  return {
    report: REPORT_VERSION,
    title: about.title,
    designer: about.designer,
    version: about.version,
    date: about.date,
    terms,
    patternTerms: pattern.terms,
    sizes: pattern.sizes.map(({ label }) => label),
    open: { error: count('error'), warning: count('warning'), note: count('note') },
    parts: groupsOf(pattern, open).map(({ part, piece, findings }) => ({
      part,
      piece,
      findings: findings.map(told),
    })),
    accepted: accepted.map(letStand),
    checked: [...CATALOGUE.filter(({ code }) => !editing.has(code)), ...RULES].map(
      ({ code, title, severity }) => ({
        code,
        title,
        severity,
        by: editing.has(code) ? ('editing' as const) : ('working' as const),
      }),
    ),
    rows: ledger.pieces.map(({ piece, make, rows }) => ({
      piece,
      make,
      rows: rows.map(({ label, side, counts, spaces }) => ({ label, side, stitches: counts, spaces })),
    })),
  };
}
