/**
 * Sizes that a newer version leaves out: the older version without them, so that every list that is one number shorter
 * is no change of its own, and what was left out is told once. It compares nothing else.
 */
import type { Block, FigureText, Pattern } from '../../document/pattern.ts';
import { type Study, study } from '../../study/index.ts';
import { typedLists } from '../../study/typed-lists.ts';

export interface WithoutGone {
  /** The older version as it would be in the sizes that both have; itself where none is gone. */
  readonly study: Study;
  /** Labels of all its sizes, and of those that are left out. */
  readonly all: readonly string[];
  readonly gone: readonly string[];
}

/** "30 (32, 34, 36)" without the places of sizes that are gone; a list in several brackets comes to one. */
function shortened(text: string, sizes: number, gone: ReadonlySet<number>): string {
  let out = '';
  let at = 0;
  for (const { from, to, values } of typedLists(text, sizes)) {
    const words = text.slice(from, to);
    const [open, close] = words.includes('[') && !words.includes('(') ? ['[', ']'] : ['(', ')'];
    const gap = /\d[ \u00A0]?[([]/u.exec(words)?.[0].includes('\u00A0') ? '\u00A0' : ' ';
    const [first, ...more] = values.flatMap((value, i) => (gone.has(i) ? [] : [value ?? '–']));
    out +=
      text.slice(at, from) + (more.length === 0 ? first : `${first}${gap}${open}${more.join(', ')}${close}`);
    at = to;
  }
  return out + text.slice(at);
}

/** A pattern with every list that was typed by hand as it would be in the sizes that stay. */
function withListsOf(pattern: Pattern, sizes: number, gone: ReadonlySet<number>): Pattern {
  const plain = (words: string) => shortened(words, sizes, gone);
  const of = (written: FigureText): FigureText => {
    const words = plain(written.text);
    return words === written.text ? written : { ...written, text: words };
  };
  const block = (own: Block): Block => {
    switch (own.type) {
      case 'row':
      case 'prose':
        return { ...own, text: of(own.text) };
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
  const { about } = pattern;
  return {
    ...pattern,
    about: {
      ...about,
      description: plain(about.description),
      construction: plain(about.construction),
      fit: plain(about.fit),
    },
    notes: pattern.notes.map(of),
    finishing: pattern.finishing.map(of),
    pieces: pattern.pieces.map((piece) => ({ ...piece, blocks: piece.blocks.map(block) })),
  };
}

/** The older version without the sizes that the newer one has left out. Where others came in, lists differ anyway. */
export function withoutGone(before: Study, after: Study): WithoutGone {
  const { pattern } = before;
  const { sizes, sample } = after.pattern;
  const stays = ({ id, label }: (typeof sizes)[number]) =>
    sizes.some((now) => now.label === label || now.id === id);
  const kept = pattern.sizes.filter(stays);
  const gone = pattern.sizes.filter((size) => !stays(size)).map(({ label }) => label);
  const all = pattern.sizes.map(({ label }) => label);
  if (gone.length === 0 || kept.length === 0 || kept.length !== sizes.length)
    return { study: before, all, gone: [] };
  const places = new Set(pattern.sizes.flatMap((size, i) => (stays(size) ? [] : [i])));
  const isThere = kept.some(({ id }) => id === pattern.sample);
  return {
    study: study({
      ...withListsOf(pattern, all.length, places),
      sizes: kept,
      sample: isThere ? pattern.sample : sample,
    }),
    all,
    gone,
  };
}
