/** Numbers typed by hand are those of a line of the sizing sheet, and do not follow when it changes. */
import { FIGURE } from '../../document/pattern.ts';
import { quoted } from '../../findings/phrases.ts';
import type { Sheet } from '../../grading/index.ts';
import { toNumber } from '../../trade/units.ts';
import { listsTyped } from '../lists.ts';
import { found, type Rule } from '../rule.ts';

const byCounts = new WeakMap<Sheet, ReadonlyMap<string, string>>();

/** Lines by their counts in all sizes; of several with the same, the first. Lines that all sizes share are left out. */
function linesByCounts(sheet: Sheet): ReadonlyMap<string, string> {
  const known = byCounts.get(sheet);
  if (known !== undefined) return known;
  const found = new Map<string, string>();
  for (const { line, sizes } of sheet.lines) {
    const counts = sizes.map(({ value }) =>
      value?.dimension === 'count' || value?.dimension === 'ratio' ? toNumber(value.value) : null,
    );
    if (counts.some((n) => n === null) || counts.every((n) => n === counts[0])) continue;
    const key = counts.join('|');
    if (!found.has(key)) found.set(key, line.name);
  }
  byCounts.set(sheet, found);
  return found;
}

export const typedNumbersOfLine: Rule = {
  code: 'typed-numbers-of-line',
  severity: 'note',
  title: 'Numbers of the sizing sheet are typed by hand',
  reason:
    'A figure shows what its line comes to, in every size and after every change. Numbers typed by hand stay what they were.',
  message: (facts) =>
    `these are the numbers of ${quoted(facts[0]!.fact.data, 'line')}; put that line in as a figure, so that they follow when it changes`,
  example: null,
  sample: { line: 'back stitches' },
  check: (study) => {
    const sizes = study.pattern.sizes.length;
    if (sizes < 2) return [];
    return listsTyped(study.pattern).flatMap(({ text: { node, text }, hits }) => {
      const lists = hits.filter(({ values }) => values.length === sizes);
      if (lists.length === 0) return [];
      const lines = linesByCounts(study.sheet);
      return lines.size === 0
        ? []
        : lists.flatMap(({ from, to, values }) => {
            if (text.slice(from, to).includes(FIGURE) || values.some((value) => value === null)) return [];
            const line = lines.get(values.map(Number).join('|'));
            return line === undefined
              ? []
              : [found(typedNumbersOfLine, study, { node, text, from, to }, { line })];
          });
    });
  },
};
