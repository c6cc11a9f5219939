/**
 * The key of a chart: every symbol that it uses, drawn once, with what it is called in the reader's terms. Made from
 * what the chart shows, so that nothing is missing and nothing extra.
 */
import { LADDER, type Terms } from '../../trade/stitches.ts';
import { hasSymbol } from '../../trade/symbols.ts';
import { namesOf } from '../../trade/terms.ts';
import { group, path, type Scene, type Shape, toHundredth, words } from '../scene.ts';
import { wrapped } from '../text-width.ts';
import { type Graph, heightOf, isPlainRound, type Node, sameFeet } from './graph.ts';
import type { Point } from './layout.ts';
import { type SheetStyle, strandsOf, THICK, THIN } from './sheet.ts';
import { chain, type Ink, oval, type Sign, slip, stack, stitch, triangle } from './symbols.ts';
import { leftAbout, nameOf } from './words.ts';

interface Entry {
  /** Draws about the middle of its foot. */
  readonly draw: (foot: Point, ink: Ink) => readonly Shape[];
  /** Height of the drawing, in widths of a stitch. */
  readonly tall: number;
  readonly says: string;
}

/** Letters for stitches without a symbol; those that East Asian patterns use for stitches are left out. */
const LETTERS = 'BCDGHJLMNPQRSUWYZ';

/** A letter for every stitch of a chart that has no symbol, in the order met. */
export function lettersOf(graph: Graph): ReadonlyMap<string, string> {
  const letters = new Map<string, string>();
  for (const row of graph.rows) {
    for (const node of row.nodes) {
      const id = node.site.stitch;
      if (node.kind !== 'stitch' || node.site.turning || id === null || hasSymbol(id) || letters.has(id))
        continue;
      const n = letters.size;
      const letter = LETTERS[n % LETTERS.length]!;
      letters.set(id, n < LETTERS.length ? letter : `${letter}${Math.floor(n / LETTERS.length) + 1}`);
    }
  }
  return letters;
}

const UP: Point = { x: 0, y: -1 };

/** One stem or several, over one foot or over as many as the stitch closes together. */
function signFor(id: string, node: Node, foot: Point, u: number, letter: string | null): Sign {
  const tall = heightOf(node) * u;
  const tail = id.startsWith('spike.') ? u : 0;
  const together = /tog(\d+)\./.exec(id);
  const apart = together !== null && node.feet.length > 1 ? Number(together[1]) : 1;
  const feet = Array.from({ length: apart }, (_, i) => ({
    x: foot.x + (i - (apart - 1) / 2) * 0.8 * u,
    y: foot.y + tail / 2,
  }));
  const loop = null;
  const strands = apart > 1 ? 1 : strandsOf(node);
  return { id, top: { x: foot.x, y: foot.y - tall - tail / 2 }, feet, up: UP, strands, loop, letter };
}

/** Order of the key: chains, slip stitches, then by height and by what is done to the plain stitch. */
function rankOf(id: string): number {
  const at = LADDER.findIndex((base) => id === base || id.endsWith(`.${base}`));
  return (at < 0 ? 50 : at * 4) + (id.includes('.') ? 100 : 0);
}

