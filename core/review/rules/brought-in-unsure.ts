/** A part was brought in from elsewhere, and nobody has confirmed it yet. */
import { text } from '../../findings/phrases.ts';
import { writtenTexts } from '../../study/written.ts';
import { found, type Rule } from '../rule.ts';

export const broughtInUnsure: Rule = {
  code: 'brought-in-unsure',
  severity: 'warning',
  title: 'A part that was brought in is not confirmed',
  reason:
    'What stood in an old pattern was read as well as it could be. Where that was uncertain, only the maker knows what was meant.',
  message: (facts) => {
    const why = text(facts[0]!.fact.data, 'why').trim();
    return `this was brought in and is not sure${why === '' ? '' : `: ${why.replace(/\.$/u, '')}`}; compare it with the old pattern, put it right, and confirm it`;
  },
  example: null,
  sample: { why: 'this line may be a row or a remark' },
  check: (study) => {
    const { doubts } = study.pattern.workbook;
    if (doubts.length === 0) return [];
    const texts = writtenTexts(study.pattern);
    const pieces = new Map(study.pattern.pieces.map((piece) => [piece.id, piece.name]));
    return doubts.flatMap(({ node, why }) => {
      const written = texts.get(node);
      if (written === undefined && !pieces.has(node)) return [];
      const at = { node, text: written?.text ?? '', from: 0, to: written?.text.length ?? 0 };
      return [found(broughtInUnsure, study, at, { why })];
    });
  },
};
