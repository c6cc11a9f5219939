/** A photograph has no words that say what it shows. */
import type { Media } from '../../document/pattern.ts';
import { quoted, text } from '../../findings/phrases.ts';
import { found, type Rule } from '../rule.ts';

/** What a camera or a form put there: the name of a file, or that it is a picture. */
const NO_WORDS =
  /^(?:(?:img|dsc|dscf|pxl|photo|image|picture|untitled|cover)[-_ ]?\d*|[^\s]+\.(?:jpe?g|png))(?:\.\w{3,4})?$/iu;

const isBare = ({ alt }: Media): boolean => alt.trim() === '' || NO_WORDS.test(alt.trim());

export const photoNotDescribed: Rule = {
  code: 'photo-not-described',
  severity: 'warning',
  title: 'A photograph is not described',
  reason:
    'Those who have the pattern read to them learn from the description what a photograph shows. WCAG 2.2, 1.1.1, and PDF/UA ask for it.',
  message: (facts) => {
    const { data } = facts[0]!.fact;
    const where = data.piece === null ? 'the cover photograph' : `a photograph in ${quoted(data, 'piece')}`;
    return `${data.piece !== null && text(data, 'piece').trim() === '' ? 'a photograph' : where} is not described; say in a sentence what it shows`;
  },
  example: null,
  sample: { piece: 'Back' },
  check: (study) => {
    const { about, pieces } = study.pattern;
    const cover =
      about.cover !== null && isBare(about.cover)
        ? [found(photoNotDescribed, study, { node: 'cover:title' }, { piece: null })]
        : [];
    const others = pieces.flatMap((piece) =>
      piece.blocks.flatMap((block) =>
        block.type === 'photo' && isBare(block.media)
          ? [found(photoNotDescribed, study, { node: block.id }, { piece: piece.name })]
          : [],
      ),
    );
    return [...cover, ...others];
  },
};
