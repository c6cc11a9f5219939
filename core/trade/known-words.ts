/** Words of the trade: every word of its names and abbreviations, in both markets. From the trade's own tables. */
import { tradeWords } from './abbreviations.ts';
import { modifierTerms, stitchTerms, wordTerms } from './terms.ts';

/** Letters and figures of a text as words, in lower case: "hdc2tog" is one. */
export function wordsIn(text: string): readonly string[] {
  return text.toLowerCase().match(/[\p{L}\p{N}]+(?:['’][\p{L}]+)?/gu) ?? [];
}

/** Words of makers' prose that a general dictionary lacks (common practice, no source). */
const IN_PROSE = `amigurumi aran armband armbands armhole armholes beanie cabled colourwork colorwork cowl
  crocheted crocheter crocheters crocheting drawstring fingering fiber fibre frogging garter granny grannies
  neckband neckbands neckline necklines picot picots pom pompom pompoms raglan raglans ribbing selvedge selvage
  slouchy stash superwash tassel tassels underarm underarms unworked woollen worsted yardage yoke yokes`;

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
