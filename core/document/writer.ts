/**
 * A small language in which programs write patterns: rows with their figures in braces, lines of the sizing
 * sheet, edges, blocks of a piece. Examples and garment outlines are written with it. It builds plain pattern
 * data; nothing here works a row or judges one.
 */
import {
  type Block,
  type Edge,
  FIGURE,
  type FigureText,
  type Line,
  type Meeting,
  type PerSize,
  type Piece,
  type PieceStart,
  type Quantity,
  type RowBlock,
  type Size,
} from './pattern.ts';

/** Text with its figures in braces: "Ch {panel stitches + 1}." */
export function text(words: string): FigureText {
  const figures = [...words.matchAll(/\{([^{}]*)\}/g)].map((match) => match[1]!);
  return { text: words.replace(/\{[^{}]*\}/g, FIGURE), figures };
}

const slug = (name: string) => name.toLowerCase().replace(/[^a-z0-9]+/g, '-');

export const cm = (value: number): Quantity => ({ value, unit: 'cm' });
export const inches = (value: number): Quantity => ({ value, unit: 'in' });
export const plain = (value: number): Quantity => ({ value, unit: 'none' });
export const percent = (value: number): Quantity => ({ value, unit: '%' });

/** One value for each size, in the order of the sizes. */
export function each(
  sizes: readonly Size[],
  values: readonly number[],
  unit: (value: number) => Quantity,
): PerSize<Quantity> {
  return { each: Object.fromEntries(sizes.map(({ id }, i) => [id, unit(values[i]!)])) };
}

/** How a line is told in the table of measurements: its heading, and the body line that it fits. */
interface Told {
  readonly printed?: string;
  readonly fits?: string;
}

const base = (name: string, told: Told = {}) => ({
  id: `line-${slug(name)}`,
  name,
  printed: told.printed ?? null,
  note: told.fits ?? null,
});

export function bodyLine(
  name: string,
  measure: string,
  overtyped: Readonly<Record<string, Quantity>>,
  told: Told = {},
): Line {
  return { ...base(name, told), kind: 'body', measure, bound: 'upper', overtyped };
}

export function typedLine(name: string, values: PerSize<Quantity>, told: Told = {}): Line {
  return { ...base(name, told), kind: 'typed', values };
}

export function easeLine(name: string, values: PerSize<Quantity>): Line {
  return { ...base(name), kind: 'ease', values };
}

export function formulaLine(name: string, formula: string, told: Told = {}): Line {
  return { ...base(name, told), kind: 'formula', formula };
}

type Stitches = Extract<Line, { kind: 'stitches' }>;

/** Stitches fitted to a width: so many repeats of `multiple` and `plus` over. */
export function stitchesLine(
  name: string,
  length: string,
  gauge: string,
  multiple: number,
  plus: number,
  more: Partial<Pick<Stitches, 'counts'>> & Told = {},
): Line {
  const { counts = 'stitches', ...told } = more;
  return {
    ...base(name, told),
    kind: 'stitches',
    length,
    gauge,
    state: 'relaxed',
    multiple,
    plus,
    rounding: 'nearest',
    parity: 'any',
    counts,
    extra: 0,
    tolerance: null,
  };
}

/** Rows fitted to a length: `before` rows, then whole cycles that end on their last row. */
export function rowsLine(
  name: string,
  length: string,
  gauge: string,
  cycle: number,
  before: number,
  told: Told = {},
): Line {
  return {
    ...base(name, told),
    kind: 'rows',
    length,
    gauge,
    cycle,
    endOn: cycle,
    before,
    rounding: 'nearest',
    tolerance: null,
  };
}

export function shapingLine(
  name: string,
  from: string,
  to: string,
  rows: string,
  perEnd: number,
  ends: number,
): Line {
  return { ...base(name), kind: 'shaping', start: from, end: to, rows, perEnd, ends, step: 1 };
}

export function edge(piece: string, kind: Edge['kind'], amount: string | null = null, which = 1): Edge {
  return { piece, kind, amount, which };
}

/** What may be said of a row besides its words. */
interface About {
  readonly title?: string;
  /** Ids of the sizes that work it. */
  readonly sizes?: readonly string[];
}

/** Writes the blocks of one piece; ids count on from the piece's own. */
export class Writer {
  readonly #blocks: Block[] = [];
  readonly #piece: string;

  constructor(piece: string) {
    this.#piece = piece;
  }

  row(words: string, about: About = {}): RowBlock {
    return this.#add(this.#make('row', words, about));
  }

  round(words: string, about: About = {}): RowBlock {
    return this.#add(this.#make('round', words, about));
  }

  foundation(words: string): RowBlock {
    return this.#add(this.#make('foundation', words, {}));
  }

  /** Works the rows from `first` to `last` again until the piece has so many rows. */
  untilTotal(first: RowBlock, last: RowBlock, rows: string): void {
    this.#add({
      type: 'repeat',
      id: this.#id(),
      first: first.id,
      last: last.id,
      until: { kind: 'total', rows },
      sizes: null,
    });
  }

  /** Works the rows again for so many rows more. */
  forRows(first: RowBlock, last: RowBlock, rows: string): void {
    this.#add({
      type: 'repeat',
      id: this.#id(),
      first: first.id,
      last: last.id,
      until: { kind: 'rows', rows },
      sizes: null,
    });
  }

  /** Shapes in rounds as the line says, with its words for a shaping round and for a round between. */
  shaping(line: string, shaped: string, even: string): void {
    const id = this.#id();
    this.#add({
      type: 'shaping',
      id,
      line,
      shaped: { ...this.#make('round', shaped, {}), id: `${id}-shaped` },
      even: { ...this.#make('round', even, {}), id: `${id}-even` },
      sizes: null,
    });
  }

  prose(words: string): void {
    this.#add({ type: 'prose', id: this.#id(), text: text(words), sizes: null });
  }

  heading(words: string): void {
    this.#add({ type: 'heading', id: this.#id(), text: words });
  }

  /** The piece of what has been written. */
  piece(
    name: string,
    from: PieceStart,
    firstSide: Piece['firstSide'],
    more: { readonly make?: number; readonly meets?: readonly Meeting[]; readonly gauge?: string } = {},
  ): Piece {
    const { make = 1, meets = [], gauge = '' } = more;
    return { id: this.#piece, name, make, start: from, firstSide, gauge, blocks: this.#blocks, meets };
  }

  #id(): string {
    return `${this.#piece}-${this.#blocks.length + 1}`;
  }

  #make(form: RowBlock['form'], words: string, { title, sizes }: About): RowBlock {
    return {
      type: 'row',
      id: this.#id(),
      text: text(words),
      sizes: sizes ?? null,
      form,
      title: title ?? null,
    };
  }

  #add<B extends Block>(block: B): B {
    this.#blocks.push(block);
    return block;
  }
}
