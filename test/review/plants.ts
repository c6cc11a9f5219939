/**
 * The hands that plant a fault in a copy of a pattern: words put for others, a line, a thing of the materials, a
 * note. For the lists of faults; it knows no finding.
 */
import type { Block, FigureText, Line, Pattern, Piece } from '../../core/document/pattern.ts';
import { text as figured } from '../../core/document/writer.ts';

export type Plant = (pattern: Pattern) => Pattern;

const braced = (written: FigureText): string => {
  let figure = 0;
  return written.text.replaceAll('\uFFFC', () => `{${written.figures[figure++]}}`);
};

/** Words put for others in the first text that has them; in braces, a figure. */
export function swap(needle: string, by: string): Plant {
  return (pattern) => {
    let done = false;
    const of = (written: FigureText): FigureText => {
      const whole = braced(written);
      if (done || !whole.includes(needle)) return written;
      done = true;
      return figured(whole.replace(needle, () => by));
    };
    const plain = (words: string) => of({ text: words, figures: [] }).text;
    const block = (own: Block): Block => {
      switch (own.type) {
        case 'row':
        case 'prose':
          return { ...own, text: of(own.text) };
        case 'heading':
          return { ...own, text: plain(own.text) };
        case 'shaping':
          return {
            ...own,
            shaped: { ...own.shaped, text: of(own.shaped.text) },
            even: { ...own.even, text: of(own.even.text) },
          };
        default:
          return own;
      }
    };
    const pieces = pattern.pieces.map((piece) => ({ ...piece, blocks: piece.blocks.map(block) }));
    const notes = pattern.notes.map(of);
    const finishing = pattern.finishing.map(of);
    const { about } = pattern;
    const changed = {
      ...pattern,
      pieces,
      notes,
      finishing,
      about: { ...about, description: plain(about.description), construction: plain(about.construction) },
    };
    if (!done) throw new Error(`No text has “${needle}”`);
    return changed;
  };
}

export const both =
  (...plants: readonly Plant[]): Plant =>
  (pattern) =>
    plants.reduce((of, plant) => plant(of), pattern);

export const about =
  (change: Partial<Pattern['about']>): Plant =>
  (pattern) => ({ ...pattern, about: { ...pattern.about, ...change } });

export const line =
  (name: string, change: Partial<Line>): Plant =>
  (pattern) => ({
    ...pattern,
    lines: pattern.lines.map((each) => (each.name === name ? ({ ...each, ...change } as Line) : each)),
  });

/** One size's value of a line whose values are typed. */
export const typed =
  (name: string, size: string, value: number): Plant =>
  (pattern) => ({
    ...pattern,
    lines: pattern.lines.map((each) => {
      if (each.name !== name) return each;
      if (each.kind === 'body')
        return { ...each, overtyped: { ...each.overtyped, [size]: { value, unit: 'in' as const } } };
      if (each.kind !== 'typed' || !('each' in each.values)) return each;
      const own = each.values.each;
      return { ...each, values: { each: { ...own, [size]: { ...own[size]!, value } } } };
    }),
  });

export const note =
  (words: string): Plant =>
  (pattern) => ({ ...pattern, notes: [...pattern.notes, figured(words)] });
export const finish =
  (words: string): Plant =>
  (pattern) => ({ ...pattern, finishing: [...pattern.finishing, figured(words)] });
/** A change of the first yarn, gauge or hook. */
export const yarn =
  (change: Partial<Pattern['yarns'][number]>): Plant =>
  (pattern) => ({
    ...pattern,
    yarns: pattern.yarns.map((each, i) => (i === 0 ? { ...each, ...change } : each)),
  });
export const gauge =
  (change: Partial<Pattern['gauges'][number]>): Plant =>
  (pattern) => ({
    ...pattern,
    gauges: pattern.gauges.map((each, i) => (i === 0 ? { ...each, ...change } : each)),
  });
export const hook =
  (change: Partial<Pattern['hooks'][number]>): Plant =>
  (pattern) => ({
    ...pattern,
    hooks: pattern.hooks.map((each, i) => (i === 0 ? { ...each, ...change } : each)),
  });
export const size =
  (label: string, change: Partial<Pattern['sizes'][number]>): Plant =>
  (pattern) => ({
    ...pattern,
    sizes: pattern.sizes.map((each) => (each.label === label ? { ...each, ...change } : each)),
  });
export const special =
  (text: FigureText): Plant =>
  (pattern) => ({ ...pattern, specials: pattern.specials.map((each) => ({ ...each, text })) });
export const piece =
  (id: string, change: (piece: Piece) => Partial<Piece>): Plant =>
  (pattern) => ({
    ...pattern,
    pieces: pattern.pieces.map((each) => (each.id === id ? { ...each, ...change(each) } : each)),
  });
export const explained =
  (short: string, meaning: string): Plant =>
  (pattern) => ({ ...pattern, abbreviations: { ...pattern.abbreviations, [short]: meaning } });
export const notion =
  (name: string, amount: Pattern['notions'][number]['amount'], is: object = {}): Plant =>
  (pattern) => ({
    ...pattern,
    notions: [
      ...pattern.notions,
      { id: 'notion-new', name, amount, smallPart: false, cord: false, price: null, ...is },
    ],
  });
/** A paragraph at the end of a piece. */
export const prose = (id: string, words: string): Plant =>
  piece(id, ({ blocks }) => ({
    blocks: [...blocks, { type: 'prose', id: 'prose-new', text: figured(words), sizes: null }],
  }));
