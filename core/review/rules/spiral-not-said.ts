/** A piece is worked in a spiral, and no word says so: without a join there is no seam to see where a round begins. */
import { quoted } from '../../findings/phrases.ts';
import { found, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';
import { instructionsOf } from '../texts.ts';

const SAYS =
  /\b(?:spirals?|spiralling|spiraling|continuous(?:ly)?|unjoined|(?:do not|don't|never|not|without) (?:be )?join\w*|mark(?:er|ers|ed|ing)?|pm|running thread)\b/iu;

const said = looking((text) => {
  const match = SAYS.exec(text);
  return match === null ? [] : [{ from: match.index, to: match.index + match[0].length }];
});

export const spiralNotSaid: Rule = {
  code: 'spiral-not-said',
  severity: 'warning',
  title: 'A piece is worked in a spiral, and nothing says so',
  reason:
    'Rounds that are not joined run into one another. Unless the pattern says that they do, and that the beginning is marked, makers join them or lose count.',
  message: (facts) =>
    `the rounds of ${quoted(facts[0]!.fact.data, 'piece')} are not joined, so they are worked in a spiral, but no word says so; say it in the notes, and that the first stitch of each round is marked`,
  example: null,
  sample: { piece: 'Crown' },
  check: (study) => {
    const { pattern, pieces } = study;
    const spirals = pieces.filter(
      ({ fabrics, rows }) =>
        fabrics.some((fabric) => fabric?.form === 'spiral') && rows.some((rounds) => rounds > 2),
    );
    if (spirals.length === 0) return [];
    const isHow = new Set(instructionsOf(pattern).map(({ node }) => node));
    const hasSaid = said(pattern).some(
      ({ text: { node } }) =>
        isHow.has(node) || node === 'cover:construction' || node === 'cover:description',
    );
    return hasSaid
      ? []
      : spirals.map(({ piece }) => found(spiralNotSaid, study, { node: piece.id }, { piece: piece.name }));
  },
};
