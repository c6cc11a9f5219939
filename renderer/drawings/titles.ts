/** Titles that are told apart. Two pieces may have one name; what is drawn of them must not sound the same. */

/** What stands behind each title: nothing, or its number where the title has stood before (" (2)"). */
export function suffixes(titles: readonly string[]): readonly string[] {
  const seen = new Map<string, number>();
  return titles.map((title) => {
    const n = (seen.get(title) ?? 0) + 1;
    seen.set(title, n);
    return n === 1 ? '' : ` (${n})`;
  });
}
