/**
 * The printed instructions of an edition as a list of items to compare: what stands under which title, with its label
 * and its words as a reader meets them. Version and date are left out: that they differ is no change.
 */
import type { Study } from '../../study/index.ts';
import type { Terms } from '../../trade/stitches.ts';
import type { Block, Words } from '../content.ts';
import { pieceTitle, printedById } from '../edition/pieces.ts';
import { readerOf } from '../edition/reader.ts';
import { wordingIn } from '../edition/wording.ts';
import { bookletOf, type GivenCaution } from '../edition.ts';

/** One row, sentence or entry. */
export interface Item {
  /** The block it comes from and its place in it; null for what has no block. */
  readonly id: string | null;
  /** "Row 3 (RS)", "Bust", "sc2tog"; empty for a sentence. */
  readonly label: string;
  readonly text: string;
  /** Whether the label is a row's number, which is reckoned and not written. */
  readonly isRow: boolean;
}

/** What stands under one title. */
export interface Section {
  /** Id of the piece; null for the other parts. */
  readonly piece: string | null;
  readonly title: string;
  readonly items: readonly Item[];
}

const say = (words: Words): string =>
  words
    .map(({ text }) => text)
    .join('')
    .replaceAll('\u00A0', ' ')
    .trim();

const TERMS_TABLES: ReadonlySet<string> = new Set([wordingIn('us').termsTable, wordingIn('uk').termsTable]);

/** The items of one printed block. */
function itemsOf(block: Block, id: string | null): readonly Item[] {
  const item = (label: string, text: string, isRow = false): Item => ({ id, label, text, isRow });
  switch (block.kind) {
    case 'row': {
      const label = block.side === null ? block.label : `${block.label} (${block.side})`;
      const only = block.only === null ? '' : `${block.only}: `;
      const count = block.count === null ? '' : ` ${say(block.count)}`;
      return [item(label, `${only}${say(block.body)}${count}`, true)];
    }
    case 'heading':
    case 'paragraph':
      return [item('', say(block.words))];
    case 'key':
      return [item(block.title, say(block.words))];
    case 'list':
      return block.items.map((words) => item('', say(words)));
    case 'entries':
      return block.items.map(({ label, value }) => item(say(label), say(value)));
    case 'table': {
      const heads = block.heads.map(say);
      const caption = say(block.caption);
      // The same numbers in the other unit are the same measurement; a table of terms follows from the rows.
      if (block.told === 'elsewhere' || TERMS_TABLES.has(caption)) return [];
      return (block.lines?.rows ?? block.rows).map(({ head, cells }) =>
        item(
          `${say(head)} (${caption})`,
          cells.map((cell, i) => `${heads[i] ?? ''} ${say(cell)}`.trim()).join(', '),
        ),
      );
    }
    case 'caution':
      return [item(block.title, block.paragraphs.map(say).join(' '))];
    case 'together':
      return block.blocks.flatMap((inner) => itemsOf(inner, id));
    case 'with-next':
      return itemsOf(block.block, id);
    case 'figure':
      return block.caption === null ? [] : [item('', say(block.caption))];
    default:
      return [];
  }
}

/** A place for every item: several of one block are told apart. */
function placed(items: readonly Item[]): readonly Item[] {
  const seen = new Map<string, number>();
  return items
    .filter(({ text }) => text !== '')
    .map((item) => {
      if (item.id === null) return item;
      const n = seen.get(item.id) ?? 0;
      seen.set(item.id, n + 1);
      return { ...item, id: `${item.id} ${n}` };
    });
}

/** The sections of an edition for all sizes, or for the one of an id. */
export function sectionsOf(
  study: Study,
  terms: Terms,
  sizes: 'all' | string,
  cautions: readonly GivenCaution[],
): readonly Section[] {
  const { about } = study.pattern;
  const undated: Study = {
    ...study,
    pattern: { ...study.pattern, about: { ...about, version: '', date: '' } },
  };
  const { booklet } = bookletOf(undated, { terms, sizes, cautions });
  const all = study.pattern.sizes.map((_, i) => i);
  const at = study.pattern.sizes.findIndex(({ id }) => id === sizes);
  const { reader } = readerOf(undated, terms, study.pattern.units, at < 0 ? all : [at]);
  const pieces = study.pieces.map(
    (piece): Section => ({
      piece: piece.piece.id,
      title: pieceTitle(piece, reader),
      items: placed(
        printedById(piece, reader).flatMap(({ id, blocks }) => blocks.flatMap((block) => itemsOf(block, id))),
      ),
    }),
  );
  const { cover, meta } = booklet;
  const first: Section = {
    piece: null,
    title: 'Cover',
    items: [
      { id: null, label: 'Title', text: meta.title, isRow: false },
      ...(cover?.subtitle
        ? [{ id: null, label: 'What it is', text: say(cover.subtitle), isRow: false }]
        : []),
      ...(cover?.byline ? [{ id: null, label: 'Designer', text: say(cover.byline), isRow: false }] : []),
      ...(cover?.summary ?? []).map((words) => ({ id: null, label: '', text: say(words), isRow: false })),
    ],
  };
  const titles = pieces.map(({ title }) => title);
  const others = booklet.parts
    .filter(({ title }) => {
      const piece = titles.indexOf(title);
      if (piece >= 0) titles.splice(piece, 1);
      return piece < 0;
    })
    .map(
      ({ title, blocks }): Section => ({
        piece: null,
        title,
        items: placed(blocks.flatMap((block) => itemsOf(block, null))),
      }),
    );
  return [first, ...others, ...pieces];
}
