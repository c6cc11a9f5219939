/** A list of numbers in running text does not have one for each size. Rows are the reader's concern. */
import type { Block } from '../../document/pattern.ts';
import { count, number } from '../../findings/phrases.ts';
import { listsTyped } from '../lists.ts';
import { found, type Rule } from '../rule.ts';

/** "Sizes M and L: 20 (22)": a list for the sizes that the words name. */
const NAMES_SIZES = /\bsizes?\b/iu;

/** How many sizes the paragraphs of pieces are for that are not for all. */
function fewerSizes(blocks: readonly Block[]): ReadonlyMap<string, number> {
  return new Map(
    blocks.flatMap((block) =>
      block.type === 'prose' && block.sizes !== null ? [[block.id, block.sizes.length] as const] : [],
    ),
  );
}

export const sizeListWrongLength: Rule = {
  code: 'size-list-wrong-length',
  severity: 'error',
  title: 'A list of numbers in the text does not have one for each size',
  reason:
    'The numbers stand for the sizes in order, in every sentence as in every row; one missing or one too many gives every size after it a wrong number.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    const [expected, got] = [number(data, 'expected'), number(data, 'got')];
    const by = Math.abs(expected - got);
    return `this list has ${count(got, 'number')} for ${count(expected, 'size')}, ${by} too ${got < expected ? 'few' : 'many'}; write one for each size, and – for a size that has none`;
  },
  example: null,
  sample: { expected: 4, got: 3 },
  check: (study) => {
    const { pattern } = study;
    const sizes = pattern.sizes.length;
    if (sizes < 2) return [];
    let fewer: ReadonlyMap<string, number> | null = null;
    return listsTyped(pattern).flatMap(({ text: { node, text, kind }, hits }) => {
      if (kind !== 'prose') return [];
      const lists = hits.filter(({ values }) => values.length > 2 || sizes === 2);
      if (lists.length === 0) return [];
      fewer ??= fewerSizes(pattern.pieces.flatMap(({ blocks }) => blocks));
      const own = fewer.get(node) ?? sizes;
      return lists.flatMap(({ from, to, values }) => {
        const isRight = values.length === sizes || values.length === own;
        if (isRight || (NAMES_SIZES.test(text) && values.length < sizes)) return [];
        const data = { expected: own, got: values.length };
        return [found(sizeListWrongLength, study, { node, text, from, to }, data)];
      });
    });
  },
};
