/** A piece is named in the plural, and one of it is made. */
import { quoted } from '../../findings/phrases.ts';
import { found, type Rule } from '../rule.ts';

/** Parts of which a garment or a toy has two or more, so that the plural means copies. Common practice, no source. */
const PARTS =
  /^(?:\p{L}+ ){0,2}(?:sleeves|armbands|cuffs|pockets|straps|ears|arms|legs|feet|wings|fins|flippers|paws|mitts|mittens|gloves|socks|slippers|ties|tabs|horns|eyes|petals|squares|hexagons|motifs)$/iu;

export const copiesNotSaid: Rule = {
  code: 'copies-not-said',
  severity: 'warning',
  title: 'A piece is named as several, and made once',
  reason:
    'How many are made is printed beside the name, and yarn and hours are reckoned for so many. Left at one, they are reckoned for half.',
  message: (facts) =>
    `${quoted(facts[0]!.fact.data, 'piece')} are several, but one is made; enter how many, or name the piece for one`,
  example: null,
  sample: { piece: 'Sleeves' },
  check: (study) =>
    study.pattern.pieces.flatMap(({ id, name, make }) =>
      make === 1 && PARTS.test(name.trim())
        ? [found(copiesNotSaid, study, { node: id }, { piece: name })]
        : [],
    ),
};
