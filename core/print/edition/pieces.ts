/**
 * A piece as it is printed: its name, how it starts, and its blocks: rows with label, side, words and count;
 * repeats and shaping in words; headings, prose and photographs. Numbers come from the study; every row is
 * worded in `text` and counted in `counts`.
 */
import type { Block, RowBlock } from '../../document/pattern.ts';
import type { Span } from '../../finding.ts';
import { evenWords, lineNamed, type Schedule, scheduleWords } from '../../grading/index.ts';
import type { RowTree } from '../../notation/tree.ts';
import {
  type BlockInSize,
  type BlockStudy,
  blockLabel,
  formOf,
  onlySizes,
  type PieceStudy,
  sharedList,
} from '../../study/index.ts';
import {
  bold,
  figure,
  heading,
  type Paragraph,
  type Part,
  type Block as Printed,
  paragraph,
  part,
  picture,
  type Row,
  row,
  type Text,
  together,
  withNext,
} from '../content.ts';
import { countWords } from './counts.ts';
import type { Reader } from './reader.ts';
import { pieceName, startParagraph } from './starts.ts';
import { ownWords, plainWords, textWords } from './text.ts';

/** The part of one piece. `newPage` for the first one, where the instructions begin. */
export function piecePart(study: PieceStudy, reader: Reader, newPage: boolean): Part {
  const start = startParagraph(study, reader);
  const blocks = study.blocks.flatMap((block) => printed(block, study, reader));
  return part(pieceTitle(study, reader), held(start === null ? blocks : [start, ...blocks]), newPage);
}

/** The blocks of a piece as they are printed, each with the id of the block that it comes from. */
export function printedById(
  study: PieceStudy,
  reader: Reader,
): readonly { readonly id: string; readonly blocks: readonly Printed[] }[] {
  const start = startParagraph(study, reader);
  return [
    ...(start === null ? [] : [{ id: `${study.piece.id} start`, blocks: [start] }]),
    ...study.blocks.map((block) => ({ id: block.block.id, blocks: printed(block, study, reader) })),
  ];
}

/** Title of a piece's part. */
export function pieceTitle({ piece }: PieceStudy, reader: Reader): string {
  const name = pieceName(piece, reader);
  return piece.make > 1 ? `${name} (make ${piece.make})` : name;
}

/** Characters of prose that goes with the row it leads to, and of a last word ("Fasten off.") to the row before. */
const LEADS = 480;
const CLOSES = 64;

/** Prose that opens a piece or a section is not parted from its first row, nor a short last word from the row that it ends. */
function held(blocks: readonly Printed[]): readonly Printed[] {
  const out: Printed[] = [];
  let opens = true;
  blocks.forEach((block, i) => {
    const next = blocks[i + 1];
    const after = blocks[i + 2];
    // A foundation chain is as little to work from as prose is.
    const chain = block.kind === 'row' && block.count === null && lengthOf({ words: block.body }) <= CLOSES;
    const leads =
      opens && next !== undefined && (chain || (block.kind === 'paragraph' && lengthOf(block) <= LEADS));
    if (block.kind !== 'paragraph') opens = block.kind === 'heading';
    const closes =
      block.kind === 'row' &&
      next?.kind === 'paragraph' &&
      lengthOf(next) <= CLOSES &&
      (after === undefined || after.kind === 'heading');
    out.push(leads || closes ? withNext(block) : block);
  });
  return out;
}

const lengthOf = ({ words }: Pick<Paragraph, 'words'>): number =>
  words.reduce((sum, run) => sum + run.text.length, 0);

