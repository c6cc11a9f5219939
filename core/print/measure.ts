/**
 * Turns blocks into slices and tags, in reading order: how wide each text runs, what hangs beside what, and
 * which breaks would hurt. It decides no page and draws nothing.
 */

import { cautionSlices, keySlices } from './boxes.ts';
import {
  type Block,
  type Heading,
  type List,
  type Paragraph,
  type Part,
  plain,
  type Row,
} from './content.ts';
import { across, besideSlices, type Desk, span, textOf, textSlices } from './desk.ts';
import { entrySlices } from './entries.ts';
import { measureFigure } from './figure.ts';
import { breakLines, JOIN, naturalWidth } from './lines.ts';
import { type Tag, tag } from './page.ts';
import { BREAK, bindAll, bindFirst, heightOf, holdEnds, type Slice, withGap } from './slice.ts';
import { measureTable } from './table.ts';

/** Part of a page that is too little to turn over for. */
const END = 0.1;

/** Slices of the parts, and their tags under `root`, one section for each part. */
export function measureParts(parts: readonly Part[], root: Tag, desk: Desk): Slice[] {
  const slices: Slice[] = [];
  let level = 1;
  for (const part of parts) {
    const section = tag('Sect', { title: part.title });
    const composer = new Composer(section, desk, level);
    const own: Slice[] = [];
    if (part.title !== '')
      own.push(...composer.add({ kind: 'heading', level: 1, words: [plain(part.title)] }));
    for (const block of part.blocks) own.push(...composer.add(block));
    level = composer.level;
    if (section.children.length > 0) root.children.push(section);
    if (part.newPage && desk.style.partPages && own.length > 0) own[0] = { ...own[0]!, opens: true };
    slices.push(...holdEnds(own, END * desk.height));
  }
  return slices;
}

/** Takes blocks one after another and remembers what the next one depends on. */
class Composer {
  /** Level of the last heading, as tagged. */
  level: number;
  readonly #parent: Tag;
  readonly #desk: Desk;
  #previous: Block | null = null;
  #rows: Tag | null = null;
  /** Cost of parting the next block from what is above it. */
  #bound: number = BREAK.free;
  #extra = 0;
  #forced = false;

  constructor(parent: Tag, desk: Desk, level: number) {
    this.#parent = parent;
    this.#desk = desk;
    this.level = level;
  }