function stitchEntries(graph: Graph, terms: Terms, letters: ReadonlyMap<string, string>): Entry[] {
  const met = new Map<string, Node>();
  const nodes = graph.rows.flatMap((row) => row.nodes);
  for (const node of nodes) {
    const id = node.site.stitch;
    if (node.kind !== 'stitch' || node.site.turning || id === null) continue;
    const key = `${id}|${node.feet.length > 1 ? 'over' : strandsOf(node)}|${node.making?.form === 'crossed' ? 'x' : ''}`;
    const known = met.get(key);
    if (known === undefined || (known.making?.parts ?? null) === null) met.set(key, node);
    // Front and back differ only by the way of the hook: both are shown, so that they can be told apart.
    const other = id.startsWith('fp.')
      ? `bp.${id.slice(3)}`
      : id.startsWith('bp.')
        ? `fp.${id.slice(3)}`
        : null;
    const twin = other === null ? null : `${other}|${key.split('|').slice(1).join('|')}`;
    if (twin !== null && !met.has(twin)) {
      met.set(twin, { ...node, site: { ...node.site, stitch: other } });
    }
  }
  const entries = [...met.values()].map((node): Entry & { rank: number } => {
    const id = node.site.stitch!;
    const crossed = node.making?.form === 'crossed';
    const name = nameOf(id, strandsOf(node) > 1 ? (node.making?.parts ?? null) : null, terms);
    const says = crossed
      ? `crossed ${namesOf(id, terms).name}: the second in front of or behind the first, as the text says`
      : /tog\d/.test(id) && node.feet.length <= 1
        ? `${name}, in one place`
        : name;
    const letter = letters.get(id) ?? null;
    return {
      rank: rankOf(id) + (crossed ? 1 : 0),
      tall: heightOf(node),
      says: letter === null ? says : `${says} (${letter})`,
      draw: (foot, ink) => {
        const sign = signFor(id, node, foot, ink.unit, letter);
        if (!crossed) return [stitch(sign, ink)];
        const half = 0.5 * ink.unit;
        const lean = (way: number): Sign => ({
          ...sign,
          top: { x: foot.x + way * half, y: sign.top.y },
          feet: [{ x: foot.x - way * half, y: foot.y }],
          up: { x: way * 0.4, y: -0.9 },
        });
        return [stitch(lean(1), ink), stitch(lean(-1), ink)];
      },
    };
  });
  return entries.sort((a, b) => a.rank - b.rank);
}