function printed(block: BlockStudy, piece: PieceStudy, reader: Reader): readonly Printed[] {
  const own = block.block;
  if ('sizes' in own && !forReader(own.sizes, reader)) return [];
  switch (own.type) {
    case 'heading':
      return own.text.trim() === '' ? [] : [heading(2, reader.say(own.text.trim(), own.id))];
    case 'photo':
      return [
        figure(
          picture(own.media.id),
          reader.say(own.media.alt, own.id),
          own.media.caption === null ? null : plainWords(own.media.caption, reader, own.id),
        ),
      ];
    case 'prose': {
      const words = textWords(own.text, reader, { node: own.id, kind: 'prose', only: own.sizes });
      if (words.length === 0) return [];
      const only = onlyWords(own.sizes, reader);
      return [paragraph(only === null ? words : [bold(`${only}: `), ...words])];
    }
    case 'row':
      return [rowBlock(block, own, piece, reader)];
    case 'repeat':
      return [repeatRow(block, own, piece, reader)];
    case 'shaping':
      return shapingRows(block, own, piece, reader);
  }
}

/** Whether any of the sizes shown works a block. */
function forReader(ids: readonly string[] | null, reader: Reader): boolean {
  return ids === null || reader.sizes.some((size) => ids.includes(reader.pattern.sizes[size]!.id));
}

/** "Sizes L and XL only"; nothing in an edition of one size, which leaves other sizes' rows out. */
function onlyWords(ids: readonly string[] | null, reader: Reader): string | null {
  return reader.alone ? null : onlySizes(ids, reader.pattern.sizes);
}

function shown(block: BlockStudy, reader: Reader): readonly (BlockInSize | null)[] {
  return reader.sizes.map((size) => block.sizes[size] ?? null);
}

function labelled(
  block: BlockStudy,
  piece: PieceStudy,
  reader: Reader,
  body: Text,
  more: { only: string | null; count: Text | null },
): Row {
  const label = blockLabel(piece, block, reader.sizes);
  const form = formOf(piece.piece.blocks, block.block);
  const unworked = form === 'round' ? 'Rnd' : form === 'foundation' ? 'Foundation' : 'Row';
  const named = nextRows(block, form, reader) ?? label?.text ?? unworked;
  return row(reader.say(named, block.block.id, 'row'), body, {
    ...more,
    side: sideOf(label?.side ?? null),
  });
}

/**
 * "Next 7 (8, 9) rnds": several rows that do not begin with the same number in every size, where a list of ranges
 * would be hard to read.
 */
function nextRows(block: BlockStudy, form: ReturnType<typeof formOf>, reader: Reader): string | null {
  if (block.block.type === 'row') return null;
  const worked = shown(block, reader).map((size) => (size === null || size.rows === 0 ? null : size));
  const there = worked.filter((size) => size !== null);
  const one = there.every((size) => size.first === there[0]!.first && size.first !== null);
  if (one || there.every((size) => size.rows === 1)) return null;
  return `Next ${sharedList(worked.map((size) => size?.rows ?? null))} ${form === 'round' ? 'rnds' : 'rows'}`;
}

/** The side where it is one side: a list of sides, one a size, tells a reader less than it takes to read. */
function sideOf(side: string | null): string | null {
  return side === null || side.includes('(') ? null : side;
}

function rowBlock(block: BlockStudy, own: RowBlock, piece: PieceStudy, reader: Reader): Row {
  const tree = block.tree;
  const count = countWords(
    shown(block, reader).map((size) => size?.tally ?? null),
    tree,
    reader,
  );
  return labelled(block, piece, reader, rowWords(own, tree, reader, count !== null), {
    only: onlyWords(own.sizes, reader),
    count,
  });
}

function rowWords(own: RowBlock, tree: RowTree | null, reader: Reader, counted: boolean): Text {
  return textWords(own.text, reader, {
    node: own.id,
    kind: 'row',
    only: own.sizes,
    cuts: tree === null || !counted ? [] : countSpans(own.text.text, tree),
    lists: tree === null ? [] : listsIn(tree),
  });
}

