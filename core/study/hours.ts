/**
 * The hours of every size, reckoned as yarn is: from the hours that makings took, by the movements of the hook that
 * each size's stitches ask for. No hours without what they rest on. It rounds nothing and words nothing.
 */
import type { Making } from '../document/workbook.ts';
import { movesOf } from '../trade/stitch-use.ts';
import { type Hand, handOf } from './hand.ts';
import type { Study } from './study.ts';
import { swatchCounts } from './yarn.ts';
import { countsFor } from './yarn-counts.ts';

export interface HoursReport {
  /** One a size; null without a basis, or where its rows cannot be followed. */
  readonly sizes: readonly (number | null)[];
  readonly makings: readonly Making[];
  /** As of yarn: typical parts by which makings are off what is fitted, and what the others say; null for one. */
  readonly spread: number | null;
  readonly heldBack: number | null;
}

const hands = new WeakMap<Study, Hand | null>();

/** How long the maker's and the testers' hands take; null where nobody has told. */
export function timeHand(study: Study): Hand | null {
  const before = hands.get(study);
  if (before !== undefined) return before;
  const { sizes, workbook } = study.pattern;
  const observations = workbook.makings.flatMap((making) => {
    if (making.hours === null) return [];
    if (making.kind === 'swatch')
      return [{ making: making.id, counts: swatchCounts(making), amount: making.hours }];
    if (making.state !== 'finished') return [];
    const size = sizes.findIndex(({ id }) => id === making.size);
    const counts = size < 0 ? null : countsFor(study, size, null, null);
    return counts === null ? [] : [{ making: making.id, counts, amount: making.hours }];
  });
  const made = handOf(observations, movesOf);
  hands.set(study, made);
  return made;
}

/** The hours of every size of `study`, by a hand: the pattern's own, or that of the pattern it comes from. */
export function estimateHours(study: Study, hand: Hand | null, makings: readonly Making[]): HoursReport {
  const behind = new Set(hand?.observations.map(({ making }) => making));
  return {
    sizes: study.pattern.sizes.map((_, size) => {
      const counts = hand === null ? null : countsFor(study, size, null, null);
      return hand === null || counts === null ? null : hand.takes(counts);
    }),
    makings: makings.filter(({ id }) => behind.has(id)),
    spread: hand?.spread ?? null,
    heldBack: hand?.heldBack ?? null,
  };
}

const reports = new WeakMap<Study, HoursReport>();

/** The hours of every size of a pattern, by its own makings. The same study gives the same report. */
export function hoursOf(study: Study): HoursReport {
  const before = reports.get(study);
  if (before !== undefined) return before;
  const made = estimateHours(study, timeHand(study), study.pattern.workbook.makings);
  reports.set(study, made);
  return made;
}
