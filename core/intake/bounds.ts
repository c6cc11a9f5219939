/**
 * Keeps what was brought in within the bounds of a document, whatever the text was: words that are too long for
 * their place go on in the next, and what is too many is put together. No word is lost.
 */
import { TREE_LIMITS, VALUE_LIMITS } from '../document/limits.ts';
import type { Block, FigureText, Pattern, Piece } from '../document/pattern.ts';
import { tidyText } from '../document/words.ts';

const tidy = (text: string): string => tidyText(text).trim();

/** A text in parts that each fit into a paragraph, cut between words where there is a gap. */
function parted(text: string, most: number = VALUE_LIMITS.paragraph): readonly string[] {
  const parts: string[] = [];
  let rest = text;
  while (rest.length > most) {
    const gap = rest.lastIndexOf(' ', most);
    let at = gap > most / 2 ? gap : most;
    // Never between the halves of one sign.
    if (/[\uD800-\uDBFF]/.test(rest[at - 1] ?? '')) at -= 1;
    parts.push(rest.slice(0, at).trim());
    rest = rest.slice(at).trim();
  }
  return [...parts, rest];
}

/** Paragraphs of their own, and no more of them than a list may have: the last ones share paragraphs. */
function paragraphs(texts: readonly FigureText[]): readonly FigureText[] {
  const all = texts.flatMap(({ text, figures }) =>
    figures.length > 0
      ? [{ text, figures }]
      : parted(tidy(text)).map((part) => ({ text: part, figures: [] })),
  );
  const most = TREE_LIMITS.items / 4;
  if (all.length <= most) return all;
  const rest = all
    .slice(most)
    .map(({ text }) => text)
    .join(' ');
  return [...all.slice(0, most), ...parted(rest).map((part) => ({ text: part, figures: [] }))];
}

const cut = (text: string): string => [...tidy(text)].slice(0, VALUE_LIMITS.name - 20).join('');

const written = (text: string): FigureText => ({ text, figures: [] });
const prose = (id: string, text: string): Block => ({ type: 'prose', id, sizes: null, text: written(text) });

/** More blocks than the longest pattern has: past them rows are kept as words only. */
const MOST_BLOCKS = 12_000;

/** Blocks within the bounds; words of those past the most, in order, are put together. */
class Blocks {
  #headings = 0;
  #count = 0;
  #more = 0;
  readonly #overflow: string[] = [];

  fresh = (): string => `more${++this.#more}`;

  of({ name, blocks: own }: Piece): readonly Block[] {
    const called = tidy(name);
    const first = called === cut(called) ? [] : [prose(this.fresh(), called)];
    return [...first, ...own.flatMap((block) => this.#one(block))];
  }

  #one(block: Block): readonly Block[] {
    this.#count += 1;
    if (this.#count > MOST_BLOCKS) {
      if ('text' in block) this.#overflow.push(typeof block.text === 'string' ? block.text : block.text.text);
      return [];
    }
    if (block.type === 'heading') {
      this.#headings += 1;
      const text = tidy(block.text);
      const fits = text.length <= VALUE_LIMITS.name && this.#headings < TREE_LIMITS.items;
      return [fits ? { ...block, text } : prose(block.id, text)];
    }
    if (block.type !== 'row' && block.type !== 'prose') return [block];
    const [first = '', ...rest] = parted(block.text.text);
    if (rest.length === 0) return [block];
    return [{ ...block, text: written(first) }, ...rest.map((text) => prose(this.fresh(), text))];
  }

  /** Words of all blocks past the most. */
  rest(): readonly Block[] {
    return this.#overflow.length === 0
      ? []
      : parted(this.#overflow.join(' ')).map((text) => prose(this.fresh(), text));
  }
}

/** Doubts that a file keeps: what a maker can go through. */
const MOST_DOUBTS = 2_000;

/** The pattern within the bounds of a document. */
export function bounded(pattern: Pattern): Pattern {
  const blocks = new Blocks();
  const pieces: Piece[] = [];
  for (const piece of pattern.pieces) {
    const own = {
      ...piece,
      name: cut(piece.name),
      make: Math.min(piece.make, 1_000),
      blocks: blocks.of(piece),
    };
    const last = pieces.at(-1);
    // Past the most pieces a text is no pattern any more; its words are kept all the same.
    if (last === undefined || pieces.length < TREE_LIMITS.pieces - 1) pieces.push(own);
    else
      pieces[pieces.length - 1] = {
        ...last,
        blocks: [...last.blocks, prose(blocks.fresh(), own.name), ...own.blocks],
      };
  }
  const rest = blocks.rest();
  const last = pieces.at(-1);
  if (last !== undefined && rest.length > 0)
    pieces[pieces.length - 1] = { ...last, blocks: [...last.blocks, ...rest] };
  const overlong: FigureText[] = [];
  /** A text of one paragraph; what goes beyond it becomes notes. */
  const one = (text: string): string => {
    const [first = '', ...more] = parted(tidy(text));
    overlong.push(...more.map(written));
    return first;
  };
  const { about } = pattern;
  const specials = pattern.specials.slice(0, TREE_LIMITS.items / 2).map((special) => ({
    ...special,
    nameUs: cut(special.nameUs),
    nameUk: cut(special.nameUk),
    abbrUs: cut(special.abbrUs),
    abbrUk: cut(special.abbrUk),
    text: written(one(special.text.text)),
  }));
  overlong.push(
    ...pattern.specials
      .slice(TREE_LIMITS.items / 2)
      .map(({ nameUs, text }) => written(`${nameUs}: ${text.text}`)),
  );
  const words = {
    title: cut(about.title),
    designer: cut(about.designer),
    description: one(about.description),
    care: one(about.care),
    copyright: one(about.copyright),
    contact: one(about.contact),
    fit: one(about.fit),
  };
  return {
    ...pattern,
    about: { ...about, ...words },
    notes: paragraphs([...pattern.notes, ...overlong]),
    finishing: paragraphs(pattern.finishing),
    pieces,
    specials,
    workbook: {
      ...pattern.workbook,
      doubts: pattern.workbook.doubts
        .slice(0, MOST_DOUBTS)
        .map(({ node, why }) => ({ node, why: tidy(why).slice(0, VALUE_LIMITS.sentence) })),
    },
  };
}
