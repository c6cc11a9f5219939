/** The words name a side of the work that does not face on that row. */
import { perSize, text } from '../../findings/phrases.ts';
import type { Side } from '../../study/index.ts';
import { blockAt, rowsBefore } from '../blocks.ts';
import { foundIn, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';
import { lastSide } from '../sides.ts';

interface Named {
  /** Of the row itself, or of the last row before the words. */
  readonly of: 'this' | 'before';
  readonly side: Side;
  readonly from: number;
  readonly to: number;
}

const SIDE = `(RS|WS|right side|wrong side|right-side|wrong-side)`;
const THIS = new RegExp(
  String.raw`^\s*(?:\(${SIDE}\)|with (?:the )?${SIDE} (?:of (?:the )?work )?facing)`,
  'iu',
);
const BEFORE = new RegExp(
  String.raw`\b(?:last|previous) row (?:is|was|will be) an? ${SIDE} (?:row|one)|\bend(?:s|ing)? (?:after|with|on) an? ${SIDE} row`,
  'giu',
);

const sideOf = (words: string): Side => (/^[rR]/u.test(words) ? 'RS' : 'WS');

/** Letters on either side in which a sentence may name sizes: no more are looked at, however long the text. */
const NEAR = 80;

const namesSizes = (text: string, from: number, to: number): boolean =>
  /\bsizes?\b/iu.test(
    /[^.;]*$/u.exec(text.slice(Math.max(0, from - NEAR), from))![0] +
      /^[^.;]*/u.exec(text.slice(to, to + NEAR))![0],
  );

const named = looking((text, kind): readonly Named[] => {
  if (!/\b[RWrw](?:S|ight|rong)/u.test(text)) return [];
  const found: Named[] = [];
  const own = kind === 'row' ? THIS.exec(text) : null;
  if (own !== null)
    found.push({
      of: 'this',
      side: sideOf(own[1] ?? own[2]!),
      from: own.index,
      to: own.index + own[0].length,
    });
  if (kind === 'prose')
    for (const match of text.matchAll(BEFORE)) {
      const [from, to] = [match.index, match.index + match[0].length];
      // "Sizes S and M end after a WS row, size L …": the words part the sizes themselves.
      if (!namesSizes(text, from, to))
        found.push({ of: 'before', side: sideOf(match[1] ?? match[2]!), from, to });
    }
  return found;
});

export const sideOfWorkOff: Rule = {
  code: 'side-of-work-off',
  severity: 'warning',
  title: 'The words name the wrong side of the work',
  reason:
    'Raised stitches, seams and shaping go by the side that faces. Named wrongly, they come out on the inside.',
  message: (facts, voice) =>
    perSize(facts, voice, ({ data }) =>
      data.of === 'this'
        ? `these words say ${text(data, 'said')}, but by the rows before it ${text(data, 'really')} faces here; change the words, or the side that the piece begins with`
        : `these words say that the last row is ${text(data, 'said')}, but by the rows before it is ${text(data, 'really')}; change the words, or the number of rows`,
    ),
  example: null,
  sample: { of: 'this', said: 'RS', really: 'WS' },
  check: (study) =>
    named(study.pattern).flatMap(({ text: { node, text }, hits }) => {
      const place = blockAt(study, node);
      if (place === null || place.piece.piece.firstSide === null) return [];
      return hits.flatMap(({ of, side, from, to }) => {
        const row = of === 'this' ? place.piece.blocks[place.at]! : rowsBefore(place);
        if (row === null) return [];
        const flat = !(row.block.type === 'row' && row.block.form === 'round');
        const data = row.sizes.map((size) => {
          if (size === null || size.rows === 0) return null;
          const really = of === 'this' ? size.side : lastSide(size, flat);
          return really === null || really === side ? null : { of, said: side, really };
        });
        return foundIn(sideOfWorkOff, study, { node, text, from, to }, data);
      });
    }),
};
