/** A row or a note changes to a yarn that the materials do not list. */
import type { Pattern } from '../../document/pattern.ts';
import { listed, quote, quoted, words } from '../../findings/phrases.ts';
import type { Item, RowTree } from '../../notation/tree.ts';
import { found, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';

interface Named {
  readonly name: string;
  readonly from: number;
  readonly to: number;
}

/** Letters that stand for a yarn. Other names may be the colour itself ("in white"). */
const KEY = /^(?:[A-H]|MC|CC\d?|C\d)$/u;

const inTree = new WeakMap<RowTree, readonly Named[]>();

function namesIn(items: readonly Item[]): readonly Named[] {
  return items.flatMap((item): readonly Named[] => {
    switch (item.type) {
      case 'colour':
        return [{ name: item.name.trim(), from: item.from, to: item.to }];
      case 'repeat':
      case 'again':
      case 'group':
        return namesIn(item.items);
      default:
        return [];
    }
  });
}

function coloursOf(tree: RowTree): readonly Named[] {
  const before = inTree.get(tree);
  if (before !== undefined) return before;
  const made = namesIn(tree.items);
  inTree.set(tree, made);
  return made;
}

const PROSE = /\b(?:yarn|colou?r|shade) ([A-H]|MC|CC\d?)(?![\p{L}\p{N}'’-])/gu;

const inProse = looking((text, kind): readonly Named[] =>
  kind === 'row'
    ? []
    : [...text.matchAll(PROSE)].map((match) => ({
        name: match[1]!,
        from: match.index + match[0].length - match[1]!.length,
        to: match.index + match[0].length,
      })),
);

function isListed(name: string, { yarns }: Pattern): boolean {
  const low = name.toLowerCase();
  return yarns.some(
    ({ key, name: own }) =>
      key?.trim().toLowerCase() === low || (low.length > 2 && own.toLowerCase().includes(low)),
  );
}

export const yarnNotListed: Rule = {
  code: 'yarn-not-listed',
  severity: 'error',
  title: 'A yarn is used that the materials do not list',
  reason: 'Nobody can buy a yarn that is only a letter in a row.',
  message: (facts, voice) => {
    const { data } = facts[0]!.fact;
    const name = voice.words.trim() === '' ? quoted(data, 'name') : quote(voice.words);
    const keys = words(data, 'keys');
    return `${name} uses a yarn that the materials do not list${keys.length === 0 ? '' : ` (they have ${listed(keys)})`}; add the yarn with its letter, or put the letter right`;
  },
  example: null,
  sample: { name: 'C', keys: ['A', 'B'] },
  check: (study) => {
    const { pattern, pieces } = study;
    if (pattern.yarns.length === 0) return [];
    const keys = pattern.yarns.flatMap(({ key }) => (key === null || key.trim() === '' ? [] : [key.trim()]));
    const told = (node: string, text: string, names: readonly Named[]) =>
      names.flatMap(({ name, from, to }) =>
        KEY.test(name) && !isListed(name, pattern)
          ? [found(yarnNotListed, study, { node, text, from, to }, { name, keys })]
          : [],
      );
    const rows = pieces.flatMap(({ blocks }) =>
      blocks.flatMap(({ block, tree }) =>
        tree === null ? [] : told(block.id, block.type === 'row' ? block.text.text : '', coloursOf(tree)),
      ),
    );
    const prose = inProse(pattern).flatMap(({ text: { node, text }, hits }) => told(node, text, hits));
    return [...rows, ...prose];
  },
};