/** What the key explains, in its order. */
function entriesOf(graph: Graph, terms: Terms, letters: ReadonlyMap<string, string>): readonly Entry[] {
  const nodes = graph.rows.flatMap((row) => row.nodes);
  const traces = graph.rows.map((row) => row.trace);
  const entries: Entry[] = [];
  const flat = (foot: Point, u: number): Point => ({ x: foot.x, y: foot.y - 0.3 * u });
  const add = (isUsed: boolean, tall: number, says: string, draw: Entry['draw']): void => {
    if (isUsed) entries.push({ tall, says, draw });
  };
  const chains = graph.baseKind === 'chain' || graph.ring > 0 || nodes.some(({ kind }) => kind === 'space');
  const stands = new Map<string, { n: number; counts: string | null }>();
  for (const { stood, sites } of traces) {
    if (stood === null || stood.upright === 0) continue;
    const counts = stood.counts ? (sites.find((site) => site.turning)?.stitch ?? null) : null;
    stands.set(`${stood.upright}|${counts}`, { n: stood.upright, counts });
  }
  add(chains || stands.size > 0, 0.6, namesOf('chain', terms).name, (foot, ink) => [
    chain(flat(foot, ink.unit), { x: 1, y: 0 }, 0.82 * ink.unit, ink),
  ]);
  const slips =
    traces.some(
      ({ joined, closing, travelled }) =>
        (joined && (closing === 'slip' || closing === null)) || travelled.length > 0,
    ) || nodes.some(({ site }) => site.base === 'slip');
  const plainSlip = nodes.some(({ site, kind }) => kind === 'stitch' && site.stitch === 'slip');
  add(slips && !plainSlip, 0.6, namesOf('slip', terms).name, (foot, ink) => [
    slip(flat(foot, ink.unit), { x: 1, y: 0 }, ink),
  ]);
  entries.push(...stitchEntries(graph, terms, letters));
  for (const { n, counts } of [...stands.values()].sort((a, b) => a.n - b.n)) {
    const tall = Math.min(n * 0.82, 4);
    const stands =
      counts === null ? 'does not count as a stitch' : `counts as ${namesOf(counts, terms).name}`;
    add(true, tall, `${n === 1 ? '1 chain' : `${n} chains`} at the start: ${stands}`, (foot, ink) =>
      stack(foot, { x: foot.x, y: foot.y - tall * ink.unit }, n, ink),
    );
  }
  for (const n of new Set(nodes.flatMap(({ kind, site }) => (kind === 'picot' ? [site.chains] : [])))) {
    add(true, 1.4, `picot of ${n} chains`, (foot, ink) => {
      const u = ink.unit;
      const r = Math.max(0.26, (n * 0.66) / (2 * Math.PI)) * u;
      const centre = { x: foot.x, y: foot.y - r - 0.2 * u };
      const ovals = Array.from({ length: n }, (_, i) => {
        const angle = Math.PI / 2 + ((i + 1) * 2 * Math.PI) / (n + 1);
        const at = { x: centre.x + Math.cos(angle) * r, y: centre.y + Math.sin(angle) * r };
        return chain(
          at,
          { x: -Math.sin(angle), y: Math.cos(angle) },
          Math.min(0.62 * u, ((2 * Math.PI * r) / (n + 1)) * 0.98),
          ink,
        );
      });
      return [...ovals, slip({ x: foot.x, y: foot.y - 0.16 * u }, { x: 1, y: 0 }, { ...ink, unit: u * 0.8 })];
    });
  }
  const loops: readonly (readonly ['back' | 'front' | 'third', string])[] = [
    ['back', 'arc below a stitch, open upwards: in the back loop only'],
    ['front', 'arc below a stitch, open downwards: in the front loop only'],
    ['third', 'line below a stitch: in the third loop'],
  ];
  for (const [loop, says] of loops) {
    const used = nodes.find(({ making }) => making?.loop === loop);
    add(used !== undefined, 1.2, says, (foot, ink) => {
      const at = { x: foot.x, y: foot.y - 0.2 * ink.unit };
      const sign: Sign = {
        id: 't1',
        top: { x: at.x, y: at.y - 1.05 * ink.unit },
        feet: [at],
        up: UP,
        strands: 1,
        loop,
        letter: null,
      };
      return [stitch(sign, ink)];
    });
  }
  add(graph.baseKind === 'ring' && graph.ring === 0, 0.9, 'ring of yarn, worked into', (foot, ink) => [
    oval({ x: foot.x, y: foot.y - 0.45 * ink.unit }, { x: 1, y: 0 }, 0.4 * ink.unit, 0.4 * ink.unit, ink),
  ]);
  add(
    traces.some(({ row }) => row.items.some(({ type }) => type === 'attach')),
    0.6,
    'yarn is joined here',
    (foot, ink) => [
      triangle({ x: foot.x + 0.2 * ink.unit, y: foot.y - 0.3 * ink.unit }, { x: 1, y: 0 }, false, ink),
    ],
  );
  add(
    traces.some(({ fastened }) => fastened),
    0.6,
    'yarn is cut here',
    (foot, ink) => [triangle({ x: foot.x, y: foot.y }, { x: 0, y: 1 }, true, ink)],
  );
  const spiral = graph.form === 'rounds' && traces.some(({ joined }) => !joined);
  add(spiral, 1, 'dashed line: the round begins here', (foot, { unit }) => [
    path(
      [
        ['M', foot.x, foot.y],
        ['L', foot.x, foot.y - unit],
      ],
      { role: 'measure', stroke: unit / 14, dash: [unit / 9, unit / 7] },
    ),
  ]);
  add(graph.baseKind === 'row', 0.4, `the ${calledIn(graph)} before`, (foot, { unit, stroke }) => [
    path(
      [
        ['M', foot.x - 0.32 * unit, foot.y - 0.2 * unit],
        ['L', foot.x + 0.32 * unit, foot.y - 0.2 * unit],
      ],
      { role: 'other', stroke },
    ),
  ]);
  return [...entries, ...tones(graph)];
}

/** What the chart's rows are called. */
const calledIn = ({ rows }: Graph): 'round' | 'row' =>
  rows.every(({ kind }) => kind === 'round') ? 'round' : 'row';

/** How the two sorts of rows are told apart. */
function tones(graph: Graph): Entry[] {
  const sample =
    (isSecond: boolean): Entry['draw'] =>
    (foot, { unit }) => [
      path(
        [
          ['M', foot.x - 0.6 * unit, foot.y - 0.3 * unit],
          ['L', foot.x + 0.6 * unit, foot.y - 0.3 * unit],
        ],
        {
          role: isSecond ? 'other' : 'outline',
          stroke: (unit / 13) * (isSecond ? THIN : THICK),
        },
      ),
    ];
  if (graph.rows.length < 2) return [];
  const rounds = graph.rows.every((row) => row.side === null || isPlainRound(row));
  const called = calledIn(graph);
  const says = rounds
    ? [`thicker lines: every other ${called}, to tell them apart`, `thinner lines: the ${called}s between`]
    : ['thicker lines: right-side rows (RS)', 'thinner lines: wrong-side rows (WS)'];
  return [
    { draw: sample(false), tall: 0.6, says: says[0]! },
    { draw: sample(true), tall: 0.6, says: says[1]! },
  ];
}

