/**
 * What changed in the printed instructions between two versions of a pattern, for which sizes: rows and their
 * counts, row numbers, measurements, materials, cautions. A change that leaves what is printed the same is none.
 * Pure; the sheet for buyers is made elsewhere.
 */
import { listed, ordinal } from '../../findings/phrases.ts';
import type { Study } from '../../study/index.ts';
import type { Terms } from '../../trade/stitches.ts';
import type { GivenCaution } from '../edition.ts';
import { aligned, type Pair } from './align.ts';
import { type Item, type Section, sectionsOf } from './items.ts';
import { withoutGone } from './sizes-gone.ts';

export interface Erratum {
  /** Title of the part or piece, as it is now; of one that is gone, as it was. */
  readonly part: string;
  readonly kind: 'changed' | 'added' | 'removed' | 'renumbered' | 'renamed' | 'moved';
  /** "Row 3 (RS)"; empty for a sentence. */
  readonly label: string;
  /** Null where there was nothing. */
  readonly was: string | null;
  /** Null where there is nothing any more. */
  readonly read: string | null;
  /** Labels of the sizes concerned; null = all. */
  readonly sizes: readonly string[] | null;
}

export interface Version {
  readonly version: string;
  /** ISO date, or empty. */
  readonly date: string;
}

export interface Errata {
  readonly title: string;
  readonly from: Version;
  readonly to: Version;
  readonly errata: readonly Erratum[];
}

export interface ErrataOptions {
  readonly terms: Terms;
  /** Cautions that each version prints, for all sizes (null) or for one. */
  readonly cautionsOf?: (study: Study, size: string | null) => readonly GivenCaution[];
}

/** Compares two versions as buyers read them. Comparing a pattern with itself finds nothing. */
export function errataBetween(before: Study, after: Study, { terms, cautionsOf }: ErrataOptions): Errata {
  const from = before.pattern.about;
  const to = after.pattern.about;
  const sections = (study: Study, size: string | null) =>
    sectionsOf(study, terms, size ?? 'all', cautionsOf?.(study, size) ?? []);
  // What a size that is gone leaves shorter is told once, and not for every list.
  const { study: base, all, gone } = withoutGone(before, after);
  const [was, now] = [sections(base, null), sections(after, null)];
  const errata = changes(was, now);
  const concerned = new Sizes(base, after, sections);
  return {
    title: to.title.trim(),
    from: { version: from.version.trim(), date: from.date.trim() },
    to: { version: to.version.trim(), date: to.date.trim() },
    errata: [
      ...(gone.length === 0 ? [] : [sizesLeftOut(all, gone)]),
      ...errata.map(({ pair, section, ...erratum }) => ({
        ...erratum,
        sizes: pair === null ? null : concerned.of(pair, section),
      })),
    ],
  };
}

/** What a size that is no longer there means for a reader: its numbers, wherever there is a list. */
function sizesLeftOut(all: readonly string[], gone: readonly string[]): Erratum {
  const places = gone.map((label) => ordinal(all.indexOf(label) + 1));
  const left = all.filter((label) => !gone.includes(label));
  return {
    part: 'Sizes',
    kind: 'removed',
    label: `${gone.length === 1 ? 'Size' : 'Sizes'} ${listed(gone)}`,
    was: all.join(', '),
    read: `${left.join(', ')}. In every list of ${all.length} numbers leave out the ${listed(places)}.`,
    sizes: null,
  };
}

type Draft = Omit<Erratum, 'sizes'> & {
  /** What it is about; null where it concerns a whole part. */
  readonly pair: Pair | null;
  readonly section: { readonly was: Section | null; readonly now: Section | null };
};

type Sections = readonly { readonly was: Section | null; readonly now: Section | null }[];

function changes(before: readonly Section[], after: readonly Section[]): readonly Draft[] {
  const sections = matched(before, after);
  const moved = movedIn(sections, before);
  return sections.flatMap((section): Draft[] => {
    const { was, now } = section;
    const part = (now ?? was)!.title;
    const drafts: Draft[] = [];
    const whole = { part, label: '', pair: null, section };
    if (was !== null && now !== null && was.title !== now.title)
      drafts.push({ ...whole, kind: 'renamed', was: was.title, read: now.title });
    if (moved.has(section)) {
      const order = (list: readonly Section[], own: Section) => {
        const at = list.filter(({ piece }) => piece !== null).indexOf(own);
        const first = list.filter(({ piece }) => piece !== null)[at - 1];
        return first === undefined ? 'worked first' : `worked after ${first.title}`;
      };
      drafts.push({ ...whole, kind: 'moved', was: order(before, was!), read: order(after, now!) });
    }
    const pairs = aligned(was?.items ?? [], now?.items ?? []).flatMap((pair) => draftOf(pair, part, section));
    return [...drafts, ...renumberedTogether(pairs)];
  });
}

function draftOf(pair: Pair, part: string, section: Draft['section']): readonly Draft[] {
  const { was, now } = pair;
  const label = (now ?? was)!.label;
  const about = { part, label, pair, section };
  if (was === null) return [{ ...about, kind: 'added', was: null, read: now!.text }];
  if (now === null) return [{ ...about, kind: 'removed', was: was.text, read: null }];
  if (was.text === now.text && was.label === now.label) return [];
  if (was.text === now.text && was.isRow && now.isRow)
    return [{ ...about, kind: 'renumbered', was: was.label, read: now.label }];
  const labelled = (item: Item) =>
    was.label === now.label || item.label === '' ? item.text : `${item.label}: ${item.text}`;
  return [{ ...about, kind: 'changed', was: labelled(was), read: labelled(now) }];
}

