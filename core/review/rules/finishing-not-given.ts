/** Several pieces are made, and not a word says how they are put together. */
import { number } from '../../findings/phrases.ts';
import { madeApart } from '../ends.ts';
import { found, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';
import { instructionsOf } from '../texts.ts';
import { pieceNotPutTogether } from './piece-not-put-together.ts';

/** Words of putting together. "Join with sl st in first sc" closes a round, and does not count. */
const TOGETHER =
  /\b(?:sew\w*|seam\w*|whip ?-?stitch\w*|mattress|graft\w*|attach\w*|assembl\w*|tack\w*|button\w*|lay\w* out|put together|stitch(?:ed)? (?:them |it |the \S+ )?(?:together|to)|crochet(?:ed)? (?:them )?together|(?:join|sl st|slip stitch|sc|dc)\b[^.;]{0,80}\b(?:together|pieces?|panels?|squares?|motifs?|strips?|blocks?|edges?|sides?|shoulders?|thickness(?:es)?|layers?|to (?:the )?(?:\S+ )?(?:body|back|front|yoke|crown|sole|armholes?|head|base|bag|previous|prev|other))|through both)\b/iu;

/** What is worn as two, each whole by itself. */
const PAIR =
  /\b(?:mitts?|mittens?|gloves?|socks?|slippers?|boot(?:ie|ee)s?|(?:leg|arm|wrist|hand|ankle) ?warmers?|wristlets?|wristers?|gauntlets?|boot cuffs?|earrings?)\b/iu;

const together = looking((text) => {
  const match = TOGETHER.exec(text);
  return match === null ? [] : [{ from: match.index, to: match.index + match[0].length }];
});

export const finishingNotGiven: Rule = {
  code: 'finishing-not-given',
  severity: 'warning',
  title: 'Nothing says how the pieces are put together',
  reason:
    'With all pieces made, a maker still needs to know which edge goes to which, in what order and with what seam. Without that the pattern stops before the thing is finished.',
  message: (facts) =>
    `${number(facts[0]!.fact.data, 'pieces')} pieces are made apart, and nothing says how they are put together; write it under Finishing: which edges, in what order, with what seam`,
  example: null,
  sample: { pieces: 4 },
  check: (study) => {
    const { pattern } = study;
    const apart = madeApart(pattern);
    if (apart.length === 0) return [];
    const { garment, title } = pattern.about;
    const [first] = apart;
    const names = pattern.pieces.map(({ name }) => name);
    const isPair =
      pattern.pieces.length === 1
        ? first!.make === 2 && PAIR.test(`${garment} ${title} ${first!.name}`)
        : pattern.pieces.length === 2 &&
          names.some((name) => /\bleft\b/iu.test(name)) &&
          names.some((name) => /\bright\b/iu.test(name)) &&
          PAIR.test(`${garment} ${title} ${names.join(' ')}`);
    if (isPair) return [];
    const isHow = new Set(instructionsOf(pattern).map(({ node }) => node));
    if (together(pattern).some(({ text: { node } }) => isHow.has(node))) return [];
    // Pieces of which nothing is said at all are named one by one.
    if (pieceNotPutTogether.check(study).length > 0) return [];
    const pieces = apart.reduce((sum, { make }) => sum + Math.max(1, make), 0);
    return [found(finishingNotGiven, study, { node: null }, { pieces })];
  },
};
