/** Numbers typed by hand are those of a line of the sizing sheet, and do not follow when it changes. */
import { FIGURE } from '../../document/pattern.ts';
import { quoted } from '../../findings/phrases.ts';
import { countsOfLines } from '../line-counts.ts';
import { listsTyped } from '../lists.ts';
import { found, type Rule } from '../rule.ts';

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
      const lines = countsOfLines(study.sheet);
      return lines.length === 0
        ? []
        : lists.flatMap(({ from, to, values }) => {
            if (text.slice(from, to).includes(FIGURE) || values.some((value) => value === null)) return [];
            const line = lines.find(({ counts }) => counts.every((count, i) => count === Number(values[i])));
            return line === undefined
              ? []
              : [found(typedNumbersOfLine, study, { node, text, from, to }, { line: line.name })];
          });
    });
  },
};
