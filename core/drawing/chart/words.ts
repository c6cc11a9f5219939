/**
 * A chart in words: every row read from its start, in the reader's terms, from the same graph that is drawn. It
 * does not look at the text that the rows were written in.
 */
import type { Terms } from '../../trade/stitches.ts';
import { namesOf } from '../../trade/terms.ts';
import { type ChartRow, type Graph, type Node, sameFeet } from './graph.ts';

/** What a stitch is called in a chart: its name in full, with how many strands are gathered where that is known. */
export function nameOf(id: string, strands: number | null, terms: Terms): string {
  if (id.startsWith('special.')) return id.slice('special.'.length);
  const gathered = /^(cluster|bobble|popcorn|puff)\.(\w+)$/.exec(id);
  if (gathered !== null && strands !== null && strands > 1) {
    const base = namesOf(gathered[2]!, terms).abbr;
    return `${strands}-${base} ${gathered[1] === 'puff' ? 'puff stitch' : gathered[1]}`;
  }
  return namesOf(id, terms).name;
}

function abbreviation(node: Node, terms: Terms): string {
  const id = node.site.stitch ?? 't1';
  const { making } = node;
  const more = [
    making?.loop === 'back' ? ' in back loop' : '',
    making?.loop === 'front' ? ' in front loop' : '',
    making?.loop === 'third' ? ' in third loop' : '',
    making?.gap === true ? ' in the gap' : '',
    (making?.below ?? 0) > 0 ? ` ${making!.below} ${making!.below === 1 ? 'row' : 'rows'} further down` : '',
  ].join('');
  const gathered = /^(?:cluster|bobble|popcorn|puff)\./.test(id);
  const word =
    gathered || id.startsWith('special.')
      ? nameOf(id, making?.parts ?? null, terms)
      : namesOf(id, terms).abbr;
  const crossed = making?.form === 'crossed' ? 'crossed ' : '';
  return `${crossed}${word}${more}`;
}

/** What is made, in order: single words, or what stands in one place together. */
function tokensOf(row: ChartRow, terms: Terms): string[] {
  const below = row.trace.below;
  const placeOf = new Map(below.map((site, i) => [site, i]));
  const tokens: string[] = [];
  const { nodes } = row;
  const word = (node: Node): string => {
    const { site } = node;
    switch (node.kind) {
      case 'space':
        return `ch ${site.chains}`;
      case 'picot':
        return `picot of ${site.chains} ch`;
      case 'turning':
        return `ch ${site.chains} (not counted)`;
      default:
        return site.turning
          ? `ch ${site.chains} (counts as ${namesOf(site.stitch ?? 't1', terms).abbr})`
          : abbreviation(node, terms);
    }
  };
  const wayOf = nodes.flatMap(({ feet }) => (feet[0] === undefined ? [] : (placeOf.get(feet[0].site) ?? [])));
  const onwards = (wayOf.at(-1) ?? 0) < (wayOf[0] ?? 0) ? -1 : 1;
  /** The place farthest on that has been worked into. */
  let met: number | null = null;
  for (let i = 0; i < nodes.length; i++) {
    const node = nodes[i]!;
    const at = node.feet[0] === undefined ? undefined : placeOf.get(node.feet[0].site);
    let back = '';
    if (at !== undefined && !row.trace.round) {
      const isBack = met !== null && (at - met) * onwards < 0;
      const skipped = met === null || isBack ? 0 : between(below, met, at);
      if (skipped > 0) tokens.push(`skip ${skipped}`);
      const end = node.feet[node.feet.length - 1]!;
      if (isBack) back = ' in a stitch passed over';
      else met = placeOf.get(end.site) ?? at;
    }
    let end = i;
    for (let k = i + 1; k < nodes.length; k++) {
      const next = nodes[k]!;
      if (next.kind === 'space' || next.kind === 'picot') continue;
      if (!sameFeet(node, next) || node.feet.length === 0) break;
      end = k;
    }
    if (end > i) {
      const inner = counted(nodes.slice(i, end + 1).map(word));
      const { kind } = node.feet[0]!;
      const place =
        back !== ''
          ? 'in one place passed over'
          : kind === 'space'
            ? 'in one space'
            : kind === 'ring'
              ? 'in the ring'
              : 'in one place';
      tokens.push(`${inner.length > 1 ? `(${inner.join(', ')})` : inner[0]} ${place}`);
      i = end;
    } else tokens.push(`${word(node)}${back}`);
  }
  return tokens;
}