/** Sentences on how the chart is read, in the reader's English. */
export function readingOf(graph: Graph, terms: Terms): readonly string[] {
  const many = graph.rows.some((row) =>
    row.nodes.some((node, i) => {
      const before = row.nodes[i - 1];
      return (
        before !== undefined &&
        node.feet.length === 1 &&
        sameFeet(before, node) &&
        node.feet[0]!.kind !== 'ring'
      );
    }),
  );
  const outwards = terms === 'us' ? 'from the center outward' : 'from the centre outwards';
  const way =
    graph.form === 'rounds'
      ? graph.rows.some((row) => row.way === -1)
        ? `Read ${outwards}, by turns ${leftAbout(terms)} and clockwise; each number stands where its round begins.`
        : `Read ${outwards} and ${leftAbout(terms)}; each number stands where its round begins.`
      : `Read from the bottom upwards; each ${calledIn(graph)} begins at its number and goes the way of its arrow.`;
  // Publishers differ here: some draw a wrong-side row as it looks from the right side.
  const isSided = (node: Node): boolean =>
    /^(?:fp|bp)\./u.test(node.site.stitch ?? '') ||
    node.making?.loop === 'front' ||
    node.making?.loop === 'back';
  const sided =
    graph.form === 'flat' &&
    graph.rows.some((row) => row.side === 'WS' && !isPlainRound(row) && row.nodes.some(isSided));
  return [
    way,
    ...(many ? ['Symbols that meet at the foot are worked in one place.'] : []),
    ...(sided
      ? [
          'Front and back are as the row is worked: in a wrong-side row, front is the wrong side, which faces you.',
        ]
      : []),
  ];
}

/** Draws the key in columns as wide as the sheet has room for. */
export function drawKey(
  graph: Graph,
  terms: Terms,
  { unit, type, smallest, letters }: SheetStyle,
  width: number,
  sentences: readonly string[],
): Scene {
  const entries = entriesOf(graph, terms, letters);
  const ink: Ink = { role: 'outline', stroke: unit / 13, unit };
  const cell = 3.2 * unit;
  const columns = Math.max(1, Math.min(2, Math.floor(width / (cell + type * 18))));
  const column = width / columns;
  const size = Math.max(type * 0.95, smallest);
  const lead = size * 1.28;
  const shapes: Shape[] = [words('Key', 0, type * 1.1, { size: type * 1.1, bold: true })];
  let y = type * 1.9;
  for (let i = 0; i < entries.length; i += columns) {
    const line = entries.slice(i, i + columns);
    const texts = line.map(({ says }) => wrapped(says, size, column - cell - size));
    const room = Math.max(
      ...line.map(({ tall }) => tall * unit + 0.4 * unit),
      ...texts.map((text) => text.length * lead + 0.2 * unit),
    );
    line.forEach(({ draw, tall, says }, k) => {
      const x = k * column;
      const foot = { x: x + cell / 2, y: y + room / 2 + (tall * unit) / 2 };
      const text = texts[k]!;
      const top = y + room / 2 - (text.length * lead) / 2 + size * 0.95;
      shapes.push(
        group(
          [...draw(foot, ink), ...text.map((words_, n) => words(words_, x + cell, top + n * lead, { size }))],
          0,
          0,
          0,
          `key ${says}`,
        ),
      );
    });
    y += room + 0.25 * unit;
  }
  const said = sentences.flatMap((text) => wrapped(text, size, width));
  said.forEach((text, i) => {
    shapes.push(words(text, 0, y + size * 1.2 + i * lead, { size }));
  });
  const height_ = y + size * 0.6 + said.length * lead + size * 0.4;
  const alt = ['Key.', ...entries.map(({ says }) => `${says}.`), ...sentences].join(' ');
  return { width, height: toHundredth(height_), title: 'Key to the chart', alt, shapes };
}