/** Where the text states the row's count: after all its work, with the dash or colon that leads to it. */
function countSpans(text: string, tree: RowTree): readonly Span[] {
  const working = new Set([
    'chain',
    'work',
    'group',
    'repeat',
    'again',
    'skip',
    'rows-again',
    'even',
    'shaping',
  ]);
  const end = Math.max(0, ...tree.items.filter((item) => working.has(item.type)).map((item) => item.to));
  return tree.counts
    .filter((count) => count.from >= end)
    .map((count) => {
      const led = /[\s\u00A0]*(?:[–—:=-][\s\u00A0]*)?$/u.exec(text.slice(0, count.from))?.[0] ?? '';
      const closed = text.slice(0, count.from - led.length).trimEnd();
      const after = text.slice(count.to);
      // "turn. (24 sts)." would leave two full stops.
      const stop = /[.!]$/.test(closed) && /^\./.test(after) ? 1 : 0;
      return { from: count.from - led.length, to: count.to + stop };
    });
}

type SizeList = Span & { readonly values: readonly (number | null)[] };

/** Lists of numbers that the reader of rows found, brackets or not: "12, 14, 16". */
function listsIn(tree: RowTree): readonly SizeList[] {
  const lists: SizeList[] = [];
  const visit = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return;
    if (Array.isArray(value)) {
      value.forEach(visit);
      return;
    }
    const node = value as { kind?: unknown } & Partial<SizeList>;
    if (
      node.kind === 'sizes' &&
      node.values !== undefined &&
      node.from !== undefined &&
      node.to !== undefined
    ) {
      lists.push({ from: node.from, to: node.to, values: node.values });
      return;
    }
    Object.values(value).forEach(visit);
  };
  visit(tree.items);
  return lists.filter((list, i) => lists.findIndex((other) => other.from === list.from) === i);
}

/** "Rep Rows 2 and 3, ending with Row 2 (3, 3) (WS)." */
function repeatRow(
  block: BlockStudy,
  own: Extract<Block, { type: 'repeat' }>,
  piece: PieceStudy,
  reader: Reader,
): Row {
  const groups = reader.sizes.map((size) => groupOf(own, piece, reader, size));
  const rounds = formOf(piece.piece.blocks, own) === 'round';
  const words = [
    `Rep ${rowsNamed(groups, reader, rounds)}`,
    ...endingWords(block, groups, piece, reader, rounds),
  ];
  // Counted as the author counts the row that ends it, where that is the same row in every size.
  const ends = new Set(groups.flatMap((group, i) => lastOf(block, group, reader.sizes[i]!) ?? []));
  const [end] = ends;
  const count = countWords(
    shown(block, reader).map((size) => size?.tally ?? null),
    ends.size === 1 ? end!.tree : null,
    reader,
  );
  return labelled(block, piece, reader, ownWords(words.join(', '), reader), {
    only: onlyWords(own.sizes, reader),
    count,
  });
}

/** The blocks that a repeat works again in one size. */
function groupOf(
  own: Extract<Block, { type: 'repeat' }>,
  piece: PieceStudy,
  reader: Reader,
  size: number,
): readonly BlockStudy[] {
  const at = (id: string): number => piece.blocks.findIndex((block) => block.block.id === id);
  const id = reader.pattern.sizes[size]!.id;
  if (own.sizes !== null && !own.sizes.includes(id)) return [];
  const first = at(own.first);
  if (first < 0) return [];
  return piece.blocks
    .slice(first, at(own.last) + 1)
    .filter(({ block }) => block.type === 'row' && (block.sizes === null || block.sizes.includes(id)));
}

/** The row of the repeat that a size works last; null when it works none. */
function lastOf(block: BlockStudy, group: readonly BlockStudy[], size: number): BlockStudy | null {
  const rows = block.sizes[size]?.rows ?? 0;
  return rows === 0 || group.length === 0 ? null : group[(rows - 1) % group.length]!;
}

