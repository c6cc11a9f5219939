/**
 * Findings by the part of the pattern that they are in, in its order, the gravest first within a part: as the
 * studio and the report for an editor list them. It finds nothing itself.
 */
import type { Pattern } from '../document/pattern.ts';
import type { Finding, Severity } from '../finding.ts';

export type PatternPart =
  | 'whole'
  | 'cover'
  | 'sizes'
  | 'materials'
  | 'specials'
  | 'notes'
  | 'piece'
  | 'finishing'
  | 'closing';

export interface FindingGroup {
  /** Id of a piece, or the name of a part. */
  readonly key: string;
  readonly part: PatternPart;
  /** Name of the piece; null for the other parts. */
  readonly piece: string | null;
  readonly findings: readonly Finding[];
}

const GRAVITY: Readonly<Record<Severity, number>> = { error: 0, warning: 1, note: 2 };

/** Ids by the part of the pattern that holds them. */
function partsOf(
  pattern: Pattern,
): ReadonlyMap<string, { part: FindingGroup['part']; piece: string | null }> {
  const parts = new Map<string, { part: FindingGroup['part']; piece: string | null }>();
  const put = (part: FindingGroup['part'], ids: readonly string[], piece: string | null = null) => {
    for (const id of ids) parts.set(id, { part, piece });
  };
  const ids = (list: readonly { readonly id: string }[]) => list.map(({ id }) => id);
  put('sizes', [...ids(pattern.sizes), ...ids(pattern.lines)]);
  put('materials', [
    ...ids(pattern.gauges),
    ...ids(pattern.yarns),
    ...ids(pattern.hooks),
    ...ids(pattern.notions),
  ]);
  put('specials', ids(pattern.specials));
  for (const piece of pattern.pieces) {
    put('piece', [piece.id], piece.id);
    for (const block of piece.blocks) {
      put('piece', [block.id], piece.id);
      if (block.type === 'shaping') put('piece', [block.shaped.id, block.even.id], piece.id);
    }
  }
  return parts;
}

function partOf(
  node: string | null,
  parts: ReturnType<typeof partsOf>,
): { part: FindingGroup['part']; piece: string | null } {
  if (node === null) return { part: 'whole', piece: null };
  const known = parts.get(node);
  if (known !== undefined) return known;
  const [list] = node.split(':');
  switch (list) {
    case 'cover':
      return {
        part: /:(?:care|copyright|contact)$/.test(node) ? 'closing' : 'cover',
        piece: null,
      };
    case 'notes':
      return { part: 'notes', piece: null };
    case 'finishing':
      return { part: 'finishing', piece: null };
    case 'cautions':
      return { part: 'closing', piece: null };
    case 'abbreviation':
      return { part: 'materials', piece: null };
    default:
      return { part: 'whole', piece: null };
  }
}

const ORDER: readonly FindingGroup['part'][] = [
  'whole',
  'cover',
  'sizes',
  'materials',
  'specials',
  'notes',
  'piece',
  'finishing',
  'closing',
];

/** The findings in groups; parts without one are left out. */
export function groupsOf(pattern: Pattern, findings: readonly Finding[]): readonly FindingGroup[] {
  const parts = partsOf(pattern);
  const groups = new Map<string, { part: FindingGroup['part']; piece: string | null; findings: Finding[] }>();
  for (const finding of findings) {
    const { part, piece } = partOf(finding.where.node, parts);
    const key = piece ?? part;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { part, piece, findings: [finding] });
    else group.findings.push(finding);
  }
  const place = (id: string | null) => pattern.pieces.findIndex((piece) => piece.id === id);
  return [...groups]
    .sort(([, a], [, b]) => ORDER.indexOf(a.part) - ORDER.indexOf(b.part) || place(a.piece) - place(b.piece))
    .map(([key, group]) => ({
      key,
      part: group.part,
      piece: pattern.pieces.find(({ id }) => id === group.piece)?.name ?? null,
      findings: group.findings
        .map((finding, index) => ({ finding, index }))
        .sort((a, b) => GRAVITY[a.finding.severity] - GRAVITY[b.finding.severity] || a.index - b.index)
        .map(({ finding }) => finding),
    }));
}