/** Stitches of the row below between two that were worked into. */
function between(below: readonly { readonly kind: string }[], from: number, to: number): number {
  let n = 0;
  for (let i = Math.min(from, to) + 1; i < Math.max(from, to); i++)
    if (below[i]!.kind === 'stitch' || below[i]!.kind === 'chain') n += 1;
  return n;
}

/** Equal words in a run as a number and the word: "3 dc". */
function counted(tokens: readonly string[]): string[] {
  const out: string[] = [];
  for (let i = 0; i < tokens.length; ) {
    let n = 1;
    while (tokens[i + n] === tokens[i]) n += 1;
    const token = tokens[i]!;
    if (n === 1) out.push(token);
    else if (/^(?:ch|\(|\d|skip|picot|crossed)/.test(token)) out.push(`${token}, ${n} times`);
    else out.push(`${n} ${token}`);
    i += n;
  }
  return out;
}

/** Longest sequence of words that is looked for as a repeat. */
const LONGEST = 24;

/** Sequences that repeat, said once with their number. */
function folded(tokens: readonly string[]): string {
  const out: string[] = [];
  for (let i = 0; i < tokens.length; ) {
    let best = { length: 1, times: 1 };
    for (let length = 2; length <= LONGEST && i + 2 * length <= tokens.length; length++) {
      let times = 1;
      const same = (k: number): boolean => {
        for (let j = 0; j < length; j++) if (tokens[i + j] !== tokens[i + k * length + j]) return false;
        return true;
      };
      while (i + (times + 1) * length <= tokens.length && same(times)) times += 1;
      if (times > 1 && times * length > best.times * best.length) best = { length, times };
    }
    const { length, times } = best;
    if (times > 1) {
      out.push(`[${tokens.slice(i, i + length).join(', ')}] ${times} times`);
      i += length * times;
    } else out.push(tokens[i++]!);
  }
  return out.join(', ');
}

/** The way rounds go, seen from the right side: each side of the Atlantic has its own word. */
export function leftAbout(terms: Terms): string {
  return terms === 'us' ? 'counterclockwise' : 'anticlockwise';
}

/** One row in words. */
export function rowInWords(row: ChartRow, form: Graph['form'], terms: Terms): string {
  const { trace } = row;
  const name = row.kind === 'round' ? 'Round' : 'Row';
  const label = row.number === null ? name : `${name} ${row.number}`;
  const side =
    row.side === null || (row.kind === 'round' && form === 'rounds' && !trace.turned) ? '' : ` (${row.side})`;
  const way =
    form === 'rounds'
      ? row.way === 1
        ? leftAbout(terms)
        : 'clockwise'
      : row.way === 1
        ? 'from left to right'
        : 'from right to left';
  const stood =
    trace.stood !== null &&
    !trace.stood.counts &&
    row.nodes.every((node) => !node.site.turning) &&
    trace.stood.upright > 0
      ? `ch ${trace.stood.upright} (not counted), `
      : '';
  const slips = trace.travelled.length > 0 ? `${trace.travelled.length} sl st to the start, ` : '';
  const joins = trace.joined ? `, join with ${namesOf(trace.closing ?? 'slip', terms).abbr}` : '';
  return `${label}${side}, ${way}: ${slips}${stood}${folded(counted(tokensOf(row, terms)))}${joins}.`;
}

/** The whole chart in words. */
export function chartInWords(graph: Graph, terms: Terms, notes: readonly string[]): string {
  const base =
    graph.baseKind === 'ring'
      ? graph.ring > 0
        ? `A ring of ${graph.ring} chains.`
        : 'A ring.'
      : graph.baseKind === 'chain'
        ? `A foundation chain of ${chainsOf(graph)} chains.`
        : 'On the row before.';
  return [base, ...graph.rows.map((row) => rowInWords(row, graph.form, terms)), ...notes].join(' ');
}

/** Chains of the foundation, those that rise at its end among them. */
export function chainsOf(graph: Graph): number {
  const first = graph.rows[0]!.trace;
  return first.below.length;
}
