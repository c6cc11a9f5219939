/** The pattern has pieces, and not one row is written yet. */
import { isBlankRow } from '../../document/blank.ts';
import type { Block, Piece } from '../../document/pattern.ts';
import { quoted, text } from '../../findings/phrases.ts';
import { found, type Rule } from '../rule.ts';

const WORKED: ReadonlySet<Block['type']> = new Set(['row', 'repeat', 'shaping']);

/** Whether a piece has nothing to work: no row with words, no repeat, no shaping. */
export const isUnwritten = ({ blocks }: Piece): boolean =>
  !blocks.some((block) => WORKED.has(block.type) && !isBlankRow(block));

export const rowsNotBegun: Rule = {
  code: 'rows-not-begun',
  severity: 'warning',
  title: 'No row is written yet',
  reason:
    'Whoever begins a pattern knows that its rows are still to come, so this is no mistake. It is told, because a pattern without rows cannot be made.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    return `no row is written yet; begin with the first one${text(data, 'piece').trim() === '' ? '' : ` of ${quoted(data, 'piece')}`}`;
  },
  example: null,
  sample: { piece: 'Back' },
  check: (study) => {
    const { pieces } = study.pattern;
    const [first] = pieces;
    if (first === undefined || !pieces.every(isUnwritten)) return [];
    return [found(rowsNotBegun, study, { node: first.id, text: first.name }, { piece: first.name })];
  },
};
