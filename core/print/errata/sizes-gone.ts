/**
 * Sizes that a newer version leaves out: the older version without them, so that every list that is one number shorter
 * is no change of its own, and what was left out is told once. It compares nothing else.
 */
import { type Study, study } from '../../study/index.ts';

export interface WithoutGone {
  /** The older version as it would be in the sizes that both have; itself where none is gone. */
  readonly study: Study;
  /** Labels of all its sizes, and of those that are left out. */
  readonly all: readonly string[];
  readonly gone: readonly string[];
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
  const isThere = kept.some(({ id }) => id === pattern.sample);
  return {
    study: study({ ...pattern, sizes: kept, sample: isThere ? pattern.sample : sample }),
    all,
    gone,
  };
}
