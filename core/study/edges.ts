/**
 * The fabric that a piece starts from when it starts from others: tops, foundations, row-ends, openings and
 * seams laid end to end in the order given. Reports what an edge asks that is not there; works nothing.
 */
import type { Edge } from '../document/pattern.ts';
import {
  CHAIN_SITE,
  type Fabric,
  fabric,
  type Opening,
  ROW_END_SITE,
  SEAM_SITE,
  type Site,
  sameFabric,
} from '../fabric/index.ts';
import type { Fact } from '../finding.ts';

/** What another piece offers in one size. */
export interface Offered {
  readonly name: string;
  readonly fabric: Fabric | null;
  readonly rows: number;
  readonly foundation: number;
  readonly openings: readonly Opening[];
}

export type EdgeSource = (piece: string) => Offered | null;

/** All the sites of an edge, before an amount is taken of them; null when the piece or the opening is not there. */
export function edgeSites(edge: Edge, source: EdgeSource): readonly Site[] | null {
  if (edge.kind === 'seam') return [SEAM_SITE];
  const from = source(edge.piece);
  if (from === null) return null;
  switch (edge.kind) {
    case 'top':
      return from.fabric === null ? null : from.fabric.sites.filter((site) => site.kind !== 'turning');
    case 'foundation':
      return new Array<Site>(from.foundation).fill(CHAIN_SITE);
    case 'row-ends':
      return new Array<Site>(from.rows).fill(ROW_END_SITE);
    case 'opening': {
      const opening = from.openings[edge.which - 1];
      if (opening === undefined) return null;
      return [...opening.sites, ...new Array<Site>(opening.chains).fill(CHAIN_SITE)];
    }
  }
}

/** Sites that count towards an edge's amount. */
export function edgeCount(sites: readonly Site[]): number {
  return sites.filter((site) => site.kind !== 'space' && site.kind !== 'picot').length;
}

/** Lays the edges end to end. An equal fabric of before comes back as that one. */
export function edgeFabric(
  edges: readonly Edge[],
  round: boolean,
  amount: (edge: Edge) => number | null,
  source: EdgeSource,
  before: Fabric | null,
): { fabric: Fabric; stitches: number; facts: readonly Fact[] } {
  const facts: Fact[] = [];
  const sites: Site[] = [];
  for (const edge of edges) {
    const all = edgeSites(edge, source);
    if (all === null) {
      facts.push({
        code: 'edge-not-there',
        from: 0,
        to: 0,
        data: { piece: source(edge.piece)?.name ?? edge.piece, kind: edge.kind },
      });
      continue;
    }
    const wanted = amount(edge);
    const have = edgeCount(all);
    if (wanted !== null && wanted > have) {
      facts.push({
        code: 'edge-too-short',
        from: 0,
        to: 0,
        data: { piece: source(edge.piece)?.name ?? edge.piece, kind: edge.kind, wanted, have },
      });
    }
    if (wanted === null || wanted >= have) sites.push(...all);
    else {
      let taken = 0;
      for (const site of all) {
        if (taken >= wanted) break;
        sites.push(site);
        if (site.kind !== 'space' && site.kind !== 'picot') taken += 1;
      }
    }
  }
  const made = fabric(sites, { form: round ? 'joined' : 'flat', turned: false });
  return { fabric: sameFabric(before, made) ? before! : made, stitches: edgeCount(sites), facts };
}