function rowsNamed(groups: readonly (readonly BlockStudy[])[], reader: Reader, rounds: boolean): string {
  const noun = rounds ? 'Rnd' : 'Row';
  const ends = groups.map((group, i) => {
    const size = reader.sizes[i]!;
    const first = group[0]?.sizes[size]?.first ?? null;
    const last = group.at(-1)?.sizes[size]?.last ?? null;
    return first === null || last === null ? null : ([first, last] as const);
  });
  const first = sharedList(ends.map((end) => end?.[0] ?? null));
  const last = sharedList(ends.map((end) => end?.[1] ?? null));
  const there = ends.filter((end) => end !== null);
  if (there.every(([a, b]) => a === b)) return `${noun} ${first}`;
  if (there.every(([a, b]) => b === a + 1)) return `${noun}s ${first} and ${last}`;
  return /[(,]/.test(first) ? `${noun}s ${first} to ${last}` : `${noun}s ${first}–${last}`;
}

/** Which row of the repeat is the last one, where that is not the repeat's own last row in every size. */
function endingWords(
  block: BlockStudy,
  groups: readonly (readonly BlockStudy[])[],
  piece: PieceStudy,
  reader: Reader,
  rounds: boolean,
): readonly string[] {
  const ends = groups.map((group, i) => {
    const size = reader.sizes[i]!;
    const end = lastOf(block, group, size);
    const own = block.sizes[size] ?? null;
    if (end === null || own === null) return null;
    const turns = piece.fabrics[size]?.form === 'flat';
    const side =
      own.side === null || !turns || own.rows % 2 === 1 ? own.side : own.side === 'RS' ? 'WS' : 'RS';
    return { number: end.sizes[size]?.last ?? null, side, whole: end === group.at(-1) };
  });
  const there = ends.filter((end) => end !== null);
  if (there.every((end) => end.whole)) return [];
  const number = sharedList(ends.map((end) => end?.number ?? null));
  const sides = new Set(there.map((end) => end.side));
  const [side] = sides;
  const facing = sides.size === 1 && side && !rounds ? ` (${side === 'RS' ? 'an RS' : 'a WS'} row)` : '';
  return [`ending with ${rounds ? 'Rnd' : 'Row'} ${number}${facing}`];
}

/** The schedule in words, then the two rows it is made of. */
function shapingRows(
  block: BlockStudy,
  own: Extract<Block, { type: 'shaping' }>,
  piece: PieceStudy,
  reader: Reader,
): readonly Printed[] {
  const { study, wording } = reader;
  const result = lineNamed(study.sheet, own.line);
  const schedules = reader.sizes.map((size): Schedule | null => {
    const id = reader.pattern.sizes[size]!.id;
    const value = own.sizes !== null && !own.sizes.includes(id) ? null : result?.sizes[size]?.value;
    return value?.dimension === 'schedule' ? value.schedule : null;
  });
  const form = formOf(piece.piece.blocks, own) === 'round' ? 'round' : 'row';
  const noun = form === 'round' ? 'rnd' : 'row';
  const shaped = `Shaping ${noun}`;
  const even = wording.evenRow(noun);
  const plan = scheduleWords(schedules, form);
  const after = wording.even(evenWords(schedules, form));
  const shapes = schedules.some((schedule) => (schedule?.shapings.length ?? 0) > 0);
  const between = schedules.some((schedule) => schedule !== null && schedule.rows > schedule.shapings.length);
  const sentences = [
    plan,
    after,
    shapes && between
      ? `Work the ${shaped.toLowerCase()} on the ${noun}s named and the ${even.toLowerCase()} on all others`
      : '',
  ].filter((sentence) => sentence !== '');
  const count = countWords(
    shown(block, reader).map((size) => size?.tally ?? null),
    null,
    reader,
  );
  const lead = labelled(block, piece, reader, ownWords(sentences.join('. '), reader), {
    only: onlyWords(own.sizes, reader),
    count,
  });
  const rowOf = (label: string, one: RowBlock): Row =>
    row(label, rowWords({ ...one, sizes: own.sizes }, study.readings.row(one), reader, false));
  const rows = [...(shapes ? [rowOf(shaped, own.shaped)] : []), ...(between ? [rowOf(even, own.even)] : [])];
  return [together(withNext(lead), ...rows)];
}