  add(block: Block): Slice[] {
    const { spaces } = this.#desk.style;
    switch (block.kind) {
      case 'together': {
        const slices = block.blocks.flatMap((inner) => this.add(inner));
        const cost = block.glance ? BREAK.glance : BREAK.together;
        return heightOf(slices) <= this.#desk.height * 0.95 ? bindAll(slices, cost) : slices;
      }
      case 'with-next': {
        const slices = this.add(block.block);
        if (slices.length > 0) this.#bound = BREAK.strand;
        return slices;
      }
      case 'space':
        this.#extra += block.amount === 'small' ? spaces.small : spaces.large;
        this.#rows = null;
        return [];
      case 'page-break':
        this.#forced = true;
        this.#rows = null;
        return [];
      default:
        break;
    }
    if (block.kind !== 'row') this.#rows = null;
    let slices = this.#measure(block);
    if (slices.length === 0) return [];
    const gap = gapBetween(this.#previous, block, this.#desk) + this.#extra;
    slices = withGap(slices, gap + (slices[0]!.above.length > 0 ? slices[0]!.gap : 0));
    slices = bindFirst(slices, this.#bound);
    if (this.#forced) slices = slices.map((one, i) => (i === 0 ? { ...one, forced: true } : one));
    this.#previous = block;
    this.#extra = 0;
    this.#forced = false;
    // A single line under a heading introduces what follows: better not left alone with it.
    const introduces = this.#bound === BREAK.strand && block.kind === 'paragraph' && slices.length === 1;
    this.#bound = block.kind === 'heading' ? BREAK.strand : introduces ? BREAK.together : BREAK.free;
    return slices;
  }

  #measure(block: Exclude<Block, { kind: 'together' | 'with-next' | 'space' | 'page-break' }>): Slice[] {
    const desk = this.#desk;
    switch (block.kind) {
      case 'heading':
        return this.#heading(block);
      case 'paragraph':
        return paragraphSlices(block, this.#parent, desk);
      case 'row': {
        if (!this.#rows) {
          this.#rows = tag('L', { numbering: 'Decimal' });
          this.#parent.children.push(this.#rows);
        }
        return rowSlices(block, this.#rows, desk);
      }
      case 'list':
        return listSlices(block, this.#parent, desk);
      case 'entries':
        return entrySlices(block, this.#parent, desk);
      case 'table':
        return measureTable(block, this.#parent, desk);
      case 'figure':
        return measureFigure(block, this.#parent, desk);
      case 'caution':
        return cautionSlices(block, this.#parent, desk);
      case 'key':
        return keySlices(block, this.#parent, desk);
    }
  }

  #heading(block: Heading): Slice[] {
    const desk = this.#desk;
    const { looks, colours, rules } = desk.style;
    // A tagged document must not skip a level on the way down (ISO 14289-1, 7.4.2).
    this.level = Math.min(block.level, this.level + 1);
    const own = tag((['H1', 'H2', 'H3'] as const)[this.level - 1]!);
    const look = looks.heading[block.level - 1]!;
    const x = block.level === 3 ? desk.bodyX : desk.left;
    const lines = textSlices(desk, [span(block.words, look)], x, desk.left + desk.width - x, [own]);
    if (lines.length === 0) return [];
    this.#parent.children.push(own);
    let slices = bindAll(lines, BREAK.strand);
    if (block.level === 1) {
      // The rule parts two parts on one page; a page that begins with a part needs none.
      const rise = look.size * 0.45;
      const rule = across(desk.left, desk.left + desk.width, -rise, rules.thin, colours.ink);
      slices = slices.map((one, i) => (i === 0 ? { ...one, gap: rise, above: [rule] } : one));
    }
    slices[0] = { ...slices[0]!, bookmark: { title: textOf(block.words), level: block.level } };
    return slices;
  }
}

/** Space between two neighbours, by what they are. */
function gapBetween(above: Block | null, below: Block, desk: Desk): number {
  const { spaces } = desk.style;
  if (below.kind === 'heading') {
    const before = spaces.headingBefore[below.level - 1]!;
    return above?.kind === 'heading' ? Math.max(spaces.headingAfter[above.level - 1]!, before * 0.5) : before;
  }
  if (!above) return 0;
  if (above.kind === 'heading') {
    const after = spaces.headingAfter[above.level - 1]!;
    return below.kind === 'table' || below.kind === 'caution' || below.kind === 'key' ? after + 2 : after;
  }
  if (above.kind === 'row' && below.kind === 'row') return spaces.row;
  const airy = (block: Block): boolean => ['table', 'figure', 'caution', 'key'].includes(block.kind);
  if (airy(above) || airy(below)) return spaces.block;
  return spaces.paragraph;
}

function paragraphSlices(block: Paragraph, parent: Tag, desk: Desk): Slice[] {
  const own = tag('P');
  const look = desk.style.looks[block.look];
  const slices = textSlices(desk, [span(block.words, look)], desk.bodyX, desk.bodyWidth, [own]);
  if (slices.length > 0) parent.children.push(own);
  return slices;
}

function rowSlices(block: Row, rows: Tag, desk: Desk): Slice[] {
  const { looks, hang } = desk.style;
  const label = tag('Lbl');
  const body = tag('LBody');
  rows.children.push(tag('LI', {}, [label, body]));
  const labelSpans = [
    span(block.label, looks.label),
    span(`${block.side === null ? '' : `\u00A0(${block.side})`}:`, looks.side),
  ];
  const bodySpans = [span([], looks.body)];
  if (block.only !== null) bodySpans.push(span(`${block.only}: `, looks.only));
  bodySpans.push(span(block.body, looks.body));
  if (block.count)
    bodySpans.push(span(block.body.length > 0 ? JOIN : '', looks.body), span(block.count, looks.count));
  const narrow = hang - 10;
  if (hang > 0 && naturalWidth(labelSpans, desk.fonts) <= narrow) {
    return besideSlices(
      desk,
      { lines: breakLines(labelSpans, narrow, desk.fonts), tags: [label], x: desk.left },
      { lines: breakLines(bodySpans, desk.bodyWidth, desk.fonts), tags: [body], x: desk.bodyX },
    );
  }
  // A label too long for its column, "Rows 5–32 (34, 36, 38):", has a line of its own above the words.
  const head = bindAll(textSlices(desk, labelSpans, desk.left, desk.width, [label]), BREAK.strand);
  const lines = textSlices(desk, bodySpans, desk.bodyX, desk.bodyWidth, [body]);
  return [...head, ...bindFirst(lines, BREAK.strand)];
}

function listSlices(block: List, parent: Tag, desk: Desk): Slice[] {
  const { looks, spaces } = desk.style;
  const items = block.items.filter((item) => textOf(item) !== '');
  if (items.length === 0) return [];
  const own = tag('L', { numbering: block.form === 'numbered' ? 'Decimal' : 'Disc' });
  parent.children.push(own);
  const markers = items.map((_, i) => (block.form === 'numbered' ? `${i + 1}.` : '•'));
  const widest = Math.max(
    ...markers.map((text) => desk.fonts.width(text, 'sans-semibold', looks.label.size)),
  );
  const indent = widest + looks.body.size * 0.65;
  return items.flatMap((item, i) => {
    const marker = tag('Lbl');
    const body = tag('LBody');
    own.children.push(tag('LI', {}, [marker, body]));
    const look = block.form === 'numbered' ? looks.label : looks.body;
    const lines = besideSlices(
      desk,
      {
        lines: breakLines([span(markers[i]!, look)], Number.POSITIVE_INFINITY, desk.fonts),
        tags: [marker],
        x: desk.bodyX,
      },
      {
        lines: breakLines([span(item, looks.body)], desk.bodyWidth - indent, desk.fonts),
        tags: [body],
        x: desk.bodyX + indent,
      },
    );
    const lone = i === 1 || i === items.length - 1;
    return i === 0 ? lines : withGap(bindFirst(lines, lone ? BREAK.inside * 2 : BREAK.inside), spaces.item);
  });
}