/** Rows behind one another that only have other numbers are told together. */
function renumberedTogether(drafts: readonly Draft[]): readonly Draft[] {
  const told: Draft[] = [];
  let run: Draft[] = [];
  const close = (): void => {
    const [first, last] = [run[0], run.at(-1)];
    if (first !== undefined && last !== undefined)
      told.push(
        first === last
          ? first
          : {
              ...first,
              label: `${first.read} to ${last.read}`,
              was: `${first.was} to ${last.was}`,
              read: `${first.read} to ${last.read}`,
            },
      );
    run = [];
  };
  for (const draft of drafts) {
    if (draft.kind === 'renumbered') run.push(draft);
    else {
      close();
      told.push(draft);
    }
  }
  close();
  return told;
}

/** Sections of both versions that are the same part: by piece, by title, by what most of their words are. */
function matched(before: readonly Section[], after: readonly Section[]): Sections {
  const partner = new Map<Section, Section>();
  const free = () => before.filter((own) => ![...partner.values()].includes(own));
  const take = (test: (was: Section, now: Section) => boolean): void => {
    for (const now of after) {
      if (partner.has(now)) continue;
      const was = free().find((own) => (own.piece === null) === (now.piece === null) && test(own, now));
      if (was !== undefined) partner.set(now, was);
    }
  };
  take(
    (was, now) =>
      was.piece !== null && was.piece === now.piece && (was.title === now.title || sharesWords(was, now) > 0),
  );
  take((was, now) => was.title === now.title);
  take((was, now) => was.piece !== null && sharesWords(was, now) > 0.5);
  const found: { was: Section | null; now: Section | null }[] = after.map((now) => ({
    was: partner.get(now) ?? null,
    now,
  }));
  for (const was of free()) {
    const above = before[before.indexOf(was) - 1];
    const at = found.findIndex((one) => one.was === above && above !== undefined);
    found.splice(at + 1, 0, { was, now: null });
  }
  return found;
}

/** The part of the rows that both have, of the longer one. */
function sharesWords(a: Section, b: Section): number {
  const words = new Set(a.items.map(({ text }) => text));
  const both = b.items.filter(({ text }) => words.has(text)).length;
  return both / Math.max(1, a.items.length, b.items.length);
}

/** Pieces that are worked in another order: those outside a longest run that kept its order. */
function movedIn(sections: Sections, before: readonly Section[]): ReadonlySet<Sections[number]> {
  const both = sections.filter(({ was, now }) => was !== null && now !== null && was.piece !== null);
  const places = both.map(({ was }) => before.indexOf(was!));
  const best = places.map(() => 1);
  const previous = places.map(() => -1);
  places.forEach((place, i) => {
    for (let j = 0; j < i; j++)
      if (places[j]! < place && best[j]! + 1 > best[i]!) {
        best[i] = best[j]! + 1;
        previous[i] = j;
      }
  });
  const kept = new Set<number>();
  for (let i = best.indexOf(Math.max(...best, 0)); i >= 0; i = previous[i] ?? -1) kept.add(i);
  return new Set(both.filter((_, i) => !kept.has(i)));
}

/** Which sizes a change concerns: those whose own booklet reads otherwise. */
class Sizes {
  readonly #sizes: readonly { readonly label: string; readonly was: Texts; readonly now: Texts }[];
  readonly #comparable: boolean;

  constructor(
    before: Study,
    after: Study,
    sections: (study: Study, size: string | null) => readonly Section[],
  ) {
    const shared = after.pattern.sizes.flatMap((now) => {
      const was =
        before.pattern.sizes.find(({ id, label }) => id === now.id && label === now.label) ??
        before.pattern.sizes.find(({ label }) => label === now.label);
      return was === undefined ? [] : [{ label: now.label, was: was.id, now: now.id }];
    });
    // Where sizes came or went, every list is another one.
    const same =
      shared.length === after.pattern.sizes.length && shared.length === before.pattern.sizes.length;
    this.#comparable = same && shared.length > 1;
    this.#sizes = this.#comparable
      ? shared.map(({ label, was, now }) => ({
          label,
          was: new Texts(sections(before, was)),
          now: new Texts(sections(after, now)),
        }))
      : [];
  }

  /** Labels of the sizes; null for all. */
  of({ was, now }: Pair, section: Draft['section']): readonly string[] | null {
    if (!this.#comparable) return null;
    const concerned = this.#sizes.filter(
      (size) => size.was.of(was, section.was) !== size.now.of(now, section.now),
    );
    // What one size's booklet words otherwise altogether is told to everybody.
    return concerned.length === 0 || concerned.length === this.#sizes.length
      ? null
      : concerned.map(({ label }) => label);
  }
}

/** What one size's booklet has in the place of an item. */
class Texts {
  readonly #byId = new Map<string, string>();
  readonly #byLabel = new Map<string, string>();

  constructor(sections: readonly Section[]) {
    for (const { title, piece, items } of sections) {
      for (const { id, label, text, isRow } of items) {
        if (id !== null) this.#byId.set(id, isRow ? `${label}: ${text}` : text);
        const key = `${piece ?? title}|${label.replace(/ \(.*\)$/u, '')}`;
        if (!this.#byLabel.has(key)) this.#byLabel.set(key, text);
      }
    }
  }

  of(item: Item | null, section: Section | null): string {
    if (item === null || section === null) return '';
    if (item.id !== null) return this.#byId.get(item.id) ?? '';
    // A row of a table for all sizes is an entry of its own in the booklet of one.
    return (
      this.#byLabel.get(`${section.piece ?? section.title}|${item.label.replace(/ \(.*\)$/u, '')}`) ??
      item.text
    );
  }
}
