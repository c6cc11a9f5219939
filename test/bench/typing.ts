/**
 * Measures what the studio does at each keystroke: the pattern projected from the document, studied, reviewed
 * and laid out as the ledger; cold, and after edits of several kinds.
 */
import type { Node } from 'prosemirror-model';
import { compose } from '../../core/document/compose.ts';
import type { Line } from '../../core/document/pattern.ts';
import { project } from '../../core/document/project.ts';
import { schema } from '../../core/document/schema.ts';
import { review } from '../../core/review/index.ts';
import { type Ledger, ledgerOf } from '../../core/study/ledger.ts';
import { type Study, study } from '../../core/study/study.ts';
import { inMs, median, percentile, say, timed } from './measure.ts';
import { longPattern } from './patterns.ts';

interface Seen {
  readonly study: Study;
  readonly ledger: Ledger;
}

/** Where the time of one keystroke goes. */
const parts = { project: 0, study: 0, review: 0, ledger: 0 };

function part<T>(name: keyof typeof parts, run: () => T): T {
  const { ms, value } = timed(run);
  parts[name] += ms;
  return value;
}

/** Everything a view shows of a document. */
function seen(document: Node, before: Study | null): Seen {
  const pattern = part('project', () => project(document));
  const studied = part('study', () => study(pattern, before));
  const edited = part('review', () => review(studied));
  const ledger = part('ledger', () => ledgerOf(studied, [...studied.findings, ...edited]));
  return { study: studied, ledger };
}

/** The document with the node at a path of child indexes replaced. */
function withNode(node: Node, path: readonly number[], change: (node: Node) => Node): Node {
  const [at, ...rest] = path;
  if (at === undefined) return change(node);
  return node.copy(node.content.replaceChild(at, withNode(node.child(at), rest, change)));
}

const worded = (text: string) => (node: Node) =>
  node.type.create(node.attrs, text === '' ? null : schema.text(text));

/** Paths in the document: see the schema's order of parts. */
const TITLE = [0, 0];
const NOTE = [4, 3];
const ROW = (at: number) => [5, 0, 1, at];
const LINE = (at: number) => [1, 1, at];

/** Texts of one part, to be gone through one after another; each is one keystroke. */
interface Edit {
  readonly name: string;
  readonly path: readonly number[];
  readonly change: (times: number) => (node: Node) => Node;
}

const steady = ['Ch 1, sc in each st across, turn.', 'Ch 3, dc in each st across, turn.'];
const wider = ['Ch 3, dc in each st to last st, 5 dc in last st, turn.', 'Ch 3, dc in each st across, turn.'];
const TYPED = 'Ch 3, sk next st, dc in each of next 12 sts, 2 dc in next st, dc in each st across, turn.';

function widened(times: number): (node: Node) => Node {
  return (node) => {
    const rule = node.attrs.rule as Extract<Line, { kind: 'typed' }>;
    const { each } = rule.values as { each: Record<string, { value: number; unit: string }> };
    const [id] = Object.keys(each).slice(6, 7);
    const values = { each: { ...each, [id!]: { ...each[id!]!, value: 125 + (times % 40) * 2.5 } } };
    return node.type.create({ ...node.attrs, rule: { ...rule, values } });
  };
}

const EDITS: readonly Edit[] = [
  ...[40, 200, 390].map((at) => ({
    name: `rewording row ${at}`,
    path: ROW(at),
    change: (times: number) => worded(steady[times % 2]!),
  })),
  {
    name: 'typing row 40 anew, letter by letter',
    path: ROW(40),
    change: (times: number) => worded(TYPED.slice(0, times % (TYPED.length + 1))),
  },
  {
    name: 'widening row 40 and with it all rows after it',
    path: ROW(40),
    change: (times: number) => worded(wider[times % 2]!),
  },
  { name: 'the width of one size', path: LINE(0), change: widened },
  {
    name: 'a note',
    path: NOTE,
    change: (times: number) =>
      worded(`Weave the ends in as you go, ${'and mind the edges '.slice(0, times % 19)}.`),
  },
  { name: 'the title', path: TITLE, change: (times: number) => worded(`Panel ${times}`) },
];

function typing(): void {
  const extent = { sizes: 12, rows: 400, stitches: 200 };
  const fresh = (n: number) =>
    compose({ ...longPattern(extent), abbreviations: { [`own${n}`]: 'own stitch' } });
  const colds = Array.from({ length: 5 }, (_, n) => fresh(n)).map((document) =>
    timed(() => seen(document, null)),
  );
  const cold = median(colds.map(({ ms }) => ms));
  const { study: first, ledger } = colds[0]!.value;
  const counts = first.pieces[0]!.fabrics.map((fabric) => fabric?.sites.length ?? 0);
  say(
    `12 sizes × 400 rows, ${Math.min(...counts)}–${Math.max(...counts)} stitches wide, ${first.findings.length} findings, ${ledger.pieces[0]!.rows.length} rows in the ledger: ${inMs(cold)} cold`,
  );
  for (const { name, path, change } of EDITS) {
    let document = fresh(99);
    let current = seen(document, null).study;
    const took: number[] = [];
    let before = { ...parts };
    for (let i = 0; i < 110; i++) {
      if (i === 10) before = { ...parts };
      document = withNode(document, path, change(i));
      const { ms, value } = timed(() => seen(document, current));
      current = value.study;
      if (i >= 10) took.push(ms);
    }
    const usual = median(took);
    const where = (Object.keys(parts) as (keyof typeof parts)[])
      .map((key) => `${key} ${inMs((parts[key] - before[key]) / took.length)}`)
      .join(', ');
    say(
      `  ${name}: ${(cold / usual).toFixed(0)} times faster than cold (${inMs(usual)} median, ${inMs(percentile(took, 0.95))} at the 95th percentile, ${inMs(Math.max(...took))} at most; mean: ${where})`,
    );
  }
}

typing();
