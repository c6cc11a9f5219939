/**
 * What each stitch went into, over the corpus of written rows: the recording counts what the report counts, every
 * place lies in a row worked before, and a row worked plainly meets its places in their order. The counts of the
 * cases were worked out by hand; the properties follow from how crochet is made (common practice, no source).
 */
import { beforeAll, describe, expect, test } from 'vitest';
import { fabric, type RowTrace, type TracedRow, Tracer, tally } from '../../core/fabric/index.ts';
import type { Site } from '../../core/fabric/site.ts';
import { readText } from '../../core/notation/index.ts';
import { reportTree } from '../../core/study/rows.ts';
import { corpus } from './corpus.ts';

interface Traced {
  readonly name: string;
  readonly text: string;
  readonly rows: readonly TracedRow[];
}

const traced: Traced[] = [];

beforeAll(() => {
  let n = 0;
  for (const [group, cases] of Object.entries(corpus)) {
    for (const { name, terms, text } of cases) {
      const tree = readText(text, { terms });
      const tracer = new Tracer();
      const report = reportTree(tree, text, terms, tracer);
      // Untraced, each of the cases is held to its counts elsewhere; here every 25th stands for all.
      if (n++ % 25 === 0) expect(report, text).toEqual(reportTree(tree, text, terms));
      traced.push({ name: `${group}: ${terms}: ${name}`, text, rows: tracer.rows });
    }
  }
}, 300_000);

/** Stitches by what was recorded of their making, without a look at what the sites are. */
function counted(trace: RowTrace): number {
  const made = trace.makings.filter((making) => making.form !== null).length;
  return made + (trace.stood?.counts === true ? 1 : 0);
}

/** Does the row only work single stitches, one after another, each into the next of the row below? */
function isPlain({ row }: RowTrace): boolean {
  return row.items.every((item) => {
    if (item.type !== 'work') return item.type === 'turn' || item.type === 'aside' || item.type === 'chain';
    if (item.stitch.form !== 'plain' || item.stitch.together > 1) return false;
    return item.places.every((place) => {
      const follows = place.kind === 'next' || place.kind === 'across' || place.kind === 'turning-chain';
      return follows && place.below === 0 && place.row === undefined;
    });
  });
}

describe('the recording of a row', () => {
  test('counts what the row counts', () => {
    let rows = 0;
    for (const { name, text, rows: all } of traced) {
      for (const { trace } of all) {
        const words = text.slice(trace.row.from, trace.row.to);
        expect(trace.makings.length, name).toBe(trace.sites.length);
        expect(counted(trace), `${name}: ${words}`).toBe(tally(fabric(trace.sites)).stitches);
        rows += 1;
      }
    }
    expect(rows).toBeGreaterThan(3000);
  });

  test('puts every foot into a row that was there before', () => {
    for (const { name, text, rows } of traced) {
      const before = new Set<Site>();
      for (const { trace } of rows) {
        for (const site of trace.below) before.add(site);
        for (const { feet } of trace.makings) {
          for (const foot of feet) {
            // Row-ends, the other side of a foundation and the hole of a ring belong to no row.
            if (before.has(foot) || ['ring', 'row-end', 'chain'].includes(foot.kind)) continue;
            expect.fail(`${name}: ${foot.key}\n${text}`);
          }
        }
        for (const site of trace.sites) before.add(site);
      }
    }
  });

  test('meets the places of a plain row in their order', () => {
    let rows = 0;
    for (const { name, text, rows: all } of traced) {
      for (const { trace } of all) {
        if (trace.round || trace.travelled.length > 0 || !isPlain(trace)) continue;
        const at = trace.makings.flatMap(({ feet }) => feet.map((foot) => trace.below.indexOf(foot)));
        const known = at.filter((i) => i >= 0);
        const backwards = known.length > 1 && known[0]! > known[known.length - 1]!;
        const sorted = known.slice().sort((a, b) => (backwards ? b - a : a - b));
        expect(known, `${name}: ${text.slice(trace.row.from, trace.row.to)}`).toEqual(sorted);
        rows += 1;
      }
    }
    expect(rows).toBeGreaterThan(300);
  });
});
