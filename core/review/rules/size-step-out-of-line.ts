/** One size stands out from the steps of its neighbours, in a line of the sheet or in a list typed in a text. */
import { perSize, quoted, text, words } from '../../findings/phrases.ts';
import { formatLength, rational, toNumber } from '../../trade/units.ts';
import { listsTyped } from '../lists.ts';
import { foundIn, type Rule } from '../rule.ts';
import { outOfLine } from '../steps.ts';

export const sizeStepOutOfLine: Rule = {
  code: 'size-step-out-of-line',
  severity: 'warning',
  title: 'One size stands out from its neighbours',
  reason:
    'Sizes grow by steps that are alike, or change little by little. A number that jumps and falls back is most often a slip of the keys.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) => {
      const [before, own, after] = words(data, 'values');
      const of = text(data, 'line') === '' ? '' : ` of ${quoted(data, 'line')}`;
      return `the value${of} goes ${before}, ${own}, ${after} from size to size, which does not go with the steps of the others; about ${text(data, 'about')} would`;
    }),
  example: null,
  sample: { line: 'sleeve length', values: ['44 cm', '54 cm', '46 cm'], about: '45 cm' },
  check: (study) => {
    const { pattern, sheet } = study;
    const sizes = pattern.sizes.length;
    if (sizes < 4) return [];
    const lines = sheet.lines.flatMap((result) => {
      const { line } = result;
      if (line.kind !== 'typed' || 'all' in line.values) return [];
      const values = result.sizes.map(({ value }) => (value !== null && 'value' in value ? value : null));
      const numbers = values.map((value) => (value === null ? null : toNumber(value.value)));
      const isLength = values[0]?.dimension === 'length';
      const show = (value: number) => {
        const length = isLength ? rational(value) : null;
        return length === null ? String(Math.round(value * 100) / 100) : formatLength(length, pattern.units);
      };
      const data = outOfLine(numbers).map((found) =>
        found === null ? null : { line: line.name, values: found.values.map(show), about: show(found.about) },
      );
      return foundIn(sizeStepOutOfLine, study, { node: line.id, text: line.name }, data);
    });
    const texts = listsTyped(pattern).flatMap(({ text: { node, text }, hits }) =>
      hits.flatMap(({ from, to, values }) => {
        if (values.length !== sizes) return [];
        const numbers = values.map((value) => {
          const n = Number(value);
          return value === null || !Number.isFinite(n) ? null : n;
        });
        const data = outOfLine(numbers).map((found) =>
          found === null
            ? null
            : { line: '', values: found.values.map(String), about: String(Math.round(found.about)) },
        );
        return foundIn(sizeStepOutOfLine, study, { node, text, from, to }, data);
      }),
    );
    return [...lines, ...texts];
  },
};
