/** Words of the trade: every word of its names and abbreviations, in both markets. From the trade's own tables. */
import { tradeWords } from './abbreviations.ts';
import { modifierTerms, stitchTerms, wordTerms } from './terms.ts';

/** Letters and figures of a text as words, in lower case: "hdc2tog" is one. */
export function wordsIn(text: string): readonly string[] {
  return text.toLowerCase().match(/[\p{L}\p{N}]+(?:['’][\p{L}]+)?/gu) ?? [];
}

/** Words of makers' prose that a general dictionary lacks (common practice, no source). */
const IN_PROSE = `amigurumi appliqué aran armband armbands armhole armholes backstitch backstitched backstitching
  beadwork beanie buttonband buttonbands cabled cardi colourwork colorwork cowl crewneck crocheted crocheter
  crocheters crocheting drawstring earflap earflaps earwarmer fiberfill fibrefill fingering fiber fibre frogged
  frogging garter granny grannies handwash heathered icord intarsia laceweight mercerised mercerized neckband
  neckbands neckline necklines ombre picot picots pom pompom pompoms raglan raglans reblock ribbing selvedge selvage
  shawlette slipstitch slipstitched slipstitching slouchy stash superwash swatching tassel tassels thumbhole
  thumbholes tinking topstitch topstitched topstitching tunisian underarm underarms unworked whipstitch whipstitched
  whipstitching widthwise woollen worsted yardage yarnover yarnovers yoke yokes`;

const words: ReadonlySet<string> = new Set(
  [
    ...[...stitchTerms, ...modifierTerms].flatMap(({ us, uk }) =>
      [us, uk].flatMap(({ name, abbr, alt = [] }) => [name, abbr, ...alt]),
    ),
    ...wordTerms.flatMap(({ pairs, alsoUs = [], alsoUk = [] }) => [
      ...pairs.flatMap(({ us, uk }) => [us, uk]),
      ...[...alsoUs, ...alsoUk].map(([met]) => met),
    ]),
    ...Object.keys(tradeWords),
    IN_PROSE,
  ].flatMap(wordsIn),
);

/** Whether a word is one of the trade's, in the singular or with a plural's s. */
export function isTradeWord(word: string): boolean {
  const lower = word.toLowerCase();
  return words.has(lower) || (lower.endsWith('s') && words.has(lower.slice(0, -1)));
}
