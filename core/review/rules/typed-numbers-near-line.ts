/** Numbers typed by hand are those of a line of the sizing sheet in every size but one. */
import { FIGURE } from '../../document/pattern.ts';
import { number, quoted } from '../../findings/phrases.ts';
import { countsOfLines } from '../line-counts.ts';
import { listsTyped } from '../lists.ts';
import { foundIn, type Rule } from '../rule.ts';

/** With fewer sizes, numbers may be those of a line by chance. */
const FEWEST = 5;

export const typedNumbersNearLine: Rule = {
  code: 'typed-numbers-near-line',
  severity: 'warning',
  title: 'Numbers typed by hand differ from those of a line in one size',
  reason:
    'Numbers that are those of a line of the sizing sheet in every size but one were copied from it, and one of them slipped, or the line was changed since.',
  message: (facts, voice) => {
    const { size, fact } = facts[0]!;
    const where =
      size === null ? '' : ` but for size ${voice.label(size)}, where it has ${number(fact.data, 'own')}`;
    return `these are the numbers of ${quoted(fact.data, 'line')}${where} and not ${number(fact.data, 'typed')}; put the number right, or put that line in as a figure`;
  },
  example: null,
  sample: { line: 'back stitches', own: 38, typed: 40 },
  check: (study) => {
    const sizes = study.pattern.sizes.length;
    if (sizes < FEWEST) return [];
    return listsTyped(study.pattern).flatMap(({ text: { node, text }, hits }) =>
      hits.flatMap(({ from, to, values }) => {
        const isWhole = values.length === sizes && values.every((value) => value !== null);
        if (!isWhole || text.slice(from, to).includes(FIGURE)) return [];
        const typed = values.map(Number);
        const lines = countsOfLines(study.sheet);
        // Those of another line as they stand are no slip.
        if (lines.some(({ counts }) => counts.every((count, i) => count === typed[i]))) return [];
        const near = lines.find(({ counts }) => {
          const alike = counts.filter((count, i) => count === typed[i]);
          return alike.length === sizes - 1 && new Set(alike).size > 2;
        });
        if (near === undefined) return [];
        const at = { node, text, from, to };
        return foundIn(
          typedNumbersNearLine,
          study,
          at,
          near.counts.map((own, i) => (own === typed[i] ? null : { line: near.name, own, typed: typed[i]! })),
        );
      }),
    );
  },
};
